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
from test_year_reference import WAX, a_year, there
from year_cards import PARTS
from year_figures import Figure, figures
from year_records import Change, Count, Line, Material, Move, Pour, Recipe, Set
from year_reference import in_force, worked_out
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


# Sets of which fewer were packed than left
#
# Two tins at 1.00 each are in a set, and it has one carton. What a packed one costs is its carton alone.

CARTON = Material("Carton", "packaging", Fraction(10), "each")
BAG = Material("Bag", "other", Fraction(10), "each")
CARTONS = (there(1, 20, 10, "Carton"),)
THREE_CHEAP = (there(1, 3, 0.30, "Carton"), there(2, 20, 10, "Carton"))  # 0.10 each, then 0.50


def recipe_of_set(*lines, since=None):
    lines = tuple(Line(thing, Fraction(each)) for thing, each in lines or (("Carton", 1),))
    return Recipe(BOX, lines, Fraction(0), Fraction(0), Fraction(0), since)


IN_A_CARTON = (recipe_of_set(),)


def of_sets(*sales, packed=(), recipes=IN_A_CARTON, markets=(), purchases=CARTONS, **more):
    """Forty tins, and sets of two that are packed on some days, so many on each."""
    tins = Pour(day(1), "B-1", TIN, 40, "opening", poured_on=day(1), value=40_00)
    sets = tuple(Pour(day(number), f"S-{row}", BOX, good) for row, (number, good) in enumerate(packed, start=1))
    days = tuple(MarketDay(each, "Stall") for each in dict.fromkeys(line.day for line in markets))
    tin = Recipe(TIN, (), Fraction(0), Fraction(0), Fraction(0))
    usual = {
        "recipes": (tin, *recipes),
        "pours": (tins, *sets),
        "materials": (WAX, CARTON, BAG),
        "purchases": purchases,
    }
    sells = replace(selling(*sales), market_days=days, market_lines=tuple(markets))
    return of_tins(sells, **usual | more)


def sold_set(pieces, number=20, **more):
    return Sale(day(number), "Stall", BOX, pieces, **more)


def came_back(pieces, number=20):
    return sold_set(pieces, number, kind="returned", became="back in stock")


def unpacked(worked):
    """By line, how many sets nobody had packed."""
    return [(*line.issue.line, line.unpacked) for line in worked.sets[BOX]]


def left(worked):
    return [int(worked.cards[thing].left) for thing in (BOX, TIN, "Carton")]


def costs(worked):
    return [line.cost for line in sold(worked)]


def test_a_set_that_was_never_packed_leaves_as_its_candles_and_its_parts():
    worked = of_sets(sold_set(2))
    assert (unpacked(worked), left(worked), costs(worked)) == ([("Sales", 1, 2)], [0, 36, 18], [400 + 2 * 50])
    carton, found = worked.cards["Carton"], figures(worked)
    assert (carton.taken_by("Used"), carton.taken_by(PARTS)) == (0, 2)
    assert [found[Figure("Stock", "Carton", head)] for head in ("used", "moved")] == [2, 0]
    assert found[Figure(PARTS, ("Sales", 1, "Carton"), "cost")] == 100
    assert found[Figure("Candles", BOX, "value")] == found[Figure("Candles", BOX, "spent")] == 0


def test_as_many_as_were_packed_leave_as_packed_and_the_rest_takes_parts():
    # Three were packed in cartons at 0.10; what is not packed takes those at 0.50.
    worked = of_sets(sold_set(2), sold_set(4), packed=[(2, 3)], purchases=THREE_CHEAP)
    assert unpacked(worked) == [("Sales", 1, 0), ("Sales", 2, 3)]
    assert left(worked) == [0, 40 - 12, 23 - 6]
    assert costs(worked) == [2 * 10 + 400, 10 + 800 + 3 * 50]
    assert not any(line.short for line in worked.cards[BOX].lines)


def test_a_set_packed_after_it_was_sold_takes_one_carton_and_no_second():
    worked = of_sets(sold_set(2), packed=[(30, 3)])
    assert (unpacked(worked), left(worked), costs(worked)) == ([("Sales", 1, 0)], [1, 36, 17], [2 * 50 + 400])
    assert worked.cards[BOX].lines[0].short and worked.parts == []


