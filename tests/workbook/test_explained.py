"""Where a number is missing, words in the same row say why; and no cell shows an error but #N/A.

Every field of every table is made wrong in turn, in the embedded engine.
"""

import datetime

import books
import engine
import pytest

from candlecalc.season.tables import tables_of
from candlecalc.season.tables.once import SETTINGS
from candlecalc.workbook.cells.checks import OVERWRITTEN
from candlecalc.workbook.tabs.look import checks

WORDS = {"costing": ("status",), "prices": ("status",)}  # left of the row's name
NUMBERS = {"costing": "full", "prices": "profit"}
WRONG = ("a word", None, -3.0, 1e9, 60.0, datetime.date(2027, 2, 1))


@pytest.fixture(scope="module")
def small(tmp_path_factory):
    return books.Book(books.small(), tmp_path_factory.mktemp("explained") / "small.xlsx", rows_of=books.SMALL_ROWS)


def faults(book):
    """(the cell, what is typed there) for the first row in which a field is filled, and its first row."""
    for key, table in tables_of(False).items():
        for field in table.fields:
            filled = [place for place, row in book.rows(key) if row[field.key] is not None]
            for place in dict.fromkeys((0, *filled[:1])):
                yield from ((book.cell(key, field.key, place), wrong) for wrong in WRONG)
    yield from ((books.setting(field.key), wrong) for field in SETTINGS.fields for wrong in WRONG)


def unexplained(book, values):
    """Rows of Costing and Prices without their number and without a word of why."""
    for tab, number in NUMBERS.items():
        for place, row in book.rows(tab):
            if not isinstance(values[book.cell(tab, number, place)], float):
                said = "".join(str(values[book.cell(tab, key, place)]) for key in WORDS[tab])
                if not said.replace("#N/A", ""):
                    yield tab, tuple(row.values())[0]


@pytest.fixture(scope="module")
def tried(small):
    """{(cell, what was typed there): every formula's value after it}."""
    held = engine.Held(small.path)
    return {
        (cell, str(value)): held.cells(held.changed({cell: value}), small.formulas) for cell, value in faults(small)
    }


def test_what_is_missing_is_explained_in_its_row(small, tried):
    # Settings say so in their own line, and so does the master check.
    wrong = {slip: list(unexplained(small, values)) for slip, values in tried.items() if slip[0][0] != "Settings"}
    assert {slip: found for slip, found in wrong.items() if found} == {}


def test_no_cell_shows_another_error_than_not_available(tried):
    shown = {
        slip: [(cell, value) for cell, value in values.items() if str(value).startswith("#") and value != "#N/A"]
        for slip, values in tried.items()
    }
    assert {slip: found for slip, found in shown.items() if found} == {}


def accused(values):
    """Lines of Checks that say of a formula that it was typed over."""
    said = {cell: str(value) for (tab, cell), value in values.items() if tab == "Checks"}
    return [cell for cell, words in said.items() if OVERWRITTEN in words and said[f"G{cell[1:]}"] == checks.TO_FIX]


def test_a_formula_is_said_to_be_typed_over_only_where_one_was(small, tried):
    assert {slip: accused(values) for slip, values in tried.items() if accused(values)} == {}
    held = engine.Held(small.path)
    over = held.cells(held.changed({small.cell("costing", "wax", 0): 99.0}), small.formulas)
    assert accused(over)


def test_a_thing_named_0_accuses_no_blank(small):
    # To a look-up a blank cell is a 0.
    held = engine.Held(small.path)
    name = small.cell("materials", "material", 0)
    values = held.cells(held.changed({name: 0.0}), small.formulas)
    untyped = len(small.rows("vessels"))
    said = [values[small.cell("vessels", key, untyped)] for key in ("mend", "status")]
    assert said == ["", ""]
    assert "Material: takes a name" in values[small.cell("materials", "mend", 0)]
