"""Answers requests about workbooks inside the office itself, by its own Python; see `libreoffice.py`.

`office_worker.py` has the office load it. The test run leaves it alone: `uno` is there in the office only.
"""

import contextlib
import functools
import json
import sys
import time
from pathlib import Path

import unohelper
from com.sun.star.beans import PropertyValue
from com.sun.star.task import XJob

sys.path.append(str(Path(__file__).parent))
from office_gestures import Hand  # noqa: E402

FILTERS = {"xlsx": "Calc MS Excel 2007 XML", "ods": "calc8", "pdf": "calc_pdf_Export"}
HOLDS_SOMETHING = 1 | 2 | 4 | 16  # com.sun.star.sheet.CellFlags: a number, a date, a text, a formula
# The error values that files can name; any other is shown as Calc shows it.
ERRORS = {32767: "#N/A", 503: "#NUM!", 519: "#VALUE!", 521: "#NULL!", 524: "#REF!", 525: "#NAME?", 532: "#DIV/0!"}


class Answers(unohelper.Base, XJob):
    def __init__(self, context):
        self.context = context
        self.desktop = context.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", context)

    def execute(self, given):
        return json.dumps(_answer(self.context, self.desktop, json.loads(given[0].Value)))


g_ImplementationHelper = unohelper.ImplementationHelper()  # noqa: N816  the office's loader looks for this name
g_ImplementationHelper.addImplementation(Answers, "Answers", ("com.sun.star.task.Job",))


def _answer(context, desktop, request):
    try:
        if "functions" in request:
            return {"answer": dict(_functions(context, request["functions"]))}
        if "gestures" in request:
            return {"answer": list(_after_gestures(context, desktop, **request))}
        if "timed" in request:
            return {"answer": _timed(desktop, **request)}
        return {"answer": _do(desktop, **request)}
    except Exception as problem:
        return {"problem": f"{type(problem).__name__}: {getattr(problem, 'Message', problem)}"}


def _functions(context, prefix):
    """What the function wizard says of every function whose name begins so."""
    known = context.ServiceManager.createInstanceWithContext("com.sun.star.sheet.FunctionDescriptions", context)
    for place in range(known.Count):
        told = {part.Name: part.Value for part in known.getByIndex(place)}
        if told["Name"].startswith(prefix):
            arguments = [[argument.Name, argument.Description] for argument in told["Arguments"]]
            yield told["Name"], {"description": told["Description"], "arguments": arguments}


def _do(
    desktop,
    path="",
    edits=((),),
    times=1,
    tabs=(),
    save=None,
    kind=None,
    modules=None,
    formulas=(),
    rounds=0,
    anew=True,
):
    """The values after each set of edits, every set from the file as it is; or a copy saved as `kind`.

    Each set is calculated so many `times`; only some `tabs` are read where they are named. With Basic modules, what
    formulas over their functions show; with `rounds`, the seconds of so many calculations; not `anew`, the values
    as they are shown on opening.
    """
    if modules:
        return _shown(desktop, modules, formulas)
    if rounds or save is not None or not anew:
        with _opened(desktop, path) as book:
            return _once(book, edits[0], rounds, save, kind)
    try:
        book = _kept(desktop, path)
        reader = _Reader(book, tabs)
        return [_after(book, reader, changes, times) for changes in edits]
    except Exception:
        _let_go()  # what was typed may still stand there
        raise


@contextlib.contextmanager
def _opened(desktop, path):
    book = desktop.loadComponentFromURL(Path(path).as_uri(), "_blank", 0, (_property("Hidden", True),))
    if book is None or not hasattr(book, "Sheets"):
        raise ValueError(f"{Path(path).name} was not opened as a workbook")
    try:
        yield book
    finally:
        book.close(True)


