"""Weighing of packages against the handbook and the reference test."""

import math

import pytest

# UK SI 2006/659, Schedule 2, 4.5 and 4.6: factors of the mean test, printed for 30, 50 and 20 packages.
FACTORS = [(30, 0.503), (50, 0.379), (20, 0.640)]


@pytest.mark.parametrize("count, factor", FACTORS)
def test_the_factor_of_the_mean_test_is_the_printed_one(face, count, factor):
    assert face.mean_factor(count) == pytest.approx(factor, abs=0.0005)


def test_one_weighing_has_no_spread(face):
    # The same schedule, 4.2: the factor divides by the count less one.
    with face.refuses("one weighing has no spread"):
        face.mean_factor(1)


# UK SI 2006/659, Schedule 2, 3.3 to 3.6, printed: batch and sample; a batch under 100 is weighed whole.
@pytest.mark.parametrize("batch, sample", [(99, 99), (100, 50), (500, 50), (501, 80), (3200, 80), (3201, 125)])
def test_so_many_packages_of_a_batch_are_weighed(face, batch, sample):
    assert face.packages_to_weigh(batch) == sample


# UK SI 2006/659, Schedule 2, 3.6 and 4.7: of 40 packages 5 % may be short, and the mean is the nominal at least.
BATCHES = [  # the weighings of 40 of 200 g (9 g under counts), verdict
    ([200] * 40, "both tests are met"),
    ([190] * 2 + [201] * 38, "both tests are met"),
    ([190] * 3 + [201] * 37, "3 are under 191 g, more than the 2 allowed"),
    ([199.9] * 40, "the average is 199.90 g, under the 200.00 g needed"),
    ([181] * 1 + [201] * 39, "1 under 182 g may not carry the e mark"),
]


@pytest.mark.parametrize("weighings, verdict", BATCHES)
def test_a_small_batch_is_judged_on_all_of_its_packages(face, weighings, verdict):
    assert verdict in face.batch_test(200, weighings, 40).verdict


# The same schedule, 2.9, 4.5 and 3.3 to 3.5, printed: of a batch of 400, 50 are drawn for the short ones (3 allowed),
# and 30 of these for the mean, which is not under Qn - 0.503 s; of 600, 80 (5 allowed) and 50, 0.379 s. One short
# package more is the criterion of rejection.
PLANS = [  # batch, sample, of these for the mean, factor, short allowed
    (400, 50, 30, 0.503, 3),
    (600, 80, 50, 0.379, 5),
    (4000, 125, 50, 0.379, 7),
]


