"""What a person does to a workbook with mouse and keys, done by the office's own commands; see `libreoffice.py`.

Runs in the office itself, by `office_inside.py`.
"""

from com.sun.star.beans import PropertyValue


class Hand:
    """Does to an open book what a person does: selects cells and gives commands."""

    def __init__(self, context, book):
        create = context.ServiceManager.createInstanceWithContext
        self.book, self.controller = book, book.CurrentController
        self.dispatcher = create("com.sun.star.frame.DispatchHelper", context)

    def does(self, gesture):
        """One gesture: its name, then what it takes."""
        name, *given = gesture
        getattr(self, f"_{name}")(*given)

    def undoes_all(self):
        while self.book.UndoManager.isUndoPossible():
            self.book.UndoManager.undo()

    def _cut(self, tab, cells):
        self._select(tab, cells)
        self._command("Cut")

    def _copy(self, tab, cells):
        self._select(tab, cells)
        self._command("Copy")

    def _paste(self, tab, cell):
        self._select(tab, cell)
        self._command("Paste")

    def _clear(self, tab, cells):
        self._select(tab, cells)
        self._command("ClearContents")

    def _fill_down(self, tab, cells):
        self._select(tab, cells)
        self._command("FillDown")

    def _type(self, tab, cell, text):
        """As it is typed: the program decides whether it is a number, a date or a text."""
        self._select(tab, cell)
        self._command("EnterString", StringName=text)

    def _sort(self, tab, cells, column, ascending):
        self._select(tab, cells)
        self._command("DataSort", ByRows=True, HasHeader=False, CaseSensitive=False, NaturalSort=False,
                      IncludeAttribs=False, UserDefIndex=0, Col1=column, Ascending1=ascending)  # fmt: skip

    def _undo(self, times=1):
        for _ in range(times):
            self._command("Undo")

    def _select(self, tab, cells):
        sheet = self.book.Sheets.getByName(tab)
        self.controller.setActiveSheet(sheet)
        self.controller.select(sheet.getCellRangeByName(cells))

    def _command(self, name, **given):
        options = tuple(PropertyValue(key, 0, value, 0) for key, value in given.items())
        self.dispatcher.executeDispatch(self.controller.Frame, f".uno:{name}", "", 0, options)
