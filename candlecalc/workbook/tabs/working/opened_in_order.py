"""The Lots opened tab: the lots of each material by the day they were opened."""

from candlecalc.season.tables.stock import PURCHASES
from candlecalc.workbook.cells.stock_card import lines_in_order
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register

TAB = lines_tab(
    "Lots opened",
    "working",
    "The lots of each material by the day on which they were opened.",
    "opened",
    PURCHASES,
    lines_in_order("purchases", "opened_number", "Row on Purchases", "Material, row"),
)

register(TAB, __name__, 47, records=True)
