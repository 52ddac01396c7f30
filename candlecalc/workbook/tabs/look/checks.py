"""The Checks tab: what must hold in the whole workbook, a line each, and the master check."""

from collections.abc import Iterator, Sequence

from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.season.tables import TABLES
from candlecalc.workbook.cells.checks import WorkbookCheck, of_rows
from candlecalc.workbook.cells.layout import FIRST_ROW, Plan
from candlecalc.workbook.cells.table_tab import STATUS, Tab, TableTab, check_key
from candlecalc.workbook.cells.words import saying
from candlecalc.workbook.tabs.registry import Room, more_rows, register, registered
from candlecalc.workbook.writing.draft import ALL_WELL, Draft, Formula, mark_up, turns_red
from candlecalc.workbook.writing.printed import print_list

TAB = Tab("Checks", "check", "What must hold in this workbook, and what to do where it does not.")
# By head.
WIDTHS = {
    "Check": 51, "First row": 20, "Found": 10, "Should be": 11, "Difference": 12, "Tolerance": 11, "Verdict": 10,
    "What to do": 55,
}  # fmt: skip
NUMBERS = ("Found", "Should be", "Difference", "Tolerance")
AGREES, TO_FIX, WAITS, TO_LOOK_AT = "agrees", "to fix", "waits", "to look at"
MEND_FIRST = "nothing to do here yet: it waits for what is to fix; if nothing is, make a fresh workbook"
LETTERS = 1.15  # of a text, where one digit has room


def lines(plan: Plan) -> Iterator[WorkbookCheck]:
    """Every check in the order of the tabs where people type; sums, which rest on the others, come last."""
    tabs = registered(plan.records)
    found = [line for each in tabs for line in each.checks(plan)]
    titles = [each.tab.title for each in tabs]
    found += [line for each in tabs if isinstance(each.tab, TableTab) for line in _of_list(each.tab, plan)]
    found += [_of_room(each.tab, each.room, plan) for each in tabs if each.room and isinstance(each.tab, TableTab)]
    yield from sorted(found, key=lambda line: (line.sums, titles.index(line.tab)))


def _of_list(tab: TableTab, plan: Plan) -> Iterator[WorkbookCheck]:
    layout = plan.layouts[tab.key]
    # A row is looked at where its words stand.
    title = tab.title if STATUS in tab.columns else TABLES[tab.typed_on].title
    if tab.fields:
        mend = "see the words left of the row's name: they say what to do"
        yield of_rows(f"{title}: every row begun is whole", title, layout, "mend", mend, rested_on=True)
    for at, check in enumerate(tab.checks):
        if not check.unlikely:
            cells, said = tab.tested_in[check_key(at)], saying(plan, tab.key, check_key(at))
            yield of_rows(f"{title}: no {check.words}", title, layout, cells, check.mend, said, rested_on=check.sums)
    if any(check.unlikely for check in tab.checks):
        mend = "see the words left of the row's name; leave what is meant"
        asked = (
            "entries are likely"
            if tab.fields
            else "no row to look at"
            if STATUS in tab.columns
            else "entries go together"
        )
        yield of_rows(f"{title}: {asked}", title, layout, "doubts", mend, unlikely=True)


def _of_room(tab: TableTab, room: Room, plan: Plan) -> WorkbookCheck:
    """Lines that follow from logs all have a row: those without one would not be missed."""
    rows = plan.layouts[tab.key].rows
    mend = f"it has room for {rows:,} lines: {more_rows(plan, room)}"
    beyond = f"MAX(0,{room.lines}-{rows})"
    return WorkbookCheck(f"{tab.title} has room for every line", tab.title, beyond, mend, rested_on=True, alone=True)


