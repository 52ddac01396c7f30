"""Seasons typed into a workbook that was made before, as a maker types: a fifth of the time that a new one takes."""

import datetime
from dataclasses import dataclass, field

from candlecalc.season.tables.once import MADE_FOR, SETTINGS, WHAT_IF
from candlecalc.workbook import book
from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.cells.values_tab import ValuesTab
from candlecalc.workbook.tabs.set_up import settings
from candlecalc.workbook.writing import memory

DATED = datetime.date(2027, 8, 2)
KEPT = 4  # workbooks: they take memory
SPARE = 2
ENTRY = 2  # the column of entries on Settings
ROOMS = 4  # each list has a multiple of so many rows, so that seasons which are alike fit the same workbook
# Settings that stand in cells besides their own.
ON_PAGES = (*MADE_FOR.keys, *WHAT_IF.keys, "first_day", "last_day", "maker", "place")


@dataclass
class Held:
    """A workbook in the engine, and what is typed in it."""

    written: book.Drafted
    engine: object
    typed: dict = field(default_factory=dict)


kept = {}


def rows_of(season):
    """Rows for what is typed in a season, and two to spare at least."""
    return {key: -(-(season.tables.room(key) + SPARE) // ROOMS) * ROOMS for key in season.tables}


def worked_out(season, dated=DATED):
    """The workbook of a season with few rows to spare, and its values."""
    rooms = rows_of(season)
    key = repr((book.plan_of(season, rooms), dated, _on_pages(season)))
    held = kept.pop(key, None) or _made(season, dated, rooms)
    kept[key] = held  # the last asked for is put last
    if len(kept) > KEPT:
        del kept[next(iter(kept))]
    _type(held, season)
    found = book.Drafted(**{name: getattr(held.written, name) for name in held.written.__dataclass_fields__})
    found.__dict__["values"] = memory.values_of(held.engine, found.book, found.lists)
    return found


def _on_pages(season):
    """What of a season stands in cells that are no entries: for another, a workbook is made anew."""
    products = [(row["product"], row["kind"]) for _, row in season.rows("recipes")]
    return products, [season.settings.get(key) for key in ON_PAGES]


def _made(season, dated, rooms):
    written = book.drafted(season, dated, rows_of=rooms)
    return Held(written, memory.held(written.book, written.lists), typed(season, written.plan))


def _type(held, season):
    """What is typed for another season; a cell of which it has nothing is cleared."""
    now = typed(season, held.written.plan)
    for place in {**held.typed, **now}:
        if now.get(place) != held.typed.get(place):
            held.engine.set_value(*place, now.get(place))
    held.typed = now


def typed(season, plan):
    """{(tab, row, column): value} of all that a season has in a workbook that is no formula."""
    found = {
        (settings.TAB.title, settings.line_of(key), ENTRY): memory.plain(season.settings[key])
        for key in SETTINGS.keys
        if season.settings.get(key) is not None
    }
    for key, tab in book.lists(season.records).items():
        if isinstance(tab, ValuesTab):
            rows = enumerate(tab.values(season))
        elif key in season.tables:
            rows = season.rows(key)
        else:
            continue
        last = plan.layouts[key].last_row
        for at, row in rows:
            for column, name in enumerate(tab.columns, start=1):
                if row.get(name) is not None and FIRST_ROW + at <= last:
                    found[tab.title, FIRST_ROW + at, column] = memory.plain(row[name])
    return found
