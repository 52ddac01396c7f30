"""The Weights tab: what packages of a batch weigh."""

from candlecalc.season.tables.labels import WEIGHTS
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

TAB = entry_tab(WEIGHTS)
register(TAB, __name__, 60, records=True)
