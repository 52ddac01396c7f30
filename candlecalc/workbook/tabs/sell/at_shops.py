"""The At shops tab: of each shop that pays when it has sold, what is there of each product, since when, and what it owes.

A line for each shop and product that Sold has, the shops one after another.
"""

from collections.abc import Iterable

from candlecalc.season.tables.sell import PLACES
from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.checks import WorkbookCheck, sums_agree
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import OWN_ROW, Plan
from candlecalc.workbook.cells.references import (
    Above,
    Expression,
    Results,
    Whole,
    as_text,
    at,
    at_row,
    in_coins,
    sum_where,
    written,
)
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import Room, Shown, register
from candlecalc.workbook.tabs.working.recipe_lines import KEY_LINE

KEY = "at_shops"
HERE = ("number",)
NUMBERS = Whole("sold", "shop_key")
# The smallest number above that of the row before; an error in any is one here: it must not read as no line.
NEXT = written(
    'IF(({above}=0)*({row}>2)+(COUNTIF({numbers},">"&{above})=0)>0,IF({row}=2,REPT("",SUM({numbers})),""),'
    'SMALL({numbers},COUNTIF({numbers},"<="&{above})+1))',
    numbers=NUMBERS,
    above=Above("number"),
    row=OWN_ROW,
)


def _sum(key: str) -> Expression:
    return sum_where("sold", key, shop_key="number")


def _gone(sign: str) -> Expression:
    """How many went to the shop (>), or came away from it (<)."""
    return written(
        f'SUMIFS({{there}},{{keys}},{{number}},{{there}},"{sign}"&0)',
        there=Whole("sold", "there"),
        keys=NUMBERS,
        number="number",
    )


BACK = written("-{away}-{sold}", away=_gone("<"), sold="sold")
SINCE = at_row(
    "sold", "date", written("MATCH({number},{numbers},0)", number="number", numbers=Results("sold", "shop_key"))
)

TAB = lines_tab(
    "At shops",
    "output",
    "What is at each shop that pays when it has sold, since when, and what it still owes you.",
    KEY,
    RECIPES,
    {
        "place": look("Shop", as_text(at(PLACES.key, "place", "place_first")), needs=HERE, width=24),
        "product": look("Product", as_text(at(RECIPES.key, "product", "thing")), needs=HERE, width=30),
        "there": look("There now", _sum("there"), "pieces", needs=HERE),
        "since": look("First taken there", SINCE, "date", needs=HERE),
        "out": look("Taken there", _gone(">"), "pieces", needs=HERE),
        "sold": look("Sold there", _sum("away"), "pieces", needs=HERE),
        "back": look("Came back", BACK, "pieces", needs=HERE),
        "gross": look("Sold, with tax, {money}", in_coins(_sum("gross")), "money", needs=HERE),
        "fee": look("The shop's share, {money}", in_coins(_sum("fee")), "money", needs=HERE),
        "comes_in": look("Yours to have, {money}", in_coins(_sum("comes_in")), "money", needs=HERE),
        "owed": look("Still owed, {money}", in_coins(_sum("owed")), "money_strong", needs=HERE),
        "number": look("Shop and product", NEXT, "row", needs=(), width=8),
        "place_first": look("Place's first row", written("INT({number}/{key})", number="number", key=KEY_LINE), "row", needs=HERE, width=8),
        "thing": look("Product's first row", written("MOD({number},{key})", number="number", key=KEY_LINE), "row", needs=HERE, width=8),
    },
    paper_to="owed",
)  # fmt: skip

ROOM = Room("lines_at_shops", RECIPES.key)


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    there, sold = plan.layouts[KEY], plan.layouts["sold"]
    yield sums_agree("What is at shops is what was taken there", TAB.title, there.sum("there"), sold.sum("there"))
    name, mend = (
        "At shops: no more came away than was taken there",
        "see its lines on Sales: is what was taken there typed?",
    )
    yield WorkbookCheck(name, TAB.title, f'COUNTIF({there.results("there")},"<"&0)', mend)


SHOWN = ("place", "product", "there", "since", "out", "sold", "back", "gross", "fee", "comes_in", "owed")
register(TAB, __name__, 72, checks=checks, shown=Shown("consignment", SHOWN), room=ROOM, records=True)
