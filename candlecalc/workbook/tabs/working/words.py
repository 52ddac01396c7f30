"""The Words tab: what rows say, by the codes in their cells of tests."""

from collections.abc import Iterator, Mapping
from typing import NamedTuple

from candlecalc.season.tables import TABLES
from candlecalc.workbook.cells.layout import FIRST_ROW, Layout, Plan
from candlecalc.workbook.cells.table_tab import Tab, TableTab
from candlecalc.workbook.cells.words import KEY, Said, code
from candlecalc.workbook.tabs.registry import register, registered
from candlecalc.workbook.writing.draft import Draft, mark_up
from candlecalc.workbook.writing.listed import Listed
from candlecalc.workbook.writing.printed import print_list

TAB = Tab("Words", "working", "What rows say is to be done, by the codes that stand behind their results.")
WIDTHS = {"Code": 13, "Tab": 15, "Of": 35, "Entry": 8, "Words": 105}
PLACE = 4
LETTERS = {"code": "A", "place": "D", "words": "E"}


class Thing(NamedTuple):
    """Something that rows of a tab speak of."""

    tab: TableTab
    key: str
    said: Said


def things(tables: Mapping[str, object]) -> Iterator[Thing]:
    """All that rows speak of in a workbook with these tables, in the order of its tabs."""
    for each in registered(any(TABLES[key].records for key in tables if key in TABLES)):
        if isinstance(each.tab, TableTab) and each.tab.typed_on in tables:
            for key, said in each.tab.says.items():
                yield Thing(each.tab, key, said)


def numbers(tables: Mapping[str, object]) -> dict[tuple[str, str], int]:
    """The number of each thing."""
    return {(thing.tab.key, thing.key): number for number, thing in enumerate(things(tables), start=1)}


def layout(rows_of: Mapping[str, int]) -> Layout:
    lines = sum(thing.said.ways for thing in things(rows_of))
    return Layout(KEY, TAB.title, FIRST_ROW + lines - 1, LETTERS)


def write(draft: Draft) -> None:
    sheet = draft.tab(TAB)
    for number, (head, width) in enumerate(WIDTHS.items(), start=1):
        draft.put(sheet.cell(FIRST_ROW - 1, number), head, "head", "row" if number == PLACE else "text")
        sheet.column_dimensions[sheet.cell(FIRST_ROW - 1, number).column_letter].width = width
    last = draft.plan.layouts[KEY].last_row
    columns = {
        number: draft.down("", "label", "row" if number == PLACE else "text", values)
        for number, values in enumerate(zip(*_lines(draft.plan, draft.season.tables), strict=True), start=1)
    }
    draft.lists[TAB.title] = Listed(range(FIRST_ROW, last + 1), columns)
    mark_up(sheet, "Words_list", list(WIDTHS), last)
    sheet.freeze_panes = f"B{FIRST_ROW}"
    print_list(sheet, len(WIDTHS), last, to_read=False)


def _lines(plan: Plan, tables: Mapping[str, object]) -> Iterator[tuple[str, str, str, int | None, str]]:
    for tab, key, said in things(tables):
        for way, words in enumerate(said.words(plan)):
            yield code(plan, tab.key, key, way), tab.title, plan.head(said.of), said.place, words


register(TAB, __name__, 70, write=write, layout=layout)
