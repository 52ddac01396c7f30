"""Several workbooks as one time: what one ends with is what the next begins with, to the coin."""

import datetime
from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import NamedTuple

from candlecalc.books.journal import (
    Chart,
    Entry,
    Event,
    Journal,
    Line,
    as_money,
    balances,
    brought_forward,
    entries_of,
    sums,
)
from candlecalc.books.reading import Reading
from candlecalc.season import chart

Day = datetime.date
# What stands in a next workbook by itself; other accounts only where a balance was typed.
TAKEN_OVER = (chart.MATERIALS, chart.CANDLES, chart.OWED_TO_YOU, chart.OWED, chart.HELD)


class Span(NamedTuple):
    """The days that are handed over, and the day to which books are closed."""

    first: Day
    last: Day
    closed_to: Day | None = None


def in_order(reads: Sequence[Reading]) -> list[Reading]:
    """Workbooks by their first days; a ValueError where they do not go together."""
    ordered = sorted(reads, key=lambda read: read.first_day)
    for one, following in zip(ordered, ordered[1:], strict=False):
        if following.first_day <= one.last_day:
            raise ValueError(
                f"{following.name} begins on {following.first_day}, before {one.name} ends: {one.last_day}"
            )
        for what, key in (("currency", "currency"), ("stock method", "stock")):
            if one.season.settings.get(key) != following.season.settings.get(key):
                raise ValueError(f"{one.name} and {following.name} do not have the same {what}")
        if one.method != following.method:
            raise ValueError(f"{one.name} and {following.name} are not both kept by {one.method}")
    return ordered


def joined(each_own: Sequence[tuple[Reading, list[Event]]]) -> tuple[list[Event], Chart]:
    """The events of all workbooks, in order of time, and all their accounts; each workbook comes with its own."""
    events: list[Event] = []
    accounts: dict[str, chart.Account] = {}
    for read, own in each_own:
        accounts |= {
            key: each for key, each in chart.chart_of(read.season).items() if key not in accounts or each.theirs
        }
        if events:
            _refuse_gap(read, sums(events), sums(event for event in own if event.opening))
            own = [event for event in own if not event.opening]
        events += [_named(event, read.name) for event in own] if len(each_own) > 1 else own
    return events, accounts


def _named(event: Event, name: str) -> Event:
    """The event with the workbook that it is from, where there are several.

    Its reference stays, so that a hand-over of one of them can be compared: no day is in two workbooks.
    """
    return event._replace(tab=f"{name}: {event.tab}")


def _refuse_gap(read: Reading, closing: dict[str, int], opening: dict[str, int]) -> None:
    apart = [
        f"{account} ended at {as_money(closing.get(account, 0), read.digits)} and begins at "
        f"{as_money(opening.get(account, 0), read.digits)}"
        for account in dict.fromkeys([*TAKEN_OVER, *opening])
        if account != chart.CAPITAL and closing.get(account, 0) != opening.get(account, 0)
    ]
    if apart:
        raise ValueError(f"{read.name} does not begin with what the workbook before it ends with: {'; '.join(apart)}")


def journal_of(reads: Sequence[Reading], events: Sequence[Event], accounts: Chart, span: Span) -> Journal:
    """The entries of a time, and what stood before it in one; `finished` adds what batches were not charged with."""
    inside = [event for event in events if span.first <= event.day <= span.last]
    before = brought_forward([event for event in events if event.day < span.first], span.first, accounts)
    entries = [*filter(None, [before]), *entries_of(inside, span.closed_to)]
    first = reads[0]
    ordered = tuple(_apart(sorted(entries, key=lambda entry: entry.day), span.closed_to))
    return Journal(span.first, span.last, first.season.currency, first.digits, accounts, ordered)


def _apart(entries: Sequence[Entry], closed_to: Day | None) -> Iterator[Entry]:
    """A month that the closing day parts has two entries, each with a reference of its own."""
    seen = set()
    for entry in entries:
        yield replace(entry, reference=f"{entry.reference} after {closed_to}") if entry.reference in seen else entry
        seen.add(entry.reference)


def finished(journal: Journal, by_cash: bool) -> Journal:
    """With what batches were not charged with of workshop costs and wages, or too much, in the cost of candles sold."""
    found = balances(journal.entries)
    left = {account: found.get(account, 0) for account in (chart.OVERHEAD, chart.PAID_HELP) if found.get(account, 0)}
    if by_cash or not left:
        return journal
    memo = "what batches were not charged with; charged too much where it is a credit"
    where = ("", memo, "all tabs", f"to {journal.last}")
    lines = [Line(account, -coins, *where) for account, coins in left.items()]
    if sum(left.values()):
        lines.append(Line(chart.COST_SOLD, sum(left.values()), *where))
    entry = Entry(f"NOT CHARGED {journal.last}", journal.last, "Batches", tuple(lines))
    return replace(journal, entries=(*journal.entries, entry))
