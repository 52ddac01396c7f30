"""The reference for sales: against printed examples, by hand, and by the laws that it must keep.

Money by textbooks: OpenStax, Principles of Financial Accounting (OS-FA), by section.
"""

from collections import Counter
from dataclasses import replace
from datetime import date, timedelta
from fractions import Fraction

import pytest
import year_sales_seasons
from hypothesis import given, settings
from hypothesis import strategies as st
from test_year_reference import a_year
from year_records import Count, Line, Move, Pour, Recipe, Set
from year_reference import worked_out
from year_selling import MarketDay, MarketLine, Place, Price, Sale, Selling, TaxRate
from year_sold import candles, held_for_buyers, owed, shops, sold, sums

START = date(2026, 1, 1)
STALL = Place("Stall", "own stall", "maker")
SHOP = Place("Shop", "consignment shop", "maker", fee=Fraction(1, 3))
TIN, BOX = "Tin", "Box"


def day(number):
    return START + timedelta(days=number - 1)


def selling(*sales, places=(STALL, SHOP), price=1000, **more):
    prices = tuple(Price(thing, place.name, price) for thing in (TIN, BOX) for place in places)
    return Selling(places=places, prices=prices, sales=sales, **more)


def of_tins(sells, *, made=((1, 10, 10_00),), **more):
    """A year with tins there at the start, and sets of two of them, not one of which is packed."""
    recipes = tuple(Recipe(name, (), Fraction(0), Fraction(0), Fraction(0)) for name in (TIN, BOX))
    pours = tuple(
        Pour(day(number), f"B-{row}", TIN, good, "opening", poured_on=day(number), value=value)
        for row, (number, good, value) in enumerate(made, start=1)
    )
    usual = {"recipes": recipes, "pours": pours, "sets": (Set(BOX, (Line(TIN, Fraction(2)),)),), "selling": sells}
    return worked_out(a_year(**usual | more))


def lines(*sales, **more):
    return sold(of_tins(selling(*sales, **more)))


def sale(pieces=1, place="Stall", **more):
    return Sale(day(20), place, TIN, pieces, **more)


# Money


def test_tax_comes_on_a_price_before_tax():  # OS-FA 12.2: 18,000 and 6 %
    (line,) = lines(sale(), price=18_000_00, tax_rate=Fraction(6, 100))
    assert (line.gross, line.tax, line.net) == (19_080_00, 1_080_00, 18_000_00)


def test_tax_is_in_a_price_with_tax():  # the same sums the other way round
    (line,) = lines(sale(), price=19_080_00, tax_rate=Fraction(6, 100), stated="with tax")
    assert (line.gross, line.tax, line.net) == (19_080_00, 1_080_00, 18_000_00)


def test_a_shop_on_consignment_keeps_a_third():  # OS-FA 10.1: of 15,000 the maker has 10,000
    (line,) = lines(sale(place="Shop", kind="sold there"), price=15_000_00)
    assert (line.fee, line.comes_in) == (5_000_00, 10_000_00)


# The rest is worked by hand.


def test_what_a_buyer_pays_is_whole_coins_before_tax_is_worked_out_from_it():
    place = replace(STALL, discount=Fraction(5, 100))
    (line,) = lines(sale(2), places=(place,), price=10_75, tax_rate=Fraction(1, 5), stated="with tax")
    # 21.50 less 5 % is 20.425, so 20.43 is paid: 3.405 of it is tax.
    assert (line.gross, line.tax, line.net) == (20_43, 3_41, 17_02)


def test_the_fees_of_an_order_stand_on_its_first_line():
    place = replace(STALL, fee=Fraction(1, 10), fee_item=20, fee_order=30, least_fee=500)
    found = lines(sale(2, order="a"), sale(1, order="a"), sale(1), places=(place,))
    # 2.00 and 1.00 by share, 2.00 short of the least, 0.30 an order, 0.20 an item; one line alone is 4.00 short.
    assert [line.fee for line in found] == [200 + 40 + 30 + 200, 100 + 20, 100 + 20 + 30 + 400]


def test_a_fee_that_was_typed_stands_for_all_that_the_place_kept():
    place = replace(STALL, fee=Fraction(1, 10), fee_order=30)
    assert [line.fee for line in lines(sale(fee=77), sale(kind="refund", fee=5), places=(place,))] == [77, 5]