def _once(book, changes, rounds, save, kind):
    """What may leave a book other than it was: seconds of calculations, a saved copy, what it shows on opening."""
    if not rounds and save is None:
        return [_Reader(book).values()]
    book.enableAutomaticCalculation(False)
    if rounds:
        return [_seconds(book.calculateAll) for _ in range(rounds)]
    _type(book, changes)
    book.calculateAll()
    book.enableAutomaticCalculation(True)  # the file would keep that it is off
    book.storeToURL(Path(save).as_uri(), (_property("FilterName", FILTERS[kind]),))
    return save


# The book that was asked last stays open, {its file as it stands: (what closes it, the book)}: most questions are of
# the same one again, and to open it takes twenty times as long as to calculate it.
KEPT = {}


def _kept(desktop, path):
    """A book to type into. Whoever does so puts back what stood there."""
    file = path, Path(path).stat().st_mtime_ns, Path(path).stat().st_size
    if file in KEPT:
        book = KEPT[file][1]
        # A calculation of all cells may leave some one behind: twice, and nothing is left of earlier questions.
        for _ in range(2):
            book.calculateAll()
        return book
    _let_go()
    closing = contextlib.ExitStack()
    book = closing.enter_context(_opened(desktop, path))
    KEPT[file] = closing, book
    # Typing would calculate at each cell; what counts is calculated once, from scratch.
    book.enableAutomaticCalculation(False)
    return book


def _let_go():
    while KEPT:
        KEPT.popitem()[1][0].close()


def _timed(desktop, path, timed):
    """Seconds of a processor: to open a file, to calculate all of it, and to type each of some values."""
    began = time.process_time()
    book = desktop.loadComponentFromURL(Path(path).as_uri(), "_blank", 0, (_property("Hidden", True),))
    seconds = [time.process_time() - began]
    try:
        # On opening and after typing, what rests on a change is calculated once it is asked for.
        for work in (book.calculateAll, *(functools.partial(_typed, book, change) for change in timed)):
            began = time.process_time()
            work()
            seconds.append(time.process_time() - began)
        return seconds
    finally:
        book.close(True)


def _typed(book, change):
    _type(book, [change])
    book.calculate()


def _after_gestures(context, desktop, path, gestures, tabs=()):
    """The values after each sequence of gestures; each begins with the file as it is, once the last is undone."""
    with _opened(desktop, path) as book:
        hand, reader = Hand(context, book), _Reader(book, tabs)
        stood = reader.found
        for sequence in gestures:
            for gesture in sequence:
                hand.does(gesture)
            for _ in range(2):
                book.calculateAll()
            # On tabs that no gesture names, the same cells hold something as before.
            touched = reader.sheets.keys() & {gesture[1] for gesture in sequence}
            reader.found = {**stood, **{name: _found(reader.sheets[name]) for name in touched}}
            yield reader.values()
            hand.undoes_all()


def _shown(desktop, modules, formulas):
    always = 4  # com.sun.star.document.MacroExecMode.ALWAYS_EXECUTE_NO_WARN
    options = _property("Hidden", True), _property("MacroExecutionMode", always)
    book = desktop.loadComponentFromURL("private:factory/scalc", "_blank", 0, options)
    try:
        book.BasicLibraries.VBACompatibilityMode = True
        library = book.BasicLibraries.getByName("Standard")
        for name, text in modules.items():
            library.insertByName(name, text)
        cells = [book.Sheets.getByIndex(0).getCellByPosition(0, row) for row in range(len(formulas))]
        for cell, formula in zip(cells, formulas):
            cell.setFormula(formula)
        book.calculateAll()
        return [cell.getString() for cell in cells]
    finally:
        book.close(True)


def _seconds(work):
    start = time.perf_counter()
    work()
    return time.perf_counter() - start


def _property(name, value):
    return PropertyValue(name, 0, value, 0)


