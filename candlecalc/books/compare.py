"""What changed since an earlier hand-over. What was closed stays as it was; late lines become later entries."""

import datetime
import json
import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from typing import NamedTuple

from candlecalc.books.joining import Span
from candlecalc.books.journal import (
    BROUGHT_FORWARD,
    LATE,
    Chart,
    Day,
    Entry,
    Journal,
    Line,
    as_number,
    balances,
    balances_of,
    coins_in,
    owners,
)
from candlecalc.books.sheets import Column, Sheet, read_csv
from candlecalc.books.tax_report import TaxLine, tax_lines_in

PARTED = re.compile(r" after \d{4}-\d{2}-\d{2}$")  # the end of a reference that a closing day parted


class Change(NamedTuple):
    """An account of an entry that is not as it was handed over."""

    reference: str
    day: Day
    account: str
    before: int
    now: int
    where: Line


class Earlier(NamedTuple):
    """A hand-over that was made before: the time it is of, its entries, and its lines of tax."""

    first: Day
    last: Day
    entries: list[Entry]
    tax: list[TaxLine]


def days_of(files: Mapping[str, bytes]) -> tuple[Day, Day]:
    """The time that a folder is of."""
    package = json.loads(files["datapackage.json"])
    first, last = (datetime.date.fromisoformat(package[key]) for key in ("from", "to"))
    return first, last


def earlier_of(files: Mapping[str, bytes], chart: Chart, digits: int) -> Earlier:
    """What the files of a folder say."""
    return Earlier(
        *days_of(files), _entries(files["journal.csv"], chart, digits), tax_lines_in(files["tax.csv"], digits)
    )


def _entries(data: bytes, chart: Chart, digits: int) -> list[Entry]:
    """The entries of a journal.csv."""
    entries: dict[str, Entry] = {}
    for row in read_csv(data):
        if row["account_name"].casefold() not in chart:
            raise ValueError(f"the earlier journal has account {row['account_name']}, which is no longer on Accounts")
        coins = coins_in(row["debit"], digits) - coins_in(row["credit"], digits)
        name = chart[row["account_name"].casefold()].name
        line = Line(name, coins, row["tax_code"], row["memo"], row["from_tab"], row["from_row"])
        day = datetime.date.fromisoformat(row["date"])
        entry = entries.setdefault(row["entry_no"], Entry(row["doc_ref"], day, row["payee"], ()))
        entries[row["entry_no"]] = replace(entry, lines=(*entry.lines, line))
    return list(entries.values())


def changes(before: Iterable[Entry], now: Iterable[Entry]) -> Iterator[Change]:
    """Accounts of entries, by their references, that come to something else."""
    old, new = _by_reference(before), _by_reference(now)
    for reference in dict.fromkeys([*old, *new]):
        entry = new.get(reference) or old[reference]
        was, is_now = (balances(filter(None, [found.get(reference)])) for found in (old, new))
        for account in dict.fromkeys([*was, *is_now]):
            if was.get(account, 0) != is_now.get(account, 0):
                lines = [line for each in (new.get(reference), old.get(reference)) if each for line in each.lines]
                where = next(line for line in lines if line.account == account)
                yield Change(reference, entry.day, account, was.get(account, 0), is_now.get(account, 0), where)


def _by_reference(entries: Iterable[Entry]) -> dict[str, Entry]:
    """Entries by their references: one that the closing day parts is whole again."""
    found: dict[str, Entry] = {}
    for entry in entries:
        name = PARTED.sub("", entry.reference)
        found[name] = replace(entry, lines=(*found[name].lines, *entry.lines)) if name in found else entry
    return found


def closed_for(span: Span) -> Day:
    """The last day that stays as it was handed over: that to which books are closed, or the one before the time."""
    before = span.first - datetime.timedelta(days=1)
    return max(before, span.closed_to) if span.closed_to else before


def refuse_unlike(span: Span, earlier: tuple[Day, Day], begins: Day, ends: Day) -> None:
    """A ValueError where a time cannot be compared with that of an earlier hand-over."""
    first, last = earlier
    if first < begins or last > ends:
        raise ValueError(
            f"the earlier hand-over is of {first} to {last}, and the workbooks hold {begins} to {ends}: "
            "name the workbook that it was made from, too"
        )
    if span.first != first and span.first <= last:
        after = last + datetime.timedelta(days=1)
        raise ValueError(f"the earlier hand-over is of {first} to {last}: begin with its first day, or on {after}")


def with_late_lines(journal: Journal, earlier: Earlier, again: Journal, closed: Day) -> tuple[Journal, list[Change]]:
    """The journal with what was closed as it was handed over, and what came late booked on the day after.

    `again` is the time of the earlier hand-over as the tabs have it now. Where the journal begins after that, the
    balances brought forward are left as they were. An entry that is partly of later days was not closed.
    """
    open_before = [entry for entry in earlier.entries if entry.day > closed]
    references = {entry.reference for entry in open_before}
    closed_before = [entry for entry in earlier.entries if entry.day <= closed]
    closed_now = [entry for entry in again.entries if entry.day <= closed and entry.reference not in references]
    late = list(changes(closed_before, closed_now))
    later = closed + datetime.timedelta(days=1)
    if late and later > journal.last:
        raise ValueError(
            f"something was typed late, for days up to {closed}, and there is no day after that to book it on: "
            "hand over to a later day"
        )
    if journal.first == earlier.first:
        parted = [entry for entry in journal.entries if entry.day <= closed and entry.reference in references]
        kept = [*closed_before, *parted, *(entry for entry in journal.entries if entry.day > closed)]
    else:
        kept = _with_balances_as_they_were(journal, late)
    entries = sorted([*kept, *_late_entries(late, later)], key=lambda entry: entry.day)
    open_now = [entry for entry in again.entries if entry.day > closed or entry.reference in references]
    return replace(journal, entries=tuple(entries)), [*late, *changes(open_before, open_now)]


def _with_balances_as_they_were(journal: Journal, late: Iterable[Change]) -> list[Entry]:
    """The entries, with what came late taken off the balances brought forward."""
    before = [entry for entry in journal.entries if entry.reference.startswith(BROUGHT_FORWARD)]
    standing = balances(before)
    for each in late:
        account = owners(each.account, journal.chart)
        standing[account] = standing.get(account, 0) - each.now + each.before
    entry = balances_of(standing, journal.first)
    return [*([entry] if entry else []), *(each for each in journal.entries if each not in before)]


def _late_entries(late: Sequence[Change], day: Day) -> list[Entry]:
    """An entry for each that came late or is not as it was."""
    lines: dict[str, list[Line]] = {}
    for each in late:
        memo = f"typed after {each.day} was closed"
        lines.setdefault(each.reference, []).append(each.where._replace(coins=each.now - each.before, memo=memo))
    return [Entry(f"{LATE}{reference}", day, "Typed late", tuple(found)) for reference, found in lines.items()]


def changes_sheet(found: Sequence[Change], digits: int) -> Sheet:
    money = [[as_number(coins, digits) for coins in (each.before, each.now)] for each in found]
    rows = [
        [each.reference, each.day, each.account, *sums, each.where.tab, each.where.rows]
        for each, sums in zip(found, money, strict=True)
    ]
    columns = (
        Column("doc_ref"),
        Column("date", "date"),
        Column("account_name"),
        Column("before", "number", says="as it was handed over; a credit is below nothing"),
        Column("now", "number"),
        Column("from_tab"),
        Column("from_row"),
    )
    return Sheet("changes", "What is not as it was in the earlier hand-over.", columns, rows)
