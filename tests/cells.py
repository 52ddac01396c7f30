"""How many formulas a workbook has on each tab, beside what DEVELOPERS.md allows it."""

import datetime
import re
from pathlib import Path

from candlecalc.season.presets import blank_settings
from candlecalc.season.season import Season, empty
from candlecalc.season.tables import TABLES
from candlecalc.workbook import book

DEVELOPERS = Path(__file__).parent.parent / "DEVELOPERS.md"
DAY = datetime.date(2027, 1, 1)
USUAL = {key: table.usual_rows for key, table in TABLES.items()}
# 60 products, 200 materials, 400 purchases, 400 batches with 2,400 lines on Used.
ROWS = {"usual": USUAL, "largest": USUAL | {"purchases": 400, "pours": 400}}
LINE = re.compile(r"\| (?P<tab>[^|]+?) \| (?P<usual>[\d,]+) \| (?P<largest>[\d,]+) \|")
# Estimates for the tabs that are still to come: rows by formulas a row, for the usual workbook and for the largest.
TO_COME = {
    "to come: Sales, 1,000 and 2,000 lines": (5_000, 10_000),
    "to come: market lines, 250 and 500 lines, and sales in one list": (3_750, 7_500),
    "to come: candles sold by month and place": (5_640, 5_640),
    "to come: market days, the day's pours": (650, 650),
    "to come: Plan": (2_440, 2_440),
    "to come: months, tax, the season's report": (1_100, 1_100),
    "to come: expenses, other entries, books": (1_500, 1_500),
}
KEPT_BACK = 22_500  # 15 % of the most


def blank() -> Season:
    return empty(blank_settings("us", DAY) | {"records": "yes", "stock": "average"})


def counted(rows_of: dict[str, int]) -> dict[str, int]:
    """The formulas of each tab of a workbook with so many rows."""
    drafted = book.drafted(blank(), DAY, rows_of=rows_of)
    return {sheet.title: sum(cell.data_type == "f" for cell in sheet._cells.values()) for sheet in drafted.book}


def allowed() -> dict[str, dict[str, int]]:
    """What DEVELOPERS.md says of each tab."""
    found = LINE.finditer(DEVELOPERS.read_text())
    return {line["tab"]: {name: int(line[name].replace(",", "")) for name in ROWS} for line in found}
