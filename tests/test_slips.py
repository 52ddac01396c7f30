"""A bare number in another unit than the one that is taken is refused, with the unit that was likely meant."""

import pytest

from candlecalc.declaration.declared import HELP_LENGTH, REGISTRY
from candlecalc.faces.addins import wizard
from candlecalc.faces.described.markdown import page
from candlecalc.faces.described.terminal import page as told
from candlecalc.quantities import units

# What makers have in inches, ounces, degrees F and per cent, typed without its unit.
SLIPS = [  # function, arguments, what it says
    ("melt_cautions", {"temperature": 170, "ceiling": 200, "oil_flash": 200}, ["mean 170 F?", "mean 200 F?"]),
    ("cylinder_volume", {"diameter": 3, "height": 3.5}, ["mean 3 in or 3 cm?", "mean 3.5 in or 3.5 cm?"]),
    ("cylinder_volume", {"diameter": 0.3, "height": 90}, ["diameter is 0.3; it takes 10 to 2000 mm."]),
    ("label_hours", {"fill": 220, "fastest": 0.16}, ["mean 0.16 oz/h?"]),
    ("burn_time", {"fill": 220, "rate": 0.16}, ["mean 0.16 oz/h?"]),
    ("figure_height_us", {"area": 13}, ["mean 13 sq in?"]),
    ("price_from_markup", {"cost": 6, "markup": 50}, ["mean 50%?"]),
    ("fill_weight", {"volume": 8, "headspace": 0.1, "density": 0.9}, ["mean 8 US fl oz?"]),
    ("fill_weight", {"volume": 300, "headspace": 0.1, "density": 900}, ["mean 900 kg/m3?"]),
    ("volume_from_water", {"water": 8}, ["mean 8 oz?"]),
    ("volume_from_water", {"water": 250, "temperature": 68}, ["mean 68 F?"]),
    (
        "cooling_time",
        {"first": 180, "second": 165, "minutes": 20, "room": 70, "melting": 130, "temperature": 170},
        ["mean 180 F?", "mean 70 F?"],
    ),
    ("temperature_after_oil", {"wax": 1000, "oil": 80, "hot": 185, "room": 70, "melting": 125}, ["mean 185 F?"]),
    ("melt_time", {"heat": 320, "power": 1.5, "efficiency": 0.5}, ["mean 1.5 kW?"]),
    ("heat_to_warm", {"weight": 1e3, "start": 20, "end": 80, "specific_heat": 2200}, ["mean 2200 J/(kg C)?"]),
    (
        "burn_verdict",
        {"flame": 3, "other_burning": 0, "afterglow": 0, "vessel": "whole", "lit_again": "no"},
        ["mean 3 in"],
    ),
]


@pytest.mark.parametrize("name, given, words", SLIPS, ids=lambda value: value if isinstance(value, str) else "")
def test_a_number_in_another_unit_is_refused_with_the_unit_that_was_meant(name, given, words):
    with pytest.raises(ValueError, match=f"^{name}: ") as refused:
        REGISTRY[name].checked(**given)
    assert [each for each in words if each not in str(refused.value)] == []


TERMS = {
    repr(argument.term): argument
    for formula in REGISTRY.values()
    for argument in formula.arguments.values()
    if argument.term.is_number
}


@pytest.mark.parametrize("argument", TERMS.values(), ids=lambda argument: argument.name)
def test_what_a_hint_says_would_be_taken(argument):
    many = argument.term.many
    tried = {
        argument.term.low,
        argument.term.high,
        *(10.0**power * digit for power in range(-3, 5) for digit in (1, 7)),
    }
    for value in {*tried, *(-value for value in tried)}:
        for meant in hinted(argument, [value] if many else value):
            argument.read([meant] if many else meant)


def hinted(argument, value):
    """What the message asks back, where a value is refused."""
    try:
        argument.read(value)
    except ValueError as problem:
        asked = str(problem).partition("Did you mean ")[2].rstrip("?")
        return asked.split(" or ") if asked else []
    return []


def test_text_with_a_unit_is_asked_for_no_other():
    assert hinted(REGISTRY["cylinder_volume"].arguments["diameter"], "3 mm") == []


@pytest.mark.parametrize("name", sorted(name for name, formula in REGISTRY.items() if not formula.instead))
def test_the_unit_of_an_answer_stands_where_people_read(name):
    formula = REGISTRY[name]
    about = wizard.about(formula)
    assert len(about) <= HELP_LENGTH
    for term in [*formula.fields.values()] or [formula.result]:
        if term.is_number and term.unit in units.DIMENSIONS and not term.unit_in:
            assert term.unit in " ".join(told(formula)) and term.unit in entry(name)
            if not formula.fields:
                assert f"Answer in {term.unit}" in about and "CANDLE_CONVERT" in about


PAGE = page()


def entry(name):
    """A function's part of the page, from what it gives on."""
    return PAGE.partition(f"\n### {name}\n")[2].partition("**gives**")[2].partition("\n\n")[0]
