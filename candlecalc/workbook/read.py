"""Reading a season back from a workbook's own entry cells. The file is read, never changed.

A workbook may come from anywhere: its size is checked before it is opened, and its XML may not hold a
document type, which is how a small file grows without end.
"""

import re
import zipfile
from collections.abc import Callable, Iterable
from contextlib import closing
from functools import partial
from itertools import islice
from pathlib import Path
from typing import Any, NamedTuple

import defusedxml  # noqa: F401  openpyxl reads safely where it is installed
import openpyxl
import pandas as pd
from openpyxl.utils import column_index_from_string
from openpyxl.worksheet._read_only import ReadOnlyWorksheet

from candlecalc.season.fields import Field, Table, Value, short
from candlecalc.season.folder import UnreadableError, refuse_unmade
from candlecalc.season.measures import Measures
from candlecalc.season.season import Row, Season, frame, plain
from candlecalc.season.tables import MADE_FOR, SETTING_FIELDS, SETTINGS, TABLES, WHAT_IF
from candlecalc.workbook.place import FIRST_ROW
from candlecalc.workbook.tabs import batch, costing, start
from candlecalc.workbook.unreadable import why_not

MOST_PARTS, MOST_BYTES, MOST_GROWTH = 200, 60_000_000, 200
MOST_ROWS, MOST_COLUMNS = 20_000, 200

Rows = list[tuple[Any, ...]]  # of a tab, what its cells hold


class Opened(NamedTuple):
    """What was read of a workbook."""

    description: str
    tabs: dict[str, Rows]


class Held(NamedTuple):
    """What a workbook of ours holds: its season, what is typed on Batch, and the lines of Changes."""

    season: Season
    card: Row
    log: list[Row]


def season_of(path: Path) -> Season:
    """The season that a workbook of ours holds; an UnreadableError says why it cannot be read."""
    return held(path).season


def held(path: Path) -> Held:
    """All that a maker typed in a workbook of ours; an UnreadableError says why it cannot be read."""
    titles = [table.title for table in (SETTINGS, WHAT_IF, *TABLES.values())]
    book = opened(path, [*titles, batch.TAB.title, start.CHANGES.title])
    missing = [title for title in titles if title not in book.tabs]
    if missing:
        raise UnreadableError(f"{path}: no season workbook: it has no tab {', '.join(missing)}")
    _refuse_other_format(path, book)
    settings = _settings(path, book.tabs[SETTINGS.title])
    measures = Measures(*(str(settings[key]) for key in ("weight_unit", "temperature_unit", "length_unit")))
    shown = partial(measures.shown, currency=str(settings["currency"]))
    settings[costing.RISE.key] = _rise(path, book.tabs[WHAT_IF.title], shown)
    tables = {key: _table(path, book.tabs[table.title], table, shown) for key, table in TABLES.items()}
    card, log = (book.tabs.get(tab.title, []) for tab in (batch.TAB, start.CHANGES))
    return Held(Season(settings, tables), _card(card), _log(log))


def _card(rows: Rows) -> Row:
    return {
        field.key: plain(cell_at(rows, batch.PICK, column_index_from_string(letter)))
        for letter, field in batch.ENTRIES.items()
    }


def _log(rows: Rows) -> list[Row]:
    keys = [field.key for field in start.CHANGE_FIELDS]
    lines = ({key: plain(value) for key, value in zip(keys, row, strict=False)} for row in rows[FIRST_ROW - 1 :])
    return [dict.fromkeys(keys) | line for line in lines if any(value is not None for value in line.values())]


def _refuse_other_format(path: Path, book: Opened) -> None:
    """A workbook laid out by another version may hold the same words in other places."""
    told = re.search(r"workbook format (\d+)", book.description)
    if told and int(told[1]) != start.FORMAT:
        newer = "a newer candlecalc: update yours" if int(told[1]) > start.FORMAT else "an older candlecalc"
        raise UnreadableError(
            f"{path}: it is of workbook format {told[1]}, made by {newer}; this one reads {start.FORMAT}"
        )


