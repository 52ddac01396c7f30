"""Cost: what a unit of material, a batch and a candle cost.

Making cost is materials, paid labour and production overhead: what stock and the books are valued at.
Full cost adds the owner's own time and the costs of running: what prices must cover. They are never mixed.
"""

import math

from candlecalc.calc.sources import ALGEBRA, JOB_COST, LANDED_COST, LARGEST_REMAINDER, OVERHEAD, PRACTICE
from candlecalc.calc.terms import (
    Activity,
    Amounts,
    Batch,
    BatchCost,
    Candles,
    Cost,
    Count,
    Digits,
    Factor,
    GoodShare,
    GoodWanted,
    GoodYield,
    HourlyRate,
    Minutes,
    Money,
    MoneyParts,
    PackPrice,
    PackSize,
    PaidShare,
    PartAmounts,
    People,
    Quantity,
    Rise,
    Sharing,
    SpreadOver,
    TestCandles,
    TestCost,
    UnitCost,
    UnitCosts,
    Waste,
    Weight,
)
from candlecalc.calc.terms.making import (
    CameOutGood,
    ChargeToSplit,
    CostAtUsual,
    CostOfEach,
    CostToday,
    LeftAfterWaste,
    MakingCost,
    MaterialsCost,
    MaterialsInIt,
    MinutesForOne,
    MinutesToSetUp,
    OverheadBudget,
    OverheadCharged,
    OwnTimeCost,
    PackShipping,
    PackTax,
    PaidLabourCost,
    RunningCost,
    SetUpOnce,
    UsualBatch,
    WereMade,
)
from candlecalc.declaration.declared import formula
from candlecalc.quantities.rounding import round_half_away


@formula(
    native="(price+shipping+tax)/size",
    source=LANDED_COST,
    words="price per ounce, price per pound, cost per pound of wax, price per gram, landed cost, shipping and "
    "duty included, import duty, compare suppliers, supplier comparison, which pack is cheaper, cost of a "
    "jar out of a case",
)
def unit_cost(price: PackPrice, size: PackSize, shipping: PackShipping = 0.0, tax: PackTax = 0.0) -> UnitCost:
    """Cost of one unit out of a pack, with its share of shipping and the tax you cannot claim back.

    Use the price you would pay today, even for stock bought earlier.

    >>> unit_cost(price=18, size=450, shipping=4.5)
    0.05
    """
    return (price + shipping + tax) / size


@formula(
    native="amount*cost",
    source=JOB_COST,
    words="cost of wax in a candle, cost of oil in a candle, cost of fragrance per candle, fragrance cost, wax "
    "cost per candle, compare wax cost",
)
def material_cost(amount: Quantity, cost: UnitCost) -> Money:
    """Cost of an amount of material at its unit cost.

    >>> material_cost(amount=40, cost=0.05)
    2.0
    """
    return amount * cost


@formula(native="size*factor", source=ALGEBRA, part=True)
def in_unit(size: Quantity, factor: Factor) -> Quantity:
    """A quantity in another unit, by how many of that unit make one.

    >>> in_unit(size=2, factor=16)
    32.0
    """
    return size * factor


@formula(
    native="SUMPRODUCT(amounts,costs)",
    source=JOB_COST,
    words="material cost of a candle, bill of materials, packaging cost, box and label cost, variable cost, "
    "cost of a sample, recipe cost",
)
def parts_cost(amounts: PartAmounts, costs: UnitCosts) -> Money:
    """Cost of several parts: how much of each, at its unit cost.

    >>> parts_cost(amounts=[200, 16, 1], costs=[0.01, 0.05, 1.25])
    4.05
    """
    return math.fsum(amount * cost for amount, cost in zip(amounts, costs))


