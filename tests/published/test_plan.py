"""What to buy, when to order again and one season's stock, against textbooks and the libraries that carry them.

"stockpyl" is the library stockpyl 1.0.2, whose examples name those of Snyder and Shen, Fundamentals of Supply
Chain Theory; its printed answers are quoted, and what it answers to more is written down in stockpyl.json.
"""

import math

import numpy
import pytest
from hypothesis import given
from hypothesis import strategies as st
from make_answers import answers
from scipy.stats import norm, poisson

from candlecalc.calc import (
    best_break,
    economic_order_quantity,
    ordering_cost,
    reorder_point,
    safety_stock,
    season_profit,
    season_profit_poisson,
    season_stock,
    season_stock_poisson,
)

# Buying

# A larger order at a lower price for all of it: all that can be ordered was written down and compared.
BREAKS = [  # packs, price, first, its price, second, its price, best, where
    (9, 10, 10, 8, 25, 7.5, 10, "worked here: ten at 8 cost 80, nine at 10 cost 90"),
    (7, 10, 10, 8, 25, 7.5, 7, "worked here: seven at 10 cost 70"),
    (24, 10, 10, 8, 25, 7.5, 25, "worked here: 25 at 7.50 cost 187.50, 24 at 8 cost 192"),
    (8, 10, 10, 8, 25, 7.5, 8, "worked here: both cost 80, the fewer are taken"),
    (0, 10, 10, 8, 25, 7.5, 0, "worked here: nothing is needed"),
]


@pytest.mark.parametrize("packs, price, first, first_price, second, second_price, best, where", BREAKS)
def test_packs_are_rounded_up_to_a_break_where_that_is_cheaper(
    face, packs, price, first, first_price, second, second_price, best, where
):
    assert face.packs_at_breaks(packs, price, first, first_price, second, second_price) == best


@pytest.mark.parametrize("packs, price", [(9, 10), (10, 8), (24, 8), (25, 7.5)])
def test_each_pack_has_the_price_of_the_last_break_reached(face, packs, price):
    """Worked here."""
    assert face.price_at_breaks(packs, 10, 10, 8, 25, 7.5) == price


ORDERS = [  # demand, ordering, holding, quantity, tolerance, where
    (1300, 8, 0.225, 304.0467800264368, 1e-9, "printed: stockpyl, example 3.1"),
    (2400, 3.2, 0.24, 252.98, 0.005, "printed: tests of the library inventoryanalytics"),
]


@pytest.mark.parametrize("demand, ordering, holding, quantity, tolerance, where", ORDERS)
def test_an_order_quantity_follows_the_examples(face, demand, ordering, holding, quantity, tolerance, where):
    assert face.economic_order_quantity(demand, ordering, holding) == pytest.approx(quantity, abs=tolerance)


def test_what_ordering_costs_follows_the_example(face):
    # stockpyl, example 3.1, printed.
    assert face.ordering_cost(304.0467800264368, 1300, 8, 0.225) == pytest.approx(68.41052550594829, abs=1e-9)


def test_goods_that_nobody_wants_are_not_ordered(face):
    assert face.economic_order_quantity(demand=0, ordering=8, holding=0.225) == 0
    with face.refuses("holding is 0; it takes more than 0"):
        face.economic_order_quantity(demand=1300, ordering=8, holding=0)


COSTS = [  # quantity, demand, ordering, share, price, cost, tolerance, where
    (252.98, 2400, 3.2, 0.6, 0.4, 1020.72, 0.005, "printed: tests of inventoryanalytics, purchases and all"),
    (63.25, 1000, 200, 0.2, 500, 506324.56, 0.005, "printed: stockpyl, all units discount, first price"),
    (200, 1000, 200, 0.2, 475, 485500, 1e-6, "printed: the same, second price"),
    (800, 1300, 8, 0.3, 0.68, 978.60, 0.005, "printed: tests of inventoryanalytics"),
    (400, 1300, 8, 0.3, 0.72, 1005.20, 0.005, "printed: the same"),
    (79, 800, 60, 0.3, 51.5, 42417.9, 0.05, "printed: a solved textbook exercise with four breaks"),
    (100, 800, 60, 0.3, 49.5, 40822.5, 0.05, "printed: the same"),
    (500, 800, 60, 0.3, 47, 41221, 0.5, "printed: the same"),
]


@pytest.mark.parametrize("quantity, demand, ordering, share, price, cost, tolerance, where", COSTS)
def test_what_buying_costs_follows_the_examples(face, quantity, demand, ordering, share, price, cost, tolerance, where):
    assert face.buying_cost(quantity, demand, ordering, share, price) == pytest.approx(cost, abs=tolerance)


