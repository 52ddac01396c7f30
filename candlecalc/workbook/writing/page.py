"""A page that is no list: cells by their place, results in them, and boxes to write in by hand."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.workbook.cells.layout import Layout
from candlecalc.workbook.cells.references import Expression, Written, braced, fed_by, step_by_step, written
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.writing.draft import Draft, Formula, ruled_where

Part = str | Expression  # cells of a page are named as they stand: B8


def cell(place: str) -> Expression:
    """A cell of the page as it stands: B8."""
    return Written(braced(place))


def part(given: Part) -> Expression:
    return cell(given) if isinstance(given, str) else given


def made_of(text: str, **inside: Part) -> Expression:
    """A formula's text with cells and expressions in it, each where its name stands between braces."""
    return written(text, **{name: part(given) for name, given in inside.items()})


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
        value: Part,
        look: str = "result",
        number: str = "text",
        *,
        blank_if: Sequence[Part] = (),
        wrap: bool = False,
    ) -> None:
        """A result: blank while a test holds, each asked only where those before it do not hold."""
        shown = step_by_step([part(test) for test in blank_if], part(value))
        self.draft.put(self.sheet[at], self.formula(shown), look, number, wrap=wrap)

    def formula(self, shown: Expression) -> Formula:
        """An expression as the page has it; what it reads is kept with the draft."""
        self.draft.read.setdefault(self.tab.title, set()).update(fed_by(shown, self.draft.plan, self.place))
        return Formula(f"={shown.spell(self.draft.plan, self.place)}")

    def name(self, name: str, at: str) -> None:
        self.draft.name(name, self.tab.title, at)

    def section(
        self, row: int, heads: Sequence[Part], words: str = "", *, numbers: str = "row", tall: bool = False
    ) -> None:
        """The heads of a section over all columns: those of words to the left, others as their numbers stand.

        Tall ones take two lines.
        """
        for letter, head in zip(self.columns, [*heads, *[""] * (len(self.columns) - len(heads))], strict=True):
            side = "text" if letter in words or letter == self.columns[0] else numbers
            shown = self.draft.plan.head(head) or None if isinstance(head, str) else self.formula(head)
            self.draft.put(self.sheet[f"{letter}{row}"], shown, "section", side, wrap=tall)
        self.height(row, 34 if tall else 20)

    def lines(self, row: int, words: Iterable[str], look: str = "label") -> int:
        """Lines of words, one under another; the row after them."""
        for line in words:
            self.put(f"{self.columns[0]}{row}", line, look)
            row += 1
        return row

    def boxes(self, row: int, letters: Iterable[str], *, where: str = "") -> None:
        """Room to write by hand; only where a test holds, if there is one."""
        for letter in letters:
            self.put(f"{letter}{row}", None, "write_where" if where else "write")
            if where:
                ruled_where(self.sheet, f"{letter}{row}", where, box=True)

    def height(self, row: int, points: float) -> None:
        self.sheet.row_dimensions[row].height = points

    def widths(self, widths: Sequence[float]) -> None:
        for letter, width in zip(self.columns, widths, strict=True):
            self.sheet.column_dimensions[letter].width = width
