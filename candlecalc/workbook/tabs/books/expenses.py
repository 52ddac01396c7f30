"""The Expenses tab: what the business paid besides materials."""

from candlecalc.season.tables.books import CASH, EXPENSES
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import Named, in_coins, written
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

WITHIN = Check(
    "N(tax)<=N(amount)", "tax to claim back that is more than the amount", "type the amount with all tax", "tax"
)
# By the cash method a bill counts once it is paid.
PAID = written('IF({paid}="","",{paid})', paid="paid_on")
COUNTS = written(f'IF({{books}}="{CASH}",{{paid}},{{date}})', books=Named("books"), paid=PAID, date="date")
NET = in_coins(written("{amount}-SUM({tax})", amount="amount", tax="tax"))

TAB = entry_tab(
    EXPENSES,
    {
        "net": look("Cost, {money}", NET, "money_strong"),
        "counts": look("Counts in the books on", COUNTS, "date"),
    },
    checks=(WITHIN,),
)
register(TAB, __name__, 10, records=True)
