"""What is still open when a season closes, line by line: what is owed to the maker, and what the maker owes."""

import datetime
from collections.abc import Iterable, Iterator
from typing import NamedTuple

from candlecalc.quantities.rounding import round_half_away
from candlecalc.season.season import Row, Season
from candlecalc.season.tables.books import EXPENSES
from candlecalc.season.tables.carried import OWED_BY_MAKER, STILL_OPEN
from candlecalc.season.tables.sales import HELD_FOR_BUYERS, SALES
from candlecalc.season.tables.stock import OPENING, PURCHASES
from candlecalc.workbook.next_season.money import SOLD, comes_in
from candlecalc.workbook.reports.report import Calculated

PURCHASE, DEPOSIT, GIFT_CARD = OWED_BY_MAKER
SALE, PAYOUT = "sale", "payout"
# Of each kind of Sales that holds money for a buyer: what it is, and whether it comes or goes.
HELD = dict(zip(HELD_FOR_BUYERS, ((DEPOSIT, 1), (DEPOSIT, -1), (GIFT_CARD, 1), (GIFT_CARD, -1)), strict=True))
NO_SUPPLIER = "supplier not noted"
LONGEST_NAME = STILL_OPEN["who"].longest


class Open(NamedTuple):
    """Some money that is open, and what it goes by: lines of one reference come to one sum."""

    kind: str
    who: str
    document: str
    day: datetime.date
    amount: float

    @property
    def reference(self) -> tuple[str, str, str]:
        """A deposit or a gift card goes by its number, wherever it is used; all else by whom it is with, too."""
        held = self.kind in (DEPOSIT, GIFT_CARD) and bool(self.document)
        return self.kind, "" if held else self.who.casefold(), self.document.casefold()


def still_open(calculated: Calculated, first_day: datetime.date) -> list[Row]:
    """The rows of Still open for the season after."""
    season, digits = calculated.season, calculated.plan.coin_digits
    bought = [*_purchases(calculated, first_day), *_expenses(season, first_day)]
    lines = [*_from_before(season, first_day), *bought, *_held(season), *_sales(calculated, first_day)]
    rows = [_row(each) for each in _together(lines, digits)]
    return sorted(rows, key=lambda row: (STILL_OPEN["kind"].choices.index(str(row["kind"])), str(row["date"])))


def overspent(season: Season, first_day: datetime.date) -> Iterator[tuple[int, str]]:
    """Deposits and gift cards of which more was used than there was: the place of a line on Sales, and words for it."""
    used = {}
    for place, row in season.rows(SALES.key):
        if row["kind"] in HELD and HELD[str(row["kind"])][1] < 0:
            used[_of_buyer(row).reference] = place
    for each in _together([*_from_before(season, first_day), *_held(season)], 2):
        if each.amount < 0 and each.reference in used:
            number = f" {each.document}" if each.document else f" without a number, {each.who}"
            yield used[each.reference], f"{each.kind}{number}: {-each.amount:g} more was used than there was of it"


def is_open(row: Row, first_day: datetime.date) -> bool:
    """Whether a line was not paid yet when the new season began."""
    return _not_paid(row["paid_on"], first_day)


def _not_paid(paid: object, first_day: datetime.date) -> bool:
    return not isinstance(paid, datetime.date) or paid >= first_day


def _from_before(season: Season, first_day: datetime.date) -> Iterator[Open]:
    """What stands on Still open and was not settled."""
    for _, row in season.rows(STILL_OPEN.key):
        if is_open(row, first_day):
            kind, who, document = (_text(row, key) for key in ("kind", "who", "document"))
            yield Open(kind, who, document, day_of(row), _number(row["sum"]))


def _purchases(calculated: Calculated, first_day: datetime.date) -> Iterator[Open]:
    """With the tax that is claimed back: the supplier is owed all of it."""
    for place, row in calculated.season.rows(PURCHASES.key):
        if is_open(row, first_day) and row["kind"] != OPENING:
            due = _number(calculated.value(PURCHASES.key, "landed", place)) + _number(row["claimed"] or 0)
            yield Open(PURCHASE, _text(row, "supplier") or NO_SUPPLIER, _text(row, "document"), day_of(row), due)


def _expenses(season: Season, first_day: datetime.date) -> Iterator[Open]:
    for _, row in season.rows(EXPENSES.key):
        if is_open(row, first_day):
            who, amount = _text(row, "payee")[:LONGEST_NAME], _number(row["amount"])
            yield Open(PURCHASE, who, _text(row, "document"), day_of(row), amount)


def _held(season: Season) -> Iterator[Open]:
    for _, row in season.rows(SALES.key):
        if row["kind"] in HELD:
            yield _of_buyer(row)


def _of_buyer(row: Row) -> Open:
    kind, sign = HELD[str(row["kind"])]
    return Open(kind, _text(row, "place"), _text(row, "order"), day_of(row), sign * _number(row["price"]))


def _sales(calculated: Calculated, first_day: datetime.date) -> Iterator[Open]:
    """What comes in of lines that are not paid yet: by the payment they come with, else by their order."""
    rows = dict(calculated.season.rows(SALES.key))
    for place, amount in comes_in(calculated).items():
        row = rows[place]
        if _not_paid(calculated.value(SOLD, "paid", place), first_day):
            kind = PAYOUT if row["payout"] else SALE
            yield Open(kind, _text(row, "place"), _text(row, "payout") or _text(row, "order"), day_of(row), amount)


def _together(lines: Iterable[Open], digits: int) -> list[Open]:
    """One line for each reference, of its first day, with all that is open of it; lines without a number stay alone."""
    found: dict[tuple[object, ...], Open] = {}
    for line in lines:
        by_day = "" if line.document or line.kind in (DEPOSIT, GIFT_CARD) else line.day
        key = (*line.reference, by_day)
        before = found.get(key)
        amount = round_half_away(line.amount + (before.amount if before else 0), digits)
        found[key] = (min(before, line, key=lambda each: each.day) if before else line)._replace(amount=amount)
    return [each for each in found.values() if each.amount]


def _row(each: Open) -> Row:
    return dict.fromkeys(STILL_OPEN.keys) | {
        "date": each.day,
        "kind": each.kind,
        "who": each.who,
        "sum": each.amount,
        "document": each.document or None,
    }


def _text(row: Row, key: str) -> str:
    return str(row[key] or "")


def day_of(row: Row) -> datetime.date:
    """The date of a row that was found right as typed."""
    day = row["date"]
    if not isinstance(day, datetime.date):
        raise ValueError(f"{day} is no date")
    return day


def _number(value: object) -> float:
    return float(str(value))
