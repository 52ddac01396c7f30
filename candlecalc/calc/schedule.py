"""Schedule: when to pour, how many evenings it takes, and how much to make in each week."""

import math
import re
from datetime import date, timedelta
from typing import FrozenSet, List, NamedTuple, Sequence

from candlecalc.calc.sources import ALGEBRA, CALENDAR, LEVEL_OR_FOLLOW, LOT_SIZING, PRACTICE, PRODUCTION_BUDGET
from candlecalc.calc.terms import (
    Count,
    Money,
    Pots,
    Quantity,
    Weight,
)
from candlecalc.calc.terms.plan import (
    ByPeriod,
    Closing,
    Cure,
    DaysOff,
    Demand,
    Evenings,
    EveningsNeeded,
    Finishing,
    Keep,
    KeepingEach,
    Lowering,
    Made,
    MakingEach,
    Opening,
    PeriodRate,
    PlanName,
    PotsAnEvening,
    PourDay,
    Raising,
    SaleDay,
    SeasonSales,
    SetUp,
    Usual,
    Working,
)
from candlecalc.declaration.declared import formula
from candlecalc.quantities.rounding import round_half_away

WEEK = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
DAY = timedelta(days=1)
# Stock below nothing by less than this is a sum that was rounded on its way.
SHORT = 1e-6
BY_WEEK = "it looks at what is left after each week"


@formula(
    native="WORKDAY(WORKDAY(sale,0-finishing)-cure+1,0-evenings)",
    source=CALENDAR,
    words="when to pour, when to start, Christmas rush, deadline, market date, how far ahead, cure time, "
    "curing, last day to pour, working back from a market, two weeks of cure, may I light it, when to "
    "light",
)
def pour_by(sale: SaleDay, cure: Cure, evenings: Evenings = 1.0, finishing: Finishing = 0.0) -> PourDay:
    """The last day to start pouring for a market or an order, working Monday to Friday.

    Back from the day of sale: the working days to label and pack, all before
    it; then the days of cure, weekends too; then the evenings of pouring. The
    last pour is on the last working day that leaves its cure. For other
    working days and days off use `pour_by_own_days`.

    >>> pour_by(sale="2026-12-05", cure=14, evenings=3, finishing=2).isoformat()
    '2026-11-17'
    """
    return _pour_by(sale, cure, evenings, finishing, frozenset(range(5)), frozenset())


@formula(
    no_native="it reads the maker's own week and days off",
    source=CALENDAR,
    words="when to pour, when to start, Christmas rush, deadline, weekends, market date, cure time, curing, "
    "last day to pour, days off, may I light it, when to light",
)
def pour_by_own_days(
    sale: SaleDay,
    cure: Cure,
    working: Working,
    evenings: Evenings = 1.0,
    finishing: Finishing = 0.0,
    closed: DaysOff = None,
) -> PourDay:
    """The last day to start pouring for a market or an order, on the days that you work.

    Counted as in `pour_by`, with your own week and the days that you are away.

    >>> pour_by_own_days(sale="2026-12-05", cure=14, working="Tue Thu Sat", evenings=3).isoformat()
    '2026-11-17'
    """
    return _pour_by(sale, cure, evenings, finishing, _week(working), frozenset(day for day in closed or () if day))


def _pour_by(
    sale: date, cure: float, evenings: float, finishing: float, week: FrozenSet[int], closed: FrozenSet[date]
) -> date:
    cured = _back(sale, finishing, week, closed)
    return _back(cured - timedelta(days=cure) + DAY, evenings, week, closed)


def _back(day: date, working_days: float, week: FrozenSet[int], closed: FrozenSet[date]) -> date:
    """So many working days before a day."""
    while working_days > 0:
        day -= DAY
        working_days -= day.weekday() in week and day not in closed
    return day


def _week(working: str) -> FrozenSet[int]:
    """The days of the week in words such as "Mon-Fri" or "Tue Thu Sat"."""
    words = working.lower().replace("\u2013", "-")
    if words in ("every day", "daily", "all"):
        return frozenset(range(7))
    days: List[int] = []
    for part in re.split(r"[\s,;]+", re.sub(r"\s*-\s*", "-", words)):
        ends = [name[:3] for name in part.split("-")]
        if len(ends) > 2 or not set(ends) <= set(WEEK):
            raise ValueError(f'pour_by_own_days: working is "{working}"; it takes days such as "Mon-Fri" or "Tue Thu".')
        first, last = WEEK.index(ends[0]), WEEK.index(ends[-1])
        days += [day % 7 for day in range(first, last + 1 + 7 * (last < first))]
    return frozenset(days)


@formula(
    native="ROUNDUP(ROUND(melt/pot,6),0)",
    requires={"pot > 0": "the pot must hold more than 0"},
    source=PRACTICE,
    words="how many melts, how many pots, size of the melter, wax melter capacity, pot capacity, pitchers, "
    "pouring pitchers, how many pours",
)
def pots_needed(melt: Weight, pot: Weight) -> Pots:
    """Pots that a melt takes, where a pot holds so much at most; the last may not be full.

    >>> pots_needed(melt=7040, pot=3200)
    3.0
    """
    return math.ceil(round_half_away(melt / pot, 6))


@formula(native="ROUNDUP(ROUND(pots/an_evening,6),0)", source=PRACTICE, part=True)
def evenings_needed(pots: Count, an_evening: PotsAnEvening) -> EveningsNeeded:
    """Evenings that so many pots take.

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
    """How much to make in a month, or to buy for it: what goes, what is to be left, less what is there.

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
    """The smallest amount that, made alike in each week or month, is never short and leaves so much at the end.

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

    The answer is exact, no rule of thumb: no other plan costs less. It takes a
    batch to hold any amount. Where two plans cost the same, the one with the
    earlier batches is given.

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
