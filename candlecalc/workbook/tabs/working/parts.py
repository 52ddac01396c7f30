"""The Part costs tab: what a unit of each part costs, and what one piece costs before any set is put together."""

from candlecalc.season.tables.set_up import EXTRAS, RECIPES
from candlecalc.workbook.cells.columns import Column, look, result, total
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import (
    Carry,
    Named,
    Own,
    Same,
    Whole,
    at,
    constant,
    if_records,
    sum_where,
    written,
)
from candlecalc.workbook.cells.table_tab import fault_of, result_tab
from candlecalc.workbook.cells.words import WithCode
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.amounts import has
from candlecalc.workbook.tabs.working.made_of import HEADS, PARTS, WEIGHED

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
    cost = at("materials", "unit_cost", Same("workings", PARTS[part]))
    return look(f"{HEADS[part]}, {{money}} per {each}", cost, "unit_cost", needs=has(part))


# Lines of the product without a cost, and lines that name no product: each may be this one's.
OPEN_LINES = written(
    'COUNTIFS({rows},{row})-COUNTIFS({rows},{row},{costs},">="&0)+COUNTIFS({wrong},{strays},{products},"<>")',
    rows=Whole("extras", "row"),
    row=OWN_ROW,
    costs=Whole("extras", "cost"),
    wrong=Whole("extras", fault_of(EXTRAS, "product")),
    strays=WithCode("extras", "product"),
    products=Whole("extras", "product"),
)
# Sums over other tabs are not stopped by an error everywhere.
EXTRA = written("CHOOSE(1+({open}>0),{sum},NA())", open="open", sum=sum_where("extras", "cost", row=OWN_ROW))

# Where Settings say so each candle that has a wick bears its part of the season's tests: in full cost, never in stock.
TESTS = if_records(
    written("IF(N({wicks})>0,{each},0)", wicks=Same("amounts", "wick"), each=Named("tests_each")), constant(0)
)

TAB = result_tab(
    "Part costs",
    "working",
    "What each part costs, and what one piece costs to make: for a set, its packing and its own work.",
    "parts",
    RECIPES,
    {
        **{part: _unit_cost(part) for part in PARTS},
        "wax": result(piece("wax"), "parts_cost", amounts=Same("amounts", "wax_first", "wax_second"), costs=Own("wax_first", "wax_second")),
        "oils": result(piece("oils"), "parts_cost", amounts=Same("amounts", "oil_first", "oil_third"), costs=Own("oil_first", "oil_third")),
        "named": result("Parts that Recipes names, {money}", "parts_cost", amounts=Same("amounts", "dye", "packing"), costs=Own("dye", "packing")),
        "open": look("Extra parts without a cost, lines", OPEN_LINES, "row"),
        "extra": look("Extra parts, {money}", EXTRA, "money"),
        "other": total(piece("other"), "named", "extra"),
        "minutes": result("Time, minutes", "minutes_each", each=Carry("recipes", "minutes"), setup=Carry("recipes", "setup"), batch=Carry("recipes", "usual_batch")),
        "paid_minutes": result("Paid time, minutes", "paid_minutes", minutes="minutes", share=Carry("recipes", "paid_share")),
        "own_minutes": result("Own time, minutes", "own_minutes", minutes="minutes", share=Carry("recipes", "paid_share")),
        "paid": result(piece("paid"), "labour_cost", minutes="paid_minutes", rate=Named("paid_rate")),
        "overhead": result(piece("overhead"), "overhead_cost", minutes="minutes", rate=Named("overhead_an_hour")),
        "own": result(piece("own"), "labour_cost", minutes="own_minutes", rate=Named("own_rate")),
        "by_hours": result("Running costs by the hour, {money}", "overhead_cost", minutes="minutes", rate=Named("running_an_hour")),
        "tests": look("Tests, {money}", TESTS, "money"),
        "running": total(piece("running"), "by_hours", "tests"),
        "setup_paid_minutes": result("Set-up paid, minutes", "paid_minutes", minutes=Carry("recipes", "setup"), share=Carry("recipes", "paid_share")),
        "setup_own_minutes": result("Set-up own, minutes", "own_minutes", minutes=Carry("recipes", "setup"), share=Carry("recipes", "paid_share")),
        "setup_paid": result("Set-up paid work, {money} a batch", "labour_cost", minutes="setup_paid_minutes", rate=Named("paid_rate")),
        "setup_overhead": result("Set-up overhead, {money} a batch", "overhead_cost", minutes=Carry("recipes", "setup"), rate=Named("overhead_an_hour")),
        "setup_own": result("Set-up own time, {money} a batch", "labour_cost", minutes="setup_own_minutes", rate=Named("own_rate")),
        "setup_running": result("Set-up running costs, {money} a batch", "overhead_cost", minutes=Carry("recipes", "setup"), rate=Named("running_an_hour")),
    },
)  # fmt: skip
register(TAB, __name__, 30)
