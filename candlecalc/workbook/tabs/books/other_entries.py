"""The Other entries tab: what no other tab has, as a debit and a credit."""

from collections.abc import Iterable

from candlecalc.season.tables.books import ENTRIES
from candlecalc.workbook.cells.checks import ANYTHING, Rows, WorkbookCheck, words_in
from candlecalc.workbook.cells.layout import FIRST_ROW, Plan
from candlecalc.workbook.cells.references import Results, Whole, written
from candlecalc.workbook.cells.table_tab import entry_tab, words_column
from candlecalc.workbook.tabs.registry import register


def _unknown(side: str) -> str:
    """What is said where an account is on neither list."""
    there = f"ISERROR(MATCH({{{side}}},{{chart}},0))*ISERROR(MATCH({{{side}}},{{own}},0))"
    return f'REPT("{side.capitalize()} account: it is on neither Chart nor Accounts; choose one",{there})'


SAID = written(
    f'IF({{ready}}="","",{_unknown("debit")}&{_unknown("credit")}'
    '&REPT("Both accounts are the same: choose another",{debit}={credit}))',
    ready="ready",
    debit="debit",
    credit="credit",
    chart=Results("chart", "account"),
    own=Whole("accounts", "account"),
)
TAB = entry_tab(ENTRIES, also={"said": words_column("Look at", SAID)})


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    words = plan.layouts[ENTRIES.key].results("said")
    name, mend = "Other entries: both accounts are known", "see What to do beside the entry"
    yield WorkbookCheck(name, TAB.title, words_in(words), mend, rows=Rows(words, ANYTHING, FIRST_ROW), rested_on=True)


register(TAB, __name__, 20, checks=checks, records=True)
