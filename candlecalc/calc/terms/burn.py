"""The words of burning: logs of weighings, melt pools and flames, and what a test burn shows."""

from typing import Annotated, List, Literal, Optional, Sequence

from candlecalc.calc.terms import PERCENT
from candlecalc.declaration.term import LARGEST, Term

# Logs of weighings
BurnHours = Annotated[
    Sequence[float],
    Term("h", "hours burnt up to each weighing, all burns of this candle counted together", high=10_000.0, many=True),
]
Weighings = Annotated[
    Sequence[float], Term("g", "what the candle weighed then, jar and all", high=100_000.0, many=True)
]
Confidence = Annotated[
    float,
    Term("of the time", "how often such an interval is to be right", low=0.5, high=0.999, hint=PERCENT),
]
Before = Annotated[float, Term("g", "what the candle weighed before the burn, jar and all")]
Afterwards = Annotated[float, Term("g", "what it weighed after the burn, jar and all")]
Hours = Annotated[float, Term("h", "hours of burning", high=1e6)]
SomeHours = Annotated[float, Term("h", "hours of burning", high=1e6, low_excluded=True)]
BurnRate = Annotated[float, Term("g/h", "wax burnt in an hour", high=1e6, low_excluded=True)]
# A flame of less than a gram an hour goes out; of an ounce an hour nobody has a wick. Common practice, no source.
SLOWEST, QUICKEST = 1.0, 500.0
Rate = Annotated[float, Term("g/h", "wax burnt in an hour", low=SLOWEST, high=QUICKEST)]
FastestBurn = Annotated[
    float, Term("g/h", "the fastest it may burn: the high end of the rate's interval", low=SLOWEST, high=QUICKEST)
]
RateEnd = Annotated[
    float, Term("g/h", "an end of the interval that the rate lies in; below 0 the log is too rough", low=-LARGEST)
]
LeftEnd = Annotated[
    float, Term("h", "an end of the interval that the hours left lie in; below 0 it is past", low=-LARGEST)
]
SomeLeft = Annotated[
    Optional[float],
    Term("h", "an end of the interval; below 0 it is past; blank where there is none", low=-LARGEST, blank=True),
]
Fastest = Annotated[
    float,
    Term(
        "g/h",
        "the fastest it may burn: the high end of the rate's interval",
        high=1e6,
        low_excluded=True,
        rounding="up",
    ),
]
CandleRates = Annotated[
    Sequence[float], Term("g/h", "rate of burning of each candle of one recipe", high=1e6, low_excluded=True, many=True)
]
Stays = Annotated[float, Term("g", "wax that stays in the vessel when burning stops")]
StopDepth = Annotated[float, Term("mm", "depth of wax at which burning stops", high=500.0)]
EndWeight = Annotated[
    float, Term("g", "what it weighs when burning has to stop: the jar, the wick and the wax that stays")
]
LabelHours = Annotated[float, Term("h", "whole hours for a label, rounded down", high=1e6, whole=True)]
HeatOfBurning = Annotated[
    float,
    Term("MJ/kg", "heat that a kilogram of it gives as it burns (lower heating value)", high=60.0, low_excluded=True),
]
HeatGiven = Annotated[float, Term("W", "heat that the flame gives to the room")]
CostPerHour = Annotated[float, Term("money per h", "what an hour of burning costs")]
Note = Annotated[str, Term("", "what to know about it", text=True)]
SomeEnd = Annotated[
    Optional[float], Term("g/h", "an end of the interval; blank where there is none", low=-LARGEST, blank=True)
]
SomeTime = Annotated[Optional[float], Term("h", "an end of the interval; blank where there is none", blank=True)]
SomeLabel = Annotated[
    Optional[float], Term("h", "hours for a label; blank where the log is too short", whole=True, blank=True)
]

# Melt pool and flame
LOWEST_FLAME = 4.0  # mm; what is lower drowns. 1 to 3 is a height in inches.
PoolHours = Annotated[Sequence[float], Term("h", "hours since lighting, at each reading", high=1000.0, many=True)]
PoolWidths = Annotated[
    Sequence[float], Term("mm", "how wide the melt pool was then, up to the wall", high=1000.0, many=True)
]
PoolGrowth = Annotated[float, Term("mm/h", "how much wider the melt pool gets in an hour", low_excluded=True)]
PoolTime = Annotated[float, Term("h", "hours from lighting until the melt pool reaches the wall")]
FlameHeights = Annotated[
    Sequence[float],
    Term("mm", "how high the flame was at each of these rates", low=LOWEST_FLAME, high=300.0, many=True),
]
Flame = Annotated[float, Term("mm", "height of the flame")]

