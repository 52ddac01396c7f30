"""A function's own Python as JavaScript: for what no formula says, such as an answer in several cells.

What `calc` is written in is small: plain functions over numbers, words and lists, rows as named tuples, words
put together. That much is put over from its syntax tree, with every function, constant and table that it uses, so
that the script holds no second account of it. Anything else is refused, by what a maker would call it.
"""

import ast
import inspect
import json
import textwrap
from collections.abc import Callable, Sequence
from typing import Any

from candlecalc import tables
from candlecalc.declaration.declared import REGISTRY, Argument
from candlecalc.faces.web.counterparts import OTHERWISE, UnsayableError, literal, reason, safe
from candlecalc.faces.web.values import Values

__all__ = ["Translation", "UnsayableError"]


class Translation:
    """The functions, constants and tables that declared functions need, each once, in the order met."""

    def __init__(self) -> None:
        self.texts: dict[str, str] = {}

    def function(self, function: Callable[..., Any]) -> str:
        """The name of what does in the script as a function of ours does; the texts of all it needs are noted."""
        name = _named(function)
        if name not in self.texts:
            self.texts[name] = ""  # it may call itself
            self.texts[name] = _Writer(self, function).text(name)
        return name

    def constant(self, module: str, name: str, value: Any) -> str:
        known = f"{module}_{name.strip('_')}_"
        self.texts.setdefault(known, f"const {known} = {literal(value)};\n")
        return known

    def table(self, name: str) -> str:
        known, rows = f"table_{name}_", tables.rows(name)
        lines = "".join(f"  {json.dumps(list(row.values()), ensure_ascii=False)},\n" for row in rows)
        self.texts.setdefault(known, f"const {known} = rowsOf_({json.dumps(list(rows[0]))}, [\n{lines}]);\n")
        return known


def _named(function: Callable[..., Any]) -> str:
    return f"{function.__module__.rpartition('.')[2]}_{function.__qualname__.replace('.', '_').strip('_')}_"


class _Writer(Values):
    """One function, written out."""

    def __init__(self, whole: Translation, function: Callable[..., Any]) -> None:
        self.whole, self.function = whole, function
        self.module = function.__module__.rpartition(".")[2]
        self.known = function.__globals__
        tree = ast.parse(textwrap.dedent(inspect.getsource(function))).body[0]
        if not isinstance(tree, ast.FunctionDef) or tree.args.vararg or tree.args.kwonlyargs:
            raise UnsayableError(OTHERWISE)
        self.tree = tree
        self.local = {
            node.id for node in ast.walk(tree) if isinstance(node, ast.Name) and isinstance(node.ctx, ast.Store)
        }
        self.lists = {name for name, each in self._arguments().items() if each.term.many}
        self.local |= {node.arg for node in ast.walk(tree) if isinstance(node, ast.arg)}

    def _arguments(self) -> dict[str, Argument]:
        """The arguments with their terms, where it is a declared function."""
        declared = REGISTRY.get(self.function.__name__)
        return declared.arguments if declared and declared.bare is self.function else {}

    def text(self, name: str) -> str:
        given = self.tree.args
        usual = [None] * (len(given.args) - len(given.defaults)) + list(given.defaults)
        arguments = [
            safe(each.arg) + (f" = {self.value(default)}" if default else "")
            for each, default in zip(given.args, usual, strict=True)
        ]
        body = self.tree.body[1:] if ast.get_docstring(self.tree) else self.tree.body
        lines = self.block(body, "  ")
        fresh = sorted(_assigned(body) - {each.arg for each in given.args})
        declared = [f"  let {', '.join(map(safe, fresh))};"] if fresh else []
        return "\n".join([f"function {name}({', '.join(arguments)}) {{", *declared, *lines, "}"]) + "\n"

    # Steps

    def block(self, body: Sequence[ast.stmt], indent: str) -> list[str]:
        return [indent + line for statement in body for line in self.statement(statement)]

    def statement(self, node: ast.stmt) -> list[str]:
        if isinstance(node, ast.Return):
            return [f"return {self.value(node.value) if node.value else 'null'};"]
        if isinstance(node, ast.Assign):
            first, *others = node.targets
            more = [self.assigned(other, self.value(_loaded(first))) for other in others]
            return [self.assigned(first, self.value(node.value)), *more]
        if isinstance(node, ast.AnnAssign) and node.value:
            return [self.assigned(node.target, self.value(node.value))]
        if isinstance(node, ast.AugAssign):
            sum_of = ast.BinOp(_loaded(node.target), node.op, node.value)
            return [self.assigned(node.target, self.value(sum_of))]
        if isinstance(node, ast.If):
            lines = [f"if ({self.test(node.test)}) {{", *self.block(node.body, "  ")]
            return [*lines, *(["} else {", *self.block(node.orelse, "  ")] if node.orelse else []), "}"]
        if isinstance(node, ast.For) and not node.orelse:
            head = f"for (const {self.target(node.target)} of {self.listed(node.iter)}) {{"
            return [head, *self.block(node.body, "  "), "}"]
        if isinstance(node, ast.While) and not node.orelse:
            return [f"while ({self.test(node.test)}) {{", *self.block(node.body, "  "), "}"]
        if isinstance(node, ast.Continue):
            return ["continue;"]
        if isinstance(node, ast.Break):
            return ["break;"]
        if isinstance(node, ast.Raise) and isinstance(node.exc, ast.Call) and self.meant(node.exc.func) is ValueError:
            return [f"throw new Refused_({self.value(node.exc.args[0])});"]
        if isinstance(node, ast.Expr):
            return [f"{self.value(node.value)};"]
        raise UnsayableError(reason(node))

    def assigned(self, target: ast.expr, text: str) -> str:
        if isinstance(target, ast.Subscript):
            return f"put_({self.value(target.value)}, {self.value(target.slice)}, {text});"
        return f"{self.target(target)} = {text};"


def _assigned(body: Sequence[ast.stmt]) -> set[str]:
    """The names that steps give a value to, but for those that a loop or a list goes through."""
    targets: list[ast.expr] = []
    for statement in body:
        for node in ast.walk(statement):
            if isinstance(node, ast.Assign):
                targets += node.targets
            elif isinstance(node, (ast.AnnAssign, ast.AugAssign)):
                targets.append(node.target)
    names = (node for target in targets for node in ast.walk(target))
    return {node.id for node in names if isinstance(node, ast.Name) and isinstance(node.ctx, ast.Store)}


def _loaded(target: ast.expr) -> ast.expr:
    return ast.parse(ast.unparse(target), mode="eval").body
