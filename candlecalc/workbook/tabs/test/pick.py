"""An entry that picks what a page is of: a name, its row where it stands, and what to do where it stands nowhere."""

from candlecalc.season.fields import Field
from candlecalc.workbook.cells.references import Named, Written, at, row_in, standing, written
from candlecalc.workbook.writing.draft import turns_red
from candlecalc.workbook.writing.page import Page
from candlecalc.workbook.writing.validation import add_validation

PICK = 3  # the row of the entry; over and under it nothing stands that rests on it
BESIDE = "LM"  # outside the page


def picked(page: Page, field: Field, first: object, name: str) -> None:
    """Write the entry, beside it what to do, and outside the page the row that is meant, as a named cell.

    The row is blank where nothing is picked, 0 where there is no such name, or none of the kind.
    """
    page.put(f"A{PICK}", first, "big_entry")
    page.put(f"B{PICK}", f"\u25c4 pick a {field.head.lower()} here", "note")
    page.height(PICK, 28)
    add_validation(page.draft, page.sheet, field, f"A{PICK}")
    typed = Written(standing(f"A{PICK}", PICK - 1, PICK + 1, f"B{PICK}"))
    found = row_in(field.names_from, typed, ready=False)
    if field.kind:
        found = written(f'{{row}}*({{kind}}="{field.kind}")', row=found, kind=at(field.names_from, "kind", found))
    label, place = (f"{letter}{PICK}" for letter in BESIDE)
    page.put(label, f"Row of the {field.head.lower()}", "note")
    page.shows(place, written('IF(ISBLANK({typed}),"",IFERROR({found},0))', typed=typed, found=found), "note", "row")
    page.name(name, place)
    said = 'IF({row}="","Pick one",REPT("There is none of this name: pick another",{row}=0))'
    page.shows(f"D{PICK}", written(said, row=Named(name)), "note")
    turns_red(page.sheet, f"D{PICK}", f'$D${PICK}<>""')
