"""Cells for any declared function: those that Python takes, and those with one slip of each kind in them.

in_range(declared)            cases with an answer
slips(declared)               one argument spoiled in each way there is
refused_together(declared)    each argument in range, and still no answer
expected(case)                what Python says: the answer, or None where it refuses
"""

import random
from functools import cache
from itertools import islice
from typing import NamedTuple

from samples import drawn, in_a_cell, samples

from candlecalc.calc import REGISTRY
from candlecalc.declaration.declared import LARGEST

CASES_EACH, REFUSED_EACH, TRIES = 8, 6, 150


class Case(NamedTuple):
    declared: object
    slip: str  # what is wrong in the cells, or "" where nothing is
    cells: dict  # argument -> what stands in its cell, a list for its cells; None is a blank one


def expected(case):
    """Python's answer, or None where it refuses."""
    # A blank cell of an optional argument is one left out.
    given = {name: value for name, value in case.cells.items() if not _left_out(case.declared, name, value)}
    try:
        return in_a_cell(case.declared.checked(**given))
    except ValueError:
        return None


def _left_out(declared, name, value):
    return value is None and declared.arguments[name].optional


@cache
def _samples(name):
    return samples(REGISTRY[name], CASES_EACH)


def in_range(declared):
    """Every argument in a cell; then those that may be, left out; then those in blank cells."""
    taken = _samples(declared.name)
    for values in taken:
        yield Case(declared, "", values)
    optional = {name for name, argument in declared.arguments.items() if argument.optional}
    for values in taken[:4] if optional else []:
        left = {name: value for name, value in values.items() if name not in optional}
        for case in (Case(declared, "", left), Case(declared, "", {**left, **dict.fromkeys(optional)})):
            if expected(case) is not None:
                yield case


def slips(declared):
    """One argument spoiled in each way there is, the others as in a case that is taken."""
    return [case for case in _spoiled(declared) if expected(case) is None]


def _spoiled(declared):
    for values, (name, argument) in zip(
        _over_and_over(_samples(declared.name)[:4]), _arguments(declared), strict=False
    ):
        for slip, wrong in _wrong(argument, values[name]):
            yield Case(declared, f"{name}: {slip}", {**values, name: wrong})


def _arguments(declared):
    return [pair for pair in declared.arguments.items() for _ in range(2)]


def _over_and_over(values):
    while True:
        yield from values


def _wrong(argument, value):
    term = argument.term
    if term.many:
        yield from _wrong_lists(term, value)
        return
    yield "text", "twelve"
    yield "TRUE", True
    if term.choices:
        yield "a number", 5
    if not argument.optional and not term.blank:
        yield "blank", None
    yield from _wrong_numbers(term, value)


def _wrong_numbers(term, value):
    if not term.is_number:
        return
    if term.low > -LARGEST:
        yield "too low", term.low if term.low_excluded else term.low - 0.001
    yield "too high", 2 * LARGEST if term.high >= LARGEST else term.high + 0.001
    if term.whole and term.takes(value + 1):
        yield "not whole", value + 0.5


def _wrong_lists(term, values):
    yield "text in it", [*values, "twelve"]
    yield "a number as text", [*values, "1"]
    yield "TRUE in it", [*values, True]
    yield "blank in it", [values[0], None, *values[1:], *values[:1]]
    yield "blank first", [None, *values]
    yield "all blank", [None, None]
    yield "one more than the others", [*values, values[-1]]
    for slip, wrong in _wrong_numbers(term, values[0]):
        yield slip, [*values[1:], wrong]


def refused_together(declared):
    """Arguments each in range that Python refuses together, or for what they would come to."""
    chance = random.Random(f"{declared.name} refused")  # noqa: S311
    tries = [*_at_zero(declared), *(drawn(declared, chance) for _ in range(TRIES))]
    cases = (Case(declared, "together", values) for values in tries)
    return islice((case for case in cases if expected(case) is None), REFUSED_EACH)


def _at_zero(declared):
    """Each argument in turn at 0, where its own range takes that; then all of them, lists too."""
    taken = _samples(declared.name)[-1]
    may = {name: argument.term for name, argument in declared.arguments.items() if argument.term.is_number}
    nothing = {name: [0] * len(taken[name]) if term.many else 0 for name, term in may.items() if term.takes(0)}
    yield from ({**taken, name: 0} for name in nothing if not may[name].many)
    yield {**taken, **nothing}


def beyond_any_maker(case):
    """Whether all that is wrong is an answer above 1e12, the end of every range."""
    result = case.declared.result
    try:
        return result.high == LARGEST < abs(case.declared.bare(**case.cells))
    except (ValueError, ArithmeticError, LookupError):
        return False
