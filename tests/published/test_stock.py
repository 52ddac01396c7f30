"""Stock valued, written down, counted and turned over, against textbooks and a library's examples.

OpenStax is Financial Accounting, chapter 10; its averages are printed from a rate rounded to the cent, so ours,
which round nothing on their way, are marked as worked. A purchase is written as amount and cost, a sale as amount.
"""

from datetime import date

import pandas
import pytest

# OpenStax 10.1 to 10.3, July of one company: opening, sale, purchase, sale, purchase.
JULY = ([150, -120, 225, -180, 210], [21, None, 27, None, 33])
BOUGHT = ([150, 225, 210], [21, 27, 33])

LOG = [  # method, used, worth, tolerance, where
    ("FIFO", 7200, 8955, 1e-9, "printed"),
    ("LIFO", 7380, 8775, 1e-9, "printed"),
    ("moving average", 7253, 8902, 0.5, "printed to the dollar"),
    ("moving average", 7252.94, 8902.06, 0.005, "worked from the inputs"),
]
COUNT = [  # method, used, worth, tolerance, where
    ("FIFO", 7200, 8955, 1e-9, "printed"),
    ("LIFO", 9360, 6795, 1e-9, "printed"),
    ("periodic average", 8284.62, 7870.38, 0.005, "worked; printed 8,283 and 7,872 from a rate rounded to 27.62"),
]


@pytest.mark.parametrize("method, used, worth, tolerance, where", LOG)
def test_a_log_is_valued_as_in_the_textbook(face, method, used, worth, tolerance, where):
    value = face.stock_from_log(*JULY, method)
    assert (value.used, value.worth) == pytest.approx((used, worth), abs=tolerance)
    assert value.left == 285


@pytest.mark.parametrize("method, used, worth, tolerance, where", COUNT)
def test_a_count_is_valued_as_in_the_textbook(face, method, used, worth, tolerance, where):
    value = face.stock_from_count(*BOUGHT, 285, method)
    assert (value.used, value.worth, value.left) == pytest.approx((used, worth, 285), abs=tolerance)


SALES = [  # method, cost of the first sale, of the second, tolerance, where
    ("FIFO", 2520, 4680, 1e-9, "printed"),
    ("LIFO", 2520, 4860, 1e-9, "printed"),
    ("moving average", 2520, 4732.94, 0.005, "printed 2,520 and 4,733; worked to the cent"),
]


@pytest.mark.parametrize("method, first, second, tolerance, where", SALES)
def test_each_sale_costs_what_it_does_in_the_textbook(face, method, first, second, tolerance, where):
    costs = face.issue_costs(*JULY, method)
    assert (costs[1], costs[3]) == pytest.approx((first, second), abs=tolerance)
    assert costs[0] == costs[2] == costs[4] == 0


def test_what_is_left_is_the_newest_lots(face):
    # OpenStax 10.3: 75 of the purchase at 27 and all 210 of the one at 33; worth worked, together the printed 8,955.
    lots = face.lots_left(*JULY)
    assert [(lot.line, lot.left, lot.worth) for lot in lots] == [(3, 75, 2025), (5, 210, 6930)]


def test_lots_told_apart_are_valued_as_in_the_textbook(face):
    # OpenStax 10.2, specific identification: 120 and 20 of the first lot, 160 of the second; printed.
    value = face.stock_from_lots(*BOUGHT, [140, 160, 0])
    assert (value.used, value.left, value.worth) == (7260, 285, 8895)


def test_the_average_cost_follows_the_textbook(face):
    # OpenStax 10.2: 16,155 for 585; printed 27.62.
    assert face.average_cost(*BOUGHT) == pytest.approx(27.62, abs=0.005)
    with face.refuses("something must have been bought"):
        face.average_cost([0, 0], [21, 27])


# OpenStax 10, exercises and problems: inputs printed, answers worked.
LOGS = [  # moves, costs, FIFO used and worth, LIFO, moving average, where
    ([420, -150, 250, -275, 200, -260], [200, None, 205, None, 215, None],
     (138475, 39775), (141250, 37000), (139757.97, 38492.03), "exercise B76"),
    ([800, 600, -400, -350], [50, 52, None, None], (37500, 33700), (38700, 32500), (38142.86, 33057.14),
     "exercises A65 to A67"),
    ([110, 140, -95], [87, 89, None], (8265, 13765), (8455, 13575), (8371.40, 13658.60), "exercise A74"),
]  # fmt: skip


