"""The Poured tab: the oils and the dye of each recipe, with the lines of their sheets: what Hazards rests on."""

from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.columns import Column, look
from candlecalc.workbook.cells.references import Carry, Expression, Named, Same, Whole, as_text, joined, written
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import register

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


PARTS = {
    **{f"state_{nth}": _part(f"Oil {at}, as it rests on it", name, row, _of_oil(share)) for at, (nth, (name, row, share)) in enumerate(OILS.items(), start=1)},
    "state_dye": _part("Dye, as it rests on it", "dye", "dye_row", written("N({share})", share=Same("workings", "share_dye"))),
}  # fmt: skip

TAB = result_tab(
    "Poured",
    "working",
    "The oils and the dye of each recipe, in billionths of the wax, with how many lines their sheets have, and which.",
    "poured",
    RECIPES,
    {
        **PARTS,
        "state": look("What Hazards rests on", joined("&", [as_text(key) for key in PARTS]), width=60),
        "lines": look("Lines on Oil sheets", _lines_of(*(row for _, row, _ in OILS.values()), "dye_row"), "row"),
    },
)
register(TAB, __name__, 50, records=True)
