"""Words of planning: what to buy, what to make for a season, and when."""

from datetime import date
from typing import Annotated, List, Literal, Optional, Sequence

from candlecalc.calc.terms import PERCENT
from candlecalc.declaration.term import LARGEST, Term

# Buying
Demand = Annotated[
    float, Term("", "how much is used or sold over the time planned for: a year, a season", goods="alike")
]
Ordering = Annotated[
    float, Term("money", "what an order costs whatever its size: delivery, handling, the time it takes")
]
Holding = Annotated[
    float,
    Term(
        "money per unit",
        "cost to keep one unit for the whole of that time: money tied up, room, losses",
        low_excluded=True,
    ),
]
HoldingShare = Annotated[
    float,
    Term(
        "of the price",
        "cost to keep a unit for the whole of that time, as a share of its price",
        high=1.0,
        low_excluded=True,
        hint=PERCENT,
    ),
]
OrderQuantity = Annotated[float, Term("", "how much to order at a time, in the unit that demand is in", goods="alike")]
OrderedQuantity = Annotated[
    float, Term("", "how much is ordered at a time, in the unit that demand is in", low_excluded=True, goods="alike")
]
UnitPrice = Annotated[float, Term("money per unit", "price of one unit at that quantity")]
Breaks = Annotated[
    Sequence[float],
    Term("", "smallest quantity that each price holds from, rising; 0 or 1 for the first", many=True, goods="alike"),
]
BreakPrices = Annotated[
    Sequence[float],
    Term(
        "money per unit",
        "price of one unit from each of these quantities up, on all that is bought",
        low_excluded=True,
        many=True,
    ),
]
Needed = Annotated[float, Term("", "how much is needed", goods="alike")]
OnHand = Annotated[float, Term("", "how much is on hand", goods="alike")]
Pack = Annotated[float, Term("", "how much a pack holds, in the same unit", low_excluded=True, goods="alike")]
Packs = Annotated[float, Term("", "how many packs", high=1e6, whole=True, noun="packs")]
PacksNeeded = Annotated[float, Term("", "whole packs that are needed at least", high=1e6, whole=True)]
PackPrice = Annotated[float, Term("money", "price of a pack")]
FromPacks = Annotated[float, Term("", "the number of packs from which each is cheaper", high=1e6, whole=True)]

# Ordering again
StockLevel = Annotated[float, Term("", "how much to have, in the unit that demand is in", goods="alike", rounding="up")]
DemandRate = Annotated[float, Term("", "how much is used or sold in a day or a week on average", goods="alike")]
LeadTime = Annotated[float, Term("", "days or weeks from ordering to having it, in the unit of demand", high=1e4)]
RunOut = Annotated[
    float,
    Term(
        "of the orders",
        "share of orders during which running out is accepted",
        high=0.5,
        low_excluded=True,
        hint=PERCENT,
    ),
]
DemandSpread = Annotated[
    float, Term("", "standard deviation of what is used or sold in a day or a week; 0 if it is steady", goods="alike")
]
LeadSpread = Annotated[
    float, Term("", "standard deviation of the days or weeks that an order takes; 0 if they are always the same")
]

# One season
SeasonPrice = Annotated[float, Term("money", "what one brings while the season lasts, after fees")]
SeasonCost = Annotated[float, Term("money", "what one costs to make")]
Leftover = Annotated[
    float,
    Term("money", "what one still brings after the season; minus if it costs money to be rid of", low=-LARGEST),
]
SeasonDemand = Annotated[float, Term("", "average number wanted in the season")]
SmallDemand = Annotated[
    float, Term("", "how many people will want in the season, on average; from 700 up use the normal one", high=700.0)
]
SeasonSpread = Annotated[
    float, Term("", "standard deviation of the number wanted, from season to season", low_excluded=True)
]
Records = Annotated[
    Sequence[float],
    Term("", "number wanted in each season like it; a season that sold out shows less than was wanted", many=True),
]
DemandKind = Annotated[
    Literal["normal", "Poisson", "records"],
    Term(
        "",
        "how the number wanted varies: normal around a mean, Poisson as buyers come one by one, or as your own records",
        choices=("normal", "Poisson", "records"),
    ),
]
SomeDemand = Annotated[
    Optional[float],
    Term("", "average number wanted in the season; for normal and Poisson", blank=True),
]
SomeSpread = Annotated[
    Optional[float],
    Term(
        "",
        "standard deviation of how many people want, from season to season; for normal",
        low_excluded=True,
        blank=True,
    ),
]
SomeRecords = Annotated[
    Optional[Sequence[Optional[float]]],
    Term(
        "",
        "how many people wanted in each season like it, for records; one that sold out says too little",
        many=True,
        blank=True,
    ),
]
Stock = Annotated[
    float, Term("", "how many to have when the season starts", goods="alike", rounding="up", noun="candles")
]
WholeStock = Annotated[float, Term("", "how many to have when the season starts", high=1e5, whole=True)]

