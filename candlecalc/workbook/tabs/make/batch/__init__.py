"""The Batch tab: the bench card. Pick a product, say how many, and weights, pieces, costs and cautions follow."""

from collections.abc import Iterable

from candlecalc.workbook.cells.checks import WorkbookCheck, sums_agree
from candlecalc.workbook.cells.layout import Plan
from candlecalc.workbook.tabs.make.batch import head, parts, work
from candlecalc.workbook.tabs.make.batch.card import (
    CANDLE_LINES,
    COLUMNS,
    COSTS,
    COUNTING,
    DO,
    ENOUGH,
    EXTRA_LINES,
    FOOT,
    LAST,
    PICK,
    POTS,
    SAID,
    STEPS,
    TAB,
    WEIGH,
    Card,
    typed,
)
from candlecalc.workbook.tabs.make.batch.head import COUNT, DATE, ENTRIES, NOTHING_PICKED, PRODUCT
from candlecalc.workbook.tabs.make.batch.work import CAUTIONS, COST
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.made_of import WEIGHED
from candlecalc.workbook.writing.draft import Draft
from candlecalc.workbook.writing.printed import paper

__all__ = ["CANDLE_LINES", "CAUTIONS", "COST", "COSTS", "COUNT", "COUNTING", "DATE", "DO", "ENOUGH", "ENTRIES", "EXTRA_LINES", "LAST", "NOTHING_PICKED", "PICK",
           "POTS", "PRODUCT", "SAID", "STEPS", "TAB", "WEIGH", "typed", "write"]  # fmt: skip

# In all, what a page shows at 8 points; the blanks to write in are an inch wide on paper.
WIDTHS = {
    "A": 32,
    "B": 12,
    "C": 10.5,
    "D": 10,
    "E": 10,
    **dict.fromkeys("FGH", 8.5),
    "I": 16.5,
    "J": 16.5,
    "L": 24,
    "M": 9,
}


ROUNDING = 0.000001  # what is left of a sum in binary numbers


def write(draft: Draft) -> None:
    # Over and under an entry nothing may stand that rests on it: formulas reach it between those cells.
    sheet = draft.tab(TAB, portrait=True, master="I1")
    for letter, width in WIDTHS.items():
        sheet.column_dimensions[letter].width = width
    card = Card(draft, TAB, sheet, COLUMNS)
    for section in (head, parts, work):
        section.write(card)
    sheet.print_area = f"A1:J{FOOT}"
    paper(sheet, str(draft.season.settings["paper"]), portrait=True, tall=1)


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    """What the card adds up to."""
    title, first, last = TAB.title, WEIGH + 1, WEIGH + len(WEIGHED)

    def column(letter: str) -> str:
        return f"{title}!${letter}${first}:${letter}${last}"

    # Of a set its candles stand there.
    weighed, half_steps = f"IF(batch_packed=1,0,SUM({column('B')}))", f"{len(WEIGHED)}*N(scale_step)/2"
    dye = f"IF(batch_packed=1,0,N({title}!$B${last}))"
    jugs = f"MAX({column('E')})*N(batch_fuller_pots)+MAX({column('G')})*N(batch_fewer_pots)"
    a_piece, of_all = (f"N({title}!${letter}${LAST})" for letter in "BC")
    rounded = sum(not cost.function for cost in COST) * 10**-plan.coin_digits / 2 + ROUNDING
    product, count = (typed(letter, title) for letter in list(ENTRIES)[:2])
    unused = f'IF({title}!$B${ENOUGH}="",0,IF(ISBLANK({product})*ISBLANK({count}),0,1))'
    yield sums_agree(
        "Batch: weights make up the melt",
        title,
        f"{weighed}-{dye}",
        "N(batch_melt)",
        f"{half_steps}*N(batch_pots)+{ROUNDING:f}",
    )
    yield sums_agree("Batch: the jugs hold what is weighed", title, jugs, weighed, ROUNDING)
    name = "Batch: its money is that of its pieces, but for rounding"
    yield sums_agree(name, title, of_all, f"{a_piece}*N(batch_makes)", rounded)
    name = "Batch: the largest pot holds one of them at least"
    mend = "see Largest pot on Settings"
    yield WorkbookCheck(name, title, "IF(ISNUMBER(batch_melt)*ISERROR(batch_pots),1,0)", mend, rested_on=True)
    name = "Batch: product and number can be used"
    yield WorkbookCheck(name, title, unused, "pick a product and type a whole number")


register(TAB, __name__, 20, write=write, checks=checks)
