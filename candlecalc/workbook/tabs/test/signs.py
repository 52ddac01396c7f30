"""The Signs tab: what may be seen on a burn, which way the next test goes, and what to do."""

from collections.abc import Mapping

from candlecalc.calc.burn_signs import MEANING, STOP
from candlecalc.workbook.cells.layout import FIRST_ROW, HEAD_ROW, Layout
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.writing.draft import Draft, mark_up
from candlecalc.workbook.writing.printed import print_list

TAB = Tab("Signs", "output", "What may be seen on a burn, and which way the next test goes; what stops a burn first.")
COLUMNS = {"sign": ("Seen", 40.0), "direction": ("Next", 30.0), "to_do": ("What to do", 105.0)}
LETTERS = dict(zip(COLUMNS, "ABC", strict=True))
STOPS = [sign for sign, (direction, _) in MEANING.items() if direction == STOP]  # the first of the list


def layout(rows_of: Mapping[str, int]) -> Layout:
    return Layout("signs", TAB.title, FIRST_ROW + len(MEANING) - 1, LETTERS)


def write(draft: Draft) -> None:
    sheet = draft.tab(TAB)
    heads = [head for head, _ in COLUMNS.values()]
    for letter, (head, width) in zip(LETTERS.values(), COLUMNS.values(), strict=True):
        draft.put(sheet[f"{letter}{HEAD_ROW}"], head, "head")
        sheet.column_dimensions[letter].width = width
    for row, (sign, meaning) in enumerate(MEANING.items(), start=FIRST_ROW):
        for letter, words in zip(LETTERS.values(), (sign, *meaning), strict=True):
            draft.put(sheet[f"{letter}{row}"], words, "strong" if letter == "A" else "label", wrap=letter == "C")
        sheet.row_dimensions[row].height = 32 if len(meaning[1]) > 105 else 18
    mark_up(sheet, "Signs_list", heads, FIRST_ROW + len(MEANING) - 1)
    sheet.freeze_panes = f"B{FIRST_ROW}"
    print_list(sheet, len(COLUMNS), FIRST_ROW + len(MEANING) - 1)


register(TAB, __name__, 30, write=write, layout=layout, records=True)
