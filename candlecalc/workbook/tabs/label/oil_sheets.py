"""The Oil sheets tab: section 3 of each oil's and dye's data sheet, and beside each line what was read of it."""

from collections.abc import Iterable

from candlecalc.season.oils import COLUMNS
from candlecalc.season.tables.labels import OIL_SHEETS
from candlecalc.workbook.cells.checks import ANYTHING, Rows, WorkbookCheck, words_in
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import Plan
from candlecalc.workbook.cells.references import Named, Results, as_text, at, joined, row_in, text, written
from candlecalc.workbook.cells.table_tab import entry_tab, words_column
from candlecalc.workbook.tabs.registry import Shown, register

MAKE_IT_NEW = "make the workbook new with candlecalc new"
# Whole numbers alone stand in it: their text is the same in any locale.
SAMPLE = written("ROUND(N({sample})*{parts},0)", sample="sample", parts=Named("load_parts"))
LINE = joined('&"|"&', ["material", *COLUMNS, SAMPLE])
# Compared, not matched: words may be long, and hold what a look-up takes for a wild card.
PLACE = written(
    'IFERROR(IF({ready}=1,SUMPRODUCT(({texts}={line})*{places}),""),"")',
    ready="ready",
    texts=Results("sheets_read", "text"),
    line="line",
    places=Results("sheets_read", "place"),
)
UNREAD = written(
    'IFERROR(CHOOSE(1+({place}=0),REPT("Not read: "&{unread},{unread}<>""),{new}),"")',
    place="place",
    unread=at("sheets_read", "unread", "place"),
    new=text(f"Typed or changed since it was read: {MAKE_IT_NEW}"),
)

TAB = entry_tab(
    OIL_SHEETS,
    {
        "read": look("Read as", as_text(at("sheets_read", "read", "place")), needs=("place",), blank_if=(written("{place}=0", place="place"),), width=50),
        "place": look("Row on Sheets as read", PLACE, "row", needs=()),
        "line": look("Line as it stands", LINE, width=40),
        "material_row": look("Material, row", row_in("materials", "material", ready=False), "row", width=8),
    },
    also={"unread": words_column("Not read", UNREAD, width=42)},
    results_printed=True,
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    layout = plan.layouts["oil_sheets"]
    unread = layout.results("unread")
    mend = "see the words left of the row: what is not read is not counted"
    rows = Rows(unread, ANYTHING, layout.first_row)
    yield WorkbookCheck("Oil sheets: every line is read", TAB.title, words_in(unread), mend, rows=rows, unlikely=True)


SHOWN = ("material", "substance", "concentration", "classes", "specifics", "read", "unread")
register(TAB, __name__, 10, checks=checks, shown=Shown("sheets", SHOWN), records=True)
