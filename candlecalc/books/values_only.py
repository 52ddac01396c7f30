"""The workbook as a bookkeeper gets it: every figure as a value, no formula, nothing hidden, nothing to type."""

from openpyxl.cell.cell import ERROR_CODES, Cell
from openpyxl.formatting.formatting import ConditionalFormattingList
from openpyxl.utils import get_column_letter
from openpyxl.worksheet.datavalidation import DataValidationList
from openpyxl.worksheet.protection import SheetProtection
from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.files import zipped
from candlecalc.workbook.book import Drafted
from candlecalc.workbook.reading.opening import cell_at
from candlecalc.workbook.writing import pack
from candlecalc.workbook.writing.memory import Values

AS_HANDED_OVER = "values alone, as handed over to a bookkeeper"


def packed(written: Drafted) -> bytes:
    """The file. The draft is changed: what follows from its formulas must have been read before."""
    book, values = written.book, written.values
    for name in list(book.defined_names):
        del book.defined_names[name]
    for sheet in book.worksheets:
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
    last_row, last_column = _filled(sheet)
    for place in [place for place in sheet._cells if place[0] > last_row]:
        del sheet._cells[place]
    for name in list(sheet.tables):
        del sheet.tables[name]
    sheet.print_area = f"A1:{get_column_letter(last_column)}{last_row}"


def _put(cell: Cell, value: object) -> None:
    cell.value = value if value != "" else None
    if isinstance(value, str) and value:
        cell.data_type = "e" if value in ERROR_CODES else "s"


def _filled(sheet: Worksheet) -> tuple[int, int]:
    """The last row and column that hold anything."""
    filled = [place for place, cell in sheet._cells.items() if cell.value not in (None, "")]
    return max((row for row, _ in filled), default=1), max((column for _, column in filled), default=1)