BREAKS = [  # demand, ordering, share, breaks, prices, quantity, cost, where
    (1000, 200, 0.20, [0, 200, 500], [500, 475, 450], 500, 472900, "printed: stockpyl, all units discount"),
    (1300, 8, 0.3, [0, 400, 800], [0.75, 0.72, 0.68], 800, 978.60, "printed: tests of inventoryanalytics"),
    (800, 60, 0.3, [1, 50, 100, 200, 500], [53, 51.5, 49.5, 48, 47], 200, 40080, "printed: a solved exercise"),
    (5000, 49, 0.2, [1, 1000, 2000], [5, 4.8, 4.75], 1000, 24725, "worked; inputs of a textbook exercise"),
]


@pytest.mark.parametrize("demand, ordering, share, breaks, prices, quantity, cost, where", BREAKS)
def test_the_best_break_follows_the_examples(face, demand, ordering, share, breaks, prices, quantity, cost, where):
    best = face.best_break(demand, ordering, share, breaks, prices)
    assert (best.quantity, best.price) == (quantity, prices[breaks.index(quantity)])
    assert best.cost == pytest.approx(cost, abs=0.005)


def test_breaks_that_fall_or_prices_that_rise_are_refused(face):
    with face.refuses("best_break: breaks at place 3 must be above the one before."):
        face.best_break(1000, 200, 0.2, [0, 500, 200], [500, 475, 450])
    with face.refuses("best_break: prices at place 2 must not be above the one before."):
        face.best_break(1000, 200, 0.2, [0, 200], [475, 500])
    with face.refuses("lists of one length are wanted: breaks has 2, prices has 3"):
        face.best_break(1000, 200, 0.2, [0, 200], [500, 475, 450])


amount = st.floats(1, 10_000)


def test_an_order_quantity_is_stockpyls():
    for case in answers("order_quantity"):
        terms = case["demand"], case["ordering"], case["holding"]
        assert economic_order_quantity(*terms) == pytest.approx(case["quantity"]), case
        assert ordering_cost(case["quantity"], *terms) == pytest.approx(case["cost"]), case


def test_the_best_price_break_costs_what_stockpyls_does():
    for case in answers("price_breaks"):
        best = best_break(case["demand"], case["ordering"], case["share"], case["breaks"], case["prices"])
        assert best.cost == pytest.approx(case["cost"]), case


# Ordering again

POINTS = [  # demand, lead time, risk, spread, lead spread, buffer, point, tolerance, where
    (50, 1, 0.03, 5, 0, 9.40, 59.40, 0.005, "printed: Stevenson, Operations Management 14e, chapter 12, example 8"),
    (50, 2, 0.10, 3, 0, 5.437, 105.437, 0.0005, "worked; inputs of notes on the same chapter"),
    (
        1300,
        1 / 12,
        0.225 / 7.725,
        150,
        0,
        190.3369965715624 - 1300 / 12,
        190.3369965715624,
        1e-9,
        "printed: stockpyl, example 5.5",
    ),
    (2400, 1 / 12, 0.5, 0, 0, 0, 200, 1e-9, "printed: tests of inventoryanalytics, steady demand"),
    (10, 9, 0.1586552539314571, 4, 0.5, 13, 103, 1e-9, "worked: 3 x 4 and 10 x 0.5 are 12 and 5, so 13; z is 1"),
]


@pytest.mark.parametrize("demand, lead, risk, spread, lead_spread, buffer, point, tolerance, where", POINTS)
def test_a_reorder_point_follows_the_examples(
    face, demand, lead, risk, spread, lead_spread, buffer, point, tolerance, where
):
    assert face.reorder_point(demand, lead, risk, spread, lead_spread) == pytest.approx(point, abs=tolerance)
    assert face.safety_stock(demand, lead, risk, spread, lead_spread) == pytest.approx(buffer, abs=tolerance)


def test_a_risk_of_nothing_or_of_more_than_half_the_orders_is_refused(face):
    for risk in (0, 0.6):
        with face.refuses(f"risk is {risk:g}; it takes more than 0, at most 0.5 of the orders"):
            face.reorder_point(50, 1, risk, 5)


@given(amount, st.floats(0, 100), st.floats(1e-6, 0.5), st.floats(0, 1000), st.floats(0, 10))
def test_a_buffer_leaves_the_accepted_share_of_orders_short_by_scipy(demand, lead, risk, spread, lead_spread):
    used = norm(demand * lead, math.hypot(spread * math.sqrt(lead), demand * lead_spread) or 1e-300)
    assert reorder_point(demand, lead, risk, spread, lead_spread) == pytest.approx(used.isf(risk), rel=1e-9, abs=1e-9)
    assert safety_stock(demand, lead, 0.5, spread, lead_spread) == 0


