"""The native form with its ranges around it: a cell formula that gives #N/A where Python refuses.

Text and TRUE stand above every number in a spreadsheet's order, so the upper limit catches them too.
"""

import re
from decimal import ROUND_CEILING, ROUND_FLOOR, Context
from itertools import combinations
from typing import List, Mapping, Optional

import candlecalc.days as days
import candlecalc.native as language
from candlecalc.formula import LARGEST, Argument, Formula
from candlecalc.native import Call, Leaf, Name, Node, Operation

REFUSED = Call("NA", ())
# Calls that have an answer for any number, and none below zero where no number is.
ALWAYS = frozenset(["ABS", "AND", "COUNT", "EXP", "IF", "INT", "MAX", "MIN", "N", "NOT", "OR", "PI", "ROUND"])
ALWAYS |= {"ROUNDDOWN", "ROUNDUP", "SUM", "SUMPRODUCT", "SUMSQ"}


def guarded(formula: Formula, values: Mapping[str, Node], answer: Optional[Node] = None) -> Node:
    """The guarded tree with its arguments put in; those left out stand at their defaults.

    `answer` is where the bare answer already stands, if it is worked out beside.
    """
    if not formula.native:
        raise ValueError(f"{formula.name} has no native form: {formula.no_native}")
    given = {name: values.get(name) or default(argument) for name, argument in formula.arguments.items()}
    answer = answer or language.replace(formula.native, given)
    guard = _unless(_outside(formula, answer), answer)
    # What arguments ask of each other is worked out only where each is in its own range.
    asked = [Call("NOT", (language.parse(condition),)) for condition in formula.requires]
    guard = _unless([language.replace(test, given) for test in asked], guard)
    tests = [test for name, node in values.items() if not _typed(node) for test in _tests(formula.arguments[name])]
    tests += _lengths(formula)
    guard = _unless([language.replace(language.parse(test), given) for test in tests], guard)
    return guard if _always(formula.native) else Call("IFERROR", (guard, REFUSED))


def default(argument: Argument) -> Node:
    """What stands for an argument left out."""
    if not argument.optional:
        raise ValueError(f"{argument.name} is missing; it takes {argument.term.range}")
    if isinstance(argument.default, str):
        return Leaf(f'"{argument.default}"')
    return Leaf('""' if argument.default is None else language.number(argument.default))


def _typed(node: Node) -> bool:
    """Whether a value stands in the formula itself: it was in range when it was put there."""
    return isinstance(node, Leaf) and bool(re.fullmatch(r'-?[0-9.]+|".*"', node.text))


def _tests(argument: Argument) -> List[str]:
    """Conditions in the native language, any of which refuses the argument."""
    name, term = argument.name, argument.term
    if term.choices:
        unlike = [f'{name}<>"{choice}"' for choice in term.choices] + [f'{name}<>""'] * term.blank
        return [f"AND({','.join(unlike)})"]
    low, high = (days.FIRST, days.LAST) if term.unit == "date" else (term.low, term.high)
    below = f"{'<=' if term.above else '<'}{_limit(low, ROUND_FLOOR)}"
    over = f">{_limit(high, ROUND_CEILING)}"
    if term.many:
        # Numbers only, one at least, and no blank before the last of them.
        numbers = f"COUNT({name})"
        tests = [f'COUNTIF({name},"{below}")>0', f'COUNTIF({name},"{over}")>0', f"{numbers}=0"]
        return tests + [f"{numbers}<>COUNTA({name})", f"{numbers}<>COUNT(INDEX({name},1):INDEX({name},{numbers}))"]
    tests = [f"{name}{below}", f"{name}{over}"] + [f"{name}<>INT(N({name}))"] * term.whole
    return [f'AND({name}<>"",OR({",".join(tests)}))'] if term.blank else tests


def _limit(limit: float, outward: str) -> str:
    """A limit in the 15 digits that a formula may hold, never a tighter one: a third ends in 4."""
    text = language.number(limit)
    return text if float(text) == limit else f"{Context(prec=15, rounding=outward).create_decimal(limit):f}"


def _lengths(formula: Formula) -> List[str]:
    lists = [name for name, argument in formula.arguments.items() if argument.term.many]
    return [f"COUNT({first})<>COUNT({second})" for first, second in combinations(lists, 2)]


def _outside(formula: Formula, answer: Node) -> List[Node]:
    """Tests of the result's own range, as far as the arguments do not keep it there by themselves."""
    term = formula.result
    tests: List[Node] = []
    if term.counts and term.low > -LARGEST and (term.above or term.low > 0 or not _never_negative(formula)):
        tests.append(Operation("<=" if term.above else "<", answer, Leaf(_limit(term.low, ROUND_FLOOR))))
    if term.counts and term.high < LARGEST:
        tests.append(Operation(">", answer, Leaf(_limit(term.high, ROUND_CEILING))))
    return tests


def _never_negative(formula: Formula) -> bool:
    parts = language.walk(formula.native) if formula.native else []
    minus = any(isinstance(part, language.Negation) or getattr(part, "sign", "") == "-" for part in parts)
    calls = {part.function for part in parts if isinstance(part, Call)}
    lows = [formula.arguments[part.text].term.low for part in parts if isinstance(part, Name)]
    return not minus and calls <= ALWAYS and min(lows, default=0) >= 0


def _always(native: Node) -> bool:
    """Whether a form has an answer for any numbers: nothing in it divides by what may be zero."""
    for part in language.walk(native):
        if isinstance(part, Call) and part.function not in ALWAYS:
            return False
        if isinstance(part, Operation) and part.sign in "/^" and not isinstance(part.right, Leaf):
            return False
    return True


def _unless(tests: List[Node], otherwise: Node) -> Node:
    if not tests:
        return otherwise
    return Call("IF", (tests[0] if len(tests) == 1 else Call("OR", tuple(tests)), REFUSED, otherwise))
