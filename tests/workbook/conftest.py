"""The demo's workbook, made once for the run, and what LibreOffice makes of it."""

import io
import types
import zipfile

import books
import openpyxl
import pytest

from candlecalc.workbook import book


@pytest.fixture(scope="session")
def demo(tmp_path_factory):
    return books.Book(books.demo(), tmp_path_factory.mktemp("demo") / "demo.xlsx")


@pytest.fixture(scope="session")
def values(demo, office):
    """Every cell of the demo, calculated anew."""
    return office.recalculated(demo.path)


@pytest.fixture(scope="session", params=["demo", "blank"])
def file(request):
    """A workbook as a file: its name, its parts by name, and the season in it."""
    season = books.demo() if request.param == "demo" else books.blank("gb")
    made = book.made(season, books.DATED)
    with zipfile.ZipFile(io.BytesIO(made)) as package:
        parts = {name: package.read(name) for name in package.namelist()}
    return types.SimpleNamespace(name=request.param, bytes=made, parts=parts, season=season)


@pytest.fixture(scope="session")
def sheets(file):
    """The same workbook, read; not to be changed."""
    return openpyxl.load_workbook(io.BytesIO(file.bytes))


@pytest.fixture(scope="session")
def held(file):
    """The same with the values that are stored in it."""
    return openpyxl.load_workbook(io.BytesIO(file.bytes), data_only=True)
