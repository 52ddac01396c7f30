"""The Books by month tab: what came in, what it cost and what was paid, month by month and place by place: a page."""

from collections.abc import Sequence
from typing import NamedTuple

from candlecalc.season.tables.books import CASH
from candlecalc.season.tables.stock import OPENING
from candlecalc.workbook.cells.references import (
    Expression,
    Given,
    Named,
    Written,
    as_text,
    at_row,
    constant,
    joined,
    text,
    written,
)
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.books import sums
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.sell import by_place, months
from candlecalc.workbook.tabs.sell.season_sums import nth_by_what_is_left
from candlecalc.workbook.tabs.set_up.settings import as_typed
from candlecalc.workbook.writing.draft import Draft
from candlecalc.workbook.writing.page import Page, cell, made_of
from candlecalc.workbook.writing.printed import paper

TAB = Tab("Books by month", "output", "What came in, what it cost and what was paid: a page for your bookkeeper.")
COLUMNS = "ABCDEFGHIJK"
MONEY = COLUMNS[1:]
PLACES, OTHERS, ALL = "BCDEFGH", "I", "J"
BEGINS, ENDS, PLACE_ROW = "M", "N", "O"  # outside the page: a month's first day, the day after it, a place's row
FIRST = 5  # the head of the first section
TALL, LINE, GAP = 64, 16, 10  # heights, points
WITH_TAX = FIRST + months.MOST_MONTHS + 3
BEFORE_TAX = WITH_TAX + months.MOST_MONTHS + 3
NOTES = BEFORE_TAX + months.MOST_MONTHS + 3
LEFT_OVER = f"G{FIRST + 1}"  # of all months
BY_CASH = "books_by_cash"
COST = written('IF({cash}=1,"Materials paid for","Cost of candles")', cash=Named(BY_CASH))
ABOUT = (
    "A month's sales and expenses count on their day; by the cash method on the day they were paid, and materials once they are paid for.",
    "What was paid before the first month counts with it. Other costs are Expenses, but equipment, and Market days, less what batches were",
    "charged with for work and workshop. What was taken out, broke or was missing, and Other entries, are on Books alone.",
    "Money in is what sales brought, fees taken off; money out is purchases, expenses and markets.",
)  # fmt: skip


class Figure(NamedTuple):
    """A column of the first section: its head, what it is by accrual, and by the cash method where that differs."""

    head: str | Expression
    sum: Expression
    by_cash: Expression | None = None
    is_left: bool = False


def _in_month(row: int, day: str) -> list[tuple[str, Given]]:
    """The lines of a row's month, by a column of days."""
    begins, ends = (cell(f"${letter}${row}") for letter in (BEGINS, ENDS))
    return [(day, written('">="&{begins}', begins=begins)), (day, written('"<"&{ends}', ends=ends))]


def _sold(row: int, key: str, day: str = "counts") -> Expression:
    return sums.known("sold", key, *_in_month(row, day))


def _bought(row: int, day: str) -> Expression:
    """Materials, without what was there at the start."""
    there = _in_month(row, day)
    opened = sums.known("purchases", "landed", *there, ("kind", text(OPENING)))
    return written("{all}-{opened}", all=sums.known("purchases", "landed", *there), opened=opened)


def _costs(row: int) -> Expression:
    """Expenses before tax, but equipment, and what market days cost."""
    there = _in_month(row, "counts")
    return written(
        "{spent}-{equipment}+{stands}+{travel}",
        spent=sums.known("expenses", "net", *there),
        equipment=sums.of("expenses", "net", *there, ("category", text("equipment"))),
        stands=sums.of("market_days", "fee", *_in_month(row, "date")),
        travel=sums.of("market_days", "travel", *_in_month(row, "date")),
    )


def _charged(row: int) -> Expression:
    """Work and workshop that batches were charged with."""
    return joined("+", [sums.known("pours", key, *_in_month(row, "date")) for key in ("paid", "overhead")])


