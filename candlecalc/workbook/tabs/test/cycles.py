"""The Burn cycles tab: a line for each burn of a test."""

from collections.abc import Iterable

from candlecalc.season.tables.burning import BURNS
from candlecalc.workbook.cells.checks import ANYTHING, Rows, WorkbookCheck, words_in
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import FIRST_ROW, Plan
from candlecalc.workbook.cells.references import Given, Results, line_key, row_in, written
from candlecalc.workbook.cells.table_tab import entry_tab, words_column
from candlecalc.workbook.tabs.registry import register


def _unknown(sign: Given) -> str:
    return f'REPT("Seen: choose a sign from the list",({{{sign}}}<>"")*ISERROR(MATCH({{{sign}}},{{signs}},0)))'


# One column says what is wrong with a burn that no single entry is: a column for each would be 400 cells more.
SAID = written(
    f'IF({{ready}}="","",IFERROR(REPT("After: weighs no less than before; read the scale again",{{after}}>={{before}})'
    f'&{_unknown("seen")}&{_unknown("seen_too")},""))',
    ready="ready",
    before="before",
    after="after",
    seen="seen",
    seen_too="seen_too",
    signs=Results("signs", "sign"),
)

TAB = entry_tab(
    BURNS,
    {"number": look("Line's number", line_key(row_in("burn_tests", "test", ready=False), "date"), "row", width=16)},
    also={"said": words_column("Look at", SAID)},
)


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    words = plan.layouts["burn_cycles"].results("said")
    name = "Burns: each weighs less after it, and what was seen is a sign"
    mend = "see What to do beside the burn"
    yield WorkbookCheck(name, TAB.title, words_in(words), mend, rows=Rows(words, ANYTHING, FIRST_ROW), rested_on=True)


register(TAB, __name__, 50, checks=checks, records=True)
