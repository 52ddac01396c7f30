"""What people do to the year's logs: rows cut, copied, filled, cleared and sorted, and a pour that is typed late.

Done in LibreOffice by its own commands, in German and in French. Afterwards every cell is as if what stands were typed
there, and every figure of whole rows is what the reference says of the records in the order they then have.
"""

from dataclasses import replace
from datetime import date
from fractions import Fraction
from typing import NamedTuple

import books
import engine
import pytest
from gestures import Rows, torn_or_twice
from libreoffice import Error
from test_checks import verdicts
from test_engines import by_gnumeric, differences, spoilt
from year_records import Material, Pour, Purchase
from year_reference import worked_out
from year_seasons import FIRST, year
from year_workbook import Typed, compared, season_of, type_in, without_sets

from candlecalc.season.tables import TABLES

# The language of the office, the year and its method, and the logs that are tried there.
TRIED = [
    ("de-DE", 6, "fifo", ("purchases", "pours", "rates")),
    ("fr-FR", 10, "average", ("instead", "moves", "counts", "extras")),
]
# The records of the reference that the rows of a log are; those of Rates by day and Extra parts are in no order.
LOGS = {"purchases": "purchases", "pours": "pours", "instead": "changes", "moves": "moves", "counts": "counts"}
MOST_TYPED = ("purchases", "pours", "moves")
PART = {  # entries side by side that are cut apart from the rest of their row
    "purchases": ("packs", "price"),
    "pours": ("good", "planned"),
    "instead": ("other", "amount"),
    "moves": ("product", "amount"),
}
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


class Tried:
    """The gestures of one language on some logs of a year, and the values after each."""

    def __init__(self, locale, records, tables, office):
        self.locale, self.records = locale, records
        self.whole, self.others = dict(whole(records.book, tables)), dict(others(records.book, tables))
        self.late, self.pour = late(records)
        gestures = [rows.gestures for rows in (*self.whole.values(), *self.others.values(), self.late)]
        typed = [[("type", *slip.cell(records.book), slip.text)] for slip in SLIPS[locale]]
        found = iter(office.after_gestures(records.book.path, [[], *gestures, *typed]))
        self.untouched = next(found)
        self.after = {name: next(found) for name in (*self.whole, *self.others)}
        self.after_late = next(found)
        self.after_slips = list(zip(SLIPS[locale], found, strict=True))


@pytest.fixture(scope="module", params=TRIED, ids=lambda param: f"{param[2]}, {param[0]}")
def tried(request, tmp_path_factory, office_in):
    locale, seed, method, tables = request.param
    return Tried(locale, Records(seed, method, tmp_path_factory.mktemp("gestures")), tables, office_in(locale))


