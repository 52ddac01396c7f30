"""What people do to the lists of sales: rows cut, filled, cleared and sorted, and slips as each language has them.

Done in LibreOffice by its own commands; afterwards every cell is as if what stands were typed there.
"""

import datetime
from typing import NamedTuple

import books
import engine
import pytest
from gestures import Rows, torn_or_twice
from libreoffice import Error
from test_engines import by_gnumeric, differences, spoilt
from year_workbook import type_in

from candlecalc.season.tables import TABLES

DAY = datetime.date(2027, 8, 10)
TIN, OTHER, BOX = "Pear and honey tin", "Bitter orange tin", "Two tins in a box"
SALES = [  # day, place, product, pieces, what else
    (31, 0, TIN, 2.0, {"order": "B*7", "payout": "P?1"}),
    (32, 1, OTHER, 1.0, {"order": "A-1"}),
    (32, 1, TIN, 3.0, {"order": "A-1", "postage": 6.0}),
    (30, 2, BOX, 1.0, {"tax_rate": 0.05, "paid_on": DAY}),
    (35, 1, TIN, 6.0, {"kind": "out"}),
    (40, 1, TIN, 2.0, {"kind": "sold there"}),
    (41, 0, TIN, 1.0, {"kind": "returned", "became": "back in stock"}),
    (33, 0, None, None, {"kind": "refund", "price": 4.0}),
    (34, 2, None, None, {"kind": "gift card sold", "price": 20.0}),
    (37, 0, TIN, 4.0, {"order": "b*7", "payout": "P?1", "payout_sum": 60.0}),
    (37, 0, TIN, 5.0, {"order": "BX7", "payout": "PX1", "payout_sum": 50.0}),
    (38, 0, TIN, 1.0, {"order": "B*7", "payout": "p?1"}),
    (38, 0, OTHER, 3.0, {"order": 4711.0, "payout": 903.0}),
    (39, 0, OTHER, 7.0, {"order": "4711", "payout": "903", "payout_sum": 70.0}),
]  # fmt: skip
LOCALES = ("de-DE", "fr-FR")
ALSO = {"prices": "price", "tax_rates": "rate"}  # whose rows hold from a day on


def later(days):
    return DAY + datetime.timedelta(days=days)


def season():
    """The small shop with opening candles, a price and a fee that change, two areas, and a line of each kind."""
    made = books.small().with_records()
    pours = [(TIN, 60.0), (OTHER, 80.0), (BOX, 20.0)]
    type_in(made, "pours", [
        {"date": DAY, "batch": float(batch), "product": product, "good": 30.0, "kind": "opening", "cost": cost}
        for batch, (product, cost) in enumerate(pours, start=1)
    ])  # fmt: skip
    places = [row for _, row in made.rows("places")]
    names = [row["place"] for row in places]
    prices = [
        {"product": product, "place": place, "price": price}
        for product, price in ((TIN, 10.5), (OTHER, 12.25), (BOX, 25.0))
        for place in names
    ]
    type_in(made, "prices", [*prices, prices[0] | {"price": 11.75, "holds_from": later(31)}])
    type_in(made, "places", [*places, places[0] | {"fee": 0.05, "holds_from": later(31)}])
    type_in(made, "tax_rates", [{"date": later(32), "rate": 0.07}, {"date": later(30), "rate": 0.04, "area": "North"}])
    type_in(made, "sales", [
        {"date": later(day), "place": names[place], "product": product, "pieces": pieces, **more}
        for day, place, product, pieces, more in SALES
    ])  # fmt: skip
    type_in(
        made, "market_days", [{"date": later(day), "place": names[0], "fee": 20.0, "hours": 5.0} for day in (36, 43)]
    )
    type_in(made, "market_lines", [
        {"date": later(36), "product": TIN, "along": 9.0, "back": 5.0, "given": 1.0},
        {"date": later(43), "product": OTHER, "sold": 3.0},
        {"date": later(43), "product": TIN, "along": 4.0, "back": 4.0},
    ])  # fmt: skip
    return made


class Slip(NamedTuple):
    """What is typed into the first row of a list, and what is said beside it."""

    table: str
    key: str
    text: str
    words: str


SLIPS = {
    "de-DE": [
        Slip("sales", "price", "12.50", "Price each: type the number alone"),
        Slip("sales", "pieces", "1/2", "How many: type the number alone"),
        Slip("sales", "tax_rate", "7", "Tax rate: takes a percentage"),
        Slip("market_lines", "back", "zwei", "Brought back: type the number alone"),
        Slip("market_days", "hours", "1:30", "Hours: is it a time of day?"),
        Slip("tax_rates", "rate", "0.07", "Tax rate: type the number alone"),
    ],
    "fr-FR": [
        Slip("sales", "kind", "sale", "Kind: takes refund"),
        Slip("sales", "date", "30/2/2027", "Date: takes a date such as"),
        Slip("sales", "product", "Pear and honey tin ", "Product: not on Recipes"),
        Slip("market_lines", "product", "1/2", "Product: not on Recipes"),
        Slip("prices", "holds_from", "lundi", "From: takes a date such as"),
        Slip("places", "holds_from", "31.2.2027", "From: takes a date such as"),
    ],
}


