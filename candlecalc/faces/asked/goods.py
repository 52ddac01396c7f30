"""Amounts of goods typed with their units, and costs by the unit: brought to one unit before they are counted with.

Functions of cost, stock and plans count goods in any one unit: candles, ounces, kilograms. In a cell the maker sees to
that; a question may say "7.3 oz" beside "12/lb".
"""

import re
from collections.abc import Iterator
from contextlib import suppress
from typing import Any, NamedTuple

from candlecalc.declaration.declared import Function
from candlecalc.quantities import factors, units

PER_UNIT = re.compile(r"(?P<amount>.*[^\s/])\s*(?:/|\b(?:per|an?)\b)\s*(?P<unit>[^\s/0-9][^/0-9]*)", re.IGNORECASE)
COST = "money per unit"
AN = ("oz", "ml", "l", "imp fl oz", "imp gal")  # units that are said with "an"


class Goods(NamedTuple):
    """What was given, amounts and costs as numbers of one unit; that unit, and which costs were typed without it."""

    given: dict[str, Any]
    unit: str = ""
    taken: tuple[str, ...] = ()


class _Cell(NamedTuple):
    """One value as typed: its argument, its place in a list, what it is an amount of, and the unit beside it."""

    name: str
    row: int | None
    text: Any
    is_cost: bool
    unit: str

    @property
    def nothing(self) -> bool:
        with suppress(ValueError):
            return self.text == "" or float(self.text) == 0
        return False


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


def without_per(cost: str) -> str:
    """A cost without the unit that it is per: "$12" of "$12/lb"."""
    match = PER_UNIT.fullmatch(cost.strip())
    return match["amount"] if match else cost


def _cells(formula: Function, given: dict[str, Any]) -> Iterator[_Cell]:
    for name, value in given.items():
        term = formula.arguments[name].term
        if term.goods or term.unit == COST:
            rows = enumerate(value) if isinstance(value, list) else [(None, value)]
            for row, text in rows:
                yield _Cell(name, row, text, term.unit == COST, _unit_beside(str(text), term.unit == COST))


def _unit_beside(text: str, is_cost: bool) -> str:
    with suppress(ValueError):
        match = PER_UNIT.fullmatch(text.strip()) if is_cost else None
        return units.named(match["unit"]) if match else "" if is_cost else units.written(text).unit
    return ""


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
        raise ValueError(f'{cell.name} is "{cell.text}", and {other.name} is "{other.text}": both in one kind of unit')
    if cell.is_cost:
        return _moved_cost(cell, unit)
    if cell.unit:
        value, own = units.written(cell.text)
        return float(f"{units.convert(value, own, unit):.12g}")
    if not cell.nothing:
        other = next(each for each in beside if each.unit)
        number = cell.text if isinstance(cell.text, str) else f"{cell.text:g}"
        raise ValueError(f'{cell.name} is {number} beside {other.name} "{other.text}": write its unit with it')
    return cell.text


def _moved_cost(cell: _Cell, unit: str) -> Any:
    match = PER_UNIT.fullmatch(str(cell.text).strip()) if cell.unit else None
    if not match:
        return cell.text
    amount = units.read(match["amount"], COST).value
    return float(f"{amount * units.factor(unit, cell.unit):.12g}")


def _put(given: dict[str, Any], cell: _Cell, value: Any) -> None:
    if cell.row is None:
        given[cell.name] = value
    else:
        given[cell.name] = [*given[cell.name][: cell.row], value, *given[cell.name][cell.row + 1 :]]
