"""The edge where text becomes a number: every spelling, and every text that is easily misread."""

import contextlib
import re
import signal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pint import UnitRegistry

from candlecalc.quantities import factors
from candlecalc.quantities.units import (
    DIMENSIONS,
    GRAMS,
    MILLIMETRES,
    NAMES,
    SPELLINGS,
    TEMPERATURES,
    between,
    convert,
    factor,
    kind_of,
    read,
    written,
)

# Defined, from memory: international yard and pound agreement of 1959 (1 lb = 0.45359237 kg,
# 1 yd = 0.9144 m); NIST Handbook 44, Appendix C (16 oz = 1 lb; 1 gal = 231 cubic inches = 128 fl oz).
INCH = Fraction("25.4")
POUND = Fraction("453.59237")
FLUID_OUNCE = 231 * Fraction("2.54") ** 3 / 128
# Weights and Measures Act 1985 (UK), from memory: a gallon is 4.54609 litres, and 160 fluid ounces.
IMPERIAL_FLUID_OUNCE = Fraction("4546.09") / 160

EXACT = {  # unit: (what a term calls its own unit, how many of those one makes)
    "gram": ("g", Fraction(1)),
    "kilogram": ("g", Fraction(1000)),
    "ounce": ("g", POUND / 16),
    "pound": ("g", POUND),
    "milliliter": ("ml", Fraction(1)),
    "centiliter": ("ml", Fraction(10)),
    "liter": ("ml", Fraction(1000)),
    "fluid_ounce": ("ml", FLUID_OUNCE),
    "imperial_fluid_ounce": ("ml", IMPERIAL_FLUID_OUNCE),
    "cup": ("ml", 8 * FLUID_OUNCE),
    "gallon": ("ml", 128 * FLUID_OUNCE),
    "imperial_gallon": ("ml", 160 * IMPERIAL_FLUID_OUNCE),
    "millimeter": ("mm", Fraction(1)),
    "centimeter": ("mm", Fraction(10)),
    "inch": ("mm", INCH),
    "minute": ("min", Fraction(1)),
    "hour": ("min", Fraction(60)),
    "day": ("days", Fraction(1)),
    "week": ("days", Fraction(7)),
    "common_year": ("days", Fraction(365)),
    "centimeter**2": ("cm2", Fraction(1)),
    "inch**2": ("cm2", Fraction("2.54") ** 2),
    "milligram/liter": ("mg/l", Fraction(1)),
    "gram/milliliter": ("g/ml", Fraction(1)),
    "kilogram/meter**3": ("g/ml", Fraction(1, 1000)),
    "percent": ("of wax weight", Fraction(1, 100)),
    "second": ("s", Fraction(1)),
    "watt": ("W", Fraction(1)),
    "kilowatt": ("W", Fraction(1000)),
    "kilojoule": ("kJ", Fraction(1)),
    "megajoule": ("kJ", Fraction(1000)),
    "kilowatt_hour": ("kJ", Fraction(3600)),
    "kilojoule/kilogram": ("kJ/kg", Fraction(1)),
    "megajoule/kilogram": ("MJ/kg", Fraction(1)),
    "kilojoule/kilogram/kelvin": ("kJ/(kg C)", Fraction(1)),
    "joule/kilogram/kelvin": ("kJ/(kg C)", Fraction(1, 1000)),
    "gram/hour": ("g/h", Fraction(1)),
    "ounce/hour": ("g/h", POUND / 16),
    "millimeter/hour": ("mm/h", Fraction(1)),
    "inch/hour": ("mm/h", INCH),
}


def refused(words):
    return pytest.raises(ValueError, match=words)


# Spellings


@pytest.mark.parametrize("spelling", [name for name, unit in SPELLINGS.items() if "deg" not in unit])
def test_every_spelling_is_read_with_its_exact_factor(spelling):
    unit, one = EXACT[SPELLINGS[spelling]]
    assert read(f"2.5 {spelling}", unit) == (float(one * Fraction("2.5")), SPELLINGS[spelling])
    assert read(f"2.5{spelling.upper()}", unit).value == float(one * Fraction("2.5"))


@pytest.mark.parametrize("spelling", [name for name, unit in SPELLINGS.items() if unit == "degF"])
def test_every_spelling_of_fahrenheit_is_a_temperature(spelling):
    assert read(f"212 {spelling}", "C") == (100, "degF")


