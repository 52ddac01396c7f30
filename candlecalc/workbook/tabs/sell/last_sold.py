"""The Sold last season tab: what was sold in the season before, by month."""

from candlecalc.season.tables.carried import LAST_SOLD
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

register(entry_tab(LAST_SOLD), __name__, 90, records=True)
