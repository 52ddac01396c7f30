"""Laws that plans keep: of orders, one season, days, weeks and shares."""

import math
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from candlecalc.calc import (
    best_break,
    buying_cost,
    economic_order_quantity,
    evenings_needed,
    fair_split,
    follow_demand,
    level_or_follow,
    level_rate,
    lot_sizes,
    lots_cost,
    net_requirements,
    ordering_cost,
    packs_to_buy,
    plan_cost,
    pots_needed,
    pour_by,
    pour_by_own_days,
    reorder_point,
    safety_stock,
    season_profit_of_records,
    season_profit_poisson,
    season_stock_of_records,
    season_stock_poisson,
    stock_left,
    to_make,
)

amount = st.floats(0.1, 10_000)
count = st.integers(0, 1000)
sales = st.lists(st.integers(0, 300), min_size=1, max_size=20)


# Buying


@given(amount, amount, amount, st.floats(0.2, 5))
def test_no_other_order_quantity_costs_less(demand, ordering, holding, factor):
    best = economic_order_quantity(demand, ordering, holding)
    least = ordering_cost(best, demand, ordering, holding)
    assert least == pytest.approx(math.sqrt(2 * demand * ordering * holding))
    assert ordering_cost(best * factor, demand, ordering, holding) >= least * (1 - 1e-12)


@given(amount, amount, st.floats(0.01, 1), st.floats(1, 10_000), st.floats(0.1, 100))
def test_no_other_quantity_costs_less_than_the_best_break(demand, ordering, share, quantity, price):
    breaks, prices = [1, 100, 1000], [price, price * 0.9, price * 0.85]
    best = best_break(demand, ordering, share, breaks, prices)
    held = next(price for low, price in zip(breaks[::-1], prices[::-1], strict=True) if quantity >= low)
    assert best.cost <= buying_cost(quantity, demand, ordering, share, held) * (1 + 1e-12)
    assert best.price == next(p for low, p in zip(breaks[::-1], prices[::-1], strict=True) if best.quantity >= low)


@given(amount, st.floats(0, 50), st.floats(0.001, 0.5), st.floats(0, 100), st.floats(0, 5))
def test_two_sources_of_a_buffer_add_by_their_squares(demand, lead, risk, spread, lead_spread):
    both = safety_stock(demand, lead, risk, spread, lead_spread)
    apart = safety_stock(demand, lead, risk, spread), safety_stock(demand, lead, risk, 0, lead_spread)
    assert both == pytest.approx(math.hypot(*apart))
    assert reorder_point(demand, lead, risk, spread, lead_spread) == pytest.approx(demand * lead + both)


@given(amount, amount, amount)
def test_packs_are_enough_and_no_pack_is_too_many(needed, pack, on_hand):
    packs = packs_to_buy(needed, pack, on_hand)
    assert on_hand + packs * pack >= needed - pack * 1e-6
    assert packs == 0 or on_hand + (packs - 1) * pack < needed


# One season


@given(st.lists(st.integers(0, 200), min_size=1, max_size=12), st.integers(1, 50), st.integers(1, 50), count)
def test_no_other_number_would_have_brought_more_than_the_one_by_records(records, margin, loss, other):
    price, cost = margin + loss, loss
    stock = season_stock_of_records(price, cost, 0, records)
    best = season_profit_of_records(stock, price, cost, 0, records)
    profit = season_profit_of_records(other, price, cost, 0, records)
    assert profit <= best + 1e-9
    # A tie gives the smaller number.
    assert other >= stock or profit < best - 1e-9


@given(st.floats(0, 300), st.floats(0.1, 50), st.floats(0.1, 50), st.integers(0, 400))
def test_no_other_number_is_expected_to_bring_more_from_single_buyers(demand, margin, loss, other):
    price, cost = margin + loss, loss
    best = season_profit_poisson(season_stock_poisson(price, cost, 0, demand), price, cost, 0, demand)
    assert season_profit_poisson(other, price, cost, 0, demand) <= best + 1e-7


@given(st.integers(0, 200), st.lists(st.integers(0, 200), min_size=1, max_size=12))
def test_a_seasons_profit_is_the_average_of_what_each_season_brings(stock, records):
    each = [9 * min(stock, wanted) - 4 * max(0, stock - wanted) for wanted in records]
    assert season_profit_of_records(stock, 15, 6, 2, records) == pytest.approx(sum(each) / len(each), abs=1e-9)