def test_a_place_that_pays_the_tax_over_keeps_it():
    (line,) = lines(sale(), places=(replace(STALL, collector="place"),), tax_rate=Fraction(6, 100))
    assert (line.gross, line.comes_in) == (1060, 1000)


def test_where_nobody_pays_tax_none_is_due_but_what_was_typed():
    found = lines(
        sale(), sale(tax_rate=Fraction(1, 10)), places=(replace(STALL, collector="nobody"),), tax_rate=Fraction(6, 100)
    )
    assert [line.tax for line in found] == [0, 100]


@pytest.mark.parametrize(
    "number, area, rate",
    [(4, "", 6), (5, "", 7), (5, "North", 7), (9, "North", 7), (10, "North", 4), (10, "South", 7), (4, "North", 6)],
)
def test_a_rate_is_of_its_area_then_of_no_area_then_of_the_settings(number, area, rate):
    rates = (TaxRate(day(10), Fraction(4, 100), "North"), TaxRate(day(5), Fraction(7, 100)))
    line = replace(sale(area=area), day=day(number))
    assert lines(line, tax_rate=Fraction(6, 100), tax_rates=rates)[0].rate == Fraction(rate, 100)


def test_what_is_held_for_buyers_is_money_in_and_no_sale():
    came = Sale(day(2), "Stall", kind="gift card sold", price=5000, paid_on=day(2))
    spent = Sale(day(9), "Stall", kind="gift card spent", price=2000)
    found = lines(came, spent, sale(3))
    assert [line.net for line in found] == [0, 0, 3000] and held_for_buyers(found) == 3000
    assert owed(found) == 3000 - 2000  # the card was paid


def test_a_refund_is_of_money_and_leaves_candles_where_they_are():
    worked = of_tins(selling(sale(3), sale(kind="refund"), Sale(day(21), "Stall", kind="refund", price=250)))
    assert [(line.net, line.pieces, line.cost) for line in sold(worked)] == [
        (3000, 3, 300),
        (-1000, 0, 0),
        (-250, 0, 0),
    ]
    assert candles(worked)[TIN].left == 7


# Candles


@pytest.mark.parametrize("became, left, cost", [("back in stock", 8, -100), ("thrown away", 7, 0)])
def test_a_return_brings_back_what_can_be_sold_again(became, left, cost):
    worked = of_tins(selling(sale(3), sale(kind="returned", became=became)))
    assert (candles(worked)[TIN].left, sold(worked)[1].cost) == (left, cost)


@pytest.mark.parametrize("method", ["fifo", "average"])
def test_what_comes_back_before_anything_was_made_is_worth_what_the_first_batch_is(method):
    back = replace(sale(2, kind="returned", became="back in stock"), day=day(1))
    worked = of_tins(selling(back, sale(1)), made=((9, 10, 10_00), (10, 6, 24_00)), method=method)
    # By average 12 at 1.00 and 6 at 4.00, so 2.00 each.
    assert [line.cost for line in sold(worked)] == [-200, 100 if method == "fifo" else 200]


def test_candles_at_a_shop_are_the_makers_until_they_are_sold():
    rows = [replace(sale(pieces, "Shop", kind=kind)) for pieces, kind in ((6, "out"), (1, "back"), (2, "sold there"))]
    worked = of_tins(selling(*rows))
    found = candles(worked)[TIN]
    assert (found.left, found.there, found.at_home) == (8, 3, 5)
    assert shops(worked.year.selling, sold(worked))[TIN, "Shop"][:4] == (6, 1, 2, 3)


@pytest.mark.parametrize("number", [2, 30], ids=["packed before", "packed after"])
def test_a_set_takes_its_candles_along_when_it_leaves_and_once(number):
    sells, gone = selling(replace(sale(2), product=BOX)), Move(day(21), "gift", BOX, Fraction(1))
    alone = of_tins(sells, moves=(gone,))
    packed = Pour(day(number), "S-1", BOX, 4)  # its box cost nothing
    worked = worked_out(replace(alone.year, pours=(*alone.year.pours, packed)))
    assert (candles(worked)[TIN].left, candles(worked)[TIN].packed, sold(worked)[0].cost) == (
        10 - 2 * 3,
        2 * (4 - 3),
        400,
    )
    assert (candles(alone)[TIN].left, candles(alone)[TIN].packed) == (10 - 2 * 3, 0)


