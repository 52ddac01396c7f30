"""What is said of a maker's workbook: what is wrong, and what it comes to."""
