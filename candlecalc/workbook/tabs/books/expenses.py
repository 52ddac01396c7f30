"""The Expenses tab: what the business paid besides materials."""

from candlecalc.season.tables.books import EXPENSES
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

WITHIN = Check(
    "N(tax)<=N(amount)", "tax to claim back that is more than the amount", "type the amount with all tax", "tax"
)

register(entry_tab(EXPENSES, checks=(WITHIN,)), __name__, 10, records=True)
