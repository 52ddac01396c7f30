"""The tables of a season, a file a subject, and all of them in the order of the work."""

from candlecalc.season.fields import Table
from candlecalc.season.tables.books import ACCOUNTS, ENTRIES, EXPENSES
from candlecalc.season.tables.burning import BURNS, MELTS, POUR_DAY, TARGETS, TESTS, WICKS
from candlecalc.season.tables.carried import LAST_SOLD, STILL_OPEN
from candlecalc.season.tables.imports import IMPORTS
from candlecalc.season.tables.labels import LABELS, OIL_SHEETS, PAPERS, WEIGHTS
from candlecalc.season.tables.plan import BUYING_TERMS, DEMAND, EVENINGS, ON_ORDER
from candlecalc.season.tables.sales import COMPLAINTS, MARKET_DAYS, MARKET_LINES, SALES, TAX_RATES
from candlecalc.season.tables.sell import PLACES, PRICES
from candlecalc.season.tables.set_up import EXTRAS, MATERIALS, RECIPES, SETS, VESSELS
from candlecalc.season.tables.stock import COUNTS, INSTEAD, MOVES, POURS, PURCHASES, RATES

TABLES: dict[str, Table] = {
    table.key: table
    for table in (
        *(MATERIALS, VESSELS, RECIPES, EXTRAS, SETS, PLACES, PRICES),
        *(PURCHASES, POURS, INSTEAD, MOVES, COUNTS, RATES),
        *(SALES, MARKET_DAYS, MARKET_LINES, TAX_RATES, COMPLAINTS),
        *(STILL_OPEN, LAST_SOLD, IMPORTS),
        *(EXPENSES, ENTRIES, ACCOUNTS),
        *(DEMAND, EVENINGS, BUYING_TERMS, ON_ORDER),
        *(OIL_SHEETS, LABELS, PAPERS, WEIGHTS),
        *(WICKS, TARGETS, TESTS, BURNS, MELTS, POUR_DAY),
    )
}


def tables_of(records: bool) -> dict[str, Table]:
    """The tables of a season: for costs and prices alone, or with the year's records."""
    return {key: table for key, table in TABLES.items() if records or not table.records}
