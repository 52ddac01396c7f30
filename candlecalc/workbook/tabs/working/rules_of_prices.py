"""The Rules of prices tab: under whose rules each line of Prices sells."""

from candlecalc.season.tables.sell import PRICES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import Same, as_text, at
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import register

TAB = result_tab(
    "Rules of prices",
    "working",
    "Under whose rules each line of Prices sells, by its place.",
    "price_rules",
    PRICES,
    {
        "product_row": look("Product, row", Same("selling", "product_row"), "row", width=8),
        "rules": look("Buyers' rules", as_text(at("places", "rules", Same("selling", "place_row"))), width=8),
    },
)
register(TAB, __name__, 58, records=True)
