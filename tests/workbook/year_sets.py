"""Which pieces that left of a set had been packed: from pieces alone, so that it is known before anything has a cost.

The rule in words stands at the head of year_reference.py.
"""

from collections.abc import Iterable, Sequence
from fractions import Fraction
from typing import NamedTuple

from year_cards import Issue
from year_records import Count, Year


class SetLine(NamedTuple):
    """A line of a log that took sets out, or brought them back (below 0)."""

    issue: Issue  # all its pieces
    packed: Fraction  # of these, the ones that were packed beforehand

    @property
    def unpacked(self) -> Fraction:
        return self.issue.amount - self.packed


def lines_of_set(year: Year, name: str, issues: Iterable[Issue], counts: Sequence[Count]) -> list[SetLine]:
    """Its lines in order, each with how many of its pieces were packed; a count that is taken over comes between."""
    pours = [pour for pour in year.pours if pour.product == name]
    ever = sum(pour.good for pour in pours)
    taken_over = {row: count for row, count in enumerate(counts, start=1) if count.thing == name and count.is_move}
    evenings = [Issue("Counts", row, count.day, Fraction(0)) for row, count in taken_over.items()]
    gone, lines = Fraction(0), []
    for issue in sorted([*issues, *evenings], key=lambda each: each.place):
        if issue.tab == "Counts":
            gone = sum(pour.good for pour in pours if pour.day <= issue.day) - taken_over[issue.row].counted
        else:
            after = gone_after(gone, issue.amount, ever)
            lines.append(SetLine(issue, after - gone))
            gone = after
    return lines


def gone_after(before: Fraction, pieces: Fraction, ever: int) -> Fraction:
    """Packed sets gone after a line: no more than were ever packed, and none that comes back when none is gone."""
    return max(min(before + pieces, Fraction(ever)), min(before, Fraction(0)))
