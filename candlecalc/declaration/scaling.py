"""Whether a function's native form is right in any unit of weight, or needs a factor.

A function that scales with its weights (twice the wax, twice the oil) says the same in grams and in
ounces. That is found by calling it at scaled arguments, never by a flag that someone types.
"""

import math
import random
from functools import cache
from typing import Any, Dict

import candlecalc.declaration.native as native
import candlecalc.quantities.units as units
from candlecalc.declaration.declared import REGISTRY, Function, Term

# How a number changes when the unit of weight (of length) is made k times smaller.
EXPONENTS: Dict[str, Dict[str, int]] = {"g": {"g": 1, "g/h": 1, "money per g": -1}, "mm": {"mm": 1, "mm/h": 1}}
SCALE = units.GRAMS["oz"]


@cache
def scales_with(name: str, unit: str) -> bool:
    """Whether the declared function is right in any unit of `unit`'s kind ("g" or "mm") without a factor.

    >>> import candlecalc
    >>> scales_with("oil_for_wax", "g"), scales_with("fill_weight", "g")
    (True, False)
    """
    formula = REGISTRY[name]
    powers = EXPONENTS[unit]
    if formula.fields or not all(
        argument.term.is_number or argument.term.choices for argument in formula.arguments.values()
    ):
        return False  # nothing to draw, or nothing to scale
    if not any(_power(argument.term, powers) for argument in formula.arguments.values()):
        return not _power(formula.result, powers)
    for seed in range(3):
        values = example(formula, random.Random(seed))  # noqa: S311
        scaled = {key: _scaled(value, formula.arguments[key].term, powers) for key, value in values.items()}
        wanted = _scaled(formula.bare(**values), formula.result, powers)
        if not _close(formula.bare(**scaled), wanted):
            return False
    return True


def example(formula: Function, draw: random.Random) -> Dict[str, Any]:
    """Arguments inside every range that keep what the function asks of them together."""
    conditions = [native.compile_python(native.parse(condition)) for condition in formula.requires]
    for _ in range(10_000):
        values = {name: _drawn(argument.term, draw) for name, argument in formula.arguments.items()}
        try:
            if all(condition(values) for condition in conditions):
                formula.checked(**values)
                return values
        except ValueError:
            continue
    raise ValueError(f"{formula.name}: no example found within its ranges")


def _drawn(term: Term, draw: random.Random) -> Any:
    if term.choices:
        return draw.choice(term.choices)
    if term.many:
        values = [_number(term, draw) for _ in range(3)]
        # Parts of a blend add up to 1.
        return [value / sum(values) for value in values] if term.unit == "of the blend" else values
    return _number(term, draw)


def _number(term: Term, draw: random.Random) -> float:
    low, high = max(term.low, -50.0), min(term.high, 500.0)
    value = low + (high - low) * draw.uniform(0.01, 0.99)
    return float(max(math.ceil(low), int(value))) if term.whole else value


def _power(term: Term, powers: Dict[str, int]) -> int:
    return powers.get(term.unit, 0)


def _scaled(value: Any, term: Term, powers: Dict[str, int]) -> Any:
    power = _power(term, powers)
    if not power:
        return value
    if isinstance(value, list):
        return [each * SCALE**power for each in value]
    return value * SCALE**power


def _close(got: Any, wanted: Any) -> bool:
    if isinstance(got, list):
        return all(_close(a, b) for a, b in zip(got, wanted))
    # Some functions round at the sixth decimal on their way.
    return math.isclose(got, wanted, rel_tol=1e-6, abs_tol=1e-5)
