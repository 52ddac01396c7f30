"""Schedule: how many evenings the pouring takes, and how much to make in each week."""

import math
from typing import List, NamedTuple, Sequence

from candlecalc.calc.sources import ALGEBRA, LEVEL_OR_FOLLOW, LOT_SIZING, PRACTICE, PRODUCTION_BUDGET
from candlecalc.calc.terms import Money, Pots, Quantity
from candlecalc.calc.terms.making import PotHolds, PotsToPour, WholeMelt
from candlecalc.calc.terms.plan import (
    ByPeriod,
    Closing,
    Demand,
    EveningsNeeded,
    Keep,
    KeepingEach,
    Lowering,
    Made,
    MakingEach,
    Opening,
    PeriodRate,
    PlanName,
    PotsAnEvening,
    Raising,
    SeasonSales,
    SetUp,
    Usual,
)
from candlecalc.declaration.declared import formula
from candlecalc.quantities.rounding import round_half_away

# Stock below nothing by less than this is a sum that was rounded on its way.
SHORT = 1e-6
BY_WEEK = "it looks at what is left after each week"


@formula(
    native="ROUNDUP(ROUND(melt/pot,6),0)",
    requires={"pot > 0": "the pot must hold more than 0"},
    source=PRACTICE,
    words="how many melts, how many pots, size of the melter, wax melter capacity, pot capacity, pitchers, "
    "pouring pitchers, how many pours",
)
def pots_needed(melt: WholeMelt, pot: PotHolds) -> Pots:
    """How many pots a melt fills, from the most a pot holds; the last may not be full.

    >>> pots_needed(melt=7040, pot=3200)
    3.0
    """
    return math.ceil(round_half_away(melt / pot, 6))


@formula(native="ROUNDUP(ROUND(pots/an_evening,6),0)", source=PRACTICE, part=True)
def evenings_needed(pots: PotsToPour, an_evening: PotsAnEvening) -> EveningsNeeded:
    """Evenings to pour this many pots.

    >>> evenings_needed(pots=7, an_evening=3)
    3.0
    """
    return math.ceil(round_half_away(pots / an_evening, 6))


@formula(
    native="MAX(0,sales+closing-opening)",
    source=PRODUCTION_BUDGET,
    words="how much to make this month, production budget",
)
def to_make(sales: Demand, closing: Closing, opening: Opening) -> Quantity:
    """How much to make or buy for a month: what goes out, plus what is to be left, less what you have.

    For a material `sales` is what the month's candles use of it.

    >>> to_make(sales=1500, closing=750, opening=450)
    1800.0
    """
    return max(0, sales + closing - opening)


@formula(
    source=PRODUCTION_BUDGET,
    words="production plan, make to order, make what sells each month",
)
def follow_demand(sales: SeasonSales, keep: Keep, opening: Opening = 0.0) -> ByPeriod:
    """How much to make in each week or month to follow what is wanted, and leave so much at the end of each.

    >>> follow_demand(sales=[100, 150, 250], keep=[30, 50, 0], opening=20)
    [110.0, 170.0, 200.0]
    """
    made = []
    for wanted, left in zip(sales, keep):
        # What sums of decimals leave behind is no stock, and no batch to be made.
        made.append(round_half_away(to_make(wanted, left, opening), 9))
        opening = round_half_away(opening + made[-1] - wanted, 9)
    return made


@formula(
    no_native=BY_WEEK,
    source=LEVEL_OR_FOLLOW,
    words="make ahead, build stock, same amount every month, steady production",
)
def level_rate(sales: SeasonSales, opening: Opening = 0.0, closing: Closing = 0.0) -> PeriodRate:
    """The smallest equal amount to make each week or month that never runs short and leaves enough at the end.

    >>> level_rate(sales=[80, 50, 120, 150])
    100.0
    """
    wanted, rate = -opening, 0.0
    for period, sold in enumerate(sales, start=1):
        wanted += sold
        rate = max(rate, wanted / period)
    return max(rate, (wanted + closing) / len(sales))


@formula(
    source=ALGEBRA,
    words="stock at month end, projected stock",
)
def stock_left(sales: SeasonSales, made: Made, opening: Opening = 0.0) -> ByPeriod:
    """How much is left at the end of each week or month, from what is made and sold in it.

    A plan that would be short is refused with its place.

    >>> stock_left(sales=[80, 50, 120, 150], made=[100, 100, 100, 100])
    [20.0, 70.0, 50.0, 0.0]
    """
    return _left("stock_left", sales, made, opening)


def _left(name: str, sales: Sequence[float], made: Sequence[float], opening: float) -> List[float]:
    left = []
    for place, (sold, new) in enumerate(zip(sales, made), start=1):
        opening = round_half_away(opening + new - sold, 9)
        if opening < -SHORT:
            raise ValueError(f"{name}: {-opening:g} too few at place {place}; more must be made by then.")
        left.append(max(0.0, opening))
    return left


