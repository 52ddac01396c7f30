"""Cooling of a stirred pot, between two readings and above the melting range.

A poured candle does not follow this: it is colder at the wall than inside, and holds its temperature as
it sets. Neither does a pot outside the two readings that were taken of it.
"""

import math

from candlecalc.calc.sources import COOLING
from candlecalc.calc.terms.heat import (
    After,
    Between,
    Cooled,
    CoolingConstant,
    FirstReading,
    Melting,
    Room,
    SecondReading,
    TimeNeeded,
)
from candlecalc.formula import formula

READINGS = {
    "first > second": "the first reading must be the warmer one",
    "second > room": "both readings must be above the room",
    "second >= melting": "both readings must lie above the melting range: wax that sets gives up heat of its own",
}


@formula(native="LN((first-room)/(second-room))/minutes", requires=READINGS, source=COOLING)
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
        "temperature >= second": "it holds between the two readings only: the temperature is below the second",
    },
    source=COOLING,
)
def cooling_time(
    first: FirstReading, second: SecondReading, minutes: Between, room: Room, melting: Melting, temperature: Cooled
) -> TimeNeeded:
    """Minutes after the first reading at which a stirred pot comes down to a temperature between the two.

    >>> round(cooling_time(first=80, second=70, minutes=20, room=20, melting=55, temperature=75), 1)
    9.5
    """
    return minutes * math.log((first - room) / (temperature - room)) / math.log((first - room) / (second - room))


@formula(
    native="room+(first-room)*((second-room)/(first-room))^(after/minutes)",
    requires={**READINGS, "after <= minutes": "it holds between the two readings only: the time is after the second"},
    source=COOLING,
)
def cooling_temperature(
    first: FirstReading, second: SecondReading, minutes: Between, room: Room, melting: Melting, after: After
) -> Cooled:
    """Temperature of a stirred pot at a time between two readings.

    >>> round(cooling_temperature(first=80, second=70, minutes=20, room=20, melting=55, after=10), 1)
    74.8
    """
    return room + (first - room) * math.pow((second - room) / (first - room), after / minutes)
