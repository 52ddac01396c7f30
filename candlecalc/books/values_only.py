"""The workbook as a bookkeeper gets it: every figure as a value, no formula, nothing hidden, nothing to type."""

from openpyxl.cell.cell import ERROR_CODES, Cell
from openpyxl.formatting.formatting import ConditionalFormattingList
from openpyxl.utils import get_column_letter, range_boundaries
from openpyxl.worksheet.datavalidation import DataValidationList
from openpyxl.worksheet.protection import SheetProtection
from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.files import zipped
from candlecalc.workbook.book import Drafted
from candlecalc.workbook.reading.opening import cell_at
from candlecalc.workbook.writing import pack
from candlecalc.workbook.writing.listed import NOT_LISTED, Values, as_cells

AS_HANDED_OVER = "values alone, as handed over to a bookkeeper"


def packed(written: Drafted) -> bytes:
    """The file. The draft is changed: what follows from its formulas must have been read before."""
    book, values = written.book, written.values
    for name in list(book.defined_names):
        del book.defined_names[name]
    for sheet in book.worksheets:
        as_cells(sheet, written.lists.get(sheet.title, NOT_LISTED))
        _frozen(sheet, values[sheet.title])
    book.properties.description = AS_HANDED_OVER
    book.calculation.fullCalcOnLoad = False
    return zipped(pack.parts_of(book, written.dated, written.texts))


def _frozen(sheet: Worksheet, values: Values) -> None:
    """A tab with the value of each formula in its place, and without what only serves typing."""
    for cell in sheet._cells.values():
        if cell.data_type == "f":
            _put(cell, cell_at(values, cell.row, cell.column))
    sheet.conditional_formatting = ConditionalFormattingList()
    sheet.data_validations = DataValidationList()
    sheet.protection = SheetProtection()
    for row in sheet.row_dimensions.values():
        row.hidden = False
    for column in sheet.column_dimensions.values():
        column.hidden = False
    last = max((row for (row, _), cell in sheet._cells.items() if cell.value not in (None, "")), default=1)
    for place in [place for place in sheet._cells if place[0] > last]:
        del sheet._cells[place]
    for name in list(sheet.tables):
        del sheet.tables[name]
    _, _, widest, _ = range_boundaries(str(sheet.print_area).rpartition("!")[2])
    sheet.print_area = f"A1:{get_column_letter(widest)}{_last_said(sheet, widest)}"


def _put(cell: Cell, value: object) -> None:
    cell.value = value if value != "" else None
    if isinstance(value, str) and value:
        cell.data_type = "e" if value in ERROR_CODES else "s"


RUNNING = 2  # numbers that stand in a row where nothing was typed: its own, and a count


def _last_said(sheet: Worksheet, widest: int) -> int:
    """The last row that says more than its running numbers, in the columns that are printed."""
    said: dict[int, int] = {}
    for (row, column), cell in sheet._cells.items():
        if column <= widest and cell.value not in (None, ""):
            said[row] = said.get(row, 0) + (RUNNING + 1 if isinstance(cell.value, str) else 1)
    return max((row for row, much in said.items() if much > RUNNING), default=1)
