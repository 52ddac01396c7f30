"""Stock: what went out cost, and what is left is worth, by first in first out or by an average."""

import math
from collections import deque
from decimal import Context, Decimal, localcontext
from typing import Deque, List, NamedTuple, Optional, Sequence, Tuple

from candlecalc.calc.sources import VALUATION
from candlecalc.calc.terms import Quantity, UnitCost
from candlecalc.calc.terms.stock import (
    Bought,
    CountMethod,
    IssueCosts,
    Left,
    LogMethod,
    LotCosts,
    LotLine,
    MoveCosts,
    Moves,
    Taken,
    Used,
    Worth,
)
from candlecalc.declaration.declared import formula

# Sums of what was typed are exact with this many digits: no crumb of a lot is left by rounding.
AS_TYPED = Context(prec=60)


class StockValue(NamedTuple):
    """What the goods that went out cost, how much is left, and what that is worth."""

    used: Used
    left: Quantity
    worth: Worth


class LotLeft(NamedTuple):
    """A lot of which something is left: its line in the log, how much, and what that is worth."""

    line: LotLine
    left: Quantity
    worth: Worth


@formula(
    source=VALUATION,
    words="fifo, first in first out, lifo, inventory value, stock value, moving average",
)
def stock_from_log(moves: Moves, costs: MoveCosts, method: LogMethod = "FIFO") -> StockValue:
    """Cost of what went out, value of what is left, from a log of receipts and issues.

    The first line is what was there at the start, with its cost. An average is
    not rounded on its way. LIFO is for comparison only: IAS 2 does not allow
    it, and US tax allows it only where the books use it too. Where there is no
    log of issues, count and use `stock_from_count`.

    >>> stock_from_log(moves=[30, -20, 40, -35], costs=[2, "", 2.5, ""])
    StockValue(used=122.5, left=15.0, worth=37.5)
    """
    issued, lots = _gone_through("stock_from_log", moves, costs, method)
    return _valued(issued, lots)


@formula(
    source=VALUATION,
    words="fifo, cost of each sale",
)
def issue_costs(moves: Moves, costs: MoveCosts, method: LogMethod = "FIFO") -> IssueCosts:
    """What each issue cost, line by line beside the log: the cost of goods of each sale or batch.

    LIFO is for comparison only.

    >>> issue_costs(moves=[30, -20, 40, -35], costs=[2, "", 2.5, ""])
    [0.0, 40.0, 0.0, 82.5]
    """
    issued, _ = _gone_through("issue_costs", moves, costs, method)
    return [float(cost) for cost in issued]


@formula(
    source=VALUATION,
    words="fifo layers, what is left of each purchase",
)
def lots_left(moves: Moves, costs: MoveCosts) -> List[LotLeft]:
    """The lots that make up what is left, where the oldest goes first: the proof of a closing value.

    A log of which nothing is left has no answer.

    >>> lots_left(moves=[30, -20, 40], costs=[2, "", 2.5])
    [LotLeft(line=1.0, left=10.0, worth=20.0), LotLeft(line=3.0, left=40.0, worth=100.0)]
    """
    _, lots = _gone_through("lots_left", moves, costs, "FIFO")
    if not lots:
        raise ValueError("lots_left: nothing is left.")
    return [LotLeft(float(lot.line), float(lot.left), float(lot.worth)) for lot in lots]


@formula(
    source=VALUATION,
    words="inventory value, year end stock, stock value, stock take, fifo, closing stock, stock on the shelf",
)
def stock_from_count(bought: Bought, costs: LotCosts, left: Left, method: CountMethod = "FIFO") -> StockValue:
    """Cost of what went out, value of what is left, from the lots bought and a count at the end.

    For a small maker's year: no issue need be written down. By FIFO it comes to
    what a log would say. LIFO is for comparison only: IAS 2 does not allow it,
    and US tax allows it only where the books use it too.

    >>> stock_from_count(bought=[30, 40], costs=[2, 2.5], left=15)
    StockValue(used=122.5, left=15.0, worth=37.5)
    """
    with localcontext(AS_TYPED):
        lots = _bought(bought, costs)
        there = sum((lot.left for lot in lots), Decimal(0))
        gone = there - _exact(left)
        if gone < 0:
            raise ValueError(f"stock_from_count: left is {left:g}, more than the {float(there):g} there were.")
        if method == "periodic average":
            lots = _merged(lots)
        return _valued([_take(lots, gone, newest=method == "LIFO")], lots)


