"""A season: the settings and tables that a maker typed, and everything wrong with them as typed."""

import datetime
import math
import numbers
from collections.abc import Iterable, Iterator, Mapping, MutableMapping
from dataclasses import dataclass, replace
from functools import cache
from typing import TYPE_CHECKING, Any

from candlecalc.declaration.term import Term, shown
from candlecalc.season.fields import (
    FIRST_DAY,
    LAST_DAY,
    NAME_LENGTH,
    NOT_FIRST_IN_NAMES,
    NOT_IN_NAMES,
    Field,
    Table,
    Value,
)
from candlecalc.season.measures import Measures
from candlecalc.season.tables import TABLES, tables_of
from candlecalc.season.tables.once import FIFO, ONCE, SETTINGS

if TYPE_CHECKING:  # it takes a while to come, and plain rows need none of it
    import pandas as pd

Row = dict[str, Value]
WITHOUT_BLANK = "type it without the blank"
USUAL_ROOMS = {key: table.usual_rows for key, table in TABLES.items()}


@dataclass(frozen=True)
class Problem:
    """Something to put right: where it stands and what to do. Rows count from 0 within their table."""

    tab: str
    row: int
    column: str  # the field's key
    words: str


class Tables(MutableMapping[str, "pd.DataFrame"]):
    """The tables of a season: a pandas frame for who asks for one, whose index is the row's place in its table.

    Until then the rows stay as they were read. Once asked for, the frame is what counts: it may be changed.
    """

    def __init__(self, held: "Mapping[str, list[Row] | pd.DataFrame]") -> None:
        self._held = dict(held)

    def __getitem__(self, key: str) -> "pd.DataFrame":
        held = self._held[key]
        if isinstance(held, list):
            held = self._held[key] = frame(held, TABLES[key])
        return held

    def __setitem__(self, key: str, held: "list[Row] | pd.DataFrame") -> None:
        self._held[key] = held

    def __delitem__(self, key: str) -> None:
        del self._held[key]

    def __contains__(self, key: object) -> bool:  # without a frame made for it
        return key in self._held

    def __iter__(self) -> Iterator[str]:
        return iter(self._held)

    def __len__(self) -> int:
        return len(self._held)

    def rows(self, key: str) -> Iterator[tuple[int, Row]]:
        """Each row of a table with its place."""
        held = self._held[key]
        if isinstance(held, list):
            for place, row in enumerate(held):
                yield place, {name: plain(row.get(name)) for name in TABLES[key].keys}
            return
        for place, record in zip(held.index, held.to_dict("records"), strict=True):
            yield int(place), {str(name): plain(value) for name, value in record.items()}

    def with_all(self, keys: Iterable[str]) -> "Tables":
        """The same tables, and those of the keys that are not there, empty."""
        return Tables({key: [] for key in keys} | self._held)

    def room(self, key: str) -> int:
        """How many rows there are down to the last."""
        held = self._held[key]
        return len(held) if isinstance(held, list) else int(max(held.index, default=-1)) + 1


@dataclass
class Season:
    """A maker's season: its settings, and its tables as pandas frames."""

    settings: dict[str, Value]
    tables: Tables
    doubts: tuple[Problem, ...] = ()  # what could be read two ways where it was typed

    def __post_init__(self) -> None:
        self.tables = Tables(self.tables) if not isinstance(self.tables, Tables) else self.tables

    @property
    def measures(self) -> Measures:
        units = (str(self.settings[key]) for key in ("weight_unit", "temperature_unit", "length_unit"))
        return Measures(*units)

    @property
    def currency(self) -> str:
        return str(self.settings["currency"])

    @property
    def records(self) -> bool:
        """Whether it keeps the year's records, besides costs and prices."""
        return self.settings.get("records") == "yes"

    def rows(self, key: str) -> Iterator[tuple[int, Row]]:
        """Each row of a table that has anything typed in it, with its place."""
        for place, row in self.tables.rows(key):
            if any(value is not None for value in row.values()):
                yield place, row

    def names(self, key: str, kind: str = "") -> list[str]:
        """The names in a table, of one kind if asked."""
        field = TABLES[key].fields[0].key
        return [str(row[field]) for _, row in self.rows(key) if row[field] and (not kind or row.get("kind") == kind)]

    def compacted(self) -> "Season":
        """The same for a fresh workbook: no blank rows between, no blanks around a word."""
        tables = {key: [trimmed(row) for _, row in self.rows(key)] for key in self.tables}
        places = {(TABLES[key].title, old): new for key in tables for new, (old, _) in enumerate(self.rows(key))}
        doubts = tuple(replace(doubt, row=places.get((doubt.tab, doubt.row), doubt.row)) for doubt in self.doubts)
        return Season(trimmed(self.settings), Tables(tables), doubts)

    @property
    def stock(self) -> str:
        """How stock is valued."""
        return str(self.settings.get("stock") or FIFO)

    def with_records(self) -> "Season":
        """The same, ready to keep the year's records."""
        settings = self.settings | {"records": "yes", "stock": self.stock}
        return Season(settings, self.tables.with_all(TABLES), self.doubts)