@formula(
    source=LARGEST_REMAINDER,
    words="split shipping, share shipping over items, landed cost, spread freight, import duty, spread a cost "
    "over items",
)
def split_charge(
    charge: ChargeToSplit, amounts: Amounts, sharing: Sharing = "in proportion", digits: Digits = 2
) -> MoneyParts:
    """Split a charge such as shipping over the lines of an order, to the cent.

    Give each line's value, weight or quantity; the parts always add up to the
    charge. Cents left over go to the largest fractions, the earlier line first
    where they tie; a line of nothing gets nothing.

    >>> split_charge(charge=10, amounts=[120, 75.5, 48.25])
    [4.92, 3.1, 1.98]
    """
    if sharing == "evenly":
        amounts = [1.0] * len(amounts)
    total = math.fsum(amounts)
    if total <= 0:
        raise ValueError("split_charge: amounts add up to 0; at least one line must have a share.")
    coins = round_half_away(abs(charge) * 10**digits)
    exact = [coins * amount / total for amount in amounts]
    parts = [math.floor(round_half_away(part, 6)) for part in exact]
    # Fractions are compared to six decimals: a tie must not be settled by the last bit of a float.
    by_fraction = sorted(range(len(parts)), key=lambda line: (-round_half_away(exact[line] - parts[line], 6), line))
    for line in by_fraction[: int(coins - sum(parts))]:
        parts[line] += 1
    return [math.copysign(1, charge) * part / 10**digits if part else 0.0 for part in parts]


@formula(
    native="amount/(1-waste)",
    source=PRACTICE,
    words="wax wastage, waste allowance, allow for waste, wax lost in the pot, spillage, loss, extra wax to allow",
)
def before_waste(amount: LeftAfterWaste, waste: Waste) -> Weight:
    """What to weigh out so that a wanted amount is left after waste.

    Waste is a share of what you weigh: for 96 g at 4 % waste, weigh 100 g.

    >>> before_waste(amount=96, waste=0.04)
    100.0
    """
    return amount / (1 - waste)


@formula(native="good/made", requires={"good <= made": "there cannot be more good ones than were made",
                                       "made > 0": "made must be more than 0"}, source=PRACTICE,
    words="success rate, failed candles, rejects, seconds, breakage rate, scrap",)  # fmt: skip
def yield_of(good: CameOutGood, made: WereMade) -> GoodShare:
    """Yield of a batch: the share that came out good enough to sell.

    >>> yield_of(good=23, made=25)
    0.92
    """
    return good / made


@formula(
    native="ROUNDUP(ROUND(good/share,6),0)",
    source=PRACTICE,
    words="rejects, spoiled candles, make extra, allow for waste, how many extra to make, allow for failures, "
    "breakage allowance, seconds",
)
def make_for_good(good: GoodWanted, share: GoodYield) -> Candles:
    """How many to make so that enough come out good: the number wanted over the yield, rounded up.

    >>> make_for_good(good=48, share=0.95)
    51.0
    """
    return math.ceil(round_half_away(good / share, 6))


@formula(
    native="each+setup/batch",
    source=PRACTICE,
    words="time per candle, time to make one candle, set-up time per candle, labour time",
)
def minutes_each(each: MinutesForOne, setup: MinutesToSetUp, batch: Batch) -> Minutes:
    """Working minutes a candle, with its share of the time to set up and clean.

    >>> minutes_each(each=4, setup=60, batch=24)
    6.5
    """
    return each + setup / batch


@formula(native="minutes*share", source=ALGEBRA, part=True)
def paid_minutes(minutes: Minutes, share: PaidShare) -> Minutes:
    """Working minutes that are paid help, by their share of the time.

    >>> paid_minutes(minutes=10, share=0.25)
    2.5
    """
    return minutes * share


@formula(native="minutes*(1-share)", source=ALGEBRA, part=True)
def own_minutes(minutes: Minutes, share: PaidShare) -> Minutes:
    """Working minutes of the maker's own, where `share` of the time is paid help.

    >>> own_minutes(minutes=10, share=0.25)
    7.5
    """
    return minutes * (1 - share)


@formula(
    native="minutes/60*people*rate",
    source=JOB_COST,
    words="cost of my time, pay myself by the hour, wages, staff cost, my time per candle, labour per candle",
)
def labour_cost(minutes: Minutes, rate: HourlyRate, people: People = 1.0) -> Money:
    """Cost of working time at an hourly rate: paid help or the maker's own.

    >>> labour_cost(minutes=90, rate=16, people=2)
    48.0
    """
    return minutes / 60 * people * rate


