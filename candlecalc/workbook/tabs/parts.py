"""The Part costs tab: what a unit of each part costs, and what one piece costs before any set is put together."""

from candlecalc.workbook.cells.columns import Column, look, result
from candlecalc.workbook.cells.references import at, carry, named, same, span
from candlecalc.workbook.cells.table_tab import TableTab, follows
from candlecalc.workbook.tabs.amounts import HEADS, PARTS, WEIGHED, has

# What a piece's money is made of. A set adds up what its candles bring of each.
PIECES = {
    "wax": "Wax",
    "oils": "Oils",
    "other": "Vessel and other parts",
    "paid": "Paid work",
    "overhead": "Production overhead",
    "own": "Own time",
    "running": "Running costs",
}


def piece(key: str) -> str:
    """The head of a piece's money, wherever it stands."""
    return f"{PIECES[key]}, {{money}}"


def _unit_cost(part: str) -> Column:
    each = "{weight}" if part in WEIGHED else "each"
    cost = at("materials", "unit_cost", same("workings", PARTS[part]))
    return look(f"{HEADS[part]}, {{money}} per {each}", cost, "unit_cost", when=has(part))


TAB = TableTab(
    "Part costs",
    "working",
    "What each part costs, and what one piece costs to make: for a set, its packing and its own work.",
    "parts",
    {
        **follows("recipes", "product", "Product"),
        **{part: _unit_cost(part) for part in PARTS},
        "wax": result(piece("wax"), "parts_cost", amounts=same("amounts", "wax_first", "wax_second"), costs=span("wax_first", "wax_second")),
        "oils": result(piece("oils"), "parts_cost", amounts=same("amounts", "oil_first", "oil_third"), costs=span("oil_first", "oil_third")),
        "other": result(piece("other"), "parts_cost", amounts=same("amounts", "dye", "packing"), costs=span("dye", "packing")),
        "minutes": result("Time, minutes", "minutes_each", each=carry("recipes", "minutes"), setup=carry("recipes", "setup"), batch=carry("recipes", "usual_batch")),
        "paid_minutes": result("Paid time, minutes", "paid_minutes", minutes="minutes", share=carry("recipes", "paid_share")),
        "own_minutes": result("Own time, minutes", "own_minutes", minutes="minutes", share=carry("recipes", "paid_share")),
        "paid": result(piece("paid"), "labour_cost", minutes="paid_minutes", rate=named("paid_rate")),
        "overhead": result(piece("overhead"), "overhead_cost", minutes="minutes", rate=named("overhead_an_hour")),
        "own": result(piece("own"), "labour_cost", minutes="own_minutes", rate=named("own_rate")),
        "running": result(piece("running"), "overhead_cost", minutes="minutes", rate=named("running_an_hour")),
        "setup_paid_minutes": result("Set-up paid, minutes", "paid_minutes", minutes=carry("recipes", "setup"), share=carry("recipes", "paid_share")),
        "setup_own_minutes": result("Set-up own, minutes", "own_minutes", minutes=carry("recipes", "setup"), share=carry("recipes", "paid_share")),
        "setup_paid": result("Set-up paid work, {money} a batch", "labour_cost", minutes="setup_paid_minutes", rate=named("paid_rate")),
        "setup_overhead": result("Set-up overhead, {money} a batch", "overhead_cost", minutes=carry("recipes", "setup"), rate=named("overhead_an_hour")),
        "setup_own": result("Set-up own time, {money} a batch", "labour_cost", minutes="setup_own_minutes", rate=named("own_rate")),
        "setup_running": result("Set-up running costs, {money} a batch", "overhead_cost", minutes=carry("recipes", "setup"), rate=named("running_an_hour")),
    },
)  # fmt: skip
