"""When to pour and how much to make in each week, against textbooks, published answers and libraries."""

from datetime import date
from itertools import product

import numpy
import pytest
from hypothesis import given
from hypothesis import strategies as st
from make_answers import answers

from candlecalc.calc import lot_sizes, lots_cost, pour_by, pour_by_own_days

# The day to start pouring. Worked on a calendar: 5 December 2026 is a Saturday.
SATURDAY = date(2026, 12, 5)
DAYS = [  # cure, evenings, finishing, day, how
    (14, 1, 0, date(2026, 11, 20), "cured from Saturday 21 November, so poured on the Friday before"),
    (14, 3, 0, date(2026, 11, 18), "Friday, Thursday, Wednesday"),
    (14, 1, 2, date(2026, 11, 19), "Friday and Thursday to pack, cured by Thursday 3 December"),
    (0, 1, 0, date(2026, 12, 4), "no cure: the last working day before a Saturday"),
    (5, 6, 0, date(2026, 11, 23), "from Monday 30 November back over a weekend"),
]


@pytest.mark.parametrize("cure, evenings, finishing, day, how", DAYS)
def test_the_day_to_pour_by_follows_the_calendar(face, cure, evenings, finishing, day, how):
    assert face.pour_by(SATURDAY, cure, evenings, finishing) == day


def test_the_day_to_pour_by_follows_the_makers_own_week(face):
    # Worked on the same calendar: Saturday 21 November is a pouring day, then Thursday 19 and Tuesday 17.
    assert face.pour_by_own_days(SATURDAY, 14, "Tue Thu Sat", 3) == date(2026, 11, 17)
    assert face.pour_by_own_days(SATURDAY, 14, "Tue, Thu, Sat", 3, 0, [date(2026, 11, 19)]) == date(2026, 11, 14)
    assert face.pour_by_own_days(SATURDAY, 14, "every day", 3) == date(2026, 11, 19)
    assert face.pour_by_own_days(SATURDAY, 14, "Fri-Mon", 3) == date(2026, 11, 16)


def test_a_cure_of_half_a_day_and_a_week_without_days_are_refused(face):
    with face.refuses("cure is 13.5; it takes whole numbers 0 to 365 days"):
        face.pour_by(SATURDAY, 13.5)
    with face.refuses('working is "soon"; it takes days such as "Mon-Fri"'):
        face.pour_by_own_days(SATURDAY, 14, "soon")


CURED = [  # poured, cure, ready, how
    (date(2026, 11, 17), 14, date(2026, 12, 1), "over the end of a month"),
    (date(2028, 2, 22), 7, date(2028, 2, 29), "a leap year"),
    (date(2026, 12, 5), 0, date(2026, 12, 5), "no cure"),
]


@pytest.mark.parametrize("poured, cure, ready, how", CURED)
def test_the_day_when_candles_have_cured_follows_the_calendar(face, poured, cure, ready, how):
    # Worked on a calendar.
    assert face.ready_on(poured, cure) == ready


WEEKS = {"Mon-Fri": "1111100", "Tue Thu Sat": "0101010", "every day": "1111111", "Sat-Sun": "0000011", "wed": "0010000"}
days = st.dates(date(2020, 1, 1), date(2039, 12, 31))


@given(days, st.integers(0, 90), st.integers(1, 20), st.integers(0, 20), st.sampled_from(sorted(WEEKS)), st.data())
def test_the_day_to_pour_by_is_numpys(sale, cure, evenings, finishing, working, data):
    near = st.dates(date.fromordinal(sale.toordinal() - 120), sale)
    closed = data.draw(st.lists(near, max_size=6))
    calendar = numpy.busdaycalendar(weekmask=WEEKS[working], holidays=closed)
    cured = numpy.datetime64(sale)
    if finishing:
        # Forward first, so that a day which is no working day is not itself counted.
        cured = numpy.busday_offset(sale, -finishing, roll="forward", busdaycal=calendar)
    last = numpy.busday_offset(cured - cure, 0, roll="backward", busdaycal=calendar)
    first = numpy.busday_offset(last, 1 - evenings, busdaycal=calendar).astype(date)
    assert pour_by_own_days(sale, cure, working, evenings, finishing, closed) == first
    if working == "Mon-Fri" and not closed:
        assert pour_by(sale, cure, evenings, finishing) == first