@formula(
    no_native=BY_WEEK,
    source=LEVEL_OR_FOLLOW,
    words="cost of a production plan",
)
def plan_cost(
    sales: SeasonSales,
    made: Made,
    making: MakingEach,
    keeping: KeepingEach = 0.0,
    raising: Raising = 0.0,
    lowering: Lowering = 0.0,
    usual: Usual = None,
    opening: Opening = 0.0,
) -> Money:
    """What a plan costs: making, keeping what is left over, and making more or fewer than the time before.

    >>> plan_cost(sales=[80, 50, 120, 150], made=[100, 100, 100, 100], making=2, keeping=0.5)
    870.0
    """
    left = _left("plan_cost", sales, made, opening)
    before = [made[0] if usual is None else usual, *made]
    changes = [new - old for old, new in zip(before, made)]
    rises = math.fsum(max(0.0, change) for change in changes)
    falls = math.fsum(max(0.0, -change) for change in changes)
    return math.fsum([making * math.fsum(made), keeping * math.fsum(left), raising * rises, lowering * falls])


class PlanLine(NamedTuple):
    """A plan, the most it makes and keeps at a time, and what it costs."""

    plan: PlanName
    most_made: Quantity
    most_kept: Quantity
    cost: Money


@formula(
    source=LEVEL_OR_FOLLOW,
    words="production plan, make ahead or make to order, build ahead",
)
def level_or_follow(
    sales: SeasonSales,
    making: MakingEach,
    keeping: KeepingEach = 0.0,
    raising: Raising = 0.0,
    lowering: Lowering = 0.0,
    usual: Usual = None,
    opening: Opening = 0.0,
) -> List[PlanLine]:
    """Build ahead at a level rate, or follow what is wanted? Both plans with what they cost.

    >>> level_or_follow(sales=[80, 50, 120, 150], making=2, keeping=0.5, raising=0.1, lowering=0.5)[1]
    PlanLine(plan='follow demand', most_made=150.0, most_kept=0.0, cost=825.0)
    """
    level = [level_rate(sales, opening)] * len(sales)
    follow = follow_demand(sales, [0.0] * len(sales), opening)
    return [
        PlanLine(
            plan,
            max(made),
            max(stock_left(sales, made, opening)),
            plan_cost(sales, made, making, keeping, raising, lowering, usual, opening),
        )
        for plan, made in (("level", level), ("follow demand", follow))
    ]


@formula(
    source=LOT_SIZING,
    words="batch size, how big a batch, how often to make a batch, production plan, lot sizing",
)
def lot_sizes(sales: SeasonSales, setup: SetUp, keeping: KeepingEach, opening: Opening = 0.0) -> ByPeriod:
    """How much to make in each week or month so that batches and keeping cost least over the season.

    The answer is exact, no rule of thumb: no other plan costs less. It assumes a batch
    can be any size. Where two plans cost the same, the one with the earlier batches is
    given.

    >>> lot_sizes(sales=[90, 120, 80, 70], setup=500, keeping=2)
    [210.0, 0.0, 150.0, 0.0]
    """
    wanted = _after_opening(sales, opening)
    starts = _batch_starts(wanted, setup, keeping)
    made, end = [0.0] * len(wanted), len(wanted)
    while end:
        start = starts[end]
        made[start] = math.fsum(wanted[start:end])
        end = start
    return made


def _after_opening(sales: Sequence[float], opening: float) -> List[float]:
    wanted = []
    for sold in sales:
        wanted.append(max(0.0, round_half_away(sold - opening, 9)))
        opening = max(0.0, round_half_away(opening - sold, 9))
    return wanted


def _batch_starts(wanted: Sequence[float], setup: float, keeping: float) -> List[int]:
    """For the first so many periods, where the last batch of their best plan starts (Wagner and Whitin)."""
    best, starts = [0.0], [0]
    # A longer season never starts its last batch earlier, so the search need not go back further.
    first = 0
    for end in range(1, len(wanted) + 1):
        costs, kept, waiting = [], 0.0, 0.0
        for start in range(end - 1, first - 1, -1):
            # What is wanted later waits one period more for each that the batch starts earlier.
            kept += waiting
            waiting += wanted[start]
            costs.append((best[start] + (setup + keeping * kept if waiting else 0.0), start))
        least = min(costs)[0]
        # The same cost, but for the last digits, is a tie.
        cost, first = min(costs, key=lambda choice: (choice[0] > least + 1e-9 * (1 + least), choice[1]))
        best.append(cost)
        starts.append(first)
    return starts


@formula(
    no_native=BY_WEEK,
    source=LOT_SIZING,
    words="cost of batches, cost of many small batches",
)
def lots_cost(sales: SeasonSales, made: Made, setup: SetUp, keeping: KeepingEach, opening: Opening = 0.0) -> Money:
    """What batches and keeping cost over a season: each time something is made, and what is left after each.

    >>> lots_cost(sales=[90, 120, 80, 70], made=[210, 0, 150, 0], setup=500, keeping=2)
    1380.0
    """
    left = _left("lots_cost", sales, made, opening)
    return setup * sum(amount > 0 for amount in made) + keeping * math.fsum(left)
