"""The Sales tab: what was sold, a line for each product of an order. What a line comes to is worked out on Sold."""

from collections.abc import Iterable

from candlecalc.season.tables.sales import ARE_SALES, HELD_FOR_BUYERS, SALES
from candlecalc.workbook.cells.checks import Check, WorkbookCheck, of_rows
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import Plan
from candlecalc.workbook.cells.references import (
    Expression,
    Given,
    Results,
    Same,
    Whole,
    first_alike,
    joined,
    looked_up_by,
    row_in,
    sum_where,
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
# An order's number holds in its place alone.
ORDER = looked_up_by("place_first", "order")
# The fee of an order stands on the first of its sales: a deposit or a refund of it is charged none.
NO_SALE = joined("*", [written(f'({{kind}}<>"{kind}")', kind="kind") for kind in ARE_SALES])
# What is once in an order. Where the order ends and its line begins is told by how long it is.
LINE = looked_up_by(
    "place_first",
    "product_row",
    "kind",
    written("LEN({order})", order="order"),
    written("{order}&{line}", order="order", line="order_line"),
)


def _of_payout(key: str) -> Expression:
    """What the lines that came with one payment hold together; an error while any line of Sales is one."""
    of_its_lines = sum_where("sales", key, payout_first="payout_first")
    return written("{of_its_lines}+0*SUM({all})", of_its_lines=of_its_lines, all=Whole("sales", key))


IS_HELD = "+".join(f'(kind="{kind}")' for kind in HELD_FOR_BUYERS)

CHECKS = (
    Check(
        "line_first>=own_row",
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
        "order_first": look("First line of its order", first_alike("sales", "order_name"), "row", width=8),
        "line_name": look("Place, product, kind, order and line", LINE, needs=("ready", "order"), width=16),
        "line_first": look("First line alike in its order", first_alike("sales", "line_name"), "row", width=8),
        "payout_name": look("Place and payout", looked_up_by("place_first", "payout"), needs=("ready", "payout"), width=16),
        "payout_first": look("First line of its payout", first_alike("sales", "payout_name"), "row", width=8),
        "payout_off": look("Payout, less its lines, {money}", written("ROUND({sum}-({lines}),6)", sum=_of_payout("payout_sum"), lines=_of_payout("comes_in")), "money", needs=("ready", "payout_name")),
    },
    checks=CHECKS,
    waits={"product": not_ready_there("recipes", "product"), "place": not_ready_there("places", "place")},
    also={"no_price": words_column("No price", NO_PRICE)},
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    name, mend = "Sales: every line has its price", "see the words left of its date"
    yield of_rows(name, TAB.title, plan.layouts[TAB.key], "no_price", mend, rested_on=True)


register(TAB, __name__, 30, checks=checks, records=True)