def trimmed(row: Row) -> Row:
    """A row without blanks around its words, or too many in them."""
    return {key: without_blanks(value) or None if isinstance(value, str) else value for key, value in row.items()}


def without_blanks(text: str) -> str:
    """A text without the blanks that nobody sees: around it, or two side by side in it."""
    return " ".join(text.replace("\u00a0", " ").split())


def plain(value: Any) -> Value:
    """A cell of a frame or a sheet as a plain value, words as they stand; None for blank."""
    if value is None or value != value:  # a day that is none, too
        return None
    if isinstance(value, datetime.datetime):
        return value.date()
    if isinstance(value, (bool, datetime.date)):
        return value
    if isinstance(value, numbers.Real) and math.isfinite(value):
        return float(value)
    return str(value) or None  # a time of day, too: no entry takes one


def frame(rows: list[Row], table: Table) -> "pd.DataFrame":
    """Rows as a frame of plain objects, one column a field."""
    import pandas as pd

    return pd.DataFrame(rows, columns=table.keys, dtype=object)


def empty(settings: dict[str, Value]) -> Season:
    """A season with nothing typed in its tables."""
    tables = tables_of(settings.get("records") == "yes")
    return Season(settings, Tables({key: [] for key in tables}))


def problems(season: Season, rooms: Mapping[str, int] = USUAL_ROOMS) -> list[Problem]:
    """Everything wrong with what was typed: each with its tab, row, column and what to do.

    `rooms` are how many rows of each table the workbook has formulas for.
    """
    known = _Known(season)
    found = [
        Problem(table.title, place, field.key, words)
        for table in ONCE
        for place, field in enumerate(table.fields)
        if (words := _wrong(field, season.settings, known))
    ]
    first, last = season.settings.get("first_day"), season.settings.get("last_day")
    if isinstance(first, datetime.date) and isinstance(last, datetime.date) and last < first:
        place = SETTINGS.keys.index("last_day")
        found.append(Problem(SETTINGS.title, place, "last_day", f"it lies before the first day, {first}"))
    for key in season.tables:
        table = TABLES[key]
        seen: set[tuple[str, ...]] = set()
        for place, row in season.rows(key):
            found += [
                Problem(table.title, place, field.key, words)
                for field in table.fields
                if (words := _wrong(field, row, known))
            ]
            found += _twice(table, place, row, seen)
            if place >= rooms[key]:
                found.append(Problem(table.title, place, table.keys[0], _beyond(rooms[key])))
    return found


def wrong_entries(season: Season, fields: Iterable[Field], entries: Mapping[str, Value]) -> dict[str, str]:
    """What is wrong with entries that are no part of a season but name its things, by their fields' keys."""
    known = _Known(season)
    found = {field.key: _wrong(field, entries, known) for field in fields}
    return {key: words for key, words in found.items() if words}


def _beyond(room: int) -> str:
    return f"the tab has room for {room} rows, and no formula reads this one: move it up"


class _Known:
    """What a cell is judged by: the season's measures, and its names, gathered once."""

    def __init__(self, season: Season) -> None:
        self.measures = season.measures
        self._names: dict[tuple[str, str], set[str]] = {}
        for field in (field for key in season.tables for field in TABLES[key].fields if field.names_from):
            for kind in {"", field.kind}:
                if (field.names_from, kind) not in self._names:
                    self._names[field.names_from, kind] = {
                        name.casefold() for name in season.names(field.names_from, kind)
                    }

    def has(self, name: str, table: str, kind: str = "") -> bool:
        return name.casefold() in self._names[table, kind]

    def has_with_blanks(self, name: str, table: str) -> bool:
        """Whether a name is there but for blanks: to a spreadsheet they are part of it."""
        return without_blanks(name).casefold() in {without_blanks(known) for known in self._names[table, ""]}


