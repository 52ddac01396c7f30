"""Burning: how fast, from the maker's own weighings, with the interval that they deserve.

There is no rate of burning to assume: it is the maker's own weighings, of the maker's own candle.
"""

import math
from typing import NamedTuple, Optional, Tuple

from candlecalc.calc.sources import ALGEBRA, MEAN, REGRESSION
from candlecalc.calc.terms.burn import (
    Afterwards,
    Before,
    BurnHours,
    BurnRate,
    CandleRates,
    Confidence,
    Fastest,
    Note,
    RateEnd,
    SomeEnd,
    SomeHours,
    Weighings,
)
from candlecalc.declaration.declared import formula
from candlecalc.quantities import statistics

FALLING = {
    "MAX(hours) > MIN(hours)": "two weighings at different hours, at least, are wanted",
    # Short of equal by more than rounding: weights that are all alike do not fall.
    "SUMPRODUCT(hours,weights)*COUNT(hours) < SUM(hours)*SUM(weights)*0.999999999999": (
        "the weights must fall as the hours grow"
    ),
}
THREE = {**FALLING, "COUNT(hours) >= 3": "an interval takes three weighings at least"}
# How far a weighing may lie from the line, and the slope either side.
STRAY = "TINV(1-confidence,COUNT(hours)-2)*STEYX(weights,hours)"
SWING = f"{STRAY}/SQRT(DEVSQ(hours))"


@formula(
    native="(before-after)/hours",
    requires={"after < before": "it must weigh less after the burn than before"},
    source=ALGEBRA,
    words="grams an hour, wax burned in one session, one test burn, burn rate",
)
def rate_of_one_burn(before: Before, after: Afterwards, hours: SomeHours) -> BurnRate:
    """Rate of burning from one pair of weighings; it comes without an interval.

    Two weighings cannot say how far the rate may be off: weigh more often and
    use `burn_rate_between`.

    >>> rate_of_one_burn(before=612, after=596, hours=4)
    4.0
    """
    return (before - after) / hours


@formula(
    native="-SLOPE(weights,hours)",
    requires=FALLING,
    source=REGRESSION,
    words="grams per hour, wax consumption, test burn log, burn log",
)
def burn_rate(hours: BurnHours, weights: Weighings) -> BurnRate:
    """Rate of burning from a log of weighings: the slope of the straight line through them.

    Weigh at lighting and at putting out, jar and all; a log may go over several
    burns. `burn_rate_between` says how sure it is.

    >>> round(burn_rate(hours=[0, 4, 8, 12], weights=[612, 596, 581, 563]), 3)
    4.05
    """
    return -statistics.line(hours, weights).slope


@formula(native=f"-SLOPE(weights,hours)-{SWING}", requires=THREE, source=REGRESSION, part=True)
def burn_rate_low(hours: BurnHours, weights: Weighings, confidence: Confidence = 0.95) -> RateEnd:
    """Low end of the interval that the rate of burning of this candle lies in.

    >>> round(burn_rate_low(hours=[0, 4, 8, 12], weights=[612, 596, 581, 563]), 3)
    3.594
    """
    line = statistics.line(hours, weights)
    return -line.slope - line.slope_swing(confidence)


@formula(native=f"-SLOPE(weights,hours)+{SWING}", requires=THREE, source=REGRESSION, part=True)
def burn_rate_high(hours: BurnHours, weights: Weighings, confidence: Confidence = 0.95) -> RateEnd:
    """High end of the interval that the rate of burning of this candle lies in.

    >>> round(burn_rate_high(hours=[0, 4, 8, 12], weights=[612, 596, 581, 563]), 3)
    4.506
    """
    line = statistics.line(hours, weights)
    return -line.slope + line.slope_swing(confidence)


class RateBetween(NamedTuple):
    """A rate of burning, the interval it lies in, and what to know about it."""

    rate: BurnRate
    low: SomeEnd
    high: SomeEnd
    note: Note


