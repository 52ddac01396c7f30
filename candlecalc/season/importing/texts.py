"""What a cell of a file from elsewhere may mean: a number or a day, one for each way in which it can be read."""

import datetime
import re
from collections.abc import Mapping
from decimal import Decimal
from functools import lru_cache

from candlecalc.quantities import days as calendar
from candlecalc.season.fields import FIRST_DAY
from candlecalc.season.season import without_blanks
from candlecalc.season.tables.imports import COMMA, DAY_FIRST, MONTH_FIRST, POINT, YEAR_FIRST

Number = Mapping[str, Decimal]
Day = Mapping[str, datetime.date]

# Some programs write a text so that a spreadsheet does not take it for a number: ="0042".
AS_FORMULA = re.compile(r'="(?P<text>[^"]*)"')

# A sign before the number or after it, and brackets in its place, as bookkeepers write what is taken off.
SIGNED = re.compile(
    r"(?P<before>[-+−]?)(?P<bracket>\(?)(?P<sign>[-+−]?)(?P<digits>[0-9.,'’ ]*[0-9][0-9.,]*)\)?(?P<after>[-−]?)"
)
MINUS = "-−("
MARKS = {POINT: (r"\.", ","), COMMA: (",", r"\.")}  # of decimals and of thousands
AMOUNTS = {
    way: re.compile(
        rf"(?:\d+|\d{{1,3}}(?:([{thousands}'’ ])\d{{3}})(?:\1\d{{3}})*|(?={mark}\d))(?:{mark}(?P<part>\d*))?"
    )
    for way, (mark, thousands) in MARKS.items()
}
# What stands beside an amount of money, and whose it is where one currency alone has it.
SYMBOLS = {"$": "", "¥": "", "€": "EUR", "£": "GBP", "₹": "INR", "₩": "KRW", "₺": "TRY", "₴": "UAH", "zł": "PLN"}

TIME = re.compile(r"[T ,]\s*\d{1,2}:\d{2}.*$")
IN_FIGURES = re.compile(r"(\d{1,4})([./ -])\s?(\d{1,2})\2\s?(\d{1,4})\.?")
DAY_AND_MONTH = re.compile(r"(?P<day>\d{1,2})(?:st|nd|rd|th)?[. -]+(?P<month>[A-Za-z]{3,9})[., -]+(?P<year>\d{2,4})")
MONTH_AND_DAY = re.compile(r"(?P<month>[A-Za-z]{3,9})[. ]+(?P<day>\d{1,2})(?:st|nd|rd|th)?[, ]+(?P<year>\d{2,4})")
MONTHS = tuple(month[:3] for month in calendar.MONTHS)
WAYS_OF_DAYS = {DAY_FIRST: (2, 1, 0), MONTH_FIRST: (2, 0, 1), YEAR_FIRST: (0, 1, 2)}  # places of year, month, day
CENTURY = 100 * (FIRST_DAY.year // 100)


def bare(text: str) -> str:
    """A cell without blanks that nobody sees, and without the dress of a formula."""
    text = without_blanks(text)
    dressed = AS_FORMULA.fullmatch(text)
    return without_blanks(dressed["text"]) if dressed else text


@lru_cache(maxsize=100_000)
def number(text: str, unit: str = "", currency: str = "") -> Number:
    """What a text may be as a number, by its decimal mark; nothing where it is none.

    Beside it may stand its unit, or of an amount of money the currency's code or symbol.
    """
    found = SIGNED.fullmatch(_without_unit(text.replace("\u202f", " ").replace("\u2009", " "), unit, currency))
    if not found or (found["bracket"] == "(") != text.rstrip("-−").rstrip().endswith(")"):
        return {}
    signs = [sign for sign in (found["before"], found["bracket"], found["sign"], found["after"]) if sign]
    factor = -1 if any(sign in MINUS for sign in signs) else 1
    return {} if len(signs) > 1 else {way: factor * amount for way, amount in _amounts(found["digits"].strip()).items()}


def _amounts(digits: str) -> Number:
    found = {}
    for way, pattern in AMOUNTS.items():
        if whole := pattern.fullmatch(digits):
            part = whole["part"] or ""
            units = re.sub(r"\D", "", digits[: len(digits) - len(part)] if whole["part"] is not None else digits)
            found[way] = Decimal(f"{units or 0}.{part}" if part else units)
    return found


def _without_unit(text: str, unit: str, currency: str) -> str:
    """The text without what may stand beside the number, before or after its sign."""
    beside = [unit] if unit else []
    if currency:
        beside += [currency, *(symbol for symbol, whose in SYMBOLS.items() if whose in ("", currency))]
    for each in beside:
        if each.casefold() in text.casefold():
            at = text.casefold().index(each.casefold())
            return (text[:at].rstrip() + text[at + len(each) :].lstrip()).strip()
    return text


@lru_cache(maxsize=100_000)
def day(text: str) -> Day:
    """What a text may be as a day, by the order of its day, month and year; nothing where it is none."""
    text = TIME.sub("", text).strip()
    named = DAY_AND_MONTH.fullmatch(text) or MONTH_AND_DAY.fullmatch(text)
    if named:
        month = named["month"].casefold()[:3]
        of_year = MONTHS.index(month) + 1 if month in MONTHS else 0
        found = _day(int(_year(named["year"])), of_year, int(named["day"]))
        return dict.fromkeys(WAYS_OF_DAYS, found) if found else {}
    figures = IN_FIGURES.fullmatch(text)
    if not figures:
        return {}
    parts = (figures[1], figures[3], figures[4])
    days = {way: _in_order(parts, places) for way, places in WAYS_OF_DAYS.items()}
    return {way: found for way, found in days.items() if found}


def _in_order(parts: tuple[str, str, str], places: tuple[int, int, int]) -> datetime.date | None:
    year, month, of_month = (parts[place] for place in places)
    fits = len(year) in (2, 4) and len(month) <= 2 and len(of_month) <= 2
    return _day(_year(year), int(month), int(of_month)) if fits else None


def _year(digits: str) -> int:
    return int(digits) + (CENTURY if len(digits) <= 2 else 0)


def _day(year: int, month: int, of_month: int) -> datetime.date | None:
    try:
        return datetime.date(year, month, of_month)
    except ValueError:
        return None
