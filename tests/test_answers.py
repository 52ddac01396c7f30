"""Answers at the terminal: in the asker's unit and currency, and in what can be weighed, poured or counted.

An ounce is 28.349523125 g, an inch 25.4 mm, a US fluid ounce 29.5735295625 ml and an imperial one 28.4130625 ml by
definition (international yard and pound agreement, 1959; US customary gallon; Weights and Measures Act 1985).
"""

import pytest
from click.testing import CliRunner
from hypothesis import given
from hypothesis import strategies as st

from candlecalc.commands.asking import ask
from candlecalc.commands.cli import main
from candlecalc.declaration.declared import REGISTRY, Term
from candlecalc.faces.asked.own_units import Written, handy, unit_for
from candlecalc.faces.asked.results import Asked, shown
from candlecalc.faces.asked.typed import Currency
from candlecalc.quantities import units


def answer(*words):
    result = CliRunner().invoke(main, ["ask", *words])
    assert (result.exit_code, result.stderr) == (0, "")
    return result.stdout.splitlines()


def refused(*words):
    result = CliRunner().invoke(main, ["ask", *words])
    assert result.exit_code in (1, 2) and result.stdout == ""
    return result.stderr


WEIGHED = [  # words, answer, how it was worked
    (["oil_for_wax", "1 lb", "6%"], "0.96 oz (27.2 g)", "16 oz at 0.06"),
    (["oil_for_wax", "20 lb", "8%"], "1 lb 9.60 oz (725.7 g)", "320 oz at 0.08 is 25.6 oz"),
    (["oil_for_wax", "20 lb", "5%"], "1 lb (453.6 g)", "16 oz"),
    (["wax_for_oil", "0.9999999 lb", "6.25%"], "16 lb (7257.5 g)", "15 lb 16.00 oz once it is rounded"),
    (["oil_for_wax", "5 kg", "8%"], "400.0 g", "below a kilogram in grams"),
    (["oil_for_wax", "20 kg", "8%"], "1.600 kg (1600.0 g)", "above it in kilograms"),
    (["cylinder_volume", "3 in", "4 in"], "15.67 US fl oz (463.3 ml)", "pi/4 x 9 x 4 cubic inches, 128/231 each"),
    (["volume_from_water", "8 oz"], "7.69 US fl oz (227.4 ml)", "kinds differ: 226.796 g of water at 20 C"),
    (["fill_weight", "10 imp fl oz", "10%", "0.9"], "8.12 oz (230.1 g)", "284.13 ml x 0.9 x 0.9"),
    (["fill_weight", "1 gal", "0", "1"], "8 lb 5.53 oz (3785.4 g)", "231 cubic inches are 3785.41 ml; 133.53 oz"),
    (["fill_weight", "2 cups", "0", "1"], "1 lb 0.69 oz (473.2 g)", "16 US fl oz; 16.69 oz"),
    (["burn_rate", "0; 4; 8", "14 oz; 13.4 oz; 12.8 oz"], "0.150 oz/h (4.25 g/h)", "1.2 oz in 8 hours"),
    (["celsius", "180 F"], "82 C", "the unit that it is for, whatever was typed"),
]  # fmt: skip


@pytest.mark.parametrize("words, expected, how", WEIGHED, ids=lambda value: str(value)[:40])
def test_an_answer_is_what_a_scale_or_a_jug_shows(words, expected, how):
    assert answer(*words) == [expected]


@given(st.floats(1, 20_000), st.sampled_from(["ounce", "pound", "gram", "kilogram"]))
def test_what_is_shown_reads_back_as_what_it_was_to_half_a_gram(grams, unit):
    term = Term("g", "")
    told = shown(grams, term, Asked(handy(grams, term, unit))).partition(" (")[0]
    assert units.read(told, "g").value == pytest.approx(grams, abs=0.51)


def test_who_asks_in_imperial_fluid_ounces_has_them_back_across_kinds():
    asked = [Written("imperial_fluid_ounce", "ml"), Written("inch", "mm")]
    assert unit_for(Term("ml", ""), asked[1:]) == "fluid_ounce"
    assert unit_for(Term("cm2", ""), asked) == "inch**2"
    assert unit_for(Term("ml", ""), asked) == "imperial_fluid_ounce"


