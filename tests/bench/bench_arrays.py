"""What a million rows cost over the bare NumPy expression, beside a loop and numpy.vectorize. Run by hand:

    python tests/bench/bench_arrays.py

Exit code 1 where a target is missed. Times are wall times of this machine, the least of several rounds:
judge the ratios.
"""

import timeit
from collections.abc import Callable
from typing import Any, NamedTuple

import numpy as np

import candlecalc
from candlecalc.declaration.declared import REGISTRY

ROWS, FEWER, ROUNDS = 1_000_000, 20_000, 9
CHANCE = np.random.default_rng(7)


def between(low: float, high: float) -> Any:
    return CHANCE.uniform(low, high, ROWS)


class Case(NamedTuple):
    name: str
    given: dict[str, Any]
    bare: Callable[..., Any]
    most: float  # times the bare expression; 0 where it is told only


CASES = [
    Case("oil_for_wax", {"wax": between(100, 900), "load": between(0.02, 0.1)}, lambda wax, load: wax * load, 5),
    Case("oil_for_wax", {"wax": between(100, 900), "load": 0.08}, lambda wax, load: wax * load, 5),
    Case(
        "load_swing",  # five operations
        {"wax": between(100, 900), "oil": between(10, 40), "step": between(0.1, 1)},
        lambda wax, oil, step: (oil + step / 2) / (wax - step / 2) - oil / wax,
        2,
    ),
    Case(
        "tapered_volume",
        {"top": between(70, 90), "bottom": between(60, 70), "height": between(80, 100), "base": between(0, 4)},
        lambda top, bottom, height, base: (
            (
                np.pi / 12 * height * (top**2 + top * bottom + bottom**2)
                - np.pi / 6 * base * (0.75 * bottom**2 + base**2)
            )
            / 1000
        ),
        2,
    ),
    Case(
        "to_scale_step",  # a rounding: told, there is no target
        {"weight": between(100, 900), "step": 0.5},
        lambda weight, step: np.floor(weight / step + 0.5) * step,
        0,
    ),
]


def main() -> int:
    print(
        f"{f'{ROWS:,} rows, ms':24} {'NumPy':>8} {'ours':>8} {'times':>7} {'at most':>8} {'loop':>8} {'vectorize':>10}"
    )
    met = True
    for case in CASES:
        function = getattr(candlecalc, case.name)
        bare, ours = in_turns(lambda case=case: case.bare(**case.given), lambda: function(**case.given))  # noqa: B023
        np.testing.assert_allclose(function(**case.given), case.bare(**case.given), rtol=1e-9, atol=1e-9)
        loop, vectorize = slow_ways(case)
        most = f"{case.most:g}" if case.most else ""
        print(f"{case.name:24} {bare:8.2f} {ours:8.2f} {ours / bare:7.2f} {most:>8} {loop:8.0f} {vectorize:10.0f}")
        met = met and (not case.most or ours <= case.most * bare)
    short = timeit.timeit(lambda: candlecalc.oil_for_wax([500, 250, 100], 0.08), number=2000) / 2000
    print(f"a call of three rows: {short * 1e6:.0f} microseconds")
    print("Every target is met." if met else "A target is missed.")
    return 0 if met else 1


def in_turns(*ways: Callable[[], Any]) -> list[float]:
    """Milliseconds of each, taken in turns so that all see the same machine."""
    rounds = [[timeit.timeit(way, number=1) * 1e3 for way in ways] for _ in range(ROUNDS)]
    return [min(times) for times in zip(*rounds, strict=True)]


def slow_ways(case: Case) -> tuple[float, float]:
    """Milliseconds of a loop of plain calls and of numpy.vectorize, on fewer rows and multiplied."""
    checked = REGISTRY[case.name].checked
    fewer = {name: np.broadcast_to(value, ROWS)[:FEWER] for name, value in case.given.items()}
    lists = [value.tolist() for value in fewer.values()]
    vectorized = np.vectorize(checked, otypes=[float])
    ways = in_turns(lambda: [checked(*row) for row in zip(*lists, strict=True)], lambda: vectorized(*fewer.values()))
    return ways[0] * ROWS / FEWER, ways[1] * ROWS / FEWER


if __name__ == "__main__":
    raise SystemExit(main())
