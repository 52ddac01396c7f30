"""Laws of wax and heat, for any wax, oil and pot."""

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from candlecalc.calc import (
    blend_density,
    celsius,
    celsius_difference,
    cooling_constant,
    cooling_temperature,
    cooling_time,
    fahrenheit,
    heat_for_wax,
    heat_to_melt,
    heat_to_warm,
    heater_efficiency,
    liquid_density,
    melt_cautions,
    melt_time,
    mixed_density,
    mixed_latent_heat,
    mixed_specific_heat,
    setting_shrinkage,
    temperature_after_oil,
    temperature_before_oil,
    top_up_pour,
    wax_parts,
)

temperatures = st.floats(-40, 150)
heats = st.floats(0.5, 5)
weights = st.floats(1, 50_000)
densities = st.floats(0.6, 1.2)


@given(temperatures)
def test_there_and_back_between_the_scales_gives_the_same(degrees):
    assert celsius(fahrenheit(degrees)) == pytest.approx(degrees, abs=1e-12)


@given(temperatures, temperatures)
def test_a_difference_is_what_two_temperatures_differ_by(one, other):
    assert celsius_difference(one - other) == pytest.approx(celsius(one) - celsius(other), abs=1e-9)


def test_the_same_text_is_a_temperature_here_and_a_difference_there():
    assert melt_cautions(80, 85, 204, 93, near="18 F") == melt_cautions("176 F", "185 F", 204, 93, near=10)
    assert celsius("18 F") == pytest.approx(-70 / 9)
    assert celsius_difference("18 F") == pytest.approx(10)


@given(weights, st.lists(temperatures, min_size=3, max_size=3).map(sorted), heats, heats, st.floats(0, 300))
def test_the_whole_job_is_its_stages(wax, degrees, solid, liquid, latent):
    start, melting, end = degrees
    stages = (
        heat_to_warm(wax, start, melting, solid) + heat_to_melt(wax, latent) + heat_to_warm(wax, melting, end, liquid)
    )
    assert heat_for_wax(wax, start, end, melting, latent, solid, liquid) == pytest.approx(stages, rel=1e-9, abs=1e-9)


@given(st.floats(0.1, 1e4), st.floats(10, 5000), st.floats(0.05, 1))
def test_a_heater_is_as_efficient_as_its_time_says(heat, power, efficiency):
    assert heater_efficiency(heat, power, melt_time(heat, power, efficiency)) == pytest.approx(efficiency)


@given(weights, st.floats(0, 0.5), st.floats(60, 150), st.floats(0, 50), heats, heats)
def test_heat_is_neither_made_nor_lost_as_oil_goes_in(wax, load, hot, room, liquid, oil_heat):
    oil, melting = wax * load, -40
    mixed = temperature_after_oil(wax, oil, hot, room, melting, liquid, oil_heat)
    lost, gained = wax * liquid * (hot - mixed), oil * oil_heat * (mixed - room)
    assert lost == pytest.approx(gained, rel=1e-6, abs=1e-6 * wax)
    assert temperature_before_oil(wax, oil, mixed, room, melting, liquid, oil_heat) == pytest.approx(hot, rel=1e-9)


@given(st.floats(60, 150), st.floats(0.02, 0.98), st.floats(-10, 40), st.floats(1, 500), st.floats(0, 1))
def test_a_cooling_pot_goes_through_its_readings(first, part, room, minutes, at):
    second = room + part * (first - room)
    readings = (first, second, minutes, room, min(second, 50))
    assume(second >= 0)
    assert cooling_temperature(*readings, 0) == pytest.approx(first)
    assert cooling_temperature(*readings, minutes) == pytest.approx(second)
    after = at * minutes
    between = min(max(cooling_temperature(*readings, after), second), first)
    assert cooling_time(*readings, between) == pytest.approx(after, abs=1e-6 * minutes)
    slowing = room + (first - room) * math.exp(-cooling_constant(*readings) * after)
    assert between == pytest.approx(slowing, rel=1e-9)


shares = st.lists(st.floats(0.05, 1), min_size=1, max_size=6).map(lambda parts: [p / math.fsum(parts) for p in parts])


@given(shares, st.data())
def test_a_blend_lies_between_its_parts(shares, data):
    each = data.draw(st.lists(densities, min_size=len(shares), max_size=len(shares)))
    for mixed in (mixed_density, mixed_specific_heat, mixed_latent_heat):
        assert min(each) * (1 - 1e-9) <= mixed(shares, each) <= max(each) * (1 + 1e-9)
    # The density of parts by weight is below the mean by weight, unless all are alike.
    mean = math.fsum(share * density for share, density in zip(shares, each, strict=True))
    assert mixed_density(shares, each) <= mean * (1 + 1e-9)


@given(densities, densities, st.floats(0, 1))
def test_two_waxes_are_a_blend_of_several(first, second, share):
    assert mixed_density([1 - share, share], [first, second]) == pytest.approx(blend_density(first, second, share))


@given(weights, shares)
def test_parts_of_a_wax_add_up(wax, shares):
    assert math.fsum(wax_parts(wax, shares)) == pytest.approx(wax)


@given(weights, densities, st.floats(0.6, 1))
def test_a_top_up_brings_the_set_wax_back_to_its_first_level(fill, cold, part):
    hot = max(cold * part, 0.5)
    poured = fill / hot
    top_up = top_up_pour(fill, setting_shrinkage(hot, cold))
    assert fill / cold + top_up / hot == pytest.approx(poured)


@given(st.floats(0.7, 1), st.floats(50, 100), st.floats(50, 100), st.floats(0, 0.002))
def test_wax_poured_hotter_weighs_less_at_the_same_mark(density, measured, temperature, expansion):
    there = liquid_density(density, measured, temperature, expansion)
    assert (there <= density) == (temperature >= measured or expansion == 0 or there == density)


@given(st.floats(0, 150), st.floats(50, 150), st.floats(50, 180), st.floats(0, 50))
def test_no_caution_ever_gives_leave(temperature, ceiling, flash, near):
    told = " ".join(melt_cautions(temperature, ceiling, flash, flash, near)).lower()
    assert not any(word in told.split() for word in ("ok", "fine", "safe", "safely", "below"))
    assert told.count("flash point") == (2 if temperature >= flash - near else 0)
