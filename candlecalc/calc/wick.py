"""Wick tests: what one burn comes to, what a recipe comes to, and which wick to burn next.

The maker's own tests are the data: there is no chart of wicks here. A log is no conformity test, and no
verdict says more than that a candle met what its maker asked of it.
"""

from typing import Dict, List, NamedTuple, Optional, Sequence, Tuple

from candlecalc.calc import burn_signs
from candlecalc.calc.sources import STOPS, WICKS
from candlecalc.calc.terms import Load
from candlecalc.calc.terms.burn import (
    FINDINGS,
    VERDICTS,
    Afterglow,
    Findings,
    Highest,
    LitAgain,
    Lowest,
    Measured,
    MostFlame,
    NextWick,
    OtherBurning,
    Reasons,
    SomeSeen,
    Tallest,
    TargetNames,
    TestedLoads,
    TestedVessels,
    TestedWaxes,
    Verdict,
    Verdicts,
    VesselState,
    WantedKind,
    WantedVessel,
    WantedWax,
    Wick,
    WickKinds,
    WickSizes,
)
from candlecalc.declaration.declared import formula

STOP, NOT_JUDGED, MISSES, MEETS = VERDICTS
TOO_COOL, WITHIN, TOO_HOT = FINDINGS
LONGEST_OTHER, LONGEST_GLOW = 10.0, 30.0  # seconds, as EN 15493 is summarised
PIECES = 3
UNCONFIRMED = "limits from summaries of EN 15493, unconfirmed: check against the standard"


class Judged(NamedTuple):
    """What a test or a recipe comes to, and why."""

    verdict: Verdict
    reasons: Reasons


@formula(
    source=STOPS,
    words="max flame height, flame height limit, burn test, test burn, wick test, sooting, soot, smoke, "
    "smoking, flame too "
    "high, jar cracked, cracked glass, relights, lights again, afterglow, four hour cycle, pass or fail",
)
def burn_verdict(
    flame: Tallest = None,
    other_burning: OtherBurning = None,
    vessel: VesselState = None,
    afterglow: Afterglow = None,
    lit_again: LitAgain = None,
    targets: TargetNames = None,
    measured: Measured = None,
    lowest: Lowest = None,
    highest: Highest = None,
    tallest: MostFlame = 75.0,
    seen: SomeSeen = None,
) -> Judged:
    """What one test burn comes to, against stop conditions and the maker's own targets, with every reason.

    One stop condition is enough. A missing observation does not count as good: the test
    is then not judged. What was `seen` stops it too, where `wick_signs` calls it a stop. Stay with a test burn from
    lighting to cold.

    >>> burn_verdict(flame=82, other_burning=0, vessel="whole", afterglow=12, lit_again="no",
    ...              targets=["burn rate"], measured=[4.1], lowest=[3], highest=[5]).verdict
    'stop: do not sell or burn'
    """
    looked_at = {
        "flame": flame,
        "other burning": other_burning,
        "vessel": vessel,
        "afterglow": afterglow,
        "lit again": lit_again,
    }
    stops = _stops(flame, other_burning, vessel, afterglow, lit_again, tallest) + _stops_seen(seen or [])
    if stops:
        return Judged(STOP, "; ".join([*stops, UNCONFIRMED]))
    missing = [f"{name} not looked at" for name, value in looked_at.items() if value is None]
    misses, unmeasured = _against_targets(targets or [], measured or [], lowest or [], highest or [])
    if missing or unmeasured:
        return Judged(NOT_JUDGED, "; ".join(missing + unmeasured + misses))
    if misses:
        return Judged(MISSES, "; ".join(misses))
    return Judged(MEETS, f"no stop condition seen ({UNCONFIRMED}); every target typed is met")


