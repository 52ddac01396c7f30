"""Where each entry stands in a workbook, so that a problem is named with its cell: today's places, or a maker's."""

from typing import NamedTuple

from openpyxl.utils import get_column_letter
from openpyxl.utils.cell import coordinate_from_string

from candlecalc.season.fields import Table
from candlecalc.season.tables import TABLES
from candlecalc.season.tables.once import MADE_FOR, SETTINGS, WHAT_IF
from candlecalc.workbook import book
from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.tabs.make import batch, costing
from candlecalc.workbook.tabs.set_up import settings


class Spot(NamedTuple):
    """The cell of an entry; of a column, its first cell."""

    letter: str
    row: int


# By the title of a tab, and the key of a field on it.
Spots = dict[tuple[str, str], Spot]


def column_spots(table: Table, first_row: int, numbers: dict[str, int]) -> Spots:
    """Where a table's columns stand; what has no column is named by its row, in the row's first."""
    first = min(numbers.values())
    return {(table.title, key): Spot(get_column_letter(numbers.get(key, first)), first_row) for key in table.keys}


def _todays() -> Spots:
    found: Spots = {(WHAT_IF.title, costing.RISE.key): spot(costing.RISE_LINE.entry)}
    found |= {(SETTINGS.title, key): Spot("B", settings.line_of(key)) for key in (*SETTINGS.keys, *MADE_FOR.keys)}
    found |= {(batch.TAB.title, field.key): Spot(letter, batch.PICK) for letter, field in batch.ENTRIES.items()}
    for table in TABLES.values():
        columns = list(book.TABLE_TABS[table.key].columns)
        found |= column_spots(table, FIRST_ROW, {key: columns.index(key) + 1 for key in table.keys})
    return found


def spot(cell: str) -> Spot:
    """A cell such as B4."""
    return Spot(*coordinate_from_string(cell))


TODAYS = _todays()
