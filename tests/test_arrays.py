"""Columns in place of single values: every function on arrays comes to what plain calls say, row by row."""

# ruff: noqa: S603  the programs started here are our own choice

import random
import subprocess
import sys

import numpy as np
import pandas as pd
import pint
import pytest
from samples import drawn, limits, samples

import candlecalc
from candlecalc.arrays.form import form_of
from candlecalc.arrays.rows import BLOCK
from candlecalc.declaration.declared import REGISTRY

# Those that a column can be given to, and that have one value for an answer.
ON_COLUMNS = [
    declared
    for declared in REGISTRY.values()
    if not (declared.fields or declared.result.many)
    and not any(argument.term.many or argument.term.text for argument in declared.arguments.values())
]
VECTORISED = [declared for declared in ON_COLUMNS if form_of(declared)]
each_function = pytest.mark.parametrize("declared", ON_COLUMNS, ids=lambda declared: declared.name)
each_vectorised = pytest.mark.parametrize("declared", VECTORISED, ids=lambda declared: declared.name)


def columns(rows):
    return {name: [row[name] for row in rows] for name in rows[0]}


def one_by_one(declared, rows):
    """What plain calls say: an answer, or None where one is refused."""
    answers = []
    for row in rows:
        try:
            answers.append(declared.checked(**row))
        except ValueError:
            answers.append(None)
    return answers


def close(got, wanted):
    return [float(each) for each in got] == pytest.approx([float(each) for each in wanted], rel=1e-12, abs=1e-12)


def test_most_native_forms_are_worked_over_arrays():
    native = [declared for declared in ON_COLUMNS if declared.native]
    # Those of days, of quantiles, and of a list among their arguments go row by row.
    assert len(VECTORISED) >= 130 and len(native) - len(VECTORISED) <= 12


@each_function
def test_a_column_comes_to_what_plain_calls_say(declared):
    rows = samples(declared, 60)
    got, wanted = declared.checked(**columns(rows)), one_by_one(declared, rows)
    if declared.result.is_number:
        assert got.dtype == float and close(got, wanted)
    else:
        assert [str(each) for each in got] == [str(each) for each in wanted]


def in_steps(declared, chance):
    """Small amounts with one or two decimals, so that many answers lie on a half or at an end."""
    values = drawn(declared, chance)
    for name, argument in declared.arguments.items():
        if argument.term.is_number:
            low, high = limits(argument.term)
            values[name] = min(high, max(low, chance.randint(1, 400) / chance.choice([1, 2, 10, 20, 100])))
            values[name] = float(round(values[name])) if argument.term.whole else values[name]
    return values


@each_vectorised
def test_halves_and_ends_come_to_what_plain_calls_say(declared):
    chance = random.Random(declared.name)  # noqa: S311
    rows = [in_steps(declared, chance) for _ in range(400)]
    wanted = one_by_one(declared, rows)
    taken = [(row, answer) for row, answer in zip(rows, wanted, strict=True) if answer is not None]
    if taken:
        assert close(declared.checked(**columns([row for row, _ in taken])), [answer for _, answer in taken])
    refused = len(rows) - len(taken)
    if refused:
        with pytest.raises(ValueError, match=f"^{declared.name}: {refused} of 400 rows are refused. Row "):
            declared.checked(**columns(rows))


@each_vectorised
def test_one_value_beside_a_column_stands_in_every_row(declared):
    rows = samples(declared, 12)
    for name in declared.arguments:
        others = [{**row, name: rows[0][name]} for row in rows]
        others = [row for row, answer in zip(others, one_by_one(declared, others), strict=True) if answer is not None]
        if len(declared.arguments) > 1 and others:
            given = {**columns(others), name: rows[0][name]}
            assert close(declared.checked(**given), one_by_one(declared, others))


def test_a_crumb_past_an_end_is_the_end_in_a_column_too():
    got = candlecalc.heater_efficiency([287.05067669039215, 100], 10, [478.4177944839869, 400])
    assert got.tolist() == [1.0, pytest.approx(100 / 240)]


def test_rows_of_many_blocks_keep_their_places():
    wax = np.arange(3 * BLOCK + 7, dtype=float)
    assert (candlecalc.oil_for_wax(wax, 0.08) == wax * 0.08).all()
    wax[[5, BLOCK, 3 * BLOCK + 6]] = -1, np.nan, np.inf
    with pytest.raises(ValueError) as refused:
        candlecalc.oil_for_wax(wax, 0.08)
    assert str(refused.value) == (
        "oil_for_wax: 3 of 98,311 rows are refused. "
        "Row 5: wax is -1; it takes 0 or more g. "
        "Row 32768: wax is nan; it takes 0 or more g. "
        "Row 98310: wax is inf; it takes 0 or more g."
    )


