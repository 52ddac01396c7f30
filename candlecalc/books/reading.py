"""A calculated workbook as the journal reads it: rows of a tab with what was typed, and money in whole coins."""

import datetime
from collections.abc import Iterable, Iterator
from typing import Any, NamedTuple

from candlecalc.season.season import Row, Season
from candlecalc.season.tables import TABLES
from candlecalc.season.tables.books import ACCRUAL, CASH
from candlecalc.workbook.book import TABLE_TABS
from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.reports.report import Calculated

HAIR = 1e-6  # of a coin


class Typed(NamedTuple):
    """A row that was typed."""

    at: int  # its place in the table, from 0
    tab: str
    row: int  # of the tab
    typed: Row

    def day(self, key: str = "date") -> datetime.date | None:
        """A day that was typed; none where none was."""
        day = self.typed[key]
        return day if isinstance(day, datetime.date) else None

    def by(self, last: datetime.date) -> bool:
        """Whether it is of a day, or of an earlier one."""
        day = self.day()
        return day is not None and day <= last


class Reading:
    """One workbook: its season, and the values of its cells."""

    def __init__(self, name: str, calculated: Calculated) -> None:
        self.name, self.calculated, self.season = name, calculated, calculated.season
        self.digits = calculated.plan.coin_digits
        self._rows: dict[str, dict[int, Typed]] = {}

    @property
    def method(self) -> str:
        """How books are kept."""
        return str(self.season.settings.get("books") or ACCRUAL)

    @property
    def by_cash(self) -> bool:
        return self.method == CASH

    @property
    def first_day(self) -> datetime.date:
        return _day(self.season, "first_day")

    @property
    def last_day(self) -> datetime.date:
        return _day(self.season, "last_day")

    def rows(self, table: str) -> Iterable[Typed]:
        """The rows of a table that hold something."""
        return self._by_place(table).values()

    def row(self, table: str, number: int) -> Typed:
        """A row by its number as formulas count it: the head is 1."""
        return self._by_place(table)[place_of(number)]

    def _by_place(self, table: str) -> dict[int, Typed]:
        if table not in self._rows:
            title = TABLES[table].title
            self._rows[table] = {at: Typed(at, title, FIRST_ROW + at, row) for at, row in self.season.rows(table)}
        return self._rows[table]

    def lines(self, table: str, filled: str) -> Iterator[int]:
        """The places of the rows of a list that hold something in a column."""
        return (
            at
            for at in range(self.calculated.room(table))
            if self.calculated.value(table, filled, at) not in (None, "")
        )

    def value(self, table: str, key: str, at: int) -> Any:
        """What a cell comes to. A ValueError names one that is an error."""
        found = self.calculated.value(table, key, at)
        if isinstance(found, str) and found.startswith("#"):
            raise ValueError(f"{self.where(table, at)}: {self._head(table, key)} is {found}; mend it first, by check")
        return found

    def number(self, table: str, key: str, at: int) -> float:
        found = self.value(table, key, at)
        return float(found) if isinstance(found, (int, float)) else 0.0

    def whole(self, table: str, key: str, at: int) -> int:
        return int(self.number(table, key, at))

    def coins(self, table: str, key: str, at: int) -> int:
        """Money in a cell, in coins."""
        return self.as_coins(self.number(table, key, at), self.where(table, at))

    def typed_coins(self, line: Typed, key: str) -> int:
        """Money that was typed, in coins; nothing where none was."""
        value = line.typed[key]
        return self.as_coins(value, f"tab {line.tab}, row {line.row}") if isinstance(value, float) else 0

    def as_coins(self, amount: float, where: str) -> int:
        coins: float = amount * 10**self.digits
        if abs(coins - round(coins)) > HAIR * max(1.0, abs(coins)):
            raise ValueError(f"{where}: {amount:.15g} {self.season.currency} is no whole number of coins")
        return round(coins)

    def sum(self, table: str, key: str) -> int:
        """What a column of a list comes to, in coins."""
        return sum(self.coins(table, key, at) for at in range(self.calculated.room(table)))

    def where(self, table: str, at: int) -> str:
        return f"{self.name}, tab {TABLE_TABS[table].title}, row {FIRST_ROW + at}"

    def _head(self, table: str, key: str) -> str:
        return self.calculated.plan.head(TABLE_TABS[table].columns[key].head)


def place_of(number: int) -> int:
    """The place in a table, from 0, of a row as formulas count it: the head is 1."""
    return number - 2


def _day(season: Season, key: str) -> datetime.date:
    day = season.settings.get(key)
    if not isinstance(day, datetime.date):
        raise ValueError(f"tab Settings: {key.replace('_', ' ')} is no day")
    return day
