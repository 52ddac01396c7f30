"""The Sales tab: what was sold, a line for each product of an order. What a line comes to is worked out on Sold."""

from collections.abc import Iterable

from candlecalc.season.tables.sales import HELD_FOR_BUYERS, SALES
from candlecalc.workbook.cells.checks import Check, WorkbookCheck
from candlecalc.workbook.cells.columns import Column, look
from candlecalc.workbook.cells.layout import OWN_ROW, Plan
from candlecalc.workbook.cells.references import (
    Expression,
    Same,
    Whole,
    alike,
    row_in,
    written,
)
from candlecalc.workbook.cells.table_tab import column_says_nothing, entry_tab, not_ready_there, words_column
from candlecalc.workbook.tabs.registry import register


def place_and_product() -> dict[str, Column]:
    """Where a line was sold and what, by their first rows."""
    return {
        "place_first": look("Place's first row", row_in("places", "place", ready=False), "row", needs=("ready", "place"), width=8),
        "product_row": look("Product's first row", row_in("recipes", "product", ready=False), "row", needs=("ready", "product"), width=8),
    }  # fmt: skip


def no_price(where: str) -> Column:
    """What is said of a line that has no price."""
    words = "Price each: none on Prices for this product and place on that day; type it here or there"
    found = Same(*where.split("."))
    said = written(
        f'IF(({{ready}}=1)*({{product}}<>"")*ISERROR({{price}})*(1-ISERROR({{row}})),"{words}","")',
        ready="ready",
        product="product",
        price=found,
        row="product_row",
    )
    return words_column("No price", said)


# An order's number holds in its place alone, and may have marks in it that a look-up takes for wild cards.
ORDER = written(
    '{place}&"|"&SUBSTITUTE(SUBSTITUTE(SUBSTITUTE({order},"~","-"),"*","-"),"?","-")',
    place="place_first",
    order="order",
)
# The fee of an order stands on the first of its sales: a deposit or a refund of it is charged none.
NO_SALE = written('({kind}<>"")*({kind}<>"sold there")', kind="kind")
FIRST_OF_ORDER = written('IF({name}="",{row},MATCH({name},{names},0))', row=OWN_ROW, name="order_name", names=Whole("sales", "order_name"))  # fmt: skip
OF_PAYOUT = written(
    "SUMPRODUCT({together}*1,{sums})", together=alike("sales", "payout", "place"), sums=Whole("sales", "comes_in")
)
PAYOUT = written(
    "SUMPRODUCT({together}*1,{sums})", together=alike("sales", "payout", "place"), sums=Whole("sales", "payout_sum")
)
TYPED = written('{payout}=""', payout="payout")
IS_HELD = "+".join(f'(kind="{kind}")' for kind in HELD_FOR_BUYERS)

AGAIN = written('IF({order}="",1,SUMPRODUCT({alike}*1))', order="order", alike=alike("sales", "order", "place", "product", "order_line", "kind"))  # fmt: skip

CHECKS = (
    Check(
        "N(again)<=1",
        "line of an order that is there twice",
        "take one out, or type which lines of the order they are",
        "order",
        unlikely=True,
    ),
    Check(
        f'(product<>"")+(kind="refund")+{IS_HELD}>0',
        "sale of no product",
        "choose what was sold, or say what kind of line it is",
        "product",
    ),
    Check(
        '(kind<>"refund")+(product<>"")+(price<>"")>0',
        "refund of nothing",
        "type what you paid back, or the product that was paid back",
        "price",
    ),
    Check(
        '(payout_sum="")+(ABS(N(payout_off))<=0.005)>0',
        "payout that is not what its lines come to",
        "see its lines: a fee, a refund or a sale that is missing?",
        "payout_sum",
    ),
    Check(
        '(paid_on="")+(paid_on>=date)>0',
        "sale paid before its day",
        "see both dates; what was paid beforehand is a deposit",
        "paid_on",
        unlikely=True,
    ),
)


def _shown(key: str) -> Expression:
    return Same("sold", key)


TAB = entry_tab(
    SALES,
    {
        "gross": look("Comes to, with tax, {money}", _shown("gross"), "money_strong"),
        "comes_in": look("Yours to have, {money}", _shown("comes_in"), "money"),
        "owed": look("Still owed, {money}", _shown("owed"), "money"),
        **place_and_product(),
        "order_name": look("Place and order", ORDER, needs=("ready", "order"), blank_if=(NO_SALE,), width=16),
        "again": look("Lines alike in its order", AGAIN, "row", width=8),
        "order_first": look("First line of its order", FIRST_OF_ORDER, "row", width=8),
        "payout_off": look("Payout, less its lines, {money}", written("ROUND({sum}-{lines},6)", sum=PAYOUT, lines=OF_PAYOUT), "money", blank_if=(TYPED,)),
    },
    checks=CHECKS,
    waits={"product": not_ready_there("recipes", "product"), "place": not_ready_there("places", "place")},
    also={"no_price": no_price("sold.price")},
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    yield column_says_nothing(
        plan, TAB, "no_price", "Sales: every line has its price", "see the words left of its date"
    )


register(TAB, __name__, 30, checks=checks, records=True)
