"""The Counts in order tab: the counts of each thing by day. Products come after materials."""

from candlecalc.season.tables.stock import COUNTS
from candlecalc.workbook.cells.stock_card import lines_in_order
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register

TAB = lines_tab(
    "Counts in order",
    "working",
    "The counts of each thing by day; products come after materials.",
    "counts_by_day",
    COUNTS,
    lines_in_order("counts", "number", "Row on Counts", "Thing, row"),
)

register(TAB, __name__, 52, records=True)
