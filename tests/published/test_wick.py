"""Test burns against the stop conditions of EN 15493, as trade and test-house summaries give them.

Second-hand: the standard itself was not read. A log of the maker's own is no conformity test.
"""

import pytest

STOP, NOT_JUDGED = "stop: do not sell or burn", "not judged"
MISSES, MEETS = "misses the maker's targets", "meets the maker's targets"
GOOD = {"flame": 40, "other_burning": 0, "vessel": "whole", "afterglow": 12, "lit_again": "no"}
TARGET = {"targets": ["burn rate"], "measured": [4], "lowest": [3], "highest": [5]}

# Flame at most 75 mm, 30 for a tea light; nothing but the wick burns longer than 10 s; the vessel neither breaks nor
# leaks; no glow or smoke longer than 30 s (2019; 20 s in 2007); no lighting again: summaries, second-hand.
EDGES = [  # what is changed, a verdict, words of its reason
    ({"flame": 75}, MEETS, "no stop condition seen"),
    ({"flame": 75.1}, STOP, "flame 75.1 mm, over 75"),
    ({"flame": 31, "tallest": 30}, STOP, "flame 31 mm, over 30"),
    ({"other_burning": 10.5}, STOP, "more than the wick burnt for 10.5 s, over 10"),
    ({"vessel": "leaking"}, STOP, "vessel leaking"),
    ({"afterglow": 30}, MEETS, "unconfirmed: check against the standard"),
    ({"afterglow": 31}, STOP, "glow or smoke for 31 s, over 30"),
    ({"lit_again": "yes"}, STOP, "lit again by itself"),
]


@pytest.mark.parametrize("changed, verdict, reason", EDGES)
def test_any_stop_condition_stops(face, changed, verdict, reason):
    told = face.burn_verdict(**{**GOOD, **TARGET, **changed})
    assert told.verdict == verdict
    assert reason in told.reasons


@pytest.mark.parametrize("missing", list(GOOD))
def test_what_was_not_looked_at_is_not_judged(face, missing):
    told = face.burn_verdict(**{**GOOD, **TARGET, missing: None})
    assert told == (NOT_JUDGED, f"{missing.replace('_', ' ')} not looked at")


# Arithmetic against the maker's own targets.
TARGETS = [  # measured, lowest, highest, verdict, reasons
    ([4, 2.5], [3, None], [5, 3], MEETS, "every target typed is met"),
    ([3, 3], [3, None], [5, 3], MEETS, "every target typed is met"),
    ([2.9, 3.1], [3, None], [5, 3], MISSES, "burn rate 2.9, below 3; hours to the wall 3.1, above 3"),
    ([4], [3, None], [5, 3], NOT_JUDGED, "hours to the wall not measured"),
    ([4, 2.5], None, None, NOT_JUDGED, "no target of your own typed"),
]


@pytest.mark.parametrize("measured, lowest, highest, verdict, reasons", TARGETS)
def test_a_test_is_judged_by_the_makers_own_targets(face, measured, lowest, highest, verdict, reasons):
    names = ["burn rate", "hours to the wall"]
    told = face.burn_verdict(**GOOD, targets=names, measured=measured, lowest=lowest, highest=highest)
    assert told.verdict == verdict
    assert told.reasons.endswith(reasons)


# At least three pieces, and one stop is enough: common practice, no source.
RECIPES = [  # verdicts of pieces, verdict, reasons
    ([MEETS] * 3, MEETS, "all 3 pieces meet the targets"),
    ([MEETS] * 2, NOT_JUDGED, "2 pieces judged; at least 3 are wanted"),
    ([MEETS] * 2 + [NOT_JUDGED], NOT_JUDGED, "2 pieces judged; at least 3 are wanted"),
    ([MEETS] * 3 + [NOT_JUDGED], MEETS, "all 3 pieces meet the targets; 1 not judged, left out"),
    ([MEETS] * 2 + [MISSES], MISSES, "1 of 3 pieces miss a target"),
    ([MEETS] * 9 + [STOP], STOP, "a stop condition in 1 of 10 pieces: one is enough"),
    ([STOP], STOP, "a stop condition in 1 of 1 pieces: one is enough"),
]


@pytest.mark.parametrize("verdicts, verdict, reasons", RECIPES)
def test_a_recipe_is_judged_by_three_pieces_or_more(face, verdicts, verdict, reasons):
    assert face.recipe_verdict(verdicts) == (verdict, reasons)


