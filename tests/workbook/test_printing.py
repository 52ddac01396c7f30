"""What is typed is printed, all of it, and no pages of empty boxes: counted in the pages that LibreOffice makes."""

import re
import subprocess

import books
import pytest

from candlecalc.season.season import frame
from candlecalc.season.tables import TABLES
from candlecalc.workbook.book import USUAL_ROWS

ROW = "Line {:03d}"


def season_of(rows):
    """A blank season with so many materials, and so many prices of one product."""
    season = books.blank("gb")
    material = {"kind": "other", "pack_size": 1.0, "pack_unit": "each", "pack_price": 1.0}
    for key, entries in {
        "materials": [material | {"material": ROW.format(number)} for number in range(rows)],
        "recipes": [{"product": "Set", "kind": "set", "minutes": 1.0, "setup": 1.0, "usual_batch": 1.0}],
        "prices": [{"product": "Set", "place": ROW.format(number), "price": 9.0} for number in range(rows)],
    }.items():
        season.tables[key] = frame([dict.fromkeys(TABLES[key].keys) | row for row in entries], TABLES[key])
    return season


def pages(office, book, changes=None):
    """{tab: the text of each of its pages}."""
    pdf = office.saved_as(book.path, "pdf", changes)
    text = subprocess.run(["pdftotext", "-layout", pdf, "-"], check=True, capture_output=True, text=True).stdout  # noqa: S603, S607
    found = {}
    for page in text.split("\f"):
        if foot := re.search(r"([A-Z][a-z]+(?: [a-z]+)?), page (\d+)\s*$", page):
            found.setdefault(foot[1], []).append(page)
            assert int(foot[2]) == len(found[foot[1]]), "each tab counts its own pages"
    return found


def rows_printed(tab):
    """The lines of a tab that are printed on any of its pages."""
    return sorted({line for page in tab for line in re.findall(r"Line \d{3}", page)})


def typed_in(book, table, key, first, last):
    """Changes that fill rows of a table, from one number to another."""
    return {book.cell(table, key, number): ROW.format(number) for number in range(first, last)}


@pytest.mark.parametrize("rows, typed", [(0, 18), (15, 30), (40, 80)])
def test_everything_typed_is_printed_up_to_twice_the_rows_it_was_made_with(office, tmp_path, rows, typed):
    book = books.Book(season_of(rows), tmp_path / "book.xlsx", stored=False, rows_of=USUAL_ROWS)
    changes = typed_in(book, "materials", "material", rows, typed) | typed_in(book, "prices", "place", rows, typed)
    after = pages(office, book, changes)
    wanted = [ROW.format(number) for number in range(typed)]
    assert rows_printed(after["Materials"]) == wanted
    assert rows_printed(after["Prices"]) == wanted


@pytest.mark.parametrize("rows", [0, 15, 40])
def test_at_most_one_page_of_empty_rows_is_printed(office, tmp_path, rows):
    book = books.Book(season_of(rows), tmp_path / "book.xlsx", stored=False, rows_of=USUAL_ROWS)
    before = pages(office, book)
    for title in ("Materials", "Prices"):
        with_lines = [page for page in before[title] if "Line " in page]
        across = 2 if title == "Materials" else 1  # pages side by side
        assert len(before[title]) - len(with_lines) <= across, title


def test_a_tab_is_numbered_by_itself(office, tmp_path):
    book = books.Book(season_of(0), tmp_path / "book.xlsx", stored=False, rows_of=USUAL_ROWS)
    assert all(" of " not in page.splitlines()[-1] for tab in pages(office, book).values() for page in tab)
