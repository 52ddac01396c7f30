"""Burning against certified regressions, calibration examples and textbook intervals.

No open data on container candles was found, so the logs are other people's readings: what was set stands for
the hours, and what was read, counted down from a round number, for the weights.
"""

import math

import pytest

from candlecalc.quantities.statistics import t_quantile

# NIST/ITL Statistical Reference Datasets, Norris.dat: ozone monitors, x then y. Certified: intercept
# -0.262323073774029, slope 1.00211681802045, its standard deviation 0.000429796848199937.
NORRIS_X = [0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0,
            447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3,
            229.2, 669.1, 448.9, 0.5]  # fmt: skip
NORRIS_Y = [0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3,
            448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6,
            228.9, 668.4, 449.2, 0.2]  # fmt: skip
SLOPE, SLOPE_SWING, INTERCEPT = 1.00211681802045, 0.000429796848199937, -0.262323073774029
BURNT_DOWN = [1000 - y for y in NORRIS_Y]


def test_a_rate_of_burning_follows_the_certified_slope(face):
    assert face.burn_rate(NORRIS_X, BURNT_DOWN) == pytest.approx(SLOPE, rel=1e-12)
    assert face.pool_growth(NORRIS_X, NORRIS_Y) == pytest.approx(SLOPE, rel=1e-12)


@pytest.mark.parametrize("confidence", [0.95, 0.99, 0.5])
def test_its_interval_follows_the_certified_standard_deviation(face, confidence):
    swing = t_quantile((1 + confidence) / 2, 34) * SLOPE_SWING
    assert face.burn_rate_low(NORRIS_X, BURNT_DOWN, confidence) == pytest.approx(SLOPE - swing, rel=1e-11)
    assert face.burn_rate_high(NORRIS_X, BURNT_DOWN, confidence) == pytest.approx(SLOPE + swing, rel=1e-11)


def test_hours_are_read_off_the_certified_line(face):
    # At 1999 the line with the certified slope and intercept stands at 1995.04 (worked).
    when = (1999 - INTERCEPT) / SLOPE
    weights = [3000 - y for y in NORRIS_Y]
    assert face.hours_left(NORRIS_X, weights, 3000 - 1999) == pytest.approx(when - 999, rel=1e-11)
    assert face.pool_time(NORRIS_X, NORRIS_Y, 1999) == pytest.approx(when, rel=1e-11)
    with face.refuses("the pool cannot be wider than the vessel"):
        face.pool_time(NORRIS_X, NORRIS_Y, 998)


# ISO/TS 28037:2010, appendix E, as the documentation of GTC (MSLNZ) gives it: slope 1.964, u 0.041; 4.751(97) for a
# response of 10.5 (printed).
ISO_X, ISO_Y = [1, 2, 3, 4, 5, 6], [3.014, 5.225, 7.004, 9.061, 11.201, 12.762]


def test_six_readings_follow_the_example_of_the_standard(face):
    weights = [20 - y for y in ISO_Y]
    t = t_quantile(0.975, 4)
    assert face.burn_rate(ISO_X, weights) == pytest.approx(1.964, abs=5e-4)
    assert (face.burn_rate(ISO_X, weights) - face.burn_rate_low(ISO_X, weights)) / t == pytest.approx(0.041, abs=5e-4)
    low, high = face.hours_left_low(ISO_X, weights, 20 - 10.5), face.hours_left_high(ISO_X, weights, 20 - 10.5)
    # The exact interval lies further out from the mean of the hours than the standard's own, which leaves out what the
    # slope may be off: by the share t2 u2 / slope2 (worked).
    share = (t * 0.041 / 1.964) ** 2
    assert (low + high) / 2 + 6 - 3.5 == pytest.approx((4.751 - 3.5) / (1 - share), abs=1e-3)
    assert (high - low) / 2 / t == pytest.approx(0.097, abs=1e-3)


# Graybill and Iyer, Regression Analysis (1994), p. 431, as the tests of the R package investr give it: a thermometer's
# reading of 104 lies between 103.4 and 104.6 (95 %), one of 100 between 99.63 and 100.59 (90 %; printed). The last of
# the readings is at 110.
THERMOMETER = ([96, 98, 100, 102, 104, 106, 108, 110], [95.71, 98.16, 99.52, 102.09, 103.79, 106.18, 108.14, 110.21])
BETWEEN = [(104, 0.95, 103.4, 104.6, 0.05), (100, 0.9, 99.63, 100.59, 0.005)]


@pytest.mark.parametrize("reading, confidence, low, high, half", BETWEEN)
def test_the_hours_left_lie_in_the_interval_of_the_textbook(face, reading, confidence, low, high, half):
    log = (THERMOMETER[0], [300 - read for read in THERMOMETER[1]], 300 - reading, confidence)
    assert face.hours_left_low(*log) + 110 == pytest.approx(low, abs=half)
    assert face.hours_left_high(*log) + 110 == pytest.approx(high, abs=half)


