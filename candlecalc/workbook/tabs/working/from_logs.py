"""What lines that follow from several logs have alike: from which log each is, in which row there, and what it cost."""

from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import Expression, Results, at, at_row, joined, written

LINE = written("({row}-1)", row=OWN_ROW)
WHAT = ("what",)  # which of the logs, from 1; blank below the last line


def by_source(*of_each: Expression) -> Expression:
    """A value by the log that a line is from, in the order of the logs."""
    return written("CHOOSE({what},{of_each})", what="what", of_each=joined(",", of_each))


def of_log(table: str, key: str) -> Expression:
    """What the line's row of a log holds."""
    return at(table, key, "source")


def cost_in(went: str) -> Expression:
    """What the line cost, by its place in the list in order of what went."""
    place = written("MATCH({number},{numbers},1)", number="number", numbers=Results(went, "number"))
    return at_row(went, "cost", place)
