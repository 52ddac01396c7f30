"""What is wrong with a season, read from its workbook's own cells."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import openpyxl
from openpyxl.styles.numbers import is_date_format
from openpyxl.utils import column_index_from_string, get_column_letter
from openpyxl.utils.datetime import from_excel

from candlecalc.declaration.term import shown
from candlecalc.season.fields import short
from candlecalc.season.season import Row, Season, problems, wrong_entries
from candlecalc.season.tables import TABLES
from candlecalc.season.tables.once import SETTING_FIELDS, SETTINGS, WHAT_IF
from candlecalc.workbook import book
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.layout import FIRST_ROW, HEAD_ROW, Plan
from candlecalc.workbook.cells.references import Source
from candlecalc.workbook.cells.table_tab import TableTab, check_key
from candlecalc.workbook.cells.values_tab import ValuesTab
from candlecalc.workbook.cells.words import code
from candlecalc.workbook.reading.heads import plain_head
from candlecalc.workbook.reading.opening import Rows, cell_at
from candlecalc.workbook.reading.spots import TODAYS, Spots
from candlecalc.workbook.reports.wiring import resting_on
from candlecalc.workbook.tabs.look import checks
from candlecalc.workbook.tabs.make import batch
from candlecalc.workbook.tabs.registry import registered
from candlecalc.workbook.writing.listed import NOT_LISTED

Place = tuple[int, int]  # a cell's row and column


@dataclass(frozen=True)
class Finding:
    """A problem with its place as a maker finds it."""

    tab: str
    cell: str
    words: str
    row: int = -1  # within its table, from 0; of no table where it is below

    def __str__(self) -> str:
        return f"tab {self.tab}, {self.cell}: {self.words}"


class Calculated:
    """A season's workbook written anew and calculated: its cells by table, column and row, or a tab's by their place.

    A maker's own file may hold numbers from before the last entry.
    """

    def __init__(self, season: Season, written: book.Drafted) -> None:
        self.season, self.plan = season, written.plan
        self._written, self._tabs = written, written.values

    def tab(self, title: str) -> Rows:
        """The values of a tab; days are numbers."""
        return self._tabs[title]

    def room(self, table: str) -> int:
        """How many rows a table has."""
        return self.plan.layouts[table].rows

    def cell(self, title: str, row: int, column: int) -> Any:
        """The value of a tab's cell, by its place; a day where it is shown as one."""
        value = cell_at(self.tab(title), row, column)
        if isinstance(value, (int, float)) and is_date_format(self._format(title, row, column)):
            return from_excel(value).date()
        return value

    def _format(self, title: str, row: int, column: int) -> str:
        """The number format of a cell."""
        listed = self._written.lists.get(title, NOT_LISTED)
        if row in listed.rows and column in listed.columns:
            return listed.columns[column].format
        return str(self._written.book[title].cell(row, column).number_format)

    def value(self, table: str, column: str, row: int) -> Any:
        layout = self.plan.layouts[table]
        return self.cell(layout.title, FIRST_ROW + row, column_index_from_string(layout.letters[column]))

    def columns(self, table: str, keys: list[str], rows: list[int]) -> list[dict[str, Any]]:
        """Some columns of some rows, by the columns' heads."""
        heads = {key: self.plan.head(book.TABLE_TABS[table].columns[key].head) for key in keys}
        return [{heads[key]: self.value(table, key, row) for key in keys} for row in rows]


def everything_wrong(calculated: Calculated, card: Row, spots: Spots = TODAYS) -> list[Finding]:
    """What is wrong with a season and with its card, as typed, and lines without a row; else all that Checks find.

    `spots` say where the entries stand in the workbook that is spoken of.
    """
    typed = findings(calculated, spots) + on_card(calculated.season, card, spots)
    return [*typed, *disagreeing(calculated, alone=True)] if typed else disagreeing(calculated)


def findings(calculated: Calculated, spots: Spots = TODAYS) -> list[Finding]:
    """Everything wrong with a season: as typed, and as it comes out."""
    season = calculated.season
    typed = problems(season, {key: calculated.room(key) for key in season.tables})
    found = [_typed(spots, problem.tab, problem.row, problem.column, problem.words) for problem in typed]
    return found + [
        _typed(spots, title, row, check.column, f"{check.words}: {check.mend}")
        for title, row, _, check in _said(calculated, unlikely=False)
    ]


