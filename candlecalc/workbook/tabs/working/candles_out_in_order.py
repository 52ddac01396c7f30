"""The Candles out in order tab: what left of each product by day, and what that cost."""

from candlecalc.season.tables.stock import MOVES
from candlecalc.workbook.cells.references import at, written
from candlecalc.workbook.cells.stock_card import went_columns
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.candles_out import TAB as OUT

COUNTED = at("out", "counted", "line")

TAB = lines_tab(
    "Candles out in order",
    "working",
    "What left of each product, by day: what it cost, and the batch it is taken to be from.",
    "out_card",
    MOVES,
    went_columns("out", "made", at("out", "amount", "line"), (written('{counted}<>""', counted=COUNTED), COUNTED)),
    OUT.counted,
)

register(TAB, __name__, 51, records=True)
