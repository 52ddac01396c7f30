"""The Papers tab: the label sheets that labels are printed on, each described once."""

from candlecalc.season.tables.labels import PAPERS
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

TAB = entry_tab(PAPERS)
register(TAB, __name__, 40, records=True)
