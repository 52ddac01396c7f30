"""A season as a folder of CSV files: settings.csv (key, value) and one file a table."""

import csv
import datetime
import io
import math
import re
import sys
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import NamedTuple

import candlecalc.quantities.units as units
from candlecalc.season.fields import Field, Table, Value
from candlecalc.season.season import Problem, Row, Season, Tables
from candlecalc.season.tables import TABLES, tables_of
from candlecalc.season.tables.once import MADE_FOR, ONCE, SETTING_FIELDS

DEMO = Path(__file__).parent / "demo"

# A cell that starts so is run as a formula by some spreadsheets: written with an apostrophe before it.
FORMULA_MARKS = ("=", "+", "-", "@", "\t", "\r")

# What XML 1.0, and with it a workbook, has no place for.
UNPRINTABLE = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\ufffe\uffff]")

PARTED = re.compile(r"-?[0-9]+,[0-9]+")
DOUBTFUL = re.compile(r"-?[1-9][0-9]{0,2}\.[0-9]{3}")
FIRST_FAULTS = 3  # lines that are named; the others are counted
MOST_LINES = 20_000  # of a file; how many rows a workbook has is counted in formulas


ABSENT = sys.maxsize  # the place of a column that a file has not


class UnreadableError(ValueError):
    """A season that cannot be read at all: what, where and what to do."""


def read(folder: Path, *, records: bool = False) -> Season:
    """Read a season from its folder. A cell that is no number stays text, and is a problem to report.

    With `records` the year's records are read too, though settings.csv does not ask for them. A file of theirs that
    is not there holds nothing yet.
    """
    path = folder / "settings.csv"
    settings: dict[str, Value] = {}
    found = lines_of(path, ["key", "value"])
    doubts: list[Problem] = []
    for key, text in (cells for cells in found.rows if any(cells)):
        if key not in SETTING_FIELDS:
            raise UnreadableError(f"{path}: {key} is no setting; known are {', '.join(SETTING_FIELDS)}")
        if key in settings:
            raise UnreadableError(f"{path}: {key} stands there twice; take one line out")
        settings[key] = value_of(text, SETTING_FIELDS[key])
        doubts += [
            _doubt(table, table.keys.index(key), key, text) for table in ONCE if _doubted(table, key, text, found)
        ]
    settings = dict.fromkeys(SETTING_FIELDS) | settings
    refuse_unmade(str(path), settings)
    asked = tables_of(records or settings["records"] == "yes")
    tables = {key: _table(folder / f"{key}.csv", table, doubts) for key, table in asked.items()}
    return Season(settings, Tables(tables), tuple(doubts))


def refuse_unmade(where: str, settings: Mapping[str, Value]) -> None:
    """Without its units, its paper and its currency nothing of a season can be told."""
    unmade = [
        f"{field.head} takes {' or '.join(field.choices) or field.help}"
        for field in MADE_FOR.fields
        if (settings[field.key] is None and field.required)
        or (field.choices and settings[field.key] not in (*field.choices, None))
    ]
    if unmade:
        raise UnreadableError(f"{where}: it does not say what the workbook is made for: {'; '.join(unmade)}")


def write(season: Season, folder: Path) -> None:
    """Write a season to a folder, a file a table."""
    folder.mkdir(parents=True, exist_ok=True)
    lines = [[key, _text(season.settings.get(key))] for key in SETTING_FIELDS]
    _write(folder / "settings.csv", ["key", "value"], lines)
    for key in season.tables:
        table = TABLES[key]
        rows = [[_text(row[name]) for name in table.keys] for _, row in season.rows(key)]
        _write(folder / f"{key}.csv", table.keys, rows)


