"""The Sets not packed tab: sets that left and were not logged as packed, and what each line takes from Stock.

Their candles leave as they do with any set. Its box, and what else its recipe takes, leaves with them on that day.
"""

from collections.abc import Mapping

from candlecalc.season.tables.sales import MARKET_LINES, SALES
from candlecalc.season.tables.stock import MOVES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import (
    Expression,
    Given,
    Named,
    Results,
    as_text,
    at,
    before_row,
    day_of,
    in_force,
    line_of,
    lines_of,
    thing_of,
    written,
)
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import Room, register
from candlecalc.workbook.tabs.working.from_logs import LINE
from candlecalc.workbook.tabs.working.recipe_lines import extra_parts, named_parts

ROOM_FOR_LINES = 0.15  # lines there is room for, for each line of the logs that a set leaves in
MORE = 4  # ... and besides, where logs are short
SOURCE = written(
    'IF({line}>{all},"",MATCH({line},{lines},0)+1)',
    line=LINE,
    all=Named("unpacked_lines"),
    lines=Results("out_card", "unpacked"),
)
THERE = ("source",)


def _card(key: str, row: Given = "source") -> Expression:
    return at("out_card", key, row)


ABOVE = written("{source}-1", source="source")
# All that the line took, less what it took of packed sets.
PIECES = written(
    "ROUND(IF({above}={thing},{before},0)+{amount}-{after},9)",
    above=_card("thing", ABOVE),
    thing="thing",
    before=_card("gone", ABOVE),
    amount=at("out", "amount", line_of("number")),
    after=_card("gone"),
)
COST = written(
    "IF({parts}=0,0,{lines})",
    parts="parts",
    lines=lines_of("used", "cost", written("{before}+{start}", before=Named("before_sets"), start="start"), "parts"),
)


def rows(rows_of: Mapping[str, int]) -> int:
    return int(sum(rows_of[log.key] for log in (MOVES, SALES, MARKET_LINES)) * ROOM_FOR_LINES) + MORE


TAB = lines_tab(
    "Sets not packed",
    "working",
    "Sets that left and were not logged as packed. Their box leaves Stock with them.",
    "unpacked",
    SALES,
    {
        "product": look("Set", as_text(at("recipes", "product", "thing")), needs=THERE, width=24),
        "date": look("Date", day_of("number"), "date", needs=THERE),
        "pieces": look("Not packed", PIECES, "pieces", needs=THERE),
        "cost": look("What its own parts cost, {money}", COST, "money", needs=THERE),
        "source": look("Row on Candles out in order", SOURCE, "row", needs=(), width=9),
        "number": look("Line's number", _card("number"), "row", needs=THERE, width=16),
        "thing": look("Product's first row", thing_of("number"), "row", needs=THERE, width=8),
        "recipe": look("Recipe that held, row", in_force("recipes_by_day", "thing", "date"), "row", needs=THERE, width=8),
        "named_parts": look("Parts that Recipes names", named_parts("recipe"), "row", needs=THERE, width=8),
        "parts": look("Lines on Used", written("{named}+{extra}", named="named_parts", extra=extra_parts("thing")), "row", needs=THERE, width=8),
        "start": look("Lines on Used before", before_row("start", "parts"), "row", needs=(), width=8),
    },
    rows,
)  # fmt: skip

ROOM = Room("lines_for_unpacked", SALES.key)

register(TAB, __name__, 52, room=ROOM, records=True)
