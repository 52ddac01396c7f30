"""What a column says that it reads is what stands in its formula, and no column rests on itself."""

import datetime
import re
from graphlib import CycleError, TopologicalSorter

import pytest
from openpyxl.utils import column_index_from_string, get_column_letter

from candlecalc.season.fields import Field
from candlecalc.workbook.book import TABLE_TABS, drafted, plan_of
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import OWN_ROW, in_row
from candlecalc.workbook.cells.references import Above, Own
from candlecalc.workbook.reports.wiring import resting_on

REFERENCE = re.compile(r"(?:('[^']+'|\w+)!)?\$([A-Z]+)\$?\d+(?::\$([A-Z]+)\$?\d+)?")
ACROSS = re.compile(r"INDEX\(\$([A-Z]+)\$\d+:\$\1\$\d+,\$[A-Z]+\d+\):INDEX\(\$([A-Z]+)\$\d+:\$\2\$\d+,(\$[A-Z]+\d+)\)")
NAME = re.compile(r"(?<![\w$!.])[a-z][a-z_]+(?![\w(!])")
DATED = datetime.date(2027, 9, 1)
COLUMNS = [
    (tab, key) for tab, each in TABLE_TABS.items() for key, column in each.columns.items()
    if not isinstance(column, Field) and key != OWN_ROW
]  # fmt: skip


@pytest.fixture(scope="module")
def plan(demo):
    return plan_of(demo.season.with_records())


def read_in(formula, plan, place):
    """Columns and names in a formula's text."""
    formula = re.sub(r'"[^"]*"', '""', formula)
    formula = ACROSS.sub(r"($\1$3:$\2$3,\3)", formula)  # from one entry of a row to another
    tables = {each.title: each for each in plan.layouts.values()}
    found = set()
    for title, first, last in REFERENCE.findall(formula):
        there = tables[title.strip("'")] if title else place
        keys = {letter: key for key, letter in there.letters.items()}
        span = range(column_index_from_string(first), column_index_from_string(last or first) + 1)
        found |= {(there.key, keys[get_column_letter(column)]) for column in span}
    return found | {("", name) for name in NAME.findall(REFERENCE.sub("", formula))}


@pytest.mark.parametrize("tab, key", COLUMNS)
def test_a_column_says_what_its_formula_reads(plan, tab, key):
    place, column = plan.layouts[tab], TABLE_TABS[tab].columns[key]
    read = read_in(in_row(column.formula(plan, place), place.first_row), plan, place)
    # How entries are reached is the tab's own matter.
    said = {source for source in column.fed_by(plan, place) if source[1] != OWN_ROW}
    assert said == {source for source in read if source[1] != OWN_ROW}


def looks_above(expression, key):
    return expression == Above(key) or any(looks_above(part, key) for part in expression.parts)


def chain(plan):
    """What each column rests on; a sum down a list rests on itself, a row higher."""
    found = {}
    for tab, key in COLUMNS:
        column = TABLE_TABS[tab].columns[key]
        own = {(tab, OWN_ROW)} | ({(tab, key)} if looks_above(column.expression, key) else set())
        found[tab, key] = column.fed_by(plan, plan.layouts[tab]) - own
    return found


def test_no_column_rests_on_itself(plan):
    assert len(list(TopologicalSorter(chain(plan)).static_order())) > len(COLUMNS)


def test_a_column_that_rests_on_itself_is_found(plan, monkeypatch):
    monkeypatch.setitem(TABLE_TABS["materials"].columns, "size", look("Pack", Own("unit_cost")))
    with pytest.raises(CycleError, match="unit_cost"):
        TopologicalSorter(chain(plan)).prepare()


def test_what_rests_on_a_column_is_told_by_tab(demo, plan):
    users = resting_on(plan, drafted(demo.season, DATED, rows_of=demo.rows_of).read)
    assert users["materials", "unit_cost"] == [
        *("Recipes", "Extra parts", "Sets", "Costing", "Batch", "Test results", "Candles", "Prices"),
        *("Months", "By place", "By product"),
        # A scent of one season goes by what one costs.
        *("Demand", "Plan", "To buy", "To order", "Prices by day", "Part costs", "Selling", "Own time"),
        *("Plan lines", "Made by month", "Extras by month", "Plan needs"),
    ]
    assert users["prices", "margin"] == []
