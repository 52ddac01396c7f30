"""A question as a person types it: which function is meant, and which words are which argument."""

import difflib
from collections.abc import Iterable
from typing import Any

from candlecalc import units
from candlecalc.faces import wizard
from candlecalc.faces.finding import find
from candlecalc.faces.reference import span
from candlecalc.formula import REGISTRY, Argument, Formula

Given = dict[str, Any]


class CallError(ValueError):
    """The question itself is wrong, rather than a value in it."""


def function(name: str) -> Formula:
    """The function of this name, however it is written: OIL-FOR-WAX, CANDLE_OIL_FOR_WAX."""
    plain = name.lower().replace("-", "_").removeprefix(wizard.PREFIX.lower())
    if plain in REGISTRY:
        return REGISTRY[plain]
    near = difflib.get_close_matches(plain, REGISTRY, cutoff=0.5) or [found.name for found in find(plain)[:3]]
    raise CallError(f"there is no function {name}. {_nearest(near) or 'List them with: candlecalc functions'}")


def arguments(formula: Formula, words: Iterable[str]) -> Given:
    """Words such as `wax=10 oz` and `7%` by argument name, as text; those without a name in order."""
    given: Given = {}
    for word in _joined(words):
        name, equals, value = word.partition("=")
        if not equals:
            name, value = next((name for name in formula.arguments if name not in given), ""), word
        if not name:
            raise CallError(f"{word} is one too many: {formula.name} takes {', '.join(formula.arguments)}")
        _put(formula, given, name.strip().lower(), value.strip())
    missing = [name for name, argument in formula.arguments.items() if not argument.optional and name not in given]
    if missing:
        raise CallError(f"{formula.name} also needs {', and '.join(prompt_for(formula.arguments[n]) for n in missing)}")
    return given


def _put(formula: Formula, given: Given, name: str, value: str) -> None:
    if name not in formula.arguments:
        near = difflib.get_close_matches(name, formula.arguments, cutoff=0.5)
        raise CallError(f"{formula.name} has no {name}. {_nearest(near or formula.arguments)}")
    many = formula.arguments[name].term.many
    if name in given and not many:
        raise CallError(f"{name} is given twice")
    given[name] = [*given.get(name, []), value] if many else value


def _joined(words: Iterable[str]) -> list[str]:
    """Words with a unit put back where quotes were forgotten: `wax=10 oz` arrives as two words."""
    joined: list[str] = []
    for word in words:
        if joined and _goes_on(joined[-1].lower(), word.lower()):
            joined[-1] += f" {word}"
        else:
            joined.append(word)
    return joined


def _goes_on(before: str, word: str) -> bool:
    if before.endswith(" fl"):
        return word == "oz"
    return before[-1:].isdigit() and (word in units.SPELLINGS or word == "fl")


def _nearest(names: Iterable[str]) -> str:
    return f"Nearest: {', '.join(names)}." if names else ""


def prompt_for(argument: Argument) -> str:
    """The question for one argument: `wax: wax in the melt, before any oil (0 g or more)`."""
    return f"{argument.name}: {argument.term.help} ({span(argument.term)})"
