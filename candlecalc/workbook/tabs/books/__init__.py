"""Books: other costs, other entries, and the accounts they are booked on."""
