"""Laws that fragrance keeps."""

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from candlecalc.calc import (
    highest_of_total,
    highest_on_wax,
    limit_of_blend,
    load_after_rounding,
    load_at_limit,
    load_from_share,
    load_measured,
    load_swing,
    oil_for_fill,
    oil_for_wax,
    oil_part,
    oil_parts,
    oil_to_raise_load,
    share_of_total,
    wax_for_fill,
    wax_for_oil,
    wax_to_lower_load,
)

weight = st.floats(1, 50_000)
load = st.floats(0, 0.5)
some = st.floats(0.001, 0.49)
share = st.floats(0, 1 / 3)


@st.composite
def blends(draw):
    """Shares that add up to 1, with a limit for each."""
    parts = draw(st.lists(st.floats(0.01, 1), min_size=1, max_size=6))
    limits = draw(st.lists(st.floats(0.001, 1), min_size=len(parts), max_size=len(parts)))
    return [part / math.fsum(parts) for part in parts], limits


@given(weight, load)
def test_oil_and_wax_make_up_the_fill(fill, load):
    assert oil_for_fill(fill, load) + wax_for_fill(fill, load) == pytest.approx(fill)


@given(weight, load)
def test_filling_a_vessel_and_melting_its_wax_ask_for_the_same_oil(fill, load):
    oil = oil_for_fill(fill, load)
    assert oil_for_wax(fill - oil, load) == pytest.approx(oil)


@given(weight, some)
def test_oil_for_wax_and_wax_for_oil_undo_each_other(wax, load):
    assert wax_for_oil(oil_for_wax(wax, load), load) == pytest.approx(wax)


@given(weight, some)
def test_the_load_measured_is_the_load_weighed_out(wax, load):
    assert load_measured(wax, oil_for_wax(wax, load)) == pytest.approx(load)


@given(load)
def test_load_and_share_undo_each_other(load):
    assert load_from_share(share_of_total(load)) == pytest.approx(load)


@given(share)
def test_share_and_load_undo_each_other(share):
    assert share_of_total(load_from_share(share)) == pytest.approx(share)


@given(some)
def test_a_share_of_the_whole_is_below_the_load_on_wax(load):
    assert share_of_total(load) < load


@given(weight, load)
def test_a_share_of_the_whole_gives_the_oil_in_a_fill(fill, load):
    assert oil_for_fill(fill, load) == pytest.approx(oil_part(fill, share_of_total(load)))


@given(weight, load, st.lists(st.floats(0.01, 1), min_size=1, max_size=6))
def test_the_oils_of_a_blend_add_up_to_the_oil(wax, load, parts):
    oil = oil_for_wax(wax, load)
    assert math.fsum(oil_parts(oil, [part / math.fsum(parts) for part in parts])) == pytest.approx(oil)


@pytest.mark.parametrize("shares", [[0.5, 0.4], [0.5, 0.6], [0.0]])
def test_shares_that_do_not_add_up_are_refused(shares):
    with pytest.raises(ValueError, match="^oil_parts: .*must add up to 1"):
        oil_parts(40, shares)
    with pytest.raises(ValueError, match="^limit_of_blend: .*must add up to 1"):
        limit_of_blend(shares, [1] * len(shares))


@given(st.floats(100, 50_000), some, st.sampled_from([0.01, 0.1, 0.5, 1.0, 5.0]))
def test_no_reading_half_a_step_off_moves_the_load_further_than_its_swing(wax, load, step):
    oil = oil_for_wax(wax, load)
    swing = load_swing(wax, oil, step)
    for wax_off in (-step / 2, step / 2):
        for oil_off in (-step / 2, step / 2):
            assert abs((oil + oil_off) / (wax + wax_off) - load) <= swing * (1 + 1e-9)


@given(st.floats(100, 50_000), st.floats(0.02, 0.4), st.sampled_from([0.01, 0.1, 0.5, 1.0]))
def test_weighing_to_the_scales_step_stays_within_its_swing(wax, load, step):
    swing = load_swing(wax, oil_for_wax(wax, load), step)
    assert abs(load_after_rounding(wax, load, step) - load) <= swing + 1e-9


@given(st.integers(1, 5000), st.integers(0, 2500), st.sampled_from([0.25, 0.5, 1.0, 5.0]))
def test_weights_the_scale_can_show_keep_their_load(wax, oil, step):
    assume(oil <= wax / 2)
    assert load_after_rounding(wax * step, oil / wax, step) == pytest.approx(oil / wax)


@given(weight, some, some)
def test_oil_added_brings_the_load_up_to_the_one_wanted(wax, load, wanted):
    load, wanted = sorted([load, wanted])
    oil = wax * load
    added = oil_to_raise_load(wax + oil, load, wanted)
    assert (oil + added) / wax == pytest.approx(wanted)


@given(weight, some, some)
def test_wax_added_brings_the_load_down_to_the_one_wanted(wax, load, wanted):
    wanted, load = sorted([load, wanted])
    oil = wax * load
    added = wax_to_lower_load(wax + oil, load, wanted)
    assert oil / (wax + added) == pytest.approx(wanted)


@given(weight, some)
def test_a_load_that_is_right_needs_nothing_added(scented, load):
    assert oil_to_raise_load(scented, load, load) == 0
    assert wax_to_lower_load(scented, load, load) == 0


@given(st.floats(0.001, 1 / 3))
def test_a_highest_load_means_the_same_on_either_basis(highest):
    assert highest_on_wax(highest, "of total") == pytest.approx(load_from_share(highest))
    assert highest_of_total(highest_on_wax(highest, "of total"), "of wax") == pytest.approx(highest)
    assert highest_of_total(highest, "of total") == highest_on_wax(highest, "of wax") == highest


def test_a_highest_load_of_nothing_is_nothing_on_either_basis():
    assert highest_on_wax(0) == highest_of_total(0) == 0


@given(st.floats(0.001, 1))
def test_a_load_at_its_limit_is_within_it(limit):
    assert share_of_total(load_at_limit(limit)) <= limit * (1 + 1e-12)


@given(blends())
def test_a_blend_is_limited_between_its_strictest_and_its_mildest_oil(blend):
    shares, limits = blend
    assert min(limits) * (1 - 1e-9) <= limit_of_blend(shares, limits) <= max(limits) * (1 + 1e-9)


@given(blends())
def test_each_oil_of_a_blend_stays_within_its_own_limit(blend):
    shares, limits = blend
    whole = limit_of_blend(shares, limits)
    assert all(share * whole <= limit * (1 + 1e-9) for share, limit in zip(shares, limits, strict=True))


@given(blends(), st.randoms())
def test_the_order_of_the_oils_does_not_matter(blend, chance):
    pairs = list(zip(*blend, strict=True))
    chance.shuffle(pairs)
    assert limit_of_blend(*map(list, zip(*pairs, strict=True))) == pytest.approx(limit_of_blend(*blend))
