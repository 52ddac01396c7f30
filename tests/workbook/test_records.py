"""Small years worked by hand: packed sets, prices that follow what was paid, what was typed over, what does not fit."""

import datetime

import books
import pytest
from year_workbook import Typed, in_memory, type_in

from candlecalc.workbook.book import drafted
from candlecalc.workbook.cells.layout import FIRST_ROW

DAY = datetime.date(2027, 8, 10)
TIN, OTHER, BOX = "Pear and honey tin", "Bitter orange tin", "Two tins in a box"


def later(days):
    return DAY + datetime.timedelta(days=days)


@pytest.fixture
def season():
    """The small shop with enough of all it needs, bought on one day: 20 packs of each at 10.00."""
    made = books.small().with_records()
    names = [row["material"] for _, row in made.rows("materials")]
    type_in(made, "purchases", [{"date": DAY, "material": name, "packs": 20.0, "price": 10.0} for name in names])
    return made


def tabs(season):
    return Typed(None, *in_memory(season))


def row_of(found, table, key, name):
    """The cells of a row by what stands in one of its columns."""
    at = next(row for row, (value,) in found.rows(table, key) if value == name)
    return lambda column: found.cell(table, column, at)


def poured(season, *lines):
    type_in(season, "pours", [dict(zip(("date", "batch", "product", "good"), line, strict=True)) for line in lines])


# --- sets: their candles go on being candles, and cannot be sold by themselves -------------------


def test_a_packed_set_takes_its_box_and_holds_its_candles(season):
    poured(season, (later(1), 1.0, TIN, 10.0), (later(1), 2.0, OTHER, 10.0), (later(30), 3.0, BOX, 4.0))
    found = tabs(season)
    tin, box = (row_of(found, "candles", "product", name) for name in (TIN, BOX))
    assert (tin("left"), tin("in_sets"), tin("loose")) == (10, 4, 6)
    assert (box("left"), box("ready_now")) == (4, 4)
    assert row_of(found, "stock", "material", "Gift box, two tins")("used") == 4


def test_a_set_that_is_given_away_takes_its_candles_along(season):
    poured(season, (later(1), 1.0, TIN, 10.0), (later(1), 2.0, OTHER, 10.0), (later(30), 3.0, BOX, 4.0))
    type_in(season, "moves", [{"date": later(31), "kind": "gift", "product": BOX, "amount": 1.0}])
    found = tabs(season)
    tin, box = (row_of(found, "candles", "product", name) for name in (TIN, BOX))
    assert (tin("left"), tin("in_sets"), tin("gone")) == (9, 3, 1)
    assert (box("left"), box("gone")) == (3, 1)


def test_more_sets_than_there_are_candles_for_are_pointed_out(season):
    poured(season, (later(1), 1.0, TIN, 3.0), (later(1), 2.0, OTHER, 10.0), (later(30), 3.0, BOX, 4.0))
    assert "More in packed sets than there are" in row_of(tabs(season), "candles", "product", TIN)("warnings")


def test_candles_cure_from_their_pour_and_can_be_sold_from_that_day(season):
    poured(season, (later(1), 1.0, TIN, 10.0))
    cure = next(row["cure_days"] for _, row in season.rows("materials") if row["kind"] == "wax")
    for days, ready in ((cure, 0), (cure + 1, 10)):
        season.settings["as_of"] = later(days)
        tin = row_of(tabs(season), "candles", "product", TIN)
        assert (tin("ready_now"), tin("curing")) == (ready, 10 - ready)


# --- the price that costs go by ------------------------------------------------------------------


@pytest.mark.parametrize(("choice", "cost"), [(None, "typed"), ("last", 0.30), ("average", 0.25)])
def test_costs_go_by_the_price_that_the_row_asks_for(season, choice, cost):
    material = "Cotton braid, fine"
    at = next(place for place, row in season.rows("materials") if row["material"] == material)
    pack = season.tables["materials"].loc[at, "pack_size"]
    line = {"material": material, "packs": 1.0}
    lines = [line | {"date": later(days), "price": price * pack} for days, price in ((0, 0.20), (1, 0.30))]
    type_in(season, "purchases", lines)
    season.tables["materials"].loc[at, "price_from"] = choice
    found = row_of(tabs(season), "materials", "material", material)
    assert found("unit_cost") == pytest.approx(found("typed_cost") if cost == "typed" else cost)


def test_what_is_on_hand_is_what_stock_has_left(season):
    season.tables["materials"]["on_hand"] = 99.0
    poured(season, (later(1), 1.0, TIN, 10.0))
    found = tabs(season)
    left = row_of(found, "stock", "material", "Cotton braid, fine")("left")
    assert row_of(found, "materials", "material", "Cotton braid, fine")("stock") == left > 0


# --- what was typed over, or does not hold --------------------------------------------------------


def typed_over(season, table, key, row, value):
    """The values of a workbook in which an entry was changed after it was made."""
    made = drafted(season, books.DATED, rows_of=books.few(season))
    place = made.plan.layouts[table]
    made.book[place.title][f"{place.letters[key]}{FIRST_ROW + row}"].value = value
    return [values[0] or "" for values in made.values[place.title][FIRST_ROW - 1 :]][row]


def test_a_recipe_that_batches_go_by_and_is_typed_over_is_pointed_out(season):
    poured(season, (later(1), 7.0, TIN, 10.0))
    at = next(place for place, row in season.rows("recipes") if row["product"] == TIN)
    assert typed_over(season, "recipes", "load", at, 0.05).startswith("Changed since batch 7: bring back what it was")
    assert "Changed" not in typed_over(season, "recipes", "usual_batch", at, 5)


def test_a_pack_that_purchases_count_in_and_is_typed_over_is_pointed_out(season):
    assert "Pack was another when this workbook was made" in typed_over(season, "materials", "pack_size", 0, 7)


def test_a_stand_in_that_takes_a_lower_load_is_pointed_out(season):
    season.tables["materials"].loc[season.tables["materials"]["material"] == "Clove and bay oil", "highest_load"] = 0.01
    poured(season, (later(1), 1.0, TIN, 10.0))
    line = {"batch": 1.0, "material": "Pear and honey oil", "other": "Clove and bay oil"}
    type_in(season, "instead", [line])
    words = row_of(tabs(season), "instead", "batch", 1)("status")
    assert words.startswith("What stands in takes 1") and "the batch has 8 %" in words


def test_lines_that_do_not_fit_are_an_error_and_never_left_out(season):
    poured(season, *[(later(at), float(at), TIN, 1.0) for at in range(1, 5)])
    rows = books.few(season) | {"pours": 4, "extras": 6}
    assert all(isinstance(value, (int, float)) for value in made_values(season, rows))
    # There is room for six lines a batch, and a dozen more; a tin takes five, and with these eleven.
    others = [
        row["material"]
        for _, row in season.rows("materials")
        if row["kind"] in ("wick", "lid", "label", "packaging", "vessel")
    ]
    more = others[:6]
    type_in(season, "extras", [{"product": TIN, "material": name, "count": 1.0} for name in more])
    assert all(str(value).startswith("#") for value in made_values(season, rows))


def made_values(season, rows):
    """What batches cost, in a workbook of so many rows."""
    made = drafted(season, books.DATED, rows_of=rows)
    place = made.plan.layouts["pours"]
    column = list(place.letters).index("making")
    return [row[column] for row in made.values[place.title][FIRST_ROW - 1 : FIRST_ROW + 3]]
