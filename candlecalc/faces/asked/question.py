"""A question as a person types it: which function is meant, and which words are which argument."""

import difflib
import re
from collections.abc import Iterable, Mapping
from typing import Any

from candlecalc.declaration.declared import REGISTRY, Argument, Function
from candlecalc.faces.addins import wizard
from candlecalc.faces.asked.finding import search
from candlecalc.faces.described.reference import span
from candlecalc.quantities import days, numerals, units

Given = dict[str, Any]
INTO = ("to", "in", "into")  # "12 oz in g"
WANTED = re.compile("(?:(?P<to>to)|in|into)[ =](?P<unit>[^=]+)", re.IGNORECASE)
FRACTION = re.compile(r"(?:[^ ]*[=;])?[0-9]+ [0-9]+/[0-9]+")


class CallError(ValueError):
    """The question itself is wrong, rather than a value in it."""


def function(name: str) -> Function:
    """The function of this name, however it is written: OIL-FOR-WAX, CANDLE_OIL_FOR_WAX."""
    plain = name.lower().replace("-", "_").removeprefix(wizard.PREFIX.lower())
    if plain in REGISTRY:
        return REGISTRY[plain]
    near = difflib.get_close_matches(plain, REGISTRY, cutoff=0.5) or [found.name for found in _found(plain)]
    told = {name: REGISTRY[name].summary for name in near}
    raise CallError(f"there is no function {name}. {_nearest(told) or 'List them with: candlecalc functions'}")


def _found(words: str) -> list[Function]:
    answers, nearest = search(words)
    return (answers or nearest)[:3]


def arguments(formula: Function, words: Iterable[str], read: Mapping[str, Any] | None = None) -> Given:
    """Words such as `wax=10 oz` and `7%` by argument name, as text; those without a name in order.

    What was `read` from elsewhere is given already.
    """
    given: Given = dict(read or {})
    rest = _joined(words)
    while rest:
        name, value = _next(formula, given, rest)
        name = _named(formula, name.strip().lower())
        if name in (read or {}):
            raise CallError(f"{name} is in the file already")
        _put(formula, given, name, value.strip())
    missing = [name for name, argument in formula.arguments.items() if not argument.optional and name not in given]
    if missing:
        needed = ", and ".join(prompt_for(formula.arguments[name]) for name in missing)
        raise CallError(f"{formula.name} also needs {needed}. {_in_order(formula)}")
    return given


def unit_wanted(formula: Function, words: list[str]) -> tuple[list[str], str]:
    """The words without the unit that the answer is wanted in, and that unit: `to=oz`, `in fl oz`; "" for none."""
    for size in (1, 2, 3, 4):
        match = WANTED.fullmatch(" ".join(words[-size:]))
        # "in" is an inch as well: it asks for a unit only where one follows.
        if match and not formula.result.unit_in and (match["to"] or units.kind_of_spelling(match["unit"])):
            refuse_unit(formula, match["unit"])
            return words[:-size], match["unit"]
    return words, ""


def refuse_unit(formula: Function, unit: str) -> None:
    """A CallError where an answer cannot be in a unit."""
    kind = units.kind_of_spelling(unit)
    terms = [*formula.fields.values()] or [formula.result]
    if not kind:
        raise CallError(f'"{unit}" is no unit known here; it takes a unit such as g, oz, ml or C')
    if not any(units.in_kind(unit, term.unit) for term in terms):
        own = ", ".join(dict.fromkeys(term.unit for term in terms if term.unit in units.DIMENSIONS)) or "no unit"
        raise CallError(f'{formula.name} answers in {own}: "{unit}" is for {kind}')


def _next(formula: Function, given: Given, rest: list[str]) -> tuple[str, str]:
    """The next argument and its text, taken off the words that are left."""
    word = rest.pop(0)
    name, equals, value = word.partition("=")
    if equals:
        return name, value
    if formula.result.unit_in and rest and word.lower() in INTO:
        return formula.result.unit_in, rest.pop(0)
    for name in formula.arguments:
        if name not in given:
            return name, word
    raise CallError(f"{word} is one too many. {_in_order(formula)}")


def _named(formula: Function, name: str) -> str:
    """An argument's name as typed; of a list, also for one of it: `load=8%`."""
    several = f"{name}s"
    argument = formula.arguments.get(several)
    return several if name not in formula.arguments and argument and argument.term.many else name


def _put(formula: Function, given: Given, name: str, value: str) -> None:
    if name not in formula.arguments:
        near = difflib.get_close_matches(name, formula.arguments, cutoff=0.5)
        told = {name: formula.arguments[name].term.help for name in near}
        raise CallError(f"{formula.name} has no {name}. {_nearest(told) or _in_order(formula)}")
    term = formula.arguments[name].term
    if name in given and not term.many and given[name] != value:
        raise CallError(f"{name} is given twice")
    if term.unit_in:
        value = _without_unit(given, name, value, term.unit_in)
    given[name] = [*given.get(name, []), value] if term.many else value


def _without_unit(given: Given, name: str, value: str, unit_in: str) -> str:
    """A number without the unit beside it, which goes to the argument that states it."""
    try:
        number, unit = units.written(value)
    except ValueError:
        return value
    if unit_in in given and units.named(given[unit_in]) != unit:
        raise CallError(f'{name} is "{value}", and {unit_in} is {given[unit_in]}: which of the two?')
    given[unit_in] = units.NAMES[unit]
    return f"{number:.15g}"


def _joined(words: Iterable[str]) -> list[str]:
    """Words put back together where quotes were forgotten: `wax=10 oz` arrives as two words."""
    rest, joined = list(words), []
    while rest:
        size = next((size for size in (4, 3, 2) if size <= len(rest) and _one(rest[:size])), 1)
        if size == 1 and FRACTION.fullmatch(numerals.plain(" ".join(rest[:2]))):
            raise CallError(f"{' '.join(rest[:2])} may be one number or two: put quotes around it, or name both")
        joined.append(" ".join(rest[:size]))
        rest = rest[size:]
    return joined


def _one(words: list[str]) -> bool:
    """Whether words are one value: a number with its unit or its currency, or a day."""
    # Before the first there may be the argument's name, or more of a list.
    value = " ".join([re.split("[=;]", words[0])[-1], *words[1:]])
    return units.one(value) or days.read(value) is not None


def _nearest(told: Mapping[str, str]) -> str:
    words = [f"{name} ({help_text.rstrip('.')})" for name, help_text in told.items()]
    return f"Nearest: {'; '.join(words)}." if words else ""


def _in_order(formula: Function) -> str:
    """The whole call, what may be left out in brackets: `In order: vessels_filled wax fill [load]`."""
    names = [f"[{name}]" if argument.optional else name for name, argument in formula.arguments.items()]
    return f"In order: {' '.join([formula.name, *names])}"


def prompt_for(argument: Argument) -> str:
    """The question for one argument: `wax: wax in the melt, before any oil (0 g or more)`."""
    return f"{argument.name}: {argument.term.help} ({span(argument.term)})"
