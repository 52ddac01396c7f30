"""The native form: its grammar, and that every spelling of it comes to what the function says."""

import math

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from samples import in_a_cell, within

from candlecalc.calc import REGISTRY
from candlecalc.declaration.native import (
    FUNCTIONS,
    Call,
    Leaf,
    Name,
    Negation,
    Operation,
    compile_python,
    names,
    number,
    parse,
    python,
    replace,
    spell,
    walk,
)

A, B, C = Name("a"), Name("b"), Name("c")


def plus(left, right):
    return Operation("+", left, right)


def minus(left, right):
    return Operation("-", left, right)


def times(left, right):
    return Operation("*", left, right)


def power(left, right):
    return Operation("^", left, right)


# Reading


TREES = [
    ("wax", Name("wax")),
    ("own_time", Name("own_time")),
    ("0.75", Leaf("0.75")),
    ("1e-6", Leaf("1e-6")),
    ('"of total"', Leaf('"of total"')),
    (" a + b ", plus(A, B)),
    ("a+b*c", plus(A, times(B, C))),
    ("(a+b)*c", times(plus(A, B), C)),
    ("a-b-c", minus(minus(A, B), C)),
    ("a*b^c", times(A, power(B, C))),
    ("-a*b", times(Negation(A), B)),
    ("a*-b", times(A, Negation(B))),
    ("(-a)^b", power(Negation(A), B)),
    ("a+b<c", Operation("<", plus(A, B), C)),
    ("a<>b", Operation("<>", A, B)),
    ("a>=b", Operation(">=", A, B)),
    ("PI()", Call("PI", ())),
    ("MIN(a,b+c)", Call("MIN", (A, plus(B, C)))),
    ("ROUND(MAX(a,b),0)", Call("ROUND", (Call("MAX", (A, B)), Leaf("0")))),
    ('a*(b="net")', times(A, Operation("=", B, Leaf('"net"')))),
]


@pytest.mark.parametrize("text, tree", TREES)
def test_a_native_form_is_read_into_its_tree(text, tree):
    assert parse(text) == tree


REFUSED = [
    ("-a^2", r"write 0-x\^2 or \(-x\)\^2"),
    ("a*-b^2", r"write 0-x\^2 or \(-x\)\^2"),
    ("2^3^2", r"use parentheses between two \^"),
    ("CELL(a)", "CELL is not one of ABS, AND, "),
    ("OFFSET(a,1,1)", "OFFSET is not one of"),
    ("a b", "'b' is left over"),
    ("a<b<c", "'<' is left over"),
    ("min(a,b)", r"'\(' is left over"),
    ("a)", r"'\)' is left over"),
    ("(a", r"\) is missing before 'the end'"),
    ("MIN(a", r"\) is missing before 'the end'"),
    ("MIN(a,)", "stands where a value is wanted"),
    ("a*", "'the end' stands where a value is wanted"),
    ("", "'the end' stands where a value is wanted"),
    ("*a", r"'\*' stands where a value is wanted"),
    ("a;b", "cannot read ';b'"),
    ("a%", "cannot read '%'"),
    ("A1*2", "cannot read 'A1"),
    ('"open', "cannot read '\"open'"),
]


@pytest.mark.parametrize("text, words", REFUSED)
def test_what_spreadsheets_and_python_read_differently_or_not_at_all_is_refused(text, words):
    with pytest.raises(ValueError, match=words):
        parse(text)


def test_names_are_given_in_the_order_met_each_once():
    assert names(parse("wax*load/(1+load)-MIN(wax,step)")) == ["wax", "load", "step"]


# Writing


@pytest.mark.parametrize(
    "text",
    ["a-(b-c)", "a-b-c", "(a+b)*c", "a+b*c", "a/(b*c)", "a/b*c", "a*(b/c)", "-(a+b)", "-a*b", "(-a)^2", "a^(-b)",
     "(a*b)^c", "(a^b)^c", "a^(b^c)", "(a<b)*c", "(a=b)=c", "-(-a)", "a--b", "MIN(a,b-c)", 'a*(b="net")'],
)  # fmt: skip
def test_a_form_is_written_with_no_more_parentheses_than_it_needs(text):
    assert spell(parse(text)) == text


@pytest.mark.parametrize(
    "text, short", [("((a))", "a"), ("(a*b)+(c)", "a*b+c"), ("(a+b)-c", "a+b-c"), ("((a)<(b))", "a<b")]
)
def test_parentheses_that_say_nothing_are_left_out(text, short):
    assert spell(parse(text)) == short


PYTHON = [
    ("a^b", "a**b"),
    ("a=b", "a==b"),
    ("a<>b", "a!=b"),
    ("a<=b", "a<=b"),
    ("ROUND(a/b,0)*b", "ROUND(a/b,0)*b"),
    ('a="of total"', 'a=="of total"'),
]


@pytest.mark.parametrize("text, expression", PYTHON)
def test_a_form_is_written_in_python_too(text, expression):
    assert python(parse(text)) == expression


