"""Plan: how much to buy at a time, when to order again, and how much of it everyone gets."""

import math
from typing import Annotated, List, NamedTuple

from candlecalc.calc.sources import ALGEBRA, EVEN_SHARES, ORDER_QUANTITY, PRACTICE, PRICE_BREAKS, REORDER
from candlecalc.calc.terms import Money, Sharing
from candlecalc.calc.terms.plan import (
    Available,
    BreakPrices,
    Breaks,
    Demand,
    DemandRate,
    DemandSpread,
    FromPacks,
    Given,
    Holding,
    HoldingShare,
    LeadSpread,
    LeadTime,
    Needed,
    OnHand,
    OrderedQuantity,
    Ordering,
    OrderQuantity,
    Pack,
    PackPrice,
    Packs,
    PacksNeeded,
    RunOut,
    StockLevel,
    UnitPrice,
    Wants,
    WholeStep,
)
from candlecalc.declaration.declared import formula
from candlecalc.quantities.rounding import round_half_away
from candlecalc.quantities.statistics import normal_quantile


@formula(
    native="SQRT(2*demand*ordering/holding)",
    source=ORDER_QUANTITY,
    formerly=("order_quantity",),
    words="EOQ, order quantity, how much to order, best order size, lot size to buy",
)
def economic_order_quantity(demand: Demand, ordering: Ordering, holding: Holding) -> OrderQuantity:
    """How much to order at a time so that ordering and keeping cost least together.

    It assumes steady demand and the same price for any quantity; with price breaks use
    `best_break`. The cost is flat around it, so a whole number
    of packs near it costs hardly more: `ordering_cost` says how much.

    >>> economic_order_quantity(demand=900, ordering=12, holding=0.6)
    189.73665961010275
    """
    return math.sqrt(2 * demand * ordering / holding)


@formula(
    native="demand/quantity*ordering+quantity/2*holding",
    source=ORDER_QUANTITY,
    words="cost of ordering and holding, cost of many small orders",
)
def ordering_cost(quantity: OrderedQuantity, demand: Demand, ordering: Ordering, holding: Holding) -> Money:
    """What ordering and keeping cost over the time planned for, where so much is ordered at a time.

    What the goods themselves cost is not in it.

    >>> ordering_cost(quantity=200, demand=900, ordering=12, holding=0.6)
    114.0
    """
    return demand / quantity * ordering + quantity / 2 * holding


@formula(
    native="demand*price+demand/quantity*ordering+quantity/2*holding_share*price",
    source=PRICE_BREAKS,
    words="bulk discount, is the bulk price worth it, total cost of buying",
)
def buying_cost(
    quantity: OrderedQuantity, demand: Demand, ordering: Ordering, holding_share: HoldingShare, price: UnitPrice
) -> Money:
    """Total cost of goods, ordering and keeping if you buy this much at a time at this price.

    >>> buying_cost(quantity=200, demand=800, ordering=60, holding_share=0.3, price=48)
    40080.0
    """
    return demand * price + demand / quantity * ordering + quantity / 2 * holding_share * price


class BreakChoice(NamedTuple):
    """The quantity that costs least in all, its price, and that cost."""

    quantity: OrderQuantity
    price: UnitPrice
    cost: Money


@formula(
    requires={"demand > 0": "demand must be more than 0"},
    source=PRICE_BREAKS,
    words="bulk discount, quantity discount, price break, is the larger pack worth it, buy in bulk, volume discount",
)
def best_break(
    demand: Demand, ordering: Ordering, holding_share: HoldingShare, breaks: Breaks, prices: BreakPrices
) -> BreakChoice:
    """The order quantity that costs least in all, where the price falls for larger orders.

    A price holds for all that is bought at that quantity, not only for what is
    above the break. Where two quantities cost the same the smaller one is named.

    >>> best_break(demand=800, ordering=60, holding_share=0.3, breaks=[1, 50, 200], prices=[53, 51.5, 48])
    BreakChoice(quantity=200.0, price=48.0, cost=40080.0)
    """
    _refuse_out_of_order(breaks, prices)
    choices = []
    for low, high, price in zip(breaks, list(breaks[1:]) + [math.inf], prices):
        quantity = max(low, economic_order_quantity(demand, ordering, holding_share * price))
        # Beyond this break the next price holds, and costs less at any such quantity.
        if 0 < quantity < high:
            choices.append(BreakChoice(quantity, price, buying_cost(quantity, demand, ordering, holding_share, price)))
    if not choices:
        raise ValueError("best_break: where ordering costs nothing, the first break must be more than 0.")
    return min(choices, key=lambda choice: choice.cost)


