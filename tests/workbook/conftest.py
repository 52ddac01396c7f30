"""The demo's workbook, made once for the run, and what LibreOffice makes of it."""

import books
import pytest


@pytest.fixture(scope="session")
def demo(tmp_path_factory):
    return books.Book(books.demo(), tmp_path_factory.mktemp("demo") / "demo.xlsx")


@pytest.fixture(scope="session")
def values(demo, office):
    """Every cell of the demo, calculated anew."""
    return office.recalculated(demo.path)
