"""Amounts of goods typed with their units, and costs by the unit: brought to one unit before they are counted with.

Functions of cost, stock and plans count goods in any one unit: candles, ounces, kilograms. In a cell the maker sees to
that; a question may say "7.3 oz" beside "12/lb".
"""

from collections.abc import Iterator
from typing import Any, NamedTuple

from candlecalc.declaration.declared import Function
from candlecalc.faces.asked.typed import COST, Typed
from candlecalc.quantities import factors, units

AN = ("oz", "ml", "l", "imp fl oz", "imp gal")  # units that are said with "an"


class Goods(NamedTuple):
    """What was given, amounts and costs as numbers of one unit; that unit, and which costs were typed without it."""

    given: dict[str, Any]
    unit: str = ""
    taken: tuple[str, ...] = ()


class _Cell(NamedTuple):
    """One value as typed: its argument, its place in a list, and what it is an amount of."""

    name: str
    row: int | None
    typed: Any  # a number where it stands bare in a list
    is_cost: bool

    @property
    def unit(self) -> str:
        """The unit that it is in, or per."""
        return self.typed.unit if isinstance(self.typed, Typed) else ""

    @property
    def nothing(self) -> bool:
        if not isinstance(self.typed, Typed):
            return not self.typed
        return self.typed == "" or self.typed.reading == (0, "")


def in_one_unit(formula: Function, given: dict[str, Any]) -> Goods:
    """Amounts and costs in one unit: the one that a cost is per, else the first beside an amount.

    A cost without a unit is per that one. A ValueError names an amount whose unit is missing, or measures another kind.
    """
    cells = [*_cells(formula, given)]
    if not any(cell.unit for cell in cells):
        return Goods(given)
    each = any(formula.arguments[cell.name].term.goods == "each" for cell in cells)
    taken: list[str] = []
    moved = dict(given)
    unit = ""
    for together in _rows(cells) if each else [cells]:
        unit = _unit_of(together)
        for cell in together if unit else []:
            _put(moved, cell, _moved(cell, unit, together))
            taken += [cell.name] * (cell.is_cost and not cell.unit and not cell.nothing)
    return Goods(moved, "" if each else unit, tuple(dict.fromkeys(taken)))


def per(unit: str) -> str:
    """A unit as costs are per it: "an oz", "a lb"."""
    name = units.NAMES[unit].removesuffix("s")
    return f"{'an' if name in AN else 'a'} {name}"


def _cells(formula: Function, given: dict[str, Any]) -> Iterator[_Cell]:
    for name, value in given.items():
        term = formula.arguments[name].term
        if term.goods or term.unit == COST:
            rows = enumerate(value) if isinstance(value, list) else [(None, value)]
            for row, typed in rows:
                yield _Cell(name, row, typed, term.unit == COST)


def _rows(cells: list[_Cell]) -> list[list[_Cell]]:
    rows = dict.fromkeys(cell.row for cell in cells)
    return [[cell for cell in cells if cell.row == row] for row in rows]


def _unit_of(cells: list[_Cell]) -> str:
    stated = [cell.unit for cell in cells if cell.is_cost and cell.unit]
    return next(iter([*stated, *(cell.unit for cell in cells if cell.unit)]), "")


def _moved(cell: _Cell, unit: str, beside: list[_Cell]) -> Any:
    """A value as it counts in the unit, as text where its currency stands with it."""
    if cell.unit and not factors.alike(cell.unit, unit):
        other = next(each for each in beside if each.unit == unit)
        raise ValueError(
            f'{cell.name} is "{cell.typed}", and {other.name} is "{other.typed}": both in one kind of unit'
        )
    if cell.unit and cell.typed.amount:
        amount = cell.typed.amount.value
        moved = amount * units.factor(unit, cell.unit) if cell.is_cost else units.convert(amount, cell.unit, unit)
        return float(f"{moved:.12g}")
    if not cell.is_cost and not cell.nothing:
        other = next(each for each in beside if each.unit)
        number = cell.typed if isinstance(cell.typed, str) else f"{cell.typed:g}"
        raise ValueError(f'{cell.name} is {number} beside {other.name} "{other.typed}": write its unit with it')
    return cell.typed


def _put(given: dict[str, Any], cell: _Cell, value: Any) -> None:
    if cell.row is None:
        given[cell.name] = value
    else:
        given[cell.name] = [*given[cell.name][: cell.row], value, *given[cell.name][cell.row + 1 :]]
