"""A hazard label for a terminal, in three parts: what to print, what to do, what to check."""

import re
import textwrap
from collections.abc import Iterable, Iterator, Sequence
from typing import NamedTuple

from candlecalc.declaration.declared import Function
from candlecalc.faces.described.terminal import WIDTH

COLUMNS = ["element", "code", "text", "why", "status"]
PRINT = ("signal word", "pictogram", "hazard statement", "supplemental", "name", "names", "precautions", "precaution",
         "size of label", "size of pictogram", "height of letters")  # fmt: skip
DO = ("duty", "package", "small package")
# Elements whose own words say what they are.
PLAIN = ("hazard statement", "precaution", "duty", "caution")


class _Row(NamedTuple):
    element: str
    code: str
    text: str
    why: str
    status: str

    @property
    def said(self) -> str:
        """The row in a line: what it is, its code and words, and in brackets why it is there."""
        words = " ".join(filter(None, [self.code, self.text]))
        if not words:
            return f"{self.element}: {self.why}".rstrip(": ")
        told = words if self.element in PLAIN else f"{self.element}: {words}"
        return f"{told} ({self.why})" if self.why else told


def is_label(formula: Function) -> bool:
    return list(formula.fields) == COLUMNS


def lines(words: Iterable[Sequence[str]]) -> list[str]:
    """Rows of a label in words, a blank for what is not there, in three parts."""
    rows = [_Row(*("" if word == "-" else word for word in row)) for row in words]
    parts = {"Print": PRINT, "Do": DO}
    told: list[str] = []
    for head, elements in parts.items():
        told += _part(head, [row.said for row in rows if row.element in elements])
    others = [row for row in rows if row.element not in (*PRINT, *DO, "caution")]
    cautions = [row for row in rows if row.element == "caution"]
    check = [*(row.said for row in others), *_by_status(rows), *(row.said for row in cautions)]
    return [*told, *_part("Check", check)][:-1]


def _part(head: str, said: Sequence[str]) -> list[str]:
    if not said:
        return []
    wrapped = [textwrap.wrap(each, WIDTH, initial_indent="  ", subsequent_indent="    ") for each in said]
    return [head, *(line for part in wrapped for line in part), ""]


def _by_status(rows: Iterable[_Row]) -> Iterator[str]:
    """By which text each row stands, each text once."""
    texts: dict[str, list[str]] = {}
    for row in rows:
        for text in filter(None, re.split("; (?=unconfirmed: )", row.status)):
            texts.setdefault(text, []).append(row.code or row.element)
    for text, named in texts.items():
        yield f"{', '.join(dict.fromkeys(named))}: {text}"
