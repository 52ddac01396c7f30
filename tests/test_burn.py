"""Laws of burning, for any log, candle and recipe."""

import math
import random

import numpy
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy import stats

from candlecalc.calc import (
    burn_rate,
    burn_rate_between,
    burn_rate_high,
    burn_rate_low,
    burn_time,
    burn_time_from_log,
    fastest_candle,
    flame_height,
    flame_height_high,
    hours_left,
    hours_left_between,
    hours_left_high,
    hours_left_low,
    label_hours,
    pool_forecast,
    pool_growth,
    pool_time,
    rate_of_one_burn,
    rates_of_candles,
)
from candlecalc.quantities import statistics

confidences = st.floats(0.5, 0.999)


@st.composite
def logs(draw, least=3):
    """A candle that burns unevenly: hours and weights, with a rate that stands out of the scatter."""
    steps = draw(st.lists(st.floats(0.5, 6), min_size=least - 1, max_size=12))
    hours = [math.fsum(steps[:place]) for place in range(len(steps) + 1)]
    rate, full = draw(st.floats(2, 8)), 1500
    off = draw(st.lists(st.floats(-0.5, 0.5), min_size=len(hours), max_size=len(hours)))
    return hours, [full - rate * hour + away for hour, away in zip(hours, off, strict=True)]


@given(logs(), confidences)
def test_a_rate_and_its_interval_are_those_of_the_reference_library(log, confidence):
    reference = stats.linregress(*log)
    swing = stats.t.ppf((1 + confidence) / 2, len(log[0]) - 2) * reference.stderr
    assert burn_rate(*log) == pytest.approx(-reference.slope, rel=1e-9)
    assert burn_rate_low(*log, confidence) == pytest.approx(-reference.slope - swing, rel=1e-6, abs=1e-6)
    assert burn_rate_high(*log, confidence) == pytest.approx(-reference.slope + swing, rel=1e-6, abs=1e-6)


@given(logs(), st.randoms())
def test_the_order_of_a_log_does_not_matter(log, chance):
    rows = list(zip(*log, strict=True))
    chance.shuffle(rows)
    assert burn_rate(*zip(*rows, strict=True)) == pytest.approx(burn_rate(*log), rel=1e-9)


@given(logs(least=2))
def test_two_weighings_are_one_pair(log):
    (start, end), (before, after) = log[0][:2], log[1][:2]
    assume(after < before)
    rate = rate_of_one_burn(before, after, end - start)
    assert burn_rate([start, end], [before, after]) == pytest.approx(rate, rel=1e-9)
    told = burn_rate_between([start, end], [before, after])
    assert (told.low, told.high) == (None, None)


@given(logs(), st.floats(0.5, 0.98), st.floats(0.001, 0.019))
def test_more_confidence_is_a_wider_interval(log, confidence, more):
    one, two = burn_rate_between(*log, confidence), burn_rate_between(*log, confidence + more)
    assert two.low <= one.low <= one.rate <= one.high <= two.high


def band(log, hour, confidence):
    """How far a weighing to come may lie from the line, worked out apart from the library."""
    hours, weights = (numpy.array(values) for values in log)
    slope, start = numpy.polyfit(hours, weights, 1)
    scatter = math.sqrt(((weights - slope * hours - start) ** 2).sum() / (len(hours) - 2))
    away = (hour - hours.mean()) ** 2 / ((hours - hours.mean()) ** 2).sum()
    t = stats.t.ppf((1 + confidence) / 2, len(hours) - 2)
    return slope * hour + start, t * scatter * math.sqrt(1 + 1 / len(hours) + away)


@given(logs(), st.floats(200, 1400), st.floats(0.5, 0.99))
def test_at_the_ends_of_the_hours_left_the_band_lets_the_end_weight_in_and_out(log, end, confidence):
    told = hours_left_between(*log, min(end, log[1][-1] - 5), confidence)
    assume(told.low is not None)
    for left in (told.low, told.high):
        line, swing = band(log, max(log[0]) + left, confidence)
        assert abs(line - min(end, log[1][-1] - 5)) == pytest.approx(swing, rel=1e-5, abs=1e-4)
    assert told.low <= told.left <= told.high


@given(logs())
def test_the_interval_opens_as_the_line_is_drawn_on(log):
    widths = []
    for end in (1000, 600, 200):
        told = hours_left_between(*log, end)
        assume(told.low is not None)
        assert (told.low, told.high) == (hours_left_low(*log, end), hours_left_high(*log, end))
        widths.append(told.high - told.low)
    assert widths == sorted(widths)


