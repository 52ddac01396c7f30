"""Which version made a workbook, and what that means for its reader."""

import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import NamedTuple

from candlecalc.season.folder import UnreadableError
from candlecalc.workbook.reading.opening import Opened
from candlecalc.workbook.tabs import start

MADE_BY = re.compile(r"candlecalc (\d+\.\d+\.\d+)")
OF_FORMAT = re.compile(r"workbook format (\d{1,6})\b")


@dataclass(frozen=True)
class Earlier:
    """What is to be known of a format that is no longer made."""

    faults: str
    # What it had and today's has not: tabs, and heads by tab. What stands there is no maker's own.
    tabs: tuple[str, ...] = ()
    heads: Mapping[str, tuple[str, ...]] = field(default_factory=dict)


EARLIER = {
    1: Earlier(
        "whose formulas can go wrong after a cut or in a comma-decimal program",
        tabs=("Functions",),
        heads=dict.fromkeys(("Materials", "Vessels", "Places sold"), ("Name, once ready",)),
    )
}


class Origin(NamedTuple):
    """What made a workbook, as far as the workbook says."""

    format: int = start.FORMAT
    version: str = ""

    @property
    def older(self) -> bool:
        return self.format < start.FORMAT

    @property
    def gone(self) -> Earlier:
        """What a workbook of that format has and today's has not."""
        return EARLIER.get(self.format, Earlier(""))

    def advice(self, path: Path) -> list[str]:
        """What to say of an older workbook at the end of an answer."""
        if not self.older:
            return []
        made, faults = self.version or "an earlier version", self.gone.faults
        named = f'"{path}"' if " " in str(path) else path
        return [
            f"{path}: made by {made}{f', {faults}' if faults else ''}; "
            f"make it new with `candlecalc new NEW.xlsx --from {named}`"
        ]


def origin_of(path: Path, book: Opened) -> Origin:
    """What made a workbook; an UnreadableError refuses what a newer version made."""
    # Some programs drop a file's properties, so Start says the same.
    first = " ".join(str(text) for row in book.tabs.get(start.START.title, []) for text in row if text is not None)
    format_said = OF_FORMAT.search(book.description) or OF_FORMAT.search(first)
    version_said = MADE_BY.search(first) or MADE_BY.search(book.creator)
    number = int(format_said[1]) if format_said else start.FORMAT
    if number > start.FORMAT:
        raise UnreadableError(
            f"{path}: it is of workbook format {number}, made by a newer candlecalc: update yours; "
            f"this one reads up to {start.FORMAT}"
        )
    return Origin(number, version_said[1] if version_said else "")
