"""A page that is no list: cells by their place, results in them, and boxes to write in by hand."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.workbook.cells.layout import Layout
from candlecalc.workbook.cells.references import Expression, Given, Written, braced, fed_by, step_by_step
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.writing.draft import Draft, Formula


def cell(place: str) -> Expression:
    """A cell of the page as it stands: B8."""
    return Written(braced(place))


@dataclass(frozen=True)
class Page:
    """A tab being written, and the columns that its sections run across."""

    draft: Draft
    tab: Tab
    sheet: Worksheet
    columns: str

    @property
    def place(self) -> Layout:
        return Layout(self.tab.title, self.tab.title, 1, {})

    def put(self, at: str, value: object, look: str = "label", number: str = "text", *, wrap: bool = False) -> None:
        shown = self.draft.plan.head(value) if isinstance(value, str) and not isinstance(value, Formula) else value
        self.draft.put(self.sheet[at], shown, look, number, wrap=wrap)

    def shows(
        self,
        at: str,
        value: Expression,
        look: str = "result",
        number: str = "text",
        *,
        blank_if: Sequence[Given] = (),
        wrap: bool = False,
    ) -> None:
        """A result: blank while a test holds, each asked only where those before it do not hold."""
        shown = step_by_step(blank_if, value)
        formula = Formula(f"={shown.spell(self.draft.plan, self.place)}")
        self.draft.put(self.sheet[at], formula, look, number, wrap=wrap)
        self.draft.read.setdefault(self.tab.title, set()).update(fed_by(shown, self.draft.plan, self.place))

    def name(self, name: str, at: str) -> None:
        self.draft.name(name, self.tab.title, at)

    def section(self, row: int, heads: Sequence[str], words: str = "", *, tall: bool = False) -> None:
        """The heads of a section over all columns: those of words to the left, of numbers to the right."""
        for letter, head in zip(self.columns, [*heads, *[""] * (len(self.columns) - len(heads))], strict=True):
            side = "text" if letter in words or letter == self.columns[0] else "row"
            self.draft.put(self.sheet[f"{letter}{row}"], self.draft.plan.head(head) or None, "section", side, wrap=tall)
        self.height(row, 34 if tall else 20)

    def lines(self, row: int, words: Iterable[str], look: str = "label") -> int:
        """Lines of words, one under another; the row after them."""
        for line in words:
            self.put(f"{self.columns[0]}{row}", line, look)
            row += 1
        return row

    def boxes(self, row: int, letters: Iterable[str], height: float = 24) -> None:
        for letter in letters:
            self.put(f"{letter}{row}", None, "write")
        self.height(row, height)

    def height(self, row: int, points: float) -> None:
        self.sheet.row_dimensions[row].height = points

    def widths(self, widths: Sequence[float]) -> None:
        for letter, width in zip(self.columns, widths, strict=True):
            self.sheet.column_dimensions[letter].width = width
