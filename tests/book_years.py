"""Seasons that a maker types for the tests of the books: small ones, each worked on paper beside its test."""

import contextlib
import datetime
from unittest import mock

import typed_in

from candlecalc.books import values_only
from candlecalc.books.handover import handed_over
from candlecalc.books.joining import Span
from candlecalc.books.reading import Reading
from candlecalc.season import presets
from candlecalc.season.season import empty, frame
from candlecalc.season.tables import TABLES
from candlecalc.workbook import book
from candlecalc.workbook.reports.report import Calculated


def day(month, number, year=2027):
    return datetime.date(year, month, number)


def worked(season, name="season"):
    """A season's workbook worked out: what the journal reads, and the draft."""
    return _read(season, name, typed_in.worked_out(season, season.settings["first_day"]))


def made(season, name="season"):
    """The same of a workbook made anew, of which a file may be written."""
    drafted = book.drafted(season, season.settings["first_day"], rows_of=typed_in.rows_of(season))
    return _read(season, name, drafted)


def _read(season, name, drafted):
    return Reading(name, Calculated(season, drafted)), drafted


def handed(season, first=None, last=None, closed_to=None, earlier=None, *, whole=False):
    """What is handed over; the workbook of values alone, which takes longest, is written where the `whole` is asked."""
    read, drafted = made(season) if whole else worked(season)
    span = Span(first or read.first_day, last or read.last_day, closed_to)
    with contextlib.nullcontext() if whole else no_values():
        return handed_over([(read, drafted)], span, {}, earlier)


def no_values():
    """While it holds, the workbook of values alone is a file of nothing."""
    return mock.patch.object(values_only, "packed", return_value=b"")


def blank(region, first, last, **settings):
    """An empty season with records, from a day to a day, in grams."""
    season = empty(presets.blank_settings(region, first)).with_records()
    season.settings |= {"first_day": first, "last_day": last, "registered": "yes", "waste": 0.0, "weight_unit": "g"}
    season.settings |= {"temperature_unit": "C", "largest_pot": 5000.0, "scale_step": 1.0, "maker": "Test maker"}
    season.settings |= settings
    return season


def type_in(season, **tables):
    """Put rows into the tables of a season."""
    for key, rows in tables.items():
        season.tables[key] = frame([dict.fromkeys(TABLES[key].keys) | row for row in rows], TABLES[key])
    return season


def set_up(wax_each=480.0):
    """One candle of wax and a jar, six paid minutes each."""
    return {
        "materials": [
            {"material": "Wax", "kind": "wax", "pack_size": 1000.0, "pack_unit": "g", "pack_price": 5.0},
            {"material": "Jar", "kind": "vessel", "pack_size": 103.0, "pack_unit": "each", "pack_price": 200.0},
        ],
        "vessels": [
            {"vessel": "Jar", "use": "stays", "bought_as": "Jar", "measured": "fill", "fill": wax_each,
             "fill_wax": "Wax"}
        ],
        "recipes": [
            {"product": "Candle", "kind": "made", "vessel": "Jar", "wax": "Wax", "load": 0.0, "minutes": 6.0,
             "setup": 0.0, "usual_batch": 50.0, "paid_share": 1.0}
        ],
    }  # fmt: skip


def place(name, kind="own web shop", **more):
    return {"place": name, "kind": kind, "per_order": 1.0, "collector": "maker", "margin": 0.2, "rules": "us"} | more


def sale(on, where, pieces, price, **more):
    row = {
        "date": on,
        "place": where,
        "product": "Candle",
        "pieces": pieces and float(pieces),
        "price": price,
        "paid_on": on,
    }
    return row | more


def entry(on, debit, credit, amount, kind, text="as agreed"):
    return {"date": on, "debit": debit, "credit": credit, "amount": amount, "kind": kind, "text": text}


def expense(on, payee, category, amount, **more):
    row = {"date": on, "payee": payee, "document": f"{payee} {on}", "category": category, "amount": amount}
    return row | {"paid_on": on} | more


# Orders of the web shop by their pieces: 100 of them. The fee of each is rounded by itself; in all nothing is lost so.
ORDERS = {1: 20, 2: 16, 3: 58, 4: 6}


