"""Reading a season back from a workbook's own entry cells, wherever they stand in it.

Columns are found by their heads, lines by their labels, the bench card's entries by their names: a workbook may be
of an earlier version, and a maker may have moved what is in it.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from functools import partial
from pathlib import Path
from typing import NamedTuple

from openpyxl.utils import column_index_from_string, get_column_letter

from candlecalc.season.fields import Field, Table, Value, short
from candlecalc.season.folder import UnreadableError, refuse_unmade
from candlecalc.season.measures import Measures
from candlecalc.season.season import Row, Season, Tables, plain
from candlecalc.season.tables import TABLES, tables_of
from candlecalc.season.tables.once import MADE_FOR, SETTING_FIELDS, SETTINGS, WHAT_IF
from candlecalc.workbook.book import TABLE_TABS, TABS
from candlecalc.workbook.cells.layout import HEAD_ROW, OWN_ROW
from candlecalc.workbook.reading.heads import Heads, Shown, found_heads, heads_of, plain_head
from candlecalc.workbook.reading.opening import Opened, Rows, cell_at, opened
from candlecalc.workbook.reading.spots import TODAYS, Spot, Spots, column_spots, spot
from candlecalc.workbook.reading.version import Origin, origin_of
from candlecalc.workbook.tabs.look import changes
from candlecalc.workbook.tabs.make import batch, costing

MOST_LINES = 80  # of Settings


class Held(NamedTuple):
    """What a workbook of ours holds, or a folder: its season, what is typed on Batch, and the lines of Changes."""

    season: Season
    card: Row
    log: list[Row]
    origin: Origin = Origin()
    spots: Spots = TODAYS
    absent: Sequence[str] = ()  # what it has not, a line each
    formulas: Mapping[str, Rows] = {}  # of a workbook: what its tabs hold, formulas as such
    rooms: Mapping[str, int] = {}  # of a workbook: how many rows there are for each table


def season_of(path: Path) -> Season:
    """The season that a workbook of ours holds; an UnreadableError says why it cannot be read."""
    return held(path).season


def held(path: Path) -> Held:
    """All that a maker typed in a workbook of ours; an UnreadableError says why it cannot be read."""
    tables = (SETTINGS, WHAT_IF, *TABLES.values())
    book = opened(path, TABS)
    missing = [table.title for table in tables if not table.optional and table.title not in book.tabs]
    if missing:
        raise UnreadableError(f"{path}: no season workbook: it has no tab {', '.join(missing)}")
    return _Reader(path, book, origin_of(path, book)).held()


@dataclass
class _Reader:
    """One workbook being read: what is found is noted with where it stands, and what is not with its name."""

    path: Path
    book: Opened
    origin: Origin
    spots: Spots = field(default_factory=dict)
    absent: list[str] = field(default_factory=list)
    rooms: dict[str, int] = field(default_factory=dict)
    shown: Shown = str

    def held(self) -> Held:
        settings = self._settings()
        measures = Measures(*(str(settings[key]) for key in ("weight_unit", "temperature_unit", "length_unit")))
        self.shown = partial(measures.shown, currency=str(settings["currency"]))
        settings[costing.RISE.key] = self._rise()
        tables = {key: self._table(table) for key, table in tables_of(settings["records"] == "yes").items()}
        season, card, log = Season(settings, Tables(tables)), self._card(), self._log()
        return Held(season, card, log, self.origin, TODAYS | self.spots, self.absent, self.book.formulas, self.rooms)

    def _settings(self) -> dict[str, Value]:
        lines: dict[str, tuple[int, Value]] = {}
        for number, row in enumerate(self.book.tabs[SETTINGS.title][:MOST_LINES], start=1):
            label, value = (*row, None, None)[:2]
            if isinstance(label, str):
                lines.setdefault(plain_head(short(label)), (number, plain(value)))
        settings: dict[str, Value] = dict.fromkeys(SETTING_FIELDS)
        for each in (*SETTINGS.fields, *MADE_FOR.fields):
            labels = [plain_head(short(label)) for label in heads_of(each, str)]
            found = next((lines[label] for label in labels if label in lines), None)
            if found is None and not (each.required or each in SETTINGS.fields):
                continue  # workbooks of earlier versions are of one kind
            if found is None:
                self._misses(each, SETTINGS.title, f"line {short(each.head)}")
            else:
                settings[each.key] = _typed(each, found[1])
                self.spots[SETTINGS.title, each.key] = Spot("B", found[0])
        refuse_unmade(f"{self.path}, tab Settings", settings)
        return settings

    def _rise(self) -> Value:
        """The rise of materials: it stands over the column that reckons with it."""
        rows = self._rows(WHAT_IF)
        head = self.shown(costing.TAB.columns["risen"].head)
        heads = found_heads(rows, [self.shown(column.head) for column in costing.TAB.columns.values()])
        column = heads.column([head]) if heads else None
        if heads is None or column is None:
            if rows:
                self._misses(costing.RISE, WHAT_IF.title, f"column {head}")
            return None
        row = heads.row + costing.RISE_ROW - HEAD_ROW
        self.spots[WHAT_IF.title, costing.RISE.key] = Spot(get_column_letter(column), row)
        return plain(cell_at(rows, row, column))

    def _table(self, table: Table) -> list[Row]:
        rows = self._rows(table)
        self.rooms[table.key] = table.usual_rows
        heads = found_heads(rows, [head for each in table.fields for head in heads_of(each, self.shown)])
        if heads is None:
            if rows or not table.optional:
                raise UnreadableError(f"{self.path}: {table.title} has no column {self.shown(table.fields[0].head)}")
            return []
        columns = self._columns(table, heads)
        self.rooms[table.key] = self._room(table, heads)
        self.spots |= column_spots(table, heads.row + 1, {each.key: at for each, at in columns.items()})
        typed: list[Row] = []
        for row in range(heads.row + 1, len(rows) + 1):
            held = {each.key: _typed(each, plain(cell_at(rows, row, at))) for each, at in columns.items()}
            typed.append(dict.fromkeys(table.keys) | held)
        while typed and not any(value is not None for value in typed[-1].values()):
            typed.pop()
        return typed

    def _room(self, table: Table, heads: Heads) -> int:
        """How many rows a list was made with: each has its locked number, but in workbooks of earlier versions."""
        at = heads.column([TABLE_TABS[table.key].columns[OWN_ROW].head])
        held = self.book.formulas[table.title]
        numbered = [row for row in range(heads.row + 1, len(held) + 1) if at and cell_at(held, row, at) is not None]
        return numbered[-1] - heads.row if numbered else table.usual_rows

    def _columns(self, table: Table, heads: Heads) -> dict[Field, int]:
        """The numbers of a table's columns, of those that are there."""
        columns: dict[Field, int] = {}
        for each in table.fields:
            at = heads.column(heads_of(each, self.shown))
            if at is not None:
                columns[each] = at
                continue
            other, head = heads.in_another_unit(each, self.shown), self.shown(each.head)
            if other:
                raise UnreadableError(
                    f'{self.path}: {table.title} has "{other}" where Settings asks for "{head}": '
                    "put the unit on Settings back"
                )
            self._misses(each, table.title, f"column {head}")
        return columns

    def _misses(self, what: Field, title: str, words: str) -> None:
        """Note what is absent. Only a workbook of an earlier version may lack what is needed."""
        if what.required and not self.origin.older:
            raise UnreadableError(f"{self.path}: {title} has no {words}")
        self.absent.append(f"{title} has no {words}: it reads as blank")

    def _rows(self, table: Table) -> Rows:
        if table.title not in self.book.tabs:
            self.absent.append(f"there is no tab {table.title}: it reads as blank")
        return self.book.tabs.get(table.title, [])

    def _card(self) -> Row:
        """What is typed on Batch; its entries are found by the names that formulas use for them."""
        if batch.TAB.title not in self.book.tabs:
            return {}
        card: Row = {}
        for letter, each in batch.ENTRIES.items():
            title, _, named = self.book.names.get(f"batch_{each.key}", "").replace("$", "").rpartition("!")
            there = spot(named if title == batch.TAB.title and named else f"{letter}{batch.PICK}")
            self.spots[batch.TAB.title, each.key] = there
            rows = self.book.tabs[batch.TAB.title]
            card[each.key] = plain(cell_at(rows, there.row, column_index_from_string(there.letter)))
        return card

    def _log(self) -> list[Row]:
        rows = self.book.tabs.get(changes.TAB.title, [])
        heads = found_heads(rows, [each.head for each in changes.CHANGE_FIELDS])
        if heads is None:
            return []
        columns = {each.key: heads.column([each.head]) for each in changes.CHANGE_FIELDS}
        lines = [
            {key: plain(cell_at(rows, row, at)) if at else None for key, at in columns.items()}
            for row in range(heads.row + 1, len(rows) + 1)
        ]
        return [line for line in lines if any(value is not None for value in line.values())]


def _typed(field: Field, value: Value) -> Value:
    """What a cell holds; a number where any text will do is its text: a season tag 2027."""
    return f"{value:.15g}" if field.any_text and isinstance(value, float) else field.as_declared(value)