def test_the_first_five_refused_rows_are_shown_by_their_index_with_a_plain_calls_reasons():
    table = pd.DataFrame({"wax": [-1, 500, 500, -2, -3, -4, -5], "load": [0.1, 8, 0.1, 0.1, 0.1, 0.1, 9]})
    table.index = list("abcdefg")
    with pytest.raises(ValueError) as refused:
        candlecalc.oil_for_wax(table.wax, table.load)
    assert str(refused.value) == (
        "oil_for_wax: 6 of 7 rows are refused. Row a: wax is -1; it takes 0 or more g. "
        "Row b: load is 8; it takes 0 to 0.5 of wax weight. Did you mean 8%? "
        "Row d: wax is -2; it takes 0 or more g. Row e: wax is -3; it takes 0 or more g. "
        "Row f: wax is -4; it takes 0 or more g. And 1 more."
    )


def test_what_arguments_ask_of_each_other_is_asked_of_each_row():
    with pytest.raises(ValueError, match=r"1 of 2 rows are refused. Row 1: load must be more than 0 \(load 0\)\."):
        candlecalc.wax_for_oil([40, 40], [0.08, 0])


def test_rows_that_are_refused_by_the_thousand_are_counted():
    oil, load = np.full(3 * BLOCK, 40.0), np.full(3 * BLOCK, 0.08)
    load[::2], oil[1] = 0, 1e12  # half of them divide by nothing, and one comes out beyond every range
    with pytest.raises(ValueError) as refused:
        candlecalc.wax_for_oil(oil, load)
    told = str(refused.value)
    assert told.startswith(f"wax_for_oil: {3 * BLOCK // 2 + 1:,} of {3 * BLOCK:,} rows are refused. Row 0: load")
    assert "Row 1: the result would be 1.25e+13" in told and told.endswith(f"And {3 * BLOCK // 2 - 4:,} more.")


def test_a_list_inside_a_column_is_refused():
    with pytest.raises(ValueError, match="oil_for_wax: wax has a list inside a list of another shape; it takes 0 or"):
        candlecalc.oil_for_wax([500, [250, 100]], 0.08)


def test_a_number_of_four_hundred_digits_is_refused_in_its_row():
    with pytest.raises(ValueError, match="1 of 2 rows are refused. Row 1: wax is inf; it takes"):
        candlecalc.oil_for_wax([500, 10**400], 0.08)


def test_a_series_keeps_its_index_and_its_name():
    wax = pd.Series([500, 250], index=["Fig", "Cedar"], name="wax")
    oil = candlecalc.oil_for_wax(wax, 0.08)
    pd.testing.assert_series_equal(oil, pd.Series([40.0, 20.0], index=["Fig", "Cedar"], name="wax"))
    load = pd.Series([0.08, 0.06], index=wax.index, name="load")
    assert candlecalc.oil_for_wax(wax, load).name is None  # two names, none of them the oil's
    assert candlecalc.oil_for_wax(wax, [0.08, 0.06]).equals(candlecalc.oil_for_wax(wax, load))


def test_series_of_other_rows_are_not_put_side_by_side():
    wax, load = pd.Series([500, 250], index=[0, 1]), pd.Series([0.08, 0.06], index=[1, 0])
    with pytest.raises(ValueError, match="oil_for_wax: columns of one index are wanted"):
        candlecalc.oil_for_wax(wax, load)
    with pytest.raises(ValueError, match="oil_for_wax: columns of one length are wanted: wax has 2, load has 3"):
        candlecalc.oil_for_wax([500, 250], [0.08, 0.06, 0.07])
    with pytest.raises(ValueError, match="beside a Series of 2 rows are longer"):
        candlecalc.oil_for_wax(wax, np.ones((3, 2)) / 10)


def test_arrays_broadcast():
    table = candlecalc.oil_for_wax(np.array([[500], [250]]), [0.08, 0.1])
    assert table.tolist() == [[40, 50], [20, 25]]
    with pytest.raises(ValueError, match="1 of 2 rows are refused. Row 1, 0: wax is -1"):
        candlecalc.oil_for_wax(np.array([[500], [-1]]), 0.08)
    assert candlecalc.oil_for_wax([], 0.08).shape == (0,)


TEXTS = ["1 lb", "16 oz", 453.59237, "453.59237 g"]


@pytest.mark.parametrize("form", [list, pd.Series, lambda cells: np.array(cells, dtype=object)])
def test_a_column_of_texts_is_read(form):
    assert candlecalc.oil_for_wax(form(TEXTS), "10%").tolist() == pytest.approx([45.359237] * 4, rel=1e-12)


