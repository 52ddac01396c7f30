"""The Chart tab: our own accounts, and what stands on each."""

from collections.abc import Mapping

from candlecalc.season.chart import CHART
from candlecalc.workbook.cells.layout import FIRST_ROW, HEAD_ROW, Layout
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.writing.draft import Draft, mark_up
from candlecalc.workbook.writing.printed import print_list

TAB = Tab("Chart", "output", "The accounts that your books use. Your bookkeeper's numbers for them go on Accounts.")
COLUMNS = {"account": ("Account", 32.0), "number": ("Our number", 12.0), "kind": ("Kind", 12.0), "for": ("What stands on it", 80.0)}  # fmt: skip
LETTERS = dict(zip(COLUMNS, "ABCD", strict=True))
LAST_ROW = FIRST_ROW + len(CHART) - 1


def layout(rows_of: Mapping[str, int]) -> Layout:
    return Layout("chart", TAB.title, LAST_ROW, LETTERS)


def write(draft: Draft) -> None:
    sheet = draft.tab(TAB)
    heads = [head for head, _ in COLUMNS.values()]
    for letter, (head, width) in zip(LETTERS.values(), COLUMNS.values(), strict=True):
        draft.put(sheet[f"{letter}{HEAD_ROW}"], head, "head")
        sheet.column_dimensions[letter].width = width
    for row, account in enumerate(CHART, start=FIRST_ROW):
        for letter, words in zip("ABCD", (account.name, account.code, account.kind, account.purpose), strict=True):
            draft.put(sheet[f"{letter}{row}"], words, "strong" if letter == "A" else "label")
        sheet.row_dimensions[row].height = 18
    mark_up(sheet, "Chart_list", heads, LAST_ROW)
    sheet.freeze_panes = f"B{FIRST_ROW}"
    print_list(sheet, len(COLUMNS), LAST_ROW)


register(TAB, __name__, 40, write=write, layout=layout, records=True)
