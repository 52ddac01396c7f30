"""Seasons typed into a workbook that was made before, as a maker types: a fifth of the time that a new one takes."""

import datetime
from dataclasses import replace

from candlecalc.season.tables.once import MADE_FOR, SETTINGS, WHAT_IF
from candlecalc.workbook import book
from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.cells.values_tab import ValuesTab
from candlecalc.workbook.tabs.set_up import settings
from candlecalc.workbook.writing import memory
from candlecalc.workbook.writing.listed import NOT_LISTED

DATED = datetime.date(2027, 8, 2)
KEPT = 4  # workbooks: they take memory
SPARE = 2  # blank rows under what is typed
ENTRY = 2  # the column of entries on Settings
ROOMS = 4  # each list has a multiple of so many rows, so that seasons which are alike fit the same workbook
# Settings that stand in cells besides their own.
ON_PAGES = (*MADE_FOR.keys, *WHAT_IF.keys, "first_day", "last_day", "maker", "place")


class Held:
    """A written workbook in the engine, and what is typed in it: {(tab, row, column): value}."""

    def __init__(self, workbook, lists, typed):
        self.workbook, self.lists, self.typed = workbook, lists, typed
        self.engine = memory.held(workbook, lists)

    def values(self, typed):
        """The rows of each tab with other entries; a cell of which they have nothing is cleared."""
        for place in {**self.typed, **typed}:
            if typed.get(place) != self.typed.get(place):
                self.engine.set_value(*place, typed.get(place))
        self.typed = typed
        return memory.values_of(self.engine, self.workbook, self.lists)


class Kept:
    """What was asked for last, each by its key."""

    def __init__(self, many):
        self.many, self.held = many, {}

    def asked(self, key, made):
        held = self.held[key] = self.held.pop(key, None) or made()
        if len(self.held) > self.many:
            del self.held[next(iter(self.held))]
        return held


seasons, workbooks = Kept(KEPT), Kept(KEPT)


def calculated(workbook, lists):
    """What `memory.calculated` gives, by typing over a workbook of the same formulas if there was one."""
    cells = {(sheet.title, *place): cell for sheet in workbook.worksheets for place, cell in sheet._cells.items()}
    formulas = {place: cell._value for place, cell in cells.items() if cell.data_type == "f"}
    values = {place: memory.plain(cell._value) for place, cell in cells.items() if place not in formulas}
    typed = {place: value for place, value in values.items() if value is not None}
    # Such a value hides a formula of its list, which would not come back once it is cleared.
    over = frozenset(place for place in typed if _goes_down(lists, *place))
    key = hash((frozenset(formulas.items()), over, repr(lists)))
    return workbooks.asked(key, lambda: Held(workbook, lists, typed)).values(typed)


def _goes_down(lists, tab, row, column):
    listed = lists.get(tab, NOT_LISTED)
    return row in listed.rows and column in listed.columns and bool(listed.columns[column].formula)


def rows_of(season):
    """Rows for what is typed in a season, and two to spare at least."""
    return {key: -(-(season.tables.room(key) + SPARE) // ROOMS) * ROOMS for key in season.tables}


def worked_out(season, dated=DATED):
    """The workbook of a season with few rows to spare, and its values."""
    rooms = rows_of(season)

    def made():
        written = book.drafted(season, dated, rows_of=rooms)
        return written, Held(written.book, written.lists, typed(season, written.plan))

    written, held = seasons.asked(repr((book.plan_of(season, rooms), dated, _on_pages(season))), made)
    found = replace(written)
    found.__dict__["values"] = held.values(typed(season, found.plan))
    return found


def _on_pages(season):
    """What of a season stands in cells that are no entries: for another, a workbook is made anew."""
    products = [(row["product"], row["kind"]) for _, row in season.rows("recipes")]
    return products, [season.settings.get(key) for key in ON_PAGES]


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
