"""Names that a spreadsheet takes for something else: for a comparison, for a number, for two blanks too few."""

import subprocess

import books
import engine
import pytest
from libreoffice import stored

from candlecalc.season.season import problems

SET = "Two tins in a box"


def renamed(season, name, new):
    """The season with a product under another name wherever it is named."""
    for key in ("recipes", "sets", "prices"):
        season.tables[key] = season.tables[key].replace({name: new})
    return season


@pytest.mark.parametrize("name", ["<3 gift box", ">100 hours", "=best", "Gift*", "Gift box ", "Gift  box", "Product"])
def test_a_name_that_is_read_as_something_else_is_refused_in_its_row(name, tmp_path):
    season = renamed(books.small(), SET, name)
    told = [each for each in problems(season) if (each.tab, each.column) == ("Recipes", "product")]
    assert len(told) == 1
    small = books.Book(season, tmp_path / "named.xlsx", rows_of=books.SMALL_ROWS)
    held = small.held
    assert "Product: takes a name" in held[small.cell("recipes", "mend", 3)]
    assert held[small.named("master_check")] != "Numbers agree"


def two_sets_of_digits():
    """Two sets whose names are one number: a tin in the one, another in the other."""
    season = renamed(books.small(), SET, "1000")
    season.tables["extras"] = []
    for key in ("recipes", "sets", "prices"):
        rows = [row for _, row in season.rows(key)]
        column = "set" if key == "sets" else "product"
        other = [row | {column: "1e3"} for row in rows if row[column] == "1000"]
        if key == "sets":
            rows, other = [row for row in rows if row != other[0] | {"set": "1000"}], other[:1]
        season.tables[key] = [*rows, *other]
    return season


def test_names_of_digits_stay_apart_in_every_engine(office, tmp_path):
    small = books.Book(two_sets_of_digits(), tmp_path / "digits.xlsx", rows_of=books.SMALL_ROWS)
    target = tmp_path / "gnumeric.xlsx"
    subprocess.run(["ssconvert", "--recalc", small.path, target], check=True, capture_output=True)  # noqa: S603, S607
    rows = {row["product"]: place for place, row in small.rows("recipes")}
    for values in (small.held, office.recalculated(small.path), stored(target)):
        assert values[small.named("master_check")] == "Numbers agree"
        brought = {
            name: values[small.cell("costing", "materials", rows[name])]
            - sum(values[small.cell("parts", key, rows[name])] for key in ("wax", "oils", "other"))
            for name in ("1000", "1e3")
        }
        # Each set holds one tin, of another oil and dye.
        tins = {"1000": "Bitter orange tin", "1e3": "Pear and honey tin"}
        for name, tin in tins.items():
            assert brought[name] == pytest.approx(values[small.cell("costing", "materials", rows[tin])])


def test_what_is_asked_of_a_name_is_the_same_in_the_embedded_engine(office, tmp_path):
    names = ["<3", "1e3", "Gift box ", "Gift\u00a0box", "~", "product"]
    small = books.Book(books.small(), tmp_path / "names.xlsx", rows_of=books.SMALL_ROWS)
    held, cell = engine.Held(small.path), small.cell("recipes", "product", 3)
    mend = [small.cell("recipes", "mend", 3), small.cell("recipes", "ready", 3)]
    shown = office.edited_each(small.path, [{cell: name} for name in names], tabs=["Recipes"])
    for name, values in zip(names, shown, strict=True):
        assert held.cells(held.changed({cell: name}), mend) == {each: values.get(each, "") for each in mend}, name
