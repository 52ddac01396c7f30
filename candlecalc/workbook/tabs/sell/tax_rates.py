"""The Tax by day tab: rates that changed, or that differ by area."""

from candlecalc.season.tables.sales import TAX_RATES
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

register(entry_tab(TAX_RATES), __name__, 60, records=True)
