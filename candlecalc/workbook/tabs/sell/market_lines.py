"""The Market lines tab: what was taken to a market, and what was brought back."""

from collections.abc import Iterable

from candlecalc.season.tables.sales import MARKET_DAYS, MARKET_LINES, SALES
from candlecalc.workbook.cells.checks import Check, WorkbookCheck, of_rows
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import OWN_ROW, Plan
from candlecalc.workbook.cells.references import ByPlan, Named, Results, Whole, at, constant, row_in, written
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there, words_column
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.sell.sales import no_price

# Its lines on Sold stand below those of Sales.
ON_SOLD = written("({row}+{sales})", row=OWN_ROW, sales=ByPlan(lambda plan: constant(plan.layouts[SALES.key].rows)))
LOST = written("SUM({given},{broken})", given="given", broken="broken")
SOLD = written(
    'IF({sold}<>"",{sold},SUM({along})-SUM({back})-{lost})', sold="sold", along="along", back="back", lost=LOST
)
# Where no place is typed it is that of the day.
THAT_DAY = at(
    MARKET_DAYS.key, "place_first", written("MATCH({day},{days},0)", day="date", days=Whole(MARKET_DAYS.key, "date"))
)
PLACE = written(
    'IF({place}="",{of_day},{own})', place="place", of_day=THAT_DAY, own=row_in("places", "place", ready=False)
)
# On Candles out they stand below those of the line that were sold.
LOST_COST = written(
    "IF({lost}=0,0,SUM(INDEX({costs},{end}-{size}+1):INDEX({costs},{end})))",
    lost="lost",
    costs=Results("out", "cost"),
    size=at("sold", "size", ON_SOLD),
    end=written(
        "{moved}+{start}+{lines}",
        moved=Named("product_moves"),
        start=at("sold", "start", ON_SOLD),
        lines=at("sold", "lines", ON_SOLD),
    ),
)
NO_DAY = 'IF(({ready}=1)*ISERROR({place}),"Date: not on Market days: type the day there, or its place here","")'
NONE_ON_PRICES = "Price each: none on Prices for that place and day; type it here or there"
NO_PRICE = no_price(
    NONE_ON_PRICES,
    written(
        "({ready}=1)*(1-ISERROR({place}))*ISERROR({price})",
        ready="ready",
        place="place_first",
        price=at("sold", "price", ON_SOLD),
    ),
)

TAB = entry_tab(
    MARKET_LINES,
    {
        "pieces": look("Sold that day", SOLD, "pieces"),
        "gross": look("Came to, with tax, {money}", at("sold", "gross", ON_SOLD), "money_strong"),
        "lost": look("Given away and broken", LOST, "pieces"),
        "place_first": look("Place's first row", PLACE, "row", width=8),
        "product_row": look("Product's first row", row_in("recipes", "product", ready=False), "row", width=8),
        "lost_cost": look("Cost of those given away and broken, {money}", LOST_COST, "money"),
    },
    checks=(
        Check('(sold<>"")+(along<>"")>0', "market line that does not say how many were sold", "type what you took along and brought back, or what was sold", "along"),
        Check("N(pieces)>=0", "more brought back than was taken along", "see both, and what was given away or broke", "back"),
        Check('(sold="")+(along="")+(N(along)-N(back)-N(lost)=N(sold))>0', "market line whose numbers do not add up", "taken along is sold, given away, broken and brought back", "sold"),
    ),
    waits={"product": not_ready_there("recipes", "product")},
    also={
        "no_day": words_column("No market day", written(NO_DAY, ready="ready", place="place_first")),
        "no_price": words_column("No price", NO_PRICE),
    },
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    mend = "see the words left of its date"
    for key, name in (("no_day", "every line is of a market day"), ("no_price", "every line has its price")):
        yield of_rows(f"Market lines: {name}", TAB.title, plan.layouts[TAB.key], key, mend, rested_on=True)


register(TAB, __name__, 50, checks=checks, records=True)
