"""The Batch tab: the bench card. Pick a product, say how many, and weights, pieces, costs and cautions follow."""

from candlecalc.workbook.tabs.batch import head, parts, work
from candlecalc.workbook.tabs.batch.card import (
    COSTS,
    COUNTING,
    DO,
    ENOUGH,
    LAST,
    PICK,
    POTS,
    SAID,
    SET_LINES,
    TAB,
    WEIGH,
    Card,
    typed,
)
from candlecalc.workbook.tabs.batch.head import COUNT, DATE, ENTRIES, NOTHING_PICKED, PRODUCT
from candlecalc.workbook.tabs.batch.work import CAUTIONS, COST
from candlecalc.workbook.writing.draft import Draft
from candlecalc.workbook.writing.printed import paper

__all__ = ["CAUTIONS", "COST", "COSTS", "COUNT", "COUNTING", "DATE", "DO", "ENOUGH", "ENTRIES", "LAST", "NOTHING_PICKED", "PICK",
           "POTS", "PRODUCT", "SAID", "SET_LINES", "TAB", "WEIGH", "typed", "write"]  # fmt: skip

# In all, what a page shows at 8 points; the blanks to write in are an inch wide on paper.
WIDTHS = {"A": 34, "B": 12, "C": 10.5, **dict.fromkeys("DEFGH", 8.5), "I": 17, "J": 17, "L": 24, "M": 9}


def write(draft: Draft) -> None:
    # Over and under an entry nothing may stand that rests on it: formulas reach it between those cells.
    sheet = draft.tab(TAB, portrait=True, master="I1")
    for letter, width in WIDTHS.items():
        sheet.column_dimensions[letter].width = width
    card = Card(draft, sheet)
    for section in (head, parts, work):
        section.write(card)
    sheet.print_area = f"A1:J{LAST}"
    paper(sheet, str(draft.season.settings["paper"]), portrait=True, tall=1)