@pytest.mark.parametrize("spelling", [name for name, unit in SPELLINGS.items() if unit == "degC"])
def test_every_spelling_of_celsius_is_a_temperature(spelling):
    assert read(f"80{spelling}", "C") == (80, "degC")


# A degree F is five ninths of a degree C: NIST SP 811 (2008), B.8. Where on the scale, and how far apart on it, are
# two things: 18 F is 7.8 below zero, and 18 F more is 10 C more.
@pytest.mark.parametrize("spelling", [name for name, unit in SPELLINGS.items() if unit == "degF"])
def test_a_difference_in_temperature_has_no_zero_of_its_own(spelling):
    assert read(f"18 {spelling}", "C difference") == (10, "delta_degF")
    assert read(f"18 {spelling}", "C").value == pytest.approx(-70 / 9)
    assert read("10 C", "C difference") == (10, "delta_degC")
    assert read("-9 F", "C difference").value == -5


def test_a_term_in_fahrenheit_takes_both_scales_too():
    assert read("80 C", "F").value == 176
    assert read("176", "F").value == read("176 F", "F").value == 176
    assert read("5 C", "F difference").value == read("9 F", "F difference").value == 9


# Text that is easily misread

READ = [
    ("180 F", "C", float(Fraction(740, 9))),
    ("-4 F", "C", -20),
    ("-40 C", "C", -40),
    ("\u22125 C", "C", -5),
    ("454 gr", "g", 454),  # not grains
    ("8 fl oz", "ml", 236.588236500),
    ("8 fl. oz.", "ml", 236.588236500),
    ("8fl oz", "ml", 236.588236500),
    ("8 US fl oz", "ml", 236.588236500),
    ("8 imp fl oz", "ml", 227.3045),
    ("8 UK fl. oz.", "ml", 227.3045),
    ("8 cc", "ml", 8),  # not a cubic something
    ("1,5 kg", "g", 1500),
    ("0,125 kg", "g", 125),
    ("12,5 %", "of wax weight", 0.125),
    ("8%", "of wax weight", 0.08),
    ("0.08", "of wax weight", 0.08),
    ("5 lb 4 oz", "g", float(POUND * Fraction("5.25"))),
    ("5lb4oz", "g", float(POUND * Fraction("5.25"))),
    ("5 lb 2 oz", "g", float(POUND * Fraction("5.125"))),
    ("5lb3oz", "g", float(POUND * Fraction("5.1875"))),
    ("1 1/2 lb", "g", float(POUND * Fraction("1.5"))),
    ("1/2 oz", "g", float(POUND / 32)),
    ("\u00bd lb", "g", float(POUND / 2)),
    ("1\u00bd lb", "g", float(POUND * Fraction("1.5"))),
    ("1\u20442 lb", "g", float(POUND / 2)),
    ("5 lb 1 1/2 oz", "g", float(POUND * Fraction("81.5") / 16)),
    ("2 7/8 in", "mm", float(INCH * Fraction("2.875"))),
    ('2\u215e"', "mm", float(INCH * Fraction("2.875"))),
    ("10 1/2", "", 10.5),
    ("1/2 %", "of wax weight", 0.005),
    ("1.75''", "mm", 44.45),
    ("1.75\u2019\u2019", "mm", 44.45),
    ("10 percent", "of wax weight", 0.1),
    ("10 per cent", "of wax weight", 0.1),
    ("8% of wax weight", "of wax weight", 0.08),
    ("14 days", "days", 14),
    ("2 weeks", "days", 14),
    ("1 year", "days", 365),
    ("36 h", "days", 1.5),
    ("12 sq in", "cm2", 77.4192),
    ("4 in2", "cm2", 25.8064),
    ("4 in^2", "cm2", 25.8064),
    ("100 cm2", "cm2", 100),
    ("100 cm\u00b2", "cm2", 100),
    ("0.5 mg/l", "mg/l", 0.5),
    ("4 times", "times", 4),
    ("0.0008 per C", "per C", 0.0008),
    ('3"', "mm", 76.2),
    ("3\u2033", "mm", 76.2),
    ("2.5 in.", "mm", 63.5),
    ("12\u00a0oz", "g", float(POUND * 12 / 16)),
    ("12\u202foz", "g", float(POUND * 12 / 16)),
    ("  340  ", "g", 340),
    (".5 kg", "g", 500),
    ("0.9 g/cm3", "g/ml", 0.9),
    ("900 kg/m3", "g/ml", 0.9),
    ("1.5 h", "min", 90),
    ("20 sec", "s", 20),
    ("1.5 kW", "W", 1500),
    ("0,1 kWh", "kJ", 360),
    ("2100 J/(kg K)", "kJ/(kg C)", 2.1),
    ("2.1 kJ/kg \u00b0C", "kJ/(kg C)", 2.1),
    ("1 oz/h", "g/h", 28.349523125),
    ("90 min", "h", 1.5),
    ("12.50", "money", 12.5),
    ("24", "", 24),
    ("1234.5", "money", 1234.5),
    ("\u00a34.50", "money", 4.5),
    ("$24", "money", 24),
    ("24 \u20ac", "money", 24),
    ("24,50 \u20ac", "money", 24.5),
    ("GBP 4.50", "money", 4.5),
    ("4.50gbp", "money", 4.5),
    ("US$ 24", "money per unit", 24),
    ("-\u00a34.50", "money", -4.5),
    ("\u00a3-4.50", "money", -4.5),
    ("$15/h", "money per h", 15),
    ("\u00a315 an hour", "money per h", 15),
    ("15 per h", "money per h", 15),
]


