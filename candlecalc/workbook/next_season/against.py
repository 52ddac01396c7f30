"""What a season opened with, beside what the one before closes with today: a line typed late there shows here."""

from collections.abc import Iterable, Mapping
from typing import NamedTuple

from candlecalc.declaration.term import shown
from candlecalc.season.fields import Value
from candlecalc.season.season import Row, Season
from candlecalc.season.tables import TABLES
from candlecalc.season.tables.carried import LAST_SOLD, STILL_OPEN
from candlecalc.season.tables.sales import SALES
from candlecalc.season.tables.stock import OPENING, POURS, PURCHASES
from candlecalc.workbook.next_season.at_shops import OUT
from candlecalc.workbook.next_season.carried import SINCE

SMALLEST = 0.000001  # of a number; what differs less is the arithmetic


class Compared(NamedTuple):
    """Of a table's rows that a season opens with: what they go by, and the numbers that are compared."""

    names: tuple[str, ...]
    numbers: tuple[str, ...]


COMPARED: Mapping[str, Compared] = {
    PURCHASES.key: Compared(("material", "lot", "date"), ("packs", "price")),
    POURS.key: Compared(("batch", "product", "date"), ("good", "cost")),
    SALES.key: Compared(("product", "place", "batch"), ("pieces",)),
    STILL_OPEN.key: Compared(("kind", "who", "document", "date"), ("sum",)),
    LAST_SOLD.key: Compared(("product", "place", "month"), ("pieces", "net", "cost")),
}


def differences(opened: Season, closes: Season) -> list[str]:
    """Every row in which the two are not alike, in words: what a season opened with, and what it would open with."""
    found = []
    for key, compared in COMPARED.items():
        ours, theirs = (_sums(_opening(season, key), compared) for season in (opened, closes))
        for names in dict.fromkeys([*ours, *theirs]):
            one, other = (side.get(names, {}) for side in (ours, theirs))
            if any(abs(one.get(number, 0) - other.get(number, 0)) > SMALLEST for number in compared.numbers):
                opens, closed = (_told(key, side) for side in (one, other))
                what = ", ".join(name for name in names if name)
                found.append(f"{TABLES[key].title}: {what}: opens with {opens}; the season before closes with {closed}")
    return found


def _opening(season: Season, key: str) -> Iterable[Row]:
    """The rows of a table that a season opened with."""
    rows = [row for _, row in season.rows(key)]
    if key in (PURCHASES.key, POURS.key):
        return [row for row in rows if row["kind"] == OPENING]
    if key == SALES.key:
        return [row for row in rows if row["kind"] == OUT and str(row["notes"]).startswith(SINCE)]
    return rows


def _sums(rows: Iterable[Row], compared: Compared) -> dict[tuple[str, ...], dict[str, float]]:
    found: dict[tuple[str, ...], dict[str, float]] = {}
    for row in rows:
        names = tuple(_name(row[name]) for name in compared.names)
        sums = found.setdefault(names, dict.fromkeys(compared.numbers, 0.0))
        for number in compared.numbers:
            value = row[number]
            sums[number] += value if isinstance(value, (int, float)) else 0.0
    return found


def _name(value: Value) -> str:
    return value if isinstance(value, str) else "" if value is None else shown(value)


def _told(key: str, sums: Mapping[str, float]) -> str:
    table = TABLES[key]
    told = [f"{table.label(table[number])} {shown(round(value, 6))}" for number, value in sums.items()]
    return ", ".join(told) or "nothing"
