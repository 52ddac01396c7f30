"""A guarded formula gives Python's answer where Python gives one, and #N/A where Python refuses.

As in `test_native_forms`, one workbook holds every case, calculated once by formualizer and once, from
scratch, by LibreOffice. A case is what stands in the cells; what it should come to, Python says.
"""

import io
import math
import random
from itertools import islice
from typing import NamedTuple

import formualizer
import libreoffice
import pytest
from openpyxl import Workbook
from openpyxl.utils import get_column_letter
from samples import drawn, samples

from candlecalc.calc import REGISTRY
from candlecalc.formula import LARGEST
from candlecalc.guard import guarded
from candlecalc.native import Leaf, spell

SHEET = "Guarded"
CASES_EACH, REFUSED_EACH = 8, 12
NATIVE = [declared for declared in REGISTRY.values() if declared.native]
each_function = pytest.mark.parametrize("declared", NATIVE, ids=lambda declared: declared.name)


class Case(NamedTuple):
    declared: object
    slip: str  # what is wrong in the cells, or "" where nothing is
    cells: dict  # argument -> what stands in its cell, a list for its cells; None is a blank one


def expected(case):
    """Python's answer, or None where it refuses."""
    # A blank cell of an optional argument is one left out.
    given = {name: value for name, value in case.cells.items() if not _left_out(case.declared, name, value)}
    try:
        return case.declared.checked(**given)
    except ValueError:
        return None


def _left_out(declared, name, value):
    return value is None and declared.arguments[name].optional


def in_range(declared):
    """Every argument in a cell; then those that may be, left out; then those in blank cells."""
    for values in samples(declared, CASES_EACH):
        yield Case(declared, "", values)
    optional = {name for name, argument in declared.arguments.items() if argument.optional}
    for values in samples(declared, 4) if optional else []:
        left = {name: value for name, value in values.items() if name not in optional}
        for case in (Case(declared, "", left), Case(declared, "", {**left, **dict.fromkeys(optional)})):
            if expected(case) is not None:
                yield case


def slips(declared):
    """One argument spoiled in each way there is, the others as in a case that is taken."""
    for values, (name, argument) in zip(_over_and_over(samples(declared, 4)), _arguments(declared), strict=False):
        for slip, wrong in _wrong(argument, values[name]):
            yield Case(declared, f"{name}: {slip}", {**values, name: wrong})


def _arguments(declared):
    return [pair for pair in declared.arguments.items() for _ in range(2)]


def _over_and_over(values):
    while True:
        yield from values


def _wrong(argument, value):
    term = argument.term
    if term.many:
        yield from _wrong_lists(term, value)
        return
    yield "text", "twelve"
    yield "TRUE", True
    if term.choices:
        yield "a number", 5
    if not argument.optional and not term.blank:
        yield "blank", None
    yield from _wrong_numbers(term, value)


def _wrong_numbers(term, value):
    if not term.counts:
        return
    if term.low > -LARGEST:
        yield "too low", term.low if term.above else term.low - 0.001
    yield "too high", 2 * LARGEST if term.high >= LARGEST else term.high + 0.001
    if term.whole and term.takes(value + 1):
        yield "not whole", value + 0.5


def _wrong_lists(term, values):
    yield "text in it", [*values, "twelve"]
    yield "a number as text", [*values, "1"]
    yield "TRUE in it", [*values, True]
    yield "blank in it", [values[0], None, *values[1:], *values[:1]]
    yield "blank first", [None, *values]
    yield "all blank", [None, None]
    yield "one more than the others", [*values, values[-1]]
    for slip, wrong in _wrong_numbers(term, values[0]):
        yield slip, [*values[1:], wrong]


def refused_together(declared):
    """Arguments each in range that Python refuses together, or for what they would come to."""
    chance = random.Random(f"{declared.name} refused")  # noqa: S311
    tries = [*_at_zero(declared), *(drawn(declared, chance) for _ in range(400))]
    cases = (Case(declared, "together", values) for values in tries)
    refused = (case for case in cases if expected(case) is None and not _beyond_any_maker(case))
    return islice(refused, REFUSED_EACH)


def _at_zero(declared):
    """Each argument in turn at 0, where its own range takes that."""
    for name, argument in declared.arguments.items():
        if argument.term.counts and argument.term.takes(0) and not argument.term.many:
            yield {**samples(declared, 1)[-1], name: 0}


def _beyond_any_maker(case):
    """Whether all that is wrong is an answer above 1e12, the end of every range: formulas leave that test out."""
    result = case.declared.result
    try:
        return result.high == LARGEST < abs(case.declared.bare(**case.cells))
    except (ValueError, ArithmeticError):
        return False


def all_cases():
    found = []
    for declared in NATIVE:
        wrong = [case for case in slips(declared) if expected(case) is None]
        found += [*in_range(declared), *wrong, *refused_together(declared)]
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


def by_formualizer(cases, folder):
    data = io.BytesIO()
    book_of(cases).save(data)
    path = folder / "stored.xlsx"
    path.write_bytes(formualizer.recalculate_xlsx_bytes(data.getvalue())["bytes"])
    return libreoffice.stored(path)


def by_libreoffice(cases, folder):
    book_of(cases).save(folder / "guarded.xlsx")
    return libreoffice.recalculated(folder / "guarded.xlsx")


ENGINES = {"formualizer": by_formualizer, "LibreOffice": by_libreoffice}


@pytest.fixture(scope="module")
def cases():
    return all_cases()


@pytest.fixture(scope="module", params=sorted(ENGINES))
def engine(request):
    return request.param


@pytest.fixture(scope="module")
def answers(engine, cases, tmp_path_factory):
    values = ENGINES[engine](cases, tmp_path_factory.mktemp("guarded"))
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
        assert {f"{name}: {slip}" for slip in wanted} <= tried
    assert not declared.requires or "together" in tried


def test_an_unguarded_formula_is_found(cases, tmp_path):
    taken = next(case for case in cases if case.declared.name == "oil_for_wax" and not case.slip)
    slipped = taken._replace(cells={"wax": 100, "load": 8}, slip="load: too high")
    answers = by_formualizer([slipped], tmp_path)
    assert differences([slipped], [answers[SHEET, "A1"]]) == []
    assert differences([slipped], [800.0]) != []
