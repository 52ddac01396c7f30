"""What a season's tests cost, as one figure, and spread over the candles made where Settings say so.

The sums are worked here by a maker's own arithmetic: what was poured, taken out and typed, and how many can bear it.
The cost of batches and of what was taken out is compared with exact fractions in test_year.py.
"""

import books
import pytest
from libreoffice import stored
from test_records import BOX, OTHER, TIN, later, poured, row_of, season, tabs  # noqa: F401  season is a fixture
from year_workbook import type_in

from candlecalc.workbook.tabs.test import summary

pytestmark = pytest.mark.usefixtures("made_once")

WICK = "Cotton braid, fine"
LINES = ("pieces", "taken", "typed", "all", "bearers", "each")


def lived(made):
    """Two batches and a packed set, two pieces kept to burn, a candle and wicks taken out, and a bill of 4.50."""
    poured(made, (later(1), 1.0, TIN, 10.0), (later(2), 2.0, OTHER, 8.0), (later(30), 3.0, BOX, 4.0))
    made.tables["pours"].loc[0, "tests"] = 2.0
    moves = [{"kind": "test", "product": TIN, "amount": 1.0}, {"kind": "test", "material": WICK, "amount": 6.0},
             {"kind": "gift", "product": OTHER, "amount": 2.0}]  # fmt: skip
    type_in(made, "moves", [{"date": later(40), **move} for move in moves])
    recipe = next(row for _, row in made.rows("recipes") if row["product"] == TIN)
    test = {key: recipe[key] for key in ("product", "vessel", "wax", "load", "wick")}
    type_in(made, "burn_tests", [{**test, "test": "T1", "date": later(40), "cost": 4.5}])
    return made


@pytest.fixture
def year(season):  # noqa: F811
    return lived(season)


def told(values):
    """The lines of Wick summary on what tests cost."""
    cells = [(summary.TAB.title, f"E{summary.COSTS + line}") for line in range(1, len(LINES) + 1)]
    return dict(zip(LINES, (values[cell] for cell in cells), strict=True))


def in_full(found):
    return {product: row_of(found, "costing", "product", product)("full") for product in (TIN, OTHER, BOX)}


def test_the_figure_is_test_pieces_what_was_taken_out_and_what_was_typed(year):
    found = tabs(year)
    batch = row_of(found, "pours", "batch", 1)("making")
    # Of twelve poured two were kept to burn. Stock has the batch in its ten good ones: one of them is a tenth of it.
    pack = year.tables["materials"].set_index("material").pack_size[WICK]
    candle, wicks = round(batch / 10, 2), round(6 * 10.0 / pack, 2)
    figure = told(found.values)
    assert figure["pieces"] == pytest.approx(batch * 2 / 12)
    assert figure["taken"] == pytest.approx(candle + wicks)
    assert figure["typed"] == 4.5
    assert figure["all"] == pytest.approx(batch * 2 / 12 + candle + wicks + 4.5)


def test_what_is_given_away_and_a_packed_set_are_no_test_and_bear_none(year):
    assert told(tabs(year).values)["bearers"] == 18  # ten and eight; the set holds candles that were counted


@pytest.mark.parametrize("spread", [None, "no"])
def test_unless_settings_say_so_no_candle_bears_it(year, spread):
    before = in_full(tabs(year))
    year.settings["spread_tests"] = spread
    assert in_full(tabs(year)) == before and told(tabs(year).values)["each"] == 0


def test_spread_over_the_candles_made_it_is_in_full_cost_and_never_in_stock(year):
    without = tabs(year)
    year.settings["spread_tests"] = "yes"
    found = tabs(year)
    figure = told(found.values)
    each = figure["all"] / 18
    more = {product: full - in_full(without)[product] for product, full in in_full(found).items()}
    assert figure["each"] == pytest.approx(each)
    assert more == pytest.approx({TIN: each, OTHER: each, BOX: 2 * each})  # the set is of two tins
    for table, key in (("costing", "making"), ("pours", "making"), ("candles", "value"), ("stock", "value")):
        assert list(found.rows(table, key)) == list(without.rows(table, key))


def test_before_anything_is_made_nothing_is_spread(year):
    year.settings["spread_tests"] = "yes"
    type_in(year, "pours", [])
    type_in(year, "moves", [])
    figure = told(tabs(year).values)
    assert (figure["all"], figure["bearers"], figure["each"]) == (4.5, 0, 0)


def test_a_test_whose_cost_is_not_known_is_not_left_out(year):
    year.settings["spread_tests"] = "yes"
    year.tables["moves"].loc[1, "material"] = "Tissue that nobody bought"
    found = tabs(year)
    assert str(told(found.values)["all"]).startswith("#")
    why = row_of(found, "costing", "product", TIN)("why")
    assert why == "Tests: what they cost is not known, see Wick summary"


def test_the_office_comes_to_the_same(year, tmp_path, office):
    year.settings["spread_tests"] = "yes"
    made = books.Book(year, tmp_path / "tests.xlsx")
    again, ours = office.recalculated(made.path), stored(made.path)
    cells = [made.cell("costing", "full", product) for product in (TIN, OTHER, BOX)]
    assert told(again) == pytest.approx(told(ours)) and told(ours)["each"] > 0
    assert [again[cell] for cell in cells] == pytest.approx([ours[cell] for cell in cells])
