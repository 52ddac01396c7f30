"""The Candles out in order tab: what left of each product by day, and what that cost."""

from candlecalc.season.tables.stock import MOVES
from candlecalc.workbook.cells.stock_card import went_columns
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.candles_out import FROM_COUNTS
from candlecalc.workbook.tabs.working.candles_out import TAB as OUT

TAB = lines_tab(
    "Candles out in order",
    "working",
    "What left of each product, by day, and what it cost.",
    "out_card",
    MOVES,
    went_columns("out", "made", FROM_COUNTS),
    OUT.counted,
)

register(TAB, __name__, 51, records=True)
