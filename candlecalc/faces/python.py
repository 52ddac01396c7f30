"""What stands beside the functions in Python: an answer in another unit, and the declaration of a function."""

from collections.abc import Callable
from typing import Any

import candlecalc.calc  # noqa: F401  fills the registry
from candlecalc.declaration.declared import Function, Term
from candlecalc.faces.asked import question
from candlecalc.quantities import units

Named = Callable[..., Any] | str


def find(function: Named) -> Function:
    """The declaration of a function, by the function or its name: arguments, units, ranges, source.

    A ValueError names the nearest where there is none of that name.

    >>> find("oil_for_wax").arguments["load"].term.range
    '0 to 0.5 of wax weight'
    """
    return question.function(function if isinstance(function, str) else function.__name__)


def answer_in(unit: str, function: Named, /, *given: Any, **named: Any) -> Any:
    """What a function answers, in the unit asked for; a ValueError where its answer has no such unit.

    Of an answer with several fields, those that the unit measures are in it. Nothing is rounded.

    >>> round(answer_in("oz", "oil_for_wax", wax="10 oz", load=0.07), 6)
    0.7
    """
    declared = find(function)
    if declared.result.unit_in:
        raise ValueError(f"{declared.name}: {declared.result.unit_in} says which unit it answers in")
    question.refuse_unit(declared, unit)
    answer = declared.checked(*given, **named)
    if declared.result.many:
        return [_row_in(unit, declared, row) for row in answer]
    return _row_in(unit, declared, answer)


def _row_in(unit: str, declared: Function, row: Any) -> Any:
    if not declared.fields:
        return _in(unit, declared.result, row)
    values = {name: _in(unit, term, getattr(row, name)) for name, term in declared.fields.items()}
    return row._replace(**values)


def _in(unit: str, term: Term, value: Any) -> Any:
    """A value, or a column of them, in the unit where its term measures the same."""
    wanted = units.in_kind(unit, term.unit)
    if value is None or not wanted:
        return value
    if wanted == "percent":
        return value * 100
    return units.convert(value, units.DIMENSIONS[term.unit][1], wanted)
