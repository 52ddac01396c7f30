"""Laws of labels and weighings."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from candlecalc.calc import (
    batch_test,
    grams_to_declare,
    least_figures_metric,
    least_figures_us,
    net_weight_metric,
    net_weight_us,
    never_under,
    ounces_to_declare,
    short_under,
    tolerable_negative_error,
)

nets = st.floats(5, 5000)


@given(nets, st.integers(0, 2))
def test_no_statement_says_more_than_there_is(net, decimals):
    said = net_weight_us(net, decimals).statement
    pounds, ounces = (sum(map(float, re.findall(rf"([\d.]+) {unit}\b", said))) for unit in ("lb", "oz"))
    assert (16 * pounds + ounces) * 28.3495 <= net + 0.02
    figure, unit = net_weight_metric(net).split()
    assert float(figure) * {"g": 1, "kg": 1000}[unit] == pytest.approx(grams_to_declare(net), abs=1e-6)
    assert grams_to_declare(net) <= net + 1e-3
    assert ounces_to_declare(net) * 28.3495 <= net + 0.02


@given(st.floats(15, 5000), st.floats(15, 5000))
def test_a_larger_panel_or_weight_has_no_smaller_figures(one, other):
    smaller, larger = sorted([one, other])
    for least in (least_figures_us, least_figures_metric):
        assert least(smaller) <= least(larger)


@given(nets, nets)
def test_a_heavier_candle_has_no_smaller_tolerable_error(one, other):
    lighter, heavier = sorted([one, other])
    assert tolerable_negative_error(lighter) <= tolerable_negative_error(heavier)
    assert never_under(heavier) < short_under(heavier) < heavier


@given(nets, st.lists(st.floats(-20, 20), min_size=2, max_size=40), st.floats(0, 5))
def test_heavier_packages_never_make_a_batch_worse(net, errors, more):
    lower = [max(net + error, 0) for error in errors]
    before, after = (batch_test(net, weighings, len(errors)) for weighings in (lower, [one + more for one in lower]))
    assert after.short <= before.short and after.far_short <= before.far_short
    assert after.mean >= before.mean