# One season

# stockpyl: examples 4.1 to 4.3 of a paper seller: price 1, cost 0.30, 0.12 for one left over.
SELLER = (1, 0.3, 0.12)


def test_one_season_of_normal_demand_follows_the_examples(face):
    assert face.season_stock(*SELLER, 50, 8) == pytest.approx(56.60395592743389, abs=1e-9)  # printed
    assert face.season_stock(6, 1, 0, 10, 2) == pytest.approx(11.934843132203403, abs=1e-9)  # inventoryanalytics


PROFITS = [  # stock, price, cost, leftover, demand, spread, profit, tolerance, where
    (56.60395592743389, *SELLER, 50, 8, 33.002394806823354, 1e-9, "printed: example 4.2"),
    (60, *SELLER, 50, 8, 0.70 * 50 - 2.156131552870387, 1e-9, "worked from the printed cost of example 4.1"),
    (11.934843132203403, 6, 1, 0, 10, 2, 5 * 10 - 2.998211, 5e-7, "worked from a cost: inventoryanalytics"),
    (12, 6, 1, 0, 10, 2, 5 * 10 - 2.999785, 1e-6, "the same; its last digit is cut, not rounded"),
]


@pytest.mark.parametrize("stock, price, cost, leftover, demand, spread, profit, tolerance, where", PROFITS)
def test_the_profit_of_a_season_follows_the_examples(
    face, stock, price, cost, leftover, demand, spread, profit, tolerance, where
):
    assert face.season_profit(stock, price, cost, leftover, demand, spread) == pytest.approx(profit, abs=tolerance)


def test_one_season_of_single_buyers_follows_the_examples(face):
    assert face.season_stock_poisson(*SELLER, 50) == 56  # printed
    assert face.season_profit_poisson(56, *SELLER, 50) == pytest.approx(33.20276478819082, abs=1e-9)  # printed
    # Example 4.7: 1 for one too many, 4 for one too few, 6 wanted on average; printed 8, at a cost of 3.5701...
    assert face.season_stock_poisson(5, 1, 0, 6) == 8
    assert face.season_profit_poisson(8, 5, 1, 0, 6) == pytest.approx(4 * 6 - 3.5701069457709416, abs=1e-9)


def test_one_function_answers_for_each_kind_of_demand_as_the_examples_do(face):
    # stockpyl: examples 4.1 to 4.7 again; the records are those of the notes in the next test.
    assert face.season_quantity(*SELLER, "normal", 50, 8) == pytest.approx(56.60395592743389, abs=1e-9)
    assert face.season_quantity(5, 1, 0, "Poisson", 6) == 8
    assert face.season_quantity(10, 4, 1, "records", records=[10, 12, 14, 14, 16, 20]) == 14
    profit = face.expected_season_profit(56.60395592743389, *SELLER, "normal", 50, 8)
    assert profit == pytest.approx(33.002394806823354, abs=1e-9)
    assert face.expected_season_profit(56, *SELLER, "Poisson", 50) == pytest.approx(33.20276478819082, abs=1e-9)
    profit = face.expected_season_profit(15, 10, 4, 1, "records", records=[10, 12, 14, 14, 16, 20])
    assert profit == pytest.approx(75, abs=1e-9)


def test_a_kind_of_demand_says_what_it_needs(face):
    # No source: what each kind of demand is described by.
    with face.refuses('season_quantity: for "normal" it needs spread'):
        face.season_quantity(*SELLER, "normal", 50)
    with face.refuses('expected_season_profit: for "records" it needs records'):
        face.expected_season_profit(15, 10, 4, 1, "records", 12)


def test_a_tie_between_records_gives_the_smaller_number(face):
    # Notes of an operations research course (neoprimate), section 414: 6/9 of six seasons are just four.
    records = [10, 12, 14, 14, 16, 20]
    assert face.season_stock_of_records(10, 4, 1, records) == 14  # printed
    for stock in (14, 15, 16):
        assert face.season_profit_of_records(stock, 10, 4, 1, records) == pytest.approx(75, abs=1e-9)  # worked


def test_a_season_at_a_loss_or_without_a_risk_is_refused(face):
    with face.refuses("the price must be above what one costs"):
        face.season_stock(4, 4, 1, 50, 8)
    with face.refuses("a leftover must bring less than it cost"):
        face.season_stock_of_records(10, 4, 4, [10, 12])
    with face.refuses("demand is 701; it takes 0 to 700"):
        face.season_stock_poisson(10, 4, 1, 701)


margin, loss = st.floats(0.1, 100), st.floats(0.1, 100)


