"""The Units and Lists tabs: units of packs, and the names that drop-downs offer."""

from collections.abc import Mapping

from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.quantities.units import GRAMS
from candlecalc.season.fields import Field
from candlecalc.season.tables import TABLES, UNITS
from candlecalc.workbook.cells.place import FIRST_ROW, HEAD_ROW, Place
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.writing.draft import Draft, Formula, mark_up
from candlecalc.workbook.writing.printed import print_list
from candlecalc.workbook.writing.validation import list_key

UNITS_TAB = Tab("Units", "working", "Units that packs are bought in, and how each comes into recipes.")
LISTS_TAB = Tab("Lists", "working", "Names that drop-downs offer, in the order you typed them.")
HEADS = {"materials": "Materials", "recipes": "Products", "vessels": "Vessels", "places": "Places"}


def units_place() -> Place:
    return Place("units", "Units", FIRST_ROW + len(UNITS) - 1, {"unit": "A", "grams": "B", "factor": "C"}, "unit")


def lists() -> dict[str, Field]:
    """Each list that a drop-down needs, with a field that uses it."""
    fields = [field for table in TABLES.values() for field in table.fields if field.of]
    return {list_key(field): field for field in fields}


def lists_place(rooms: Mapping[str, int]) -> Place:
    letters = {key: chr(ord("A") + number) for number, key in enumerate(lists())}
    return Place("lists", "Lists", FIRST_ROW + max(rooms[field.of] for field in lists().values()) - 1, letters)


def write_units(draft: Draft) -> None:
    sheet = draft.tab(UNITS_TAB, portrait=True)
    heads = ["Unit", "Grams in one", draft.plan.head("In one, {weight} or each")]
    for number, head in enumerate(heads, start=1):
        draft.put(sheet.cell(FIRST_ROW - 1, number), head, "head", "text" if number == 1 else "row", wrap=True)
    for row, unit in enumerate(UNITS, start=FIRST_ROW):
        draft.put(sheet.cell(row, 1), unit, "label")
        draft.put(sheet.cell(row, 2), GRAMS.get(unit), "result", "factor")
        # A formula, since a saved constant keeps fifteen digits only.
        draft.put(sheet.cell(row, 3), Formula(f'=IF(B{row}="",1,B{row}/weight_g)'), "result", "factor")
    for letter, width in zip("ABC", (35, 16, 18), strict=True):
        sheet.column_dimensions[letter].width = width
    mark_up(sheet, "Units_list", heads, FIRST_ROW + len(UNITS) - 1)
    sheet.print_area = f"A1:H{FIRST_ROW + len(UNITS) - 1}"
    sheet.freeze_panes = f"B{FIRST_ROW}"


def write_lists(draft: Draft) -> None:
    """Names by kind, so that the drop-down for a wax offers waxes alone."""
    sheet = draft.tab(LISTS_TAB)
    place = draft.plan.places["lists"]
    heads = []
    for number, (key, field) in enumerate(lists().items(), start=1):
        heads.append(f"{HEADS[field.of]}: {field.kind}" if field.kind else HEADS[field.of])
        draft.put(sheet.cell(FIRST_ROW - 1, number), heads[-1], "head", wrap=True)
        sheet.column_dimensions[place.letters[key]].width = 35
        _write_list(draft, sheet, number, field)
    mark_up(sheet, "Lists_list", heads, place.last_row)
    sheet.freeze_panes = f"B{FIRST_ROW}"
    print_list(sheet, len(place.letters), FIRST_ROW + 35)


def _write_list(draft: Draft, sheet: Worksheet, number: int, field: Field) -> None:
    there = draft.plan.places[field.of]
    name = there.names
    style = draft.style("result")
    for step in range(there.rows):
        cell = sheet.cell(FIRST_ROW + step, number)
        cell.style = style
        # Counted from over the head to the row above: a cell that counts itself reads as circular.
        nth = f"ROWS($A${HEAD_ROW - 1}:$A{FIRST_ROW + step - 1})"
        if field.kind:
            # The nth of its kind: its row is found by the running number beside the entries.
            wanted = f'"{field.kind} "&{nth}-1'
            cell.value = f'=IFERROR(INDEX({there.range(name)},MATCH({wanted},{there.range("of_kind")},0)),"")'
        else:
            cell.value = f'=INDEX({there.range(name)},{nth})&""'