def test_a_market_line_is_sold_given_away_and_broken():
    line = MarketLine(day(20), TIN, along=9, back=4, given=1, broken=1)
    worked = of_tins(replace(selling(), market_days=(MarketDay(day(20), "Stall"),), market_lines=(line,)))
    assert [(each.pieces, each.net, each.cost) for each in sold(worked)] == [(3, 3000, 300)]
    assert candles(worked)[TIN].left == 5


def test_a_count_is_of_the_end_of_its_day():
    counted = Count(day(20), TIN, Fraction(6), "Mo", is_move=True)
    worked = of_tins(selling(sale(3)), counts=(counted,))
    assert [line.issue.tab for line in worked.cards[TIN].lines] == ["Sales", "Counts"]
    assert worked.cards[TIN].differences == {1: -1}


# Laws, over random years


years = st.builds(year_sales_seasons.year, st.integers(0, 10**6), st.sampled_from(["fifo", "average"]))
few = settings(max_examples=15, deadline=None)


@few
@given(years)
def test_what_buyers_pay_is_tax_and_net_and_comes_in_but_for_fees_tax_and_what_is_held(year):
    for line in sold(worked_out(year)):
        assert line.gross == line.net + line.tax
        kept = line.fee + (line.tax if line.collector == "place" else 0)
        assert line.comes_in == line.gross - kept + line.held


@few
@given(years)
def test_what_was_made_is_left_or_gone_and_what_is_left_is_at_home_or_at_shops(year):
    worked = worked_out(year)
    for product, found in candles(worked).items():
        card = worked.cards[product]
        assert card.received == found.left + card.taken and found.left == found.at_home + found.there
        assert card.value_received in (None, (card.spent or 0) + (card.value or 0))
        loose = found.at_home - found.packed
        assert found.ready + found.curing == max(0, loose)


@few
@given(years)
def test_whatever_lines_are_summed_by_they_come_to_the_same(year):
    found = sold(worked_out(year))
    for by in ("place", "month", "product", "rate", "area"):
        summed = sums(found, by).values()
        for name in ("pieces", "gross", "tax", "net", "fee", "comes_in"):
            assert sum(each[name] for each in summed) == sum(getattr(line, name) for line in found)


# Random years have every case


def cases(year):
    found = sold(worked_out(year))
    sets = {each.name for each in year.sets}
    packed = {
        each.name: min((p.day for p in year.pours if p.product == each.name), default=START) for each in year.sets
    }
    of_sets = [line for line in year.selling.sales if line.product in sets and not line.kind]
    lines, markets = year.selling.sales, year.selling.market_lines
    orders = Counter((line.place, line.order) for line in lines if line.order and line.kind != "refund")
    return {
        **{f"kind {line.kind}": True for line in found},
        **{f"became {line.became}": True for line in lines},
        "a set sold before it was packed": any(line.day < packed[line.product] for line in of_sets),
        "a set sold after": any(line.day > packed[line.product] for line in of_sets),
        "two rates": len({line.rate for line in found}) > 2,
        "areas": len({line.area for line in found}) > 2,
        "a price from a day on": any(price.since for price in year.selling.prices),
        "a place from a day on": len({line.place_row for line in found}) > len({line.place for line in found}),
        "orders of several lines": max(orders.values(), default=0) > 2,
        "least fee": any(place.least_fee for place in year.selling.places),
        "postage": any(line.postage for line in lines),
        "discounts": any(line.discount for line in lines),
        "along and back": any(line.along for line in markets),
        "counted as sold": any(line.sold for line in markets),
        "two markets on a day": len({each.day for each in year.selling.market_days}) < len(year.selling.market_days),
        "more sold than there was": any(line.short for card in worked_out(year).cards.values() for line in card.lines),
        "candles counted and taken over": any(each.is_move and each.thing.endswith("candle") for each in year.counts),
    }  # fmt: skip


def test_twenty_years_have_every_case():
    seen = Counter(case for seed in range(20) for case, there in cases(year_sales_seasons.year(seed)).items() if there)
    kinds = (
        "",
        "refund",
        "returned",
        "out",
        "back",
        "sold there",
        "deposit",
        "deposit used",
        "gift card sold",
        "gift card spent",
    )
    wanted = set(cases(year_sales_seasons.year(0))) | {f"kind {kind}" for kind in kinds}
    assert {case for case in wanted if not seen[case]} == set()
