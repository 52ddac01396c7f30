"""Laws that stock keeps."""

from datetime import date
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from candlecalc.calc import (
    average_cost,
    count_difference,
    count_difference_cost,
    days_covered,
    days_in_stock,
    issue_costs,
    lots_left,
    lots_to_use,
    lower_of_cost,
    net_realisable_value,
    shelf_days_left,
    stock_from_count,
    stock_from_log,
    stock_from_lots,
    stock_turns,
    use_by,
    write_down,
)

LOG_METHODS = ["FIFO", "moving average", "LIFO"]
hundredths = st.integers(0, 10**6).map(lambda hundreds: hundreds / 100)
some = st.integers(1, 10**5).map(lambda hundreds: hundreds / 100)


@st.composite
def logs(draw):
    """Receipts with their costs, and issues of no more than is there; amounts to the hundredth, as typed."""
    moves, costs, there = [], [], 0
    for _ in range(draw(st.integers(1, 12))):
        out = draw(st.integers(0, there)) if draw(st.booleans()) else 0
        came = draw(st.integers(0, 10**5))
        moves.append(-out / 100 if out else came / 100)
        costs.append(None if out else draw(hundredths))
        there += -out if out else came
    return moves, costs


def exact(value):
    """As typed: 0.1 and not the float beside it."""
    return Fraction(str(value))


def received(moves, costs):
    lots = [(exact(move), exact(cost)) for move, cost in zip(moves, costs, strict=True) if cost is not None]
    return sum(amount for amount, _ in lots), sum(amount * cost for amount, cost in lots)


@given(logs(), st.sampled_from(LOG_METHODS))
def test_what_came_in_went_out_or_is_on_hand(log, method):
    moves, costs = log
    value = stock_from_log(moves, costs, method)
    amount, cost = received(moves, costs)
    assert value.left == float(sum(map(exact, moves)))
    assert value.used + value.worth == pytest.approx(float(cost), rel=1e-12)
    assert amount - exact(value.left) == -sum(exact(move) for move in moves if move < 0)
    assert value.left or not value.worth


@given(logs(), st.sampled_from(LOG_METHODS))
def test_the_issues_cost_together_what_the_log_says(log, method):
    costs = issue_costs(*log, method)
    assert not any(cost for cost, move in zip(costs, log[0], strict=True) if move >= 0)
    assert sum(costs) == pytest.approx(stock_from_log(*log, method).used, rel=1e-12)


@given(logs())
def test_fifo_by_a_log_is_fifo_by_a_count(log):
    moves, costs = log
    lots = [(move, cost) for move, cost in zip(moves, costs, strict=True) if cost is not None]
    value = stock_from_log(moves, costs)
    if lots:
        assert stock_from_count(*map(list, zip(*lots, strict=True)), value.left) == value


@given(logs())
def test_fifo_is_worth_the_newest_receipts(log):
    # By another road: the cost of what is left, read from the last receipt back.
    moves, costs = log
    value = stock_from_log(moves, costs)
    left, worth = exact(value.left), Fraction(0)
    for move, cost in reversed([pair for pair in zip(moves, costs, strict=True) if pair[1] is not None]):
        taken = min(left, exact(move))
        left, worth = left - taken, worth + taken * exact(cost)
    assert value.worth == float(worth)


@given(logs())
def test_a_moving_average_by_fractions(log):
    moves, costs = log
    there, worth = Fraction(0), Fraction(0)
    for move, cost in zip(moves, costs, strict=True):
        worth += exact(move) * exact(cost) if cost is not None else worth * exact(move) / there
        there += exact(move)
    assert stock_from_log(moves, costs, "moving average").worth == pytest.approx(float(worth), rel=1e-12)


@given(logs(), st.sampled_from(LOG_METHODS))
def test_at_one_cost_every_method_says_the_same(log, method):
    moves, costs = log
    costs = [None if cost is None else 2.5 for cost in costs]
    assert stock_from_log(moves, costs, method) == stock_from_log(moves, costs)


@given(logs())
def test_when_costs_rise_the_average_lies_between_fifo_and_lifo(log):
    moves, costs = log
    rising = iter(sorted(cost for cost in costs if cost is not None))
    costs = [None if cost is None else next(rising) for cost in costs]
    fifo, average, lifo = (stock_from_log(moves, costs, method).worth for method in LOG_METHODS)
    assert lifo <= average * (1 + 1e-12) + 1e-9 and average <= fifo * (1 + 1e-12) + 1e-9


