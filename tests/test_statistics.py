"""Quantiles against printed tables and a reference library."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from candlecalc.quantities.statistics import normal_quantile, t_quantile

# Student's t, 0.975: NIST/SEMATECH e-Handbook, table of critical values, as read in a public test suite. The
# last is OpenStax, Introductory Business Statistics 2e, m55462 (printed 3.2498, 0.995).
PRINTED = [  # below, degrees of freedom, printed, its last digit
    (0.975, 1, 12.706, 1e-3),
    (0.975, 2, 4.303, 1e-3),
    (0.975, 17, 2.110, 1e-3),
    (0.975, 100, 1.984, 1e-3),
    (0.995, 9, 3.2498, 1e-4),
]


@pytest.mark.parametrize("below, freedom, printed, digit", PRINTED)
def test_t_follows_the_printed_table(below, freedom, printed, digit):
    assert t_quantile(below, freedom) == pytest.approx(printed, abs=digit / 2)


@given(st.floats(0.51, 0.999999), st.floats(0.5, 1e6))
def test_t_follows_the_reference_library(below, freedom):
    assert t_quantile(below, freedom) == pytest.approx(stats.t.ppf(below, freedom), rel=1e-9)


@given(st.floats(0.51, 0.999999), st.floats(0.5, 1e6))
def test_the_two_halves_of_t_mirror_each_other(below, freedom):
    assert t_quantile(1 - below, freedom) == pytest.approx(-t_quantile(below, freedom), rel=1e-9)


@given(st.floats(1e-9, 1 - 1e-9))
def test_the_normal_follows_the_reference_library(below):
    assert normal_quantile(below) == pytest.approx(stats.norm.ppf(below), rel=1e-9, abs=1e-12)


def test_t_with_many_degrees_of_freedom_is_the_normal():
    assert t_quantile(0.9, 1e6) == pytest.approx(normal_quantile(0.9), rel=2e-6)


@pytest.mark.parametrize("below, freedom", [(0, 5), (1, 5), (0.9, 0), (0.9, float("inf")), (float("nan"), 5)])
def test_where_there_is_no_quantile_it_says_so(below, freedom):
    with pytest.raises(ValueError, match="^t_quantile: below lies between 0 and 1"):
        t_quantile(below, freedom)
