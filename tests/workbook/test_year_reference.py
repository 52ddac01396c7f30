"""The reference for the year's records: against printed examples, by hand, and by the laws that it must keep."""

from collections import Counter
from dataclasses import replace
from datetime import date, timedelta
from fractions import Fraction

import pytest
import year_seasons
from hypothesis import given, settings
from hypothesis import strategies as st
from year_cards import PARTS, average_left, last_landed, lots_left
from year_figures import ERROR, Cents, Figure, differences, figures
from year_records import Change, Count, Line, Material, Move, Pour, Purchase, Rates, Recipe, Set, Year
from year_reference import shares, worked_out

from candlecalc.calc import issue_costs, split_charge

METHODS = ["fifo", "average"]
START = date(2026, 1, 1)


def day(number):
    return START + timedelta(days=number - 1)


def cents(money):
    return round(money * 100)


WAX = Material("Wax", "wax", Fraction(1), "kg", cure_days=7)
OTHER_WAX = Material("Other wax", "wax", Fraction(1), "kg", cure_days=14)
JAR = Material("Jar", "vessel", Fraction(12), "each")
CANDLE = Recipe(
    "Candle", (Line("Wax", Fraction(96)), Line("Jar", Fraction(1))), Fraction(6), Fraction(30), Fraction(1, 2)
)


def a_year(**records):
    """A maker with one candle, and what else a test types."""
    usual = {
        "method": "fifo",
        "as_of": day(365),
        "waste": Fraction(4, 100),
        "season_hours": Fraction(200),
        "materials": (WAX, OTHER_WAX, JAR),
        "recipes": (CANDLE,),
        "rates": (Rates(paid_rate=1800, overhead=50000),),
    }
    return Year(**usual | records)


def there(number, amount, money, material="Wax", **more):
    return Purchase(day(number), material, "opening", amount=Fraction(amount), value=cents(money), **more)


def gone(number, amount, thing="Wax", **more):
    return Move(day(number), "own use", thing, Fraction(amount), **more)


def card(method, *rows, thing="Wax"):
    """The stock card of one thing that was received and moved out."""
    came = tuple(row for row in rows if isinstance(row, Purchase))
    moves = tuple(row for row in rows if isinstance(row, Move))
    counts = tuple(row for row in rows if isinstance(row, Count))
    return worked_out(a_year(method=method, purchases=came, moves=moves, counts=counts)).cards[thing]


def costs(card):
    return [line.cost / 100 for line in card.lines]


# Printed examples: what issues cost, and what is left is worth.
#
# OpenStax, Financial Accounting 10.1 to 10.3: 150 at 21 in stock, 120 sold, 225 bought at 27, 180 sold, 210 bought at
# 33. By average the book prints whole dollars (4,733; 8,902): the cents are worked here from its figures.
SPY = [there(1, 150, 3150), gone(5, 120), there(10, 225, 6075), gone(15, 180), there(25, 210, 6930)]
# The same, exercise B76: only the log is printed, what comes of it is worked by hand.
B76 = [
    *(there(1, 420, 84000), gone(2, 150), there(3, 250, 51250)),
    *(gone(4, 275), there(5, 200, 43000), gone(6, 260)),
]
# The R package FinCal 0.6.3, its function for cost of goods: 2 at 2, 3 at 3 and 5 at 5; 7 are sold. Printed.
FINCAL = [there(1, 2, 4), there(2, 3, 9), there(3, 5, 25), gone(4, 7)]


@pytest.mark.parametrize(
    "method, log, each, value",
    [
        ("fifo", SPY, [2520, 4680], 8955),  # printed
        ("average", SPY, [2520, 4732.94], 8902.06),  # worked here; printed to the dollar
        ("fifo", B76, [150 * 200, 270 * 200 + 5 * 205, 245 * 205 + 15 * 215], 185 * 215),  # worked by hand
        ("fifo", FINCAL, [23], 15),  # printed
    ],
)
def test_a_log_from_a_textbook_costs_what_it_prints(method, log, each, value):
    found = card(method, *log)
    assert (costs(found), found.value) == (each, cents(value))


def test_an_exercise_of_the_textbook_by_average():
    # Worked in exact numbers from the log of B76: 139,757.97 out, 38,492.03 left.
    found = card("average", *B76)
    assert (found.spent, found.value) == (cents(139757.97), cents(38492.03))


