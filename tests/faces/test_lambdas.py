"""The LAMBDA names: calculated by ironcalc they give Python's answers and #N/A where Python refuses.

How a LAMBDA stands in a file (the prefixes `_xlfn.`, `_xlpm.` and, for what may be left out, `_xlop.`) is
from files saved by the program itself, as published; that program was not run here.
"""

import math
import re

import lambda_book
import libreoffice
import pytest
from lambda_book import BLANK, calculate
from slips import expected, in_range, refused_together, slips

from candlecalc.calc import REGISTRY
from candlecalc.declaration.native import FUNCTIONS, SHEET_ONLY
from candlecalc.faces.lambdas import names as lambdas

NATIVE = [declared for declared in REGISTRY.values() if declared.native]
each_function = pytest.mark.parametrize("declared", NATIVE, ids=lambda declared: declared.name)


def every_case():
    return [case for each in NATIVE for case in (*in_range(each), *slips(each), *refused_together(each))]


def as_call(case):
    """A case as a call: an argument that is not in its cells is left out, and a None is a blank cell."""
    arguments = [case.cells.get(name, ...) for name in case.declared.arguments]
    return case.declared.name, [None if cell is ... else BLANK if cell is None else cell for cell in arguments]


@pytest.fixture(scope="module")
def answers():
    cases = every_case()
    return list(zip(cases, calculate([as_call(case) for case in cases]), strict=True))


@each_function
def test_a_name_answers_where_python_does_and_refuses_where_it_does(declared, answers):
    own = [(case, rows[0][0]) for case, rows in answers if case.declared is declared]
    assert any(not case.slip for case, _ in own)
    assert any(case.slip for case, _ in own)
    assert [(case.slip, case.cells, expected(case), got) for case, got in own if not _agree(expected(case), got)] == []


def _agree(wanted, got):
    if wanted is None:
        return isinstance(got, libreoffice.Error) and got == "#N/A"
    return isinstance(got, float) and math.isclose(got, wanted, rel_tol=1e-9, abs_tol=1e-12)


LEFT_OUT = [  # function, arguments with None where one is left out, the answer, how it was worked
    ("unit_cost", (18, 450), 0.04, "18/450"),
    ("unit_cost", (18, 450, None, 4.5), 0.05, "22.5/450: one in the middle left out"),
    ("labour_cost", (90, 16), 24, "an hour and a half of one person at 16"),
    ("labour_cost", (90, 16, BLANK), 24, "a blank cell is one left out"),
    ("fee_at", (20, 0.1, 0.2, "gross"), 2.4, "a tenth of 24"),
    ("fee_at", (20, 0.1, 0.2), 2, "a tenth of 20"),
    ("round_money", (1.005,), 1.01, "two decimals"),
]


@pytest.mark.parametrize("name, arguments, answer, how", LEFT_OUT)
def test_what_may_be_left_out_stands_at_its_default(name, arguments, answer, how):
    assert calculate([(name, arguments)])[0][0][0] == pytest.approx(answer)


def test_a_name_may_be_called_within_another_and_over_values_worked_out():
    book = lambda_book.book_of([("oil_for_wax", (500, 0.08)), ("unit_cost", (20, 400))])
    sheet = book.active
    sheet["F1"] = "=CANDLE_OIL_FOR_WAX(B1*2,CANDLE_UNIT_COST(20,400))"
    sheet["F2"] = "=SUM(CANDLE_OIL_FOR_WAX(B1,8),1)"
    assert lambda_book.calculated(book, ["F1", "F2"]) == [pytest.approx(50), "#N/A"]


def test_an_altered_definition_is_found(monkeypatch):
    right = lambdas.named
    bent = lambda declared: right(declared)._replace(  # noqa: E731
        definition=right(declared).definition.replace("_xlpm.wax*_xlpm.load", "_xlpm.wax*_xlpm.load*1.0000001")
    )
    monkeypatch.setattr(lambdas, "named", bent)
    assert not _agree(40, calculate([("oil_for_wax", (500, 0.08))])[0][0][0])


# How names are written


@each_function
def test_every_parameter_and_newer_function_carries_its_prefix(declared):
    text = re.sub(r'"[^"]*"', '""', lambdas.named(declared).definition)
    called = set(re.findall(r"([A-Za-z_.0-9]+)\(", text))
    assert called <= {"_xlfn.LAMBDA", "_xlfn.LET", "_xlfn.ISOMITTED"} | set(FUNCTIONS) | SHEET_ONLY
    words = set(re.findall(r"(?<![0-9.])[A-Za-z_][A-Za-z_.0-9]*", text)) - called
    assert all(re.fullmatch(r"_xl[po][pm]\.[a-z_]+", word) for word in words)
    listed, body = text.partition("_xlfn.LET(")[::2]
    optional = [name for name, argument in declared.arguments.items() if argument.optional]
    assert re.findall(r"_xlop\.([a-z_]+)", listed) == optional
    assert "_xlop." not in body


@each_function
def test_a_name_fits_where_it_goes(declared):
    name, definition, comment, hidden = lambdas.named(declared)
    assert re.fullmatch(r"CANDLE_[A-Z_]+", name)
    assert len(definition) <= lambdas.LONGEST
    assert len(comment) <= lambdas.HELP_LENGTH
    assert hidden == bool(declared.instead)
    assert comment.startswith("Earlier; now CANDLE_" if hidden else declared.summary)
    # "answer" and the like stand for what is worked out inside.
    inside = {"answer", *(f"{argument}_taken" for argument in declared.arguments)}
    assert not inside & set(declared.arguments)


def test_a_definition_to_type_is_the_one_in_the_file_without_its_prefixes():
    assert lambdas.typed(REGISTRY["cost_each"]) == (
        '=LAMBDA(cost,batch,LET(answer,cost/batch,IFERROR(IF(OR(cost="",ISLOGICAL(cost),cost<0,cost>1000000000000,'
        'batch="",ISLOGICAL(batch),batch<1,batch>1000000,batch<>INT(N(batch))),NA(),'
        "IF(answer>1000000000000,NA(),answer)),NA())))"
    )
    assert lambdas.typed(REGISTRY["unit_cost"]).startswith("=LAMBDA(price,size,[shipping],[tax],LET(shipping_taken,")
    for declared in NATIVE:
        plain = re.sub(r"_xl(fn|pm)\.", "", lambdas.named(declared).definition)
        assert lambdas.typed(declared) == "=" + re.sub(r"_xlop\.([a-z_]+)", r"[\1]", plain)


def test_names_are_in_order_and_each_there_once():
    names = [named.name for named in lambdas.every()]
    assert names == sorted(set(names), key=str.lower)
    assert len(names) == len(NATIVE)
