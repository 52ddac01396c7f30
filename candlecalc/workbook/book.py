"""A season as a workbook: every tab written, packed, and its values stored."""

import datetime
import os
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property

from openpyxl import Workbook

import candlecalc.calc as calc  # declares the functions, too
from candlecalc import __version__
from candlecalc.files import zipped
from candlecalc.season.season import Row, Season
from candlecalc.season.tables import TABLES
from candlecalc.workbook.cells import styles
from candlecalc.workbook.cells.layout import Plan
from candlecalc.workbook.cells.references import Source
from candlecalc.workbook.cells.table_tab import Tab, TableTab, layout_of_tab
from candlecalc.workbook.tabs import start
from candlecalc.workbook.tabs.registry import registered
from candlecalc.workbook.tabs.working import words
from candlecalc.workbook.writing import memory, pack
from candlecalc.workbook.writing.draft import FROM_NOTHING, Draft, MadeFrom
from candlecalc.workbook.writing.listed import Listed, Values

TABS: dict[str, Tab] = {each.tab.title: each.tab for each in registered()}
TABLE_TABS: dict[str, TableTab] = {tab.key: tab for tab in TABS.values() if isinstance(tab, TableTab)}
# How many rows there are for what people type, by table, where nothing else is asked.
USUAL_ROWS = {key: table.usual_rows for key, table in TABLES.items()}


def made(
    season: Season,
    dated: datetime.date,
    *,
    stored: bool = True,
    picked: Row | None = None,
    before: MadeFrom = FROM_NOTHING,
    rows_of: Mapping[str, int] = USUAL_ROWS,
) -> bytes:
    """The workbook of a season as bytes: the same for the same season and date.

    `picked` is what Batch opens with (product, count and date), `before` what Changes says it was made from,
    `rows_of` how many rows there are for each table.
    """
    return packed(drafted(season, dated, picked, before, rows_of), stored=stored)


@dataclass(frozen=True)
class Drafted:
    """A workbook as it was written: its cells, the rows of its lists by their tabs, its date, the text of each drawing,
    and what its cards read.
    """

    book: Workbook
    lists: dict[str, Listed]
    dated: datetime.date
    texts: dict[int, str]
    read: dict[str, set[Source]]
    plan: Plan

    @cached_property
    def values(self) -> dict[str, Values]:
        """The rows of each tab with the value of every formula."""
        return memory.calculated(self.book, self.lists)


def packed(written: Drafted, *, stored: bool = True) -> bytes:
    """A written workbook as a file, with or without the values of its formulas."""
    values = written.values if stored else None
    return zipped(pack.parts_of(written.book, written.dated, written.texts, written.lists, values))


def date_of(season: Season) -> datetime.date:
    """The date a workbook carries where none is given: SOURCE_DATE_EPOCH, else the season's first day."""
    epoch = os.environ.get("SOURCE_DATE_EPOCH")
    if epoch:
        try:
            return datetime.datetime.fromtimestamp(int(epoch), datetime.UTC).date()
        except (ValueError, OverflowError, OSError):
            raise ValueError(f"SOURCE_DATE_EPOCH is {epoch}; it takes seconds since 1970, a whole number") from None
    first = season.settings.get("first_day")
    return first if isinstance(first, datetime.date) else datetime.date(2000, 1, 1)


def plan_of(season: Season, rows_of: Mapping[str, int] = USUAL_ROWS) -> Plan:
    """Where everything stands in the season's workbook."""
    tabs = registered(season.records)
    ours = {key: rows_of[key] for key in season.tables}
    layouts = [layout_of_tab(each.tab, each.tab.rows(ours)) for each in tabs if isinstance(each.tab, TableTab)]
    layouts += [each.layout(ours) for each in tabs if each.layout]
    by_key = {layout.key: layout for layout in layouts}
    return Plan(
        season.measures,
        season.currency,
        coin_digits(season.currency),
        season.records,
        season.stock,
        by_key,
        words.numbers(season.tables),
    )


def order(records: bool) -> list[str]:
    """The titles of a workbook's tabs."""
    return [each.tab.title for each in registered(records)]


def lists(records: bool) -> dict[str, TableTab]:
    """The lists of a workbook by their keys."""
    return {each.tab.key: each.tab for each in registered(records) if isinstance(each.tab, TableTab)}


def coin_digits(currency: str) -> int:
    """The decimals of a currency's smallest coin."""
    try:
        return int(calc.coin_digits(currency))
    except ValueError:  # not in the table: most coins are a hundredth
        return 2


def drafted(
    season: Season,
    dated: datetime.date,
    picked: Row | None = None,
    before: MadeFrom = FROM_NOTHING,
    rows_of: Mapping[str, int] = USUAL_ROWS,
) -> Drafted:
    """The workbook of a season, written and not yet packed."""
    book = Workbook()
    book.remove(book.active)
    ounces = season.measures.weight_unit == "oz"
    plan = plan_of(season, rows_of)
    formats = styles.number_formats(plan.coin_digits, 2 if ounces else 1, 2 if ounces else 0)
    draft = Draft(book, season, plan, formats, dated, picked, before)
    for each in registered(season.records):
        each.write(draft)
    _file(book, season, dated)
    return Drafted(book, draft.lists, dated, dict(enumerate(draft.chart_texts, start=1)), draft.read, plan)


def _file(book: Workbook, season: Season, dated: datetime.date) -> None:
    """The file's own facts; the program that opens it is asked to calculate anew."""
    book.properties.title = f"Candle season workbook: {season.settings['season']}"
    book.properties.subject = start.SUBJECT
    book.properties.creator = f"candlecalc {__version__}"
    book.properties.lastModifiedBy = f"candlecalc {__version__}"
    book.properties.keywords = "candles; costing; batch; prices"
    book.properties.description = start.FORMAT_WORDS
    book.properties.language = "en"
    book.properties.created = datetime.datetime(dated.year, dated.month, dated.day)
    book.calculation.fullCalcOnLoad = True
    book.worksheets[0].sheet_view.tabSelected = True