# Pots and evenings: common practice, no source.
def test_a_pot_that_is_not_full_is_a_pot_and_an_evening_too(face):
    assert [face.pots_needed(melt, 3200) for melt in (0, 3200, 3201)] == [0, 1, 2]
    assert [face.evenings_needed(pots, 3) for pots in (0, 3, 4)] == [0, 1, 2]
    with face.refuses("the pot must hold more than 0"):
        face.pots_needed(100, 0)


# OpenStax, Managerial Accounting 7.2: a year of a bicycle maker by quarters, printed. (Its running text gives
# 4,876 for one total of material where the table's own figures come to 4,896.)
SOLD, KEPT, MADE = [1000, 1000, 1500, 2500], [300, 450, 750, 1050], [1300, 1150, 1800, 2800]
MATERIAL = [  # used, left at the end, there at the start, bought
    (4160, 736, 0, 4896),
    (3680, 1152, 736, 4096),
    (5760, 1792, 1152, 6400),
    (8960, 2432, 1792, 9600),
]


def test_a_production_budget_follows_the_textbook(face):
    assert face.follow_demand(SOLD, KEPT) == MADE
    assert [face.to_make(*line) for line in zip(SOLD, KEPT, [0, *KEPT], strict=False)] == MADE
    assert face.stock_left(SOLD, MADE) == KEPT


@pytest.mark.parametrize("used, left, there, bought", MATERIAL)
def test_a_materials_budget_follows_the_textbook(face, used, left, there, bought):
    assert face.to_make(used, left, there) == bought


def test_a_month_with_enough_in_stock_makes_nothing(face):
    assert face.to_make(sales=100, closing=0, opening=150) == 0
    # OpenStax, the same chapter, an exercise: half a pound for each of 4,000, then 3,700, a tenth kept; worked.
    assert face.to_make(0.5 * 4000, 0.1 * 0.5 * 3700, 0.1 * 0.5 * 4000) == pytest.approx(1985)


# A candy maker's four quarters (homeworkhost 454395, answers printed): 2.00 to make a pound, 0.50 to keep one for
# a quarter, 1,000 pounds a worker at 100 to take one on and 500 to let one go, 100 workers at the start.
CANDY = {"making": 2, "keeping": 0.5, "raising": 100 / 1000, "lowering": 500 / 1000, "usual": 100_000}
POUNDS = [80_000, 50_000, 120_000, 150_000]


def test_level_and_follow_demand_follow_the_exercise(face):
    level, follow = face.level_or_follow(POUNDS, **CANDY)
    assert (level.plan, level.most_made, level.most_kept, level.cost) == ("level", 100_000, 70_000, 870_000)
    assert (follow.plan, follow.most_made, follow.cost) == ("follow demand", 150_000, 835_000)
    assert face.level_rate(POUNDS) == 100_000
    assert face.stock_left(POUNDS, [100_000] * 4) == [20_000, 70_000, 50_000, 0]
    assert face.plan_cost(POUNDS, POUNDS, **CANDY) == 835_000


def test_a_plan_that_is_short_is_refused_with_its_place(face):
    with face.refuses("plan_cost: 20000 too few at place 3; more must be made by then."):
        face.plan_cost([80_000, 50_000, 120_000], [80_000, 50_000, 100_000], 2)
    with face.refuses("stock_left: 10 too few at place 1"):
        face.stock_left([20], [10])


# Lot sizes: Snyder and Shen, example 3.9, as stockpyl prints it.
def test_lot_sizes_follow_the_example(face):
    assert face.lot_sizes([90, 120, 80, 70], 500, 2) == [210, 0, 150, 0]
    assert face.lots_cost([90, 120, 80, 70], [210, 0, 150, 0], 500, 2) == 1380


def test_a_season_without_sales_makes_nothing(face):
    assert face.lot_sizes([0, 0], 500, 2) == [0, 0]
    with face.refuses("sales at place 2 is -1; it takes 0 or more"):
        face.lot_sizes([5, -1], 500, 2)