def _refuse_out_of_order(breaks: Breaks, prices: BreakPrices) -> None:
    for place in range(1, len(breaks)):
        if breaks[place] <= breaks[place - 1]:
            raise ValueError(f"best_break: breaks at place {place + 1} must be above the one before.")
        if prices[place] > prices[place - 1]:
            raise ValueError(f"best_break: prices at place {place + 1} must not be above the one before.")


BUFFER = "(0-NORMSINV(risk))*SQRT(lead_time*spread^2+demand^2*lead_spread^2)"


@formula(
    native=BUFFER,
    source=REORDER,
    formerly=("buffer_stock",),
    words="buffer stock, spare stock, cushion, stock for bad weeks",
)
def safety_stock(
    demand: DemandRate,
    lead_time: LeadTime,
    risk: RunOut,
    spread: DemandSpread = 0.0,
    lead_spread: LeadSpread = 0.0,
) -> StockLevel:
    """Extra stock to keep for uneven demand and late deliveries while you wait for an order.

    Demand and the time an order takes are in one unit of time: both in days, or
    both in weeks. It assumes that both follow a normal distribution.

    >>> round(safety_stock(demand=40, lead_time=2, risk=0.05, spread=6), 2)
    13.96
    """
    return (0 - normal_quantile(risk)) * math.sqrt(lead_time * spread**2 + demand**2 * lead_spread**2)


@formula(
    native=f"demand*lead_time+{BUFFER}",
    source=REORDER,
    words="when to reorder, reorder level, order again, lead time, minimum stock, running low, run out",
)
def reorder_point(
    demand: DemandRate,
    lead_time: LeadTime,
    risk: RunOut,
    spread: DemandSpread = 0.0,
    lead_spread: LeadSpread = 0.0,
) -> StockLevel:
    """Order again when this much is left: what is used until the order comes, and the buffer.

    Count what is already on order as if it were there. Demand and the time an
    order takes are in one unit of time.

    >>> round(reorder_point(demand=40, lead_time=2, risk=0.05, spread=6), 2)
    93.96
    """
    return demand * lead_time + safety_stock(demand, lead_time, risk, spread, lead_spread)


@formula(
    native="MAX(0,ROUNDUP(ROUND((needed-on_hand)/pack,6),0))",
    source=PRACTICE,
    words="how many bags of wax, how many cases of jars, jars per case, whole packs, round up to packs, "
    "shopping list, lids to buy, wick stickers, wick tabs, labels per sheet, sheets of labels, what am I "
    "short of",
)
def packs_to_buy(needed: Needed, pack: Pack, on_hand: OnHand = 0.0) -> Packs:
    """Whole packs to buy for what is needed and not on hand.

    >>> packs_to_buy(needed=7300, pack=2500, on_hand=1000)
    3.0
    """
    return max(0, math.ceil(round_half_away((needed - on_hand) / pack, 6)))


FirstFrom = Annotated[FromPacks, "the first break"]
FirstPrice = Annotated[PackPrice, "from the first break on"]
SecondFrom = Annotated[FromPacks, "the second break"]
SecondPrice = Annotated[PackPrice, "from the second break on"]
BREAKS = {
    "first_price <= price": "a larger order must not be dearer by the pack",
    "second_price <= first_price": "a still larger order must not be dearer by the pack",
    "second >= first": "the second break must not come before the first",
}