@pytest.mark.parametrize("batch, sample, averaged, factor, allowed", PLANS)
def test_a_sample_is_judged_by_the_plans_of_the_schedule(face, batch, sample, averaged, factor, allowed):
    spread = math.sqrt(averaged / (averaged - 1))  # of as many at 199 g as at 201 g
    weighings = [199, 201] * (averaged // 2) + [190] * allowed + [200] * (sample - averaged - allowed)
    found = face.batch_test(200, weighings, batch)
    assert (found.verdict, found.short, found.short_allowed) == ("both tests are met", allowed, allowed)
    assert found.mean == 200
    assert found.mean_needed == pytest.approx(200 - factor * spread, abs=1e-9)
    found = face.batch_test(200, [*weighings[:-1], 190], batch)
    assert found.verdict == f"{allowed + 1} are under 191 g, more than the {allowed} allowed"


def test_a_sample_that_is_too_small_is_refused(face):
    # The same schedule: 50 of a batch of 400.
    with face.refuses("40 weighed; a batch of 400 asks for 50"):
        face.batch_test(200, [200] * 40, 400)


# SR (NI) 2011/331, Schedule 2, 1.3: at most a fifth of the tolerable error; 76/211/EEC gives 9 g at 227 g.
def test_the_error_of_weighing_is_a_fifth_of_the_tolerable_one(face):
    assert face.weighing_error_allowed(227) == pytest.approx(1.8, abs=1e-9)


def test_a_gross_weight_is_the_net_and_the_tare(face):
    # NIST Handbook 133 (2026), 2.3.8: 907 g and an average tare of 14 g are 921 g (printed).
    assert face.gross_weight(907, face.average_tare([14, 14])) == 921


# NIST Handbook 133 (2026), 2.2 and 2.3.8, printed: 7.2 g at 113 g, so a scale step of 1.2 g; 31.7 g at 907 g.
@pytest.mark.parametrize("net, variation, step", [(113, 7.2, 1.2), (907, 31.7, 31.7 / 6)])
def test_a_variation_that_was_read_has_its_coarsest_step(face, net, variation, step):
    found = face.maximum_allowable_variation(net)
    assert (found.variation, found.coarsest_step) == pytest.approx((variation, step), abs=1e-6)
    assert found.note.startswith("read at 113 g and 907 g only")


def test_a_variation_from_memory_says_so(face):
    # NIST Handbook 133, Table 2-5, from memory.
    assert face.maximum_allowable_variation(227).note == "unconfirmed: check against NIST Handbook 133, Appendix A"


# NIST Handbook 133 (2026), 2.3.7.2: an average of zero or plus passes; a minus is held against s times a factor
# of a table that is from memory (0.635 for 12). Weighings and sums are worked by hand for this test.
WEIGHINGS = [226.1, 227.4, 225.8, 226.9, 227.2, 226.4, 225.5, 227.8, 226.0, 226.7, 227.1, 225.9]


# NIST Handbook 133 (2026), 2.3.7.1: no package may lie further under than the variation of table 2-5, which was read at
# 113 g (7.2 g) and 907 g (31.7 g) only; 12.7 g at 227 g is from memory, and so is how many may all the same.
LOTS = [  # net g, weighings g, variation g, beyond it, what the verdict says of single packages
    (227, [190, 240, 260], 12.7, 1, "1 more than 12.7 g under, the furthest 37.000 g: no verdict, unconfirmed: check"),
    (227, [226, 227, 229], 12.7, 0, "none is more than 12.7 g under, unconfirmed: check"),
    (
        113,
        [105, 120, 121],
        7.2,
        1,
        "1 more than 7.2 g under, the furthest 8.000 g: that is an unreasonable minus error",
    ),
    (113, [105.8, 120, 121], 7.2, 0, "none is more than 7.2 g under"),
    (20_000, [19_780, 20_100, 20_200], 226, 0, "none is more than 226 g under, unconfirmed: check"),
    (25_000, [24_400, 25_500, 25_600], 500, 1, "1 more than 500 g under, the furthest 600.000 g: no verdict"),
]


@pytest.mark.parametrize("net, weighings, variation, beyond, words", LOTS)
def test_no_single_package_of_a_lot_is_far_under(face, net, weighings, variation, beyond, words):
    found = face.lot_test_us(net, weighings)
    assert (found.variation, found.beyond) == (pytest.approx(variation, abs=1e-9), beyond)
    assert found.verdict.startswith(f"the average is not under the declared weight; {words}")


def test_a_lot_under_its_weight_on_average_gets_no_verdict_from_a_remembered_table(face):
    found = face.lot_test_us(227, WEIGHINGS)
    assert found.average_error == pytest.approx(-5.2 / 12, abs=1e-9)
    assert found.spread == pytest.approx(0.72405, abs=0.000005)
    assert found.error_limit == pytest.approx(0.635 * 0.72405, abs=0.0005)
    assert found.verdict.startswith("no verdict: 0.433 g under on average, within a limit")


def test_a_lot_that_is_not_under_its_weight_meets_the_average(face):
    # NIST Handbook 133 (2026), 2.3.7.2: zero or plus passes.
    verdict = face.lot_test_us(227, [227, 227, 227.5]).verdict
    assert verdict.startswith("the average is not under the declared weight; ")
    with face.refuses("weigh two or more"):
        face.lot_test_us(227, [227])
