"""The trade's vocabulary: each quantity, its unit, range and help, once."""

from typing import Annotated, List, Literal, Sequence

from candlecalc.declaration.term import LARGEST, Term

PERCENT = "Did you mean {:g}%?"

# Weights
Wax = Annotated[float, Term("g", "wax in the melt, before any oil")]
Oil = Annotated[float, Term("g", "fragrance oil to weigh out")]
Fill = Annotated[float, Term("g", "wax and oil together, as poured into a vessel or a batch")]
Dye = Annotated[float, Term("g", "dye to weigh out")]
Weight = Annotated[float, Term("g", "a weight, in any unit; the answer is in the same unit")]
Water = Annotated[float, Term("g", "the water the vessel holds to the brim, as weighed on a scale in air", low=10.0)]
Step = Annotated[float, Term("g", "the smallest step the scale shows", low_excluded=True, high=100.0)]

# Shares
Load = Annotated[
    float, Term("of wax weight", "fragrance load: oil as a share of wax weight (8% is 0.08)", high=0.5, hint=PERCENT)
]
HighestLoad = Annotated[
    float, Term("of wax weight", "the highest fragrance load: oil as a share of wax weight", high=0.5, rounding="down")
]
LoadSwing = Annotated[
    float, Term("of wax weight", "how far the load may lie either side of what was worked out", high=LARGEST)
]
LoadEnd = Annotated[
    float, Term("of wax weight", "an end of what the load can be, both readings half a step off", high=LARGEST)
]
TotalShare = Annotated[
    float,
    Term("of total weight", "fragrance oil as a share of wax and oil together", high=1 / 3, hint=PERCENT),
]
Part = Annotated[float, Term("of the blend", "share of one oil, or of one wax, in a blend", high=1.0, hint=PERCENT)]
DyeShare = Annotated[float, Term("of wax weight", "dye as a share of wax weight", high=0.1, hint=PERCENT)]
PaidShare = Annotated[float, Term("of the time", "share of the working time that is paid help", high=1.0, hint=PERCENT)]
Parts = Annotated[
    Sequence[float],
    Term("of the blend", "share of each oil in the blend; together 1", high=1.0, hint=PERCENT, many=True),
]
ShareOfCandle = Annotated[float, Term("of the finished candle", "share of the finished candle", high=1.0)]
HighestShare = Annotated[
    float, Term("of the finished candle", "the highest share of the finished candle", high=1.0, rounding="down")
]
Limit = Annotated[
    float,
    Term(
        "of the finished candle",
        "highest share of this oil in the finished candle by its certificate; 1 where it sets none",
        high=1.0,
        low_excluded=True,
        hint=PERCENT,
        rounding="down",
    ),
]
Limits = Annotated[
    Sequence[float],
    Term(
        "of the finished candle",
        "highest share of each oil in the finished candle by its certificate; 1 where it sets none",
        high=1.0,
        low_excluded=True,
        hint=PERCENT,
        many=True,
    ),
]
Highest = Annotated[
    float,
    Term("of the stated basis", "the supplier's highest load for this oil or wax", high=0.5, hint=PERCENT),
]
WaxHighest = Annotated[
    float, Term("of the stated basis", "the highest load that the wax's supplier states", high=0.5, hint=PERCENT)
]
OilHighest = Annotated[
    float, Term("of the stated basis", "the highest load that the oil's supplier states", high=0.5, hint=PERCENT)
]
DecidedBy = Annotated[str, Term("", "whose limit is the lowest, all of them where they are alike", text=True)]
LoadBasis = Annotated[
    Literal["of wax", "of total"],
    Term("", "what the supplier's highest load is a share of", choices=("of wax", "of total")),
]
Headspace = Annotated[
    float,
    Term("of the brimful volume", "share of the vessel left empty above the wax", high=0.9, hint=PERCENT),
]
Waste = Annotated[
    float,
    Term("of what is weighed out", "share lost in pots, jugs, wicks dipped and spills", high=0.5, hint=PERCENT),
]
GoodShare = Annotated[float, Term("of what was made", "share that came out good enough to sell", high=1.0)]

