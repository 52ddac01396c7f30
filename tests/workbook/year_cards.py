"""The stock card of one thing, by first in first out or by a moving average, in exact fractions.

What a card decides where the rules leave something open stands at the head of year_reference.py.
"""

import itertools
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from fractions import Fraction
from math import floor
from typing import NamedTuple

from year_records import Count


def rounded(amount: Fraction) -> int:
    """To a whole number, half away from zero."""
    whole = floor(abs(amount) + Fraction(1, 2))
    return whole if amount >= 0 else -whole


def coins(cents: Fraction) -> int:
    """Cents that were worked out: to six decimals of money first, then to the cent, half away from zero."""
    return rounded(Fraction(rounded(cents * 10**4), 10**4))


def sum_or_none(amounts: Iterable[int | None]) -> int | None:
    """A sum, or None where a part of it is not known."""
    known = list(amounts)
    return None if None in known else sum(known)


class Receipt(NamedTuple):
    """What came in: a purchase, or the good candles of a batch."""

    row: int  # in its log
    day: date
    amount: Fraction
    value: int | None  # None where it could not be worked out
    lot: str
    opened_on: date | None = None


PARTS = "Parts of sets"  # what sets that nobody had packed took as they left
IN_A_DAY = {"Used": 0, "Moves": 1, "Sales": 2, "Market lines": 3, "Given": 3, PARTS: 4, "Counts": 5}


class Issue(NamedTuple):
    """What went out."""

    tab: str  # one of IN_A_DAY; Given is what a market line gave away and broke
    # There; of a used line its batch and the thing in the recipe; of a part the set's log, its row there and the part.
    row: object
    day: date
    amount: Fraction
    lot: str = ""  # as noted
    part_of: str = ""  # the set that it left in

    @property
    def place(self) -> tuple[date, int, int]:
        """Where it stands among others: by day, by log, and there as typed."""
        return self.day, IN_A_DAY[self.tab], self.row if isinstance(self.row, int) else 0

    @property
    def line(self) -> tuple[str, object]:
        """The line of a log that took it out, by its tab and its row."""
        return self.row[:2] if self.tab == PARTS else (self.tab, self.row)


class Taken(NamedTuple):
    """An issue on the card of its thing."""

    issue: Issue
    to_date: Fraction
    cost: int | None
    short: bool  # more was used to date than had been received by the end of that day


@dataclass(frozen=True)
class Card:
    """The stock card of a material or a product."""

    thing: str
    method: str
    receipts: tuple[Receipt, ...]  # by day, then by row
    lines: tuple[Taken, ...]
    differences: Mapping[int, Fraction]  # counted less recorded, by the count's row

    @property
    def received(self) -> Fraction:
        return sum((receipt.amount for receipt in self.receipts), Fraction(0))

    @property
    def taken(self) -> Fraction:
        return sum((line.issue.amount for line in self.lines), Fraction(0))

    def taken_by(self, tab: str) -> Fraction:
        return sum((line.issue.amount for line in self.lines if line.issue.tab == tab), Fraction(0))

    @property
    def left(self) -> Fraction:
        return self.received - self.taken

    @property
    def value_received(self) -> int | None:
        return sum_or_none(receipt.value for receipt in self.receipts)

    @property
    def spent(self) -> int | None:
        return sum_or_none(line.cost for line in self.lines)

    @property
    def value(self) -> int | None:
        """What is left is worth; below nothing where more went out than came in."""
        if self.value_received is None or self.spent is None:
            return None
        return self.value_received - self.spent


def last_landed(card: Card) -> Fraction | None:
    """Cents a unit of the latest receipt."""
    latest = card.receipts[-1] if card.receipts else None
    return None if latest is None or latest.value is None else latest.value / latest.amount


def average_left(card: Card) -> Fraction | None:
    """Cents a unit of what is left."""
    return card.value / card.left if card.value is not None and card.left > 0 else last_landed(card)


def card(
    thing: str, method: str, receipts: Iterable[Receipt], issues: Iterable[Issue], counts: Sequence[Count]
) -> Card:
    receipts = tuple(sorted(receipts, key=lambda receipt: (receipt.day, receipt.row)))
    issues, differences = _with_counts(thing, receipts, sorted(issues, key=lambda issue: issue.place), counts)
    spent = spent_to_date(method, receipts, issues)
    lines, to_date, before = [], Fraction(0), 0
    for issue, so_far in zip(issues, spent, strict=True):
        to_date += issue.amount
        cost = None if so_far is None else coins(so_far) - before
        before = 0 if so_far is None else coins(so_far)
        lines.append(Taken(issue, to_date, cost, to_date > received_by(receipts, issue.day)))
    return Card(thing, method, receipts, tuple(lines), differences)


def received_by(receipts: Iterable[Receipt], day: date) -> Fraction:
    return sum((receipt.amount for receipt in receipts if receipt.day <= day), Fraction(0))