def test_a_name_is_replaced_as_a_node_and_never_as_text():
    assert spell(replace(parse("a*b"), {"a": plus(B, C)})) == "(b+c)*b"
    assert spell(replace(parse("c-a"), {"a": minus(B, C)})) == "c-(b-c)"
    assert spell(replace(parse("wax*waxes"), {"wax": Leaf("B4")})) == "B4*waxes"
    assert spell(replace(parse("-MIN(a,b)"), {"a": Leaf("$B$4"), "b": Leaf("C4")})) == "-MIN($B$4,C4)"
    assert spell(replace(parse('a*(b="a")'), {"a": Leaf("B4")})) == 'B4*(b="a")'


def test_names_that_trade_places_do_not_meet():
    assert replace(parse("a-b"), {"a": B, "b": A}) == parse("b-a")


def test_a_power_put_in_keeps_its_parentheses():
    # Without them a spreadsheet takes the minus first, and Python takes ^ from the right.
    squared = replace(parse("-x"), {"x": parse("a^2")})
    assert spell(squared) == "-(a^2)"
    assert compile_python(squared)({"a": 3}) == -9
    twice = replace(parse("x^c"), {"x": parse("a^b")})
    assert spell(twice) == "(a^b)^c"
    assert compile_python(twice)({"a": 3, "b": 2, "c": 4}) == 9**4


NUMBERS = [
    (0.08, "0.08"),
    (500.0, "500"),
    (1 / 3, "0.333333333333333"),
    (0.1 + 0.2, "0.3"),
    (1e15, "1000000000000000"),
    (2.5e20, "250000000000000000000"),
    (1e-7, "0.0000001"),
    (-4.0, "-4"),
]


@pytest.mark.parametrize("value, text", NUMBERS)
def test_a_number_is_written_with_fifteen_digits_and_no_exponent(value, text):
    assert number(value) == text


@given(st.floats(1e-12, 1e12))
def test_a_written_number_keeps_its_fifteen_digits(value):
    assert "e" not in number(value)
    assert float(number(value)) == float(f"{value:.15g}")


# Calculating


def test_a_compiled_form_takes_a_mapping_of_its_names():
    assert compile_python(parse("wax*load"))({"wax": 500, "load": 0.08}) == 40
    assert compile_python(parse("SUMPRODUCT(mix,prices)"))({"mix": [3, 1], "prices": [10, 9]}) == 39


def test_a_compiled_form_reaches_nothing_but_its_names_and_functions():
    with pytest.raises(NameError):
        compile_python(Name("open"))({})


VALUES = [
    ("INT(-2.5)", -3),
    ("ROUND(2.675,2)", 2.68),
    ("ROUND(-2.5,0)", -3),
    ("MAX(1,2)-MIN(1,2)", 1),
    ("LN(EXP(2))", 2),
    ("SQRT(9)", 3),
    ("TAN(PI()/4)", 1),
    ("AND(1<2,2<1)", False),
    ("OR(1<2,2<1)", True),
    ("NOT(1<2)", False),
    ('2*("net"="net")', 2),
]


@pytest.mark.parametrize("text, value", VALUES)
def test_functions_come_to_what_a_spreadsheet_says(text, value):
    assert compile_python(parse(text))({}) == pytest.approx(value, rel=1e-15)


# Laws


def _grown(smaller):
    """Trees the grammar can read: it refuses a power under a minus, and a power's right side must be its own."""
    operation = st.builds(Operation, st.sampled_from([*"+-*/^", "=", "<>", "<", ">", "<=", ">="]), smaller, smaller)
    negation = st.builds(Negation, smaller).filter(lambda tree: getattr(tree.of, "sign", "") != "^")
    call = st.builds(Call, st.sampled_from(sorted(FUNCTIONS)), st.lists(smaller, max_size=3).map(tuple))
    return operation | negation | call


leaves = st.sampled_from([A, B, C, Name("own_time"), Leaf("2"), Leaf("0.75"), Leaf("1e-6"), Leaf('"of wax"')])
trees = st.recursive(leaves, _grown, max_leaves=12)


@given(trees)
def test_what_is_written_reads_back_as_the_same_tree(tree):
    assert parse(spell(tree)) == tree


@given(trees)
def test_names_put_in_are_the_names_found(tree):
    swapped = replace(tree, {name: Leaf("B4") for name in names(tree)})
    assert names(swapped) == []
    assert replace(tree, {}) == tree


SCALAR = [
    declared
    for declared in REGISTRY.values()
    if declared.native
    and not any(argument.term.many for argument in declared.arguments.values())
    and not any(isinstance(part, Call) and part.function not in FUNCTIONS for part in walk(declared.native))
]


@pytest.mark.parametrize("declared", SCALAR, ids=lambda declared: declared.name)
@settings(max_examples=25, suppress_health_check=[HealthCheck.filter_too_much])
@given(data=st.data())
def test_the_native_form_in_python_comes_to_what_the_function_says(declared, data):
    given_values = data.draw(within(declared))
    cells = {name: in_a_cell(value) for name, value in given_values.items()}
    expected = in_a_cell(declared.bare(**given_values))
    assert math.isclose(compile_python(declared.native)(cells), expected, rel_tol=1e-9, abs_tol=1e-12)
