"""What a season came to, by month, place and product: pandas adds up the same lines; a fault is told where it is."""

import datetime

import books
import pandas
import pytest
from openpyxl.utils import get_column_letter
from year_workbook import Typed, in_memory, type_in

from candlecalc.workbook.book import drafted
from candlecalc.workbook.tabs.look import season as page

DAY = datetime.date(2027, 8, 10)
TIN, OTHER, BOX = "Pear and honey tin", "Bitter orange tin", "Two tins in a box"
SUMS = {"pieces": "pieces", "net": "net", "tax": "tax", "fees": "fee", "cost": "cost"}
STALL, SHOP, HOURS, STAND, TRAVEL = "Saturday market stall", "Online craft marketplace", 7.5, 30.0, 6.0


def later(days):
    return DAY + datetime.timedelta(days=days)


def sales(as_market):
    """A market day typed on Sales or on Market lines; the rest is sold in the shop, with a refund and a return."""
    rows = [
        {"date": later(30), "place": SHOP, "product": TIN, "pieces": 3.0, "order": "7", "postage": 4.0},
        {"date": later(30), "place": SHOP, "product": BOX, "pieces": 1.0, "order": "7"},
        {
            "date": later(60),
            "place": SHOP,
            "product": TIN,
            "pieces": 1.0,
            "kind": "returned",
            "became": "back in stock",
        },
        {"date": later(61), "place": SHOP, "kind": "refund", "price": 2.5},
        {"date": later(62), "place": SHOP, "kind": "gift card sold", "price": 25.0},
    ]
    at_market = [(TIN, 4.0), (OTHER, 2.0)]
    if not as_market:
        rows += [{"date": later(40), "place": STALL, "product": name, "pieces": sold} for name, sold in at_market]
    lines = [{"date": later(40), "product": name, "sold": sold} for name, sold in at_market] if as_market else []
    return rows, lines


def made_season():
    """The small shop with enough of everything, ten of each tin, some in boxes, and a month of sales in two places."""
    made = books.small().with_records()
    names = [row["material"] for _, row in made.rows("materials")]
    type_in(made, "purchases", [{"date": DAY, "material": name, "packs": 20.0, "price": 10.0} for name in names])
    poured = [{"date": DAY, "batch": n, "product": name, "good": 10.0} for n, name in ((1.0, TIN), (2.0, OTHER))]
    poured.append({"date": later(29), "batch": 3.0, "product": BOX, "good": 2.0})
    type_in(made, "pours", poured)
    type_in(made, "market_days", [{"date": later(40), "place": STALL, "fee": STAND, "travel": TRAVEL, "hours": HOURS}])
    return made


def worked(season, as_market):
    typed, lines = sales(as_market)
    type_in(season, "sales", typed)
    type_in(season, "market_lines", lines)
    return Typed(None, *in_memory(season))


@pytest.fixture
def season():
    return made_season()


@pytest.fixture(scope="module")
def either():
    """The season with its market on Sales, and with it on Market lines."""
    return [worked(made_season(), as_market) for as_market in (False, True)]


@pytest.fixture(scope="module")
def found(either):
    return either[1]


def table(found, name, *keys):
    return pandas.DataFrame([values for _, values in found.rows(name, *keys)], columns=keys)


def month_of(days):
    """Months of days as cells hold them."""
    return pandas.to_datetime(days, unit="D", origin="1899-12-30").to_period("M")


@pytest.mark.parametrize("as_market", [False, True])
def test_places_products_and_months_are_sums_of_the_same_lines(either, as_market):
    found = either[as_market]
    sold = table(found, "sold", "date", "place", "product", *SUMS.values())
    sold["month"] = month_of(pandas.Index(sold["date"]))
    assert len(sold) == 7
    for name, tab in (("place", "by_place"), ("product", "by_product"), ("month", "months")):
        ours = table(found, tab, *SUMS, name).set_index(name)
        if name == "month":
            ours.index = month_of(ours.index[ours.index.notna()])
        theirs = sold[sold[name].notna()].groupby(name)[list(SUMS.values())].sum()
        wanted = theirs.reindex(ours.index, fill_value=0).set_axis(list(SUMS), axis=1)
        assert theirs["net"].abs().sum() > 0
        assert set(theirs.index) <= set(ours.index)
        pandas.testing.assert_frame_equal(ours[list(SUMS)].astype(float), wanted.astype(float), check_names=False)


def test_a_market_typed_either_way_gives_the_same_sums(either):
    tabs = ("months", "by_place", "by_product")
    sums = [[[values for _, values in found.rows(tab, *SUMS, "left", "hours")] for tab in tabs] for found in either]
    flat = [[value for tab in tabs_ for row in tab for value in row] for tabs_ in sums]
    assert flat[0] == pytest.approx(flat[1])


