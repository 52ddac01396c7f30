"""The Pour day tab: one evening at one melter on one page, and what is short over all of its products."""

from collections.abc import Iterable

from candlecalc.season.tables.burning import POUR_DAY
from candlecalc.workbook.cells.checks import WorkbookCheck, sums_agree
from candlecalc.workbook.cells.layout import FIRST_ROW, HEAD_ROW, Plan
from candlecalc.workbook.cells.references import Expression, Results, Written, at, blank, written
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.make.batch.work import CAUTIONS
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.made_of import PARTS
from candlecalc.workbook.tabs.working.pour_day_steps import KEY as STEPS
from candlecalc.workbook.writing.draft import Draft
from candlecalc.workbook.writing.page import Page, cell
from candlecalc.workbook.writing.printed import paper

TAB = Tab(
    "Pour day", "output", "One evening at one melter, in the order of Pour list: print it, pour, and write down when."
)
LIST, NEEDS = POUR_DAY.key, "pour_needs"
# What each line shows of its row on Pour list.
SHOWN = {
    "A": ("product", "Pour", "weigh_small", "text"),
    "B": ("count", "pieces", "weigh_small", "count"),
    "C": ("pots", "pots", "weigh_small", "count"),
    "D": ("pot", "each, {weight}", "weigh_small", "weight"),
    "E": ("begins", "melter on", "weigh_small", "clock"),
    "F": ("first_at", "first pot", "weigh", "clock"),
    "G": ("each", "then each", "weigh_small", "clock"),
    "H": ("last_at", "last pot", "weigh", "clock"),
    "I": ("latest", "latest", "weigh_small", "clock"),
}
WIDTHS = (34, 9, 9, 11, 12, 11, 11, 11, 10, 16, 16)
SHORT_LINES = 12
EVENING, FIRST_LINE = 3, 9
TOLD = (
    "Hours and minutes count from when you switch the melter on; it takes the next pot once one is melted.",
    "They are means of your own melts, the latest by your slowest. Weighing, pouring and cleaning come on top.",
    "Read each pot's thermometer before you pour: the data sheet of the wax decides, not the clock.",
)


def write(draft: Draft) -> None:
    page = Page(draft, TAB, draft.tab(TAB, portrait=False, master="J1"), "ABCDEFGHIJK")
    page.widths(WIDTHS)
    _evening(page)
    page.section(FIRST_LINE - 1, [*(head for _, head, *_ in SHOWN.values()), "began", "poured"])
    lines = draft.plan.layouts[LIST].rows
    for row in range(lines):
        _line(page, FIRST_LINE + row, FIRST_ROW - HEAD_ROW + 1 + row)
    row = _short(page, FIRST_LINE + lines + 1)
    page.sheet.print_area = f"A1:K{row}"
    paper(page.sheet, str(draft.season.settings["paper"]), portrait=False, tall=1)


def _line(page: Page, row: int, place: int) -> None:
    """A row of Pour list; nothing where nothing is typed there."""
    nothing = written('{product}=""', product=at(LIST, "product", Written(str(place))))
    for letter, (key, _, look, number) in SHOWN.items():
        value = at(LIST, key, Written(str(place)))
        page.shows(f"{letter}{row}", value, look, number, blank_if=[nothing])
    page.boxes(row, "JK")
    page.height(row, 24)


def _evening(page: Page) -> None:
    for row, words in enumerate(TOLD, start=EVENING):
        page.put(f"D{row}", words, "note")
    lines = (
        ("The last pot is poured at, h:mm", "MAX", "last_at", "clock"),
        ("at the latest, h:mm", "MAX", "latest", "clock"),
        ("Wax and oil in all, {weight}", "SUM", "melt", "weight"),
        ("Pots in all", "SUM", "pots", "count"),
    )
    for row, (words, of, key, shown) in enumerate(lines, start=EVENING):
        page.put(f"A{row}", words)
        value = written(f"{of}({{all}})", all=Results(LIST, key))
        nothing = written("SUM({all})=0", all=Results(LIST, key))
        page.shows(f"B{row}", value, "strong_result", shown, blank_if=[nothing])


def _short(page: Page, row: int) -> int:
    """The first materials of which the evening takes more than is on hand; cautions beside them."""
    page.section(
        row, ["Short over all of them, {weight} or each", "", "needed", "on hand", "short by", "", "Cautions"], "G"
    )
    counted = Results(NEEDS, "nth")
    for step in range(1, SHORT_LINES + 1):
        here = row + step
        page.shows(f"A{here}", _found(Results(NEEDS, "material"), step), "result")
        none = [blank(cell(f"$A{here}"))]
        for letter, of, key in (("C", NEEDS, "needed"), ("D", "materials", "stock"), ("E", NEEDS, "short")):
            page.shows(f"{letter}{here}", _found(Results(of, key), step), "result", "quantity", blank_if=none)
    for step, words in enumerate(CAUTIONS, start=1):
        page.put(f"G{row + step}", words)
    more = written(
        f'REPT("and "&(MAX({{counted}})-{SHORT_LINES})&" more: see Pour day needs",MAX({{counted}})>{SHORT_LINES})',
        counted=counted,
    )
    page.shows(f"G{row + SHORT_LINES}", more, "note")
    return row + SHORT_LINES


def _found(column: Expression, step: int) -> Expression:
    return written(
        f'IFERROR(INDEX({{column}},MATCH({step},{{counted}},0)),"")', column=column, counted=Results(NEEDS, "nth")
    )


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    steps, needs = plan.layouts[STEPS], plan.layouts[NEEDS]
    name = "Pour day: what is needed of all materials is what its products take"
    yield sums_agree(name, TAB.title, needs.sum("needed"), steps.sum(*PARTS))


register(TAB, __name__, 50, write=write, checks=checks, records=True)
