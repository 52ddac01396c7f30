"""Tax on Books: what was sold by rate and by area, and who pays the tax over."""

from collections.abc import Sequence

from candlecalc.season.tables.sales import TAX_RATES
from candlecalc.workbook.cells.references import (
    Expression,
    Given,
    Named,
    Results,
    Whole,
    at,
    constant,
    joined,
    written,
)
from candlecalc.workbook.tabs.books.by_month import BY_CASH
from candlecalc.workbook.tabs.books.sums import TILL, known
from candlecalc.workbook.tabs.books.trial import of_sales
from candlecalc.workbook.tabs.working import tax_by_day
from candlecalc.workbook.writing.page import Page, cell, made_of

LABEL, LETTERS = "F", "GHIJ"
# With tax, before tax, tax that the maker pays over, and all tax: the last column shows what places pay.
KEYS = {"G": "gross", "H": "net", "I": "tax_due"}
BESIDE = "K"  # outside the page: the rate, or the row of the area on Tax by day
HEADS = ("With tax", "Before tax", "You pay over", "Places pay")


def by_rate(page: Page, head: int, lines: int) -> int:
    """A line a rate, the lowest first, and all others in one; the row after them."""
    rates = Results("sold", "rate")
    page_section(page, head, "Sales and tax, by rate")
    for nth, row in enumerate(range(head + 1, head + 1 + lines), start=1):
        _next(page, row, nth, rates, constant(-1))
        said = made_of('ROUND(100*{rate},6)&" %"', rate=f"${BESIDE}{row}")
        page.shows(f"{LABEL}{row}", said, "result", "words", blank_if=[_none(row)])
        _line(page, row, {letter: _of_rate(row, key) for letter, key in KEYS.items()}, _of_rate(row, "tax"))
    return _others(page, head, lines, "other rates")


def by_area(page: Page, head: int, lines: int) -> int:
    """A line for each area of Tax by day, and in one what is of none of them."""
    areas = Results(tax_by_day.KEY, "area")
    page_section(page, head, "Sales and tax, by area")
    for nth, row in enumerate(range(head + 1, head + 1 + lines), start=1):
        _next(page, row, nth, areas, tax_by_day.EVERYWHERE_ELSE)
        name = at(TAX_RATES.key, "area", cell(f"${BESIDE}{row}"))
        page.shows(f"{LABEL}{row}", name, "result", blank_if=[_none(row)])
        _line(page, row, {letter: _of_area(row, key) for letter, key in KEYS.items()}, _of_area(row, "tax"))
    return _others(page, head, lines, "elsewhere")


def page_section(page: Page, head: int, words: str, heads: Sequence[str] = HEADS) -> None:
    """The heads of a section right of the accounts."""
    for letter, head_words in zip(LABEL + LETTERS, (words, *heads, *[""] * (len(LETTERS) - len(heads))), strict=True):
        page.put(f"{letter}{head}", head_words or None, "section", "text" if letter == LABEL else "row")
    page.height(head, 20)


def _none(row: int) -> Expression:
    return made_of(f'${BESIDE}{row}=""')


def _next(page: Page, row: int, nth: int, numbers: Expression, least: Given) -> None:
    """The smallest number of a list that is above the one in the row over this one."""
    above = least if nth == 1 else cell(f"${BESIDE}{row - 1}")
    so_far = written('COUNTIF({all},"<="&{above})', all=numbers, above=above)
    found = written("SMALL({all},{so_far}+1)", all=numbers, so_far=so_far)
    ended = [] if nth == 1 else [_none(row - 1)]
    page.shows(f"{BESIDE}{row}", found, "note", "percent", blank_if=[*ended, written("COUNT({all})<={so_far}", all=numbers, so_far=so_far)])  # fmt: skip


def _line(page: Page, row: int, shown: dict[str, Expression], tax: Expression) -> None:
    for letter, value in shown.items():
        page.shows(f"{letter}{row}", written("ROUND({sum},6)", sum=value), "result", "money", blank_if=[_none(row)])
    places = written("ROUND({tax}-{own},6)", tax=tax, own=cell(f"$I{row}"))
    page.shows(f"J{row}", places, "result", "money", blank_if=[_none(row)])


def _of_rate(row: int, key: str) -> Expression:
    return known("sold", key, ("rate", cell(f"${BESIDE}{row}")), ("counts", TILL))


def _of_area(row: int, key: str) -> Expression:
    """By name, compared: Sales have it in the same rows as Sold. Market lines are of no area."""
    counts = joined("+", [_counts("date", "(1-{cash})"), _counts("paid_on", "{cash}")])
    return written(
        "SUMPRODUCT(({areas}={name})*({counts}),{amounts})",
        areas=Whole("sales", "area"),
        name=cell(f"${LABEL}{row}"),
        counts=counts,
        amounts=of_sales(key),
    )


def _counts(day: str, how: str) -> Expression:
    """1 for each line of Sales whose day is there and not after the last, if books are kept so."""
    days = Whole("sales", day)
    return written(f'({{days}}<>"")*({{days}}<={{last}})*{how}', days=days, last=Named("last_day"), cash=Named(BY_CASH))


def _others(page: Page, head: int, lines: int, words: str) -> int:
    """What no line has, and the whole."""
    rest, whole = head + lines + 1, head + lines + 2
    page.put(f"{LABEL}{rest}", words)
    page.put(f"{LABEL}{whole}", "In all", "strong")
    of_all = {letter: known("sold", key, ("counts", TILL)) for letter, key in KEYS.items()}
    of_all["J"] = written("{tax}-{own}", tax=known("sold", "tax", ("counts", TILL)), own=cell(f"$I{whole}"))
    for letter, value in of_all.items():
        page.shows(f"{letter}{whole}", written("ROUND({sum},6)", sum=value), "strong_result", "money")
        left = made_of(f"ROUND({letter}{whole}-SUM({letter}{head + 1}:{letter}{rest - 1}),6)")
        page.shows(f"{letter}{rest}", left, "result", "money")
    return whole + 1
