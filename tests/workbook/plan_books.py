"""A small maker's plan in a workbook: candles, sets and what is wanted of them, typed; and what its tabs come to."""

import datetime

import books
import typed_in

from candlecalc.season.season import frame
from candlecalc.season.tables import TABLES
from candlecalc.workbook import book
from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.tabs.look.checks import AGREES

WAX = "Plain wax"
EVERY_DAY = [{"weekday": day, "pots": 100.0} for day in
             ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")]  # fmt: skip


def day(text):
    return datetime.date.fromisoformat(text)


def maker(first_day, *, cure=0.0, pot=1000.0, candles=(), materials=(), sets=(), **logs):
    """A season with candles of 100 g of plain wax and of other materials; `logs` are tables as they are typed.

    `candles` are names, `materials` {material: (its pack, {candle: how many each})}, `sets` {set: {candle: how many}}.
    """
    season = books.blank("gb").with_records()
    season.settings |= {
        "waste": 0.0,
        "largest_pot": pot,
        "first_day": first_day,
        "as_of": first_day - datetime.timedelta(1),
        "last_day": first_day + datetime.timedelta(360),
    }
    work = {"minutes": 1.0, "setup": 1.0, "usual_batch": 10.0}
    tables = {
        "materials": [
            {
                "material": WAX,
                "kind": "wax",
                "pack_size": 1000.0,
                "pack_unit": "g",
                "pack_price": 10.0,
                "cure_days": cure,
                "density": 0.9,
            },
            *(
                {"material": name, "kind": "other", "pack_size": pack, "pack_unit": "each", "pack_price": 3.0}
                for name, (pack, _) in dict(materials).items()
            ),
        ],
        "vessels": [{"vessel": "Mould", "use": "mould", "measured": "fill", "fill": 100.0, "fill_wax": WAX}],
        "recipes": [
            *({"product": name, "kind": "made", "vessel": "Mould", "wax": WAX, "load": 0.0} | work for name in candles),
            *({"product": name, "kind": "set"} | work for name in dict(sets)),
        ],
        "extras": [
            {"product": candle, "material": name, "count": float(each)}
            for name, (_, takes) in dict(materials).items()
            for candle, each in takes.items()
        ],
        "sets": [
            {"set": name, "product": candle, "count": float(each)}
            for name, holds in dict(sets).items()
            for candle, each in holds.items()
        ],
        "evenings": EVERY_DAY,
        **logs,
    }
    for key, rows in tables.items():
        season.tables[key] = frame([dict.fromkeys(TABLES[key].keys) | row for row in rows], TABLES[key])
    return season


class Planned:
    """What the tabs of a season's workbook come to."""

    def __init__(self, season):
        self.season, made = season, typed_in.worked_out(season)
        self.plan, self.values = made.plan, made.values

    def rows(self, table, *keys):
        """The rows of a tab that say something, by the columns asked for."""
        there = self.plan.layouts[table]
        letters = list(there.letters)
        found = []
        for row in self.values[there.title][FIRST_ROW - 1 : there.last_row]:
            line = tuple(row[letters.index(key)] for key in keys)
            if line[0] not in (None, ""):
                found.append(line)
        return found

    def column(self, table, key, **where):
        """A column's values in the rows where others hold a value."""
        return [line[0] for line in self.rows(table, key, *where) if line[1:] == tuple(where.values())]

    def type_over(self, title, cell, value):
        """A value over a formula, and all of it calculated anew."""
        made = book.drafted(self.season, books.DATED, rows_of=typed_in.rows_of(self.season))
        made.book[title][cell].value = value
        self.values = made.values

    def turned(self):
        """The lines of Checks that do not agree."""
        return {row[0] for row in self.values["Checks"][FIRST_ROW - 1 :] if row[0] and row[6] != AGREES}
