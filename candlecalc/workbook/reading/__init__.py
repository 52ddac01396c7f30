"""A maker's workbook read: opened with care, its version, where things stand in it."""
