"""A function as a formula to paste into any spreadsheet, over the maker's own cells."""

import re
from collections.abc import Iterable
from datetime import date

from candlecalc.declaration import native
from candlecalc.declaration.declared import Argument, Function
from candlecalc.declaration.guard import bare as without_tests
from candlecalc.declaration.guard import guarded, native_of
from candlecalc.declaration.native import Leaf, Node
from candlecalc.faces.asked import question
from candlecalc.quantities import days

CELL = r"\$?[A-Za-z]{1,3}\$?[1-9][0-9]*"
TAB = r"(?:'(?:[^']|'')+'!|[^\W\d][\w.]*!)?"
REFERENCE = re.compile(rf"{TAB}{CELL}(?::{CELL})?")
NAME = re.compile(r"[^\W\d][\w.]*")  # a name that the maker gave to a cell


def pasted(formula: Function, words: Iterable[str], bare: bool = False) -> str:
    """The formula for arguments such as `wax=B4`; a ValueError says what is wrong with them.

    >>> pasted(question.function("oil_for_wax"), ["wax=B4", "load=C4"], bare=True)
    '=B4*C4'
    """
    native_of(formula)  # that there is none is said before what is wrong with an argument
    given = {name: _node(formula.arguments[name], text) for name, text in question.arguments(formula, words).items()}
    tree = without_tests(formula, given) if bare else guarded(formula, given)
    return "=" + native.spell(tree)


def _node(argument: Argument, typed: str | list[str]) -> Node:
    """What stands in the formula: a cell, a range or a name as it is, a value in the unit of its term."""
    if argument.term.many:
        return _range(argument, typed)
    text = str(typed)
    if REFERENCE.fullmatch(text):
        if ":" in text:
            raise ValueError(f"{argument.name} is {text}; it takes one cell, not a range")
        return Leaf(text)
    try:
        value = argument.read(text)
    except ValueError:
        if NAME.fullmatch(text) and not argument.term.choices:
            return Leaf(text)
        raise
    if isinstance(value, date):
        value = days.serial(value)
    return Leaf(f'"{value}"' if isinstance(value, str) else native.number(value))


def _range(argument: Argument, typed: str | list[str]) -> Node:
    text = ";".join(typed)
    if not (REFERENCE.fullmatch(text) or NAME.fullmatch(text)):
        raise ValueError(f'{argument.name} is "{text}"; in a formula it takes a range such as B4:B12')
    return Leaf(text)
