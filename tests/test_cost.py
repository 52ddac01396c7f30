"""Laws that costs keep."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from candlecalc.calc import (
    before_waste,
    cost_at_batch,
    cost_each,
    cost_of_all,
    cost_with_rise,
    full_cost,
    in_unit,
    labour_cost,
    making_cost,
    material_cost,
    minutes_each,
    overhead_cost,
    overhead_rate,
    own_minutes,
    paid_minutes,
    parts_cost,
    split_charge,
    unit_cost,
    yield_of,
)

money = st.floats(0, 1e5)
amount = st.floats(0.01, 1e5)
minutes = st.floats(0, 10_000)
rate = st.floats(0, 500)
batch = st.integers(1, 10_000)
sharing = st.sampled_from(["in proportion", "evenly"])

# Amounts as typed, to the cent; at least one is above nothing.
amounts = st.lists(st.integers(0, 10**7).map(lambda cents: cents / 100), min_size=1, max_size=12).filter(any)
coins = st.integers(-(10**9), 10**9)
digits = st.sampled_from([0, 2, 3])


def in_coins(parts, digits):
    """Each part as a whole number of coins; it must be one."""
    counted = [round(part * 10**digits) for part in parts]
    assert parts == [count / 10**digits for count in counted]
    return counted


@given(coins, amounts, sharing, digits)
def test_a_split_adds_up_to_the_coin(charge, amounts, sharing, digits):
    parts = split_charge(charge / 10**digits, amounts, sharing, digits)
    assert sum(in_coins(parts, digits)) == charge


@given(coins, amounts, digits)
def test_each_part_of_a_split_is_within_one_coin_of_its_exact_share(charge, amounts, digits):
    total = sum(map(Fraction, amounts))
    parts = in_coins(split_charge(charge / 10**digits, amounts, digits=digits), digits)
    for part, amount in zip(parts, amounts, strict=True):
        assert abs(part - charge * Fraction(amount) / total) < 1 + Fraction(1, 10**6)


@given(coins, amounts)
def test_a_line_of_nothing_gets_nothing_of_a_split(charge, amounts):
    parts = split_charge(charge / 100, [0.0, *amounts, 0.0])
    assert (parts[0], parts[-1]) == (0, 0)


@given(coins, amounts)
def test_no_part_of_a_split_goes_against_the_charge(charge, amounts):
    assert all(part * charge >= 0 for part in split_charge(charge / 100, amounts))


@given(coins, amounts)
def test_a_credit_is_split_like_a_charge(charge, amounts):
    assert split_charge(-charge / 100, amounts) == [-part for part in split_charge(charge / 100, amounts)]


@given(coins, st.integers(1, 12))
def test_an_even_split_differs_by_one_coin_at_most(charge, lines):
    parts = in_coins(split_charge(charge / 100, [0.0] * lines, "evenly"), 2)
    assert max(parts) - min(parts) <= 1
    assert sorted(parts, reverse=True, key=abs) == parts  # the earlier line gets the coin


@given(st.integers(0, 10**9), amounts)
def test_a_larger_line_gets_no_less_of_a_split(charge, amounts):
    parts = split_charge(charge / 100, sorted(amounts, reverse=True))
    assert parts == sorted(parts, reverse=True)


@given(money, amount, money, money)
def test_all_of_a_pack_costs_what_was_paid(price, size, shipping, tax):
    assert material_cost(size, unit_cost(price, size, shipping, tax)) == pytest.approx(price + shipping + tax)


@given(amount, st.floats(0.001, 1000), money)
def test_a_cost_does_not_depend_on_the_unit(size, factor, price):
    assert unit_cost(price, in_unit(size, factor)) * factor == pytest.approx(unit_cost(price, size))


@given(st.lists(st.tuples(amount, st.floats(0, 1000)), min_size=1, max_size=8))
def test_parts_cost_the_sum_of_each(parts):
    amounts, costs = map(list, zip(*parts, strict=True))
    assert parts_cost(amounts, costs) == pytest.approx(sum(material_cost(*part) for part in parts))


@given(amount, st.floats(0, 0.5))
def test_what_is_left_after_waste_is_what_was_wanted(amount, waste):
    weighed = before_waste(amount, waste)
    assert weighed >= amount
    assert weighed * (1 - waste) == pytest.approx(amount)


@given(batch, st.data())
def test_a_yield_is_a_share(made, data):
    good = data.draw(st.integers(0, made))
    assert yield_of(good, made) * made == pytest.approx(good)


@pytest.mark.parametrize("good, made, words", [(3, 2, "there cannot be more good ones"), (0, 0, "made must be more")])
def test_a_yield_of_more_than_all_or_of_nothing_is_refused(good, made, words):
    with pytest.raises(ValueError, match=f"^yield_of: {words}"):
        yield_of(good, made)


@given(minutes, minutes, batch)
def test_minutes_of_a_batch_are_its_set_up_and_each_candles_own(each, setup, batch):
    assert minutes_each(each, setup, batch) * batch == pytest.approx(setup + each * batch)


@given(minutes, minutes, batch)
def test_a_larger_batch_takes_no_more_minutes_each(each, setup, batch):
    assert minutes_each(each, setup, batch + 1) <= minutes_each(each, setup, batch)


@given(minutes, st.floats(0, 1))
def test_paid_and_own_minutes_make_up_the_time(minutes, share):
    assert paid_minutes(minutes, share) + own_minutes(minutes, share) == pytest.approx(minutes)


@given(minutes, rate, st.integers(1, 20))
def test_two_half_rates_cost_one_whole_one(minutes, rate, people):
    assert labour_cost(minutes, rate, people) == pytest.approx(2 * labour_cost(minutes, rate / 2, people))
    assert labour_cost(minutes, rate, people) == pytest.approx(people * labour_cost(minutes, rate))


@given(money, st.floats(1, 10_000))
def test_the_budgeted_hours_carry_the_budgeted_overhead(overhead, hours):
    assert overhead_cost(hours * 60, overhead_rate(overhead, hours)) == pytest.approx(overhead)


@given(money, money, money, money, money)
def test_full_cost_is_never_below_making_cost(materials, labour, overhead, own_time, running):
    making = making_cost(materials, labour, overhead)
    assert making >= materials
    assert full_cost(making, own_time, running) >= making


@given(money, batch)
def test_the_cost_of_each_is_the_cost_of_all_shared(cost, batch):
    assert cost_of_all(cost_each(cost, batch), batch) == pytest.approx(cost)


@given(money, money, batch, batch)
def test_a_cost_at_its_usual_batch_size_stays(each, setup, usual, batch):
    cost = each + setup / usual
    assert cost_at_batch(cost, setup, usual, usual) == pytest.approx(cost)
    assert cost_at_batch(cost, setup, usual, batch) == pytest.approx(each + setup / batch, rel=1e-9, abs=1e-7)


@given(money, money, st.floats(-0.9, 2))
def test_only_the_materials_in_a_cost_rise(rest, materials, rise):
    assert cost_with_rise(rest + materials, materials, rise) == pytest.approx(rest + materials * (1 + rise), abs=1e-7)