def whole(book, tables):
    """(what is done, the rows it is done to), where whole rows go to another place or are gone."""
    for table in tables:
        start = Rows(book, table)
        middle = sorted(start.rows)[len(start.rows) // 2]
        for row in dict.fromkeys((start.first, middle, start.last) if table in MOST_TYPED else (start.first,)):
            done = Rows(book, table)
            done.cut(row, row, to=done.last + 1)
            yield f"{table}: row {row} cut to a free row", done
        if table in MOST_TYPED:
            done = Rows(book, table)
            done.cut(done.first, done.last, to=done.first + 1)
            yield f"{table}: all rows cut down one", done
        for ascending in (True, False):
            done = Rows(book, table)
            done.sort(ascending, by=BY[table])
            yield f"{table}: sorted {'up' if ascending else 'down'} by {BY[table]}", done
        if table not in ("rates", "extras"):  # the reference has what comes of all of their rows
            done = Rows(book, table)
            done.clear(done.first, done.first)
            yield f"{table}: a row above cleared", done


def others(book, tables):
    """The same where a row is torn apart, stands twice, or takes another's place."""
    for table in (table for table in tables if table in PART):
        first, last = PART[table]
        keys = TABLES[table].keys
        yield from torn_or_twice(book, table, keys[keys.index(first) : keys.index(last) + 1])


def late(records):
    """A pour of March typed under those of the whole year: its rows, and what the reference calls it."""
    rows, product = Rows(records.book, "pours"), records.year.recipes[0].product
    row = {"date": date(2026, 3, 5), "batch": 900, "product": product, "good": 7}
    rows.type(rows.last + 1, row)
    return rows, (row, Pour(row["date"], "late", product, row["good"]))


def test_after_a_gesture_every_cell_is_as_if_the_rows_were_typed_so(tried):
    cases = {**tried.whole, **tried.others}
    wrong = {name: tried.records.not_as_typed(rows, tried.after[name]) for name, rows in cases.items()}
    assert {name: found for name, found in wrong.items() if found} == {}


def test_after_whole_rows_moved_every_figure_is_what_the_reference_says_of_them(tried):
    records = tried.records
    wrong = {name: records.differing(records.after(rows), tried.after[name]) for name, rows in tried.whole.items()}
    assert {name: found for name, found in wrong.items() if found} == {}


def test_figures_that_stayed_behind_when_rows_moved_are_found(tried):
    records, sorted_down = tried.records, [rows for name, rows in tried.whole.items() if "sorted down" in name]
    assert any(records.differing(records.after(rows), tried.untouched) for rows in sorted_down)


def test_a_pour_typed_late_counts_on_its_day_and_no_batch_number_changes(tried):
    records, numbers = tried.records, Typed(None, tried.records.book.plan, tried.after_late)
    assert records.differing(records.after(tried.late, also=[tried.pour]), tried.after_late) == []
    typed = [row["batch"] for _, row in sorted(tried.late.rows.items())]
    assert [number for _, (number,) in numbers.rows("pours", "batch")] == typed


# --- in another language, and in another program ------------------------------------------------


def test_every_cell_is_calculated_in_another_language_as_it_is_stored(tried):
    assert differences(tried.records.book, tried.untouched) == {}


def test_every_cell_is_calculated_by_gnumeric_as_it_is_stored(tried, tmp_path):
    book = tried.records.book
    assert differences(book, by_gnumeric(spoilt(book.path, tmp_path / "spoilt.xlsx"))) == {}


def test_a_formula_that_gives_another_number_elsewhere_is_found(tried):
    book = tried.records.book
    cell = book.cell("stock", "value", 0)
    assert list(differences(book, tried.untouched | {cell: tried.untouched[cell] + 0.01})) == [cell]


# --- slips --------------------------------------------------------------------------------------


class Slip(NamedTuple):
    """What is typed into the first row of a log, whether its row still counts, and what is said of it."""

    table: str
    key: str
    text: str
    counts: bool
    words: str

    def cell(self, book, key=""):
        return book.cell(self.table, key or self.key, 0)


NUMBER, DAY = "type the number alone", "takes a date such as 2026-03-07"
SLIPS = {
    "de-DE": [
        Slip("purchases", "packs", "1/2", False, f"Packs: {NUMBER}"),
        Slip("purchases", "price", "12.50", False, f"Price: {NUMBER}"),
        Slip("purchases", "material", "Soy wax ", False, "Material: not on Materials"),
        Slip("purchases", "date", "31.2.2026", False, f"Date: {DAY}"),
        Slip("purchases", "date", "'2026-05-03", False, f"Date: {DAY}"),
        Slip("purchases", "date", "3.5.2026 10:00", False, f"Date: {DAY}"),
        Slip("purchases", "expiry", "im Mai", True, f"Use by: {DAY}"),
        Slip("pours", "good", "WAHR", False, "Good: takes a whole number"),
        Slip("pours", "good", "zwölf", False, f"Good: {NUMBER}"),
        Slip("pours", "batch", "1/2", False, f"Batch number: {NUMBER}"),
        Slip("pours", "batch", "2", False, "Batch number: twice on this tab"),
        Slip("pours", "hours", "1:30", True, "Hours: is it a time of day?"),
        Slip("pours", "product", "Cedar candle ", False, "Product: not on Recipes"),
        Slip("rates", "overhead", "12.5", False, f"Production overhead: {NUMBER}"),
        Slip("rates", "overhead", "0:05", True, "Production overhead: is it a time of day?"),
        Slip("rates", "date", "31/12", False, f"From: {DAY}"),
    ],
    "fr-FR": [
        Slip("instead", "batch", "1/2", True, "Material that the batch does not take"),
        Slip("instead", "amount", "12.5", False, f"Amount: {NUMBER}"),
        Slip("instead", "material", "Soy wax ", False, "Material in the recipe: not on Materials"),
        Slip("moves", "amount", "1/2", True, "Amount: is it a date?"),
        Slip("moves", "amount", "0:05", True, "Amount: is it a time of day?"),
        Slip("moves", "amount", "VRAI", False, "Amount: takes a number"),
        Slip("moves", "kind", "gifts", False, "Kind: takes test or sample"),
        Slip("moves", "date", "30/2/2026", False, f"Date: {DAY}"),
        Slip("counts", "counted", "1/2", True, "Counted: is it a date?"),
        Slip("counts", "counted", "deux", False, f"Counted: {NUMBER}"),
        Slip("counts", "date", "'2026-05-03", False, f"Date: {DAY}"),
        Slip("extras", "count", "1/2", False, "How many: takes a number"),
        Slip("extras", "material", "Ribbon ", False, "Material: not on Materials"),
        Slip("extras", "product", "Cedar candle ", False, "Product: not on Recipes"),
    ],
}


def test_a_slip_is_told_beside_its_row_and_one_that_is_refused_on_checks(tried):
    book, wrong = tried.records.book, {}
    for slip, values in tried.after_slips:
        said, ready = (values.get(slip.cell(book, key)) for key in ("status", "ready"))
        verdict = verdicts(values)[f"{TABLES[slip.table].title}: every row begun is whole"]
        refused = isinstance(ready, Error) and verdict == "to fix"
        if slip.words not in said or refused == slip.counts:
            wrong[slip] = said, ready, verdict
    assert wrong == {}


def test_where_a_row_does_not_count_no_stock_shows_another_number(tried):
    """What moves is an error that is seen; what is known of a day or was counted may be blank."""
    for slip, values in tried.after_slips:
        if not slip.counts:
            assert moved(tried, values) == {}, slip


def moved(tried, values):
    """Amounts and values of Stock and Candles that are another number than before."""
    book, found = tried.records.book, {}
    for table in ("stock", "candles"):
        for key in ("left", "value"):
            for row in range(book.plan.layouts[table].rows):
                cell = book.cell(table, key, row)
                before, after = tried.untouched.get(cell), values.get(cell)
                if isinstance(after, float) and not books.alike(before, after):
                    found[cell] = before, after
    return found