def worked_month():
    """A maker's month: what came, was poured and sold, typed as it happened; the test's paper has what it comes to."""
    first, last = day(3, 1), day(3, 31)
    season = blank("us", first, last, tax_rate=0.08, paid_rate=12.0, production_overhead=600.0, season_hours=100.0)
    season.settings["currency"] = "USD"
    bought = {"date": day(3, 2), "document": "J-1", "material": "Jar", "packs": 10.0, "price": 200.0, "charges": 90.0,
              "discount": 236.0, "supplier": "Glass works", "paid_on": day(3, 5)}  # fmt: skip
    at_start = {"date": first, "material": "Wax", "packs": 240.0, "price": 1200.0, "kind": "opening"}
    orders = [pieces for pieces, times in ORDERS.items() for _ in range(times)]
    web = [sale(day(3, 12), "Web shop", pieces, 18.0, order=f"W{at}") for at, pieces in enumerate(orders)]
    opened = "opening balance"
    return type_in(
        season,
        **set_up(),
        places=[
            place("Web shop", fee=0.03, fee_basis="gross", fee_order=0.3, stated="before tax"),
            place("Stall", "own stall", stated="with tax"),
            place("Shop", "wholesale shop", stated="before tax", collector="nobody", discount=0.5),
        ],
        purchases=[at_start, bought],
        pours=[
            {"date": first, "batch": 1.0, "product": "Candle", "good": 160.0, "kind": "opening", "cost": 800.0},
            {"date": day(3, 8), "batch": 2.0, "product": "Candle", "good": 300.0},
            {"date": day(3, 10), "batch": 3.0, "product": "Candle", "good": 200.0},
        ],
        sales=[*web, sale(day(3, 16), "Shop", 200, 9.0, paid_on=day(3, 20))],
        market_days=[{"date": day(3, 14), "place": "Stall", "fee": 150.0}],
        market_lines=[{"date": day(3, 14), "product": "Candle", "sold": 120.0, "price": 18.0}],
        counts=[{"date": last, "product": "Candle", "counted": 88.0, "by": "Ann", "kept": "yes"}],
        expenses=[
            expense(day(3, 8), "Helper", "paid help at the bench", 600.0),
            expense(day(3, 9), "Landlord", "production overhead", 280.0),
            expense(day(3, 31), "Courier", "postage and delivery", 210.0),
        ],
        entries=[
            entry(first, "Bank and cash", "Capital", 5000.0, opened),
            entry(first, "Equipment", "Capital", 2400.0, opened),
            entry(first, "Capital", "Depreciation so far", 600.0, opened),
            entry(day(3, 9), "Production overhead", "Depreciation so far", 40.0, "depreciation"),
            entry(day(3, 20), "Discounts for early payment", "Bank and cash", 36.0, "early-payment discount"),
            entry(last, "Taken by the owner", "Bank and cash", 1000.0, "owner in or out"),
        ],
    )


def british_year():
    """A year registered for VAT at 20 %, prices with tax in them."""
    first, last = day(1, 1), day(12, 31)
    season = blank("gb", first, last, tax_rate=0.2, paid_rate=0.0, production_overhead=0.0, season_hours=100.0)
    jars = {"date": day(2, 1), "document": "J-1", "material": "Jar", "packs": 2.0, "price": 103.0, "claimed": 41.2,
            "supplier": "Glass works", "paid_on": day(2, 20)}  # fmt: skip
    wax = {"date": day(2, 1), "document": "X-1", "material": "Wax", "packs": 100.0, "price": 2.0, "claimed": 40.0,
           "supplier": "Wax works"}  # fmt: skip
    return type_in(
        season,
        **set_up(wax_each=500.0),
        places=[
            place("Web shop", stated="with tax", fee=0.1, fee_basis="gross", rules="gb"),
            place("Gallery", "consignment shop", stated="with tax", fee=0.4, fee_basis="net", rules="gb"),
        ],
        purchases=[jars, wax],
        pours=[{"date": day(3, 1), "batch": 1.0, "product": "Candle", "good": 150.0}],
        sales=[
            sale(day(5, 10), "Web shop", 60, 12.0),
            sale(day(6, 1), "Gallery", 30, None, kind="out", paid_on=None),
            sale(day(8, 1), "Gallery", 10, 15.0, kind="sold there", paid_on=None),
            sale(day(9, 1), "Web shop", 2, 12.0, kind="returned", became="back in stock"),
        ],
        expenses=[expense(day(7, 1), "Printer", "advertising", 120.0, tax=20.0)],
        entries=[
            entry(first, "Bank and cash", "Capital", 500.0, "opening balance"),
            entry(day(10, 7), "Sales tax or VAT owed", "Bank and cash", 30.0, "tax paid over"),
        ],
    )