def _with_counts(
    thing: str, receipts: Sequence[Receipt], issues: list[Issue], counts: Sequence[Count]
) -> tuple[list[Issue], dict[int, Fraction]]:
    """The issues in order, with those that counts make; and what each count differs by from the records."""
    issues, differences = list(issues), {}
    of_thing = [(count.day, row, count) for row, count in enumerate(counts, start=1) if count.thing == thing]
    for day, row, count in sorted(of_thing, key=lambda each: each[:2]):
        gone = sum((issue.amount for issue in issues if issue.day <= day), Fraction(0))
        differences[row] = count.counted - (received_by(receipts, day) - gone)
        if count.is_move:
            taken_over = Issue("Counts", row, day, -differences[row])
            behind = sum(issue.place <= taken_over.place for issue in issues)
            issues.insert(behind, taken_over)
    return issues, differences


# What it cost


def spent_to_date(method: str, receipts: Sequence[Receipt], issues: Sequence[Issue]) -> list[Fraction | None]:
    """What had been spent after each issue, in cents and not rounded."""
    if not receipts or any(receipt.value is None for receipt in receipts):
        return [None] * len(issues)
    unit_cost = _average_by_day(receipts, issues) if method == "average" else None
    spent, taken, found = Fraction(0), Fraction(0), []
    for issue in issues:
        taken += issue.amount
        spent = spent + issue.amount * unit_cost(issue.day) if unit_cost else value_of_first(receipts, taken)
        found.append(spent)
    return found


def value_of_first(receipts: Sequence[Receipt], taken: Fraction) -> Fraction:
    """What so much cost, oldest first: whole lots, then a part of one; past the last lot its unit cost goes on."""
    value, before = Fraction(0), Fraction(0)
    for lot in receipts:
        if taken <= before + lot.amount or lot is receipts[-1]:
            return value + (taken - before) * lot.value / lot.amount
        value, before = value + lot.value, before + lot.amount
    raise ValueError("nothing was received")


def _average_by_day(receipts: Sequence[Receipt], issues: Sequence[Issue]) -> Callable[[date], Fraction]:
    """The moving average after the receipts of each day; before the first receipt, that after it."""
    averages: list[tuple[date, Fraction]] = []
    average, received = Fraction(0), Fraction(0)
    for day, arrived in itertools.groupby(receipts, key=lambda receipt: receipt.day):
        lots = list(arrived)
        gone = sum((issue.amount for issue in issues if issue.day < day), Fraction(0))
        # What came back before anything was received is worth what the first receipt is.
        balance = max(Fraction(0), received - gone) if averages else Fraction(0)
        amount = sum(lot.amount for lot in lots)
        average = (balance * average + sum(lot.value for lot in lots)) / (balance + amount)
        received += amount
        averages.append((day, average))

    def on(day: date) -> Fraction:
        return [unit for since, unit in averages if since <= day or since == averages[0][0]][-1]

    return on


# What is left of each lot


class LotLeft(NamedTuple):
    row: int  # of the receipt in its log
    left: Fraction
    value: int | None


def lots_left(card: Card) -> list[LotLeft]:
    """Every lot with what is left of it, oldest used first. Where nothing is short they add up to what is left."""
    used = card.taken
    left, before = [], Fraction(0)
    for lot in card.receipts:
        left.append(max(Fraction(0), min(lot.amount, before + lot.amount - used)))
        before += lot.amount
    values = _shared_by_average(card, left) if card.method == "average" else _kept_by_lot(card, left)
    return [LotLeft(lot.row, *rest) for lot, *rest in zip(card.receipts, left, values, strict=True)]


def _kept_by_lot(card: Card, left: Sequence[Fraction]) -> list[int | None]:
    """A whole lot keeps its value; the one begun keeps what is not spent of it."""
    if card.value is None:
        return [None] * len(left)
    whole = [lot.value if rest == lot.amount else 0 for lot, rest in zip(card.receipts, left, strict=True)]
    return [
        card.value - sum(whole) if 0 < rest < lot.amount else kept
        for lot, rest, kept in zip(card.receipts, left, whole, strict=True)
    ]


def _shared_by_average(card: Card, left: Sequence[Fraction]) -> list[int | None]:
    if card.value is None:
        return [None] * len(left)
    if not sum(left):
        return [0] * len(left)
    to_date = [rounded(card.value * part / sum(left)) for part in itertools.accumulate(left)]
    return [now - before for now, before in zip(to_date, [0, *to_date], strict=False)]


# Which lots a batch is made of


class Took(NamedTuple):
    """An issue took from a lot. How: noted by the maker, or assumed by what was open or what was oldest."""

    tab: str
    row: object
    thing: str
    lot: int  # the receipt's row
    how: str  # noted, opened, oldest


def took(card: Card) -> list[Took]:
    found = []
    for line in card.lines:
        if line.issue.amount > 0:
            how, lots = _lots_of(card, line)
            found += [Took(line.issue.tab, line.issue.row, card.thing, lot.row, how) for lot in lots]
    return found


def _lots_of(card: Card, line: Taken) -> tuple[str, list[Receipt]]:
    issue = line.issue
    if issue.lot:
        return "noted", [lot for lot in card.receipts if lot.lot == issue.lot]
    opened = [lot for lot in card.receipts if lot.opened_on and lot.opened_on <= issue.day]
    if opened:
        last = max(lot.opened_on for lot in opened)
        return "opened", [[lot for lot in opened if lot.opened_on == last][-1]]
    lots, before = [], Fraction(0)
    for lot in card.receipts:
        if before < line.to_date and line.to_date - issue.amount < before + lot.amount:
            lots.append(lot)
        before += lot.amount
    return "oldest", lots
