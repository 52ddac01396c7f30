"""A year's records in the workbook, to the cent: against exact fractions that were written from the rules alone.

The reference is checked against textbooks in test_year_reference.py. `python tests/bench/compare_years.py` compares
as many years as it is asked for.
"""

import datetime
from dataclasses import replace

import books
import pytest
from year_reference import worked_out
from year_seasons import year
from year_workbook import Typed, compared, in_memory, season_of, type_in, without_sets

from candlecalc.quantities.days import serial

YEARS = [(1, "fifo"), (2, "average"), (3, "fifo"), (4, "average"), (5, "fifo")]


@pytest.fixture(scope="module", params=YEARS, ids=lambda param: f"year {param[0]}, {param[1]}")
def typed(request, tmp_path_factory):
    """A random year typed into a workbook: its file, and what it holds."""
    seed, method = request.param
    made = without_sets(year(seed, method))
    book = books.Book(season_of(made), tmp_path_factory.mktemp("year") / f"{seed}.xlsx")
    return book, Typed(made, book.plan, book.held)


def test_every_figure_is_what_the_rules_come_to(typed):
    _, tabs = typed
    different, count = compared(worked_out(tabs.as_poured()), tabs.figures())
    assert different == [] and count > 400


def test_a_cent_that_is_not_there_is_found(typed):
    book, tabs = typed
    found = tabs.figures()
    figure = next(figure for figure, value in found.items() if figure.head == "cost" and isinstance(value, float))
    different, _ = compared(worked_out(tabs.as_poured()), found | {figure: found[figure] + 0.01})
    assert len(different) == 1 and "cost" in different[0]


def test_two_amounts_that_changed_places_are_found(typed):
    _, tabs = typed
    found = tabs.figures()
    one, other = [figure for figure, value in found.items() if figure.tab == "Purchases" and figure.head == "amount"][
        :2
    ]
    swapped = found | {one: found[other], other: found[one]}
    different, _ = compared(worked_out(tabs.as_poured()), swapped)
    assert len(different) == 2 or found[one] == found[other]


IN_THE_OFFICE = YEARS[:2]  # a year takes it seconds to open; tests/bench/compare_years.py does as many as are asked for


@pytest.mark.parametrize("typed", IN_THE_OFFICE, indirect=True, ids=["fifo", "average"])
def test_the_office_comes_to_the_same(typed, office):
    book, tabs = typed
    again = Typed(tabs.year, book.plan, office.recalculated(book.path))
    assert compared(worked_out(again.as_poured()), again.figures())[0] == []


def test_what_went_and_what_is_left_come_to_what_was_bought(typed):
    _, tabs = typed
    for _, (paid, spent, value) in tabs.rows("stock", "paid", "spent", "value"):
        if isinstance(spent, (int, float)):
            assert round(spent + value, 2) == round(paid, 2)


# --- what holds from a day on leaves what was before as it was ----------------------------------


def test_a_new_load_wick_price_and_wage_move_no_earlier_figure():
    made = replace(without_sets(year(5, "fifo")), rates=year(5, "fifo").rates[:1])
    days = sorted(pour.day for pour in made.pours)
    day = days[len(days) // 2]
    before, after = season_of(made), season_of(made)
    held = [row for _, row in before.rows("recipes")]
    wick = [each.name for each in made.materials if each.kind == "wick"][-1]
    new = {"holds_from": day, "load": 0.09, "wick": wick, "wicks": 3.0}
    type_in(after, "recipes", held + [row | new for row in held if not row["holds_from"]])
    type_in(after, "rates", [{"date": day, "paid_rate": 31.5, "overhead": 12.25}])
    after.tables["materials"]["pack_price"] = 99.0

    def figures(season):
        """What each batch came to, by its day."""
        tabs = Typed(made, *in_memory(season))
        columns = ("date", "making", "materials", "paid", "overhead", "pieces")
        return [(date, found) for _, (date, *found) in tabs.rows("pours", *columns)]

    earlier = [(one, other) for one, other in zip(figures(before), figures(after), strict=True) if one[0] < serial(day)]
    assert len(earlier) > 5 and all(one == other for one, other in earlier)
    assert figures(before) != figures(after)


def test_a_new_recipe_holds_on_its_day_and_not_the_day_before():
    made = without_sets(year(5, "fifo"))
    season = season_of(made)
    held = next(row for _, row in season.rows("recipes") if not row["holds_from"])
    day = datetime.date(2026, 6, 1)
    type_in(season, "recipes", [held, held | {"holds_from": day, "wicks": 4.0}])
    batch = {"product": held["product"], "good": 10.0}
    before = {"date": day - datetime.timedelta(days=1), "batch": 1.0}
    type_in(season, "pours", [batch | before, batch | {"date": day, "batch": 2.0}])
    for key in ("instead", "moves", "counts"):
        type_in(season, key, [])
    tabs = Typed(made, *in_memory(season))
    lines = [found for _, found in tabs.rows("used", "batch", "amount", "material")]
    used = [(number, amount) for number, amount, material in lines if material == held["wick"]]
    assert used == [(1, 10 * held["wicks"]), (2, 40)]