def _table(path: Path, table: Table, doubts: list[Problem]) -> list[Row]:
    """A table from its file, and what in it can be read two ways."""
    if table.records and not path.exists():
        return []
    found = lines_of(path, table.keys, table)
    for place, cells in enumerate(found.rows):
        for key, text in zip(table.keys, cells, strict=True):
            if _doubted(table, key, text, found):
                doubts.append(_doubt(table, place, key, text))
    return [
        {field.key: value_of(text, field) for field, text in zip(table.fields, cells, strict=True)}
        for cells in found.rows
    ]


class _Found(NamedTuple):
    """The lines of a file, each its cells in the order of the keys, and whether commas part its decimals.

    An optional column that is absent is blank.
    """

    rows: list[list[str]]
    commas: bool


def lines_of(path: Path, keys: list[str], table: Table | None = None) -> _Found:
    text = _text_of(path)
    # A spreadsheet that writes decimal commas parts its cells by semicolons.
    first = text.partition("\n")[0]
    mark = max(",;\t", key=first.count)
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=mark)
    try:
        head = next(reader, [])
        needed = {field.key for field in table.fields if field.required} if table else set(keys)
        columns = _columns(path, [name.strip() for name in head], keys, needed)
        rows = _kept(path, reader, len(head), columns, table)
    except csv.Error:  # a cell of more letters than any entry: a quotation mark that nothing closes
        raise UnreadableError(f"{path}: a cell has no end; look for a lone quotation mark") from None
    return _Found(rows, mark != "," or any(PARTED.fullmatch(cell.strip()) for row in rows for cell in row))


def _columns(path: Path, head: list[str], keys: list[str], needed: set[str]) -> list[int]:
    """Where each key's column stands, beyond all cells where it is absent.

    A column without a name is passed over where nothing stands in it.
    """
    missing = needed - set(head)
    if missing:
        raise UnreadableError(f"{path}: the first line lacks {', '.join(sorted(missing))}")
    for name in filter(None, head):
        if head.count(name) > 1:
            raise UnreadableError(f"{path}: {name} stands in the first line twice; take one column out")
        if name not in keys:
            raise UnreadableError(f"{path}: {name} is no column of it; known are {', '.join(keys)}")
    return [head.index(key) if key in head else ABSENT for key in keys]


def _kept(
    path: Path, reader: Iterator[list[str]], width: int, columns: list[int], table: Table | None
) -> list[list[str]]:
    """The cells of each line in the order of the keys. Lines that cannot be kept are counted, the first ones named."""
    rows: list[list[str]] = []
    faults: list[str] = []
    wrong = filled = beyond = 0
    end = 1
    for cells in reader:
        line, end = end + 1, reader.line_num  # type: ignore[attr-defined]
        named = [cells[place] if place < len(cells) else "" for place in columns]
        if len(cells) > width or sum(map(bool, map(str.strip, cells))) > sum(map(bool, map(str.strip, named))):
            wrong += 1
            if wrong <= FIRST_FAULTS:
                faults.append(f"{path}, line {line}: {_too_many(cells, width, columns, table)}")
        elif cells:
            filled += any(named)
            beyond = beyond or (line if table and filled > MOST_LINES else 0)
            if not beyond:
                rows.append(named)
    if wrong > FIRST_FAULTS:
        faults.append(f"and {wrong - FIRST_FAULTS} lines more like these")
    if beyond and table and not faults:
        faults.append(
            f"{path}, line {beyond}: {filled} lines, where at most {MOST_LINES} are read; this is the first beyond"
        )
    if faults:
        raise UnreadableError("; ".join(faults))
    return rows


def _too_many(cells: list[str], width: int, columns: list[int], table: Table | None) -> str:
    """What of a line is too many, and the likely cause."""
    over = len(cells) - width
    if over <= 0:
        return "something stands in a column that the first line has no name for; name it, or take it out"
    told = f"{'one cell' if over == 1 else f'{over} cells'} more than the first line has columns for, at its end "
    told += f'"{cells[-1]}"; '
    # A number parted in two: the one whose halves put together leave the other cells where they belong.
    parted = [
        place for place, pair in enumerate(zip(cells, cells[1:], strict=False)) if PARTED.fullmatch(",".join(pair))
    ]
    if not parted:
        return told + "take out what is too many"
    place = max(parted, key=lambda place: _fitting(_joined(cells, place), columns, table))
    number = ",".join(cells[place : place + 2])
    return told + f'a decimal comma may have parted "{number}": write {number.replace(",", ".")}'


