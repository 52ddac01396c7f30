"""Burning time: how long a fill burns, how many hours are left, and what an hour costs and warms."""

import math
from typing import Annotated, NamedTuple, Tuple

from candlecalc.calc.burn import FALLING, STRAY, THREE, WITHOUT_INTERVAL, swing_of, told_of
from candlecalc.calc.sources import ALGEBRA, BURNING, GEOMETRY, INVERSE, PRACTICE, REGRESSION
from candlecalc.calc.terms import Cost, Density, Fill, Length
from candlecalc.calc.terms.burn import (
    BurnHours,
    BurnRate,
    Confidence,
    CostPerHour,
    EndWeight,
    FastestBurn,
    HeatGiven,
    HeatOfBurning,
    Hours,
    LabelHours,
    LeftEnd,
    Note,
    Rate,
    SomeHours,
    SomeLabel,
    SomeLeft,
    SomeTime,
    Stays,
    StopDepth,
    Weighings,
)
from candlecalc.declaration.declared import Term, formula
from candlecalc.quantities import statistics
from candlecalc.quantities.rounding import round_half_away

TOO_ROUGH = "the weighings are too rough to say when; weigh on"


@formula(
    native="PI()/4*diameter^2*depth/1000*density",
    source=f"{GEOMETRY}; the depth: {PRACTICE}",
    words="stop burning with half an inch left, wax left at the bottom, when to stop burning",
)
def wax_that_stays(diameter: Length, density: Density, depth: StopDepth = 13.0) -> Stays:
    """Wax that stays in a round vessel when burning has to stop, by the depth that is left.

    Fire departments say to stop at half an inch (13 mm) in a container. For
    another shape take a volume function and `fill_weight`.

    >>> round(wax_that_stays(diameter=75, density=0.9), 1)
    51.7
    """
    return math.pi / 4 * diameter**2 * depth / 1000 * density


STAYS_LESS = {"stays <= fill": "more wax cannot stay than was poured"}


@formula(
    native="(fill-stays)/rate",
    requires=STAYS_LESS,
    source=ALGEBRA,
    words="total burn time, total burn time estimate, how long does it burn, hours of burning, burn hours, burn life",
)
def burn_time(fill: Fill, rate: Rate, stays: Stays = 0.0) -> Hours:
    """Hours that a fill burns at a rate; `stays` is the wax left when burning has to stop.

    >>> burn_time(fill=220, rate=4, stays=52)
    42.0
    """
    return (fill - stays) / rate


@formula(
    native="INT(ROUND((fill-stays)/fastest,6))",
    requires=STAYS_LESS,
    source=ALGEBRA,
    words="hours on the label, burn time for the label, burn time claim, approximate burn time",
)
def label_hours(fill: Fill, fastest: FastestBurn, stays: Stays = 0.0) -> LabelHours:
    """Hours of burning for a label: at the fastest rate, rounded down to whole hours.

    Take `fastest_candle`, or the high end of one candle's rate; the mean rate
    promises too much to half of the buyers.

    >>> label_hours(fill=220, fastest=4.75, stays=52)
    35.0
    """
    return math.floor(round_half_away((fill - stays) / fastest, 6))


class TimeBetween(NamedTuple):
    """Hours of burning, the interval they lie in, the whole hours for a label, and what to know."""

    hours: Annotated[float, Term("h", "hours that the fill burns")]
    low: SomeTime
    high: SomeTime
    label: SomeLabel
    note: Note


@formula(
    requires={**FALLING, **STAYS_LESS},
    source=REGRESSION,
    words="burn time from test burns, how long will it burn, test burn log, hours for the label",
)
def burn_time_from_log(
    hours: BurnHours, weights: Weighings, fill: Fill, stays: Stays = 0.0, confidence: Confidence = 0.95
) -> TimeBetween:
    """How long a candle burns, from a log of weighings: hours, their interval, and whole hours for a label.

    The label's hours are the low end, rounded down; with two weighings there
    are none.

    >>> burn_time_from_log(hours=[0, 4, 8, 12], weights=[612, 596, 581, 563], fill=220, stays=52).label
    37.0
    """
    line = statistics.line(hours, weights)
    rate, swing, burnt = -line.slope, swing_of(line, confidence), fill - stays
    if swing is None:
        return TimeBetween(burnt / rate, None, None, None, f"{WITHOUT_INTERVAL} before you put hours on a label")
    low, note = burnt / (rate + swing), told_of(line.readings, confidence) + "; candles differ, so burn several"
    high = burnt / (rate - swing) if swing < rate else None
    return TimeBetween(burnt / rate, low, high, float(math.floor(round_half_away(low, 6))), note)


