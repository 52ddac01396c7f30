"""What a column says that it reads is what stands in its formula, and no column rests on itself."""

import datetime
import re
from dataclasses import replace
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


# --- LibreOffice works out neighbouring columns in one go where their formulas differ in nothing but the column ------

# ... that they look up, so that what one of them rests on the other does too. It then finds circles where there are
# none, after some entry or other, and gives Err:522 (seen in 7.4, with the calculation in threads that is usual there).


def in_a_go(plan):
    """By column: the first of those that are worked out with it."""
    found, before = {}, None
    numbers = {(tab, key): column_index_from_string(plan.layouts[tab].letters[key]) for tab, key in COLUMNS}
    for (tab, key), number in sorted(numbers.items(), key=lambda each: (each[0][0], each[1])):
        place = plan.layouts[tab]
        formula = in_row(TABLE_TABS[tab].columns[key].formula(plan, place), place.first_row)
        like = tab, re.sub(r"('[^']+'|\w+)!", "", re.sub(r"\$[A-Z]+\$", "", formula))
        same = before and before[:2] == (like, number - 1)
        found[tab, key] = before[2] if same else (tab, key)
        before = like, number, found[tab, key]
    return found


def named(book, plan):
    """What named cells that are worked out read of lists, and of each other."""
    tables = {each.title: each for each in plan.layouts.values()}
    found = {}
    for name, place in book.defined_names.items():
        title, _, cell = place.attr_text.rpartition("!")
        formula = book[title.strip("'")][cell.replace("$", "")].value if re.fullmatch(r"\$[A-Z]+\$\d+", cell) else ""
        if str(formula).startswith("="):
            there = [part for part in REFERENCE.findall(formula) if part[0].strip("'") in tables]
            columns = [(tables[title.strip("'")], letter) for title, letter, _ in there]
            keys = {(each.key, key) for each, letter in columns for key, own in each.letters.items() if own == letter}
            found["", name] = keys | {("", other) for other in NAME.findall(REFERENCE.sub("", formula))}
    return found


def worked_out_together(book, plan):
    first, found = in_a_go(plan), {}
    for source, read in (chain(plan) | named(book, plan)).items():
        one = first.get(source, source)
        found.setdefault(one, set()).update({first.get(each, each) for each in read} - {one})
    return found


@pytest.fixture(scope="module")
def written(demo):
    return drafted(demo.season.with_records(), DATED)


def test_no_column_rests_on_itself_where_like_neighbours_are_worked_out_together(written):
    assert len(list(TopologicalSorter(worked_out_together(written.book, written.plan)).static_order())) > 1000


def test_what_was_made_and_its_value_side_by_side_would_be_such_a_circle(written):
    there = written.plan.layouts["made"]
    letters = {key: letter for key, letter in there.letters.items() if key not in ("came", "value")}
    letters |= {"value": there.letters["came"], "came": there.letters["value"]}
    layouts = written.plan.layouts | {"made": replace(there, letters=letters)}
    turned = replace(written.plan, layouts=layouts)
    with pytest.raises(CycleError, match="unpacked"):
        TopologicalSorter(worked_out_together(written.book, turned)).prepare()


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
