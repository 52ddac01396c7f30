"""How many formulas a workbook comes to, and the most that it may: above that, programs take long to calculate it."""

from bisect import bisect_left
from collections.abc import Mapping

from candlecalc.season.room import fresh
from candlecalc.season.season import Season
from candlecalc.workbook import book
from candlecalc.workbook.cells.columns import Column
from candlecalc.workbook.cells.layout import Plan
from candlecalc.workbook.cells.table_tab import TableTab
from candlecalc.workbook.cells.values_tab import ValuesTab
from candlecalc.workbook.tabs.working import lists

MOST_CELLS = 250_000  # LibreOffice calculates all of them in less than two seconds
MOST_READ = 3 * MOST_CELLS  # of a maker's file: an earlier version may have taken fewer for the same rows
CARDS = 5_000  # formulas at the most on tabs that are no lists
MASTER = 1  # the master check, on every tab
TABS_NAMED = 4


def of_lists(plan: Plan) -> dict[str, int]:
    """The formulas of each list, by its tab's title."""
    found = {tab.title: _of_list(tab, plan.layouts[key].rows) for key, tab in book.lists(plan.records).items()}
    names = sum(plan.layouts[field.names_from].rows for field in lists.lists(plan.layouts).values())
    return found | {lists.TAB.title: names + MASTER}


def _of_list(tab: TableTab, rows: int) -> int:
    if isinstance(tab, ValuesTab):
        return MASTER
    columns = [column for column in tab.columns.values() if isinstance(column, Column)]
    return rows * len(columns) + tab.margin + MASTER


def refuse_too_large(season: Season, rows_of: Mapping[str, int]) -> None:
    """A ValueError says what fills a workbook that is too large, and which rows would fit."""
    if _fits(season, rows_of):
        return
    cells = of_lists(book.plan_of(season, rows_of))
    most = sorted(cells, key=lambda title: -cells[title])[:TABS_NAMED]
    named = ", ".join(f"{title} ({cells[title]:,})" for title in most)
    raise ValueError(
        f"it would have {sum(cells.values()):,} formulas, and a workbook takes {MOST_CELLS - CARDS:,}: most are on "
        f"{named}. {_what_to_do(season, rows_of)}"
    )


def rows_that_fit(season: Season) -> dict[str, int] | None:
    """The rows of each list as a fresh workbook has them, or with as few spare ones as make it fit; none where it is
    too large without."""
    wanted = fresh(season, book.USUAL_ROWS)
    if _fits(season, wanted):
        return wanted
    least = _least(season, wanted)
    return _most_that_fit(season, least, wanted) if _fits(season, least) else None


def lines_that_fit(season: Season, key: str, most: int) -> int:
    """How many more lines a list of a season has room for, with no spare rows beside; `most` at the most."""
    rows = _least(season, fresh(season, book.USUAL_ROWS))
    filled = season.tables.room(key)
    return bisect_left(range(1, most + 1), True, key=lambda more: not _fits(season, rows | {key: filled + more}))


def refuse_giant(plan: Plan) -> None:
    """A ValueError refuses a maker's file of more rows than can be calculated."""
    cells = sum(of_lists(plan).values())
    if cells > MOST_READ:
        raise ValueError(f"its rows come to {cells:,} formulas, and at most {MOST_READ:,} can be calculated")


def _fits(season: Season, rows_of: Mapping[str, int]) -> bool:
    return sum(of_lists(book.plan_of(season, rows_of)).values()) + CARDS <= MOST_CELLS


def _what_to_do(season: Season, rows_of: Mapping[str, int]) -> str:
    usual = book.USUAL_ROWS
    least = _least(season, rows_of)
    if not _fits(season, least):
        return (
            "Ask for fewer rows on tabs that you fill little, such as --rows counts=20, "
            "or begin another workbook for what comes"
        )
    fits = _most_that_fit(season, least, rows_of)
    usually = fresh(season, usual)
    asked = ",".join(f"{key}={rows}" for key, rows in fits.items() if rows != usually[key])
    return f"This fits: --rows {asked}"


def _least(season: Season, rows_of: Mapping[str, int]) -> dict[str, int]:
    """No more rows than are filled, but the usual number where that is asked for."""
    return {key: max(season.tables.room(key), min(rows, book.USUAL_ROWS[key])) for key, rows in rows_of.items()}


def _most_that_fit(season: Season, least: Mapping[str, int], wanted: Mapping[str, int]) -> dict[str, int]:
    """Between what fits and what does not, the largest, each list with the same share of its further rows."""
    fits, too_many = 0, 1000

    def at(share: int) -> dict[str, int]:
        return {key: rows + (wanted[key] - rows) * share // 1000 for key, rows in least.items()}

    while too_many - fits > 1:
        middle = (fits + too_many) // 2
        fits, too_many = (middle, too_many) if _fits(season, at(middle)) else (fits, middle)
    return at(fits)