def test_two_weighings_give_a_rate_and_no_interval(face):
    # 16 g in 4 hours: arithmetic.
    between = face.burn_rate_between([0, 4], [612, 596])
    assert (between.rate, between.low, between.high) == (4, None, None)
    assert between.note == "two weighings give a rate without an interval: weigh more often"
    for low in (face.burn_time_from_log([0, 4], [612, 596], 220), face.hours_left_between([0, 4], [612, 596], 444)):
        assert low.low is None and low.high is None and low.note.startswith("two weighings")
    assert face.burn_time_from_log([0, 4], [612, 596], 220).label is None


def test_no_interval_is_worked_out_from_two_weighings(face):
    assert face.rate_of_one_burn(612, 596, 4) == face.burn_rate([0, 4], [612, 596]) == 4
    with face.refuses("an interval takes three weighings at least"):
        face.burn_rate_low([0, 4], [612, 596])
    with face.refuses("an interval takes three weighings at least"):
        face.burn_rate_high([0, 4], [612, 596])
    with face.refuses("an interval takes three weighings at least"):
        face.hours_left_low([0, 4], [612, 596], 444)


def test_a_log_that_does_not_fall_is_no_burn(face):
    with face.refuses("the weights must fall as the hours grow"):
        face.burn_rate([0, 4, 8], [612, 612, 612])
    with face.refuses("two weighings at different hours, at least, are wanted"):
        face.burn_rate([4, 4], [612, 596])
    with face.refuses("two weighings at different hours, at least, are wanted"):
        face.burn_rate([4], [612])
    with face.refuses("it must weigh less after the burn than before"):
        face.rate_of_one_burn(596, 612, 4)
    with face.refuses("weights is blank at place 2 of 3"):
        face.burn_rate([0, 4, 8], [612, None, 580])


def test_a_log_too_rough_gives_no_hours(face):
    # Weighings all over the place: the slope might as well be level (worked).
    with face.refuses("the weighings are too rough to say when"):
        face.hours_left_high([0, 1, 2], [600, 500, 590], 400)


# OpenStax, Introductory Statistics 2e, m47001: 15 values, mean 8.2267, 95 % from 7.3006 to 9.1527; 20 values, mean
# 127.45, 90 % from 117.41 to 137.49 (printed).
FIFTEEN = [8.6, 9.4, 7.9, 6.8, 8.3, 7.3, 9.2, 9.6, 8.7, 11.4, 10.3, 5.4, 8.1, 5.5, 6.9]
TWENTY = [79, 145, 147, 160, 116, 100, 159, 151, 156, 126, 137, 83, 156, 94, 121, 144, 123, 114, 139, 99]
CANDLES = [(FIFTEEN, 0.95, 8.2267, 7.3006, 9.1527, 5e-5), (TWENTY, 0.9, 127.45, 117.41, 137.49, 5e-3)]


@pytest.mark.parametrize("rates, confidence, mean, low, high, half", CANDLES)
def test_the_mean_of_several_candles_follows_the_textbook(face, rates, confidence, mean, low, high, half):
    between = face.rates_of_candles(rates, confidence)
    assert between.mean == pytest.approx(mean, abs=half)
    assert (between.low, between.high) == pytest.approx((low, high), abs=half)


@pytest.mark.parametrize("rates, confidence, mean, low, high, half", CANDLES)
def test_one_more_candle_lies_further_out_than_the_mean(face, rates, confidence, mean, low, high, half):
    # The swing of one more is that of the mean times the root of n + 1 (worked from the printed ends).
    more = math.sqrt(len(rates) + 1)
    assert face.fastest_candle(rates, confidence) == pytest.approx(mean + more * (high - mean), abs=2 * more * half)
    with face.refuses("the rates of two candles at least are wanted"):
        face.fastest_candle(rates[:1], confidence)


def test_wax_that_stays_is_a_cylinder(face):
    # OpenStax, Prealgebra 2e, m81328: radius 4, height 13, printed 653.12 with 3.14 for pi.
    assert face.wax_that_stays(80, 1, 130) * 3.14 / math.pi == pytest.approx(653.12, abs=1e-9)
    assert face.wax_that_stays(80, 1, 0) == 0
    with face.refuses("depth is -1; it takes 0 to 500 mm"):
        face.wax_that_stays(80, 1, -1)


# Arithmetic: what burns, over the rate. 168 g at 4 g/h, and at 4.75.
TIMES = [(220, 52, 4, 42, 42), (220, 52, 4.75, 168 / 4.75, 35), (220, 0, 5.5, 40, 40), (220, 220, 4, 0, 0)]


