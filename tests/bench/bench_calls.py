"""How long help takes to come, and what a declared call costs over the bare function. Run by hand:

    python tests/bench/bench_calls.py

Exit code 1 where a target is missed. Times are wall times of this machine: judge the ratios.
"""

# ruff: noqa: S603  the programs started here are our own choice

import statistics
import subprocess
import sys
import time
import timeit
from collections.abc import Callable
from pathlib import Path

from pint import UnitRegistry

from candlecalc.declaration.declared import REGISTRY, Term

PROCESSES, ROUNDS, CALLS = 15, 15, 20_000
MOST_OVER_BARE, LEAST_BELOW_PINT, MOST_OF_ARGPARSE = 1.0, 10.0, 3.0  # microseconds, times, times
# A function of 2, 4 and 7 arguments, with values for them.
CASES = {
    "oil_for_wax": (500.0, 0.08),
    "tapered_volume": (90.0, 70.0, 100.0, 3.0),
    "price_for_margin": (6.0, 0.5, 0.1, 0.45, 0.2, "gross", 0.3),
}
PINT_UNITS = {"g": "gram", "ml": "milliliter", "mm": "millimeter"}


def main() -> int:
    print(f"{'start-up, median of ' + str(PROCESSES):34} {'ms':>8} {'times':>8}")
    argparse, command = startup()
    print(f"{'python -c import argparse':34} {argparse:8.1f} {1:8.2f}")
    print(f"{'candlecalc --help':34} {command:8.1f} {command / argparse:8.2f}   at most {MOST_OF_ARGPARSE:g}\n")
    print(f"{'a call, microseconds':24} {'bare':>7} {'ours':>7} {'pint':>7} {'over bare':>10} {'pint: ours':>11}")
    met = command / argparse <= MOST_OF_ARGPARSE
    for name, values in CASES.items():
        bare, ours, pint = calls(name, values)
        print(
            f"{f'{name}, {len(values)}':24} {bare:7.3f} {ours:7.3f} {pint:7.2f} {ours - bare:10.3f} {pint / ours:11.1f}"
        )
        met = met and ours - bare <= MOST_OVER_BARE and pint / ours >= LEAST_BELOW_PINT
    print(f"{'':24} {'':23} at most {MOST_OVER_BARE:g} at least {LEAST_BELOW_PINT:g}")
    print("Every target is met." if met else "A target is missed.")
    return 0 if met else 1


def startup() -> tuple[float, float]:
    """Milliseconds for argparse and for our help, taken in turns so that both see the same machine."""
    command = str(Path(sys.executable).with_name("candlecalc"))
    pairs = [
        (seconds([sys.executable, "-c", "import argparse"]), seconds([command, "--help"])) for _ in range(PROCESSES)
    ]
    argparse, ours = zip(*pairs, strict=True)
    return statistics.median(argparse) * 1e3, statistics.median(ours) * 1e3


def seconds(command: list[str]) -> float:
    start = time.perf_counter()
    subprocess.run(command, check=True, capture_output=True)
    return time.perf_counter() - start


def calls(name: str, values: tuple[float | str, ...]) -> tuple[float, float, float]:
    """Microseconds of the bare function, of ours, and of the bare one behind pint's `wraps`."""
    formula = REGISTRY[name]
    registry = UnitRegistry(cache_folder=None)
    registry.define("money = [money]")
    wanted = [pint_unit(registry, argument.term) for argument in formula.arguments.values()]
    wrapped = registry.wraps(pint_unit(registry, formula.result), wanted)(formula.bare)
    quantities = [v if unit is None else registry.Quantity(v, unit) for v, unit in zip(values, wanted, strict=True)]
    return per_call(formula.bare, values), per_call(formula.checked, values), per_call(wrapped, quantities, 10)


def pint_unit(registry: UnitRegistry, term: Term) -> object:
    """What pint would be told to keep the same kinds apart: money is a unit, a share has no dimension."""
    if term.choices:
        return None
    share = "dimensionless" if term.unit.startswith("of ") else term.unit
    return registry.Unit(PINT_UNITS.get(term.unit, share))


def per_call(function: Callable[..., object], values: object, fewer: int = 1) -> float:
    # The arguments are spelled out: unpacking a tuple would hide part of the cost of a call.
    names = {f"a{place}": value for place, value in enumerate(values)}
    timer = timeit.Timer(f"f({', '.join(names)})", globals={"f": function, **names})
    # The least of several rounds: what disturbs a round only ever adds to it.
    return min(timer.repeat(ROUNDS, CALLS // fewer)) / (CALLS // fewer) * 1e6


if __name__ == "__main__":
    import candlecalc.calc  # noqa: F401  fills the registry

    raise SystemExit(main())
