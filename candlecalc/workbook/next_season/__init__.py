"""The season after: what a workbook closes with, as the rows that the next one opens with."""
