"""The year's records worked out in exact fractions, from the words of its rules and from no formula.

What the rules leave open is decided here:

- Freight of a document is shared by packs times price in cents, before discount. A line without a document number is
  a document by itself.
- On one day come receipts, then what batches used (by the batch log's row, then the recipe's line), then moves, then
  sales, then market lines, then the parts of sets that nobody had packed (by the set's first row among recipes, then
  in the order of the lines that took them, then by the recipe's line), then counts.
- The balance that a moving average starts from is what was received less what was used before the day, and nothing
  where that is below nothing. (So a receipt that only fills a hole leaves no stock behind.)
- What goes back to a supplier is a move. It costs what any other issue costs; the credit is money and no part of stock.
- A price, a wage or a recipe holds from its own day on; of two rows from one day the lower row holds. A batch that no
  row holds for is refused, and so is a set that has to take its parts on such a day.
- Waste goes by the kind of the material in the recipe. An amount that was weighed has its waste in it already.
- Where minutes stand for hours they are for the pieces planned. A maker's unpaid time is no part of making cost.
- The wax that sets the cure is the recipe's, not what stood in for it. A set needs no cure of its own. Candles there
  at the start cure from the day they were poured, by the recipe of that day.
- A batch without a good candle leaves no lot: its cost is lost, and no part of the candles' stock.
- A set that was packed is a batch whose recipe lists candles: it uses them, on its day, as a pour uses wax. A set of
  `Year.sets` holds them instead: whenever one leaves, in whatever log, its candles leave with it, at that line's place.
- Of such a set as many were packed as the batch log has good ones, on whatever day, and those there at the start too.
  The lines that take it out or bring it back are gone through by day, by log and as typed; what a market line gave away
  comes after what it sold. A line's pieces are added to the packed sets gone before it, or taken off where they came
  back; but no more are gone after it than were ever packed, and no fewer than none (or than before it, where a count
  had made that fewer than none). So one that comes back is a packed one as long as any of these are gone.
- The pieces of a line that this leaves over were not packed, and are no part of the set's stock. When such a piece
  leaves it takes, besides its candles, the parts of the set's recipe of that day, with waste as a batch has it; when it
  comes back it brings them back. It costs its candles and those parts: no time is charged for it, and what was
  otherwise in a batch does not hold for it. So a box leaves when its set is packed or when its set leaves, never twice.
  A line in which no piece was packed takes nothing from the set's stock, and needs no cost of it.
- A count of such a set is of packed ones: those received by that evening, less those counted, are gone after it.
- A count is of a day's end, when its sales are over too. Its difference is taken before the count itself becomes a
  move, and after earlier counts have. More than there should be comes back at the cost it went out at. What is at a
  shop is the maker's still, and not counted: it is none of what is missing.
- A thing used but never received has no cost; nor has what was made of it, nor any candle of a product of which one
  batch has none.
- By average, the lots left are those of first in first out, each with its share of the value, rounded to date.
- A lot that nobody noted is the last one opened by that day; where none was, what first in first out takes from, even
  from a lot that came later. What goes beyond the last lot comes from none.
- The last landed cost is of the latest receipt, what was there at the start too. The average is what is left divided
  into what it is worth; where nothing is left, the last landed cost.
- Below the reorder point is below it, not at it.
"""

import functools
from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from fractions import Fraction
from math import floor
from typing import NamedTuple, TypeVar

from year_cards import PARTS, Card, Issue, Receipt, Taken, Took, card, rounded, sum_or_none, took
from year_records import WEIGHED, Count, Line, Pour, Purchase, Rates, Recipe, Year
from year_selling import at_the_shop, left_stock
from year_sets import SetLine, lines_of_set

Dated = TypeVar("Dated", Recipe, Rates)


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


# What sets took that nobody had packed


class Part(NamedTuple):
    """A part that the unpacked pieces of a line took; below 0 where they brought it back."""

    log: str
    row: object  # there
    of: str  # the set
    thing: str
    amount: Fraction
    day: date


