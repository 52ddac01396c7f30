"""Halves: what lies exactly between two steps of a scale, or two coins, against exact fractions, on every face.

A tie is found by its exact value in decimals; a float holds most of them a hair above or below. The references
are Python's own `fractions`, and rounding half away from zero.
"""

import itertools
from fractions import Fraction

import pytest

STEPS = ("0.05", "0.1", "0.2", "0.5", "1", "5")
PLACES = range(3, 2000, 97)  # which half step


def half_away(exact):
    """A positive fraction as a whole number, a half upwards."""
    return (exact + Fraction(1, 2)) // 1


def stepped(exact, step):
    return float(half_away(exact / step) * step)


def ties(step, others):
    """(half a step past some number of them, another factor) with both as decimals of at most 6 places."""
    for place, other in itertools.product(PLACES, others):
        weight = (place + Fraction(1, 2)) * step / Fraction(other)
        if (weight * 10**6).denominator == 1:
            yield weight, Fraction(other)


@pytest.mark.parametrize("step", STEPS)
def test_half_a_step_of_the_scale_goes_up(face, step):
    step = Fraction(step)
    for weight, _ in ties(step, ["1"]):
        assert face.to_scale_step(float(weight), float(step)) == pytest.approx(stepped(weight, step), abs=1e-9)


@pytest.mark.parametrize("step", STEPS)
def test_half_a_step_of_a_batch_goes_up(face, step):
    step = Fraction(step)
    for each, count in ties(step, ["12", "24", "45"]):
        weighed = face.weigh_out(float(each), float(count), float(step))
        assert weighed == pytest.approx(stepped(each * count, step), abs=1e-9)


@pytest.mark.parametrize("step", STEPS)
def test_half_a_step_of_a_pot_goes_up(face, step):
    step = Fraction(step)
    for each, pots in ties(step, ["8", "12.5"]):
        weighed = face.weigh_for_pot(float(each), float(pots * 200), 200.0, float(step))
        assert weighed == pytest.approx(stepped(each * pots, step), abs=1e-9)


@pytest.mark.parametrize("step", STEPS[:4])
def test_half_a_step_of_oil_goes_up_in_the_load(face, step):
    step = Fraction(step)
    for wax, load in ties(step, ["0.05", "0.08"]):
        exact = half_away(wax * load / step) / half_away(wax / step)
        assert face.load_after_rounding(float(wax), float(load), float(step)) == pytest.approx(float(exact), abs=1e-12)


CENTS = Fraction(1, 100)


@pytest.mark.parametrize("digits", [0, 2, 3])
def test_half_a_coin_goes_up(face, digits):
    coin = Fraction(1, 10**digits)
    for amount, _ in ties(coin, ["1"]):
        assert face.round_money(float(amount), digits) == pytest.approx(stepped(amount, coin), abs=1e-9)
        assert face.round_money(-float(amount), digits) == pytest.approx(-stepped(amount, coin), abs=1e-9)


def test_half_a_cent_of_tax_goes_up(face):
    for amount, tax in ties(CENTS, ["0.06", "0.0825", "0.2"]):
        assert face.tax_by_order([float(amount)], float(tax)) == pytest.approx(stepped(amount * tax, CENTS), abs=1e-9)


def test_half_a_cent_of_a_discount_goes_up(face):
    for amount, discount in ties(CENTS, ["0.02", "0.05"]):
        given = face.early_discount(float(amount), float(discount))
        assert given == pytest.approx(stepped(amount * discount, CENTS), abs=1e-9)
