"""Costs against textbook jobs, and splits of money against published allocations."""

import pytest

# Freight in is part of what a unit costs.
UNIT_COSTS = [  # price of all, units, freight, cost of one, where
    (2400, 40, 200, 65, "OpenStax, Financial Accounting 6.5: 40 at 60 and 5 freight each; printed 2,600 in all"),
    (2400, 30, 1000, 3400 / 30, "OpenStax, Financial Accounting 6.5: printed 3,400 in all; each worked here"),
    (1000, 10, 10, 101, "printed 101.0000: scenario of an open-source module for landed cost of stock"),
]


@pytest.mark.parametrize("price, size, shipping, each, where", UNIT_COSTS)
def test_freight_in_is_part_of_a_units_cost(face, price, size, shipping, each, where):
    assert face.unit_cost(price, size, shipping) == pytest.approx(each, abs=1e-9)


# OpenStax, Managerial Accounting 4.2 and 4.5: the job sheet of one job.
MATERIALS = [  # quantity, at, printed
    (2, 50, 100),
    (1, 60, 60),
    (12, 10, 120),
    (40, 1.50, 60),
]


@pytest.mark.parametrize("quantity, at, printed", MATERIALS)
def test_a_line_of_material_follows_the_job_sheet(face, quantity, at, printed):
    assert face.material_cost(quantity, at) == printed


def test_a_job_follows_the_job_sheet(face):
    materials = face.parts_cost(amounts=[1, 2, 1, 1, 12, 40], costs=[300, 50, 60, 60, 10, 1.50])
    labour = face.labour_cost(minutes="2 h", rate=15) + face.labour_cost(minutes="2 h", rate=18)
    assert (materials, labour) == (700, 66)  # printed
    # The book's overhead goes by money of labour; here by hours, so 66 hours stand for 66 of labour.
    overhead = face.overhead_cost(minutes=66 * 60, rate=2.50)
    assert overhead == 165  # printed
    assert face.making_cost(materials, labour, overhead) == 931  # printed


# OpenStax, Managerial Accounting 4.2, 4.4, 4.6.
RATES = [  # overhead, activity, rate, where
    (250_000, 100_000, 2.50, "printed, 4.4"),
    (400_000, 200_000, 2.00, "printed, 4.2"),
]


@pytest.mark.parametrize("overhead, activity, rate, where", RATES)
def test_an_overhead_rate_follows_the_textbook(face, overhead, activity, rate, where):
    assert face.overhead_rate(overhead, activity) == rate


def test_applied_overhead_follows_the_textbook(face):
    # OpenStax, Managerial Accounting 4.6: 6,240 hours at 33.50, printed 209,040.
    assert face.overhead_cost(minutes=6240 * 60, rate=33.50) == pytest.approx(209_040, abs=1e-6)


# The largest remainder: OpenStax, Contemporary Mathematics 11.4. "Worked" where the book stops at its
# whole parts or adds a least seat of one.
WHOLE = [  # charge, amounts, parts, where
    (70, [15, 9, 10], [31, 18, 21], "worked; printed: 30.88, 18.53, 20.59, which round to 71"),
    (27, [13, 12, 5, 16, 7, 9], [6, 5, 2, 7, 3, 4], "worked; printed: 5, 5, 2, 6, 3, 3 before the last 3"),
    (616, [46310, 224230, 20, 16560, 38450], [88, 424, 0, 31, 73], "worked: without the book's least of 1"),
]


@pytest.mark.parametrize("charge, amounts, parts, where", WHOLE)
def test_whole_units_left_over_go_to_the_largest_fractions(face, charge, amounts, parts, where):
    assert face.split_charge(charge, amounts, digits=0) == parts


# A charge over lines of an order, to the cent. "Stock": test suites of open-source modules for the landed
# cost of stock (stock_landed_costs, test 00 and test 01; purchase receipts by value). "Money": the
# documentation of the library moneyphp, page on allocation, and a note on the library NMoneys.
SPLITS = [  # charge, amounts, sharing, digits, parts, where
    (150, [5, 10], "in proportion", 2, [50, 100], "stock: by quantity"),
    (250, [50, 200], "in proportion", 2, [50, 200], "stock: by weight"),
    (10, [5, 10], "evenly", 2, [5, 5], "stock: equal"),
    (-50, [5, 10], "in proportion", 2, [-16.67, -33.33], "stock: a correction by quantity"),
    (80, [120, 200, 0], "in proportion", 2, [30, 50, 0], "stock: by value"),
    (0.05, [70, 30], "in proportion", 2, [0.04, 0.01], "money: 5 cents, 70 to 30"),
    (8, [1, 1, 1], "in proportion", 2, [2.67, 2.67, 2.66], "money: 8.00 in three"),
    (34, [1, 1, 1, 1], "evenly", 0, [9, 9, 8, 8], "money: 34 yen in four"),
]


