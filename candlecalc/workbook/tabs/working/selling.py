"""The Selling tab: for each line of Prices, the terms of its place and the sums behind its price."""

from candlecalc.season.tables.sell import PRICES
from candlecalc.workbook.cells.columns import look, result, row_number, total
from candlecalc.workbook.cells.references import Carry, another_holds, at, text
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import register

# Nothing while the product has no cost yet.
COSTED = ("full",)

TAB = result_tab(
    "Selling",
    "working",
    "The terms of the place behind each line of Prices.",
    "selling",
    PRICES,
    {
        "place": look("Place", Carry("prices", "place"), width=35),
        "other": look("Not now: another price holds", another_holds("prices", "product", "place", day=Carry("prices", "holds_from")), "row", width=8),
        "product_row": row_number("Product, row", "recipes", Carry("prices", "product")),
        "place_row": row_number("Place, row", "places", Carry("prices", "place")),
        "full": look("Full cost, {money}", at("costing", "full", "product_row"), "money"),
        "materials": look("Materials, {money}", at("costing", "materials", "product_row"), "money"),
        "fee": look("Fee, of price", at("places", "fee", "place_row"), "percent"),
        "fee_basis": look("Fee is of", at("places", "fee_basis", "place_row"), width=8, if_blank=(at("places", "fee_basis", "place_row"), text("net"))),
        "fixed": look("Fixed fees a candle, {money}", at("places", "fixed", "place_row"), "money"),
        "least": look("Least fee a candle, {money}", at("places", "least", "place_row"), "money"),
        "tax": look("Tax rate, of price", at("places", "tax", "place_row"), "percent"),
        "discount": look("Discount, of price", at("places", "discount", "place_row"), "percent"),
        "stated": look("Prices are", at("places", "stated_used", "place_row"), width=11),
        "margin": look("Target margin, of price", at("places", "margin", "place_row"), "percent"),
        "season_fixed": look("Fixed cost, {money} a season", at("places", "season_fixed", "place_row"), "money"),
        "target_net": result("Target before tax, {money}", "price_for_margin", cost="full", margin="margin", fee="fee", fixed="fixed", tax="tax", basis="fee_basis", least="least", needs=COSTED),
        "to_state": result("Target as stated, {money}", "price_to_state", price="target_net", discount="discount", tax="tax", stated="stated", needs=COSTED),
        "lowest_net": result("Lowest before tax, {money}", "lowest_price", materials="materials", fee="fee", fixed="fixed", tax="tax", basis="fee_basis", least="least", needs=COSTED),
        "lowest_stated": result("Lowest as stated, {money}", "price_to_state", price="lowest_net", discount="discount", tax="tax", stated="stated", needs=COSTED),
        "received": result("Yours before tax, {money}", "price_received", shelf=Carry("prices", "price"), discount="discount", tax="tax", stated="stated"),
        "fee_taken": result("Fee taken, {money}", "fee_at", price="received", fee="fee", tax="tax", basis="fee_basis", least="least"),
        "fees": total("Fees and postage, {money}", "fee_taken", "fixed", needs=COSTED),
        "cost_and_fees": total("Cost and fees, {money}", "full", "fee_taken", "fixed", needs=COSTED),
    },
)  # fmt: skip
register(TAB, __name__, 40)
