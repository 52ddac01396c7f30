"""Ranges as the script knows them: each once, under its unit and a number where the unit has several."""

from collections.abc import Iterable
from dataclasses import fields, replace
from typing import Any

from candlecalc.calc.terms import PERCENT
from candlecalc.declaration.declared import Function, Term
from candlecalc.faces.web.counterparts import noted

# What decides whether a value is taken, and what is told where it is not.
DECIDING = ["unit", "low", "high", "low_excluded", "whole", "hint", "bare", "choices", "text", "blank"]
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
        facts = {name: getattr(term, name) for name in DECIDING if getattr(term, name) != USUAL[name]}
        kind = "choice" if term.choices else "text" if term.text else term.unit or "number"
        # Its name says its unit, and most hints are the one.
        facts = {key: value for key, value in facts.items() if (key, value) != ("unit", kind)}
        if facts.get("hint") == PERCENT:
            facts["hint"] = "%"
        return noted(self.known, facts, kind, "{} {}")


def result_of(function: Function) -> Term:
    """What one value of a result is."""
    return replace(function.result, many=False)
