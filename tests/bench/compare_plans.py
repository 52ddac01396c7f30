"""Plans against brute force, as many as are asked for: packs with price breaks, and pots on evenings.

    python tests/bench/compare_plans.py 300 [FROM SEED]

Exit code 1 where a cheaper or later way is found than the plan's.
"""

import random
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path[:0] = [str(ROOT), str(ROOT / "workbook")]

from plan_books import Planned  # noqa: E402
from plan_cases import cheapest, least_early, pots_on_evenings  # noqa: E402

from candlecalc.calc import packs_at_breaks, price_at_breaks  # noqa: E402


def main(count: int, first: int) -> int:
    dearer = sum(_dearer(seed) for seed in range(first, first + count))
    print(f"packs with price breaks: {count} cases, {dearer} with a cheaper order")
    found = [_evenings(seed) for seed in range(first, first + count)]
    late = sum(least is None for _, least in found)
    worse = sum(plan != least for plan, least in found)
    print(f"pots on evenings: {count} cases, {late} of them without room, {worse} with a better way")
    return 1 if dearer or worse else 0


def _dearer(seed: int) -> bool:
    chance = random.Random(seed)  # noqa: S311
    prices = sorted((chance.randint(1, 40) for _ in range(3)), reverse=True)
    first = chance.randint(2, 10)
    given = chance.randint(0, 15), prices[0], first, prices[1], first + chance.randint(1, 10), prices[2]
    best = packs_at_breaks(*given)
    return best * price_at_breaks(best, *given[1:]) != cheapest(*given)


def _evenings(seed: int) -> tuple[int | None, int | None]:
    case = pots_on_evenings(seed)
    return case.early(Planned(case.season()).rows("plan", "due", "pots", "before")), least_early(case)


if __name__ == "__main__":
    sys.exit(main(int(sys.argv[1]), int(sys.argv[2]) if len(sys.argv) > 2 else 0))
