"""What the add-ins have alike."""