# Vessels
Length = Annotated[float, Term("mm", "an inside length of the vessel", low=10.0, high=2000.0)]
Side = Annotated[float, Term("mm", "inside length of one of its sides", low=5.0, high=2000.0)]
BaseRise = Annotated[
    float,
    Term("mm", "how high the floor is pushed up at its middle; minus where it bulges down", low=-200.0, high=200.0),
]
Sides = Annotated[float, Term("", "how many equal sides the vessel has", low=3.0, high=100.0, whole=True)]
Volume = Annotated[float, Term("ml", "a volume inside a vessel")]
Brimful = Annotated[float, Term("ml", "what the vessel holds to the brim", low=10.0, high=1e6)]
WaterTemperature = Annotated[float, Term("C", "temperature of the water", low=0.0, high=40.0)]
Density = Annotated[
    float, Term("g/ml", "weight of a millilitre of the wax, at the temperature it is filled", low=0.5, high=1.5)
]

Depth = Annotated[float, Term("mm", "how deep the wax is to stand above the floor", low=5.0, high=500.0)]
AnyVolume = Annotated[float, Term("ml", "how much of it, by volume", high=1e6)]
AnyDensity = Annotated[
    float, Term("g/ml", "weight of a millilitre of it, from its data sheet (relative density)", low=0.5, high=2.0)
]
Weighed = Annotated[float, Term("g", "what to weigh for it")]
Cavity = Annotated[float, Term("ml", "what one cavity of the mould holds", low_excluded=True, high=10_000.0)]

# Counts and time
Count = Annotated[float, Term("", "how many, a whole number", high=1e6, whole=True)]
Pots = Annotated[float, Term("", "how many pots", high=1e6, whole=True, noun="pots")]
Vessels = Annotated[float, Term("", "how many vessels", high=1e6, whole=True, noun="vessels")]
Candles = Annotated[float, Term("", "how many candles", high=1e6, whole=True, noun="candles")]
Pieces = Annotated[float, Term("", "how many pieces", high=1e6, whole=True, noun="pieces")]
Batch = Annotated[float, Term("", "how many candles are made together", low=1.0, high=1e6, whole=True)]
PerOrder = Annotated[float, Term("", "how many candles an order holds on average", low=1.0, high=1e6)]
People = Annotated[float, Term("", "how many people work at it", high=1000.0)]
Times = Annotated[float, Term("", "how many days or months of it there are", high=1e6)]
Minutes = Annotated[float, Term("min", "working time", high=1e6)]
Activity = Annotated[float, Term("h", "hours of work over the same time", high=1e6, low_excluded=True)]

GoodWanted = Annotated[float, Term("", "how many good ones are wanted", high=1e6, whole=True)]
GoodYield = Annotated[
    float,
    Term("of what is made", "share that comes out good enough to sell", low_excluded=True, high=1.0, hint=PERCENT),
]
TestCandles = Annotated[float, Term("", "how many test candles the recipe takes", high=1e4, whole=True)]
TestCost = Annotated[float, Term("money", "what one test candle costs: materials, and the time to make and burn it")]
SpreadOver = Annotated[float, Term("", "how many candles share that cost", low=1.0, high=1e6, whole=True)]
Coloured = Annotated[
    float,
    Term("g", "wax that one piece of dye colours as wanted, by its supplier or your own tests", low_excluded=True),
]
DyePieces = Annotated[float, Term("", "pieces of dye", noun="pieces")]
Cuts = Annotated[float, Term("", "parts that a piece is cut into: 1 for whole ones, 2 for halves, 4 for quarters",
                             low=1.0, high=16.0, whole=True)]  # fmt: skip