@pytest.mark.parametrize(
    "packs, price, freight, landed",
    [(40, 60, 200, 2600), (30, 80, 1000, 3400)],  # printed: OpenStax, Financial Accounting 6.5, freight-in
)
def test_freight_is_part_of_what_goods_cost(packs, price, freight, landed):
    line = Purchase(START, "Jar", packs=Fraction(packs), price=Fraction(cents(price)), charges=cents(freight))
    assert worked_out(a_year(purchases=(line,))).bought[0].landed == cents(landed)


# Freight


@given(st.integers(0, 10**5), st.lists(st.integers(0, 10**5), min_size=1, max_size=6).filter(any))
def test_charges_are_shared_as_split_charge_shares_them(charge, values):
    assert shares(charge, values) == [cents(part) for part in split_charge(charge / 100, [v / 100 for v in values])]


def test_a_cent_left_over_goes_to_the_largest_fraction_and_then_to_the_first_line():
    assert shares(1000, [12000, 7550, 4825]) == [492, 310, 198]
    assert shares(100, [1, 1, 1]) == [34, 33, 33]


def test_charges_fall_on_the_lines_of_their_document_wherever_they_are_typed():
    line = Purchase(START, "Wax", packs=Fraction(1), price=Fraction(1000), document="R1")
    lines = (line, replace(line, document="R2"), replace(line, charges=301), replace(line, document=""))
    found = worked_out(a_year(purchases=lines)).bought
    assert [each.landed for each in found] == [1151, 1000, 1150, 1000]


def test_a_line_costs_its_packs_less_discount_with_its_charges_and_tax():
    line = Purchase(START, "Wax", packs=Fraction(3, 2), price=Fraction(1001), discount=100, charges=50, tax=7)
    found = worked_out(a_year(purchases=(line,))).bought[0]
    # 1.5 packs at 10.01 come to 15.015, a cent up.
    assert (found.amount, found.landed) == (1500, 1502 - 100 + 50 + 7)


# The order of a card


def test_on_one_day_receipts_come_before_issues():
    found = card("average", there(1, 10, 10), gone(2, 5), there(2, 10, 30))
    assert costs(found) == [10]
    assert not found.lines[0].short


def test_a_row_typed_late_takes_its_place_by_its_day():
    late = card("fifo", there(1, 10, 10), there(5, 10, 20), gone(9, 10), gone(3, 10))
    assert [(line.issue.row, line.cost) for line in late.lines] == [(2, 1000), (1, 2000)]


def test_batches_use_before_things_move_on_a_day():
    pour = Pour(day(3), "B-1", "Candle", 10)
    year = a_year(purchases=(there(1, 1000, 10), there(2, 1000, 20)), pours=(pour,), moves=(gone(3, 500),))
    wax = worked_out(year).cards["Wax"]
    assert [line.issue.tab for line in wax.lines] == ["Used", "Moves"]
    assert costs(wax) == [10, 10]


# Rounding


def test_cents_are_rounded_on_the_sum_to_date_so_that_none_is_lost():
    found = card("fifo", there(1, 3, 0.10), gone(2, 1), gone(3, 1), gone(4, 1))
    assert costs(found) == [0.03, 0.04, 0.03]
    assert found.value == 0


def test_half_a_cent_goes_up():
    assert costs(card("fifo", there(1, 2, 0.05), gone(2, 1))) == [0.03]


# running short


def test_the_last_gram_is_not_short():
    assert not card("fifo", there(1, 10, 10), gone(1, 10)).lines[0].short


def test_beyond_the_last_lot_its_unit_cost_goes_on():
    found = card("fifo", there(1, 10, 10), there(2, 10, 20), gone(3, 25))
    assert (costs(found), found.left, found.value) == ([40], -5, -1000)
    assert [lot.left for lot in lots_left(found)] == [0, 0]


def test_what_is_used_before_it_was_bought_is_short_on_that_day_alone():
    found = card("fifo", there(1, 10, 10), gone(2, 12), there(3, 10, 20), gone(4, 1))
    assert [line.short for line in found.lines] == [True, False]
    assert (costs(found), found.left) == ([14, 2], 7)


def test_before_the_first_receipt_the_average_is_that_of_the_first():
    assert costs(card("average", gone(1, 5), there(2, 10, 20), there(3, 10, 40))) == [10]