@formula(
    native="SUMPRODUCT(bought,costs)/SUM(bought)",
    requires={"SUM(bought) > 0": "something must have been bought"},
    source=VALUATION,
    words="weighted average, average price paid, mean price of purchases",
)
def average_cost(bought: Bought, costs: LotCosts) -> UnitCost:
    """Average cost of one unit over all lots: the periodic average. Not rounded: round what you work out from it.

    >>> average_cost(bought=[30, 50], costs=[2, 2.4])
    2.25
    """
    return math.fsum(amount * cost for amount, cost in zip(bought, costs)) / math.fsum(bought)


@formula(
    source="specific identification: OpenStax, Financial Accounting 10.2",
    words="specific identification, lot by lot",
)
def stock_from_lots(bought: Bought, costs: LotCosts, taken: Taken) -> StockValue:
    """Cost of what went out, value of what is left, if you wrote down which lot each came from.

    For comparison only, as candles of a kind are alike: IAS 2 keeps it for goods
    that cannot stand in for each other.

    >>> stock_from_lots(bought=[30, 40], costs=[2, 2.5], taken=[12, 20])
    StockValue(used=74.0, left=38.0, worth=86.0)
    """
    for place, (amount, out) in enumerate(zip(bought, taken), start=1):
        if out > amount:
            raise ValueError(f"stock_from_lots: taken at place {place} is {out:g}; the lot held {amount:g}.")
    left = [float(_exact(amount) - _exact(out)) for amount, out in zip(bought, taken)]
    used = math.fsum(out * cost for out, cost in zip(taken, costs))
    return StockValue(used, math.fsum(left), math.fsum(amount * cost for amount, cost in zip(left, costs)))


class _Lot(NamedTuple):
    line: int
    left: Decimal
    worth: Decimal


def _gone_through(
    name: str, moves: Sequence[float], costs: Sequence[Optional[float]], method: str
) -> Tuple[List[Decimal], Deque[_Lot]]:
    """What went out in each line cost, and the lots left at the end."""
    issued: List[Decimal] = []
    lots: Deque[_Lot] = deque()
    there = Decimal(0)
    with localcontext(AS_TYPED):
        for line, (move, cost) in enumerate(zip(moves, costs), start=1):
            amount = _exact(move)
            there += amount
            _refuse_line(name, line, amount, cost, there)
            if amount < 0:
                issued.append(_take(lots, -amount, newest=method == "LIFO"))
                continue
            issued.append(Decimal(0))
            if amount:
                lots.append(_Lot(line, amount, amount * _exact(cost or 0)))
            if method == "moving average":
                lots = _merged(lots)
    return issued, lots


def _refuse_line(name: str, line: int, amount: Decimal, cost: Optional[float], there: Decimal) -> None:
    if amount > 0 and cost is None:
        raise ValueError(f"{name}: costs at place {line} is blank; what came in needs its cost.")
    if amount < 0 and cost is not None:
        raise ValueError(f"{name}: costs at place {line} is {cost:g}; it stays blank where something went out.")
    if there < 0:
        raise ValueError(f"{name}: moves at place {line} takes out {-amount:f}; there are {there - amount:f}.")


def _bought(bought: Sequence[float], costs: Sequence[float]) -> Deque[_Lot]:
    lots = ((_exact(amount), _exact(cost)) for amount, cost in zip(bought, costs))
    return deque(_Lot(line, amount, amount * cost) for line, (amount, cost) in enumerate(lots, start=1))


def _merged(lots: Deque[_Lot]) -> Deque[_Lot]:
    """All lots as one: from here on each unit costs the average."""
    if len(lots) < 2:
        return lots
    left = sum((lot.left for lot in lots), Decimal(0))
    return deque([_Lot(lots[-1].line, left, sum((lot.worth for lot in lots), Decimal(0)))])


def _take(lots: Deque[_Lot], amount: Decimal, newest: bool) -> Decimal:
    """Take so much out of the lots, from one end; what it cost."""
    cost = Decimal(0)
    while amount > 0:
        lot = lots.pop() if newest else lots.popleft()
        used = min(amount, lot.left)
        part = lot.worth if used == lot.left else lot.worth * used / lot.left
        if used < lot.left:
            rest = lot._replace(left=lot.left - used, worth=lot.worth - part)
            lots.append(rest) if newest else lots.appendleft(rest)
        amount -= used
        cost += part
    return cost


def _valued(issued: Sequence[Decimal], lots: Deque[_Lot]) -> StockValue:
    with localcontext(AS_TYPED):
        used = sum(issued, Decimal(0))
        left, worth = sum((lot.left for lot in lots), Decimal(0)), sum((lot.worth for lot in lots), Decimal(0))
    return StockValue(float(used), float(left), float(worth))


def _exact(amount: float) -> Decimal:
    # As typed: 0.1 and not the float beside it.
    return Decimal(f"{amount:.15g}")