def _paid_out(row: int) -> Expression:
    paid = _in_month(row, "paid_on")
    spent = [sums.of("purchases", "claimed", *paid), sums.of("expenses", "amount", *paid)]
    markets = [sums.of("market_days", key, *_in_month(row, "date")) for key in ("fee", "travel")]
    return joined("+", [_bought(row, "paid_on"), *spent, *markets])


def _figures(row: int) -> tuple[Figure, ...]:
    costs = _costs(row)
    return (
        Figure("Sales before tax", _sold(row, "net")),
        Figure("Tax, yours to pay over", _sold(row, "tax_due")),
        Figure("Fees", _sold(row, "fee")),
        Figure(COST, _sold(row, "cost"), _bought(row, "paid_on")),
        Figure("Other costs", written("{costs}-({charged})", costs=costs, charged=_charged(row)), costs),
        Figure("Left over", made_of(f"$B{row}-$D{row}-$E{row}-$F{row}"), is_left=True),
        Figure("Materials bought", _bought(row, "date"), _bought(row, "paid_on")),
        Figure("Materials in batches", sums.known("pours", "materials", *_in_month(row, "date"))),
        Figure("Money in, from sales", _sold(row, "comes_in", "paid")),
        Figure("Money out", _paid_out(row)),
    )


def write(draft: Draft) -> None:
    page = Page(draft, TAB, draft.tab(TAB, portrait=True, master="J1", purpose="C1"), COLUMNS)
    page.widths((13, *[12.4] * len(MONEY)))
    page.sheet.merge_cells("J1:K1")
    for row in range(2, NOTES + len(ABOUT)):
        page.height(row, LINE)
    for row in (FIRST, WITH_TAX, BEFORE_TAX, NOTES):
        page.height(row - 1, GAP)
    _head(page)
    _months(page)
    _places(page)
    _by_place(page, WITH_TAX, "With tax", "gross")
    _by_place(page, BEFORE_TAX, "Before tax", "net")
    page.lines(NOTES, ABOUT, "note")
    page.sheet.print_area = f"A1:K{NOTES + len(ABOUT) - 1}"
    paper(page.sheet, str(draft.season.settings["paper"]), portrait=True, tall=1)


def how_kept() -> Expression:
    """How books are kept, in words."""
    return written(f'IF({{books}}="{CASH}","by the cash method","by accrual")', books=Named("books"))


def _head(page: Page) -> None:
    page.shows("A2", as_text(Written(as_typed("maker"))), "strong", "words")
    page.shows("A3", written('"Books are kept "&{how}', how=how_kept()), "note", "words")
    for at, words, there, name in (("D2", "from", "E2", "first_day"), ("F2", "to", "G2", "last_day")):
        page.put(at, words, "note", "row")
        page.shows(there, Named(name), "label", "date")
    page.put("I2", f"all sums in {page.draft.plan.currency}", "note")
    page.put(f"L{FIRST - 2}", "1: books by the cash method", "note")
    page.shows(f"{BEGINS}{FIRST - 2}", written(f'({{how}}="{CASH}")*1', how=Named("books")), "note", "row")
    page.name(BY_CASH, f"{BEGINS}{FIRST - 2}")


def _rows(head: int) -> range:
    """The rows of the months; over them stands what they come to, so that a short season leaves no gap between."""
    return range(head + 2, head + 2 + months.MOST_MONTHS)


def by_method(accrual: Expression, cash: Expression | None) -> Expression:
    """A sum by how books are kept."""
    if cash is None:
        return accrual
    return written("IF({by_cash}=1,{cash},{accrual})", by_cash=Named(BY_CASH), cash=cash, accrual=accrual)


