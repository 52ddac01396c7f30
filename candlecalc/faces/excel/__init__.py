"""Excel through xlwings."""