def american_year(books="accrual"):
    """A year that sells in three areas: two whose tax the maker pays, one place that pays it itself."""
    first, last = day(1, 1), day(12, 31)
    season = blank("us", first, last, tax_rate=0.05, paid_rate=0.0, production_overhead=0.0, season_hours=100.0)
    season.settings |= {"currency": "USD", "books": books}
    jars = {"date": day(2, 1), "document": "J-1", "material": "Jar", "packs": 2.0, "price": 103.0, "paid_on": day(2, 1)}
    wax = {"date": day(2, 1), "document": "X-1", "material": "Wax", "packs": 100.0, "price": 2.0}
    return type_in(
        season,
        **set_up(wax_each=500.0),
        places=[
            place("Web shop", stated="before tax"),
            place("Marketplace", "marketplace", stated="before tax", collector="place", fee=0.1, fee_basis="net"),
        ],
        tax_rates=[
            {"date": first, "rate": 0.0625, "area": "North county"},
            {"date": first, "rate": 0.0825, "area": "South county"},
            {"date": day(7, 1), "rate": 0.085, "area": "South county"},
        ],
        purchases=[jars, wax],
        pours=[{"date": day(3, 1), "batch": 1.0, "product": "Candle", "good": 100.0}],
        sales=[
            sale(day(5, 10), "Web shop", 10, 16.0, area="North county"),
            sale(day(6, 10), "Web shop", 20, 16.0, area="South county"),
            sale(day(7, 10), "Web shop", 5, 16.0, area="South county", paid_on=None),
            sale(day(8, 10), "Marketplace", 8, 20.0, area="North county"),
            sale(day(9, 10), "Web shop", 1, 16.0),
        ],
    )