def doubts(calculated: Calculated, spots: Spots = TODAYS) -> list[Finding]:
    """What is unlikely and may be meant, with what it was read as; and what can be read two ways."""
    two_ways = [_typed(spots, doubt.tab, doubt.row, doubt.column, doubt.words) for doubt in calculated.season.doubts]
    return two_ways + [
        _typed(spots, title, row, check.column, _asked(check, entries[check.column]))
        for title, row, entries, check in _said(calculated, unlikely=True)
    ]


def _asked(check: Check, entry: object) -> str:
    """What is asked of a row: of a number with what it was read as, since that may be the slip."""
    read = f" It was read as {shown(entry)};" if isinstance(entry, (int, float)) else ""
    return f"{_sentence(check.words)}{read} {check.mend}"


def to_look_at(calculated: Calculated) -> list[Finding]:
    """Lines of Checks that a tab gives besides what its rows are asked, and that are to look at."""
    plan, rows, heads = calculated.plan, calculated.tab(checks.TAB.title), list(checks.WIDTHS)
    own = {line.name for each in registered(plan.records) for line in each.checks(plan) if line.unlikely}
    told = []
    for row in range(FIRST_ROW, len(rows) + 1):
        name, first = (cell_at(rows, row, column) for column in (1, 2))
        if name in own and cell_at(rows, row, heads.index("Verdict") + 1) == checks.TO_LOOK_AT:
            told.append(Finding(checks.TAB.title, f"A{row}", f"{name}: {first}: {cell_at(rows, row, len(heads))}"))
    return told


def _sentence(words: str) -> str:
    return words if words.endswith("?") else f"{words}."


def _said(calculated: Calculated, *, unlikely: bool) -> Iterator[tuple[str, int, Row, Check]]:
    """(tab where it is typed, row, its entries, check) of what rows say in their own words."""
    for key, tab in book.lists(calculated.plan.records).items():
        asked = {check_key(at): check for at, check in enumerate(tab.checks) if check.unlikely == unlikely}
        rows = [each for each in calculated.season.rows(tab.typed_on) if asked and each[0] < calculated.room(key)]
        for row, entries in rows:
            for name, check in asked.items():
                if code(calculated.plan, key, name) in calculated.value(key, tab.tested_in[name], row):
                    yield TABLES[tab.typed_on].title, row, entries, check


def on_card(season: Season, card: Row, spots: Spots = TODAYS) -> list[Finding]:
    """What is wrong with the entries of Batch. Where nothing is picked it waits."""
    if card.get(batch.PRODUCT.key) is None and card.get(batch.COUNT.key) is None:
        return []
    wrong = wrong_entries(season, batch.ENTRIES.values(), card)
    heads = {field.key: field.head for field in batch.ENTRIES.values()}
    return [
        Finding(batch.TAB.title, _cell(spots, batch.TAB.title, key), f"{heads[key]}: {wrong[key]}") for key in wrong
    ]


def disagreeing(calculated: Calculated, *, alone: bool = False) -> list[Finding]:
    """Lines of Checks that are to fix; where there is none, those that wait for a row to be mended.

    `alone` are those that rest on no other.
    """
    rows, heads = calculated.tab(checks.TAB.title), list(checks.WIDTHS)
    lines = enumerate(checks.lines(calculated.plan), start=FIRST_ROW)
    asked = [row for row, line in lines if line.alone or not alone]
    verdicts = {row: cell_at(rows, row, heads.index("Verdict") + 1) for row in asked}
    wrong = [row for row, verdict in verdicts.items() if verdict not in (checks.AGREES, checks.TO_LOOK_AT)]
    to_fix = [row for row in wrong if verdicts[row] == checks.TO_FIX]
    return [
        Finding(checks.TAB.title, f"A{row}", f"{cell_at(rows, row, 1)}: {cell_at(rows, row, len(heads))}")
        for row in to_fix or ([] if alone else wrong)
    ]


def _typed(spots: Spots, title: str, row: int, key: str, words: str) -> Finding:
    if key in SETTING_FIELDS and title in (SETTINGS.title, WHAT_IF.title):
        return Finding(title, _cell(spots, title, key), f"{short(SETTING_FIELDS[key].head)}: {words}")
    table = next(table for table in TABLES.values() if table.title == title)
    label = f"{table.label(table[key])}: "
    return Finding(title, _cell(spots, title, key, row), label + words.removeprefix(label), row)


def _cell(spots: Spots, title: str, key: str, row: int = 0) -> str:
    letter, first = spots[title, key]
    return f"{letter}{first + row}"


