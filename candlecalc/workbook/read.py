"""Reading a season back from a workbook's own entry cells. The file is read, never changed.

A workbook may come from anywhere: its size is checked before it is opened, and its XML may not hold a
document type, which is how a small file grows without end.
"""

import re
import zipfile
from collections.abc import Callable
from functools import partial
from pathlib import Path

import defusedxml  # noqa: F401  openpyxl reads safely where it is installed
import openpyxl
import pandas as pd
from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.season.fields import Field, Table, Value
from candlecalc.season.folder import UnreadableError
from candlecalc.season.measures import Measures
from candlecalc.season.season import Row, Season, frame, plain
from candlecalc.season.tables import MADE_FOR, SETTING_FIELDS, SETTINGS, TABLES, WHAT_IF
from candlecalc.workbook.columns import FIRST_ROW
from candlecalc.workbook.table_tab import short
from candlecalc.workbook.tabs import costing
from candlecalc.workbook.tabs.start import FORMAT

MOST_PARTS, MOST_BYTES, MOST_GROWTH = 200, 60_000_000, 200
MOST_ROWS, MOST_COLUMNS = 20_000, 200


def season_of(path: Path) -> Season:
    """The season that a workbook of ours holds; an UnreadableError says why it cannot be read."""
    book = opened(path)
    missing = [table.title for table in (SETTINGS, WHAT_IF, *TABLES.values()) if table.title not in book.sheetnames]
    if missing:
        raise UnreadableError(f"{path}: no season workbook: it has no tab {', '.join(missing)}")
    _refuse_other_format(path, book)
    settings = _settings(path, book[SETTINGS.title])
    measures = Measures(*(str(settings[key]) for key in ("weight_unit", "temperature_unit", "length_unit")))
    shown = partial(measures.shown, currency=str(settings["currency"]))
    settings[costing.RISE.key] = _rise(path, book[WHAT_IF.title], shown)
    tables = {key: _table(path, book[table.title], table, shown) for key, table in TABLES.items()}
    return Season(settings, tables)


def _refuse_other_format(path: Path, book: openpyxl.Workbook) -> None:
    """A workbook laid out by another version may hold the same words in other places."""
    told = re.search(r"workbook format (\d+)", str(book.properties.description))
    if told and int(told[1]) != FORMAT:
        newer = "a newer candlecalc: update yours" if int(told[1]) > FORMAT else "an older candlecalc"
        raise UnreadableError(f"{path}: it is of workbook format {told[1]}, made by {newer}; this one reads {FORMAT}")


def opened(path: Path, values: bool = True) -> openpyxl.Workbook:
    """A workbook opened for reading, once its size has been looked at."""
    try:
        with zipfile.ZipFile(path) as package:
            _refuse_giants(path, package)
        return openpyxl.load_workbook(path, data_only=values)
    except UnreadableError:
        raise
    except OSError as problem:
        raise UnreadableError(f"{path}: {problem.strerror or problem}") from None
    except Exception as problem:  # noqa: BLE001  whatever a broken file makes the reader do, it is this file's fault
        raise UnreadableError(f"{path}: it cannot be read as a workbook (.xlsx): {type(problem).__name__}") from None


def _refuse_giants(path: Path, package: zipfile.ZipFile) -> None:
    parts = package.infolist()
    names = [part.filename for part in parts]
    whole = sum(part.file_size for part in parts)
    grown = any(part.file_size > MOST_GROWTH * max(part.compress_size, 1000) for part in parts)
    if len(parts) > MOST_PARTS or whole > MOST_BYTES or grown or len(set(names)) < len(names):
        raise UnreadableError(f"{path}: too large or too oddly packed to be a season workbook")


def _settings(path: Path, sheet: Worksheet) -> dict[str, Value]:
    lines: dict[str, Value] = {}
    for row in sheet.iter_rows(min_row=1, max_row=80, max_col=2, values_only=True):
        label, value = (*row, None, None)[:2]
        if isinstance(label, str):
            lines.setdefault(short(label), plain(value))
    settings: dict[str, Value] = dict.fromkeys(SETTING_FIELDS)
    for field in (*SETTINGS.fields, *MADE_FOR.fields):
        if short(field.head) not in lines:
            raise UnreadableError(f"{path}: Settings has no line {short(field.head)}")
        settings[field.key] = _typed(field, lines[short(field.head)])
    wrong = [field.head for field in MADE_FOR.fields if field.choices and settings[field.key] not in field.choices]
    if wrong:
        raise UnreadableError(f"{path}: Settings does not say what the workbook is made for: {', '.join(wrong)}")
    return settings


def _rise(path: Path, sheet: Worksheet, shown: Callable[[str], str]) -> Value:
    """The rise of materials: it stands over the column that reckons with it."""
    _refuse_large(path, sheet)
    column = _column(path, sheet, shown(costing.TAB.columns["risen"].head))
    return plain(sheet.cell(costing.RISE_ROW, column).value)


def _table(path: Path, sheet: Worksheet, table: Table, shown: Callable[[str], str]) -> pd.DataFrame:
    _refuse_large(path, sheet)
    columns = {field: _column(path, sheet, shown(field.head)) for field in table.fields}
    rows: list[Row] = []
    for row in range(FIRST_ROW, sheet.max_row + 1):
        rows.append({each.key: _typed(each, plain(sheet.cell(row, at).value)) for each, at in columns.items()})
    while rows and not any(value is not None for value in rows[-1].values()):
        rows.pop()
    return frame(rows, table)


def _typed(field: Field, value: Value) -> Value:
    """What a cell holds; a number where any text will do is its text: a season tag 2027."""
    return f"{value:.15g}" if field.free and isinstance(value, float) else value


def _refuse_large(path: Path, sheet: Worksheet) -> None:
    if sheet.max_row > MOST_ROWS or sheet.max_column > MOST_COLUMNS:
        raise UnreadableError(f"{path}: {sheet.title} is too large")


def _column(path: Path, sheet: Worksheet, head: str) -> int:
    """The number of the column under a head."""
    for cell in sheet[FIRST_ROW - 1]:
        if cell.value is not None and str(cell.value) == head:
            number: int = cell.column
            return number
    raise UnreadableError(f"{path}: {sheet.title} has no column {head}")
