"""A log of burns as a CSV file: `ask` answers from it as from the numbers typed.

The logs are made up; the functions are checked against published readings in tests/published.
"""

import pytest
from click.testing import CliRunner

import candlecalc
from candlecalc.commands.cli import main
from candlecalc.faces.asked import burn_log

HOURS, WEIGHTS = [0, 4, 8, 12], [612, 596, 581, 563]
BURNS = "test,date,hours,before,after,flame,seen\nT1,2027-09-02,4,596,581,40,\nT1,2027-09-01,4,612,596,35,soot\nT1,2027-09-03,4,581,563,41,mushrooming\n"  # fmt: skip # noqa: E501
READINGS = "hours,weight\n0,612\n4,596\n8,581\n12,563\n"


@pytest.fixture
def asked(tmp_path):
    def ask(log, *words):
        path = tmp_path / "burns.csv"
        path.write_text(log, encoding="utf-8")
        result = CliRunner().invoke(main, ["ask", *words, "--file", str(path)])
        return result.exit_code, result.output

    return ask


@pytest.mark.parametrize("log", [
    BURNS, READINGS, BURNS.replace(",", ";"), READINGS.replace("weight", "weights"),
    READINGS.replace("weight", "weight (g)"), READINGS.replace("612", "0.612 kg"),
])  # fmt: skip
def test_a_log_gives_its_hours_and_weights_however_it_is_written(log):
    (read,) = burn_log.read(log).values()
    assert read.hours == HOURS
    assert candlecalc.burn_rate(read.hours, read.weights) == pytest.approx(candlecalc.burn_rate(HOURS, WEIGHTS))


def test_the_answer_is_that_of_the_numbers_typed(asked):
    wanted = CliRunner().invoke(main, ["ask", "burn_rate_between", "0;4;8;12", "612;596;581;563"]).output
    code, said = asked(BURNS, "burn_rate_between")
    assert code == 0
    assert said.partition("\n\n")[2] == wanted


def test_an_answer_is_in_the_unit_of_the_log(asked):
    ounces = 'hours,"before, oz","after, oz"\n4,17.92,17.3\n4,17.3,16.66\n'
    assert "oz/h" in asked(ounces, "burn_rate")[1]
    assert "without a unit" not in asked(ounces, "burn_rate")[1]
    assert "weights without a unit are in g" in asked(BURNS, "burn_rate")[1]


def test_what_was_trimmed_between_burns_was_not_burnt():
    (read,) = burn_log.read("hours,before,after\n4,612,596\n4,590,575\n").values()
    assert read.weights == ["612 g", "596 g", "581 g"]


def test_a_log_of_several_tests_is_asked_for_one_or_gives_the_rate_of_each(asked):
    log = BURNS + BURNS.partition("\n")[2].replace("T1", "T2").replace("563", "565")
    assert asked(log, "burn_rate")[1].startswith("candlecalc: it holds 2 tests: give burn_rate one of them")
    assert asked(log, "burn_rate", "test=T1")[1].endswith("4.05 g/h\n")
    assert "there is no test" in asked(log, "burn_rate", "test=T3")[1]
    both = [candlecalc.burn_rate(HOURS, [*WEIGHTS[:3], last]) for last in (563, 565)]
    mean = asked(log, "rates_of_candles")[1].partition("mean: ")[2].split()[0]
    assert float(mean) == pytest.approx(candlecalc.rates_of_candles(both).mean, abs=0.0051)


def test_signs_and_a_verdict_follow_from_what_was_seen(asked):
    seen = asked(BURNS, "wick_signs")[1]
    assert seen.index("soot") < seen.index("mushrooming")
    looked_at = ("other_burning=0", "vessel=whole", "afterglow=4", "lit_again=no", "tallest=40")
    assert "flame 41 mm, over 40" in asked(BURNS, "burn_verdict", *looked_at)[1]


@pytest.mark.parametrize("log, words", [
    ("a,b\n1,2\n", "its first line takes hours, before and after of each burn"),
    ("hours,before,after\n", "there is no burn in it"),
    ("hours,before,after\n4,612,much\n", 'line 2: after is "much"'),
    ("hours,before,after\n4,612,\n", 'line 2: after is ""'),
    ('hours,"before, ml",after\n4,612,600\n', "names no unit of before"),
    ("hours,before,after\n4,600,612\n", "the weights must fall"),
])  # fmt: skip
def test_a_log_that_cannot_be_read_says_where_and_what_is_wanted(asked, log, words):
    code, said = asked(log, "burn_rate")
    assert code and words in said


def test_a_function_that_takes_no_file_says_which_do(asked):
    code, said = asked(BURNS, "oil_for_wax", "500", "8%")
    assert code == 2
    assert "a log of burns for burn_rate" in said
