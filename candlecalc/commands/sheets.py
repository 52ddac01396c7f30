"""Data sheets of oils as files: read as the columns that a hazard function takes, and what was read is said."""

import sys
import textwrap
from collections.abc import Sequence
from pathlib import Path
from typing import Any

from candlecalc.commands.counted import counted
from candlecalc.declaration.declared import Function
from candlecalc.faces.asked import sheet
from candlecalc.faces.asked.question import CallError
from candlecalc.faces.described.terminal import WIDTH

COLUMNS = ["substances", "concentrations", "classes", "specifics"]
FIELDS = ("substance", "concentration", "classes", "specifics")  # the same on Oil sheets
PASTED = Path("-")
LARGEST = 1_000_000  # bytes: a data sheet's text is a tenth of that


def takes_sheet(formula: Function) -> bool:
    """Whether the function takes section 3 of a data sheet."""
    return set(COLUMNS) <= set(formula.arguments)


def columns(formula: Function, files: Sequence[Path]) -> tuple[dict[str, list[Any]], list[str]]:
    """The columns of all sheets one under another, and what was read and not read of each, in lines."""
    if len(files) > 1 and "oils" not in formula.arguments:
        raise CallError(f"{formula.name} takes one data sheet")
    lines: dict[str, list[Any]] = {name: [] for name in COLUMNS}
    oils: list[float] = []
    told: list[str] = []
    for oil, path in enumerate(files, start=1):
        found = read(path)
        for name in COLUMNS:
            lines[name] += getattr(found, name)
        oils += [float(oil)] * len(found.substances)
        told += told_of(path, found)
    return lines | ({"oils": oils} if len(files) > 1 else {}), [*told, ""]


def read(path: Path) -> sheet.Sheet:
    """The lines of section 3 in a file, or in what is pasted."""
    try:
        return sheet.read(text_of(path))
    except ValueError as problem:
        raise ValueError(f"{called(path)}: {problem}") from None


def text_of(path: Path) -> str:
    held = sys.stdin.buffer.read(LARGEST + 1) if path == PASTED else path.read_bytes()[: LARGEST + 1]
    if len(held) > LARGEST:
        raise ValueError("it is too long for section 3 of a data sheet, or for a log")
    if held.startswith((b"%PDF", b"PK")) or b"\0" in held[:1000]:
        raise ValueError("it is no text: copy what is wanted out of it, and save that as text or CSV")
    try:
        return held.decode("utf-8-sig")
    except UnicodeDecodeError:
        return held.decode("cp1252", errors="replace")


def told_of(path: Path, found: sheet.Sheet) -> list[str]:
    """How many substances were read of a sheet, and what of it was not."""
    said = [f"{called(path)}: {counted(len(found.substances), 'substance')} read"]
    said += [f"not read: {words}" for words in found.unread]
    return [line for each in said for line in textwrap.wrap(each, WIDTH, subsequent_indent="  ")]


def called(path: Path) -> str:
    return "what was pasted" if path == PASTED else str(path)