def test_one_season_of_normal_demand_is_stockpyls():
    for case in answers("normal_season"):
        cost = case["leftover"] + case["loss"]
        season = cost + case["margin"], cost, case["leftover"], case["demand"], case["spread"]
        if case["stock"] >= 0:  # the library makes less than nothing where it may
            assert season_stock(*season) == pytest.approx(case["stock"], rel=1e-6, abs=1e-6), case
            assert season_profit(case["stock"], *season) == pytest.approx(case["profit"], rel=1e-6, abs=1e-6), case
        expected = case["margin"] * case["demand"] - case["wasted"]
        assert season_profit(case["other"], *season) == pytest.approx(expected, rel=1e-6, abs=1e-5), case


@given(margin, loss, st.floats(0.1, 700), st.integers(0, 900))
def test_one_season_of_single_buyers_is_scipys(margin, loss, demand, other):
    price, cost = loss + margin, loss
    stock = season_stock_poisson(price, cost, 0, demand)
    ratio = margin / price
    # A hair either side of the ratio, as the two add up chances in another order.
    assert poisson.ppf(ratio - 1e-9, demand) <= stock <= poisson.ppf(ratio + 1e-9, demand)
    numbers = numpy.arange(3000)  # beyond these no number has a chance that counts
    over = poisson.pmf(numbers, demand) @ numpy.maximum(other - numbers, 0)
    under = poisson.pmf(numbers, demand) @ numpy.maximum(numbers - other, 0)
    profit = season_profit_poisson(other, price, cost, 0, demand)
    assert profit == pytest.approx(margin * demand - loss * over - margin * under, rel=1e-9, abs=1e-6)


@pytest.mark.parametrize("demand", [0.5, 6, 50])
def test_the_cost_of_single_buyers_is_stockpyls(demand):
    (costs,) = [case["costs"] for case in answers("buyers") if case["demand"] == demand]
    assert season_stock_poisson(5, 1, 0, demand) == costs.index(min(costs))
    for stock, wasted in enumerate(costs):
        profit = season_profit_poisson(stock, 5, 1, 0, demand)
        assert profit == pytest.approx(4 * demand - wasted, rel=1e-9, abs=1e-9), stock


# Packs, and sharing what is scarce

PACKS = [  # needed, pack, on hand, packs, where
    (180, 50, 25, 4, "printed: 200 of part D for 180 at 25 on hand, in packs of 50 (a solved exercise on netting)"),
    (150, 100, 20, 2, "printed: 200 of part E, the same exercise"),
    (300, 100, 0, 3, "printed: 300 of part F, a whole number of packs"),
    (20, 50, 25, 0, "worked: there is enough"),
    (0.3, 0.1, 0, 3, "worked: 0.3/0.1 is a hair above 3 in floats"),
]


@pytest.mark.parametrize("needed, pack, on_hand, packs, where", PACKS)
def test_packs_follow_the_exercise(face, needed, pack, on_hand, packs, where):
    assert face.packs_to_buy(needed, pack, on_hand) == packs


def test_a_pack_of_nothing_is_refused(face):
    with face.refuses("pack is 0; it takes more than 0"):
        face.packs_to_buy(180, 0)


SPLITS = [  # available, wants, step, sharing, given, where
    (27, [13, 12, 5, 16, 7, 9], 1, "in proportion", [6, 5, 2, 7, 3, 4],
     "worked; printed to 5, 5, 2, 6, 3, 3 before the last 3: OpenStax, Contemporary Mathematics 11.4"),
    (70, [150, 90, 100], 1, "in proportion", [31, 18, 21],
     "worked; printed: 30.88, 18.53, 20.59 (the same section)"),
    (8, [8, 8, 8], 0.01, "evenly", [2.67, 2.67, 2.66], "printed: moneyphp, page on allocation, 8.00 in three"),
    (34, [40, 40, 40, 40], 1, "evenly", [9, 9, 8, 8], "printed: a note on the library NMoneys, 34 yen in four"),
    (10, [2, 8, 9], 1, "evenly", [2, 4, 4], "common practice, no source: no one gets more than it wants"),
    (500, [8, 6], 1, "in proportion", [8, 6], "common practice, no source: there is enough"),
]  # fmt: skip


@pytest.mark.parametrize("available, wants, step, sharing, shares, where", SPLITS)
def test_a_fair_split_follows_published_allocations(face, available, wants, step, sharing, shares, where):
    assert face.fair_split(available, wants, step, sharing) == shares


def test_a_split_in_steps_of_nothing_is_refused(face):
    with face.refuses("step is 0; it takes more than 0"):
        face.fair_split(10, [8, 6], 0)
