"""Python put over into JavaScript gives, in V8, what it gives in Python; what has no counterpart is refused."""

import json
import math
from decimal import Decimal
from typing import NamedTuple

import pytest
import web_book

from candlecalc.faces.web.translation import Translation, UnsayableError
from candlecalc.quantities.rounding import round_half_away


class Row(NamedTuple):
    name: str
    amount: float
    note: object = None


UNITS = {"oz": 28, "g": 1}


def sums(values, start=1):
    total = 0
    for place, value in enumerate(values, start=start):
        if value is None:
            continue
        total += place * value
    return total


def words(name, amount):
    return (
        f"{name}: {amount:.2f} g, {amount:.0f}, {-3.5:.0f}, {0.375:.2f}, {1.85:.1f}, {amount:g}, `{0.085:.0%}` ${{}}"
        + " or ".join([name.upper(), "none"])
    )


def lists(values):
    more = values + [9]
    more[-1] += 1
    return [more[1:], more[:-1], more[-2], [0.0] * 3, sorted(more), max(more), min([], default=7), len(more)]


def dictionaries(names):
    counted = dict.fromkeys(names, 0)
    for name in names:
        counted[name] += UNITS.get(name, 5)
    return [
        list(counted.items()),
        list(counted.values()),
        "oz" in counted,
        sorted({*names} - UNITS.keys()),
        [name for name in counted if name != "g"],
    ]


def ties(rows):
    best = min(rows, key=lambda row: (row[0] > 2, row[1]))
    return [best, sorted(rows, key=lambda row: -row[1]), tuple(best) == (1, "a"), set(rows[0]) == {2, 3}]


def named(values):
    rows = [Row("a", value) for value in values if value]
    return [row._replace(amount=round_half_away(row.amount, 1)).amount for row in rows]


def spread(pairs):
    return [Row(name, *rest).note for name, rest in pairs]


def chances(mean):
    chance = reached = math.exp(-mean)
    while reached < 0.9 and (chance or reached):
        chance *= 0.5
        reached = reached + chance if chance > 1e-3 else 1.0
    return reached


def either(one, other):
    return [
        one or "none",
        one and other,
        not one,
        bool(other),
        0 < len(one) <= 2,
        one != other,
        7 // 2,
        -7 % 3,
        divmod(7.5, 2),
    ]


CASES = [(sums, ([1, None, 3], 2)), (sums, ([1, 2],)), (words, ("Fig", 2.5)), (lists, ([3, 1, 2],))]
CASES += [(dictionaries, (["oz", "g", "lb", "g"],)), (ties, ([[3, 1], [2, 9], [1, 5]],)), (named, ([1.25, 0, 2.04],))]
CASES += [(spread, ([["a", [1, "x"]], ["b", [2, "y"]]],)), (chances, (0.5,)), (either, ("", "x")), (either, ("ab", ""))]


@pytest.mark.parametrize(("function", "given"), CASES, ids=lambda value: getattr(value, "__name__", ""))
def test_steps_give_what_they_give_in_python(function, given):
    translation = Translation()
    name = translation.function(function)
    # In a function of their own, so that nothing stays behind.
    texts = "\n".join(translation.texts.values())
    got = json.loads(
        web_book.engine().eval(f"(() => {{ {texts} return JSON.stringify({name}(...{json.dumps(given)})) }})()")
    )
    assert got == json.loads(json.dumps(function(*given)))


def exact(value):
    return Decimal(value)


def opened(path):
    with path:
        return 1


def any_number(*values):
    return values


def sheets_only(values):
    return values.most_common()


@pytest.mark.parametrize("function", [exact, opened, any_number, sheets_only])
def test_what_has_no_counterpart_is_refused(function):
    with pytest.raises(UnsayableError, match="it counts in exact decimals|its steps have no counterpart"):
        Translation().function(function)
