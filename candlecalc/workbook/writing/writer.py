"""Writing a tab that is a list: heads, entries with their checks, formulas, and how it prints."""

from collections.abc import Iterable
from itertools import takewhile

from openpyxl.cell.cell import Cell
from openpyxl.formatting.rule import Rule
from openpyxl.utils import get_column_letter
from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.season.fields import Field, Value
from candlecalc.season.season import Row
from candlecalc.season.tables import TABLES
from candlecalc.workbook.cells import styles
from candlecalc.workbook.cells.columns import Column
from candlecalc.workbook.cells.entries import entry_format
from candlecalc.workbook.cells.layout import FIRST_ROW, HEAD_ROW, OWN_ROW, Layout, in_row
from candlecalc.workbook.cells.references import quoted
from candlecalc.workbook.cells.table_tab import STATUS, WIDTH_OF_NAMES, WIDTH_OF_REFERENCES, TableTab
from candlecalc.workbook.cells.values_tab import ValuesTab
from candlecalc.workbook.cells.words import says
from candlecalc.workbook.writing.draft import Draft, Formula, mark_up, turns_red, unseen_where
from candlecalc.workbook.writing.listed import Listed
from candlecalc.workbook.writing.printed import ROWS_OF_A_PAGE, print_list, widths
from candlecalc.workbook.writing.validation import add_validation

HEAD_LINES = 4
WIDTH_OF_PURPOSE = 110
TITLE_LETTER = 1.45  # of a title, where one digit of the list has room
SPARE = 6  # blank rows to write in


def write_table(draft: Draft, tab: TableTab) -> Worksheet:
    """Write a list: heads, entries, formulas, drop-downs, checks and print settings."""
    layout = draft.plan.layouts[tab.key]
    sheet = draft.tab(tab, purpose=_beside_title(tab))
    heads = _write_heads(draft, sheet, tab)
    _write_rows(draft, sheet, tab, layout)
    for each in tab.fields:
        _check_entries(draft, sheet, tab, each, layout)
    for key, column in tab.columns.items():
        if isinstance(column, Column) and column.is_fault:
            letter = layout.letters[key]
            turns_red(sheet, f"{letter}{FIRST_ROW}:{letter}{layout.last_row}", f'${letter}{FIRST_ROW}<>""')
    if tab.fields:
        _open_to_hands(sheet, layout, tab)
    if OWN_ROW in layout.letters:
        _hide_numbers_of_blank_rows(sheet, tab, layout)
    # What is sorted or filtered is the entries alone: the rest is locked.
    marked = heads[tab.margin :][: len(tab.fields)] or heads[tab.margin :]
    mark_up(sheet, tab.title.replace(" ", "_") + "_list", marked, layout.last_row, left=tab.margin)
    if tab.margin:
        _say_first(draft, sheet, tab, layout)
    sheet.freeze_panes = f"{get_column_letter(tab.margin + 2)}{FIRST_ROW}"
    last_row, to_read = _last_printed(draft, tab, layout), tab.kind != "working"
    print_list(sheet, _printed(sheet, tab), last_row, _names(tab), tab.margin, to_read=to_read)
    return sheet


def _beside_title(tab: TableTab) -> str:
    """The first cell that the title leaves free: a log's first column, of days, is narrower than its title."""
    number, room = tab.margin, 0.0
    for column in list(tab.columns.values())[tab.margin :]:
        if room > len(tab.title) * TITLE_LETTER:
            break
        number, room = number + 1, room + _width(column, format_of(column))
    return f"{get_column_letter(number + 1)}1"


def _names(tab: TableTab) -> int:
    """How many of the first columns name a row; a day from which it holds may stand further on."""
    if tab.key not in TABLES:
        return 1
    table = TABLES[tab.key]
    return max(1, len(list(takewhile(lambda key: key in table.unique, table.keys))))


def _say_first(draft: Draft, sheet: Worksheet, tab: TableTab, layout: Layout) -> None:
    """What to do about the first row that has something, whole, in place of the line that says what the tab is for."""
    words = layout.own_results(STATUS)
    first = f'MATCH("?*",{words},0)'
    told = f'"Row "&({first}+{HEAD_ROW})&": "&INDEX({words},{first})'
    cell = sheet[_beside_title(tab)]
    draft.put(cell, Formula(f"=IFERROR({told},{quoted(draft.line_of(tab))})"), "purpose", "words")
    turns_red(sheet, cell.coordinate, f"ISNUMBER({first})")


def _hide_numbers_of_blank_rows(sheet: Worksheet, tab: TableTab, layout: Layout) -> None:
    """Formulas count on every row's number; a reader needs those of rows that say something."""
    number = layout.letters[OWN_ROW]
    # A locked cell of the row: what is typed may be cut.
    first = "ready" if tab.fields else next(key for key in tab.columns if key not in (STATUS, OWN_ROW))
    name = layout.letters[first]
    cells = f"{number}{FIRST_ROW}:{number}{layout.last_row}"
    unseen_where(sheet, cells, f'${name}{FIRST_ROW}=""')