def _joined(cells: list[str], place: int) -> list[str]:
    return [*cells[:place], ".".join(cells[place : place + 2]), *cells[place + 2 :]]


def _fitting(cells: list[str], columns: list[int], table: Table | None) -> int:
    """How many cells hold what their column takes: a number, or one of its words."""
    if not table:
        return 0
    values = [
        value_of(cells[place] if place < len(cells) else "", field)
        for place, field in zip(columns, table.fields, strict=True)
    ]
    return sum(
        value is None or (isinstance(value, float) if field.numeric else not field.choices or value in field.choices)
        for value, field in zip(values, table.fields, strict=True)
    )


def _doubted(table: Table, key: str, text: str, found: _Found) -> bool:
    """Whether a number's point may part thousands: where commas part decimals, it does."""
    return found.commas and key in table.by_key and table[key].numeric and bool(DOUBTFUL.fullmatch(text.strip()))


def _doubt(table: Table, place: int, key: str, text: str) -> Problem:
    typed = text.strip()
    decimal = f"{float(typed):g}" if typed.endswith("0") else f"{typed}0"
    either = f"write {decimal} or {typed.replace('.', '')}"
    return Problem(table.title, place, key, f'"{typed}" may be two numbers where commas part decimals: {either}')


def _text_of(path: Path) -> str:
    try:
        text = path.read_bytes().decode("utf-8-sig")
    except OSError as problem:
        why = "it is not there" if isinstance(problem, FileNotFoundError) else problem.strerror
        raise UnreadableError(f"{path}: {why}; a season folder holds settings.csv and {_names()}") from None
    except UnicodeDecodeError:
        raise UnreadableError(f"{path}: save it as CSV in UTF-8") from None
    refuse_unprintable(path, text)
    return text


def refuse_unprintable(path: Path, text: str) -> None:
    """Whatever else a file says: no cell of a workbook could hold it."""
    unprintable = UNPRINTABLE.search(text)
    if unprintable:
        line = text.count("\n", 0, unprintable.start()) + 1
        raise UnreadableError(f"{path}, line {line}: a character that no workbook holds; save it as CSV in UTF-8")


def _names() -> str:
    return ", ".join(f"{key}.csv" for key in TABLES)


def value_of(text: str, field: Field) -> Value:
    """What a text stands for in a field, as our own files have it; a text where it is no number or day."""
    text = text.strip()
    if not text:
        return None
    if field.numeric and field.term:
        unit = field.term.unit if units.kind_of(field.term.unit) == "a share" else ""
        try:
            number = units.read(text, unit).value
        except ValueError:
            return text
        return number if math.isfinite(number) else text
    if field.date:
        try:
            return datetime.date.fromisoformat(text)
        except ValueError:
            return text
    return field.as_declared(text.removeprefix("'") if text[1:2] in FORMULA_MARKS else text)


def _text(value: Value) -> str:
    if value is None:
        return ""
    if isinstance(value, float):
        return f"{value:.15g}"
    return protected(value) if isinstance(value, str) else str(value)


def protected(text: str) -> str:
    """A text for a cell of CSV, where no spreadsheet runs it as a formula."""
    return "'" + text if text.startswith(FORMULA_MARKS) else text


def _write(path: Path, heads: list[str], rows: list[list[str]]) -> None:
    with path.open("w", newline="", encoding="utf-8") as file:
        csv.writer(file, lineterminator="\n").writerows([heads, *rows])
