"""What `import candlecalc` shows: the functions and two helpers, by their names, and nothing else."""

# ruff: noqa: S603  the programs started here are our own choice

import pydoc
import subprocess
import sys

import numpy as np
import pint
import pytest

import candlecalc
from candlecalc.declaration.declared import REGISTRY


def test_dir_lists_the_functions_and_two_helpers():
    today = [name for name, formula in REGISTRY.items() if not formula.instead]
    assert dir(candlecalc) == sorted([*today, "answer_in", "find"])


def test_a_star_brings_the_same():
    names: dict = {}
    exec("from candlecalc import *", names)  # noqa: S102
    assert set(names) - {"__builtins__"} == set(dir(candlecalc))


def test_a_name_that_is_none_is_refused_with_the_nearest():
    with pytest.raises(AttributeError, match="has no attribute 'oil_for_waks'") as refused:
        candlecalc.oil_for_waks  # noqa: B018
    assert refused.value.obj is candlecalc  # from which Python says the nearest


def test_find_works_after_a_bare_import():
    script = "import candlecalc; print(candlecalc.find('oil_for_wax'), candlecalc.find(candlecalc.wax_for_oil).name)"
    run = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, timeout=60)
    assert run.stdout.startswith("<oil_for_wax(wax, load): Fragrance oil") and run.stdout.endswith(" wax_for_oil\n")
    with pytest.raises(ValueError, match=r"there is no function oil_for_waks\. Nearest: oil_for_wax"):
        candlecalc.find("oil_for_waks")


def test_help_says_what_a_function_takes_and_gives():
    told = pydoc.plain(pydoc.render_doc(candlecalc.oil_for_wax))
    assert "oil_for_wax(wax, load)" in told
    assert told.index("Parameters") < told.index("load : 0 to 0.5 of wax weight") < told.index("Returns")


# Units by definition (international yard and pound agreement, 1959), worked out by pint.
UNITS = pint.UnitRegistry()


@pytest.mark.parametrize("unit, of_pint", [("oz", "ounce"), ("lb", "pound"), ("kg", "kilogram"), ("g", "gram")])
def test_an_answer_is_given_in_the_unit_asked_for(unit, of_pint):
    wanted = UNITS.Quantity(500 * 0.08, "gram").to(of_pint).magnitude
    assert candlecalc.answer_in(unit, candlecalc.oil_for_wax, 500, 0.08) == pytest.approx(wanted, rel=1e-12)
    assert candlecalc.answer_in(unit, "oil_for_wax", [500], load="8%") == pytest.approx([wanted], rel=1e-12)


def test_degrees_and_degrees_apart_are_given_in_fahrenheit():
    assert candlecalc.answer_in("F", candlecalc.celsius, 176) == pytest.approx(176)
    assert candlecalc.answer_in("F", candlecalc.celsius_difference, 18) == pytest.approx(18)


def test_a_share_is_given_in_percent():
    assert candlecalc.answer_in("%", candlecalc.share_of_total, np.array([0.25])) == pytest.approx([20])


def test_fields_are_given_in_the_unit_where_it_measures_them():
    log = ([0, 4, 8, 12], [412, 392.5, 372, 352.5], 180, 15)
    hours, minutes = candlecalc.burn_time_from_log(*log), candlecalc.answer_in("min", "burn_time_from_log", *log)
    assert minutes.hours == pytest.approx(hours.hours * 60) and minutes.note == hours.note


@pytest.mark.parametrize(
    "unit, function, given, words",
    [
        ("ml", "oil_for_wax", (500, 0.08), 'oil_for_wax answers in g: "ml" is for a volume'),
        ("stone", "oil_for_wax", (500, 0.08), '"stone" is no unit known here'),
        ("oz", "fee_at", (6, 0.1), 'fee_at answers in no unit: "oz" is for a weight'),
        ("oz", "convert", (1, "lb", "g"), "convert: to says which unit it answers in"),
    ],
)
def test_a_unit_that_an_answer_cannot_be_in_is_refused(unit, function, given, words):
    with pytest.raises(ValueError, match=words):
        candlecalc.answer_in(unit, function, *given)
