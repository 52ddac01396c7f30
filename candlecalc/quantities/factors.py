"""What units measure, and the exact factors between them, by definition; tests compare every pair with pint.

Names are those of pint, so that its quantities are taken as they are. No package is needed to read a text.
"""

from fractions import Fraction
from typing import Dict, Tuple, Union

# International yard and pound agreement, 1959.
INCH, POUND = Fraction("2.54"), Fraction("453.59237")
# A US gallon is 231 cubic inches, of 128 fluid ounces; an imperial gallon 4.54609 litres, of 160.
GALLON, IMPERIAL_GALLON = 231 * INCH**3, Fraction("4546.09")

# What is measured -> each unit of it, and how many of the first of them make one.
KINDS: Dict[str, Dict[str, Union[int, Fraction]]] = {
    "weight": {"gram": 1, "kilogram": 1000, "ounce": POUND / 16, "pound": POUND},
    "volume": {
        "milliliter": 1,
        "centiliter": 10,
        "liter": 1000,
        "fluid_ounce": GALLON / 128,
        "cup": GALLON / 16,
        "gallon": GALLON,
        "imperial_fluid_ounce": IMPERIAL_GALLON / 160,
        "imperial_gallon": IMPERIAL_GALLON,
    },
    "length": {"millimeter": 1, "centimeter": 10, "inch": INCH * 10},
    "area": {"centimeter**2": 1, "inch**2": INCH**2},
    # A scale with a zero of its own has no factor; steps on it have.
    "temperature": {"degC": 1, "degF": 1},
    "difference in temperature": {"delta_degC": 1, "delta_degF": Fraction(5, 9)},
    "time": {"second": 1, "minute": 60, "hour": 3600, "day": 86400, "week": 604800, "common_year": 365 * 86400},
    "density": {"gram/milliliter": 1, "kilogram/meter**3": Fraction(1, 1000), "milligram/liter": Fraction("1e-6")},
    "power": {"watt": 1, "kilowatt": 1000},
    "heat": {"kilojoule": 1, "megajoule": 1000, "kilowatt_hour": 3600},
    "heat by weight": {"kilojoule/kilogram": 1, "megajoule/kilogram": 1000},
    "specific heat": {"kilojoule/kilogram/kelvin": 1, "joule/kilogram/kelvin": Fraction(1, 1000)},
    "rate of burning": {"gram/hour": 1, "ounce/hour": POUND / 16},
    "growth": {"millimeter/hour": 1, "inch/hour": INCH * 10},
    "share": {"percent": Fraction(1, 100)},
}
SIZES = {unit: (kind, Fraction(size)) for kind, sizes in KINDS.items() for unit, size in sizes.items()}


def alike(unit: str, other: str) -> bool:
    """Whether two units, as pint names them, measure the same kind of thing.

    A share is one of its own, and a temperature on a scale is no difference of two.
    """
    return SIZES[unit][0] == SIZES[other][0]


def exact(unit: str, to: str) -> Tuple[int, int]:
    """How many of `to` make one `unit`, over one another: numerator, denominator (no temperatures)."""
    factor = SIZES[unit][1] / SIZES[to][1]
    return factor.numerator, factor.denominator