@formula(
    native="IF(ROUND(MIN(packs*price,MAX(packs,first)*first_price)-MAX(packs,second)*second_price,6)<=0,"
    "IF(ROUND(packs*price-MAX(packs,first)*first_price,6)<=0,packs,MAX(packs,first)),MAX(packs,second))",
    requires=BREAKS,
    source=ALGEBRA,
    words="round up to the price break, is one pack more cheaper, volume discount, bulk price",
)
def packs_at_breaks(
    packs: PacksNeeded,
    price: PackPrice,
    first: FirstFrom,
    first_price: FirstPrice,
    second: SecondFrom,
    second_price: SecondPrice,
) -> Packs:
    """How many packs to buy once where larger orders are cheaper: what costs least, and no fewer than are needed.

    A price holds for all packs of the order. Where two numbers cost the same, the
    smaller one is given. Where there is only one break, give it twice.

    >>> packs_at_breaks(packs=9, price=10, first=10, first_price=8, second=25, second_price=7.5)
    10.0
    """
    choices = [(packs, price), (max(packs, first), first_price), (max(packs, second), second_price)]
    # To six decimals: sums of money that are equal must not be told apart by their last digits.
    return float(min(choices, key=lambda choice: (round_half_away(choice[0] * choice[1], 6), choice[0]))[0])


@formula(
    native="IF(packs>=second,second_price,IF(packs>=first,first_price,price))",
    requires=BREAKS,
    source=ALGEBRA,
    part=True,
)
def price_at_breaks(
    packs: PacksNeeded,
    price: PackPrice,
    first: FirstFrom,
    first_price: FirstPrice,
    second: SecondFrom,
    second_price: SecondPrice,
) -> PackPrice:
    """The price of each pack in an order of so many, where larger orders are cheaper.

    >>> price_at_breaks(packs=10, price=10, first=10, first_price=8, second=25, second_price=7.5)
    8.0
    """
    return second_price if packs >= second else first_price if packs >= first else price


@formula(
    source=EVEN_SHARES,
    words="not enough for everyone, ration, allocate stock",
)
def fair_split(available: Available, wants: Wants, step: WholeStep = 1.0, sharing: Sharing = "in proportion") -> Given:
    """Share out what there is too little of: oil for several products, candles for several shops.

    In proportion to what each one wants, or evenly: the same for all, but no
    one more than it wants. All is handed out in whole steps, the parts add up to
    what is there, and a step left over goes to the larger fraction, or to the
    earlier line. Where there is enough, each gets what it wants.

    >>> fair_split(available=10, wants=[8, 6, 2])
    [5.0, 4.0, 1.0]
    """
    there, wanted = _steps(available, step), [_steps(want, step) for want in wants]
    there = min(there, sum(wanted))
    steps = _even(there, wanted) if sharing == "evenly" else _in_proportion(there, wanted)
    return [round_half_away(count * step, 9) for count in steps]


def _steps(amount: float, step: float) -> int:
    return math.floor(round_half_away(amount / step, 6))


def _in_proportion(there: int, wanted: List[int]) -> List[int]:
    total = sum(wanted) or 1
    parts = [there * want // total for want in wanted]
    # Whole numbers throughout: a tie is a tie, and the earlier line has it.
    by_fraction = sorted(range(len(wanted)), key=lambda line: (-(there * wanted[line] % total), line))
    for line in by_fraction[: there - sum(parts)]:
        parts[line] += 1
    return parts


def _even(there: int, wanted: List[int]) -> List[int]:
    share, rest = 0, there
    # Those who want least are served first: what they leave is shared by the others.
    for served, want in enumerate(sorted(wanted)):
        share = rest // (len(wanted) - served)
        if want > share:
            break
        rest -= want
    parts = [min(want, share) for want in wanted]
    waiting = [line for line, want in enumerate(wanted) if want > share]
    for line in waiting[: there - sum(parts)]:
        parts[line] += 1
    return parts