def test_an_average_begins_anew_with_what_fills_a_hole_and_a_hole_leaves_nothing_behind():
    # 5 are missing when 10 come at 2.00 each; of them 5 are there when 5 come at 4.00.
    rows = [there(1, 10, 10), gone(2, 15), there(3, 10, 20), there(4, 5, 20), gone(5, 1)]
    assert costs(card("average", *rows)) == [15, 3]


@pytest.mark.parametrize("method", METHODS)
def test_what_was_never_bought_has_no_cost_nor_what_is_made_of_it(method):
    pours = (Pour(day(2), "B-1", "Candle", 10),)
    found = worked_out(a_year(method=method, purchases=(there(1, 5000, 10),), pours=pours))
    assert found.cards["Wax"].lines[0].cost == 200
    assert [found.cards["Jar"].value, found.made[0].cost, found.cards["Candle"].value] == [None] * 3
    assert found.cards["Jar"].left == -10
    assert figures(found)["Batch log", 1, "making cost"] == ERROR


# Batches


STOCK = (there(1, 10000, 50), there(1, 10000, 80, "Other wax"), there(1, 100, 120, "Jar"))


def made(*pours, **more):
    return worked_out(a_year(**{"purchases": STOCK, "pours": pours} | more))


def test_a_batch_costs_its_materials_its_paid_work_and_its_hours_of_the_workshop():
    # 10 pieces: 960 g with 4 % waste are 1000 g at 0.005, 10 jars at 1.20; 90 minutes, half of them paid at 18.00,
    # all of them at 500 / 200 an hour.
    batch = made(Pour(day(2), "B-1", "Candle", 8, seconds=1, tests=1)).made[0]
    assert (batch.pieces, batch.hours, batch.materials) == (10, Fraction(3, 2), 500 + 1200)
    assert (batch.labour, batch.overhead, batch.cost) == (1350, 375, 500 + 1200 + 1350 + 375)


def test_hours_and_pieces_that_are_typed_hold():
    batch = made(Pour(day(2), "B-1", "Candle", 8, planned=10, scrapped=1, hours=Fraction(2))).made[0]
    assert (batch.pieces, batch.materials, batch.labour, batch.overhead) == (10, 1700, 1800, 500)


def test_good_candles_carry_the_cost_of_the_batch():
    found = made(Pour(day(2), "B-1", "Candle", 8, planned=10), moves=(gone(3, 4, "Candle"),)).cards["Candle"]
    assert (costs(found), found.left, found.value) == ([17.13], 4, 1712)


def test_one_good_candle_carries_a_batch_alone():
    assert made(Pour(day(2), "B-1", "Candle", 1, planned=10)).cards["Candle"].value == 3425


def test_a_batch_without_a_good_candle_is_lost_and_no_stock():
    found = made(Pour(day(2), "B-1", "Candle", 0, scrapped=10))
    assert found.made[0].cost == 3425
    assert (found.cards["Candle"].receipts, found.cards["Candle"].value) == ((), 0)


def test_what_was_otherwise_takes_the_place_of_the_line():
    changes = (
        Change("B-1", "Wax", instead="Other wax", lot="new"),
        Change("B-1", "Jar", weighed=Fraction(11)),
        Change("B-2", "Wax", instead="Other wax", weighed=Fraction(1010)),
    )
    found = made(Pour(day(2), "B-1", "Candle", 10), Pour(day(2), "B-2", "Candle", 10), changes=changes)
    lines = [(line.batch, line.planned, line.thing, line.amount) for line in found.used]
    assert lines == [
        ("B-1", "Wax", "Other wax", 1000),
        ("B-1", "Jar", "Jar", 11),
        ("B-2", "Wax", "Other wax", 1010),
        ("B-2", "Jar", "Jar", 10),
    ]


def test_a_recipe_and_a_wage_hold_from_their_day_and_move_nothing_before():
    pours = (Pour(day(9), "B-1", "Candle", 10), Pour(day(10), "B-2", "Candle", 10), Pour(day(8), "B-3", "Candle", 10))
    before = made(*pours)
    newer = replace(CANDLE, since=day(10), lines=(Line("Wax", Fraction(48)), Line("Jar", Fraction(1))))
    dearer = Rates(3600, 50000, since=day(10))
    after = made(*pours, recipes=(newer, CANDLE), rates=(dearer, Rates(1800, 50000)))
    assert [batch.materials for batch in after.made] == [1700, 1450, 1700]
    assert [batch.labour for batch in after.made] == [1350, 2700, 1350]
    for row in (0, 2):
        assert after.made[row] == before.made[row]


