"""What a hand-over of a full year of the largest workbook takes. Run by hand:

    python tests/bench/bench_handover.py

Seconds of a processor and the most memory, with the imports; and whether two hand-overs have the same bytes.
"""

import datetime
import os
import resource
import subprocess
import sys
import tempfile
from pathlib import Path

TESTS = Path(__file__).resolve().parent.parent
sys.path[:0] = [str(TESTS), str(TESTS / "bench")]

from bench_records import DAY, filled  # noqa: E402
from cells import FULL, ROWS  # noqa: E402

from candlecalc.season.season import Row, Season, frame  # noqa: E402
from candlecalc.season.tables import TABLES  # noqa: E402
from candlecalc.workbook import book  # noqa: E402

LAST = datetime.date(2028, 7, 31)


def full_year() -> Season:
    """All rows of every log: purchases, batches, sales in three places, markets, expenses and other entries."""
    season = filled(ROWS["largest"], 1.0)
    season.settings |= {"first_day": DAY, "last_day": LAST, "registered": "yes"}
    products = list(dict.fromkeys(row["product"] for _, row in season.rows("pours")))
    places = [row["place"] for _, row in season.rows("places")][:3]
    markets = [DAY + datetime.timedelta(days=14 * at) for at in range(24)]
    typed: dict[str, list[Row]] = {
        "purchases": [{**row, "paid_on": row["date"]} for _, row in season.rows("purchases")],
        "sales": [_sale(at, products, places) for at in range(FULL["sales"])],
        "market_days": [{"date": day, "place": places[0], "fee": 20.0} for day in markets],
        "market_lines": [
            {"date": markets[at % 24], "product": products[at // 24], "sold": 1.0, "price": 12.0 + at % 3}
            for at in range(FULL["market_lines"])
        ],
        "expenses": [
            {"date": _day(at, 60), "payee": f"Payee {at}", "category": "advertising", "amount": 10.0 + at,
             "paid_on": _day(at, 60)}
            for at in range(60)
        ],
        "entries": [
            {"date": DAY, "debit": "Bank and cash", "credit": "Capital", "amount": 10_000.0, "text": "Opening",
             "kind": "opening balance"}
        ],
    }  # fmt: skip
    for key, rows in typed.items():
        season.tables[key] = frame([dict.fromkeys(TABLES[key].keys) | row for row in rows], TABLES[key])
    return season


def _day(at: int, count: int) -> datetime.date:
    return DAY + datetime.timedelta(days=360 * at // count)


def _sale(at: int, products: list[object], places: list[object]) -> Row:
    day = _day(at, FULL["sales"])
    row = {"date": day, "place": places[at % 3], "product": products[at % len(products)], "pieces": 1.0}
    return row | {"price": 15.0, "order": f"O-{at}", "paid_on": None if at % 20 == 0 else day}


def main() -> None:
    with tempfile.TemporaryDirectory() as place:
        path = Path(place, "year.xlsx")
        path.write_bytes(book.made(full_year(), DAY, rows_of=ROWS["largest"]))
        print(f"{path.stat().st_size // 1000:,} kB; load {os.getloadavg()[0]:.1f}")
        folders = [Path(place, name) for name in ("once", "again")]
        for folder in folders:
            before = resource.getrusage(resource.RUSAGE_CHILDREN)
            words = ["handover", str(path), str(folder), "--from", str(DAY), "--to", str(LAST)]
            subprocess.run([sys.executable, "-m", "candlecalc", *words], check=True)  # noqa: S603
            after = resource.getrusage(resource.RUSAGE_CHILDREN)
            seconds = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
            print(f"{seconds:.1f} s of a processor, at most {after.ru_maxrss / 1024:.0f} MB")
        once, again = ({each.name: each.read_bytes() for each in folder.iterdir()} for folder in folders)
        print("the same bytes twice" if once == again else "the bytes differ")


if __name__ == "__main__":
    main()
