"""What a tab is made of: places, columns, references, styles."""