@pytest.mark.parametrize("fill, stays, rate, hours, label", TIMES)
def test_a_fill_burns_as_long_as_its_rate_says(face, fill, stays, rate, hours, label):
    assert face.burn_time(fill, rate, stays) == pytest.approx(hours)
    assert face.label_hours(fill, rate, stays) == label
    with face.refuses("more wax cannot stay than was poured"):
        face.label_hours(fill, rate, fill + 1)


def test_a_label_takes_the_low_end_rounded_down(face):
    # The log of ISO/TS 28037 once more: 12 g at 1.964 g/h, u 0.041, t 2.776 (NIST table): 5.77 to 6.49 hours (worked).
    told = face.burn_time_from_log(ISO_X, [20 - y for y in ISO_Y], 12)
    assert told.hours == pytest.approx(12 / 1.964, abs=2e-3)
    assert (told.low, told.high) == pytest.approx(
        (12 / (1.964 + 2.776 * 0.041), 12 / (1.964 - 2.776 * 0.041)), abs=5e-3
    )
    assert told.label == 5


# Lower heating values by heats of formation (CODATA, from memory: carbon dioxide -393.51, water vapour -241.83 kJ/mol)
# from -567.4 for solid octadecane C18H38 and -947.7 for solid stearic acid C18H36O2 (library chemicals, read there).
FUELS = [  # MJ/kg as the library gives it, carbon, hydrogen, oxygen, kJ/mol of the fuel
    (43.65, 18, 38, 0, -567.4),
    (36.87, 18, 36, 2, -947.7),
]


@pytest.mark.parametrize("printed, carbon, hydrogen, oxygen, formed", FUELS)
def test_heat_of_a_flame_follows_the_heat_of_its_wax(face, printed, carbon, hydrogen, oxygen, formed):
    weight = 12.011 * carbon + 1.008 * hydrogen + 15.999 * oxygen
    given = (393.51 * carbon + 241.83 * hydrogen / 2 + formed) / weight
    assert given == pytest.approx(printed, abs=0.01)
    # A gram an hour is 1/3600 g a second.
    assert face.burn_heat(1, printed) == pytest.approx(given * 1000 / 3600, abs=0.005)
    with face.refuses("rate is 0; it takes more than 0"):
        face.burn_heat(0, printed)


def test_a_taper_gives_the_heat_that_is_quoted_for_it(face):
    # An encyclopaedia, second-hand: 0.1 g a minute, "roughly 80 W". A bound on slips, no more.
    assert face.burn_heat(6) == pytest.approx(80, abs=11)


def test_an_hour_of_burning_costs_its_part(face):
    # Arithmetic, no source.
    assert face.cost_per_burn_hour(8.4, 42) == pytest.approx(0.2)
    assert face.cost_per_burn_hour(0, 42) == 0
    with face.refuses("hours is 0; it takes more than 0"):
        face.cost_per_burn_hour(8.4, 0)


# NIST/ITL Statistical Reference Datasets, NoInt1: a line through the origin, x 60 to 70, y 130 to 140. Certified: slope
# 2.07438016528926, its standard deviation 0.0165289256198347, residual standard deviation 3.56753034006338.
NO_INTERCEPT = (list(range(60, 71)), list(range(130, 141)))


@pytest.mark.parametrize("rate", [1e-3, 65, 1000])
def test_a_flame_in_step_with_its_rate_follows_the_certified_line(face, rate):
    assert face.flame_height(rate, *NO_INTERCEPT) == pytest.approx(2.07438016528926 * rate, rel=1e-12)
    swing = t_quantile(0.975, 10) * math.hypot(3.56753034006338, rate * 0.0165289256198347)
    assert face.flame_height_high(rate, *NO_INTERCEPT) == pytest.approx(2.07438016528926 * rate + swing, rel=1e-11)


def test_one_reading_of_a_flame_says_nothing_of_another(face):
    with face.refuses("readings at two rates at least are wanted"):
        face.flame_height(4, [4], [33])
    with face.refuses("readings at two rates at least are wanted"):
        face.flame_height_high(4, [4], [33])


# Common practice, no source: an hour for each inch across.
@pytest.mark.parametrize("inches", [2.5, 3, 4])
def test_the_usual_time_of_a_melt_pool_is_an_hour_an_inch(face, inches):
    assert face.usual_pool_time(f"{inches} in") == pytest.approx(inches)


def test_a_melt_pool_is_told_beside_what_is_usual(face):
    told = face.pool_forecast([1, 2, 3], [30, 50, 70], "4 in")
    assert told[:3] == pytest.approx((20, 4.58, 4))
    assert told.note.split("; ") == [
        "one hour an inch is common practice, not measured",
        "drawn on beyond the last reading",
        "past the four hours usual for one burn",
    ]
    with face.refuses("the pool must grow as the hours do"):
        face.pool_forecast([1, 2, 3], [75, 75, 75], 75)
