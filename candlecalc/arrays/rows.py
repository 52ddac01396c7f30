"""Rows worked out: in blocks by the native form where an array can say it, else one by one.

The blocks answer only what is plainly in range. Whatever is not goes to the scalar function, which decides,
settles a crumb past an end, or refuses: so both come to the same.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import repeat
from typing import Any

import numpy as np

from candlecalc.arrays import given
from candlecalc.arrays.form import Form, form_of
from candlecalc.arrays.given import Array, Column
from candlecalc.declaration.declared import Function, Term

BLOCK = 32_768  # rows that stay in the processor's cache
SHOWN = 5  # refused rows that a message tells of

NONE = np.empty(0, int)

Columns = Mapping[str, Column]
Fixed = Mapping[str, Any]


def answers(formula: Function, columns: Columns, fixed: Fixed, count: int) -> tuple[Array, list[int]]:
    """The answer of every row, and the places of those refused."""
    form = form_of(formula)
    if form is None:
        return _one_by_one(formula, columns, fixed, count)
    found, refused = np.empty(count), []
    for start in range(0, count, BLOCK):
        rows = slice(start, min(start + BLOCK, count))
        block = {name: column.values[rows] for name, column in columns.items()}
        doubtful, out = _block(formula, form, block, fixed, found[rows])
        refused += [start + int(place) for place in out]
        for place in doubtful:
            try:
                found[start + place] = formula.checked(**_row(columns, fixed, start + place))
            except ValueError:
                refused.append(start + int(place))
    return found, sorted(refused)


def refusal(
    formula: Function, columns: Columns, fixed: Fixed, refused: Sequence[int], shape: tuple[int, ...], index: Any
) -> str:
    """How many rows are refused, and the reasons of the first of them, by their labels."""
    told = [f"{formula.name}: {len(refused):,} of {int(np.prod(shape)):,} rows are refused."]
    for place in refused[:SHOWN]:
        where = np.unravel_index(place, shape)
        label = index[place] if index is not None else ", ".join(str(each) for each in where)
        told.append(f"Row {label}: {_reason(formula, _row(columns, fixed, place))}")
    return " ".join(told + [f"And {len(refused) - SHOWN:,} more."] * (len(refused) > SHOWN))


def _reason(formula: Function, row: Mapping[str, Any]) -> str:
    try:
        formula.call(**row)
    except ValueError as problem:
        return str(problem).removeprefix(f"{formula.name}: ")
    raise AssertionError(f"{formula.name}: a row that is taken alone was refused: {row}")


def _block(
    formula: Function, form: Form, block: Mapping[str, Array], fixed: Fixed, found: Array
) -> tuple[Array, Array]:
    """Answers of one block, written into `found`; the places that the scalar function decides, and those refused."""
    taken = None
    for name, values in block.items():
        term = formula.arguments[name].term
        if not _all_inside(term, values):
            taken = _inside(term, values) & (True if taken is None else taken)
    if taken is None:
        return _worked(formula, form, {**fixed, **block}, found)
    places = np.flatnonzero(taken)
    answers = np.empty(len(places))
    doubtful, unmet = _worked(formula, form, {**fixed, **{name: block[name][places] for name in block}}, answers)
    found[places] = answers
    return places[doubtful], np.concatenate([places[unmet], np.flatnonzero(~taken)])


def _worked(formula: Function, form: Form, values: Mapping[str, Any], found: Array) -> tuple[Array, Array]:
    """Answers of rows whose arguments are in range, written into `found`; the places in doubt, and those refused."""
    try:
        with np.errstate(divide="raise", invalid="raise", over="raise"):
            doubts, unmet = form.work(values, found)
    except (ArithmeticError, ValueError):  # a row divides by nothing: those that may are tried alone
        return _apart(form, values, found)
    if not doubts and not unmet and (form.inside or _all_inside(formula.result, found)):
        return NONE, NONE
    doubted, refused = _any(doubts, found), _any(unmet, found)
    doubtful = (doubted | ~_inside(formula.result, found)) & ~(refused & ~doubted)
    return np.flatnonzero(doubtful), np.flatnonzero(refused & ~doubted)


def _apart(form: Form, values: Mapping[str, Any], found: Array) -> tuple[Array, Array]:
    """The places to be tried alone, and those that plainly do not meet a condition."""
    try:
        with np.errstate(divide="raise", invalid="raise", over="raise"):
            doubts, unmet = form.ask(values)
    except (ArithmeticError, ValueError):
        return np.arange(len(found)), NONE
    refused = _any(unmet, found) & ~_any(doubts, found)
    return np.flatnonzero(~refused), np.flatnonzero(refused)


def _any(masks: Sequence[Array], found: Array) -> Array:
    """The rows that are in any of the masks."""
    rows = np.zeros(len(found), dtype=bool)
    for mask in masks:
        rows |= mask
    return rows


def _all_inside(term: Term, values: Array) -> bool:
    """Whether every value is in range; the least and the most say it, and NaN is in none."""
    if not term.is_number or not values.size:
        return not term.is_number and None not in values
    least, most = values.min(), values.max()
    inside = (term.low < least if term.low_excluded else term.low <= least) and most <= term.high
    return bool(inside and (not term.whole or (values == np.floor(values)).all()))


def _inside(term: Term, values: Array) -> Array:
    if not term.is_number:
        return np.array([value is not None for value in values], dtype=bool)
    inside = ((term.low < values) if term.low_excluded else (term.low <= values)) & (values <= term.high)
    return inside & (values == np.floor(values)) if term.whole else inside


def _one_by_one(formula: Function, columns: Columns, fixed: Fixed, count: int) -> tuple[Array, list[int]]:
    found: list[Any] = []
    refused: list[int] = []
    for place, row in enumerate(_rows(formula, columns, fixed, count)):
        try:
            found.append(formula.checked(*row))
        except ValueError:
            found.append(None)
            refused.append(place)
    return given.held(formula.result, found), refused


def _rows(formula: Function, columns: Columns, fixed: Fixed, count: int) -> Iterator[tuple[Any, ...]]:
    """The arguments in order, a row at a time; numbers are Python's own, which the quick check takes."""
    rows: list[Iterable[Any]] = []
    for name, argument in formula.arguments.items():
        # A blank that is taken is None, as is a word that is not: only the cell itself tells them apart.
        if name not in columns:
            rows.append(repeat(fixed[name], count))
        else:
            rows.append((columns[name].cells if argument.term.blank else columns[name].values).tolist())
    return zip(*rows, strict=True)


def _row(columns: Columns, fixed: Fixed, place: int) -> dict[str, Any]:
    """One row's arguments as they were given."""
    return {**fixed, **{name: _cell(column.cells[place]) for name, column in columns.items()}}


def _cell(cell: Any) -> Any:
    return cell.item() if isinstance(cell, np.generic) else cell
