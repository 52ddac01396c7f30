"""Fragrance against textbook examples of percent by mass and of mixtures."""

import pytest

# OpenStax, Chemistry 2e, m68704: percent by mass of a solute. The solvent is the wax, the solute the oil.
PERCENT_BY_MASS = [  # solvent g, solute g, share, half its last digit, where
    (775, 135, 0.148, 0.0005, "printed 14.8 %: 135 g in 775 g of solvent"),
    (4.99625, 0.00375, 0.00075, 5e-6, "printed 0.075 %: 3.75 mg in 5.0 g of solution"),
]


@pytest.mark.parametrize("wax, oil, share, half, where", PERCENT_BY_MASS)
def test_a_load_on_wax_is_a_share_of_the_whole(face, wax, oil, share, half, where):
    assert face.share_of_total(face.load_measured(wax, oil)) == pytest.approx(share, abs=half)


def test_a_share_of_the_whole_is_a_load_on_wax(face):
    # The first row above turned round: 135 of 910 g is 135/775 on the solvent (worked here).
    for load in (face.load_from_share(135 / 910), face.highest_on_wax(135 / 910, "of total")):
        assert load == pytest.approx(135 / 775, rel=1e-12)
    assert face.highest_on_wax(0.08, "of wax") == 0.08
    assert face.highest_of_total(135 / 775, "of wax") == pytest.approx(0.148, abs=0.0005)


def test_a_finished_fill_is_its_solute_and_its_solvent(face):
    # The same example: 910 g of solution are 135 g and 775 g (printed).
    assert face.oil_for_fill(910, 135 / 775) == pytest.approx(135, abs=1e-9)
    assert face.wax_for_fill(910, 135 / 775) == pytest.approx(775, abs=1e-9)


# OpenStax, Chemistry 2e, m68704: a share of a weight that is given as a volume.
SOLUTES = [  # ml, g/ml, share, solute g, where
    (500, 1.19, 0.372, 221, "printed: 500 ml at 37.2 % by mass"),
    (355, 0.785, 0.70, 195, "printed: 355 ml of 70 %"),
]


@pytest.mark.parametrize("volume, density, share, solute, where", SOLUTES)
def test_a_part_of_a_blend_is_its_share_of_the_weight(face, volume, density, share, solute, where):
    weight = face.fill_weight(volume, headspace=0, density=density)
    assert face.oil_part(weight, share) == pytest.approx(solute, abs=0.5)
    assert face.oil_parts(weight, [share, 1 - share])[0] == pytest.approx(solute, abs=0.5)


def test_oil_that_raises_a_load_follows_the_mixture_example(face):
    # A pharmacy practice set (rxcal.org): pure substance added to 480 g of 20 % for 31 %, printed 76.52 g.
    assert face.oil_to_raise_load(480, face.load_from_share(0.20), face.load_from_share(0.31)) == pytest.approx(
        76.52, abs=0.005
    )


def test_wax_that_lowers_a_load_follows_the_dilution_example(face):
    # University of Houston pharmacy module: 125 of 0.2 % made to 1 in 5000 are 1250 (printed, in ml).
    added = face.wax_to_lower_load(125, face.load_from_share(0.002), face.load_from_share(1 / 5000))
    assert 125 + added == pytest.approx(1250, abs=1e-9)


# Common practice, no source.
MELTS = [  # wax, load, oil g
    ("1 lb", "6.25%", 28.349523125),  # an ounce to the pound
    ("500 g", 0.08, 40),
    ("10 lb", "10%", 453.59237),
]


@pytest.mark.parametrize("wax, load, oil", MELTS)
def test_a_load_is_counted_on_the_wax(face, wax, load, oil):
    assert face.oil_for_wax(wax, load) == pytest.approx(oil, rel=1e-12)
    assert face.load_measured(wax, oil) == pytest.approx(face.oil_for_wax(1, load), rel=1e-12)
    assert face.wax_for_oil(oil, load) == pytest.approx(face.wax_for_oil(face.oil_for_wax(wax, load), load), rel=1e-12)


def test_a_scales_step_can_hide_half_of_itself(face):
    # GUM, F.2.2.1, from memory: a reading stands for anything within half a step of it.
    # 16 g and 200 g on a scale of whole grams: 16.5 in 199.5 at the worst (worked here).
    assert face.load_swing(wax=200, oil=16, step=1) == pytest.approx(16.5 / 199.5 - 16 / 200, rel=1e-12)
    assert face.load_swing(wax=200, oil=16, step=0.1) == pytest.approx(16.05 / 199.95 - 16 / 200, rel=1e-12)


