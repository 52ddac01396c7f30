"""Money against textbook entries, schedules and terms of payment, and the rules of tax offices."""

import pytest

# ISO 4217 minor units, as listed by the Mozilla project's CurrencyDataGenerated (2026-01-01).
DIGITS = [("USD", 2), ("eur", 2), ("JPY", 0), ("ISK", 0), ("KWD", 3), ("CLF", 4)]


@pytest.mark.parametrize("currency, digits", DIGITS)
def test_a_currency_has_the_decimals_of_its_smallest_unit(face, currency, digits):
    assert face.coin_digits(currency) == digits


def test_a_currency_that_is_not_listed_is_not_guessed(face):
    # The same list: no such letters (worked here).
    with face.refuses('"ZZZ" is not in the table'):
        face.coin_digits("ZZZ")


# moneyphp, documentation of allocation: 8.00 in three; NMoneys, a published gist: 34 yen in four.
SPLITS = [("USD", 8.00, 3, [2.67, 2.67, 2.66]), ("JPY", 34, 4, [9, 9, 8, 8])]


@pytest.mark.parametrize("currency, sum_, count, parts", SPLITS)
def test_a_split_is_in_the_currencys_own_coins(face, currency, sum_, count, parts):
    assert face.split_charge(sum_, [1] * count, "evenly", face.coin_digits(currency)) == parts


# OpenStax, Contemporary Mathematics 6.2: sales tax, printed to the cent.
SALES_TAX = [  # price, tax, printed
    (428.99, 0.0825, 35.39),
    (34.88, 0.0825, 2.88),
    (499, 0.0881, 43.96),
]


@pytest.mark.parametrize("price, tax, printed", SALES_TAX)
def test_sales_tax_is_rounded_at_the_third_decimal(face, price, tax, printed):
    assert face.tax_by_order([price], tax) == printed
    assert face.tax_by_line([price], tax) == [printed]


def test_tax_is_taken_out_of_a_price_that_holds_it(face):
    # OpenStax, Contemporary Mathematics 6.2: 467.64 at 8.25 % is 432.00 and 35.64 (printed).
    assert face.tax_by_order([467.64], 0.0825, "with tax") == 35.64


def test_tax_by_line_and_by_order_can_differ(face):
    # Caterbook, a note on VAT: 9 at 9.99 with 20 % in it; by the VAT on the total 14.985, so 14.99 (printed).
    assert face.tax_by_order([9.99] * 9, 0.2, "with tax") == 14.99
    assert sum(face.tax_by_line([9.99] * 9, 0.2, "with tax")) == pytest.approx(9 * 1.67, abs=1e-9)  # worked here


def test_half_a_penny_goes_up_and_an_invoices_total_may_go_down(face):
    # HMRC VATREC12030: under 0.5p down, 0.5p or more up; VATREC12010: the VAT of an invoice may be rounded down.
    assert face.tax_by_order([0.12], 0.125) == 0.02
    assert face.tax_by_order([89.91], 0.2, "with tax", 2, "down") == 14.98


def test_tax_above_the_whole_price_is_refused(face):
    # Common practice, no source: 8.25 is a slip for 8.25 %.
    with face.refuses("Did you mean 8.25%?"):
        face.tax_by_order([10], 8.25)


# OpenStax, Managerial Accounting 2.1 (Koeller Manufacturing) and 4.5 (Dinosaur Vinyl), printed.
MADE = [  # opening, materials, labour, overhead, closing, cost of goods made
    (75_000, 15_000, 25_000, 23_000, 43_000, 95_000),
    (1_000, 1_400, 366, 915, 1_025, 2_656),
]
SOLD = [(65_000, 95_000, 58_000, 102_000), (1_531, 2_656, 1_725, 2_462)]


@pytest.mark.parametrize("opening, materials, labour, overhead, closing, made", MADE)
def test_cost_of_goods_made_follows_the_textbook(face, opening, materials, labour, overhead, closing, made):
    assert face.cost_of_goods_made(materials, labour, overhead, opening, closing) == made


@pytest.mark.parametrize("opening, made, closing, sold", SOLD)
def test_cost_of_goods_sold_follows_the_textbook(face, opening, made, closing, sold):
    assert face.cost_of_goods_sold(opening, made, closing) == sold


def test_materials_used_follow_the_textbook(face):
    # OpenStax, Managerial Accounting 4.5: 2,500 and 10,500 less 11,600 (printed); 4.3: 400 and 1,000 less 500.
    assert face.materials_used(2_500, 10_500, 11_600) == 1_400
    assert face.materials_used(400, 1_000, 500) == 900
    with face.refuses("closing stock cannot be more than there was"):
        face.materials_used(400, 1_000, 1_500)


# OpenStax, Managerial Accounting 4.6, printed: underapplied, overapplied, and Kraken Boardsports.
OVERHEAD = [(256_500, 250_000, 6_500), (248_000, 250_000, -2_000), (209_250, 6_240 * 33.5, 210)]


@pytest.mark.parametrize("actual, charged, gap", OVERHEAD)
def test_overhead_that_was_not_charged_follows_the_textbook(face, actual, charged, gap):
    assert face.overhead_uncharged(actual, charged) == pytest.approx(gap, abs=1e-9)


