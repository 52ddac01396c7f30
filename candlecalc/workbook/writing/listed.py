"""The rows of a list as they are written: each column once, not a cell at a time.

A year has some 270,000 cells in lists, most of them formulas that differ by their row alone. What a cell of the book
itself holds there (an entry that was typed) stands over what goes down the column.
"""

import re
from collections.abc import Iterator, Mapping
from copy import copy
from dataclasses import dataclass
from html import escape
from typing import Any

from openpyxl.cell.cell import ERROR_CODES
from openpyxl.utils import column_index_from_string, get_column_letter, range_boundaries
from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.workbook.cells.layout import ABOVE, ROW, in_row

Values = list[tuple[Any, ...]]  # of a tab, by row
HEIGHT = 18
WITH_HEIGHT = f' ht="{HEIGHT}" customHeight="1"'


@dataclass(frozen=True)
class Down:
    """What goes down a column of a list: a formula with `ROW` for the row, or none where people type."""

    formula: str
    style: int  # as the book numbers how cells look
    format: str  # of numbers

    def texts(self, rows: range) -> Iterator[str]:
        """The formula as it stands in each row."""
        return _in_rows(self.formula, rows)


def _in_rows(formula: str, rows: range) -> Iterator[str]:
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


# --- in the file ------------------------------------------------------------------------------

ROWS = re.compile(r'<row r="(?P<row>\d+)"(?P<more>[^>]*?)(?:/>|>(?P<cells>.*?)</row>)', re.DOTALL)
CELL = re.compile(r'<c r="(?P<column>[A-Z]+)\d+"[^>]*?(?:/>|>.*?</c>)', re.DOTALL)
SIZE = re.compile(r'(?<=<dimension ref=")[^"]*')


def with_list(tab: bytes, listed: Listed, values: Values | None) -> bytes:
    """A tab's part with the rows of its list, and the value of each formula where there are any."""
    text = tab.decode()
    begin, end = text.index("<sheetData>") + len("<sheetData>"), text.index("</sheetData>")
    there = {int(row["row"]): row for row in ROWS.finditer(text, begin, end)}
    rows = {row: whole[0] for row, whole in there.items()} | _rows(there, listed, values)
    head = SIZE.sub(lambda size: _with_room(size[0], listed), text[:begin], count=1)
    return "".join([head, *(rows[row] for row in sorted(rows)), text[end:]]).encode()


def _with_room(size: str, listed: Listed) -> str:
    """From which cell to which a tab goes, its list included."""
    left, top, right, bottom = range_boundaries(size)
    right, bottom = max(right, *listed.columns), max(bottom, listed.rows[-1])
    return f"{get_column_letter(left)}{top}:{get_column_letter(right)}{bottom}"


def _rows(there: Mapping[int, re.Match[str]], listed: Listed, values: Values | None) -> dict[int, str]:
    """The rows of a list by their numbers, with the cells that stand there already."""
    numbers = list(listed.columns)
    columns = [_cells(number, listed, values) for number in numbers]
    rows = {}
    for row, cells in zip(listed.rows, zip(*columns, strict=True), strict=True):
        text, own = "".join(cells), there.get(row)
        if own:
            typed = {column_index_from_string(each["column"]): each[0] for each in CELL.finditer(own["cells"] or "")}
            every = dict(zip(numbers, cells, strict=True)) | typed
            text = "".join(every[number] for number in sorted(every))
        height = own["more"] if own and "ht=" in own["more"] else WITH_HEIGHT
        rows[row] = f'<row r="{row}"{height}>{text}</row>'
    return rows


def _cells(number: int, listed: Listed, values: Values | None) -> list[str]:
    """A column's cells, row by row."""
    down, letter = listed.columns[number], get_column_letter(number)
    if not down.formula:
        return [f'<c r="{letter}{row}" s="{down.style}" t="n" />' for row in listed.rows]
    texts = zip(listed.rows, _in_rows(escape(down.formula[1:], quote=False), listed.rows), strict=True)
    if values is None:
        return [f'<c r="{letter}{row}" s="{down.style}"><f>{text}</f><v /></c>' for row, text in texts]
    return [
        f'<c r="{letter}{row}" s="{down.style}"{sort}><f>{text}</f><v>{value}</v></c>'
        for row, text in texts
        for sort, value in (stored(values[row - 1][number - 1]),)
    ]


def stored(value: Any) -> tuple[str, str]:
    """What a value is to a file, where it is no number, and how it stands there."""
    if isinstance(value, bool):
        return ' t="b"', "1" if value else "0"
    if isinstance(value, (int, float)):
        return "", repr(value)
    text = escape(value or "", quote=False)
    return ' t="e"' if value in ERROR_CODES else ' t="str"', text