def test_of_two_rows_from_one_day_the_lower_holds():
    rates = (Rates(1800, 50000), Rates(3600, 50000))
    assert made(Pour(day(2), "B-1", "Candle", 10), rates=rates).made[0].labour == 2700


def test_candles_are_ready_after_the_longer_cure_of_two_waxes():
    blend = replace(CANDLE, lines=(*CANDLE.lines, Line("Other wax", Fraction(10))))
    assert made(Pour(day(2), "B-1", "Candle", 1), recipes=(blend,)).made[0].ready_on == day(16)


def test_candles_there_at_the_start_cure_from_the_day_they_were_poured():
    old = Pour(day(1), "B-0", "Candle", 5, "opening", poured_on=day(1) - timedelta(days=5), value=2000)
    found = made(old, Pour(day(2), "B-1", "Candle", 8), as_of=day(3), moves=(gone(3, 2, "Candle"),))
    assert found.made[0].ready_on == day(3)
    candles = {figure.head: value for figure, value in figures(found).items() if figure[:2] == ("Candles", "Candle")}
    assert (candles["left"], candles["ready"], candles["curing"]) == (11, 3, 8)


def test_a_set_that_was_packed_uses_its_candles_and_carries_their_cost():
    pair = Recipe(
        "Pair", (Line("Candle", Fraction(2)), Line("Jar", Fraction(1))), Fraction(0), Fraction(0), Fraction(0)
    )
    pours = (Pour(day(3), "S-1", "Pair", 2), Pour(day(2), "B-1", "Candle", 10))
    found = made(*pours, recipes=(pair, CANDLE))
    # Four of ten candles that cost 34.25, and two jars at 1.20.
    assert (found.made[0].cost, found.cards["Pair"].value) == (1370 + 240, 1610)
    assert (found.cards["Candle"].left, found.made[0].ready_on) == (6, day(3))


# Counts


def test_a_count_tells_a_difference_and_moves_it_only_where_it_says_so():
    rows = [there(1, 10, 10), gone(2, 3), gone(5, 1)]
    told = card("fifo", *rows, Count(day(2), "Wax", Fraction(6), "Mo"))
    moved = card("fifo", *rows, Count(day(2), "Wax", Fraction(6), "Mo", is_move=True))
    assert told.differences == moved.differences == {1: -1}
    assert (told.left, moved.left, moved.value) == (6, 5, 500)
    assert [line.issue.tab for line in moved.lines] == ["Moves", "Counts", "Moves"]


@pytest.mark.parametrize("method", METHODS)
def test_what_a_count_finds_over_comes_back_at_what_it_cost(method):
    found = card(method, there(1, 10, 10), gone(2, 3), Count(day(3), "Wax", Fraction(8), "Mo", is_move=True))
    assert (costs(found), found.left, found.value) == ([3, -1], 8, 800)


@pytest.mark.parametrize("left, below", [(4, True), (5, False), (6, False)])
def test_a_material_is_below_its_reorder_point_and_not_at_it(left, below):
    materials = (replace(WAX, reorder_point=Fraction(5)), OTHER_WAX, JAR)
    found = figures(worked_out(a_year(materials=materials, purchases=(there(1, left, 1),))))
    assert found["Stock", "Wax", "below reorder"] is below


# Lots and batches


def lots_of(*rows):
    return [(each.lot, each.how) for each in worked_out(a_year(purchases=rows[:-1], moves=rows[-1:])).took()]


def test_a_lot_nobody_noted_is_assumed_to_be_the_oldest():
    assert lots_of(there(1, 10, 10), there(2, 10, 10), there(3, 10, 10), gone(4, 20)) == [(1, "oldest"), (2, "oldest")]


def test_the_last_lot_opened_by_the_day_is_assumed_before_the_oldest():
    opened = there(2, 10, 10, opened_on=day(4))
    assert lots_of(there(1, 10, 10), opened, there(3, 10, 10, opened_on=day(5)), gone(4, 5)) == [(2, "opened")]


def test_of_two_lots_opened_on_one_day_the_later_is_assumed():
    lots = (there(number, 10, 10, opened_on=day(4)) for number in (1, 2))
    assert lots_of(*lots, gone(4, 5)) == [(2, "opened")]