def test_the_load_on_a_scale_lies_between_readings_half_a_step_off(face):
    # GUM, F.2.2.1, from memory: a reading stands for anything within half a step of it (worked here).
    told = face.load_on_scale(wax=200, load=0.081, step=1)
    assert (told.wax, told.oil, told.load) == (200, 16, 0.08)
    assert told.lowest == pytest.approx(15.5 / 200.5, rel=1e-12)
    assert told.highest == pytest.approx(16.5 / 199.5, rel=1e-12)
    assert face.load_on_scale(wax=200, load=0, step=1).lowest == 0
    with face.refuses("the wax must weigh more than one step of the scale"):
        face.load_on_scale(wax=5, load=0.08, step=5)


# Common practice, no source: wax and oil are each weighed to the nearest step (worked here).
@pytest.mark.parametrize(
    "wax, load, step, got", [(454, 0.06, 1, 27 / 454), (454, 0.06, 5, 25 / 455), (100, 0.065, 1, 0.07)]
)
def test_a_coarse_scale_changes_the_load(face, wax, load, step, got):
    assert face.load_after_rounding(wax, load, step) == pytest.approx(got, rel=1e-12)


# Derived, no printed source. A restricted material's share in an oil is at most its own limit L over that
# oil's certified limit M, so a blend with shares s holds at most L times the sum of s/M of it, and is
# within L up to a share of 1 over that sum.
def test_a_blend_is_limited_by_the_sum_of_share_over_limit(face):
    assert face.limit_of_blend([0.7, 0.3], [0.20, 0.05]) == pytest.approx(0.1053, abs=0.00005)
    assert face.limit_of_blend([1], [0.15]) == pytest.approx(0.15, rel=1e-12)
    assert face.limit_of_blend([0.5, 0.5], [1, 1]) == 1


def test_a_blend_at_its_limit_holds_no_more_of_a_shared_material_than_is_allowed(face):
    # Both oils hold as much of one material as their certificates leave room for (limit 1 % of the candle).
    allowed, shares, limits = 0.01, [0.7, 0.3], [0.20, 0.05]
    in_blend = sum(share * allowed / limit for share, limit in zip(shares, limits, strict=True))
    assert face.limit_of_blend(shares, limits) * in_blend == pytest.approx(allowed, rel=1e-12)
    least_of_each = min(limit / share for share, limit in zip(shares, limits, strict=True))
    assert least_of_each * in_blend > 1.5 * allowed  # the rule that is not safe


def test_a_certified_limit_is_a_share_of_the_finished_candle(face):
    # Percent by mass, as above: 20 % of the candle is 25 % of its wax (worked here).
    assert face.load_at_limit(0.20) == pytest.approx(0.25, rel=1e-12)
    assert face.load_at_limit(1) == pytest.approx(0.5, rel=1e-12)


# Common practice, no source: of the limits that the wax's supplier, the oil's supplier and the certificate state, the
# lowest holds. Percent by mass as above turns each into a load on wax (worked here): 20 % of the candle is 25 %.
HIGHEST = [  # wax, of; oil, of; certificate; load; which decides
    (0.10, "of wax", 0.12, "of wax", 0.20, 0.10, "the wax's supplier"),
    (0.10, "of wax", 0.08, "of wax", 1, 0.08, "the oil's supplier"),
    (0.10, "of wax", 0.12, "of wax", 0.05, 5 / 95, "the certificate"),
    (0.10, "of wax", 0.09, "of total", 0.2, 9 / 91, "the oil's supplier"),
    (0.12, "of total", 0.14, "of wax", 0.2, 12 / 88, "the wax's supplier"),
    (0.25, "of wax", 0.2, "of total", 0.2, 0.25, "the wax's supplier, the oil's supplier and the certificate"),
    (0.1, "of wax", 0.1, "of wax", 0.2, 0.1, "the wax's supplier and the oil's supplier"),
    (0.5, "of total", 0.5, "of total", 1, 0.5, "none of the three: no load above 50% of wax weight is counted with"),
]


@pytest.mark.parametrize("wax, wax_basis, oil, oil_basis, limit, load, which", HIGHEST)
def test_the_lowest_of_three_limits_is_the_highest_load(face, wax, wax_basis, oil, oil_basis, limit, load, which):
    assert face.highest_load(wax, oil, limit, wax_basis, oil_basis) == pytest.approx(load, rel=1e-12)


@pytest.mark.parametrize("wax, wax_basis, oil, oil_basis, limit, load, which", HIGHEST)
def test_which_limit_decides_is_said_in_words(face, wax, wax_basis, oil, oil_basis, limit, load, which):
    assert face.highest_load_decided_by(wax, oil, limit, wax_basis, oil_basis) == which


def test_a_certificate_without_a_limit_is_no_leave_for_a_load(face):
    # Worked here: 1 stands for no limit, and what the suppliers state holds.
    assert face.highest_load(0.08, 0.1, 1) == pytest.approx(0.08, rel=1e-12)
    with face.refuses("highest_load: limit "):
        face.highest_load(0.08, 0.1, 0)
