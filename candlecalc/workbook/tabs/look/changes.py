"""The Changes tab: what was done to the workbook."""

from candlecalc import __version__
from candlecalc.season.fields import Field
from candlecalc.season.season import Row
from candlecalc.workbook.cells.entries import entry_format
from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.writing.draft import Draft, mark_up
from candlecalc.workbook.writing.validation import add_validation

TAB = Tab("Changes", "input", "What was done to this workbook, a line each.")
CHANGE_FIELDS = (
    Field("date", "Date", "the day of the change", date=True),
    Field("change", "What was changed", "a formula, a column, a unit: what was done, and why", longest=200),
    Field("by", "By", "who changed it"),
)
CHANGE_LINES, LINES_LEFT = 40, 20


def write(draft: Draft) -> None:
    """A log for whoever changes the workbook: that of the one it was made from, and a line on how it was made."""
    sheet = draft.tab(TAB, portrait=True)
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


register(TAB, __name__, 20, write=write)