def test_own_hours_are_making_time_that_is_not_paid_and_hours_at_the_market(season, found):
    recipes = {row["product"]: row for _, row in season.rows("recipes")}

    def own(product):  # a candle's minutes, with its share of the set-up of a usual batch, less paid help
        row = recipes[product]
        each = row["minutes"] + (row["setup"] or 0) / row["usual_batch"]
        return each * (1 - (row["paid_share"] or 0))

    in_box = {row["product"]: row["count"] for _, row in season.rows("sets") if row["set"] == BOX}
    box = own(BOX) + sum(own(name) * count for name, count in in_box.items())
    shop = (3 - 1) * own(TIN) + box  # one came back
    stall = 4 * own(TIN) + 2 * own(OTHER)
    hours = {place: value for _, (place, value) in found.rows("by_place", "place", "hours")}
    assert hours[SHOP] == pytest.approx(shop / 60)
    assert hours[STALL] == pytest.approx(stall / 60 + HOURS)
    by_product = {product: value for _, (product, value) in found.rows("by_product", "product", "hours")}
    assert by_product[TIN] == pytest.approx((3 - 1 + 4) * own(TIN) / 60)
    assert by_product[BOX] == pytest.approx(box / 60)


@pytest.mark.parametrize("typed, days, fixed", [(0.0, TRAVEL, 0.0), (None, TRAVEL, 90.0)])
def test_a_stand_is_paid_once(season, typed, days, fixed):
    """A fee on Market days, even of nothing, takes the place of the fixed cost on Places sold."""
    places = [row | ({"fixed_cost": 45.0, "fixed_times": 2.0}) for _, row in season.rows("places")]
    type_in(season, "places", places)
    type_in(season, "market_days", [{"date": later(40), "place": STALL, "fee": typed, "travel": TRAVEL}])
    found = worked(season, True)
    costs = {place: values for _, (place, *values) in found.rows("by_place", "place", "days", "fixed")}
    assert costs[STALL] == [days, fixed]
    unsold = [values for place, values in costs.items() if place not in (STALL, SHOP)]
    assert unsold == [[0, 0]]


def test_a_line_that_is_not_right_is_an_error_in_every_sum(season):
    type_in(season, "prices", [])
    found = worked(season, True)
    for tab in ("by_place", "by_product"):
        assert {value for _, (_, value) in found.rows(tab, "first", "net")} == {"an error"}


# --- Checks ------------------------------------------------------------------------------------------


def wrong(found):
    """What does not agree, by the line's name."""
    told = {cell: value for (tab, cell), value in found.values.items() if tab == "Checks"}
    lines = [cell[1:] for cell, value in told.items() if cell[0] == "G" and value in ("to fix", "waits")]
    return {told[f"A{row}"]: told[f"G{row}"] for row in lines}


def test_a_sale_outside_the_season_turns_its_check_and_no_other(season, found):
    assert wrong(found) == {}
    season.settings["first_day"] = datetime.date(2027, 10, 1)
    assert wrong(worked(season, True)) == {"Sales and Market lines are of the season's months": "to fix"}


@pytest.mark.parametrize("tab, key, check", [
    ("months", "net", "Months add up to all that was sold"),
    ("by_place", "fees", "Places add up to all that was sold"),
    ("by_product", "cost", "Products add up to all that was sold"),
])  # fmt: skip
def test_a_sum_that_was_typed_over_turns_its_check_and_no_other(season, tab, key, check):
    typed, lines = sales(True)
    type_in(season, "sales", typed)
    type_in(season, "market_lines", lines)
    written = drafted(season, books.DATED, rows_of=books.few(season))
    place = written.plan.layouts[tab]
    written.book[place.title][f"{place.letters[key]}{place.first_row}"] = 1.0
    cells = {(name, f"{get_column_letter(column)}{row}"): value
             for name, rows in written.values.items()
             for row, values in enumerate(rows, start=1)
             for column, value in enumerate(values, start=1)}  # fmt: skip
    assert wrong(Typed(None, written.plan, cells)) == {check: "to fix"}


# --- the page ----------------------------------------------------------------------------------------


def test_the_page_has_last_season_where_it_is_typed_and_nothing_where_it_is_not(season, found):
    row = page.IN_ALL + 1
    assert found.values["Season", f"D{row}"] == ""
    type_in(season, "last_sold", [
        {"month": datetime.date(2026, 9, 1), "product": TIN, "place": SHOP, "pieces": 5.0, "net": 60.0, "cost": 20.0},
        {"month": datetime.date(2026, 3, 1), "product": OTHER, "place": STALL, "pieces": 2.0, "net": 20.0},
    ])  # fmt: skip
    found = worked(season, True)
    assert [found.values["Season", f"D{at}"] for at in (row, row + 1, row + 5)] == [7, 80, 20]
    then = table(found, "months", "month", "then").set_index("month")["then"]
    assert dict(zip(month_of(then.index).astype(str), then, strict=True))["2027-09"] == 60
    assert sum(then) == 60  # March is not of this season's months


def test_bars_of_the_chart_add_up_to_what_all_products_left_over(found):
    bars = [value for (tab, cell), value in found.values.items() if tab == "Season" and cell[0] == page.CHART_SUMS]
    sums = [value for value in bars if isinstance(value, (int, float))]
    assert sum(sums) == pytest.approx(sum(value for _, (value,) in found.rows("sold", "left")))
    assert sums[:-1] == sorted(sums[:-1], reverse=True)
