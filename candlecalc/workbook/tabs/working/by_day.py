"""The rows of a thing in order of the day from which each holds."""

from candlecalc.season.fields import Table
from candlecalc.workbook.cells.columns import Column, look
from candlecalc.workbook.cells.references import Carry, Expression, Given, in_order, line_key, row_in, written


def by_first_row(key: str, table: Table, name: Expression, head: str) -> dict[str, Column]:
    """The columns of a list in which all rows of a thing go by its first, whether or not it can be used.

    So records find them all.
    """
    first = look(head, row_in(table.key, name, ready=False), "row", needs=(name,), width=8)
    return {"first": first, **numbered(key, table, "first")}


def numbered(key: str, table: Table, thing: Given) -> dict[str, Column]:
    """Each row's number by its thing and its From, and the numbers in order. Without From a row holds from the first."""
    day = written("SUM({day})", day=Carry(table.key, "holds_from"))
    return {
        "day_number": look("Row's number", line_key(thing, day), "row", needs=(thing,), width=16),
        "number": look("The numbers in order", in_order(key, "day_number"), "row", needs=(), width=16),
    }
