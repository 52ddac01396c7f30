"""Writing a tab: cells by named style, entries with their checks, what every tab has alike."""

import datetime
from dataclasses import dataclass, field
from typing import Any

from openpyxl import Workbook
from openpyxl.cell.cell import Cell
from openpyxl.formatting.rule import Rule
from openpyxl.utils import get_column_letter
from openpyxl.workbook.defined_name import DefinedName
from openpyxl.worksheet.datavalidation import DataValidation
from openpyxl.worksheet.hyperlink import Hyperlink
from openpyxl.worksheet.table import Table, TableStyleInfo
from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.season.fields import NAME_LENGTH, Field, Value
from candlecalc.season.season import Season
from candlecalc.season.tables import TABLES
from candlecalc.term import LARGEST
from candlecalc.workbook import styles
from candlecalc.workbook.columns import Column
from candlecalc.workbook.entries import FIRST_SERIAL, LAST_SERIAL, bad, entry_format
from candlecalc.workbook.place import FIRST_ROW, Place, Plan, in_row
from candlecalc.workbook.printed import paper, print_list, widths
from candlecalc.workbook.references import own
from candlecalc.workbook.table_tab import Mend, Tab, TableTab, Warnings, short

HEAD_ROW = FIRST_ROW - 1
HEAD_LINES = 4
WIDTH_OF_PURPOSE = 110


@dataclass
class Draft:
    """A workbook being written: the book, the season in it, and what formulas must know."""

    book: Workbook
    season: Season
    plan: Plan
    formats: dict[str, str]
    dated: datetime.date
    picked: tuple[str, float] | None = None  # what Batch opens with
    styles: dict[tuple[str, str, bool], str] = field(default_factory=dict)  # by what was asked for

    def style(self, look: str, number: str = "text", wrap: bool = False) -> str:
        asked = (look, number, wrap)
        if asked not in self.styles:
            self.styles[asked] = styles.named_style(self.book, look, number, self.formats, wrap)
        return self.styles[asked]

    def put(self, cell: Cell, value: object, look: str, number: str = "text", wrap: bool = False) -> Cell:
        """Write one cell. A maker's text stays text, whatever it starts with."""
        cell.style = self.style(look, number, wrap)
        cell.value = value
        if isinstance(value, str) and not isinstance(value, Formula):
            cell.data_type = "s"
        return cell

    def name(self, name: str, sheet: str, cell: str) -> None:
        """Give a cell a name that formulas use."""
        quoted = f"'{sheet}'" if " " in sheet else sheet
        absolute = "".join(f"${part}" for part in _split(cell))
        self.book.defined_names[name] = DefinedName(name, attr_text=f"{quoted}!{absolute}")

    def tab(self, tab: Tab, *, portrait: bool = False) -> Worksheet:
        """A new tab with its first row: title, kind, purpose, the master check."""
        sheet: Worksheet = self.book.create_sheet(tab.title)
        sheet.sheet_properties.tabColor = styles.TAB_COLOURS[tab.kind]
        self.put(sheet["A1"], tab.title, "title")
        sheet["A1"].hyperlink = Hyperlink(ref="A1", location="Start!A1", tooltip="to Start")
        sheet["A1"].style = self.style("title")  # a link of openpyxl's brings a look of its own
        sheet.row_dimensions[1].height = 26
        # An input tab has the word entry in its second row, so its master check stands in the first.
        self.put(sheet["C1" if tab.kind == "input" else "B1"], f"{tab.purpose} [{tab.kind}]", "purpose")
        if tab.title != "Checks":  # there it is worked out
            self._master(sheet, tab.kind)
        paper(sheet, str(self.season.settings["paper"]), portrait)
        lock(sheet)
        return sheet

    def _master(self, sheet: Worksheet, kind: str) -> None:
        """The master check, near the title."""
        cell = sheet["B1" if kind == "input" else "A2"]
        self.put(cell, Formula("=master_check"), "verdict", "words")
        turns_red(sheet, cell.coordinate, f'{cell.coordinate}<>"Numbers agree"')


class Formula(str):
    """A text that is meant as a formula."""

    __slots__ = ()


def _split(cell: str) -> tuple[str, str]:
    letters = cell.rstrip("0123456789")
    return letters, cell[len(letters) :]


def lock(sheet: Worksheet) -> None:
    """Keep formulas from being typed over; no password, and columns may be widened."""
    sheet.protection.sheet = True
    sheet.protection.formatColumns = False
    sheet.protection.formatRows = False


def turns_red(sheet: Worksheet, cells: str, test: str) -> None:
    """Show cells as a check that fails while a test holds."""
    sheet.conditional_formatting.add(cells, Rule(type="expression", dxf=styles.failing(), formula=[test]))


