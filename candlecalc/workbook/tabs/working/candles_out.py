"""The Candles out tab: what left of each product, line by line; a set takes its candles along.

Lines of Taken out come first, then those of what was sold, then those of Counts: on one day a count is of the evening.
"""

from collections.abc import Mapping

from candlecalc.season.tables.sales import MARKET_LINES, SALES
from candlecalc.season.tables.stock import COUNTS, MOVES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import Named, Results, Whole, at, constant, line_key, written
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import Room, register
from candlecalc.workbook.tabs.working.from_logs import LINE, WHAT, by_source, cost_in, of_log

FROM_MOVES, FROM_SOLD, FROM_COUNTS = 1, 2, 3
MOVED, BOUGHT = Named("product_moves"), Named("product_sales")
BEFORE_COUNTS = written("({moved}+{bought})", moved=MOVED, bought=BOUGHT)
ROOM_FOR_SETS = 2  # lines there is room for, for each line of Taken out
ROOM_FOR_SALES = 1.4  # ... and for each line of Sales and of Market lines: most are of single candles

SOURCE = written("{found}+1", found=by_source(
    written("MATCH({line}-1,{starts},1)", line=LINE, starts=Results("moves", "start")),
    written("MATCH({line}-1-{moved},{starts},1)", line=LINE, moved=MOVED, starts=Results("sold", "start")),
    written("MATCH({line}-{before},{lines},0)", line=LINE, before=BEFORE_COUNTS, lines=Results("counts", "nth_product")),
))  # fmt: skip
# The place of a line among those of its line in the log, from 0 on.
NTH = by_source(
    written("{line}-1-{start}", line=LINE, start=of_log("moves", "start")),
    written("{line}-1-{moved}-{start}", line=LINE, moved=MOVED, start=of_log("sold", "start")),
    constant(0),
)
# What was given away or broke at a market stands below what was sold.
OF_SALE = written("({nth}<{size})*({away}<>0)", nth="nth", size=of_log("sold", "size"), away=of_log("sold", "away"))
# Of a set's lines the first is the set itself, which has no row on Sets.
NTH_OF_SET = by_source(
    written("{nth}", nth="nth"), written("MOD({nth},{size})", nth="nth", size=of_log("sold", "size")), constant(0)
)
SET = by_source(of_log("moves", "holds"), of_log("sold", "holds"), constant(0))
SET_LINE = written('IF({nth}=0,0,MATCH({set}&" "&{nth},{keys},0))', nth=NTH_OF_SET, set=SET, keys=Whole("sets", "key"))
OWN = by_source(of_log("moves", "product_row"), of_log("sold", "thing"), of_log("counts", "product_row"))
THING = written(
    "IF({set_line}>0,{candle},{own})", set_line="set_line", candle=at("sets", "product_row", "set_line"), own=OWN
)
PIECES = by_source(
    of_log("moves", "amount"),
    written("IF({of_sale}=1,{away},{lost})", of_sale=OF_SALE, away=of_log("sold", "away"), lost=of_log("sold", "lost")),
    of_log("counts", "all_there"),
)
EACH = written("IF({set_line}=0,1,{count})", set_line="set_line", count=at("sets", "count", "set_line"))
DAY = by_source(*(of_log(table, "date") for table in ("moves", "sold", "counts")))
# Of sets that were not packed also what their own parts cost.
PARTS = written(
    "IF(COUNTIF({numbers},{number})=0,0*SUM({numbers}),INDEX({costs},MATCH({number},{numbers},0)))",
    numbers=Results("unpacked", "number"),
    number="number",
    costs=Results("unpacked", "cost"),
)
COST = written(
    '{cost}+IF({kind}="set",{parts},0)', cost=cost_in("out_card"), kind=at("recipes", "kind", "thing"), parts=PARTS
)
KIND = written('IF({line}>{all},"",1+({line}>{moved})+({line}>{before}))', line=LINE, all=Named("out_lines"), moved=MOVED, before=BEFORE_COUNTS)  # fmt: skip


def _rows(rows_of: Mapping[str, int]) -> int:
    sold = int((rows_of[SALES.key] + rows_of[MARKET_LINES.key]) * ROOM_FOR_SALES)
    return rows_of[MOVES.key] * ROOM_FOR_SETS + sold + rows_of[COUNTS.key]


TAB = lines_tab(
    "Candles out",
    "working",
    "What left of each product, line by line. A set takes its candles along.",
    "out",
    MOVES,
    {
        "what": look("From: 1 Taken out, 2 Sold, 3 Counts", KIND, "row", needs=(), width=9),
        "source": look("Row there", SOURCE, "row", needs=WHAT, width=7),
        "nth": look("Line of it, from 0", NTH, "row", needs=WHAT, width=7),
        "set_line": look("Row on Sets", SET_LINE, "row", needs=WHAT, width=7),
        "thing": look("Product's first row", THING, "row", needs=WHAT, width=8),
        "amount": look("Pieces", written("{pieces}*{each}", pieces=PIECES, each=EACH), "quantity", needs=WHAT),
        "number": look("Line's number", line_key("thing", DAY), "row", needs=WHAT, width=16),
        "cost": look("Cost, {money}", COST, "money", needs=WHAT),
    },
    _rows,
)  # fmt: skip

ROOM = Room("lines_for_out", SALES.key)

register(TAB, __name__, 49, room=ROOM, records=True)