def test_a_lot_that_was_noted_is_a_fact_and_costs_nothing_else():
    rows = there(1, 10, 10), there(2, 10, 20, lot="x"), gone(4, 5, lot="x")
    assert lots_of(*rows) == [(2, "noted")]
    assert costs(card("fifo", *rows)) == [5]


def test_what_goes_beyond_the_last_lot_comes_from_none():
    assert lots_of(there(1, 10, 10), gone(2, 15)) == [(1, "oldest")]
    assert lots_of(gone(2, 15)) == []


def test_a_lot_leads_to_its_batches_and_a_batch_to_its_lots():
    pours = (Pour(day(4), "B-2", "Candle", 30), Pour(day(3), "B-1", "Candle", 20), Pour(day(5), "B-3", "Candle", 10))
    wax = (there(1, 4000, 10), there(2, 4000, 10, lot="x"), there(1, 100, 10, "Jar"))
    found = worked_out(a_year(purchases=wax, pours=pours, changes=(Change("B-1", "Wax", lot="x"),)))
    assert found.batches_of("Wax", 1) == ["B-2 oldest"]
    assert found.batches_of("Wax", 2) == ["B-1 noted", "B-2 oldest", "B-3 oldest"]
    assert [(each.thing, each.lot) for each in found.lots_of("B-2")] == [("Wax", 1), ("Wax", 2), ("Jar", 3)]


def test_lots_left_are_the_newest_and_a_begun_one_keeps_what_is_not_spent():
    found = lots_left(card("fifo", there(1, 3, 1), there(2, 3, 1), there(3, 3, 2), gone(4, 4)))
    assert [(lot.left, lot.value) for lot in found] == [(0, 0), (2, 67), (3, 200)]


def test_a_price_to_use_is_of_the_latest_receipt_or_the_average_of_what_is_left():
    found = card("fifo", there(1, 10, 10), there(3, 10, 30), there(2, 10, 20), gone(4, 15))
    assert (last_landed(found), average_left(found)) == (300, Fraction(4000, 15))
    assert average_left(card("fifo", there(1, 10, 10), gone(2, 10))) == 100


# What was typed wrong


@pytest.mark.parametrize(
    "wrong, words",
    [
        ({"moves": (gone(1, 1, "Snow"),)}, "nobody set up"),
        ({"pours": (Pour(START, "B-1", "Candle", 1), Pour(START, "B-1", "Candle", 1))}, "used twice"),
        ({"purchases": (Purchase(START, "Wax", packs=Fraction(-1)),)}, "more than nothing"),
        ({"changes": (Change("B-9", "Wax"),)}, "not there"),
        ({"recipes": (replace(CANDLE, since=day(9)),), "pours": (Pour(START, "B-1", "Candle", 1),)}, "no row holds"),
        ({"sets": (Set("Candle", (Line("Candle", Fraction(1)),)),)}, "part of nothing else"),
    ],
)
def test_what_has_no_answer_is_refused(wrong, words):
    with pytest.raises(ValueError, match=words):
        worked_out(a_year(**wrong))


# Laws, over random years

few = settings(max_examples=25)  # a year has a hundred of each thing
years = st.builds(year_seasons.year, st.integers(0, 10**6), st.sampled_from(METHODS))


@few
@given(years)
def test_issues_and_what_is_left_are_worth_what_was_received(year):
    for found in worked_out(year).cards.values():
        if found.value is not None:
            assert found.spent + found.value == sum(receipt.value for receipt in found.receipts)


@few
@given(years)
def test_what_is_left_is_what_came_in_less_what_went_out_and_lies_in_the_lots(year):
    for found in worked_out(year).cards.values():
        assert found.left == sum(lot.amount for lot in found.receipts) - sum(line.issue.amount for line in found.lines)
        assert sum(lot.left for lot in lots_left(found)) == max(0, found.left)


@few
@given(years)
def test_lots_left_add_up_to_the_closing_value(year):
    for found in worked_out(year).cards.values():
        if found.value is not None and found.left >= 0 and not (found.left == 0 and found.method == "average"):
            assert sum(lot.value for lot in lots_left(found)) == found.value


@few
@given(years)
def test_nothing_left_is_worth_nothing_unless_an_average_had_run_short(year):
    for found in worked_out(year).cards.values():
        if found.value is not None and found.left == 0 and not any(line.short for line in found.lines):
            assert found.value == 0