@formula(
    requires=FALLING,
    source=REGRESSION,
    words="burn test averages, spread of burn tests, "
    "how sure is the burn rate, confidence interval, error bars, test burn log",
)
def burn_rate_between(hours: BurnHours, weights: Weighings, confidence: Confidence = 0.95) -> RateBetween:
    """Rate of burning from a log of weighings, with its interval and a word on the log.

    The interval is this candle's; candles of one recipe differ, and
    `rates_of_candles` puts several together.

    >>> burn_rate_between(hours=[0, 4], weights=[612, 596]).note
    'two weighings give a rate without an interval: weigh more often'
    """
    line = statistics.line(hours, weights)
    rate, swing = -line.slope, swing_of(line, confidence)
    if swing is None:
        return RateBetween(rate, None, None, WITHOUT_INTERVAL)
    rough = "; the low end is not above 0: too few or too rough weighings" if swing >= rate else ""
    return RateBetween(rate, rate - swing, rate + swing, told_of(line.readings, confidence) + rough)


WITHOUT_INTERVAL = "two weighings give a rate without an interval: weigh more often"


def swing_of(line: statistics.Line, confidence: float) -> Optional[float]:
    return line.slope_swing(confidence) if line.readings > 2 else None


def told_of(count: int, confidence: float) -> str:
    return f"{confidence * 100:g} % interval, {count} weighings of one candle"


NEXT_SWING = "TINV(1-confidence,COUNT(rates)-1)*STDEV(rates)*SQRT(1+1/COUNT(rates))"
TWO_CANDLES = {"COUNT(rates) >= 2": "the rates of two candles at least are wanted"}


@formula(
    native=f"AVERAGE(rates)+{NEXT_SWING}",
    requires=TWO_CANDLES,
    source=MEAN,
    words="worst case burn, fastest burn",
)
def fastest_candle(rates: CandleRates, confidence: Confidence = 0.95) -> Fastest:
    """How fast the next candle of a recipe may burn, from the rates of those tested.

    The figure for a label: the buyer burns one more candle, not the mean of yours.

    >>> round(fastest_candle(rates=[4.0, 4.3, 3.9, 4.2]), 3)
    4.75
    """
    return _mean(rates) + _swings_of_candles(rates, confidence)[1]


class CandlesBetween(NamedTuple):
    """The mean rate of several candles, and where the mean and the next candle lie."""

    mean: BurnRate
    low: RateEnd
    high: RateEnd
    next_low: RateEnd
    next_high: RateEnd
    note: Note


@formula(
    requires=TWO_CANDLES,
    source=MEAN,
    words="average burn rate of several candles, compare two wicks, compare wicks, how sure, confidence",
)
def rates_of_candles(rates: CandleRates, confidence: Confidence = 0.95) -> CandlesBetween:
    """The mean rate of burning of several candles of one recipe, its interval, and that of the next candle.

    >>> rates_of_candles(rates=[4.0, 4.3]).note
    '95 % intervals, 2 candles: test at least three'
    """
    mean = _mean(rates)
    of_mean, of_next = _swings_of_candles(rates, confidence)
    few = ": test at least three" if len(rates) < 3 else ""
    note = f"{confidence * 100:g} % intervals, {len(rates)} candles{few}"
    return CandlesBetween(mean, mean - of_mean, mean + of_mean, mean - of_next, mean + of_next, note)


def _mean(values: CandleRates) -> float:
    return math.fsum(values) / len(values)


def _swings_of_candles(rates: CandleRates, confidence: float) -> Tuple[float, float]:
    """How far the mean of all such candles, and one more of them, may lie either side."""
    count, mean = len(rates), _mean(rates)
    spread = math.sqrt(math.fsum((rate - mean) ** 2 for rate in rates) / (count - 1))
    t = statistics.t_quantile((1 + confidence) / 2, count - 1)
    return t * spread / math.sqrt(count), t * spread * math.sqrt(1 + 1 / count)
