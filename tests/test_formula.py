"""The declaration: what a declared function refuses, in which words, and what it lets its faces know."""

import inspect
import re
from datetime import date, datetime, timedelta
from decimal import Decimal
from fractions import Fraction
from typing import Annotated, List, NamedTuple, Optional

import numpy
import pandas
import pytest

import candlecalc.declaration.declared
import candlecalc.quantities.days
from candlecalc.calc import (
    break_even_mix,
    cost_per_burn_hour,
    cylinder_volume,
    fee_at,
    fill_weight,
    labour_cost,
    load_measured,
    oil_for_wax,
    price_for_margin,
    split_charge,
    vessels_filled,
    volume_from_water,
    yield_of,
)
from candlecalc.declaration.declared import CELL_LIKE, HELP_LENGTH, REGISTRY, Term, find, formula

ALL = sorted(REGISTRY.values(), key=lambda declared: declared.name)
Grams = Annotated[float, Term("g", "a weight")]


def refused(words):
    """A ValueError with exactly these words."""
    return pytest.raises(ValueError, match=f"^{re.escape(words)}$")


def each_function(test):
    return pytest.mark.parametrize("declared", ALL, ids=lambda declared: declared.name)(test)


@pytest.fixture
def empty_registry(monkeypatch):
    """A registry for the functions of one test, so that no other test meets them."""
    monkeypatch.setattr(candlecalc.declaration.declared, "REGISTRY", {})


# What is refused, and in which words

WAX = "it takes 0 or more g"
WRONG_WAX = [
    (float("nan"), f"is nan; {WAX}."),
    (float("inf"), f"is inf; {WAX}."),
    (-1, f"is -1; {WAX}."),
    (True, f"is TRUE; {WAX}."),
    (False, f"is FALSE; {WAX}."),
    (None, f"is blank; {WAX}."),
    ({500}, f"is {{500}}; {WAX}."),
    ("", 'is "": it is empty; it takes a weight such as 340 or "12 oz".'),
    ("  ", 'is "  ": it is empty; it takes a weight such as 340 or "12 oz".'),
    ("twelve", 'is "twelve": it takes a weight such as 340 or "12 oz".'),
    ("5 pots", 'is "5 pots": "pots" is no unit known here; it takes a weight such as 340 or "12 oz".'),
    ("500 ml", 'is "500 ml": "500 ml" is a volume; it takes a weight such as 340 or "12 oz".'),
    ("-5 g", f'is "-5 g"; {WAX}.'),
]


@pytest.mark.parametrize("wax, words", WRONG_WAX)
def test_a_wrong_argument_is_named_with_what_it_got_and_what_it_takes(wax, words):
    with refused(f"oil_for_wax: wax {words}"):
        oil_for_wax(wax, 0.08)


def test_numpys_own_true_is_no_number():
    with pytest.raises(ValueError, match=r"^oil_for_wax: wax is .*[Tt]rue_?; it takes 0 or more g\.$"):
        oil_for_wax(numpy.bool_(True), 0.08)


def test_a_number_too_large_for_a_float_is_out_of_range():
    with pytest.raises(ValueError, match="^oil_for_wax: wax is .*; it takes 0 or more g"):
        oil_for_wax(10**400, 0.08)


def test_all_wrong_arguments_are_told_at_once():
    with refused("fill_weight: volume is -1; it takes 10 to 1000000 ml; density is 9; it takes 0.5 to 1.5 g/ml."):
        fill_weight(volume=-1, headspace=0.1, density=9)


def test_wrong_names_of_arguments_are_the_callers_mistake():
    with pytest.raises(TypeError, match="unexpected keyword argument 'waxx'"):
        oil_for_wax(waxx=500, load=0.08)


@pytest.mark.parametrize("load, likely", [(8, "8"), (12.5, "12.5"), ("8", "8"), (50, "50")])
def test_a_percentage_typed_as_a_number_gets_a_hint(load, likely):
    with pytest.raises(ValueError, match=rf"it takes 0 to 0\.5 of wax weight\. Did you mean {likely}%\?$"):
        oil_for_wax(500, load)


@pytest.mark.parametrize("load", [60, 1, -8])
def test_a_hint_is_not_given_where_it_would_not_help(load):
    with refused(f"oil_for_wax: load is {load}; it takes 0 to 0.5 of wax weight."):
        oil_for_wax(500, load)


def test_a_value_just_out_of_range_is_not_shown_as_if_it_were_in_it():
    with pytest.raises(ValueError, match=r"^oil_for_wax: load is 0\.5000001; "):
        oil_for_wax(500, 0.5000001)