@pytest.mark.parametrize("text, unit, value", READ)
def test_text_is_read_as_a_maker_means_it(text, unit, value):
    assert read(text, unit).value == pytest.approx(value, rel=1e-15)


def test_the_unit_written_is_told():
    assert read("12 oz", "g").unit == "ounce"
    assert read("5 lb 4 oz", "g").unit == "ounce"  # the smaller: an answer may be smaller still
    assert read("340", "g").unit == ""
    assert read("$4.50", "money").unit == "money"
    assert read("4.50", "money").unit == ""


def test_a_quantity_is_read_in_the_unit_it_is_written_in():
    assert written("12 oz") == (12, "ounce")
    assert written("1 lb 4 oz") == (20, "ounce")
    assert written("-4 F") == (-4, "degF")
    for text in ("12", "1 lb 4"):
        with refused("a unit is missing beside a number"):
            written(text)


REFUSED = [
    ("1,234 g", "g", '"1,234" can be read two ways: write 1.234 or 1234'),
    ("1,234", "money", '"1,234" can be read two ways'),
    ("12,345 kg", "g", '"12,345" can be read two ways: write 12.345 or 12345'),
    ("1,234.50", "money", "leave out thousands marks, as in 1234.5"),
    ("1.234,50", "money", "leave out thousands marks"),
    ("1,234,567 g", "g", "leave out thousands marks"),
    ("1.234.567 g", "g", "leave out thousands marks"),
    ("1 234 g", "g", "a unit is missing beside a number"),
    ("1\u00a0234 g", "g", "a unit is missing beside a number"),
    ("1\u202f234", "money", "it takes an amount of money such as 12.50"),
    ("5 lb 4", "g", "a unit is missing beside a number"),
    ("4 oz 5 lb", "g", "only pounds and ounces are read together"),
    ("1 kg 200 g", "g", "only pounds and ounces are read together"),
    ("-5 lb 4 oz", "g", "a minus is read before one number only"),
    ("5 lb -4 oz", "g", "is no unit known here"),
    ("--5 g", "g", "it takes a weight such as"),
    ("-", "g", "it takes a weight such as"),
    ("5 furlongs", "mm", '"furlongs" is no unit known here; it takes a length such as 75 or "3 in"'),
    ("1e5 g", "g", '"e" is no unit known here'),
    ("2*3 g", "g", "is no unit known here"),
    ("$12", "g", "it takes a weight such as"),
    ("$12", "", "it takes a number such as 24"),
    ("$1,250", "money", '"1,250" can be read two ways'),
    ("$12 \u00a3", "money", "it takes an amount of money such as 12.50"),
    ("12 ABC", "money", '"abc" is no unit known here; it takes an amount of money'),
    ("50\u00a2", "money", "is no unit known here"),
    ("1 year 2 weeks", "days", "only pounds and ounces are read together"),
    ("6 months", "days", '"months" is no unit known here; it takes a number of days such as 14 or "2 weeks"'),
    ("2 oz", "days", '"2 oz" is a weight; it takes a number of days'),
    ("3 in", "cm2", '"3 in" is a length; it takes an area such as 90 or "14 sq in"'),
    ("1/0 oz", "g", '"1/0" is no number'),
    ("1 5/4 oz", "g", '"1 5/4" is no number: a fraction is written as in 2 7/8'),
    ("1.5 1/2 oz", "g", "a unit is missing beside a number"),
    ("5/12/2026", "", "it takes a number such as 24"),
    ("12 g", "money", '"12 g" is a weight; it takes an amount of money'),
    ("12 g", "", '"12 g" is a weight; it takes a number such as 24'),
    ("8 g", "of wax weight", '"8 g" is a weight; it takes a share such as 0.08 or "8%"'),
    ("8%", "g", '"8 %" is a share; it takes a weight'),
    ("8%", "", '"8 %" is a share; it takes a number'),
    ("180 F", "g", '"180 f" is a temperature; it takes a weight'),
    ("3 in", "C", '"3 in" is a length; it takes a temperature such as 80 or "176 F"'),
    ("5 min", "g/ml", '"5 min" is a time; it takes a density'),
    ("10 g", "C difference", '"10 g" is a weight; it takes a difference in temperature such as 10 or "18 F"'),
    ("190 kJ/kg", "kJ/(kg C)", '"190 kj/kg" is a heat by weight; it takes a specific heat'),
    ("2 kWh", "W", '"2 kwh" is an amount of heat; it takes a power such as 1500 or "1.5 kW"'),
    ("4 mm/h", "g/h", '"4 mm/h" is a growth; it takes a rate of burning'),
    ("8 oz", "ml", '"8 oz" is a weight; .*Did you mean 8 US fl oz, or 8 oz of water weighed?'),
    ("8 fl oz", "g", '"8 fl oz" is a volume; .*Did you mean 8 oz on the scale?'),
    ("", "g", "it is empty; it takes a weight"),
    ("\u00a0", "g", "it is empty"),
    ("g", "g", "it takes a weight such as"),
    (".", "g", "it takes a weight such as"),
    ("nan g", "g", "it takes a weight such as"),
    ("inf", "g", "it takes a weight such as"),
]


