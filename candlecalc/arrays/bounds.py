"""Whether a form stays in its result's range for any arguments in theirs: then no answer needs to be looked at.

The ends are worked out by the operations of the form itself, in which machine rounding never turns an order round.
"""

import math
from collections.abc import Mapping
from itertools import product
from operator import add, mul, sub, truediv

from candlecalc.declaration.declared import Argument, Function
from candlecalc.declaration.native import Call, Leaf, Name, Node, Operation

Ends = tuple[float, float]
OPERATIONS = {"+": add, "-": sub, "*": mul, "/": truediv}
PICKS = {"MAX": max, "MIN": min}


def always_inside(formula: Function) -> bool:
    """Whether every answer is in range; false also where that is not seen here."""
    ends = _ends(formula.native, formula.arguments) if formula.native and not formula.result.whole else None
    return ends is not None and formula.result.takes(ends[0]) and formula.result.takes(ends[1])


def _ends(node: Node, arguments: Mapping[str, Argument]) -> Ends | None:
    """The least and the most that a part of a form comes to; None where it is not seen."""
    if isinstance(node, Leaf):
        return None if node.text.startswith('"') else (float(node.text), float(node.text))
    if isinstance(node, Name):
        term = arguments[node.text].term
        return (term.low, term.high) if term.is_number else None
    if isinstance(node, Call):
        return _ends_of_call(node, arguments)
    if not isinstance(node, Operation) or node.sign not in OPERATIONS:
        return None
    left, right = _ends(node.left, arguments), _ends(node.right, arguments)
    if not left or not right or (node.sign == "/" and right[0] <= 0 <= right[1]):
        return None
    met = [OPERATIONS[node.sign](one, other) for one, other in product(left, right)]
    return min(met), max(met)


def _ends_of_call(node: Call, arguments: Mapping[str, Argument]) -> Ends | None:
    if node.function == "PI":
        return math.pi, math.pi
    parts = [_ends(part, arguments) for part in node.arguments]
    known = [part for part in parts if part]
    if node.function not in PICKS or len(known) < len(parts):
        return None
    least, most = zip(*known, strict=True)
    return PICKS[node.function](least), PICKS[node.function](most)
