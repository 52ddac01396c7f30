"""Any function takes anything: it answers, or refuses in its own name and in one line. Nothing else ever comes out.

Arguments are drawn from the declarations: those that are taken from a function's own example and ranges, those that
are not from values that no maker types. How many of each every function got, by hand:

    python tests/test_fuzz.py
"""

import math
import random
import sys
from datetime import date, datetime
from decimal import Decimal
from fractions import Fraction

import pytest
from samples import drawn

import candlecalc.calc  # noqa: F401  fills the registry
from candlecalc.declaration.declared import REGISTRY
from candlecalc.faces.addins import cells
from candlecalc.faces.described import reference

TRIES = 120
LEAST = 10  # sets of each kind that every function must get
HUGE = "9" * 400
ABSURD = [
    *(int(HUGE), -int(HUGE), HUGE, f"1e{HUGE}", f"{HUGE} oz", f"0.{HUGE}", f"{HUGE}/{HUGE}", f"1-{HUGE}"),
    *(1e308, -1e308, 5e-324, math.inf, -math.inf, math.nan, -0.0, 10**15 + 0.5, True, False, None, ""),
    *(Decimal("sNaN"), Decimal("NaN"), Decimal("1e400"), Decimal("-1e400"), Decimal("1e-400"), Fraction(int(HUGE), 3)),
    *(date.min, date.max, datetime.max, "0001-01-01", "9999-12-31", "31 Dec 9999", 2958465, 60, 1e9, 1 + 2j, b"12"),
    *("twelve", "=1+1", "\udcff", "\0", "12 oz", "8%", "180 F", "-5", "1 1/2 lb", "x" * 10_000, " " * 10_000),
    *([], [[]], {}, [1, [2, 3]], [[1, 2], [3, 4]], [None] * 3, [""], [math.nan] * 2, object(), lambda: 1),
]


def sets(formula, chance):
    """Arguments of every kind: near the example, in the ranges, and with something absurd among them."""
    example = reference.example(formula)
    for _ in range(TRIES):
        near = _near(formula, example, chance)
        yield near
        yield {**near, chance.choice(list(formula.arguments)): chance.choice(ABSURD)}
        yield _spoiled(formula, near, chance)
        if all(argument.term.is_number or argument.term.choices for argument in formula.arguments.values()):
            yield drawn(formula, chance)


def _near(formula, example, chance):
    """The example with some of its numbers moved inside their ranges, and some lists longer by lines of their own."""
    values = dict(example)
    for name, value in example.items():
        if chance.random() < 0.5:
            values[name] = _moved(formula.arguments[name].term, value, chance)
    return values


def _moved(term, value, chance):
    if isinstance(value, (list, tuple)):
        return [_moved(term, one, chance) for one in value]
    if isinstance(value, bool) or not isinstance(value, (int, float)):
        return value
    moved = value * chance.choice([0.5, 0.9, 0.999, 1, 1.001, 1.1, 2])
    moved = float(round(moved)) if term.whole else moved
    return moved if term.takes(moved) else value


def _spoiled(formula, values, chance):
    """Something absurd inside a list, or a list of another length, where there is one."""
    lists = [name for name, value in values.items() if isinstance(value, (list, tuple))]
    name = chance.choice(lists or list(formula.arguments))
    value = values.get(name)
    if not isinstance(value, (list, tuple)):
        return {**values, name: chance.choice(ABSURD)}
    spoiled = [*value]
    spoiled[chance.randrange(len(spoiled) + 1) :] = [chance.choice(ABSURD)] * chance.choice([0, 1, 2, 500])
    return {**values, name: spoiled}


def counted(formula):
    """How many sets a function took and how many it refused; an AssertionError where it did anything else."""
    taken = refused = 0
    for values in sets(formula, random.Random(formula.name)):  # noqa: S311
        try:
            formula.checked(**values)
        except ValueError as problem:
            said = str(problem)
            assert said.startswith(f"{formula.name}: ") and "\n" not in said.replace("\\n", ""), said[:300]
            refused += 1
        else:
            taken += 1
    return taken, refused


@pytest.mark.parametrize("formula", REGISTRY.values(), ids=lambda formula: formula.name)
def test_a_function_answers_or_refuses_in_its_own_name(formula):
    taken, refused = counted(formula)
    assert taken >= LEAST and refused >= LEAST


@pytest.mark.parametrize("formula", REGISTRY.values(), ids=lambda formula: formula.name)
def test_a_cell_holds_an_answer_or_an_error_whatever_it_is_given(formula):
    chance = random.Random(formula.name)  # noqa: S311
    for values in list(sets(formula, chance))[::7]:
        # A sheet hands over cells, and for a range its rows.
        if any(
            isinstance(value, (list, dict)) and not formula.arguments[name].term.many for name, value in values.items()
        ):
            continue
        given = [values.get(name) for name in formula.arguments]
        for row in cells.answer(formula, given):
            assert all(isinstance(cell, (float, int, str, cells.Refused)) for cell in row)


if __name__ == "__main__":
    for each in REGISTRY.values():
        print("{:28} taken {:4}  refused {:4}".format(each.name, *counted(each)))
    sys.exit()
