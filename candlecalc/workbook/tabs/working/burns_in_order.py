"""The Burns in order tab: the burns of each test by date, with hours and weights as one run.

The first weighing of a test stands beside its first burn, so that two columns side by side hold the whole log: a
line is drawn through both. Weights go on from one burn to the next by what each took, whatever was trimmed between.
"""

from candlecalc.season.tables.burning import BURNS
from candlecalc.workbook.cells.columns import Column, look
from candlecalc.workbook.cells.references import (
    KEY_THING,
    Above,
    Expression,
    Results,
    at,
    blank,
    constant,
    in_order,
    line_of,
    step_by_step,
    written,
)
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register

NUMBER = ("number",)
NONE_LEFT = blank("number")


def _typed(key: str) -> Expression:
    return at("burn_cycles", key, line_of("number"))


GOES_ON = written("INT({number}/{key})=INT({above}/{key})", number="number", above=Above("number"), key=KEY_THING)
HOURS = written(
    'ROUND(IF({start}="",{above},0)+{hours},9)', start="start_hours", above=Above("hours"), hours=_typed("hours")
)
WEIGHT = written(
    'ROUND(IF({start}="",{above},{start})-({before}-{after}),9)',
    start="start_weight",
    above=Above("weight"),
    before=_typed("before"),
    after=_typed("after"),
)


def _seen(head: str, key: str, shown: str) -> Column:
    return look(head, step_by_step([NONE_LEFT, blank(_typed(key))], _typed(key)), shown, needs=())


def _sign(head: str, key: str) -> Column:
    place = written("MATCH({sign},{signs},0)", sign=_typed(key), signs=Results("signs", "sign"))
    return look(head, step_by_step([NONE_LEFT, blank(_typed(key))], place), "row", needs=())


TAB = lines_tab(
    "Burns in order",
    "working",
    "The burns of each test by date, with hours and weights as one run.",
    "burns",
    BURNS,
    {
        "number": look("Line's number", in_order("burn_cycles", "number"), "row", needs=(), width=16),
        "start_hours": look("Hours at the start", step_by_step([NONE_LEFT, GOES_ON], constant(0)), "count", needs=()),
        "hours": look("Hours to date", HOURS, "count", needs=NUMBER),
        "start_weight": look("First weight, {weight}", step_by_step([blank("start_hours")], _typed("before")), "fine_weight", needs=()),
        "weight": look("Weight, {weight}", WEIGHT, "fine_weight", needs=NUMBER),
        "pool": _seen("Melt pool, {length}", "pool", "length"),
        "flame": _seen("Flame, {length}", "flame", "length"),
        "hot": _seen("Vessel, {temperature}", "hot", "temperature"),
        "sign": _sign("Sign, place", "seen"),
        "sign_too": _sign("Second sign, place", "seen_too"),
    },
)  # fmt: skip

register(TAB, __name__, 47, records=True)
