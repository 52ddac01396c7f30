"""Rows that hold from a day on: what of them a new season needs."""

import datetime
from collections import defaultdict
from collections.abc import Iterable, Mapping

from candlecalc.season.fields import Table
from candlecalc.season.season import Row

BEGINNING = datetime.date.min


def needed(
    rows: Iterable[Row],
    table: Table,
    day: datetime.date,
    also: Mapping[str, Iterable[datetime.date]] | None = None,
) -> list[Row]:
    """Of each thing the row that holds on a day and those that hold later.

    `also` are further days, by the first of a row's names, whose rows are needed as well.
    """
    *names, since = table.unique if table.unique[-1] == "holds_from" else (*table.unique[1:], table.unique[0])
    by_thing: defaultdict[tuple[str, ...], list[Row]] = defaultdict(list)
    rows = list(rows)
    for row in rows:
        by_thing[tuple(str(row[name]).casefold() for name in names)].append(row)
    kept = []
    for thing, of_thing in by_thing.items():
        days = [day, *(also or {}).get(thing[0] if thing else "", ())]
        kept += [_holding(of_thing, since, each) for each in days]
        kept += [row for row in of_thing if _from(row, since) > day]
    return [row for row in rows if any(row is each for each in kept)]


def _holding(rows: list[Row], since: str, day: datetime.date) -> Row | None:
    held = [row for row in rows if _from(row, since) <= day]
    latest = max((_from(row, since) for row in held), default=None)
    return next((row for row in reversed(held) if _from(row, since) == latest), None)


def _from(row: Row, since: str) -> datetime.date:
    day = row[since]
    return day if isinstance(day, datetime.date) else BEGINNING
