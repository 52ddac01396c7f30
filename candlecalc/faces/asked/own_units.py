"""The units and the currency that a question is asked in, and the unit that serves for its answer."""

from collections.abc import Iterator, Mapping
from typing import Any, NamedTuple

from candlecalc.declaration.declared import Function, Term
from candlecalc.faces.asked.typed import Currency, Typed
from candlecalc.quantities import units

# What who asks in ounces, inches or degrees F has on the bench, by what is measured.
CUSTOMARY = {
    "a weight": "pound",
    "a volume": "fluid_ounce",
    "a length": "inch",
    "an area": "inch**2",
    "a temperature": "degF",
    "a difference in temperature": "delta_degF",
    "a rate of burning": "ounce/hour",
    "a growth": "inch/hour",
}
IMPERIAL = ("imperial_fluid_ounce", "imperial_gallon")
ASKED_IN_CUSTOMARY = (*CUSTOMARY.values(), *IMPERIAL, "ounce", "cup", "gallon")
# A density in g/ml is a specific gravity, and times are everybody's: they say nothing of the scale on the bench.
ASKED_IN_METRIC = ("gram", "kilogram", "milliliter", "centiliter", "liter", "millimeter", "centimeter", "degC",
                   "centimeter**2", "gram/hour", "millimeter/hour")  # fmt: skip
# Below one of these the next is weighed or poured.
SMALLER = {"pound": "ounce", "kilogram": "gram", "liter": "milliliter", "gallon": "fluid_ounce", "cup": "fluid_ounce",
           "imperial_gallon": "imperial_fluid_ounce"}  # fmt: skip


class Written(NamedTuple):
    """A unit as it was typed beside a value, and the unit that its argument is counted in."""

    unit: str
    counted_in: str


def _typed(formula: Function, given: Mapping[str, Any]) -> Iterator[tuple[Term, Typed]]:
    """What was typed for each argument, list by list, without blanks."""
    for name, value in given.items():
        for text in value if isinstance(value, list) else [value]:
            if isinstance(text, Typed) and text:
                yield formula.arguments[name].term, text


def written(formula: Function, given: Mapping[str, Any]) -> list[Written]:
    """The units beside values, in the order they were typed."""
    read = [(term, text.reading) for term, text in _typed(formula, given) if term.unit in units.DIMENSIONS]
    return [Written(reading.unit, term.unit) for term, reading in read if reading and reading.unit]


def unit_for(result: Term, asked_in: list[Written]) -> str:
    """The unit to answer in, as pint names it; nothing where it is the one that the function counts in.

    It is the first that was typed of what the answer measures. Where none was, who asks in inches has an answer in
    fluid ounces. A function from one unit into another answers in the one it is for: degrees F into C.
    """
    kind = units.kind_of(result.unit)
    alike = [each for each in asked_in if units.kind_of(each.counted_in) == kind]
    if result.unit not in units.DIMENSIONS or result.unit == "days":
        return ""
    if alike:
        return next((each.unit for each in alike if each.counted_in == result.unit), "")
    said = [each.unit for each in asked_in]
    first = next((unit for unit in said if unit in ASKED_IN_CUSTOMARY or unit in ASKED_IN_METRIC), "")
    if first not in ASKED_IN_CUSTOMARY:
        return ""
    return IMPERIAL[0] if kind == "a volume" and set(IMPERIAL) & set(said) else CUSTOMARY.get(kind, "")


def handy(value: Any, result: Term, unit: str) -> str:
    """The unit in which so much is weighed or poured: ounces below a pound, and pounds and ounces above."""
    if value is None or unit not in SMALLER:
        return unit
    if abs(units.convert(value, units.DIMENSIONS[result.unit][1], unit)) < 1:
        return SMALLER[unit]
    return units.POUNDS_AND_OUNCES if unit == "pound" else unit


def currency(formula: Function, given: Mapping[str, Any]) -> Currency:
    """The currency that amounts were typed with; a ValueError where they were typed with two."""
    found = [text.currency for _, text in _typed(formula, given) if text.currency.mark]
    marks = list(dict.fromkeys(each.mark for each in found))
    if len(marks) > 1:
        raise ValueError(f"amounts are in {marks[0]} and in {marks[1]}: give all of them in one currency")
    return found[0] if found else Currency()
