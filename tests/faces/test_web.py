"""The script for web spreadsheets, in V8: it answers as Python does, and refuses in Python's words.

Its published checks run with those of the other faces. What the script editors and the sheets around the script
do with it was not run here.
"""

import math
import os
import random
import re
import statistics
import subprocess
import sys
from datetime import date

import pandas
import pytest
import scipy.stats
import web_book
from click.testing import CliRunner
from make_pages import HOME
from slips import expected, in_range, refused_together, slips
from web_book import Thrown, calculate

from candlecalc.calc import REGISTRY
from candlecalc.commands.cli import main
from candlecalc.faces.addins import wizard
from candlecalc.faces.web import script_file as script
from candlecalc.faces.web.ranges import Ranges
from candlecalc.quantities import days, units

HAS = script.functions()
NATIVE = [declared for declared in HAS if declared.native]
TEXT = script.script()


def one(name, *cells):
    """The answer in a single cell, or the words of the error there."""
    cell = calculate([(name, cells)])[0][0][0]
    return cell.words if isinstance(cell, Thrown) else cell


# What every function does


@pytest.fixture(scope="module")
def answers():
    cases = [case for each in NATIVE for case in (*in_range(each), *slips(each), *refused_together(each))]
    return list(zip(cases, calculate([_as_call(case) for case in cases]), strict=True))


def _as_call(case):
    """A case as a call: an argument that is not in its cells is left out, and a None is a blank cell."""
    arguments = [case.cells.get(name, ...) for name in case.declared.arguments]
    return case.declared.name, [None if cell is ... else _sheet(cell) for cell in arguments]


def _sheet(cell):
    if isinstance(cell, list):
        return [_sheet(each) for each in cell]
    return "" if cell is None else cell


@pytest.mark.parametrize("declared", NATIVE, ids=lambda declared: declared.name)
def test_a_function_answers_where_python_does_and_refuses_where_it_does(declared, answers):
    own = [(case, rows[0][0]) for case, rows in answers if case.declared is declared]
    assert {bool(case.slip) for case, _ in own} == {True, False}
    assert [(case.slip, case.cells, expected(case), got) for case, got in own if not _agree(expected(case), got)] == []


def _agree(wanted, got):
    if wanted is None:
        return isinstance(got, Thrown) and not got.words.startswith("a fault")
    return isinstance(got, int | float) and math.isclose(got, wanted, rel_tol=1e-9, abs_tol=1e-12)


def test_a_range_is_told_in_pythons_words():
    known = Ranges(HAS)
    terms = [argument.term for declared in HAS for argument in declared.arguments.values()]
    told_by = web_book.asked("((name) => term_(name).range)", [(known.name(term),) for term in terms])
    assert told_by == [term.range for term in terms]


# Text and days


# A text as it is typed, in every spelling of a unit that we know, and in the ways that people slip.
TEXTS = [
    "12",
    "12,5",
    "1.234",
    "1,234",
    "1.234,5",
    ".5",
    "",
    " ",
    "-3",
    "\u22123 oz",
    "- oz",
    "2 7/8 in",
    "1/0",
    "3/2 1/2",
]
TEXTS += [
    "7/8",
    "1 9/8",
    "\u00bd oz",
    "2\u215e in",
    "5 lb 4 oz",
    "4 oz 5 lb",
    "-5 lb 4 oz",
    "5 lb 4",
    "1 2 3 4 g",
    "12 stone",
]
TEXTS += [
    "8%",
    "8 percent",
    "8% of wax weight",
    "$4.50",
    "4.50 USD",
    "XYZ 4.50",
    "$ 15 an hour",
    "$15/h",
    "\u00a315 per hr",
]
TEXTS += [
    "24 times",
    "180 F",
    "180 \u00b0F",
    "18 f",
    "twelve",
    "12 oz.",
    "1e3",
    "1e3 g",
    "12\u00a0oz",
    "3 cm2",
    "3 in^2",
    "+4 g",
]
TEXTS += ["#N/A", "TRUE", "10 oz 3 oz", "0.9 g/cm3", "2 kJ/(kg C)", "3 \u2033", "8 fl oz", "8 imp fl oz", "8 oz"]
TEXTS += [f"3 {spelling}" for spelling in units.SPELLINGS] + [f"2.5{spelling.upper()}" for spelling in units.SPELLINGS]


