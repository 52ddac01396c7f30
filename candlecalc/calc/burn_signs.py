"""Signs on a burn: what was seen, and which way the next test goes; what stops a burn comes first.

Habits of the trade, no measured rules: a sign says what to try, and judges no candle.
"""

from typing import Dict, Iterable, List, NamedTuple, Optional, Tuple

from candlecalc.calc.sources import SIGNS_OF_A_BURN
from candlecalc.calc.terms.burn import Direction, Seen, Sign, ToDo
from candlecalc.declaration.declared import formula

STOP, SMALLER, LARGER, OTHER = "stop", "a smaller wick", "a larger wick", "look at something else first"
PUT_OUT = (
    "put it out now with a lid or a snuffer, never with water, and let it go cold; do not sell or burn that recipe"
)
TRIM = "trim the wick to 5 or 6 mm before each burn and keep it out of draughts; if it comes back, go one size down"
# In the order in which they are told.
MEANING: Dict[str, Tuple[str, str]] = {
    "flame over 75 mm": (STOP, PUT_OUT),
    "anything but the wick burns": (STOP, PUT_OUT),
    "vessel cracks or leaks": (STOP, PUT_OUT),
    "relights by itself": (STOP, PUT_OUT),
    "flame near the glass": (STOP, f"{PUT_OUT}; then fix the wick in the middle and upright"),
    "vessel too hot to hold": (STOP, f"{PUT_OUT}; then go one size down, or take another vessel"),
    "soot": (SMALLER, TRIM),
    "smoke while burning": (SMALLER, TRIM),
    "mushrooming": (SMALLER, f"{TRIM}; a high load or much dye can do it as well"),
    "flickering": (SMALLER, TRIM),
    "pool at the wall within an hour": (SMALLER, "go one size down and time the pool again"),
    "pool too deep": (SMALLER, "go one size down; a pool of some 10 mm is usual"),
    "tunneling": (LARGER, "let the first burn reach the wall; if it comes back, go one size up"),
    "wax left on the wall": (LARGER, "burn it on: it may melt lower down; if it stays to the end, go one size up"),
    "weak flame": (LARGER, "see that the wick was not cut too short or clogged; then go one size up"),
    "goes out by itself": (LARGER, "see that the wick was not cut too short or clogged; then go one size up"),
    "drowning": (LARGER, "put it out, let it set and take some wax away from the wick; then test one size up"),
    "pool short of the wall after four hours": (LARGER, "go one size up; a wide vessel may need two wicks"),
    "weak scent while burning": (
        OTHER,
        "let it cure longer and check the load by both weighings; a larger wick only if the pool is short of the wall",
    ),
}


class SignRead(NamedTuple):
    """A sign, which way the next test goes, and what to do."""

    sign: Sign
    direction: Direction
    what_to_do: ToDo


@formula(
    source=SIGNS_OF_A_BURN,
    words="mushrooming, sooting, tunneling, wick too big, wick too small, wick up, wick down, drowning, trim "
    "wick, soot, smoke, smoking, flickering flame, dancing flame, mushroom, carbon ball, tunnelling, "
    "drowning wick, wick drowns, flame too high, jar cracked, scent too weak, what is wrong with my "
    "candle, troubleshooting, trouble, wick size, will not stay lit, keeps going out, jar got hot, glass "
    "too hot, black smoke",
)
def wick_signs(seen: Seen) -> List[SignRead]:
    """What was seen on a burn, and which way to go next: stop conditions first, then smaller, then larger.

    Change one thing at a time and burn at least three pieces of each. Where signs
    point both ways, a kind of wick or the wax may be wrong rather than the size.
    Never leave a test burning alone, and keep a lid at hand.

    >>> wick_signs(seen=["tunneling", "flame over 75 mm"])[0].direction
    'stop'
    """
    return [SignRead(sign, *MEANING[sign]) for sign in known("wick_signs", seen)]


def known(name: str, seen: Iterable[Optional[str]]) -> List[str]:
    """What was seen, in the order in which it is told; a word that is no sign is refused."""
    named = {" ".join(sign.lower().split()) for sign in seen if sign}
    strange = sorted(named - MEANING.keys())
    if strange:
        raise ValueError(f'{name}: seen is "{strange[0]}"; it takes {", ".join(MEANING)}.')
    return [sign for sign in MEANING if sign in named]
