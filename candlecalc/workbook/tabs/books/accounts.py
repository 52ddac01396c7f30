"""The Accounts tab: the bookkeeper's numbers, and accounts of the maker's own."""

from candlecalc.season.tables.books import ACCOUNTS
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import Above, Results, written
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

# Those that are not on Chart, numbered down the list.
OWN = written(
    '{above}+IF({ready}="",0,ISERROR(MATCH({account},{chart},0))*1)',
    above=Above("nth_own"),
    ready="ready",
    account="account",
    chart=Results("chart", "account"),
)
TAB = entry_tab(ACCOUNTS, {"nth_own": look("Accounts of your own so far", OWN, "row", needs=(), width=8)})
register(TAB, __name__, 30, records=True)
