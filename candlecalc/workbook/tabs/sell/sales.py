"""The Sales tab: what was sold, a line for each product of an order."""

from candlecalc.season.tables.sales import SALES
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

register(entry_tab(SALES), __name__, 30, records=True)
