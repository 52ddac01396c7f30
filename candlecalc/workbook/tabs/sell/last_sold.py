"""The Sold last season tab: what was sold in the season before, by month."""

from candlecalc.season.tables.carried import LAST_SOLD
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import written
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

MONTH = look("Month of the year", written("MONTH({month})", month="month"), "row", width=8)

register(entry_tab(LAST_SOLD, {"month_number": MONTH}), __name__, 90, records=True)