@pytest.mark.parametrize("text, unit, words", REFUSED)
def test_text_that_cannot_be_read_one_way_is_refused(text, unit, words):
    with refused(words.replace("?", r"\?")):
        read(text, unit)


def test_text_is_never_evaluated():
    # Worked out, this number would have 300 million digits.
    with refused(re.escape('"**" is no unit known here')):
        read("9**9**9 g", "g")


@given(st.text(max_size=12))
def test_any_text_is_read_or_refused(text):
    try:
        assert isinstance(read(text, "g").value, float)
    except ValueError as problem:
        assert str(problem)


# Kinds


@pytest.mark.parametrize("unit, kind", [(unit, kind) for unit, (kind, _) in DIMENSIONS.items()])
def test_a_unit_of_a_term_is_a_kind_of_thing(unit, kind):
    assert kind_of(unit) == kind


def test_other_units_of_a_term_are_shares_money_or_numbers():
    assert kind_of("of wax weight") == "a share"
    assert kind_of("money per h") == "an amount of money"
    assert kind_of("") == "a number"


# Factors

FACTORS = [  # unit, to, exactly
    ("pound", "gram", POUND),
    ("ounce", "gram", POUND / 16),
    ("inch", "millimeter", INCH),
    ("fluid_ounce", "milliliter", FLUID_OUNCE),
    ("pound", "ounce", Fraction(16)),
    ("kilogram", "gram", Fraction(1000)),
    ("inch", "centimeter", Fraction("2.54")),
    ("hour", "minute", Fraction(60)),
    ("pound", "kilogram", POUND / 1000),
    ("ounce", "kilogram", POUND / 16000),
    ("fluid_ounce", "liter", FLUID_OUNCE / 1000),
    ("kilogram", "pound", 1000 / POUND),
    ("kilogram", "ounce", 16000 / POUND),
    ("gram", "ounce", 16 / POUND),
    ("liter", "fluid_ounce", 1000 / FLUID_OUNCE),
]


def test_the_units_that_workbooks_are_made_in_are_the_defined_ones():
    assert {unit: between(1, unit, "g") for unit in GRAMS} == GRAMS
    assert {unit: between(1, unit, "mm") for unit in MILLIMETRES} == MILLIMETRES


def test_the_factors_used_here_are_the_defined_ones():
    assert [float(one) for one in (POUND / 16, FLUID_OUNCE)] == [28.349523125, 29.5735295625]


