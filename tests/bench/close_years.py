"""Random years closed, by both methods, and held to the laws of closing: as many as are asked for.

    python tests/bench/close_years.py [YEARS] [--first N] [--parted]

With --parted each year is parted in two seasons as well, and its end compared with that of the year in one.
"""

import argparse
import sys
from pathlib import Path

TESTS = Path(__file__).resolve().parent.parent
sys.path[:0] = [str(TESTS), str(TESTS / "workbook")]

from closing_laws import LAWS, Closing, two_seasons_end_as_one  # noqa: E402
from years_to_close import closable  # noqa: E402


def main() -> None:
    options = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    options.add_argument("years", type=int, nargs="?", default=200)
    options.add_argument("--first", type=int, default=1, help="the number of the first year")
    options.add_argument("--parted", action="store_true", help="each year in two seasons, too")
    asked = options.parse_args()
    broken = held = 0
    for seed in range(asked.first, asked.first + asked.years):
        for method in ("fifo", "average"):
            closing = Closing(closable(seed, method))
            found = {law.__name__: law(closing) for law in LAWS}
            if asked.parted and method == "fifo":
                found["two_seasons_end_as_one"] = two_seasons_end_as_one(closable(seed, method, counts=False))
            for law, words in found.items():
                held, broken = held + (not words), broken + bool(words)
                for each in words:
                    print(f"year {seed}, {method}, {law}: {each}", flush=True)
    print(f"{asked.years} years by both methods: {held} laws held, {broken} broken")
    sys.exit(broken > 0)


if __name__ == "__main__":
    main()
