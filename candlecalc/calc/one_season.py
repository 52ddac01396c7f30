"""One season: how many to make of a scent that will not sell after it."""

import math
from statistics import NormalDist
from typing import Any, Callable, Dict, List, Optional, Sequence, Tuple

from candlecalc.calc.sources import ONE_SEASON
from candlecalc.calc.terms import Candles, SignedMoney
from candlecalc.calc.terms.plan import (
    DemandKind,
    Leftover,
    Records,
    SeasonCost,
    SeasonDemand,
    SeasonPrice,
    SeasonSpread,
    SmallDemand,
    SomeDemand,
    SomeRecords,
    SomeSpread,
    Stock,
    WholeStock,
)
from candlecalc.declaration.declared import formula
from candlecalc.quantities.rounding import round_half_away
from candlecalc.quantities.statistics import normal_quantile

Given = Tuple[Optional[float], Optional[float], Optional[Sequence[Optional[float]]]]
# What each kind of demand is described by: of the mean, the spread and the records.
NEEDED = {"normal": ("demand", "spread"), "Poisson": ("demand",), "records": ("records",)}
IN_CELLS = "its Poisson sum fits no cell; season_{0} and season_{0}_of_records fit one, for normal and for records"
WORTH_IT = {
    "price > cost": "the price must be above what one costs, or none should be made",
    "price-cost < price-leftover": "a leftover must bring less than it cost",
}


@formula(
    no_native=IN_CELLS.format("stock"),
    requires=WORTH_IT,
    source=ONE_SEASON,
    words="how many to make for christmas, xmas stock, how much stock for a market, newsvendor, newsboy, how "
    "many Christmas candles, seasonal scent, limited edition, how many to make, "
    "how many to bring, how many for one event, sold out or left over, one time event, holiday scent",
)
def season_quantity(
    price: SeasonPrice,
    cost: SeasonCost,
    leftover: Leftover,
    kind: DemandKind,
    demand: SomeDemand = None,
    spread: SomeSpread = None,
    records: SomeRecords = None,
) -> Stock:
    """How many to make for one season of what will not sell after it.

    It stops where one more would lose as much unsold as it would earn if sold. Take
    "Poisson" for small numbers, such as a dozen at a market, and "records" where there
    are seasons to go by: it names one of them. Round up what comes out for "normal".

    >>> season_quantity(price=24, cost=9, leftover=5, kind="Poisson", demand=12)
    15.0
    """
    described = _described("season_quantity", kind, (demand, spread, records))
    quantities: Dict[str, Callable[..., float]] = {
        "normal": season_stock,
        "Poisson": season_stock_poisson,
        "records": season_stock_of_records,
    }
    return quantities[kind](price, cost, leftover, *described)


@formula(
    no_native=IN_CELLS.format("profit"),
    source=ONE_SEASON,
    words="profit from a limited scent, what will a holiday scent earn",
)
def expected_season_profit(
    stock: Stock,
    price: SeasonPrice,
    cost: SeasonCost,
    leftover: Leftover,
    kind: DemandKind,
    demand: SomeDemand = None,
    spread: SomeSpread = None,
    records: SomeRecords = None,
) -> SignedMoney:
    """Profit to expect from so many made for one season, what is left over sold off or thrown away.

    An average over many such seasons; one of them can bring much more or less.

    >>> expected_season_profit(stock=62, price=24, cost=9, leftover=5, kind="records", records=[40, 55, 48, 70, 62])
    766.6
    """
    described = _described("expected_season_profit", kind, (demand, spread, records))
    profits: Dict[str, Callable[..., float]] = {
        "normal": season_profit,
        "Poisson": season_profit_poisson,
        "records": season_profit_of_records,
    }
    return profits[kind](stock, price, cost, leftover, *described)


def _described(name: str, kind: str, given: Given) -> List[Any]:
    """What a kind of demand is described by, out of all that is given."""
    demand, spread, records = given
    seasons = [each for each in records or [] if each is not None]
    values = {"demand": demand, "spread": spread, "records": seasons or None}
    missing = [each for each in NEEDED[kind] if values[each] is None]
    if missing:
        raise ValueError(f'{name}: for "{kind}" it needs {" and ".join(missing)}.')
    return [values[each] for each in NEEDED[kind]]


@formula(
    native="MAX(0,demand+spread*NORMSINV((price-cost)/(price-leftover)))",
    requires=WORTH_IT,
    source=ONE_SEASON,
    part=True,
)
def season_stock(
    price: SeasonPrice, cost: SeasonCost, leftover: Leftover, demand: SeasonDemand, spread: SeasonSpread
) -> Stock:
    """How many to make for one season, where demand varies as a normal distribution does.

    It stops where one more would lose as much, left over, as it would earn, sold.
    `season_quantity` takes other kinds of demand.

    >>> round(season_stock(price=24, cost=9, leftover=5, demand=60, spread=15), 2)
    72.07
    """
    return max(0.0, demand + spread * normal_quantile((price - cost) / (price - leftover)))


