"""Labels against the directive, the handbook and the rules of the US code."""

import math

import pytest

# 16 CFR 500.19(a), printed factors: 1 oz is 28.3495 g, 1 lb 453.592 g. The statements are worked here.
STATEMENTS = [  # net g, decimals, statement
    (226.796, 1, "Net Wt 8 oz (226 g)"),
    (200, 2, "Net Wt 7.05 oz (200 g)"),
    (454, 1, "Net Wt 1 lb (454 g)"),
    (566.99, 1, "Net Wt 1 lb 4 oz (566 g)"),
    (85.4, 1, "Net Wt 3 oz (85 g)"),
    (2.75 * 28.3495, 1, "Net Wt 2.7 oz (77 g)"),  # worked: 77.961 g
]


@pytest.mark.parametrize("net, decimals, statement", STATEMENTS)
def test_a_us_statement_is_rounded_down_in_both_units(face, net, decimals, statement):
    said = face.net_weight_us(net, decimals)
    assert said.statement == statement
    assert said.note.startswith("unconfirmed: check against 16 CFR 500.9")


# Two decimals at most: American Samoa, Admin. Code 27.0632 (an old model text). A figure is rounded down and never says
# more than there is: NIST fact sheet on the uniform regulation (second-hand). Worked here: 77.961 and 78.244 g.
@pytest.mark.parametrize("net, ounces", [(2.75 * 28.3495, "2.75"), ("2.75 oz", "2.75"), (2.759 * 28.36, "2.76")])
def test_ounces_are_stated_to_two_decimals_and_rounded_down(face, net, ounces):
    assert face.net_weight_us(net).statement.startswith(f"Net Wt {ounces} oz (7")
    assert face.ounces_to_declare(net) == pytest.approx(float(ounces), abs=1e-9)


# 16 CFR 500.19(b): three digits, two below 100; rounded down by the NIST fact sheet on the UPLR (worked here).
@pytest.mark.parametrize(
    "net, statement, grams",
    [(226.8, "226 g", 226), (99.9, "99 g", 99), (1234.5, "1.23 kg", 1230), (12_345, "12.3 kg", 12_300)],
)
def test_a_metric_statement_never_says_more_than_there_is(face, net, statement, grams):
    assert face.net_weight_metric(net) == statement
    assert face.grams_to_declare(net) == grams


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


def test_a_lid_that_is_the_panel_counts_whole(face):
    # 16 CFR 500.21(a): an obvious panel such as a top counts whole. A round lid 3 in across is pi/4 x 9 in2 (worked).
    assert face.panel_area("3 in", "3 in", "round lid") == pytest.approx(math.pi / 4 * 9 * 6.4516, abs=1e-6)
    assert face.panel_area("3 in", "3 in", "flat") == pytest.approx(9 * 6.4516, abs=1e-6)


# 16 CFR 500.21(b): the first two steps by a page on the parallel FDA rule (second-hand); others are from memory.
@pytest.mark.parametrize("inches, height", [(5, 25.4 / 16), (14, 25.4 / 8)])
def test_figures_on_a_us_panel_are_as_high_as_its_area_asks(face, inches, height):
    found = face.figure_height_us(inches * 6.4516)
    assert found.height == pytest.approx(height, abs=1e-9)
    assert found.note == "unconfirmed: check against 16 CFR 500.21(b)"
    assert face.least_figures_us(inches * 6.4516) == pytest.approx(height, abs=1e-9)


# Directive 76/211/EEC by USDA Foreign Agricultural Service, Weight and volume indication (second-hand).
@pytest.mark.parametrize("net, height", [(40, 2), (180, 3), (300, 4), (1500, 6)])
def test_figures_of_a_metric_weight_are_as_high_as_the_weight_asks(face, net, height):
    assert face.figure_height_metric(net).height == height
    assert face.least_figures_metric(net) == height


# ASTM F2058 by a page reporting its pictograms; EN 15494:2019 by a UK page reproducing its list (second-hand).
@pytest.mark.parametrize("region, required", [("US", 4), ("EU", 4), ("GB", 4)])
def test_the_fire_statements_of_the_standard_come_first_and_say_what_to_check(face, region, required):
    found = face.fire_statements(region)
    assert [one.standing for one in found[:required]] == ["required by the standard"] * required
    assert {one.standing for one in found[required:]} <= {"for some types", "optional"}
    assert "optional" in [one.standing for one in found]
    assert all("a voluntary standard" in one.note for one in found)
    assert all("unconfirmed: check against " in one.note for one in found[1:])
    assert len({one.statement for one in found}) == len(found)


def test_a_us_warning_begins_with_the_alert_symbol_and_the_signal_word(face):
    # ASTM F2058-07(2021), abstract: the safety alert symbol, directly followed by WARNING in bold capitals.
    first = face.fire_statements("US")[0]
    assert first.statement == "Safety alert symbol, directly followed by WARNING in bold capitals"
    assert first.note == "ASTM F2058, a voluntary standard, by its abstract"