@given(logs())
def test_the_lots_left_make_up_what_is_left(log):
    value = stock_from_log(*log)
    if not value.left:
        with pytest.raises(ValueError, match="^lots_left: nothing is left"):
            lots_left(*log)
        return
    lots = lots_left(*log)
    assert sum(exact(lot.left) for lot in lots) == exact(value.left)
    assert sum(lot.worth for lot in lots) == pytest.approx(value.worth, rel=1e-12)
    assert [lot.line for lot in lots] == sorted(lot.line for lot in lots)


LOTS = st.lists(st.tuples(some, hundredths), min_size=1, max_size=10)


@given(LOTS, st.data())
def test_a_count_shares_out_what_was_bought(lots, data):
    bought, costs = map(list, zip(*lots, strict=True))
    left = data.draw(st.integers(0, round(sum(bought) * 100))) / 100
    total = sum(exact(amount) * exact(cost) for amount, cost in lots)
    for method in ("FIFO", "periodic average", "LIFO"):
        value = stock_from_count(bought, costs, left, method)
        assert value.used + value.worth == pytest.approx(float(total), rel=1e-12)
    average = stock_from_count(bought, costs, left, "periodic average")
    assert average.worth == pytest.approx(average_cost(bought, costs) * left, rel=1e-9)


@given(LOTS, st.data())
def test_lots_told_apart_can_say_what_any_method_says(lots, data):
    bought, costs = map(list, zip(*lots, strict=True))
    left = data.draw(st.integers(0, round(sum(bought) * 100))) / 100
    gone, taken = sum(map(exact, bought)) - exact(left), []
    for amount in bought:
        taken.append(float(min(gone, exact(amount))))
        gone -= min(gone, exact(amount))
    by_lot, fifo = stock_from_lots(bought, costs, taken), stock_from_count(bought, costs, left)
    assert tuple(by_lot) == pytest.approx(tuple(fifo), rel=1e-9, abs=1e-6)


ITEMS = st.lists(st.tuples(hundredths, hundredths, hundredths), min_size=1, max_size=10)


@given(ITEMS)
def test_what_stock_is_carried_at_and_what_is_written_down_are_its_cost(items):
    amounts, costs, worth = map(list, zip(*items, strict=True))
    total = sum(amount * cost for amount, cost, _ in items)
    carried = lower_of_cost(amounts, costs, worth)
    assert carried + write_down(amounts, costs, worth) == pytest.approx(total, rel=1e-9, abs=1e-6)
    assert carried <= min(total, sum(amount * brings for amount, _, brings in items)) * (1 + 1e-12)


@given(hundredths, hundredths, hundredths)
def test_what_one_brings_is_never_more_than_its_price_nor_less_than_nothing(price, finishing, selling):
    assert 0 <= net_realisable_value(price, finishing, selling) <= price


@given(hundredths, hundredths, hundredths)
def test_a_count_and_its_difference_give_the_books(counted, booked, cost):
    difference = count_difference(counted, booked)
    assert booked + difference == pytest.approx(counted)
    assert count_difference_cost(counted, booked, cost) == pytest.approx(difference * cost)


@given(some, some, some, st.integers(1, 366))
def test_turns_times_days_in_stock_are_the_days_of_the_time(goods, opening, closing, days):
    assert stock_turns(goods, opening, closing) * days_in_stock(goods, opening, closing, days) == pytest.approx(days)
    assert days_in_stock(goods, opening, opening, days) == pytest.approx(days_covered(opening, goods / days))


DAYS = st.dates(date(2020, 1, 1), date(2039, 12, 31))


@given(DAYS, st.integers(0, 2000), DAYS)
def test_a_lot_keeps_until_the_day_it_is_to_be_used_by(made, shelf_life, as_of):
    left = shelf_days_left(made, shelf_life, as_of)
    assert (use_by(made, shelf_life) < as_of) == (left < 0)
    assert shelf_days_left(made, shelf_life, use_by(made, shelf_life)) == 0


@given(st.lists(st.tuples(some, DAYS), min_size=1, max_size=8), some, DAYS)
def test_lots_are_used_by_their_dates_and_hold_what_is_needed(lots, needed, as_of):
    amounts, dates = map(list, zip(*lots, strict=True))
    names = [f"lot {number}" for number in range(len(lots))]
    held = sum(exact(amount) for amount, day in lots if day >= as_of)
    if held < exact(needed):
        with pytest.raises(ValueError, match="^lots_to_use: lots that are not past their day hold"):
            lots_to_use(names, amounts, dates, needed, as_of)
        return
    taken = lots_to_use(names, amounts, dates, needed, as_of)
    assert sum(lot.take for lot in taken) == pytest.approx(needed)
    assert [lot.use_by for lot in taken] == sorted(lot.use_by for lot in taken)
    assert all(lot.days_left >= 0 for lot in taken)
    # All but the last are used up.
    assert all(lot.take == amounts[names.index(lot.lot)] for lot in taken[:-1])