def test_text_is_read_as_python_reads_it():
    kinds = [*units.DIMENSIONS, "of wax weight", "", "money", "money per h", "times"]
    got = web_book.asked("readUnits_", [(text, unit) for text in TEXTS for unit in kinds])
    for (text, unit), told in zip([(text, unit) for text in TEXTS for unit in kinds], got, strict=True):
        try:
            wanted = units.read(text, unit)
        except ValueError as problem:
            assert told == {"thrown": str(problem)}, (text, unit)
        else:
            assert told["unit"] == wanted.unit and told["value"] == pytest.approx(wanted.value, rel=1e-14), (text, unit)


DAYS = [
    "2026-03-14",
    "2026-3-4",
    "2026-02-29",
    "2024-02-29",
    "0099-01-01",
    "14 Mar 2026",
    "March 14, 2026",
    "14 Sept 2026",
]
DAYS += [
    "31 April 2026",
    "5 mayo 2026",
    "Mar 2026",
    "5 Mar 6 2026",
    "5-Dec-2026",
    "Dec. 5 2026",
    "5/12/2026",
    "2026/3/14",
    "",
]


def test_days_are_read_as_python_reads_them():
    got = web_book.asked("readDay_", [(text,) for text in [*DAYS, 46095, 46095.75, 60, 2958466]])
    for text, number in zip([*DAYS, 46095, 46095.75, 60, 2958466], got, strict=True):
        day = days.read(text)
        assert number == (day and days.serial(day)), text
    meant = web_book.asked("meantDays_", [("5/12/2026",), ("14.3.2026",), ("5/5/2026",), ("31/31/2026",)])
    assert meant == [
        [str(day) for day in days.meant(text)] for text in ("5/12/2026", "14.3.2026", "5/5/2026", "31/31/2026")
    ]


ASK_DAYS = """
import web_book
from datetime import date
print(web_book.calculate([("use_by", [date(2026, month, 18), 1]) for month in range(1, 13)]))
"""


@pytest.mark.parametrize("zone", ["America/Sao_Paulo", "Pacific/Auckland"])
def test_a_day_is_the_same_day_in_another_time_zone(zone):
    paths = os.pathsep.join(str(HOME / place) for place in ("tests", "tests/faces"))
    there = {**os.environ, "TZ": zone, "PYTHONPATH": paths}
    done = subprocess.run([sys.executable, "-c", ASK_DAYS], env=there, capture_output=True, text=True, timeout=60)  # noqa: S603
    assert done.stdout.strip() == str([[[int(days.serial(date(2026, month, 19)))]] for month in range(1, 13)])


def test_a_day_comes_out_as_a_date():
    assert web_book.engine().eval("isDate_(CANDLE_USE_BY(46095, 30))")
    assert one("use_by", date(2026, 3, 14), 30) == days.serial(date(2026, 4, 13))
    assert "as a sheet" not in one("oil_for_wax", date(2026, 3, 14), 0.1)
    assert one("oil_for_wax", date(2026, 3, 14), 0.1) == "oil_for_wax: wax is 2026-03-14; it takes 0 or more g."


# Cells


def test_an_error_says_what_is_wrong_in_words():
    assert one("oil_for_wax", 500, 8) == "oil_for_wax: load is 8; it takes 0 to 0.5 of wax weight. Did you mean 8%?"
    assert one("oil_for_wax", "", 8).startswith("oil_for_wax: wax is blank; it takes 0 or more g; load is 8; ")
    assert one("oil_for_wax", "#N/A", 0.1) == "oil_for_wax: wax is the error #N/A."
    assert one("oil_for_wax", 500, 0.1, 3) == "oil_for_wax: takes 2 arguments, not 3"


def test_a_range_gives_a_column_and_blank_rows_stay_blank():
    assert calculate([("oil_for_wax", [[100, "1 kg", ""], "8%"])]) == [[[8], [80], [""]]]
    assert calculate([("oil_for_wax", [[[100, 200]], [[0.1, "5%"]]])]) == [[[10, 10]]]
    assert calculate([("oil_for_wax", [[[100]], [[0.1]]])]) == [[[10]]]


