"""What changed since an earlier hand-over. What was closed stays as it was; late lines become later entries."""

import datetime
from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import NamedTuple

from candlecalc.books.journal import Chart, Day, Entry, Journal, Line, as_number, balances, coins_in
from candlecalc.books.sheets import Column, Sheet, read_csv
from candlecalc.season.chart import Account


class Change(NamedTuple):
    """An account of an entry that is not as it was handed over."""

    reference: str
    day: Day
    account: str
    before: int
    now: int
    where: Line


def entries_before(data: bytes, chart: Chart, digits: int) -> list[Entry]:
    """The entries of an earlier journal.csv."""
    by_code: dict[str, Account] = {account.code: account for account in chart.values()}
    entries: dict[str, Entry] = {}
    for row in read_csv(data):
        if row["account_code"] not in by_code:
            raise ValueError(f"the earlier journal has account {row['account_code']}, which is no longer on Accounts")
        coins = coins_in(row["debit"], digits) - coins_in(row["credit"], digits)
        name = by_code[row["account_code"]].name
        line = Line(name, coins, row["tax_code"], row["memo"], row["from_tab"], row["from_row"])
        day = datetime.date.fromisoformat(row["date"])
        entry = entries.setdefault(row["entry_no"], Entry(row["doc_ref"], day, row["payee"], ()))
        entries[row["entry_no"]] = replace(entry, lines=(*entry.lines, line))
    return list(entries.values())


def changes(before: Sequence[Entry], now: Sequence[Entry]) -> Iterator[Change]:
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


def _by_reference(entries: Sequence[Entry]) -> dict[str, Entry]:
    return {entry.reference: entry for entry in entries}


def with_late_lines(journal: Journal, before: Sequence[Entry], closed_to: Day) -> tuple[Journal, list[Change]]:
    """The journal with closed entries as they were handed over, and what came late booked on the day after."""
    closed = [entry for entry in before if journal.first <= entry.day <= closed_to]
    found = list(changes(closed, [entry for entry in journal.entries if entry.day <= closed_to]))
    later = closed_to + datetime.timedelta(days=1)
    if found and later > journal.last:
        raise ValueError(
            f"something was typed late, for days up to {closed_to}, and there is no day after that to book it on: "
            "hand over to a later day"
        )
    late = [
        Entry(
            f"LATE {reference}",
            later,
            "Typed late",
            _late_lines([each for each in found if each.reference == reference]),
        )
        for reference in dict.fromkeys(each.reference for each in found)
    ]
    entries = [*closed, *(entry for entry in journal.entries if entry.day > closed_to), *late]
    return replace(journal, entries=tuple(sorted(entries, key=lambda entry: entry.day))), found


def _late_lines(found: Sequence[Change]) -> tuple[Line, ...]:
    return tuple(
        each.where._replace(coins=each.now - each.before, memo=f"typed after {each.day} was closed") for each in found
    )


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
