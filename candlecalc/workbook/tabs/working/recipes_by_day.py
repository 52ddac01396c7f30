"""The Recipes by day tab: the rows of each product by the day from which they hold."""

from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import Carry, in_order, line_key, row_in, written
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import register

PRODUCT, FROM = (Carry("recipes", key) for key in ("product", "holds_from"))

TAB = result_tab(
    "Recipes by day",
    "working",
    "The rows of each product on Recipes, by the day from which each holds.",
    "recipes_by_day",
    RECIPES,
    {
        # All rows of a product go by its first, whether or not it can be used: so records find them all.
        "first": look("Product's first row", row_in("recipes", PRODUCT, ready=False), "row", needs=(PRODUCT,), width=8),
        "day_number": look("Row's number", line_key("first", written("SUM({day})", day=FROM)), "row", needs=("first",), width=16),
        "number": look("The numbers in order", in_order("recipes_by_day", "day_number"), "row", needs=(), width=16),
    },
)  # fmt: skip

register(TAB, __name__, 5, records=True)
