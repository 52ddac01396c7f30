"""What stands under the list of a file: a total, which is compared with its lines, or a word of when it was written."""

from decimal import Decimal
from typing import NamedTuple

from candlecalc.season.importing.file import Line
from candlecalc.season.importing.rows import Reader

COUNTED_UP = ("pieces", "packs", "line_price", "counted", "net", "discount", "postage", "fee", "charges", "tax")


class Total(NamedTuple):
    """A number under a column, and what the column comes to."""

    line: Line
    head: str
    stated: Decimal
    found: Decimal

    @property
    def agrees(self) -> bool:
        return self.stated == self.found

    @property
    def told(self) -> str:
        verdict = f"its lines come to {self.found}" + ("" if self.agrees else ": look whether lines are missing")
        return f"its last lines, line {self.line.number}: {self.head} {self.stated}; {verdict}"


def totals(reader: Reader) -> list[Total]:
    """Each number under the list in a column that adds up, beside the sum of that column."""
    return [
        Total(line, reader.head(key), stated, reader.sum_of(key))
        for line in reader.foot
        for key in COUNTED_UP
        if key in reader.columns and (stated := reader.number_in(key, line)) is not None
    ]


def words(reader: Reader, found: list[Total]) -> list[str]:
    """What the lines under the list say besides totals, so that none is passed over in silence."""
    with_totals = {total.line.number for total in found}
    return [
        f'line {line.number} is no line of the list: "{" ".join(filter(None, line.cells))}"'
        for line in reader.foot
        if line.number not in with_totals
    ]