@given(logs(), st.floats(0, 1000))
def test_hours_left_of_a_steady_candle_are_its_weight_over_its_rate(log, end):
    rate, hours = burn_rate(*log), log[0]
    steady = [1500 - rate * hour for hour in hours]
    assume(end < steady[-1])
    assert hours_left(hours, steady, end) == pytest.approx((steady[-1] - end) / rate, rel=1e-6)


@given(logs(), st.floats(50, 1000), st.floats(0, 0.9))
def test_a_label_never_promises_more_than_the_low_end(log, fill, part):
    told = burn_time_from_log(*log, fill, part * fill)
    assert told.label <= told.low + 1e-6 < told.low + 1
    assert told.low <= told.hours == pytest.approx(burn_time(fill, burn_rate(*log), part * fill))
    assert told.label == label_hours(fill, burn_rate_high(*log), part * fill)
    assert told.high is None or told.hours <= told.high


@given(st.lists(st.floats(2, 8), min_size=2, max_size=10), confidences)
def test_candles_together_are_as_the_reference_library_says(rates, confidence):
    assume(max(rates) - min(rates) > 1e-3)
    told, error = rates_of_candles(rates, confidence), stats.sem(rates)
    wanted = stats.t.interval(confidence, len(rates) - 1, loc=numpy.mean(rates), scale=error)
    assert (told.low, told.high) == pytest.approx(wanted, rel=1e-6)
    assert told.next_high == pytest.approx(fastest_candle(rates, confidence))
    assert told.next_low < told.low < told.mean < told.high < told.next_high


def test_intervals_are_right_as_often_as_they_say():
    chance = random.Random(2026)  # noqa: S311
    hours = [0, 4, 8, 12, 16]
    rates, left, tries = 0, 0, 2000
    for _ in range(tries):
        weights = [600 - 4 * hour + chance.gauss(0, 2) for hour in hours]
        told = burn_rate_between(hours, weights, 0.9)
        rates += told.low <= 4 <= told.high
        # A weighing at 30 hours, 14 after the last: the candle weighs 480 g there, give or take.
        then = hours_left_between(hours, weights, 480 + chance.gauss(0, 2), 0.9)
        left += then.low is not None and then.low <= 14 <= then.high
    # Three standard errors of a share of 0.9 in 2000 tries are 0.02.
    assert rates / tries == pytest.approx(0.9, abs=0.02)
    assert left / tries == pytest.approx(0.9, abs=0.02)


@given(logs(), st.floats(60, 120))
def test_a_pool_is_at_the_wall_when_its_line_is(log, diameter):
    hours = log[0]
    widths = [max(1.0, (1500 - weight) / (1500 - log[1][-1] + 1) * 55 + 1) for weight in log[1]]
    assume(max(widths) <= diameter)
    told = pool_forecast(hours, widths, diameter)
    assert told[:2] == pytest.approx((pool_growth(hours, widths), pool_time(hours, widths, diameter)))
    line = stats.linregress(hours, widths)
    assert line.intercept + line.slope * told.reaches == pytest.approx(diameter)
    assert ("beyond the last reading" in told.note) == (told.reaches > max(hours))


@given(st.lists(st.tuples(st.floats(1, 8), st.floats(10, 90)), min_size=2, max_size=8), st.floats(1, 8), confidences)
def test_a_flame_grows_in_step_with_its_rate(readings, rate, confidence):
    rates, heights = zip(*readings, strict=True)
    assert flame_height(2 * rate, rates, heights) == pytest.approx(2 * flame_height(rate, rates, heights))
    each = numpy.linalg.lstsq(numpy.array(rates)[:, None], numpy.array(heights), rcond=None)[0][0]
    assert flame_height(rate, rates, heights) == pytest.approx(rate * each, rel=1e-9)
    assert flame_height_high(rate, rates, heights, confidence) >= flame_height(rate, rates, heights) - 1e-9


# Graybill and Iyer, Regression Analysis (1994), p. 431, second-hand: 103.995 for a reading of 104 (printed).
def test_a_place_on_the_line_follows_the_textbook():
    line = statistics.line(range(96, 111, 2), [95.71, 98.16, 99.52, 102.09, 103.79, 106.18, 108.14, 110.21])
    assert line.where(104) == pytest.approx(103.995, abs=5e-4)
    assert line.at(line.where(104)) == pytest.approx(104)