def test_a_text_that_cannot_be_read_is_refused_in_its_row():
    with pytest.raises(ValueError, match='2 of 3 rows are refused. Row 1: wax is "12 fl oz": .* a volume; it takes'):
        candlecalc.oil_for_wax(["12 oz", "12 fl oz", True], 0.08)


def test_words_stand_in_columns_too():
    wax = [0.1, 0.1]
    assert candlecalc.highest_on_wax(wax, ["of wax", "Of Total"]).tolist() == [0.1, pytest.approx(1 / 9)]
    with pytest.raises(ValueError, match='Row 1: basis is "of waks"; it takes "of wax" or "of total"'):
        candlecalc.highest_on_wax(wax, ["of wax", "of waks"])


def test_days_stand_in_columns_too():
    made = pd.Series(pd.to_datetime(["2026-01-02", "2026-03-04"]))
    assert candlecalc.use_by(made, [10, "3 weeks"]).tolist() == [
        pd.Timestamp("2026-01-12"),
        pd.Timestamp("2026-03-25"),
    ]


def test_blanks_of_a_nullable_column_are_refused():
    with pytest.raises(ValueError, match="1 of 2 rows are refused. Row 1: wax is nan"):
        candlecalc.oil_for_wax(pd.Series([500, None], dtype="Int64"), 0.08)
    assert candlecalc.oil_for_wax(pd.Series([500, 250], dtype="Int64"), 0.08).tolist() == [40, 20]


def test_answers_of_several_values_take_no_columns():
    with pytest.raises(ValueError, match="burn_time_from_log: its answer is several values; give it single values"):
        candlecalc.burn_time_from_log([0, 4, 8, 12], [412, 392.5, 372, 352.5], [180, 200], 15)


# pint's own default registry, whose definitions are its own.
UNITS = pint.UnitRegistry()


@pytest.mark.parametrize(
    "function, given, unit, plain",
    [
        ("oil_for_wax", (10, 0.08), "ounce", ("10 oz", 0.08)),
        ("oil_for_wax", (1, 0.08), "pound", ("1 lb", 0.08)),
        ("fahrenheit", (353.15,), "kelvin", (80,)),
        ("fahrenheit", (176,), "degF", (80,)),
        ("fahrenheit_difference", (18,), "delta_degF", (10,)),
        ("fahrenheit_difference", (10,), "kelvin", (10,)),
    ],
)
def test_a_quantity_of_any_unit_of_its_dimension_is_taken(function, given, unit, plain):
    function = getattr(candlecalc, function)
    wanted = function(*plain)
    assert function(UNITS.Quantity(given[0], unit), *given[1:]) == pytest.approx(wanted, rel=1e-12)
    assert function([UNITS.Quantity(given[0], unit)], *given[1:]) == pytest.approx([wanted], rel=1e-12)
    column = UNITS.Quantity(np.array([given[0]] * 2, dtype=float), unit)
    assert function(column, *given[1:]) == pytest.approx([wanted] * 2, rel=1e-12)


def test_a_share_is_taken_as_a_quantity():
    assert candlecalc.oil_for_wax(500, UNITS.Quantity(8, "percent")) == pytest.approx(40, rel=1e-12)


@pytest.mark.parametrize(
    "quantity, words",
    [
        (UNITS.Quantity(5, "milliliter"), 'wax is 5 milliliter: it takes a weight such as 340 or "12 oz"'),
        (UNITS.Quantity(-5, "gram"), "wax is -5 gram; it takes 0 or more g"),
        (UNITS.Quantity([5, 6], "milliliter"), 'wax is in milliliter: it takes a weight such as 340 or "12 oz"'),
    ],
)
def test_a_quantity_of_another_dimension_is_refused(quantity, words):
    with pytest.raises(ValueError, match=f"oil_for_wax: {words}"):
        candlecalc.oil_for_wax(quantity, 0.08)


def test_an_amount_of_money_is_no_quantity():
    with pytest.raises(ValueError, match="cost is 5 dimensionless: it takes an amount of money"):
        candlecalc.price_for_margin(UNITS.Quantity(5, ""), 0.5)


@pytest.mark.parametrize("name", ["celsius", "oil_for_wax", "to_scale_step", "round_money"])
def test_a_number_is_a_float_however_arguments_were_written(name):
    declared = REGISTRY[name]
    whole = {each: 1 if argument.term.high >= 1 else 0 for each, argument in declared.arguments.items()}
    assert type(declared.checked(**whole)) is float


def test_neither_pandas_nor_numpy_nor_pint_is_in_the_start():
    script = (
        "import sys, candlecalc; candlecalc.oil_for_wax(500, 0.08); dir(candlecalc)\n"
        "print([name for name in ('numpy', 'pandas', 'pint') if name in sys.modules])"
    )
    run = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, timeout=60)
    assert run.stdout == "[]\n", run.stderr