@few
@given(years)
def test_every_candle_made_is_moved_packed_or_left_ready_or_curing(year):
    found = figures(worked_out(year))
    for product in {recipe.product for recipe in year.recipes}:
        shown = {figure.head: value for figure, value in found.items() if figure[:2] == ("Candles", product)}
        assert shown["made"] == shown["moved"] + shown["packed"] + shown["left"]
        assert max(0, shown["left"]) == shown["ready"] + shown["curing"]


@few
@given(years, st.randoms())
def test_the_order_of_changes_is_no_matter(year, dice):
    shuffled = replace(year, changes=tuple(dice.sample(year.changes, len(year.changes))))
    assert differences(figures(worked_out(year)), figures(worked_out(shuffled))) == []


amounts = st.integers(1, 10**4).map(lambda tenths: Fraction(tenths, 10))


@given(
    st.lists(st.tuples(amounts, st.integers(0, 10**5), st.fractions(0, 1, max_denominator=8)), min_size=1, max_size=8)
)
@pytest.mark.parametrize("method, named", [("fifo", "FIFO"), ("average", "moving average")])
def test_where_nothing_is_short_issues_cost_what_issue_costs_says(method, named, log):
    rows, moves, prices, stock = [], [], [], Fraction(0)
    for number, (amount, value, part) in enumerate(log, start=1):
        rows.append(there(2 * number, amount, value / 100))
        stock += amount
        out = Fraction(int(stock * part * 10), 10)
        rows.append(gone(2 * number + 1, out))
        stock -= out
        moves += [float(amount), -float(out)]
        prices += [value / 100 / float(amount), None if out else 0.0]
    found = card(method, *rows)
    expected = issue_costs(moves, prices, named)[1::2]
    assert sum(costs(found)) == pytest.approx(sum(expected), abs=0.006)
    for ours, theirs in zip(costs(found), expected, strict=True):
        assert ours == pytest.approx(theirs, abs=0.0101)


# Telling differences


def shown(found):
    """Figures as a spreadsheet gives them: binary numbers, money in whole."""
    return {
        figure: value / 100 if isinstance(value, Cents) else float(value) if isinstance(value, Fraction) else value
        for figure, value in found.items()
    }


@few
@given(years)
def test_a_spreadsheet_that_is_right_differs_in_nothing(year):
    found = figures(worked_out(year))
    assert differences(found, shown(found)) == []


@few
@given(years, st.data())
def test_a_cent_more_or_less_is_found_wherever_it_is_planted(year, data):
    right = figures(worked_out(year))
    money = [figure for figure, value in right.items() if isinstance(value, Cents)]
    planted = data.draw(st.sampled_from(money))
    found = shown(right)
    found[planted] += data.draw(st.sampled_from([-0.01, 0.01]))
    (told,) = differences(right, found)
    assert told.startswith(f"{planted.tab}, ")
    assert planted.head in told


def test_two_batches_that_changed_places_are_found():
    right = figures(made(Pour(day(2), "B-1", "Candle", 10), Pour(day(3), "B-2", "Candle", 9)))
    found = shown(right)
    first, second = (Figure("Used", (batch, "Wax"), "cost") for batch in ("B-1", "B-2"))
    found[first], found[second] = found[second], found[first]
    assert differences(right, found) == [
        "Used, Wax of batch B-1, cost: 5.00 expected, 4.5 found",
        "Used, Wax of batch B-2, cost: 4.50 expected, 5 found",
    ]


def test_a_stand_in_that_went_unread_is_found():
    pour = Pour(day(2), "B-1", "Candle", 10)
    right, found = (figures(made(pour, changes=changes)) for changes in ((Change("B-1", "Wax", "Other wax"),), ()))
    told = differences(right, found)
    assert "Used, Wax of batch B-1, thing: Other wax expected, Wax found" in told
    assert "Stock, Wax, left: 10000 expected, 9000 found" in told
    assert "Batch log, row 1, making cost: 37.25 expected, 34.25 found" in told


def test_a_part_of_a_set_is_told_by_its_line():
    figure = Figure(PARTS, ("Sales", 3, "Jar"), "cost")
    assert differences({figure: Cents(5)}, {figure: 0.06}) == [
        "Parts of sets, Jar of Sales, row 3, cost: 0.05 expected, 0.06 found"
    ]


