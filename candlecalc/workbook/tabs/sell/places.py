"""The Places sold tab: what each place keeps, and what an order costs there."""

from candlecalc.season.tables.sell import PLACES
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import look, names_when_ready, result, total
from candlecalc.workbook.cells.references import Named, Own, another_holds, written
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

TAB = entry_tab(
    PLACES,
    {
        "tax": result("Tax rate there, of price", "tax_charged", rate=Named("tax_rate"), collector="collector"),
        # The place takes its share of postage too, and that share counts towards its least fee: as on Sold.
        "on_postage": result("Fee on postage charged, {money}", "fee_at", price="postage_charged", fee="fee", tax="tax", basis="fee_basis", needs=("ready", "fee", "postage_charged")),
        "order_fees": total("Fees of an order, {money}", "fee_order", "on_postage"),
        "order_cost": result("An order costs, {money}", "order_cost", fee="order_fees", postage="postage_paid", packing="packing_order", charged="postage_charged"),
        "fixed": result("Fixed fees a candle, {money}", "fixed_each", item="fee_item", order="order_cost", per_order="per_order"),
        "least_left": look("Least fee less that, {money}", written("MAX(0,SUM({least})-SUM({on_postage}))", least="least_fee", on_postage="on_postage"), "money"),
        "least": result("Least fee a candle, {money}", "least_each", least="least_left", per_order="per_order"),
        "stated_used": look("Prices are, in use", Own("stated"), if_blank=("stated", Named("shelf_prices")), width=12),
        "season_fixed": result("Fixed cost, {money} a season", "fixed_for_season", cost="fixed_cost", times="fixed_times"),
        "other": look("Not now: another row holds", another_holds("places", "place"), "row", width=8),
        **names_when_ready("place", written("{other}>0", other="other")),
    },
    checks=(
        # Directive 98/6/EC, Articles 2(a) and 3; the Price Marking Order 2004 in Great Britain: from memory.
        Check('((rules="eu")+(rules="gb"))*(kind<>"wholesale shop")*(tax>0)*(stated_used="before tax")=0', "price before tax for buyers under eu or gb rules",
              "who buys for himself sees prices with tax in them there: choose with tax", "stated", unlikely=True),
        Check('((kind="wholesale shop")+(kind="consignment shop")=0)+(N(discount)+N(fee)>0)>0', "shop that keeps nothing",
              "type its discount, or the share of the price that it keeps as its fee", "discount", unlikely=True),
        Check('(collector="maker")*1<=registered_yes', "tax paid by a maker who is not registered",
              "choose nobody or place, or say on Settings that you are registered", "collector"),
    ),
)  # fmt: skip
register(TAB, __name__, 20)
