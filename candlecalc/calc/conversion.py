"""Measure: a value in another unit."""

from typing import Annotated

import candlecalc.quantities.units as units
from candlecalc.declaration.declared import LARGEST, Term, formula

EXACT = "units are defined by exact factors (international yard and pound agreement of 1959; US customary gallon)"

Measured = Annotated[float, Term("", "a value in the first unit", low=-LARGEST, unit_in="unit")]
Converted = Annotated[float, Term("", "the same in the second unit", low=-LARGEST, unit_in="to")]
Unit = Annotated[
    str,
    Term(
        "",
        "a unit as you write it: g, kg, oz, lb, ml, fl oz (the US one), imp fl oz, mm, in, C, F, F difference, min, h",
        text=True,
    ),
]
Wanted = Annotated[Unit, "the unit wanted, written the same way"]


@formula(
    no_native="it looks the units up in a table",
    source=EXACT,
    words="unit conversion, converter, metric, imperial, grams to ounces, Celsius to Fahrenheit, Fahrenheit to "
    "Celsius, inches to millimetres, temperature conversion, weight conversion, minutes to hours",
)
def convert(value: Measured, unit: Unit, to: Wanted) -> Converted:
    """A value in another unit of its kind, by exact factors: weights, volumes, lengths, temperatures, times.

    A spreadsheet's own CONVERT may be off in the seventh digit. C and F are
    temperatures on the scale, and "C difference" and "F difference" how far two
    are apart: 18 F is 8 C below zero, and 18 F more is 10 C more.

    >>> convert(value=12, unit="oz", to="g")
    340.1942775
    """
    try:
        return units.between(value, unit, to)
    except ValueError as problem:
        raise ValueError(f"convert: {problem}") from None
