"""The rows of a list as they are written: each column once, not a cell at a time.

A year has some 270,000 cells in lists, most of them formulas that differ by their row alone. What a cell of the book
itself holds there (an entry that was typed) stands over what goes down the column.
"""

from collections.abc import Iterator, Mapping
from copy import copy
from dataclasses import dataclass
from typing import Any

from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.workbook.cells.layout import ABOVE, ROW, in_row

Values = list[tuple[Any, ...]]  # of a tab, by row
HEIGHT = 18


@dataclass(frozen=True)
class Down:
    """What goes down a column of a list: a formula with `ROW` for the row, or none where people type."""

    formula: str
    style: int  # as the book numbers how cells look
    format: str  # of numbers

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


NOT_LISTED = Listed(range(0), {})  # a tab that is no list


def as_cells(sheet: Worksheet, listed: Listed) -> None:
    """Make a list's cells cells of the book, for who changes them one by one."""
    arrays = sheet.parent._cell_styles
    for number, down in listed.columns.items():
        texts = listed.formulas(number)
        for row in listed.rows:
            if (row, number) not in sheet._cells:
                cell = sheet.cell(row, number)
                cell._style = copy(arrays[down.style])
                if texts:
                    cell._value, cell.data_type = texts[row], "f"
    for row in listed.rows:
        sheet.row_dimensions[row].height = HEIGHT
