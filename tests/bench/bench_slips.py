"""Seasons with entries typed wrong: whether memory, a file, LibreOffice and Gnumeric come to the same, cell by cell.

    python tests/bench/bench_slips.py [HOW MANY] [FIRST]

Each is a part of the demo with 1 to 30 slips in it. The other two calculate files in which stored values are spoilt.
"""

import sys
import tempfile
from collections import Counter
from itertools import zip_longest
from pathlib import Path

HERE = Path(__file__).resolve().parent.parent
sys.path[:0] = [str(HERE), str(HERE / "workbook")]

import books  # noqa: E402
import libreoffice  # noqa: E402
from seasons_with_slips import differing, with_slips  # noqa: E402


def main() -> None:
    many, first = (int(given or usual) for given, usual in zip_longest(sys.argv[1:], (200, 1)))
    total: Counter[str] = Counter()
    cells = 0
    with tempfile.TemporaryDirectory() as place:
        for done, seed in enumerate(range(first, first + many), start=1):
            made = books.Book(with_slips(books.small(), seed, 1 + seed % 30), Path(place, "season.xlsx"))
            cells += len(made.formulas)
            for name, found in differing(made, Path(place), libreoffice.shared()).items():
                total[name] += len(found)
                for (tab, cell), (ours, theirs) in found.items():
                    print(f"season {seed}, {tab} {cell}: {ours!r} in memory, {theirs!r} by {name}")
            print(f"{done} seasons, {cells} formulas; cells that differ: {dict(total)}", flush=True)


if __name__ == "__main__":
    main()