def test_a_verdict_that_is_none_is_refused(face):
    with face.refuses('verdicts at place 1 is "good"; it takes "stop: do not sell or burn" or "not judged"'):
        face.recipe_verdict(["good"])


# Halving between what was too cool and what was too hot: common practice, no source. An invented maker's wicks,
# smallest first; a test is a wick and its finding in soy at 8 % in a tumbler.
COOL, WITHIN, HOT = "too cool", "within targets", "too hot"
NEXT = [  # tests, wick to test next, words
    ([("w2", COOL), ("w6", HOT)], "w4", "w2 was too cool and w6 was too hot"),
    ([("w2", COOL)], "w3", "w2 was too cool"),
    ([("w5", HOT)], "w4", "w5 was too hot"),
    ([("w4", WITHIN)] * 2, "w4", "within targets in 2 of at least 3 pieces: burn another"),
    ([("w4", WITHIN)] * 3, None, "see the verdict on its recipe"),
    ([("w3", COOL), ("w4", HOT)], None, "no flat of yours lies between"),
    ([("w6", COOL)], None, "no flat of yours lies beyond"),
    ([("w3", HOT), ("w5", COOL)], "w3", "the tests contradict each other: test w3 and w5 again"),
]
SIX = ["w1", "w2", "w3", "w4", "w5", "w6"]


@pytest.mark.parametrize("tests, wick, words", NEXT)
def test_the_next_wick_lies_between_those_that_failed(face, tests, wick, words):
    told = advice(face, tests, wax="soy", load=0.08, vessel="tumbler", kind="flat")
    assert told.wick == wick
    assert words in told.reasons


@pytest.mark.parametrize("other", [{"wax": "rape"}, {"load": 0.07}, {"vessel": "tin"}])
def test_tests_of_another_recipe_are_not_counted(face, other):
    asked = {"wax": "Soy", "load": 0.08, "vessel": " tumbler", "kind": "FLAT", **other}
    told = advice(face, [("w2", COOL), ("w6", HOT)], **asked)
    assert told.wick is None
    assert told.reasons.startswith("none tested in this wax, load and vessel")


def test_a_kind_that_is_not_there_and_a_wick_of_two_sizes(face):
    told = advice(face, [("w2", COOL)], wax="soy", load=0.08, vessel="tumbler", kind="round")
    assert told == (None, "no wick of the kind round is listed")
    with face.refuses("w1 has the sizes 1 and 2; a wick has one size"):
        face.next_wick("soy", 0.08, "tumbler", "flat", ["w1", "w1"], ["flat"] * 2, [1, 2], [], [], [], [])


def advice(face, tests, **asked):
    """Six wicks of one kind, of which some were tested."""
    wicks = [wick for wick, _ in tests] + SIX
    return face.next_wick(
        **asked,
        wicks=wicks,
        kinds=["flat"] * len(wicks),
        sizes=[float(wick[1:]) for wick in wicks],
        tested_waxes=["soy"] * len(tests),
        tested_loads=[0.08] * len(tests),
        tested_vessels=["tumbler"] * len(tests),
        findings=[finding for _, finding in tests],
    )


def test_a_stop_is_told_before_the_signs_of_a_wick_too_small_or_too_large(face):
    # Common practice, no source; the stops as burn_verdict has them.
    told = face.wick_signs(["tunneling", "mushrooming", "flame over 75 mm"])
    assert [row.direction for row in told] == ["stop", "a smaller wick", "a larger wick"]
    assert "never with water" in told[0].what_to_do


# Common practice, no source: soot and a deep pool ask for less wick, a narrow pool and a weak flame for more.
WAYS = [
    (["soot", "pool too deep", "pool at the wall within an hour"], "a smaller wick"),
    (["weak flame", "drowning", "pool short of the wall after four hours"], "a larger wick"),
    (["relights by itself", "vessel cracks or leaks", "anything but the wick burns"], "stop"),
    (["weak scent while burning"], "look at something else first"),
]


@pytest.mark.parametrize("seen, direction", WAYS)
def test_a_sign_says_which_way_the_next_test_goes(face, seen, direction):
    assert {row.direction for row in face.wick_signs(seen)} == {direction}


def test_a_sign_that_is_none_is_refused(face):
    # No source: the list of signs is our own.
    with face.refuses('seen is "sparkles"; it takes flame over 75 mm, '):
        face.wick_signs(["sparkles"])
