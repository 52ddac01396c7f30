"""A year of sales in the workbook, to the cent: against exact fractions that were written from the rules alone.

`python tests/bench/compare_years.py --sales` compares as many years as it is asked for.
"""

from dataclasses import replace

import books
import pytest
from year_reference import worked_out
from year_sales_seasons import year
from year_sold import as_sale
from year_workbook import Typed, compared, in_memory, season_of

YEARS = [(1, "fifo"), (2, "average"), (3, "fifo"), (5, "average"), (13, "fifo")]


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


def test_two_lines_that_changed_places_are_found(typed):
    found = typed.figures()
    one, other = [each for each, value in found.items() if each.tab == "Sales" and each.head == "gross" and value][:2]
    swapped = found | {one: found[other], other: found[one]}
    different, _ = compared(worked_out(typed.as_poured()), swapped)
    assert len(different) == 2 or found[one] == found[other]


@pytest.mark.parametrize("seed, method", [(4, "average"), (6, "fifo")])
def test_the_office_comes_to_the_same_sales(office, tmp_path, seed, method):
    made = year(seed, method)
    book = books.Book(season_of(made), tmp_path / "year.xlsx")
    typed = Typed(made, book.plan, office.recalculated(book.path))
    assert compared(worked_out(typed.as_poured()), typed.figures())[0] == []


def test_what_markets_brought_may_be_typed_as_sales_and_nothing_else_changes():
    made = year(1)
    lines = [
        replace(line, along=None, back=None, sold=line.pieces, given=None, broken=None)
        for line in made.selling.market_lines
        if line.pieces
    ]
    as_market = replace(made.selling, market_lines=tuple(lines))
    sales = tuple(as_sale(as_market, row) for row in range(1, len(lines) + 1))
    as_sales = replace(as_market, sales=as_market.sales + sales, market_lines=())

    def sums(selling):
        found = Typed(made, *in_memory(season_of(replace(made, selling=selling)))).figures()
        tabs = ("Months", "By place", "By product", "Candles", "Stock", "At shops", "Sold")
        return {figure: value for figure, value in found.items() if figure.tab in tabs}

    one, other = sums(as_market), sums(as_sales)
    assert one.keys() == other.keys() and len(one) > 150
    assert {figure: value for figure, value in one.items() if other[figure] != pytest.approx(value)} == {}
