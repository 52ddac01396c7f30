"""What people do to the year's logs: rows cut, copied, filled, cleared and sorted, and a pour that is typed late.

Done in LibreOffice by its own commands. Afterwards every cell is as if what stands were typed there, and every
figure of a whole row is what the reference says of the records in the order they then have.
"""

from dataclasses import replace
from fractions import Fraction

import books
import engine
import pytest
from gestures import Rows
from libreoffice import Error
from year_records import Material, Purchase
from year_reference import worked_out
from year_seasons import FIRST, year
from year_workbook import Typed, compared, season_of, type_in, without_sets

YEARS = [(6, "fifo"), (10, "average")]
# The records of the reference that the rows of a log are; those of Rates by day and Extra parts are in no order.
LOGS = {"purchases": "purchases", "pours": "pours", "instead": "changes", "moves": "moves", "counts": "counts"}
TABLES_TRIED = (*LOGS, "rates", "extras")
PART = {  # entries side by side that are cut apart from the rest of their row
    "purchases": ("packs", "price"), "pours": ("good", "planned"), "instead": ("other", "amount"), "moves": ("product", "amount"),
    "counts": ("product", "counted"), "rates": ("paid_rate", "overhead"), "extras": ("material", "count"),
}  # fmt: skip
BY = {
    "purchases": "price", "pours": "product", "instead": "material", "moves": "amount", "counts": "counted",
    "rates": "overhead", "extras": "count",
}  # fmt: skip
RIBBON = Material("Ribbon", "packaging", Fraction(20), "each")


class Records:
    """A small random year in a workbook, with a ribbon to every candle as an extra part."""

    def __init__(self, seed, method, folder):
        made = without_sets(year(seed, method))
        made = replace(made, materials=(*made.materials, RIBBON), purchases=(*made.purchases, *ribbons()))
        season = season_of(made)
        products = dict.fromkeys(recipe.product for recipe in made.recipes)
        extras = enumerate(products, start=1)
        type_in(season, "extras", [{"product": each, "material": RIBBON.name, "count": float(n)} for n, each in extras])
        self.year, self.book = made, books.Book(season, folder / f"{method}.xlsx")
        self.typed = engine.Held(self.book.path)
        rows = {table: [row for _, row in sorted(Rows(self.book, table).rows.items())] for table in LOGS}
        self.known = {table: list(zip(rows[table], getattr(made, name), strict=True)) for table, name in LOGS.items()}

    def after(self, rows, also=()):
        """The year with its records in the order of the rows of a log; `also` are (row, record) that are new."""
        name = LOGS.get(rows.table.key)
        if not name:
            return self.year
        known = [*self.known[rows.table.key], *also]
        records = [next(record for row, record in known if row == found) for _, found in sorted(rows.rows.items())]
        return replace(self.year, **{name: tuple(records)})

    def differing(self, made, values):
        """Figures that are not what the reference says of a year; some must have been compared."""
        tabs = Typed(made, self.book.plan, values)
        different, count = compared(worked_out(tabs.as_poured()), tabs.figures())
        assert count > 150
        return different

    def not_as_typed(self, rows, values):
        """Cells that show another value than where the same entries are typed: (shown, typed)."""
        entries = rows.entries()
        typed = self.typed.cells(self.typed.changed(entries), [*self.book.formulas, *entries])
        both = {cell: (values.get(cell, ""), value) for cell, value in typed.items()}
        return {cell: pair for cell, pair in both.items() if not same(*pair)}


def ribbons():
    return [Purchase(FIRST, RIBBON.name, packs=Fraction(90), price=Fraction(480 + 10 * n)) for n in (1, 2)]


def same(shown, typed):
    """What kind of error a cell shows is no matter."""
    errors = isinstance(shown, Error) and isinstance(typed, str) and typed.startswith("#")
    return errors or engine.alike(shown, typed, digits=9)


@pytest.fixture(scope="module", params=YEARS, ids=lambda param: param[1])
def records(request, tmp_path_factory):
    return Records(*request.param, tmp_path_factory.mktemp("gestures"))


def whole(book):
    """{what is done: the rows it is done to}: where whole rows go to another place, or are gone."""
    for table in TABLES_TRIED:
        start = Rows(book, table)
        middle = sorted(start.rows)[len(start.rows) // 2]
        for row in dict.fromkeys((start.first, middle, start.last)):
            done = Rows(book, table)
            done.cut(row, row, to=done.last + 1)
            yield f"{table}: row {row} cut to a free row", done
        done = Rows(book, table)
        done.cut(done.first, done.last, to=done.first + 1)
        yield f"{table}: all rows cut down one", done
        for ascending in (True, False):
            done = Rows(book, table)
            done.sort(ascending, by=BY[table])
            yield f"{table}: sorted {'up' if ascending else 'down'} by {BY[table]}", done
        if table not in ("rates", "extras"):  # of which the reference has the sums alone
            done = Rows(book, table)
            done.clear(done.first, done.first)
            yield f"{table}: a row above cleared", done


def others(book):
    for table in TABLES_TRIED:
        first, *_ = PART[table]
        done = Rows(book, table)
        keys = done.keys[done.keys.index(first) : done.keys.index(PART[table][-1]) + 1]
        done.cut(done.first, done.first, to=done.last + 1, keys=keys)
        yield f"{table}: part of a row cut", done
        done = Rows(book, table)
        done.copy(done.first, done.first, to=done.last + 1)
        yield f"{table}: a row copied", done
        done = Rows(book, table)
        done.fill_down(done.first, min(done.first + 1, done.end))
        yield f"{table}: filled down", done
        done = Rows(book, table)
        done.cut(done.last, done.last, to=done.first)
        yield f"{table}: a row cut onto a filled one", done
