"""Where things stand in a workbook: rows, tables and their columns, and what formulas must know of it."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from candlecalc.season.measures import Measures

ROW = "\u00a7"  # stands for the row number in a formula that is written once a column
HEAD_ROW = 3
FIRST_ROW = HEAD_ROW + 1
WHEN_READY = "ready_name"  # the column of names of a tab's rows that are ready
OWN_ROW = "own_row"  # the locked column that holds which row of its list a row is, the head being the first
ABOVE = "\u00b6"  # stands for the number of the row above


def in_row(formula: str, row: int) -> str:
    """A column's formula as it stands in one row."""
    return formula.replace(ROW, str(row)).replace(ABOVE, str(row - 1))


@dataclass(frozen=True)
class Layout:
    """Where a table stands: its tab, its rows, the letter of each column, and which columns people type in.

    Formulas reach a cell that people type in by its number in a range from the locked head to the locked,
    empty row under the list. A spreadsheet moves a plain reference along when the cell is cut and pasted,
    and the ends of a range too; these ends cannot be cut.
    """

    key: str
    title: str
    last_row: int
    letters: Mapping[str, str]
    names: str = ""  # the column by which other tabs find a row, where it has one
    first_row: int = FIRST_ROW
    typed: frozenset[str] = frozenset()

    @property
    def rows(self) -> int:
        return self.last_row - self.first_row + 1

    @property
    def sheet(self) -> str:
        return f"'{self.title}'" if " " in self.title else self.title

    def range(self, key: str) -> str:
        """A whole column as any formula refers to it: from the head to the row under the list."""
        return f"{self.sheet}!{self.column(key)}"

    def column(self, key: str) -> str:
        """The same for a formula on the tab itself."""
        letter = self.letters[key]
        return f"${letter}${self.first_row - 1}:${letter}${self.last_row + 1}"

    def results(self, key: str) -> str:
        """The rows alone of a column that nobody types in."""
        return f"{self.sheet}!{self.own_results(key)}"

    def own_results(self, key: str) -> str:
        """The same for a formula on the tab itself."""
        if key in self.typed:
            raise ValueError(f"{self.title}: {key} is typed, and its first row may be cut")
        letter = self.letters[key]
        return f"${letter}${self.first_row}:${letter}${self.last_row}"

    def sum(self, *keys: str) -> str:
        """What columns that nobody types in add up to."""
        return f"SUM({','.join(self.results(key) for key in keys)})"

    def cell(self, key: str) -> str:
        """The cell of the same row."""
        if key in self.typed:
            return f"INDEX({self.column(key)},${self.letters[OWN_ROW]}{ROW})"
        return f"${self.letters[key]}{ROW}"


@dataclass(frozen=True)
class Plan:
    """What formulas need to know of the workbook they stand in."""

    measures: Measures
    currency: str
    coin_digits: int
    records: bool = False  # whether it keeps the year's records
    stock: str = "fifo"  # how stock is valued: first in first out, or by moving average
    layouts: dict[str, Layout] = field(default_factory=dict)
    # What rows of each tab speak of, numbered: see `words.py`.
    things: Mapping[tuple[str, str], int] = field(default_factory=dict)

    def head(self, text: str) -> str:
        return self.measures.shown(text, self.currency)
