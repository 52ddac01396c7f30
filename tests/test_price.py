"""Laws that prices keep."""

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from candlecalc.calc import (
    add_tax,
    after_discounts,
    break_even_mix,
    break_even_sales,
    break_even_units,
    fee_at,
    fixed_each,
    least_each,
    lowest_price,
    margin_at,
    margin_from_markup,
    markup_from_margin,
    order_cost,
    price_for_margin,
    price_from_markup,
    price_received,
    price_to_state,
    profit_at,
    round_money,
    round_up_price,
    take_out_tax,
    tax_charged,
    tax_in_price,
    wholesale_price,
)

money = st.floats(0, 10_000)
cost = st.floats(0.01, 1000)
margin = st.floats(0, 0.6)
fee = st.floats(0, 0.25)
tax = st.floats(0, 0.3)
basis = st.sampled_from(["net", "gross"])
discount = st.floats(0, 0.95)
stated = st.sampled_from(["with tax", "before tax"])
cents = st.integers(0, 10**6).map(lambda count: count / 100)


@given(st.floats(0, 10))
def test_markup_and_margin_undo_each_other(markup):
    assert markup_from_margin(margin_from_markup(markup)) == pytest.approx(markup)


@given(cost, st.floats(0, 10))
def test_a_price_from_a_markup_leaves_its_margin(cost, markup):
    price = price_from_markup(cost, markup)
    assert margin_at(profit_at(price, cost), price) == pytest.approx(margin_from_markup(markup), abs=1e-9)


@given(cost, margin, fee, money, tax, basis, st.floats(0, 50))
def test_a_price_for_a_margin_leaves_that_margin(cost, margin, fee, fixed, tax, basis, least):
    price = price_for_margin(cost, margin, fee, fixed, tax, basis, least)
    fees = fee_at(price, fee, tax, basis, least) + fixed
    assert margin_at(profit_at(price, cost, fees), price) == pytest.approx(margin, abs=1e-9)


@given(cost, margin)
def test_without_fees_a_price_for_a_margin_is_a_markup(cost, margin):
    assert price_for_margin(cost, margin) == pytest.approx(price_from_markup(cost, markup_from_margin(margin)))


@given(cost, fee, money, tax, basis, st.floats(0, 50))
def test_the_lowest_price_leaves_nothing(materials, fee, fixed, tax, basis, least):
    price = lowest_price(materials, fee, fixed, tax, basis, least)
    fees = fee_at(price, fee, tax, basis, least) + fixed
    assert profit_at(price, materials, fees) == pytest.approx(0, abs=1e-9 * price)
    assert price == pytest.approx(price_for_margin(materials, 0, fee, fixed, tax, basis, least))


@given(cost, margin, st.floats(0.001, 0.1), fee)
def test_a_higher_margin_asks_a_higher_price(cost, margin, more, fee):
    assert price_for_margin(cost, margin + more, fee) > price_for_margin(cost, margin, fee)


@given(cost, margin, st.floats(0.001, 0.25), st.floats(0.01, 0.3))
def test_a_fee_on_tax_too_asks_a_higher_price(cost, margin, fee, tax):
    on_both = price_for_margin(cost, margin, fee, tax=tax, basis="gross")
    assert on_both > price_for_margin(cost, margin, fee, tax=tax, basis="net")


@pytest.mark.parametrize("margin, fee", [(0.5, 0.5), (0.9, 0.2)])
def test_a_margin_and_a_fee_that_leave_nothing_for_the_cost_are_refused(margin, fee):
    with pytest.raises(ValueError, match="^price_for_margin: margin and fee together must stay below 1"):
        price_for_margin(6, margin, fee)


def test_a_fee_on_tax_counts_towards_what_is_taken():
    assert price_for_margin(6, 0.5, 0.45, tax=0.2, basis="net") > 0
    with pytest.raises(ValueError, match="^price_for_margin: margin and fee together must stay below 1"):
        price_for_margin(6, 0.5, 0.45, tax=0.2, basis="gross")


@given(money, fee, tax, basis, money)
def test_a_fee_is_never_below_its_least(price, fee, tax, basis, least):
    assert fee_at(price, fee, tax, basis, least) == max(least, fee_at(price, fee, tax, basis))


@given(money, money, money, money, st.floats(1, 100), money)
def test_the_fixed_sums_of_an_order_are_shared_by_its_candles(fee, postage, packing, charged, per_order, item):
    order = order_cost(fee, postage, packing, charged)
    assert fixed_each(item, order, per_order) * per_order == pytest.approx(
        item * per_order + fee + postage + packing - charged, abs=1e-6
    )
    assert least_each(fee, per_order) * per_order == pytest.approx(fee)


@given(tax)
def test_tax_is_charged_unless_nobody_collects_it(rate):
    assert tax_charged(rate, "maker") == tax_charged(rate, "place") == rate
    assert tax_charged(rate, "nobody") == 0


