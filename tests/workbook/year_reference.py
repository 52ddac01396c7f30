"""The year's records worked out in exact fractions, from the words of its rules and from no formula.

What the rules leave open is decided here:

- Freight of a document is shared by packs times price in cents, before discount. A line without a document number is
  a document by itself.
- On one day come receipts, then what batches used (by the batch log's row, then the recipe's line), then moves, then
  counts.
- The balance that a moving average starts from is what was received less what was used before the day, and nothing
  where that is below nothing. (So a receipt that only fills a hole leaves no stock behind.)
- What goes back to a supplier is a move. It costs what any other issue costs; the credit is money and no part of stock.
- A price, a wage or a recipe holds from its own day on; of two rows from one day the lower row holds. A batch that no
  row holds for is refused.
- Waste goes by the kind of the material in the recipe. An amount that was weighed has its waste in it already.
- Where minutes stand for hours they are for the pieces planned. A maker's unpaid time is no part of making cost.
- The wax that sets the cure is the recipe's, not what stood in for it. A set needs no cure of its own. Candles there
  at the start cure from the day they were poured, by the recipe of that day.
- A batch without a good candle leaves no lot: its cost is lost, and no part of the candles' stock.
- A set that was packed is a batch whose recipe lists candles: it uses them, on its day, as a pour uses wax.
- A count is of a day's end. Its difference is taken before the count itself becomes a move, and after earlier counts
  have. More than there should be comes back at the cost it went out at.
- A thing used but never received has no cost; nor has what was made of it, nor any candle of a product of which one
  batch has none.
- By average, the lots left are those of first in first out, each with its share of the value, rounded to date.
- A lot that nobody noted is the last one opened by that day; where none was, what first in first out takes from, even
  from a lot that came later. What goes beyond the last lot comes from none.
- Below the reorder point is below it, not at it.
"""

import itertools
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from fractions import Fraction
from math import floor
from typing import NamedTuple, TypeVar

from year_records import WEIGHED, Count, Pour, Purchase, Rates, Recipe, Year

Dated = TypeVar("Dated", Recipe, Rates)


def rounded(amount: Fraction) -> int:
    """To a whole number, half away from zero."""
    whole = floor(abs(amount) + Fraction(1, 2))
    return whole if amount >= 0 else -whole


# What was bought


def shares(charge: int, values: Sequence[int]) -> list[int]:
    """A charge over lines in proportion to their values: cents left over go to the largest fractions, then the first.

    Fractions are compared to six decimals.
    """
    if sum(values) <= 0:
        raise ValueError("a charge needs a line of some value to stand on")
    exact = [Fraction(charge * value, sum(values)) for value in values]
    whole = [floor(_to_six(part)) for part in exact]
    rest = [_to_six(part - taken) for part, taken in zip(exact, whole, strict=True)]
    first = sorted(range(len(values)), key=lambda line: (-rest[line], line))[: charge - sum(whole)]
    return [taken + (line in first) for line, taken in enumerate(whole)]


def _to_six(amount: Fraction) -> Fraction:
    return Fraction(rounded(amount * 10**6), 10**6)


class Bought(NamedTuple):
    """What a line of the purchases brought, and what it cost in all."""

    amount: Fraction
    share: int  # of the document's charges
    landed: int


def bought(year: Year) -> list[Bought]:
    share = _shares_by_row(year.purchases)
    packs = {material.name: material.pack for material in year.materials}
    return [
        Bought(line.amount, 0, line.value)
        if line.kind == "opening"
        else Bought(
            line.packs * packs[line.material],
            share[place],
            rounded(line.price * line.packs) - line.discount + share[place] + line.tax,
        )
        for place, line in enumerate(year.purchases)
    ]


def _shares_by_row(purchases: Sequence[Purchase]) -> dict[int, int]:
    documents: dict[object, list[int]] = {}
    for place, line in enumerate(purchases):
        documents.setdefault(line.document or place, []).append(place)
    found = dict.fromkeys(range(len(purchases)), 0)
    for places in documents.values():
        lines = [purchases[place] for place in places]
        charge = sum(line.charges for line in lines)
        if charge:
            found |= zip(places, shares(charge, [rounded(line.price * line.packs) for line in lines]), strict=True)
    return found


# What batches used