def test_the_end_of_a_range_is_in_it():
    assert oil_for_wax(500, 0.5) == 250
    assert oil_for_wax(0, 0) == 0


def test_a_range_may_leave_its_end_out():
    with refused("cost_per_burn_hour: hours is 0; it takes more than 0, at most 1000000 h."):
        cost_per_burn_hour(cost=8, hours=0)


def test_a_count_is_a_whole_number():
    with refused("yield_of: good is 2.5; it takes whole numbers 0 to 1000000."):
        yield_of(good=2.5, made=5)


def test_a_choice_is_one_of_its_words():
    assert fee_at(20, 0.1, 0.2, "gross") == pytest.approx(2.4)
    assert fee_at(20, 0.1, 0.2, "Gross") == fee_at(20, 0.1, 0.2, "gross")  # as a spreadsheet compares words
    with refused('fee_at: basis is "grossly"; it takes "net" or "gross".'):
        fee_at(20, 0.1, 0.2, "grossly")
    with refused('fee_at: basis is 1; it takes "net" or "gross".'):
        fee_at(20, 0.1, 0.2, 1)


def test_an_argument_left_out_has_its_default():
    assert vessels_filled(wax=1000, fill=100) == vessels_filled(wax=1000, fill=100, load=0)
    assert volume_from_water(250) == volume_from_water(250, "20 C")


def test_an_optional_argument_is_checked_when_it_is_given():
    with refused("vessels_filled: load is -0.1; it takes 0 to 0.5 of wax weight."):
        vessels_filled(wax=1000, fill=100, load=-0.1)


def test_what_arguments_ask_of_each_other_is_said_with_their_values():
    with refused(
        'price_for_margin: margin and fee together must stay below 1 (margin 0.5, fee 0.5, tax 0, basis "net").'
    ):
        price_for_margin(cost=6, margin=0.5, fee=0.5)
    with refused("cylinder_volume: the floor cannot rise above the fill (base 95, height 90)."):
        cylinder_volume(diameter=80, height=90, base=95)


def test_a_result_out_of_its_range_is_refused():
    with pytest.raises(ValueError, match=r"^load_measured: the result would be 2; it must be 0 to 0\.5 of wax weight "):
        load_measured(wax=100, oil=200)


def test_arithmetic_without_an_answer_is_refused(empty_registry):
    @formula(source="none")
    def turns(wax: Grams) -> Grams:
        return 1 / wax

    with pytest.raises(ValueError, match=r"^turns: these values have no answer \(wax 0\)"):
        turns(0)


# What is taken


@pytest.mark.parametrize(
    "wax",
    [500, 500.0, numpy.float64(500), numpy.float32(500), numpy.int64(500), Decimal(500), Fraction(500), "500", "500 g"],
    ids=lambda wax: type(wax).__name__,
)
def test_every_kind_of_number_is_taken(wax):
    assert oil_for_wax(wax, 0.08) == 40.0


def test_money_is_taken_with_the_currency_beside_it_and_in_a_list():
    assert labour_cost("1.5 h", "\u00a316") == 24
    assert break_even_mix(fixed="$100", mix=[1, 1], prices=["$3", "4 USD"], costs=[1, 1]) == 20
    with refused('oil_for_wax: wax is "$5": it takes a weight such as 340 or "12 oz".'):
        oil_for_wax("$5", 0.08)


def test_text_with_a_unit_is_converted():
    assert oil_for_wax("1 lb", "10%") == pytest.approx(45.359237, rel=1e-15)
    assert fill_weight("8 fl oz", "10 %", 0.9) == pytest.approx(8 * 29.5735295625 * 0.81)


# Lists


@pytest.mark.parametrize(
    "amounts",
    [
        [1, 2],
        (1, 2),
        [[1], [2]],
        [[1, 2]],
        numpy.array([1, 2]),
        numpy.array([[1], [2]]),
        pandas.Series([1, 2]),
        [1, 2, None],
        [1, 2, "", None],
        [1, 2, float("nan")],
        [1, 2, pandas.NA],
    ],
    ids=repr,
)
def test_a_list_is_read_from_any_range_and_blanks_at_its_end_are_passed_over(amounts):
    assert split_charge(10, amounts) == [3.33, 6.67]


@pytest.mark.parametrize("blank", [None, "", float("nan")])
def test_a_blank_inside_a_list_is_refused_with_its_place(blank):
    with refused("split_charge: amounts is blank at place 2 of 3; only blanks at the end are passed over."):
        split_charge(10, [1, blank, 2])