def test_sets_there_at_the_start_were_packed():
    there_already = Pour(day(1), "S-0", BOX, 3, "opening", poured_on=day(1), value=90)
    alone = of_sets(sold_set(4))
    worked = worked_out(replace(alone.year, pours=(*alone.year.pours, there_already)))
    assert (unpacked(worked), costs(worked)) == ([("Sales", 1, 1)], [90 + 800 + 50])


def test_lines_come_by_day_then_by_log_then_as_typed():
    line = MarketLine(day(20), BOX, sold=1)
    gone = Move(day(20), "gift", BOX, Fraction(1))
    worked = of_sets(sold_set(1), sold_set(1, 19), sold_set(1), packed=[(2, 3)], markets=[line], moves=(gone,))
    assert unpacked(worked) == [
        ("Sales", 2, 0),
        ("Moves", 1, 0),
        ("Sales", 1, 0),
        ("Sales", 3, 1),
        ("Market lines", 1, 1),
    ]


def test_what_a_market_line_gave_away_comes_after_what_it_sold():
    lines = [MarketLine(day(20), BOX, along=6, back=1, given=1, broken=1), MarketLine(day(21), BOX, sold=0, given=2)]
    worked = of_sets(packed=[(2, 4)], markets=lines, purchases=(there(1, 4, 0.40, "Carton"), *CARTONS))
    assert unpacked(worked) == [("Market lines", 1, 0), ("Given", 1, 1), ("Given", 2, 2)]
    # Three sold at 0.10, and then one that was packed and one that was not; the second line sold none.
    assert costs(worked) == [3 * 10 + 600, 0]
    assert worked.costs["Given", 1] == [50, 10, 400] and worked.costs["Given", 2] == [100, 400]
    assert left(worked) == [0, 40 - 14, 24 - 7]


@pytest.mark.parametrize("kind", ["gift", "own use", "broken"])
def test_sets_that_are_taken_out_leave_as_sold_ones_do(kind):
    worked = of_sets(packed=[(2, 1)], moves=(Move(day(20), kind, BOX, Fraction(3), lot="S-1"),))
    assert (unpacked(worked), left(worked)) == ([("Moves", 1, 2)], [0, 34, 17])
    assert figures(worked)[Figure("Moves", 1, "cost")] == 3 * 50 + 600


def test_a_move_of_sets_none_of_which_was_packed_has_a_cost_and_is_not_short():
    found = figures(of_sets(moves=(Move(day(20), "gift", BOX, Fraction(3)),)))
    assert [found[Figure("Moves", 1, head)] for head in ("cost", "short", "unpacked")] == [3 * 50 + 600, False, 3]


def test_what_comes_back_is_packed_as_far_as_packed_ones_had_gone():
    # One was packed and two were not; of the two that come back one is the packed one, and the other's carton is free.
    worked = of_sets(sold_set(3), came_back(2), sold_set(2), packed=[(2, 1)])
    assert unpacked(worked) == [("Sales", 1, 2), ("Sales", 2, -1), ("Sales", 3, 1)]
    assert (left(worked), costs(worked)) == ([0, 34, 17], [750, -500, 500])


def test_a_packed_one_that_comes_back_can_be_sold_again():
    # Two of four were not packed. One comes back: it is in a carton, whichever it was, and leaves again in it.
    worked = of_sets(sold_set(4), came_back(1), sold_set(1), packed=[(2, 2)])
    assert unpacked(worked) == [("Sales", 1, 2), ("Sales", 2, 0), ("Sales", 3, 0)]
    assert left(worked) == [0, 32, 16]


def test_what_comes_back_before_anything_left_brings_its_parts():
    worked = of_sets(came_back(1), sold_set(2), packed=[(2, 1)])
    assert unpacked(worked) == [("Sales", 1, -1), ("Sales", 2, 1)]
    assert left(worked) == [0, 38, 19]


def test_a_return_that_was_thrown_away_changes_nothing():
    worked = of_sets(sold_set(3), sold_set(1, kind="returned", became="thrown away"), packed=[(2, 1)])
    assert (unpacked(worked), left(worked)) == ([("Sales", 1, 2)], [0, 34, 17])


def test_a_set_at_a_shop_leaves_when_it_is_sold_there():
    rows = [
        Sale(day(19 + at), "Shop", BOX, pieces, kind)
        for at, (pieces, kind) in enumerate([(3, "out"), (2, "sold there")])
    ]
    worked = of_sets(*rows, packed=[(2, 1)])
    assert (unpacked(worked), left(worked)) == ([("Sales", 2, 1)], [0, 36, 18])


