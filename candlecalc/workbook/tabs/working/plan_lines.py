"""The Plan lines tab: what each line of Demand takes of candles, a set by its candles, and what is to be made for it.

A set takes its candles where it is still to be packed. What is at home counts once it has cured by the day on which
finishing begins.
"""

from collections.abc import Mapping

from candlecalc.season.tables.plan import DEMAND, FINISHING_DAYS
from candlecalc.workbook.cells.columns import look, result
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import (
    KEY_DAY,
    KEY_THING,
    Expression,
    Named,
    Results,
    Whole,
    at,
    in_force,
    written,
)
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.plan.demand import KEY as WANTED
from candlecalc.workbook.tabs.registry import Room, register
from candlecalc.workbook.tabs.working.evenings_by_day import EVENINGS_BY, FIRST_DAY, day_of, up_to
from candlecalc.workbook.tabs.working.from_logs import LINE
from candlecalc.workbook.tabs.working.wanted import at_home, to_make, wanted_by

KEY = "plan_lines"
ROOM_FOR_SETS = 1.5  # lines there is room for, for each line of Demand
THERE = ("source",)


def _of_line(key: str) -> Expression:
    return at(WANTED, key, "source")


SOURCE = written(
    'IF({line}>{all},"",MATCH({line}-1,{starts},1)+1)', line=LINE, all=Named("lines_of_plan"), starts=Results(WANTED, "start")
)  # fmt: skip
NTH = written("({line}-{start})", line=LINE, start=_of_line("start"))
SET_LINE = written(
    'IF({holds}=0,0,MATCH({set}&" "&{nth},{keys},0))',
    holds=_of_line("holds"),
    set=_of_line("recipe"),
    nth=NTH,
    keys=Whole("sets", "key"),
)
THING = written(
    "IF({set_line}=0,{own},{candle})", set_line="set_line", own=_of_line("product_row"), candle=at("sets", "product_row", "set_line")
)  # fmt: skip
PIECES = written(
    'IF({source}="",0,IF({set_line}=0,{own},{pack}*{each}))',
    source="source",
    set_line="set_line",
    own=_of_line("pieces_due"),
    pack=_of_line("pack"),
    each=at("sets", "count", "set_line"),
)
DUE = written("MAX({day},{today})", day=_of_line("day"), today=FIRST_DAY)
NUMBER = written(
    'IF({source}="",0,{thing}*{key_thing}+{due}*{key_day}+{row})',
    source="source",
    thing="thing",
    due="due",
    row=OWN_ROW,
    key_thing=KEY_THING,
    key_day=KEY_DAY,
)
# Back from the day of sale: so many working days before it; before the plan begins where there are not so many.
DAYS_BEFORE = written('IF({days}="",{usual},{days})', days=_of_line("finishing"), usual=written(str(FINISHING_DAYS)))
BACK = written("{evenings}-{days}+1", evenings=up_to(EVENINGS_BY, written("({due}-1)", due="due")), days=DAYS_BEFORE)
CURED_BY = written(
    "IF({days}=0,{due},IF({back}<1,{today}-1,{day}))",
    days=DAYS_BEFORE,
    due="due",
    back=BACK,
    day=day_of(EVENINGS_BY, written("({back})", back=BACK)),
    today=FIRST_DAY,
)
CURING = written(
    'SUMIFS({good},{things},{thing},{ready},">"&{cured})',
    good=Whole("pours", "good"),
    things=Whole("pours", "product_row"),
    thing="thing",
    ready=Whole("pours", "ready_on"),
    cured="cured_by",
)
BUFFER = written("IF({set_line}=0,SUM({buffer}),0)", set_line="set_line", buffer=_of_line("buffer"))
NEED = written(
    'IF({source}="",0,{wanted}+{buffer}-MAX(0,{home}-{curing}))',
    source="source",
    wanted=wanted_by(KEY, "pieces", "thing"),
    buffer=BUFFER,
    home=at_home("thing"),
    curing=CURING,
)
# Over a month it sells day by day; what goes into a set goes at once.
UNTIL = written("IF({set_line}=0,{until},{due}+1)", set_line="set_line", until=_of_line("until"), due="due")
NOTHING = written("SUM({make})=0", make="make")
POT, EACH = Named("largest_pot"), at("amounts", "melt", "recipe")


def _rows(rows_of: Mapping[str, int]) -> int:
    return int(rows_of[DEMAND.key] * ROOM_FOR_SETS)


TAB = lines_tab(
    "Plan lines",
    "working",
    "What each line of Demand takes of candles, a set by its candles, and what is to be made for it.",
    KEY,
    DEMAND,
    {
        "source": look("Row on Demand", SOURCE, "row", needs=(), width=8),
        "set_line": look("Row on Sets", SET_LINE, "row", needs=THERE, width=7),
        "thing": look("Product's first row", THING, "row", needs=THERE, width=8),
        "pieces": look("Wanted", PIECES, "row", needs=(), width=8),
        "due": look("Needed by", DUE, "date", needs=THERE),
        "until": look("Gone before", UNTIL, "date", needs=THERE),
        "a_day": look("Wanted a day", written("{pieces}/({until}-{due})", pieces="pieces", until="until", due="due"), "quantity", needs=THERE),
        "number": look("Line's number", NUMBER, "row", needs=(), width=16),
        "cured_by": look("Cured by", CURED_BY, "date", needs=THERE),
        "need": look("Needed up to here", NEED, "row", needs=(), width=8),
        "make": look("To make", to_make(KEY, "thing"), "pieces", needs=THERE),
        "recipe": look("Recipe that holds then, row", in_force("recipes_by_day", "thing", "due"), "row", needs=THERE, blank_if=(NOTHING,), width=8),
        "last": look("Last day to pour", written("{cured}-SUM({cure})", cured="cured_by", cure=at("workings", "cure", "recipe")), "date", needs=("recipe",)),
        "pots": result("Pots", "pots_for_candles", count="make", each=EACH, pot=POT, needs=("recipe",)),
        "order": look("By the last day, a number", written("{last}*{key}+{row}", last="last", key=KEY_DAY, row=OWN_ROW), "row", needs=("recipe",), width=16),
    },
    _rows,
)  # fmt: skip

ROOM = Room("lines_for_plan", DEMAND.key)

register(TAB, __name__, 62, room=ROOM, records=True)
