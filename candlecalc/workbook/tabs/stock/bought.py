"""The Bought tab: for each material what was bought, what it cost last, and on average."""

from collections.abc import Iterable

from candlecalc.season.tables.set_up import MATERIALS
from candlecalc.workbook.cells.checks import WorkbookCheck, sums_agree
from candlecalc.workbook.cells.columns import look, result
from candlecalc.workbook.cells.layout import OWN_ROW, Plan
from candlecalc.workbook.cells.references import KEY_THING, Results, at_row, last_line, written
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import Shown, register

# An error among the numbers is one here too: it must not read as never bought.
LAST = written(
    'IF(SUM({numbers})*0+COUNTIF({numbers},"<"&({row}+1)*{key})=0,"",IF({thing}={row},{last},""))',
    numbers=Results("lots", "number"),
    row=OWN_ROW,
    key=KEY_THING,
    thing=at_row("lots", "material_row", last_line("lots", "number", OWN_ROW)),
    last=last_line("lots", "number", OWN_ROW),
)
KNOWN = ("ready", "last")


TAB = result_tab(
    "Bought",
    "output",
    "What you bought of each material, what it cost last, and on average.",
    "bought",
    MATERIALS,
    {
        "last": look("Its last line on Purchases in order", LAST, "row", width=9),
        "amount": look("Bought, {weight} or each", at_row("lots", "bought", "last"), "quantity", needs=KNOWN),
        "paid": look("Paid, {money}", at_row("lots", "paid", "last"), "money", needs=KNOWN),
        "date": look("Last bought on", at_row("lots", "date", "last"), "date", needs=KNOWN),
        "unit_cost": look("Last cost, {money} per {weight} or each", at_row("lots", "unit_cost", "last"), "unit_cost", needs=KNOWN),
        "average": result("Average cost, {money} per {weight} or each", "unit_cost", price="paid", size="amount", needs=KNOWN),
    },
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    bought, purchases = plan.layouts["bought"], plan.layouts["purchases"]
    name = "What was paid for each material is what Purchases come to"
    yield sums_agree(name, TAB.title, bought.sum("paid"), purchases.sum("landed"))


SHOWN = ("material", "amount", "paid", "date", "unit_cost", "average")
register(TAB, __name__, 20, checks=checks, shown=Shown("bought", SHOWN), records=True)
