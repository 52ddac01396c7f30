"""The Used in order tab: what went of each material by day, and what that cost."""

from candlecalc.season.tables.stock import POURS
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import to_date, written
from candlecalc.workbook.cells.stock_card import NUMBERED, went_columns
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.stock.used import FROM_COUNTS
from candlecalc.workbook.tabs.stock.used import TAB as USED

SHORT = to_date(written("({gone}>{came})", gone="gone", came="came"), "short", "thing")

TAB = lines_tab(
    "Used in order",
    "working",
    "What went of each material, by day, and what it cost.",
    "card",
    POURS,
    {
        **went_columns("used", "lots", FROM_COUNTS),
        "short": look("Lines that took more than there was, to date", SHORT, "row", needs=NUMBERED, width=8),
    },
    USED.counted,
)

register(TAB, __name__, 46, records=True)
