"""The Batch log tab: what was made, and for each batch what it took, what it cost and when it is ready."""

from candlecalc.season.tables.stock import POURS
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import calculated, look, result
from candlecalc.workbook.cells.references import (
    Expression,
    Given,
    at,
    before_row,
    in_coins,
    in_force,
    line_key,
    lines_of,
    row_in,
    worked_out_coins,
    written,
)
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there
from candlecalc.workbook.tabs.make.rates import rate, rates_of
from candlecalc.workbook.tabs.registry import Shown, register
from candlecalc.workbook.tabs.working.recipe_lines import extra_parts, named_parts

RECIPE = "recipe"


def _if_made(value: str, **inside: Given) -> Expression:
    """Nothing for what was there when the records began."""
    return written(f'IF({{kind}}<>"",0,{value})', kind="kind", **inside)


def _of_lines(key: str) -> Expression:
    """What the lines on Used that a batch takes come to: they stand together."""
    return written("IF({parts}=0,0,{lines})", parts="parts", lines=lines_of("used", key, "start", "parts"))


PIECES = _if_made('IF({planned}<>"",{planned},SUM({good},{seconds},{scrapped},{tests}))', **{key: key for key in ("planned", "good", "seconds", "scrapped", "tests")})  # fmt: skip
NAMED_PARTS = _if_made("{named}", named=named_parts(RECIPE))
PARTS = _if_made("{named}+{extra}", named="named_parts", extra=extra_parts("product_row"))
MINUTES = _if_made(
    'IF({hours}<>"",{hours}*60,{pieces}*{each}+{setup})',
    hours="hours",
    pieces="pieces",
    each=at("recipes", "minutes", RECIPE),
    setup=at("recipes", "setup", RECIPE),
)
PAID = calculated(
    "labour_cost",
    minutes=calculated("paid_minutes", minutes="work", share=at("recipes", "paid_share", RECIPE)),
    rate=rate("paid_rate", "paid_at_first", "rate_row"),
)
OVERHEAD = calculated("overhead_cost", minutes="work", rate=rate("overhead", "overhead_at_first", "rate_row"))
# What was kept to burn, of all that was poured; and the good ones that can bear it: those with a wick.
TESTS = _if_made(
    "IF(SUM({tests})*{pieces}=0,0,{making}*{tests}/{pieces})", tests="tests", pieces="pieces", making="making"
)
BEARERS = _if_made("IF(SUM({wicks})>0,{good},0)", wicks=at("amounts", "wick", RECIPE), good="good")
LOST = written('IF({weighed}="","",{weighed}-{left}-{fill}*{pieces})', weighed="weighed_in", left="left_over", fill=at("workings", "fill", RECIPE), pieces="pieces")  # fmt: skip

CHECKS = (
    Check('(planned="")+(N(good)+N(seconds)+N(scrapped)+N(tests)<=N(planned))>0', "more came out than was planned", "type how many you weighed out for, or leave it out", "planned"),
    Check('(kind="")+(N(good)>0)>0', "opening stock of no candles", "type how many there were, or clear the row", "good"),
    Check('(lost="")+(N(lost)>=0-0.01*N(weighed_in))>0', "more came out than was weighed in", "see Weighed in and Left over: both are wax and oil together", "weighed_in", unlikely=True),
    Check('(lost="")+(N(lost)<=0.1*N(weighed_in))>0', "a tenth of what was weighed in is not accounted for", "see Weighed in, Left over and how many came out", "weighed_in", unlikely=True),
    Check('(yield="")+(N(yield)>=0.8)>0', "fewer than four in five are good", "a batch gone wrong? Notes are for why", "good", unlikely=True),
)  # fmt: skip

TAB = entry_tab(
    POURS,
    {
        "making": look("Making cost, {money}", written('IF({kind}<>"",{cost},SUM({materials},{paid},{overhead}))', **{key: key for key in ("kind", "cost", "materials", "paid", "overhead")}), "money_strong"),
        "each": result("Cost each, {money}", "cost_each", cost="making", batch="good", blank_if=(written("{good}=0", good="good"),)),
        "ready_on": result("Ready on", "ready_on", poured="date", cure=written("SUM({cure})", cure=at("workings", "cure", RECIPE)), format="date"),
        "yield": result("Good, of all", "yield_of", good="good", made="pieces", blank_if=(written("{pieces}<MAX({good},1)", pieces="pieces", good="good"),)),
        "materials": look("Materials, {money}", in_coins(_of_lines("cost")), "money"),
        "paid": look("Paid work, {money}", worked_out_coins(PAID), "money"),
        "overhead": look("Production overhead, {money}", worked_out_coins(OVERHEAD), "money"),
        "lost": look("Not accounted for, {weight}", LOST, "weight"),
        "pieces": look("Poured", PIECES, "pieces"),
        "work": look("Work, minutes", MINUTES, "minutes"),
        "product_row": look("Product's first row", row_in("recipes", "product", ready=False), "row", width=8),
        "recipe": look("Recipe that held, row", in_force("recipes_by_day", "product_row", "date"), "row", width=8),
        "rate_row": look("Rates that held, row", rates_of("date"), "row", width=8),
        "named_parts": look("Parts that Recipes names", NAMED_PARTS, "row", width=8),
        "parts": look("Lines on Used", PARTS, "row", width=8),
        "start": look("Lines on Used before", before_row("start", "parts"), "row", needs=(), width=8),
        "value": look("Value of the good ones, {money}", written("IF({good}=0,0,{making})", good="good", making="making"), "money"),
        "tests_cost": look("Test pieces, {money}", TESTS, "money"),
        "bearers": look("Good ones with a wick", BEARERS, "pieces"),
        # A batch of which none is good leaves nothing in stock.
        "number": look("Line's number", line_key("product_row", "date"), "row", blank_if=(written("{good}=0", good="good"),), width=16),
    },
    checks=CHECKS,
    waits={"product": not_ready_there("recipes", "product")},
)  # fmt: skip

SHOWN = (
    "date",
    "batch",
    "product",
    "good",
    "pieces",
    "yield",
    "ready_on",
    "materials",
    "paid",
    "overhead",
    "making",
    "each",
)
register(TAB, __name__, 30, shown=Shown("pours", SHOWN), records=True)
