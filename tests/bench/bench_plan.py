"""How long stock logs and season plans take, and how that grows with their length. Run by hand:

    python tests/bench/bench_plan.py

Exit code 1 where a target is missed. Times are processor seconds of this machine, the best of three: judge the ratios.
"""

import random
import sys
import time
from collections.abc import Callable
from datetime import date, timedelta

from candlecalc.calc import fair_split, issue_costs, lot_sizes, lots_left, lots_to_use, stock_from_count, stock_from_log

LOTS, MOST_GROWTH = 10_000, 6.0  # four times the lots; a square would take sixteen times as long
WEEKS, PRODUCTS, MOST_SECONDS = 52, 20, 1.0
chance = random.Random(52)  # noqa: S311


def main() -> int:
    met = True
    print(f"{'':34} {f'{LOTS} lots':>14} {f'{4 * LOTS} lots':>14} {'times':>7}")
    for name, call in CASES.items():
        short, long = seconds(call, LOTS), seconds(call, 4 * LOTS)
        met &= long / short <= MOST_GROWTH
        print(f"{name:34} {short:12.3f} s {long:12.3f} s {long / short:7.1f}   at most {MOST_GROWTH:g}")
    demand = [[chance.randint(0, 60) for _ in range(WEEKS)] for _ in range(PRODUCTS)]
    planned = best_of(lambda: [lot_sizes(sales, 40, 0.15) for sales in demand])
    met &= planned <= MOST_SECONDS
    print(f"{f'lot sizes, {WEEKS} weeks, {PRODUCTS} products':34} {planned:12.3f} s   at most {MOST_SECONDS:g} s")
    return 0 if met else 1


def seconds(call: Callable[..., object], lots: int) -> float:
    given = inputs(lots)
    return best_of(lambda: call(given))


def best_of(call: Callable[[], object], times: int = 3) -> float:
    found = []
    for _ in range(times):
        start = time.process_time()
        call()
        found.append(time.process_time() - start)
    return min(found)


def inputs(lots: int) -> dict[str, list]:
    """A log of as many receipts as issues, each issue a little smaller than the receipt before it."""
    amounts = [chance.randint(100, 900) / 10 for _ in range(lots)]
    costs = [chance.randint(100, 900) / 100 for _ in range(lots)]
    moves = [move for amount in amounts for move in (amount, -round(amount * 0.9, 2))]
    days = [date(2026, 1, 1) + timedelta(days=chance.randint(0, 700)) for _ in range(lots)]
    return {
        "amounts": amounts,
        "costs": costs,
        "moves": moves,
        "days": days,
        "names": [f"L{n}" for n in range(lots)],
    } | {"log": [cell for cost in costs for cell in (cost, None)]}


CASES: dict[str, Callable[[dict[str, list]], object]] = {
    "stock_from_log, FIFO": lambda given: stock_from_log(given["moves"], given["log"]),
    "stock_from_log, moving average": lambda given: stock_from_log(given["moves"], given["log"], "moving average"),
    "stock_from_log, LIFO": lambda given: stock_from_log(given["moves"], given["log"], "LIFO"),
    "issue_costs": lambda given: issue_costs(given["moves"], given["log"]),
    "lots_left": lambda given: lots_left(given["moves"], given["log"]),
    "stock_from_count": lambda given: stock_from_count(given["amounts"], given["costs"], 1000),
    "lots_to_use": lambda given: lots_to_use(
        given["names"], given["amounts"], given["days"], sum(given["amounts"]) / 2, date(2026, 1, 1)
    ),
    "fair_split": lambda given: fair_split(sum(given["amounts"]) / 3, given["amounts"], 0.1),
}


if __name__ == "__main__":
    sys.exit(main())
