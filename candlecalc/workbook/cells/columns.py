"""The columns of a tab, declared once: what is worked out, and what is looked up.

A column knows its head, its number format and what it holds, written once with `ROW` for the row. No
column spells out arithmetic: a result names the declared function, and which cells feed its arguments.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

import candlecalc.calc  # noqa: F401  declares the functions
import candlecalc.declaration.native as native
from candlecalc.declaration.declared import Function, Term, find
from candlecalc.declaration.guard import default, native_of
from candlecalc.declaration.scaling import scales_with
from candlecalc.workbook.cells.layout import OWN_ROW, WHEN_READY, Layout, Plan
from candlecalc.workbook.cells.references import (
    Expression,
    Given,
    Own,
    Source,
    Whole,
    as_text,
    blank,
    expression_of,
    fed_by,
    joined,
    row_in,
    sum_where,
    unless,
    written,
)
from candlecalc.workbook.cells.styles import BY_UNIT

READY = ("ready",)


@dataclass(frozen=True, kw_only=True)
class Column:
    """One column of a table: what it holds, and where that stays blank."""

    head: str
    holds: Expression
    format: str = "text"
    width: float = 0
    needs: tuple[Given, ...] = READY  # blank while one of these cells is blank
    blank_if: tuple[Expression, ...] = ()  # ... and while one of these tests holds
    if_blank: tuple[Given, Given] | None = None  # (cell, value): the value where the cell is blank
    is_fault: bool = False  # words on what is wrong: red where there are any

    @property
    def expression(self) -> Expression:
        """The whole of its formula: blank while what it waits for is blank."""
        value = self.holds
        if self.if_blank:
            cell, otherwise = self.if_blank
            value = written('CHOOSE(1+({cell}=""),{value},{otherwise})', cell=cell, value=value, otherwise=otherwise)
        return unless([*(blank(one) for one in self.needs), *self.blank_if], value)

    def formula(self, plan: Plan, layout: Layout) -> str:
        """The cell's formula with `ROW` for the row."""
        return "=" + self.expression.spell(plan, layout)

    def fed_by(self, plan: Plan, layout: Layout) -> set[Source]:
        """Every column and named cell that a cell of it reads."""
        return fed_by(self.expression, plan, layout)


@dataclass(frozen=True)
class Calculated(Expression):
    """A declared function's native form with its arguments put in, in the workbook's own units."""

    function: str
    arguments: Mapping[str, Expression]

    @property
    def declared(self) -> Function:
        return find(self.function)

    def spell(self, plan: Plan, layout: Layout) -> str:
        return native.spell(self._tree({name: one.spell(plan, layout) for name, one in self.arguments.items()}))

    @property
    def parts(self) -> Iterable[Expression]:
        return self.arguments.values()

    def reads(self, plan: Plan, layout: Layout) -> Iterable[Source]:
        leaves = {part.text for part in native.walk(self._tree(dict.fromkeys(self.arguments, "0")))
                  if isinstance(part, native.Leaf)}  # fmt: skip
        return [("", name) for name in sorted(leaves & UNITS_OF_THE_BOOK)]

    def _tree(self, given: Mapping[str, str]) -> native.Node:
        formula = self.declared
        values = {
            name: _converted(formula, formula.arguments[name].term, native.Leaf(text)) for name, text in given.items()
        }
        for name, argument in formula.arguments.items():
            if name not in values:
                values[name] = default(argument)
        return _converted_back(formula, native.replace(native_of(formula), values))


def calculated(function: str, **arguments: Given) -> Calculated:
    """What a declared function makes of cells and expressions."""
    return Calculated(function, {name: expression_of(given) for name, given in arguments.items()})


# Named cells that bring weights, lengths and temperatures from the workbook's units to those of `calc`.
PER_UNIT = {"g": "weight_g", "mm": "length_mm"}
UNITS_OF_THE_BOOK = {*PER_UNIT.values(), "temp_zero", "temp_step"}


