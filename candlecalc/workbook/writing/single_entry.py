"""An entry that is typed once, on a tab that is no list: its label, what to mend, and the value formulas use."""

from dataclasses import dataclass

from openpyxl.utils import absolute_coordinate
from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.season.fields import Field
from candlecalc.workbook.cells.entries import allowed, bad, entry_format
from candlecalc.workbook.cells.references import standing
from candlecalc.workbook.writing.draft import Draft, Formula, turns_red
from candlecalc.workbook.writing.validation import add_validation


@dataclass(frozen=True)
class SingleEntry:
    """The cells of such an entry, and the rows of locked cells over and under it in its column."""

    label: str
    entry: str
    mend: str
    used: str
    over: int
    under: int

    @property
    def typed(self) -> str:
        """The entry as formulas reach it."""
        return standing(self.entry, self.over, self.under, self.label)


def write_entry(draft: Draft, sheet: Worksheet, field: Field, line: SingleEntry, *, over_a_list: bool = False) -> None:
    """Write the entry and what goes with it. Over a list, words stand to the right and the value says what it is."""
    shown, side = entry_format(field), "row" if over_a_list else "text"
    draft.put(sheet[line.label], draft.plan.head(field.head), "label", side)
    draft.put(sheet[line.entry], draft.season.settings.get(field.key), "entry", shown)
    test = bad(field, {field.key: line.typed}, draft.plan)
    takes = allowed(draft.plan, field).replace('"', "'")
    mend = Formula(f'=REPT("Takes {takes}",{test})')
    draft.put(sheet[line.mend], mend, "label" if over_a_list else "note", side)
    for cell in (line.entry, line.mend):
        turns_red(sheet, cell, f'{absolute_coordinate(line.mend)}<>""')
    add_validation(draft, sheet, field, line.entry)
    if field.any_text:  # no formula asks for it
        return
    used = f'=CHOOSE(1+({line.typed}="")+2*({line.mend}<>""),{line.typed},"",NA(),NA())'
    draft.put(sheet[line.used], Formula(used), *(("label", f"used_{shown}") if over_a_list else ("result", shown)))
