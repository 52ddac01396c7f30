"""Columns by their heads: makers move columns, add their own, and open the workbooks of earlier versions."""

import re
from collections.abc import Callable, Collection, Iterable
from dataclasses import dataclass
from functools import cached_property

from candlecalc.season.fields import Field
from candlecalc.workbook.reading.opening import Rows

MOST_ABOVE = 40  # rows that may lie above the heads

Shown = Callable[[str], str]  # a head with its units put in


def plain_head(text: object) -> str:
    """A head as it is compared: a maker's capitals and line breaks are no other head."""
    return " ".join(str(text).split()).casefold()


def heads_of(field: Field, shown: Shown) -> list[str]:
    """The heads that a field has, or had in an earlier version."""
    return [shown(head) for head in (field.head, *field.formerly)]


@dataclass(frozen=True)
class Heads:
    """The heads of a tab: their row, counted from 1, and what stands there."""

    row: int
    texts: tuple[object, ...]

    @cached_property
    def columns(self) -> dict[str, int]:
        """Column numbers by heads; of two alike the first."""
        found: dict[str, int] = {}
        for number, text in enumerate(self.texts, start=1):
            if text is not None:
                found.setdefault(plain_head(text), number)
        return found

    def column(self, heads: Iterable[str]) -> int | None:
        """The number of the first of these heads that is there."""
        return next((self.columns[plain_head(head)] for head in heads if plain_head(head) in self.columns), None)

    def in_another_unit(self, field: Field, shown: Shown) -> str:
        """The field's head with another unit than asked for, where there is one."""
        pattern = re.sub(r"\\{\w+\\}", r"\\S+", re.escape(plain_head(field.head)))
        other = (str(text) for text in self.texts if text and re.fullmatch(pattern, plain_head(text)))
        return next(other, "") if "{" in field.head else ""


def found_heads(rows: Rows, known: Collection[str]) -> Heads | None:
    """The row that holds most of the heads that are known, the first of such."""
    plain = {plain_head(head) for head in known}
    held = [len(plain & {plain_head(text) for text in row if text is not None}) for row in rows[:MOST_ABOVE]]
    if not held or not max(held):
        return None
    at = held.index(max(held))
    return Heads(at + 1, rows[at])
