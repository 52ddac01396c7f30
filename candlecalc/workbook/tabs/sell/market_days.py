"""The Market days tab: what each day cost, and what was in the cash box."""

from candlecalc.season.tables.sales import MARKET_DAYS
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

register(entry_tab(MARKET_DAYS), __name__, 40, records=True)