def test_a_wrong_value_in_a_list_is_refused_with_its_place():
    with refused("split_charge: amounts at place 2 is -5; it takes 0 or more."):
        split_charge(10, [1, -5, 2])
    with refused('split_charge: amounts at place 3 is "x": it takes a number such as 24.'):
        split_charge(10, [1, 5, "x"])


@pytest.mark.parametrize("amounts", [[], [None, ""]])
def test_an_empty_list_is_refused(amounts):
    with refused("split_charge: amounts is empty; it takes a list, each 0 or more."):
        split_charge(10, amounts)


def test_one_number_is_a_list_of_one():
    assert split_charge(10, 3) == [10.0]


def test_lists_of_different_lengths_are_refused():
    with refused("break_even_mix: lists of one length are wanted: mix has 2, prices has 3, costs has 2."):
        break_even_mix(fixed=100, mix=[1, 2], prices=[3, 4, 5], costs=[1, 2])


# What help shows


def test_the_docstring_has_the_sections_the_declaration_knows():
    shown = inspect.getdoc(fee_at)
    parts = ["Parameters\n----------\n", "Returns\n-------\n", "Raises\n------\n", "References\n----------\n"]
    assert sorted(parts, key=shown.index) == parts
    assert "fee : 0 to 0.95 of the price\n    what the place keeps of the price" in shown
    assert "tax : 0 to 1 of the price before tax; 0.0 if left out" in shown
    assert 'basis : "net" or "gross"; \'net\' if left out' in shown
    assert shown.endswith(find(fee_at).source)


def test_the_docstring_says_what_arguments_ask_of_each_other():
    assert "With the words: the floor cannot rise above the fill." in inspect.getdoc(cylinder_volume)


def test_the_docstring_says_where_a_list_is_wanted():
    assert "amounts : list, each 0 or more\n" in inspect.getdoc(split_charge)


def test_a_declared_function_keeps_its_signature_and_name():
    assert str(inspect.signature(cylinder_volume)) == "(diameter, height, base=0.0)"
    assert cylinder_volume.__name__ == "cylinder_volume"
    assert cylinder_volume.__module__ == "candlecalc.calc.vessel"


def test_a_declaration_is_found_by_function_or_name():
    assert find(oil_for_wax) is find("oil_for_wax") is REGISTRY["oil_for_wax"]
    assert find(oil_for_wax).subject == "fragrance"
    with pytest.raises(KeyError):
        find("no_such_function")


# What a declaration may not say


def test_an_argument_without_a_term_fails_at_import(empty_registry):
    def heavier(wax: float) -> Grams:
        return wax

    with pytest.raises(TypeError, match="^heavier: wax is not annotated with a term$"):
        formula(source="none")(heavier)


def test_a_result_without_a_term_fails_at_import(empty_registry):
    def heavier(wax: Grams) -> float:
        return wax

    with pytest.raises(TypeError, match="^heavier: return is not annotated with a term$"):
        formula(source="none")(heavier)


@pytest.mark.parametrize("name", ["oil1", "r", "c", "tax2024", "r1c1"])
def test_an_argument_named_like_a_cell_fails_at_import(empty_registry, name):
    scope = {"Grams": Grams}
    exec(f"def heavier({name}: Grams) -> Grams:\n    return {name}", scope)  # noqa: S102  one body for every name
    with pytest.raises(TypeError, match=f"^heavier: {name} reads like a cell; name it otherwise$"):
        formula(source="none")(scope["heavier"])


@pytest.mark.parametrize("where", ["native", "requires"])
def test_a_native_form_that_names_a_stranger_fails_at_import(empty_registry, where):
    def heavier(wax: Grams) -> Grams:
        return wax

    said = {"native": "wax*wix"} if where == "native" else {"requires": {"wix > wax": "wick first"}}
    with pytest.raises(TypeError, match="^heavier: the native form names wix$"):
        formula(source="none", **said)(heavier)


def test_a_function_declared_twice_fails_at_import(empty_registry):
    def heavier(wax: Grams) -> Grams:
        return wax

    formula(source="none")(heavier)
    with pytest.raises(TypeError, match="^heavier is declared twice$"):
        formula(source="none")(heavier)


def test_an_earlier_name_answers_and_refuses_as_the_function_does_in_its_own_name(empty_registry):
    def heavier(wax: Grams) -> Grams:
        """Twice the wax."""
        return wax * 2

    formula(source="none", formerly=["doubled"])(heavier)
    earlier = find("doubled")
    assert (earlier.instead, earlier.checked(2), earlier.call("2 g")) == ("heavier", 4, 4)
    with refused("doubled: wax is -1; it takes 0 or more g."):
        earlier.checked(-1)