def write_table(draft: Draft, tab: TableTab) -> Worksheet:
    """Write a list: heads, entries, formulas, drop-downs, checks and print settings."""
    place = draft.plan.places[tab.key]
    sheet = draft.tab(tab)
    heads = _write_heads(draft, sheet, tab)
    _write_rows(draft, sheet, tab, place)
    for each in tab.fields:
        _check_entries(draft, sheet, each, place, tab)
    for key, column in tab.columns.items():
        if isinstance(column, (Mend, Warnings)):
            letter = place.letters[key]
            turns_red(sheet, f"{letter}{FIRST_ROW}:{letter}{place.last_row}", f'{letter}{FIRST_ROW}<>""')
    mark_up(sheet, tab.title.replace(" ", "_") + "_list", heads, place.last_row)
    sheet.freeze_panes = f"B{FIRST_ROW}"
    names = len(TABLES[tab.key].alone) if tab.key in TABLES else 1
    print_list(sheet, _printed(sheet, tab), _last_printed(draft, tab, place), names)
    return sheet


def _printed(sheet: Worksheet, tab: TableTab) -> int:
    """How many columns are printed: those worth paper, and as many more as the line under the title needs."""
    count = tab.printed
    while count < len(tab.columns) and sum(widths(sheet, count)) < WIDTH_OF_PURPOSE:
        count += 1
    return count


def _last_printed(draft: Draft, tab: TableTab, place: Place) -> int:
    """Blank rows at the end are not worth paper: a few are printed to write in."""
    used = int(max(draft.season.tables[tab.typed_on].index, default=-1)) + 1
    return min(place.last_row, FIRST_ROW + used + 4)


def _write_heads(draft: Draft, sheet: Worksheet, tab: TableTab) -> list[str]:
    heads = []
    for number, (key, column) in enumerate(tab.columns.items(), start=1):
        head = draft.plan.head(column.head)
        shown = format_of(column)
        draft.put(sheet.cell(HEAD_ROW, number), head, "head", "text" if shown in styles.LEFT else "row", wrap=True)
        if isinstance(column, Field):
            draft.put(sheet.cell(2, number), "entry", "mark", "text" if shown in styles.LEFT else "row")
        room = 17 if number == 2 and tab.kind == "input" else 0  # for the master check
        sheet.column_dimensions[get_column_letter(number)].width = max(room, _width(key, column, shown))
        heads.append(head)
    sheet.row_dimensions[HEAD_ROW].height = 15.5 * HEAD_LINES
    return heads


def format_of(column: Field | Column) -> str:
    return entry_format(column) if isinstance(column, Field) else column.format


def _width(key: str, column: Field | Column, shown: str) -> float:
    if isinstance(column, Field) and (column.name or column.of):
        return NAME_LENGTH + 3
    head = column.head.replace("{temperature}", "F").replace("{weight}", "oz").replace("{money}", "USD")
    return max(column.width or styles.WIDTHS.get(shown, 10), _head_width(head))


def _head_width(head: str) -> float:
    """The narrowest column that shows a head whole, in at most so many lines."""
    words = head.split()
    longest = max(len(word) for word in words)
    while _lines(words, longest) > HEAD_LINES:
        longest += 1
    return longest * 1.05 + 2.2


def _lines(words: list[str], width: int) -> int:
    """Lines that words take where so many characters stand in one."""
    lines, used = 1, 0
    for word in words:
        if used and used + 1 + len(word) > width:
            lines, used = lines + 1, 0
        used += len(word) + (used > 0)
    return lines


def _write_rows(draft: Draft, sheet: Worksheet, tab: TableTab, place: Place) -> None:
    typed = dict(draft.season.rows(tab.key)) if tab.key in draft.season.tables else {}
    for number, (key, column) in enumerate(tab.columns.items(), start=1):
        entry = isinstance(column, Field)
        strong = number == 1 and not entry
        look = "entry" if entry else "strong_result" if strong or format_of(column).endswith("strong") else "result"
        style = draft.style(look, format_of(column))
        text = "" if entry else column.formula(draft.plan, place)  # type: ignore[union-attr]
        array = None
        for row in range(FIRST_ROW, place.last_row + 1):
            cell = sheet.cell(row, number)
            # One style array down a column: looked up once.
            if array is None:
                cell.style = style
                array = cell._style
            else:
                cell._style = array
            if entry:
                _type_in(cell, typed.get(row - FIRST_ROW, {}).get(key))
            else:
                cell.value = in_row(text, row)
    for row in range(FIRST_ROW, place.last_row + 1):
        sheet.row_dimensions[row].height = 18


