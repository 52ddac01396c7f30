"""Weighing out, pots, pieces and what is on hand. No published figures were found: each is worked here by hand."""

import pytest

# Common practice, no source: the nearest step of the scale, half a step up.
STEPS = [  # weight, step, shown
    (41.27, 0.5, 41.5),
    (41.24, 0.5, 41.0),
    (41.25, 0.5, 41.5),
    (0.29, 0.01, 0.29),
    (1234, 5, 1235),
]


@pytest.mark.parametrize("weight, step, shown", STEPS)
def test_a_weight_is_what_the_scale_can_show(face, weight, step, shown):
    assert face.to_scale_step(weight, step) == pytest.approx(shown, abs=1e-9)
    assert face.weigh_out(weight, 1, step) == pytest.approx(shown, abs=1e-9)


def test_a_batch_is_rounded_once_not_candle_by_candle(face):
    # Common practice, no source: 24 at 15.52 g are 372.48, shown as 372.5; candle by candle it would be 372.
    assert face.weigh_out(15.52, 24, 0.5) == pytest.approx(372.5, abs=1e-9)
    with face.refuses("step must be more than 0"):
        face.weigh_out(15.52, 24, 0)


# Common practice, no source: as many full pots as the melt fills, and the rest in one more.
POTS = [  # melt, pot, full, last
    (7040, 3200, 2, 640),
    (6400, 3200, 2, 0),
    (3199, 3200, 0, 3199),
    (4.35, 0.01, 435, 0),
]


@pytest.mark.parametrize("melt, pot, full, last", POTS)
def test_a_melt_in_pots(face, melt, pot, full, last):
    assert face.full_pots(melt, pot) == full
    assert face.last_pot(melt, full, pot) == pytest.approx(last, abs=1e-9)
    with face.refuses("the pot must hold more than 0"):
        face.full_pots(melt, 0)


# Common practice, no source: as few pots as hold the melt, all alike; 7040 g in pots of 3200 g at most are three.
EQUAL = [  # melt, pots, each
    (7040, 3, 2346.6666666667),
    (6400, 2, 3200),
    (65.76, 5, 13.152),
]


@pytest.mark.parametrize("melt, pots, each", EQUAL)
def test_a_melt_is_shared_out_evenly(face, melt, pots, each):
    assert face.equal_pot(melt, pots) == pytest.approx(each, abs=1e-9)
    with face.refuses("pots must be more than 0"):
        face.equal_pot(melt, 0)


# Common practice, no source: no candle is filled from two pots, so each pot is for whole candles.
WHOLE = [  # candles, each takes, a pot holds, pots, candles in the fuller pots, pots for one fewer
    (24, 220, 800, 8, 3, 0),
    (50, 7.56, 100, 4, 13, 2),
    (50, 13.2, 100, 8, 7, 6),
    (12, 7.56, 100, 1, 12, 0),
    (7, 0.1, 0.3, 3, 3, 2),
]


@pytest.mark.parametrize("count, each, pot, pots, candles, fewer", WHOLE)
def test_a_batch_is_shared_over_pots_in_whole_candles(face, count, each, pot, pots, candles, fewer):
    assert face.pots_for_candles(count, each, pot) == pots
    assert face.candles_a_pot(count, pots) == candles
    assert face.pots_with_one_fewer(count, pots) == fewer
    with face.refuses("the pot must hold one candle at least"):
        face.pots_for_candles(count, pot * 1.01, pot)
    with face.refuses("pots must be more than 0"):
        face.candles_a_pot(count, 0)


def test_what_is_weighed_in_all_is_what_the_pots_take(face):
    # Common practice, no source: three pots of 2173 g wax.
    assert face.weight_in_pots(2173, 3) == 6519


def test_a_pot_holds_the_recipe_in_small(face):
    # Common practice, no source: candles of 200 g wax and 16 g oil; a pot of 2160 g is ten of them.
    assert face.weigh_for_pot(200, 2160, 216, 1) == pytest.approx(2000, abs=1e-9)
    assert face.weigh_for_pot(16, 2160, 216, 1) == pytest.approx(160, abs=1e-9)
    with face.refuses("melt must be more than 0"):
        face.weigh_for_pot(16, 2160, 0, 1)


def test_pieces_for_a_batch_and_what_is_missing(face):
    # Common practice, no source: two wicks in each of 24 candles, 40 wicks on hand.
    assert face.pieces_for(2, 24) == 48
    assert face.short_by(48, 40) == 8
    assert face.short_by(40, 48) == 0


def test_what_is_on_hand_is_enough_for_whole_candles(face):
    # Common practice, no source: 2000 g at 160 g each are twelve and a half.
    assert face.enough_for(2000, 160) == 12
    assert face.enough_for(4.35, 0.01) == 435
    with face.refuses("each must be more than 0"):
        face.enough_for(2000, 0)
