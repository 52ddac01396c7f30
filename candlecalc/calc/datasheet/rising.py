"""How far the load of a candle may rise before it takes another class."""

import math
from typing import List, NamedTuple, Optional, Sequence

from candlecalc.calc.datasheet.lines import Numbers
from candlecalc.calc.datasheet.mixture import candle
from candlecalc.calc.datasheet.substance import Line

HIGHEST = 0.5  # of wax
STEPS = 500  # of it: tenths of a percent


class Rise(NamedTuple):
    """The highest load, in whole tenths of a percent, that keeps the classes, and the classes above it."""

    load: float
    then: List[str]


def rise(lines: List[Line], loads: Sequence[float], dilutions: Numbers, fixed: Sequence[bool]) -> Optional[Rise]:
    """The load up to which the classes stay as they are, half the wax weight at most; None where there is no oil.

    The oils keep their shares of each other; what is `fixed`, such as a dye, stays as it is. More of everything never
    takes a class away, so halving the interval finds the load.
    """
    now = sum(load for load, stays in zip(loads, fixed) if not stays)

    def classes(step: int) -> List[str]:
        wanted = step / STEPS * HIGHEST
        scaled = [load if stays else load * wanted / now for load, stays in zip(loads, fixed)]
        return [each.name for each in candle(lines, scaled, dilutions, None, "additive", "EU", 0.0).classes]

    if not now:
        return None
    kept, taken = math.floor(now / HIGHEST * STEPS), STEPS
    same = [each.name for each in candle(lines, loads, dilutions, None, "additive", "EU", 0.0).classes]
    if classes(taken) == same:
        return Rise(HIGHEST, [])
    while taken - kept > 1:
        half = (kept + taken) // 2
        kept, taken = (half, taken) if classes(half) == same else (kept, half)
    return Rise(max(kept / STEPS * HIGHEST, now), classes(taken))