def test_a_length_in_sixteenths_is_said_as_rulers_have_it():
    # 16 CFR 500.21(b) prints least heights as fractions: 1/16, 1/8, 3/16, 1/4 inch.
    assert answer("figure_height_us", "14 sq in")[0] == "height: 1/8 in (3.2 mm)"
    assert answer("figure_height_us", "90")[0] == "height: 3.2 mm (1/8 in)"
    assert shown(88.9, Term("mm", ""), Asked("inch")) == "3 1/2 in (88.9 mm)"
    assert shown(88.0, Term("mm", ""), Asked("inch")) == "3.46 in (88.0 mm)"


LOADS = ["1 oz/lb", "1 oz per lb", "1 oz to 1 lb", "1/2 oz per 8 oz", "62.5 g/kg", "28.349523125 g per 16 oz"]


@pytest.mark.parametrize("load", LOADS)
def test_a_load_may_be_said_as_oil_to_wax(load):
    assert answer("oil_for_wax", "1000", f"load={load}") == ["62.5 g"]  # 1/16 of 1000


@pytest.mark.parametrize("load", ["1 oz/l", "1 ml per lb", "1/lb", "1 oz/0 lb", "10 oz/lb"])
def test_a_load_that_is_no_weight_to_a_weight_is_refused(load):
    assert "load is" in refused("oil_for_wax", "wax=1000", f"load={load}")


# Goods in any one unit

GOODS = [  # words, answer, how it was worked
    (["material_cost", "7.3 oz", "0.80"], ["5.84 at 0.80 an oz in your currency"], "7.3 x 0.80"),
    (["material_cost", "7.3 oz", "£12.80/lb"], ["£5.84"], "0.80 an ounce"),
    (["material_cost", "7.3", "0.80"], ["5.84 in your currency"], "as in a cell"),
    (["parts_cost", "amounts=7 oz; 1", "costs=12.80/lb; 2.50"], ["8.10 in your currency"], "7 x 0.80, and a jar"),
    (["order_quantity", "120 lb", "8", "0.50"], ["61.97 lb", "holding: 0.50 a lb"], "root of 2 x 120 x 8 / 0.5"),
    (["packs_to_buy", "12 lb", "5 kg"], ["2 packs"], "12 lb are 5.44 kg"),
    (["days_covered", "12 lb", "8 oz"], ["24 days"], "192 / 8"),
    (["unit_cost", "$45", "10 lb", "shipping=$3"], ["$4.80 per lb"], "48 / 10"),
    (["stock_from_log", "10 lb; -64 oz", "$8; "], ["used: $32.00", "left: 6 lb", "worth: $48.00", "costs: per lb"],
     "4 lb at 8"),
]  # fmt: skip


@pytest.mark.parametrize("words, expected, how", GOODS, ids=lambda value: str(value)[:40])
def test_goods_may_be_weighed_in_any_unit_with_costs_by_the_unit(words, expected, how):
    assert answer(*words) == expected


@pytest.mark.parametrize("words, message", [
    (["stock_from_log", "10 lb; -4", "8; "], 'moves is -4 beside moves "10 lb": write its unit with it'),
    (["material_cost", "7.3", "0.80/lb"], 'amount is 7.3 beside cost "0.80/lb": write its unit with it'),
    (["packs_to_buy", "12 lb", "5 l"], 'pack is "5 l", and needed is "12 lb": both in one kind of unit'),
])  # fmt: skip
def test_goods_in_two_kinds_or_half_without_a_unit_are_refused(words, message):
    assert message in refused(*words)


# What these count is told beside them: "1.48 %" in why, a week or a line by its head.
HEADED = {"hazard_of_mixture", "hazard_of_candle", "net_requirements", "lots_left"}


@pytest.mark.parametrize("name", sorted(set(REGISTRY) - HEADED))
def test_every_number_that_is_answered_has_a_unit_or_says_what_it_counts(name):
    formula = REGISTRY[name]
    terms = [*formula.fields.values()] or [formula.result]
    assert [
        term.help for term in terms if term.is_number and not (term.unit or term.unit_in or term.noun or term.goods)
    ] == []


def test_what_is_counted_is_whole_and_rounded_the_way_that_serves():
    pieces = Term("", "", goods="alike", rounding="up", noun="candles")
    assert shown(73.3072, pieces) == "74 candles"
    assert shown(73.3072, Term("", "", goods="alike", noun="candles"), Asked(whole=True)) == "73 candles"
    assert answer("count_difference", "41.25", "40") == ["1.25 units"]
    assert answer("stock_left", "30.5; 40", "60; 40") == ["29.5 units", "29.5 units"]


