"""The Places by day tab: the rows of each place by the day from which they hold."""

from candlecalc.season.tables.sell import PLACES
from candlecalc.workbook.cells.references import Carry
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.by_day import by_first_row

register(
    result_tab(
        "Places by day",
        "working",
        "The rows of each place on Places sold, by the day from which each holds.",
        "places_by_day",
        PLACES,
        by_first_row("places_by_day", PLACES, Carry(PLACES.key, "place"), "Place's first row"),
    ),
    __name__,
    6,
    records=True,
)
