"""The Lists tab: the names that drop-downs offer."""

from collections.abc import Iterable, Mapping

from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.season.fields import Field
from candlecalc.season.tables import TABLES
from candlecalc.workbook.cells.layout import FIRST_ROW, HEAD_ROW, Layout
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.writing.draft import Draft, mark_up
from candlecalc.workbook.writing.printed import print_list
from candlecalc.workbook.writing.validation import list_key

TAB = Tab("Lists", "working", "Names that drop-downs offer, in the order you typed them.")


def lists(tables: Iterable[str]) -> dict[str, Field]:
    """Each list that a drop-down of these tables needs, with a field that uses it."""
    fields = [field for key in tables if key in TABLES for field in TABLES[key].fields if field.names_from]
    return {list_key(field): field for field in fields}


def layout(rows_of: Mapping[str, int]) -> Layout:
    letters = {key: chr(ord("A") + number) for number, key in enumerate(lists(rows_of))}
    return Layout(
        "lists", "Lists", FIRST_ROW + max(rows_of[field.names_from] for field in lists(rows_of).values()) - 1, letters
    )


def write(draft: Draft) -> None:
    """Names by kind, so that the drop-down for a wax offers waxes alone."""
    sheet = draft.tab(TAB)
    there = draft.plan.layouts["lists"]
    heads = []
    for number, (key, field) in enumerate(lists(draft.plan.layouts).items(), start=1):
        heads.append(head(field))
        draft.put(sheet.cell(FIRST_ROW - 1, number), heads[-1], "head", wrap=True)
        sheet.column_dimensions[there.letters[key]].width = 35
        _write_list(draft, sheet, number, field)
    mark_up(sheet, "Lists_list", heads, there.last_row)
    sheet.freeze_panes = f"B{FIRST_ROW}"
    print_list(sheet, len(there.letters), FIRST_ROW + 35, to_read=False)


def head(field: Field) -> str:
    """What a list holds: the things that a table is of, or those of a kind."""
    things = f"{TABLES[field.names_from].fields[0].head}s"
    return f"{things}: {field.kind}" if field.kind else things


def _write_list(draft: Draft, sheet: Worksheet, number: int, field: Field) -> None:
    there = draft.plan.layouts[field.names_from]
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


register(TAB, __name__, 60, write=write, layout=layout)
