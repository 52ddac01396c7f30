"""The Prices by day tab: the prices of each product in each place, by the day from which they hold."""

from candlecalc.season.tables.sell import PLACES, PRICES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import ByPlan, Carry, Expression, Given, constant, row_in, written
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.by_day import numbered

# The head and the row under the list count too.
PLACES_THERE_ARE = ByPlan(lambda plan: constant(plan.layouts[PLACES.key].rows + 2))


def sold_there(product: Given, place: Given) -> Expression:
    """A product in a place as one number, by their first rows."""
    return written("({product}*{places}+{place})", product=product, places=PLACES_THERE_ARE, place=place)


def _first_row(table: str, key: str) -> Expression:
    return row_in(table, Carry(PRICES.key, key), ready=False)


SOLD_THERE = sold_there(_first_row("recipes", "product"), _first_row("places", "place"))

TAB = result_tab(
    "Prices by day",
    "working",
    "The prices of each product in each place, by the day from which each holds.",
    "prices_by_day",
    PRICES,
    {
        "sold_there": look("Product and place", SOLD_THERE, "row", width=8),
        **numbered("prices_by_day", PRICES, "sold_there"),
    },
)

register(TAB, __name__, 7, records=True)
