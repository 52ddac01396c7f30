"""Converting between units, against the defined values."""

import pytest

# NIST Handbook 44, Appendix C, tables of units of measurement: the exact values, from memory.
DEFINED = [  # one of, how many of, the other
    ("lb", 453.59237, "g"),
    ("oz", 28.349523125, "g"),
    ("lb", 16, "oz"),
    ("fl oz", 29.5735295625, "ml"),
    ("US fl oz", 29.5735295625, "ml"),
    ("imp fl oz", 28.4130625, "ml"),  # a 160th of 4.54609 l: Weights and Measures Act 1985 (UK), from memory
    ("in", 25.4, "mm"),
    ("kg", 1000, "g"),
    ("l", 100, "cl"),
    ("h", 60, "min"),
]


@pytest.mark.parametrize("unit, many, other", DEFINED)
def test_a_unit_is_its_defined_number_of_another(face, unit, many, other):
    assert face.convert(1, unit, other) == pytest.approx(many, rel=1e-15)
    assert face.convert(many, other, unit) == pytest.approx(1, rel=1e-15)


# The scale by its definition, t/F = 1.8 t/C + 32 (NIST Handbook 44, Appendix C, from memory): water freezes
# at 32 F and boils at 212 F, and -40 is the same on both.
def test_degrees_apart_are_turned_without_the_zero_of_the_scale(face):
    # NIST SP 811 (2008), appendix B.8: one degree Fahrenheit is 0.5555556 of a degree Celsius (and of a kelvin).
    assert face.convert(1, "F difference", "C difference") == pytest.approx(0.5555556, abs=5e-8)
    with face.refuses('"F difference" is for a difference in temperature and "C" for a temperature'):
        face.convert(18, "F difference", "C")


@pytest.mark.parametrize("fahrenheit, celsius", [(32, 0), (212, 100), (-40, -40), (140, 60)])
def test_a_temperature_has_a_zero_of_its_own(face, fahrenheit, celsius):
    assert face.convert(fahrenheit, "F", "C") == pytest.approx(celsius, abs=1e-12)
    assert face.convert(celsius, "C", "F") == pytest.approx(fahrenheit, abs=1e-12)


def test_units_of_two_kinds_are_told_apart(face):
    with face.refuses('"oz" is for a weight and "ml" for a volume'):
        face.convert(8, "oz", "ml")


def test_an_unknown_unit_is_named(face):
    with face.refuses('"stone" is no unit known here'):
        face.convert(8, "stone", "kg")
