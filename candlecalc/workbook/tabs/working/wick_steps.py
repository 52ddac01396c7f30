"""The Wick steps tab: what the tests say of each wick in the recipe that Wick summary is set to.

`next_wick` branches over the wicks by size. Here is what it asks of each; the branches stand on Wick summary, and
tests/workbook/test_next_wick.py compares them over all of them.
"""

from candlecalc.calc.terms.burn import FINDINGS
from candlecalc.season.tables.burning import WICKS
from candlecalc.workbook.cells.columns import Column, look
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import Carry, Expression, Named, Results, joined, quoted, row_in, written
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.burn_workings import KEY as TESTS

KEY = "wick_steps"
# The recipe that is looked at: named cells of Wick summary.
RECIPE = {key: Named(f"summary_{key}") for key in ("vessel_row", "wax_row", "load", "wicks")}
KIND = Named("summary_kind")
TOO_COOL, WITHIN, TOO_HOT = FINDINGS


def of_recipe(**more: Expression) -> Expression:
    """The rows of tests of the recipe, as a criterion by number: in its wax, load and vessel, with as many wicks."""
    given = {**RECIPE, **more}
    return joined(",", [part for key, value in given.items() for part in (Results(TESTS, key), value)])


HERE = written("{row}", row="material_row")


def _tests(key: str = "", criterion: str = "") -> Expression:
    more = f",{{of}},{criterion}" if key else ""
    of = {"of": Results(TESTS, key)} if key else {}
    return written(f"COUNTIFS({{recipe}}{more})", recipe=of_recipe(wick_row=HERE), **of)


def _count(head: str, key: str, criterion: str) -> Column:
    """How many tests of the wick in the recipe came out so; 0 where there is no wick, for looks through all rows."""
    return look(head, written('IF({ready}="",0,{count})', ready="ready", count=_tests(key, criterion)), "row", needs=())


def _mean(head: str, key: str, shown: str) -> Column:
    measured = _tests(key, '">="&0')
    mean = written(
        "SUMIFS({of},{recipe})/{count}", of=Results(TESTS, key), recipe=of_recipe(wick_row=HERE), count=measured
    )
    return look(head, mean, shown, blank_if=(written("{count}=0", count=measured),))


IN_KIND = written('IF({ready}="",0,({kind}={wanted})*{place})', ready="ready", kind=Carry("wicks", "kind"), wanted=KIND, place=Carry("wicks", "place"))  # fmt: skip
# Fewest stopped, then most that meet the targets, then as they stand on Wicks.
SCORE = written(
    "ROUND(({stopped}*100-{met}*10)/{tests},6)+{row}/10000", stopped="stopped", met="met", tests="tests", row=OWN_ROW
)

TAB = result_tab(
    "Wick steps",
    "working",
    "What the tests say of each wick in the recipe that Wick summary is set to.",
    KEY,
    WICKS,
    {
        "material_row": look("Wick, row", row_in("materials", Carry("wicks", "wick"), ready=False), "row"),
        "place": look("Place in the kind asked for", IN_KIND, "row", needs=()),
        "cool": _count("Too cool", "finding", quoted(TOO_COOL)),
        "within": _count("Within targets", "finding", quoted(WITHIN)),
        "hot": _count("Too hot", "finding", quoted(TOO_HOT)),
        "tests": _count("Tests burnt", "code", '">="&1'),
        "stopped": _count("Stopped", "code", "1"),
        "unjudged": _count("Not judged", "code", "2"),
        "missed": _count("Miss a target", "code", "3"),
        "met": _count("Meet the targets", "code", "4"),
        "rate": _mean("Burn rate, mean, {weight} an hour", "rate", "fine_weight"),
        "flame": _mean("Tallest flame, mean, {length}", "flame", "length"),
        "pool": _mean("Widest pool, mean, {length}", "pool", "length"),
        "hot_at": _mean("Hottest vessel, mean, {temperature}", "hot", "temperature"),
        "score": look("Order, best first", SCORE, "factor", blank_if=(written("{tests}=0", tests="tests"),)),
        "only_within": look("Within targets alone, place", written("{place}*({within}>0)*({cool}+{hot}=0)", place="place", within="within", cool="cool", hot="hot"), "row", needs=()),
    },
)  # fmt: skip

register(TAB, __name__, 49, records=True)
