"""The Books tab: what each account comes to, stock, profit, tax and what forms ask for: a page for a bookkeeper."""

from collections.abc import Iterable

from candlecalc.season import chart
from candlecalc.season.tables.once import WAYS_OF_VALUING
from candlecalc.workbook.cells.checks import WorkbookCheck, sums_agree
from candlecalc.workbook.cells.layout import Plan
from candlecalc.workbook.cells.references import Expression, Named, Results, Written, as_text, in_coins, joined, written
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.books import by_month, forms, tax, trial
from candlecalc.workbook.tabs.books.by_month import by_method, how_kept
from candlecalc.workbook.tabs.books.tax import LABEL, LETTERS, page_section
from candlecalc.workbook.tabs.books.trial import balance, of_kind, of_sums
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.set_up.settings import as_typed
from candlecalc.workbook.writing.draft import Draft
from candlecalc.workbook.writing.page import Page, cell, made_of
from candlecalc.workbook.writing.printed import paper

TAB = Tab("Books", "output", "What each account comes to on the last day, and what forms ask for: for your bookkeeper.")
COLUMNS = "ABCDEFGHIJ"
WIDTHS = (28, 12, 12, 12, 2, 27, 12.5, 12.5, 12.5, 12.5)
COST, AMOUNT = LETTERS[-2], LETTERS[-1]
STOCK = trial.HEAD  # the head of the first section on the right
PROFIT = STOCK + 6
TAX = PROFIT + 9
RATES, AREAS = 6, 5  # lines
NOTES = trial.TOTAL + 3
ABOUT = (
    "Each account is made of sums of the tabs, which stand to the right of this page, and of Other entries. Every entry, with the tab and row it is from,",
    "is in the folder that candlecalc handover writes; candlecalc show BOOK books gives the months. What is not paid by the last day is owed.",
    "These figures follow from what was typed. Which of them a tax return takes is for your bookkeeper or tax office to say.",
)  # fmt: skip


def write(draft: Draft) -> None:
    page = Page(draft, TAB, draft.tab(TAB, portrait=True, master="I1"), COLUMNS)
    page.widths(WIDTHS)
    page.sheet.merge_cells("I1:J1")
    for row in range(2, NOTES + len(ABOUT)):
        page.height(row, 16)
    _head(page)
    trial.write(page)
    _stock(page)
    _profit(page)
    row = tax.by_rate(page, TAX, RATES)
    if draft.season.settings["region"] != "gb":
        row = tax.by_area(page, row + 1, AREAS)
    forms.write(page, row + 1)
    page.lines(NOTES, ABOUT, "note")
    page.sheet.column_dimensions[trial.WORDS].width = 44
    page.sheet.print_area = f"A1:J{NOTES + len(ABOUT) - 1}"
    paper(page.sheet, str(draft.season.settings["paper"]), portrait=True, tall=1)


def _head(page: Page) -> None:
    page.shows("A2", as_text(Written(as_typed("maker"))), "strong", "words")
    page.shows("A3", written('"Books are kept "&{how}', how=how_kept()), "note", "words")
    page.put("C2", "last day", "note", "row")
    page.shows("D2", Named("last_day"), "label", "date")
    settings = page.draft.season.settings
    page.put(
        "F2",
        f"all sums in {page.draft.plan.currency}; stock is valued {WAYS_OF_VALUING[str(settings['stock'])]}",
        "note",
    )
    page.shows("F3", written('"registered for tax: "&{said}', said=Written(as_typed("registered"))), "note", "words")


def _lines(page: Page, row: int, lines: Iterable[tuple[str, Expression]]) -> None:
    for at, (words, value) in enumerate(lines, start=row):
        page.put(f"{LABEL}{at}", words)
        look = "strong_result" if words in ("In all", "Profit") else "result"
        page.shows(f"{AMOUNT}{at}", in_coins(value), look, "money")


def _stock(page: Page) -> None:
    """Stock at cost, and candles at what they bring where that is less; materials stay at cost."""
    page_section(page, STOCK, "In stock", ("", "", "At cost", "At the lower"))
    lower = written("SUM({all})", all=Results("candles", "lower"))
    words = ("Materials, as on Stock", "Work in hand", "Candles: cost, or what they bring")
    for row, (name, said) in enumerate(zip(chart.STOCKS, words, strict=True), start=STOCK + 1):
        page.put(f"{LABEL}{row}", said)
        page.shows(f"{COST}{row}", balance(name), "result", "money")
        lower_of = by_method(lower, balance(name)) if name == chart.CANDLES else balance(name)
        page.shows(f"{AMOUNT}{row}", lower_of, "result", "money")
    whole = STOCK + len(words) + 1
    page.put(f"{LABEL}{whole}", "In all", "strong")
    for letter in (COST, AMOUNT):
        cells = f"{letter}{STOCK + 1}:{letter}{whole - 1}"
        page.shows(f"{letter}{whole}", in_coins(made_of(f"SUM({cells})")), "strong_result", "money")


# What left stock otherwise, and batches of which none was good; what was given away or tried is among it.
LOST = "{out}-{cost}+{used}-{poured}-{unpacked}-{own_use}+({made}-{opened_made})-({good}-{opened_good})"


def _profit(page: Page) -> None:
    page_section(page, PROFIT, "Profit", ())
    left = cell(f"'{by_month.TAB.title}'!${by_month.LEFT_OVER[0]}${by_month.LEFT_OVER[1:]}")
    lost = by_method(of_sums(LOST), written("0"))
    other = joined("+", [of_kind(kind, trial.OTHER) for kind in chart.RESULT])
    settled = by_method(written("0"), of_sums("{owed_settled}-{owing_settled}"))
    _lines(
        page,
        PROFIT + 1,
        [
            ("Income", written("-({all})", all=of_kind(chart.INCOME))),
            ("Costs, with the candles sold at cost", of_kind(chart.COST)),
            ("Profit", joined("-", [written("-({all})", all=of_kind(chart.INCOME)), written("({all})", all=of_kind(chart.COST))])),
            ("As on Books by month: left over", left),
            ("less what was taken out, broke or was missing", lost),
            ("less Other entries on income and costs", other),
            ("and, by cash, what was open before and settled", settled),
        ],
    )  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    sides = [f"{TAB.title}!${letter}${trial.TOTAL}" for letter in (trial.DEBIT, trial.CREDIT)]
    yield sums_agree("Debits are credits", TAB.title, *sides)
    profit, left, lost, other, settled = (f"{TAB.title}!${AMOUNT}${PROFIT + nth}" for nth in range(3, 8))
    yield sums_agree("Months come to the profit by accounts", TAB.title, f"{left}-{lost}-{other}+{settled}", profit)
    own = f"MAX({plan.layouts['accounts'].results('nth_own')})"
    room = f"MAX(0,{own}-{trial.OWN_LINES})"
    mend = f"Books has {trial.OWN_LINES} lines for accounts of your own: candlecalc handover takes all"
    yield WorkbookCheck("Books has a line for each account of your own", TAB.title, room, mend)


register(TAB, __name__, 60, write=write, checks=checks, records=True)