def test_a_note_is_told_where_its_condition_holds(empty_registry):
    def heavier(wax: Grams) -> Grams:
        """Twice the wax."""
        return wax * 2

    formula(source="none", notes={"wax > 500": "a large pot", "": "weigh it"})(heavier)
    assert find("heavier").noted(find("heavier").read({"wax": "1 kg"})) == ["a large pot", "weigh it"]
    assert find("heavier").noted({"wax": 500}) == ["weigh it"]
    assert inspect.getdoc(find("heavier").checked).count("- a large pot.") == 1


def test_an_earlier_name_that_is_in_use_fails_at_import(empty_registry):
    def heavier(wax: Grams) -> Grams:
        return wax

    with pytest.raises(TypeError, match="^heavier is declared twice$"):
        formula(source="none", formerly=["heavier"])(heavier)


@each_function
def test_a_function_of_an_earlier_name_says_which_one_stands_for_it_now(declared):
    assert not declared.instead or not find(declared.instead).instead


def test_help_longer_than_a_spreadsheet_shows_fails_at_import(empty_registry):
    def heavier(wax: Annotated[float, Term("g", "w" * 256)]) -> Grams:
        return wax

    with pytest.raises(TypeError, match="^heavier: the help of wax is over 255 characters$"):
        formula(source="none")(heavier)


def test_a_result_of_many_is_checked_one_by_one(empty_registry):
    @formula(source="none")
    def apart(wax: Grams) -> Annotated[List[float], Term("g", "two parts", high=10, many=True)]:
        return [0.0, wax]

    assert apart(10) == [0.0, 10]
    with pytest.raises(ValueError, match=r"^apart: the result would be 11; it must be 0 to 10 g \(wax 11\)"):
        apart(11)


# Words, days, blanks and answers of several values

Name = Annotated[str, Term("", "what it is called", text=True)]
Day = Annotated[date, Term("date", "a day")]
Days = Annotated[List[date], Term("date", "days", many=True)]
Readings = Annotated[List[float], Term("g", "weights read", many=True)]
Notes = Annotated[List[str], Term("", "notes, where there are any", text=True, many=True, blank=True)]


class Spread(NamedTuple):
    """The least and the most of some readings."""

    least: Grams
    most: Grams
    note: Annotated[str, Term("", "what to know about it", text=True, blank=True)]


@pytest.fixture
def spread(empty_registry):
    @formula(source="algebra")
    def spread(readings: Readings, notes: Notes = ()) -> Spread:
        """The least and the most."""
        return Spread(min(readings), max(readings), notes[0] if notes else None)

    return spread


@pytest.fixture
def later(empty_registry):
    @formula(source="calendar", native="day+count")
    def later(day: Day, count: Annotated[float, Term("days", "how many", whole=True)] = 1.0) -> Day:
        """The day after so many days."""
        return day + timedelta(days=count)

    return later


@pytest.mark.parametrize("day", [date(2026, 3, 14), datetime(2026, 3, 14, 9, 30), "2026-03-14", 46095, 46095.4])
def test_a_day_is_read_from_a_date_from_text_and_from_a_cells_number(later, day):
    assert later(day) == date(2026, 3, 15)


@pytest.mark.parametrize(
    "day",
    ["14 Mar 2026", "14 March 2026", "14-mar-2026", "Mar 14, 2026", "March 14 2026", " 14 MARCH 2026 "],
)
def test_a_day_with_its_month_in_words_can_be_read_one_way_only(later, day):
    assert later(day) == date(2026, 3, 15)
    assert later("5 Sept 2026") == date(2026, 9, 6)


@pytest.mark.parametrize(
    "day", ["14 Mar", "Mar 2026", "14 Foo 2026", "14 M\u00e4rz 2026", "31 Feb 2026", "14 Mar 14 2026"]
)
def test_half_a_day_and_a_month_of_no_calendar_are_refused(later, day):
    with refused(f'later: day is "{day}"; it takes a date such as "2026-03-14".'):
        later(day)


def test_a_day_in_numbers_alone_is_shown_as_it_is_to_be_written(later):
    words = 'it takes a date such as "2026-03-14": write'
    with refused(f'later: day is "5/12/2026"; {words} 2026-12-05 or 2026-05-12.'):
        later("5/12/2026")
    with refused(f'later: day is "14.3.2026"; {words} 2026-03-14.'):
        later("14.3.2026")


@pytest.mark.parametrize("day", ["14/03/2026", "2026-02-30", 12, True, None, pandas.NaT])
def test_what_is_no_day_is_refused(later, day):
    with pytest.raises(ValueError, match='^later: day is .*; it takes a date such as "2026-03-14"'):
        later(day)


