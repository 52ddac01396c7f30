"""Opening a workbook that may come from anywhere: what is too large or too odd is refused before it is read.

The file is read, never changed. Its XML may not hold a document type, which is how a small file grows without end.
"""

import stat
import zipfile
from collections.abc import Iterable, Iterator
from contextlib import closing, contextmanager
from functools import cache
from pathlib import Path
from typing import Any, NamedTuple
from xml.etree.ElementTree import iterparse

import defusedxml  # noqa: F401  openpyxl reads safely where it is installed
import openpyxl
from defusedxml.ElementTree import fromstring
from openpyxl.utils import column_index_from_string
from openpyxl.worksheet._read_only import ReadOnlyWorksheet
from openpyxl.worksheet._reader import (
    FORMULA_TAG,
    INLINE_STRING,
    ROW_TAG,
    VALUE_TAG,
    WorkSheetParser,
    _cast_number,
)

from candlecalc.season.folder import UnreadableError
from candlecalc.workbook.reading.unreadable import why_not

MOST_PARTS, MOST_BYTES, MOST_GROWTH = 1_000, 150_000_000, 200
MOST_ROWS, MOST_COLUMNS = 20_000, 200
MOST_CELLS = 3_000_000  # blank ones between others included
# A reader's time and memory go by elements and attributes, and each of them has one of these marks. Tabs are read
# a row at a time; all else is read whole, at some twenty microseconds an element. Our demo of a year has half.
MARKS = (b"<", b"=")
MOST_MARKS_OF_TABS, MOST_OTHER_MARKS = 6_000_000, 120_000
TYPES = "[Content_Types].xml"
PIECE = 1 << 20

Rows = list[tuple[Any, ...]]  # of a tab, what its cells hold
Cell = tuple[int, Any, Any]  # its column, its value, and its formula where it has one, else its value again


class Opened(NamedTuple):
    """What was read of a workbook."""

    description: str
    creator: str
    titles: list[str]  # of all its tabs
    tabs: dict[str, Rows]  # values
    formulas: dict[str, Rows]  # the same, but formulas where a cell has one
    names: dict[str, str]  # where its names point: "Batch!$A$3"


def opened(path: Path, titles: Iterable[str]) -> Opened:
    """Some tabs of a workbook, those of them that it has."""
    with workbook(path) as book:
        both = {title: rows_of(path, book[title]) for title in titles if title in book.sheetnames}
        tabs, formulas = ({title: rows[which] for title, rows in both.items()} for which in (0, 1))
        names = {name: str(each.attr_text) for name, each in book.defined_names.items()}
        facts = book.properties
        return Opened(str(facts.description), str(facts.creator), book.sheetnames, tabs, formulas, names)


@contextmanager
def workbook(path: Path) -> Iterator[openpyxl.Workbook]:
    """A workbook to read a row at a time; an UnreadableError says why it cannot be read."""
    try:
        refuse_no_file(path)
        with zipfile.ZipFile(path) as package:
            _refuse_giants(path, package)
        with closing(openpyxl.load_workbook(path, data_only=True, read_only=True, keep_links=False)) as book:
            yield book
    except UnreadableError:
        raise
    except OSError as problem:
        raise UnreadableError(f"{path}: {problem.strerror or problem}") from None
    except Exception:  # noqa: BLE001  whatever a broken file makes the reader do, it is this file's fault
        raise UnreadableError(f"{path}: it cannot be read as a workbook: {why_not(path)}") from None


def refuse_no_file(path: Path) -> None:
    """A pipe or a device never ends, or waits for ever."""
    if not stat.S_ISREG(path.stat().st_mode):
        raise UnreadableError(f"{path}: it is a pipe or a device, no file")


def _refuse_giants(path: Path, package: zipfile.ZipFile) -> None:
    parts = package.infolist()
    names = [part.filename for part in parts]
    whole = sum(part.file_size for part in parts)
    grown = any(part.file_size > MOST_GROWTH * max(part.compress_size, 1000) for part in parts)
    odd = len(parts) > MOST_PARTS or whole > MOST_BYTES or grown or len(set(names)) < len(names)
    if odd or _too_many_marks(package):
        raise UnreadableError(f"{path}: too large or too oddly packed to be a season workbook")


