"""Search by a maker's words: what answers is among the first three, and what nothing answers to is told as such."""

import phrases
import pytest
from click.testing import CliRunner

from candlecalc.commands.cli import main
from candlecalc.declaration.declared import REGISTRY
from candlecalc.faces.asked.finding import find, search
from candlecalc.faces.asked.sayings import NOT_HERE

FINDS = [  # what a maker would say, the function that should be among the first three
    ("oil for wax", "oil_for_wax"),
    ("how much scent in my wax", "oil_for_wax"),
    ("how many jars can I pour", "vessels_filled"),
    ("size of a round jar", "cylinder_volume"),
    ("hexagon", "prism_volume"),
    ("water in the vessel", "volume_from_water"),
    ("add VAT", "add_tax"),
    ("split shipping", "split_charge"),
    ("break even", "break_even_units"),
    ("shop discount", "wholesale_price"),
    ("lower the load", "wax_to_lower_load"),
    ("when to order again", "reorder_point"),
    ("price break", "best_break"),
    ("how many packs", "packs_to_buy"),
    ("when must I pour", "pour_by"),
    ("how much do I pour", "fill_weight"),
    ("fifo", "stock_from_log"),
    ("which lot first", "lots_to_use"),
    ("how much wax per candle", "wax_for_fill"),
    ("ounces to grams", "convert"),
    ("grams in a pound", "convert"),
    ("oz in lb", "convert"),
    ("Fahrenheit to Celsius", "convert"),
    ("cure time", "pour_by"),
    ("curing", "pour_by"),
    ("when may I light it", "pour_by"),
    ("how long to melt wax", "melt_time"),
    ("how many candles can I make", "vessels_filled"),
    ("how many candles can I make", "enough_for"),
    ("highest load", "limit_of_blend"),
    ("maximum load", "load_at_limit"),
    ("COGS", "cost_of_goods_sold"),
    ("consignment", "price_for_margin"),
    ("soot", "burn_verdict"),
    ("tunnelling", "pool_time"),
    ("sinkhole", "top_up_pour"),
    ("certificate", "limit_of_blend"),
]


@pytest.mark.parametrize(("words", "name"), FINDS)
def test_a_function_is_found_by_a_makers_words(words, name):
    assert name in [formula.name for formula in find(words)[:3]]
    assert f"  {name} " in CliRunner().invoke(main, ["functions", "--find", words]).stdout


NAMED = [  # phrases of makers that an earlier search missed, and what answers
    ("mushrooming", "next_wick"),
    ("too weak scent", "oil_to_raise_load"),
    ("trim wick", "fire_statements"),
    ("warning label", "label_of_candle"),
    ("allergens", "label_of_candle"),
    ("sales tax included", "tax_in_price"),
    ("SDS", "hazard_lines"),
    ("poison centre", "label_of_candle"),
    ("double boiler", "melt_time"),
    ("first burn", "usual_pool_time"),
    ("wick up", "next_wick"),
    ("price increase", "cost_with_rise"),
    ("max fragrance load", "highest_load"),
]


@pytest.mark.parametrize(("words", "name"), NAMED)
def test_what_was_missed_is_found(words, name):
    assert name in [formula.name for formula in find(words)[:3]]


def test_nine_of_ten_phrases_worked_with_find_what_answers_among_the_first_three():
    answered = [phrase for phrase in phrases.worked_with() if phrase.answers]
    assert sum(map(phrases.right, answered)) >= 0.9 * len(answered)


def test_the_phrases_are_of_the_whole_job():
    assert len(phrases.every()) >= 300
    assert len({phrase.said for phrase in phrases.every()}) == len(phrases.every())
    assert len(phrases.aside()) == len(phrases.every()) // 3


def test_what_words_lead_to_is_there():
    assert {name for names in NOT_HERE.values() for name in names.split()} <= set(REGISTRY)


@pytest.mark.parametrize("words", ["hot throw", "income tax", "batch number", "zzzz", ""])
def test_what_nothing_answers_to_is_told_as_such(words):
    answers, nearest = search(words)
    assert answers == []
    assert bool(nearest) == (words not in ("zzzz", ""))


@pytest.mark.parametrize("words, name", [("hedspace", "fill_weight"), ("wholsale price", "wholesale_price")])
def test_a_slip_of_the_hand_is_looked_past(words, name):
    assert find(words)[0].name == name


def test_how_much_of_it_says_nothing_of_what_is_asked():
    assert find("oil for 8 oz jar") == find("oil for jar")


def test_a_functions_own_name_finds_it_even_of_small_words():
    assert find("use by")[0].name == "use_by"


@pytest.mark.parametrize("code", ["EUH208", "h317"])
def test_a_code_keeps_its_number(code):
    assert "label_of_candle" in [formula.name for formula in find(code)[:3]]


def test_parts_stand_behind_what_a_maker_asks():
    names = [formula.name for formula in find("burn rate")]
    assert names.index("burn_rate_between") < names.index("burn_rate_low")
