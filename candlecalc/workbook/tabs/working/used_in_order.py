"""The Used in order tab: what went of each material by day, and what that cost."""

from candlecalc.season.tables.stock import POURS
from candlecalc.workbook.cells.stock_card import went_columns
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.stock.used import FROM_COUNTS
from candlecalc.workbook.tabs.stock.used import TAB as USED

TAB = lines_tab(
    "Used in order",
    "working",
    "What went of each material, by day, and what it cost.",
    "card",
    POURS,
    went_columns("used", "lots", FROM_COUNTS),
    USED.counted,
)

register(TAB, __name__, 46, records=True)
