"""Words of data sheets, hazard classes and their labels."""

from typing import Annotated, List, Literal, Optional, Sequence

from candlecalc.calc.terms import PERCENT
from candlecalc.declaration.term import Term

# A line of section 3 a row, each of these a column
Substances = Annotated[
    Sequence[Optional[str]],
    Term(
        "",
        "each substance in section 3 of the data sheet, one a line: its CAS number, its name, or both",
        text=True,
        many=True,
        blank=True,
    ),
]
Concentrations = Annotated[
    Sequence[Optional[str]],
    Term(
        "",
        'the concentration of each as printed: "1-5", ">= 1 - < 5 %", "<= 2,5"; its upper end is used',
        text=True,
        many=True,
        blank=True,
    ),
]
Classes = Annotated[
    Sequence[Optional[str]],
    Term(
        "",
        'the classes of each as printed: "Skin Sens. 1B H317; Aquatic Chronic 2 H411"',
        text=True,
        many=True,
        blank=True,
        own_semicolons=True,
    ),
]
Specifics = Annotated[
    Optional[Sequence[Optional[str]]],
    Term(
        "",
        'specific limits, M-factors and toxicity estimates of each as printed: "Skin Sens. 1B: C >= 0.5 %; M = 10; '
        'ATE (oral) = 500 mg/kg"; "ATE unknown" or "aquatic toxicity unknown" where the sheet says so',
        text=True,
        many=True,
        blank=True,
        own_semicolons=True,
    ),
]
OilNumbers = Annotated[
    Optional[Sequence[Optional[float]]],
    Term(
        "",
        "number of the oil or dye whose sheet the line is from, in the order of the loads; blank is 1",
        low=1.0,
        high=50.0,
        whole=True,
        many=True,
        blank=True,
    ),
]
Loads = Annotated[
    Sequence[Optional[float]],
    Term(
        "of wax weight",
        "load of each oil and dye in the candle, in the order of their numbers",
        high=0.5,
        hint=PERCENT,
        many=True,
        blank=True,
    ),
]
Dilutions = Annotated[
    Optional[Sequence[Optional[float]]],
    Term(
        "of the sample",
        "share of each oil in the sample that its sheet describes; 1 or blank where it describes the neat oil",
        high=1.0,
        low_excluded=True,
        hint=PERCENT,
        many=True,
        blank=True,
    ),
]
Viscosity = Annotated[
    Optional[str],
    Term("", 'kinematic viscosity at 40 C in mm2/s, or "solid" where it is solid then', text=True, blank=True),
]
Adding = Annotated[
    Literal["additive", "stricter"],
    Term(
        "",
        "how skin and eye are judged: added up, or also by the limits for aldehydes, phenols, acids, bases and "
        "surfactants, which do not add up; a matter for expert judgement",
        choices=("additive", "stricter"),
    ),
]
Region = Annotated[
    Literal["EU", "GB", "US"],
    Term("", "where the candle is sold: the rules are those of the EU", choices=("EU", "GB", "US")),
]
Uncertainty = Annotated[
    float,
    Term(
        "of the load",
        "how far the scale may put the load off, as a share of the load: load_swing over load",
        high=0.9,
        hint=PERCENT,
    ),
]
Holds = Annotated[
    Optional[float],
    Term("ml", "what the package holds: the weight of the candle over its density", low_excluded=True, blank=True),
]
Buyer = Annotated[
    Literal["public", "trade"], Term("", "who buys it: anybody, or trade alone", choices=("public", "trade"))
]
Names = Annotated[
    Optional[Sequence[Optional[str]]],
    Term("", "the substances behind the classes, as the label is to name them", text=True, many=True, blank=True),
]
Allergens = Annotated[
    Optional[Sequence[Optional[str]]],
    Term("", "sensitising substances named by EUH208 on the sheet", text=True, many=True, blank=True),
]

# What is read, found and put on the label
Typed = Annotated[str, Term("", "the substance as typed", text=True)]
Upper = Annotated[Optional[float], Term("of the oil", "the upper end of its concentration", high=1.0, blank=True)]
Read = Annotated[Optional[str], Term("", "what was read of it", text=True, blank=True)]
Unread = Annotated[Optional[str], Term("", "what was not read, and so is not counted", text=True, blank=True)]
Note = Annotated[Optional[str], Term("", "what to know about it", text=True, blank=True)]
Found = Annotated[str, Term("", "the class, or what else is to be said", text=True)]
Code = Annotated[Optional[str], Term("", "code of the hazard statement", text=True, blank=True)]
Statement = Annotated[Optional[str], Term("", "wording of the statement, fixed by law", text=True, blank=True)]
Amount = Annotated[
    Optional[float],
    Term("", "what was found: in % of the mixture, or an acute toxicity estimate", blank=True),
]
AmountLimit = Annotated[Optional[float], Term("", "the limit it is held against, in the same", blank=True)]
Why = Annotated[Optional[str], Term("", "the sum and its limit, with the substances", text=True, blank=True)]
Status = Annotated[Optional[str], Term("", "by which text, and what is unconfirmed", text=True, blank=True)]
Element = Annotated[str, Term("", "what of the label it is", text=True)]
Wording = Annotated[Optional[str], Term("", "what to put on the label, or to do", text=True, blank=True)]
Cautions = Annotated[List[str], Term("", "what to bear in mind", text=True, many=True)]

# Single numbers
InOil = Annotated[
    float, Term("of the oil", "share of the substance in the oil, the upper end of its range", high=1.0, hint=PERCENT)
]
ClassLimit = Annotated[
    float,
    Term("of the finished candle", "share from which the substance counts", high=1.0, low_excluded=True, hint=PERCENT),
]
LoadReached = Annotated[
    float, Term("of wax weight", "the load at which the limit is reached: stay below it", high=0.5, rounding="down")
]
Change = Annotated[
    float, Term("of the share it had", "change of a substance's share, up or down", high=1.0, rounding="down")
]
WaterToxicity = Annotated[
    float, Term("mg/l", "the lowest LC50, EC50 or NOEC in section 12 of the data sheet", high=1.0, low_excluded=True)
]
WaterTest = Annotated[
    Literal["acute", "chronic", "chronic, degradable"],
    Term(
        "",
        "which test: acute (LC50, EC50), chronic (NOEC), or chronic of a rapidly degradable substance",
        choices=("acute", "chronic", "chronic, degradable"),
    ),
]
MFactor = Annotated[float, Term("", "M-factor: what its share is multiplied by", low=1.0, noun="times")]
