"""Excel's cells without Excel: what a formula would show, through xlwings' own reading, calling and writing.

    calculate([("oil_for_wax", [500, 0.08]), ...])    [[[40.0]], ...]

A case is a function and its arguments as cells hold them: a value is a cell, a list of cells a column, a
list of rows a range, an `Error` an error cell, None an argument left out, or a blank cell where it has to
be given. An answer is rows of cells: numbers, texts, `Error`s.

xlwings runs as it is: its server, its converters, its calling. Only what Windows and Excel would give it is
stood in for: pywin32, the cells, and the last step of the VBA text, error values for texts.
"""

import contextlib
import ctypes
import importlib
import re
import sys
from datetime import date
from functools import cache
from types import SimpleNamespace
from unittest import mock

from libreoffice import Error

from candlecalc.declaration.declared import REGISTRY
from candlecalc.faces.addins import wizard
from candlecalc.faces.excel import vba
from candlecalc.quantities.days import serial

LEFT_OUT = -2147352572  # what an argument left out is over COM
# Excel's own numbers for its errors (XlCVError).
NUMBERS = {"xlErrNull": 2000, "xlErrDiv0": 2007, "xlErrValue": 2015, "xlErrRef": 2023, "xlErrName": 2029,
           "xlErrNum": 2036, "xlErrNA": 2042}  # fmt: skip
RANGE = "{00020846-0000-0000-C000-000000000046}"  # the type of Excel's Range, by which xlwings knows one
PYWIN32 = ["pythoncom", "pywintypes", "win32api", "win32com", "win32com.client", "win32com.server"]
PYWIN32 += ["win32com.server.dispatcher", "win32com.server.policy", "win32com.server.util"]
PYWIN32 += ["win32con", "win32event", "win32gui", "win32process", "win32timezone"]


def calculate(cases):
    """What the cells would show, case by case."""
    return [in_cells(call(name, as_given(name, cells))) for name, cells in cases]


def call(name, given):
    """What xlwings' server hands to VBA for one formula: a value, a row, or rows."""
    function = wizard.WHY if name == wizard.WHY else wizard.name(REGISTRY[name])
    return server().CallUDF(vba.FUNCTIONS, function, given, WORKBOOK, Range(1))


def as_given(name, cells):
    """Arguments as VBA hands them over."""
    if name == wizard.WHY:
        return [Range(cell) for cell in cells] + [LEFT_OUT] * (len(wizard.why_arguments()) - len(cells))
    arguments = list(REGISTRY[name].arguments.values())
    cells = [*cells, *[None] * (len(arguments) - len(cells))]
    return [
        LEFT_OUT if cell is None and argument.optional else Range(cell)
        for argument, cell in zip(arguments, cells, strict=True)
    ]


def in_cells(answer):
    """Rows of cells, after the last step of the VBA text: a text that stands for an error becomes one."""
    rows = answer if isinstance(answer, list) else [[answer]]
    rows = rows if isinstance(rows[0], list) else [rows]
    return [[Error(cell) if cell in replaced() else cell for cell in row] for row in rows]


@cache
def replaced():
    """The texts that the VBA text replaces, and by which error."""
    return dict(re.findall(r'Case "(.*)": CandleCell = CVErr\((\w+)\)', vba.module()))


class Range:
    """Cells as they come over COM. There is no Value: read, it would round money to four decimals."""

    def __init__(self, given):
        several = isinstance(given, list | tuple)
        cells = [row if isinstance(row, list | tuple) else [row] for row in (given if several else [given])]
        values = tuple(tuple(map(over_com, row)) for row in cells or [[None]])
        self.Rows, self.Columns = SimpleNamespace(Count=len(values)), SimpleNamespace(Count=len(values[0]))
        self.Value2 = values[0][0] if self.Rows.Count == self.Columns.Count == 1 else values
        self.Worksheet, self.Row, self.Column, self.Areas = SHEET, 1, 1, SimpleNamespace(Count=1)
        kind = SimpleNamespace(GetTypeAttr=lambda: SimpleNamespace(iid=RANGE))
        self._oleobj_ = SimpleNamespace(GetTypeInfo=lambda: kind)


def over_com(cell):
    """One cell's Value2: numbers and days are doubles, an error is a whole number."""
    if isinstance(cell, Error):
        return 0x800A0000 - 2**32 + NUMBERS[vba.ERRORS[cell]]
    if isinstance(cell, date):
        return serial(cell)
    return float(cell) if isinstance(cell, int) and not isinstance(cell, bool) else cell


WORKBOOK = SimpleNamespace(Name="costs.xlsm", Worksheets=[], Application=SimpleNamespace(Hwnd=1))
SHEET = SimpleNamespace(Parent=WORKBOOK, Name="Sheet1")


@cache
def server():
    """xlwings' server, over the functions as its decorators for Windows leave them."""
    found = windows("com_server").XLPython()
    functions()
    return found


@cache
def functions():
    """The module that Excel asks, decorated as on Windows."""
    udfs = windows("udfs")
    for name in (vba.FUNCTIONS, "candlecalc.faces.excel.functions"):
        sys.modules.pop(name, None)
    with mock.patch("xlwings.func", udfs.xlfunc), mock.patch("xlwings.arg", udfs.xlarg):
        return importlib.import_module(vba.FUNCTIONS)


def windows(name):
    """A part of xlwings that it has on Windows only."""
    return _parts()[name]


@cache
def _parts():
    import xlwings

    with _stand_ins():
        parts = {name: importlib.import_module(f"xlwings.{name}") for name in ("_xlwindows", "udfs", "com_server")}
    sys.modules.update({f"xlwings.{name}": part for name, part in parts.items()})  # they went with the stand-ins
    xlwings.engines.add(xlwings.Engine(impl=parts["_xlwindows"].engine))
    return parts


@contextlib.contextmanager
def _stand_ins():
    modules = {name: mock.MagicMock(__name__=name, __path__=[], __file__="") for name in PYWIN32}
    for name, module in modules.items():
        parent, _, child = name.rpartition(".")
        if parent:
            setattr(modules[parent], child, module)
    _like_windows(modules["pywintypes"], modules["pythoncom"], modules["win32com.client"])
    modules["win32process"].GetWindowThreadProcessId = lambda window: (0, 1)
    # What the server did not make itself, it leaves as it came.
    modules["win32com.server.util"].unwrap = mock.Mock(side_effect=modules["pywintypes"].com_error)
    with (
        mock.patch.dict(sys.modules, modules),
        mock.patch.object(ctypes, "oledll", mock.MagicMock(), create=True),
        mock.patch.object(ctypes, "windll", mock.MagicMock(), create=True),
        mock.patch.object(ctypes, "PyDLL", mock.MagicMock()),
        mock.patch("atexit.register"),  # it would look for Excel's processes at the end
        mock.patch("os.chdir"),
    ):
        yield


def _like_windows(pywintypes, pythoncom, client):
    pywintypes.com_error = pythoncom.ole_error = type("ComError", (Exception,), {})
    pywintypes.error = type("Error", (Exception,), {})
    pywintypes.TimeType = type("Time", (), {})
    pywintypes.IID = str
    client.Dispatch = lambda found, **_: found
    for kind in ("CDispatch", "CoClassBaseClass", "DispatchBaseClass"):
        setattr(client, kind, type(kind, (), {}))
