"""A journal: what happened, row by row, gathered into entries whose two sides agree to the coin.

Money is whole coins of the currency, debits above zero and credits below.
"""

import datetime
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from typing import NamedTuple

from candlecalc.season.chart import CAPITAL, RESULT, Account

Day = datetime.date
Chart = Mapping[str, Account]
OPENING, BROUGHT_FORWARD, LATE = "OPENING ", "BROUGHT FORWARD", "LATE "  # how references of such entries begin


class Part(NamedTuple):
    """What one account gets of an event; a code where it counts for tax."""

    account: str
    coins: int
    tax_code: str = ""


class Event(NamedTuple):
    """What a row of a tab says happened, and the entry that it goes into."""

    day: Day
    reference: str
    payee: str
    memo: str
    parts: tuple[Part, ...]
    tab: str
    row: int
    opening: bool = False  # it was there when the records began


class Line(NamedTuple):
    account: str
    coins: int
    tax_code: str
    memo: str
    tab: str
    rows: str


@dataclass(frozen=True)
class Entry:
    reference: str
    day: Day
    payee: str
    lines: tuple[Line, ...]


@dataclass(frozen=True)
class Journal:
    """The entries of a time, in order of their days, and the accounts that they may use."""

    first: Day
    last: Day
    currency: str
    digits: int
    chart: Chart
    entries: tuple[Entry, ...]

    def account(self, name: str) -> Account:
        return self.chart[name.casefold()]

    def numbered(self) -> Iterator[tuple[int, int, Entry, Line]]:
        """Each line with the numbers of its entry and of itself."""
        for number, entry in enumerate(self.entries, start=1):
            for place, line in enumerate(entry.lines, start=1):
                yield number, place, entry, line

    def money(self, coins: int) -> str:
        return as_money(coins, self.digits)


def as_money(coins: int, digits: int) -> str:
    """Coins as an amount with its decimals: 5 of a currency of hundredths is 0.05."""
    sign, whole = "-" if coins < 0 else "", str(abs(coins)).rjust(digits + 1, "0")
    return f"{sign}{whole[:-digits]}.{whole[-digits:]}" if digits else f"{sign}{whole}"


def as_number(coins: int, digits: int) -> Decimal:
    """The same as a number."""
    return Decimal(as_money(coins, digits))


def coins_in(text: str | None, digits: int) -> int:
    """The coins of an amount as a file of ours has it; of a blank, none."""
    return int(Decimal(text or 0).scaleb(digits))


def added(amounts: Iterable[tuple[str, int]]) -> dict[str, int]:
    """What each of some names comes to."""
    found: dict[str, int] = {}
    for name, coins in amounts:
        found[name] = found.get(name, 0) + coins
    return found


def balances(entries: Iterable[Entry]) -> dict[str, int]:
    """What each account comes to."""
    return added((line.account, line.coins) for entry in entries for line in entry.lines)


def sums(events: Iterable[Event]) -> dict[str, int]:
    """What each account comes to by events."""
    return added((part.account, part.coins) for event in events for part in event.parts)


def entries_of(events: Iterable[Event], closed_to: Day | None = None) -> list[Entry]:
    """Events gathered by their references: none across the day to which books are closed."""
    gathered: dict[tuple[str, bool], _Gathered] = {}
    for event in events:
        closed = closed_to is not None and event.day <= closed_to
        gathered.setdefault((event.reference, closed), _Gathered(event)).add(event)
    found = [entry for each in gathered.values() if (entry := each.entry()).lines]
    # On its day what was there at the start comes first.
    return sorted(found, key=lambda entry: (entry.day, not entry.reference.startswith(OPENING), entry.reference))


@dataclass
class _Gathered:
    """An entry as its events come in; its day is that of the last of them."""

    first: Event
    day: Day = datetime.date.min
    coins: dict[tuple[str, str, str, str], int] = field(default_factory=dict)
    rows: dict[tuple[str, str, str, str], set[int]] = field(default_factory=dict)

    def add(self, event: Event) -> None:
        self.day = max(self.day, event.day)
        for part in event.parts:
            key = (part.account, part.tax_code, event.memo, event.tab)
            self.coins[key] = self.coins.get(key, 0) + part.coins
            self.rows.setdefault(key, set()).add(event.row)

    def entry(self) -> Entry:
        lines = tuple(
            Line(account, coins, code, memo, tab, ranges(self.rows[account, code, memo, tab]))
            for (account, code, memo, tab), coins in self.coins.items()
            if coins
        )
        return Entry(self.first.reference, self.day, self.first.payee, lines)


def ranges(rows: Iterable[int]) -> str:
    """Rows as people write them: 4-6, 9."""
    found: list[list[int]] = []
    for row in sorted(rows):
        if found and row == found[-1][1] + 1:
            found[-1][1] = row
        else:
            found.append([row, row])
    return ", ".join(str(first) if first == last else f"{first}-{last}" for first, last in found)


def owners(account: str, chart: Chart) -> str:
    """Where an account's balance goes when a time ends: results are the owner's."""
    return CAPITAL if chart[account.casefold()].kind in RESULT else account


def brought_forward(events: Iterable[Event], day: Day, chart: Chart) -> Entry | None:
    """What earlier events come to, as one entry."""
    return balances_of(added((owners(account, chart), coins) for account, coins in sums(events).items()), day)


def balances_of(standing: Mapping[str, int], day: Day) -> Entry | None:
    """Balances before a day, as its entry; none where all are nothing."""
    memo = "balances before this time; leave it out if your books have them"
    lines = tuple(Line(name, coins, "", memo, "all tabs", f"before {day}") for name, coins in standing.items() if coins)
    return Entry(f"{BROUGHT_FORWARD} {day}", day, "Balances brought forward", lines) if lines else None
