"""The Purchases in order tab: each material's purchases by date, with what was bought and paid up to each."""

from candlecalc.season.tables.stock import PURCHASES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import at, in_order, line_of, thing_of, to_date
from candlecalc.workbook.cells.table_tab import sorted_tab
from candlecalc.workbook.tabs.registry import register

TAB = sorted_tab(
    "Purchases in order",
    "Each material's purchases by date, with what was bought and paid up to each.",
    "lots",
    PURCHASES,
    {
        "number": look("Line's number", in_order("purchases", "number"), "row", needs=(), width=16),
        "line": look("Row on Purchases", line_of("number"), "row", needs=("number",), width=9),
        "material_row": look("Material, row", thing_of("number"), "row", needs=("number",), width=8),
        "date": look("Date", at("purchases", "date", "line"), "date", needs=("number",)),
        "amount": look("Bought, {weight} or each", at("purchases", "amount", "line"), "quantity", needs=("number",)),
        "landed": look("Cost landed, {money}", at("purchases", "landed", "line"), "money", needs=("number",)),
        "bought": look("Bought to date, {weight} or each", to_date("amount", "bought", "material_row"), "quantity", needs=("number",)),
        "paid": look("Paid to date, {money}", to_date("landed", "paid", "material_row"), "money", needs=("number",)),
        "unit_cost": look("Cost, {money} per {weight} or each", at("purchases", "unit_cost", "line"), "unit_cost", needs=("number",)),
    },
)  # fmt: skip

register(TAB, __name__, 45, records=True)
