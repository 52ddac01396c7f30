"""A file from elsewhere as lines of cells: in whichever encoding and with whichever separator it was written."""

import csv
import io
from collections.abc import Collection, Iterator, Sequence
from pathlib import Path
from typing import NamedTuple

from candlecalc.season.folder import MOST_LINES, UnreadableError, refuse_unprintable
from candlecalc.season.importing.texts import bare

SEPARATORS = ",;\t"
HEAD_WITHIN = 25  # lines; what stands over the heads is the shop's own
LARGEST = 100_000_000  # bytes
HEADS_SHOWN = 12
OLD_CODE_PAGE = "cp1252"


class Line(NamedTuple):
    number: int  # in the file, from 1
    cells: list[str]


class Lines(NamedTuple):
    """The lines under the heads, without blank ones; each has a cell for every head."""

    heads: list[str]
    head_line: int
    lines: list[Line]
    old_code_page: bool
    too_long: list[Line]  # with more cells than heads


def read(path: Path, named: Collection[str], known: Collection[str]) -> Lines:
    """Read a file. Its line of heads is the one with all that are `named`, and most of those that are `known`."""
    text, old_code_page = _text_of(path)
    heads = {head.casefold() for head in named}
    likely = heads | {head.casefold() for head in known}
    firsts = {mark: _first_lines(text, mark) for mark in SEPARATORS}
    found = [
        (len(heads & set(cells)), len(likely & set(cells)), -at, mark)
        for mark, lines in firsts.items()
        for at, cells in enumerate(lines)
    ]
    there, known_there, at, mark = max(found, default=(0, 0, 0, ","))
    if there < len(heads) or not known_there:
        _refuse_heads(path, [*named], firsts[mark][-at] if found else [])
    return _under(path, text, mark, -at, old_code_page)


def _text_of(path: Path) -> tuple[str, bool]:
    """The text of a file, and whether it was in the code page of older programs."""
    with path.open("rb") as file:
        data = file.read(LARGEST + 1)
    if len(data) > LARGEST:
        raise UnreadableError(f"{path}: it is larger than {LARGEST // 1_000_000} MB; part it")
    if data.startswith((b"PK", b"%PDF", b"\xd0\xcf\x11\xe0")):
        raise UnreadableError(f"{path}: it is no CSV file; open it in its program and save it as CSV")
    try:
        text, old = data.decode("utf-8-sig"), False
    except UnicodeDecodeError:
        try:
            text, old = data.decode(OLD_CODE_PAGE), True
        except UnicodeDecodeError:
            raise UnreadableError(f"{path}: neither UTF-8 nor Windows-1252; save it as CSV in UTF-8") from None
    refuse_unprintable(path, text)
    return text, old


def _first_lines(text: str, mark: str) -> list[list[str]]:
    """The first lines as heads are compared."""
    lines: list[list[str]] = []
    try:
        for cells in csv.reader(io.StringIO(text, newline=""), delimiter=mark):
            lines.append([bare(cell).casefold() for cell in cells])
            if len(lines) == HEAD_WITHIN:
                break
    except csv.Error:
        pass  # told where the lines are read
    return lines


def _refuse_heads(path: Path, named: Sequence[str], first: list[str]) -> None:
    missing = [head for head in named if head.casefold() not in first]
    there = ", ".join(filter(None, first[:HEADS_SHOWN])) or "nothing"
    lacks = f"lacks {', '.join(missing)}" if missing else "has none of our heads: describe its columns on Imports"
    raise UnreadableError(f"{path}: its line of heads {lacks}; there are {there}")


def _under(path: Path, text: str, mark: str, at: int, old_code_page: bool) -> Lines:
    """The lines under that of the heads, which is the nth of the file."""
    numbered = _numbered(path, text, mark)
    head_line, given = next(line for place, line in enumerate(numbered) if place == at)
    heads = [bare(cell) for cell in given]
    while heads and not heads[-1]:
        heads.pop()
    lines: list[Line] = []
    too_long: list[Line] = []
    for number, given in numbered:
        cells = [bare(cell) for cell in given]
        if any(cells[len(heads) :]):
            too_long.append(Line(number, cells))
        elif any(cells):
            lines.append(Line(number, (cells + [""] * len(heads))[: len(heads)]))
    if len(lines) + len(too_long) > MOST_LINES:
        count = len(lines) + len(too_long)
        raise UnreadableError(f"{path}: {count:,} lines, where at most {MOST_LINES:,} are read at once: part it")
    return Lines(heads, head_line, lines, old_code_page, too_long)


def _numbered(path: Path, text: str, mark: str) -> Iterator[tuple[int, list[str]]]:
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=mark, strict=True)
    while True:
        line = reader.line_num + 1
        try:
            yield line, next(reader)
        except StopIteration:
            return
        except csv.Error:
            words = "a quotation mark that nothing closes, or in the middle of a cell; write it twice or take it out"
            raise UnreadableError(f"{path}, line {line}: {words}") from None
