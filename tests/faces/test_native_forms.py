"""Every native form as a cell formula comes to what the Python function says, in two spreadsheet engines.

One workbook holds all functions: a row a case, its arguments in cells, its formula over those cells. It is
calculated once by formualizer and once, from scratch, by LibreOffice.
"""

import math
from typing import NamedTuple

import pytest
from openpyxl import Workbook
from openpyxl.utils import get_column_letter
from samples import in_a_cell, limits, samples
from two_engines import ENGINES

from candlecalc.calc import REGISTRY
from candlecalc.declaration.native import Leaf, replace, spell

CASES_EACH = 12
SHEET = "Forms"
NATIVE = [declared for declared in REGISTRY.values() if declared.native]
each_function = pytest.mark.parametrize("declared", NATIVE, ids=lambda declared: declared.name)


class Case(NamedTuple):
    declared: object
    values: dict
    cell: str
    entries: dict  # cell -> what is typed there
    formula: str


def laid_out(declared, values, row):
    """A case in its row: one argument a cell, a list over as many cells as it has."""
    entries, references = {}, {}
    for name, value in values.items():
        cells = value if isinstance(value, list) else [value]
        places = [f"{get_column_letter(len(entries) + 1 + offset)}{row}" for offset in range(len(cells))]
        entries.update(zip(places, cells, strict=True))
        references[name] = Leaf(f"{places[0]}:{places[-1]}" if isinstance(value, list) else places[0])
    formula = "=" + spell(replace(declared.native, references))
    return Case(declared, values, f"{get_column_letter(len(entries) + 1)}{row}", entries, formula)


def all_cases():
    pairs = [(declared, values) for declared in NATIVE for values in samples(declared, CASES_EACH)]
    return [laid_out(declared, values, row) for row, (declared, values) in enumerate(pairs, start=1)]


def book_of(cases):
    book = Workbook()
    sheet = book.active
    sheet.title = SHEET
    for case in cases:
        for cell, value in {**case.entries, case.cell: case.formula}.items():
            sheet[cell] = value
    return book


def differences(cases, values):
    """What each case that disagrees is, what it should come to, and what the engine says."""
    found = []
    for case in cases:
        expected, got = in_a_cell(case.declared.bare(**case.values)), values.get((SHEET, case.cell))
        if not isinstance(got, float) or not math.isclose(got, expected, rel_tol=1e-9, abs_tol=1e-12):
            found.append((case.declared.name, case.values, case.formula, expected, got))
    return found


@pytest.fixture(scope="module")
def cases():
    return all_cases()


@pytest.fixture(scope="module", params=sorted(ENGINES))
def engine(request):
    return ENGINES[request.param]


@pytest.fixture(scope="module")
def answers(engine, cases):
    return engine(book_of(cases))


@each_function
def test_a_native_form_in_cells_comes_to_what_the_function_says(declared, cases, answers):
    own = [case for case in cases if case.declared is declared]
    assert len(own) >= CASES_EACH
    assert differences(own, answers) == []


@each_function
def test_every_argument_is_tried_at_the_ends_of_its_range(declared, cases):
    own = [case for case in cases if case.declared is declared]
    for name, argument in declared.arguments.items():
        tried = {value for case in own for value in _as_list(case.values[name])}
        ends = set(argument.term.choices or limits(argument.term))
        # An end that the other arguments rule out (a wax of 0 where it divides) is left out: never both.
        assert tried & ends


def _as_list(value):
    return value if isinstance(value, list) else [value]


def test_an_altered_formula_of_any_function_is_found(engine, cases):
    altered = [max((c for c in cases if c.declared is declared), key=_size) for declared in NATIVE]
    altered = [case._replace(formula=f"=({case.formula[1:]})*1.0000001") for case in altered]
    kept = [case for case in cases if case.cell not in {changed.cell for changed in altered}]
    found = differences(kept + altered, engine(book_of(kept + altered)))
    assert [name for name, *_ in found] == [declared.name for declared in NATIVE]


def _size(case):
    return abs(in_a_cell(case.declared.bare(**case.values)))


def test_an_error_or_a_blank_is_found(engine, cases):
    altered = [cases[0]._replace(formula="=1/0"), cases[1]._replace(formula=None)]
    assert len(differences(altered, engine(book_of(altered)))) == 2
