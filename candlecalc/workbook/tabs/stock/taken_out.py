"""The Taken out tab: what left stock without a sale."""

from candlecalc.season.tables.stock import MOVES
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import Column, look
from candlecalc.workbook.cells.references import (
    Above,
    Expression,
    Named,
    Whole,
    at_row,
    before_row,
    lines_of,
    row_in,
    written,
)
from candlecalc.workbook.cells.table_tab import ONE, entry_tab, not_ready_there
from candlecalc.workbook.tabs.registry import register

ONE_OF_TWO = Check(
    '(material<>"")+(product<>"")=1',
    "line of neither material nor product, or of both",
    "name one of the two",
    "material",
)


def _running(key: str, head: str, counts: Expression) -> Column:
    """A line's number among those of the log that name a material, or a product, and count."""
    one = written('{ready}*({name}<>"")*({counts})', ready="ready", name=key, counts=counts)
    so_far = written('{above}+IF({ready}="",0,{one})', above=Above(f"nth_{key}"), ready="ready", one=one)
    return look(head, so_far, "row", needs=(), width=8)


def things(of_a_log: str, counts: Expression = ONE) -> dict[str, Column]:
    """The columns of a log whose lines are of a material or of a product: where each stands, and its number."""
    return {
        "material_row": look("Material, row", row_in("materials", "material", ready=False), "row", needs=("ready", "material"), width=8),
        "product_row": look("Product's first row", row_in("recipes", "product", ready=False), "row", needs=("ready", "product"), width=8),
        "nth_material": _running("material", f"{of_a_log} of materials", counts),
        "nth_product": _running("product", f"{of_a_log} of products", counts),
    }  # fmt: skip


# A set takes its candles along: a line for itself, and one for each line of it on Sets.
LINES = written(
    '{ready}*({product}<>"")*(1+COUNTIF({sets},{set}))',
    ready="ready",
    product="product",
    sets=Whole("sets", "set_row"),
    set="holds",
)
OF_MATERIAL = at_row("used", "cost", written("{poured}+{nth}", poured=Named("lines_of_pours"), nth="nth_material"))
OF_PRODUCT = lines_of("out", "cost", "start", "lines")
COST = written('IF({product}="",{material},{candles})', product="product", material=OF_MATERIAL, candles=OF_PRODUCT)
TAB = entry_tab(
    MOVES,
    {
        **things("Lines"),
        "holds": look(
            "Recipe that holds now, row", row_in("recipes", "product"), "row", needs=("product_row",), width=8
        ),
        "lines": look(
            "Lines on Candles out", written('IF({row}="",0,{lines})', row="product_row", lines=LINES), "row", width=8
        ),
        "start": look(
            "Lines on Candles out before",
            before_row("start", "lines"),
            "row",
            needs=(),
            width=8,
        ),
        "cost": look("What it cost, {money}", COST, "money"),
    },
    checks=(ONE_OF_TWO,),
    waits={"material": not_ready_there("materials", "material"), "product": not_ready_there("recipes", "product")},
)
register(TAB, __name__, 30, records=True)
