"""The Used tab: what went of each material, a line each: what batches took, what was taken out, counts that hold.

Lines of batches come first, in the order of the Batch log, then those of Taken out and of Counts.
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
    written,
)
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import Room, Shown, register
from candlecalc.workbook.tabs.working.from_logs import LINE, WHAT, by_source, cost_in, of_log
from candlecalc.workbook.tabs.working.recipe_lines import KEY_LINE, OF_EXTRAS

LINES_OF_A_BATCH = 6  # that there is room for: a wax, an oil, a vessel, a lid, a wick, a label
FROM_POURS, FROM_MOVES, FROM_COUNTS = 1, 2, 3
POURED, MOVED = Named("lines_of_pours"), Named("material_moves")


def _of_pours(value: str, **inside: Expression) -> Expression:
    return written(f'IF({{what}}={FROM_POURS},{value},"")', what="what", **inside)


KIND = written('IF({line}>{all},"",1+({line}>{poured})+({line}>{poured}+{moved}))', line=LINE, all=Named("used_lines"), poured=POURED, moved=MOVED)  # fmt: skip
SOURCE = written(
    "{found}+1",
    found=by_source(
        written("MATCH({line}-1,{starts},1)", line=LINE, starts=Results("pours", "start")),
        written("MATCH({line}-{poured},{lines},0)", line=LINE, poured=POURED, lines=Results("moves", "nth_material")),
        written("MATCH({line}-{poured}-{moved},{lines},0)", line=LINE, poured=POURED, moved=MOVED, lines=Results("counts", "nth_material")),
    ),
)  # fmt: skip
NTH = written("({line}-{start})", line=LINE, start=of_log("pours", "start"))
# The parts that the recipe names come first, then what else goes with the product.
PART_NUMBER = written(
    "IF({nth}>{named},({first}+{more})*{key}-{named},{recipe}*{key})+{nth}",
    nth=NTH,
    named=of_log("pours", "named_parts"),
    first=of_log("pours", "product_row"),
    more=written(str(OF_EXTRAS)),
    key=KEY_LINE,
    recipe=of_log("pours", "recipe"),
)
PART = _of_pours("MATCH({number},{numbers},0)", number=PART_NUMBER, numbers=Results("lines", "number"))
# A row of Used otherwise that is not right may be of any line: each is an error until it is.
OTHERWISE = written(
    f"IF({{what}}={FROM_POURS},IFERROR(MATCH({{batch}}*{{key}}+{{planned}},{{numbers}},0),0)+0*SUM({{ready}}),0)",
    what="what", batch="batch", key=KEY_LINE, planned=at_row("lines", "material", "part"), numbers=Whole("instead", "number"),
    ready=Results("instead", "ready"),
)  # fmt: skip
THING = by_source(
    written("IF({otherwise}=0,{planned},{other})", otherwise="otherwise", planned=at_row("lines", "material", "part"), other=at("instead", "used_row", "otherwise")),
    of_log("moves", "material_row"),
    of_log("counts", "material_row"),
)  # fmt: skip
WEIGHED = written(
    "IF({otherwise}=0,0,SUM({amount}))", otherwise="otherwise", amount=at("instead", "amount", "otherwise")
)
BY_RECIPE = written("{each}*{pieces}", each=at_row("lines", "amount", "part"), pieces=of_log("pours", "pieces"))
AMOUNT = written("ROUND({amount},9)", amount=by_source(
    written("IF({weighed}>0,{weighed},{by_recipe})", weighed=WEIGHED, by_recipe=BY_RECIPE), of_log("moves", "amount"), of_log("counts", "counted"),
))  # fmt: skip
DAY = by_source(*(of_log(table, "date") for table in ("pours", "moves", "counts")))


def _rows(rows_of: Mapping[str, int]) -> int:
    return rows_of[POURS.key] * LINES_OF_A_BATCH + rows_of[MOVES.key] + rows_of[COUNTS.key]


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
        "what": look("From: 1 Batch log, 2 Taken out, 3 Counts", KIND, "row", needs=(), width=9),
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
