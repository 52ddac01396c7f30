"""Stocktake: what a count finds, what stock may be worth at most, how fast it goes, and which lot to use first."""

import math
from calendar import monthrange
from datetime import date, timedelta
from typing import List, NamedTuple

from candlecalc.calc.sources import ALGEBRA, CALENDAR, COUNTING, LOWER_VALUE, MONTHS, PRACTICE, TURNOVER
from candlecalc.calc.terms import Quantity, SignedMoney, UnitCost
from candlecalc.calc.terms.plan import OnHand
from candlecalc.calc.terms.stock import (
    AsOf,
    Booked,
    ClosingStock,
    Counted,
    DaysCovered,
    DaysLeft,
    DaysOfStock,
    Difference,
    GoodsCost,
    ItemAmounts,
    ItemCosts,
    ItemWorth,
    LotAmounts,
    LotDates,
    LotName,
    LotNames,
    MadeDay,
    OpeningStock,
    PerDay,
    Period,
    Realisable,
    SellingPrice,
    ShelfLife,
    ShelfMonths,
    ToFinish,
    ToSell,
    ToUse,
    Turns,
    UseBy,
    Worth,
)
from candlecalc.declaration.declared import formula
from candlecalc.quantities.rounding import round_half_away


@formula(native="counted-booked", source=COUNTING, part=True)
def count_difference(counted: Counted, booked: Booked) -> Difference:
    """How much a count finds above the books; minus where it finds less.

    >>> count_difference(counted=46, booked=48)
    -2.0
    """
    return counted - booked


@formula(
    native="(counted-booked)*cost",
    source=COUNTING,
    words="stocktake discrepancy, stocktake difference, shrinkage of stock, stock count differences, breakage, "
    "broken candles, missing stock, theft, stock "
    "take, inventory count, write off",
)
def count_difference_cost(counted: Counted, booked: Booked, cost: UnitCost) -> SignedMoney:
    """What the difference of a count is worth at cost; a minus is a loss to be booked.

    >>> count_difference_cost(counted=46, booked=48, cost=6)
    -12.0
    """
    return (counted - booked) * cost


@formula(
    native="MAX(0,price-finishing-selling)",
    source=LOWER_VALUE,
    formerly=("net_realisable",),
    words="NRV, what stock can still bring",
)
def net_realisable_value(price: SellingPrice, finishing: ToFinish = 0.0, selling: ToSell = 0.0) -> Realisable:
    """What one brings after what it still costs to finish and to sell it; nothing where that is a loss.

    >>> net_realisable_value(price=12, finishing=1.5, selling=2)
    8.5
    """
    return max(0.0, price - finishing - selling)


@formula(
    native="SUMPRODUCT(amounts*((costs<=worth)*costs+(costs>worth)*worth))",
    source=LOWER_VALUE,
    words="stock value, inventory value, lower of cost or market",
)
def lower_of_cost(amounts: ItemAmounts, costs: ItemCosts, worth: ItemWorth) -> Worth:
    """What stock is carried at: the lower of cost and net realisable value, item by item.

    Item by item, so that a gain on one does not hide the loss on another.

    >>> lower_of_cost(amounts=[10, 12], costs=[9, 6], worth=[8, 7])
    152.0
    """
    return math.fsum(amount * min(cost, brings) for amount, cost, brings in zip(amounts, costs, worth))


@formula(
    native="SUMPRODUCT(amounts*(costs>worth)*(costs-worth))",
    source=LOWER_VALUE,
    words="write off, damaged stock, unsold candles, obsolete stock, old stock",
)
def write_down(amounts: ItemAmounts, costs: ItemCosts, worth: ItemWorth) -> Worth:
    """What is written off stock at the lower of cost and net realisable value: an expense of the period.

    >>> write_down(amounts=[10, 12], costs=[9, 6], worth=[8, 7])
    10.0
    """
    return math.fsum(amount * max(0.0, cost - brings) for amount, cost, brings in zip(amounts, costs, worth))


