"""What every add-in does with a sheet's cells, without a sheet."""

from datetime import date
from typing import Annotated, NamedTuple, Optional, Sequence

import pytest
from faces.test_every_function import in_range

from candlecalc.calc import REGISTRY
from candlecalc.declaration.declared import Function, Term, formula
from candlecalc.faces.addins.cells import Refused, answer, named, why
from candlecalc.quantities.units import read

OIL = REGISTRY["oil_for_wax"]
SCALAR = [
    declared
    for declared in REGISTRY.values()
    if not (declared.result.many or declared.fields or any(one.term.many for one in declared.arguments.values()))
]

Weight = Annotated[float, Term("g", "a weight")]
Day = Annotated[date, Term("date", "a day")]
DayOrNone = Annotated[Optional[date], Term("date", "a day, or blank", blank=True)]


class Pair(NamedTuple):
    """A row."""

    day: DayOrNone
    weight: Weight


@pytest.fixture
def declared(monkeypatch) -> "callable":
    """Declares a function in a registry of its own."""
    monkeypatch.setattr("candlecalc.declaration.declared.REGISTRY", registry := {})

    def declare(bare) -> Function:
        formula(source="none: for a test")(bare)
        return registry[bare.__name__]

    return declare


@pytest.mark.parametrize("declared", SCALAR, ids=lambda declared: declared.name)
def test_a_range_gives_what_its_cells_give_one_by_one(declared):
    rows = [tuple(map(values.get, declared.arguments)) for values in in_range(declared.name)]
    rows.insert(1, ("a word", *rows[0][1:]))
    ranges = [[[cell] for cell in column] for column in zip(*rows, strict=True)]
    assert answer(declared, ranges) == [answer(declared, row)[0] for row in rows]
    turned = [[list(column)] for column in zip(*rows, strict=True)]
    assert answer(declared, turned) == [[answer(declared, row)[0][0] for row in rows]]


def test_a_value_beside_a_range_is_read_once(monkeypatch):
    seen = []
    monkeypatch.setattr("candlecalc.quantities.units.read", lambda text, unit: seen.append(text) or read(text, unit))
    assert answer(OIL, [[[100.0]] * 50, "8%"]) == [[8.0]] * 50
    assert seen == ["8%"]


def test_a_refused_value_beside_a_range_refuses_every_cell():
    reason = "oil_for_wax: load is 8; it takes 0 to 0.5 of wax weight. Did you mean 8%?"
    assert answer(OIL, [[[100.0, 200.0], [300.0, ""]], 8]) == [[Refused(reason)] * 2] * 2


def test_blank_cells_stay_blank_where_a_value_is_wanted():
    assert answer(OIL, [[[100.0], [""], [None]], 0.1]) == [[10.0], [""], [""]]
    half = answer(OIL, [[[100.0], [""]], [[0.1], [0.1]]])
    assert half[0] == [10.0] and isinstance(half[1][0], Refused)


def test_blank_cells_are_answered_where_a_blank_is_taken(declared):
    def held(end: DayOrNone) -> Weight:
        return 0.0 if end else 1.0

    assert answer(declared(held), [[[46095.0], [""]]]) == [[0.0], [1.0]]


def test_days_go_in_and_come_out_as_serial_numbers(declared):
    def later(day: Day) -> Day:
        return day.replace(year=day.year + 1)

    later_ = declared(later)
    assert answer(later_, [46095.0]) == answer(later_, ["2026-03-14"]) == [[46460.0]]  # 14 March 2027
    assert answer(later_, [[[46095.0], ["soon"]]])[0] == [46460.0]


def test_rows_of_fields_come_out_as_rows_of_cells(declared):
    def pairs(weights: Annotated[Sequence[float], Term("g", "weights", many=True)]) -> "list[Pair]":
        return [Pair(None, weights[0]), Pair(date(2026, 3, 14), weights[-1])]

    pairs.__annotations__["return"] = list[Pair]
    assert answer(declared(pairs), [[[1.0], [2.0]]]) == [["", 1.0], [46095.0, 2.0]]


def test_what_is_not_one_shape_or_one_answer_is_told():
    (told,) = answer(OIL, [[[1.0], [2.0]], [[0.1], [0.1], [0.1]]])[0]
    assert told == Refused("oil_for_wax: ranges of one shape are wanted")
    (told,) = answer(REGISTRY["oil_parts"], [[[1.0], [2.0]], [[0.5], [0.5]]])[0]
    assert told == Refused("oil_parts: its answer takes several cells; give it single values, not ranges")
    (told,) = answer(OIL, [1.0, 0.1, 3.0])[0]
    assert told == Refused("oil_for_wax: takes 2 arguments, not 3")


def test_an_argument_left_out_has_its_default_and_an_empty_text_has_not():
    highest = REGISTRY["highest_on_wax"]
    assert answer(highest, [0.2]) == answer(highest, [0.2, None]) == [[0.2]]
    assert isinstance(answer(highest, [0.2, ""])[0][0], Refused)
    assert isinstance(answer(OIL, [500.0])[0][0], Refused)


@pytest.mark.parametrize(
    "name", ["oil_for_wax", "OIL_FOR_WAX", "CANDLE_OIL_FOR_WAX", "Candle.OilForWax", " oilforwax "]
)
def test_a_function_is_known_by_its_name_on_any_face(name):
    assert named(name) is OIL


def test_why_names_the_first_cell_that_has_no_answer():
    reason = "oil_for_wax: load is 8; it takes 0 to 0.5 of wax weight. Did you mean 8%?"
    assert why("oil_for_wax", 500.0, 8.0) == reason
    assert why("oil_for_wax", [[500.0], [600.0]], [[0.08], [8.0]]) == f"row 2: {reason}"
    assert why("oil_for_wax", [[500.0, 600.0]], [[0.08, 8.0]]) == f"column 2: {reason}"
    assert why("oil_for_wax", [[1.0, 2.0], [3.0, 4.0]], [[0.1, 0.1], [8.0, 8.0]]) == f"row 2, column 1: {reason}"
    assert why("oil_for_wax", 500.0, 0.08) == "no error"
    assert why("oil_for_water", 500.0) == "there is no function oil_for_water"
