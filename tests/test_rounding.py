"""Rounding: half away from zero on the fifteen digits that spreadsheets keep."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from openpyxl import Workbook

from candlecalc.calc import round_money
from candlecalc.quantities.rounding import round_half_away, round_to

# What ROUND gives in LibreOffice 7.4, measured by `test_libreoffice_rounds_the_same` below; each is a
# half that a float stores a hair below or above.
HALF_CENTS = [  # amount, digits, rounded
    (2.675, 2, 2.68),
    (1.005, 2, 1.01),
    (0.285, 2, 0.29),
    (1.115, 2, 1.12),
    (0.145, 2, 0.15),
    (35.855, 2, 35.86),
    (1234567.895, 2, 1234567.9),
    (-2.5, 0, -3),
    (2.5, 0, 3),
    (-1.005, 2, -1.01),
    (0.5, 0, 1),
    (1250, -2, 1300),
]


@pytest.mark.parametrize("amount, digits, rounded", HALF_CENTS)
def test_a_half_goes_away_from_zero(amount, digits, rounded):
    assert round_half_away(amount, digits) == rounded


# HMRC, VAT Traders' Records Manual, VATREC12030: below half a penny down, half a penny or more up.
# Streamlined Sales and Use Tax Agreement, section 324: to the third decimal, up where it is above 4.
# The rules are printed there; the amounts are chosen here.
TAX_RULES = [  # amount, rounded, where
    (1.004, 1.00, "under 0.5p goes down"),
    (1.005, 1.01, "0.5p goes up"),
    (1.006, 1.01, "more than 0.5p goes up"),
    (2.874, 2.87, "third decimal 4"),
    (2.875, 2.88, "third decimal 5"),
]


@pytest.mark.parametrize("amount, rounded, where", TAX_RULES)
def test_money_rounds_as_tax_authorities_say(amount, rounded, where):
    assert round_money(amount) == rounded


def test_libreoffice_rounds_the_same(office, tmp_path):
    book = Workbook()
    for row, (amount, digits, _) in enumerate(HALF_CENTS, start=1):
        book.active.append([amount, digits, f"=ROUND(A{row},B{row})"])
    book.save(tmp_path / "halves.xlsx")
    values = office.recalculated(tmp_path / "halves.xlsx")
    found = [value for (_, cell), value in values.items() if cell.startswith("C")]
    assert found == [rounded for _, _, rounded in HALF_CENTS]


cents = st.integers(-(10**9), 10**9)


@given(cents)
def test_whole_cents_stay_as_they_are(amount):
    assert round_half_away(amount / 100, 2) == amount / 100


@given(cents)
def test_rounding_has_no_favourite_sign(amount):
    assert round_half_away(-amount / 1000, 2) == -round_half_away(amount / 1000, 2)


@given(st.integers(0, 10**9))
def test_every_half_cent_goes_up(amount):
    assert round_half_away((10 * amount + 5) / 1000, 2) == (amount + 1) / 100


@given(st.floats(-1e9, 1e9))
def test_rounding_moves_an_amount_by_half_a_cent_at_most(amount):
    assert abs(round_half_away(amount, 2) - amount) <= 0.005 + 1e-6


SIDES = [  # amount, digits, down, up: by hand
    (5.263157894736842, 2, 5.26, 5.27),
    (5.26, 2, 5.26, 5.26),
    (25.0, 2, 25.0, 25.0),
    (100 * (0.1 + 0.2), 2, 30.0, 30.0),  # 30.000000000000004 as stored
    (100 * 0.29, 0, 29, 29),  # 28.999999999999996 as stored
    (-0.001, 2, -0.01, 0.0),
    (0.0, 2, 0.0, 0.0),
]


@pytest.mark.parametrize("amount, digits, down, up", SIDES)
def test_a_limit_is_rounded_to_its_own_side(amount, digits, down, up):
    assert (round_to(amount, digits, "down"), round_to(amount, digits, "up")) == (down, up)


@given(st.floats(0, 1e6), st.integers(0, 4))
def test_down_is_never_more_and_up_never_less_by_a_step_at_most(amount, digits):
    down, up = round_to(amount, digits, "down"), round_to(amount, digits, "up")
    least = 1e-11 * amount  # what twelve digits leave open
    assert down <= amount + least and up >= amount - least
    assert up - down <= 10.0**-digits + least
    assert round_to(amount, digits, "nearest") in (down, up)
