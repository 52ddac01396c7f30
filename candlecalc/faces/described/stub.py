"""The types of every function, as editors and type checkers read them: the text of candlecalc/__init__.pyi.

Three overloads say what comes back: a number, an array where one was given, a Series where any is one.
"""

import inspect
import textwrap
from collections.abc import Iterable
from typing import Any, get_args

import candlecalc.calc  # noqa: F401  fills the registry
from candlecalc.declaration.declared import REGISTRY, Argument, Function, Term
from candlecalc.faces import python as helpers
from candlecalc.faces.described import reference

HELPERS = (helpers.answer_in, helpers.find)
HEAD = '''"""{doc}"""

# mypy: disable-error-code="overload-overlap"
# pyright: reportOverlappingOverload=false
# Made from the declarations by: python tests/make_pages.py

from collections.abc import Callable as _Callable, Sequence as _Sequence
from datetime import date as _date
from decimal import Decimal as _Decimal
from typing import Any as _Any, Literal as _Literal, Protocol as _Protocol
from typing import TypeAlias as _TypeAlias, overload as _overload

import numpy as _np
import numpy.typing as _npt
import pandas as _pd

{records}
from candlecalc.declaration.declared import Function as _Formula

__all__ = {names}

__version__: str

class _Measured(_Protocol):
    """A number with its unit, as a Quantity of pint is."""

    @property
    def magnitude(self) -> _Any: ...
    @property
    def units(self) -> _Any: ...
    def to(self, other: _Any, /) -> _Any: ...

_Value: _TypeAlias = float | str | _Decimal | _Measured
_Day: _TypeAlias = _date | str | float
_Array: _TypeAlias = _Sequence[float | str | _Decimal | _Measured] | _npt.NDArray[_Any]
_Days: _TypeAlias = _Sequence[_date | str | float] | _npt.NDArray[_Any]
_Words: _TypeAlias = list[str] | _npt.NDArray[_Any]
_Column: _TypeAlias = _pd.Series[_Any]
_Cells: _TypeAlias = _Sequence[_Any] | _npt.NDArray[_Any] | _pd.Series[_Any]

def answer_in(unit: str, function: _Callable[..., _Any] | str, /, *given: _Any, **named: _Any) -> _Any:
{answer_in}
def find(function: _Callable[..., _Any] | str) -> _Formula:
{find}
'''
ARRAYS = {"float": "_npt.NDArray[_np.float64]", "_date": "_npt.NDArray[_np.datetime64]", "str": "_npt.NDArray[_Any]"}
COLUMNS = {"float": "_pd.Series[float]", "_date": "_pd.Series[_pd.Timestamp]", "str": "_pd.Series[str]"}


def text() -> str:
    """The stub, made from the declarations."""
    functions = [REGISTRY[name] for name in sorted(REGISTRY)]
    head = HEAD.format(
        doc=candlecalc.__doc__,
        records="\n".join(_records(functions)),
        names=listed(names()),
        answer_in=_documented(helpers.answer_in),
        find=_documented(helpers.find),
    )
    return head + "".join(map(_declared, functions))


def names() -> list[str]:
    """All that is public."""
    return sorted([*(formula.name for formula in reference.every()), *(helper.__name__ for helper in HELPERS)])


def earlier() -> list[str]:
    """The names that go on answering and are not listed."""
    return sorted(formula.name for formula in REGISTRY.values() if formula.instead)


def listed(names: Iterable[str]) -> str:
    """Names as a list in Python, one a line."""
    return "[\n" + "".join(f'    "{name}",\n' for name in names) + "]"


def _records(functions: Iterable[Function]) -> list[str]:
    """The lines that import what functions answer with, where it has several fields."""
    found = {_record(formula) for formula in functions if formula.fields}
    return sorted(f"from {each.__module__} import {each.__name__} as _{each.__name__}" for each in found)


def _record(formula: Function) -> Any:
    hint = inspect.signature(formula.bare).return_annotation
    return get_args(hint)[0] if formula.result.many else hint


def _declared(formula: Function) -> str:
    if formula.name != formula.bare.__name__:
        return f"{formula.name} = {formula.instead}\n"
    answer = _answer(formula)
    if not _takes_columns(formula):
        return f"def {formula.name}({_given(formula, 0)}) -> {answer}:\n{_documented(formula.checked)}"
    results = [answer, ARRAYS[_kind(formula.result)], COLUMNS[_kind(formula.result)]]
    bodies = ["\n" + _documented(formula.checked), " ...\n", " ...\n"]
    return "".join(
        f"@_overload\ndef {formula.name}({_given(formula, wide)}) -> {result}:{body}"
        for wide, (result, body) in enumerate(zip(results, bodies, strict=True))
    )


def _takes_columns(formula: Function) -> bool:
    single = any(not argument.term.many for argument in formula.arguments.values())
    return single and not (formula.fields or formula.result.many)


def _given(formula: Function, wide: int) -> str:
    """The arguments: single values (0), arrays as well (1), Series as well (2)."""
    return ", ".join(_argument(argument, wide) for argument in formula.arguments.values())


def _argument(argument: Argument, wide: int) -> str:
    term = argument.term
    if term.many:
        kinds = ["_Cells"]
    else:
        single, several = _single(term)
        kinds = [single, several, "_Column"][: wide + 1]
    blank = term.blank or (argument.optional and argument.default is None)
    default = f" = {argument.default!r}" if argument.optional else ""
    return f"{argument.name}: {' | '.join(kinds + ['None'] * blank)}{default}"


def _single(term: Term) -> tuple[str, str]:
    """The type of one value, and of several."""
    if term.choices:
        return f"_Literal[{', '.join(map(_quoted, term.choices))}]", "_Words"
    if term.text:
        return "str", "_Words"
    return ("_Day", "_Days") if term.unit == "date" else ("_Value", "_Array")


def _quoted(word: str) -> str:
    return f'"{word}"'


def _kind(term: Term) -> str:
    if term.is_number:
        return "float"
    return "_date" if term.unit == "date" else "str"


def _answer(formula: Function) -> str:
    one = f"_{_record(formula).__name__}" if formula.fields else _kind(formula.result)
    one = f"{one} | None" if formula.result.blank else one
    return f"list[{one}]" if formula.result.many else one


def _documented(function: Any) -> str:
    doc = inspect.getdoc(function) or ""
    return textwrap.indent(f'"""{doc}\n"""'.replace("\\", "\\\\"), "    ", lambda line: bool(line.strip())) + "\n"
