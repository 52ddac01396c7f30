"""Laws of weighing out, of pots, and of what is on hand."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from candlecalc.calc import (
    candles_a_pot,
    dye_for_wax,
    enough_for,
    equal_pot,
    first_wax,
    full_pots,
    last_pot,
    pieces_for,
    pots_for_candles,
    pots_needed,
    pots_with_one_fewer,
    second_wax,
    short_by,
    to_scale_step,
    weigh_for_pot,
    weigh_out,
    weight_in_pots,
)

weights = st.floats(0.1, 50_000)
steps = st.sampled_from([0.01, 0.05, 0.1, 0.5, 1.0, 2.0, 5.0])
counts = st.integers(1, 2000)
amounts = st.floats(0, 50_000)


@given(weights, steps)
def test_a_scale_is_at_most_half_a_step_off_and_shows_its_own_reading_again(weight, step):
    shown = to_scale_step(weight, step)
    assert abs(shown - weight) <= step / 2 * (1 + 1e-9)
    assert to_scale_step(shown, step) == pytest.approx(shown, abs=1e-9)
    assert shown / step == pytest.approx(round(shown / step), abs=1e-6)


@given(weights, counts, steps)
def test_a_batch_is_weighed_as_one_weight(each, count, step):
    assert weigh_out(each, count, step) == to_scale_step(each * count, step)


@given(st.floats(1, 500_000), st.floats(10, 50_000))
def test_pots_hold_the_whole_melt_and_the_last_is_never_full(melt, pot):
    pots = full_pots(melt, pot)
    last = last_pot(melt, pots, pot)
    assert pots * pot + last == pytest.approx(melt, abs=1e-6 * pot)
    assert 0 <= last < pot * (1 + 1e-6)


@given(st.floats(1, 500_000), st.floats(10, 50_000))
def test_equal_pots_hold_the_whole_melt_and_none_holds_too_much(melt, pot):
    pots = pots_needed(melt, pot)
    each = equal_pot(melt, pots)
    assert weight_in_pots(each, pots) == pytest.approx(melt)
    assert pot / 2 * (pots > 1) * (1 - 1e-6) <= each <= pot * (1 + 1e-6)


@given(st.integers(1, 5000), st.floats(1, 500), st.floats(500, 50_000))
def test_pots_for_whole_candles_make_the_batch_and_none_holds_too_much(count, each, pot):
    pots = pots_for_candles(count, each, pot)
    candles, fewer = candles_a_pot(count, pots), pots_with_one_fewer(count, pots)
    assert (pots - fewer) * candles + fewer * (candles - 1) == count
    assert 0 <= fewer < pots and candles >= 1
    assert candles * each <= pot * (1 + 1e-6)
    assert pots >= pots_needed(count * each, pot)


@given(st.lists(st.floats(1, 500), min_size=2, max_size=5), st.floats(500, 5000), steps)
def test_the_parts_in_a_pot_make_up_the_pot(parts, pot, step):
    melt = math.fsum(parts)
    weighed = [weigh_for_pot(each, pot, melt, step) for each in parts]
    assert math.fsum(weighed) == pytest.approx(pot, abs=len(parts) * step / 2 * (1 + 1e-6))


@given(amounts, amounts)
def test_what_is_short_is_what_must_be_added_and_no_more(needed, on_hand):
    short = short_by(needed, on_hand)
    assert on_hand + short == pytest.approx(max(needed, on_hand))
    assert short == 0 or on_hand < needed


@given(amounts, st.floats(0.1, 500))
def test_one_candle_more_than_there_is_enough_for_is_too_many(available, each):
    made = enough_for(available, each)
    assert made * each <= available + 1e-5 * each
    assert (made + 1) * each > available - 1e-5 * each


@given(st.integers(1, 12), counts)
def test_pieces_are_counted_alike_one_batch_or_two(each, count):
    assert pieces_for(each, 2 * count) == 2 * pieces_for(each, count)


@given(weights, st.floats(0, 1))
def test_two_waxes_are_all_of_the_wax(wax, share):
    assert first_wax(wax, share) + second_wax(wax, share) == pytest.approx(wax)
    assert first_wax(wax) == wax


@given(weights, st.floats(0, 0.05))
def test_dye_comes_by_the_wax_alone(wax, share):
    assert dye_for_wax(2 * wax, share) == pytest.approx(2 * dye_for_wax(wax, share))
