"""A season workbook written: cells, lists, charts, the packed file."""