@formula(no_native="it counts up to the number", requires=WORTH_IT, source=ONE_SEASON, instead="season_quantity")
def season_stock_poisson(price: SeasonPrice, cost: SeasonCost, leftover: Leftover, demand: SmallDemand) -> Candles:
    """How many to make for one season, where buyers come by themselves, one by one (Poisson).

    For small numbers, such as a dozen at a market. It needs no record of the
    spread: how much demand varies follows from how many come.

    >>> season_stock_poisson(price=24, cost=9, leftover=5, demand=12)
    15.0
    """
    ratio, stock = (price - cost) / (price - leftover), 0
    chance = reached = math.exp(-demand)
    # Past the middle, a chance too small to count leaves nothing more to reach.
    while reached < ratio and (stock < demand or reached + chance > reached):
        stock += 1
        chance *= demand / stock
        reached += chance
    return stock


@formula(
    native="SMALL(sales,MAX(1,0-INT(0-ROUND((price-cost)/(price-leftover)*COUNT(sales),6))))",
    requires=WORTH_IT,
    source=ONE_SEASON,
    part=True,
)
def season_stock_of_records(price: SeasonPrice, cost: SeasonCost, leftover: Leftover, sales: Records) -> Stock:
    """How many to make for one season, by what people wanted in seasons like it.

    It gives the smallest record that is enough in enough seasons. Where
    more would bring the same profit, the smaller number is named.

    >>> season_stock_of_records(price=24, cost=9, leftover=5, sales=[40, 55, 48, 70, 62])
    62.0
    """
    # Rounded first: 6/9 of 6 seasons are 4 seasons, and not a hair more.
    enough = math.ceil(round_half_away((price - cost) / (price - leftover) * len(sales), 6))
    return sorted(sales)[max(1, enough) - 1]


@formula(
    native="(price-cost)*stock-(price-leftover)*((stock-demand)*NORMSDIST((stock-demand)/spread)"
    "+spread*EXP(0-((stock-demand)/spread)^2/2)/SQRT(2*PI()))",
    source=ONE_SEASON,
    part=True,
)
def season_profit(
    stock: Stock,
    price: SeasonPrice,
    cost: SeasonCost,
    leftover: Leftover,
    demand: SeasonDemand,
    spread: SeasonSpread,
) -> SignedMoney:
    """Profit to expect from so many made for one season, where demand varies as a normal distribution does.

    An average over many such seasons; one of them can bring much more or less.

    >>> round(season_profit(stock=72, price=24, cost=9, leftover=5, demand=60, spread=15), 2)
    817.74
    """
    z = (stock - demand) / spread
    left_over = (stock - demand) * NormalDist().cdf(z) + spread * NormalDist().pdf(z)
    return (price - cost) * stock - (price - leftover) * left_over


@formula(no_native="it adds up the chance of every number", source=ONE_SEASON, instead="expected_season_profit")
def season_profit_poisson(
    stock: WholeStock, price: SeasonPrice, cost: SeasonCost, leftover: Leftover, demand: SmallDemand
) -> SignedMoney:
    """Profit to expect from so many made for one season, where buyers come by themselves (Poisson).

    >>> round(season_profit_poisson(stock=15, price=24, cost=9, leftover=5, demand=12), 2)
    160.36
    """
    chance = reached = math.exp(-demand)
    left_over = 0.0
    # One more is left over for every number that is not reached.
    for number in range(int(stock)):
        left_over += reached
        chance *= demand / (number + 1)
        reached += chance
    return (price - cost) * stock - (price - leftover) * left_over


@formula(
    native="(price-cost)*stock-(price-leftover)*SUMPRODUCT((sales<stock)*(stock-sales))/COUNT(sales)",
    source=ONE_SEASON,
    part=True,
)
def season_profit_of_records(
    stock: Stock, price: SeasonPrice, cost: SeasonCost, leftover: Leftover, sales: Records
) -> SignedMoney:
    """Expected profit from making this many for one season: the average over the seasons on record.

    >>> season_profit_of_records(stock=62, price=24, cost=9, leftover=5, sales=[40, 55, 48, 70, 62])
    766.6
    """
    left_over = math.fsum(max(0.0, stock - wanted) for wanted in sales) / len(sales)
    return (price - cost) * stock - (price - leftover) * left_over