def counted(pieces, number=21, **more):
    return Count(day(number), BOX, Fraction(pieces), "Mo", **{"is_move": True} | more)


def test_a_count_between_takes_packed_sets_off():
    worked = of_sets(sold_set(2), sold_set(3, 22), packed=[(2, 5)], counts=(counted(1),))
    # Two are missing, so that one is left for the three sold later.
    assert worked.cards[BOX].differences == {1: -2}
    assert unpacked(worked) == [("Sales", 1, 0), ("Sales", 2, 2)]
    assert left(worked) == [0, 40 - 2 * 7, 20 - 7]


def test_a_count_that_is_not_taken_over_changes_nothing():
    worked = of_sets(sold_set(2), sold_set(3, 22), packed=[(2, 5)], counts=(counted(1, is_move=False),))
    assert (unpacked(worked), left(worked)) == ([("Sales", 1, 0), ("Sales", 2, 0)], [0, 30, 15])


def test_a_count_of_more_than_were_packed_brings_packed_sets():
    worked = of_sets(sold_set(3, 22), counts=(counted(2),))
    assert (unpacked(worked), left(worked)) == ([("Sales", 1, 1)], [0, 40 + 4 - 6, 19])
    assert costs(worked) == [None]  # what they cost nobody knows
    back = of_sets(came_back(1, 22), sold_set(3, 23), counts=(counted(2),))
    assert unpacked(back) == [("Sales", 1, -1), ("Sales", 2, 1)]


def test_a_count_comes_after_all_that_left_on_its_day():
    worked = of_sets(sold_set(2, 21), sold_set(1, 22), packed=[(2, 3)], counts=(counted(1),))
    assert worked.cards[BOX].differences == {1: 0} and unpacked(worked)[-1] == ("Sales", 2, 0)


def test_what_is_at_a_shop_is_not_counted_and_still_packed():
    out, there_sold = (Sale(day(at), "Shop", BOX, 2, kind) for at, kind in ((20, "out"), (22, "sold there")))
    worked = of_sets(out, there_sold, packed=[(2, 3)], counts=(counted(1),))
    assert worked.cards[BOX].differences == {1: 0} and unpacked(worked) == [("Sales", 2, 0)]


def test_a_count_before_sets_are_packed_puts_back_what_was_sold():
    # Two were sold, and packed later; when nothing is found in between, no packed set has gone.
    worked = of_sets(sold_set(2), sold_set(3, 30), packed=[(25, 2)], counts=(counted(0),))
    assert worked.cards[BOX].differences == {1: 2}
    assert (unpacked(worked), left(worked)) == ([("Sales", 1, 0), ("Sales", 2, 1)], [0, 40 - 6, 20 - 3])


def test_parts_are_those_of_the_recipe_of_the_day():
    recipes = (recipe_of_set(("Carton", 2), ("Bag", 1), since=day(21)), recipe_of_set())
    bags = there(1, 10, 30, "Bag")
    worked = of_sets(sold_set(3), sold_set(1, 21), packed=[(2, 2)], recipes=recipes, purchases=(*CARTONS, bags))
    assert [(part.row, part.thing, part.amount) for part in worked.parts] == [
        (1, "Carton", 1),
        (2, "Carton", 2),
        (2, "Bag", 1),
    ]
    assert costs(worked) == [2 * 50 + 600 + 50, 200 + 2 * 50 + 300]


def test_a_set_that_no_recipe_holds_for_is_refused_only_where_it_takes_parts():
    later = (recipe_of_set(since=day(21)),)
    assert unpacked(of_sets(sold_set(2), packed=[(30, 2)], recipes=later)) == [("Sales", 1, 0)]
    with pytest.raises(ValueError, match="no row holds"):
        of_sets(sold_set(2), packed=[(30, 1)], recipes=later)


def test_what_is_weighed_has_its_waste_and_nothing_that_was_otherwise_in_a_batch_holds():
    recipes = (recipe_of_set(("Carton", 1), ("Wax", 48)),)  # 50 g with 4 % waste
    otherwise = (Change("S-1", "Carton", instead="Bag"), Change("S-1", "Wax", weighed=Fraction(60)))
    wax, bags = there(1, 1000, 10), there(1, 10, 30, "Bag")
    worked = of_sets(sold_set(3), packed=[(2, 1)], recipes=recipes, changes=otherwise, purchases=(*CARTONS, wax, bags))
    assert [(part.thing, part.amount) for part in worked.parts] == [("Carton", 2), ("Wax", 100)]
    assert (worked.cards["Wax"].taken, worked.cards["Bag"].taken) == (160, 1)
    # The packed one: a bag and 60 g. The others: cartons and 50 g each.
    assert costs(worked) == [300 + 60 + 600 + 2 * (50 + 50)]


