"""Cooling of a stirred pot, between two readings and above the melting range.

A poured candle does not follow this: it is colder at the wall than inside, and holds its temperature as
it sets. Between its two readings a pot follows it closely; how far it may be off later, `cooling_forecast` says.
"""

import itertools
import math
from typing import List, NamedTuple, Optional

from candlecalc.calc.sources import COOLING, STILL_AIR
from candlecalc.calc.terms.heat import (
    After,
    Between,
    Cooled,
    Cooler,
    CoolingConstant,
    CoolingNote,
    CoolingTime,
    FirstReading,
    Melting,
    ReadingError,
    Room,
    SecondReading,
    SomeCoolingTime,
)
from candlecalc.declaration.declared import formula

READINGS = {
    "first > second": "the first reading must be the warmer one",
    "second > room": "both readings must be above the room",
    "second >= melting": "both readings must lie above the melting range: wax that sets gives up heat of its own",
}


@formula(native="LN((first-room)/(second-room))/minutes", requires=READINGS, source=COOLING, part=True)
def cooling_constant(
    first: FirstReading, second: SecondReading, minutes: Between, room: Room, melting: Melting
) -> CoolingConstant:
    """How quickly a stirred pot of melted wax cools, from two readings.

    It compares pots, lids and rooms; it says nothing of a poured candle.

    >>> round(cooling_constant(first=80, second=70, minutes=20, room=20, melting=55), 5)
    0.00912
    """
    return math.log((first - room) / (second - room)) / minutes


@formula(
    native="minutes*LN((first-room)/(temperature-room))/LN((first-room)/(second-room))",
    requires={
        **READINGS,
        "temperature <= first": "it holds between the two readings only: the temperature is above the first",
        "temperature >= second": "it holds between two readings: for a cooler one to come use cooling_forecast",
    },
    source=COOLING,
    words="how long to cool, cool down, pouring temperature reached",
)
def cooling_time(
    first: FirstReading, second: SecondReading, minutes: Between, room: Room, melting: Melting, temperature: Cooled
) -> CoolingTime:
    """Minutes after the first reading at which a stirred pot came down to a temperature between the two.

    For a cooler temperature that is still to come use `cooling_forecast`.

    >>> round(cooling_time(first=80, second=70, minutes=20, room=20, melting=55, temperature=75), 1)
    9.5
    """
    return minutes * math.log((first - room) / (temperature - room)) / math.log((first - room) / (second - room))


@formula(
    native="room+(first-room)*((second-room)/(first-room))^(after/minutes)",
    requires={**READINGS, "after <= minutes": "it holds between the two readings only: the time is after the second"},
    source=COOLING,
    words="how warm is the pot now",
)
def cooling_temperature(
    first: FirstReading, second: SecondReading, minutes: Between, room: Room, melting: Melting, after: After
) -> Cooled:
    """Temperature of a stirred pot at a time between two readings.

    >>> round(cooling_temperature(first=80, second=70, minutes=20, room=20, melting=55, after=10), 1)
    74.8
    """
    return room + (first - room) * math.pow((second - room) / (first - room), after / minutes)


class CoolingForecast(NamedTuple):
    """When a pot will be at a cooler temperature: as expected, at the soonest, at the latest, and what to know."""

    expected: CoolingTime
    soonest: CoolingTime
    latest: SomeCoolingTime
    note: CoolingNote


@formula(
    requires={
        **READINGS,
        "temperature <= second": "the temperature must not be above the second reading: for that use cooling_time",
        "temperature >= melting": "below the melting range no time can be told: wax that sets gives up heat of its own",
        "temperature > room": "a pot does not come down to the room's own temperature",
    },
    source=f"{COOLING}; {STILL_AIR}",
    words="when can I pour, pour temperature, wait to cool, cool down to pour, how long until the wax is cool",
)
def cooling_forecast(
    first: FirstReading,
    second: SecondReading,
    minutes: Between,
    room: Room,
    melting: Melting,
    temperature: Cooler,
    reading: ReadingError = 0.5,
) -> CoolingForecast:
    """When a stirred pot will have cooled to a temperature still to come, in minutes after the first reading.

    Expected by Newton's law. The soonest and the latest assume each reading is off by its most, the worst way;
    the latest also assumes still air, where the pot loses heat more slowly as it cools. A lid put on, a draught or a
    hot plate under it upsets all of that: read the pot again on the way.

    >>> round(cooling_forecast(first=80, second=70, minutes=20, room=20, melting=55, temperature=65).latest, 1)
    36.0
    """
    expected = minutes * _newton(first - room, second - room, temperature - room)
    times = _at_the_worst(minutes, first - room, second - room, temperature - room, reading)
    latest = None if None in times else max(time for time in times if time is not None)
    soonest = min([time for time in times if time is not None] or [expected])
    notes = ["what may be off is the readings and how the pot loses its heat; read the pot again on the way"]
    if latest is None:
        notes.append("the readings are too near each other, or to the room, to say how late: wait for a second one")
    if expected > 2 * minutes:
        notes.append("drawn on further than the readings lie apart")
    return CoolingForecast(expected, max(minutes, soonest), latest, "; ".join(notes))


def _at_the_worst(minutes: float, first: float, second: float, wanted: float, off: float) -> List[Optional[float]]:
    """The times by either law with each reading off to either side; None where the pot would not cool at all.

    All are above the room, whose own reading may be off as well: to both sides of that, all three move together.
    """
    times: List[Optional[float]] = []
    for signs in itertools.product((-off, off), repeat=4):
        hot, cool, aim = (above + sign - signs[3] for above, sign in zip((first, second, wanted), signs))
        cooling = hot > cool > 0 < aim
        for law in (_newton, _still_air):
            times.append(minutes * law(hot, cool, min(aim, cool)) if cooling else None)
    return times


def _newton(first: float, second: float, wanted: float) -> float:
    """How many times the span of the readings it takes, where loss is as how much warmer the pot is than the room."""
    return math.log(first / wanted) / math.log(first / second)


def _still_air(first: float, second: float, wanted: float) -> float:
    """The same where loss is as the 5/4 power of it."""
    start = math.pow(first, -0.25)
    return (math.pow(wanted, -0.25) - start) / (math.pow(second, -0.25) - start)
