"""Seasons with entries typed wrong, and what each engine makes of their workbooks.

differing(with_slips(season, seed), folder, office)     {"Gnumeric": {cell: (in memory, there)}, ...}
"""

import random

import books
import engine
import formualizer
from libreoffice import Error, stored
from test_engines import by_gnumeric, differences, spoilt

from candlecalc.season.season import Season, Tables

# A TRUE is typed in test_typing.py: of a file LibreOffice takes it for the 1 that it is to it, where numbers stand.
SLIPS = [None, "", "wax", 0.0, -1.0, 8.0, 46054.0, "a*b"]


def with_slips(season, seed, slips=12):
    """A season with some of its entries typed wrong."""
    given = random.Random(seed)  # noqa: S311
    tables = {key: [row for _, row in season.rows(key)] for key in season.tables}
    for _ in range(slips):
        rows = tables[given.choice([key for key, rows in tables.items() if rows])]
        row = given.choice(rows)
        row[given.choice(list(row))] = given.choice(SLIPS)
    return Season(season.settings, Tables(tables))


def differing(made: books.Book, folder, office):
    """The cells of a workbook, whose values were calculated in memory, that another way makes something else of."""
    other = spoilt(made.path, folder / "spoilt.xlsx")
    through = folder / "through.xlsx"
    through.write_bytes(formualizer.recalculate_xlsx_bytes(engine.readable(made.made(stored=False)))["bytes"])
    found = {
        "through a file": stored(through),
        "LibreOffice": office.recalculated(other),
        "Gnumeric": by_gnumeric(other),
    }
    return {
        name: {cell: pair for cell, pair in differences(made, values).items() if not _both_errors(*pair)}
        for name, values in found.items()
    }


def _both_errors(*pair):
    """Whether two values are errors. Asked by an error, Gnumeric's CHOOSE gives a #VALUE! whatever it was."""
    return all(isinstance(value, Error) for value in pair)
