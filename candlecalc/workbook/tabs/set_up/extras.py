"""The Extra parts tab: what goes with a product besides what Recipes names, and what it brings into the cost."""

from candlecalc.season.tables.set_up import EXTRAS
from candlecalc.season.tables.taken import WEIGHED
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import look, result
from candlecalc.workbook.cells.references import Nth, at, row_in, running
from candlecalc.workbook.cells.table_tab import entry_tab, no_number
from candlecalc.workbook.tabs.registry import register

TAB = entry_tab(
    EXTRAS,
    {
        "material_row": look("Material, row", row_in("materials", "material"), "row", width=8),
        "unit_cost": look("Cost, {money} each", at("materials", "unit_cost", "material_row"), "unit_cost"),
        "cost": result("Cost, {money} a piece", "material_cost", amount="count", cost="unit_cost"),
        # By itself, ready or not: a line half typed must not leave its product too cheap.
        "row": look("Product, row", row_in("recipes", "product"), "row", needs=("product",), width=8),
        "first": look("Product's first row", row_in("recipes", "product", ready=False), "row", needs=("product",), width=8),
        "nth": look("Line of the product, a number", Nth("first"), "row", needs=("first",), width=9),
        "key": look("Line of the product", running("row"), width=9),
        "kind": look("Kind", at("materials", "kind", "material_row"), width=14),
    },
    waits={"material": no_number("cost")},
    checks=(
        Check("+".join(f'(kind="{kind}")' for kind in WEIGHED) + "=0", "wax, oil or dye as an extra part",
              "name it on Recipes: it is weighed into the melt", "material"),
    ),
    # With a product's name a line is begun, and an error until it is whole.
    required=("product",),
)  # fmt: skip
register(TAB, __name__, 50)
