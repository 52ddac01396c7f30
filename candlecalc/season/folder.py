"""A season as a folder of CSV files: settings.csv (key, value) and one file a table."""

import csv
import datetime
import io
import math
import re
from collections.abc import Mapping
from pathlib import Path

import candlecalc.units as units
from candlecalc.season.fields import Field, Table, Value
from candlecalc.season.season import Row, Season, frame
from candlecalc.season.tables import MADE_FOR, SETTING_FIELDS, TABLES

DEMO = Path(__file__).parent / "demo"

# A cell that starts so is run as a formula by some spreadsheets: written with an apostrophe before it.
FORMULA_MARKS = ("=", "+", "-", "@", "\t", "\r")

# What XML 1.0, and with it a workbook, has no place for.
UNPRINTABLE = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\ufffe\uffff]")


class UnreadableError(ValueError):
    """A season that cannot be read at all: what, where and what to do."""


def read(folder: Path) -> Season:
    """Read a season from its folder. A cell that is no number stays text, and is a problem to report."""
    path = folder / "settings.csv"
    settings: dict[str, Value] = {}
    for line in _lines(path, ["key", "value"]):
        key = line["key"]
        if key not in SETTING_FIELDS:
            raise UnreadableError(f"{path}: {key} is no setting; known are {', '.join(SETTING_FIELDS)}")
        if key in settings:
            raise UnreadableError(f"{path}: {key} stands there twice; take one line out")
        settings[key] = _value(line["value"], SETTING_FIELDS[key])
    settings = dict.fromkeys(SETTING_FIELDS) | settings
    refuse_unmade(str(path), settings)
    return Season(settings, {key: frame(_rows(folder / f"{key}.csv", table), table) for key, table in TABLES.items()})


def refuse_unmade(where: str, settings: Mapping[str, Value]) -> None:
    """Without its units, its paper and its currency nothing of a season can be told."""
    unmade = [
        f"{field.head} takes {' or '.join(field.choices) or field.help}"
        for field in MADE_FOR.fields
        if settings[field.key] is None or (field.choices and settings[field.key] not in field.choices)
    ]
    if unmade:
        raise UnreadableError(f"{where}: it does not say what the workbook is made for: {'; '.join(unmade)}")


def write(season: Season, folder: Path) -> None:
    """Write a season to a folder, a file a table."""
    folder.mkdir(parents=True, exist_ok=True)
    lines = [[key, _text(season.settings.get(key))] for key in SETTING_FIELDS]
    _write(folder / "settings.csv", ["key", "value"], lines)
    for key, table in TABLES.items():
        rows = [[_text(row[name]) for name in table.keys] for _, row in season.rows(key)]
        _write(folder / f"{key}.csv", table.keys, rows)


def _rows(path: Path, table: Table) -> list[Row]:
    needed = [field.key for field in table.fields if field.required]
    lines = _lines(path, needed)  # an optional column that is absent is blank
    return [{field.key: _value(line.get(field.key, ""), field) for field in table.fields} for line in lines]


def _lines(path: Path, keys: list[str]) -> list[dict[str, str]]:
    text = _text_of(path)
    # A spreadsheet that writes decimal commas parts its cells by semicolons.
    first = text.partition("\n")[0]
    reader = csv.DictReader(io.StringIO(text, newline=""), restval="", delimiter=max(",;\t", key=first.count))
    missing = set(keys) - set(reader.fieldnames or [])
    if missing:
        raise UnreadableError(f"{path}: the first line lacks {', '.join(sorted(missing))}")
    try:
        return list(reader)
    except csv.Error:  # a cell of more letters than any entry: a quotation mark that nothing closes
        raise UnreadableError(f"{path}: a cell has no end; look for a lone quotation mark") from None


def _text_of(path: Path) -> str:
    try:
        text = path.read_bytes().decode("utf-8-sig")
    except OSError as problem:
        why = "it is not there" if isinstance(problem, FileNotFoundError) else problem.strerror
        raise UnreadableError(f"{path}: {why}; a season folder holds settings.csv and {_names()}") from None
    except UnicodeDecodeError:
        raise UnreadableError(f"{path}: save it as CSV in UTF-8") from None
    unprintable = UNPRINTABLE.search(text)
    if unprintable:
        line = text.count("\n", 0, unprintable.start()) + 1
        raise UnreadableError(f"{path}, line {line}: a character that no workbook holds; save it as CSV in UTF-8")
    return text


def _names() -> str:
    return ", ".join(f"{key}.csv" for key in TABLES)


def _value(text: str, field: Field) -> Value:
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
    text = str(value)
    return "'" + text if isinstance(value, str) and text.startswith(FORMULA_MARKS) else text


def _write(path: Path, heads: list[str], rows: list[list[str]]) -> None:
    with path.open("w", newline="", encoding="utf-8") as file:
        csv.writer(file, lineterminator="\n").writerows([heads, *rows])