CHANGED = "the formula was typed over or changed: make a fresh workbook from this one"
MOST_CHANGED = 10  # cells of a tab that are named: where all of it is another's, one line says so


def overwritten(theirs: Mapping[str, Rows], ours: book.Drafted) -> tuple[list[Finding], list[str]]:
    """Formula cells of a maker's workbook that are not the formula we would write there.

    Where columns or rows were moved no formula is where we would write it: then the tabs in question are named instead.
    """
    order, plan = ours.book.sheetnames, ours.plan
    theirs = {title: theirs[title] for title in order if title in theirs}
    missing = "the tab is missing: make a fresh workbook from this one"
    found = [Finding(title, "A1", missing) for title in order if title not in theirs]
    moved = [title for title in theirs if _moved(title, ours.book, theirs[title])]
    changed = {} if moved else {title: _changed(ours, title, theirs[title]) for title in theirs}
    if any(changed.values()):
        users = _by_column(plan, resting_on(plan, ours.read))
        for title, cells in changed.items():
            found += _told(title, cells, users)
    return found, moved


OUTDATED = "written for recipes or sheets that have changed since: make a fresh workbook from this one"


def outdated(theirs: Mapping[str, Rows], ours: book.Drafted) -> list[Finding]:
    """Lists of values that are not those of today's entries: cells cannot work them out anew."""
    found = []
    for tab in book.lists(ours.plan.records).values():
        if isinstance(tab, ValuesTab) and tab.title in theirs and not _moved(tab.title, ours.book, theirs[tab.title]):
            columns, sheet, rows = range(1, len(tab.columns) + 1), ours.book[tab.title], theirs[tab.title]
            for row in ours.lists[tab.title].rows:
                written = [sheet.cell(row, column).value for column in columns]
                if written != [cell_at(rows, row, column) for column in columns]:
                    found.append(Finding(tab.title, f"A{row}", OUTDATED))
                    break
    return found


def _moved(title: str, ours: openpyxl.Workbook, theirs: Rows) -> bool:
    """Whether a list's columns are not where they were made."""
    if not isinstance(book.TABS[title], TableTab):
        return False
    heads = [cell.value for cell in ours[title][HEAD_ROW]]
    there = [cell_at(theirs, HEAD_ROW, column) for column in range(1, len(heads) + 1)]
    return [plain_head(head) for head in heads] != [plain_head(head) for head in there]


def _changed(ours: book.Drafted, title: str, theirs: Rows) -> list[Place]:
    """The formula cells of a tab in which another formula stands, or none."""
    listed, found = ours.lists.get(title, NOT_LISTED), []
    for column in listed.columns:
        for row, formula in listed.formulas(column).items():
            if not _alike(formula, cell_at(theirs, row, column)):
                found.append((row, column))
    # Those that were written, not those that a look through all rows would make.
    for place, cell in ours.book[title]._cells.items():
        if cell.data_type == "f" and not _alike(cell.value, cell_at(theirs, *place)):
            found.append(place)
    return found


def _by_column(plan: Plan, users: Mapping[Source, list[str]]) -> dict[tuple[str, str], list[str]]:
    """What rests on each column, by its tab's title and its letter."""
    return {
        (layout.title, letter): users.get((key, column), [])
        for key, layout in plan.layouts.items()
        for column, letter in layout.letters.items()
    }


def _told(title: str, changed: Sequence[Place], users: Mapping[tuple[str, str], list[str]]) -> list[Finding]:
    cells = [(get_column_letter(column), row) for row, column in changed]
    found = [
        Finding(title, f"{letter}{row}", f"{CHANGED}{_resting(users.get((title, letter), []))}")
        for letter, row in cells[:MOST_CHANGED]
    ]
    if len(cells) > MOST_CHANGED:
        letter, row = cells[MOST_CHANGED]
        more = len(cells) - MOST_CHANGED
        found.append(Finding(title, f"{letter}{row}", f"{more} formulas from here on: {CHANGED}"))
    return found


def _resting(tabs: Sequence[str]) -> str:
    """Which other tabs have numbers that are not to be trusted either."""
    return f" (numbers on {', '.join(tabs)} rest on it)" if tabs else ""


def _alike(ours: str, theirs: object) -> bool:
    """Whether two programs' spellings of a formula are the same."""
    return ours == theirs or _bare(ours) == _bare(str(theirs))


def _bare(formula: str) -> str:
    return formula.replace(" ", "").replace("'", "").replace("$", "").upper()
