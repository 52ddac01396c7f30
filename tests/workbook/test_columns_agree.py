"""Every result column of a made workbook holds what its declared Python function makes of the cells that feed it.

What feeds an argument is read from the column's declaration, never from the formula in the cell, and only
its value is taken from the file.
"""

import math
import re
from dataclasses import replace

import books
import pytest
from libreoffice import Error
from openpyxl.utils import column_index_from_string, get_column_letter

import candlecalc.declaration.native as native
from candlecalc.workbook.book import TABLE_TABS, lists
from candlecalc.workbook.cells.columns import Calculated, Column
from candlecalc.workbook.cells.layout import in_row
from candlecalc.workbook.cells.references import Same

# What references look like once they are in a row: Sheet!$A4, $B4:$D4, INDEX(cells,place), ROWS(...).
ONE = r"(?:(?P<sheet>'[^']+'|\w+)!)?\$(?P<left>[A-Z]+)\$?(?P<top>\d+)"
CELL, RANGE = re.compile(ONE), re.compile(ONE + r":\$(?P<right>[A-Z]+)\$?(?P<bottom>\d+)")
INDEX = re.compile(r"INDEX\((?P<cells>[^()]+),(?P<place>.+)\)")
ROWS = re.compile(r"ROWS\(\$A\$(\d+):\$A(\d+)\)")
# The tests that keep a cell blank: nothing there, another word, nothing above zero.
TEST = re.compile(r'(?P<cell>.+?)(?P<sign>=|<>|<=)(?P<value>""|"[^"]+"|0)')


class Row:
    """A row of a tab in a made workbook, from which references are resolved to values."""

    def __init__(self, book, held, place, number):
        self.book, self.held, self.place, self.number = book, held, place, number

    def __getitem__(self, key):
        return self.value(f"${self.place.letters[key]}{self.number}")

    def given(self, reference):
        """What an argument's reference stands for: a value, or a list of them."""
        if isinstance(reference, str):
            return self[reference]
        return self.value(in_row(reference.spell(self.book.plan, self.place), self.number))

    def waits(self, test):
        """Whether a test that keeps the cell blank holds."""
        found = TEST.fullmatch(in_row(test.spell(self.book.plan, self.place), self.number))
        value = self.value(found["cell"])
        if found["sign"] == "<=":
            return value <= 0
        return (value == found["value"].strip('"')) == (found["sign"] == "=")

    def value(self, text):
        if found := ROWS.fullmatch(text):
            return int(found[2]) - int(found[1]) + 1
        if found := INDEX.fullmatch(text):
            return self.value(found["cells"])[int(self.value(found["place"])) - 1]
        if found := RANGE.fullmatch(text):
            return self._cells(found)
        if found := CELL.fullmatch(text):
            return self._cell(found["sheet"], found["left"] + found["top"])
        if re.fullmatch(r"[a-z_]+", text):
            return self.held.get(self.book.named(text), "")
        return text.strip('"') if text.startswith('"') else float(text)

    def _cells(self, found):
        left, right = (column_index_from_string(found[side]) for side in ("left", "right"))
        return [
            self._cell(found["sheet"], f"{get_column_letter(column)}{row}")
            for row in range(int(found["top"]), int(found["bottom"]) + 1)
            for column in range(left, right + 1)
        ]

    def _cell(self, sheet, cell):
        return self.held.get((sheet.strip("'") if sheet else self.place.title, cell), "")


def expected(row, column):
    """What a result cell must hold: "" or a number in the workbook's own unit."""
    if any(row.given(cell) == "" for cell in column.needs) or any(row.waits(test) for test in column.blank_if):
        return ""
    if column.if_blank and row.given(column.if_blank[0]) == "":
        return row.given(column.if_blank[1])
    measures, declared = row.book.season.measures, column.holds.declared
    given = {}
    for name, reference in column.holds.arguments.items():
        argument, value = declared.arguments[name], row.given(reference)
        if argument.term.many:
            # A part that is not there weighs nothing and costs nothing.
            given[name] = [measures.to_calc(one or 0.0, argument.term.unit) for one in value]
        elif argument.term.choices:
            given |= {name: value} if value != "" else {}
        elif value != "" or not argument.optional:
            given[name] = measures.to_calc(value or 0.0, argument.term.unit)
    return measures.from_calc(declared.checked(**given), declared.result.unit)


