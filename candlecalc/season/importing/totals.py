"""The totals that a file states under its list, beside what its lines come to."""

from decimal import Decimal
from typing import NamedTuple

from candlecalc.season.importing.file import Line
from candlecalc.season.importing.rows import Reader
from candlecalc.season.tables.imports import LINE_PRICE

ADDS_UP = ("pieces", "packs", LINE_PRICE, "counted", "net", "discount", "postage", "fee", "charges", "tax")


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
        verdict = "agrees" if self.agrees else f"but its lines come to {self.found}: look whether some are missing"
        return f"line {self.line.number}, a total: {self.head} {self.stated} {verdict}"


def stated(reader: Reader) -> list[Total]:
    """Each number under the list in a column that adds up, beside the sum of that column."""
    keys = [key for key in ADDS_UP if key in reader.columns]
    return [
        Total(line, reader.head(key), number, _sum(reader, key))
        for line in reader.foot
        for key in keys
        if (number := reader.number_in(key, line)) is not None
    ]


def words_beside(reader: Reader, totals: list[Total]) -> list[str]:
    """What else stands under the list, so that nothing is passed over in silence."""
    lines = {total.line.number for total in totals}
    return [
        f'line {line.number} is no line of the list: "{" ".join(filter(None, line.cells))}"'
        for line in reader.foot
        if line.number not in lines
    ]


def _sum(reader: Reader, key: str) -> Decimal:
    return sum((reader.number_in(key, line) or Decimal(0) for line in reader.body), Decimal(0))