def _after(book, reader, changes, times):
    before = _type(book, changes)
    # Calc trusts the values stored in a file; this calculates every formula anew.
    for _ in range(times):
        book.calculateAll()
    values = reader.values([cell for cell, _, _ in before])
    for cell, stood, kind in reversed(before):
        _put(cell, stood, kind)
    return values


def _type(book, changes):
    """Type each value; returns what stood there, to put it back."""
    before = []
    for sheet, reference, value in changes:
        if not book.Sheets.hasByName(sheet):
            raise ValueError(f"there is no sheet {sheet}")
        cell = book.Sheets.getByName(sheet).getCellRangeByName(reference)
        if book.Sheets.getByName(sheet).isProtected() and cell.CellProtection.IsLocked:
            raise ValueError(f"{sheet}, {reference} is locked")
        kind = cell.getType().value
        stood = {"VALUE": cell.getValue, "TEXT": cell.getString}.get(kind, cell.getFormula)()
        before.append((cell, stood, kind))
        _put(cell, value, "FORMULA" if str(value)[:1] == "=" else "")
    return before


def _put(cell, value, kind):
    if value is None or kind == "EMPTY":
        cell.setString("")
        cell.clearContents(HOLDS_SOMETHING)  # the format stays
    elif kind == "FORMULA":
        cell.setFormula(value)
    elif isinstance(value, str):
        cell.setString(value)
    else:
        cell.setValue(float(value))


class _Reader:
    """Reads the values of a book after each set of edits. Which cells hold something is asked before, once."""

    def __init__(self, book, tabs=()):
        self.sheets = {name: book.Sheets.getByName(name) for name in tabs or book.Sheets.ElementNames}
        self.found = {name: _found(sheet) for name, sheet in self.sheets.items()}

    def values(self, edited=()):
        """[sheet, cell, value] of every cell that holds something; `edited` were typed into."""
        typed = {}
        for cell in edited:
            at = cell.getCellAddress()
            typed.setdefault(at.Sheet, {})[at.Row, at.Column] = cell.getFormula() != ""
        return [
            [name, *cell]
            for name, sheet in self.sheets.items()
            for cell in self._of(name, typed.get(sheet.RangeAddress.Sheet, {}))
        ]

    def _of(self, name, typed):
        used = _used(self.sheets[name])
        area, filled = self.found[name]
        if area != _area(used):  # something was typed outside
            area, filled = _found(self.sheets[name])
        cells = [
            (row, column, value)
            for row, (values, hold) in enumerate(zip(used.getDataArray(), filled), start=area[0])
            for column, (value, holds) in enumerate(zip(values, hold), start=area[1])
            # An empty cell is left out; a formula that gives an empty text is kept.
            if typed.get((row, column), holds)
        ]
        for row, column, value in cells:
            error = self.sheets[name].getCellByPosition(column, row).getError() if value is None else 0
            yield f"{_letters(column)}{row + 1}", {"error": ERRORS.get(error, f"Err:{error}")} if error else value


def _found(sheet):
    """The area of a sheet that is used, and which of its cells hold something."""
    area = _area(_used(sheet))
    top, left, bottom, right = area
    filled = [bytearray(right - left + 1) for _ in range(bottom - top + 1)]
    for cells in sheet.queryContentCells(HOLDS_SOMETHING).RangeAddresses:
        first, after = cells.StartColumn - left, cells.EndColumn - left + 1
        for row in filled[cells.StartRow - top : cells.EndRow - top + 1]:
            row[first:after] = b"\1" * (after - first)
    return area, filled


def _used(sheet):
    cursor = sheet.createCursor()
    cursor.gotoStartOfUsedArea(False)
    cursor.gotoEndOfUsedArea(True)
    return cursor


def _area(cells):
    address = cells.RangeAddress
    return address.StartRow, address.StartColumn, address.EndRow, address.EndColumn


@functools.cache
def _letters(column):
    letters = ""
    column += 1
    while column:
        column, rest = divmod(column - 1, 26)
        letters = chr(65 + rest) + letters
    return letters
