"""Cells in, cells out: what an add-in hands to a declared function, and what it puts back into the sheet.

Shared by the faces that run Python inside a spreadsheet; standard library only, Python 3.9.
"""

from datetime import date
from typing import Any, List, NamedTuple, Sequence, Tuple, Union

import candlecalc.calc  # noqa: F401  fills the registry
from candlecalc.days import serial
from candlecalc.formula import REGISTRY, Formula


class Refused(NamedTuple):
    """Stands in a cell that has no answer; each face shows it as #N/A, which spreads into every sum."""

    reason: str


Cell = Union[float, str, Refused]
Block = List[List[Cell]]  # rows of cells


def answer(formula: Formula, given: Sequence[Any]) -> Block:
    """What a function gives for arguments as a sheet hands them over: rows of cells.

    A range is a sequence of rows. Where a single value is wanted, a range is gone through cell by cell
    and the answer has its shape; a cell in it whose ranges are all blank stays blank. `None` stands for
    an argument left out.
    """
    try:
        shape = _shape(formula, given)
        if shape is None:
            return _cells(formula, given)
        if formula.result.many or formula.fields:
            raise ValueError(f"{formula.name}: its answer takes several cells; give it single values, not ranges")
    except (TypeError, ValueError) as problem:
        return [[Refused(_told(formula, problem))]]
    return [[_one(formula, given, row, column) for column in range(shape[1])] for row in range(shape[0])]


def why(name: str, *given: Any) -> str:
    """Why a function has no answer for these arguments, in words."""
    formula = REGISTRY.get(name.strip().lower().replace("candle_", ""))
    if formula is None:
        return f"there is no function {name}"
    for row in answer(formula, given):
        for cell in row:
            if isinstance(cell, Refused):
                return cell.reason
    return "no error"


def _cells(formula: Formula, given: Sequence[Any]) -> Block:
    return [[_cell(value) for value in row] for row in formula.rows(formula.checked(*_named(formula, given)))]


def _one(formula: Formula, given: Sequence[Any], row: int, column: int) -> Cell:
    here = [value[row][column] if _mapped(formula, at, value) else value for at, value in enumerate(given)]
    ranges = [cell for at, cell in enumerate(here) if _mapped(formula, at, given[at])]
    if all(cell is None or cell == "" for cell in ranges):
        return ""
    try:
        return _cells(formula, here)[0][0]
    except (TypeError, ValueError) as problem:
        return Refused(_told(formula, problem))


def _named(formula: Formula, given: Sequence[Any]) -> List[Any]:
    """The arguments in order, those left out by their defaults."""
    wanted = list(formula.arguments.values())
    if len(given) > len(wanted):
        raise ValueError(f"{formula.name}: takes {len(wanted)} arguments, not {len(given)}")
    filled = list(given) + [None] * (len(wanted) - len(given))
    return [
        argument.default if value is None and argument.optional else _single(value) if not argument.term.many else value
        for argument, value in zip(wanted, filled)
    ]


def _shape(formula: Formula, given: Sequence[Any]) -> "Tuple[int, int] | None":
    """The rows and columns of the ranges given where single values are wanted; None where there are none."""
    shapes = {(len(value), len(value[0])) for at, value in enumerate(given) if _mapped(formula, at, value)}
    if len(shapes) > 1:
        raise ValueError(f"{formula.name}: ranges of one shape are wanted")
    return shapes.pop() if shapes else None


def _mapped(formula: Formula, at: int, value: Any) -> bool:
    wanted = list(formula.arguments.values())
    return at < len(wanted) and not wanted[at].term.many and _is_range(value) and _size(value) > 1


def _is_range(value: Any) -> bool:
    return isinstance(value, (list, tuple))


def _size(rows: Sequence[Sequence[Any]]) -> int:
    return sum(len(row) for row in rows)


def _single(value: Any) -> Any:
    """A range of one cell is that cell."""
    return value[0][0] if _is_range(value) and _size(value) == 1 else value


def _cell(value: Any) -> Cell:
    if value is None:
        return ""
    if isinstance(value, date):
        return serial(value)
    return value if isinstance(value, str) else float(value)


def _told(formula: Formula, problem: Exception) -> str:
    return str(problem) if isinstance(problem, ValueError) else f"{formula.name}: {problem}"
