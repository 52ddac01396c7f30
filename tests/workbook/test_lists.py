"""The Lists tab: a drop-down offers every name that its entry takes."""

import io

import books
import openpyxl
import pytest

from candlecalc.season.season import frame
from candlecalc.season.tables import TABLES
from candlecalc.workbook import book
from candlecalc.workbook.cells.layout import FIRST_ROW


@pytest.mark.parametrize("kind", ["fragrance oil", "label"])
def test_a_tab_full_of_one_kind_is_offered_whole(kind):
    season = books.blank("gb")
    blank = dict.fromkeys(TABLES["materials"].keys)
    rows_of = book.USUAL_ROWS | {"materials": 12}
    names = [f"{kind} {number}" for number in range(rows_of["materials"])]
    season.tables["materials"] = frame([blank | {"material": name, "kind": kind, "pack_size": 1.0,
        "pack_unit": "each", "pack_price": 1.0} for name in names], TABLES["materials"])  # fmt: skip
    sheet = openpyxl.load_workbook(io.BytesIO(book.made(season, books.DATED, rows_of=rows_of)), data_only=True)["Lists"]
    letter = book.plan_of(season, rows_of).layouts["lists"].letters[f"materials {kind}"]
    assert [sheet[f"{letter}{FIRST_ROW + row}"].value for row in range(len(names))] == names
