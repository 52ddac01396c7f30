"""The Recipes before tab: each row of Recipes as it stood when the workbook was made.

A recipe that is typed over changes what earlier batches took: cells remember nothing, so this tab does.
"""

import datetime

from candlecalc.quantities.days import serial
from candlecalc.season.season import Row, Season
from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.entries import entry_format
from candlecalc.workbook.cells.values_tab import value, values_tab
from candlecalc.workbook.tabs.registry import register

# What a batch takes rests on these, side by side on Recipes too.
FIRST, LAST = "kind", "setup"
FIELDS = RECIPES.fields[RECIPES.keys.index(FIRST) : RECIPES.keys.index(LAST) + 1]


def rows(season: Season) -> list[Row]:
    """The rows of Recipes, each with what it goes by: its product and the day from which it holds."""
    found: list[Row] = []
    for _, row in season.rows(RECIPES.key):
        found.append({"name": _name(row), **{each.key: row[each.key] for each in FIELDS}})
    return found


def _name(row: Row) -> str:
    since = row["holds_from"]
    return f"{row['product']}|{serial(since) if isinstance(since, datetime.date) else 0:.0f}"


TAB = values_tab(
    "Recipes before",
    "Each row of Recipes as it stood when this workbook was made.",
    "recipes_before",
    RECIPES,
    {
        "name": value("Product and its first day", width=40),
        **{each.key: value(f"{each.head}, before", entry_format(each)) for each in FIELDS},
    },
    rows,
)
register(TAB, __name__, 56, records=True)