def test_a_range_with_a_cell_that_has_no_answer_says_which():
    assert one("oil_for_wax", [100, -1, 200, "x"], 0.1) == (
        "row 2: oil_for_wax: wax is -1; it takes 0 or more g. 1 more without an answer."
    )
    assert one("oil_for_wax", [100, 200], 8) == one("oil_for_wax", 100, 8)
    assert one("oil_for_wax", [100, 200], [0.1]) != one("oil_for_wax", [100, 200], [0.1, 0.1, 0.1])
    assert one("oil_for_wax", [100, 200], [0.1, 0.1, 0.1]) == "oil_for_wax: ranges of one shape are wanted"


def test_why_says_it_in_a_cell():
    reason = "oil_for_wax: load is 8; it takes 0 to 0.5 of wax weight. Did you mean 8%?"
    for name in ("oil_for_wax", "CANDLE_OIL_FOR_WAX", "CANDLE.OILFORWAX"):
        assert one(wizard.WHY, name, 500, 8) == reason
    assert one(wizard.WHY, "oil_for_wax", 500, "8%") == "no error"
    assert one(wizard.WHY, "oil_for_wick", 500) == "there is no function oil_for_wick"


def test_convert_puts_an_answer_in_another_unit():
    assert one("convert", 1, "lb", "oz") == 16
    assert one("convert", 180, "F", "C") == pytest.approx(82.2222222222)
    assert one("convert", 1, "oz", "ml").startswith('convert: "oz" is for a weight and "ml" for a volume')


# Statistics, against scipy


def told(name, given):
    return web_book.asked(name, given)


def test_students_t_is_scipys():
    given = [
        (tails, freedom)
        for tails in (1e-9, 0.001, 0.01, 0.05, 0.3, 0.5, 0.9, 1)
        for freedom in (1, 2, 3, 7, 30, 99, 5000)
    ]
    wanted = [scipy.stats.t.isf(tails / 2, freedom) for tails, freedom in given]
    assert told("tQuantile_", given) == pytest.approx(wanted, rel=1e-10, abs=1e-12)


def test_the_normal_distribution_is_scipys():
    values = [-37, -10, -6, -3.0001, -3, -2.9999, -1, -1e-9, 0, 0.5, 1.96, 2.9999, 3, 5, 8.2, 12]
    assert told("normalBelow_", [(value,) for value in values]) == pytest.approx(
        scipy.stats.norm.cdf(values), rel=1e-11
    )
    shares = [1e-300, 1e-20, 1e-6, 0.01, 0.025, 0.3, 0.5, 0.7, 0.975, 0.999999]
    assert told("normalQuantile_", [(share,) for share in shares]) == pytest.approx(
        scipy.stats.norm.ppf(shares), rel=1e-11, abs=1e-15
    )


def test_a_straight_line_and_its_scatter_are_scipys():
    chance = random.Random("readings")  # noqa: S311
    for count in (3, 5, 40):
        xs = [chance.uniform(0, 12) for _ in range(count)]
        ys = [412 - 4.9 * x + chance.gauss(0, 0.7) for x in xs]
        line = scipy.stats.linregress(xs, ys)
        assert told("slope_", [(ys, xs)])[0] == pytest.approx(line.slope, rel=1e-11)
        about = told("squaresAboutMean_", [(xs,)])[0]
        assert told("scatter_", [(ys, xs)])[0] / math.sqrt(about) == pytest.approx(line.stderr, rel=1e-9)
        assert told("deviation_", [(xs,)])[0] == pytest.approx(statistics.stdev(xs), rel=1e-12)


def test_a_sum_loses_nothing():
    lists = [[1e16, 1, -1e16], [0.1] * 10, [1, 1e100, 1, -1e100], [], [5, "", 2]]
    wanted = [math.fsum(number for number in each if number != "") for each in lists]
    assert told("sum_", [(each,) for each in lists]) == wanted


def test_rounding_is_that_of_spreadsheets():
    from candlecalc.quantities.rounding import round_half_away

    values = [1.005, -2.5, 2.675, 1e-9, 123456789.125, 0.1 + 0.2, 1e11 + 0.5, -0.05, 0]
    given = [(value, digits) for value in values for digits in (0, 1, 2, 6, 9)]
    assert told("round_", given) == [round_half_away(*each) for each in given]
    assert told("roundUp_", [(2.1, 0), (-2.1, 0), (0.1 + 0.2, 1), (2, 0)]) == [3, -3, 0.3, 2]
    assert told("roundDown_", [(2.9, 0), (-2.9, 0), (0.3 - 1e-17, 1)]) == [2, -2, 0.3]


