"""Columns as they are given, read as `calc` takes them; and answers in the form of what was given."""

import sys
from collections.abc import Iterable, Mapping, Sequence
from contextlib import suppress
from datetime import date
from typing import Any, NamedTuple

import numpy as np
from numpy.typing import NDArray

from candlecalc.declaration.declared import Argument, Term
from candlecalc.declaration.term import NUMBERS, is_column, is_quantity, magnitude

Array = NDArray[Any]


class Column(NamedTuple):
    """One argument of many rows: the cells as given, which messages show, and the values in the term's unit."""

    cells: Array
    values: Array  # NaN, or None, where a cell is not taken


def column(argument: Argument, value: Any) -> Column:
    """A column as it is given; what is wrong in it is found row by row, a wrong dimension at once."""
    if is_quantity(value):
        try:
            value = magnitude(value, argument.term.unit)
        except ValueError as problem:
            raise ValueError(f"{argument.name} is in {value.units}: {problem}") from None
    cells = _cells(value)
    if cells.dtype.kind in "iuf" and argument.term.is_number:
        values = cells.astype(float, copy=False)
        return Column(values, values)
    if any(is_column(cell) for cell in {type(cell): cell for cell in cells.flat}.values()):
        raise ValueError(f"{argument.name} has a list inside a list of another shape; it takes {argument.term.range}")
    return Column(cells, _read(argument.term, cells))


def index_of(name: str, arguments: Mapping[str, Any], columns: Mapping[str, Column], shape: tuple[int, ...]) -> Any:
    """The index that every Series has; None where there is none.

    Series of other rows are refused: put side by side by their labels they would leave gaps.
    """
    found = [arguments[name].index for name in columns if _is_series(arguments[name])]
    if any(not each.equals(found[0]) for each in found[1:]):
        raise ValueError(f"{name}: columns of one index are wanted; align them first, or give .to_numpy()")
    if found and shape != (len(found[0]),):
        raise ValueError(f"{name}: the columns beside a Series of {len(found[0])} rows are longer")
    return found[0] if found else None


def like(answers: Array, index: Any, arguments: Iterable[Any]) -> Any:
    """The answers as a Series where one was given, by its index; by its name too, where all have the same."""
    if index is None:
        return answers
    series = [value for value in arguments if _is_series(value)]
    same = all(each.name == series[0].name for each in series)
    return type(series[0])(answers, index=index, name=series[0].name if same else None)


def _is_series(value: Any) -> bool:
    # What was never imported was never given.
    pandas = sys.modules.get("pandas")
    return pandas is not None and isinstance(value, pandas.Series)


def _cells(value: Any) -> Array:
    if isinstance(value, (list, tuple)):
        return _listed(value)
    if _is_series(value) and value.dtype.kind in "iuf":
        return np.asarray(value.to_numpy(dtype=float, na_value=np.nan))  # a nullable column has blanks of its own
    cells = np.asarray(value)
    if cells.dtype.kind == "M":
        return cells.astype("datetime64[D]").astype(object)
    return cells if cells.dtype.kind in "iuf" else cells.astype(object)


def _listed(value: Sequence[Any]) -> Array:
    kinds = {type(cell) for cell in value}
    if kinds <= NUMBERS:
        with suppress(OverflowError):  # a whole number beyond what a float holds is refused in its row
            return np.array(value, dtype=float)
    if kinds & {list, tuple, np.ndarray}:
        return np.array(value, dtype=object)
    return np.fromiter(value, dtype=object, count=len(value))  # NumPy would take the unit off a quantity


def _read(term: Term, cells: Array) -> Array:
    """Every cell read, each distinct one once: a column has few distinct texts."""
    known: dict[Any, Any] = {}
    values = [_value(term, cell, known) for cell in cells.reshape(-1)]
    read = (
        np.array(values, dtype=float) if term.is_number and not term.blank else np.fromiter(values, object, len(values))
    )
    return read.reshape(cells.shape)


def _value(term: Term, cell: Any, known: dict[Any, Any]) -> Any:
    if term.is_number and cell.__class__ is float:
        return cell  # its range is looked at over the whole column
    key = (cell.__class__, cell)  # TRUE equals 1, but is not the same
    try:
        return known[key]
    except KeyError:
        value = known[key] = _one(term, cell)
        return value
    except TypeError:  # no key can be made of it
        return _one(term, cell)


def _one(term: Term, cell: Any) -> Any:
    try:
        return term.read(cell)
    except ValueError:
        return np.nan if term.is_number else None


def held(term: Term, answers: list[Any]) -> Array:
    """Answers of the slow way as an array of their kind; those of refused rows are None."""
    if term.is_number:
        return np.array([np.nan if each is None else each for each in answers], dtype=float)
    if term.unit == "date":
        return np.array([each if isinstance(each, date) else None for each in answers], dtype="datetime64[D]")
    return np.fromiter(answers, dtype=object, count=len(answers))
