"""The Label texts tab: what stands on labels, in the maker's words or ours, and what of it is confirmed."""

from candlecalc.season.tables.labels import LABELS
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import Own, Whole, as_text, at, text, written
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

OURS = ("ready", "ours_row")

TAB = entry_tab(
    LABELS,
    {
        "shown": look(
            "On labels", written('CHOOSE(1+({own}=""),{own},{ours})', own="text", ours=as_text("ours")), width=60
        ),
        "state": look(
            "Until it is confirmed",
            written('REPT({proof},{day}="")', proof=text("PROOF stands across the label"), day="confirmed_on"),
            width=30,
        ),
        "ours": look("Our words", as_text(at("our_texts", "text", "ours_row")), needs=OURS, width=60),
        "read": look("How ours were read", as_text(at("our_texts", "how_read", "ours_row")), needs=OURS, width=18),
        "ours_row": look(
            "Row on Our texts",
            written('IFERROR(MATCH({code},{codes},0),"")', code=Own("code"), codes=Whole("our_texts", "code")),
            "row",
            needs=("ready", "code"),
        ),
    },
    results_printed=True,
)
register(TAB, __name__, 30, records=True)