def test_no_work_is_charged_for_a_set_that_nobody_packed():
    recipes = (replace(recipe_of_set(), minutes=Fraction(60), paid_share=Fraction(1)),)
    # An hour of paid help at 18.00 and of the workshop at 500 / 200.
    assert costs(of_sets(sold_set(2), packed=[(2, 1)], recipes=recipes)) == [1800 + 250 + 50 + 400 + 50]


@pytest.mark.parametrize("method, carton", [("fifo", 50), ("average", 60)])
def test_parts_cost_what_their_stock_card_says(method, carton):
    # Two of 20 at 0.50 are packed before 9 at 0.80 come: then 18 and 9 are there, by average at 0.60.
    bought = (*CARTONS, there(15, 9, 7.20, "Carton"))
    worked = of_sets(sold_set(3), packed=[(10, 2)], purchases=bought, method=method)
    assert costs(worked) == [2 * 50 + 600 + carton]


@pytest.mark.parametrize("method", ["fifo", "average"])
def test_a_part_that_was_never_bought_has_no_cost_nor_has_the_line(method):
    worked = of_sets(sold_set(1), packed=[(2, 1)], purchases=(), method=method)
    assert costs(worked) == [None]
    assert costs(of_sets(sold_set(1), purchases=(), method=method)) == [None]
    # Where none of a line was packed, no cost of packed ones is asked for.
    plain = (recipe_of_set(), recipe_of_set(("Bag", 1), since=day(15)))
    bags = (there(1, 10, 30, "Bag"),)
    found = of_sets(sold_set(1), sold_set(1), packed=[(2, 1)], recipes=plain, purchases=bags, method=method)
    assert costs(found) == [None, 300 + 200]


def test_on_a_day_parts_come_after_batches_and_moves_and_before_counts():
    gone, count = Move(day(20), "test", "Carton", Fraction(1)), Count(day(20), "Carton", Fraction(16), "Mo", True)
    worked = of_sets(sold_set(2), packed=[(20, 1)], moves=(gone,), counts=(count,))
    assert [line.issue.tab for line in worked.cards["Carton"].lines] == ["Used", "Moves", PARTS, "Counts"]
    assert worked.cards["Carton"].differences == {1: 16 - 17}


def test_on_a_day_parts_come_by_set_then_by_line():
    other = replace(recipe_of_set(), product="Other box")
    alone = of_sets(sold_set(1), sold_set(1))
    tin, box = alone.year.recipes
    sells = alone.year.selling
    sales = (*sells.sales, replace(sells.sales[0], product="Other box", price=1000))
    sets = (Set("Other box", (Line(TIN, Fraction(1)),)), *alone.year.sets)

    def order(*recipes):
        worked = worked_out(replace(alone.year, recipes=recipes, sets=sets, selling=replace(sells, sales=sales[::-1])))
        return [line.issue.row for line in worked.cards["Carton"].lines]

    assert order(tin, box, other) == [("Sales", row, "Carton") for row in (2, 3, 1)]
    assert order(other, tin, box) == [("Sales", row, "Carton") for row in (1, 2, 3)]


def test_the_lots_of_a_part_are_found_by_its_line():
    worked = of_sets(sold_set(4), purchases=THREE_CHEAP)
    found = [(each.row, each.lot, each.how) for each in worked.took() if each.tab == PARTS]
    assert found == [(("Sales", 1, "Carton"), 1, "oldest"), (("Sales", 1, "Carton"), 2, "oldest")]


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
def test_what_was_bought_is_left_used_moved_counted_or_in_sets_that_nobody_packed(year):
    worked = worked_out(year)
    for material in year.materials:
        name, card = material.name, worked.cards[material.name]
        used = sum(line.amount for line in worked.used if line.thing == name)
        moved = sum(move.amount for move in year.moves if move.thing == name)
        parts = sum(part.amount for part in worked.parts if part.thing == name)
        off = sum(
            -card.differences[row] for row, each in enumerate(year.counts, 1) if each.thing == name and each.is_move
        )
        assert card.received == card.left + used + moved + parts + off


