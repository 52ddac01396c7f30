"""The Import columns tab: our columns that those of a file can go into, and what each takes."""

from collections.abc import Mapping

from candlecalc.season.tables.imports import INTO, Into
from candlecalc.workbook.cells.entries import allowed
from candlecalc.workbook.cells.layout import FIRST_ROW, HEAD_ROW, Layout
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.writing.draft import Draft, mark_up
from candlecalc.workbook.writing.printed import print_list

TAB = Tab("Import columns", "output", "Our columns that those of a file can go into, and what each takes.")
HEADS = {
    "into": ("Goes into", 31.0),
    "needed": ("Needed", 10.0),
    "takes": ("Takes", 44.0),
    "help": ("What it is", 88.0),
}
WRAPPED = {"C": 46, "D": 92}  # how many letters a line of these columns holds
LETTERS = dict(zip(HEADS, "ABCD", strict=True))
LAST = FIRST_ROW + len(INTO) - 1


def layout(rows_of: Mapping[str, int]) -> Layout:
    return Layout("import_columns", TAB.title, LAST, LETTERS)


def write(draft: Draft) -> None:
    sheet = draft.tab(TAB)
    heads = [head for head, _ in HEADS.values()]
    for letter, (head, width) in zip(LETTERS.values(), HEADS.values(), strict=True):
        draft.put(sheet[f"{letter}{HEAD_ROW}"], head, "head")
        sheet.column_dimensions[letter].width = width
    for row, into in enumerate(INTO.values(), start=FIRST_ROW):
        told = dict(zip(LETTERS.values(), _told(draft, into), strict=True))
        for letter, words in told.items():
            draft.put(sheet[f"{letter}{row}"], words, "strong" if letter == "A" else "label", wrap=letter in WRAPPED)
        sheet.row_dimensions[row].height = 4 + 15 * max(1 + len(told[each]) // room for each, room in WRAPPED.items())
    mark_up(sheet, "Import_columns_list", heads, LAST)
    sheet.freeze_panes = f"B{FIRST_ROW}"
    print_list(sheet, len(HEADS), LAST)


def _told(draft: Draft, into: Into) -> tuple[str, str, str, str]:
    field = into.field
    needed = "yes" if field.required else "at times" if field.needed_when[0] else ""
    return into.name, needed, allowed(draft.plan, field), draft.plan.head(field.help)


register(TAB, __name__, 90, write=write, layout=layout, records=True)
