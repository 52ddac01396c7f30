"""Section 3 of a data sheet from a file or a pasted block, as the columns that the hazard functions take.

A table with heads (CSV, or copied from a spreadsheet) is read by them. Elsewhere a substance begins where its CAS
number stands, or where a second concentration does. What is not read is said, line by line; what stands beside the
classes is left to the functions, which name what they do not read of it.
"""

import csv
import re
from collections.abc import Sequence
from contextlib import suppress
from dataclasses import dataclass, field

from candlecalc.calc.datasheet.percentages import NUMBER, concentration, plain
from candlecalc.calc.datasheet.substance import CAS, EC, INDEX, NUMBERED, REGISTERED

# What the columns of section 3 are headed: the first that fits. Those of "" are known and not needed.
HEADS = {
    "specifics": re.compile(r"specific|limit|m-? ?factor|\bate\b|\bscl\b", re.IGNORECASE),
    "classes": re.compile(r"class|clp|ghs|hazard", re.IGNORECASE),
    "cas": re.compile(r"\bcas\b", re.IGNORECASE),
    "": re.compile(r"\bec\b|einecs|reach|regist|index", re.IGNORECASE),
    "concentrations": re.compile(r"conc|content|amount|range|weight|share|w/w|%", re.IGNORECASE),
    "substances": re.compile(r"substance|name|component|ingredient|chemical|constituent", re.IGNORECASE),
}
PARTING = "\t;|,"
# A concentration in running text: a range, a comparison or a percentage.
SHARE = re.compile(
    rf"(?<![\w.,-])(?:(?:>=?\s*)?{NUMBER}\s*%?\s*(?:-|to\b|<=?)\s*(?:<=?\s*)?{NUMBER}\s*%?"
    rf"|[<>]=?\s*{NUMBER}\s*%?|{NUMBER}\s*%)(?![\w.-])"
)
# Before a number, what makes it a limit of a class: "C >= 0.5 %".
LIMIT = re.compile(r"(?:\bC|[<>=])\s*$")
NEXT_SECTION = re.compile(r"(?:section|abschnitt|rubrique)\s*(?:[4-9]|1[0-6])\b|4\.(?:1\b|\s)", re.IGNORECASE)
# A line left out would make the label say less than it must.
NO_SHARE = '{}: no concentration is read beside it; write it as printed, such as "1-5 %"'
CODED = re.compile(r"\b(?:H[234]\d\d|EUH\d\d\d)")


@dataclass
class Sheet:
    """Lines of section 3, a column each, and what of the text was not read."""

    substances: list[str] = field(default_factory=list)
    concentrations: list[str] = field(default_factory=list)
    classes: list[str] = field(default_factory=list)
    specifics: list[str] = field(default_factory=list)
    unread: list[str] = field(default_factory=list)

    def add(self, substance: str, share: str, classes: str, specifics: str = "") -> None:
        self.substances.append(substance)
        self.concentrations.append(share)
        self.classes.append(classes)
        self.specifics.append(specifics)

    def add_to_last(self, classes: str, specifics: str) -> None:
        """More of the last substance, from a row that goes on with it."""
        for column, more in ((self.classes, classes), (self.specifics, specifics)):
            column[-1] = "; ".join(filter(None, [column[-1], more]))


@dataclass
class _Entry:
    """A substance in a pasted block: its name, its number, its concentration, and the lines of its classes."""

    name: str = ""
    number: str = ""
    share: str = ""
    lines: list[str] = field(default_factory=list)

    @property
    def substance(self) -> str:
        return f"{self.name} {self.number}".strip()

    @property
    def text(self) -> str:
        return " ".join(filter(None, self.lines))


def read(text: str) -> Sheet:
    """The lines of section 3 in a text; a ValueError where there are none.

    >>> read("Linalool 78-70-6 201-134-4 10 - 20 % Skin Sens. 1B, H317").concentrations
    ['10 - 20 %']
    """
    lines = [plain(line) for line in text.splitlines()]
    sheet = _from_table(lines) or _from_block([" ".join(line.split()) for line in lines])
    if not sheet.substances:
        raise ValueError("no line of section 3 is found there: each substance needs its concentration, and its classes")
    return sheet


