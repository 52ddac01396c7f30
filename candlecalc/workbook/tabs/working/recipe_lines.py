"""The Recipe lines tab: what each recipe takes for one piece, a line for each part, numbered within the recipe.

Below them stand the lines of Extra parts, which go with all rows of a product: their recipe is the product's first row
and `OF_EXTRAS` more.
"""

from candlecalc.season.tables.set_up import EXTRAS, RECIPES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import Above, Block, Expression, Given, Named, Results, at, written
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.made_of import PARTS

KEY_LINE = Named("key_line")
OF_EXTRAS = 500
FIRST, LAST = list(PARTS)[0], list(PARTS)[-1]
COUNT = written(str(len(PARTS)))
# The head of a list is its row 1, and so is that of the recipes.
RECIPE = written("INT(({row}-2)/{count})+2", row=OWN_ROW, count=COUNT)
SLOT = written("MOD({row}-2,{count})+1", row=OWN_ROW, count=COUNT)
BEFORE = written("{count}*ROWS({recipes})", count=COUNT, recipes=Results("amounts", "ready"))
LINE = written("MAX(1,{row}-{before})", row=OWN_ROW, before=BEFORE)  # of Extra parts; its head above them
IS_EXTRA = written("{row}-2>={before}", row=OWN_ROW, before=BEFORE)


def _of_part(table: str, first: str, last: str, extra: str) -> Expression:
    of_recipe = written("INDEX({block},{recipe},{slot})", block=Block(table, first, last), recipe="recipe", slot=SLOT)
    return _either(at("extras", extra, LINE), of_recipe)


def _either(extra: Expression, of_recipe: Expression) -> Expression:
    return written("IF({is_extra},{extra},{of_recipe})", is_extra=IS_EXTRA, extra=extra, of_recipe=of_recipe)


# A line half typed is an error: it must not leave a batch too cheap.
EXTRA_OF = written(
    'IF({first}="","",IF(COUNT({material})=0,NA(),{first}+{more}))',
    first=at("extras", "first", LINE),
    material=at("extras", "material_row", LINE),
    more=written(str(OF_EXTRAS)),
)
RECIPE_OF = written('IF({ready}=1,{recipe},"")', ready=at("amounts", "ready", RECIPE), recipe=RECIPE)
# A part that is not there has the number of the one before it, which stands first.
NTH = written(
    "IF({recipe}={above},MOD({number},{key}),0)+(N({amount})>0)*1",
    recipe="recipe",
    above=Above("recipe"),
    number=Above("number"),
    key=KEY_LINE,
    amount="amount",
)


def _extras_of(product: Given) -> Expression:
    """What stands for a recipe in the lines that go with all rows of a product."""
    return written("({first}+{more})", first=product, more=written(str(OF_EXTRAS)))


def _lines(of: Given) -> Expression:
    recipes, amounts = (Results("lines", key) for key in ("recipe", "amount"))
    return written('COUNTIFS({recipes},{of},{amounts},">"&0)', recipes=recipes, of=of, amounts=amounts)


def named_parts(recipe: Given) -> Expression:
    """How many lines a recipe has here; an error while it is not ready."""
    return written("IF({ready}=1,{lines},NA())", ready=at("amounts", "ready", recipe), lines=_lines(recipe))


def extra_parts(product: Given) -> Expression:
    """How many lines go with a product besides."""
    return _lines(_extras_of(product))


def part_number(nth: Given, named: Given, recipe: Given, product: Given) -> Expression:
    """The number of a part: those that the recipe names come first, then what else goes with the product."""
    return written(
        "IF({nth}>{named},{extras}*{key}-{named},{recipe}*{key})+{nth}",
        nth=nth,
        named=named,
        extras=_extras_of(product),
        key=KEY_LINE,
        recipe=recipe,
    )


TAB = lines_tab(
    "Recipe lines",
    "working",
    "What each recipe takes for one piece: a line for each part, with what is lost in pots; then extra parts.",
    "lines",
    RECIPES,
    {
        "recipe": look("Recipe, row", _either(EXTRA_OF, RECIPE_OF), "row", needs=(), width=8),
        "material": look("Material, row", _of_part("workings", PARTS[FIRST], PARTS[LAST], "material_row"), "row", needs=("recipe",), width=8),
        "amount": look("For one piece, {weight} or each", _of_part("amounts", FIRST, LAST, "count"), "quantity", needs=("recipe", "material")),
        "number": look("Recipe and part, a number", written("{recipe}*{key}+{nth}", recipe="recipe", key=KEY_LINE, nth=_either(at("extras", "nth", LINE), NTH)), "row", needs=("recipe",), width=12),
    },
    lambda rows_of: rows_of[RECIPES.key] * len(PARTS) + rows_of[EXTRAS.key],
)  # fmt: skip

register(TAB, __name__, 25, records=True)
