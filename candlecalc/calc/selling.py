"""Selling: what a stall, a bundle and an order leave, what a shop owes, and what a parcel is charged for."""

import math

from candlecalc.calc.sources import ALGEBRA, BREAK_EVEN, COMMISSION, CONSTRAINT, DIMENSIONAL, MARKUP, PRACTICE
from candlecalc.calc.terms import Candles, RealMargin, SignedMoney
from candlecalc.calc.terms.selling import (
    BillableWeight,
    BundleCosts,
    BundleFees,
    BundlePrice,
    CartonHeight,
    CartonLength,
    CartonWidth,
    Case,
    Commission,
    CostOfOne,
    CostWithoutTime,
    Divisor,
    DivisorKind,
    Due,
    Earned,
    GoodsSold,
    Matching,
    OrderCosts,
    OtherPrice,
    OtherWeight,
    OwnMinutes,
    OwnWeight,
    Packing,
    PaidAlready,
    ParcelHeight,
    ParcelLength,
    ParcelWeight,
    ParcelWidth,
    PieceHeight,
    PieceLength,
    PieceWidth,
    PriceLeft,
    ProfitWanted,
    RetailPrice,
    RoundedUpTo,
    ShopShare,
    SoldThere,
    StallCosts,
    StallFees,
    StallHours,
    Takings,
    TicketPrice,
    WholesalePrice,
)
from candlecalc.declaration.declared import formula
from candlecalc.quantities.rounding import round_half_away

# A cubic inch to a pound, in mm3 and g, both by definition; a cubic centimetre to a kilogram is a mm3 to a g.
INCH_AND_POUND = 25.4**3 / 453.59237


@formula(
    native="(price-cost)*60/minutes",
    source=CONSTRAINT,
    words="hourly wage, earn an hour, worth my time, profit per hour, pay per hour, what do I earn an hour, "
    "wage, best product for my time, which candle earns most",
)
def hourly_earnings(price: PriceLeft, cost: CostWithoutTime, minutes: OwnMinutes) -> Earned:
    """What is left for each hour of your own work on a candle at a price.

    The cost has no own time in it: what is left is what that time earns. Hold it
    against the hourly rate that your prices ask for.

    >>> hourly_earnings(price=18, cost=6, minutes=24)
    30.0
    """
    return (price - cost) * 60 / minutes


@formula(
    native="takings-goods-costs-fees",
    source=ALGEBRA,
    words="craft fair, market day, stall profit, was it worth it, did the fair pay, market booth, booth fee, "
    "stall fee, table fee, market stall profit, break even at a market, profit per hour at a fair",
)
def stall_result(takings: Takings, goods: GoodsSold, costs: StallCosts, fees: StallFees = 0.0) -> SignedMoney:
    """What a day at a market or a fair leaves: takings less candles, the day's own costs and fees; minus for a loss.

    >>> stall_result(takings=640, goods=210, costs=85, fees=16)
    329.0
    """
    return takings - goods - costs - fees


@formula(
    native="(takings-goods-costs-fees)/hours",
    source=ALGEBRA,
    words="craft fair, market day, profit per hour, hourly wage at a fair, earn an hour, was the fair worth it",
)
def stall_per_hour(
    takings: Takings, goods: GoodsSold, costs: StallCosts, hours: StallHours, fees: StallFees = 0.0
) -> Earned:
    """What a day at a market or a fair leaves for each hour that it takes.

    Leave your own making time out of the candles' cost if the hours are to pay
    for making as well; else it is paid twice.

    >>> stall_per_hour(takings=640, goods=210, costs=85, hours=10, fees=16)
    32.9
    """
    return stall_result(takings, goods, costs, fees) / hours


@formula(
    native="(price-SUM(costs)-packing-fees)/price",
    source=MARKUP,
    words="3 for 2, multi-buy, three for two offer, gift set, box set, bundle discount, gift basket, three for "
    "the price of two, hamper, set of candles",
)
def bundle_margin(price: BundlePrice, costs: BundleCosts, packing: Packing = 0.0, fees: BundleFees = 0.0) -> RealMargin:
    """Margin that a bundle leaves of its price: a gift set, a box of three, a candle with matches.

    >>> bundle_margin(price=40, costs=[6, 6, 5], packing=3)
    0.5
    """
    return (price - math.fsum(costs) - packing - fees) / price


