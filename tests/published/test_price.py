"""Prices against textbook examples, tax authorities' rules and tables of markup."""

import pytest

CENT = 0.005 + 1e-9  # half of the last digit printed

# OpenStax, Contemporary Mathematics 6.2; the last: Monash Business School, Marketing Dictionary, "keystone".
MARKUPS = [  # cost, markup, price printed
    (62.00, 0.15, 71.30),
    (750, 0.45, 1087.50),
    (1.30, 0.60, 2.08),
    (10, 1.00, 20),
]


@pytest.mark.parametrize("cost, markup, price", MARKUPS)
def test_a_markup_is_on_the_cost(face, cost, markup, price):
    assert face.price_from_markup(cost, markup) == pytest.approx(price, abs=1e-9)


# "Markup & Gross Profit Percentage", a page of brrinc.org: printed in whole percent.
MARGINS = [(25, 20), (33, 25), (50, 33), (75, 43), (100, 50), (150, 60), (200, 67), (300, 75)]


@pytest.mark.parametrize("markup, margin", MARGINS)
def test_a_markup_comes_to_the_margin_printed(face, markup, margin):
    assert face.margin_from_markup(markup / 100) == pytest.approx(margin / 100, abs=0.005)


# The exact pairs of the same table, the other way.
@pytest.mark.parametrize("margin, markup", [(0.20, 0.25), (0.50, 1.00), (0.60, 1.50), (0.75, 3.00)])
def test_a_margin_comes_to_the_markup_printed(face, margin, markup):
    assert face.markup_from_margin(margin) == pytest.approx(markup, rel=1e-12)


DISCOUNTS = [  # list price, discounts, price printed, where
    (75.80, [0.25], 56.85, "OpenStax, Contemporary Mathematics 6.2"),
    (168.90, [0.30], 118.23, "OpenStax, Contemporary Mathematics 6.2"),
    (20_192, [0.40, 0.15, 0.05], 9_783.02, "a worked answer (algebra.com 168781); factor 0.4845 printed"),
    (100, [0.20, 0.10, 0.10], 64.80, "a worked answer; single rate 35.2 % printed"),
]


@pytest.mark.parametrize("price, discounts, left, where", DISCOUNTS)
def test_discounts_in_a_row_follow_the_textbook(face, price, discounts, left, where):
    assert face.after_discounts(price, *discounts) == pytest.approx(left, abs=CENT)


def test_a_trade_discount_follows_the_textbook(face):
    # OpenStax, Financial Accounting 6.1: 4,000 less 15 %, printed 3,400.
    assert face.wholesale_price(4000, 0.15) == pytest.approx(3400, abs=1e-9)
    # Half of retail to a shop: common practice, no source.
    assert face.wholesale_price(24, 0.5) == 12


# OpenStax, Contemporary Mathematics 6.2, "find the list price": printed.
@pytest.mark.parametrize("paid, discount, stated", [(450, 0.10, 500), (90, 0.75, 360), (189, 0.10, 210)])
def test_a_price_to_state_is_the_list_price(face, paid, discount, stated):
    assert face.price_to_state(paid, discount, 0, "before tax") == pytest.approx(stated, abs=1e-9)
    assert face.price_received(stated, discount, 0, "before tax") == pytest.approx(paid, abs=1e-9)


TAXED = [  # before tax, rate, with tax printed, where
    (499, 0.0881, 542.96, "OpenStax, Contemporary Mathematics 6.2"),
    (50, 0.08, 54, "OpenStax, Financial Accounting 12.1"),
    (100, 0.20, 120, "HMRC, calculating VAT for VAT-exclusive prices"),
    (100, 0.05, 105, "HMRC, calculating VAT for VAT-exclusive prices"),
]


@pytest.mark.parametrize("price, tax, with_tax, where", TAXED)
def test_tax_is_added_as_printed(face, price, tax, with_tax, where):
    assert face.add_tax(price, tax) == pytest.approx(with_tax, abs=CENT)
    assert face.price_to_state(price, 0, tax, "with tax") == pytest.approx(with_tax, abs=CENT)


# OpenStax, Contemporary Mathematics 6.2.
@pytest.mark.parametrize(
    "with_tax, tax, price", [(467.64, 0.0825, 432.00), (36.56, 0.0575, 34.57), (97.17, 0.0425, 93.21)]
)
def test_tax_is_taken_out_as_printed(face, with_tax, tax, price):
    assert face.take_out_tax(with_tax, tax) == pytest.approx(price, abs=CENT)
    assert face.tax_in_price(with_tax, tax) == pytest.approx(with_tax - price, abs=CENT)
    assert face.price_received(with_tax, 0, tax, "with tax") == pytest.approx(price, abs=CENT)


# VAT fractions, as a public tax guide (Ross Martin) prints them.
FRACTIONS = [(0.20, 1 / 6), (0.175, 7 / 47), (0.15, 3 / 23), (0.125, 1 / 9), (0.05, 1 / 21)]


@pytest.mark.parametrize("tax, fraction", FRACTIONS)
def test_the_tax_in_a_price_is_the_vat_fraction(face, tax, fraction):
    assert face.tax_in_price(1, tax) == pytest.approx(fraction, rel=1e-12)


# OpenStax, Contemporary Mathematics 6.2: 8.25 % of a price, printed unrounded and rounded.
@pytest.mark.parametrize("price, exact, cents", [(428.99, 35.391675, 35.39), (34.88, 2.8776, 2.88)])
def test_sales_tax_is_rounded_as_printed(face, price, exact, cents):
    assert face.tax_on(price, 0.0825) == pytest.approx(exact, abs=1e-9)
    assert face.round_money(exact) == cents


