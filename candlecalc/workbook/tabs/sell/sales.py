"""The Sales tab: what was sold, a line for each product of an order. What a line comes to is worked out on Sold."""

from collections.abc import Iterable

from candlecalc.season.tables.sales import ARE_SALES, HELD_FOR_BUYERS, SALES
from candlecalc.workbook.cells.checks import Check, WorkbookCheck, of_rows
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import OWN_ROW, Plan
from candlecalc.workbook.cells.references import (
    Expression,
    Given,
    Results,
    Same,
    Whole,
    alike,
    joined,
    row_in,
    written,
)
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there, words_column
from candlecalc.workbook.tabs.registry import register

NONE_ON_PRICES = "Price each: none on Prices for this product and place on that day; type it here or there"
PRICES_WAIT = "Price each: see Prices first, where a row is to mend"


def no_price(none: str, test: Given) -> Expression:
    """Words where a line's price is an error: one wrong row of Prices keeps all of them back."""
    return written(
        f'IF({{test}},IF(ISERROR(SUM({{prices}})),"{PRICES_WAIT}","{none}"),"")',
        test=test,
        prices=Results("prices_by_day", "number"),
    )


NO_PRICE = no_price(
    NONE_ON_PRICES,
    written(
        '({ready}=1)*({product}<>"")*ISERROR({price})*(1-ISERROR({row}))',
        ready="ready",
        product="product",
        price=Same("sold", "price"),
        row="product_row",
    ),
)
# An order's number holds in its place alone, and may have marks in it that a look-up takes for wild cards.
ORDER = written(
    '{place}&"|"&SUBSTITUTE(SUBSTITUTE(SUBSTITUTE({order},"~","-"),"*","-"),"?","-")',
    place="place_first",
    order="order",
)
# The fee of an order stands on the first of its sales: a deposit or a refund of it is charged none.
NO_SALE = joined("*", [written(f'({{kind}}<>"{kind}")', kind="kind") for kind in ARE_SALES])
FIRST_OF_ORDER = written('IF({name}="",{row},MATCH({name},{names},0))', row=OWN_ROW, name="order_name", names=Whole("sales", "order_name"))  # fmt: skip


def _of_payout(key: str) -> Expression:
    """What the lines that came with one payment hold together."""
    together = alike("sales", "payout", "place")
    return written("SUMPRODUCT({together}*1,{sums})", together=together, sums=Whole("sales", key))


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
        "place_first": look("Place's first row", row_in("places", "place", ready=False), "row", needs=("ready", "place"), width=8),
        "product_row": look("Product's first row", row_in("recipes", "product", ready=False), "row", needs=("ready", "product"), width=8),
        "order_name": look("Place and order", ORDER, needs=("ready", "order"), blank_if=(NO_SALE,), width=16),
        "again": look("Lines alike in its order", AGAIN, "row", width=8),
        "order_first": look("First line of its order", FIRST_OF_ORDER, "row", width=8),
        "payout_off": look("Payout, less its lines, {money}", written("ROUND({sum}-{lines},6)", sum=_of_payout("payout_sum"), lines=_of_payout("comes_in")), "money", blank_if=(TYPED,)),
    },
    checks=CHECKS,
    waits={"product": not_ready_there("recipes", "product"), "place": not_ready_there("places", "place")},
    also={"no_price": words_column("No price", NO_PRICE)},
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    name, mend = "Sales: every line has its price", "see the words left of its date"
    yield of_rows(name, TAB.title, plan.layouts[TAB.key], "no_price", mend, rested_on=True)


register(TAB, __name__, 30, checks=checks, records=True)
