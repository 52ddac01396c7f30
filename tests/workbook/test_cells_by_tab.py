"""A workbook has no more formulas than DEVELOPERS.md allows it, tab by tab."""

import pytest
from cells import KEPT_BACK, ROWS, allowed, counted

from candlecalc.workbook.size import MOST_CELLS


@pytest.mark.parametrize("name", ROWS)
def test_no_tab_has_more_formulas_than_the_table_allows(name):
    table = allowed()
    found = counted(ROWS[name])
    assert not {title: cells for title, cells in found.items() if cells > table[title][name]}
    assert sum(found.values()) <= table["all there is"][name]


def test_the_table_says_what_is_kept_back():
    assert set(allowed()["kept back"].values()) == {KEPT_BACK} and KEPT_BACK == 0.15 * MOST_CELLS


def test_the_usual_workbook_fits_with_room_to_spare():
    assert sum(counted(ROWS["usual"]).values()) + KEPT_BACK <= MOST_CELLS
