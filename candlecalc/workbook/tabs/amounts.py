"""The Amounts tab: how much of each part goes into one piece, waste and all."""

from candlecalc.workbook.cells.columns import Column, When, look, result, total
from candlecalc.workbook.cells.references import blank, carry, constant, same
from candlecalc.workbook.cells.table_tab import TableTab, follows

# Part -> the Workings column that holds its place on Materials. Weights first, then pieces.
WEIGHED = {
    "wax_first": "wax_row",
    "wax_second": "wax_second_row",
    "oil_first": "oil_first_row",
    "oil_second": "oil_second_row",
    "oil_third": "oil_third_row",
    "dye": "dye_row",
}
COUNTED = {"vessel": "bought_row", "lid": "lid_row", "wick": "wick_row", "label": "label_row", "packing": "packing_row"}
PARTS = {**WEIGHED, **COUNTED}
HEADS = {
    "wax_first": "Wax", "wax_second": "Second wax", "oil_first": "Oil 1", "oil_second": "Oil 2", "oil_third": "Oil 3",
    "dye": "Dye", "vessel": "Vessel", "lid": "Lid", "wick": "Wick", "label": "Label", "packing": "Packing",
}  # fmt: skip


def has(part: str) -> When:
    """Blank unless the recipe has the part."""
    return ("ready", blank(same("workings", PARTS[part])))


def _oil(part: str) -> Column:
    oil, share = same("workings", "oil"), same("workings", part.replace("oil", "share"))
    return result(f"{HEADS[part]}, {{weight}}", "oil_part", oil=oil, share=share, when=has(part))


TAB = TableTab(
    "Amounts",
    "working",
    "What goes into one piece: weights to weigh out, with what is lost in pots, and pieces.",
    "amounts",
    {
        **follows("recipes", "product", "Product"),
        "wax_first": result("Wax, {weight}", "first_wax", wax=same("workings", "wax"), share=same("workings", "share_wax"), when=has("wax_first")),
        "wax_second": result("Second wax, {weight}", "second_wax", wax=same("workings", "wax"), share=same("workings", "share_wax"), when=has("wax_second")),
        **{part: _oil(part) for part in ("oil_first", "oil_second", "oil_third")},
        "dye": result("Dye, {weight}", "dye_for_wax", wax=same("workings", "wax"), share=same("workings", "share_dye"), when=has("dye"), format="fine_weight"),
        "vessel": look("Vessels, each", constant(1), "count", when=has("vessel")),
        "lid": look("Lids, each", constant(1), "count", when=has("lid")),
        "wick": look("Wicks, each", carry("recipes", "wicks"), "count", when=has("wick"), instead=(carry("recipes", "wicks"), constant(1))),
        "label": look("Labels, each", constant(1), "count", when=has("label")),
        "packing": look("Packing, each", constant(1), "count", when=has("packing")),
        "melt": total("Wax and oil, {weight}", "wax_first", "wax_second", "oil_first", "oil_second", "oil_third", format="weight"),
    },
)  # fmt: skip