def in_force(rows: Iterable[Dated], day: date) -> Dated:
    """The row that holds on a day."""
    held = [row for row in rows if row.since is None or row.since <= day]
    if not held:
        raise ValueError(f"no row holds on {day}")
    latest = max(row.since or date.min for row in held)
    return [row for row in held if (row.since or date.min) == latest][-1]


def recipe_of(year: Year, product: str, day: date) -> Recipe:
    return in_force([recipe for recipe in year.recipes if recipe.product == product], day)


def pieces_planned(pour: Pour) -> int:
    return pour.planned if pour.planned is not None else pour.good + pour.seconds + pour.scrapped + pour.tests


class Used(NamedTuple):
    """A thing that a batch used, by its line of the recipe."""

    batch: str
    planned: str  # the thing in the recipe
    thing: str
    amount: Fraction
    day: date
    lot: str  # as noted


def used_lines(year: Year) -> list[Used]:
    """What every batch used, by the batch log's rows and the recipe's lines."""
    changes = {(change.batch, change.material): change for change in year.changes}
    lines = []
    for pour in year.pours:
        if pour.kind == "opening":
            continue
        for line in recipe_of(year, pour.product, pour.day).lines:
            change = changes.pop((pour.batch, line.thing), None)
            amount = _weighed_out(year, line.thing, line.each * pieces_planned(pour))
            thing, lot = line.thing, ""
            if change:
                thing, lot = change.instead or thing, change.lot
                amount = amount if change.weighed is None else change.weighed
            lines.append(Used(pour.batch, line.thing, thing, amount, pour.day, lot))
    if changes:
        raise ValueError(f"changes of lines that are not there, or typed twice: {sorted(changes)}")
    return lines


def _weighed_out(year: Year, thing: str, amount: Fraction) -> Fraction:
    kinds = {material.name: material.kind for material in year.materials}
    return amount / (1 - year.waste) if kinds.get(thing) in WEIGHED else amount


# What came in and went out of one thing


class Receipt(NamedTuple):
    """What came in: a purchase, or the good candles of a batch."""

    row: int  # in its log
    day: date
    amount: Fraction
    value: int | None  # None where it could not be worked out
    lot: str
    opened_on: date | None = None


class Issue(NamedTuple):
    """What went out."""

    tab: str  # Used, Moves or Counts
    row: object  # there; of a used line its batch and the thing in the recipe
    day: date
    amount: Fraction
    lot: str = ""  # as noted


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


def sum_or_none(amounts: Iterable[int | None]) -> int | None:
    """A sum, or None where a part of it is not known."""
    known = list(amounts)
    return None if None in known else sum(known)


def card(thing: str, method: str, receipts: Iterable[Receipt], issues: Iterable[Issue], year: Year) -> Card:
    receipts = tuple(sorted(receipts, key=lambda receipt: (receipt.day, receipt.row)))
    issues, differences = _with_counts(thing, receipts, sorted(issues, key=lambda issue: issue.day), year.counts)
    spent = spent_to_date(method, receipts, issues)
    lines, to_date, before = [], Fraction(0), 0
    for issue, so_far in zip(issues, spent, strict=True):
        to_date += issue.amount
        cost = None if so_far is None else rounded(so_far) - before
        before = 0 if so_far is None else rounded(so_far)
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
            behind = sum(issue.day <= day for issue in issues)
            issues.insert(behind, Issue("Counts", row, day, -differences[row]))
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
        balance = max(Fraction(0), received - gone)
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


# What candles cost, and when they are ready


class Made(NamedTuple):
    """A batch: what it took and what it cost. None where a material has no cost."""

    pieces: int  # planned
    hours: Fraction
    materials: int | None
    labour: int
    overhead: int
    cost: int | None
    ready_on: date


def made(year: Year, pour: Pour, costs_used: Iterable[int | None]) -> Made:
    """A batch from the costs of what it used."""
    if pour.kind == "opening":
        return Made(pour.good, Fraction(0), 0, 0, 0, pour.value, ready_on(year, pour))
    recipe, rates, pieces = (
        recipe_of(year, pour.product, pour.day),
        in_force(year.rates, pour.day),
        pieces_planned(pour),
    )
    hours = (recipe.minutes * pieces + recipe.setup) / 60 if pour.hours is None else pour.hours
    materials = sum_or_none(costs_used)
    labour = rounded(hours * recipe.paid_share * rates.paid_rate)
    overhead = rounded(hours * rates.overhead / year.season_hours)
    cost = None if materials is None else materials + labour + overhead
    return Made(pieces, hours, materials, labour, overhead, cost, ready_on(year, pour))


