"""The columns' turn in tests over faces: every single argument becomes a column, in one of its forms by turns.

Each call is a row among others that are taken, so that its own row is the one refused, by its own reason.
"""

import itertools
import math

import libreoffice
import numpy as np
import pandas as pd
from samples import in_a_cell

ROWS = 3


def takes(call):
    """Whether a call has a single argument to make a column of, and one value for an answer."""
    formula = call.formula
    single = [given for given, argument in _pairs(call) if given is not None and not argument.term.many]
    return (
        bool(single)
        and not any(isinstance(given, tuple) for given in single)
        and not (formula.fields or formula.result.many)
    )


def calculate(calls):
    """For each call the rows of cells that a sheet would have: the answer in its row, or an error."""
    return [_answer(call, form) for call, form in zip(calls, itertools.cycle(FORMS), strict=False)]


def _pairs(call):
    return zip(call.cells, call.formula.arguments.values(), strict=True)


def _answer(call, form):
    given = {
        argument.name: list(cell) if isinstance(cell, tuple) else cell if argument.term.many else form([cell] * ROWS)
        for cell, argument in _pairs(call)
        if cell is not None
    }
    try:
        answers = call.formula.checked(**given)
    except TypeError:  # a required argument is left out
        return [[libreoffice.Error("#N/A")]]
    except ValueError as problem:
        _same_reason(call, str(problem))
        return [[libreoffice.Error("#N/A")]]
    assert len(answers) == ROWS and len(set(map(str, answers))) == 1
    return [[_cell(list(answers)[-1], call.formula.result)]]


def _same_reason(call, told):
    """The reason is that of a plain call, for each of the rows; what is wrong in a list is told once for all."""
    given = {argument.name: cell for cell, argument in _pairs(call) if cell is not None}
    try:
        call.formula.call(**given)
    except ValueError as problem:
        reason = str(problem).removeprefix(f"{call.name}: ")
        rows = "".join(f" Row {row}: {reason}" for row in range(ROWS))
        lists = any(argument.term.many for argument in call.formula.arguments.values())
        once = told.removeprefix(f"{call.name}: ").rstrip(".?")
        assert told == f"{call.name}: {ROWS} of {ROWS} rows are refused.{rows}" or (lists and once in reason)
    else:
        raise AssertionError(f"{told}; a plain call is taken: {given}")


def _cell(answer, term):
    if term.unit == "date":
        return in_a_cell(pd.Timestamp(answer).date())
    blank = answer is None or (isinstance(answer, float) and math.isnan(answer))
    return "" if blank else answer


# What a column may come as.
FORMS = [list, pd.Series, np.array, lambda cells: np.array(cells, dtype=object), tuple]