def _wrong(field: Field, row: Mapping[str, Value], known: _Known) -> str:
    """What is wrong with one cell, or nothing."""
    value = row.get(field.key)
    if value is None:
        takes = _in_own_unit(field.term, known.measures).range if field.term else field.allowed()
        return f"it is missing; type {takes}" if field.needed(dict(row)) else ""
    if field.term:
        return _wrong_number(field.term, value, known.measures) or _too_little(field, value)
    if field.date:
        return _wrong_date(value, field)
    if not isinstance(value, str):
        return f"it is {shown(value)}; it takes {field.allowed()}"
    if field.choices and value not in field.choices:
        bare = field.as_declared(without_blanks(value))
        mend = WITHOUT_BLANK if bare in field.choices else f"it takes {field.allowed()}"
        return f"it is {shown(value)}; {mend}"
    if field.name:
        return _wrong_name(value, field)
    if field.names_from and (value != without_blanks(value) or not known.has(value, field.names_from, field.kind)):
        return _not_named(value, field, known)
    if field.joins and value != without_blanks(value):
        return f"it is {shown(value)}, with a blank that nobody sees: {WITHOUT_BLANK}"
    if field.sought and any(mark in value for mark in NOT_IN_NAMES):
        return f"it is {shown(value)}; it takes {field.allowed()}"
    return ""


def _wrong_name(value: str, field: Field) -> str:
    if value != without_blanks(value):
        return f"it is {shown(value)}, with a blank that nobody sees: {WITHOUT_BLANK}"
    if value.casefold() == field.head.casefold():
        return f"it is {shown(value)}, the head of its column: choose another name"
    if len(value) > NAME_LENGTH or any(mark in value for mark in NOT_IN_NAMES) or value[:1] in NOT_FIRST_IN_NAMES:
        return f"it is {shown(value)}; it takes {field.allowed()}"
    return ""


def _wrong_date(value: Value, field: Field) -> str:
    if not isinstance(value, datetime.date):
        return f"it is {shown(value)}; it takes {field.allowed()}"
    if not FIRST_DAY <= value <= LAST_DAY:
        return f"it is {value}; it takes a day from {FIRST_DAY} to {LAST_DAY}"
    return ""


@cache
def _in_own_unit(declared: Term, measures: Measures) -> Term:
    """A quantity in the maker's own unit, which the head names."""
    low, high = measures.limits(declared)
    unit = "" if declared.unit in ("g", "mm", "C") else declared.unit
    return replace(declared, low=low, high=high, unit=unit, bare=True)


def _wrong_number(declared: Term, value: Value, measures: Measures) -> str:
    term = _in_own_unit(declared, measures)
    if isinstance(value, str):
        return f'it is the text "{value}"; type a number: {term.range}'
    try:
        term.read(value)
    except ValueError as problem:
        return f"it {problem}".removesuffix(".")
    return ""


def _too_little(field: Field, value: Value) -> str:
    if isinstance(value, float) and 0 < value < field.smallest:
        clock = "a time such as 0:05 is a part of a day to a spreadsheet"
        return f"it is {shown(value)}; it takes 0, or {field.smallest:g} and more: {clock}"
    return ""


def _not_named(value: str, field: Field, known: _Known) -> str:
    title = TABLES[field.names_from].title
    if field.kind and value == without_blanks(value) and known.has(value, field.names_from):
        return f'"{value}" on {title} is not of kind {field.kind}'
    if known.has_with_blanks(value, field.names_from):
        if known.has(without_blanks(value), field.names_from):
            return f'"{value}" is not on {title}: {WITHOUT_BLANK}'
        return f'"{value}" stands on {title} with a blank too many'
    return f'"{value}" is not on {title}: add it there, or choose another'


def _twice(table: Table, place: int, row: Row, seen: set[tuple[str, ...]]) -> list[Problem]:
    """A name, or a pair that must be alone, that stands in the table already."""
    values = tuple(str(row[key]).casefold() for key in table.unique)
    # A log may hold two lines alike.
    if not values or any(row[key] is None for key in table.unique if table[key].required):
        return []
    if values in seen:
        first = table.unique[0]
        return [Problem(table.title, place, first, f'"{row[first]}" stands here twice: rename or remove one')]
    seen.add(values)
    return []
