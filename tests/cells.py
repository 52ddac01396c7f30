"""How many formulas a workbook has on each tab, beside what DEVELOPERS.md allows it."""

import datetime
import re
from pathlib import Path

from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.season.presets import blank_settings
from candlecalc.season.season import Season, empty
from candlecalc.season.tables import TABLES
from candlecalc.workbook import book
from candlecalc.workbook.writing.listed import NOT_LISTED

DEVELOPERS = Path(__file__).parent.parent / "DEVELOPERS.md"
DAY = datetime.date(2027, 1, 1)
USUAL = {key: table.usual_rows for key, table in TABLES.items()}
# 60 products, 200 materials; and a full year of 240 purchases, 200 batches, 900 lines of sales, 200 market lines.
FULL = {"purchases": 240, "pours": 200, "sales": 900, "market_lines": 200}
ROWS = {"usual": USUAL, "largest": USUAL | FULL}
LINE = re.compile(r"\| (?P<tab>[^|]+?) \| (?P<usual>[\d,]+) \| (?P<largest>[\d,]+) \|")
KEPT_BACK = 37_500  # 15 % of the most: for what nobody thought of


def blank() -> Season:
    return empty(blank_settings("us", DAY) | {"records": "yes", "stock": "average"})


def counted(rows_of: dict[str, int]) -> dict[str, int]:
    """The formulas of each tab of a workbook with so many rows."""
    drafted = book.drafted(blank(), DAY, rows_of=rows_of)
    return {sheet.title: formulas(drafted, sheet) for sheet in drafted.book}


def formulas(drafted: book.Drafted, sheet: Worksheet) -> int:
    """The formulas of one tab."""
    listed = drafted.lists.get(sheet.title, NOT_LISTED)
    own = sum(cell.data_type == "f" for cell in sheet._cells.values())
    return own + len(listed.rows) * sum(down.formula != "" for down in listed.columns.values())


def allowed() -> dict[str, dict[str, int]]:
    """What DEVELOPERS.md says of each tab."""
    found = LINE.finditer(DEVELOPERS.read_text())
    return {line["tab"]: {name: int(line[name].replace(",", "")) for name in ROWS} for line in found}
