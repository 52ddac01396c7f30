"""Random years of records compared with exact fractions, to the cent, as many as are asked for.

    python tests/bench/compare_years.py [YEARS] [--office] [--first N] [--sales]

Each year by both methods: in the embedded engine, and with --office in LibreOffice and Gnumeric too; with --sales
years that sell what they make.
"""

import argparse
import subprocess
import sys
import tempfile
from pathlib import Path

TESTS = Path(__file__).resolve().parent.parent
sys.path[:0] = [str(TESTS), str(TESTS / "workbook")]

import books  # noqa: E402
import libreoffice  # noqa: E402
import year_sales_seasons  # noqa: E402
from year_reference import worked_out  # noqa: E402
from year_seasons import year  # noqa: E402
from year_workbook import Typed, compared, in_memory, season_of, without_sets  # noqa: E402


def main() -> None:
    options = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    options.add_argument("years", type=int, nargs="?", default=200)
    options.add_argument("--first", type=int, default=1, help="the number of the first year")
    options.add_argument("--office", action="store_true", help="in LibreOffice and Gnumeric, too")
    options.add_argument("--sales", action="store_true", help="years with sales")
    asked = options.parse_args()
    figures = different = 0
    for seed in range(asked.first, asked.first + asked.years):
        for method in ("fifo", "average"):
            made = year_sales_seasons.year(seed, method) if asked.sales else without_sets(year(seed, method))
            for engine, plan, values in calculated(season_of(made), asked.office):
                tabs = Typed(made, plan, values)
                found, count = compared(worked_out(tabs.as_poured()), tabs.figures())
                figures, different = figures + count, different + len(found)
                for words in found:
                    print(f"year {seed}, {method}, {engine}: {words}")
    print(f"{asked.years} years by both methods: {figures:,} figures compared, {different} differ")
    sys.exit(different > 0)


def calculated(season, office):
    """The values of a season's workbook in each engine."""
    yield "embedded", *in_memory(season)
    if office:
        with tempfile.TemporaryDirectory() as folder:
            book, again = (Path(folder) / name for name in ("year.xlsx", "gnumeric.xlsx"))
            plan = books.Book(season, book).plan
            yield "LibreOffice", plan, libreoffice.recalculated(book)
            subprocess.run(["/usr/bin/ssconvert", "--recalc", book, again], check=True, capture_output=True)  # noqa: S603
            yield "Gnumeric", plan, libreoffice.stored(again)


if __name__ == "__main__":
    main()
