"""The Used tab: what went of each material, a line each.

Lines of batches come first, in the order of the Batch log, then those of Taken out, then the parts of sets that left and
were not packed, then counts that hold.
"""

from collections.abc import Mapping

from candlecalc.season.tables.stock import COUNTS, MOVES, POURS
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import (
    Expression,
    Named,
    Results,
    Whole,
    as_text,
    at,
    at_row,
    line_key,
    text,
    written,
)
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import Room, Shown, register
from candlecalc.workbook.tabs.working import sets_not_packed
from candlecalc.workbook.tabs.working.from_logs import LINE, WHAT, by_source, cost_in, of_log
from candlecalc.workbook.tabs.working.recipe_lines import KEY_LINE, part_number

LINES_OF_A_BATCH = 6  # that there is room for: a wax, an oil, a vessel, a lid, a wick, a label
FROM_POURS, FROM_MOVES, FROM_SETS, FROM_COUNTS = 1, 2, 3, 4
POURED, BEFORE_SETS, BEFORE_COUNTS = Named("lines_of_pours"), Named("before_sets"), Named("before_counts")


def _of_pours(value: str, **inside: Expression) -> Expression:
    return written(f'IF({{what}}={FROM_POURS},{value},"")', what="what", **inside)


KIND = written(
    'IF({line}<={moved},1+({line}>{poured}),IF({line}>{all},"",3+({line}>{sets})))',
    line=LINE,
    poured=POURED,
    moved=BEFORE_SETS,
    all=Named("used_lines"),
    sets=BEFORE_COUNTS,
)
OF_SETS = written("({line}-{before})", line=LINE, before=BEFORE_SETS)
SOURCE = written(
    "{found}+1",
    found=by_source(
        written("MATCH({line}-1,{starts},1)", line=LINE, starts=Results("pours", "start")),
        written("MATCH({line}-{poured},{lines},0)", line=LINE, poured=POURED, lines=Results("moves", "nth_material")),
        written("MATCH({line}-1,{starts},1)", line=OF_SETS, starts=Results("unpacked", "start")),
        written("MATCH({line}-{before},{lines},0)", line=LINE, before=BEFORE_COUNTS, lines=Results("counts", "nth_material")),
    ),
)  # fmt: skip


def _part(log: str, product: str, line: Expression) -> Expression:
    """Which line of the recipe a line is of. `line` is its place among all that the log's lines took."""
    nth = written("({line}-{start})", line=line, start=of_log(log, "start"))
    number = part_number(nth, of_log(log, "named_parts"), of_log(log, "recipe"), of_log(log, product))
    return written("MATCH({number},{numbers},0)", number=number, numbers=Results("lines", "number"))


PART = by_source(_part("pours", "product_row", LINE), text(""), _part("unpacked", "thing", OF_SETS), text(""))
OF_RECIPE = at_row("lines", "material", "part")
# A row of Used otherwise that is not right may be of any line: each is an error until it is.
OTHERWISE = written(
    f"IF({{what}}={FROM_POURS},IFERROR(MATCH({{batch}}*{{key}}+{{planned}},{{numbers}},0),0)+0*SUM({{ready}}),0)",
    what="what", batch="batch", key=KEY_LINE, planned=OF_RECIPE, numbers=Whole("instead", "number"),
    ready=Results("instead", "ready"),
)  # fmt: skip
THING = by_source(
    written("IF({otherwise}=0,{planned},{other})", otherwise="otherwise", planned=OF_RECIPE, other=at("instead", "used_row", "otherwise")),
    of_log("moves", "material_row"),
    OF_RECIPE,
    of_log("counts", "material_row"),
)  # fmt: skip
WEIGHED = written(
    "IF({otherwise}=0,0,SUM({amount}))", otherwise="otherwise", amount=at("instead", "amount", "otherwise")
)


def _by_recipe(log: str) -> Expression:
    return written("{each}*{pieces}", each=at_row("lines", "amount", "part"), pieces=of_log(log, "pieces"))


AMOUNT = written("ROUND({amount},9)", amount=by_source(
    written("IF({weighed}>0,{weighed},{by_recipe})", weighed=WEIGHED, by_recipe=_by_recipe("pours")),
    of_log("moves", "amount"),
    _by_recipe("unpacked"),
    of_log("counts", "counted"),
))  # fmt: skip
DAY = by_source(*(of_log(table, "date") for table in ("pours", "moves", "unpacked", "counts")))


def _rows(rows_of: Mapping[str, int]) -> int:
    # One more is free where a list is full: it is where too many lines show as an error.
    of_batches = rows_of[POURS.key] * LINES_OF_A_BATCH
    return of_batches + rows_of[MOVES.key] + sets_not_packed.rows(rows_of) + rows_of[COUNTS.key] + 1


TAB = lines_tab(
    "Used",
    "output",
    "What went of each material, for which batch, and what it cost. Of a count: what was there.",
    "used",
    POURS,
    {
        "batch": look("Batch number", _of_pours("{batch}", batch=of_log("pours", "batch")), "row", needs=WHAT, width=10),
        "material": look("Material", as_text(at("materials", "material", "thing")), needs=WHAT, width=30),
        "amount": look("Amount, {weight} or each", AMOUNT, "quantity", needs=WHAT),
        "cost": look("Cost, {money}", cost_in("card"), "money", needs=WHAT),
        "what": look("From: 1 Batch log, 2 Taken out, 3 Sets not packed, 4 Counts", KIND, "row", needs=(), width=9),
        "source": look("Row there", SOURCE, "row", needs=WHAT, width=7),
        "part": look("Line of the recipe", PART, "row", needs=WHAT, width=8),
        "otherwise": look("Row on Used otherwise", OTHERWISE, "row", needs=WHAT, width=9),
        "thing": look("Material, row", THING, "row", needs=WHAT, width=8),
        "number": look("Line's number", line_key("thing", DAY), "row", needs=WHAT, width=16),
    },
    _rows,
    paper_to="cost",
)  # fmt: skip

ROOM = Room("lines_for_used", POURS.key)

SHOWN = ("batch", "material", "amount", "cost")
register(TAB, __name__, 50, shown=Shown("used", SHOWN), room=ROOM, records=True)
