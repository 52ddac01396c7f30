"""The Recipes tab: what is sold and how it is made. Everything else follows from it."""

from candlecalc.season.tables import RECIPES
from candlecalc.workbook.columns import look
from candlecalc.workbook.references import running
from candlecalc.workbook.table_tab import entry_tab

TAB = entry_tab(
    RECIPES,
    {"of_kind": look("Kind, number", running("kind"), when=("product", "kind"), width=12)},
)
