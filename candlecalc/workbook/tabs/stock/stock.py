"""The Stock tab: of each material what was bought, used and is left, what that is worth, and what to order."""

from collections.abc import Iterable

from candlecalc.season.tables.set_up import MATERIALS
from candlecalc.workbook.cells.checks import Check, WorkbookCheck, sums_agree
from candlecalc.workbook.cells.columns import Column, look
from candlecalc.workbook.cells.layout import OWN_ROW, Plan
from candlecalc.workbook.cells.references import (
    KEY_THING,
    Expression,
    Given,
    Same,
    at,
    at_row,
    constant,
    in_coins,
    sum_over,
    sum_where,
    written,
)
from candlecalc.workbook.cells.stock_card import last_below, of_same_thing, stand_in_order
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import Shown, register
from candlecalc.workbook.tabs.stock.used import FROM_COUNTS

# Above the numbers of all lines of the row's thing, and below those of the next.
NUMBER = written("({thing}+1)*{key}", thing=OWN_ROW, key=KEY_THING)


def of_last(table: str, key: str, place: Given) -> Expression:
    """What the last line of this thing in a list in order holds; 0 where it has none."""
    return of_same_thing(table, place, key, OWN_ROW)


def last_count(number: Expression, thing: Given) -> dict[str, Column]:
    """When a thing was counted last, what was there, and what was missing or too many."""
    counted = ("ready", written('IF({count}=0,"",1)', count="count"))
    return {
        "counted_on": look("Counted on", at("counts", "date", "count"), "date", needs=counted),
        "counted": look("Counted, {weight} or each", at("counts", "counted", "count"), "quantity", needs=counted),
        "difference": look("Difference then", at("counts", "difference", "count"), "quantity", needs=counted),
        "count_line": look("Its last line on Counts in order", last_below("counts_by_day", number), "row", width=8),
        "count": look(
            "Last count, row on Counts", of_same_thing("counts_by_day", "count_line", "line", thing), "row", width=8
        ),
    }


# Of Used, whose lines are many, one sum is enough: all that no count says, less what was taken out.
NO_COUNT = sum_over(
    "used", "amount", [("thing", OWN_ROW), ("what", written('"<"&{counts}', counts=constant(FROM_COUNTS)))]
)
USED = written("ROUND({all}-{taken},9)", all=NO_COUNT, taken="taken")
TAKEN = sum_where("moves", "amount", material_row=OWN_ROW)
# The embedded engine's SUMIFS passes over errors: what is left is one where what is left of a lot is.
EXPIRING = written("{expiring}+0*{left}", expiring=sum_where("lots", "expiring", thing=OWN_ROW), left="left")
LAST_COST = at_row("lots", "unit", "last")
KNOWN = ("ready", written('IF({bought}=0,"",1)', bought="bought"))
REORDER = Same("materials", "reorder")

CHECKS = (
    Check("N(left)>=0", "use of more than was bought", "type the purchase that is missing, or count it", "material"),
    Check(
        "N(short)=0",
        "day on which more was used than had come by then",
        "see the days of its purchases, and Used",
        "material",
    ),
    Check(
        "(N(bought)=0)+(N(left)>=N(reorder))>0",
        "below the point where you order again",
        "it is on your list of what to buy",
        "material",
        unlikely=True,
    ),
    Check(
        "N(expiring)=0",
        "its use-by day is near or gone by",
        "use it first, or throw it away: Taken out",
        "material",
        unlikely=True,
    ),
)

TAB = result_tab(
    "Stock",
    "output",
    "What you bought and used of each material, what is left, what that is worth, and what you last paid.",
    "stock",
    MATERIALS,
    {
        "left": look("Left, {weight} or each", written("ROUND({came}-{gone},6)", came="bought", gone="gone"), "quantity"),
        "value": look("Value, {money}", in_coins(written("{paid}-{spent}", paid="paid", spent="spent")), "money_strong"),
        "bought": look("Bought, {weight} or each", of_last("lots", "came", "last"), "quantity"),
        "used": look("Used by batches and sets, {weight} or each", USED, "quantity"),
        "taken": look("Taken out, {weight} or each", TAKEN, "quantity"),
        "corrected": look("Taken out by counts", written("ROUND({gone}-{used}-{taken},6)", gone="gone", used="used", taken="taken"), "quantity"),
        "paid": look("Paid, {money}", of_last("lots", "worth", "last"), "money"),
        "date": look("Last bought on", at_row("lots", "date", "last"), "date", needs=KNOWN),
        "unit_cost": look("Last cost, {money} per {weight} or each", LAST_COST, "unit_cost", needs=KNOWN),
        "average": look("Average cost of what is left", written("IF({left}<=0,{last},{value}/{left})", left="left", last="unit_cost", value="value"), "unit_cost", needs=KNOWN),
        "reorder": look("Order again below", REORDER, "quantity"),
        "expiring": look("Use by within 60 days", EXPIRING, "quantity"),
        "gone": look("Gone, {weight} or each", of_last("card", "gone", "last_gone"), "quantity"),
        "spent": look("Cost of what went, {money}", of_last("card", "spent", "last_gone"), "money"),
        **last_count(NUMBER, OWN_ROW),
        "last": look("Last line of what came", last_below("lots", NUMBER), "row", width=8),
        "last_gone": look("Last line of what went", last_below("card", NUMBER), "row", width=8),
        "short": look("Lines that took more than there was", of_last("card", "short", "last_gone"), "row", width=8),
    },
    CHECKS,
    paper_to="expiring",
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    stock, purchases, card = (plan.layouts[key] for key in ("stock", "purchases", "card"))
    yield sums_agree(
        "What was paid for materials is what Purchases come to", TAB.title, stock.sum("paid"), purchases.sum("landed")
    )
    went = f"{card.sum('cost')}+{stock.sum('value')}"
    lots = plan.layouts["lots"]
    name = "What is left of lots is what is left of materials"
    positive = f'SUMIF({stock.results("left")},">"&0)'
    yield sums_agree(name, TAB.title, lots.sum("left"), positive, tolerance=0.001)
    yield from (stand_in_order(plan, key) for key in ("lots", "card", "made", "out_card"))
    yield sums_agree("What went and what is left come to what was bought", TAB.title, went, stock.sum("paid"))


SHOWN = (
    "material",
    "left",
    "value",
    "bought",
    "used",
    "taken",
    "corrected",
    "unit_cost",
    "average",
    "counted_on",
    "difference",
)
register(TAB, __name__, 20, checks=checks, shown=Shown("stock", SHOWN), records=True)
