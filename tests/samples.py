"""Arguments in range for any declared function, for the tests that go over all of them.

within(declared)       a hypothesis strategy
samples(declared, n)   the same n lists of arguments each time: the ends of each range first, then spread
in_a_cell(value)       a value as the cell that holds it
"""

import math
import random
from datetime import date, timedelta
from itertools import chain, islice

from hypothesis import strategies as st

from candlecalc.declaration.declared import LARGEST
from candlecalc.quantities import days

MOST = 1e6  # where a range has no end of its own: enough for any maker
LEAST = 1e-3  # where a range leaves out its end


def within(declared):
    """Values for every argument, one dictionary, such that the checked function takes them."""
    arguments = {name: _values(argument.term) for name, argument in declared.arguments.items()}
    return st.fixed_dictionaries(arguments).filter(lambda values: _taken(declared, values))


def samples(declared, count):
    """At least `count` dictionaries of arguments that the checked function takes."""
    found = list(_ends(declared))
    return found + list(islice(_spread(declared), max(count - len(found), count // 2)))


def first_samples(declared, count):
    """The first of them, in a fraction of the time."""
    return list(islice(chain(_ends(declared), _spread(declared)), count))


def in_a_cell(value):
    """A value as the number or words that a cell holds for it."""
    return days.serial(value) if isinstance(value, date) else value


def _values(term):
    if term.choices:
        return st.sampled_from(term.choices)
    if term.unit == "date":
        return st.dates(*limits(term))
    low, high = limits(term)
    return st.integers(int(low), int(high)).map(float) if term.whole else st.floats(low, high)


def limits(term):
    """The ends of a term's range as values to try, both inside it."""
    if term.unit == "date":
        return date(2020, 1, 1), date(2039, 12, 31)
    low = -MOST if term.low <= -LARGEST else term.low + LEAST * term.low_excluded
    return low, min(term.high, MOST)


def _taken(declared, values):
    try:
        declared.checked(**values)
    except ValueError:
        return False
    return True


def _ends(declared):
    """Each argument in turn at each end of its range, the others somewhere inside theirs."""
    chance = random.Random(f"{declared.name} ends")  # noqa: S311
    for name, argument in declared.arguments.items():
        for end in argument.term.choices or limits(argument.term):
            yield from islice(filter(lambda values: _taken(declared, values), _at(declared, name, end, chance)), 1)


def _at(declared, name, end, chance):
    """Tries with one argument at an end, with every argument of its term there, and with some that share the end."""
    term = declared.arguments[name].term
    alike = [other for other, argument in declared.arguments.items() if argument.term == term]
    for names in 20 * [[name]] + 20 * [alike]:
        values = drawn(declared, chance)
        values.update({other: [end] * len(values[other]) if term.many else end for other in names})
        yield _sharing(declared, values)
    sharing = [
        other
        for other, argument in declared.arguments.items()
        if argument.term.is_number and end in limits(argument.term) and other != name
    ]
    for _ in range(100 if term.is_number else 0):
        values = drawn(declared, chance)
        for other in [name, *(other for other in sharing if chance.random() < 0.5)]:
            values[other] = _put_in(values[other], end, chance)
        yield _sharing(declared, values)


def _put_in(value, end, chance):
    """The end itself, or a list with one of its values there."""
    if not isinstance(value, list):
        return end
    place = chance.randrange(len(value))
    return [*value[:place], end, *value[place + 1 :]]


def _spread(declared):
    chance = random.Random(declared.name)  # noqa: S311
    for _ in range(20000):
        values = _sharing(declared, drawn(declared, chance))
        if _taken(declared, values):
            yield values
    raise AssertionError(f"{declared.name}: too few values were taken")


def drawn(declared, chance):
    length = chance.randint(1, 4)
    return {
        name: [_one(argument.term, chance) for _ in range(length)]
        if argument.term.many
        else _one(argument.term, chance)
        for name, argument in declared.arguments.items()
    }


def _one(term, chance):
    if term.choices:
        return chance.choice(term.choices)
    low, high = limits(term)
    if term.unit == "date":
        return low + timedelta(days=chance.randint(0, (high - low).days))
    if term.whole:
        return float(round(_between(low, high, chance)))
    # As a maker types them: a few decimals, sums and weights rarely in the thousands.
    return min(high, max(low, float(f"{_between(low, high, chance):.4g}")))


def _between(low, high, chance):
    if high - low <= 10 or low < 0:
        return chance.uniform(low, high)
    return math.exp(chance.uniform(math.log(max(low, 0.1)), math.log(high)))


def _sharing(declared, values):
    """Shares of a blend brought to 1 together."""
    for name, argument in declared.arguments.items():
        if argument.term.many and argument.term.unit == "of the blend":
            total = math.fsum(values[name])
            values[name] = [share / total for share in values[name]] if total else values[name]
    return values
