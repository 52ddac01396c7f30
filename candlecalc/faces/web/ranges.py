"""Ranges as the script knows them: each under the words that messages show, so that the script reads as they do."""

from collections.abc import Iterable
from dataclasses import MISSING, fields, replace
from typing import Any

from candlecalc.declaration.declared import Function, Term

# What is shown elsewhere or by the range itself, or decides nothing in a sheet.
SAID_ELSEWHERE = {"help", "rounding", "unit_in"}
USUAL = {field.name: field.default for field in fields(Term)} | {"unit": ""}


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
        """The name of a term's range: its words, and a number where the same words stand for another."""
        words = ("list, each " if term.many else "") + term.range
        facts = {name: value for name, value in vars(term).items() if name not in SAID_ELSEWHERE}
        facts = {name: value for name, value in facts.items() if value != USUAL.get(name, MISSING)}
        count, name = 1, words
        while self.known.setdefault(name, facts) != facts:
            count += 1
            name, facts = f"{words} ({count})", {**facts, "range": term.range}
        return name


def result_of(function: Function) -> Term:
    """What one value of a result is."""
    return replace(function.result, many=False)
