"""The Candles out in order tab: what left of each product by day, and what that cost.

Of a set only those that were packed, on whatever day, go from here; the others leave as what is in them.
"""

from candlecalc.season.tables.stock import MOVES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import (
    Above,
    at,
    day_of,
    line_of,
    sum_over,
    sum_where,
    written,
)
from candlecalc.workbook.cells.stock_card import GONE_BEFORE, NUMBERED, gone_with_all, went_columns
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.candles_out import FROM_COUNTS, FROM_SOLD
from candlecalc.workbook.tabs.working.candles_out import TAB as OUT

IS_SET = written('{kind}="set"', kind=at("recipes", "kind", "thing"))
ALL_OF_IT = gone_with_all("out")
# Of packed sets never more than were packed are gone, nor fewer than before or none where one comes back.
GONE = written(
    "IF({is_set},MAX(MIN({all},{packed}),MIN({before},0)),{all})",
    is_set=IS_SET,
    all=ALL_OF_IT,
    packed=sum_where("pours", "good", product_row="thing"),
    before=GONE_BEFORE,
)
# What was not there packed: in a line of what left, not of a count.
UNPACKED = written(
    "IF({is_set},({what}<>{counts})*({all}<>{gone}),0)",
    is_set=IS_SET,
    what=at("out", "what", line_of("number")),
    counts=written(str(FROM_COUNTS)),
    all=ALL_OF_IT,
    gone="gone",
)
UNTIL = written('"<="&{day}', day=day_of("number"))
CURED = sum_over("pours", "good", [("product_row", "thing"), ("ready_on", UNTIL)])
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
        **went_columns("out", "made", FROM_COUNTS, GONE),
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
