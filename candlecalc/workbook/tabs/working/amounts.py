"""The Amounts tab: how much of each part goes into one piece, waste and all."""

from collections.abc import Iterable

from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.checks import WorkbookCheck, sums_agree
from candlecalc.workbook.cells.columns import Column, look, result, total
from candlecalc.workbook.cells.layout import Plan
from candlecalc.workbook.cells.references import Carry, Given, Same, constant
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.made_of import HEADS, PARTS


def has(part: str) -> tuple[Given, ...]:
    """Blank unless the recipe has the part."""
    return ("ready", Same("workings", PARTS[part]))


def _oil(part: str) -> Column:
    oil, share = Same("workings", "oil"), Same("workings", part.replace("oil", "share"))
    return result(f"{HEADS[part]}, {{weight}}", "oil_part", oil=oil, share=share, needs=has(part))


TAB = result_tab(
    "Amounts",
    "working",
    "What goes into one piece: weights to weigh out, with what is lost in pots, and pieces.",
    "amounts",
    RECIPES,
    {
        "wax_first": result("Wax, {weight}", "first_wax", wax=Same("workings", "wax"), share=Same("workings", "share_wax"), needs=has("wax_first")),
        "wax_second": result("Second wax, {weight}", "second_wax", wax=Same("workings", "wax"), share=Same("workings", "share_wax"), needs=has("wax_second")),
        **{part: _oil(part) for part in ("oil_first", "oil_second", "oil_third")},
        "dye": result("Dye, {weight}", "dye_for_wax", wax=Same("workings", "wax"), share=Same("workings", "share_dye"), needs=has("dye"), format="fine_weight"),
        "vessel": look("Vessels, each", constant(1), "count", needs=has("vessel")),
        "lid": look("Lids, each", constant(1), "count", needs=has("lid")),
        "wick": look("Wicks, each", Carry("recipes", "wicks"), "count", needs=has("wick"), if_blank=(Carry("recipes", "wicks"), constant(1))),
        "label": look("Labels, each", constant(1), "count", needs=has("label")),
        "packing": look("Packing, each", constant(1), "count", needs=has("packing")),
        "melt": total("Wax and oil, {weight}", "wax_first", "wax_second", "oil_first", "oil_second", "oil_third", format="weight"),
    },
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    amounts, workings = plan.layouts["amounts"], plan.layouts["workings"]
    yield sums_agree(
        "Wax and oil in parts make up the fills", TAB.title, amounts.sum("melt"), workings.sum("weigh"), 0.001
    )


register(TAB, __name__, 20, checks=checks)
