"""Functions as names of a workbook, each a LAMBDA: Microsoft 365 and Excel 2024 calculate them, nothing installed.

In a file the newer functions and every parameter carry prefixes (`_xlfn.LAMBDA`, `_xlpm.wax`), and without
them a name is lost for good; they are put on the parsed native form, never on its text.
"""

import re
from collections.abc import Mapping
from functools import cache
from typing import NamedTuple

import candlecalc.calc  # noqa: F401  fills the registry
from candlecalc import __version__
from candlecalc.declaration.declared import REGISTRY, Argument, Function
from candlecalc.declaration.guard import bare, default, guarded
from candlecalc.declaration.native import Call, Leaf, Name, Node, spell
from candlecalc.faces.addins import wizard

LONGEST = 8191  # characters of a formula
HELP_LENGTH = 255  # characters of a name's comment
MARK = re.compile(r"\(candlecalc [0-9][0-9a-z.]*\)$")


class Named(NamedTuple):
    """A name of a workbook: what cells call it by, what it stands for, the help that goes with it."""

    name: str
    definition: str
    comment: str
    hidden: bool = False  # an earlier name: sheets that hold it go on, and no list shows it


class Spelling(NamedTuple):
    """How a LAMBDA is written: the prefixes of newer functions and of parameters, and optional ones."""

    function: str
    parameter: str
    optional: str


IN_FILES = Spelling("_xlfn.", "_xlpm.", "_xlop.{}")
AS_TYPED = Spelling("", "", "[{}]")


@cache  # declarations do not change, and to write their names takes a tenth of a second
def every() -> tuple[Named, ...]:
    """The names of all functions that have a native form, sorted as files keep them: by letters, in any case."""
    names = (named(formula) for formula in REGISTRY.values() if formula.native)
    return tuple(sorted(names, key=lambda it: it.name.lower()))


def named(formula: Function) -> Named:
    return Named(wizard.name(formula), _written(formula, IN_FILES), comment(formula), bool(formula.instead))


def typed(formula: Function) -> str:
    """The definition as a person types or pastes it into the program's list of names."""
    return "=" + _written(formula, AS_TYPED)


def comment(formula: Function) -> str:
    """What it is for and what it takes, as far as a comment holds it, with the mark that it is ours."""
    mark = f" (candlecalc {__version__})"
    arguments = "; ".join(f"{name}: {_taken(argument)}" for name, argument in formula.arguments.items())
    words = f"{wizard.purpose(formula)} {arguments}"
    room = HELP_LENGTH - len(mark)
    if len(words) > room:
        words = words[: room - 3].rpartition(" ")[0] + " ..."
    return words + mark


def is_ours(definition: str, comment: str, ours: Named) -> bool:
    """Whether a name in a workbook was put there by us: it carries our mark, or stands for just the same.

    Some programs drop comments, and write functions in small letters.
    """
    return bool(MARK.search(comment)) or _plain(definition) == _plain(ours.definition)


def _taken(argument: Argument) -> str:
    many = "list, each " if argument.term.many else ""
    return f"{many}{argument.term.range}" + (" (may be left out)" if argument.optional else "")


def _plain(definition: str) -> str:
    return "".join(definition.split()).lower().removeprefix("=")


def _written(formula: Function, spelling: Spelling) -> str:
    parameters = [_parameter(argument, spelling) for argument in formula.arguments.values()]
    text = spell(Call(f"{spelling.function}LAMBDA", (*parameters, _body(formula, spelling))))
    if len(text) > LONGEST:
        raise ValueError(f"{formula.name}: its LAMBDA has {len(text)} characters; at most {LONGEST} are taken")
    return text


def _parameter(argument: Argument, spelling: Spelling) -> Node:
    return Leaf(spelling.optional.format(argument.name)) if argument.optional else _name(argument.name, spelling)


def _body(formula: Function, spelling: Spelling) -> Node:
    """What is left out at its default, then the answer, then the ranges around it."""
    lines: dict[str, Node] = {}
    values: dict[str, Node] = {}
    for name, argument in formula.arguments.items():
        values[name] = _name(name, spelling)
        if argument.optional:
            left_out = Call(f"{spelling.function}ISOMITTED", (values[name],))
            lines[f"{name}_taken"] = Call("IF", (left_out, default(argument), values[name]))
            values[name] = _name(f"{name}_taken", spelling)
    lines["answer"] = bare(formula, values)
    guard = guarded(formula, values, answer=_name("answer", spelling))
    return Call(f"{spelling.function}LET", (*_lines(lines, spelling), guard))


def _lines(lines: Mapping[str, Node], spelling: Spelling) -> list[Node]:
    return [node for name, value in lines.items() for node in (_name(name, spelling), value)]


def _name(name: str, spelling: Spelling) -> Node:
    return Name(spelling.parameter + name)
