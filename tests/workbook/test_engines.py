"""Wherever a workbook is opened: in LibreOffice set to three languages, and in Gnumeric, every cell is as stored.

Each value stored in the file is spoilt first, so what is compared was calculated there.
"""

import re
import shutil
import subprocess
import zipfile

import books
import pytest
from books import Book
from libreoffice import stored

from candlecalc.workbook import book

LOCALES = ("en-US", "de-DE", "fr-FR")
GNUMERIC = "Gnumeric"
# A blank workbook has the same formula in every row of a column: a few rows tell.
SEASONS = {
    "demo": (books.demo, book.USUAL_ROWS),
    "blank us": (lambda: books.blank("us"), books.SMALL_ROWS),
    "blank gb": (lambda: books.blank("gb"), books.SMALL_ROWS),
    "blank eu": (lambda: books.blank("eu"), books.SMALL_ROWS),
}
SPOILT = b"<v>-77777</v>"


@pytest.fixture(scope="module")
def made(tmp_path_factory):
    """{season: its workbook, and the same with every stored value spoilt}."""
    folder = tmp_path_factory.mktemp("engines")
    found = {}
    for name, (season, rows_of) in SEASONS.items():
        made = Book(season(), folder / f"{name}.xlsx", rows_of=rows_of)
        found[name] = made, spoilt(made.path, folder / f"{name} spoilt.xlsx")
    return found


def spoilt(path, target):
    """A copy with another value beside every formula."""
    with zipfile.ZipFile(path) as before, zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED) as after:
        for name in before.namelist():
            data = before.read(name)
            if name.startswith("xl/worksheets/sheet"):
                data = re.sub(rb"(</f>)<v ?>[^<]*</v>", rb"\g<1>" + SPOILT, data)
                data = re.sub(rb' t="(?:str|e|b)"(>\s*<f>)', rb"\g<1>", data)
            after.writestr(name, data)
    return target


@pytest.fixture(scope="module", params=[*LOCALES, GNUMERIC])
def calculated(request, made, office_in):
    """{season: what one engine makes of its spoilt workbook}."""
    paths = {name: path for name, (_, path) in made.items()}
    if request.param == GNUMERIC:
        return {name: by_gnumeric(path) for name, path in paths.items()}
    return {name: office_in(request.param).recalculated(path) for name, path in paths.items()}


def by_gnumeric(path):
    assert shutil.which("ssconvert"), "Gnumeric is missing: tests/setup.sh installs it"
    target = path.with_suffix(".gnumeric.xlsx")
    subprocess.run(["ssconvert", "--recalc", path, target], check=True, capture_output=True)  # noqa: S603, S607
    return stored(target)


def differences(ours, values):
    held = ours.held
    return {
        cell: (held.get(cell, ""), values.get(cell, ""))
        for cell in ours.formulas
        if not books.alike(held.get(cell), values.get(cell))
    }


@pytest.mark.parametrize("season", SEASONS)
def test_every_cell_is_calculated_as_it_is_stored(made, calculated, season):
    ours, _ = made[season]
    assert len(ours.formulas) > (15000 if season == "demo" else 2000)
    assert differences(ours, calculated[season]) == {}


def test_a_value_that_is_not_calculated_is_seen(made):
    ours, path = made["blank us"]
    assert len(differences(ours, stored(path))) == len(ours.formulas)


def test_a_formula_that_gives_another_number_elsewhere_is_found(made, tmp_path):
    ours, path = made["demo"]
    sheet, reference = cell = ours.cell("costing", "full", 0)
    other = books.rewritten(path, tmp_path / "other.xlsx", sheet, rf'(<c r="{reference}"[^>]*><f>)', r"\g<1>1+")
    planted = by_gnumeric(other)
    assert differences(ours, planted)[cell][1] == pytest.approx(ours.held[cell] + 1)