def parts_taken(year: Year, sets: Mapping[str, Sequence[SetLine]]) -> list[Part]:
    """By set, by line and by the recipe's line."""
    return [
        Part(
            *line.issue.line,
            name,
            part.thing,
            _weighed_out(year, part.thing, part.each * line.unpacked),
            line.issue.day,
        )
        for name, lines in sets.items()
        for line in lines
        if line.unpacked
        for part in recipe_of(year, name, line.issue.day).lines
    ]


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
    sets: dict[str, list[SetLine]]  # of each set that holds its candles, what took it out, in order
    parts: list[Part]
    cards: dict[str, Card]  # by material or product

    @property
    def lines(self) -> dict[tuple[str, object], Taken]:
        """Every issue by its tab and its row there: of a used line, its batch and the thing in the recipe.

        Of a part, the set's log, its row there and the part. A candle that left in a set is no line of its own, nor
        is a line of sets with none in it that was packed: see `costs`.
        """
        every = [line for card in self.cards.values() for line in card.lines]
        return {(line.issue.tab, line.issue.row): line for line in every if not line.issue.part_of}

    @functools.cached_property
    def costs(self) -> dict[tuple[str, object], list[int | None]]:
        """What a line of a log took out, by its tab and its row: of a set its own cost, its candles' and its parts'."""
        found: dict[tuple[str, object], list[int | None]] = {}
        for each in self.cards.values():
            for line in each.lines:
                found.setdefault(line.issue.line, []).append(line.cost)
        return found

    def took(self) -> list[Took]:
        """Every lot that anything took from."""
        return [each for card in self.cards.values() for each in took(card)]

    def lots_of(self, batch: str) -> list[Took]:
        """The lots in a batch; in a set, of its candles too."""
        return [each for each in self.took() if each.tab == "Used" and each.row[0] == batch]

    def batches_of(self, thing: str, lot: int) -> list[str]:
        """The batches that took from a lot, by its row in its log: each with how that is known, in order of use."""
        taken = [each for each in took(self.cards[thing]) if each.tab == "Used" and each.lot == lot]
        return list(dict.fromkeys(f"{each.row[0]} {each.how}" for each in taken))


def worked_out(year: Year) -> Worked:
    """Pieces of sets that hold their candles first, which say what unpacked ones took of materials.

    Then what things cost: materials, those sets, with which their candles leave; then candles, and what used them.
    """
    refuse_what_is_wrong(year)
    came, used = bought(year), used_lines(year)
    products = list(dict.fromkeys(recipe.product for recipe in year.recipes))
    sets = {recipe.product for recipe in year.recipes if any(line.thing in products for line in recipe.lines)}
    cards: dict[str, Card] = {}
    costs: dict[str, list[int | None]] = {pour.batch: [] for pour in year.pours}
    holds = {each.name: each.holds for each in year.sets}
    counts = [replace(each, counted=each.counted + _at_shops(year, each)) for each in year.counts]
    of_sets = {name: lines_of_set(year, name, _issues(year, name, used), counts) for name in products if name in holds}
    parts = parts_taken(year, of_sets)
    with_sets: defaultdict[str, list[Issue]] = defaultdict(list)
    for part in parts:
        with_sets[part.thing].append(Issue(PARTS, (part.log, part.row, part.thing), part.day, part.amount))

    def add(thing: str, receipts: list[Receipt]) -> None:
        issues = _packed(of_sets[thing]) if thing in of_sets else _issues(year, thing, used)
        cards[thing] = card(thing, year.method, receipts, [*issues, *with_sets[thing]], counts)
        for line in holds.get(thing, ()):
            with_sets[line.thing] += _with_a_set(of_sets[thing], cards[thing], line)
        for line in cards[thing].lines:
            if line.issue.tab == "Used":
                costs[line.issue.row[0]].append(line.cost)

    for material in year.materials:
        add(material.name, _purchased(year, material.name, came))
    for product in sorted(products, key=lambda product: (product not in holds, product in sets)):
        add(product, _poured(year, product, costs))
    batches = [made(year, pour, costs[pour.batch]) for pour in year.pours]
    return Worked(year, came, used, batches, of_sets, parts, cards)


def _at_shops(year: Year, count: Count) -> int:
    """Pieces that lay at shops on the evening of a count."""
    lines = [line for line in year.selling.sales if line.product == count.thing and line.day <= count.day]
    return sum(map(at_the_shop, lines))


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
    parts = (
        *(line for recipe in year.recipes for line in recipe.lines),
        *(line for each in year.sets for line in each.holds),
    )
    if wrong := {each.name for each in year.sets} & {line.thing for line in parts}:
        raise ValueError(f"sets that hold their candles are part of nothing else: {sorted(wrong)}")
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
    """What went out of a thing, but for what counts and sets take along."""
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
        *(
            Issue(left.log, left.row, left.day, Fraction(left.pieces))
            for left in left_stock(year.selling)
            if left.product == thing
        ),
    ]


def _packed(lines: Iterable[SetLine]) -> list[Issue]:
    """What a set's own stock lost, line by line."""
    return [line.issue._replace(amount=line.packed) for line in lines if line.packed]


def _with_a_set(lines: Iterable[SetLine], card: Card, held: Line) -> list[Issue]:
    """The candles of one kind that left as a set did: all of a line's pieces, and what counts made of it."""
    counted = [line.issue for line in card.lines if line.issue.tab == "Counts"]
    return [
        issue._replace(amount=issue.amount * held.each, lot="", part_of=card.thing)
        for issue in (*(line.issue for line in lines), *counted)
    ]
