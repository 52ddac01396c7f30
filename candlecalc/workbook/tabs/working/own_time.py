"""The Own time tab: minutes of your own in the making of what each line of Sold took from stock."""

from candlecalc.season.tables.sales import SALES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import Same, at, written
from candlecalc.workbook.cells.table_tab import TableTab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.sell.season_sums import OWN_TIME
from candlecalc.workbook.tabs.sell.sold import TAB as SOLD

# Money paid back does not bring the time back; a candle that is in stock again will be sold with it.
MINUTES = written(
    "IF({away}=0,0,{away}*{each})",
    away=Same("sold", "away"),
    each=at("by_product", "minutes", Same("sold", "holds")),
)

TAB = TableTab(
    "Own time",
    "working",
    "Minutes of your own in what each line of Sold took from stock.",
    OWN_TIME,
    {"minutes": look("Own time, minutes", MINUTES, "minutes", needs=(Same("sold", "what"),))},
    goes_with=SALES.key,
    counted=SOLD.counted,
)

register(TAB, __name__, 52, records=True)
