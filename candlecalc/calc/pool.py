"""Melt pool and flame: how the pool grows to the wall, and how high the flame stands at a rate of burning."""

import math
from typing import NamedTuple

from candlecalc.calc.sources import ORIGIN, POOL, PRACTICE, REGRESSION
from candlecalc.calc.terms.burn import (
    BurnRate,
    CandleRates,
    Confidence,
    Flame,
    FlameHeights,
    Note,
    PoolGrowth,
    PoolHours,
    PoolTime,
    PoolWidths,
)
from candlecalc.calc.terms.vessel import InsideDiameter
from candlecalc.declaration.declared import formula
from candlecalc.quantities import statistics

INCH = 25.4
LONGEST_BURN = 4.0  # hours at a time: common practice, no source

PAST = "past the four hours usual for one burn"

GROWING = {
    "MAX(hours) > MIN(hours)": "two readings at different hours, at least, are wanted",
    # By more than rounding: a pool that stays as it is does not grow.
    "SUMPRODUCT(hours,widths)*COUNT(hours)*0.999999999999 > SUM(hours)*SUM(widths)": (
        "the pool must grow as the hours do: leave out readings taken once it had reached the wall"
    ),
}
INSIDE = {**GROWING, "MAX(widths) <= diameter": "the pool cannot be wider than the vessel"}


@formula(
    native="SLOPE(widths,hours)",
    requires=GROWING,
    source=REGRESSION,
    words="melt pool growth",
)
def pool_growth(hours: PoolHours, widths: PoolWidths) -> PoolGrowth:
    """How much wider the melt pool gets in an hour, from readings of one burn on its way to the wall.

    >>> round(pool_growth(hours=[0.5, 1, 1.5, 2], widths=[28, 41, 52, 61]), 1)
    22.0
    """
    return statistics.line(hours, widths).slope


@formula(
    native="AVERAGE(hours)+(diameter-AVERAGE(widths))/SLOPE(widths,hours)",
    requires=INSIDE,
    source=REGRESSION,
    words="full melt pool, pool reaches the edge, tunneling, tunnelling, first burn, memory ring, does not melt "
    "to the edge",
)
def pool_time(hours: PoolHours, widths: PoolWidths, diameter: InsideDiameter) -> PoolTime:
    """Hours from lighting until the melt pool reaches the wall, on the straight line through the readings.

    Pools grow more slowly towards the wall: a reading near it tells more than a long
    line.

    >>> round(pool_time(hours=[0.5, 1, 1.5, 2], widths=[28, 41, 52, 61], diameter=75), 1)
    2.6
    """
    return statistics.line(hours, widths).where(diameter)


@formula(
    native=f"diameter/{INCH}",
    source=PRACTICE,
    words="hour per inch, first burn, how long to burn the first time, full melt pool, memory ring, burn "
    "session, how long to burn each time, inch across",
    notes={f"diameter > {LONGEST_BURN * INCH:g}": PAST},
)
def usual_pool_time(diameter: InsideDiameter) -> PoolTime:
    """Hours that makers usually expect the melt pool to take to the wall: one for each inch across.

    A habit of the trade that nobody seems to have measured; from four inches up
    it runs past the four hours that a candle is usually burnt at a time.

    >>> round(usual_pool_time(diameter=76.2), 6)
    3.0
    """
    return diameter / INCH


class PoolForecast(NamedTuple):
    """A melt pool on its way to the wall, what is usual beside it, and what to know."""

    growth: PoolGrowth
    reaches: PoolTime
    usual: PoolTime
    note: Note


@formula(
    requires=INSIDE,
    source=POOL,
    words="melt pool, full melt pool, pool reaches the edge, first burn, melt pool width",
)
def pool_forecast(hours: PoolHours, widths: PoolWidths, diameter: InsideDiameter) -> PoolForecast:
    """How the melt pool grows and when it reaches the wall, with the usual expectation beside it.

    >>> round(pool_forecast(hours=[0.5, 1, 1.5, 2], widths=[28, 41, 52, 61], diameter=75).usual, 1)
    3.0
    """
    line = statistics.line(hours, widths)
    reaches, usual = line.where(diameter), diameter / INCH
    notes = ["one hour an inch is common practice, not measured"]
    if reaches > max(hours):
        notes.append("drawn on beyond the last reading")
    if reaches > LONGEST_BURN:
        notes.append(PAST)
    return PoolForecast(line.slope, reaches, usual, "; ".join(notes))


# Height over rate, through the origin: no wax burnt, no flame.
HEIGHT = "SUMPRODUCT(rates,heights)/SUMSQ(rates)"
ALIKE = {"COUNT(rates) >= 2": "readings at two rates at least are wanted"}


@formula(
    native=f"rate*{HEIGHT}",
    requires=ALIKE,
    source=ORIGIN,
    words="flame size, how high is the flame",
)
def flame_height(rate: BurnRate, rates: CandleRates, heights: FlameHeights) -> Flame:
    """Height of the flame to expect at a rate of burning, from the maker's own readings.

    A candle's flame grows in step with the wax it burns. Take readings of one
    wax, load and kind of wick; formulas for the flames of large fires do not hold.

    >>> round(flame_height(rate=5, rates=[3.2, 4.1, 4.6], heights=[27, 33, 38]), 1)
    41.1
    """
    return rate * _each(rates, heights)


@formula(
    native=(
        f"rate*{HEIGHT}+TINV(1-confidence,COUNT(rates)-1)"
        f"*SQRT(SUMPRODUCT((heights-rates*{HEIGHT})^2)/(COUNT(rates)-1)*(1+rate^2/SUMSQ(rates)))"
    ),
    requires=ALIKE,
    source=ORIGIN,
    words="flame too high, tall flame",
)
def flame_height_high(
    rate: BurnRate, rates: CandleRates, heights: FlameHeights, confidence: Confidence = 0.95
) -> Flame:
    """How tall the flame may get at a rate of burning, as far as the maker's own readings can tell.

    >>> round(flame_height_high(rate=5, rates=[3.2, 4.1, 4.6], heights=[27, 33, 38]), 1)
    44.9
    """
    each, count = _each(rates, heights), len(rates)
    off = math.fsum((height - each * at) ** 2 for at, height in zip(rates, heights)) / (count - 1)
    # One more reading: its own scatter, and what the line may be off there.
    swing = math.sqrt(off * (1 + rate**2 / math.fsum(at**2 for at in rates)))
    return rate * each + statistics.t_quantile((1 + confidence) / 2, count - 1) * swing


def _each(rates: CandleRates, heights: FlameHeights) -> float:
    products = math.fsum(rate * height for rate, height in zip(rates, heights))
    return products / math.fsum(rate**2 for rate in rates)
