"""Where things stand in a workbook: rows, tables and their columns, and what formulas must know of it."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from candlecalc.season.measures import Measures

ROW = "\u00a7"  # stands for the row number in a formula that is written once a column
ABOVE = "\u00a4"  # ... and for the row above it
FIRST_ROW = 4


def in_row(formula: str, row: int) -> str:
    """A column's formula as it stands in one row."""
    return formula.replace(ROW, str(row)).replace(ABOVE, str(row - 1))


@dataclass(frozen=True)
class Place:
    """Where a table stands: its tab, its rows, and the letter of each column."""

    title: str
    last_row: int
    letters: Mapping[str, str]
    first_row: int = FIRST_ROW

    @property
    def rows(self) -> int:
        return self.last_row - self.first_row + 1

    @property
    def sheet(self) -> str:
        return f"'{self.title}'" if " " in self.title else self.title

    def range(self, key: str, last: str = "") -> str:
        """A whole column, or several side by side, as other tabs refer to it."""
        start, end = self.letters[key], self.letters[last or key]
        return f"{self.sheet}!${start}${self.first_row}:${end}${self.last_row}"


@dataclass(frozen=True)
class Plan:
    """What formulas need to know of the workbook they stand in."""

    measures: Measures
    currency: str
    coin_digits: int
    places: dict[str, Place] = field(default_factory=dict)

    def head(self, text: str) -> str:
        return self.measures.shown(text, self.currency)
