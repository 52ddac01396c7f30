"""The Lots opened tab: the lots of each material by the day they were opened."""

from candlecalc.season.tables.stock import PURCHASES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import in_order, line_of, thing_of
from candlecalc.workbook.cells.stock_card import NUMBERED
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register

TAB = lines_tab(
    "Lots opened",
    "working",
    "The lots of each material by the day on which they were opened.",
    "opened",
    PURCHASES,
    {
        "number": look("Line's number", in_order("purchases", "opened_number"), "row", needs=(), width=16),
        "line": look("Row on Purchases", line_of("number"), "row", needs=NUMBERED, width=9),
        "thing": look("Material, row", thing_of("number"), "row", needs=NUMBERED, width=8),
    },
)

register(TAB, __name__, 47, records=True)
