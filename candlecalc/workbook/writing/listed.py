"""The rows of a list as they are written: each column once, not a cell at a time.

A year has some 270,000 cells in lists, most of them formulas that differ by their row alone. What a cell of the book
itself holds there (an entry that was typed) stands over what goes down the column.
"""

from collections.abc import Iterator, Mapping, Sequence
from copy import copy
from dataclasses import dataclass
from typing import Any

from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.workbook.cells.layout import ABOVE, ROW, in_row

Values = list[tuple[Any, ...]]  # of a tab, by row
HEIGHT = 18


@dataclass(frozen=True)
class Down:
    """What goes down a column of a list: a formula with `ROW` for the row, what stands in each, or room to type."""

    formula: str
    style: int  # as the book numbers how cells look
    format: str  # of numbers
    values: Sequence[str | int | None] = ()

    def texts(self, rows: range) -> Iterator[str]:
        """The formula as it stands in each row."""
        return in_rows(self.formula, rows)


def in_rows(formula: str, rows: range) -> Iterator[str]:
    """A column's formula row by row."""
    if ABOVE in formula:
        return (in_row(formula, row) for row in rows)
    between = formula.split(ROW)
    return (str(row).join(between) for row in rows)


@dataclass(frozen=True)
class Listed:
    """The rows of one list, and its columns by their numbers."""

    rows: range
    columns: Mapping[int, Down]

    def formulas(self, number: int) -> dict[int, str]:
        """A column's formulas by row; none where people type."""
        down = self.columns[number]
        return dict(zip(self.rows, down.texts(self.rows), strict=True)) if down.formula else {}

    def values(self, number: int) -> dict[int, str | int | None]:
        """What a column holds by row, where it is written and not worked out."""
        down = self.columns[number]
        return dict(zip(self.rows, down.values, strict=True)) if down.values else {}


NOT_LISTED = Listed(range(0), {})  # a tab that is no list


def as_cells(sheet: Worksheet, listed: Listed) -> None:
    """Make a list's cells cells of the book, for who changes them one by one."""
    arrays = sheet.parent._cell_styles
    for number, down in listed.columns.items():
        texts, values = listed.formulas(number), listed.values(number)
        for row in listed.rows:
            if (row, number) not in sheet._cells:
                cell = sheet.cell(row, number)
                cell._style = copy(arrays[down.style])
                if texts:
                    cell._value, cell.data_type = texts[row], "f"
                elif values:
                    cell.value = values[row]
    for row in listed.rows:
        sheet.row_dimensions[row].height = HEIGHT