def _from_table(lines: Sequence[str]) -> Sheet | None:
    """The lines under heads; None where there are no heads."""
    for mark in PARTING:
        try:
            rows = list(csv.reader(lines, delimiter=mark))
        except csv.Error:  # what no table holds, such as a cell of 200,000 characters
            continue
        for place, row in enumerate(rows):
            heads = [_head(cell) for cell in row]
            if {"concentrations", "classes"} <= set(heads) and {"substances", "cas"} & set(heads):
                above = enumerate(map(" ".join, rows[:place]), start=1)
                sheet = Sheet(unread=[f"line {number}: {line}" for number, line in above if line])
                sheet.unread += [f"column {name}" for name, key in zip(row, heads) if key is None and name]
                for number, below in enumerate(rows[place + 1 :], start=place + 2):
                    _add_row(sheet, number, below, heads)
                return sheet
    return None


def _head(cell: str) -> str | None:
    return next((key for key, pattern in HEADS.items() if pattern.search(cell)), None)


def _add_row(sheet: Sheet, number: int, row: list[str], heads: Sequence[str | None]) -> None:
    said = {key: [cell.strip() for cell, its in zip(row, heads) if its == key and cell.strip()] for key in HEADS}
    substance = " ".join(said["substances"] + said["cas"])
    if said["cas"] and not said["concentrations"]:
        raise ValueError(NO_SHARE.format(substance))
    classes, specifics = "; ".join(said["classes"]), "; ".join(said["specifics"])
    if substance and said["concentrations"]:
        sheet.add(substance, said["concentrations"][0], classes, specifics)
    elif not substance and not said["concentrations"] and (classes or specifics) and sheet.substances:
        sheet.add_to_last(classes, specifics)
    elif any(row):
        sheet.unread.append(f"line {number}: {' '.join(' '.join(row).split())}")


def _from_block(lines: Sequence[str]) -> Sheet:
    above, entries, unread = _Entry(), list[_Entry](), list[str]()
    for number, line in enumerate(lines, start=1):
        if NEXT_SECTION.match(line):
            unread.append(f"line {number} and all after it: {line}")
            break
        last = entries[-1] if entries else above
        begun = _begun(line, last)
        if begun:
            # A number that stands alone has its name in the line above it.
            begun.name = begun.name or (last.lines.pop() if last.lines and not CODED.search(last.lines[-1]) else "")
            entries.append(begun)
        elif entries and not last.share:
            before, last.share, after = _parted(line)
            last.lines.append(f"{before} {after}".strip())
        elif line:
            last.lines.append(_without_numbers(line) if entries else line)
    sheet = Sheet(unread=above.lines)
    for entry in entries:
        if not entry.share:
            raise ValueError(NO_SHARE.format(entry.substance))
        sheet.add(entry.substance, entry.share, entry.text)
    sheet.unread += unread
    return sheet


def _begun(line: str, last: _Entry) -> _Entry | None:
    """The substance that begins in a line: one with a CAS number, or a concentration where there is one already."""
    number = CAS.search(line)
    if not number:
        name, share, rest = _parted(line)
        begins = share and name and not CODED.search(name) and (last.share or not last.substance)
        return _Entry(name, "", share, [rest]) if begins else None
    name, share, rest = _parted(line[number.end() :])
    after = f"{name} {rest}".strip()
    before = line[: number.start()]
    name, earlier, rest = _parted(before)
    return _Entry(f"{name} {rest}".strip(), number[0], share or earlier, [after])


def _parted(line: str) -> tuple[str, str, str]:
    """What stands before a concentration, the concentration, and what stands after it, without registry numbers."""
    line = _without_numbers(line)
    for found in SHARE.finditer(line):
        before, after = line[: found.start()], line[found.end() :]
        with suppress(ValueError):
            if not LIMIT.search(before):
                concentration(found[0])
                return _clean(before), found[0].strip(), _clean(after)
    return _clean(line), "", ""


def _without_numbers(line: str) -> str:
    for pattern in (REGISTERED, INDEX, EC, NUMBERED):
        line = pattern.sub(" ", line)
    return line.strip()


def _clean(text: str) -> str:
    return " ".join(text.split()).strip(" ,;:|(")