@formula(
    native="goods/((opening+closing)/2)",
    requires={"opening+closing > 0": "there must have been stock at the start or the end"},
    source=TURNOVER,
    words="inventory turnover, how fast does stock sell",
)
def stock_turns(goods: GoodsCost, opening: OpeningStock, closing: ClosingStock) -> Turns:
    """How often the average stock was sold or used over the time, all at cost.

    >>> stock_turns(goods=3600, opening=700, closing=500)
    6.0
    """
    return goods / ((opening + closing) / 2)


@formula(
    native="(opening+closing)/2/(goods/days)",
    requires={"goods > 0": "goods must be more than 0"},
    source=TURNOVER,
    words="days of inventory, how long do candles sit",
)
def days_in_stock(goods: GoodsCost, opening: OpeningStock, closing: ClosingStock, days: Period = 365.0) -> DaysOfStock:
    """How many days goods stay in stock on average, from what was sold or used over so many days.

    >>> days_in_stock(goods=3650, opening=700, closing=500)
    60.0
    """
    return (opening + closing) / 2 / (goods / days)


@formula(
    native="on_hand/a_day",
    source=ALGEBRA,
    words="how long will stock last, days of stock, weeks of stock, run out, when will I run out, supply left",
)
def days_covered(on_hand: OnHand, a_day: PerDay) -> DaysCovered:
    """How many days your stock lasts, from how much goes in a day.

    >>> days_covered(on_hand=48, a_day=3)
    16.0
    """
    return on_hand / a_day


@formula(
    native="INT(made)+shelf_life",
    source=CALENDAR,
    words="expiry date, expiration, best before, shelf life, how long does oil keep, goes off",
)
def use_by(made: MadeDay, shelf_life: ShelfLife) -> UseBy:
    """The last day on which to use a lot, from the day it was made and how long it keeps.

    >>> use_by(made="2026-03-14", shelf_life=365).isoformat()
    '2027-03-14'
    """
    return made + timedelta(days=shelf_life)


@formula(
    native="EDATE(made,months)",
    source=MONTHS,
    words="expiry date, best before, shelf life 12 months, expiration, use by, months of shelf life, how long "
    "does oil keep",
)
def use_by_months(made: MadeDay, months: ShelfMonths) -> UseBy:
    """The last day on which to use a lot that keeps so many months: the same day of the month, or its last.

    >>> use_by_months(made="2026-08-31", months=18).isoformat()
    '2028-02-29'
    """
    year, month = divmod(made.year * 12 + made.month - 1 + int(months), 12)
    return date(year, month + 1, min(made.day, monthrange(year, month + 1)[1]))


@formula(
    native="INT(made)+shelf_life-INT(as_of)",
    source=CALENDAR,
    words="shelf life, is it still good, expired, days to expiry",
)
def shelf_days_left(made: MadeDay, shelf_life: ShelfLife, as_of: AsOf) -> DaysLeft:
    """Days that a lot still keeps; minus where it is past.

    >>> shelf_days_left(made="2026-03-14", shelf_life=365, as_of="2027-03-01")
    13.0
    """
    return float((use_by(made, shelf_life) - as_of).days)


class LotToUse(NamedTuple):
    """A lot, how much to take of it, the last day on which to use it, and the days until then."""

    lot: LotName
    take: Quantity
    use_by: UseBy
    days_left: DaysLeft


@formula(
    source=PRACTICE,
    words="oldest first, FEFO, which bottle first",
)
def lots_to_use(lots: LotNames, amounts: LotAmounts, dates: LotDates, needed: ToUse, as_of: AsOf) -> List[LotToUse]:
    """Which lots to use for what is needed: the one with the earliest date first.

    A lot past its day is left alone. Where the others do not hold enough, it is
    refused with what they hold.

    >>> lots_to_use(lots=["A7"], amounts=[900], dates=["2026-11-30"], needed=250, as_of="2026-09-01")[0].take
    250.0
    """
    taken: List[LotToUse] = []
    rest = needed
    for day, amount, lot in sorted(zip(dates, amounts, lots), key=lambda line: line[0]):
        take = min(amount, rest)
        if day >= as_of and take > 0:
            taken.append(LotToUse(lot, take, day, float((day - as_of).days)))
            rest = round_half_away(rest - take, 9)
    if rest > 0:
        raise ValueError(
            f"lots_to_use: lots that are not past their day hold {needed - rest:g} of the {needed:g} needed."
        )
    return taken
