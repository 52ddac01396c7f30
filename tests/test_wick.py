"""Laws of test burns: what no verdict and no advice ever does."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from candlecalc.calc import burn_verdict, next_wick, recipe_verdict
from candlecalc.calc.burn_signs import MEANING
from candlecalc.calc.terms.burn import FINDINGS, VERDICTS

STOP, NOT_JUDGED, MISSES, MEETS = VERDICTS

observations = st.fixed_dictionaries(
    {
        "flame": st.none() | st.floats(4, 150),
        "other_burning": st.none() | st.floats(0, 60),
        "vessel": st.none() | st.sampled_from(["whole", "cracked", "broken", "leaking"]),
        "afterglow": st.none() | st.floats(0, 90),
        "lit_again": st.none() | st.sampled_from(["no", "yes"]),
    }
)
STOPPING = [sign for sign, (direction, _) in MEANING.items() if direction == "stop"]


@given(observations, st.lists(st.sampled_from(list(MEANING)) | st.none(), max_size=4))
def test_a_sign_that_stops_a_burn_stops_its_verdict_and_no_other_sign_does(looked, seen):
    told, without = burn_verdict(**looked, seen=seen), burn_verdict(**looked)
    stopping = [sign for sign in STOPPING if sign in seen]
    assert told.verdict == (STOP if stopping else without.verdict)
    assert [sign for sign in STOPPING if f"seen: {sign}" in told.reasons] == stopping


numbers = st.none() | st.floats(-10, 10)
targets = st.integers(0, 4).flatmap(lambda n: st.tuples(*[st.lists(numbers, min_size=n, max_size=n)] * 3))


def judged(seen, aims):
    measured, lowest, highest = aims
    return burn_verdict(**seen, measured=measured, lowest=lowest, highest=highest)


@given(observations, targets, st.sampled_from([("flame", 80), ("vessel", "cracked"), ("lit_again", "yes")]))
def test_one_stop_condition_stops_whatever_else_was_seen(seen, aims, stop):
    assert judged({**seen, stop[0]: stop[1]}, aims).verdict == STOP


@given(observations, targets)
def test_a_test_with_anything_missing_neither_meets_nor_misses(seen, aims):
    told = judged(seen, aims)
    if None in seen.values():
        assert told.verdict in (STOP, NOT_JUDGED)
    assert told.reasons


@given(observations, targets)
def test_a_test_that_meets_its_targets_has_one_at_least_and_all_measured(seen, aims):
    if judged(seen, aims).verdict == MEETS:
        measured, lowest, highest = aims
        asked = [
            (value, low, high)
            for value, low, high in zip(measured, lowest, highest, strict=True)
            if low is not None or high is not None
        ]
        assert asked
        for value, low, high in asked:
            assert (low is None or value >= low) and (high is None or value <= high)


@given(st.lists(st.sampled_from(VERDICTS), min_size=1, max_size=8), st.randoms())
def test_a_recipe_is_no_better_than_its_worst_piece(verdicts, chance):
    told = recipe_verdict(verdicts).verdict
    assert (told == STOP) == (STOP in verdicts)
    if told == MEETS:
        assert verdicts.count(MEETS) >= 3 and MISSES not in verdicts
    chance.shuffle(verdicts)
    assert recipe_verdict(verdicts).verdict == told


wicks = st.lists(
    st.tuples(
        st.integers(1, 6),
        st.sampled_from(["flat", "round"]),
        st.sampled_from(["soy", "rape"]),
        st.sampled_from([0.06, 0.08]),
        st.sampled_from(["tumbler", "tin"]),
        st.none() | st.sampled_from(FINDINGS),
    ),
    min_size=1,
    max_size=14,
)


def advised(rows, wax="soy", load=0.08, vessel="tumbler", kind="flat"):
    named = [(f"{its_kind} {size}", *rest) for size, its_kind, *rest in rows]
    return next_wick(
        wax,
        load,
        vessel,
        kind,
        [name for name, *_ in named],
        [row[1] for row in rows],
        [row[0] for row in rows],
        *(list(column) for column in zip(*(rest for _, *rest in named), strict=True)),
    )


@given(wicks)
def test_the_next_wick_is_one_of_the_makers_own_of_the_kind_asked_for(rows):
    told = advised(rows)
    assert told.wick is None or told.wick in {f"flat {size}" for size, kind, *_ in rows if kind == "flat"}


@given(wicks)
def test_tests_of_another_wax_load_vessel_or_kind_change_nothing(rows):
    told = advised(rows)
    emptied = [row if row[1:5] == ("flat", "soy", 0.08, "tumbler") else (*row[:5], None) for row in rows]
    assert advised(emptied) == told


@given(wicks)
def test_a_wick_too_cool_or_too_hot_is_named_again_only_where_tests_contradict(rows):
    told = advised(rows)
    own = [row for row in rows if row[1:5] == ("flat", "soy", 0.08, "tumbler")]
    failed = {f"flat {row[0]}" for row in own if row[5] in ("too cool", "too hot")}
    assert told.wick not in failed or "contradict" in told.reasons


@pytest.mark.parametrize("word", ["right", "safe", "best", "pass", "approved", "suitable", "correct"])
@given(wicks, observations, targets)
def test_nothing_is_ever_called_right_or_safe(word, rows, seen, aims):
    told = f"{advised(rows).reasons} {judged(seen, aims).reasons} {' '.join(VERDICTS)}".lower()
    assert word not in told.replace(",", " ").replace(";", " ").split()
