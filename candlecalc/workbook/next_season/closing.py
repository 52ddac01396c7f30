"""What a season closes with: each lot and batch of which something is left, and what stops it from being closed."""

import datetime
from collections import defaultdict
from collections.abc import Iterable, Iterator
from itertools import groupby
from typing import Any, NamedTuple

from candlecalc.declaration.term import shown
from candlecalc.quantities.rounding import round_half_away
from candlecalc.season.season import Row, problems
from candlecalc.season.tables import TABLES
from candlecalc.season.tables.books import ENTRIES, EXPENSES
from candlecalc.season.tables.carried import STILL_OPEN
from candlecalc.season.tables.once import AVERAGE
from candlecalc.season.tables.sales import COMPLAINTS, MARKET_DAYS, MARKET_LINES, SALES
from candlecalc.season.tables.set_up import MATERIALS, RECIPES
from candlecalc.season.tables.stock import COUNTS, INSTEAD, MOVES, POURS, PURCHASES
from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.next_season.at_shops import there, too_many
from candlecalc.workbook.next_season.money import not_known
from candlecalc.workbook.next_season.owed import overspent
from candlecalc.workbook.reading.spots import Spots
from candlecalc.workbook.reports.report import Calculated, Finding

# What a season is closed by. A row of theirs that is not right would be missing from what is left.
LOGS = (PURCHASES, POURS, INSTEAD, MOVES, COUNTS, SALES, MARKET_DAYS, MARKET_LINES, EXPENSES, STILL_OPEN)
DATED = tuple(table for table in (*LOGS, ENTRIES, COMPLAINTS) if "date" in table.keys)
DIGITS, SEEN = 9, 6  # of an amount: as lists in order have it, and as Stock shows it; what is smaller is no lot
FIRST_PLACE = 2  # formulas count a list's rows from its head, which is 1


class Stock(NamedTuple):
    """Things in stock: the tab with a row for each, that with their lots in order, and the log whose lines lots are."""

    tab: str
    lots: str
    log: str
    named_on: str


OF_MATERIALS = Stock("stock", "lots", PURCHASES.key, MATERIALS.key)
OF_CANDLES = Stock("candles", "made", POURS.key, RECIPES.key)


class Left(NamedTuple):
    """What is left of a lot or a batch: its place in its log, how much, and what that is worth."""

    place: int
    amount: float
    value: float


def left_of(calculated: Calculated, stock: Stock) -> list[Left]:
    """Every lot with something left, in the order in which they are used up.

    What they are worth adds up to what the tab says of each thing, to the coin.
    """
    found: list[Left] = []
    for thing, lots in groupby(_lots(calculated, stock), key=lambda lot: lot["thing"]):
        place = int(thing) - FIRST_PLACE
        of_thing = {key: calculated.value(stock.tab, key, place) for key in ("left", "value", "gone", "spent")}
        found += _parted(list(lots), of_thing, calculated)
    return found


def _lots(calculated: Calculated, stock: Stock) -> Iterator[dict[str, Any]]:
    keys = ("thing", "line", "came", "worth")
    for row in range(calculated.room(stock.lots)):
        lot = {key: calculated.value(stock.lots, key, row) for key in keys}
        if isinstance(lot["thing"], (int, float)):
            yield lot


def _parted(lots: list[dict[str, Any]], whole: dict[str, Any], calculated: Calculated) -> Iterator[Left]:
    """A thing's amount and value over its lots, the oldest used up first: each gets what is more than those before.

    By moving average all that is left has one price.
    """
    averaged = calculated.season.stock == AVERAGE
    so_far = worth_so_far = 0.0
    for lot in lots:
        amount = round_half_away(lot["came"] - whole["gone"], DIGITS)
        if round_half_away(amount, SEEN) <= 0:
            continue
        share = amount / (lots[-1]["came"] - whole["gone"])
        worth = whole["value"] * share if averaged else lot["worth"] - whole["spent"]
        worth = round_half_away(worth, calculated.plan.coin_digits)
        value = round_half_away(worth - worth_so_far, calculated.plan.coin_digits)
        yield Left(int(lot["line"]) - FIRST_PLACE, round_half_away(amount - so_far, DIGITS), value)
        so_far, worth_so_far = amount, worth


# --- what stops it ------------------------------------------------------------------------------


def stopped_by(calculated: Calculated, spots: Spots, first_day: datetime.date) -> list[Finding]:
    """All that is to be put right before a season can be closed on the day before the next one's first."""
    logs = {table.title for table in LOGS}
    rooms = {key: calculated.room(key) for key in calculated.season.tables}
    typed = [
        _entry(spots, each.tab, each.column, each.row, each.words)
        for each in problems(calculated.season, rooms)
        if each.tab in logs
    ]
    return typed or [
        *_too_late(calculated, spots, first_day),
        *(finding for stock in (OF_MATERIALS, OF_CANDLES) for finding in _not_there(calculated, stock)),
        *_not_booked(calculated, spots),
        *_not_known(calculated, spots),
        *(_entry(spots, SALES.title, "pieces", place, words) for place, words in too_many(calculated.season)),
        *(
            _entry(spots, SALES.title, "price", place, words)
            for place, words in overspent(calculated.season, first_day)
        ),
    ]


