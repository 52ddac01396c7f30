"""What the year's records cost in LibreOffice, in seconds of a processor. Run by hand:

    python tests/bench/bench_records.py

The usual workbook has its logs four fifths full, the largest all its rows; the costing demo stands beside them.
Changed are one batch and the price of one purchase, both in the first third, and the last sale.
"""

import datetime
import os
import sys
import tempfile
from pathlib import Path

TESTS = Path(__file__).resolve().parent.parent
sys.path[:0] = [str(TESTS), str(TESTS / "bench")]

import libreoffice  # noqa: E402
from bench_workbook import large  # noqa: E402
from cells import ROWS, formulas  # noqa: E402

from candlecalc.season import folder  # noqa: E402
from candlecalc.season.season import Row, Season, frame  # noqa: E402
from candlecalc.season.tables import TABLES  # noqa: E402
from candlecalc.season.tables.once import FIFO  # noqa: E402
from candlecalc.workbook import book  # noqa: E402
from candlecalc.workbook.cells.layout import FIRST_ROW  # noqa: E402
from candlecalc.workbook.tabs.stock.used import LINES_OF_A_BATCH  # noqa: E402

DAY = datetime.date(2027, 8, 2)
PARTS = ("wax", "wax_second", "oil_first", "oil_second", "oil_third", "wick", "dye", "lid", "label", "packing")
FULL = {"usual": 0.8, "largest": 1.0}
RUNS = 3


def filled(rows_of: dict[str, int], share: float) -> Season:
    """60 products of 200 materials, and so much of each log."""
    season = large().with_records()
    season.settings["stock"] = FIFO
    products = [row for _, row in season.rows("recipes") if row["kind"] == "made" and _parts(row) <= LINES_OF_A_BATCH]
    used = {value for row in products for value in row.values()}
    used |= {row["bought_as"] for _, row in season.rows("vessels")}
    # What batches need is bought first.
    materials = sorted((str(row["material"]) for _, row in season.rows("materials")), key=lambda name: name not in used)
    logs = ("purchases", "pours", "moves", "counts", "sales", "market_days", "market_lines")
    count = {key: int(rows_of[key] * share) for key in logs}
    made = {row["product"] for row in products}
    prices = [row for _, row in season.rows("prices") if row["product"] in made]
    tables = {
        key: [{"date": _day(at, number)} | _line(key, at, materials, products, prices) for at in range(number)]
        for key, number in count.items()
    }
    # A market is on the day that its lines are of.
    for at, row in enumerate(tables["market_lines"]):
        row["date"] = tables["market_days"][at % count["market_days"]]["date"]
    for key, rows in tables.items():
        season.tables[key] = frame([dict.fromkeys(TABLES[key].keys) | row for row in rows], TABLES[key])
    return season


def _line(key: str, at: int, materials: list[str], products: list[Row], prices: list[Row]) -> Row:
    material, price = materials[at % len(materials)], prices[at % len(prices)]
    sold = {"product": price["product"], "place": price["place"]}
    lines: dict[str, Row] = {
        "purchases": {
            "document": f"INV {at // 4}",
            "material": material,
            "packs": 40.0,
            "price": 20.0 + at % 7,
            "charges": None if at % 4 else 9.5,
            "lot": f"L{at}",
        },
        "pours": {"batch": float(at + 1), "product": products[at % len(products)]["product"], "good": 12.0},
        "moves": {"kind": "test", "material": material, "amount": 5.0},
        "counts": {"material": material, "counted": 900.0},
        "sales": sold | {"pieces": 1.0, "order": f"O{at // 2}"},
        "market_days": {"place": price["place"], "fee": 25.0},
        "market_lines": sold | {"along": 5.0, "back": 2.0},
    }
    return lines[key]


def _parts(recipe: Row) -> int:
    return 1 + sum(recipe[key] is not None for key in PARTS)  # the vessel, too


def _day(at: int, count: int) -> datetime.date:
    return DAY + datetime.timedelta(days=170 * at // count)


def main() -> None:
    office = libreoffice.Office(seconds=600)
    heads = f"{'':10}{'formulas':>10}{'kB':>8}{'open':>8}{'all':>8}{'batch':>8}{'price':>8}{'sale':>8}"
    print(f"{heads}   the least of {RUNS}; load {os.getloadavg()[0]:.1f}")
    with tempfile.TemporaryDirectory() as place:
        demo = folder.read(folder.DEMO)
        _told(office, Path(place, "demo.xlsx"), "demo", demo, None)
        for name, rows_of in ROWS.items():
            _told(office, Path(place, f"{name}.xlsx"), name, filled(rows_of, FULL[name]), rows_of)
    office.close()


def _told(office: libreoffice.Office, path: Path, name: str, season: Season, rows_of: dict[str, int] | None) -> None:
    drafted = book.drafted(season, DAY, rows_of=rows_of or book.USUAL_ROWS)
    path.write_bytes(book.packed(drafted))
    changes = {}
    if rows_of:
        for key, entry, value in (("pours", "good", 11.0), ("purchases", "price", 31.0), ("sales", "pieces", 2.0)):
            layout = drafted.plan.layouts[key]
            row = FIRST_ROW + (season.tables.room(key) - 1 if key == "sales" else season.tables.room(key) // 4)
            changes[layout.title, f"{layout.letters[entry]}{row}"] = value
    runs = [office.processor_seconds(path, changes) for _ in range(RUNS)]
    least = [min(each) for each in zip(*runs, strict=True)]
    count = sum(formulas(drafted, sheet) for sheet in drafted.book)
    wrong = sum(str(value).startswith("#") for rows in drafted.values.values() for row in rows for value in row)
    print(f"{name:10}{count:>10,}{path.stat().st_size // 1000:>8,}" + "".join(f"{each:>8.2f}" for each in least)
          + (f"   {wrong} cells hold an error" if wrong else ""))  # fmt: skip


if __name__ == "__main__":
    main()