# Days

DAYS = st.dates(date(2021, 1, 1), date(2038, 12, 31))


@given(DAYS, st.integers(0, 60), st.integers(1, 10), st.integers(0, 10))
def test_from_the_day_to_pour_by_all_is_ready_in_time_and_from_the_next_it_is_not(sale, cure, evenings, finishing):
    first = pour_by(sale, cure, evenings, finishing)
    assert first.weekday() < 5
    assert ready(first, cure, evenings, finishing) <= sale
    later = first + timedelta(days=1)
    while later.weekday() > 4:
        later += timedelta(days=1)
    assert ready(later, cure, evenings, finishing) > sale


def ready(first, cure, evenings, finishing):
    """The first day of sale when pouring starts on a working day: forward, a working day at a time."""
    day = first
    for _ in range(evenings - 1):
        day = on_or_after(day + timedelta(days=1))
    day += timedelta(days=cure)
    for _ in range(finishing):
        day = on_or_after(day) + timedelta(days=1)
    return day


def on_or_after(day):
    while day.weekday() > 4:
        day += timedelta(days=1)
    return day


@given(DAYS, st.integers(0, 60), st.integers(1, 5), st.lists(st.integers(1, 90), max_size=5))
def test_a_day_off_never_makes_the_day_to_pour_by_later(sale, cure, evenings, before):
    closed = [sale - timedelta(days=days) for days in before]
    first = pour_by_own_days(sale, cure, "Mon-Sat", evenings, 0, closed)
    assert first not in closed
    assert first <= pour_by_own_days(sale, cure, "Mon-Sat", evenings)


@given(amount, amount, st.integers(1, 20))
def test_pots_and_evenings_hold_all_and_one_fewer_does_not(melt, pot, an_evening):
    pots = pots_needed(melt, pot)
    assert (pots - 1) * pot < melt <= pots * pot + 1e-6 * pot
    evenings = evenings_needed(pots, an_evening)
    assert (evenings - 1) * an_evening < pots <= evenings * an_evening


# Weeks


@given(sales, st.integers(0, 500), st.integers(0, 500))
def test_a_level_rate_is_never_short_and_a_lower_one_is(sold, opening, closing):
    rate = level_rate(sold, opening, closing)
    left = stock_left(sold, [rate] * len(sold), opening)
    assert left[-1] >= closing - 1e-6
    if rate > 0.01:
        lower = [opening + (rate - 0.01) * week - sum(sold[:week]) for week in range(1, len(sold) + 1)]
        assert min(lower) < 0 or lower[-1] < closing


@given(st.lists(st.tuples(st.integers(0, 300), st.integers(0, 300)), min_size=1, max_size=20), st.integers(0, 500))
def test_following_demand_leaves_what_is_to_be_kept_or_more(weeks, opening):
    sold, keep = map(list, zip(*weeks, strict=True))
    made = follow_demand(sold, keep, opening)
    left = stock_left(sold, made, opening)
    # More only where nothing is made.
    assert all(
        have == wanted or (have > wanted and not new) for have, wanted, new in zip(left, keep, made, strict=True)
    )
    assert made[0] == to_make(sold[0], keep[0], opening)


@given(sales, st.integers(0, 100), st.integers(0, 20), st.integers(0, 500))
def test_what_was_there_and_made_is_sold_or_left(sold, extra, keeping, opening):
    made = [wanted + extra for wanted in sold]
    left = stock_left(sold, made, opening)
    assert left[-1] == opening + sum(made) - sum(sold)
    assert plan_cost(sold, made, 3, keeping, 0, 0, None, opening) == 3 * sum(made) + keeping * sum(left)


@given(sales, st.floats(0, 9), st.floats(0, 9), st.floats(0, 9), st.floats(0, 9), st.none() | st.integers(0, 300))
def test_both_plans_cost_what_the_plan_itself_costs(sold, making, keeping, raising, lowering, usual):
    level, follow = level_or_follow(sold, making, keeping, raising, lowering, usual)
    rate = [level_rate(sold)] * len(sold)
    assert level.cost == pytest.approx(plan_cost(sold, rate, making, keeping, raising, lowering, usual))
    assert follow.cost == pytest.approx(plan_cost(sold, sold, making, keeping, raising, lowering, usual))
    assert (level.most_made, follow.most_made, follow.most_kept) == (rate[0], max(sold), 0)