@pytest.mark.parametrize("moves, costs, fifo, lifo, average, where", LOGS)
def test_logs_of_the_exercises_are_valued(face, moves, costs, fifo, lifo, average, where):
    for method, (used, worth) in {"FIFO": fifo, "LIFO": lifo, "moving average": average}.items():
        value = face.stock_from_log(moves, costs, method)
        assert (value.used, value.worth) == pytest.approx((used, worth), abs=0.005)


COUNTS = [  # bought, costs, left, FIFO used and worth, LIFO, periodic average, where
    ([150, 160, 130], [10, 12, 15], 50, (4620, 750), (4870, 500), (4759.77, 610.23), "Akira"),
    ([1050, 1020, 1300, 1200], [22, 23, 26, 27], 900, (88460, 24300), (92960, 19800), (90553.44, 22206.56), "Trini"),
    ([500, 600, 650, 700], [40, 45, 40, 35], 550, (78250, 19250), (75250, 22250), (75612.24, 21887.76), "DeForest"),
]


@pytest.mark.parametrize("bought, costs, left, fifo, lifo, average, where", COUNTS)
def test_counts_of_the_exercises_are_valued(face, bought, costs, left, fifo, lifo, average, where):
    for method, (used, worth) in {"FIFO": fifo, "LIFO": lifo, "periodic average": average}.items():
        value = face.stock_from_count(bought, costs, left, method)
        assert (value.used, value.worth) == pytest.approx((used, worth), abs=0.005)


# The R package FinCal 0.6.3, its function for cost of goods: 2 at 2, then 3 at 3 and 5 at 5; 7 are sold. Printed.
FINCAL = [("FIFO", 23, 15), ("LIFO", 31, 7), ("periodic average", 26.6, 11.4)]


@pytest.mark.parametrize("method, used, worth", FINCAL)
def test_a_count_is_valued_as_a_library_does(face, method, used, worth):
    value = face.stock_from_count([2, 3, 5], [2, 3, 5], 3, method)
    assert (value.used, value.worth) == pytest.approx((used, worth), abs=1e-9)


REFUSED = [  # moves, costs, words
    ([5, -6], [2, None], "moves at place 2 takes out 6; there are 5."),
    ([5, 5], [2, None], "costs at place 2 is blank; what came in needs its cost."),
    ([5, -1], [2, 2], "costs at place 2 is 2; it stays blank where something went out."),
    ([-1], [None], "moves at place 1 takes out 1; there are 0."),
    ([5, "6", -1], [2, 2, None], 'moves at place 2 is the text "6"'),
    ([5, None, -1], [2, None, None], "moves is blank at place 2 of 3"),
]


@pytest.mark.parametrize("moves, costs, words", REFUSED)
def test_a_log_that_cannot_be_is_refused_with_its_place(face, moves, costs, words):
    with face.refuses(f"stock_from_log: {words}"):
        face.stock_from_log(moves, costs)


def test_more_left_or_taken_than_there_was_is_refused(face):
    with face.refuses("stock_from_count: left is 600, more than the 585 there were."):
        face.stock_from_count(*BOUGHT, 600)
    with face.refuses("stock_from_lots: taken at place 1 is 151; the lot held 150."):
        face.stock_from_lots(*BOUGHT, [151, 0, 0])
    with face.refuses("lots_left: nothing is left."):
        face.lots_left([5, -5], [2, None])


# Lower of cost and what it brings, item by item. OpenStax 10.1, exercises: inputs printed, answers worked; their
# "market" stands for net realisable value.
LOWER = [  # amounts, costs, worth, carried at, at cost, where
    ([10, 25, 12], [36, 20, 6], [35, 20, 8], 922, 932, "the first exercise"),
    ([20, 30, 45], [100, 75, 50], [95, 70, 55], 6250, 6500, "the second"),
    ([1, 1, 1], [300, 200, 450], [500, 100, 200], 600, 950, "from memory: a table of IRS Publication 538"),
]


@pytest.mark.parametrize("amounts, costs, worth, carried, cost, where", LOWER)
def test_stock_is_carried_at_the_lower_item_by_item(face, amounts, costs, worth, carried, cost, where):
    assert face.lower_of_cost(amounts, costs, worth) == carried
    assert face.write_down(amounts, costs, worth) == cost - carried


