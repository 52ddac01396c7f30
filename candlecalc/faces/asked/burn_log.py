"""A log of burns from a CSV file, as the arguments that functions of burning take.

Each line is a burn: its test, date and hours, the weight before and after, and what was seen, as in burn_cycles.csv
of a season folder. Or each line is a weighing: the hours up to it, and the weight. A unit may stand in the head
("before, oz") or beside the number; else weights are grams and lengths millimetres.
"""

import csv
import io
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from typing import Any

from candlecalc.quantities import units

# What a column is of; "" for words.
COLUMNS = {"test": "", "date": "", "hours": "h", "before": "g", "after": "g", "weight": "g", "flame": "mm",
           "seen": "", "seen_too": "", "pool": "", "hot": ""}  # fmt: skip
HEAD = re.compile(r"(?P<key>[a-z_ ]+?)s?(?:\s*[,(]\s*(?P<unit>[^)]+)\)?)?")
PARTING = ";\t,"


@dataclass
class Burns:
    """The log of one test: its weighings, the tallest flame, and what was seen."""

    hours: list[float] = field(default_factory=list)
    weights: list[str] = field(default_factory=list)
    flames: list[str] = field(default_factory=list)
    seen: list[str] = field(default_factory=list)
    bare: bool = False  # whether a weight stands there without a unit


@dataclass(frozen=True)
class Line:
    """A line of the log: its cells by column, each a number with its unit."""

    number: int
    cells: dict[str, str]
    inside: dict[str, str]  # the unit in the head of a column

    def amount(self, key: str) -> tuple[float, str]:
        """A number of the line and the unit it is in, as makers spell it; a ValueError says what is wrong with it."""
        kind, text = COLUMNS[key], self.cells.get(key, "")
        try:
            read = units.read(text, kind)
            if read.unit:
                value, unit = units.written(text)
                return value, units.NAMES[unit]
            return read.value, self.inside.get(key, kind)
        except ValueError as problem:
            raise ValueError(f'line {self.number}: {key} is "{text}": it {problem}') from None


def read(text: str) -> dict[str, Burns]:
    """The log of each test in a text, "" for a log that names none; a ValueError says what is wrong.

    >>> read("hours,before,after\\n4,612,596\\n4,596,581")[""].weights
    ['612 g', '596 g', '581 g']
    """
    lines = list(_lines(text))
    if not lines:
        raise ValueError("there is no burn in it, only a head")
    tests: dict[str, list[Line]] = {}
    for line in lines:
        tests.setdefault(line.cells.get("test", ""), []).append(line)
    return {name: _log(of_test) for name, of_test in tests.items()}


def _lines(text: str) -> Iterator[Line]:
    head = text.partition("\n")[0]
    mark = max(PARTING, key=head.count)
    rows = csv.reader(io.StringIO(text, newline=""), delimiter=mark)
    keys, inside = _head(next(rows, []), mark)
    for number, row in enumerate(rows, start=2):
        cells = {key: cell.strip() for key, cell in zip(keys, row, strict=False) if key and cell.strip()}
        if cells:
            yield Line(number, cells, inside)


def _head(cells: Sequence[str], mark: str) -> tuple[list[str], dict[str, str]]:
    """The column of each cell of the head, and the units that stand there."""
    keys, inside = [], {}
    for cell in cells:
        found = HEAD.fullmatch(cell.strip().lower())
        key = found["key"].strip().replace(" ", "_") if found else ""
        # "hours" has its s, and so have weights.
        key = next((name for name in COLUMNS if key in (name, name.removesuffix("s"))), "")
        keys.append(key)
        if key and found and found["unit"]:
            if not units.in_kind(found["unit"], COLUMNS[key] or "g"):
                raise ValueError(f'the head "{cell.strip()}" names no unit of {key}; write it as "{key}, oz"')
            inside[key] = units.NAMES[units.named(found["unit"])]
    if "hours" not in keys or not ({"before", "after"} <= set(keys) or "weight" in keys):
        raise ValueError("its first line takes hours, before and after of each burn; or hours and weight of a weighing")
    return keys, inside


def _log(lines: Sequence[Line]) -> Burns:
    log = Burns()
    weighed = "weight" if "weight" in lines[0].cells else "before"
    log.bare = weighed not in lines[0].inside and not units.read(lines[0].cells.get(weighed, "0"), "g").unit
    if weighed == "weight":
        for line in lines:
            log.hours.append(line.amount("hours")[0])
            log.weights.append(_spelled(*line.amount("weight")))
        return log
    ordered = sorted(lines, key=lambda line: line.cells.get("date", ""))
    weight, unit = ordered[0].amount("before")
    log.hours, log.weights = [0.0], [_spelled(weight, unit)]
    for line in ordered:
        log.hours.append(log.hours[-1] + line.amount("hours")[0])
        # What was trimmed or taken out between burns was not burnt.
        lost = units.between(*line.amount("before"), unit) - units.between(*line.amount("after"), unit)
        weight = round(weight - lost, 9)
        log.weights.append(_spelled(weight, unit))
        if "flame" in line.cells:
            log.flames.append(_spelled(*line.amount("flame")))
        log.seen += [line.cells[key] for key in ("seen", "seen_too") if key in line.cells]
    return log


def _spelled(value: float, unit: str) -> str:
    return f"{value:.15g} {unit}"


def given(log: Burns) -> dict[str, Any]:
    """What a log has for the arguments of a function, by their names."""
    tallest = max(log.flames, key=lambda flame: units.read(flame, "mm").value, default="")
    found = {"hours": log.hours, "weights": log.weights, "seen": log.seen, "flame": tallest}
    return {name: value for name, value in found.items() if value}
