"""How long a burn log takes as it grows: it has to stay in step with its rows. Run by hand:

    python tests/bench/bench_burn.py

Exit code 1 where ten times the rows take more than MOST times as long. Times are of the processor, the least of
some rounds.
"""

import random
import time
from collections.abc import Callable

from candlecalc.calc import burn_rate, burn_time_from_log, fastest_candle, flame_height_high, hours_left_between

ROWS, ROUNDS, MOST = [10_000, 100_000], 5, 15.0


def main() -> int:
    print(f"{'milliseconds for rows':22}" + "".join(f"{rows:>10,}" for rows in ROWS) + f"{'tenfold':>10}")
    met = True
    for name, call in CALLS.items():
        times = [quickest(call, log(rows)) for rows in ROWS]
        steps = [after / before for before, after in zip(times, times[1:], strict=False)]
        met = met and max(steps) <= MOST
        print(f"{name:22}" + "".join(f"{each * 1e3:10.1f}" for each in times) + "".join(f"{s:10.1f}" for s in steps))
    print("Every time is in step with its rows." if met else f"A time grew by more than {MOST:g} times.")
    return 0 if met else 1


CALLS: dict[str, Callable[[list[float], list[float]], object]] = {
    "burn_rate": burn_rate,
    "burn_time_from_log": lambda hours, weights: burn_time_from_log(hours, weights, 220, 52),
    "hours_left_between": lambda hours, weights: hours_left_between(hours, weights, 0),
    "fastest_candle": lambda hours, weights: fastest_candle([weight / 100 for weight in weights]),
    "flame_height_high": lambda hours, weights: flame_height_high(
        5, [hour + 1 for hour in hours], [weight / 10 for weight in weights]
    ),
}


def log(rows: int) -> tuple[list[float], list[float]]:
    """A candle of two kilograms weighed often over ten days."""
    chance = random.Random(rows)  # noqa: S311
    hours = [240 * row / rows for row in range(rows)]
    return hours, [2000 - 4 * hour + chance.gauss(0, 0.5) for hour in hours]


def quickest(call: Callable[[list[float], list[float]], object], values: tuple[list[float], list[float]]) -> float:
    times = []
    for _ in range(ROUNDS):
        start = time.process_time()
        call(*values)
        times.append(time.process_time() - start)
    return min(times)


if __name__ == "__main__":
    raise SystemExit(main())
