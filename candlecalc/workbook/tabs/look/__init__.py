"""Look: what must hold in the whole workbook, and what was done to it."""