def test_what_one_brings_is_after_what_it_costs_to_finish_and_sell(face):
    # IAS 2, paragraph 6, as summaries give it; the numbers are chosen here.
    assert face.net_realisable_value(20, 3, 2) == 15
    assert face.net_realisable_value(20, 18, 5) == 0
    with face.refuses("price is -1; it takes 0 or more"):
        face.net_realisable_value(-1)


# OpenStax 10.5: the same company's two years. The opening of the second is worked from the printed average.
YEARS = [  # goods, opening, closing, turns printed, days worked, where
    (7200, 3150, 8955, 1.19, 306.83, "printed 306.79 days, from a cost of 19.73 a day; average 6,053"),
    (7920, 8955, 9851, 0.84, 433.35, "printed 433.32 days, from a cost of 21.70 a day; average 9,403"),
]


@pytest.mark.parametrize("goods, opening, closing, turns, days, where", YEARS)
def test_turnover_follows_the_textbook(face, goods, opening, closing, turns, days, where):
    assert face.stock_turns(goods, opening, closing) == pytest.approx(turns, abs=0.005)
    assert face.days_in_stock(goods, opening, closing) == pytest.approx(days, abs=0.005)


def test_turnover_of_no_stock_or_no_sales_is_refused(face):
    with face.refuses("there must have been stock at the start or the end"):
        face.stock_turns(7200, 0, 0)
    with face.refuses("goods must be more than 0"):
        face.days_in_stock(0, 3150, 8955)


def test_cover_follows_the_example(face):
    # Tests of the library inventoryanalytics: 252.98 at 200 a month last 1.26 months; printed.
    assert face.days_covered(252.98, 200) == pytest.approx(1.26, abs=0.005)
    with face.refuses("a_day is 0; it takes more than 0"):
        face.days_covered(252.98, 0)


def test_a_count_is_compared_with_the_books(face):
    # OpenStax 6.3: the books are adjusted to the count. The numbers are chosen here.
    assert face.count_difference(283, 285) == -2
    assert face.count_difference_cost(283, 285, 33) == -66
    with face.refuses("counted is -1; it takes 0 or more"):
        face.count_difference(-1, 285)


# Lots with a date: the calendar; which lot first is common practice, no source.


def test_a_lots_last_day_follows_the_calendar(face):
    assert face.use_by(date(2027, 2, 28), 366) == date(2028, 2, 29)  # a leap year
    assert face.shelf_days_left(date(2027, 2, 28), 366, date(2028, 3, 1)) == -1
    with face.refuses("shelf_life is 0.5; it takes whole numbers"):
        face.use_by(date(2027, 2, 28), 0.5)


LOTS = {
    "lots": ["B2", "B1", "B3"],
    "amounts": [400, 300, 900],
    "dates": [date(2027, 5, 1), date(2027, 1, 31), date(2027, 6, 30)],
}


def test_the_lot_that_ends_first_is_used_first(face):
    taken = face.lots_to_use(**LOTS, needed=500, as_of=date(2027, 1, 31))
    assert [(lot.lot, lot.take, lot.days_left) for lot in taken] == [("B1", 300, 0), ("B2", 200, 90)]
    taken = face.lots_to_use(**LOTS, needed=500, as_of=date(2027, 2, 1))
    assert [(lot.lot, lot.take, lot.use_by) for lot in taken] == [
        ("B2", 400, date(2027, 5, 1)),
        ("B3", 100, date(2027, 6, 30)),
    ]


def test_lots_past_their_day_are_not_used_to_make_up_a_need(face):
    with face.refuses("lots_to_use: lots that are not past their day hold 1300 of the 1400 needed."):
        face.lots_to_use(**LOTS, needed=1400, as_of=date(2027, 2, 1))


KEEPS = [(date(2026, 8, 31), 18), (date(2026, 1, 31), 1), (date(2028, 1, 31), 1), (date(2026, 12, 15), 12),
         (date(2026, 5, 1), 0), (date(2026, 11, 30), 27)]  # fmt: skip


@pytest.mark.parametrize("made, months", KEEPS)
def test_a_lot_that_keeps_months_ends_on_pandas_day(face, made, months):
    # The library pandas: DateOffset of whole months, cut to the last day of a shorter one.
    assert face.use_by_months(made, months) == (pandas.Timestamp(made) + pandas.DateOffset(months=months)).date()
