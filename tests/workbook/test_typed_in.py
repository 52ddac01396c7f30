"""A season typed over another comes to what a workbook made for it comes to: see typed_in.py."""

import random

import books
import typed_in
from year_sales_seasons import year
from year_workbook import season_of, type_in

from candlecalc.workbook import book
from candlecalc.workbook.cells.layout import FIRST_ROW


def other_rows(season, seed):
    """The season with its rows in another order, and some of them gone; other recipes of its products, other rates."""
    dice = random.Random(seed)  # noqa: S311  nobody is to be kept from guessing it
    for key in season.tables:
        rows = [row for _, row in season.rows(key)]
        if key == "recipes":
            rows = [row | {"load": 0.05, "minutes": 2.0, "paid_share": None} for row in rows]
        else:
            rows = dice.sample(rows, max(len(rows) - 1, 0)) + rows[:1]
        type_in(season, key, rows)
    season.settings |= {"registered": "yes", "tax_rate": 0.2, "waste": 0.1, "books": "cash", "as_of": None}
    return season


def alike(one, other):
    cells = ([number(value) for title in one for row in tabs[title] for value in row] for tabs in (one, other))
    return all(map(books.alike, *cells))


def number(value):
    return float(value) if isinstance(value, (int, float)) else value


def test_every_cell_of_a_season_typed_over_another_is_as_in_a_new_workbook(monkeypatch):
    monkeypatch.setattr(typed_in, "seasons", typed_in.Kept(2))
    first, second = season_of(year(1)), other_rows(season_of(year(1)), 1)
    anew = [book.drafted(each, books.DATED, rows_of=typed_in.rows_of(each)).values for each in (first, second)]
    for season, values in ((first, anew[0]), (second, anew[1]), (first, anew[0])):
        assert alike(typed_in.worked_out(season).values, values)
    assert len(typed_in.seasons.held) == 1


def test_so_is_every_cell_of_a_workbook_that_was_written_anew(monkeypatch):
    monkeypatch.setattr(typed_in, "workbooks", typed_in.Kept(2))
    first, rows = books.small(), books.SMALL_ROWS
    one, other = (book.drafted(each, books.DATED, rows_of=rows) for each in (first, other_rows(books.small(), 1)))
    for made in (one, other, one):
        assert alike(typed_in.calculated(made.book, made.lists), made.values)
    assert len(typed_in.workbooks.held) == 1


def test_a_value_over_a_formula_gives_way_to_it_again(monkeypatch):
    monkeypatch.setattr(typed_in, "workbooks", typed_in.Kept(2))
    season = books.small()
    for _ in range(2):
        plain, typed_over = (book.drafted(season, books.DATED, rows_of=books.few(season)) for _ in range(2))
        full = max(plain.lists["Costing"].columns)
        typed_over.book["Costing"].cell(FIRST_ROW, full).value = 1.25
        for made in (plain, typed_over):
            assert alike(typed_in.calculated(made.book, made.lists), made.values)