def _entry(spots: Spots, title: str, key: str, row: int, words: str) -> Finding:
    letter, first = spots[title, key]
    return Finding(title, f"{letter}{first + row}", words, row)


def _too_late(calculated: Calculated, spots: Spots, first_day: datetime.date) -> Iterator[Finding]:
    for table in DATED:
        for place, row in calculated.season.rows(table.key):
            day = row["date"]
            if isinstance(day, datetime.date) and day >= first_day:
                words = f"{day} is in the next season, from {first_day} on: type this line there, or let it begin later"
                yield _entry(spots, table.title, "date", place, words)


def _not_there(calculated: Calculated, stock: Stock) -> Iterator[Finding]:
    """Less than nothing, or what cannot be told."""
    layout = calculated.plan.layouts[stock.tab]
    names = dict(calculated.season.rows(stock.named_on))
    at_shops: dict[str, float] = defaultdict(float)
    for each in there(calculated.season) if stock is OF_CANDLES else ():
        at_shops[each.product.casefold()] += each.pieces
    for place, name in _first_rows(names, TABLES[stock.named_on].fields[0].key):
        left, value = (calculated.value(stock.tab, key, place) for key in ("left", "value"))
        cell = f"{layout.letters['left']}{FIRST_ROW + place}"
        if not (isinstance(left, (int, float)) and isinstance(value, (int, float))):
            words = f"{name}: what is left, and what that is worth, cannot be told: see candlecalc check"
            yield Finding(layout.title, cell, words)
        elif left < 0:
            lacking = "a purchase" if stock is OF_MATERIALS else "a batch"
            words = f"{name}: {shown(-left)} more gone than there were: type {lacking} that is missing, or count them"
            yield Finding(layout.title, cell, words)
        elif value < 0 or (left == 0 and value != 0):
            words = (
                f"{name}: {shown(left)} left would be worth {value:.2f}: more was gone one day than had come by then; "
                "see the days of what came and what went"
            )
            yield Finding(layout.title, cell, words)
        elif stock is OF_CANDLES:
            over = at_shops[name.casefold()] + calculated.value(stock.tab, "in_sets", place) - left
            yield from _elsewhere(layout.title, cell, name, over)


def _elsewhere(title: str, cell: str, name: str, over: float) -> Iterator[Finding]:
    """More at shops and in packed sets than there are."""
    if over > 0:
        words = (
            f"{name}: {shown(over)} more are at shops or in packed sets than there are: see Sales and the batches of "
            "the sets, or count them"
        )
        yield Finding(title, cell, words)


def _not_known(calculated: Calculated, spots: Spots) -> Iterator[Finding]:
    for table, place in not_known(calculated):
        words = "what this line came to cannot be told: see candlecalc check"
        yield _entry(spots, TABLES[table].title, "date", place, words)


def _first_rows(rows: dict[int, Row], key: str) -> Iterator[tuple[int, str]]:
    """Each name with its first row: records go by that."""
    seen: set[str] = set()
    for place, row in rows.items():
        name = str(row[key])
        if row[key] is not None and name.casefold() not in seen:
            seen.add(name.casefold())
            yield place, name


def _not_booked(calculated: Calculated, spots: Spots) -> Iterator[Finding]:
    """The last count of a thing, where it found something else than there should be, and was not taken over."""
    for place, row in _last_counts(calculated.season.rows(COUNTS.key)):
        off = calculated.value(COUNTS.key, "difference", place)
        if row["kept"] != "yes" and isinstance(off, (int, float)) and off != 0:
            name = row["material"] or row["product"]
            how = "too many" if off > 0 else "missing"
            words = (
                f"{name}: by the count of {row['date']} {shown(abs(off))} are {how}, and not booked: type yes under "
                "Take over, or find them"
            )
            yield _entry(spots, COUNTS.title, "kept", place, words)


def _last_counts(rows: Iterable[tuple[int, Row]]) -> list[tuple[int, Row]]:
    """Of each thing the latest count; of two on one day the lower."""
    last: dict[tuple[str, str], tuple[int, Row]] = {}
    for place, row in rows:
        thing = (str(row["material"]).casefold(), str(row["product"]).casefold())
        if thing not in last or str(row["date"]) >= str(last[thing][1]["date"]):
            last[thing] = (place, row)
    return sorted(last.values(), key=lambda each: each[0])
