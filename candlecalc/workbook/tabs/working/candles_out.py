"""The Candles out tab: what left of each product, line by line; a set takes its candles along."""

from collections.abc import Mapping

from candlecalc.season.tables.stock import COUNTS, MOVES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import (
    Named,
    Results,
    Whole,
    at,
    line_key,
    written,
)
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import Room, register
from candlecalc.workbook.tabs.working.from_logs import LINE, WHAT, by_source, cost_in, of_log

FROM_MOVES, FROM_COUNTS = 1, 2
MOVED = Named("product_moves")
ROOM_FOR_SETS = 2  # lines there is room for, for each line of Taken out


SOURCE = written("{found}+1", found=by_source(
    written("MATCH({line}-1,{starts},1)", line=LINE, starts=Results("moves", "start")),
    written("MATCH({line}-{moved},{lines},0)", line=LINE, moved=MOVED, lines=Results("counts", "nth_product")),
))  # fmt: skip
# Of a set's lines the first is the set itself, which has no row on Sets.
NTH = written("{line}-{start}-1", line=LINE, start=of_log("moves", "start"))
SET_LINE = written(
    f'IF({{what}}={FROM_MOVES},IF({{nth}}=0,0,MATCH({{set}}&" "&{{nth}},{{keys}},0)),0)',
    what="what", nth=NTH, set=of_log("moves", "holds"), keys=Whole("sets", "key"),
)  # fmt: skip
CANDLE = at("sets", "product_row", "set_line")
THING = written("IF({set_line}>0,{candle},{own})", set_line="set_line", candle=CANDLE, own=by_source(of_log("moves", "product_row"), of_log("counts", "product_row")))  # fmt: skip
AMOUNT = by_source(written("{amount}*IF({set_line}=0,1,{count})", amount=of_log("moves", "amount"), set_line="set_line", count=at("sets", "count", "set_line")), of_log("counts", "counted"))  # fmt: skip


DAY = by_source(of_log("moves", "date"), of_log("counts", "date"))


def _rows(rows_of: Mapping[str, int]) -> int:
    return rows_of[MOVES.key] * ROOM_FOR_SETS + rows_of[COUNTS.key]


TAB = lines_tab(
    "Candles out",
    "working",
    "What left of each product, line by line. A set takes its candles along.",
    "out",
    MOVES,
    {
        "what": look("From Taken out or Counts", written('IF({line}>{all},"",1+({line}>{moved}))', line=LINE, all=Named("out_lines"), moved=MOVED), "row", needs=(), width=9),
        "source": look("Row there", SOURCE, "row", needs=WHAT, width=7),
        "set_line": look("Row on Sets", SET_LINE, "row", needs=WHAT, width=7),
        "thing": look("Product's first row", THING, "row", needs=WHAT, width=8),
        "amount": look("Pieces", AMOUNT, "quantity", needs=WHAT),
        "number": look("Line's number", line_key("thing", DAY), "row", needs=WHAT, width=16),
        "cost": look("Cost, {money}", cost_in("out_card"), "money", needs=WHAT),
    },
    _rows,
)  # fmt: skip

ROOM = Room("lines_for_out", MOVES.key)

register(TAB, __name__, 49, room=ROOM, records=True)