def _type_in(cell: Cell, value: Value) -> None:
    if value is None:
        return
    cell.value = int(value) if isinstance(value, float) and value == int(value) else value
    if isinstance(value, str):
        cell.data_type = "s"


def _check_entries(draft: Draft, sheet: Worksheet, field: Field, place: Place, tab: TableTab) -> None:
    letter = place.letters[field.key]
    cells = f"{letter}{FIRST_ROW}:{letter}{place.last_row}"
    add_validation(draft, sheet, field, cells)
    own_cells = {each.key: own(each.key)(draft.plan, place) for each in tab.fields}
    test = in_row(bad(field, own_cells, draft.plan), FIRST_ROW)
    first, last = (in_row(own_cells[tab.fields[at].key], FIRST_ROW) for at in (0, -1))
    turns_red(sheet, cells, f"AND(COUNTA({first}:{last})>0,{test})")


def add_validation(draft: Draft, sheet: Worksheet, field: Field, cells: str) -> None:
    """What the spreadsheet lets a maker type, with a prompt that says what is meant."""
    rule = DataValidation(allow_blank=True, showErrorMessage=True, showInputMessage=True, **_rule(draft, field))
    rule.promptTitle = draft.plan.head(short(field.head))[:32]
    rule.prompt = draft.plan.head(field.help)[:255]
    rule.errorTitle = "Not taken"
    rule.error = f"{draft.plan.head(short(field.head))} takes {allowed(draft, field)}."[:255]
    rule.add(cells)
    sheet.add_data_validation(rule)


def allowed(draft: Draft, field: Field) -> str:
    """What a cell takes, in words and in the workbook's own units."""
    if not field.term:
        return field.allowed()
    low, high = draft.plan.measures.limits(field.term)
    if low <= -LARGEST:
        return "a number"
    percent = field.term.unit.startswith("of ")
    kind = "a percentage" if percent else "a whole number" if field.term.whole else "a number"
    first, last = (f"{limit * 100:g} %" if percent else f"{limit:g}" for limit in (low, high))
    end = "" if high >= LARGEST else f" to {last}"
    return f"{kind}, more than {first}{end}" if field.term.above else f"{kind}, {first}{end or ' or more'}"


def _rule(draft: Draft, field: Field) -> dict[str, Any]:
    if field.term:
        low, high = draft.plan.measures.limits(field.term)
        kind = "whole" if field.term.whole else "decimal"
        if field.term.above and high >= LARGEST:
            return {"type": kind, "operator": "greaterThan", "formula1": f"{low:.15g}"}
        if high >= LARGEST:
            return {"type": kind, "operator": "greaterThanOrEqual", "formula1": f"{max(low, -1e12):.15g}"}
        return {"type": kind, "operator": "between", "formula1": f"{low:.15g}", "formula2": f"{high:.15g}"}
    if field.choices:
        return {"type": "list", "formula1": f'"{",".join(field.choices)}"'}
    if field.of:
        return {"type": "list", "formula1": draft.plan.places["lists"].range(list_key(field))}
    if field.date:
        return {"type": "date", "operator": "between", "formula1": FIRST_SERIAL, "formula2": LAST_SERIAL}
    longest = NAME_LENGTH if field.name else field.longest
    return {"type": "textLength", "operator": "lessThanOrEqual", "formula1": str(longest)}


def list_key(field: Field) -> str:
    """The column on Lists that holds the names a field may take."""
    return f"{field.of} {field.kind}".strip()


def mark_up(sheet: Worksheet, name: str, heads: list[str], last_row: int, first_row: int = HEAD_ROW) -> None:
    """Mark a list as a table, for screen readers and for who takes the data on."""
    table = Table(displayName=name, ref=f"A{first_row}:{get_column_letter(len(heads))}{last_row}")
    table.tableStyleInfo = TableStyleInfo(name=None, showRowStripes=False)
    table._initialise_columns()
    for column, head in zip(table.tableColumns, heads, strict=True):
        column.name = head
    table.autoFilter = None
    sheet.add_table(table)


def band(draft: Draft, sheet: Worksheet, row: int, words: str, letters: str) -> None:
    """The heading of a section, its ground under all of the columns."""
    for letter in letters:
        draft.put(sheet[f"{letter}{row}"], words if letter == letters[0] else None, "section")


def link(draft: Draft, cell: Cell, title: str, text: str) -> None:
    """A link to another tab."""
    draft.put(cell, text, "link")
    cell.hyperlink = Hyperlink(ref=cell.coordinate, location=f"'{title}'!A1", display=text)
    cell.style = draft.style("link")