@given(money, tax)
def test_tax_added_and_taken_out_gives_the_price_back(price, tax):
    assert take_out_tax(add_tax(price, tax), tax) == pytest.approx(price)


@given(money, tax)
def test_a_taxed_price_is_its_tax_and_the_rest(price, tax):
    assert take_out_tax(price, tax) + tax_in_price(price, tax) == pytest.approx(price)


@given(money, discount, tax, stated)
def test_the_price_received_undoes_the_price_to_state(price, discount, tax, stated):
    assert price_received(price_to_state(price, discount, tax, stated), discount, tax, stated) == pytest.approx(price)


@given(money, st.permutations([0.1, 0.15, 0.4]))
def test_the_order_of_discounts_does_not_matter(price, discounts):
    assert after_discounts(price, *discounts) == pytest.approx(after_discounts(price, 0.1, 0.15, 0.4))


@given(money, st.floats(0, 0.5), st.floats(0, 0.5))
def test_discounts_in_a_row_take_no_more_than_their_sum(price, first, second):
    summed = wholesale_price(price, min(0.99, first + second))
    assert after_discounts(price, first, second) >= summed - 1e-9
    assert after_discounts(price, first) == wholesale_price(price, first)


steps = st.sampled_from([0.05, 0.1, 0.25, 0.5, 1, 2, 5, 10])


@given(cents, steps, st.data())
def test_rounding_a_price_up_never_goes_below_it_and_by_less_than_a_step(price, step, data):
    ending = data.draw(st.integers(0, round(step * 100) - 1)) / 100
    asked = round_up_price(price, step, ending)
    assert price <= asked + 1e-9
    assert asked < price + step - 1e-9 or asked == ending  # the lowest price is the ending itself


@given(cents, steps, st.data())
def test_a_price_rounded_up_is_so_many_steps_and_the_ending(price, step, data):
    ending = data.draw(st.integers(0, round(step * 100) - 1)) / 100
    steps_up = (round_up_price(price, step, ending) - ending) / step
    assert steps_up == pytest.approx(round(steps_up), abs=1e-6)


@given(cents, steps)
def test_a_price_rounded_up_stays_there(price, step):
    asked = round_up_price(price, step)
    assert round_up_price(asked, step) == asked


def test_an_ending_as_large_as_the_step_is_refused():
    with pytest.raises(ValueError, match="^round_up_price: the ending must be below the step"):
        round_up_price(17.2, 1, 1)


@given(st.floats(-1e6, 1e6))
def test_an_amount_rounded_to_the_cent_stays_there(amount):
    assert round_money(round_money(amount)) == round_money(amount)


@given(st.floats(0, 1e5), cost, st.floats(0.5, 100), money)
def test_break_even_units_cover_the_fixed_costs_and_one_less_does_not(fixed, cost, left, profit):
    units = break_even_units(fixed, cost + left, cost, profit)
    each = (cost + left) - cost
    assert units * each >= (fixed + profit) - each * 1e-5
    assert (units - 1) * each < fixed + profit


@given(st.floats(0, 1e5), cost, st.floats(0.5, 100))
def test_break_even_sales_leave_the_fixed_costs(fixed, cost, left):
    sales = break_even_sales(fixed, cost + left, cost)
    assert sales * left / (cost + left) == pytest.approx(fixed)


@pytest.mark.parametrize("function", [break_even_units, break_even_sales])
def test_a_price_at_its_cost_never_breaks_even(function):
    with pytest.raises(ValueError, match="the price must be above what each one costs"):
        function(1000, 5, 5)


@given(st.lists(st.tuples(st.integers(1, 20), cost, cost), min_size=1, max_size=5), st.floats(0, 1e5))
def test_the_lots_of_a_mix_cover_the_fixed_costs(rows, fixed):
    mix, costs, lefts = map(list, zip(*rows, strict=True))
    prices = [cost + left for cost, left in zip(costs, lefts, strict=True)]
    lots = break_even_mix(fixed, mix, prices, costs)
    assert lots * math.fsum(n * left for n, left in zip(mix, lefts, strict=True)) == pytest.approx(fixed)


def test_a_mix_that_sells_at_its_cost_is_refused():
    with pytest.raises(ValueError, match="^break_even_mix: the mix sells at or below its cost"):
        break_even_mix(100, [1, 1], [5, 3], [4, 4])


@given(st.integers(1, 20), cost, st.floats(0.5, 100), st.floats(0, 1e5))
def test_a_mix_of_one_product_breaks_even_like_that_product(mix, cost, left, fixed):
    lots = break_even_mix(fixed, [mix], [cost + left], [cost])
    units = break_even_units(fixed, cost + left, cost)
    assume(units > 0)
    assert units == pytest.approx(lots * mix, abs=1 + 1e-5)