# Days
SaleDay = Annotated[date, Term("date", "the day it is to be sold or sent")]
Cure = Annotated[float, Term("days", "days that candles rest between pouring and finishing", high=365.0, whole=True)]
Evenings = Annotated[
    float, Term("", "working days or evenings that the pouring takes", low=1.0, high=365.0, whole=True)
]
Finishing = Annotated[
    float, Term("days", "working days to label, pack and carry before that day", high=365.0, whole=True)
]
PourDay = Annotated[date, Term("date", "the last day on which pouring can start")]
PouredDay = Annotated[date, Term("date", "the day on which they were poured")]
ReadyDay = Annotated[date, Term("date", "the day on which they have cured")]
Working = Annotated[str, Term("", 'the days you work: "Mon-Fri", "Tue Thu Sat", "weekends", "every day"', text=True)]
DaysOff = Annotated[
    Optional[Sequence[date]], Term("date", "days on which you do not work all the same", many=True, blank=True)
]
EveningsNeeded = Annotated[float, Term("", "how many evenings", high=1e6, whole=True, noun="evenings")]
PotsAnEvening = Annotated[float, Term("", "how many pots can be poured in an evening", low=1.0, high=1e4, whole=True)]

# Season by periods
SeasonSales = Annotated[
    Sequence[float], Term("", "how much is wanted in each week or month, in order", many=True, goods="alike")
]
Made = Annotated[
    Sequence[float], Term("", "how much is made in each week or month, in order", many=True, goods="alike")
]
Keep = Annotated[
    Sequence[float], Term("", "how much is to be left at the end of each, in order", many=True, goods="alike")
]
ByPeriod = Annotated[List[float], Term("", "how much in each week or month, in order", many=True, goods="alike")]
Opening = Annotated[float, Term("", "how much is there at the start", goods="alike")]
Closing = Annotated[float, Term("", "how much is to be left at the end", goods="alike")]
PeriodRate = Annotated[float, Term("", "how much to make in each week or month", rounding="up", goods="alike")]
MakingEach = Annotated[float, Term("money per unit", "what making one costs")]
KeepingEach = Annotated[float, Term("money per unit", "what keeping one from a week or month to the next costs")]
Raising = Annotated[
    float,
    Term("money per unit", "what it costs to make one more than in the week or month before, such as finding help"),
]
Lowering = Annotated[float, Term("money per unit", "what it costs to make one fewer than in the week or month before")]
Usual = Annotated[
    Optional[float],
    Term(
        "", "how much was made in the one before the first; blank if starting costs nothing", blank=True, goods="alike"
    ),
]
SetUp = Annotated[float, Term("money", "what a batch costs whatever its size: setting up, cleaning, an evening taken")]
PlanName = Annotated[
    str,
    Term("", "the same amount all the time, or as much as is wanted each time", choices=("level", "follow demand")),
]

# Sharing what is scarce
Available = Annotated[float, Term("", "how much there is to share out", goods="alike")]
Wants = Annotated[Sequence[float], Term("", "how much each one wants, in the same unit", many=True, goods="alike")]
WholeStep = Annotated[
    float,
    Term(
        "",
        "the smallest amount that is handed out: 1 for pieces, 50 for steps of 50 g",
        low_excluded=True,
        goods="alike",
    ),
]
Given = Annotated[List[float], Term("", "how much each one gets, in the order of the list", many=True, goods="alike")]

# Net requirements: three small tables and one more of what is coming, a list a column
Items = Annotated[
    Sequence[str],
    Term("", "every product and material, once each: table of items, first column", text=True, many=True, blank=True),
]
ItemsOnHand = Annotated[Sequence[Optional[float]], Term("", "how much of each item is on hand", many=True, blank=True)]
ItemPacks = Annotated[
    Sequence[Optional[float]],
    Term("", "what each item is bought or made in; blank for any amount", low_excluded=True, many=True, blank=True),
]
ItemLeads = Annotated[
    Sequence[Optional[float]],
    Term(
        "", "weeks from ordering or starting to having each item; blank for none", high=520.0, whole=True, many=True,
        blank=True,
    ),
]  # fmt: skip
Products = Annotated[
    Sequence[str],
    Term("", "what is made: table of recipe lines, first column", text=True, many=True, blank=True),
]
RecipeParts = Annotated[
    Sequence[str], Term("", "a material, or a product made before, that goes into it", text=True, many=True, blank=True)
]
RecipeAmounts = Annotated[
    Sequence[float],
    Term("", "how much of the part goes into one of the product", low_excluded=True, many=True, blank=True),
]
Wanted = Annotated[
    Sequence[str],
    Term("", "what is wanted: table of what is to be ready, first column", text=True, many=True, blank=True),
]
WantedWeeks = Annotated[
    Sequence[float],
    Term("", "the week by which it is wanted, counted from 1", low=1.0, high=520.0, whole=True, many=True, blank=True),
]
WantedAmounts = Annotated[Sequence[float], Term("", "how much of it is wanted then", many=True, blank=True)]
Coming = Annotated[
    Optional[Sequence[str]],
    Term("", "what is on its way: table of deliveries, first column", text=True, many=True, blank=True),
]
ComingWeeks = Annotated[
    Optional[Sequence[float]],
    Term("", "the week in which it comes, counted from 1", low=1.0, high=520.0, whole=True, many=True, blank=True),
]
ComingAmounts = Annotated[Optional[Sequence[float]], Term("", "how much of it comes then", many=True, blank=True)]
ItemName = Annotated[str, Term("", "product or material", text=True)]
StartWeek = Annotated[float, Term("", "the week in which to order or start it", low=-LARGEST, whole=True)]
ReadyWeek = Annotated[float, Term("", "the week by which it must be there", low=-LARGEST, whole=True)]
Note = Annotated[Optional[str], Term("", "what to know about it", text=True, blank=True)]
