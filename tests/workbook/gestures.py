"""What a person does to the rows of a table, and a model of what then stands in them.

`Rows` notes each gesture as `libreoffice.after_gestures` takes it, and does the same to its own rows. The workbook
as it was made, with these entries typed into their cells, is what the maker's workbook must show.
"""

from datetime import date

from openpyxl.utils import column_index_from_string

from candlecalc.quantities.days import serial
from candlecalc.season.tables import TABLES
from candlecalc.workbook.cells.layout import FIRST_ROW


class Rows:
    """The rows of a table: {row of the tab: {key: entry}}, blank entries left out."""

    def __init__(self, book, table):
        self.book, self.table, self.keys = book, TABLES[table], TABLES[table].keys
        self.rows = {FIRST_ROW + place: _filled(row) for place, row in book.rows(table)}
        self.gestures = []

    @property
    def first(self):
        return min(self.rows)

    @property
    def last(self):
        """The last row that is filled."""
        return max(self.rows)

    @property
    def end(self):
        """The last row there is room for."""
        return self.book.plan.layouts[self.table.key].last_row

    def cut(self, first, last, to, keys=()):
        """Cut rows, or some entries of them, and paste them elsewhere; what stood there is gone."""
        keys = list(keys) or self.keys
        held = self._held(first, last, keys)
        self._put(dict.fromkeys(held, {}), keys)
        self._put({row - first + to: entries for row, entries in held.items()}, keys)
        self._does(("cut", self.table.title, self._cells(first, last, keys)), self._paste(to, keys))

    def copy(self, first, last, to):
        held = self._held(first, last, self.keys)
        self._put({row - first + to: entries for row, entries in held.items()}, self.keys)
        self._does(("copy", self.table.title, self._cells(first, last, self.keys)), self._paste(to, self.keys))

    def fill_down(self, first, last):
        """The first row into all under it."""
        self._put({row: self.rows.get(first, {}) for row in range(first, last + 1)}, self.keys)
        self._does(("fill_down", self.table.title, self._cells(first, last, self.keys)))

    def clear(self, first, last):
        self._put({row: {} for row in range(first, last + 1)}, self.keys)
        self._does(("clear", self.table.title, self._cells(first, last, self.keys)))

    def sort(self, ascending=True, by=""):
        """All entries by a column, the first if none is named; what is blank there comes last, as in a spreadsheet."""
        by = by or self.keys[0]
        rows = [row for _, row in sorted(self.rows.items())]
        filled, blank = ([row for row in rows if (by in row) == there] for there in (True, False))
        filled.sort(key=lambda row: _place(row[by]), reverse=not ascending)
        self.rows = dict(enumerate(filled + blank, start=FIRST_ROW))
        column = column_index_from_string(self.book.plan.layouts[self.table.key].letters[by])
        self._does(("sort", self.table.title, self._cells(FIRST_ROW, self.end, self.keys), column, ascending))

    def type(self, row, entries):
        """Type what a spreadsheet would understand as these entries."""
        self._put({row: {**self.rows.get(row, {}), **entries}}, self.keys)
        letters = self.book.plan.layouts[self.table.key].letters
        self._does(*(("type", self.table.title, f"{letters[key]}{row}", str(entry)) for key, entry in entries.items()))

    def undo(self, before, times=1):
        """What stood before so many commands comes back."""
        self.rows = dict(before)
        self._does(("undo", times))

    def entries(self):
        """{cell: what stands in it} of every entry that the table has room for."""
        letters = self.book.plan.layouts[self.table.key].letters
        return {
            (self.table.title, f"{letters[key]}{row}"): self.rows.get(row, {}).get(key)
            for row in range(FIRST_ROW, self.end + 1)
            for key in self.keys
        }

    def _held(self, first, last, keys):
        rows = {row: self.rows.get(row, {}) for row in range(first, last + 1)}
        return {row: {key: entries[key] for key in keys if key in entries} for row, entries in rows.items()}

    def _put(self, held, keys):
        for row, entries in held.items():
            rest = {key: entry for key, entry in self.rows.get(row, {}).items() if key not in keys}
            self.rows[row] = rest | entries
        self.rows = {row: entries for row, entries in self.rows.items() if entries}

    def _cells(self, first, last, keys):
        letters = self.book.plan.layouts[self.table.key].letters
        return f"{letters[keys[0]]}{first}:{letters[keys[-1]]}{last}"

    def _paste(self, to, keys):
        return ("paste", self.table.title, f"{self.book.plan.layouts[self.table.key].letters[keys[0]]}{to}")

    def _does(self, *gestures):
        self.gestures += gestures


def torn_or_twice(book, table, part):
    """(what is done, the rows it is done to), where a row is torn apart, stands twice, or takes another's place.

    `part` is the keys that a row is torn at.
    """
    done = Rows(book, table)
    done.cut(done.last, done.last, to=done.first)
    yield f"{table}: a row cut onto a filled one", done
    done = Rows(book, table)
    done.cut(done.first, done.first, to=done.last + 1, keys=part)
    yield f"{table}: part of a row cut", done
    done = Rows(book, table)
    done.copy(done.first, done.first, to=done.last + 1)
    yield f"{table}: a row copied", done
    done = Rows(book, table)
    done.fill_down(done.first, done.first + 1)
    yield f"{table}: filled down", done


def _place(entry):
    """Where an entry stands in a sorted column: numbers and days before texts, whose capitals are no matter."""
    return (1, entry.casefold()) if isinstance(entry, str) else (0, serial(entry) if isinstance(entry, date) else entry)


def _filled(row):
    return {key: value for key, value in row.items() if value is not None}
