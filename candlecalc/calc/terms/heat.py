"""The words of wax and heat."""

from typing import Annotated, List, Optional, Sequence

from candlecalc.calc.terms import PERCENT
from candlecalc.declaration.term import Term

# Nobody who makes candles has wax hotter than this: above it a melt is in degrees F. Common practice, no source.
COLDEST, HOTTEST = -50.0, 160.0
WARMEST_ROOM = 45.0
# A neat oil, and a wax, that take more heat than this to flash are not known to the trade: common practice, no source.
HIGHEST_OIL_FLASH, HIGHEST_WAX_FLASH = 180.0, 350.0

# Blends and setting
WaxShares = Annotated[
    Sequence[float],
    Term("of the blend", "share of each wax or additive in the blend; together 1", high=1.0, hint=PERCENT, many=True),
]
Waxes = Annotated[List[float], Term("g", "each wax or additive to weigh out, in the order of the shares", many=True)]
Densities = Annotated[
    Sequence[float],
    Term("g/ml", "density of each, all at one temperature", low=0.5, high=1.5, many=True),
]
HotDensity = Annotated[float, Term("g/ml", "density of the melted wax as it is poured", low=0.5, high=1.5)]
SetDensity = Annotated[float, Term("g/ml", "density of the wax once it has set and cooled", low=0.5, high=1.5)]
Shrinkage = Annotated[
    float, Term("of the volume poured", "how much the wax draws together as it sets", high=0.5, hint=PERCENT)
]
TopUp = Annotated[float, Term("g", "scented wax for a second pour, as hot as the first")]
Expansion = Annotated[
    float, Term("per C", "how much a melted wax swells for each degree C, as a share of its volume", high=0.002)
]

# Temperatures, and how far apart they are
Temperature = Annotated[float, Term("C", "a temperature", low=COLDEST, high=HOTTEST)]
Celsius = Annotated[float, Term("C", "a temperature in degrees Celsius", low=-273.15, high=1e6)]
Fahrenheit = Annotated[float, Term("F", "a temperature in degrees Fahrenheit", low=-459.67, high=2e6)]
CelsiusDifference = Annotated[
    float, Term("C difference", "how far two temperatures are apart, in degrees Celsius", low=-1e6, high=1e6)
]
FahrenheitDifference = Annotated[
    float, Term("F difference", "how far two temperatures are apart, in degrees Fahrenheit", low=-2e6, high=2e6)
]
Start = Annotated[float, Term("C", "temperature before it is heated", low=COLDEST, high=HOTTEST)]
End = Annotated[float, Term("C", "temperature it is brought to", low=COLDEST, high=HOTTEST)]
Melting = Annotated[
    float,
    Term(
        "C",
        "temperature at which the last of the wax is melted: the upper end of its melting range",
        low=COLDEST,
        high=HOTTEST,
    ),
]
Room = Annotated[float, Term("C", "temperature of the room", low=-20.0, high=WARMEST_ROOM)]
OilTemperature = Annotated[float, Term("C", "temperature of the oil before it goes in", low=COLDEST, high=100.0)]
Hot = Annotated[float, Term("C", "temperature of the melted wax before the oil goes in", low=COLDEST, high=HOTTEST)]
Mixed = Annotated[float, Term("C", "temperature of wax and oil together", low=COLDEST, high=HOTTEST)]
Ceiling = Annotated[
    Optional[float],
    Term(
        "C",
        "highest temperature that the supplier states for the wax; blank where none is known",
        low=COLDEST,
        high=HOTTEST,
        blank=True,
    ),
]
WaxFlash = Annotated[
    Optional[float],
    Term(
        "C",
        "flash point of the wax by its data sheet; blank where none is known",
        low=COLDEST,
        high=HIGHEST_WAX_FLASH,
        blank=True,
    ),
]
OilFlash = Annotated[
    Optional[float],
    Term(
        "C",
        "flash point of the neat oil by its safety data sheet; blank where none is known",
        low=COLDEST,
        high=HIGHEST_OIL_FLASH,
        blank=True,
    ),
]
Near = Annotated[float, Term("C difference", "how near a flash point is warned of", high=100.0)]
Cautions = Annotated[List[str], Term("", "what to mind, a line each", text=True, many=True)]

# Heat
Heated = Annotated[float, Term("g", "weight of what is heated: a wax, a pot, the water of a bath")]
SpecificHeat = Annotated[
    float, Term("kJ/(kg C)", "heat that warms a kilogram of it by one degree C", high=10.0, low_excluded=True)
]
SolidHeat = Annotated[
    float, Term("kJ/(kg C)", "heat that warms a kilogram of set wax by one degree C", high=10.0, low_excluded=True)
]
LiquidHeat = Annotated[
    float, Term("kJ/(kg C)", "heat that warms a kilogram of melted wax by one degree C", high=10.0, low_excluded=True)
]
OilHeat = Annotated[
    float, Term("kJ/(kg C)", "heat that warms a kilogram of oil by one degree C", high=10.0, low_excluded=True)
]
LatentHeat = Annotated[float, Term("kJ/kg", "heat that melts a kilogram of it once it is warm enough", high=1000.0)]
SpecificHeats = Annotated[
    Sequence[float],
    Term("kJ/(kg C)", "specific heat of each, all set or all melted", high=10.0, low_excluded=True, many=True),
]
LatentHeats = Annotated[Sequence[float], Term("kJ/kg", "latent heat of each", high=1000.0, many=True)]
Heat = Annotated[float, Term("kJ", "heat that has to get into it")]
Power = Annotated[float, Term("W", "power of the heater, as its plate states it", low=10.0, high=1e5)]
Efficiency = Annotated[
    float,
    Term(
        "of the heater's power", "share of the power that gets into the wax", high=1.0, low_excluded=True, hint=PERCENT
    ),
]
HeatingTime = Annotated[float, Term("min", "how long the heater was on", high=1e6, low_excluded=True)]
TimeNeeded = Annotated[float, Term("min", "how long the heater is on")]

# Cooling
FirstReading = Annotated[float, Term("C", "first reading of the stirred pot", high=HOTTEST)]
SecondReading = Annotated[float, Term("C", "second reading of the stirred pot", high=HOTTEST)]
Cooled = Annotated[float, Term("C", "a temperature between the two readings", high=HOTTEST)]
Cooler = Annotated[float, Term("C", "a cooler temperature, still to come", high=HOTTEST)]
ReadingError = Annotated[
    float,
    Term("C difference", "how far each reading may be off; 0.5 for a thermometer that shows whole degrees", high=10.0),
]
CoolingTime = Annotated[float, Term("min", "minutes after the first reading")]
SomeCoolingTime = Annotated[
    Optional[float], Term("min", "minutes after the first reading; blank where it cannot be told", blank=True)
]
CoolingNote = Annotated[str, Term("", "what to know about it", text=True)]
Between = Annotated[float, Term("min", "minutes from the first reading to the second", high=1e5, low_excluded=True)]
After = Annotated[float, Term("min", "minutes after the first reading", high=1e5)]
CoolingConstant = Annotated[
    float,
    Term("per min", "share of the gap to room temperature lost each minute, compounding", low_excluded=True),
]

# Of one density at another temperature
MeasuredAt = Annotated[Temperature, "temperature at which its density was measured"]
WantedAt = Annotated[Temperature, "temperature at which its density is wanted"]