@pytest.mark.parametrize("charge, amounts, sharing, digits, parts, where", SPLITS)
def test_a_split_follows_published_allocations(face, charge, amounts, sharing, digits, parts, where):
    assert face.split_charge(charge, amounts, sharing, digits) == parts


def test_four_cents_over_seven_lines_leave_no_line_below_nothing(face):
    # A test of the same kind of module: 0.04 over 7 equal lines.
    parts = face.split_charge(0.04, [1] * 7)
    assert parts == [0.01, 0.01, 0.01, 0.01, 0, 0, 0]


@pytest.mark.parametrize("amounts", [[0, 0], [0]])
def test_lines_that_come_to_nothing_are_refused(face, amounts):
    # The same test suite: a total basis of zero must be refused, not divided.
    with face.refuses("split_charge: amounts add up to 0; at least one line must have a share"):
        face.split_charge(80, amounts)


# IAS 2, paragraphs 10 and 11, from memory: purchase price, duty, tax that is not recovered and transport are in the
# cost of what was bought; trade discounts and rebates are not. Worked here.
LANDED = [  # price, returned, shipping, tax, cost
    (1000, 0, 0, 0, 1000),
    (1000, 50, 0, 0, 950),
    (1000, 50, 80, 0, 1030),
    (1000, 50, 80, 66.5, 1096.5),
    (80, 80, 12.4, 0, 12.4),
]


@pytest.mark.parametrize("price, returned, shipping, tax, cost", LANDED)
def test_what_was_bought_costs_its_price_less_what_came_back_with_freight_and_tax(
    face, price, returned, shipping, tax, cost
):
    assert face.landed_cost(price, returned, shipping, tax) == pytest.approx(cost, abs=1e-9)


def test_no_more_comes_back_than_was_paid(face):
    with face.refuses("landed_cost: no more can be taken off than the price (returned 81, price 80)"):
        face.landed_cost(80, 81)


# Common practice, no source.


def test_waste_is_a_share_of_what_is_weighed_out(face):
    assert face.before_waste(amount=190, waste=0.05) == pytest.approx(200, abs=1e-9)


def test_yield_is_the_good_of_the_made(face):
    assert face.yield_of(good=45, made=50) == 0.9


def test_set_up_is_shared_by_the_batch(face):
    assert face.minutes_each(each=5, setup=45, batch=30) == 6.5


def test_full_cost_adds_what_making_cost_leaves_out(face):
    assert face.full_cost(making=face.cost_each(931, 7), own_time=12, running=5) == 150


MADE = [  # good, yield, made, where
    (1908, 0.954, 2000, "printed: 2,000 started, 1,908 good, 95.4 % (a page on quality control)"),
    (750, 0.75, 1000, "printed: 1000 yards of wire for 750 of cable (documentation of a planning system)"),
    (1000, 0.98, 1021, "the same system prints 1020 for 1000/0.98 = 1020.4, rounded to the nearest; up here"),
    (48, 1, 48, "worked: all come out good"),
    (0, 0.5, 0, "worked: none wanted"),
]


@pytest.mark.parametrize("good, share, made, where", MADE)
def test_enough_are_made_for_the_good_ones_wanted(face, good, share, made, where):
    # Units to start are good units over the yield: worked examples, second-hand, as each row says.
    assert face.make_for_good(good, share) == made


def test_a_yield_of_nothing_is_refused(face):
    # Algebra: no number of candles is enough.
    with face.refuses("share is 0; it takes more than 0, at most 1 of what is made"):
        face.make_for_good(48, 0)


def test_testing_is_spread_over_the_candles_of_the_recipe(face):
    # Common practice, no source; worked here.
    assert face.testing_cost_each(tests=9, cost=5, count=150) == pytest.approx(0.3)
    assert face.testing_cost_each(tests=0, cost=5, count=150) == 0
