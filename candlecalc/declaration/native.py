"""The native form: a formula in argument names, read once and written as a cell formula or as Python.

The language is what every spreadsheet since 2016 and Python agree on: names, numbers, quoted words,
`+ - * / ^`, one comparison, and a white list of plain functions. It is read by a tokenizer into a tree,
so an argument is replaced as a node and never as text.
"""

import math
import re
from dataclasses import dataclass
from decimal import Decimal
from typing import Callable, Dict, FrozenSet, List, Mapping, Tuple, Union

from candlecalc.quantities.rounding import round_half_away

# What each allowed function is in Python. Nothing volatile, nothing newer than 2010.
FUNCTIONS: Dict[str, Callable[..., object]] = {
    "AND": lambda *parts: all(parts),
    "COUNT": len,
    "EXP": math.exp,
    "INT": math.floor,
    "LN": math.log,
    "MAX": max,
    "MIN": min,
    "N": lambda value: 0 if isinstance(value, str) or value is None else value,
    "NOT": lambda part: not part,
    "OR": lambda *parts: any(parts),
    "PI": lambda: math.pi,
    "ROUND": round_half_away,
    "SQRT": math.sqrt,
    "SUM": lambda values: math.fsum(values),
    "SUMPRODUCT": lambda *lists: math.fsum(math.prod(row) for row in zip(*lists)),
    "TAN": math.tan,
}
# What a cell formula may use besides. Python needs no meaning for them: conditions do without.
SHEET_ONLY = frozenset(
    [
        "ABS",
        "AVERAGE",
        "CEILING",
        "CHOOSE",
        "COUNTA",
        "COUNTIF",
        "DEVSQ",
        "EDATE",
        "EXACT",
        "FLOOR",
        "IF",
        "IFERROR",
        "INDEX",
        "INTERCEPT",
        "ISLOGICAL",
        "LARGE",
    ]
    + [
        "LOG10",
        "MATCH",
        "MOD",
        "NA",
        "NORMSDIST",
        "NORMSINV",
        "POISSON",
        "RSQ",
        "ROUNDDOWN",
        "ROUNDUP",
        "SIN",
        "SLOPE",
        "SMALL",
    ]
    + ["STDEV", "STEYX", "SUMIF", "SUMSQ", "TINV", "TRUNC", "VAR", "WEEKDAY", "WORKDAY"]
)
COMPARISONS = {"=": "==", "<>": "!=", "<": "<", ">": ">", "<=": "<=", ">=": ">="}
STRENGTH = {**dict.fromkeys(COMPARISONS, 1), "+": 2, "-": 2, "*": 3, "/": 3, "^": 5}
NEGATION, ATOM = 4, 6

TOKEN = re.compile(
    r"""\s*(?:(?P<number>\d+(?:\.\d+)?(?:e-?\d+)?)
          |(?P<function>[A-Z][A-Z0-9]*)(?=\()
          |(?P<name>[a-z][a-z0-9_]*)
          |(?P<text>"[^"]*")
          |(?P<sign><=|>=|<>|[-+*/^(),<>=]))""",
    re.VERBOSE,
)


@dataclass(frozen=True)
class Leaf:
    """A number, a quoted word, or a reference that is already in its final spelling."""

    text: str


@dataclass(frozen=True)
class Name:
    text: str


@dataclass(frozen=True)
class Negation:
    of: "Node"


@dataclass(frozen=True)
class Operation:
    sign: str
    left: "Node"
    right: "Node"


@dataclass(frozen=True)
class Call:
    function: str
    arguments: Tuple["Node", ...]


Node = Union[Leaf, Name, Negation, Operation, Call]


def parse(text: str) -> Node:
    """Read a native form into its tree; a ValueError says where it cannot be read."""
    reader = _Reader(_tokens(text), text)
    node = reader.comparison()
    if reader.kind:
        raise ValueError(f"{text!r}: {reader.word!r} is left over at the end")
    return node


def names(node: Node) -> List[str]:
    """The argument names a tree uses, in the order met, each once."""
    found: Dict[str, None] = {}
    for part in walk(node):
        if isinstance(part, Name):
            found.setdefault(part.text)
    return list(found)


def walk(node: Node) -> List[Node]:
    """A node and everything under it."""
    return [node] + [part for child in children(node) for part in walk(child)]


def children(node: Node) -> Tuple[Node, ...]:
    """The nodes right under a node."""
    if isinstance(node, Operation):
        return node.left, node.right
    if isinstance(node, Negation):
        return (node.of,)
    return node.arguments if isinstance(node, Call) else ()


def replace(node: Node, values: Mapping[str, Node]) -> Node:
    """The tree with each name put in from `values`; a name that is not there stays."""
    if isinstance(node, Name):
        return values.get(node.text, node)
    if isinstance(node, Negation):
        return Negation(replace(node.of, values))
    if isinstance(node, Operation):
        return Operation(node.sign, replace(node.left, values), replace(node.right, values))
    if isinstance(node, Call):
        return Call(node.function, tuple(replace(part, values) for part in node.arguments))
    return node


def spell(node: Node) -> str:
    """The tree as a cell formula without its leading `=`, with no more parentheses than it needs."""
    return _spell(node, excel=True)


