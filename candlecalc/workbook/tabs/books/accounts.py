"""The Accounts tab: the bookkeeper's numbers, and accounts of the maker's own."""

from candlecalc.season.tables.books import ACCOUNTS
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

register(entry_tab(ACCOUNTS), __name__, 30, records=True)
