"""The Complaints tab: what buyers brought back, by batch."""

from candlecalc.season.tables.sales import COMPLAINTS
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

register(entry_tab(COMPLAINTS), __name__, 70, records=True)
