"""The tabs of a season workbook, a file each."""
