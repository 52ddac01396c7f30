"""The Label texts tab: what stands on labels, in the maker's words or ours, and what of it is confirmed."""

from candlecalc.season.tables.labels import LABELS
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import Own, Whole, as_text, at, row_in, text, written
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

OURS = ("ready", "ours_row")
# Of burn hours the code is a test: its hours for the label, once there are any.
HOURS = at("test_results", "label_hours", row_in("burn_tests", "code", ready=False))
OF_TEST = written('IFERROR(REPT("Burns for about "&{hours}&" hours, as tested ("&{code}&").",COUNT({hours})),"")', hours=HOURS, code="code")  # fmt: skip
# Words in another language go by code and language.
LANGUAGE = written('REPT(" "&{it},({it}<>"")*({it}<>"en"))', it="language")
OUR_WORDS = written(
    'IF({part}="burn hours",{of_test},IF({row}="","",{ours}))',
    part="part",
    of_test=OF_TEST,
    row="ours_row",
    ours=as_text(at("our_texts", "text", "ours_row")),
)

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
        "ours": look("Our words", OUR_WORDS, needs=("ready", "code"), width=60),
        "read": look("How ours were read", as_text(at("our_texts", "how_read", "ours_row")), needs=OURS, width=18),
        "ours_row": look(
            "Row on Our texts",
            written(
                'IFERROR(MATCH({code}&{language},{codes},0),"")',
                code=Own("code"),
                language=LANGUAGE,
                codes=Whole("our_texts", "code"),
            ),
            "row",
            needs=("ready", "code"),
        ),
    },
    results_printed=True,
)
register(TAB, __name__, 30, records=True)