def test_days_are_counted_as_spreadsheets_count_them():
    assert candlecalc.quantities.days.serial(date(1900, 3, 1)) == 61
    assert candlecalc.quantities.days.read(61) == date(1900, 3, 1)


def test_an_answer_of_several_values_is_a_row_with_names(spread):
    assert spread([5, 3, 9]) == Spread(3, 9, None)
    assert find("spread").gives == "a row of least, most, note"
    assert find("spread").rows(spread([5, 3, 9])) == [[3, 9, None]]
    assert find("spread").no_native == "its answer is several cells"


def test_a_list_of_blanks_stands_beside_a_list_of_numbers(spread):
    # The last cells of the second column are empty: they come back as blanks, one for each number.
    assert spread([5, 3, 9], [None, "late"]).note is None
    assert spread([5, 3, 9], ["late", ""]).note == "late"


def test_each_value_of_a_row_is_checked(empty_registry):
    @formula(source="algebra")
    def minus(readings: Readings) -> Spread:
        """Out of range."""
        return Spread(-1.0, 1.0, None)

    with pytest.raises(
        ValueError, match=re.escape("minus: least would be -1; it must be 0 or more g (readings [1.0])")
    ):
        minus([1])


def test_an_empty_text_in_a_list_is_a_blank_as_a_sheet_hands_it_over(empty_registry):
    @formula(source="algebra")
    def known(readings: Annotated[list, Term("g", "weights, where read", many=True, blank=True)]) -> Readings:
        """Whether each is there."""
        return [reading for reading in readings if reading is not None]

    assert find("known").arguments["readings"].read([5, "", None, 3, ""]) == [5, None, None, 3]


def test_a_block_of_cells_is_refused_where_a_line_is_wanted(spread):
    assert spread(((5,), (3,), (9,))).least == spread(((5, 3, 9),)).least == 3
    with refused("spread: readings is a block of 2 rows; it takes one column or one row."):
        spread(((5, 3), (9, 1)))


def test_a_number_that_is_text_is_refused_in_a_list_with_its_place(spread):
    assert spread(["5 g", 3]).most == 5
    with refused('spread: readings at place 2 is the text "3"; it takes a number, or one with its unit.'):
        spread([5, "3"])


def test_words_are_kept_as_typed_and_a_number_typed_as_words_is_words(empty_registry):
    @formula(source="grammar", no_native="words")
    def called(name: Name) -> Name:
        """The name."""
        return name

    assert [called("  Birch "), called(5), called("1-5")] == ["Birch", "5", "1-5"]
    with refused("called: name is blank; it takes text."):
        called(None)


@pytest.mark.parametrize("day", [date(2026, 5, 1), datetime(2026, 5, 1)])
def test_a_date_that_a_sheet_made_of_words_is_refused_with_what_to_do(empty_registry, day):
    @formula(source="grammar", no_native="words")
    def called(name: Name) -> Name:
        """The name."""
        return name

    with pytest.raises(ValueError, match="^called: name is the date 2026-05-01.*; it takes text: .* an apostrophe"):
        called(day)


def test_an_argument_may_be_left_blank_on_every_python(empty_registry):
    # Python 3.9 and 3.10 see a default of None as Optional around the annotation.
    wrapped = {"wax": Optional[Annotated[Optional[float], Term("g", "a weight", blank=True)]]}
    assert candlecalc.declaration.declared._term(lambda wax: wax, "wax", wrapped).blank


# Every declared function


@each_function
def test_help_fits_a_spreadsheets_function_wizard(declared):
    told = [declared.summary, declared.result.help] + [a.term.help for a in declared.arguments.values()]
    assert all(0 < len(text) <= HELP_LENGTH for text in told)


@each_function
def test_no_argument_is_named_like_a_cell(declared):
    assert not [name for name in declared.arguments if CELL_LIKE.fullmatch(name)]


@each_function
def test_there_is_an_example_that_calls_the_function(declared):
    assert re.search(rf">>> .*\b{declared.bare.__name__}\(", inspect.getdoc(declared.checked))


@each_function
def test_each_argument_has_a_help_of_its_own(declared):
    helps = [argument.term.help for argument in declared.arguments.values()]
    assert sorted(set(helps)) == sorted(helps)


@each_function
def test_there_is_a_source(declared):
    assert declared.source.strip()


@each_function
def test_there_is_a_native_form_or_a_reason_why_not(declared):
    assert bool(declared.native) != bool(declared.no_native)