@few
@given(years)
def test_candles_leave_with_every_piece_and_a_box_with_a_packed_one_or_with_one_that_leaves(year):
    worked = worked_out(year)
    for each in year.sets:
        lines, pours = worked.sets[each.name], [pour for pour in year.pours if pour.product == each.name]
        pieces = sum(line.issue.amount for line in lines)
        for held in each.holds:
            in_sets = [line.issue.amount for line in worked.cards[held.thing].lines if line.issue.part_of == each.name]
            assert sum(in_sets) == held.each * pieces  # no count of sets is taken over here
        # Of all that were ever put together, packed before or not, so many left and so many are there.
        boxes = sum(part.amount for part in worked.parts if part.of == each.name and part.thing == "Gift box")
        assert sum(pour.good for pour in pours) + boxes == pieces + worked.cards[each.name].left


@few
@given(years)
def test_no_more_packed_sets_are_gone_than_were_packed_whatever_is_counted(year):
    counted = tuple(replace(count, is_move=True) for count in year.counts)
    for worked in (worked_out(year), worked_out(replace(year, counts=counted))):
        for each in year.sets:
            ever = sum(pour.good for pour in year.pours if pour.product == each.name)
            assert all(line.to_date <= ever for line in worked.cards[each.name].lines)


@few
@given(years)
def test_where_nothing_comes_back_the_first_to_leave_are_the_packed_ones(year):
    sales = tuple(line for line in year.selling.sales if line.kind != "returned")
    worked = worked_out(replace(year, selling=replace(year.selling, sales=sales)))
    for each in year.sets:
        ever = sum(pour.good for pour in year.pours if pour.product == each.name)
        gone = packed = 0
        for line in worked.sets[each.name]:
            gone, packed = gone + line.issue.amount, packed + line.packed
            assert packed == min(gone, ever)


@few
@given(years, st.randoms(use_true_random=False))
def test_on_which_days_sets_were_packed_is_no_matter(year, dice):
    """Not for what takes parts."""
    names = {each.name for each in year.sets}
    days = [pour.day for pour in year.pours]
    moved = [replace(pour, day=dice.choice(days)) if pour.product in names else pour for pour in year.pours]
    assert worked_out(replace(year, pours=tuple(moved))).parts == worked_out(year).parts


@few
@given(years)
def test_parts_are_the_recipe_times_the_pieces_that_nobody_packed(year):
    worked = worked_out(year)
    for name, lines in worked.sets.items():
        for line in lines:
            held = in_force([recipe for recipe in year.recipes if recipe.product == name], line.issue.day)
            took = {part.thing: part.amount for part in worked.parts if (part.log, part.row) == line.issue.line}
            # A set has nothing in it that is weighed.
            assert took == {part.thing: part.each * line.unpacked for part in held.lines if line.unpacked}


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
    worked = worked_out(year)
    of_each = [line for lines in worked.sets.values() for line in lines]
    parts = {part.thing for part in worked.parts}
    orders = Counter((line.place, line.order) for line in lines if line.order and line.kind != "refund")
    return {
        **{f"kind {line.kind}": True for line in found},
        **{f"became {line.became}": True for line in lines},
        "a set sold before it was packed": any(line.day < packed[line.product] for line in of_sets),
        "a set sold after": any(line.day > packed[line.product] for line in of_sets),
        "sets never packed": bool(sets - {pour.product for pour in year.pours}),
        "all sets packed that left": bool(of_each) and not any(line.unpacked for line in of_each),
        "a line partly packed": any(line.packed > 0 and line.unpacked > 0 for line in of_each),
        "an unpacked set that came back": any(line.unpacked < 0 for line in of_each),
        "an unpacked set taken out": any(line.unpacked and line.issue.tab == "Moves" for line in of_each),
        "an unpacked set at a market": any(line.unpacked and line.issue.tab == "Market lines" for line in of_each),
        "an unpacked set given away": any(line.unpacked and line.issue.tab == "Given" for line in of_each),
        "several parts": len(parts) > 1,
        "a part of less than a whole": any(part.amount.denominator > 1 for part in worked.parts),
        "parts from a day on": any(recipe.since and recipe.product in sets for recipe in year.recipes),
        "a part never bought": any(not worked.cards[part].receipts for part in parts),
        "a part counted": any(each.is_move and each.thing in parts for each in year.counts),
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
