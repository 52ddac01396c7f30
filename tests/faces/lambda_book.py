"""The LAMBDA names as ironcalc calculates them: cases in, answers out.

    calculate([("oil_for_wax", (500, 0.08)), ("parts_cost", ((1, 2), (3, 4)))])   [[[40.0]], [[11.0]]]

A case is a function's name and its arguments as cells: a list or tuple for a range, None for one left out,
BLANK for a blank cell.
An answer is the rows of cells it fills. All cases stand in one workbook, calculated once. It holds nothing
but cells and LAMBDA names: beside names that hold a value ironcalc 0.9 does not find them.
"""

import tempfile
from pathlib import Path

import ironcalc
import libreoffice
from openpyxl import Workbook
from openpyxl.utils import coordinate_to_tuple, get_column_letter
from openpyxl.workbook.defined_name import DefinedName

from candlecalc.calc import REGISTRY
from candlecalc.faces.addins import wizard
from candlecalc.faces.lambdas import names as lambdas

SHEET = "Calls"
BLANK = object()


def calculate(cases):
    answers = calculated(book_of(cases), [f"A{row}" for row, _ in enumerate(cases, start=1)])
    return [[[answer]] for answer in answers]


def calculated(book, cells):
    """What cells of a book's first sheet come to."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder, "calls.xlsx")
        book.save(path)
        model = ironcalc.load_from_xlsx(str(path), "en", "UTC", "en")
    model.evaluate()
    return [_answer(model, *coordinate_to_tuple(cell)) for cell in cells]


def book_of(cases):
    """A row a case: the call in column A, its arguments from column B on."""
    book = Workbook()
    for name in {name for name, _ in cases}:
        _define(book, lambdas.named(REGISTRY[name]))
    sheet = book.active
    sheet.title = SHEET
    for row, (name, arguments) in enumerate(cases, start=1):
        sheet.cell(row, 1).value = f"={wizard.name(REGISTRY[name])}({','.join(_typed(sheet, row, arguments))})"
    return book


def _define(book, named):
    book.defined_names[named.name] = DefinedName(named.name, comment=named.comment, attr_text=named.definition)


def _typed(sheet, row, arguments):
    """The arguments of a call as references, once they stand in their cells."""
    arguments = list(arguments)
    while arguments and arguments[-1] is None:
        arguments.pop()
    references, column = [], 2
    for given in arguments:
        if given is None:
            references.append("")
            continue
        many = isinstance(given, list | tuple)
        cells = (given or [BLANK]) if many else [given]
        for offset, value in enumerate(cells):
            cell = sheet.cell(row, column + offset, None if value is BLANK else value)
            if isinstance(value, str):
                cell.data_type = "s"
        ends = [f"{get_column_letter(end)}{row}" for end in (column, column + len(cells) - 1)]
        references.append(":".join(ends) if many else ends[0])
        column += len(cells)
    return references


def _answer(model, row, column):
    value = model.get_cell_value(0, row, column)
    if str(model.get_cell_type(0, row, column)) == "CellType.ErrorValue":
        return libreoffice.Error(value)
    return float(value) if isinstance(value, int | float) else value
