"""Values of Python as values of JavaScript: every kind of expression that `calc` is written in."""

import ast
import builtins
import inspect
import json
import re
from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Any

from candlecalc import tables
from candlecalc.declaration.declared import REGISTRY
from candlecalc.faces.web.counterparts import (
    BETWEEN,
    CALLS,
    LISTS,
    METHODS,
    OTHERWISE,
    REASONS,
    SIGNS,
    UnsayableError,
    filled,
    hashable,
    literal,
    reason,
    safe,
)
from candlecalc.quantities import statistics

if TYPE_CHECKING:
    from candlecalc.faces.web.translation import Translation


class Values:
    """The values in one function."""

    whole: "Translation"
    module: str
    known: dict[str, Any]  # what its module knows
    local: set[str]  # names of its own
    lists: set[str]  # of these, which are lists for sure

    def target(self, node: ast.expr) -> str:
        if isinstance(node, ast.Tuple):
            return f"[{', '.join(map(self.target, node.elts))}]"
        if isinstance(node, ast.Name):
            return safe(node.id)
        raise UnsayableError(OTHERWISE)

    def test(self, node: ast.expr) -> str:
        """A value where only whether it holds is asked."""
        if isinstance(node, ast.BoolOp):
            sign = " && " if isinstance(node.op, ast.And) else " || "
            return sign.join(
                f"({self.test(part)})" if isinstance(part, ast.BoolOp) else self.test(part) for part in node.values
            )
        if isinstance(node, ast.UnaryOp) and isinstance(node.op, ast.Not):
            simple = isinstance(node.operand, (ast.Name, ast.Call, ast.Attribute, ast.Subscript))
            return f"!{self.test(node.operand)}" if simple else f"!({self.test(node.operand)})"
        return self.value(node) if isinstance(node, ast.Compare) else f"isTrue_({self.value(node)})"

    def listed(self, node: ast.expr) -> str:
        """What is gone through, as a list: of a dictionary, its keys."""
        return self.value(node) if self.is_list(node) else f"items_({self.value(node)})"

    def is_list(self, node: ast.expr) -> bool:
        """Whether a value is a list for sure."""
        if isinstance(node, ast.Name):
            return node.id in self.lists
        if isinstance(node, ast.Call):
            made = self.meant(node.func)
            return made in LISTS if made is not None else getattr(node.func, "attr", "") in ("items", "values", "keys")
        return isinstance(node, (ast.ListComp, ast.GeneratorExp, ast.List, ast.Tuple))

    def inside(self, node: ast.expr, strength: int = 3) -> str:
        """A value as a part of another, in parentheses where it would come apart."""
        return self.value(node) if _strength(node) >= strength else f"({self.value(node)})"

    def value(self, node: ast.expr) -> str:
        write = getattr(self, f"_{type(node).__name__}", None)
        if not write:
            raise UnsayableError(OTHERWISE)
        return str(write(node))

    def _Constant(self, node: ast.Constant) -> str:  # noqa: N802
        return literal(node.value)

    def _Name(self, node: ast.Name) -> str:  # noqa: N802
        if node.id in self.local:
            return safe(node.id)
        value = self.meant(node)
        if callable(value) and inspect.isfunction(value):
            return self.called(value, "{name}")
        if node.id in REASONS:
            raise UnsayableError(REASONS[node.id])
        return self.whole.constant(self.module, node.id, value)

    def _Attribute(self, node: ast.Attribute) -> str:  # noqa: N802
        value = self.meant(node)
        if value is not None:
            return literal(value)
        return METHODS["days"].format(self=self.inside(node.value)) if node.attr == "days" else self._field(node)

    def _field(self, node: ast.Attribute) -> str:
        return f"{self.inside(node.value)}.{node.attr}"

    def _JoinedStr(self, node: ast.JoinedStr) -> str:  # noqa: N802
        texts = []
        for part in node.values:
            if isinstance(part, ast.Constant):
                texts.append(re.sub(r"([`\\\\]|\$\{)", r"\\\1", str(part.value)).replace("\n", "\\n"))
            else:
                texts.append(f"${{{self.value(part)}}}")
        return f"`{''.join(texts)}`"

    def _FormattedValue(self, node: ast.FormattedValue) -> str:  # noqa: N802
        text = self.value(node.value)
        if node.format_spec is None:
            return text
        form = ast.literal_eval(node.format_spec) if isinstance(node.format_spec, ast.Constant) else None
        if isinstance(node.format_spec, ast.JoinedStr) and len(node.format_spec.values) == 1:
            form = getattr(node.format_spec.values[0], "value", None)
        if not isinstance(form, str):
            raise UnsayableError(OTHERWISE)
        if form.endswith("g"):
            return f"general_({text}, {form.strip('.g') or 6})"
        if form.startswith(".") and form[-1] in "f%":
            sign = ' + "%"' if form[-1] == "%" else ""
            of = f"{self.inside(node.value, 2)} * 100" if sign else text
            return f"fixed_({of}, {form[1:-1]}){sign}"
        raise UnsayableError(OTHERWISE)

    def _List(self, node: ast.List | ast.Tuple | ast.Set) -> str:  # noqa: N802
        return f"[{', '.join(map(self.value, node.elts))}]"

    _Tuple = _List

    def _Set(self, node: ast.Set) -> str:  # noqa: N802
        return f"new Set({self._List(node)})"

    def _Starred(self, node: ast.Starred) -> str:  # noqa: N802
        return f"...{self.listed(node.value)}"

    def _Dict(self, node: ast.Dict) -> str:  # noqa: N802
        if None in node.keys:
            raise UnsayableError(OTHERWISE)
        pairs = [f"[{self.value(key)}, {self.value(each)}]" for key, each in zip(node.keys, node.values) if key]
        return f"new Map([{', '.join(pairs)}])"

    def _IfExp(self, node: ast.IfExp) -> str:  # noqa: N802
        return f"{self.test(node.test)} ? {self.value(node.body)} : {self.value(node.orelse)}"

    def _Lambda(self, node: ast.Lambda) -> str:  # noqa: N802
        return f"({', '.join(safe(each.arg) for each in node.args.args)}) => {self.value(node.body)}"

    def _BoolOp(self, node: ast.BoolOp) -> str:  # noqa: N802
        if any(isinstance(each, ast.Compare) for each in node.values):
            return self.test(node)
        name = "both_" if isinstance(node.op, ast.And) else "either_"
        first, *others = map(self.value, node.values)
        for other in others:
            first = f"{name}({first}, () => {other})"
        return first

    def _UnaryOp(self, node: ast.UnaryOp) -> str:  # noqa: N802
        if isinstance(node.op, ast.Not):
            return self.test(node)
        if isinstance(node.op, ast.USub):
            return f"-{self.inside(node.operand)}"
        raise UnsayableError(OTHERWISE)

    def _BinOp(self, node: ast.BinOp) -> str:  # noqa: N802
        left, right = self.value(node.left), self.value(node.right)
        own = _strength(node)
        if isinstance(node.op, ast.Div):
            return f"ratio_({left}, {right})"
        if isinstance(node.op, ast.Pow):
            return f"power_({left}, {right})"
        if isinstance(node.op, ast.Mod):
            return f"divided_({left}, {right})[1]"
        if isinstance(node.op, ast.FloorDiv):
            return f"divided_({left}, {right})[0]"
        if type(node.op) not in SIGNS:
            raise UnsayableError(OTHERWISE)
        if isinstance(node.op, ast.Sub) and isinstance(node.right, ast.Call) and self.is_list(node.right):
            return f"without_({left}, {right})"
        if isinstance(node.op, ast.Mult) and isinstance(node.left, ast.List):
            return f"repeated_({left}, {right})"
        if isinstance(node.op, ast.Add) and not (_is_plain(node.left) or _is_plain(node.right)):
            return f"added_({left}, {right})"
        return f"{self.inside(node.left, own)} {SIGNS[type(node.op)]} {self.inside(node.right, own + 1)}"

    def _Compare(self, node: ast.Compare) -> str:  # noqa: N802
        parts, left = [], node.left
        for sign, right in zip(node.ops, node.comparators, strict=True):
            parts.append(self._compared(left, sign, right))
            left = right
        return " && ".join(parts)

    def _compared(self, left: ast.expr, sign: ast.cmpop, right: ast.expr) -> str:
        if isinstance(sign, (ast.In, ast.NotIn)) or ast.Tuple in (type(left), type(right)):
            one, other = self.value(left), self.value(right)
        else:
            one, other = self.inside(left, 1), self.inside(right, 1)
        if isinstance(sign, (ast.In, ast.NotIn)):
            return f"{'!' * isinstance(sign, ast.NotIn)}isIn_({one}, {other})"
        if isinstance(sign, (ast.Is, ast.IsNot)):
            return f"{one} {'===' if isinstance(sign, ast.Is) else '!=='} {other}"
        if isinstance(sign, ast.LtE) and isinstance(left, ast.Call) and self.meant(left.func) is set:
            return f"items_({one}).every((each) => isIn_(each, {other}))"
        if isinstance(sign, (ast.Eq, ast.NotEq)) and ast.Constant not in (type(left), type(right)):
            return f"{'!' * isinstance(sign, ast.NotEq)}isSame_({one}, {other})"
        return f"{one} {BETWEEN[type(sign)]} {other}"

    def _Subscript(self, node: ast.Subscript) -> str:  # noqa: N802
        of = self.value(node.value)
        if not isinstance(node.slice, ast.Slice):
            return f"at_({of}, {self.value(node.slice)})"
        if node.slice.step:
            raise UnsayableError(OTHERWISE)
        ends = [self.value(end) if end else "undefined" for end in (node.slice.lower, node.slice.upper)]
        while ends[-1:] == ["undefined"]:
            ends.pop()
        return f"{self.inside(node.value)}.slice({', '.join(ends)})"

    def _ListComp(self, node: ast.ListComp | ast.GeneratorExp | ast.SetComp) -> str:  # noqa: N802
        return self._each(node.generators, self.value(node.elt))

    _GeneratorExp = _ListComp

    def _SetComp(self, node: ast.SetComp) -> str:  # noqa: N802
        return f"new Set({self._ListComp(node)})"

    def _DictComp(self, node: ast.DictComp) -> str:  # noqa: N802
        return f"new Map({self._each(node.generators, f'[{self.value(node.key)}, {self.value(node.value)}]')})"

    def _each(self, generators: Sequence[ast.comprehension], made: str) -> str:
        first, *others = generators
        name = self.target(first.target)
        text = self.listed(first.iter)
        for condition in first.ifs:
            text += f".filter(({name}) => {self.test(condition)})"
        if others:
            return f"{text}.flatMap(({name}) => {self._each(others, made)})"
        return text if made == name else f"{text}.map(({name}) => {made})"

    # Calls

    def _Call(self, node: ast.Call) -> str:  # noqa: N802
        function = self.meant(node.func)
        whole = getattr(node.func, "attr", "") == "join"
        given = [self.listed(each) if whole else self.value(each) for each in node.args]
        named = {str(each.arg): self.value(each.value) for each in node.keywords}
        if function is None and isinstance(node.func, ast.Attribute):
            return self._method(node.func, given, named)
        if function in (re.sub, re.split) and isinstance(node.args[0], ast.Constant):
            *filling, text = given[1:]
            parts = f"{text}.split(/{node.args[0].value!s}/)"
            return f"{parts}.join({filling[0]})" if filling else parts
        if function in (min, max, sorted):
            return self._chosen(function, given, named)
        if function is tables.rows:
            return self.whole.table(ast.literal_eval(node.args[0]))
        if function is tables.row_up_to:
            return f"rowUpTo_({self.whole.table(ast.literal_eval(node.args[0]))}, {given[1]})"
        if hashable(function) and function in CALLS:
            return filled(CALLS[function], given, named)
        if hasattr(function, "_fields"):
            if any(isinstance(each, ast.Starred) for each in node.args):
                return f"rowsOf_({json.dumps(list(function._fields))}, [[{', '.join(given)}]])[0]"
            values = dict(zip(function._fields, given)) | named
            missing = function._field_defaults.keys() - values.keys()
            values |= {name: literal(function._field_defaults[name]) for name in missing}
            return f"({{ {', '.join(f'{name}: {text}' for name, text in values.items())} }})"
        if inspect.isfunction(function):
            return self.called(function, "{name}({given})", given, named)
        if isinstance(node.func, ast.Name) and node.func.id in self.local and not named:
            return f"{safe(node.func.id)}({', '.join(given)})"
        raise UnsayableError(reason(node.func))

    def called(
        self, function: Callable[..., Any], form: str, given: Sequence[str] = (), named: dict[str, str] | None = None
    ) -> str:
        """A call of one of our own functions: a declared one is checked as it is from a cell."""
        names = list(inspect.signature(function).parameters)
        by_name = dict(zip(names, given)) | (named or {})
        while names and names[-1] not in by_name:
            names.pop()
        values = ", ".join(by_name.get(name, "undefined") for name in names)
        declared = REGISTRY.get(function.__name__)
        if declared and declared.checked is function:
            if not declared.native:
                self.whole.function(declared.bare)
            return f"call_({json.dumps(declared.name)}, [{values}])"
        if not function.__module__.startswith("candlecalc."):
            raise UnsayableError(OTHERWISE)
        return form.format(name=self.whole.function(function), given=values)

    def _method(self, node: ast.Attribute, given: list[str], named: dict[str, str]) -> str:
        of, method = self.inside(node.value), vars(statistics.Line).get(node.attr)
        if node.attr == "_replace":
            return f"({{ ...{of}, {', '.join(f'{name}: {text}' for name, text in named.items())} }})"
        if inspect.isfunction(method) and not hasattr(tuple, node.attr):
            return self.called(method, "{name}({given})", [of, *given], named)
        if node.attr not in METHODS:
            raise UnsayableError(reason(node))
        return filled(METHODS[node.attr], given, named | {"self": of})

    def _chosen(self, function: Callable[..., Any], given: list[str], named: dict[str, str]) -> str:
        name = {min: "least_", max: "most_", sorted: "sorted_"}[function]
        of = given[0] if len(given) == 1 else f"[{', '.join(given)}]"
        more = [named[each] for each in ("key", "default") if each in named]
        if named.keys() - {"key", "default"} or len(more) > 1:
            raise UnsayableError(OTHERWISE)
        return f"{name}({', '.join([of, *more])})"

    def meant(self, node: ast.expr) -> Any:
        """What a name outside the function stands for; None for a local one, or a value's attribute."""
        if isinstance(node, ast.Name) and node.id not in self.local:
            if node.id not in self.known and not hasattr(builtins, node.id):
                raise UnsayableError(OTHERWISE)
            return self.known.get(node.id, getattr(builtins, node.id, None))
        if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name) and node.value.id not in self.local:
            of = self.known.get(node.value.id, getattr(builtins, node.value.id, None))
            return getattr(of, node.attr, None) if inspect.ismodule(of) or of is dict else None
        return None


def _is_plain(node: ast.expr) -> bool:
    """Whether a value is surely a number or words, so that + means the same in both languages."""
    if isinstance(node, ast.BinOp):
        if isinstance(node.op, ast.Add):
            return _is_plain(node.left) or _is_plain(node.right)
        return not isinstance(node.left, ast.List)
    return isinstance(node, (ast.JoinedStr, ast.UnaryOp, ast.Constant))


def _strength(node: ast.expr) -> int:
    """How strongly the parts of a value hold together: 0 for tests, 1 for sums, 2 for products, 3 for the rest."""
    if isinstance(node, (ast.Compare, ast.BoolOp, ast.IfExp, ast.Lambda)):
        return 0
    if isinstance(node, ast.BinOp) and isinstance(node.op, (ast.Add, ast.Sub)):
        return 1 if isinstance(node.op, ast.Sub) or _is_plain(node.left) or _is_plain(node.right) else 3
    if isinstance(node, ast.BinOp) and isinstance(node.op, ast.Mult) and not isinstance(node.left, ast.List):
        return 2
    return 2 if isinstance(node, ast.UnaryOp) else 3
