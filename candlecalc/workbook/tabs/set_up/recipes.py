"""The Recipes tab: what is sold and how it is made. Everything else follows from it."""

from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import Running, Same, written
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there, words_column
from candlecalc.workbook.tabs.registry import register

EXTRAS_SAY = written('IFERROR(REPT("Extra parts: see its lines there",N({open})>0),"")', open=Same("parts", "open"))

TAB = entry_tab(
    RECIPES,
    {"of_kind": look("Kind, number", Running("kind"), needs=("product", "kind"), width=12)},
    waits={field.key: not_ready_there(field.names_from, field.key) for field in RECIPES.fields if field.names_from},
    # Where it is mended, and not where it was found.
    also={
        "extras": words_column("Waits for, from Extra parts", EXTRAS_SAY),
        "checked": words_column("Look at, from Workings", Same("workings", "warnings")),
        "asked": words_column("Is it meant, from Workings", Same("workings", "doubts")),
    },
)
register(TAB, __name__, 40)
