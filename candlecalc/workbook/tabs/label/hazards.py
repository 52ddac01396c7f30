"""The Hazards tab: what the oil sheets bring to each candle, and whether its recipe has changed since.

Cells cannot work it out: it is written when the workbook is made, and looked up here by all that it rests on.
"""

from collections.abc import Iterable

from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.checks import Rows, WorkbookCheck, words_in
from candlecalc.workbook.cells.columns import Column, look
from candlecalc.workbook.cells.layout import Plan
from candlecalc.workbook.cells.references import (
    Carry,
    Expression,
    Named,
    Same,
    Whole,
    as_text,
    at,
    joined,
    text,
    written,
)
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.label.oil_sheets import MAKE_IT_NEW
from candlecalc.workbook.tabs.registry import Shown, register
from candlecalc.workbook.tabs.working.hazards_found import KEEPS_TO, WORDS

FOUND = ("ready", "place")
# Each oil, and the dye: its name, the row of its material, and its part of the wax.
OILS = {nth: (f"oil_{nth}", f"oil_{nth}_row", f"share_{nth}") for nth in ("first", "second", "third")}


def _part(head: str, name: str, row: str, load: Expression) -> Column:
    """An oil or a dye as the hazards rest on it: its name, its load, how many lines its sheet has, and which."""
    there = Same("workings", row)
    lines = written("COUNTIFS({rows},{row})", rows=Whole("oil_sheets", "material_row"), row=there)
    which = written(
        "SUMIFS({places},{rows},{row})",
        places=Whole("oil_sheets", "place"),
        rows=Whole("oil_sheets", "material_row"),
        row=there,
    )
    told = joined(
        '&" "&',
        [
            Carry("recipes", name),
            written("ROUND({load}*{parts},0)", load=load, parts=Named("load_parts")),
            lines,
            which,
        ],
    )
    return look(head, written('{told}&"; "', told=told), needs=("ready", there), width=30)


def _of_oil(share: str) -> Expression:
    return written("N({load})*N({share})", load=Same("workings", "load"), share=Same("workings", share))


def _lines_of(*rows: str) -> Expression:
    counts = [
        written("COUNTIFS({rows},N({row}))", rows=Whole("oil_sheets", "material_row"), row=Same("workings", row))
        for row in rows
    ]
    return joined("+", counts)


def _found(key: str, head: str, width: float) -> Column:
    return look(head, as_text(at("hazards_found", key, "place")), "note", needs=FOUND, width=width)


PARTS = {
    **{f"state_{nth}": _part(f"Oil {at}, as it rests on it", name, row, _of_oil(share)) for at, (nth, (name, row, share)) in enumerate(OILS.items(), start=1)},
    "state_dye": _part("Dye, as it rests on it", "dye", "dye_row", written("N({share})", share=Same("workings", "share_dye"))),
}  # fmt: skip
HOLD_UP_TO = written('IFERROR({load}/({load}>0),"")', load=at("hazards_found", "keeps_to", "place"))
PLACE = written('IFERROR(MATCH({state},{states},0),"")', state="state", states=Whole("hazards_found", "state"))
TOLD = written(
    'IFERROR(REPT({changed},(N({lines})>0)*({place}=""))&REPT("Not counted: "&{lacking},{lacking}<>""),"")',
    changed=text(f"Recipe or sheets changed since: {MAKE_IT_NEW}"),
    lines="lines",
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
        "lines": look("Lines on Oil sheets", _lines_of(*(row for _, row, _ in OILS.values()), "dye_row"), "row"),
        "place": look("Row on Hazards found", PLACE, "row"),
        "state": look("What it rests on", joined("&", [as_text(key) for key in PARTS]), width=60),
        **PARTS,
    },
    status=TOLD,
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    layout = plan.layouts["hazards"]
    told = layout.results("status")
    yield WorkbookCheck(
        "Hazards are of today's recipes and sheets",
        TAB.title,
        words_in(told),
        "see the words left of the row's name",
        rows=Rows(told, layout.first_row),
        unlikely=True,
    )


SHOWN = ("product", "classes", "signal", "pictograms", "statements", "names", "load", "keeps_to", "then")
register(TAB, __name__, 20, checks=checks, shown=Shown("hazards", SHOWN), records=True)
