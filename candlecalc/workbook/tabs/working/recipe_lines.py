"""The Recipe lines tab: what each recipe takes for one piece, a line for each part, numbered within the recipe."""

from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import Above, Block, Expression, Named, at, written
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.amounts import PARTS

KEY_LINE = Named("key_line")
FIRST, LAST = list(PARTS)[0], list(PARTS)[-1]
COUNT = written(str(len(PARTS)))
# The head of a list is its row 1, and so is that of the recipes.
RECIPE = written("INT(({row}-2)/{count})+2", row=OWN_ROW, count=COUNT)
SLOT = written("MOD({row}-2,{count})+1", row=OWN_ROW, count=COUNT)


def _of_part(table: str, first: str, last: str) -> Expression:
    return written("INDEX({block},{recipe},{slot})", block=Block(table, first, last), recipe="recipe", slot=SLOT)


TAB = lines_tab(
    "Recipe lines",
    "working",
    "What each recipe takes for one piece: a line for each part, with what is lost in pots.",
    "lines",
    RECIPES,
    {
        "recipe": look("Recipe, row", written('IF({ready}=1,{recipe},"")', ready=at("amounts", "ready", RECIPE), recipe=RECIPE), "row", needs=(), width=8),
        "material": look("Material, row", _of_part("workings", PARTS[FIRST], PARTS[LAST]), "row", needs=("recipe",), width=8),
        "amount": look("For one piece, {weight} or each", _of_part("amounts", FIRST, LAST), "quantity", needs=("recipe", "material")),
        # A part that is not there has the number of the one before it, which stands first.
        "number": look("Recipe and part, a number", written(
            "{recipe}*{key}+IF({recipe}={above},MOD({number},{key}),0)+(N({amount})>0)*1",
            recipe="recipe", key=KEY_LINE, above=Above("recipe"), number=Above("number"), amount="amount",
        ), "row", needs=("recipe",), width=12),
    },
    lambda rows_of: rows_of[RECIPES.key] * len(PARTS),
)  # fmt: skip

register(TAB, __name__, 25, records=True)
