"""What must hold: in every row of a list, or in the workbook as a whole."""

from dataclasses import dataclass

from candlecalc.workbook.cells.layout import Layout


@dataclass(frozen=True)
class Check:
    """Something that must hold in every row of a tab: said in the native language over its columns."""

    holds: str
    words: str  # what is wrong, short: it stands in the row
    mend: str  # what to do, and where
    column: str  # the entry to look at
    told: str = ""  # what is wrong with the numbers in it, shares in percent: "load {load} % is above ..."
    unlikely: bool = False  # what a maker may mean: it is asked, and the numbers agree all the same
    sums: bool = False  # without it parts do not add up to their whole


# A formula that says nothing gives an empty text.
ANYTHING = '"?*"'


@dataclass(frozen=True)
class Rows:
    """Cells that say what is wrong with their row, what is looked for in them, and the row of the first of them."""

    cells: str
    said: str  # a criterion
    first: int

    @property
    def count(self) -> str:
        """How many of them say it."""
        return f"COUNTIF({self.cells},{self.said})"


@dataclass(frozen=True)
class WorkbookCheck:
    """A line of Checks: two numbers that must agree within a tolerance."""

    name: str
    tab: str
    found: str
    mend: str
    should_be: str = "0"
    tolerance: float | str = 0
    sums: bool = False  # two sums that agree while the lines they rest on do
    rested_on: bool = False  # sums rest on it
    unlikely: bool = False  # may be meant: to look at, and no more
    rows: Rows | None = None  # the rows it speaks of
    alone: bool = False  # it rests on no other line: it is told whatever else is to fix


def of_rows(
    name: str,
    title: str,
    layout: Layout,
    key: str,
    mend: str,
    said: str = ANYTHING,
    *,
    rested_on: bool = False,
    unlikely: bool = False,
) -> WorkbookCheck:
    """A line that counts the rows which say something in a column, and leads to the first of them."""
    rows = Rows(layout.results(key), said, layout.first_row)
    return WorkbookCheck(name, title, rows.count, mend, rows=rows, rested_on=rested_on, unlikely=unlikely)


OVERWRITTEN = "a formula was typed over: make a fresh workbook from this one"


def sums_agree(name: str, title: str, found: str, should_be: str, tolerance: float | str = 0.005) -> WorkbookCheck:
    """Two ways of adding up that must come to the same."""
    return WorkbookCheck(name, title, found, OVERWRITTEN, should_be, tolerance, sums=True)


def words_in(cells: str) -> str:
    """How many cells say something."""
    return f"COUNTIF({cells},{ANYTHING})"