def python(node: Node, known: FrozenSet[str] = frozenset()) -> str:
    """The tree as a Python expression in the same names: functions by `FUNCTIONS`, and those the caller knows."""
    beyond = sorted({part.function for part in walk(node) if isinstance(part, Call)} & SHEET_ONLY - known)
    if beyond:
        raise ValueError(f"{', '.join(beyond)}: for cells only, not for a condition")
    return _spell(node, excel=False)


def compile_python(node: Node) -> Callable[[Mapping[str, object]], object]:
    """The tree as a Python callable that takes a mapping of its names."""
    code, known = compile(python(node), "<native>", "eval"), {"__builtins__": {}, **FUNCTIONS}
    return lambda values: eval(code, known, dict(values))  # noqa: S307


def number(value: float) -> str:
    """A number as a formula may hold it: 15 digits, no exponent."""
    return f"{Decimal(f'{value:.15g}'):f}"


def _spell(node: Node, excel: bool) -> str:
    if isinstance(node, (Leaf, Name)):
        return node.text
    if isinstance(node, Call):
        return f"{node.function}({','.join(_spell(part, excel) for part in node.arguments)})"
    if isinstance(node, Negation):
        # Not before a power, where the two languages part, nor before another minus.
        text = _inside(node.of, NEGATION + 1, excel)
        return f"-({text})" if isinstance(node.of, Operation) and node.of.sign == "^" else f"-{text}"
    own = STRENGTH[node.sign]
    sign = node.sign if excel else {"^": "**", **COMPARISONS}.get(node.sign, node.sign)
    # A right-hand side of the same strength keeps its parentheses: a-(b-c). So does the left of a
    # power or a comparison, which the two languages chain differently.
    left = own + 1 if node.sign == "^" or node.sign in COMPARISONS else own
    return _inside(node.left, left, excel) + sign + _inside(node.right, own + 1, excel)


def _inside(node: Node, needed: int, excel: bool) -> str:
    text = _spell(node, excel)
    return text if _strength(node) >= needed else f"({text})"


def _strength(node: Node) -> int:
    if isinstance(node, Operation):
        return STRENGTH[node.sign]
    return NEGATION if isinstance(node, Negation) else ATOM


def _tokens(text: str) -> List[Tuple[str, str]]:
    found: List[Tuple[str, str]] = []
    at = 0
    while text[at:].strip():
        match = TOKEN.match(text, at)
        if not match or not match.lastgroup:
            raise ValueError(f"{text!r}: cannot read {text[at:].strip()!r}")
        found.append((match.lastgroup, match.group(match.lastgroup)))
        at = match.end()
    return found


class _Reader:
    """Recursive descent over the tokens, one method a level of strength."""

    def __init__(self, tokens: List[Tuple[str, str]], text: str) -> None:
        self.rest, self.text = tokens, text

    @property
    def kind(self) -> str:
        return self.rest[0][0] if self.rest else ""

    @property
    def word(self) -> str:
        return self.rest[0][1] if self.rest else ""

    def take(self) -> str:
        return self.rest.pop(0)[1]

    def comparison(self) -> Node:
        left = self.sum()
        return Operation(self.take(), left, self.sum()) if self.word in COMPARISONS else left

    def sum(self) -> Node:
        left = self.product()
        while self.word in ("+", "-") and self.kind == "sign":
            left = Operation(self.take(), left, self.product())
        return left

    def product(self) -> Node:
        left = self.signed()
        while self.word in ("*", "/"):
            left = Operation(self.take(), left, self.signed())
        return left

    def signed(self) -> Node:
        if self.word != "-":
            return self.power()
        self.take()
        bracketed = self.word == "("
        of = self.power()
        # -x^2 is 4 for x = 2 in a spreadsheet and -4 in Python; -(x^2) is -4 in both.
        if isinstance(of, Operation) and of.sign == "^" and not bracketed:
            raise ValueError(f"{self.text!r}: write 0-x^2 or (-x)^2, not -x^2")
        return Negation(of)

    def power(self) -> Node:
        left = self.atom()
        if self.word != "^":
            return left
        self.take()
        right = self.atom()
        # 2^3^2 is 64 in a spreadsheet and 512 in Python.
        if self.word == "^":
            raise ValueError(f"{self.text!r}: use parentheses between two ^")
        return Operation("^", left, right)

    def atom(self) -> Node:
        kind, word = self.kind, self.take() if self.rest else ""
        if kind in ("number", "text"):
            return Leaf(word)
        if kind == "name":
            return Name(word)
        if kind == "function":
            return self.call(word)
        if word == "(":
            inner = self.comparison()
            self.expect(")")
            return inner
        raise ValueError(f"{self.text!r}: {word or 'the end'!r} stands where a value is wanted")

    def call(self, function: str) -> Node:
        if function not in FUNCTIONS and function not in SHEET_ONLY:
            known = ", ".join(sorted(SHEET_ONLY.union(FUNCTIONS)))
            raise ValueError(f"{self.text!r}: {function} is not one of {known}")
        self.expect("(")
        arguments: List[Node] = []
        if self.word != ")":
            arguments.append(self.comparison())
        while self.word == ",":
            self.take()
            arguments.append(self.comparison())
        self.expect(")")
        return Call(function, tuple(arguments))

    def expect(self, sign: str) -> None:
        if self.word != sign:
            raise ValueError(f"{self.text!r}: {sign} is missing before {self.word or 'the end'!r}")
        self.take()