# The Fieller interval: `away` is where the line comes to the end weight, counted from the mean of the hours.
AWAY = "((AVERAGE(weights)-end)/-SLOPE(weights,hours))"
REACH = f"({STRAY}/SLOPE(weights,hours))"
LEVEL = f"({REACH}^2/DEVSQ(hours))"
HALF = f"ABS({REACH})*SQRT((1+1/COUNT(hours))*(1-{LEVEL})+{AWAY}^2/DEVSQ(hours))"
ENDS = {sign: f"IF({LEVEL}<1,AVERAGE(hours)-MAX(hours)+({AWAY}{sign}{HALF})/(1-{LEVEL}),NA())" for sign in "-+"}


@formula(
    native=f"AVERAGE(hours)-MAX(hours)+{AWAY}",
    requires=FALLING,
    source=REGRESSION,
    words="how much longer will it burn, remaining burn time",
)
def hours_left(hours: BurnHours, weights: Weighings, end: EndWeight) -> Hours:
    """Hours left after the last weighing until the candle is down to its stopping weight.

    The line is extended past the log: how far off it may be grows with every hour
    beyond, as `hours_left_between` shows.

    >>> round(hours_left(hours=[0, 4, 8, 12], weights=[612, 596, 581, 563], end=444), 1)
    29.6
    """
    return _left(statistics.line(hours, weights).where(end), hours)


def _left(when: float, hours: BurnHours) -> float:
    return when - max(hours)


@formula(native=ENDS["-"], requires=THREE, source=INVERSE, part=True)
def hours_left_low(hours: BurnHours, weights: Weighings, end: EndWeight, confidence: Confidence = 0.95) -> LeftEnd:
    """The fewest hours that may be left, as far as the log can tell; below 0 the end may be reached already.

    >>> round(hours_left_low(hours=[0, 4, 8, 12], weights=[612, 596, 581, 563], end=444), 1)
    25.8
    """
    line = statistics.line(hours, weights)
    return _left(_ends("hours_left_low", line, end, confidence)[0], hours)


@formula(native=ENDS["+"], requires=THREE, source=INVERSE, part=True)
def hours_left_high(hours: BurnHours, weights: Weighings, end: EndWeight, confidence: Confidence = 0.95) -> LeftEnd:
    """The most hours that may be left, as far as the log can tell.

    >>> round(hours_left_high(hours=[0, 4, 8, 12], weights=[612, 596, 581, 563], end=444), 1)
    34.2
    """
    line = statistics.line(hours, weights)
    return _left(_ends("hours_left_high", line, end, confidence)[1], hours)


def _ends(name: str, line: statistics.Line, end: float, confidence: float) -> Tuple[float, float]:
    found = line.where_between(end, confidence)
    if found is None:
        raise ValueError(f"{name}: {TOO_ROUGH}.")
    return found


class LeftBetween(NamedTuple):
    """Hours left, the interval they lie in, and what to know about it."""

    left: Hours
    low: SomeLeft
    high: SomeLeft
    note: Note


@formula(
    requires=FALLING,
    source=INVERSE,
    words="how much longer will it burn, remaining burn time",
)
def hours_left_between(
    hours: BurnHours, weights: Weighings, end: EndWeight, confidence: Confidence = 0.95
) -> LeftBetween:
    """Hours left after the last weighing, with an interval that allows for extending the line.

    >>> hours_left_between(hours=[0, 4, 8, 12], weights=[612, 596, 581, 563], end=444).note
    '95 % interval, 4 weighings of one candle; drawn on further than the log is long: weigh on'
    """
    line = statistics.line(hours, weights)
    left = _left(line.where(end), hours)
    if line.readings < 3:
        return LeftBetween(left, None, None, WITHOUT_INTERVAL)
    note = told_of(line.readings, confidence)
    if left > max(hours) - min(hours):
        note += "; drawn on further than the log is long: weigh on"
    between = line.where_between(end, confidence)
    if between is None:
        return LeftBetween(left, None, None, f"{note}; {TOO_ROUGH}")
    low, high = (_left(when, hours) for when in between)
    return LeftBetween(left, low, high, note)


@formula(
    native="cost/hours",
    source=ALGEBRA,
    words="cost per hour of burning, value for money",
)
def cost_per_burn_hour(cost: Cost, hours: SomeHours) -> CostPerHour:
    """What an hour of burning costs.

    >>> cost_per_burn_hour(cost=8.4, hours=42)
    0.2
    """
    return cost / hours


@formula(
    native="rate*heat/3.6",
    source=BURNING,
    words="watts of a candle, does a candle warm a room",
)
def burn_heat(rate: BurnRate, heat: HeatOfBurning = 43.5) -> HeatGiven:
    """Heat that a candle gives to the room: some 12 W for each gram of paraffin an hour.

    Vegetable waxes give about 37 MJ/kg, some 10 W. It says nothing of how high the flame is.

    >>> round(burn_heat(rate=6), 1)
    72.5
    """
    return rate * heat / 3.6
