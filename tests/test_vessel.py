"""Laws that vessels keep."""

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from candlecalc.calc import (
    box_volume,
    cylinder_volume,
    fill_in_another_wax,
    fill_weight,
    prism_volume,
    tapered_volume,
    vessels_filled,
    volume_from_water,
)

length = st.floats(10, 2000)
rise = st.floats(0, 20)
tall = st.floats(50, 2000)


@given(length, length)
def test_a_vessel_that_does_not_taper_is_a_cylinder(diameter, height):
    assert tapered_volume(diameter, diameter, height) == pytest.approx(cylinder_volume(diameter, height))


@given(length, length, length)
def test_a_tapered_vessel_upside_down_holds_the_same(top, bottom, height):
    assert tapered_volume(top, bottom, height) == pytest.approx(tapered_volume(bottom, top, height))


@given(length, length, st.floats(0.05, 0.95), st.floats(50, 500))
def test_a_tapered_vessel_cut_across_holds_its_two_pieces(top, bottom, part, height):
    between = bottom + (top - bottom) * part
    assume(min(part, 1 - part) * height >= 10)
    pieces = tapered_volume(between, bottom, height * part) + tapered_volume(top, between, height * (1 - part))
    assert tapered_volume(top, bottom, height) == pytest.approx(pieces)


@given(length, length)
def test_a_prism_of_four_sides_is_a_square_box(side, height):
    assert prism_volume(4, side, height) == pytest.approx(box_volume(side, side, height))


@given(st.floats(200, 500), length)
def test_a_prism_of_many_sides_is_nearly_a_cylinder(diameter, height):
    side = diameter * math.tan(math.pi / 100)  # the circle touches every side
    assert prism_volume(100, side, height) == pytest.approx(cylinder_volume(diameter, height), rel=4e-4)
    assert prism_volume(100, side, height) > cylinder_volume(diameter, height)


@given(st.integers(3, 100), st.floats(200, 500), tall, rise)
def test_a_raised_floor_takes_the_same_from_every_vessel_as_wide(sides, across, height, base):
    side = across * math.tan(math.pi / sides)
    taken = cylinder_volume(across, height) - cylinder_volume(across, height, base)
    for volume, size in [
        (tapered_volume, (2 * across, across)),
        (box_volume, (across, across)),
        (prism_volume, (sides, side)),
    ]:
        assert volume(*size, height) - volume(*size, height, base) == pytest.approx(taken, rel=1e-6, abs=1e-6)


@given(st.floats(50, 500), tall, rise)
def test_a_floor_raised_takes_what_the_same_bulge_adds(across, height, base):
    flat = cylinder_volume(across, height)
    assert cylinder_volume(across, height, base) + cylinder_volume(across, height, -base) == pytest.approx(2 * flat)


def test_a_floor_raised_by_its_radius_is_half_a_ball():
    taken = cylinder_volume(80, 100) - cylinder_volume(80, 100, base=40)
    assert taken == pytest.approx(2 / 3 * math.pi * 40**3 / 1000)


@given(length, length, st.floats(1.01, 3), st.floats(1.01, 3))
def test_a_larger_vessel_holds_more(diameter, height, wider, higher):
    diameter, height = max(10, diameter / 3), max(10, height / 3)
    assert cylinder_volume(diameter, height) < cylinder_volume(diameter * wider, height)
    assert cylinder_volume(diameter, height) < cylinder_volume(diameter, height * higher)


@given(st.floats(50, 5000), st.floats(0, 40))
def test_twice_the_water_is_twice_the_volume(water, temperature):
    assert volume_from_water(2 * water, temperature) == pytest.approx(2 * volume_from_water(water, temperature))


@given(st.floats(50, 5000), st.floats(5, 39), st.floats(0.1, 1))
def test_the_same_weight_of_warmer_water_fills_more(water, temperature, warmer):
    assert volume_from_water(water, temperature + warmer) > volume_from_water(water, temperature)


@given(st.floats(50, 5000), st.floats(0, 0.9), st.floats(0.5, 1.5))
def test_headspace_and_fill_make_up_the_vessel(volume, headspace, density):
    left_empty = volume * headspace * density
    assert fill_weight(volume, headspace, density) + left_empty == pytest.approx(fill_weight(volume, 0, density))


@given(st.floats(50, 5000), st.floats(0, 0.9), st.floats(0.7, 1.1), st.floats(0.7, 1.1))
def test_a_weighed_fill_in_another_wax_is_what_the_vessel_takes_of_that(volume, headspace, one, other):
    weighed = fill_weight(volume, headspace, one)
    assert fill_in_another_wax(weighed, one, other) == pytest.approx(fill_weight(volume, headspace, other))


@given(st.integers(1, 5000), st.floats(10, 1000), st.floats(0, 0.5))
def test_wax_weighed_for_so_many_vessels_fills_so_many(vessels, fill, load):
    assert vessels_filled(vessels * fill / (1 + load), fill, load) == vessels


@given(st.floats(0, 1e5), st.floats(10, 1000), st.floats(0, 0.5))
def test_the_pour_covers_the_vessels_filled_and_not_one_more(wax, fill, load):
    pour, vessels = wax * (1 + load), vessels_filled(wax, fill, load)
    assert vessels * fill <= pour + fill * 1e-6
    assert (vessels + 1) * fill > pour
