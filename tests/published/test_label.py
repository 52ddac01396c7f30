"""Labels against the directive, the handbook and the rules of the US code."""

import pytest

# 16 CFR 500.19(a), printed factors: 1 oz is 28.3495 g, 1 lb 453.592 g. The statements are worked here.
STATEMENTS = [  # net g, decimals, statement
    (226.796, 1, "Net Wt 8 oz (226 g)"),
    (200, 2, "Net Wt 7.05 oz (200 g)"),
    (454, 1, "Net Wt 1 lb (454 g)"),
    (566.99, 1, "Net Wt 1 lb 4 oz (566 g)"),
    (85.4, 1, "Net Wt 3 oz (85 g)"),
]


@pytest.mark.parametrize("net, decimals, statement", STATEMENTS)
def test_a_us_statement_is_rounded_down_in_both_units(face, net, decimals, statement):
    said = face.net_weight_us(net, decimals)
    assert said.statement == statement
    assert said.note.startswith("unconfirmed: check against 16 CFR 500.9")


# 16 CFR 500.19(b): three digits, two below 100; rounded down by the NIST fact sheet on the UPLR (worked here).
@pytest.mark.parametrize("net, statement", [(226.8, "226 g"), (99.9, "99 g"), (1234.5, "1.23 kg")])
def test_a_metric_statement_never_says_more_than_there_is(face, net, statement):
    assert face.net_weight_metric(net) == statement


def test_the_larger_declaration_binds(face):
    # NIST Handbook 133 (2026), 2.3.3: 1 lb is 453.592 g, so that 454 g is tested (printed).
    assert face.binding_weight(16, 454) == 454
    assert face.binding_weight(16, 453) == pytest.approx(453.592, abs=1e-9)


# Council Directive 76/211/EEC, Annex I, 2.4; a percentage rounds up to 0.1 g: GOV.UK, Packaged goods.
ERRORS = [  # nominal g, error g, where
    (50, 4.5, "printed 9 %"),
    (75, 4.5, "printed"),
    (113, 5.1, "printed 4.5 %; 5.085 worked here, then up"),
    (180, 8.1, "printed 4.5 %, worked here"),
    (227, 9, "printed"),
    (454, 13.7, "printed 3 %; 13.62 worked here, then up"),
    (750, 15, "printed"),
    (1200, 18, "printed 1.5 %, worked here"),
]


@pytest.mark.parametrize("nominal, error, where", ERRORS)
def test_tolerable_negative_error_follows_the_directive(face, nominal, error, where):
    assert face.tolerable_negative_error(nominal) == pytest.approx(error, abs=1e-9)
    assert face.short_under(nominal) == pytest.approx(nominal - error, abs=1e-9)
    assert face.never_under(nominal) == pytest.approx(nominal - 2 * error, abs=1e-9)


def test_a_weight_outside_the_rules_is_refused(face):
    # GOV.UK, Packaged goods: the rules run from 5 g to 25 kg.
    with face.refuses("it takes 5 to 25000 g"):
        face.tolerable_negative_error(4)


def test_the_panel_of_a_round_jar_is_two_fifths_of_its_side(face):
    # 16 CFR 500.21(a): 40 % of height by circumference. A jar 3.5 in high and 10 in round has 14.0 in2 (worked here).
    assert face.panel_area("3.5 in", "10 in") == pytest.approx(14.0 * 6.4516, abs=1e-6)
    assert face.panel_area(100, 60, "flat") == pytest.approx(60, abs=1e-9)


# 16 CFR 500.21(b): the first two steps by a page on the parallel FDA rule (second-hand); others are from memory.
@pytest.mark.parametrize("inches, height", [(5, 25.4 / 16), (14, 25.4 / 8)])
def test_figures_on_a_us_panel_are_as_high_as_its_area_asks(face, inches, height):
    found = face.figure_height_us(inches * 6.4516)
    assert found.height == pytest.approx(height, abs=1e-9)
    assert found.note == "unconfirmed: check against 16 CFR 500.21(b)"


# Directive 76/211/EEC by USDA Foreign Agricultural Service, Weight and volume indication (second-hand).
@pytest.mark.parametrize("net, height", [(40, 2), (180, 3), (300, 4), (1500, 6)])
def test_figures_of_a_metric_weight_are_as_high_as_the_weight_asks(face, net, height):
    assert face.figure_height_metric(net).height == height


# ASTM F2058 by a page reporting its pictograms; EN 15494:2019 by a UK page reproducing its list (second-hand).
@pytest.mark.parametrize("region, due", [("US", 3), ("EU", 4), ("GB", 4)])
def test_the_fire_statements_due_come_first_and_say_what_to_check(face, region, due):
    found = face.fire_statements(region)
    assert [one.due for one in found[:due]] == ["due"] * due
    assert "due" not in [one.due for one in found[due:]]
    assert all(one.note.startswith("unconfirmed: check against ") for one in found)