def ready_on(year: Year, pour: Pour) -> date:
    poured = pour.poured_on or pour.day
    waxes = {material.name: material.cure_days for material in year.materials if material.kind == "wax"}
    things = [line.thing for line in recipe_of(year, pour.product, poured).lines]
    return poured + timedelta(days=max((waxes[thing] for thing in things if thing in waxes), default=0))


# All of it


@dataclass(frozen=True)
class Worked:
    """A year worked out."""

    year: Year
    bought: list[Bought]  # by the purchases' rows
    used: list[Used]
    made: list[Made]  # by the batch log's rows
    cards: dict[str, Card]  # by material or product

    @property
    def lines(self) -> dict[tuple[str, object], Taken]:
        """Every issue by its tab and its row there: of a used line, its batch and the thing in the recipe."""
        return {(line.issue.tab, line.issue.row): line for card in self.cards.values() for line in card.lines}

    def took(self) -> list[Took]:
        """Every lot that anything took from: read by lot, or by batch."""
        return [each for card in self.cards.values() for each in took(card)]


def worked_out(year: Year) -> Worked:
    """Materials first, then candles, then sets: each needs the costs of those before."""
    refuse_what_is_wrong(year)
    came, used = bought(year), used_lines(year)
    products = list(dict.fromkeys(recipe.product for recipe in year.recipes))
    sets = {recipe.product for recipe in year.recipes if any(line.thing in products for line in recipe.lines)}
    cards: dict[str, Card] = {}
    costs: dict[str, list[int | None]] = {pour.batch: [] for pour in year.pours}

    def add(thing: str, receipts: list[Receipt]) -> None:
        cards[thing] = card(thing, year.method, receipts, _issues(year, thing, used), year)
        for line in cards[thing].lines:
            if line.issue.tab == "Used":
                costs[line.issue.row[0]].append(line.cost)

    for material in year.materials:
        add(material.name, _purchased(year, material.name, came))
    for product in sorted(products, key=lambda product: product in sets):
        add(product, _poured(year, product, costs))
    return Worked(year, came, used, [made(year, pour, costs[pour.batch]) for pour in year.pours], cards)


def refuse_what_is_wrong(year: Year) -> None:
    """Only what was typed right has an answer here."""
    things = {material.name for material in year.materials} | {recipe.product for recipe in year.recipes}
    named = [
        *(line.material for line in year.purchases),
        *(pour.product for pour in year.pours),
        *(line.thing for recipe in year.recipes for line in recipe.lines),
        *(change.instead for change in year.changes if change.instead),
        *(row.thing for row in (*year.moves, *year.counts)),
    ]
    if unknown := set(named) - things:
        raise ValueError(f"things that nobody set up: {sorted(unknown)}")
    if len({pour.batch for pour in year.pours}) < len(year.pours):
        raise ValueError("a batch number is used twice")
    if any((line.amount if line.kind == "opening" else line.packs) <= 0 for line in year.purchases):
        raise ValueError("what came in is more than nothing; what goes back is a move")


def _purchased(year: Year, material: str, came: Sequence[Bought]) -> list[Receipt]:
    return [
        Receipt(row, line.day, brought.amount, brought.landed, line.lot, line.opened_on)
        for row, (line, brought) in enumerate(zip(year.purchases, came, strict=True), start=1)
        if line.material == material
    ]


def _poured(year: Year, product: str, costs: Mapping[str, list[int | None]]) -> list[Receipt]:
    return [
        Receipt(row, pour.day, Fraction(pour.good), made(year, pour, costs[pour.batch]).cost, pour.batch)
        for row, pour in enumerate(year.pours, start=1)
        if pour.product == product and pour.good
    ]


def _issues(year: Year, thing: str, used: Iterable[Used]) -> list[Issue]:
    """What went out of a thing, in the order it has within a day. Sales of candles will stand here too."""
    return [
        *(
            Issue("Used", (line.batch, line.planned), line.day, line.amount, line.lot)
            for line in used
            if line.thing == thing
        ),
        *(
            Issue("Moves", row, move.day, move.amount, move.lot)
            for row, move in enumerate(year.moves, start=1)
            if move.thing == thing
        ),
    ]
