"""The Complaints tab: what buyers brought back, by batch."""

from candlecalc.season.tables.sales import COMPLAINTS
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import Whole, at, written
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there
from candlecalc.workbook.tabs.registry import Shown, register

BATCH_TYPED = ("ready", "batch")
ALIKE = written("COUNTIF({batches},{batch})", batches=Whole(COMPLAINTS.key, "batch"), batch="batch")
ROW = written("IFERROR(MATCH({batch},{batches},0),0)", batch="batch", batches=Whole("pours", "batch"))
GOOD = written("IF({row}=0,0,{good})", row="batch_row", good=at("pours", "good", "batch_row"))

TAB = entry_tab(
    COMPLAINTS,
    {
        "of_batch": look("Complaints of this batch", ALIKE, "pieces", needs=BATCH_TYPED),
        "good": look("Good ones in it", GOOD, "pieces", needs=BATCH_TYPED),
        "batch_row": look("Batch, row on the log", ROW, "row", needs=BATCH_TYPED, width=8),
    },
    checks=(
        Check('(batch="")+(N(batch_row)>0)>0', "batch that is not on the Batch log", "see its label again", "batch"),
        Check(
            '(batch="")+(N(of_batch)<=1)>0',
            "batch with more than one complaint",
            "Trace shows what went into it, and what else the same lots went into",
            "batch",
            unlikely=True,
        ),
        Check('done<>""', "complaint that is open", "type what you did when it is settled", "done", unlikely=True),
    ),
    waits={"product": not_ready_there("recipes", "product")},
    results_printed=True,
)

SHOWN = ("date", "product", "batch", "what", "done", "of_batch", "good")
register(TAB, __name__, 78, shown=Shown("complaints", SHOWN), records=True)
