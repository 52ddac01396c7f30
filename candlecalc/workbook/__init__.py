"""A season as a workbook: its tabs, how they look, how they are written and read."""

import os

# openpyxl writes other bytes where lxml is installed; a workbook must not depend on that.
os.environ.setdefault("OPENPYXL_LXML", "False")
