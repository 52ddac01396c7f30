"""Cells in, cells out: what an add-in hands to a declared function, and what it puts back into the sheet.

Shared by the faces that run Python inside a spreadsheet; standard library only, Python 3.9.
"""

import re
from datetime import date
from itertools import repeat
from typing import Any, Iterable, List, NamedTuple, Optional, Sequence, Tuple, Union

import candlecalc.calc  # noqa: F401  fills the registry
from candlecalc.declaration.declared import REGISTRY, Argument, Function
from candlecalc.quantities.days import serial


class Refused(NamedTuple):
    """Stands in a cell that has no answer; each face shows it as #N/A, which spreads into every sum."""

    reason: str


Cell = Union[float, str, Refused]
Block = List[List[Cell]]  # rows of cells


def answer(formula: Function, given: Sequence[Any]) -> Block:
    """What a function gives for arguments as a sheet hands them over: rows of cells.

    A range is a sequence of rows. Where a single value is wanted, a range is gone through cell by cell
    and the answer has its shape; where all the ranges are blank and a value is wanted, it stays blank.
    `None` stands for an argument left out.
    """
    shape = None
    try:
        values = _in_order(formula, given)
        shape = _shape(formula, values)
        if shape is None:
            rows = formula.rows(formula.checked(*values))
            return [[_cell(value) for value in row] for row in rows]
        cells, width = _each(formula, values), shape[1]
    except (TypeError, ValueError) as problem:
        height, width = shape or (1, 1)
        return [[Refused(_told(formula, problem))] * width for _ in range(height)]
    return [cells[start : start + width] for start in range(0, len(cells), width)]


def why(name: str, *given: Any) -> str:
    """Why a function has no answer for these arguments, in words; of a range, for its first such cell."""
    formula = named(name)
    if formula is None:
        return f"there is no function {name}"
    block = answer(formula, given)
    for row, cells in enumerate(block, start=1):
        for column, cell in enumerate(cells, start=1):
            if isinstance(cell, Refused):
                return _place(block, row, column) + cell.reason
    return "no error"


def named(name: str) -> Optional[Function]:
    """The function of a name as a sheet spells it: CANDLE_OIL_FOR_WAX, CANDLE.OILFORWAX, oil_for_wax."""
    plain = {found.replace("_", ""): formula for found, formula in REGISTRY.items()}
    letters = re.sub("[^a-z0-9]", "", name.lower())
    return plain.get(letters) or plain.get(re.sub("^candle", "", letters))


def _place(block: Block, row: int, column: int) -> str:
    if len(block) > 1:
        return f"row {row}, column {column}: " if len(block[0]) > 1 else f"row {row}: "
    return f"column {column}: " if len(block[0]) > 1 else ""


def _in_order(formula: Function, given: Sequence[Any]) -> List[Any]:
    """The arguments in order: those left out by their defaults, a range of one cell as that cell."""
    wanted = list(formula.arguments.values())
    if len(given) > len(wanted):
        raise ValueError(f"{formula.name}: takes {len(wanted)} arguments, not {len(given)}")
    filled = [*given, *repeat(None, len(wanted) - len(given))]
    return [
        argument.default if value is None and argument.optional else value if argument.term.many else _single(value)
        for argument, value in zip(wanted, filled)
    ]


def _single(value: Any) -> Any:
    return value[0][0] if _is_range(value) and len(value) == len(value[0]) == 1 else value


def _is_range(value: Any) -> bool:
    return isinstance(value, (list, tuple))


def _ranges(formula: Function, values: Sequence[Any]) -> List[bool]:
    """Which values are ranges where a single one is wanted."""
    return [_is_range(value) and not argument.term.many for argument, value in zip(formula.arguments.values(), values)]


def _shape(formula: Function, values: Sequence[Any]) -> Optional[Tuple[int, int]]:
    """The rows and columns of the ranges given where single values are wanted; None where there are none."""
    shapes = {(len(value), len(value[0])) for value, gone in zip(values, _ranges(formula, values)) if gone}
    if len(shapes) > 1:
        raise ValueError(f"{formula.name}: ranges of one shape are wanted")
    if shapes and (formula.result.many or formula.fields):
        raise ValueError(f"{formula.name}: its answer takes several cells; give it single values, not ranges")
    return shapes.pop() if shapes else None


def _each(formula: Function, values: Sequence[Any]) -> List[Cell]:
    """The answer for each cell of the ranges, row by row."""
    arguments, gone = list(formula.arguments.values()), _ranges(formula, values)
    columns: List[Iterable[Any]] = [
        [cell for row in value for cell in row] if ranges else repeat(_once(formula, argument, value))
        for argument, value, ranges in zip(arguments, values, gone)
    ]
    blank: Iterable[bool] = repeat(False)
    if not all(argument.term.blank for argument, ranges in zip(arguments, gone) if ranges):
        blank = _blanks([column for column in columns if isinstance(column, list)])

    def slowly(*row: Any) -> Any:
        try:
            return formula.call(*row)
        except (TypeError, ValueError) as problem:
            return Refused(_told(formula, problem))

    quickly = formula.checked_or(slowly)
    results = ["" if empty else quickly(*row) for row, empty in zip(zip(*columns), blank)]
    return [value if value.__class__ is float else _cell(value) for value in results]


def _once(formula: Function, argument: Argument, value: Any) -> Any:
    """A single value beside ranges, such as "8%", read once for all of them."""
    try:
        return argument.read(value)
    except ValueError as problem:
        raise ValueError(f"{formula.name}: {problem}") from None


def _blanks(columns: List[List[Any]]) -> Iterable[bool]:
    if not any("" in column or None in column for column in columns):
        return repeat(False)
    return [all(cell is None or cell == "" for cell in row) for row in zip(*columns)]


def _cell(value: Any) -> Cell:
    if value is None:
        return ""
    if isinstance(value, date):
        return serial(value)
    return value if isinstance(value, (str, Refused)) else float(value)


def _told(formula: Function, problem: Exception) -> str:
    return str(problem) if isinstance(problem, ValueError) else f"{formula.name}: {problem}"