def write(draft: Draft) -> None:
    sheet = draft.tab(TAB)
    for letter, (head, width) in zip("ABCDEFGH", WIDTHS.items(), strict=True):
        draft.put(sheet[f"{letter}{FIRST_ROW - 1}"], head, "head", "row" if head in NUMBERS else "text")
        sheet.column_dimensions[letter].width = width
    all_lines = list(lines(draft.plan))
    rested_on = [f"$G${row}" for row, line in enumerate(all_lines, start=FIRST_ROW) if line.rested_on]
    for row, line in enumerate(all_lines, start=FIRST_ROW):
        _line(draft, sheet, row, line, rested_on)
    last = FIRST_ROW + len(all_lines) - 1
    draft.put(sheet["A2"], Formula(f"={_master(f'$G${FIRST_ROW}:$G${last}')}"), "verdict", "words")
    turns_red(sheet, "A2", f'A2<>"{ALL_WELL}"')
    draft.put(sheet["B2"], Formula(f"={_first(last)}"), "note", "words")
    draft.name("master_check", "Checks", "A2")
    turns_red(sheet, f"G{FIRST_ROW}:G{last}", f'G{FIRST_ROW}<>"{AGREES}"')
    mark_up(sheet, "Checks_list", list(WIDTHS), last)
    sheet.freeze_panes = f"B{FIRST_ROW}"
    print_list(sheet, len(WIDTHS), last)


def _first(last: int) -> str:
    """Where to begin: the first line that is to fix, else the first to look at."""
    verdicts, places = (f"${letter}${FIRST_ROW}:${letter}${last}" for letter in "GB")
    to_fix, doubt = (f'INDEX({places},MATCH("{verdict}",{verdicts},0))' for verdict in (TO_FIX, TO_LOOK_AT))
    return f'IFERROR("Begin with "&{to_fix},IFERROR("Look at "&{doubt},""))'


def _master(verdicts: str) -> str:
    """What all lines come to: how many are to fix, else how many wait or are to look at."""
    to_fix, waits, doubts = (f'COUNTIF({verdicts},"{verdict}")' for verdict in (TO_FIX, WAITS, TO_LOOK_AT))
    wrong = f'IF({to_fix}=0,{waits},{to_fix})&" {TO_FIX}"'
    return f'IF({to_fix}+{waits}>0,{wrong},IF({doubts}>0,{doubts}&" {TO_LOOK_AT}","{ALL_WELL}"))'


def _line(draft: Draft, sheet: Worksheet, row: int, line: WorkbookCheck, rested_on: Sequence[str]) -> None:
    """`rested_on` are the verdicts that sums rest on."""
    number = "quantity" if line.tolerance else "count"
    tolerance = Formula(f"={line.tolerance}") if isinstance(line.tolerance, str) else line.tolerance
    # A sum over a row that is to mend is an error, or short of it: it waits, and the row is what is to fix.
    otherwise = f'"{TO_LOOK_AT if line.unlikely else TO_FIX}"'
    if line.sums:
        fixed_first = "+".join(f'({verdict}="{TO_FIX}")' for verdict in rested_on)
        otherwise = f'IF({fixed_first}>0,"{WAITS}",{otherwise})'
    verdict = f'=IF(ISERROR(E{row}+F{row}),"{WAITS}",IF(ABS(E{row})<=F{row},"{AGREES}",{otherwise}))'
    what = Formula(f'=IF(G{row}="{WAITS}","{MEND_FIRST}","{line.mend}")')
    cells = [
        (line.name, "strong_result", "text"),
        (_first_row(line), "link", "words"),
        (Formula(f"={line.found}"), "result", number),
        (Formula(f"={line.should_be}"), "result", number),
        (Formula(f"=ROUND(C{row}-D{row},6)"), "result", number),
        (tolerance, "result", "factor"),
        (Formula(verdict), "verdict", "words"),
        (what, "note", "words"),
    ]
    for column, (value, look, shown) in enumerate(cells, start=1):
        draft.put(sheet.cell(row, column), value, look, shown, wrap=column in (1, len(cells)))
    one_line = all(
        len(text) <= WIDTHS[head] * LETTERS for head, text in (("Check", line.name), ("What to do", line.mend))
    )
    sheet.row_dimensions[row].height = 18 if one_line else 31


def _first_row(line: WorkbookCheck) -> Formula:
    """A link to the first row that a line speaks of, where there is one; else to the tab."""
    there, number, words = f"'{line.tab}'" if " " in line.tab else line.tab, "1", ""
    if line.rows:
        at = f"MATCH({line.rows.said},{line.rows.cells},0)+{line.rows.first - 1}"
        number, words = f"IFERROR({at},1)", f'&IFERROR(", row "&({at}),"")'
    return Formula(f'=HYPERLINK("#{there}!A"&{number},"{line.tab}"{words})')


register(TAB, __name__, 10, write=write)
