"""The Prices tab: what each candle must fetch in each place, and what the maker's own price leaves there."""

from candlecalc.season.tables import PRICES
from candlecalc.workbook.cells.columns import look, result, total
from candlecalc.workbook.cells.references import named, not_above_zero, same
from candlecalc.workbook.cells.table_tab import Check, entry_tab, no_number, not_usable

# A line is ready when it is typed whole; its results wait until its product has a cost, too.
COSTED = ("full",)

TAB = entry_tab(
    PRICES,
    {
        "full": look("Full cost, {money}", same("selling", "full"), "money"),
        "target_price": result("Price for the target, {money}", "round_up_price", price=same("selling", "to_state"), step=named("price_step"), ending=named("price_ending"), format="money_strong", when=COSTED),
        "lowest": look("Lowest that covers materials, {money}", same("selling", "lowest_stated"), "money", when=COSTED),
        "received": look("Yours before tax, {money}", same("selling", "received"), "money", when=COSTED),
        "tax": result("Tax on it, {money}", "tax_on", price="received", tax=same("selling", "tax"), when=COSTED),
        "fees": total("Fees and postage, {money}", same("selling", "fee_taken"), same("selling", "fixed"), when=COSTED),
        "profit": result("Profit, {money}", "profit_at", price="received", cost="full", fees="fees", when=COSTED),
        "margin": result("Margin, of price", "margin_at", profit="profit", price="received", when=COSTED),
        "target": look("Target margin, of price", same("selling", "margin"), "percent", when=COSTED),
        "must_sell": result("Sell to cover the place, candles", "break_even_units", fixed=same("selling", "season_fixed"), price="received", cost=same("selling", "cost_and_fees"), when=(*COSTED, not_above_zero("profit"))),
    },
    waits={"product": no_number("full"), "place": not_usable("places", "place")},
    results_printed=True,
    checks=(
        Check("ROUND(profit,4)>=0", "price below full cost", "raise the price, or lower the cost", "price"),
        Check("ROUND(margin-target,4)>=0", "margin under the target", "raise the price, or lower the target on Places sold", "price"),
    ),
)  # fmt: skip
