"""Laws that selling keeps: prices both ways, whole cases, parcels, and days of cure."""

import math
from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from candlecalc.calc import (
    billable_weight,
    make_for_good,
    minimum_order,
    per_carton,
    pour_by_own_days,
    price_to_match,
    ready_on,
    retail_from_wholesale,
    stall_per_hour,
    stall_result,
    use_by_months,
    wholesale_price,
)

money, share = st.floats(0.01, 1000), st.floats(0, 0.9)
side = st.floats(10, 2000)
days = st.dates(date(2020, 1, 1), date(2039, 12, 31))


@given(money, share)
def test_retail_and_wholesale_are_the_same_price_seen_from_both_sides(wholesale, kept):
    assert math.isclose(wholesale_price(retail_from_wholesale(wholesale, kept), kept), wholesale)


@given(money, money, st.floats(0.01, 100), st.integers(1, 24))
def test_the_smallest_order_pays_and_a_case_fewer_does_not(order, cost, margin, case):
    candles = minimum_order(order, cost + margin, cost, 0, case)
    assert candles % case == 0
    assert candles * margin >= order * (1 - 1e-6) - 1e-6
    assert (candles - case) * margin < order


@given(st.integers(0, 500), st.floats(0.01, 1))
def test_what_is_made_yields_enough_and_one_fewer_does_not(good, kept):
    made = make_for_good(good, kept)
    assert made * kept >= good - 1e-5
    assert not good or (made - 1) * kept < good


@given(st.floats(1, 1e4), side, side, side, st.floats(50, 1e4), st.floats(1, 1000))
def test_a_parcel_is_charged_for_no_less_than_it_weighs_whichever_side_is_the_length(
    weight, length, width, height, divisor, step
):
    charged = billable_weight(weight, length, width, height, divisor, "cm3 per kg")
    assert charged >= weight
    assert math.isclose(charged, billable_weight(weight, height, length, width, divisor, "cm3 per kg"))
    rounded = billable_weight(weight, length, width, height, divisor, "cm3 per kg", step)
    assert -1e-5 * step <= rounded - charged < step * (1 + 1e-6)


@given(side, side, side, side, side, side)
def test_what_a_carton_takes_has_room_in_it(carton_length, carton_width, carton_height, length, width, height):
    count = per_carton(carton_length, carton_width, carton_height, length, width, height)
    assert count * length * width * height <= carton_length * carton_width * carton_height * (1 + 1e-5)
    assert count == per_carton(carton_width, carton_length, carton_height, length, width, height)


@given(money, st.floats(1, 1000), st.floats(1, 1000))
def test_a_price_that_matches_is_matched_by_the_other(price, weight, own):
    assert math.isclose(price_to_match(price_to_match(price, weight, own), own, weight), price)


@given(money, money, money, st.floats(0.5, 24))
def test_a_day_leaves_what_its_hours_leave_together(takings, goods, costs, hours):
    left = stall_per_hour(takings, goods, costs, hours) * hours
    assert math.isclose(left, stall_result(takings, goods, costs), abs_tol=1e-9)


@given(days, st.integers(0, 90))
def test_what_is_poured_by_the_last_day_has_cured_by_the_sale(sale, cure):
    poured = pour_by_own_days(sale, cure, "every day")
    assert ready_on(poured, cure) <= sale < ready_on(poured + timedelta(days=2), cure)


@given(days, st.integers(0, 60), st.integers(0, 60))
def test_more_months_never_end_earlier(made, months, more):
    assert use_by_months(made, months) <= use_by_months(made, months + more)
