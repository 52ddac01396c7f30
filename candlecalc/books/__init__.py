"""The year handed to a bookkeeper: a journal made from the workbook's tabs, checked, and written as files."""
