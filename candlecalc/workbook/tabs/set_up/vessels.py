"""The Vessels tab: what each vessel takes, by a fill that was weighed, by water or by size."""

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
    waits={key: not_ready_there("materials", key) for key in ("bought_as", "fill_wax")},
    checks=(
        Check('(measured="water")+(measured="fill")+(N(diameter)<=MAX(top,bottom))>0', "melt pool wider than the vessel",
              "it cannot reach further than the inside of the vessel", "diameter"),
        Check('(measured="water")+(measured="fill")+(N(panel_height)<=height)*(N(panel_width)<=4*MAX(top,bottom))>0', "label panel larger than the vessel",
              "see its unit: it is higher than the vessel is deep, or wider than once around it", "panel_height", unlikely=True),
        Check('(measured="fill")+(N(fill)=0)>0', "weighed fill that is not used", "it is the best measure: choose fill under Measured by", "fill", unlikely=True),
        Check('(measured="water")+(measured="fill")+(base<height)>0', "floor above the brim", "the floor cannot be pushed up as high as the vessel", "base"),
    ),
)  # fmt: skip
register(TAB, __name__, 30)