# Money, days and months


@pytest.mark.parametrize("currency, expected", [
    (Currency("$"), "-$2.00"), (Currency("GBP"), "-GBP 2.00"), (Currency("EUR", before=False), "-2.00 EUR"),
    (Currency(), "-2.00"),
])  # fmt: skip
def test_money_is_in_the_currency_that_was_typed(currency, expected):
    assert shown(-2.0, Term("money", ""), Asked(currency=currency)) == expected


def test_without_a_currency_it_is_said_that_it_is_your_own():
    assert answer("price_for_margin", "6", "50%") == ["12.00 in your currency"]
    assert answer("split_charge", "10", "1; 4") == ["2.00", "8.00", "amounts of money in your currency"]
    assert answer("material_cost", "2 cups", "0.80/cup") == ["1.60 in your currency"]
    assert answer("split_charge", "10 EUR", "1; 4") == ["2.00 EUR", "8.00 EUR"]


def test_two_currencies_in_one_question_are_refused():
    assert "amounts are in $ and in £" in refused("profit_at", "$16", "£6")


MONTHS = [  # made, months, use by: the same day of the month, or its last
    ("2026-03-01", "12 months", "2027-03-01 (Monday)"),
    ("2027-03-01", "12 months", "2028-03-01 (Wednesday)"),  # over a 29 February
    ("2026-08-31", "6 months", "2027-02-28 (Sunday)"),
    ("2026-12-15", "1 month", "2027-01-15 (Friday)"),
]


@pytest.mark.parametrize("made, life, expected", MONTHS)
def test_months_from_a_day_are_counted_on_the_calendar(made, life, expected):
    assert answer("use_by", made, life) == [expected]


def test_months_without_a_day_to_begin_from_are_refused_unless_they_are_years():
    assert "months are of 28 to 31 days" in refused("pour_by", "2026-12-05", "1 month")
    assert answer("stock_turns", "900", "100", "200") == ["6 times"]
    assert answer("days_in_stock", "900", "100", "200", "12 months") == ["61 days"]  # 365/6


# Lists of words


def test_semicolons_part_a_list_of_words():
    together = ["lots=A; B", "amounts=3; 4", "dates=2026-01-05; 2026-06-01", "needed=5", "as_of=2026-01-01"]
    apart = ["lots=A", "lots=B", "amounts=3", "amounts=4", "dates=2026-01-05", "dates=2026-06-01", *together[3:]]
    assert answer("lots_to_use", *together) == answer("lots_to_use", *apart)


def test_words_of_a_data_sheet_keep_their_semicolons():
    told = answer("hazard_lines", "citral", "1-5", "Skin Sens. 1B H317; Eye Irrit. 2 H319")
    assert "classes: Eye Irrit. 2; Skin Sens. 1B" in told


@pytest.mark.parametrize("working, day", [  # 5 December 2026 is a Saturday; cured for two weeks before it
    ("weekends", "2026-11-21 (Saturday)"), ("weekdays", "2026-11-20 (Friday)"),
    ("Mon-Fri and Sat", "2026-11-21 (Saturday)"),
])  # fmt: skip
def test_working_days_are_named_weekends_included(working, day):
    assert answer("pour_by_own_days", "2026-12-05", "14", working) == [day]


@pytest.mark.parametrize("words", [["oil_for_wax", "10 oz", "7%"], ["material_cost", "7.3 oz", "$2.60/lb"]])
def test_a_value_is_read_once_however_much_is_asked_of_it(monkeypatch, words):
    read = []
    for reader in (units.read, units.written):

        def noting(text, *unit, reader=reader):
            read.append(text)
            return reader(text, *unit)

        monkeypatch.setattr(units, reader.__name__, noting)
    ask(words[0], words[1:])
    assert sorted(read) == sorted(word.removesuffix("/lb") for word in words[1:])


def test_a_cost_that_is_no_amount_of_money_is_refused_by_its_name():
    with pytest.raises(ValueError, match='material_cost: cost is "1 oz/lb"'):
        ask("material_cost", ["7.3 oz", "1 oz/lb"])


def test_what_to_know_beside_an_answer_stands_under_it():
    assert answer("usual_pool_time", "3 in") == ["3.00 h"]
    assert answer("usual_pool_time", "5 in") == ["5.00 h", "note: past the four hours usual for one burn"]
