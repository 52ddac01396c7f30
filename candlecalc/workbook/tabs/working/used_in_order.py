"""The Used in order tab: what went of each material by day, what that cost, and from which lot."""

from candlecalc.season.tables.stock import POURS
from candlecalc.workbook.cells.references import at, written
from candlecalc.workbook.cells.stock_card import went_columns
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.stock.used import TAB as USED

COUNTED = at("used", "counted", "line")

TAB = lines_tab(
    "Used in order",
    "working",
    "What went of each material, by day: what it cost, and the lot it is taken to be from.",
    "card",
    POURS,
    went_columns("used", "lots", at("used", "amount", "line"), (written('{counted}<>""', counted=COUNTED), COUNTED)),
    USED.counted,
)

register(TAB, __name__, 46, records=True)
