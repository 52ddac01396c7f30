"""The Sheets as read tab: what was read of each line of the oil sheets when the workbook was made."""

from candlecalc.season.hazards import lines_read
from candlecalc.season.tables.labels import OIL_SHEETS
from candlecalc.workbook.cells.values_tab import value, values_tab
from candlecalc.workbook.tabs.registry import register

TAB = values_tab(
    "Sheets as read",
    "Each line of Oil sheets as it stood when this workbook was made, and what was read of it.",
    "sheets_read",
    OIL_SHEETS,
    {
        "text": value("Line as it stood", width=60),
        "place": value("Number", "row"),
        "read": value("Read as", width=50),
        "unread": value("Not read", width=40),
    },
    lines_read,
)
register(TAB, __name__, 52, records=True)
