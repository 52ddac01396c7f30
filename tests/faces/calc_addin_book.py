"""The functions as the Calc add-in gives them in a real LibreOffice: cases in, answers out.

    calculate([("oil_for_wax", (500, "8%")), ("oil_parts", (40, [0.5, 0.5]))])   [[[40.0]], [[20.0], [20.0]]]

A case is a function's name and its arguments as cells: a list or tuple for a range, which stands in a
column (rows of cells for a block); None for one left out, in a range for an empty cell; BLANK for an empty
cell; `Typed("=1/0")` for a formula. An answer is the rows of cells it fills: numbers, texts, and `Error` as
`libreoffice` has it. All cases stand in one workbook, calculated once.
"""

import atexit
import io
import tempfile
import zipfile
from collections.abc import Sequence
from functools import cache
from pathlib import Path
from typing import Any, NamedTuple

from libreoffice import Error, Office
from openpyxl import Workbook
from openpyxl.utils import get_column_letter
from openpyxl.worksheet.formula import ArrayFormula

from candlecalc.declaration.declared import REGISTRY
from candlecalc.faces.addins.cells import answer
from candlecalc.faces.libreoffice import extension as calc_addin
from candlecalc.faces.libreoffice.component import spelled

SHEET = "Cases"
BLANK = object()
Case = tuple[str, Sequence[Any]]
Rows = list[list[Any]]


class Typed(str):
    """A formula in an argument's cell; any other text is a text."""


class Laid(NamedTuple):
    """A case in the workbook: its formula, and where its answer stands."""

    row: int
    column: int  # of the formula; its rows and columns are counted in the two cells after the answer
    high: int
    wide: int
    rows: int  # that the case takes, its arguments among them


def calculate(cases: Sequence[Case], by: Office | None = None) -> list[Rows]:
    """The answers of the add-in, in the order of the cases."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder, "cases.xlsx")
        laid = write(cases, path)
        values = (by or office()).recalculated(path)
    return [rows_at(place, values) for place in laid]


@cache
def office() -> Office:
    """An office that has the add-in, made from the declarations as they are now; one for this process.

    It comes with it: to install it takes as long as a start. test_calc_addin.py does that, as a maker does.
    """
    folder = tempfile.TemporaryDirectory()
    with zipfile.ZipFile(io.BytesIO(calc_addin.addin())) as package:
        package.extractall(Path(folder.name, "candles.oxt"))
    made = Office(comes_with=Path(folder.name))
    atexit.register(folder.cleanup)
    atexit.register(made.close)
    return made


def write(cases: Sequence[Case], path: Path) -> list[Laid]:
    """A workbook that holds the cases under one another; where each answer stands."""
    book = Workbook()
    sheet = book.active
    sheet.title = SHEET
    laid: list[Laid] = []
    row = 1
    for name, arguments in cases:
        laid.append(_lay(sheet, row, name, arguments))
        row += laid[-1].rows
    book.save(path)
    return laid


def rows_at(place: Laid, values: dict) -> Rows:
    """The rows of cells that an answer fills."""

    def at(row: int, column: int) -> Any:
        return values.get((SHEET, f"{get_column_letter(place.column + column)}{place.row + row}"))

    if (place.high, place.wide) == (1, 1):
        return [[at(0, 0)]]
    counted = [at(0, place.wide), at(0, place.wide + 1)]
    if any(isinstance(count, Error) for count in counted):
        return [[at(0, 0)]]
    rows, columns = map(int, counted)
    assert rows <= place.high and columns <= place.wide, "the answer is larger than its place"
    return [[at(row, column) for column in range(columns)] for row in range(rows)]


def _lay(sheet: Any, row: int, name: str, arguments: Sequence[Any]) -> Laid:
    column, references, rows = 1, [], 1
    for argument in arguments:
        if argument is None:
            references.append("")
            continue
        block = _block(argument)
        _fill(sheet, row, column, block)
        first, last = (
            f"{get_column_letter(column + right)}{row + down}"
            for right, down in ((0, 0), (len(block[0]) - 1, len(block) - 1))
        )
        references.append(f"{first}:{last}" if _is_range(argument) else first)
        column, rows = column + len(block[0]), max(rows, len(block))
    while references and not references[-1]:
        references.pop()
    formula = f"CANDLE.{spelled(name).upper()}({','.join(references)})"
    high, wide = _size(name, arguments)
    if (high, wide) == (1, 1):
        sheet.cell(row, column).value = f"={formula}"
    else:
        last = f"{get_column_letter(column + wide - 1)}{row + high - 1}"
        place = f"{get_column_letter(column)}{row}:{last}"
        sheet.cell(row, column).value = ArrayFormula(place, f"={formula}")
        sheet.cell(row, column + wide).value = f"=ROWS({formula})"
        sheet.cell(row, column + wide + 1).value = f"=COLUMNS({formula})"
    return Laid(row, column, high, wide, max(rows, high))


def _fill(sheet: Any, row: int, column: int, block: Rows) -> None:
    for down, cells in enumerate(block):
        for right, value in enumerate(cells):
            cell = sheet.cell(row + down, column + right)
            cell.value = None if value is BLANK else value
            if isinstance(value, str) and not isinstance(value, Typed):
                cell.data_type = "s"


def _is_range(argument: Any) -> bool:
    return isinstance(argument, list | tuple)


def _block(argument: Any) -> Rows:
    if not _is_range(argument):
        return [[argument]]
    return [list(cells) if _is_range(cells) else [cells] for cells in argument] or [[None]]


def _size(name: str, arguments: Sequence[Any]) -> tuple[int, int]:
    """The rows and columns to keep for an answer, as Python has them: an answer that needs more is found out.

    Every cell too many would hold an error, and each error is asked for by itself.
    """
    if name == "why":
        return 1, 1
    rows = answer(REGISTRY[name], [_plain(argument) for argument in arguments])
    return max(len(rows), 1), max(map(len, rows), default=1)


def _plain(argument: Any) -> Any:
    if _is_range(argument):
        return [["" if cell is None or cell is BLANK else cell for cell in cells] for cells in _block(argument)]
    return "" if argument is BLANK else argument
