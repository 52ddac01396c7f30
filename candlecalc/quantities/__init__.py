"""Units, numbers and days: how what people write becomes a number, and how it is rounded."""