@formula(
    native="overhead/activity",
    source=OVERHEAD,
    words="overhead allocation, "
    "overhead per candle, rent, insurance, power, equipment depreciation, studio cost, fixed costs an "
    "hour, spread yearly costs",
)
def overhead_rate(overhead: OverheadBudget, activity: Activity) -> HourlyRate:
    """Overhead for each hour of work, from a budget for the season and the hours it is spread over.

    >>> overhead_rate(overhead=600, activity=240)
    2.5
    """
    return overhead / activity


@formula(
    native="minutes/60*rate",
    source=OVERHEAD,
    part=True,
    words="overhead allocation per unit",
)
def overhead_cost(minutes: Minutes, rate: HourlyRate) -> Money:
    """Overhead on working time, at a rate per hour.

    >>> overhead_cost(minutes=90, rate=2.5)
    3.75
    """
    return minutes / 60 * rate


@formula(
    native="materials+labour+overhead",
    source=JOB_COST,
    words="production cost, what it costs to make a candle, variable cost, cost to make",
)
def making_cost(materials: MaterialsCost, labour: PaidLabourCost, overhead: OverheadCharged) -> Cost:
    """Making cost of a batch or a candle: materials, paid labour, production overhead.

    What stock and cost of goods are valued at. The maker's own time is not in
    it: prices need `full_cost`.

    >>> making_cost(materials=700, labour=66, overhead=165)
    931.0
    """
    return materials + labour + overhead


@formula(
    native="making+own_time+running",
    source=PRACTICE,
    words="true cost, total cost of a candle, all in cost, cost per candle, my time in the cost",
)
def full_cost(making: MakingCost, own_time: OwnTimeCost, running: RunningCost) -> Cost:
    """Full cost of a batch or a candle: making cost, the maker's own time, costs of running.

    >>> full_cost(making=4.25, own_time=1.5, running=0.5)
    6.25
    """
    return making + own_time + running


@formula(
    native="cost/batch",
    source=ALGEBRA,
    words="cost per candle, unit cost of a candle, what does a candle cost me",
)
def cost_each(cost: BatchCost, batch: Batch) -> Cost:
    """Cost of one candle out of a batch.

    >>> cost_each(cost=931, batch=7)
    133.0
    """
    return cost / batch


@formula(
    native="tests*cost/count",
    source=ALGEBRA,
    words="testing cost, cost of wick tests, development, cost of testing, cost of a test batch, samples, "
    "development cost",
)
def testing_cost_each(tests: TestCandles, cost: TestCost, count: SpreadOver) -> Money:
    """What testing a recipe adds to each candle that is made of it.

    >>> testing_cost_each(tests=9, cost=5, count=150)
    0.3
    """
    return tests * cost / count


@formula(
    native="cost+setup/batch-setup/usual",
    source=ALGEBRA,
    words="small order cost, custom order, special order, cost of a bigger batch, batch size cost, private batch",
)
def cost_at_batch(cost: CostAtUsual, setup: SetUpOnce, usual: UsualBatch, batch: Batch) -> Cost:
    """Cost per candle at another batch size, its set-up divided over the new one.

    `setup` is what setting up once costs.

    >>> cost_at_batch(cost=5, setup=12, usual=12, batch=24)
    4.5
    """
    return cost + setup / batch - setup / usual


@formula(
    native="cost+materials*rise",
    source=ALGEBRA,
    words="price increase, wax went up, supplier raised prices, inflation, cost increase",
)
def cost_with_rise(cost: CostToday, materials: MaterialsInIt, rise: Rise) -> Cost:
    """A cost after the price of the materials in it rises (or falls, with a minus) by a share.

    >>> cost_with_rise(cost=8, materials=5, rise=0.1)
    8.5
    """
    return cost + materials * rise


@formula(native="cost*count", source=ALGEBRA, part=True)
def cost_of_all(cost: CostOfEach, count: Count) -> Cost:
    """Cost of so many candles alike.

    >>> cost_of_all(cost=4.5, count=24)
    108.0
    """
    return cost * count
