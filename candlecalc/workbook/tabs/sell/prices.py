"""The Prices tab: what each candle must fetch in each place, and what the maker's own price leaves there."""

from collections.abc import Iterable

from candlecalc.season.tables.sell import PRICES
from candlecalc.workbook.cells.checks import Check, WorkbookCheck, sums_agree
from candlecalc.workbook.cells.columns import look, result
from candlecalc.workbook.cells.layout import Plan
from candlecalc.workbook.cells.references import Named, Same, Whole, not_above_zero, written
from candlecalc.workbook.cells.table_tab import entry_tab, no_number, not_ready_there, words_column
from candlecalc.workbook.tabs.registry import Shown, register

# A line is ready when it is typed whole; its results wait until its product has a cost, too.
COSTED = ("full",)

LOADS = written(
    'IFERROR(INDEX({said},{row})&"","")', said=Whole("costing", "loads"), row=Same("selling", "product_row")
)

NARROW = 8.5  # so that all of it stands on one page
NOT_NOW = written("N({other})>0", other=Same("selling", "other"))

TAB = entry_tab(
    PRICES,
    {
        # What the price leaves stands beside it: on the first screen, and on the first page.
        "full": look("Full cost, {money}", Same("selling", "full"), "money", blank_if=(NOT_NOW,), width=NARROW),
        "fees": look("Fees and postage, {money}", Same("selling", "fees"), "money", needs=COSTED),
        "received": look("Yours before tax, {money}", Same("selling", "received"), "money", needs=COSTED, width=NARROW),
        "profit": result("Profit, {money}", "profit_at", price="received", cost="full", fees="fees", format="money_strong", needs=COSTED, column_width=NARROW),
        "margin": result("Margin, of price", "margin_at", profit="profit", price="received", needs=COSTED, column_width=NARROW),
        "target": look("Target margin, of price", Same("selling", "margin"), "percent", needs=COSTED, width=NARROW),
        "target_price": result("Price for the target, {money}", "round_up_price", price=Same("selling", "to_state"), step=Named("price_step"), ending=Named("price_ending"), format="money_strong", needs=COSTED, column_width=NARROW),
        "lowest": look("Lowest that covers materials, {money}", Same("selling", "lowest_stated"), "money", needs=COSTED),
        "tax": result("Tax on it, {money}", "tax_on", price="received", tax=Same("selling", "tax"), needs=COSTED, column_width=NARROW),
        "must_sell": result("Sell to cover the place, candles", "break_even_units", fixed=Same("selling", "season_fixed"), price="received", cost=Same("selling", "cost_and_fees"), needs=COSTED, blank_if=(not_above_zero("profit"),)),
    },
    waits={"product": written("({no_cost})*(1-({not_now}))", no_cost=no_number("full"), not_now=NOT_NOW), "place": not_ready_there("places", "place")},
    also={"loads": words_column("Load above a limit, from Costing", LOADS)},
    results_printed=True,
    checks=(
        Check("ROUND(profit,4)>=0", "price below full cost", "raise the price, or lower the cost", "price"),
        Check("ROUND(margin-target,4)>=0", "margin under the target", "raise the price, or lower the target on Places sold", "price"),
    ),
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    prices = plan.layouts["prices"]
    spent, received = prices.sum("full", "fees", "profit"), prices.sum("received")
    yield sums_agree("Prices are cost, fees and profit", TAB.title, spent, received)


SHOWN = ("product", "place", "full", "target_price", "price", "fees", "tax", "profit", "margin", "must_sell")
register(TAB, __name__, 10, checks=checks, shown=Shown("prices", SHOWN))
