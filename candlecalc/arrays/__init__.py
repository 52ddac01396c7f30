"""A declared function over columns: a Series, a NumPy array or a list in place of any single argument.

Asked by `Function.call` when it is given one, so that neither NumPy nor pandas is in the start.
"""

from collections.abc import Mapping
from typing import Any

import numpy as np

from candlecalc.arrays import given, rows
from candlecalc.arrays.given import Column
from candlecalc.declaration.declared import Function
from candlecalc.declaration.term import is_column


def call(formula: Function, arguments: Mapping[str, Any]) -> Any:
    """The answers for every row: a Series where one was given, with its index and name, else an array.

    Columns broadcast as NumPy's do. A ValueError says how many rows are refused, and why the first of them are.
    """
    if formula.result.many or formula.fields:
        raise ValueError(f"{formula.name}: its answer is several values; give it single values, not columns")
    columns, fixed = {}, {}
    try:
        for name, argument in formula.arguments.items():
            value = arguments.get(name, argument.default)
            if is_column(value) and not argument.term.many:
                columns[name] = given.column(argument, value)
            else:
                fixed[name] = argument.read(value)
        shape = _shape(columns)
    except ValueError as problem:
        raise ValueError(f"{formula.name}: {problem}") from None
    index = given.index_of(formula.name, arguments, columns, shape)
    flat = {name: _flat(column, shape) for name, column in columns.items()}
    answers, refused = rows.answers(formula, flat, fixed, int(np.prod(shape)))
    if refused:
        raise ValueError(rows.refusal(formula, flat, fixed, refused, shape, index))
    return given.like(answers.reshape(shape), index, arguments.values())


def _shape(columns: Mapping[str, Column]) -> tuple[int, ...]:
    try:
        return np.broadcast_shapes(*(column.cells.shape for column in columns.values()))
    except ValueError:
        told = ", ".join(f"{name} has {_size(column)}" for name, column in columns.items())
        raise ValueError(f"columns of one length are wanted: {told}") from None


def _size(column: Column) -> str:
    return " by ".join(str(size) for size in column.cells.shape)


def _flat(column: Column, shape: tuple[int, ...]) -> Column:
    """The column as long as there are rows; no copy is made where it is so already."""
    return Column(*(np.broadcast_to(part, shape).reshape(-1) for part in column))