# Money
Money = Annotated[float, Term("money", "an amount of money")]
SignedMoney = Annotated[float, Term("money", "an amount of money; minus for a credit or a loss", low=-LARGEST)]
MoneyParts = Annotated[List[float], Term("money", "an amount for each line, in its order", low=-LARGEST, many=True)]
Amounts = Annotated[Sequence[float], Term("", "each line's value, weight or quantity", many=True, goods="alike")]
Prices = Annotated[Sequence[float], Term("money", "price of each product, before tax", many=True)]
Costs = Annotated[Sequence[float], Term("money", "what one more of each product costs", many=True)]
Mix = Annotated[Sequence[float], Term("", "how many of each product sell together", many=True)]
Cost = Annotated[float, Term("money", "what the candle costs")]
BatchCost = Annotated[float, Term("money", "what the whole batch costs")]
Price = Annotated[float, Term("money", "price before tax")]
LowestPrice = Annotated[float, Term("money", "the lowest price before tax", rounding="up")]
TaxedPrice = Annotated[float, Term("money", "price with tax in it")]
ShelfPrice = Annotated[float, Term("money", "price as the place states it, with tax in it or not")]
PackPrice = Annotated[float, Term("money", "price of the pack")]
PackSize = Annotated[
    float, Term("", "what the pack holds: a weight, or how many pieces", low_excluded=True, goods="alike")
]
UnitCost = Annotated[float, Term("money per unit", "cost of one unit of the material: a piece, or a unit of weight")]
Quantity = Annotated[float, Term("", "how much of the material, in the unit it is priced by", goods="alike")]
Factor = Annotated[float, Term("", "how many of the other unit make one of this", low_excluded=True)]
UnitCosts = Annotated[Sequence[float], Term("money per unit", "cost of one unit of each part", many=True)]
PartAmounts = Annotated[
    Sequence[float], Term("", "how much of each part, in the unit its cost is per", many=True, goods="each")
]
HourlyRate = Annotated[float, Term("money per h", "money for an hour of work")]
PriceStep = Annotated[float, Term("money", "the step between the prices the maker uses", low_excluded=True)]
Ending = Annotated[float, Term("money", "what prices end in, below the step: 0.95 for 17.95")]

# Shares of money
Margin = Annotated[float, Term("of the price", "profit as a share of the price before tax", high=0.99, hint=PERCENT)]
RealMargin = Annotated[
    float, Term("of the price", "profit as a share of the price before tax; minus for a loss", low=-LARGEST)
]
Rise = Annotated[
    float, Term("of today's cost", "how far prices rise; minus for a fall", low=-0.9, high=2.0, hint=PERCENT)
]
Markup = Annotated[float, Term("of cost", "what is added to the cost, as a share of the cost", high=10.0, hint=PERCENT)]
RealMarkup = Annotated[float, Term("of cost", "what is added to the cost, as a share of the cost", high=1000.0)]
Fee = Annotated[float, Term("of the price", "what the place keeps of the price", high=0.95, hint=PERCENT)]
Tax = Annotated[float, Term("of the price before tax", "rate of sales tax or VAT", high=1.0, hint=PERCENT)]
Discount = Annotated[float, Term("of the price", "what is taken off the price", high=0.99, hint=PERCENT)]
FeeBasis = Annotated[
    Literal["net", "gross"],
    Term("", "what the fee is a share of: the price before tax (net) or with tax (gross)", choices=("net", "gross")),
]
Stated = Annotated[
    Literal["with tax", "before tax"],
    Term("", "whether the place states its prices with tax in them", choices=("with tax", "before tax")),
]
Collector = Annotated[
    Literal["maker", "place", "nobody"],
    Term("", "who charges the buyer sales tax or VAT and pays it over", choices=("maker", "place", "nobody")),
]
Sharing = Annotated[
    Literal["in proportion", "evenly"],
    Term("", "how the charge is shared: in proportion to the amounts, or evenly", choices=("in proportion", "evenly")),
]
Digits = Annotated[float, Term("", "decimals of the currency's smallest coin", high=4.0, whole=True, noun="decimals")]
