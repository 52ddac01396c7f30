"""The columns of a tab, declared once: what is worked out, and what is looked up.

A column knows its head, its number format and its formula, written once with `ROW` for the row. No
column spells out arithmetic: a result names the declared function, and which cells feed its arguments.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import candlecalc.calc  # noqa: F401  declares the functions
import candlecalc.declaration.native as native
from candlecalc.declaration.declared import Function, Term, find
from candlecalc.declaration.guard import default, native_of
from candlecalc.declaration.scaling import scales_with
from candlecalc.workbook.cells.place import OWN_ROW, Place, Plan
from candlecalc.workbook.cells.references import (
    USABLE,
    Reference,
    as_test,
    as_text,
    blank,
    guarded,
    own,
    place_of,
    reference_to,
)
from candlecalc.workbook.cells.styles import BY_UNIT


@dataclass(frozen=True, kw_only=True)
class Column:
    """One column of a table, or one line of a card."""

    head: str
    format: str = "text"
    width: float = 0
    # Blank while one of these is blank: an own column by its key, or a whole test.
    when: tuple[str | Reference, ...] = ("ready",)
    # (cell, value): the value where the cell is blank.
    instead: tuple[str | Reference, str | Reference] | None = None

    def expression(self, plan: Plan, place: Place) -> str:
        raise NotImplementedError

    def formula(self, plan: Plan, place: Place) -> str:
        """The cell's formula with `ROW` for the row: blank while what it waits for is blank."""
        text = self.expression(plan, place)
        if self.instead:
            cell, value = (reference_to(one)(plan, place) for one in self.instead)
            text = f'CHOOSE(1+({cell}=""),{text},{value})'
        return "=" + guarded(text, [as_test(one)(plan, place) for one in self.when])


@dataclass(frozen=True, kw_only=True)
class Result(Column):
    """What a declared function makes of other cells."""

    function: str
    arguments: Mapping[str, str | Reference]

    @property
    def declared(self) -> Function:
        return find(self.function)

    def expression(self, plan: Plan, place: Place) -> str:
        given = {name: reference_to(one)(plan, place) for name, one in self.arguments.items()}
        return call(self.declared, given)


@dataclass(frozen=True, kw_only=True)
class Look(Column):
    """A value from elsewhere, as it stands."""

    reference: Reference

    def expression(self, plan: Plan, place: Place) -> str:
        return self.reference(plan, place)


@dataclass(frozen=True, kw_only=True)
class Total(Column):
    """A sum of cells, or the least of them; text among them counts as nothing, an error spreads."""

    parts: Sequence[str | Reference]
    of: str = "SUM"

    def expression(self, plan: Plan, place: Place) -> str:
        return f"{self.of}({','.join(reference_to(part)(plan, place) for part in self.parts)})"


@dataclass(frozen=True, kw_only=True)
class SumWhere(Column):
    """The sum of another tab's column over the rows whose key is this row's number, added to an own part.

    By number and not by name: a criterion reads "<3" as a comparison and "1e3" as a thousand.
    """

    part: str | Reference
    table: str
    column: str
    by: str

    def expression(self, plan: Plan, place: Place) -> str:
        there = plan.places[self.table]
        part = reference_to(self.part)(plan, place)
        return f"SUM({part},SUMIFS({there.range(self.column)},{there.range(self.by)},{place.cell(OWN_ROW)}))"


@dataclass(frozen=True, kw_only=True)
class CountWhere(Column):
    """How many rows of another tab name this row, in what is typed there.

    Compared, not counted by a criterion. And of entries alone: through a later tab's results LibreOffice, asked to
    calculate all, leaves a row a pass behind.
    """

    table: str
    by: str
    name: str

    def expression(self, plan: Plan, place: Place) -> str:
        return f"SUMPRODUCT(({plan.places[self.table].range(self.by)}={place.cell(self.name)})*1)"


def call(formula: Function, given: Mapping[str, str]) -> str:
    """A declared function's native form with its arguments put in, in the workbook's own units."""
    values = {
        name: _converted(formula, formula.arguments[name].term, native.Leaf(text)) for name, text in given.items()
    }
    for name, argument in formula.arguments.items():
        if name not in values:
            values[name] = default(argument)
    return native.spell(_converted_back(formula, native.replace(native_of(formula), values)))


def asked(function: str, **given: str) -> str:
    """The same of a function by its name."""
    return call(find(function), given)


def _converted(formula: Function, term: Term, cell: native.Node) -> native.Node:
    """A cell in the workbook's unit as the argument in `calc`'s, where the function does not scale."""
    if term.unit == "C":
        moved = native.Operation("-", cell, native.Leaf("temp_zero"))
        return native.Operation("/", moved, native.Leaf("temp_step"))
    factor = {"g": "weight_g", "mm": "length_mm"}.get(term.unit)
    if factor and not scales_with(formula.name, term.unit):
        return native.Operation("*", cell, native.Leaf(factor))
    return cell


def _converted_back(formula: Function, tree: native.Node) -> native.Node:
    unit = formula.result.unit
    factor = {"g": "weight_g", "mm": "length_mm"}.get(unit)
    if factor and not scales_with(formula.name, unit):
        return native.Operation("/", tree, native.Leaf(factor))
    return tree


# --- shorthands for the tabs ------------------------------------------------------------------

When = tuple[str | Reference, ...]
Instead = tuple[str | Reference, str | Reference] | None
READY: When = ("ready",)


def result(
    head: str,
    function: str,
    *,
    when: When = READY,
    instead: Instead = None,
    format: str = "",  # noqa: A002
    **arguments: str | Reference,
) -> Result:
    """A result column: the format is the one of the function's result."""
    term = find(function).result
    shown = format or ("percent" if term.unit.startswith("of ") else BY_UNIT.get(term.unit, "count"))
    return Result(head=head, function=function, arguments=arguments, when=when, instead=instead, format=shown)


def look(
    head: str,
    reference: Reference,
    format: str = "text",  # noqa: A002
    *,
    when: When = READY,
    instead: Instead = None,
    width: float = 0,
) -> Look:
    return Look(head=head, reference=reference, format=format, when=when, instead=instead, width=width)


def row_of(head: str, table: str, name: Reference) -> Look:
    """A column that holds the place of a name in another tab; blank where no name is given."""
    return look(head, place_of(table, name), "row", when=("ready", blank(name)), width=7)


def usable(name: str) -> dict[str, Look]:
    """The column of names by which other tabs find the rows that are ready."""
    return {USABLE: look("Name, once its row is whole and can be used", as_text(own(name)), width=35)}


def total(head: str, *parts: str | Reference, format: str = "money", of: str = "SUM", when: When = READY) -> Total:  # noqa: A002
    return Total(head=head, parts=parts, format=format, of=of, when=when)