def _months(page: Page) -> None:
    page.section(FIRST, ["By month", *(figure.head for figure in _figures(0))], tall=True)
    page.height(FIRST, 36)
    page.put(f"{BEGINS}{FIRST}", "Month from", "note")
    page.put(f"{ENDS}{FIRST}", "... to before", "note")
    for nth, row in enumerate(_rows(FIRST), start=1):
        _named(page, row, nth)
        begins = at_row(months.KEY, "month", constant(nth)) if nth > 1 else constant(0)
        page.shows(f"{BEGINS}{row}", begins, "note", "date" if nth > 1 else "row", blank_if=[_none(row)])
        next_month = made_of("DATE(YEAR({month}),MONTH({month})+1,1)", month=f"$A{row}")
        until = written("MIN({next},{last}+1)", next=next_month, last=Named("last_day"))
        page.shows(f"{ENDS}{row}", until, "note", "date", blank_if=[_none(row)])
        for letter, figure in zip(MONEY, _figures(row), strict=True):
            look = "strong" if figure.is_left else "label"
            _put(page, f"{letter}{row}", by_method(figure.sum, figure.by_cash), look, _none(row))
    _in_all(page, FIRST, MONEY)


def _none(row: int) -> Expression:
    """The test that a row has no month."""
    return made_of('{month}=""', month=f"$A{row}")


def _named(page: Page, row: int, nth: int) -> None:
    page.shows(f"A{row}", at_row(months.KEY, "month", constant(nth)), "strong", "month")


def _put(page: Page, at: str, value: Expression, look: str, *blank_if: Expression) -> None:
    page.shows(at, written("ROUND({sum},6)", sum=value), look, "money", blank_if=blank_if)


def _in_all(page: Page, head: int, letters: Sequence[str]) -> None:
    row, there = head + 1, _rows(head)
    page.put(f"A{row}", "In all", "strong")
    for letter in letters:
        cells = f"{letter}{there[0]}:{letter}{there[-1]}"
        named = [made_of(f'{letter}{head}=""')] if letter in PLACES and head != FIRST else []
        page.shows(f"{letter}{row}", made_of(f"ROUND(SUM({cells}),6)"), "strong_result", "money", blank_if=named)


def _places(page: Page) -> None:
    """The rows of the places that left most over, beside the page."""
    page.put(f"{PLACE_ROW}{FIRST}", "Places in order, rows", "note")
    for nth, row in enumerate(range(FIRST + 1, FIRST + 1 + len(PLACES)), start=1):
        found, fewer = nth_by_what_is_left(by_place.KEY, nth)
        page.shows(f"{PLACE_ROW}{row}", found, "note", "row", blank_if=[fewer])


def _by_place(page: Page, head: int, words: str, key: str) -> None:
    """Sales of a month in each place; what no column has room for stands under all others."""
    places = [f"${PLACE_ROW}${FIRST + nth}" for nth in range(1, len(PLACES) + 1)]
    names = [
        made_of('IF({row}="","",{name})', row=row, name=at_row(by_place.KEY, "place", cell(row))) for row in places
    ]
    page.section(head, [f"{words}, by place", *names, "All others", "In all", ""], tall=True)
    page.height(head, TALL)
    for nth, row in enumerate(_rows(head), start=1):
        days = FIRST + 1 + nth
        _named(page, row, nth)
        for letter, place in zip(PLACES, places, strict=True):
            there = made_of("{place}+1", place=place)
            value = sums.known("sold", key, ("place_first", there), *_in_month(days, "counts"))
            _put(page, f"{letter}{row}", value, "label", _none(row), made_of('{place}=""', place=place))
        rest = made_of(f"{ALL}{row}-SUM({PLACES[0]}{row}:{PLACES[-1]}{row})")
        _put(page, f"{OTHERS}{row}", rest, "label", _none(row))
        _put(page, f"{ALL}{row}", _sold(days, key), "strong", _none(row))
    _in_all(page, head, [*PLACES, OTHERS, ALL])


register(TAB, __name__, 50, write=write, records=True)