def test_lot_sizes_cost_what_stockpyls_do():
    for case in answers("lot_sizes"):
        made = lot_sizes(case["sales"], case["setup"], case["keeping"])
        cost = lots_cost(case["sales"], made, case["setup"], case["keeping"])
        assert cost == pytest.approx(case["cost"]), case


@given(st.lists(st.integers(0, 60), min_size=1, max_size=7), st.integers(0, 200), st.integers(0, 5), st.integers(0, 90))
def test_no_choice_of_batches_costs_less_than_the_lot_sizes(sales, setup, keeping, opening):
    made = lot_sizes(sales, setup, keeping, opening)
    cost = lots_cost(sales, made, setup, keeping, opening)
    for starts in product([False, True], repeat=len(sales)):
        other = batches(sales, starts, opening)
        if other:
            assert cost <= lots_cost(sales, other, setup, keeping, opening) + 1e-6


def batches(sales, starts, opening):
    """What a batch at each start must hold to last until the next one; None where it starts too late."""
    made, at = [0] * len(sales), None
    for period, sold in enumerate(sales):
        sold, opening = max(0, sold - opening), max(0, opening - sold)
        at = period if starts[period] else at
        if sold and at is None:
            return None
        if sold:
            made[at] += sold
    return made


# Net requirements with packs and lead times: edu.com, homework 1098717, answers printed. A takes 2 B and 3 C; B
# takes 1 F; C takes 1 D, 1 E and 2 F. D comes in 50, E and F in 100.
TABLES = {
    "items": ["A", "B", "C", "D", "E", "F"],
    "on_hand": [20, 50, 60, 25, 0, 0],
    "packs": [None, None, None, 50, 100, 100],
    "leads": [1, 1, 2, 1, 2, 2],
    "products": ["A", "A", "B", "C", "C", "C"],
    "parts": ["B", "C", "F", "D", "E", "F"],
    "amounts": [2, 3, 1, 1, 1, 2],
    "wanted": ["A"] * 4,
    "weeks": [1, 2, 6, 8],
    "quantities": [20, 20, 60, 50],
    "coming": ["B"],
    "coming_weeks": [1],
    "coming_amounts": [30],
}
RELEASES = [  # item, when it is started and how much of it
    ("A", {1: 20, 5: 60, 7: 50}),
    ("B", {4: 80, 6: 100}),
    ("C", {3: 180, 5: 150}),
    ("D", {2: 200, 4: 150}),
    ("E", {1: 200, 3: 200}),
    ("F", {1: 400, 2: 100, 3: 300, 4: 100}),
]


@pytest.mark.parametrize("item, releases", RELEASES)
def test_net_requirements_follow_the_exercise(face, item, releases):
    orders = [order for order in face.net_requirements(**TABLES) if order.item == item]
    assert {order.start: order.amount for order in orders} == releases
    assert all(order.note is None for order in orders)


def test_an_order_that_should_have_started_says_so(face):
    (order,) = face.net_requirements(["wax"], [10], [25], [2], [], [], [], ["wax"], [1], [20])
    assert order == ("wax", -1, 1, 25, "late: before week 1")


CHANGES = [  # what is changed in the tables above, what is said
    ({"parts": ["B", "C", "F", "D", "E", "A"]}, "net_requirements: C, A go round in a circle"),
    ({"parts": ["B", "C", "G", "D", "E", "F"]}, 'parts at place 3 is "G", which is not among the items'),
    ({"coming_weeks": [None]}, "the line of coming at place 1 is filled in by half"),
    ({"items": ["A", "B", "C", "D", "E", "a"]}, 'items at place 6 names "a" again'),
    ({"items": ["A", "B", "C", "D", None, "F"]}, "items is blank at place 5"),
    ({"weeks": [0, 2, 6, 8]}, "weeks at place 1 is 0; it takes whole numbers 1 to 520"),
]


@pytest.mark.parametrize("changes, words", CHANGES, ids=lambda value: str(value)[:40])
def test_tables_that_do_not_fit_together_are_refused(face, changes, words):
    with face.refuses(words):
        face.net_requirements(**{**TABLES, **changes})
