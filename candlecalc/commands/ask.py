"""The functions at the terminal: one question asked and answered."""

import re
from collections.abc import Iterable, Mapping
from contextlib import suppress
from typing import Any

from candlecalc.declaration.declared import Argument, Function, Term
from candlecalc.faces.asked.question import Given, arguments, function, unit_wanted
from candlecalc.faces.asked.results import lines, shown
from candlecalc.quantities import units


def ask(name: str, words: Iterable[str]) -> list[str]:
    """The answer to a question as typed, a line for each number; a ValueError says what is wrong."""
    formula = function(name)
    rest, wanted = unit_wanted(formula, list(words))
    return answer(formula, arguments(formula, rest), wanted)


def answer(formula: Function, given: Mapping[str, Any], wanted: str = "") -> list[str]:
    """The result of a function for arguments as text, as it is shown: a line for each number.

    `wanted` is the unit to show it in, as it is spelled; else it is the one that was asked in.
    """
    given = {name: _value(formula.arguments[name], text) for name, text in given.items()}
    per = ""
    if formula.result.unit == "money per unit":
        given, per = _without_pack_unit(formula, given)
    rows = formula.rows(formula.call(**given))
    digits = int(float(given.get("digits", 2)))
    terms = formula.fields or {"": formula.result}
    unit = {
        name: (wanted and units.in_kind(wanted, term.unit)) or _unit_asked(formula, term, given)
        for name, term in terms.items()
    }
    words = [
        [shown(value, term, unit[name], digits, per) for (name, term), value in zip(terms.items(), row, strict=True)]
        for row in rows
    ]
    return lines(formula, words)


def checked(argument: Argument, text: str) -> Any:
    """A text for one argument as `answer` takes it; a ValueError says what is wrong with it."""
    given = [text] if argument.term.many else text
    argument.read(_value(argument, given))
    return given


def _value(argument: Argument, text: Any) -> Any:
    """A text as the declaration takes it: a list cut into its parts."""
    if argument.term.text or argument.term.unit == "date":
        return text  # commas and semicolons are its own
    if argument.term.many:
        return [_number(argument.term, part) for piece in text for part in _parts(argument.name, piece)]
    return text


def _number(term: Term, text: str) -> Any:
    """At the terminal all is text: a bare number in a list is one."""
    with suppress(ValueError):
        value, unit = units.read(text, term.unit)
        return text if unit else value
    return text


def _parts(name: str, text: str) -> list[str]:
    if ";" in text:
        return [part.strip() for part in text.split(";")]
    # "1,5" may be one and a half or two numbers; where points are in use it can only be two.
    unclear = re.search(r"[0-9],[0-9]", text) and "." not in text
    if unclear:
        raise ValueError(f'{name} is "{text}"; put semicolons between its values: "{text.replace(",", "; ")}"')
    return [part.strip() for part in text.split(",")]


def _without_pack_unit(formula: Function, given: Given) -> tuple[Given, str]:
    """A cost per unit is per the unit its pack was counted in: "10 lb" is ten, and the cost is per lb."""
    for name, text in given.items():
        single = formula.arguments[name].term.unit == "" and isinstance(text, str)
        number, unit = _measured(text) if single else (0.0, "")
        if unit:
            return {**given, name: number}, unit
    return given, ""


def _measured(text: str) -> tuple[float, str]:
    """A text as a number of its own unit, whatever it measures; no unit where it has none."""
    with suppress(ValueError):
        value, unit = units.written(text)
        return float(f"{value:.12g}"), units.NAMES[unit]
    return 0.0, ""


def _unit_asked(formula: Function, result: Term, given: Given) -> str:
    """The unit written in the first argument that is counted as the result is.

    A function from one unit into another answers in the unit it is for: degrees F into C, weeks into days.
    """
    if result.unit_in:
        return units.named(given[result.unit_in])
    for name, value in given.items():
        term = formula.arguments[name].term
        alike = term.unit == result.unit and term.unit in units.DIMENSIONS and term.unit != "days"
        for text in value if isinstance(value, list) else [value]:
            unit = units.read(text, term.unit).unit if alike and isinstance(text, str) and text else ""
            if unit:
                return unit
    return ""
