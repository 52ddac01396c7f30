"""The Imports tab: which of a file's columns is which of ours, and how it writes dates, numbers and words."""

from collections.abc import Iterable

from candlecalc.season.tables.imports import IMPORTS
from candlecalc.workbook.cells.checks import ANYTHING, Rows, WorkbookCheck, words_in
from candlecalc.workbook.cells.layout import FIRST_ROW, Plan
from candlecalc.workbook.cells.references import Results, written
from candlecalc.workbook.cells.table_tab import entry_tab, words_column
from candlecalc.workbook.tabs.registry import register

SAID = written(
    'REPT("Goes into: choose from the list",({into}<>"")*ISERROR(MATCH({into},{known},0)))',
    into="into",
    known=Results("import_columns", "into"),
)

TAB = entry_tab(IMPORTS, also={"said": words_column("Look at", SAID)})


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    words = plan.layouts[IMPORTS.key].results("said")
    name = "Imports: each line goes into a column of ours"
    yield WorkbookCheck(
        name, TAB.title, words_in(words), "see What to do beside the line", rows=Rows(words, ANYTHING, FIRST_ROW)
    )


register(TAB, __name__, 80, checks=checks, records=True)