def test_the_schedule_follows_published_questions(face):
    # A published tax-course question (Bartleby): 67,000, 610,000 less 1,780, and 77,200 left; the lines worked here.
    lines = face.cost_of_goods_schedule(67_000, 610_000, 77_200, 0, 0, 0, 1_780)
    assert (lines.line_36, lines.line_40, lines.line_42) == (608_220, 675_220, 598_020)


def test_the_schedule_of_a_small_seller_follows_a_published_answer(face):
    # A tax-software community answer: 40 and 1,100 less 300 left are 840 (printed).
    assert face.cost_of_goods_schedule(40, 1_100, 300).line_42 == 840
    with face.refuses("no more can be taken for own use than was bought"):
        face.cost_of_goods_schedule(40, 1_100, 300, 0, 0, 0, 1_200)


# OpenStax, Financial Accounting 6.3, 6.4 and 12.2, printed: invoice, returned, discount, taken off, paid.
EARLY = [
    (12_000, 0, 0.02, 240, 11_760),
    (12_000, 1_000, 0.02, 220, 10_780),
    (500, 150, 0.02, 7, 343),
    (4_020, 0, 0.05, 201, 3_819),
    (8_000, 1_620, 0.05, 319, 6_061),
    (19_250, 3_800, 0.10, 1_545, 13_905),
]


@pytest.mark.parametrize("invoice, returned, discount, off, paid", EARLY)
def test_paying_early_follows_the_textbook(face, invoice, returned, discount, off, paid):
    assert face.early_discount(invoice, discount, returned) == off
    assert face.early_payment(invoice, discount, returned) == paid


def test_paying_late_costs_what_the_textbook_says(face):
    # OpenStax, Principles of Finance 19.2: 2/10, net 30 is 36.73 % (printed).
    assert face.cost_of_paying_late(0.02, 10, 30) == pytest.approx(0.3673, abs=0.00005)
    with face.refuses("the discount must end before the whole is due"):
        face.cost_of_paying_late(0.02, 30, 30)


# OpenStax, Financial Accounting 3.6 and 4.4: Printing Plus, January 2019; both sides 34,000 and 35,715 (printed).
UNADJUSTED = {
    "cash": 24_800, "accounts receivable": 1_200, "supplies": 500, "equipment": 3_500, "accounts payable": -500,
    "unearned revenue": -4_000, "common stock": -20_000, "dividends": 100, "service revenue": -9_500,
    "salaries expense": 3_600, "utility expense": 300,
}  # fmt: skip
ADJUSTMENTS = [  # account that is debited, account that is credited, amount
    ("interest receivable", "interest revenue", 140),
    ("supplies expense", "supplies", 100),
    ("depreciation expense", "accumulated depreciation", 75),
    ("salaries expense", "salaries payable", 1_500),
    ("unearned revenue", "service revenue", 600),
]
JOURNALS = [(UNADJUSTED, [], 34_000), (UNADJUSTED, ADJUSTMENTS, 35_715)]


@pytest.mark.parametrize("balances, adjustments, total", JOURNALS)
def test_a_trial_balance_follows_the_textbook(face, balances, adjustments, total):
    lines = [(name, amount) for name, amount in balances.items()]
    lines += [line for debit, credit, amount in adjustments for line in ((debit, amount), (credit, -amount))]
    found = face.trial_balance(*columns(lines))
    assert (found[-1].account, found[-1].debit, found[-1].credit) == ("total", total, total)
    assert found[0] == ("cash", 24_800, None)


def test_a_journal_with_swapped_digits_is_refused_and_found(face):
    # OpenStax, Financial Accounting 3.6: 5,300 for 3,500 puts the sides 1,800 apart, which divides by 9 (printed).
    lines = [(name, 5_300 if name == "equipment" else amount) for name, amount in UNADJUSTED.items()]
    with face.refuses("debits are 35800 and credits 34000; they differ by 1800"):
        face.trial_balance(*columns(lines))
    found = face.entries_out_of_balance(["January"] * len(lines), *columns(lines)[1:])
    assert found == [("January", 35_800, 34_000, 1_800)]


# OpenStax, Managerial Accounting 4.7 and Financial Accounting 9.1 and 12.2: the sides of each entry, printed.
def test_a_periods_entries_follow_the_textbook_one_by_one(face):
    lines = face.period_entries(10_500, 700, 66, 165, 931, 931, 2_000)
    printed = [("materials", 10_500), ("work in hand", 700), ("finished candles", 931), ("cost of goods sold", 931)]
    for account, amount in printed:
        assert (account, amount) in [(line.account, line.debit) for line in lines]
    sale = face.period_entries(0, 0, 0, 0, 0, 0, 18_000, 1_080)
    assert [(line.account, line.debit, line.credit) for line in sale] == [
        ("cash", 19_080, None),
        ("sales", None, 18_000),
        ("tax owed", None, 1_080),
    ]
    by_card = face.period_entries(0, 0, 0, 0, 0, 0, 300, 0, 15)
    assert [(line.account, line.debit) for line in by_card[:2]] == [("cash", 285), ("selling fees", 15)]


def columns(lines):
    """Accounts, debits and credits of lines with a minus for a credit."""
    debits = [amount if amount > 0 else None for _, amount in lines]
    return [name for name, _ in lines], debits, [-amount if amount < 0 else None for _, amount in lines]
