"""The values stored beside formulas are those that LibreOffice comes to from scratch."""

import math
import re
import zipfile

import books
import pytest
from books import Book
from libreoffice import Error, stored

from candlecalc.workbook import book

SEASONS = {
    "demo": books.demo,
    "blank us": lambda: books.blank("us"),
    "blank gb": lambda: books.blank("gb"),
    "blank eu": lambda: books.blank("eu"),
    "full": books.full,
}
# A value that a formula would not come to, where one stands that it does come to.
PLANTED = {
    "number": ("Costing", "full", r"<v ?>[^<]+</v>", "<v>1</v>"),
    "digit": ("Costing", "full", r"<v ?>(\d+\.\d{4})\d*</v>", r"<v>\g<2></v>"),
    "text": ("Workings", "kind", r"<v ?>made</v>", "<v>set</v>"),
    "nothing": ("Costing", "full", r"<v ?>[^<]+</v>", ""),
}


def differences(stored_values, fresh, formulas):
    """Formula cells whose stored value is not the one calculated anew. An empty text reads as nothing."""
    return [cell for cell in formulas if not _alike(stored_values.get(cell) or "", fresh.get(cell) or "")]


def _alike(a, b):
    a, b = (0.0 if value == "" else value for value in (a, b)) if float in (type(a), type(b)) else (a, b)
    if isinstance(a, float) and isinstance(b, float):
        return math.isclose(a, b, rel_tol=1e-9, abs_tol=1e-12)
    return type(a) is type(b) and a == b


def without_value(path):
    """Formula cells with no value beside the formula; an empty text counts as one."""
    found = []
    with zipfile.ZipFile(path) as package:
        for name in package.namelist():
            if name.startswith("xl/worksheets/"):
                cells = re.findall(r"<c [^>]*[^/]>.*?</c>", package.read(name).decode())
                found += [cell for cell in cells if "<f" in cell and not _has_value(cell)]
    return found


def _has_value(cell):
    return bool(re.search(r"<v ?>[^<]+</v>", cell)) or (' t="str"' in cell and "<v" in cell)


@pytest.fixture(scope="module", params=list(SEASONS))
def made(request, tmp_path_factory):
    return Book(SEASONS[request.param](), tmp_path_factory.mktemp("made") / "made.xlsx")


def test_stored_values_agree_with_a_recalculation_from_scratch(made, office):
    fresh, held = office.recalculated(made.path), stored(made.path)
    assert len(made.formulas) > 15000
    assert differences(held, fresh, made.formulas) == []
    assert [cell for cell, value in [*held.items(), *fresh.items()] if isinstance(value, Error)] == []
    assert without_value(made.path) == []
    assert fresh["Checks", "B1"] == held["Checks", "B1"]


def test_the_demo_says_that_its_numbers_agree(demo, values):
    assert values["Checks", "B1"] == stored(demo.path)["Checks", "B1"] == "Numbers agree"


@pytest.mark.parametrize("table, key, value, other", PLANTED.values(), ids=PLANTED)
def test_one_altered_value_is_found(demo, values, tmp_path, table, key, value, other):
    sheet, reference = cell = demo.cell(table.lower(), key, 0)
    planted = books.rewritten(
        demo.path, tmp_path / "planted.xlsx", sheet, rf'(<c r="{reference}"[^>]*><f>[^<]*</f>){value}', rf"\g<1>{other}"
    )
    assert stored(planted).get(cell) != stored(demo.path)[cell]
    assert differences(stored(planted), values, demo.formulas) == [cell]
    assert len(without_value(planted)) == (other == "")


def test_a_workbook_saved_without_values_is_told_apart(tmp_path, demo):
    (tmp_path / "bare.xlsx").write_bytes(book.made(demo.season, books.DATED, stored=False))
    assert len(without_value(tmp_path / "bare.xlsx")) == len(demo.formulas)


def test_the_same_season_and_date_give_the_same_bytes(demo):
    assert book.made(books.demo(), books.DATED) == demo.path.read_bytes()
    assert book.made(books.demo(), books.DATED.replace(day=3)) != demo.path.read_bytes()
