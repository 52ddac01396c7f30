"""The Plan tab: what to pour for what is wanted, a line for each, by the day on which it has to be poured at the latest.

Pots are put on the latest evenings that have room, back from the last line: a line ends on its last day, or before the
next line begins. So no pot is poured earlier than it must be, and pots are late only where evenings are too few.
"""

from collections.abc import Iterable

from candlecalc.workbook.cells.checks import WorkbookCheck, of_rows, sums_agree
from candlecalc.workbook.cells.columns import look, result
from candlecalc.workbook.cells.layout import OWN_ROW, Plan
from candlecalc.workbook.cells.references import (
    Above,
    Expression,
    FromHere,
    as_text,
    at,
    in_order,
    line_of,
    written,
)
from candlecalc.workbook.cells.table_tab import STATUS, WIDTH_OF_STATUS, TableTab, own_row_column, words_column
from candlecalc.workbook.tabs.plan.demand import KEY as WANTED
from candlecalc.workbook.tabs.registry import Shown, register
from candlecalc.workbook.tabs.working.evenings_by_day import POTS_BY, day_of, up_to
from candlecalc.workbook.tabs.working.plan_lines import KEY as LINES
from candlecalc.workbook.tabs.working.plan_lines import TAB as PLAN_LINES

KEY = "plan"
THERE = ("number",)


def _of_line(key: str) -> Expression:
    return at(LINES, key, "line")


NO_EVENINGS = written("MAX({pots})=0", pots=POTS_BY)
# The first pot's place among all that can be poured, less one; below nothing where evenings are too few.
BEFORE = written("{pots_to}-{pots}+MIN({room})", pots_to="pots_to", pots="pots", room=FromHere("room"))
FIRST_POT = written("(MAX(0,{before})+1)", before="before")
LAST_POT = written("(MAX(0,{before})+{pots})", before="before", pots="pots")
LATE = written(
    'IF({number}="","",IFERROR(IF({none},"Type on Evenings when you pour",IF({before}>=0,"",'
    'MIN({pots},0-{before})&" of its pots come too late: add evenings, or make fewer")),""))',
    number="number",
    none=NO_EVENINGS,
    before="before",
    pots="pots",
)
WHAT_FOR = written(
    'IF({set_line}>0,{product},{place}&"")',
    set_line=_of_line("set_line"),
    product=at(WANTED, "product", _of_line("source")),
    place=at(WANTED, "place", _of_line("source")),
)
FOR_PAPER = {
    "product": look("Product", as_text(at("recipes", "product", "recipe")), width=30, needs=THERE),
    "make": look("Make", _of_line("make"), "pieces_strong", needs=THERE),
    "begin": look("Pour by", day_of(POTS_BY, FIRST_POT), "date", needs=THERE),
    "end": look("to", day_of(POTS_BY, LAST_POT), "date", needs=THERE),
    "ready_on": result("Ready on", "ready_on", poured="end", cure=written("SUM({cure})", cure=at("workings", "cure", "recipe")), needs=("number", "end"), format="date"),
    "due": look("Needed by", _of_line("due"), "date", needs=THERE),
    "pots": look("Pots", _of_line("pots"), "count", needs=THERE),
    "a_pot": result("Candles a pot", "candles_a_pot", count="make", pots="pots", needs=THERE),
    "melt": result("Wax and oil a pot, {weight}", "cost_of_all", cost=at("amounts", "melt", "recipe"), count="a_pot", needs=THERE, format="weight"),
    "what_for": look("For", WHAT_FOR, needs=THERE, width=30),
}  # fmt: skip
TAB = TableTab(
    "Plan",
    "output",
    "What to pour for what is wanted, on the latest evenings that have room for it: begin by the day under Pour by.",
    KEY,
    {
        STATUS: words_column("What to do", LATE, width=WIDTH_OF_STATUS),
        **FOR_PAPER,
        OWN_ROW: own_row_column(),
        "number": look("Line's number", in_order(LINES, "order"), "row", needs=(), width=16),
        "line": look("Row on Plan lines", line_of("number"), "row", needs=THERE, width=8),
        "thing": look("Product's first row", _of_line("thing"), "row", needs=THERE, width=8),
        "recipe": look("Recipe, row", _of_line("recipe"), "row", needs=THERE, width=8),
        "pots_to": look("Pots up to here", written("{above}+{pots}", above=Above("pots_to"), pots="pots"), "row", needs=THERE, width=8),
        "room": look("Pots there is room for, less these", written("{room}-{pots_to}", room=up_to(POTS_BY, _of_line("last")), pots_to="pots_to"), "row", needs=THERE, width=9),
        "before": look("Pots poured before", BEFORE, "row", needs=THERE, width=8),
    },
    goes_with=WANTED,
    counted=PLAN_LINES.counted,
    paper_to="what_for",
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    here, lines = plan.layouts[KEY], plan.layouts[LINES]
    yield sums_agree("Plan makes what its lines need", TAB.title, here.sum("make"), lines.sum("make"))
    name = "Evenings have room for what Plan makes"
    yield of_rows(name, TAB.title, here, STATUS, "see What to do on Plan", unlikely=True)


register(TAB, __name__, 50, checks=checks, shown=Shown(KEY, tuple(FOR_PAPER)), records=True)