@given(sales, st.integers(0, 500), st.integers(0, 9), st.integers(0, 500))
def test_lot_sizes_make_what_is_sold_beyond_the_opening_stock(sold, setup, keeping, opening):
    made = lot_sizes(sold, setup, keeping, opening)
    assert sum(made) == max(0, sum(sold) - opening)
    # Never more to keep than one batch for each week would leave, plus its set-ups.
    every = follow_demand(sold, [0] * len(sold), opening)
    cost = lots_cost(sold, made, setup, keeping, opening)
    assert cost <= lots_cost(sold, every, setup, keeping, opening) + 1e-6


@given(sales, st.integers(0, 500), st.integers(1, 9))
def test_a_batch_is_made_only_when_nothing_is_left(sold, setup, keeping):
    made = lot_sizes(sold, setup, keeping)
    left = [0, *stock_left(sold, made)]
    assert all(before == 0 for before, new in zip(left, made, strict=False) if new)


# Net requirements

line = st.tuples(st.sampled_from(["candle", "pair", "wax"]), st.integers(1, 12), st.integers(1, 90))
DEMAND = st.lists(line, min_size=1, max_size=8)


@given(DEMAND, st.integers(0, 50), st.sampled_from([None, 7, 100]), st.integers(0, 4), st.integers(0, 3))
def test_net_requirements_leave_no_item_short_and_no_pack_too_many(demand, on_hand, pack, lead, in_pair):
    items, packs, leads = ["pair", "candle", "wax"], [None, 6, pack], [1, 2, lead]
    recipe = [("candle", "wax", 3)] + [("pair", "candle", in_pair)] * bool(in_pair)
    orders = net_requirements(items, [on_hand] * 3, packs, leads, *map(list, zip(*recipe)), *map(list, zip(*demand)))
    for item, size, ahead in zip(items, packs, leads, strict=True):
        own = [order for order in orders if order.item == item]
        uses = [(week, wanted) for name, week, wanted in demand if name == item]
        uses += [(o.start, o.amount * each) for product, part, each in recipe if part == item for o in orders
                 if o.item == product]  # fmt: skip
        for order in own:
            assert order.start == order.ready - ahead
            assert (order.note is not None) == (order.start < 1)
            assert not size or order.amount % size == 0
        for week in {week for week, _ in uses}:
            there = on_hand + sum(order.amount for order in own if order.ready <= week)
            there -= sum(used for when, used in uses if when <= week)
            assert there >= 0
            # Less than a pack beyond what is used, unless it was there at the start.
            assert there < (size or 1e-9) or not [order for order in own if order.ready <= week]


# Shares

wants = st.lists(st.integers(0, 500), min_size=1, max_size=12)
sharing = st.sampled_from(["in proportion", "evenly"])
step = st.sampled_from([1, 5, 0.1, 50])


@given(st.integers(0, 4000), wants, step, sharing)
def test_shares_add_up_to_what_is_there_and_no_one_gets_more_than_it_wants(there, wanted, step, sharing):
    shares = fair_split(there * step, [want * step for want in wanted], step, sharing)
    steps = [round(share / step) for share in shares]
    assert shares == pytest.approx([each * step for each in steps])
    assert sum(steps) == min(there, sum(wanted))
    assert all(each <= want for each, want in zip(steps, wanted, strict=True))


@given(st.integers(0, 4000), wants)
def test_shares_in_proportion_are_within_one_step_of_it(there, wanted):
    total, given_out = sum(wanted), min(there, sum(wanted))
    shares = fair_split(there, wanted)
    assert all(
        abs(share * total - given_out * want) < total for share, want in zip(shares, wanted, strict=True) if want
    )


@given(st.integers(0, 4000), wants)
def test_an_even_share_is_a_step_below_anothers_only_where_it_is_all_that_is_wanted(there, wanted):
    shares = fair_split(there, wanted, 1, "evenly")
    for share, want in zip(shares, wanted, strict=True):
        assert share == want or share >= max(shares) - 1


@given(st.integers(0, 4000), wants, sharing)
def test_more_to_share_gives_in_all_one_step_more(there, wanted, sharing):
    less, more = fair_split(there, wanted, 1, sharing), fair_split(there + 1, wanted, 1, sharing)
    assert sum(more) - sum(less) == (there < sum(wanted))
