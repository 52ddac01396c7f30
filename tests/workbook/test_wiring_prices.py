"""What feeds prices alone moves prices alone: the entries that no cost depends on, one at a time."""

import books
import pytest
from wrong_wires import fail_unless_moved

from candlecalc.season import folder
from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.tabs.make.costing import RISE, RISE_LINE, TAB
from candlecalc.workbook.tabs.set_up.settings import line_of

WATCHED = {
    "costing": ("full", "risen"),
    "prices": ("target_price", "lowest", "received", "tax", "fees", "profit", "must_sell"),
}
MOVED = [  # where, what is typed, the columns that may move and do
    (("Settings", "price_step"), 2, {"target_price"}),
    (("Settings", "price_ending"), 0.25, {"target_price"}),
    (("Costing", "materials_rise"), 0.3, {"risen"}),
    (("Settings", "tax_rate"), 0.09, {"tax", "fees", "profit", "must_sell", "target_price", "lowest", "received"}),
    (("places", "fixed_cost"), 500, {"must_sell"}),
    (("places", "fixed_times"), 40, {"must_sell"}),
    (("places", "margin"), 0.6, {"target_price"}),
    (("prices", "price"), 99, {"received", "tax", "fees", "profit", "must_sell"}),
]


@pytest.fixture(scope="module")
def came_to(office, tmp_path_factory):
    season = folder.read(folder.DEMO)
    made = books.Book(season, tmp_path_factory.mktemp("moved") / "demo.xlsx")
    places = made.plan.layouts

    def cell(where):
        table, key = where
        if table == "Settings":
            return ("Settings", f"B{line_of(key)}")
        if key == RISE.key:
            return (TAB.title, RISE_LINE.entry)
        return (places[table].title, f"{places[table].letters[key]}{FIRST_ROW}")

    changes = [[], *([(*cell(where), value)] for where, value, _ in MOVED)]
    answers = office.edited_each(made.path, [{(sheet, at): value for sheet, at, value in each} for each in changes])

    def watched(values):
        rows = {"costing": 12, "prices": 37}
        return {
            column: [
                values.get((places[table].title, f"{places[table].letters[column]}{FIRST_ROW + row}"))
                for row in range(rows[table])
            ]
            for table, columns in WATCHED.items()
            for column in columns
        }

    return [watched(values) for values in answers]


@pytest.mark.parametrize("at", range(len(MOVED)), ids=[".".join(where) for where, _, _ in MOVED])
def test_an_entry_moves_only_the_columns_that_use_it(came_to, at):
    before, after = came_to[0], came_to[at + 1]
    moved = {column for column in before if before[column] != after[column]}
    where, _, expected = MOVED[at]
    fail_unless_moved(" › ".join(where), moved, expected)


def test_a_place_moves_its_own_lines_alone(came_to):
    stall = [row for row, line in folder.read(folder.DEMO).rows("prices") if line["place"] == "Saturday market stall"]
    before, after = came_to[0]["must_sell"], came_to[1 + 4]["must_sell"]
    assert [row for row in range(37) if before[row] != after[row]] == stall
