"""The Burn targets tab: what a burn in each vessel is to come to."""

from candlecalc.season.tables.burning import TARGETS
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

TAB = entry_tab(
    TARGETS,
    checks=(
        Check("(rate_low=0)+(rate_high=0)+(rate_low<=rate_high)>0", "burn rate upside down", "the slowest stands left of the fastest", "rate_high"),
        Check("(flame_low=0)+(flame_high=0)+(flame_low<=flame_high)>0", "flame upside down", "the lowest stands left of the tallest", "flame_high"),
    ),
)  # fmt: skip
register(TAB, __name__, 20, records=True)