@formula(
    native="wholesale/(1-share)",
    source=MARKUP,
    words="keystone, what will the shop charge, RRP, MSRP, double the wholesale price, retail price, shop's "
    "price, markup of shops",
)
def retail_from_wholesale(wholesale: WholesalePrice, share: ShopShare) -> RetailPrice:
    """Retail price at which a shop keeps its share, from the wholesale price that you charge it.

    A shop that keeps half sells at twice the wholesale price (keystone).

    >>> retail_from_wholesale(wholesale=12, share=0.5)
    24.0
    """
    return wholesale / (1 - share)


@formula(
    native="ROUNDUP(ROUND((order+profit)/(price-cost)/carton,6),0)*carton",
    requires={"price > cost": "the price must be above what each one costs"},
    source=BREAK_EVEN,
    words="MOQ, smallest order, opening order, minimum order quantity, smallest wholesale order",
)
def minimum_order(
    order: OrderCosts, price: WholesalePrice, cost: CostOfOne, profit: ProfitWanted = 0.0, carton: Case = 1.0
) -> Candles:
    """The smallest order that pays for itself, in candles: whole cases.

    >>> minimum_order(order=30, price=12, cost=7, profit=20, carton=6)
    12.0
    """
    return math.ceil(round_half_away((order + profit) / (price - cost) / carton, 6)) * carton


@formula(
    native="count*price*(1-share)-paid",
    source=COMMISSION,
    words="consignment what's left, shop keeps 40%, sale or return, shop owes me, statement, consignment, "
    "commission, consignment shop pays, shop's "
    "commission, what do I get from the shop",
)
def consignment_due(count: SoldThere, price: TicketPrice, share: Commission, paid: PaidAlready = 0.0) -> Due:
    """What a shop owes you that sells your candles on consignment: the price of what it sold, less its commission.

    >>> consignment_due(count=12, price=24, share=0.25)
    216.0
    """
    return count * price * (1 - share) - paid


@formula(
    native="price/weight*own",
    source=ALGEBRA,
    words="competitor, compare price per ounce, undercut, price from a competitor, match a price, others charge",
)
def price_to_match(price: OtherPrice, weight: OtherWeight, own: OwnWeight) -> Matching:
    """Price at which yours costs as much for its weight as another candle does.

    It says nothing of what yours costs to make: see `lowest_price`.

    >>> price_to_match(price=20, weight=200, own=250)
    25.0
    """
    return price / weight * own


UP = "IF(step>0,ROUNDUP(ROUND({0}/MAX(step,0.000001),6),0)*step,{0})"
CHARGED = f'MAX(weight,length*width*height/divisor/IF(per="in3 per lb",{INCH_AND_POUND!r},1))'


@formula(
    native=UP.format(CHARGED),
    source=DIMENSIONAL,
    words="dimensional weight, dim weight, volumetric, postage, shipping weight, parcel size, shipping cost, "
    "postage weight, carrier",
)
def billable_weight(
    weight: ParcelWeight,
    length: ParcelLength,
    width: ParcelWidth,
    height: ParcelHeight,
    divisor: Divisor,
    per: DivisorKind,
    step: RoundedUpTo = 0.0,
) -> BillableWeight:
    """Weight that a carrier charges for: what the parcel weighs, or its size over the carrier's divisor if more.

    The carrier's rules give the divisor and how to round sizes and weights: round the
    sides that way before you type them.

    >>> billable_weight(weight=900, length=300, width=250, height=200, divisor=5000, per="cm3 per kg", step=1000)
    3000.0
    """
    charged = max(weight, length * width * height / divisor / (INCH_AND_POUND if per == "in3 per lb" else 1))
    return math.ceil(round_half_away(charged / step, 6)) * step if step > 0 else charged


FITS = "INT(ROUND(carton_length/{0},6))*INT(ROUND(carton_width/{1},6))"


@formula(
    native=f"MAX({FITS.format('length', 'width')},{FITS.format('width', 'length')})*INT(ROUND(carton_height/height,6))",
    source=PRACTICE,
    words="how many fit in a box, case pack, shipping box, box size, how many jars in a carton, carton size",
)
def per_carton(
    carton_length: CartonLength,
    carton_width: CartonWidth,
    carton_height: CartonHeight,
    length: PieceLength,
    width: PieceWidth,
    height: PieceHeight,
) -> Candles:
    """Packed candles that a carton takes, all upright and all turned the same way.

    It says nothing of how many layers glass can bear, nor of what the carton may
    weigh.

    >>> per_carton(carton_length=310, carton_width=220, carton_height=130, length=100, width=100, height=120)
    6.0
    """
    sides = [(length, width), (width, length)]
    a_layer = max(_fits(carton_length, one) * _fits(carton_width, other) for one, other in sides)
    return a_layer * _fits(carton_height, height)


def _fits(room: float, each: float) -> float:
    return math.floor(round_half_away(room / each, 6))
