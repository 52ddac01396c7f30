"""The Pour day needs tab: what the whole evening takes of each material, and what is short."""

from candlecalc.season.tables.set_up import MATERIALS
from candlecalc.workbook.cells.columns import look, result
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import Above, Block, Same, written
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.made_of import PARTS
from candlecalc.workbook.tabs.working.pour_day_steps import KEY as STEPS

FIRST, *_, LAST = PARTS
NEEDED = written(
    "SUMIFS({amounts},{rows},{row})",
    amounts=Block(STEPS, FIRST, LAST),
    rows=Block(STEPS, f"{FIRST}_at", f"{LAST}_at"),
    row=OWN_ROW,
)

TAB = result_tab(
    "Pour day needs",
    "working",
    "What the evening takes of each material, and what is short.",
    "pour_needs",
    MATERIALS,
    {
        "needed": look("Needed, {weight} or each", NEEDED, "quantity"),
        "short": result("Short by, {weight} or each", "short_by", needed="needed", on_hand=Same("materials", "stock"), format="quantity"),
        "nth": look("Short so far", written("{above}+(N({short})>0)", above=Above("nth"), short="short"), "row", needs=()),
    },
)  # fmt: skip

register(TAB, __name__, 51, records=True)
