"""What comes out on paper, as LibreOffice prints it: type that can be read, and no number that shows as ####."""

# ruff: noqa: S603, S607  the programs started here are our own choice

import re
import subprocess

import books
import pytest

from candlecalc.season.fields import NAME_LENGTH
from candlecalc.season.season import problems
from candlecalc.season.tables import TABLES
from candlecalc.workbook import book

LEAST_POINTS = 8


def long_season():
    """The demo with every name at its full length, and every sum as large as a small maker's may be."""
    season, named = books.demo(), {}

    def long(name):
        if isinstance(name, str) and name not in named:
            named[name] = f"{name} {'mmmWm' * 7}"[: NAME_LENGTH - 3] + f" {len(named):02d}"
        return named.get(name)

    for key, table in TABLES.items():
        rows = season.tables[key]
        for field in table.fields:
            if field.name or field.of:
                rows[field.key] = [long(name) for name in rows[field.key]]
            elif field.free:
                rows[field.key] = "mmmWm" * (field.longest // 5)
    for table, key, times in [("materials", "pack_price", 50), ("materials", "on_hand", 1000), ("prices", "price", 99)]:
        season.tables[table][key] = [value and value * times for value in season.tables[table][key]]
    season.tables["places"]["fixed_cost"] = 9999.99
    season.settings |= {"paid_rate": 999.99, "own_rate": 999.99, "production_overhead": 999999.0}
    season.settings |= {"running_costs": 999999.0, "largest_pot": 5000.0, "maker": "m" * 40, "season": "W" * 40}
    return season


@pytest.fixture(scope="module")
def pages(office, tmp_path_factory):
    """The text of each page with the height of each word: a workbook of long names and large sums, and the demo."""
    season = long_season()
    assert problems(season) == []
    folder = tmp_path_factory.mktemp("pages")
    picked = (season.names("recipes")[4], 10_000.0)
    (folder / "long.xlsx").write_bytes(book.made(season, books.DATED, picked=picked))
    (folder / "demo.xlsx").write_bytes(book.made(books.demo(), books.DATED))
    return {name: _pages(office.pdf(folder / f"{name}.xlsx")) for name in ("long", "demo")}


def _pages(pdf):
    told = subprocess.run(["pdftotext", "-bbox", str(pdf), "-"], check=True, capture_output=True, text=True).stdout
    word = re.compile(r'yMin="([\d.]+)" xMax="[\d.]+" yMax="([\d.]+)">(.*?)</word>')
    return [
        [(float(end) - float(start), text) for start, end, text in word.findall(page)]
        for page in told.split("<page ")[1:]
    ]


def _tab(page):
    """The tab a page is of: its foot is "Places sold, page 3 of 60"."""
    return " ".join(text for _, text in page).rpartition(", page ")[0].rpartition(" ")[2]


def test_no_number_shows_as_a_row_of_hashes(pages):
    for page in (*pages["long"], *pages["demo"]):
        assert "##" not in " ".join(text for _, text in page), _tab(page)


def test_nothing_prints_under_eight_points(pages):
    # Units is printed as large as it is written: its words of 11 points are the measure.
    units = next(page for page in pages["demo"] if _tab(page) == "Units")
    point = sorted(height for height, _ in units)[len(units) // 2] / 11
    small = {(_tab(page), round(height / point, 1), text) for page in pages["demo"] for height, text in page
             if height / point < LEAST_POINTS}  # fmt: skip
    assert not small
