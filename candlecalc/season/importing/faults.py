"""What is not understood in a file: gathered, so that all of it is told at once, what is alike in one line."""

import difflib
from collections.abc import Sequence
from pathlib import Path
from typing import NamedTuple

MOST_TOLD = 200


class Fault(NamedTuple):
    """What is wrong with a cell, by the head of its column; of a name that is not known, where it was looked for."""

    column: str
    words: str
    name: str = ""
    among: tuple[str, ...] = ()

    @property
    def told(self) -> str:
        if not self.among:
            return self.words
        ours = {each.casefold(): each for each in self.among}
        nearest = difflib.get_close_matches(self.name.casefold(), ours, n=1, cutoff=0)
        return f"{self.words}; nearest: {ours[nearest[0]]}"


class Faults:
    """Faults and the lines that have them."""

    def __init__(self) -> None:
        self.lines: dict[Fault, list[int]] = {}
        self._cells: set[tuple[int, str]] = set()

    def __bool__(self) -> bool:
        return bool(self.lines)

    def add(self, line: int, key: str, fault: Fault) -> None:
        """Note a fault of a cell, by our column's key; one is enough of each cell."""
        if (line, key) not in self._cells:
            self._cells.add((line, key))
            self.lines.setdefault(fault, []).append(line)

    def told(self, path: Path) -> list[str]:
        """A line for each, in the order of the file."""
        shown = sorted(self.lines.items(), key=lambda each: each[1][0])[:MOST_TOLD]
        more = len(self.lines) - len(shown)
        told = [f"{path}, {_where(lines)}, {fault.column}: {fault.told}" for fault, lines in shown]
        return [*told, *([f"{path}: {more:,} more like these"] if more else [])]


def _where(lines: Sequence[int]) -> str:
    return f"line {lines[0]}" + (f" and {len(lines) - 1:,} more" if len(lines) > 1 else "")
