"""The Hazards tab: what the oil sheets bring to each candle, and whether its recipe has changed since.

Cells cannot work it out: it is written when the workbook is made, and looked up here by all that it rests on.
"""

from collections.abc import Iterable

from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.checks import ANYTHING, Rows, WorkbookCheck, words_in
from candlecalc.workbook.cells.columns import Column, look
from candlecalc.workbook.cells.layout import Plan
from candlecalc.workbook.cells.references import (
    Same,
    Whole,
    as_text,
    at,
    text,
    written,
)
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.label.oil_sheets import MAKE_IT_NEW
from candlecalc.workbook.tabs.registry import Shown, register
from candlecalc.workbook.tabs.working.hazards_found import KEEPS_TO, WORDS

FOUND = ("ready", "place")


def _found(key: str, head: str, width: float) -> Column:
    return look(head, as_text(at("hazards_found", key, "place")), "note", needs=FOUND, width=width)


HOLD_UP_TO = written('IFERROR({load}/({load}>0),"")', load=at("hazards_found", "keeps_to", "place"))
PLACE = written(
    'IFERROR(MATCH({state},{states},0),"")', state=Same("poured", "state"), states=Whole("hazards_found", "state")
)
TOLD = written(
    'IFERROR(REPT({changed},(N({lines})>0)*({place}=""))&REPT("Not counted: "&{lacking},{lacking}<>""),"")',
    changed=text(f"Recipe or sheets changed since: {MAKE_IT_NEW}"),
    lines=Same("poured", "lines"),
    place="place",
    lacking="not_counted",
)

TAB = result_tab(
    "Hazards",
    "output",
    "What the oil sheets bring to each candle by the rules of the EU. The supplier's own sheet and a competent person stand above it.",
    "hazards",
    RECIPES,
    {
        **{key: _found(key, *WORDS[key]) for key in ("classes", "signal", "pictograms", "statements", "names")},
        "load": look("Load, of wax", Same("workings", "load"), "percent", needs=FOUND),
        "keeps_to": look(KEEPS_TO, HOLD_UP_TO, "percent", needs=FOUND),
        **{key: _found(key, *WORDS[key]) for key in ("then", "precautions", "duties", "small", "unconfirmed", "not_counted")},
        "place": look("Row on Hazards found", PLACE, "row"),
    },
    status=TOLD,
    paper_to="not_counted",
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    layout = plan.layouts["hazards"]
    told = layout.results("status")
    yield WorkbookCheck(
        "Hazards are of today's recipes and sheets",
        TAB.title,
        words_in(told),
        "see the words left of the row's name",
        rows=Rows(told, ANYTHING, layout.first_row),
        unlikely=True,
    )


SHOWN = ("product", "classes", "signal", "pictograms", "statements", "names", "load", "keeps_to", "then")
register(TAB, __name__, 20, checks=checks, shown=Shown("hazards", SHOWN), records=True)
