"""Ranges as the script knows them: each once, under its unit and a number where the unit has several."""

from collections.abc import Iterable
from dataclasses import fields, replace
from typing import Any

from candlecalc.declaration.declared import Function, Term

# What is shown elsewhere or decides nothing in a sheet.
SAID_ELSEWHERE = {"help", "rounding", "unit_in"}
USUAL = {field.name: field.default for field in fields(Term)} | {"unit": ""}
LIST = "list of "


class Ranges:
    """The ranges of some functions, each by a name of its own."""

    def __init__(self, functions: Iterable[Function]) -> None:
        self.known: dict[str, dict[str, Any]] = {}
        for function in functions:
            for argument in function.arguments.values():
                self.name(argument.term)
            for term in (result_of(function), *function.fields.values()):
                self.name(term)

    def name(self, term: Term) -> str:
        """The name of a term's range; of a list, of what each value in it is."""
        if term.many:
            return LIST + self.name(replace(term, many=False))
        known = {name: value for name, value in vars(term).items() if name not in SAID_ELSEWHERE}
        facts = {name: value for name, value in known.items() if value != USUAL[name]}
        kind = "choice" if term.choices else "text" if term.text else term.unit or "number"
        count, name = 1, kind
        while self.known.setdefault(name, facts) != facts:
            count += 1
            name = f"{kind} {count}"
        return name


def result_of(function: Function) -> Term:
    """What one value of a result is."""
    return replace(function.result, many=False)
