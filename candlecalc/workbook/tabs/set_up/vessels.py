"""The Vessels tab: what each vessel holds, by water or by size."""

from candlecalc.season.tables.set_up import VESSELS
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import names_when_ready, result, total
from candlecalc.workbook.cells.references import differs
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there
from candlecalc.workbook.tabs.registry import register

TAB = entry_tab(
    VESSELS,
    {
        "by_water": result("By water, ml", "volume_from_water", water="water", temperature="water_temperature", blank_if=(differs("measured", "water"),)),
        "by_round": result("Round, ml", "tapered_volume", top="top", bottom="bottom", height="height", base="base", blank_if=(differs("measured", "round"),)),
        "by_box": result("Box, ml", "box_volume", length="top", width="bottom", height="height", base="base", blank_if=(differs("measured", "box"),)),
        "volume": total("To the brim, ml", "by_water", "by_round", "by_box", format="volume"),
        **names_when_ready("vessel"),
    },
    waits={"bought_as": not_ready_there("materials", "bought_as")},
    checks=(
        Check('(measured="water")+(base<height)>0', "floor above the brim", "the floor cannot be pushed up as high as the vessel", "base"),
    ),
)  # fmt: skip
register(TAB, __name__, 30)
