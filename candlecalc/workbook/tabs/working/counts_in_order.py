"""The Counts in order tab: the counts of each thing by day. Products come after materials."""

from candlecalc.season.tables.stock import COUNTS
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import in_order, line_of, thing_of
from candlecalc.workbook.cells.stock_card import NUMBERED
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register

TAB = lines_tab(
    "Counts in order",
    "working",
    "The counts of each thing by day; products come after materials.",
    "counts_by_day",
    COUNTS,
    {
        "number": look("Line's number", in_order("counts", "number"), "row", needs=(), width=16),
        "line": look("Row on Counts", line_of("number"), "row", needs=NUMBERED, width=9),
        "thing": look("Thing, row", thing_of("number"), "row", needs=NUMBERED, width=8),
    },
)

register(TAB, __name__, 52, records=True)
