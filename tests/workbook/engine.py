"""A made workbook in the embedded engine: type into it and see which cells move, in hundredths of a second."""

import datetime
import functools
import math
import re
import zipfile

import books
import formualizer
from openpyxl.utils.cell import coordinate_to_tuple, get_column_letter
from openpyxl.utils.datetime import to_excel

from candlecalc.files import zipped
from candlecalc.workbook.writing import memory, pack


class Held:
    """A workbook that is calculated anew where a change reaches, and keeps its other values."""

    def __init__(self, path):
        self.book = formualizer.Workbook.from_bytes(readable(path.read_bytes()), config=memory.quick())
        self.ranges = {title: _all(title, text) for title, text in books.sheets(path).items()}
        self.stood = {}  # what stood in cells that were typed into
        self.book.evaluate_all()

    def changed(self, changes):
        """{tab: its rows of values} after changes to the workbook as it was made; None clears a cell."""
        # A cell that is no longer changed gets back what stood there.
        for cell, value in {**self.stood, **changes}.items():
            now = self.value(cell)
            self.stood.setdefault(cell, now)
            if now != value:
                self.book.set_value(cell[0], *coordinate_to_tuple(cell[1]), value)
        self.book.evaluate_all()
        return {title: self.book.sheet(title).get_values(cells) for title, cells in self.ranges.items()}

    def cells(self, sheets, wanted):
        """{cell: its value as the office gives it} of some cells of what `changed` gives."""
        at = {cell: _place(cell[1]) for cell in wanted}
        return {cell: _plain(sheets[cell[0]][row - 1][column - 1]) for cell, (row, column) in at.items()}

    def value(self, cell):
        return self.book.get_value(cell[0], *coordinate_to_tuple(cell[1]))


_place = functools.cache(coordinate_to_tuple)  # the same thousands of cells are asked for after each change


def _all(title, sheet):
    end = re.search(r'<dimension ref="A1:(\w+)"', sheet)[1]
    return formualizer.RangeAddress(title, 1, 1, *coordinate_to_tuple(end))


def _plain(value):
    if isinstance(value, datetime.date):
        return float(to_excel(value))
    if isinstance(value, dict):
        return memory.ERRORS.get(value["kind"], f"#{value['kind']}")
    return "" if value is None else value


def readable(package):
    """The package with a corner of each table: the engine takes no large ones."""
    parts = pack._parts(package)
    tables = {name: _corner(data) for name, data in parts.items() if name.startswith("xl/tables/")}
    return zipped({**parts, **tables}, zipfile.ZIP_STORED)


def _corner(table):
    """The same table, one column wide and one row high."""
    text = table.decode()
    column, row = re.search(r'ref="([A-Z]+)(\d+):', text).groups()
    text = re.sub(r'ref="[^"]*"', f'ref="{column}{row}:{column}{int(row) + 1}"', text, count=1)
    first = r'<tableColumns count="1">\1</tableColumns>'
    return re.sub(r"<tableColumns.*?(<tableColumn [^>]*/>).*</tableColumns>", first, text).encode()


def moved(before, after):
    """Cells whose values differ by more than the last digits of a calculation."""
    return {
        (title, f"{get_column_letter(column)}{row}")
        for title, rows in before.items()
        if rows != after[title]
        for row, (old, new) in enumerate(zip(rows, after[title], strict=True), start=1)
        if old != new
        for column, (a, b) in enumerate(zip(old, new, strict=True), start=1)
        if not alike(a, b)
    }


def alike(a, b, digits=7):
    if isinstance(a, float) and isinstance(b, float):
        return math.isclose(a, b, rel_tol=10**-digits, abs_tol=1e-9)
    return a == b
