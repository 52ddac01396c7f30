"""A season calculated in memory comes to what its file comes to in every engine; what is not typed right, too.

tests/bench/bench_slips.py does the same for as many as are asked for.
"""

import books
import openpyxl
import pytest
from seasons_with_slips import differing, with_slips

from candlecalc.workbook import book
from candlecalc.workbook.cells.layout import FIRST_ROW, HEAD_ROW
from candlecalc.workbook.writing import memory

SEEDS = range(5)


@pytest.mark.parametrize("seed", SEEDS)
def test_every_engine_makes_the_same_of_what_is_typed_wrong(seed, tmp_path, office):
    made = books.Book(with_slips(books.small(), seed, slips=12), tmp_path / "season.xlsx")
    assert differing(made, tmp_path, office) == {"through a file": {}, "LibreOffice": {}, "Gnumeric": {}}
    assert len(made.formulas) > 1000


def test_an_altered_formula_comes_to_something_else(tmp_path):
    season = books.small()
    written = book.drafted(season, books.DATED, rows_of=books.few(season))
    before = memory.calculated(written.book, written.lists)["Costing"]
    sheet = written.book["Costing"]
    full = next(cell.column for cell in sheet[HEAD_ROW] if str(cell.value).startswith("Full cost"))
    sheet.cell(FIRST_ROW, full).value = written.lists["Costing"].formulas(full)[FIRST_ROW] + "+0.01"
    after = memory.calculated(written.book, written.lists)["Costing"]
    assert after[FIRST_ROW - 1][full - 1] == pytest.approx(before[FIRST_ROW - 1][full - 1] + 0.01)


def test_a_cell_of_its_own_stands_over_what_goes_down_its_column_in_memory_and_in_the_file(tmp_path):
    season = books.small()
    written = book.drafted(season, books.DATED, rows_of=books.few(season))
    product, full = FIRST_ROW, max(written.lists["Costing"].columns)
    written.book["Costing"].cell(product, full).value = 1.25
    path = tmp_path / "season.xlsx"
    path.write_bytes(book.packed(written))
    sheet = openpyxl.load_workbook(path)["Costing"]
    assert (sheet.cell(product, full).value, written.values["Costing"][product - 1][full - 1]) == (1.25, 1.25)
    assert sheet.cell(product + 1, full).value == written.lists["Costing"].formulas(full)[product + 1]
