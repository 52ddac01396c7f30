"""A native form over arrays: its tree as one NumPy expression.

Where a form steps, as rounding does at a half, a hair decides. The rows that lie so near to a step are
noted as doubtful, and the scalar function answers them.
"""

from collections.abc import Mapping
from functools import cache
from types import CodeType
from typing import Any, NamedTuple

import numpy as np

import candlecalc.declaration.native as language
from candlecalc.arrays.bounds import always_inside
from candlecalc.arrays.given import Array
from candlecalc.declaration.declared import REGISTRY, Function, asked
from candlecalc.declaration.native import Call, Leaf, Name, Negation, Node, Operation

# How near to a step, as a part of the number, is too near: the scalar function rounds some numbers to twelve digits.
NEAR = 1e-12
# Two different ways to the same number: which comes first is a matter of a hair.
STEPS = frozenset(["INT", "ROUNDUP"])
SETTLED = frozenset(["ROUND", *STEPS])


class Form(NamedTuple):
    """A native form and what is asked of its arguments together, as code over arrays."""

    answer: CodeType
    conditions: tuple[CodeType, ...]
    inside: bool  # whether every answer is in the result's range

    def work(self, values: Mapping[str, Any], found: Array) -> tuple[list[Array], list[Array]]:
        """Write the answers into `found`; masks say which rows are in doubt, and which do not meet a condition."""
        steps = _Steps()
        known = {"__builtins__": {}, **PLAIN, **steps.functions(), **values, FOUND: found}
        answer = eval(self.answer, known)  # noqa: S307
        if answer is not found:
            found[...] = answer
        doubts, unmet = self.ask(values)
        return steps.doubts + doubts, unmet

    def ask(self, values: Mapping[str, Any]) -> tuple[list[Array], list[Array]]:
        """Masks of the rows in doubt, and of those that do not meet a condition."""
        steps = _Steps()
        known = {"__builtins__": {}, **PLAIN, **steps.functions(), **values}
        unmet = [~np.asarray(eval(condition, known), dtype=bool) for condition in self.conditions]  # noqa: S307
        return steps.doubts, [mask for mask in unmet if mask.any()]


def form_of(formula: Function) -> Form | None:
    """A function's native form over arrays; None where an array cannot say it."""
    return _form(formula.name) if formula.name in REGISTRY else None


@cache
def _form(name: str) -> Form | None:
    formula = REGISTRY[name]
    terms = [argument.term for argument in formula.arguments.values()]
    plain = all((term.is_number or term.choices) and not (term.many or term.blank) for term in terms)
    if not formula.native or not plain or not formula.result.is_number or formula.result.blank:
        return None
    trees = [formula.native, *map(asked, formula.requires)]
    if {part.function for tree in trees for part in language.walk(tree) if isinstance(part, Call)} - KNOWN:
        return None
    texts = [_into_found(trees[0]), *map(_spelled, trees[1:])]
    answer, *conditions = [compile(text, f"<{name} over arrays>", "eval") for text in texts]
    return Form(answer, tuple(conditions), always_inside(formula))


class _Steps:
    """The functions that step, each noting the rows that are too near to a step."""

    def __init__(self) -> None:
        self.doubts: list[Array] = []

    def functions(self) -> dict[str, Any]:
        return {"ROUND": self.round, "ROUNDUP": self.up, "INT": self.down, "APART": self.apart, "OFF": self.off}

    def round(self, amount: Any, digits: Any = 0) -> Any:
        """Half away from zero."""
        scale = 10.0**digits
        scaled = np.abs(amount) * scale
        whole = np.floor(scaled + 0.5)
        self._note(np.abs(scaled + 0.5 - np.rint(scaled + 0.5)), scaled)
        return np.copysign(whole / scale, amount)

    def up(self, amount: Any, digits: Any = 0) -> Any:
        """Away from zero."""
        scale = 10.0**digits
        scaled = np.abs(amount) * scale
        crumb = np.abs(scaled - np.rint(scaled))
        self._note(np.where(crumb == 0, np.inf, crumb), scaled)
        return np.copysign(np.ceil(scaled) / scale, amount)

    def down(self, amount: Any) -> Any:
        """To the whole number below."""
        crumb = np.abs(amount - np.rint(amount))
        self._note(np.where(crumb == 0, np.inf, crumb), amount)
        return np.floor(amount)

    def off(self, amount: Any) -> Any:
        """The amount, which is about to step: one that was worked out and is whole may as well be a hair less."""
        self._note(np.abs(amount - np.rint(amount)), amount)
        return amount

    def apart(self, amount: Any, other: Any) -> Any:
        """The amount, which is about to be compared with the other."""
        self._note(np.abs(amount - other), np.maximum(np.abs(amount), np.abs(other)))
        return amount

    def _note(self, distance: Any, amount: Any) -> None:
        near = np.asarray(distance <= NEAR * np.maximum(1.0, np.abs(amount)))
        if near.any():
            self.doubts.append(near)


# A square root is exact, the others within a hair of Python's own.
PLAIN: dict[str, Any] = {
    "EXP": np.exp,
    "IF": np.where,
    "LN": np.log,
    "LOG10": np.log10,
    "MAX": lambda *parts: _over(np.maximum, parts),
    "MIN": lambda *parts: _over(np.minimum, parts),
    "PI": lambda: np.pi,
    "SQRT": np.sqrt,
    "TAN": np.tan,
}
KNOWN = frozenset([*PLAIN, *SETTLED])
PLAIN.update(TOTAL=np.add, DIFFERENCE=np.subtract, PRODUCT=np.multiply, RATIO=np.divide)
LAST = {"+": "TOTAL", "-": "DIFFERENCE", "*": "PRODUCT", "/": "RATIO"}
FOUND = "_found"


def _over(function: Any, parts: Any) -> Any:
    first, *others = parts
    for other in others:
        first = function(first, other)
    return first


def _into_found(tree: Node) -> str:
    """The answer, its last operation worked straight into the array that keeps it: a copy would cost as much."""
    if isinstance(tree, Operation) and tree.sign in LAST:
        return f"{LAST[tree.sign]}({_spelled(tree.left)},{_spelled(tree.right)},{FOUND})"
    return _spelled(tree)


def _spelled(tree: Node) -> str:
    return language.python(_watched(tree), KNOWN)


def _watched(node: Node) -> Node:
    """The tree with `APART` and `OFF` around what is worked out and then compared, or steps."""
    if isinstance(node, Negation):
        return Negation(_watched(node.of))
    if isinstance(node, Call):
        parts = tuple(map(_watched, node.arguments))
        if node.function in STEPS and not _settled(parts[0]):
            parts = (Call("OFF", parts[:1]), *parts[1:])
        return Call(node.function, parts)
    if not isinstance(node, Operation):
        return node
    left, right = _watched(node.left), _watched(node.right)
    if node.sign in language.COMPARISONS and not (_settled(left) and _settled(right)):
        left = Call("APART", (left, right))
    return Operation(node.sign, left, right)


def _settled(node: Node) -> bool:
    """Whether the scalar function has the very same number here: one given, one rounded, or sums of such."""
    if isinstance(node, Operation):
        return node.sign in {"+", "-", *language.COMPARISONS} and _settled(node.left) and _settled(node.right)
    if isinstance(node, Call):
        return node.function in SETTLED
    return isinstance(node, (Leaf, Name)) or _settled(node.of)
