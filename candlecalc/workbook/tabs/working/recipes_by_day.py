"""The Recipes by day tab: the rows of each product by the day from which they hold."""

from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.references import Carry
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.by_day import by_first_row

TAB = result_tab(
    "Recipes by day",
    "working",
    "The rows of each product on Recipes, by the day from which each holds.",
    "recipes_by_day",
    RECIPES,
    by_first_row("recipes_by_day", RECIPES, Carry(RECIPES.key, "product"), "Product's first row"),
)

register(TAB, __name__, 5, records=True)
