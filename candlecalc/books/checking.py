"""Whether a journal holds: each entry balances, on accounts that there are, in its time, and once."""

import datetime
from collections import Counter
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from typing import NamedTuple

from candlecalc.books.journal import added, as_money

Day = datetime.date


class Kept(NamedTuple):
    """An entry as a file has it: what it goes by, and its accounts with coins."""

    name: str
    day: Day
    lines: tuple[tuple[str, int], ...]


class Rules(NamedTuple):
    """What entries are held against."""

    accounts: Collection[str]
    first: Day
    last: Day
    digits: int


def problems(entries: Sequence[Kept], rules: Rules) -> Iterator[str]:
    """Everything wrong with entries, each in words with its entry."""
    for entry in entries:
        over = sum(coins for _, coins in entry.lines)
        if over:
            yield f"entry {entry.name}: debits are {as_money(over, rules.digits)} more than credits"
        if not rules.first <= entry.day <= rules.last:
            yield f"entry {entry.name}: its day, {entry.day}, is not from {rules.first} to {rules.last}"
        for account in dict.fromkeys(account for account, _ in entry.lines if account not in rules.accounts):
            yield f"entry {entry.name}: there is no account {account}"
    counted = Counter(entry.name for entry in entries)
    yield from (f"entry {name}: it is there {times} times" for name, times in counted.items() if times > 1)


def totals(entries: Iterable[Kept]) -> dict[str, int]:
    """What each account comes to; those at nothing left out."""
    found = added(line for entry in entries for line in entry.lines)
    return {account: coins for account, coins in found.items() if coins}


def differences(found: Mapping[str, int], wanted: Mapping[str, int], digits: int, beside: str) -> Iterator[str]:
    """Accounts that do not come to what stands elsewhere."""
    for account in dict.fromkeys([*found, *wanted]):
        one, other = found.get(account, 0), wanted.get(account, 0)
        if one != other:
            yield f"account {account} comes to {as_money(one, digits)}, and {beside} to {as_money(other, digits)}"


class Tie(NamedTuple):
    """Two ways to one sum: by the journal, and by a tab."""

    what: str
    booked: int
    tab: str
    there: int


def untied(ties: Iterable[Tie], digits: int) -> list[str]:
    return [
        f"{tie.what}: the journal has {as_money(tie.booked, digits)}, tab {tie.tab} {as_money(tie.there, digits)}"
        for tie in ties
        if tie.booked != tie.there
    ]