@pytest.mark.parametrize("unit, to, exactly", FACTORS)
def test_a_factor_is_exact_by_definition(unit, to, exactly):
    assert factor(unit, to) == float(exactly)


# NIST Handbook 44, Appendix C, from memory: the fixed points of the two scales.
@pytest.mark.parametrize("celsius, fahrenheit", [(0, 32), (100, 212), (-40, -40)])
def test_temperatures_have_a_zero_of_their_own(celsius, fahrenheit):
    assert convert(celsius, "degC", "degF") == fahrenheit
    assert convert(fahrenheit, "degF", "degC") == celsius


FAMILIES = [
    ["gram", "kilogram", "ounce", "pound"],
    ["milliliter", "centiliter", "liter", "fluid_ounce"],
    ["millimeter", "centimeter", "inch"],
    ["minute", "hour"],
    ["gram/milliliter", "kilogram/meter**3"],
    ["degC", "degF"],
    ["delta_degC", "delta_degF"],
    ["watt", "kilowatt"],
    ["kilojoule", "kilowatt_hour"],
    ["kilojoule/kilogram/kelvin", "joule/kilogram/kelvin"],
    ["gram/hour", "ounce/hour"],
]
pairs = st.sampled_from(FAMILIES).flatmap(lambda family: st.tuples(*2 * [st.sampled_from(family)]))


@given(st.floats(-1e6, 1e6), pairs)
def test_there_and_back_gives_the_same(value, pair):
    unit, to = pair
    assert convert(convert(value, unit, to), to, unit) == pytest.approx(value, rel=1e-14, abs=1e-12)


@given(st.integers(0, 10**6), st.sampled_from(["g", "oz", "lb", "kg"]))
def test_a_comma_and_a_point_say_the_same(tenths, unit):
    point = f"{tenths / 10:.1f} {unit}"
    assert read(point.replace(".", ","), "g") == read(point, "g")


# The whole table against pint's own definitions, in fractions: floats reach some factors through metres and litres.
PINT = UnitRegistry(non_int_type=Fraction)


@pytest.mark.parametrize("unit", sorted(factors.SIZES))
def test_what_a_unit_measures_and_comes_to_is_what_pint_says(unit):
    for other in factors.SIZES:
        # To pint a percentage is a number; here it is a share, and nothing else is. A temperature is no difference.
        alike = PINT.Unit(unit).dimensionality == PINT.Unit(other).dimensionality
        alike = alike and (unit in TEMPERATURES) == (other in TEMPERATURES)
        assert factors.alike(unit, other) == (unit == other if "percent" in (unit, other) else alike)
        if factors.alike(unit, other) and not {unit, other} & TEMPERATURES:
            assert Fraction(*factors.exact(unit, other)) == PINT.Quantity(Fraction(1), unit).to(other).magnitude


def test_every_unit_that_is_read_or_answered_in_is_in_the_table():
    named = {*SPELLINGS.values(), *NAMES, *(unit for _, unit in DIMENSIONS.values())}
    assert named | {f"delta_{unit}" for unit in TEMPERATURES} == set(factors.SIZES)


# Text that would take long


LONG = ["9{}!", "10-20{}!", "${}!", "{}9", "9{}h", "9 {}/ h", "USD 9{}x", "1g{}", "9.{}!", "1/{}!"]
FILLINGS = [" ", "1", "1 ", "1g", "-", ".", "/", " /", "1,", " per"]


@pytest.mark.parametrize("unit", ["money", "money per h", "g", "of wax weight", "", "days"])
@pytest.mark.parametrize("shape", LONG)
def test_a_long_text_is_read_or_refused_before_anybody_gives_up(shape, unit):
    for filling in FILLINGS:
        with given_up(filling), contextlib.suppress(ValueError):
            read(shape.format(filling * 20_000), unit)


@contextlib.contextmanager
def given_up(what, seconds=10):
    """Break off what has no end in sight: the square of twenty thousand steps took half a minute."""

    def give_up(*_):
        raise TimeoutError(f"no end in sight: {what}")

    before = signal.signal(signal.SIGVTALRM, give_up)
    signal.setitimer(signal.ITIMER_VIRTUAL, seconds)
    try:
        yield
    finally:
        signal.setitimer(signal.ITIMER_VIRTUAL, 0)
        signal.signal(signal.SIGVTALRM, before)
