"""The Packs before tab: the pack of each material as it stood when the workbook was made.

Purchases count in packs: a pack size that is typed over changes what was bought before.
"""

from candlecalc.season.season import Row, Season
from candlecalc.season.tables.set_up import MATERIALS
from candlecalc.workbook.cells.entries import entry_format
from candlecalc.workbook.cells.values_tab import value, values_tab
from candlecalc.workbook.tabs.registry import register

FIELDS = tuple(MATERIALS[key] for key in ("material", "pack_size", "pack_unit"))


def rows(season: Season) -> list[Row]:
    return [{each.key: row[each.key] for each in FIELDS} for _, row in season.rows(MATERIALS.key)]


TAB = values_tab(
    "Packs before",
    "The pack of each material as it stood when this workbook was made.",
    "packs_before",
    MATERIALS,
    {each.key: value(f"{each.head}, before", entry_format(each)) for each in FIELDS},
    rows,
)
register(TAB, __name__, 57, records=True)