def opened(path: Path, titles: Iterable[str], values: bool = True) -> Opened:
    """Some tabs of a workbook, those of them that it has, with values or formulas; its size is looked at first."""
    try:
        with zipfile.ZipFile(path) as package:
            _refuse_giants(path, package)
        with closing(openpyxl.load_workbook(path, data_only=values, read_only=True)) as book:
            tabs = {title: _rows(path, book[title]) for title in titles if title in book.sheetnames}
            return Opened(str(book.properties.description), tabs)
    except UnreadableError:
        raise
    except OSError as problem:
        raise UnreadableError(f"{path}: {problem.strerror or problem}") from None
    except Exception:  # noqa: BLE001  whatever a broken file makes the reader do, it is this file's fault
        raise UnreadableError(f"{path}: it cannot be read as a workbook: {why_not(path)}") from None


def _refuse_giants(path: Path, package: zipfile.ZipFile) -> None:
    parts = package.infolist()
    names = [part.filename for part in parts]
    whole = sum(part.file_size for part in parts)
    grown = any(part.file_size > MOST_GROWTH * max(part.compress_size, 1000) for part in parts)
    if len(parts) > MOST_PARTS or whole > MOST_BYTES or grown or len(set(names)) < len(names):
        raise UnreadableError(f"{path}: too large or too oddly packed to be a season workbook")


def _rows(path: Path, sheet: ReadOnlyWorksheet) -> Rows:
    sheet.reset_dimensions()  # a file may say another size than it has
    rows = list(islice(sheet.iter_rows(values_only=True), MOST_ROWS + 1))
    if len(rows) > MOST_ROWS or any(len(row) > MOST_COLUMNS for row in rows):
        raise UnreadableError(f"{path}: {sheet.title} is too large")
    return rows


def cell_at(rows: Rows, row: int, column: int) -> Any:
    """What a cell holds, its row and column counted from 1; nothing beyond the cells that were written."""
    held = rows[row - 1] if row <= len(rows) else ()
    return held[column - 1] if column <= len(held) else None


def _settings(path: Path, rows: Rows) -> dict[str, Value]:
    lines: dict[str, Value] = {}
    for row in rows[:80]:
        label, value = (*row, None, None)[:2]
        if isinstance(label, str):
            lines.setdefault(short(label), plain(value))
    settings: dict[str, Value] = dict.fromkeys(SETTING_FIELDS)
    for field in (*SETTINGS.fields, *MADE_FOR.fields):
        if short(field.head) not in lines:
            raise UnreadableError(f"{path}: Settings has no line {short(field.head)}")
        settings[field.key] = _typed(field, lines[short(field.head)])
    refuse_unmade(f"{path}, tab Settings", settings)
    return settings


def _rise(path: Path, rows: Rows, shown: Callable[[str], str]) -> Value:
    """The rise of materials: it stands over the column that reckons with it."""
    column = _column(path, WHAT_IF.title, rows, shown(costing.TAB.columns["risen"].head))
    return plain(cell_at(rows, costing.RISE_ROW, column))


def _table(path: Path, rows: Rows, table: Table, shown: Callable[[str], str]) -> pd.DataFrame:
    columns = {field: _column(path, table.title, rows, shown(field.head)) for field in table.fields}
    typed: list[Row] = []
    for row in range(FIRST_ROW, len(rows) + 1):
        typed.append({each.key: _typed(each, plain(cell_at(rows, row, at))) for each, at in columns.items()})
    while typed and not any(value is not None for value in typed[-1].values()):
        typed.pop()
    return frame(typed, table)


def _typed(field: Field, value: Value) -> Value:
    """What a cell holds; a number where any text will do is its text: a season tag 2027."""
    return f"{value:.15g}" if field.free and isinstance(value, float) else field.as_declared(value)


def _column(path: Path, title: str, rows: Rows, head: str) -> int:
    """The number of the column under a head."""
    heads = rows[FIRST_ROW - 2] if len(rows) >= FIRST_ROW - 1 else ()
    for number, told in enumerate(heads, start=1):
        if told is not None and str(told) == head:
            return number
    raise UnreadableError(f"{path}: {title} has no column {head}")
