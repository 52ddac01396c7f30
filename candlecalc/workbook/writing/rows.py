"""The rows of a tab as they stand in its file: its own cells, the columns of its list, and the value of each formula.

openpyxl writes all else of a tab; a cell takes it three times as long.
"""

import re
from html import escape
from typing import Any

from openpyxl.cell.cell import ERROR_CODES, Cell
from openpyxl.compat import safe_string
from openpyxl.utils import get_column_letter, range_boundaries
from openpyxl.utils.datetime import to_excel
from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.workbook.writing.listed import HEIGHT, Listed, Values, in_rows

WITH_HEIGHT = f' ht="{HEIGHT}" customHeight="1"'
DATA = re.compile(b"<sheetData ?/>|<sheetData>.*?</sheetData>", re.DOTALL)
SIZE = re.compile(rb'(?<=<dimension ref=")[^"]*')


def with_rows(tab: bytes, rows: bytes, size: bytes) -> bytes:
    """A tab's part with its rows, which go from the first to the last cell of its size."""
    text = SIZE.sub(size, tab, count=1)
    there = DATA.search(text)
    if not there:
        raise ValueError("the part of a tab has no place for its rows")
    return b"".join([text[: there.start()], b"<sheetData>", rows, b"</sheetData>", text[there.end() :]])


def size_of(sheet: Worksheet, listed: Listed) -> bytes:
    """From which cell to which a tab goes, its list included."""
    left, top, right, bottom = range_boundaries(sheet.calculate_dimension())
    right, bottom = max(right, *listed.columns, 1), max(bottom, listed.rows.stop - 1)
    return f"{get_column_letter(left)}{top}:{get_column_letter(right)}{bottom}".encode()


def rows_of(sheet: Worksheet, listed: Listed, values: Values | None) -> bytes:
    """The rows of a tab; a formula has no value yet where there are no `values`."""
    rows: dict[int, dict[int, str]] = {row: {} for row in [*sheet.row_dimensions, *listed.rows]}
    for number in listed.columns:
        for row, text in zip(listed.rows, _down(number, listed, values), strict=True):
            rows[row][number] = text
    for (row, number), cell in sorted(sheet._cells.items()):
        if cell._value is not None or cell.has_style:
            rows.setdefault(row, {})[number] = _cell(cell, values)
    return "".join(
        f'<row r="{row}"{_height(sheet, row, listed)}>{"".join(cells[number] for number in sorted(cells))}</row>'
        for row, cells in sorted(rows.items())
    ).encode()


def _height(sheet: Worksheet, row: int, listed: Listed) -> str:
    """What a row has besides its cells: one of a list that says nothing of its own is as high as the others."""
    own = "".join(f' {key}="{value}"' for key, value in sheet.row_dimensions.get(row, ()))
    return own or (WITH_HEIGHT if row in listed.rows else "")


def _cell(cell: Cell, values: Values | None) -> str:
    """A cell of the tab's own."""
    value, begin = cell._value, f'<c r="{cell.coordinate}"'
    if cell.has_style:
        begin += f' s="{cell.style_id}"'
    if cell.data_type == "f":
        sort, found = _stored(values[cell.row - 1][cell.column - 1]) if values else ("", "")
        return f"{begin}{sort}><f>{escape(value[1:], quote=False)}</f><v>{found}</v></c>"
    return begin + _written(value, cell.data_type)


def _written(value: Any, kind: str = "") -> str:
    """The rest of a cell that holds a value; of what `kind` it is to openpyxl, where that is known."""
    kind = kind or ("s" if isinstance(value, str) else "n")
    if value is None or value == "":
        return f' t="{"inlineStr" if kind == "s" else kind}" />'
    if kind == "s":
        space = ' xml:space="preserve"' if value != value.strip() else ""
        return f' t="inlineStr"><is><t{space}>{escape(value, quote=False)}</t></is></c>'
    if kind == "d":
        return f' t="n"><v>{safe_string(to_excel(value))}</v></c>'
    return f' t="{kind}"><v>{safe_string(value)}</v></c>'


def _down(number: int, listed: Listed, values: Values | None) -> list[str]:
    """A column of the list, row by row."""
    down, letter = listed.columns[number], get_column_letter(number)
    if down.values:
        begins = (f'<c r="{letter}{row}" s="{down.style}"' for row in listed.rows)
        return [f"{begin}{_written(value)}" for begin, value in zip(begins, down.values, strict=True)]
    if not down.formula:
        return [f'<c r="{letter}{row}" s="{down.style}" t="n" />' for row in listed.rows]
    texts = zip(listed.rows, in_rows(escape(down.formula[1:], quote=False), listed.rows), strict=True)
    if values is None:
        return [f'<c r="{letter}{row}" s="{down.style}"><f>{text}</f><v></v></c>' for row, text in texts]
    return [
        f'<c r="{letter}{row}" s="{down.style}"{sort}><f>{text}</f><v>{found}</v></c>'
        for row, text in texts
        for sort, found in (_stored(values[row - 1][number - 1]),)
    ]


def _stored(value: Any) -> tuple[str, str]:
    """What a formula's value is to a file, where it is no number, and how it stands there."""
    if isinstance(value, bool):
        return ' t="b"', "1" if value else "0"
    if isinstance(value, (int, float)):
        return "", repr(value)
    text = escape(value or "", quote=False)
    return ' t="e"' if value in ERROR_CODES else ' t="str"', text
