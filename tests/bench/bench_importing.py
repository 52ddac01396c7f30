"""What reading in a file of 20,000 lines costs, in seconds of a processor and in memory. Run by hand:

    python tests/bench/bench_importing.py

Two files of sales for the demo's year: one that does not fit and is refused with the number, and one of which the most
part lies outside the season, and 300 lines are taken over. Beside the second stands what the same workbook costs
without a file.
"""

import datetime
import resource
import subprocess
import sys
import tempfile
from pathlib import Path

from candlecalc.season import folder
from candlecalc.season.season import Season

LINES, TAKEN = 20_000, 300
FIRST, BEFORE = datetime.date(2027, 9, 1), datetime.date(2020, 1, 1)
HEADS = "Ordered,Order no.,Title,Copies,Unit price,Shipping,Status\n"
LAYOUT = ("--as", "sales", "--layout", "Web shop")


def file_of(path: Path, season: Season, inside: int) -> Path:
    """A shop's file of so many lines, some of them in the season; two lines an order."""
    products = season.names("recipes")
    days = [FIRST if at < inside else BEFORE for at in range(LINES)]
    lines = [
        f'{day + datetime.timedelta(days=at % 90)},N{at // 2},"{products[at % len(products)]}",{1 + at % 3},'
        f"{9 + at % 1000 / 100:.2f},{'7.00' if at % 2 else ''},shipped\n"
        for at, day in enumerate(days)
    ]
    path.write_text(HEADS + "".join(lines), encoding="utf-8")
    return path


def measured(*words: object) -> tuple[float, str]:
    """What a command takes, and the last line that it says."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    done = subprocess.run([sys.executable, "-m", "candlecalc", *map(str, words)], capture_output=True, text=True)  # noqa: S603
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    took = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
    return took, (done.stdout + done.stderr).strip().splitlines()[-1]


def main() -> None:
    season = folder.read(folder.DEMO, records=True)
    with tempfile.TemporaryDirectory() as made:
        there = Path(made)
        year = there / "year.xlsx"
        measured("new", year, "--demo", "--records")
        some, every = (file_of(there / f"{inside}.csv", season, inside) for inside in (TAKEN, LINES))
        commands = {
            f"{LINES:,} lines that do not fit": ("import", year, every, there / "a.xlsx", *LAYOUT),
            f"{LINES:,} lines, {TAKEN} taken over": ("import", year, some, there / "b.xlsx", *LAYOUT),
            "the same workbook without a file": ("new", there / "c.xlsx", "--from", year),
        }
        for what, words in commands.items():
            took, said = measured(*words)
            print(f"{what}: {took:.1f} s of a processor; {said}")
    print(f"most memory: {resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss / 1024:.0f} MB")


if __name__ == "__main__":
    main()
