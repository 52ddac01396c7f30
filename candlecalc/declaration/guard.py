"""The native form with its ranges around it: a cell formula that gives #N/A where Python refuses.

Text and TRUE stand above every number in a spreadsheet's order, so the upper limit catches them too;
in LibreOffice TRUE is the number 1 in another format, and is asked for by name.
"""

import re
from decimal import ROUND_CEILING, ROUND_FLOOR, Context
from itertools import combinations
from typing import Dict, List, Mapping, Optional, Tuple

import candlecalc.declaration.native as language
import candlecalc.quantities.days as days
from candlecalc.declaration.declared import LARGEST, Argument, Function, Term, asked
from candlecalc.declaration.native import Call, Leaf, Name, Node, Operation
from candlecalc.declaration.term import crumb_at

REFUSED = Call("NA", ())
# Calls that have an answer for any number, and none below zero where no number is.
ALWAYS = frozenset(["ABS", "AND", "COUNT", "EXP", "IF", "INT", "MAX", "MIN", "N", "NOT", "OR", "PI", "ROUND"])
ALWAYS |= {"ROUNDDOWN", "ROUNDUP", "SUM", "SUMSQ"}


def guarded(formula: Function, values: Mapping[str, Node], answer: Optional[Node] = None) -> Node:
    """The guarded tree with its arguments put in; those left out stand at their defaults.

    An optional argument whose cell is blank stands at its default too. `answer` is where the bare answer
    already stands, if it is worked out beside.
    """
    given = _given(formula, values)
    plain = answer or bare(formula, values)
    guard = _unless(_outside(formula, plain, every=bool(answer)), _settled(formula, plain))
    # What arguments ask of each other is worked out only where each is in its own range.
    unmet = [Call("NOT", (asked(condition),)) for condition in formula.requires]
    guard = _unless([language.replace(test, given) for test in unmet], guard)
    tests: List[Node] = []
    for name, value in values.items():
        if not _typed(value):
            tests += _tests(formula.arguments[name], value)
    guard = _unless(tests + _lengths(formula, given), guard)
    return guard if _always(native_of(formula)) else Call("IFERROR", (guard, REFUSED))


def bare(formula: Function, values: Mapping[str, Node]) -> Node:
    """The tree with its arguments put in as `guarded` does, and nothing around it."""
    return language.replace(native_of(formula), _given(formula, values))


def native_of(formula: Function) -> Node:
    """The native form; a ValueError says why there is none."""
    if not formula.native:
        raise ValueError(f"{formula.name} has no cell formula: {formula.no_native}")
    return formula.native


def default(argument: Argument) -> Node:
    """What stands for an argument left out."""
    if not argument.optional:
        raise ValueError(f"{argument.name} is missing; it takes {argument.term.range}")
    if isinstance(argument.default, str):
        return Leaf(f'"{argument.default}"')
    return Leaf('""' if argument.default is None else language.number(argument.default))


def _given(formula: Function, values: Mapping[str, Node]) -> Dict[str, Node]:
    """What stands for each argument: its value, or its default where it is left out or its cell is blank."""
    given: Dict[str, Node] = {}
    for name, argument in formula.arguments.items():
        value = values.get(name) or default(argument)
        # A blank cell counts as 0 by itself.
        if argument.optional and argument.default not in (0, None) and not _typed(value):
            value = Call("IF", (Operation("=", value, Leaf('""')), default(argument), value))
        given[name] = value
    return given


def _typed(value: Node) -> bool:
    """Whether a value stands in the formula itself: it was in range when it was put there."""
    return isinstance(value, Leaf) and bool(re.fullmatch(r'-?[0-9.]+|".*"', value.text))


def _tests(argument: Argument, cell: Node) -> List[Node]:
    """Conditions, any of which refuses what stands in an argument's cell or cells."""
    tests = _many(argument.term) if argument.term.many else _one(argument)
    return [language.replace(language.parse(test), {"cell": cell}) for test in tests]


