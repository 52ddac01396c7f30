"""The Start and Changes tabs: what the workbook is, and what was done to it."""

from collections.abc import Sequence

from openpyxl.worksheet.worksheet import Worksheet

from candlecalc import __version__
from candlecalc.season.fields import Field
from candlecalc.season.season import Row
from candlecalc.workbook.cells.entries import entry_format
from candlecalc.workbook.cells.place import FIRST_ROW
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.writing.draft import Draft, band, link, mark_up
from candlecalc.workbook.writing.validation import add_validation

# Of a workbook's layout and formulas: it goes up when either changes. Earlier ones are read, newer ones refused.
FORMAT = 2
FORMAT_WORDS = f"workbook format {FORMAT}"
SUBJECT = "Costs, prices and batches of a candle maker's season"
START = Tab("Start", "control", f"{SUBJECT}, for the maker and a bookkeeper.")
CHANGES = Tab("Changes", "input", "What was done to this workbook, a line each.")

CAUTION = (
    "Hot wax burns and wax can catch fire. Data sheets, local rules and licensed practice come before anything here."
)

STEPS = (
    "1. Type what holds for the season on Settings.",
    "2. Type what you buy on Materials, and what you pour into on Vessels.",
    "3. Type what you sell on Recipes; boxes of candles on Sets.",
    "4. Read what each one costs on Costing.",
    "5. Type where you sell on Places sold, and your prices on Prices.",
    "6. On Batch pick a product and say how many: weigh, count and tick.",
    "7. Look at Checks: it says what does not agree, and what to do.",
)
ABOUT = (
    "Cells with a yellow ground and a brown border are yours to type in, also on Batch and over the heads of Costing.",
    "Everything else is worked out. A result that is blank waits for an entry, or has no use in its row.",
    "What you type is your own, as of the date above; Materials says of a price from whom and when, Vessels how it was measured.",
    "A tab's title leads back here.",
    "Nothing needs installing: these are plain formulas, and their numbers are stored with them.",
    "The functions behind them, for a sheet of your own, are in functions.xlsx, and in words in functions.md.",
    "Money: costs and prices are positive; a loss carries a minus. Shares such as a load are typed as 8 %.",
    "Fragrance load is a share of wax weight, never of the whole, unless a head says of candle.",
    "Making cost is materials, paid work and production overhead: for stock and books. Full cost adds your own time and running costs: for prices.",
    CAUTION,
)  # fmt: skip


def write_start(draft: Draft, tabs: Sequence[Tab]) -> None:
    """`tabs` are those that Start leads to, in order."""
    settings = draft.season.settings
    sheet = draft.tab(START, portrait=True)
    for letter, width in zip("ABC", (30, 16, 84), strict=True):
        sheet.column_dimensions[letter].width = width
    facts = [
        ("Maker", settings["maker"]), ("Place", settings["place"]), ("Season", settings["season"]),
        ("First day", settings["first_day"]), ("Last day", settings["last_day"]),
        ("Currency", settings["currency"]), ("Made by", f"candlecalc {__version__}, {FORMAT_WORDS}"),
        ("Dated", draft.dated),
    ]  # fmt: skip
    row = 4
    for label, value in facts:
        draft.put(sheet.cell(row, 1), label, "label")
        draft.put(sheet.cell(row, 2), value, "strong", "date" if "day" in label or label == "Dated" else "text")
        row += 1
    row = _paragraph(draft, sheet, row + 1, "What to do", STEPS)
    row = _paragraph(draft, sheet, row + 1, "Good to know", ABOUT)
    row = _paragraph(draft, sheet, row + 1, "The tabs", ())
    for tab in tabs:
        link(draft, sheet.cell(row, 1), tab.title, tab.title)
        draft.put(sheet.cell(row, 2), tab.kind, "label")
        draft.put(sheet.cell(row, 3), tab.purpose, "note")
        row += 1
    sheet.print_area = f"A1:C{row - 1}"


def _paragraph(draft: Draft, sheet: Worksheet, row: int, head: str, words: Sequence[str]) -> int:
    band(draft, sheet, row, head, "ABC")
    for step, line in enumerate(words, start=1):
        draft.put(sheet.cell(row + step, 1), line, "label")
    return row + len(words) + 1


CHANGE_FIELDS = (
    Field("date", "Date", "the day of the change", date=True),
    Field("change", "What was changed", "a formula, a column, a unit: what was done, and why", longest=200),
    Field("by", "By", "who changed it"),
)
CHANGE_LINES, LINES_LEFT = 40, 20


def write_changes(draft: Draft) -> None:
    """A log for whoever changes the workbook: that of the one it was made from, and a line on how it was made."""
    sheet = draft.tab(CHANGES, portrait=True)
    lines = [*draft.before.log, _made(draft)]
    last = FIRST_ROW + max(CHANGE_LINES, len(lines) + LINES_LEFT) - 1
    for letter, field, width in zip("ABC", CHANGE_FIELDS, (14, 64, 24), strict=True):
        draft.put(sheet[f"{letter}2"], "entry", "mark")
        draft.put(sheet[f"{letter}{FIRST_ROW - 1}"], field.head, "head")
        sheet.column_dimensions[letter].width = width
        for row in range(FIRST_ROW, last + 1):
            value = lines[row - FIRST_ROW][field.key] if row < FIRST_ROW + len(lines) else None
            draft.put(sheet[f"{letter}{row}"], value, "entry", entry_format(field))
        add_validation(draft, sheet, field, f"{letter}{FIRST_ROW}:{letter}{last}")
    mark_up(sheet, "Changes_list", [field.head for field in CHANGE_FIELDS], last)
    sheet.freeze_panes, sheet.print_area = f"B{FIRST_ROW}", f"A1:F{last}"
    sheet.print_title_rows = f"1:{FIRST_ROW - 1}"


def _made(draft: Draft) -> Row:
    source = f" from {draft.before.name}" if draft.before.name else ""
    return {"date": draft.dated, "change": f"made by candlecalc {__version__}{source}", "by": "candlecalc"}