def busy_year(**settings):
    """A year with a line of every kind: open from before, held, given, broken, taken out, counted, unpaid.

    Of its four pairs one was packed beforehand.
    """
    season = american_year()
    first, last = day(1, 1), day(12, 31)
    season.settings |= {"paid_rate": 10.0, "production_overhead": 150.0} | settings
    season.tables["places"] = type_in(
        season,
        places=[
            place("Web shop", stated="before tax"),
            place("Marketplace", "marketplace", stated="before tax", collector="place", fee=0.1, fee_basis="net"),
            place("Stall", "own stall", stated="with tax"),
            place("Shop", "wholesale shop", stated="before tax", collector="nobody", discount=0.5),
        ],
    ).tables["places"]
    opening, opened = {"date": first, "kind": "opening"}, "opening balance"
    at_stall = {"date": day(7, 3), "product": "Candle"}
    settled = {"date": day(12, 3, 2026), "kind": "purchase", "paid_on": day(2, 1), "paid_from": "Savings"}
    sales = [row for _, row in season.rows("sales")]
    bought = [row for _, row in season.rows("purchases")]
    poured = [row for _, row in season.rows("pours")]
    materials, recipes = ([row for _, row in season.rows(key)] for key in ("materials", "recipes"))
    box = {"material": "Box", "kind": "packaging", "pack_size": 10.0, "pack_unit": "each", "pack_price": 7.0}
    pair = {
        "product": "Pair",
        "kind": "set",
        "packing": "Box",
        "minutes": 2.0,
        "setup": 0.0,
        "usual_batch": 1.0,
        "paid_share": 1.0,
    }
    return type_in(
        season,
        materials=[*materials, box],
        recipes=[*recipes, pair],
        sets=[{"set": "Pair", "product": "Candle", "count": 2.0}],
        prices=[
            {"product": "Candle", "place": "Shop", "price": 1.5},
            {"product": "Candle", "place": "Web shop", "price": 16.0},
        ],
        purchases=[*bought, opening | {"material": "Wax", "packs": 10.0, "price": 21.0},
                   {"date": day(4, 3), "material": "Box", "packs": 1.0, "price": 7.0, "paid_on": day(4, 3)},
                   {"date": day(4, 2), "material": "Jar", "packs": 1.0, "price": 90.0, "claimed": 3.0,
                    "supplier": "Glass works", "document": "J-2", "paid_on": day(4, 9), "paid_from": "Savings"}],
        pours=[*poured, opening | {"batch": 9.0, "product": "Candle", "good": 12.0, "cost": 30.0},
               {"date": day(4, 20), "batch": 10.0, "product": "Candle", "good": 20.0, "seconds": 2.0},
               {"date": day(4, 21), "batch": 11.0, "product": "Candle", "good": 0.0, "scrapped": 3.0},
               {"date": day(4, 22), "batch": 12.0, "product": "Pair", "good": 1.0}],
        sales=[
            *sales,
            sale(day(5, 1), "Web shop", None, 30.0, kind="deposit", product=None),
            sale(day(6, 1), "Web shop", 2, 16.0, paid_into="savings"),
            sale(day(6, 1), "Web shop", None, 20.0, kind="deposit used", product=None),
            sale(day(6, 5), "Web shop", None, 8.0, kind="refund", product=None),
            sale(day(6, 6), "Web shop", 3, 30.0, product="Pair"),
            sale(day(12, 30), "Shop", 4, 9.0, paid_on=day(1, 5, 2028)),
            sale(day(10, 1), "Web shop", 1, 16.0, kind="returned", became="thrown away"),
        ],
        market_days=[{"date": day(7, 3), "place": "Stall", "fee": 25.0, "travel": 7.5}],
        market_lines=[
            at_stall | {"along": 10.0, "back": 6.0, "given": 1.0, "price": 16.0},
            at_stall | {"along": 3.0, "back": 1.0, "given": 1.0, "broken": 1.0, "price": 12.0},
            at_stall | {"product": "Pair", "along": 1.0, "given": 1.0, "price": 30.0},
        ],
        moves=[
            {"date": day(5, 5), "kind": "own use", "product": "Candle", "amount": 2.0},
            {"date": day(5, 6), "kind": "gift", "product": "Candle", "amount": 1.0},
            {"date": day(5, 7), "kind": "test", "material": "Wax", "amount": 700.0},
            {"date": day(5, 8), "kind": "broken", "material": "Jar", "amount": 1.0},
        ],
        counts=[{"date": day(11, 1), "material": "Wax", "counted": 52000.0, "kept": "yes"}],
        still_open=[
            {"date": day(12, 1, 2026), "kind": "sale", "who": "Shop", "sum": 40.0, "paid_on": day(1, 9)},
            {"date": day(12, 2, 2026), "kind": "payout", "who": "Marketplace", "sum": 12.0},
            settled | {"who": "Wax works", "sum": 33.0},
            {"date": day(12, 4, 2026), "kind": "gift card", "who": "Ms Rowe", "sum": 15.0},
        ],
        accounts=[
            {"account": "Savings", "kind": "money", "code": "102"},
            {"account": "Sales", "code": "400"},
            {"account": "Grant", "kind": "income", "code": "450"},
        ],
        expenses=[
            expense(day(3, 8), "Helper", "paid help at the bench", 60.0),
            expense(day(3, 9), "Landlord", "production overhead", 110.0, tax=10.0, paid_from="Savings"),
            expense(day(12, 20), "Printer", "advertising", 55.0, paid_on=None),
            expense(day(8, 20), "Melter maker", "equipment", 240.0, tax=40.0),
        ],
        entries=[
            entry(first, "Bank and cash", "Capital", 500.0, opened),
            entry(day(9, 1), "Savings", "Grant", 75.0, "other"),
            entry(day(9, 2), "Depreciation", "Depreciation so far", 20.0, "depreciation"),
            entry(day(9, 3), "production overhead", "Depreciation so far", 5.0, "depreciation"),
            entry(last, "Professional help", "Wages and bills owed", 90.0, "wages or bill owed"),
            entry(day(10, 7), "Sales tax or VAT owed", "Bank and cash", 30.0, "tax paid over"),
        ],
    )  # fmt: skip