def test_the_order_of_rounding_moves_a_cent_of_vat(face):
    # 9 at 9.99 with 20 % in it, halves up (HMRC VATREC12030): by the net, 74.93 and so 14.98; by the VAT, 14.99.
    net = face.round_money(face.take_out_tax(89.91, 0.2))
    assert (net, face.round_money(89.91 - net), face.round_money(face.tax_in_price(89.91, 0.2))) == (
        74.93,
        14.98,
        14.99,
    )


# Algebra, no outside source: price, less its fee, less cost and fixed sums, is the margin of the price.
ASKED = [  # cost, margin, fee, fixed, tax, basis, price
    (6, 0.60, 0, 0, 0, "net", 15),
    (6, 0.50, 0.10, 0.45, 0, "net", 16.125),
    (6, 0.50, 0.10, 0.45, 0.20, "gross", 6.45 / 0.38),
]


@pytest.mark.parametrize("cost, margin, fee, fixed, tax, basis, price", ASKED)
def test_a_price_leaves_the_margin_after_fees(face, cost, margin, fee, fixed, tax, basis, price):
    assert face.price_for_margin(cost, margin, fee, fixed, tax, basis) == pytest.approx(price, rel=1e-12)
    charged = price * (1 + tax) if basis == "gross" else price
    assert price - charged * fee - cost - fixed == pytest.approx(margin * price, rel=1e-12)
    assert face.fee_at(price, fee, tax, basis) == pytest.approx(charged * fee, rel=1e-12)


def test_the_lowest_price_pays_for_materials_and_fee(face):
    # Algebra, no outside source: 12.50 less 20 % leaves 10.
    assert face.lowest_price(materials=9.5, fee=0.2, fixed=0.5) == pytest.approx(12.5, rel=1e-12)
    assert face.lowest_price(materials=9.5, fee=0.2, fixed=0.5, least=4) == pytest.approx(14, rel=1e-12)


# OpenStax, Managerial Accounting, 4.5 and chapter 3; printed.
CONTRIBUTIONS = [  # price, cost, left, share of the price, where
    (2000, 931, 1069, None, "4.5: gross profit of a job"),
    (100, 20, 80, 0.80, "3.1"),
    (400, 150, 250, 0.625, "3.2"),
    (1250, 850, 400, 0.32, "3.2"),
]


@pytest.mark.parametrize("price, cost, left, share, where", CONTRIBUTIONS)
def test_what_is_left_of_a_price_follows_the_textbook(face, price, cost, left, share, where):
    assert face.profit_at(price, cost) == left
    if share:
        assert face.margin_at(left, price) == share


# OpenStax, Managerial Accounting 3.2: printed units and sales.
BREAK_EVEN = [  # fixed, price, cost, wanted profit, units, sales
    (18_000, 100, 20, 0, 225, 22_500),
    (18_000, 100, 20, 16_000, 425, 42_500),
    (18_000, 100, 20, 40_000, 725, 72_500),
    (14_000, 400, 150, 0, 56, 22_400),
    (14_000, 400, 150, 10_000, 96, 38_400),
    (16_800, 1250, 850, 0, 42, 52_500),
]

# OpenStax, Managerial Accounting 3.3: one shop, six sets of price and cost; printed.
CHANGES = [
    (2_475, 3.75, 1.50, 0, 1_100, 4_125),
    (2_475, 4.25, 1.50, 0, 900, 3_825),
    (2_475, 3.75, 1.55, 0, 1_125, 4_218.75),
    (2_700, 3.75, 1.50, 0, 1_200, 4_500),
    (2_875, 3.75, 1.45, 0, 1_250, 4_687.50),
    (2_875, 3.95, 1.45, 0, 1_150, 4_542.50),
]


@pytest.mark.parametrize("fixed, price, cost, profit, units, sales", BREAK_EVEN + CHANGES)
def test_break_even_follows_the_textbook(face, fixed, price, cost, profit, units, sales):
    assert face.break_even_units(fixed, price, cost, profit) == units
    assert face.break_even_sales(fixed, price, cost, profit) == pytest.approx(sales, abs=1e-6)


# OpenStax, Managerial Accounting 3.4: lots of several products; printed.
MIXES = [  # fixed, mix, prices, costs, lots, half the last digit
    (220_000, [3, 1], [10, 9], [4, 5], 10_000, 1e-6),
    (145_000, [5, 3, 2], [6.25, 7.75, 9.25], [3.25, 4.50, 6.25], 4_715.45, 0.005),
]


@pytest.mark.parametrize("fixed, mix, prices, costs, lots, half", MIXES)
def test_break_even_of_a_mix_follows_the_textbook(face, fixed, mix, prices, costs, lots, half):
    assert face.break_even_mix(fixed, mix, prices, costs) == pytest.approx(lots, abs=half)


# Common practice, no source: the next price up with the ending a maker uses.
ENDINGS = [  # price, step, ending, asked
    (17.20, 1, 0.95, 17.95),
    (17.95, 1, 0.95, 17.95),
    (17.96, 1, 0.95, 18.95),
    (17.20, 0.5, 0, 17.50),
    (17.50, 0.5, 0, 17.50),
    (0.30, 0.1, 0, 0.30),
    (0, 1, 0.95, 0.95),
    (21, 5, 4, 24),
]


@pytest.mark.parametrize("price, step, ending, asked", ENDINGS)
def test_a_price_goes_up_to_the_next_ending(face, price, step, ending, asked):
    assert face.round_up_price(price, step, ending) == asked
