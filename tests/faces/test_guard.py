"""A guarded formula gives Python's answer where Python gives one, and #N/A where Python refuses.

As in `test_native_forms`, one workbook holds every case, calculated once by formualizer and once, from
scratch, by LibreOffice. A case is what stands in the cells; what it should come to, Python says.
"""

import math

import libreoffice
import pytest
from openpyxl import Workbook
from openpyxl.utils import get_column_letter
from slips import beyond_any_maker, expected, in_range, refused_together, slips
from two_engines import ENGINES, by_formualizer

from candlecalc.calc import REGISTRY
from candlecalc.declaration.guard import guarded
from candlecalc.declaration.native import Leaf, spell

SHEET = "Guarded"
NATIVE = [declared for declared in REGISTRY.values() if declared.native]
each_function = pytest.mark.parametrize("declared", NATIVE, ids=lambda declared: declared.name)


def all_cases():
    found = []
    for declared in NATIVE:
        # An answer above 1e12 is not looked for: the test would double every formula.
        together = [case for case in refused_together(declared) if not beyond_any_maker(case)]
        found += [*in_range(declared), *slips(declared), *together]
    return found


def book_of(cases):
    book = Workbook()
    sheet = book.active
    sheet.title = SHEET
    for row, case in enumerate(cases, start=1):
        references = {}
        column = 2
        for name, value in case.cells.items():
            cells = value if isinstance(value, list) else [value]
            for offset, typed in enumerate(cells):
                _type(sheet.cell(row, column + offset), typed)
            ends = [f"{get_column_letter(end)}{row}" for end in (column, column + len(cells) - 1)]
            references[name] = Leaf(":".join(ends) if isinstance(value, list) else ends[0])
            column += len(cells)
        sheet.cell(row, 1).value = "=" + spell(guarded(case.declared, references))
    return book


def _type(cell, value):
    cell.value = value
    if isinstance(value, str):
        cell.data_type = "s"


@pytest.fixture(scope="module")
def cases():
    return all_cases()


@pytest.fixture(scope="module", params=sorted(ENGINES))
def engine(request):
    return request.param


@pytest.fixture(scope="module")
def answers(engine, cases):
    values = ENGINES[engine](book_of(cases))
    return [values.get((SHEET, f"A{row}")) for row, _ in enumerate(cases, start=1)]


def differences(cases, answers):
    return [
        (case.slip, case.cells, expected(case), got)
        for case, got in zip(cases, answers, strict=True)
        if not _agree(expected(case), got)
    ]


def _agree(wanted, got):
    if wanted is None:
        return isinstance(got, libreoffice.Error) and got == "#N/A"
    return isinstance(got, float) and math.isclose(got, wanted, rel_tol=1e-9, abs_tol=1e-12)


@each_function
def test_a_guarded_formula_answers_where_python_does_and_refuses_where_it_does(declared, engine, cases, answers):
    own = [(case, got) for case, got in zip(cases, answers, strict=True) if case.declared is declared]
    # LibreOffice keeps TRUE as the number 1 in another format, and in a range nothing tells the two apart.
    own = [pair for pair in own if engine != "LibreOffice" or not pair[0].slip.endswith("TRUE in it")]
    assert differences(*zip(*own, strict=True)) == []


@each_function
def test_every_kind_of_slip_is_tried_on_every_function(declared, cases):
    tried = {case.slip for case in cases if case.declared is declared}
    for name, argument in declared.arguments.items():
        wanted = {"text in it", "blank in it", "TRUE in it"} if argument.term.many else {"text", "TRUE"}
        wanted = set() if argument.term.text else wanted
        assert {f"{name}: {slip}" for slip in wanted} <= tried
    assert not declared.requires or "together" in tried


def test_an_unguarded_formula_is_found(cases):
    taken = next(case for case in cases if case.declared.name == "oil_for_wax" and not case.slip)
    slipped = taken._replace(cells={"wax": 100, "load": 8}, slip="load: too high")
    answers = by_formualizer(book_of([slipped]))
    assert differences([slipped], [answers[SHEET, "A1"]]) == []
    assert differences([slipped], [800.0]) != []
