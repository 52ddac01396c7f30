"""The Candles out in order tab: what left of each product by day, and what that cost.

Of a set only those that were packed, on whatever day, go from here; the others leave as what is in them.
"""

from candlecalc.season.tables.stock import MOVES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import (
    KEY_DAY,
    KEY_THING,
    Above,
    Expression,
    Given,
    Whole,
    at,
    line_of,
    written,
)
from candlecalc.workbook.cells.stock_card import NOTHING, NUMBERED, same_thing, went_columns
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.candles_out import FROM_COUNTS, FROM_SOLD
from candlecalc.workbook.tabs.working.candles_out import TAB as OUT


def day_of(number: Given) -> Expression:
    return written("INT(MOD({number},{thing})/{day})", number=number, thing=KEY_THING, day=KEY_DAY)


IS_SET = written('{kind}="set"', kind=at("recipes", "kind", "thing"))
PACKED = written(
    "SUMIFS({good},{products},{thing})",
    good=Whole("pours", "good"),
    products=Whole("pours", "product_row"),
    thing="thing",
)


def _of_those_packed(before: Given, after: Given) -> Expression:
    """What is gone of packed sets: never more than were packed, nor less than before or nothing where one comes back."""
    return written(
        "IF({is_set},MAX(MIN({after},{packed}),MIN({before},0)),{after})",
        is_set=IS_SET,
        after=after,
        packed=PACKED,
        before=before,
    )


BEFORE = same_thing(Above("gone"), NOTHING)
# What was not there packed: in a line of what left, not of a count.
UNPACKED = written(
    "IF({is_set},({what}<>{counts})*({before}+{amount}<>{gone}),0)",
    is_set=IS_SET,
    what=at("out", "what", line_of("number")),
    counts=written(str(FROM_COUNTS)),
    before=BEFORE,
    amount=at("out", "amount", line_of("number")),
    gone="gone",
)
CURED = written(
    'SUMIFS({good},{products},{thing},{ready},"<="&{day})',
    good=Whole("pours", "good"),
    products=Whole("pours", "product_row"),
    thing="thing",
    ready=Whole("pours", "ready_on"),
    day=day_of("number"),
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
        **went_columns("out", "made", FROM_COUNTS, _of_those_packed),
        "unpacked": look(
            "Lines of sets not packed, to date",
            written("{above}+{one}", above=Above("unpacked"), one=UNPACKED),
            "row",
            needs=NUMBERED,
            width=8,
        ),
        "early": look("1: sold before they were cured", EARLY, "row", needs=NUMBERED, width=8),
    },
    OUT.counted,
)

register(TAB, __name__, 51, records=True)
