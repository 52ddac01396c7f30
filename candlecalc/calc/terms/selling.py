"""Words of selling: a stall, a bundle, a shop that buys or keeps candles for the maker, and parcels."""

from typing import Annotated, Literal, Sequence

from candlecalc.calc.terms import PERCENT, Cost, Discount, Money, SignedMoney
from candlecalc.declaration.term import LARGEST, Term

# What is earned
PriceLeft = Annotated[float, Term("money", "price before tax, less the place's fees on it")]
CostWithoutTime = Annotated[float, Term("money", "what the candle costs, without the maker's own time")]
OwnMinutes = Annotated[float, Term("min", "the maker's own working time on it", low_excluded=True, high=1e6)]
Earned = Annotated[float, Term("money per h", "left for each hour of work; minus for a loss", low=-LARGEST)]
Takings = Annotated[float, Term("money", "what was taken for candles, before tax")]
GoodsSold = Annotated[float, Term("money", "what the candles sold cost, all of them")]
StallCosts = Annotated[float, Term("money", "what the day costs whatever is sold: stall, travel, parking, meals")]
StallFees = Annotated[float, Term("money", "what card companies and the organiser keep of the takings")]
StallHours = Annotated[
    float, Term("h", "hours that the day takes: packing, travel, setting up, selling", low_excluded=True, high=1000.0)
]

VariableCost = Annotated[float, Term("money", "cost of each extra candle sold, without fixed costs")]
Lots = Annotated[float, Term("", "lots of the mix to sell", noun="lots")]

# Retail and wholesale
RetailPrice = Annotated[float, Term("money", "retail price: what the buyer in the shop pays, with tax in it or not")]
WholesalePrice = Annotated[float, Term("money", "wholesale price: what the shop pays the maker")]
ShopShare = Annotated[float, Term("of the price", "what the shop keeps of the retail price", high=0.99, hint=PERCENT)]
BundlePrice = Annotated[float, Term("money", "price of the whole bundle, before tax", low_excluded=True)]
BundleCosts = Annotated[
    Sequence[float], Term("money", "cost of each thing in the bundle; list a candle twice if it is in twice", many=True)
]
Packing = Annotated[float, Term("money", "box, filling and ribbon of the bundle")]
BundleFees = Annotated[float, Term("money", "what the place keeps of the price of the bundle")]
OrderCosts = Annotated[
    float, Term("money", "what an order costs whatever its size: the time it takes, a box, freight that you pay")
]
CostOfOne = Annotated[float, Term("money", "what each candle costs that goes into the order")]
ProfitWanted = Annotated[float, Term("money", "profit that the order is to leave")]
Case = Annotated[
    float, Term("", "candles are sold in cases of so many; 1 for singly", low=1.0, high=1000.0, whole=True)
]
SoldThere = Annotated[float, Term("", "how many the shop has sold since it last paid", high=1e6, whole=True)]
TicketPrice = Annotated[float, Term("money", "price of one in the shop, before tax")]
Commission = Annotated[float, Term("of the price", "commission that the shop keeps", high=0.99, hint=PERCENT)]
PaidAlready = Annotated[float, Term("money", "what the shop has paid on them already")]
Due = Annotated[float, Term("money", "what the shop owes; minus where it has paid too much", low=-LARGEST)]
OtherPrice = Annotated[float, Term("money", "price of the other candle")]
OtherWeight = Annotated[float, Term("g", "net weight of the other candle", low_excluded=True, high=25_000.0)]
OwnWeight = Annotated[float, Term("g", "net weight of yours", low_excluded=True, high=25_000.0)]
Matching = Annotated[float, Term("money", "price of yours, with tax in it if the other's has")]

# Parcels and cartons
ParcelWeight = Annotated[float, Term("g", "what the packed parcel weighs", low_excluded=True, high=1e6)]
BillableWeight = Annotated[float, Term("g", "the weight that postage is charged for", rounding="up")]
ParcelLength = Annotated[float, Term("mm", "length of the packed parcel, outside", low=10.0, high=5000.0)]
ParcelWidth = Annotated[float, Term("mm", "width of the packed parcel, outside", low=10.0, high=5000.0)]
ParcelHeight = Annotated[float, Term("mm", "height of the packed parcel, outside", low=10.0, high=5000.0)]
Divisor = Annotated[
    float, Term("", "the carrier's divisor for dimensional weight, by its own rules", low=50.0, high=1e4)
]
DivisorKind = Annotated[
    Literal["in3 per lb", "cm3 per kg"],
    Term(
        "",
        "what the divisor is in: cubic inches to a pound or cubic centimetres to a kilogram",
        choices=("in3 per lb", "cm3 per kg"),
    ),
]
RoundedUpTo = Annotated[
    float, Term("g", "the carrier charges in whole steps of this, such as 1 lb; 0 for no steps", high=1e5)
]
CartonLength = Annotated[float, Term("mm", "length of the carton, inside", low=10.0, high=5000.0)]
CartonWidth = Annotated[float, Term("mm", "width of the carton, inside", low=10.0, high=5000.0)]
CartonHeight = Annotated[float, Term("mm", "height of the carton, inside", low=10.0, high=5000.0)]
PieceLength = Annotated[float, Term("mm", "length of one packed candle, wrapping with it", low=10.0, high=5000.0)]
PieceWidth = Annotated[float, Term("mm", "width of one packed candle, wrapping with it", low=10.0, high=5000.0)]
PieceHeight = Annotated[float, Term("mm", "height of one packed candle as it stands", low=10.0, high=5000.0)]

# Shared terms of a price, each argument with a help of its own
OrderFee = Annotated[Money, "the place's fee for an order"]
PostagePaid = Annotated[Money, "postage that you pay for an order"]
OrderPacking = Annotated[Money, "box and packing of an order"]
PostageCharged = Annotated[Money, "postage that the buyer pays you"]
SmallestFee = Annotated[Money, "the smallest fee that a candle is charged"]
SmallestOrderFee = Annotated[Money, "the smallest fee that an order is charged"]
FixedSums = Annotated[
    SignedMoney, "what a sale costs in fixed sums, not shares: fees, packing, postage; minus if the buyer pays more"
]
MaterialsAlone = Annotated[Cost, "what the materials in it cost, without any work"]
PlaceCost = Annotated[Money, "what the place costs a day or a month"]
FeeAnItem = Annotated[Money, "fixed fee of every item"]
FixedAnOrder = Annotated[SignedMoney, "an order's fee, packing and postage, less the postage that the buyer pays"]
AllFees = Annotated[SignedMoney, "all that the place takes of this price and this sale"]
ProfitOnOne = Annotated[SignedMoney, "profit on one; minus for a loss"]
ToRound = Annotated[SignedMoney, "the amount to round"]
FirstDiscount = Annotated[Discount, "the first discount, off the price"]
SecondDiscount = Annotated[Discount, "the second, off what the first left"]
ThirdDiscount = Annotated[Discount, "the third, off what the second left"]
FixedCosts = Annotated[Money, "fixed costs to cover: those that come whatever is sold"]
ProfitBesides = Annotated[Money, "profit wanted besides"]
