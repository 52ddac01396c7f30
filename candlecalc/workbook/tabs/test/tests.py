"""The Burn tests tab: each candle that is burnt, and what was looked at from lighting to cold."""

from candlecalc.season.tables.burning import TESTS
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import written
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there
from candlecalc.workbook.tabs.registry import register

WAITS = ("product", "recipes"), ("vessel", "vessels"), ("wax", "materials"), ("wick", "materials")
# What is typed for a test that the Batch log and Taken out have not.
TYPED = {"typed_cost": look("Cost typed, {money}", written("SUM({cost})", cost="cost"), "money")}
TAB = entry_tab(TESTS, TYPED, waits={key: not_ready_there(table, key) for key, table in WAITS})
register(TAB, __name__, 40, records=True)
