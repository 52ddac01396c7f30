"""A list of values: what cells cannot work out, and so is written when the workbook is made."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from candlecalc.season.fields import Table
from candlecalc.season.season import Row, Season
from candlecalc.workbook.cells.columns import Column
from candlecalc.workbook.cells.layout import Layout, Plan
from candlecalc.workbook.cells.references import Expression
from candlecalc.workbook.cells.table_tab import TableTab


@dataclass(frozen=True)
class Value(Expression):
    """A value of the row, and no formula."""

    def spell(self, plan: Plan, layout: Layout) -> str:
        return ""


@dataclass(frozen=True)
class ValuesTab(TableTab):
    """A list without formulas. Others look up in it by what the row was written for."""

    values: Callable[[Season], list[Row]] = lambda season: []


def value(head: str, format: str = "text", width: float = 0) -> Column:  # noqa: A002
    return Column(head=head, holds=Value(), format=format, width=width, needs=())


def values_tab(
    title: str,
    purpose: str,
    key: str,
    goes_with: Table,
    columns: Mapping[str, Column],
    values: Callable[[Season], list[Row]],
) -> ValuesTab:
    """A list of at most as many rows as a table that people type."""
    return ValuesTab(title, "working", purpose, key, dict(columns), goes_with=goes_with.key, values=values)