def agrees(held, wanted, declared):
    if isinstance(held, str) or isinstance(wanted, str):
        return not isinstance(held, Error) and held == wanted
    return math.isclose(held, wanted, rel_tol=1e-9, abs_tol=max(1e-12, last_place(declared)))


def last_place(declared):
    """Half a unit of the last decimal that a declared function rounds to, where it rounds to decimals."""
    digits = [
        int(node.arguments[1].text)
        for node in native.walk(declared.native)
        if isinstance(node, native.Call) and node.function == "ROUND" and isinstance(node.arguments[1], native.Leaf)
    ]
    return 0.5 * 10.0 ** -min(digits) if digits and min(digits) > 0 else 0.0


def results():
    """{(tab, key): column} of every result that is declared in a list."""
    return {
        (tab, key): column
        for tab, each in lists(False).items()
        for key, column in each.columns.items()
        if isinstance(column, Column) and isinstance(column.holds, Calculated)
    }


def compared(book, held, tab, key):
    """(cell, what it holds, what it should, whether they agree) down a result column, its blank rows too."""
    place, column = book.plan.layouts[tab], TABLE_TABS[tab].columns[key]
    for number in range(place.first_row, place.last_row + 1):
        cell = place.title, f"{place.letters[key]}{number}"
        value, wanted = held.get(cell, ""), expected(Row(book, held, place, number), column)
        yield cell, value, wanted, agrees(value, wanted, column.holds.declared)


def disagreements(book, held):
    """{(tab, key): [(cell, what it holds, what it should)]} of columns where they do not agree."""
    found = {
        each: [(cell, value, wanted) for cell, value, wanted, agreed in compared(book, held, *each) if not agreed]
        for each in results()
    }
    return {each: cells for each, cells in found.items() if cells}


@pytest.fixture(scope="module")
def seasons(demo, tmp_path_factory):
    """The demo is in ounces, inches and degrees Fahrenheit; the season of 60 products in grams and Celsius."""
    full = books.Book(books.full(), tmp_path_factory.mktemp("full") / "full.xlsx")
    return {"demo": (demo, demo.held), "60 products": (full, full.held)}


@pytest.mark.parametrize("season", ["demo", "60 products"])
def test_every_result_is_what_its_function_makes_of_its_cells(seasons, season):
    assert disagreements(*seasons[season]) == {}


@pytest.mark.parametrize("tab, key", results())
def test_each_column_has_filled_and_blank_rows_and_one_altered_value_is_found(seasons, tab, key):
    for book, held in seasons.values():
        rows = list(compared(book, held, tab, key))
        filled = [(cell, value) for cell, value, _, _ in rows if value != ""]
        if filled and len(filled) < len(rows):
            cell, value = filled[-1]
            for other in (value * (1 + 1e-6) + 1e-6, "", "0"):
                altered = compared(book, held | {cell: other}, tab, key)
                assert [cell for cell, _, _, agreed in altered if not agreed] == [cell]
            return
    pytest.fail("no season fills it and leaves some of its rows blank")


# Columns made with another function, fed by other cells, or not kept blank as they are declared.
SWAPPED = {
    ("parts", "own_minutes"): {"function": "paid_minutes"},
    ("workings", "oil"): {"function": "wax_for_fill"},
    ("materials", "share_limit"): {"function": "highest_on_wax"},
    ("amounts", "oil_second"): {
        "arguments": {"oil": Same("workings", "oil"), "share": Same("workings", "share_first")}
    },
    ("selling", "received"): {},
}


def test_columns_made_otherwise_than_they_are_declared_are_found(seasons, monkeypatch, tmp_path):
    season = seasons["demo"][0].season
    with monkeypatch.context() as patch:
        for (tab, key), other in SWAPPED.items():
            columns = TABLE_TABS[tab].columns
            held = replace(columns[key].holds, **other)
            patch.setitem(columns, key, replace(columns[key], holds=held, needs=columns[key].needs if other else ()))
        swapped = books.Book(season, tmp_path / "swapped.xlsx")
    assert disagreements(swapped, swapped.held).keys() == SWAPPED.keys()