# Test burns
Tallest = Annotated[
    Optional[float],
    Term("mm", "the tallest flame seen in the test; blank if not looked at", low=LOWEST_FLAME, high=500.0, blank=True),
]
OtherBurning = Annotated[
    Optional[float],
    Term(
        "s",
        "secondary ignition: the longest time that anything but the wick burnt; 0 for never; blank if not looked at",
        blank=True,
    ),
]
Afterglow = Annotated[
    Optional[float],
    Term("s", "the longest glow or smoke after putting out; blank if not looked at", blank=True),
]
VesselState = Annotated[
    Optional[Literal["whole", "cracked", "broken", "leaking"]],
    Term(
        "",
        "how the vessel came through; blank if not looked at",
        choices=("whole", "cracked", "broken", "leaking"),
        blank=True,
    ),
]
LitAgain = Annotated[
    Optional[Literal["no", "yes"]],
    Term("", "whether it lit again by itself after putting out; blank if not looked at", choices=("no", "yes"),
         blank=True),
]  # fmt: skip
MostFlame = Annotated[
    float, Term("mm", "tallest flame that is not a stop: 75 mm or 3 in; tea light 30 mm", low=10.0, high=76.2)
]
TargetNames = Annotated[
    Optional[List[Optional[str]]],
    Term("", "what the maker's own targets are for, such as burn rate or hours to the wall", text=True, many=True,
         blank=True),
]  # fmt: skip
Measured = Annotated[
    Optional[List[Optional[float]]],
    Term("", "what the test showed for each target; blank if not measured", low=-LARGEST, many=True, blank=True),
]
Lowest = Annotated[
    Optional[List[Optional[float]]],
    Term("", "the lowest that meets each target; blank for no lowest", low=-LARGEST, many=True, blank=True),
]
Highest = Annotated[
    Optional[List[Optional[float]]],
    Term("", "the highest that meets each target; blank for no highest", low=-LARGEST, many=True, blank=True),
]
VERDICTS = ("stop: do not sell or burn", "not judged", "misses the maker's targets", "meets the maker's targets")
Verdict = Annotated[str, Term("", "what the test comes to", choices=VERDICTS)]
Verdicts = Annotated[List[str], Term("", "the verdict on each piece burnt of one recipe", choices=VERDICTS, many=True)]
Reasons = Annotated[str, Term("", "why, in words", text=True)]

# The next wick
Wick = Annotated[List[str], Term("", "each wick the maker has or has tested, by the maker's name for it", text=True,
                                 many=True)]  # fmt: skip
WickKinds = Annotated[List[str], Term("", "the kind of each wick: wicks of a kind differ in size alone", text=True,
                                      many=True)]  # fmt: skip
WickSizes = Annotated[
    List[float], Term("", "size of each wick within its kind, in any order of size the maker keeps", many=True)
]
TestedWaxes = Annotated[
    List[Optional[str]],
    Term("", "the wax it was tested in; blank for a wick not tested yet", text=True, many=True, blank=True),
]
TestedLoads = Annotated[
    List[Optional[float]],
    Term("of wax weight", "the load it was tested at; blank for a wick not tested yet", high=0.5, hint=PERCENT,
         many=True, blank=True),
]  # fmt: skip
TestedVessels = Annotated[
    List[Optional[str]],
    Term("", "the vessel it was tested in; blank for a wick not tested yet", text=True, many=True, blank=True),
]
FINDINGS = ("too cool", "within targets", "too hot")
Findings = Annotated[
    List[Optional[str]],
    Term("", "how it burnt against the maker's own targets; blank if not tested", choices=FINDINGS, many=True,
         blank=True),
]  # fmt: skip
WantedWax = Annotated[str, Term("", "the wax of the recipe", text=True)]
WantedVessel = Annotated[str, Term("", "the vessel of the recipe", text=True)]
WantedKind = Annotated[str, Term("", "the kind of wick to stay within", text=True)]
NextWick = Annotated[
    Optional[str], Term("", "the wick to test next; blank where the tests name none", text=True, blank=True)
]

# What is seen on a burn
Seen = Annotated[
    List[str], Term("", "what was seen, such as soot, mushrooming, tunneling or drowning", text=True, many=True)
]
SomeSeen = Annotated[
    Optional[List[Optional[str]]],
    Term("", "what was seen, in the words of wick_signs; blank for nothing", text=True, many=True, blank=True),
]
Sign = Annotated[str, Term("", "what was seen", text=True)]
Direction = Annotated[
    str,
    Term(
        "",
        "which way the next test goes",
        choices=("stop", "a smaller wick", "a larger wick", "look at something else first"),
    ),
]
ToDo = Annotated[str, Term("", "what to do, and what else it may be", text=True)]