class Tried:
    """The gestures of one language, and the values after each."""

    def __init__(self, locale, book, office):
        self.book, self.typed = book, engine.Held(book.path)
        self.done = dict(gestures(book))
        slips = [[("type", *book.cell(slip.table, slip.key, 0), slip.text)] for slip in SLIPS[locale]]
        found = iter(office.after_gestures(book.path, [[], *(rows.gestures for rows in self.done.values()), *slips]))
        self.untouched = next(found)
        self.after = {name: next(found) for name in self.done}
        self.after_slips = list(zip(SLIPS[locale], found, strict=True))

    def not_as_typed(self, rows, values):
        """Cells that show another value than where the same entries are typed: (shown, typed)."""
        entries = rows.entries()
        typed = self.typed.cells(self.typed.changed(entries), [*self.book.formulas, *entries])
        both = {cell: (values.get(cell, ""), value) for cell, value in typed.items()}
        return {cell: pair for cell, pair in both.items() if not alike(*pair)}


def alike(shown, typed):
    """What kind of error a cell shows is no matter."""
    errors = isinstance(shown, Error) and isinstance(typed, str) and typed.startswith("#")
    return errors or engine.alike(shown, typed, digits=9)


def gestures(book):
    """(what is done, the rows it is done to)."""
    for table, by in {"sales": "pieces", "market_lines": "product", **ALSO}.items():
        rows = Rows(book, table)
        rows.cut(rows.first, rows.first, to=rows.last + 1)
        yield f"{table}: the first row cut to a free row", rows
        rows = Rows(book, table)
        rows.sort(ascending=False, by=by)
        yield f"{table}: sorted down by {by}", rows
        rows = Rows(book, table)
        rows.clear(rows.first, rows.first)
        yield f"{table}: the first row cleared", rows
    keys = TABLES["sales"].keys
    yield from torn_or_twice(book, "sales", keys[keys.index("product") : keys.index("kind") + 1])


@pytest.fixture(scope="module")
def book(tmp_path_factory):
    return books.Book(season(), tmp_path_factory.mktemp("sales") / "sales.xlsx")


@pytest.fixture(scope="module", params=LOCALES)
def tried(request, book, office_in):
    return Tried(request.param, book, office_in(request.param))


def test_after_a_gesture_every_cell_is_as_if_the_rows_were_typed_so(tried):
    wrong = {name: tried.not_as_typed(rows, tried.after[name]) for name, rows in tried.done.items()}
    assert {name: found for name, found in wrong.items() if found} == {}


TWICE = "Line of an order that is there twice"


def named(line, *keys):
    """What stands in some entries of a line, whether it is a number or a text, in capitals or not."""
    texts = (line.get(key, "") for key in keys)
    return tuple(f"{text:g}" if isinstance(text, float) else str(text).casefold() for text in texts)


def of_lines(lines):
    """{row: (whether the line is there twice, the rows of its payout)} by what stands in the rows of Sales."""
    seen, found = set(), {}
    for row, line in sorted(lines.items()):
        name, payout = named(line, "order", "place", "product", "order_line", "kind"), named(line, "payout", "place")
        with_it = [each for each, other in lines.items() if named(other, "payout", "place") == payout]
        found[row] = bool(name[0]) and name in seen, with_it if payout[0] else []
        seen.add(name)
    return found


def test_orders_and_payouts_go_by_what_stands_in_the_rows_wherever_they_went(tried):
    letters, told, off = tried.book.plan.layouts["sales"].letters, [], []
    # A row that is torn apart is no line of an order any more.
    moved = {name: rows.rows for name, rows in tried.done.items() if name.startswith("sales") and "part" not in name}
    for name, lines in moved.items():
        values = tried.after[name]
        for row, (twice, with_it) in of_lines(lines).items():
            words, less = (values.get(("Sales", f"{letters[key]}{row}"), "") for key in ("doubts", "payout_off"))
            sums = [
                lines[each].get("payout_sum", 0) - values["Sales", f"{letters['comes_in']}{each}"] for each in with_it
            ]
            assert words.startswith(TWICE) == twice, (name, row)
            assert less == (pytest.approx(sum(sums), abs=1e-6) if with_it else ""), (name, row)
            told, off = [*told, twice], [*off, less]
    assert any(told) and {type(less) for less in off} == {float, str} and any(less not in ("", 0) for less in off)


def test_an_error_that_is_pasted_into_a_line_is_told_and_takes_no_other_line_from_its_order(book, office):
    letters = book.plan.layouts["sales"].letters
    second, third, _ = (row for row, (twice, _) in of_lines(Rows(book, "sales").rows).items() if twice)
    keys = ("order", "order_line", "payout", "payout_sum")
    typed = [{("Sales", f"{letters[key]}{second}"): "=NA()"} for key in keys]
    for key, values in zip(keys, office.edited_each(book.path, typed), strict=True):
        assert "takes " in values["Sales", f"{letters['status']}{second}"], key
        # The last line of its order and payout is there twice as before; of the payout nothing is said to be right.
        assert values["Sales", f"{letters['doubts']}{third}"].startswith(TWICE), key
        less = values["Sales", f"{letters['payout_off']}{third}"]
        assert isinstance(less, Error) or abs(less) > 1, key


def test_what_stayed_behind_when_rows_moved_is_found(tried):
    assert tried.not_as_typed(tried.done["sales: sorted down by pieces"], tried.untouched)


def test_every_cell_is_calculated_in_another_language_as_it_is_stored(tried):
    assert differences(tried.book, tried.untouched) == {}


def test_every_cell_is_calculated_by_gnumeric_as_it_is_stored(book, tmp_path):
    assert differences(book, by_gnumeric(spoilt(book.path, tmp_path / "spoilt.xlsx"))) == {}


def test_a_slip_is_told_beside_its_row(tried):
    said = {slip: tried.book.cell(slip.table, "status", 0) for slip, _ in tried.after_slips}
    wrong = {
        slip: values.get(said[slip])
        for slip, values in tried.after_slips
        if slip.words not in str(values.get(said[slip]))
    }
    assert wrong == {}
