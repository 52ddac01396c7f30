"""A workbook being written: cells by named style, and what every tab has alike."""

import datetime
from collections.abc import Sequence
from copy import copy
from dataclasses import dataclass, field
from typing import NamedTuple

from openpyxl import Workbook
from openpyxl.cell.cell import Cell
from openpyxl.formatting.rule import Rule
from openpyxl.styles.cell_style import StyleArray
from openpyxl.utils import absolute_coordinate, get_column_letter
from openpyxl.workbook.defined_name import DefinedName
from openpyxl.worksheet.hyperlink import Hyperlink
from openpyxl.worksheet.table import Table, TableStyleInfo
from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.season.season import Row, Season
from candlecalc.workbook.cells import styles
from candlecalc.workbook.cells.layout import HEAD_ROW, Plan
from candlecalc.workbook.cells.references import Source
from candlecalc.workbook.cells.table_tab import Tab, TableTab
from candlecalc.workbook.writing.listed import Down, Listed
from candlecalc.workbook.writing.printed import paper

ALL_WELL = "Numbers agree"  # what the master check says where nothing is to fix


class MadeFrom(NamedTuple):
    """What a workbook is made from: the name of the file or folder, and the lines of its Changes."""

    name: str
    log: list[Row]


FROM_NOTHING = MadeFrom("", [])


@dataclass
class Draft:
    """A workbook being written: the book, the season in it, and what formulas must know."""

    book: Workbook
    season: Season
    plan: Plan
    formats: dict[str, str]
    dated: datetime.date
    picked: Row | None = None  # what Batch opens with: product, count and date
    before: MadeFrom = FROM_NOTHING
    read: dict[str, set[Source]] = field(default_factory=dict)  # by a card: what it reads
    lists: dict[str, Listed] = field(default_factory=dict)  # by title: the rows of a list
    chart_texts: list[str] = field(default_factory=list)  # of each chart, for who cannot see it
    styles: dict[tuple[str, str, bool], str] = field(default_factory=dict)  # by what was asked for
    arrays: dict[tuple[str, str, bool], StyleArray] = field(default_factory=dict)  # the same, as a cell holds them

    def style(self, look: str, number: str = "text", wrap: bool = False) -> str:
        asked = (look, number, wrap)
        if asked not in self.styles:
            self.styles[asked] = styles.named_style(self.book, look, number, self.formats, wrap)
        return self.styles[asked]

    def dress(self, cell: Cell, look: str, number: str = "text", wrap: bool = False) -> None:
        """Give a cell its named style. openpyxl looks through the names of the whole book: it does so once a style."""
        cell._style = copy(self.array(look, number, wrap))

    def array(self, look: str, number: str = "text", wrap: bool = False) -> StyleArray:
        """What a named style comes to, as a cell holds it."""
        asked = (look, number, wrap)
        if asked not in self.arrays:
            self.arrays[asked] = self.book._named_styles[self.style(*asked)].as_tuple()
        return self.arrays[asked]

    def down(self, formula: str, look: str, number: str, values: Sequence[str | int | None] = ()) -> Down:
        """A column of a list, by what goes down its rows."""
        style = self.book._cell_styles.add(self.array(look, number))
        return Down(formula, style, self.formats.get(number, "General"), values)

    def put(self, cell: Cell, value: object, look: str, number: str = "text", wrap: bool = False) -> Cell:
        """Write one cell. A maker's text stays text, whatever it starts with."""
        self.dress(cell, look, number, wrap)
        cell.value = value
        if isinstance(value, str) and not isinstance(value, Formula):
            cell.data_type = "s"
        return cell

    def name(self, name: str, sheet: str, cell: str) -> None:
        """Give a cell a name that formulas use."""
        quoted = f"'{sheet}'" if " " in sheet else sheet
        self.book.defined_names[name] = DefinedName(name, attr_text=f"{quoted}!{absolute_coordinate(cell)}")

    def tab(self, tab: Tab, *, portrait: bool = False, master: str = "", purpose: str = "") -> Worksheet:
        """A new tab with its first row: title, kind, purpose, the master check."""
        title = self.title_of(tab)
        # Left of a title that has a margin; else under it, but on an input tab: there stands the word entry.
        master = master or ("A1" if title != "A1" else "B1" if tab.kind == "input" else "A2")
        sheet: Worksheet = self.book.create_sheet(tab.title)
        sheet.sheet_properties.tabColor = styles.TAB_COLOURS[tab.kind]
        self.put(sheet[title], tab.title, "title")
        sheet[title].hyperlink = Hyperlink(ref=title, location="Start!A1", tooltip="to Start")
        self.dress(sheet[title], "title")  # a link of openpyxl's brings a look of its own
        sheet.row_dimensions[1].height = 26
        self.put(sheet[purpose or ("C1" if master == "B1" else "B1")], self.line_of(tab), "purpose")
        if tab.title != "Checks":  # there it is worked out
            self._master(sheet[master])
        paper(sheet, str(self.season.settings["paper"]), portrait)
        lock(sheet)
        return sheet

    @staticmethod
    def title_of(tab: Tab) -> str:
        """The cell of a tab's title: over the first column of its list."""
        return "B1" if isinstance(tab, TableTab) and tab.margin else "A1"

    @staticmethod
    def line_of(tab: Tab) -> str:
        """What a tab says of itself beside its title."""
        return f"{tab.purpose} [{tab.kind}]"

    def _master(self, cell: Cell) -> None:
        """The master check, near the title."""
        self.put(cell, Formula("=master_check"), "verdict", "words")
        turns_red(cell.parent, cell.coordinate, f'{cell.coordinate}<>"{ALL_WELL}"')


class Formula(str):
    """A text that is meant as a formula."""

    __slots__ = ()


def lock(sheet: Worksheet) -> None:
    """Keep formulas from being typed over; no password, and columns may be widened."""
    sheet.protection.sheet = True
    sheet.protection.formatColumns = False
    sheet.protection.formatRows = False


def turns_red(sheet: Worksheet, cells: str, test: str) -> None:
    """Show cells as a check that fails while a test holds."""
    sheet.conditional_formatting.add(cells, Rule(type="expression", dxf=styles.failing(), formula=[test]))


def ruled_where(sheet: Worksheet, cells: str, test: str, *, box: bool = False) -> None:
    """Draw a line under cells, or a box around each, while a test holds."""
    sheet.conditional_formatting.add(cells, Rule(type="expression", dxf=styles.ruled_by_hand(box), formula=[test]))


def unseen_where(sheet: Worksheet, cells: str, test: str) -> None:
    """Show nothing in cells while a test holds."""
    sheet.conditional_formatting.add(cells, Rule(type="expression", dxf=styles.unseen(), formula=[test]))


def whole_where(sheet: Worksheet, cells: str, test: str) -> None:
    """Show numbers as whole, with a line under them, while a test holds."""
    sheet.conditional_formatting.add(cells, Rule(type="expression", dxf=styles.whole_number(), formula=[test]))


def mark_up(
    sheet: Worksheet, name: str, heads: list[str], last_row: int, first_row: int = HEAD_ROW, left: int = 0
) -> None:
    """Mark a list as a table, for screen readers and for who takes the data on; `left` columns stand before it."""
    first, last = (get_column_letter(left + number) for number in (1, len(heads)))
    table = Table(displayName=name, ref=f"{first}{first_row}:{last}{last_row}")
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
    draft.dress(cell, "link")
