"""The Prices by day tab: the prices of each product in each place, by the day from which they hold."""

from candlecalc.season.tables.sell import PLACES, PRICES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import (
    ByPlan,
    Carry,
    Expression,
    Given,
    Results,
    Same,
    constant,
    row_in,
    written,
)
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


# More than any candle brings, so that the least one brings is the most that is short of it: nothing is what a row
# without a price has.
MOST = constant(10**6)
SHORT = written(
    "IF(COUNT({received},{fees})<2,0,{most}-({received}-{fees}))",
    received=Same("selling", "received"),
    fees=Same("selling", "fees"),
    most=MOST,
)


# A row says it where no other of its product is shorter: not every program knows a largest of some rows.
LEAST = written(
    "IF({short}=0,0,{short}*(SUMPRODUCT(({products}={product})*(({all}>{short})+({all}={short})*({rows}<{row})))=0))",
    short="short",
    product="product",
    products=Results("prices_by_day", "product"),
    all=Results("prices_by_day", "short"),
    rows=Results("prices_by_day", OWN_ROW),
    row=OWN_ROW,
)


def least_brought(product: Given) -> Expression:
    """The least that one of a product brings before tax and after fees, by its prices; nothing without a price."""
    short = written(
        "SUMPRODUCT(({products}={product})*{short})",
        products=Results("prices_by_day", "product"),
        product=product,
        short=Results("prices_by_day", "least"),
    )
    # To nine decimals first: what the million leaves behind must not part a half from a half.
    return written('IF({short}=0,"",ROUND(ROUND({most}-{short},9),6))', short=short, most=MOST)


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
        "short": look("What it brings short of a million, {money}", SHORT, "money", needs=()),
        "least": look("... of its product's least, {money}", LEAST, "money", needs=()),
    },
)

register(TAB, __name__, 7, records=True)
