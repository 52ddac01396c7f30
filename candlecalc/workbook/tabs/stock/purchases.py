"""The Purchases tab: what was bought, and what each line cost with its share of freight and duty."""

from collections.abc import Iterable

from candlecalc.season.tables import PURCHASES
from candlecalc.workbook.cells.checks import WorkbookCheck, sums_agree
from candlecalc.workbook.cells.columns import look, result
from candlecalc.workbook.cells.layout import OWN_ROW, Plan
from candlecalc.workbook.cells.references import CoinDigits, Expression, Whole, at, line_key, row_in, sum_alike, written
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there
from candlecalc.workbook.tabs.registry import Shown, register

KEY = PURCHASES.key


def _of_document(key: str) -> Expression:
    """What the lines of one document hold together; a line without a document is one by itself."""
    alone, together = written("N({own})", own=key), sum_alike(KEY, key, "document", "supplier")
    return written('IF({document}="",{alone},{together})', document="document", alone=alone, together=together)


# Charges are split in whole coins: each line gets the whole ones of its share, and what is left goes one coin each to
# the largest rests, the first of equal ones first. So the parts add up, as split_charge has it.
COINS = written("ROUND({charges}*10^{digits},0)", charges=_of_document("charges"), digits=CoinDigits())
EXACT = written("IF({all}=0,0,{coins}*{goods}/{all})", all="goods_of_document", coins="coins", goods="goods")
SAME_DOCUMENT = written(
    "({documents}={document})*({suppliers}={supplier})",
    documents=Whole(KEY, "document"),
    document="document",
    suppliers=Whole(KEY, "supplier"),
    supplier="supplier",
)
BEFORE_IT = written(
    'IF({document}="",0,SUMPRODUCT({same}*(({rests}>{rest})+({rests}={rest})*({rows}<{row}))*({rests}<>"")))',
    document="document",
    same=SAME_DOCUMENT,
    rest="rest",
    rests=Whole(KEY, "rest"),
    rows=Whole(KEY, OWN_ROW),
    row=OWN_ROW,
)
LEFT_OVER = written("{coins}-{whole}", coins="coins", whole=_of_document("whole"))
SHARE = written(
    "({whole}+({before}<{left})*1)/10^{digits}",
    whole="whole",
    before="before",
    left="left_over",
    digits=CoinDigits(),
)

TAB = entry_tab(
    PURCHASES,
    {
        "material_row": look("Material, row", row_in("materials", "material"), "row", width=8),
        "amount": result("Bought, {weight} or each", "pieces_for", each=at("materials", "size", "material_row"), count="packs", format="quantity"),
        "goods": result("Goods, {money}", "cost_of_all", cost="price", count="packs", format="money"),
        "goods_of_document": look("Goods of the document, {money}", _of_document("goods"), "money"),
        "coins": look("Freight and duty of the document, in coins", COINS, "count"),
        "exact": look("Its share, in coins", EXACT, "quantity"),
        "whole": look("Whole coins", written("INT(ROUND({exact},6))", exact="exact"), "count"),
        "rest": look("Rest", written("ROUND({exact}-{whole},6)", exact="exact", whole="whole"), "quantity"),
        "before": look("Lines before it for a coin", BEFORE_IT, "count"),
        "left_over": look("Coins left over", LEFT_OVER, "count"),
        "share": look("Freight and duty, {money}, of this line", SHARE, "money"),
        "landed": result("Cost landed, {money}", "landed_cost", price="goods", discount="discount", charges="share", tax="tax", format="money_strong"),
        "unit_cost": result("Cost, {money} per {weight} or each", "unit_cost", price="landed", size="amount"),
        "number": look("Line's number", line_key("material_row", "date"), "row", width=16),
    },
    waits={"material": not_ready_there("materials", "material")},
    results_printed=False,
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    layout = plan.layouts[KEY]
    charges = f"SUM({layout.range('charges')})"
    yield sums_agree("Freight and duty are shared out whole", TAB.title, layout.sum("share"), charges)


SHOWN = ("date", "document", "material", "packs", "amount", "landed", "unit_cost", "lot")
register(TAB, __name__, 10, checks=checks, shown=Shown("purchases", SHOWN), records=True)
