"""The Candles out in order tab: what left of each product by day, and what that cost."""

from candlecalc.season.tables.stock import MOVES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import KEY_DAY, KEY_THING, Whole, at, line_of, written
from candlecalc.workbook.cells.stock_card import NUMBERED, went_columns
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.candles_out import FROM_COUNTS, FROM_SOLD
from candlecalc.workbook.tabs.working.candles_out import TAB as OUT

DAY = written("INT(MOD({number},{thing})/{day})", number="number", thing=KEY_THING, day=KEY_DAY)
CURED = written(
    'SUMIFS({good},{products},{thing},{ready},"<="&{day})',
    good=Whole("pours", "good"),
    products=Whole("pours", "product_row"),
    thing="thing",
    ready=Whole("pours", "ready_on"),
    day=DAY,
)
EARLY = written(
    f"({{what}}={FROM_SOLD})*({{gone}}>{{cured}})",
    what=at("out", "what", line_of("number")),
    gone="gone",
    cured=CURED,
)

TAB = lines_tab(
    "Candles out in order",
    "working",
    "What left of each product, by day, and what it cost.",
    "out_card",
    MOVES,
    {
        **went_columns("out", "made", FROM_COUNTS),
        "early": look("1: sold before they were cured", EARLY, "row", needs=NUMBERED, width=8),
    },
    OUT.counted,
)

register(TAB, __name__, 51, records=True)