def _open_to_hands(sheet: Worksheet, layout: Layout, tab: TableTab) -> None:
    """Let entries be sorted, and rule off the rows that are filled and a page of those that are not.

    LibreOffice prints no page on which nothing stands and no line is drawn: lines in the style would be printed
    down to the last row there is room for.
    """
    sheet.protection.sort = sheet.protection.autoFilter = False  # False: not kept from it
    first, last = (layout.letters[tab.fields[at].key] for at in (0, -1))
    cells = f"{first}{FIRST_ROW}:{last}{layout.last_row}"
    names = layout.column(tab.fields[0].key)
    ruled = f"ROW()<=MAX({FIRST_ROW + ROWS_OF_A_PAGE - 1},COUNTA({names})+{HEAD_ROW + SPARE})"
    sheet.conditional_formatting.add(cells, Rule(type="expression", dxf=styles.ruled(), formula=[ruled]))


def _printed(sheet: Worksheet, tab: TableTab) -> int:
    """How many columns are printed: those worth paper, and as many more as the line under the title needs."""
    count = tab.printed
    while count + tab.margin < len(tab.columns) and sum(widths(sheet, count, tab.margin)) < WIDTH_OF_PURPOSE:
        count += 1
    return count


def _last_printed(draft: Draft, tab: TableTab, layout: Layout) -> int:
    """The last row that is printed: the list may grow to twice what it holds, and to a page at least."""
    used = draft.season.tables.room(tab.typed_on)
    return min(layout.last_row, FIRST_ROW + max(2 * used, ROWS_OF_A_PAGE) - 1)


def _write_heads(draft: Draft, sheet: Worksheet, tab: TableTab) -> list[str]:
    heads = []
    for number, column in enumerate(tab.columns.values(), start=1):
        head = draft.plan.head(column.head)
        shown = format_of(column)
        draft.put(sheet.cell(HEAD_ROW, number), head, "head", "text" if shown in styles.LEFT else "row", wrap=True)
        if isinstance(column, Field):
            mark = "needed" if column.required else "entry"
            draft.put(sheet.cell(2, number), mark, "mark", "text" if shown in styles.LEFT else "row")
        sheet.column_dimensions[get_column_letter(number)].width = _width(column, shown)
        heads.append(head)
    sheet.row_dimensions[HEAD_ROW].height = 15.5 * HEAD_LINES
    return heads


def format_of(column: Field | Column) -> str:
    return entry_format(column) if isinstance(column, Field) else column.format


def _width(column: Field | Column, shown: str) -> float:
    if isinstance(column, Field) and (column.name or column.names_from):
        return column.width or (WIDTH_OF_NAMES if column.name else WIDTH_OF_REFERENCES)
    head = column.head.replace("{temperature}", "\u00b0F").replace("{weight}", "oz").replace("{money}", "USD")
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


def _write_rows(draft: Draft, sheet: Worksheet, tab: TableTab, layout: Layout) -> None:
    """What goes down each column, and the cells that hold something of their own."""
    held = dict(enumerate(tab.values(draft.season)) if isinstance(tab, ValuesTab) else _typed(draft, tab))
    rows, columns = range(FIRST_ROW, layout.last_row + 1), {}
    for number, (key, column) in enumerate(tab.columns.items(), start=1):
        as_it_is = isinstance(tab, ValuesTab) or isinstance(column, Field)
        looks = _look(number - tab.margin, key, column), format_of(column)
        columns[number] = draft.down("" if as_it_is else column.formula(draft.plan, layout), *looks)  # type: ignore[union-attr]
        for at, row in held.items() if as_it_is else ():
            if FIRST_ROW + at in rows and row.get(key) is not None:
                cell = sheet.cell(FIRST_ROW + at, number)
                draft.dress(cell, *looks)
                _type_in(cell, row[key])
    draft.lists[tab.title] = Listed(rows, columns)


def _typed(draft: Draft, tab: TableTab) -> Iterable[tuple[int, Row]]:
    return draft.season.rows(tab.key) if tab.key in draft.season.tables else ()


def _look(number: int, key: str, column: Field | Column) -> str:
    if isinstance(column, Field):
        return "list_entry"
    if key == OWN_ROW:
        return "note"
    if column.is_fault or column.format in ("note", "said"):  # words of any length
        return "told"
    return "strong_result" if number == 1 or format_of(column).endswith("strong") else "result"


def _type_in(cell: Cell, value: Value) -> None:
    cell.value = int(value) if isinstance(value, float) and value == int(value) else value
    if isinstance(value, str):
        cell.data_type = "s"


def _check_entries(draft: Draft, sheet: Worksheet, tab: TableTab, field: Field, layout: Layout) -> None:
    letter = layout.letters[field.key]
    cells = f"{letter}{FIRST_ROW}:{letter}{layout.last_row}"
    add_validation(draft, sheet, field, cells)
    # It looks at a locked cell of its own row: what is cut and pasted elsewhere takes its colours along.
    wrong = says(tab.key, field.key, tab.tested_in[field.key]).spell(draft.plan, layout)
    turns_red(sheet, cells, in_row(wrong, FIRST_ROW))
