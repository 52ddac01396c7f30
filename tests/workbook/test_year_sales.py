"""A year of sales in the workbook, to the cent: against exact fractions that were written from the rules alone.

`python tests/bench/compare_years.py --sales` compares as many years as it is asked for.
"""

import books
import pytest
from year_reference import worked_out
from year_sales_seasons import year
from year_workbook import Typed, compared, in_memory, season_of

YEARS = [(1, "fifo"), (2, "average"), (3, "fifo")]


@pytest.fixture(scope="module", params=YEARS, ids=lambda param: f"year {param[0]}, {param[1]}")
def typed(request):
    """A random year as the workbook has it."""
    made = year(*request.param)
    return Typed(made, *in_memory(season_of(made)))


def test_every_figure_of_a_year_with_sales_is_what_the_rules_come_to(typed):
    different, count = compared(worked_out(typed.as_poured()), typed.figures())
    assert different == [] and count > 1000


def test_a_cent_too_many_in_a_sale_is_found(typed):
    found = typed.figures()
    figure = next(each for each, value in found.items() if each.tab == "Sales" and each.head == "net" and value)
    different, _ = compared(worked_out(typed.as_poured()), found | {figure: found[figure] + 0.01})
    assert len(different) == 1 and "net" in different[0]


def test_the_office_comes_to_the_same_sales(office, tmp_path):
    made = year(4, "average")
    book = books.Book(season_of(made), tmp_path / "year.xlsx")
    typed = Typed(made, book.plan, office.recalculated(book.path))
    assert compared(worked_out(typed.as_poured()), typed.figures())[0] == []