def _too_many_marks(package: zipfile.ZipFile) -> bool:
    left = {True: MOST_MARKS_OF_TABS, False: MOST_OTHER_MARKS}
    if TYPES not in package.namelist() or _marks(package, TYPES, MOST_OTHER_MARKS) > MOST_OTHER_MARKS:
        return TYPES in package.namelist()
    tabs = _tabs(package)
    for name in package.namelist():
        left[name in tabs] -= _marks(package, name, left[name in tabs])
    return min(left.values()) < 0


def _tabs(package: zipfile.ZipFile) -> set[str]:
    """The parts that hold a tab."""
    types = fromstring(package.read(TYPES), forbid_dtd=True)
    return {
        each.get("PartName", "").lstrip("/") for each in types if each.get("ContentType", "").endswith("worksheet+xml")
    }


def _marks(package: zipfile.ZipFile, name: str, most: int) -> int:
    """How many elements and attributes a part has, about; counted no further than is needed."""
    found = 0
    with package.open(name) as part:
        while found <= most and (piece := part.read(PIECE)):
            found += sum(map(piece.count, MARKS))
    return found


class _Cells(WorkSheetParser):  # type: ignore[misc]
    """openpyxl's reader of a tab, which gives a cell's value or its formula, made to give both in one pass.

    It reads rows alone, by the parser in C. On opening, openpyxl looks for each tab's size by defusedxml's, which goes
    through what stands before the first element and refuses entities.
    """

    def parse(self) -> Iterator[tuple[int, list[Cell]]]:
        for _, element in iterparse(self.source):  # noqa: S314  see above
            if element.tag == ROW_TAG:
                yield self.parse_row(element)
                element.clear()

    def parse_cell(self, element: Any) -> Cell:
        place = element.get("r")
        column = _column(place.rstrip(DIGITS)) if place else self.col_counter + 1
        self.col_counter: int = column - 1  # the cell before, as openpyxl counts
        value = formula = None
        for part in element:
            if part.tag == FORMULA_TAG:
                formula = self.parse_formula(element) if part.get("t") else f"={part.text or ''}"
            elif value is None:
                value = self._value(element, part)
        self.col_counter = column
        return column, value, value if formula is None else formula

    def _value(self, element: Any, part: Any) -> Any:
        """Most of a year's 270,000 cells are of a few kinds, read here; of any other openpyxl says what it holds."""
        kind = element.get("t", "n")
        if part.tag == VALUE_TAG:
            if kind in ("str", "e"):
                return part.text or None
            if kind == "n" and (not part.text or int(element.get("s", 0)) not in self.date_formats):
                return _cast_number(part.text) if part.text else None
        if kind == "inlineStr" and (words := element.findtext(PLAIN_TEXT)) and len(element[0]) == 1:
            return words
        return super().parse_cell(element)["value"]


DIGITS = "0123456789"
PLAIN_TEXT = f"{INLINE_STRING}/{INLINE_STRING.replace('}is', '}t')}"
_column = cache(column_index_from_string)


def rows_of(path: Path, sheet: ReadOnlyWorksheet) -> tuple[Rows, Rows]:
    """What a tab's rows hold, as far as the last cell that holds something: values, and formulas."""
    held: tuple[Rows, Rows] = ([], [])
    book, room = sheet.parent, 0
    with sheet._get_source() as source:
        parser = _Cells(
            source,
            sheet._shared_strings,
            data_only=True,
            epoch=book.epoch,
            date_formats=book._date_formats,
            timedelta_formats=book._timedelta_formats,
        )
        for number, cells in parser.parse():
            filled = [cell for cell in cells if cell[1] is not None or cell[2] is not None]
            last = max((column for column, _, _ in filled), default=0)
            room += max((column for column, _, _ in cells), default=0)
            if room > MOST_CELLS or last > MOST_COLUMNS or (last and number > MOST_ROWS):
                raise UnreadableError(f"{path}: {sheet.title} is too large")
            if last and number > len(held[0]):
                both = [None] * last, [None] * last
                for column, value, formula in filled:
                    both[0][column - 1], both[1][column - 1] = value, formula
                for rows, row in zip(held, both, strict=True):
                    rows += [()] * (number - 1 - len(rows))
                    rows.append(tuple(row))
    return held


def cell_at(rows: Rows, row: int, column: int) -> Any:
    """What a cell holds, its row and column counted from 1; nothing beyond the cells that were written."""
    held = rows[row - 1] if row <= len(rows) else ()
    return held[column - 1] if column <= len(held) else None