def _converted(formula: Function, term: Term, cell: native.Node) -> native.Node:
    """A cell in the workbook's unit as the argument in `calc`'s, where the function does not scale."""
    if term.unit == "C":
        moved = native.Operation("-", cell, native.Leaf("temp_zero"))
        return native.Operation("/", moved, native.Leaf("temp_step"))
    factor = PER_UNIT.get(term.unit)
    if factor and not scales_with(formula.name, term.unit):
        return native.Operation("*", cell, native.Leaf(factor))
    return cell


def _converted_back(formula: Function, tree: native.Node) -> native.Node:
    unit = formula.result.unit
    factor = PER_UNIT.get(unit)
    if factor and not scales_with(formula.name, unit):
        return native.Operation("/", tree, native.Leaf(factor))
    return tree


# --- shorthands for the tabs ------------------------------------------------------------------

IfBlank = tuple[Given, Given] | None


def result(
    head: str,
    function: str,
    *,
    needs: tuple[Given, ...] = READY,
    blank_if: tuple[Expression, ...] = (),
    if_blank: IfBlank = None,
    format: str = "",  # noqa: A002
    column_width: float = 0,
    **arguments: Given,
) -> Column:
    """A result column: the format is the one of the function's result."""
    term = find(function).result
    shown = format or ("percent" if term.unit.startswith("of ") else BY_UNIT.get(term.unit, "count"))
    holds = calculated(function, **arguments)
    return Column(
        head=head, holds=holds, needs=needs, blank_if=blank_if, if_blank=if_blank, format=shown, width=column_width
    )


def look(
    head: str,
    holds: Expression,
    format: str = "text",  # noqa: A002
    *,
    needs: tuple[Given, ...] = READY,
    blank_if: tuple[Expression, ...] = (),
    if_blank: IfBlank = None,
    width: float = 0,
) -> Column:
    """A value from elsewhere, as it stands."""
    return Column(head=head, holds=holds, format=format, needs=needs, blank_if=blank_if, if_blank=if_blank, width=width)


def row_number(head: str, table: str, name: Expression) -> Column:
    """A column that holds the place of a name in another tab; blank where no name is given."""
    return look(head, row_in(table, name), "row", needs=("ready", name), width=7)


def names_when_ready(name: str, *blank_if: Expression) -> dict[str, Column]:
    """The column of names by which other tabs find the rows that are ready, but those for which a test holds."""
    head = "Name, once its row is whole and can be used"
    return {WHEN_READY: look(head, as_text(name), width=35, blank_if=blank_if)}


def total(
    head: str,
    *parts: Given,
    format: str = "money",  # noqa: A002
    of: str = "SUM",
    needs: tuple[Given, ...] = READY,
    blank_if: tuple[Expression, ...] = (),
) -> Column:
    """A sum of cells, or the least of them; text among them counts as nothing, an error spreads."""
    holds = written(f"{of}({{parts}})", parts=joined(",", parts))
    return Column(head=head, holds=holds, needs=needs, blank_if=blank_if, format=format)


def with_sum_where(head: str, part: Given, table: str, key: str, by: str, format: str = "money") -> Column:  # noqa: A002
    """An own part, and what another tab's rows bring that name this row by its number."""
    holds = written("SUM({part},{brought})", part=part, brought=sum_where(table, key, **{by: Own(OWN_ROW)}))
    return Column(head=head, holds=holds, format=format)


def count_where(head: str, table: str, by: str, name: str, width: float = 7) -> Column:
    """How many rows of another tab name this row, in what is typed there.

    Compared, not counted by a criterion. And of entries alone: through a later tab's results LibreOffice, asked to
    calculate all, leaves a row a pass behind.
    """
    holds = written("SUMPRODUCT(({names}={name})*1)", names=Whole(table, by), name=name)
    return Column(head=head, holds=holds, format="row", width=width)
