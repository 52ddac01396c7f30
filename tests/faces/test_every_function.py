"""Every function gives on every face what it gives in Python, and every declared error is an error there."""

import random
from functools import cache

import pytest
from samples import first_samples, limits

from candlecalc.calc import REGISTRY
from candlecalc.declaration.declared import LARGEST
from candlecalc.faces.described import reference

EACH = 4
each_function = pytest.mark.parametrize("name", sorted(REGISTRY))


@each_function
def test_a_function_gives_what_it_gives_in_python(face, name):
    for given in in_range(name):
        assert alike(getattr(face, name)(**given), REGISTRY[name].checked(**given)), given


@each_function
def test_every_declared_error_is_an_error(face, name):
    for given in out_of_range(name):
        with face.refuses(f"{name}: "):
            getattr(face, name)(**given)


@each_function
def test_true_is_no_number(face, name):
    good = in_range(name)[0]
    for argument in REGISTRY[name].arguments.values():
        with face.refuses(f"{name}: {argument.name} "):
            getattr(face, name)(**{**good, argument.name: True})


@cache  # every face asks the same
def in_range(name):
    """Arguments that are taken: drawn from the ranges, or the example's where words are wanted."""
    declared = REGISTRY[name]
    drawn = all(argument.term.is_number or argument.term.choices for argument in declared.arguments.values())
    return first_samples(declared, EACH) if drawn else [reference.example(declared)]


@cache
def out_of_range(name):
    """Arguments of which one is refused, each in turn in every way its term has; then those refused together."""
    return [*_refused(REGISTRY[name]), *_together(REGISTRY[name])]


def _refused(declared):
    good = in_range(declared.name)[0]
    for name, argument in declared.arguments.items():
        for bad in _bad(argument.term):
            yield {**good, name: bad}
        if argument.term.many:
            yield from ({**good, name: [*good.get(name, []), wrong]} for wrong in _bad(argument.term))
            if not argument.term.blank:
                yield {**good, name: []}
                yield {**good, name: [good[name][0], None, *good[name]]}
            others = [other.term for key, other in declared.arguments.items() if key != name and other.term.many]
            if any(not other.blank for other in others):
                yield {**good, name: [*good[name], *good[name]]}


def _bad(term):
    if term.choices:
        return ["none of these", 1.5]
    if term.text:
        return []
    if term.unit == "date":
        return [12]
    low, high = limits(term)
    bad = ["a word"]
    if term.low > -LARGEST:
        below = term.low if term.low_excluded else term.low - 1
        # An empty cell comes to an add-in as 0, so where a blank is taken 0 is one.
        bad = [-1.0 if term.blank and below == 0 else below, *bad]
    if term.high < LARGEST:
        bad = [term.high + 1, *bad]
    return [*bad, low + 0.5] if term.whole else bad


def _together(declared):
    """Two draws for each thing that arguments ask of each other, each in range by itself."""
    chance = random.Random(declared.name)  # noqa: S311
    drawn = [argument.term.is_number or argument.term.choices for argument in declared.arguments.values()]
    found = 0
    for _ in range(2000 if declared.requires and all(drawn) else 0):
        given = {key: _one(argument.term, chance) for key, argument in declared.arguments.items()}
        try:
            declared.checked(**given)
        except ValueError:
            found += 1
            yield given
        if found == 2:
            return


def _one(term, chance):
    if term.choices:
        return chance.choice(term.choices)
    low, high = limits(term)
    high = min(high, low + 100)
    number = float(chance.randint(int(low), int(high))) if term.whole else chance.uniform(low, high)
    return [number, number] if term.many else number


def alike(got, wanted):
    if isinstance(wanted, list):
        return len(got) == len(wanted) and all(map(alike, got, wanted))
    if isinstance(wanted, tuple):
        return alike(list(got), list(wanted))
    return got == (pytest.approx(wanted, rel=1e-9, abs=1e-12) if isinstance(wanted, float | int) else wanted)
