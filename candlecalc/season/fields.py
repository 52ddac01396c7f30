"""What a maker types: the fields of each table of a season, declared once.

A field knows its key (the CSV column), its head (the tab), what it takes and when it is needed. Tabs,
drop-downs, cell checks, CSV files and the reading of a workbook all come from here.
"""

import datetime
from dataclasses import dataclass, field
from typing import get_args

from candlecalc.declaration.term import Term

NAME_LENGTH = 32
# A spreadsheet looks names up with these as wild cards.
NOT_IN_NAMES = "*?~"
# ... and counts by these as comparisons.
NOT_FIRST_IN_NAMES = "<>="
# Every spreadsheet counts these days alike.
FIRST_DAY, LAST_DAY = datetime.date(2000, 1, 1), datetime.date(2099, 12, 31)

Value = float | str | datetime.date | None


def term_of(annotated: object) -> Term:
    """The term of an argument as `calc` declares it."""
    found: Term = get_args(annotated)[1]
    return found


@dataclass(frozen=True)
class Field:
    """One column of a table, or one line of the settings."""

    key: str
    head: str
    help: str = ""  # the term's own where none is said
    term: Term | None = None  # a number in the term's range
    choices: tuple[str, ...] = ()
    names_from: str = ""  # it names a row of this table
    kind: str = ""  # ... of this kind, where the table holds several
    name: bool = False  # the row's own name, which others look up
    date: bool = False
    required: bool = False
    # Needed only where another field of the row has one of these values; without values, where it has any.
    needed_when: tuple[str, tuple[str, ...]] = ("", ())
    smallest: float = 0.0  # the smallest number besides nothing
    # No cost rests on it: what is wrong with it is told, and the row counts all the same.
    not_in_cost: bool = False
    missing: str = ""  # what to do where it is needed and not there, if that is more than to type it
    width: int = 0
    longest: int = 60  # characters of a text
    joins: bool = False  # a text by which rows belong together: a blank that nobody sees would part them
    sought: bool = False  # ... and by which they are looked up: a wild card would find others
    offers: str = ""  # a text whose drop-down offers the first column of this list; what else is typed its tab tells
    formerly: tuple[str, ...] = ()  # heads that it had in earlier versions

    def __post_init__(self) -> None:
        if self.term and not self.help:
            object.__setattr__(self, "help", self.term.help)

    @property
    def numeric(self) -> bool:
        return self.term is not None

    @property
    def any_text(self) -> bool:
        """Whether any text will do."""
        return not (self.term or self.choices or self.names_from or self.name or self.date)

    def allowed(self) -> str:
        """What the field takes, in words."""
        if self.term:
            return self.term.range
        if self.choices:
            return " or ".join(self.choices)
        if self.names_from:
            return f"a name from {self.names_from.capitalize()}" + (f" of kind {self.kind}" if self.kind else "")
        if self.date:
            return "a date such as 2026-03-07"
        if self.name:
            first = " ".join(NOT_FIRST_IN_NAMES)
            return f"a name of at most {NAME_LENGTH} characters, without {' '.join(NOT_IN_NAMES)}, not after {first}"
        return f"text of at most {self.longest} characters" + self.without

    @property
    def without(self) -> str:
        """What a text may not hold, in words."""
        marks = f", without {' '.join(NOT_IN_NAMES)}" if self.sought else ""
        return f"{marks}, with no blank at its end and none doubled" if self.joins else ""

    def as_declared(self, value: Value) -> Value:
        """A choice as it is declared, however it is written: to a spreadsheet "Wax" is "wax"."""
        if self.choices and isinstance(value, str):
            return next((choice for choice in self.choices if choice.casefold() == value.casefold()), value)
        return value

    def needed(self, row: dict[str, Value]) -> bool:
        """Whether a row must have this field."""
        other, values = self.needed_when
        there = row.get(other)
        return self.required or (bool(other) and (there in values if values else there is not None))


@dataclass(frozen=True)
class Table:
    """A table of the season: its fields in order, and the rows that a new workbook has room for."""

    key: str
    title: str
    fields: tuple[Field, ...]
    usual_rows: int
    purpose: str = ""
    unique: tuple[str, ...] = ()  # fields that together stand in the table once
    optional: bool = False  # whether a season may do without it
    records: bool = False  # of the year: a workbook for costs and prices alone has it not
    by_key: dict[str, Field] = field(default_factory=dict, repr=False, compare=False)

    def __post_init__(self) -> None:
        self.by_key.update({each.key: each for each in self.fields})

    def __getitem__(self, key: str) -> Field:
        return self.by_key[key]

    @property
    def keys(self) -> list[str]:
        return [each.key for each in self.fields]

    def label(self, given: Field) -> str:
        """What a field is called in a sentence: its head without the unit, or whole where two begin alike."""
        alike = [each for each in self.fields if short(each.head) == short(given.head)]
        return short(given.head) if len(alike) == 1 else given.head


def short(head: str) -> str:
    """A head without its unit: "Pack price, {money}" becomes "Pack price"."""
    return head.partition(",")[0]
