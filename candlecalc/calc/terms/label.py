"""Words of labels and of weighing packages."""

from typing import Annotated, List, Literal, Sequence

from candlecalc.declaration.term import LARGEST, Term

NetWeight = Annotated[
    float, Term("g", "net weight to declare: wax and oil, no vessel, lid or wick tab", low=5.0, high=25_000.0)
]
Content = Annotated[float, Term("g", "net weight that a package holds or may hold", high=25_000.0, rounding="up")]
Ounces = Annotated[float, Term("", "the declaration in ounces: 16 for 1 lb", high=1000.0)]
Grams = Annotated[float, Term("g", "the declaration in grams", high=25_000.0, rounding="up")]
WholeOunces = Annotated[float, Term("", "ounces to declare, rounded down", high=1000.0, rounding="down", noun="ounce")]
WholeGrams = Annotated[float, Term("", "grams to declare, rounded down", high=25_000.0, rounding="down", noun="gram")]
Decimals = Annotated[
    float,
    Term(
        "",
        "decimals of the ounces at most; the rest is left off, so that the label never says too much",
        high=2.0,
        whole=True,
    ),
]
Declaration = Annotated[str, Term("", "the declaration as it may be printed", text=True)]
Note = Annotated[str, Term("", "what it rests on, and what to check", text=True)]
Height = Annotated[float, Term("mm", "least height of the figures", rounding="up")]
PanelShape = Annotated[
    Literal["flat", "round", "round lid"],
    Term(
        "",
        "a flat side or lid of the package, the side of a round one, or a round lid that the buyer sees first",
        choices=("flat", "round", "round lid"),
    ),
]
PanelHeight = Annotated[
    float, Term("mm", "height of the side that is shown; of a lid how far it is across", low=10.0, high=2000.0)
]
PanelAround = Annotated[
    float,
    Term(
        "mm",
        "width of a flat side; of a round package all the way around; of a lid how far it is across the other way",
        low=15.0,
        high=5000.0,
    ),
]
PanelArea = Annotated[float, Term("cm2", "area of the side that is shown to the buyer", high=1e6)]
# Smaller sides than a tea light's carry no weight of their own; up to 14 is an area in square inches.
ShownArea = Annotated[float, Term("cm2", "area of the side that is shown to the buyer", low=15.0, high=1e6)]
Region = Annotated[Literal["US", "EU", "GB"], Term("", "where its buyers live", choices=("US", "EU", "GB"))]
Standing = Annotated[
    str, Term("", "required by the standard, required for some types of candle, or optional", text=True)
]
Statement = Annotated[str, Term("", "what it says, in our words", text=True)]

ShortBy = Annotated[float, Term("g", "how far under the declared weight", rounding="down")]
MeasuringError = Annotated[float, Term("g", "error that weighing may have", rounding="down")]
ScaleStep = Annotated[float, Term("g", "the smallest step the scale shows", rounding="down")]
Tare = Annotated[float, Term("g", "vessel, lid, wick, label: all that is not sold by weight")]
Tares = Annotated[Sequence[float], Term("g", "weights of empty vessels with all that belongs to them", many=True)]
Gross = Annotated[float, Term("g", "weight of the whole package", rounding="up")]
Weighings = Annotated[Sequence[float], Term("g", "net weight of each package weighed", many=True)]
BatchSize = Annotated[float, Term("", "how many packages the batch has", low=1.0, high=1e6, whole=True)]
SampleSize = Annotated[float, Term("", "how many packages to weigh", low=1.0, high=1e6, whole=True, noun="packages")]
Weighed = Annotated[float, Term("", "how many packages were weighed", low=1.0, high=1000.0, whole=True)]
ShortCount = Annotated[float, Term("", "how many packages are short", high=1e6, whole=True, noun="packages")]
Mean = Annotated[float, Term("g", "average net weight of those that the plan averages")]
MeanNeeded = Annotated[float, Term("g", "the least that their average net weight may be", rounding="up")]
MeanError = Annotated[float, Term("g", "average net weight less the declared one", low=-LARGEST)]
Spread = Annotated[float, Term("g", "sample standard deviation of the weighings")]
Factor = Annotated[
    float,
    Term(
        "",
        "how many standard deviations the mean may lie under the declared weight",
        rounding="down",
        noun="deviations",
    ),
]
Verdict = Annotated[str, Term("", "what the weighings say", text=True)]
Marks = Annotated[List[str], Term("", "statements", text=True, many=True)]
