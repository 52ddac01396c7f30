"""The Still open tab: what was owed when the season began."""

from candlecalc.season.tables.carried import STILL_OPEN
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

register(entry_tab(STILL_OPEN), __name__, 80, records=True)