def _stops(
    flame: Optional[float],
    other_burning: Optional[float],
    vessel: Optional[str],
    afterglow: Optional[float],
    lit_again: Optional[str],
    tallest: float,
) -> List[str]:
    found = {
        f"flame {flame or 0:g} mm, over {tallest:g}": flame is not None and flame > tallest,
        f"more than the wick burnt for {other_burning or 0:g} s, over {LONGEST_OTHER:g}": (
            other_burning is not None and other_burning > LONGEST_OTHER
        ),
        f"vessel {vessel}": vessel not in (None, "whole"),
        f"glow or smoke for {afterglow or 0:g} s, over {LONGEST_GLOW:g}": (
            afterglow is not None and afterglow > LONGEST_GLOW
        ),
        "lit again by itself": lit_again == "yes",
    }
    return [words for words, stop in found.items() if stop]


def _stops_seen(seen: Sequence[Optional[str]]) -> List[str]:
    signs = burn_signs.known("burn_verdict", seen)
    return [f"seen: {sign}" for sign in signs if burn_signs.MEANING[sign][0] == burn_signs.STOP]


def _against_targets(
    targets: Sequence[Optional[str]],
    measured: Sequence[Optional[float]],
    lowest: Sequence[Optional[float]],
    highest: Sequence[Optional[float]],
) -> Tuple[List[str], List[str]]:
    """Targets missed, and what there is to judge that was not measured, in words."""
    misses, unmeasured = [], []
    for place, (name, value, low, high) in enumerate(zip(targets, measured, lowest, highest), start=1):
        what = name or f"target {place}"
        if low is None and high is None:
            continue
        if value is None:
            unmeasured.append(f"{what} not measured")
        elif low is not None and value < low:
            misses.append(f"{what} {value:g}, below {low:g}")
        elif high is not None and value > high:
            misses.append(f"{what} {value:g}, above {high:g}")
    aims = any(limit is not None for limit in [*lowest, *highest])
    return misses, unmeasured if aims else ["no target of your own typed"]


@formula(
    source=WICKS,
    words="burn test, wick test, how many candles to test, sample size for test burns, is my candle done testing",
)
def recipe_verdict(verdicts: Verdicts) -> Judged:
    """What the test burns of one recipe come to together: at least three pieces judged, none of them a stop.

    >>> recipe_verdict(verdicts=["meets the maker's targets", "meets the maker's targets"]).reasons
    '2 pieces judged; at least 3 are wanted'
    """
    counted = {verdict: sum(given == verdict for given in verdicts) for verdict in VERDICTS}
    judged = len(verdicts) - counted[NOT_JUDGED]
    if counted[STOP]:
        return Judged(STOP, f"a stop condition in {counted[STOP]} of {len(verdicts)} pieces: one is enough")
    if judged < PIECES:
        return Judged(NOT_JUDGED, f"{judged} pieces judged; at least {PIECES} are wanted")
    left_out = f"; {counted[NOT_JUDGED]} not judged, left out" if counted[NOT_JUDGED] else ""
    if counted[MISSES]:
        return Judged(MISSES, f"{counted[MISSES]} of {judged} pieces miss a target{left_out}")
    return Judged(MEETS, f"all {judged} pieces meet the targets{left_out}")


class Advised(NamedTuple):
    """The wick to test next, if the tests name one, and why."""

    wick: NextWick
    reasons: Reasons


class _Tested(NamedTuple):
    """A wick of the kind asked for, and how it burnt in this recipe."""

    name: str
    size: float
    findings: List[str]


