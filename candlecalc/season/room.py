"""How many rows a list has in a fresh workbook, and when it is time for more."""

import re
from collections.abc import Iterable, Mapping

from candlecalc.season.fields import Table
from candlecalc.season.season import Season
from candlecalc.season.tables import TABLES

CROWDED = 0.8  # of a list's rows filled: time for more
NONE_ASKED: Mapping[str, int] = {}
ROWS_OF = re.compile(r"(?P<name>[^=]*)=\s*(?P<rows>[1-9][0-9]{0,5})\s*")
KEYS = {name.casefold(): table.key for table in TABLES.values() for name in (table.key, table.title)}


def fresh(season: Season, usual: Mapping[str, int], asked: Mapping[str, int] = NONE_ASKED) -> dict[str, int]:
    """The rows of each list: as many as are asked for, else the usual number at least, and spare ones where it grows.

    A ValueError says where too few are asked for.
    """
    for key, rows in asked.items():
        _refuse_too_few(season, TABLES[key], rows)
    return {key: asked.get(key) or _enough(TABLES[key], season.tables.room(key), usual[key]) for key in season.tables}


def _refuse_too_few(season: Season, table: Table, rows: int) -> None:
    if table.key not in season.tables:
        raise ValueError(f"{table.title} is a tab of the year's records: add --records")
    filled = season.tables.room(table.key)
    if rows < filled:
        raise ValueError(f"{table.title} cannot have {rows} rows: {filled} are filled")


def _enough(table: Table, filled: int, usual: int) -> int:
    # A log grows all year; what is set up once is seldom more than it was, and costs more cells a row.
    grows = table.records or filled >= CROWDED * table.usual_rows
    # As many spare as filled, to the usual number: with twice as many each time, a third year would not fit.
    return max(usual, filled + min(filled, usual) if grows else filled)


def asked_for(words: Iterable[str]) -> dict[str, int]:
    """Rows by table, from words such as "purchases=800" or "Batch log=400,counts=50"."""
    found: dict[str, int] = {}
    for word in (part.strip() for each in words for part in each.split(",")):
        read = ROWS_OF.fullmatch(word)
        if not read:
            raise ValueError(f'"{word}" is no tab with its number of rows; write it as purchases=800')
        name = read["name"].strip()
        key = KEYS.get(name.casefold())
        if not key:
            known = ", ".join(table.title for table in TABLES.values())
            raise ValueError(f"there is no tab {name} that you type a list in; there are {known}")
        if key in found:
            raise ValueError(f"{TABLES[key].title} is there twice")
        found[key] = int(read["rows"])
    return found
