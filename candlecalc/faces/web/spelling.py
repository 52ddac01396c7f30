"""A native form as JavaScript: its tree as an expression over the argument names.

Where a form works on whole lists, as in `SUMPRODUCT(shares/limits)`, it becomes one over the values that
stand at one place in each of them.
"""

import json
from dataclasses import dataclass, replace

from candlecalc.declaration.declared import Function
from candlecalc.declaration.native import (
    ATOM,
    COMPARISONS,
    NEGATION,
    STRENGTH,
    Call,
    Leaf,
    Name,
    Negation,
    Node,
    children,
)
from candlecalc.faces.web.counterparts import safe

SIGNS = {**dict(zip(STRENGTH, STRENGTH)), "=": "===", "<>": "!==", "^": "**"}
# What these make of what has no answer is thrown.
FAILING = {"/": "ratio_", "^": "power_"}
# Functions of single values, each by what the script calls it.
SINGLE = {
    "ABS": "Math.abs",
    "EDATE": "monthsAfter_",
    "EXP": "exp_",
    "INT": "Math.floor",
    "LN": "ln_",
    "LOG10": "log10_",
    "MAX": "Math.max",
    "MIN": "Math.min",
    "NA": "none_",
    "NOT": "!",
    "NORMSDIST": "normalBelow_",
    "NORMSINV": "normalQuantile_",
    "ROUND": "round_",
    "ROUNDDOWN": "roundDown_",
    "ROUNDUP": "roundUp_",
    "SQRT": "root_",
    "TAN": "Math.tan",
    "TINV": "tQuantile_",
    "WORKDAY": "workday_",
}
# Functions that take lists and give one value.
OF_LISTS = {
    "AVERAGE": "mean_",
    "COUNT": "count_",
    "DEVSQ": "squaresAboutMean_",
    "MAX": "max_",
    "MIN": "min_",
    "SLOPE": "slope_",
    "SMALL": "small_",
    "STDEV": "deviation_",
    "STEYX": "scatter_",
    "SUM": "sum_",
}
# Both of several lists, multiplied place by place.
PRODUCTS = {"SUMPRODUCT": 1, "SUMSQ": 2}
ONE_OF = "each_"


def spelled(formula: Function, tree: Node) -> str:
    """A tree over a function's arguments."""
    return Speller(frozenset(name for name, each in formula.arguments.items() if each.term.many)).spell(tree)


@dataclass(frozen=True)
class Speller:
    """Spells trees in which some names are lists."""

    lists: frozenset[str]
    single: frozenset[str] = frozenset()  # lists whose name stands, where we are, for one of their values

    def spell(self, node: Node) -> str:
        """The tree as an expression; a ValueError names a function that the script has not."""
        if isinstance(node, Leaf):
            return json.dumps(node.text[1:-1], ensure_ascii=False) if node.text.startswith('"') else node.text
        if isinstance(node, Name):
            return ONE_OF + node.text if node.text in self.single else safe(node.text)
        if isinstance(node, Call):
            return self._call(node)
        if isinstance(node, Negation):
            return "-" + self._inside(node.of, NEGATION + 1)
        if _may_fail(node):
            return f"{FAILING[node.sign]}({self.spell(node.left)}, {self.spell(node.right)})"
        own = STRENGTH[node.sign]
        # No minus may stand before a power, and comparisons are no chain.
        left = own + 1 if node.sign == "^" or node.sign in COMPARISONS else own
        return f"{self._inside(node.left, left)} {SIGNS[node.sign]} {self._inside(node.right, own + 1)}"

    def _call(self, node: Call) -> str:
        parts = node.arguments
        if self._makes_one(node):
            whole = replace(self, single=frozenset())
            if node.function in PRODUCTS:
                return f"sum_({whole._product(parts * PRODUCTS[node.function])})"
            return f"{OF_LISTS[node.function]}({', '.join(whole._listed(part) for part in parts)})"
        if node.function in ("AND", "OR"):
            sign = " && " if node.function == "AND" else " || "
            return f"({sign.join(self._inside(part, STRENGTH['=']) for part in parts)})"
        if node.function == "IF":
            test, met, unmet = map(self.spell, parts)
            return f"({test} ? {met} : {unmet})"
        if node.function == "PI":
            return "Math.PI"
        if node.function not in SINGLE:
            raise ValueError(f"{node.function} is not among the functions of the script")
        return f"{SINGLE[node.function]}({', '.join(map(self.spell, parts))})"

    def _makes_one(self, node: Node) -> bool:
        """Whether a tree is a call that makes one value of lists."""
        if not isinstance(node, Call):
            return False
        return node.function in PRODUCTS or (node.function in OF_LISTS and any(map(self._over, node.arguments)))

    def _over(self, node: Node) -> list[str]:
        """The lists that a tree goes through; what makes one value of them is a value like any other."""
        if isinstance(node, Name):
            return [node.text] if node.text in self.lists else []
        parts = () if self._makes_one(node) else children(node)
        return list(dict.fromkeys(name for part in parts for name in self._over(part)))

    def _listed(self, node: Node) -> str:
        """A tree over lists as the list that it comes to, any other as its value."""
        return self._product((node,)) if self._over(node) else self.spell(node)

    def _product(self, parts: tuple[Node, ...]) -> str:
        """Trees over lists, multiplied place by place, as a list."""
        if len(parts) == 1 and isinstance(parts[0], Name):
            return safe(parts[0].text)
        lists = list(dict.fromkeys(name for part in parts for name in self._over(part)))
        one = replace(self, single=frozenset(lists))
        strength = STRENGTH["*"] if len(parts) > 1 else 0
        product = " * ".join(one._inside(part, strength + (place > 0)) for place, part in enumerate(parts))
        return f"each_([{', '.join(map(safe, lists))}], ({', '.join(ONE_OF + name for name in lists)}) => {product})"

    def _inside(self, node: Node, needed: int) -> str:
        text = self.spell(node)
        return text if _strength(node) >= needed else f"({text})"


def _may_fail(node: Node) -> bool:
    """Whether a tree divides by what may be zero, or raises to what is not written in it."""
    sign, right = getattr(node, "sign", ""), getattr(node, "right", None)
    return sign in FAILING and not isinstance(right, Leaf)


def _strength(node: Node) -> int:
    if isinstance(node, Negation):
        return NEGATION
    return ATOM if isinstance(node, (Call, Leaf, Name)) or _may_fail(node) else STRENGTH[node.sign]
