"""The Market lines tab: what was taken to a market, and what was brought back."""

from candlecalc.season.tables.sales import MARKET_LINES
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

register(entry_tab(MARKET_LINES), __name__, 50, records=True)