def test_months_on_are_those_of_pandas():
    given = [(date(2026, 1, 31), 1), (date(2024, 2, 29), 12), (date(2026, 12, 15), -13), (date(2023, 11, 30), 3)]
    wanted = [pandas.Timestamp(day) + pandas.DateOffset(months=months) for day, months in given]
    numbers = [(days.serial(day), months) for day, months in given]
    assert told("monthsAfter_", numbers) == [days.serial(day.date()) for day in wanted]


# The file


def commented():
    """The functions with JSDoc's comments, as its readers find them: a comment of stars, then the function."""
    for part in TEXT.split("/**\n")[1:]:
        words, _, after = part.partition(" */\n")
        named = re.match(r"function (\w+)\(([^)]*)\) \{", after)
        if "@customfunction" in words:
            yield named.group(1), (" ".join(re.sub(r"^ \*", "", words, flags=re.M).split()), named.group(2))


SOURCES = {
    number: " ".join(text.replace("\n//", " ").split())
    for number, text in re.findall(
        r"^// (\d+)  (.*(?:\n//    .*)*)", TEXT.partition("// Sources, by the number")[2], flags=re.M
    )
}


def test_every_function_stands_there_with_its_help_and_its_source():
    found = dict(commented())
    assert set(found) == {wizard.WHY, *map(wizard.name, HAS)}
    for declared in HAS:
        flat, arguments = found[wizard.name(declared)]
        number = re.search(r" Source (\d+)", flat)[1]
        assert SOURCES[number] == declared.source and declared.summary.split()[0] in flat
        tags = re.findall(r"@param (?:\{\w+\} )?\[?(\w+)\]? (.*?)(?= @)", flat)
        assert [name for name, _ in tags] == arguments.split(", ") == list(declared.arguments)
        assert all(help_.startswith(declared.arguments[name].term.help[:20]) for name, help_ in tags)


def test_what_is_not_a_function_for_cells_ends_in_an_underscore():
    # A script editor offers no name that ends so, neither in cells nor to run.
    names = re.findall(r"^(?:function|class|const|let|var) (\w+)", TEXT, flags=re.M)
    assert len(names) == len(set(names))
    assert {name for name in names if not name.endswith("_")} == {wizard.WHY, *map(wizard.name, HAS)}


def test_the_script_asks_for_nothing():
    code = "\n".join(line for line in TEXT.splitlines() if not line.startswith(("//", " *")))
    assert not re.search(r"fetch|App\b|Service\b|require\(|import |XMLHttp|eval\(|localStorage|https?:", code)
    assert len(TEXT.encode()) < 300_000


def test_a_function_without_a_form_is_listed_with_its_reason():
    missing = [declared for declared in REGISTRY.values() if script.why_not(declared)]
    head = re.sub(r"\s*\n//\s*", " ", TEXT.partition("const FUNCTIONS_")[0])
    assert all(re.search(rf"\b{declared.name}\b", head) for declared in missing)
    listed = [declared for declared in REGISTRY.values() if not declared.instead]
    assert {declared.name for declared in [*missing, *HAS]} >= {declared.name for declared in listed}


def test_the_command_writes_the_script_and_a_module(tmp_path):
    made, module = tmp_path / "candles.js", tmp_path / "candles.mjs"
    told = CliRunner().invoke(main, ["addin", "web", str(made)])
    assert told.exit_code == 0 and "its first lines say how" in told.output
    assert made.read_text(encoding="utf-8") == TEXT
    assert CliRunner().invoke(main, ["addin", "web", str(module)]).exit_code == 0
    more = module.read_text(encoding="utf-8").removeprefix(TEXT)
    assert re.fullmatch(r"\nexport \{ [A-Z_, ]+ \};\n", more)
    for name in (made, tmp_path / "candles.txt"):
        assert CliRunner().invoke(main, ["addin", "web", str(name)]).exit_code == 2
