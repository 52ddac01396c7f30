"""The values stored beside formulas are those that LibreOffice comes to from scratch."""

import re

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


def differences(held, fresh, formulas):
    """Formula cells whose stored value is not the one calculated anew."""
    return [cell for cell in formulas if not books.alike(held.get(cell), fresh.get(cell))]


def without_value(formulas):
    """Formula cells with no value beside the formula; an empty text counts as one."""
    return [cell for cell, text in formulas.items() if not _has_value(text)]


def _has_value(cell):
    return bool(re.search(r"<v ?>[^<]+</v>", cell)) or (' t="str"' in cell and "<v" in cell)


def errors(values):
    return [cell for cell, value in values.items() if isinstance(value, Error)]


@pytest.fixture(scope="module", params=list(SEASONS))
def made(request, tmp_path_factory):
    """A workbook with all the rows that a maker gets."""
    return Book(SEASONS[request.param](), tmp_path_factory.mktemp("made") / "made.xlsx", rows_of=book.USUAL_ROWS)


def test_stored_values_agree_with_a_recalculation_from_scratch(made, office):
    # The second of two: with nothing typed, the office's first leaves 0 for blank in one row of Selling.
    fresh, held = office.edited_each(made.path, [{}], times=2)[0], made.held
    assert len(made.formulas) > 15000
    assert differences(held, fresh, made.formulas) == []
    assert without_value(made.formulas) == []
    assert errors(held) == errors(fresh) == []


# What is typed wrong or left out in the demo, of what a set needs: table, key, row by its name, and the value.
SET = "Two tins in a box"
FAULTS = {
    "8 for 8 %": ("recipes", "load", "Pear and honey tin", 8.0),
    "a candle without its vessel": ("recipes", "vessel", "Pear and honey tin", None),
    "a wax without its price": ("materials", "pack_price", "Soft plant wax for jars", None),
    "an oil named twice": ("materials", "material", "Smoked plum oil", "Pear and honey oil"),
    "a vessel without its fill": ("vessels", "fill", "Travel tin", None),
    "a set without its minutes": ("recipes", "minutes", SET, None),
}


@pytest.mark.parametrize("table, key, name, value", FAULTS.values(), ids=FAULTS)
def test_a_season_with_a_fault_stores_what_a_recalculation_comes_to(office, tmp_path, table, key, name, value):
    season = books.demo()
    rows = season.tables[table]
    rows[key] = [value if first == name else old for first, old in zip(rows.iloc[:, 0], rows[key], strict=True)]
    made = Book(season, tmp_path / "made.xlsx")
    fresh, held = office.edited_each(made.path, [{}], times=2)[0], made.held
    assert differences(held, fresh, made.formulas) == []
    for cell in (made.cell("costing", "full", SET), made.cell("prices", "profit", f"{SET} @ Own web shop")):
        assert not isinstance(held.get(cell), float)


def test_the_demo_says_that_its_numbers_agree(demo, values):
    master = demo.named("master_check")
    assert values[master] == demo.held[master] == "Numbers agree"


@pytest.mark.parametrize("table, key, value, other", PLANTED.values(), ids=PLANTED)
def test_one_altered_value_is_found(demo, values, tmp_path, table, key, value, other):
    sheet, reference = cell = demo.cell(table.lower(), key, 0)
    planted = books.rewritten(
        demo.path, tmp_path / "planted.xlsx", sheet, rf'(<c r="{reference}"[^>]*><f>[^<]*</f>){value}', rf"\g<1>{other}"
    )
    held = stored(planted)
    assert held.get(cell) != values[cell]
    assert differences(held, values, demo.formulas) == [cell]
    assert len(without_value(books.formulas(planted))) == (other == "")


def test_a_workbook_saved_without_values_is_told_apart(tmp_path, demo):
    (tmp_path / "bare.xlsx").write_bytes(demo.made(stored=False))
    bare = books.formulas(tmp_path / "bare.xlsx")
    assert len(without_value(bare)) == len(bare) == len(demo.formulas)


def test_the_same_season_and_date_give_the_same_bytes(demo):
    assert demo.made(books.demo()) == demo.path.read_bytes()
    assert demo.made(dated=books.DATED.replace(day=3)) != demo.path.read_bytes()
