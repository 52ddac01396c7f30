"""A season calculated in memory comes to what its file comes to, cell by cell; what is not typed right, too."""

import random

import books
import pytest
from libreoffice import Error, stored

from candlecalc.season.season import Season, frame
from candlecalc.season.tables import TABLES
from candlecalc.workbook import book
from candlecalc.workbook.cells.layout import FIRST_ROW, HEAD_ROW
from candlecalc.workbook.writing import memory

SLIPS = [None, "", "wax", 0.0, -1.0, 8.0, 46054.0, "a*b", True]


def with_slips(season, seed, slips=12):
    """A season with some of its entries typed wrong."""
    given = random.Random(seed)  # noqa: S311
    tables = {key: [row for _, row in season.rows(key)] for key in season.tables}
    for _ in range(slips):
        rows = tables[given.choice([key for key, rows in tables.items() if rows])]
        row = given.choice(rows)
        row[given.choice(list(row))] = given.choice(SLIPS)
    return Season(season.settings, {key: frame(rows, TABLES[key]) for key, rows in tables.items()})


def seasons():
    yield "demo", books.demo()
    for seed in range(4):
        yield f"slips {seed}", with_slips(books.small(), seed)


@pytest.mark.parametrize("season", [each for _, each in seasons()], ids=[name for name, _ in seasons()])
def test_memory_and_file_come_to_the_same(season, tmp_path):
    made = books.Book(season, tmp_path / "season.xlsx")
    written = book.drafted(season, books.DATED, rows_of=made.rows_of)
    found, held = memory.calculated(written.book), stored(made.path)
    differing, compared = [], 0
    for title, cell in made.formulas:
        place = written.book[title][cell]
        ours, theirs = found[title][place.row - 1][place.column - 1], held.get((title, cell), "")
        compared += 1
        ours = Error(ours) if isinstance(theirs, Error) else float(ours) if type(ours) is int else ours
        if not books.alike(ours, theirs):
            differing.append((title, cell, ours, theirs))
    assert differing == []
    assert compared == len(made.formulas) > 1000


def test_an_altered_formula_comes_to_something_else(tmp_path):
    season = books.small()
    written = book.drafted(season, books.DATED, rows_of=books.few(season))
    before = memory.calculated(written.book)["Costing"]
    sheet = written.book["Costing"]
    full = next(cell.column for cell in sheet[HEAD_ROW] if str(cell.value).startswith("Full cost"))
    sheet.cell(FIRST_ROW, full).value = str(sheet.cell(FIRST_ROW, full).value) + "+0.01"
    after = memory.calculated(written.book)["Costing"]
    assert after[FIRST_ROW - 1][full - 1] == pytest.approx(before[FIRST_ROW - 1][full - 1] + 0.01)
