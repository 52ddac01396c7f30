"""The Recipes tab: what is sold and how it is made. Everything else follows from it."""

from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.columns import look, names_when_ready
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import (
    Block,
    Same,
    Whole,
    another_holds,
    as_text,
    at,
    if_records,
    running,
    text,
    written,
)
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there, words_column
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.recipes_before import FIRST, LAST

EXTRAS_SAY = written('IFERROR(REPT("Extra parts: see its lines there",N({open})>0),"")', open=Same("parts", "open"))

BEFORE = written(
    'MATCH({product}&"|"&SUM({day}),{names},0)',
    product="product",
    day="holds_from",
    names=Whole("recipes_before", "name"),
)
FIRST_BATCH = written("MATCH({row},{recipes},0)", row=OWN_ROW, recipes=Whole("pours", "recipe"))
# Batches go by it, and it is not what it was when the workbook was made.
CHANGED = written(
    'IFERROR(REPT("Changed since batch "&{batch}&": bring back what it was, and type the change in a row of its own with '
    'its day under From",SUMPRODUCT(({now}<>{then})*1)>0),"")',
    batch=at("pours", "batch", FIRST_BATCH),
    now=written("INDEX({block},{row},0)", block=Block("recipes", FIRST, LAST), row=OWN_ROW),
    then=written("INDEX({block},{row},0)", block=Block("recipes_before", FIRST, LAST), row=BEFORE),
)
NOTHING = text("")

ANOTHER_HOLDS = written("{other}>0", other=another_holds("recipes", "product"))
NOT_NOW = written('{now}=""', now="now")

TAB = entry_tab(
    RECIPES,
    {
        "of_kind": look("Kind, number", running("kind"), needs=("product", "kind"), width=12),
        # The bench card finds it by this, to say what its row waits for.
        "now": look(
            "Name, while its row holds", as_text("product"), needs=("product",), width=35, blank_if=(ANOTHER_HOLDS,)
        ),
        **names_when_ready("product", NOT_NOW),
    },
    waits={field.key: not_ready_there(field.names_from, field.key) for field in RECIPES.fields if field.names_from},
    # Where it is mended, and not where it was found.
    also={
        "extras": words_column("Waits for, from Extra parts", EXTRAS_SAY),
        "changed": words_column("Typed over", if_records(CHANGED, NOTHING)),
        "checked": words_column("Look at, from Workings", Same("workings", "warnings")),
        "asked": words_column("Is it meant, from Workings", Same("workings", "doubts")),
    },
)
register(TAB, __name__, 40)
