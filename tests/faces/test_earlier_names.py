"""What an earlier name gave in a saved sheet it gives today, on every face: by name, argument order, units, result."""

import pytest

from candlecalc.declaration.declared import REGISTRY

# The answers of version 0.1.0, as its own documentation had them.
EARLIER = [
    ("buffer_stock", (40, 2, 0.05, 6), 13.96, 0.005),
    ("order_quantity", (900, 12, 0.6), 189.74, 0.005),
    ("net_realisable", (12, 1.5, 2), 8.5, 1e-12),
    ("celsius", (185,), 85, 1e-12),
    ("fahrenheit", (85,), 185, 1e-12),
    ("celsius_difference", (18,), 10, 1e-12),
    ("fahrenheit_difference", (10,), 18, 1e-12),
    ("season_stock_poisson", (24, 9, 5, 12), 15, 0),
    ("season_profit_poisson", (15, 24, 9, 5, 12), 160.36, 0.005),
]


@pytest.mark.parametrize("name, given, answer, tolerance", EARLIER)
def test_a_saved_sheet_gets_the_number_that_it_had(face, name, given, answer, tolerance):
    assert getattr(face, name)(*given) == pytest.approx(answer, abs=tolerance)


def test_a_saved_sheet_gets_the_row_that_it_had(face):
    told = face.variation_us(113)
    assert (told.variation, told.coarsest_step) == (7.2, 1.2)


def test_no_earlier_name_is_left_out_here():
    assert {name for name, formula in REGISTRY.items() if formula.instead} == {
        *(name for name, *_ in EARLIER),
        "variation_us",
    }
