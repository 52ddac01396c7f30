"""How many rows a workbook has is asked for: what stands in them is the same."""

import books
import pytest
from libreoffice import stored
from openpyxl.utils.cell import coordinate_to_tuple

from candlecalc.season.tables import TABLES
from candlecalc.workbook.book import TABLE_TABS
from candlecalc.workbook.place import FIRST_ROW


@pytest.fixture(scope="module")
def small(tmp_path_factory):
    """The demo with two blank rows under each of its tables."""
    season = books.demo()
    rooms = {key: len(season.tables[key]) + 2 for key in TABLES}
    return books.Book(season, tmp_path_factory.mktemp("small") / "small.xlsx", rooms=rooms)


def test_a_list_has_the_rows_that_are_asked_for_and_no_more(small):
    last = {}
    for title, cell in small.formulas:
        last[title] = max(last.get(title, 0), coordinate_to_tuple(cell)[0])
    rows = {key: last[tab.title] - FIRST_ROW + 1 for key, tab in TABLE_TABS.items()}
    assert rows == {key: len(small.season.tables[tab.typed_on]) + 2 for key, tab in TABLE_TABS.items()}
    assert last["Lists"] == FIRST_ROW + rows["materials"] - 1


def test_fewer_rows_hold_the_numbers_that_more_rows_hold(demo, small):
    few, many = stored(small.path), stored(demo.path)
    own = {
        key: {cell: value for cell, value in few.items() if cell[0] == small.plan.places[key].title}
        for key in TABLE_TABS
    }
    for cells in own.values():
        assert cells
        assert cells == {cell: many.get(cell) for cell in cells}
    assert few[small.named("master_check")] == "Numbers agree"