def test_what_is_missing_blank_or_too_much_is_told():
    figure, other = Figure("Stock", "Wax", "value"), Figure("Stock", "Snow", "value")
    assert differences({figure: Cents(5)}, {other: 0.05}) == [
        "Stock, Wax, value: 0.05 expected, nothing found",
        "Stock, Snow, value: nothing expected, 0.05 found",
    ]
    assert differences({figure: ERROR}, {figure: None}) == ["Stock, Wax, value: an error expected, a blank found"]
    assert differences({figure: Cents(100)}, {figure: True}) == ["Stock, Wax, value: 1.00 expected, yes found"]


# The random years themselves


def test_a_seed_gives_the_same_year_again():
    assert year_seasons.year(7) == year_seasons.year(7) != year_seasons.year(8)


def test_the_method_changes_nothing_that_is_typed():
    assert replace(year_seasons.year(7, "average"), method="fifo") == year_seasons.year(7)


@few
@given(years)
def test_a_year_is_small(year):
    products = {recipe.product for recipe in year.recipes}
    sizes = [
        (4, len(year.materials), 8),
        (3, len(products), 5),
        (15, len(year.purchases), 40),
        (15, len(year.pours), 40),
    ]
    assert all(least <= size <= most for least, size, most in sizes)


def ends_after(amount, decimals):
    return (amount * 10**decimals).denominator == 1


@few
@given(years)
def test_a_spreadsheet_holds_every_number_well(year):
    found = worked_out(year)
    assert all(ends_after(line.each, 3) for recipe in year.recipes for line in recipe.lines)
    assert all(ends_after(line.amount, 3) for line in found.used)
    assert all(ends_after(batch.hours, 2) for batch in found.made)
    assert all(ends_after(row.amount, 2) for row in year.moves)


def cases(year):
    """What a year has of the things that are easily got wrong."""
    found = worked_out(year)
    cards = found.cards.values()
    lines = [line for card in cards for line in card.lines]
    documents = Counter(line.document for line in year.purchases if line.document)
    lots = Counter((row.material, row.lot) for row in year.purchases if row.lot)
    came, left = {row.day for row in year.purchases}, {pour.day for pour in year.pours}
    products = {recipe.product for recipe in year.recipes}
    return {
        "documents of several lines": max(documents.values(), default=0) > 1,
        "opening materials": any(row.kind == "opening" for row in year.purchases),
        "opening candles": any(pour.kind == "opening" for pour in year.pours),
        "receipts and issues on one day": bool(came & left),
        "pours typed late": [pour.day for pour in year.pours] != sorted(pour.day for pour in year.pours),
        "purchases typed late": [row.day for row in year.purchases] != sorted(row.day for row in year.purchases),
        "short on a day only": any(card.left >= 0 and any(line.short for line in card.lines) for card in cards),
        "short at the end": any(card.left < 0 for card in cards),
        "candles short": any(found.cards[product].left < 0 for product in products),
        "nothing short at the end": all(card.left >= 0 for card in cards),
        "never bought": any(card.value is None and card.receipts == () for card in cards),
        "stand-ins": any(change.instead for change in year.changes),
        "weighed": any(change.weighed is not None for change in year.changes),
        "lots noted": any(change.lot for change in year.changes),
        "lots opened": any(row.opened_on for row in year.purchases),
        "one lot in two deliveries": max(lots.values()) > 1,
        "dated recipes": any(recipe.since for recipe in year.recipes),
        "dated rates": len(year.rates) > 1,
        "planned typed": any(pour.planned is not None for pour in year.pours),
        "hours typed": any(pour.hours is not None for pour in year.pours),
        "a batch lost": any(not pour.good for pour in year.pours),
        "sets packed": any(line.issue.tab == "Used" for product in products for line in found.cards[product].lines),
        "materials moved": any(move.thing not in products for move in year.moves),
        "candles moved": any(move.thing in products for move in year.moves),
        "sent back": any(move.kind == "sent back" for move in year.moves),
        "counted, less there": any(line.issue.tab == "Counts" and line.issue.amount > 0 for line in lines),
        "counted, more there": any(line.issue.tab == "Counts" and line.issue.amount < 0 for line in lines),
        "counted and not moved": any(not count.is_move for count in year.counts),
    }  # fmt: skip


def test_forty_years_have_every_case():
    seen = Counter(case for seed in range(40) for case, there in cases(year_seasons.year(seed)).items() if there)
    assert {case for case in cases(year_seasons.year(0)) if not seen[case]} == set()