def _one(argument: Argument) -> List[str]:
    term = argument.term
    may_be_blank = argument.optional or term.blank
    if term.choices:
        unlike = [f'cell<>"{choice}"' for choice in term.choices] + ['cell<>""'] * may_be_blank
        return [f"AND({','.join(unlike)})"]
    blank = [] if may_be_blank else ['cell=""']
    if term.text:
        return blank
    tests = ["ISLOGICAL(cell)", *(f"cell{limit}" for limit in _limits(term))] + ["cell<>INT(N(cell))"] * term.whole
    if may_be_blank and (term.unit == "date" or not term.takes(0)):
        return [f'AND(cell<>"",OR({",".join(tests)}))']
    return blank + tests


def _many(term: Term) -> List[str]:
    # One number at least, nothing above the upper limit as text and TRUE are, no blank before the last of them.
    low, high = _limits(term)
    tests = ["COUNT(cell)=0"] * (not term.blank) + [
        f'SUMPRODUCT((cell<>"")*(cell{high}))>0',
        f"MIN(cell){low}",
        'COUNT(cell)<>IFERROR(MATCH(1,INDEX((cell="")*1,0),0)-1,COUNT(cell))',
    ]
    return tests + ["SUMPRODUCT((cell<>INT(cell))*1)>0"] * term.whole


def _limits(term: Term) -> Tuple[str, str]:
    """What is too low and what is too high, as the ends of a comparison: "<0", ">0.5"."""
    low, high = (days.FIRST, days.LAST) if term.unit == "date" else (term.low, term.high)
    return f"{'<=' if term.low_excluded else '<'}{_limit(low, ROUND_FLOOR)}", f">{_limit(high, ROUND_CEILING)}"


def _limit(limit: float, outward: str) -> str:
    """A limit in the 15 digits that a formula may hold, never a tighter one: a third ends in 4."""
    text = language.number(limit)
    return text if float(text) == limit else f"{Context(prec=15, rounding=outward).create_decimal(limit):f}"


def _lengths(formula: Function, given: Mapping[str, Node]) -> List[Node]:
    counts = [Call("COUNT", (given[name],)) for name, argument in formula.arguments.items() if argument.term.many]
    return [Operation("<>", first, second) for first, second in combinations(counts, 2)]


def _outside(formula: Function, answer: Node, every: bool) -> List[Node]:
    """Tests of the result's own range, as far as the arguments do not keep it there by themselves.

    What lies past an end by a rounding crumb is not outside: `_settled` makes it the end. `every` asks for
    the end of all ranges too, 1e12, which no maker meets: it costs the answer twice.
    """
    term = formula.result
    tests: List[Node] = []
    if term.is_number and (_may_be_low(formula) or (every and not _never_negative(formula))):
        lowest = term.low if term.low_excluded or term.low <= -LARGEST else term.low - crumb_at(term.low)
        tests.append(Operation("<=" if term.low_excluded else "<", answer, Leaf(_limit(lowest, ROUND_FLOOR))))
    if term.is_number and (term.high < LARGEST or every):
        highest = term.high + crumb_at(term.high) * (term.high < LARGEST)
        tests.append(Operation(">", answer, Leaf(_limit(highest, ROUND_CEILING))))
    return tests


def _may_be_low(formula: Function) -> bool:
    """Whether an answer may come out below an end that its range has."""
    term = formula.result
    return term.low > -LARGEST and (term.low_excluded or term.low > 0 or not _never_negative(formula))


def _settled(formula: Function, answer: Node) -> Node:
    """The answer at an end of its range where it lies past it by a rounding crumb, as `Function.call` has it."""
    term = formula.result
    if not term.is_number:
        return answer
    if term.high < LARGEST:
        answer = Call("MIN", (answer, Leaf(_limit(term.high, ROUND_FLOOR))))
    if _may_be_low(formula) and not term.low_excluded:
        answer = Call("MAX", (answer, Leaf(_limit(term.low, ROUND_CEILING))))
    return answer


def _never_negative(formula: Function) -> bool:
    parts = language.walk(formula.native) if formula.native else []
    minus = any(isinstance(part, language.Negation) or getattr(part, "sign", "") == "-" for part in parts)
    calls = {part.function for part in parts if isinstance(part, Call)}
    lows = [formula.arguments[part.text].term.low for part in parts if isinstance(part, Name)]
    return not minus and calls <= ALWAYS | {"SUMPRODUCT"} and min(lows, default=0) >= 0


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