@formula(
    source=WICKS,
    words="wick size, wick up, wick down, which wick, wick for a jar, which wick for a diameter, wick guide, "
    "wick chart, tunneling, tunnelling, mushrooming, drowning wick, wick drowns, sooting, soot, too hot, "
    "too cool, compare wicks, small flame, bigger wick, smaller wick",
)
def next_wick(
    wax: WantedWax,
    load: Load,
    vessel: WantedVessel,
    kind: WantedKind,
    wicks: Wick,
    kinds: WickKinds,
    sizes: WickSizes,
    tested_waxes: TestedWaxes,
    tested_loads: TestedLoads,
    tested_vessels: TestedVessels,
    findings: Findings,
) -> Advised:
    """Which of the maker's own wicks to test next in a recipe, by the maker's own tests of that recipe.

    One row a test; a wick not tested yet is a row without its test. Tests in
    another wax, load or vessel, or of another kind of wick, say nothing here.
    It names a wick to test, never one to sell.

    >>> next_wick(wax="soy", load=0.08, vessel="tumbler", kind="cotton", wicks=["small", "large", "middle"],
    ...           kinds=["cotton", "cotton", "cotton"], sizes=[1, 3, 2], tested_waxes=["soy", "soy"],
    ...           tested_loads=[0.08, 0.08], tested_vessels=["tumbler", "tumbler"],
    ...           findings=["too cool", "too hot"]).wick
    'middle'
    """
    recipe = (_plain(wax), round(load, 6), _plain(vessel))
    own: Dict[str, _Tested] = {}
    rows = zip(wicks, kinds, sizes, tested_waxes, tested_loads, tested_vessels, findings)
    for name, its_kind, size, its_wax, its_load, its_vessel, finding in rows:
        if _plain(its_kind) == _plain(kind):
            tested = own.setdefault(_plain(name), _Tested(name, size, []))
            if tested.size != size:
                raise ValueError(f"next_wick: {name} has the sizes {tested.size:g} and {size:g}; a wick has one size.")
            same = its_load is not None and (_plain(its_wax), round(its_load, 6), _plain(its_vessel)) == recipe
            tested.findings.extend([finding] if same and finding else [])
    return _advised(sorted(own.values(), key=lambda tested: tested.size), kind)


def _plain(words: Optional[str]) -> str:
    return " ".join((words or "").lower().split())


def _advised(own: List[_Tested], kind: str) -> Advised:
    if not own:
        return Advised(None, f"no wick of the kind {kind} is listed")
    cool = [place for place, tested in enumerate(own) if TOO_COOL in tested.findings]
    hot = [place for place, tested in enumerate(own) if TOO_HOT in tested.findings]
    within = [place for place, tested in enumerate(own) if set(tested.findings) == {WITHIN}]
    if not cool and not hot and not within:
        return Advised(None, "none tested in this wax, load and vessel: begin where the wick's supplier advises")
    low, high = max(cool, default=-1), min(hot, default=len(own))
    if low >= high:
        both = [own[high].name, *([own[low].name] if low > high else [])]
        return Advised(own[high].name, f"the tests contradict each other: test {' and '.join(both)} again")
    if within:
        open_to = [own[place] for place in within if low < place < high]
        return _once_more(open_to) if open_to else _contradicted(own[within[0]])
    between = range(low + 1, high)
    if not between:
        return Advised(None, _nothing_between(own, low, high, kind))
    return Advised(own[_first_to_try(between, bool(cool), bool(hot))].name, _why(own, low, high))


def _contradicted(tested: _Tested) -> Advised:
    return Advised(tested.name, f"the tests of other sizes contradict those of {tested.name}: test it again")


def _once_more(within: List[_Tested]) -> Advised:
    tested = max(within, key=lambda each: len(each.findings))
    count = len(tested.findings)
    if count < PIECES:
        return Advised(tested.name, f"within targets in {count} of at least {PIECES} pieces: burn another")
    return Advised(
        None, f"{tested.name} was within targets in {count} pieces: go on with it, and see the verdict on its recipe"
    )


def _first_to_try(between: Sequence[int], cool: bool, hot: bool) -> int:
    """The middle of what lies between; the nearest neighbour where only one side is known."""
    if cool and hot:
        return between[len(between) // 2]
    return between[0] if cool else between[-1]


def _why(own: List[_Tested], low: int, high: int) -> str:
    parts = [f"{own[low].name} was too cool"] if low >= 0 else []
    parts += [f"{own[high].name} was too hot"] if high < len(own) else []
    return " and ".join(parts)


def _nothing_between(own: List[_Tested], low: int, high: int, kind: str) -> str:
    where = "beyond" if low < 0 or high == len(own) else "between"
    return f"{_why(own, low, high)}, and no {kind} of yours lies {where}: another kind, wax or load is a new recipe"
