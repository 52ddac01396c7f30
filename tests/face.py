"""One test body over every face of a function: Python, columns, cell formulas, add-ins, named LAMBDAs.

A test asks for `face` and calls functions on it:

    def test_a_load_is_counted_on_the_wax(face):
        assert face.oil_for_wax(500, 0.08) == pytest.approx(40)
        with face.refuses("it takes 0 to 0.5 of wax weight"):
            face.oil_for_wax(500, 8)

It runs once for each face that has every function it calls. Bodies are first run on Python, as the tests
are collected, and the calls noted; a face then calculates all of them at once, and a test gets its answers
in the order of its calls. So such a test takes nothing else but parameters.
"""

import contextlib
import importlib
import inspect
import math
import re
from datetime import date
from typing import NamedTuple

import libreoffice
import pytest
import two_engines
from openpyxl import Workbook
from openpyxl.utils import get_column_letter

from candlecalc.calc import REGISTRY
from candlecalc.declaration.guard import guarded
from candlecalc.declaration.native import Leaf, spell
from candlecalc.quantities import days


class Call(NamedTuple):
    """A function and its arguments as cells: None where one is left out, a list for a range."""

    name: str
    cells: tuple

    @property
    def formula(self):
        return REGISTRY[self.name]

    @property
    def key(self):
        return repr(self)  # TRUE equals 1, but is not the same


class RefusalError(ValueError):
    """A face has given an error where its answer would stand."""


class Recorder:
    """Python itself, which notes every call."""

    def __init__(self):
        self.calls = []

    def __getattr__(self, name):
        formula = REGISTRY[name]

        def called(*given, **named):
            bound = inspect.signature(formula.checked).bind(*given, **named).arguments
            self.calls.append(Call(name, tuple(_typed(bound.get(argument)) for argument in formula.arguments)))
            return formula.checked(*given, **named)

        return called

    @contextlib.contextmanager
    def refuses(self, words):
        with pytest.raises(ValueError, match=re.escape(words)):
            yield


class Replay:
    """A face that has calculated: its answers in the order of a test's calls."""

    def __init__(self, calls, answers):
        self.rest = list(zip(calls, answers, strict=True))

    def __getattr__(self, name):
        def called(*given, **named):
            call, rows = self.rest.pop(0)
            assert call.name == name
            return _read(call.formula, rows)

        return called

    @contextlib.contextmanager
    def refuses(self, words):
        # A cell gives no words: that they are the right ones, Python's turn has shown.
        with pytest.raises(RefusalError):
            yield


def recorded(test, parameters):
    """The calls that a test makes, found by running it on Python."""
    recorder = Recorder()
    with contextlib.suppress(Exception, pytest.fail.Exception):  # what is wrong with it shows when it runs as a test
        test(face=recorder, **parameters)
    return recorder.calls


# The faces: each takes calls and gives, for each, the rows of cells that the answer fills.


def _formulas(engine):
    def calculate(calls):
        book, places = _native_book(calls)
        values = engine(book)
        return [[[values.get(("Calls", place))]] for place in places]

    return calculate


def _by_libreoffice(book):
    # The office that has the add-in serves plain formulas too: one start less.
    return two_engines.by_libreoffice(book, importlib.import_module("faces.calc_addin_book").office())


def _module(name):
    return lambda calls: importlib.import_module(name).calculate(calls)


# Each with whether it takes text with a unit, as people type it.
FACES = {
    "Python": (None, True),
    "columns, NumPy and pandas": (_module("column_calls"), True),
    "formula, embedded engine": (_formulas(two_engines.by_formualizer), False),
    "formula, LibreOffice": (_formulas(_by_libreoffice), False),
    "LAMBDA name, ironcalc": (_module("faces.lambda_book"), False),
    "Excel, xlwings": (_module("faces.excel_book"), True),
    "Calc add-in, LibreOffice": (_module("faces.calc_addin_book"), True),
    "web sheet, V8": (lambda calls: importlib.import_module("faces.web_book").calculated(calls), True),
}


def takes(face, call):
    """Whether a face has the function. LibreOffice hands TRUE over as 1, so it cannot refuse it."""
    if any(cell is True for cell in call.cells) and "LibreOffice" in face:
        return False
    if "columns" in face:
        return importlib.import_module("column_calls").takes(call)
    if "web" in face:
        return importlib.import_module("faces.web_book").takes(call)
    return FACES[face][1] or bool(call.formula.native)


def calculated(face, calls):
    """Every answer of a face: the key of a call -> rows of cells."""
    calculate, text = FACES[face]
    answers = calculate([call if text else in_units(call) for call in calls])
    return {call.key: answer for call, answer in zip(calls, answers, strict=True)}


def in_units(call):
    """A call with text such as "12 oz" as the number that a formula's cell would hold."""
    cells = []
    for argument, given in zip(call.formula.arguments.values(), call.cells, strict=True):
        if given is not None and (argument.term.is_number or argument.term.unit == "date"):
            with contextlib.suppress(ValueError):
                given = _typed(argument.read(given))
        cells.append(given)
    return call._replace(cells=tuple(cells))


def _native_book(calls):
    book = Workbook()
    sheet = book.active
    sheet.title = "Calls"
    places = []
    for row, call in enumerate(calls, start=1):
        references, column = {}, 1
        for name, given in zip(call.formula.arguments, call.cells, strict=True):
            if given is None:
                continue
            cells = (given or (None,)) if isinstance(given, tuple) else (given,)
            for offset, value in enumerate(cells):
                cell = sheet.cell(row, column + offset, value)
                if isinstance(value, str):
                    cell.data_type = "s"
            ends = [f"{get_column_letter(place)}{row}" for place in (column, column + len(cells) - 1)]
            references[name] = Leaf(":".join(ends) if isinstance(given, tuple) else ends[0])
            column += len(cells)
        places.append(f"{get_column_letter(column)}{row}")
        try:
            sheet[places[-1]] = "=" + spell(guarded(call.formula, references))
        except ValueError:  # a required argument is left out: no formula can be written
            sheet[places[-1]] = "=NA()"
    return book, places


def _typed(given):
    """An argument as the cells it is typed in: a tuple for a range, a serial number for a date."""
    if isinstance(given, date):
        return days.serial(given)
    if isinstance(given, str) or not hasattr(given, "__iter__"):
        return None if isinstance(given, float) and math.isnan(given) else given
    return tuple(_typed(cell) for cell in given)


def _read(formula, rows):
    cells = [cell for row in rows for cell in row]
    if formula.result.many and set(cells) <= {""}:  # an answer of no rows fills one cell with nothing
        return []
    if any(isinstance(cell, libreoffice.Error) or cell is None for cell in cells):
        assert set(cells) == {"#N/A"}, f"{formula.name} gives {cells}: an error is #N/A on every face"
        raise RefusalError(f"{formula.name} gives {cells}")
    if formula.fields:
        hint = inspect.signature(formula.bare).return_annotation
        kind = hint.__args__[0] if formula.result.many else hint
        read = [kind(*map(_value, formula.fields.values(), row)) for row in rows]
    else:
        read = [_value(formula.result, row[0]) for row in rows]
    return read if formula.result.many else read[0]


def _value(term, cell):
    if cell == "" and term.blank:
        return None
    return days.read(cell) if term.unit == "date" else cell
