"""The functions as data, for another program to read."""

import json
from collections.abc import Iterable

from candlecalc.declaration import native
from candlecalc.declaration.declared import Argument, Function, Term
from candlecalc.faces.described.reference import told


def as_json(formulas: Iterable[Function]) -> str:
    """The same as data, for another program to read."""
    return json.dumps([_data(formula) for formula in formulas], indent=2, ensure_ascii=False)


def _data(formula: Function) -> dict[str, object]:
    purpose, example = told(formula)
    return {
        "name": formula.name,
        "subject": formula.subject,
        "part": formula.part,
        "summary": formula.summary,
        "purpose": purpose,
        "arguments": [_argument_data(argument) for argument in formula.arguments.values()],
        "result": _term_data(formula.result),
        "fields": [{"name": name, **_term_data(term)} for name, term in formula.fields.items()],
        "formula": native.spell(formula.native) if formula.native else None,
        "no formula because": formula.no_native or None,
        "requires": list(formula.requires.values()),
        "notes": list(formula.notes.values()),
        "source": formula.source,
        "example": example,
    }


def _argument_data(argument: Argument) -> dict[str, object]:
    default = {"default": argument.default} if argument.optional else {}
    return {"name": argument.name, **_term_data(argument.term), **default}


def _term_data(term: Term) -> dict[str, object]:
    choices = {"choices": list(term.choices)} if term.choices else {}
    return {"unit": term.unit, "range": term.range, "help": term.help, "list": term.many, **choices}
