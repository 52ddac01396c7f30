"""How many rows a workbook has is asked for: what stands in them is the same."""

import books
import pytest
from openpyxl.utils.cell import coordinate_to_tuple

from candlecalc.workbook.book import USUAL_ROWS, lists
from candlecalc.workbook.cells.layout import FIRST_ROW


@pytest.fixture(scope="module")
def whole(tmp_path_factory):
    """The demo with all the rows that a maker gets."""
    return books.Book(books.demo(), tmp_path_factory.mktemp("whole") / "whole.xlsx", rows_of=USUAL_ROWS)


def test_a_list_has_the_rows_that_are_asked_for_and_no_more(demo):
    last = {}
    for title, cell in demo.formulas:
        last[title] = max(last.get(title, 0), coordinate_to_tuple(cell)[0])
    rows = {key: last[tab.title] - FIRST_ROW + 1 for key, tab in lists(False).items()}
    assert rows == {key: len(demo.season.tables[tab.typed_on]) + books.SPARE for key, tab in lists(False).items()}
    assert last["Lists"] == FIRST_ROW + rows["materials"] - 1


def test_fewer_rows_hold_the_numbers_that_more_rows_hold(demo, whole):
    few, many = demo.held, whole.held
    assert many[whole.named("master_check")] == few[demo.named("master_check")] == "Numbers agree"
    for key in lists(False):
        cells = {cell: value for cell, value in few.items() if cell[0] == demo.plan.layouts[key].title}
        assert cells
        assert cells == {cell: many.get(cell) for cell in cells}
