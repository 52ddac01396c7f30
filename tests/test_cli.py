"""The commands: answers in the asker's unit, one line for what is wrong, and help that comes at once."""

# ruff: noqa: S603, S607  the programs started here are our own choice

import json
import os
import re
import select
import shutil
import signal
import subprocess
import sys
import time

import click
import pytest
from click.testing import CliRunner

from candlecalc import __version__
from candlecalc.commands import asking, cli, menu
from candlecalc.commands.cli import main
from candlecalc.declaration.declared import REGISTRY, Argument, Term
from candlecalc.faces.asked import label_parts
from candlecalc.faces.asked.results import Asked, shown
from candlecalc.faces.described import reference, terminal
from candlecalc.quantities import units
from candlecalc.season.folder import DEMO
from candlecalc.workbook.reading import read


def run(*words, **named):
    return CliRunner().invoke(main, [str(word) for word in words], **named)


def answer(*words):
    result = run("ask", *words)
    assert (result.exit_code, result.stderr) == (0, "")
    return result.stdout.partition("\nnote: ")[0].removesuffix("\n")  # without what to know beside it


# An ounce is 28.349523125 g and an inch 25.4 mm by definition (international yard and pound agreement, 1959).
ANSWERS = [  # words, answer, how it was worked
    (["oil_for_wax", "wax=10 oz", "load=7%"], "0.70 oz (19.8 g)", "283.495 g at 0.07 is 19.845 g"),
    (["oil_for_wax", "wax=283.495", "load=0.07"], "19.8 g", "no unit spelled"),
    (["oil_for_wax", "wax=500 g", "load=8%"], "40.0 g", "our own unit is not said twice"),
    (["oil_for_wax", "wax=1,5 kg", "load=8 %"], "120.0 g", "a decimal comma; below a kilogram in grams"),
    (["oil_for_wax", "5 lb 4 oz", "10%"], "8.40 oz (238.1 g)", "84 oz; by order, the smaller unit of the two"),
    (["oil_for_wax", "1lb 4oz", "8%"], "1.60 oz (45.4 g)", "20 oz"),
    (["oil_for_wax", "load=10%", "1 lb"], "1.60 oz (45.4 g)", "the argument left over; below a pound in ounces"),
    (["oil_for_wax", "wax=10", "oz", "7", "%"], "0.70 oz (19.8 g)", "quotes forgotten"),
    (["OIL-FOR-WAX", "500", "0.08"], "40.0 g", "any way of writing it"),
    (["CANDLE_OIL_FOR_WAX", "WAX=500", "0.08"], "40.0 g", "as a workbook calls it"),
    (["oil_for_wax", "1", "1%"], "0.01 g", "something is not shown as nothing"),
    (["oil_for_wax", "0", "1%"], "0.0 g", "nothing is"),
    (["box_volume", "10 cm", "10 cm", "4 in"], "1016.0 ml", "a length asked, a volume given"),
    (["fill_weight", "8 fl oz", "0", "1"], "8.35 oz (236.6 g)", "8 x 29.5735295625 ml of 1 g (US fluid ounce)"),
    (["share_of_total", "load=10%"], "9.09% of total weight", "1/11"),
    (["share_of_total", "load=1%"], "0.99% of total weight", "1/101"),
    (["margin_at", "-2", "16"], "-12.5% of the price", "a minus is no option"),
    (["load_at_limit", "limit=5%"], "5.26% of wax weight", "5/95 is 5.263 %: 5.3 would be over the limit"),
    (["load_at_limit", "limit=6%"], "6.38% of wax weight", "6/94 is 6.3830 %"),
    (["load_at_limit", "limit=20%"], "25.0% of wax weight", "20/80, which is exact"),
    (["highest_on_wax", "7%", "of total"], "7.52% of wax weight", "7/93 is 7.5269 %: no more than that"),
    (["highest_of_total", "7%"], "6.54% of the finished candle", "7/107 is 6.5421 %"),
    (["limit_of_blend", "70%;30%", "20%;5%"], "10.52% of the finished candle", "1/9.5 is 10.526 %"),
    (["load_reaching_limit", "10%", "0.3%"], "3.09% of wax weight", "0.3/9.7 is 3.0928 %"),
    (["substance_in_candle", "0.5%", "10%"], "0.0455% of the finished candle", "three digits: 0.05/1.1"),
    (["margin_at", "0.00000000000000001", "16"], "0.0% of the price", "what sums leave is nothing"),
    (["count_difference", "5", "5"], "0 units", "no minus before it"),
    (["lowest_price", "4.45", "fee=6.5%"], "4.76 in your currency", "4.45/0.935 is 4.7594: 4.75 would not cover it"),
    (["weighing_error_allowed", "8.9 oz"], "0.06 oz (1.8 g)", "a fifth of 9 g, down in ounces: 0.0635"),
    (["binding_weight", "16", "453"], "453.6 g", "16 x 28.3495 is 453.592: no less"),
    (["minutes_each", "8", "15", "60"], "8.25 min", "a quarter of a minute"),
    (["days_covered", "37", "4"], "9.25 days", "a quarter of a day"),
    (["days_covered", "733", "10"], "73 days", "73.3: days are planned in whole ones"),
    (["convert", "12", "oz", "g"], "340.19 g", "12 x 28.349523125, as words come"),
    (["convert", "12 oz", "to=g"], "340.19 g", "the value with its unit"),
    (["convert", "8", "fl oz", "ml"], "236.59 ml", "8 x 29.5735295625"),
    (["convert", "100", "ml", "fl oz"], "3.381 US fl oz", "the fluid ounce is the US one, and says so"),
    (["convert", "8", "imp fl oz", "ml"], "227.3 ml", "8 x 28.4130625"),
    (["convert", "8 imp fl oz", "to=fl oz"], "7.686 US fl oz", "227.3045 / 29.5735295625"),
    (["volume_from_water", "8 oz"], "7.69 US fl oz (227.4 ml)", "226.796 g of water at 20 C; 227.4/29.57"),
    (["convert", "8", "fl", "oz", "to", "ml"], "236.59 ml", "without quotes, as it is said"),
    (["convert", "12", "oz", "in", "g"], "340.19 g", "as it is said too"),
    (["convert", "12", "oz", "to", "g"], "340.19 g", "which is no load of so much to so much"),
    (["convert", "12", "in", "mm"], "304.8 mm", "an inch is one all the same"),
    (["convert", "1 lb 4 oz", "kg"], "0.567 kg", "20 x 28.349523125 g"),
    (["convert", "to=g", "value=12", "unit=oz"], "340.19 g", "all by name"),
    (["convert", "unit=oz", "12 oz", "g"], "340.19 g", "said twice alike"),
    (["convert", "1", "oz", "lb"], "0.0625 lb", "1/16"),
    (["convert", "180", "F", "C"], "82.22 C", "740/9"),
    (["celsius", "180 F"], "82 C", "in the unit that it is for"),
    (["fahrenheit", "82 C"], "180 F", "179.6"),
    (["celsius_difference", "18 F"], "10.0 C difference", "the same for a difference"),
    (
        ["pour_by", "5 Dec 2026", "2 weeks"],
        "2026-11-20 (Friday)",
        "as 2026-12-05 and 14 days",
    ),
    (
        ["pour_by", "Dec", "5,", "2026", "cure=2", "weeks"],
        "2026-11-20 (Friday)",
        "quotes forgotten",
    ),
    (["use_by", "2026-03-01", "1 year"], "2027-03-01 (Monday)", "365 days"),
    (["shelf_days_left", "2026-03-01", "2 weeks", "2026-03-05"], "10 days", "days stay days"),
    (
        ["cylinder_volume", "2 7/8 in", "3 1/2 in"],
        "12.59 US fl oz (372.3 ml)",
        "pi/4 x 73.025^2 x 88.9 mm3; 372.3/29.57",
    ),
    (["cylinder_volume", "2", "7/8", "in", "3", "1/2", "in"], "12.59 US fl oz (372.3 ml)", "quotes forgotten"),
    (["labour_cost", "90", "\u00a315/h"], "\u00a322.50", "an hour and a half at 15"),
    (["unit_cost", "price=45", "$", "size=10 lb"], "4.50 $ per lb", "a currency beside its number"),
    (["vessels_filled", "wax=5 kg", "fill=216", "load=8%"], "25 vessels", "5400/216"),
    (
        ["unit_cost", "price=45", "size=10 lb", "shipping=3"],
        "4.80 per lb in your currency",
        "48/10, per the unit of the pack",
    ),
    (["unit_cost", "price=18", "size=450", "shipping=4.5"], "0.05 per unit in your currency", "22.5/450"),
    (["unit_cost", "18", "453.6 g"], "0.03968 per g in your currency", "four digits of a small number"),
    (["labour_cost", "minutes=1.5 h", "rate=16"], "24.00 in your currency", "an hour and a half at 16"),
    (["overhead_rate", "600", "240"], "2.50 per h in your currency", "600/240"),
    (["round_money", "1.005"], "1.01 in your currency", "half away from zero"),
    (["round_money", "1234.5", "digits=0"], "1235 in your currency", "a currency without coins"),
    (["highest_on_wax", "20%", "basis=Of Total"], "25.0% of wax weight", "0.2/0.8"),
    (["oil_parts", "1 lb", "50%; 30%; 20%"], "8.00 oz (226.8 g)\n4.80 oz (136.1 g)\n3.20 oz (90.7 g)", "a list"),
    (["oil_parts", "oil=40", "shares=50%, 50%"], "20.0 g\n20.0 g", "commas"),
    (["oil_parts", "oil=40", "shares=75%", "shares=25%"], "30.0 g\n10.0 g", "an argument twice"),
    (["oil_parts", "oil=40", "shares=0,75; 0,25"], "30.0 g\n10.0 g", "decimal commas between semicolons"),
    (["oil_parts", "oil=40", "shares=0.75,0.25"], "30.0 g\n10.0 g", "points in use, so commas part"),
]


@pytest.mark.parametrize(("words", "expected", "how"), ANSWERS, ids=lambda value: str(value)[:40])
def test_an_answer_is_in_the_unit_it_was_asked_in(words, expected, how):
    assert answer(*words) == expected


LIMITS = re.compile(r"^(highest|lowest|least|smallest|error that)|must weigh|under which|may be under|is held to", re.I)


def test_what_is_highest_or_lowest_is_not_shown_beyond_it():
    """An answer that is a limit says to which side it is rounded; words and whole numbers are as they are."""
    found = {}
    for name, formula in REGISTRY.items():
        for term in [*formula.fields.values()] or [formula.result]:
            told = [formula.summary] * (not formula.fields) + [term.help]
            if term.is_number and not term.whole and any(LIMITS.search(text.removeprefix("the ")) for text in told):
                found[name] = term.rounding
    assert {"load_at_limit", "highest_on_wax", "limit_of_blend", "lowest_price", "never_under"} <= set(found)
    assert [name for name, side in found.items() if side == "nearest"] == []


def test_a_temperature_is_shown_in_whole_degrees_of_both_kinds():
    # Water boils at 212 F, 100 C, by the definition of the two scales.
    assert shown(100.0, Term("C", ""), Asked("degF")) == "212 F (100 C)"
    assert shown(82.22, Term("C", "")) == "82 C"


@pytest.mark.parametrize("name", sorted(REGISTRY))
def test_typed_text_gives_what_the_numbers_of_the_example_give(name):
    formula = REGISTRY[name]
    given = reference.example(formula)
    result = formula.checked(**given)
    terms = [*formula.fields.values()] or [formula.result]
    digits, pieces = int(given.get("digits", 2)), in_pieces(formula, given)
    expected = [
        shown(value, term, Asked(units.named(given[term.unit_in]) if term.unit_in else "", digits=digits, whole=pieces))
        for row in formula.rows(result)
        for term, value in zip(terms, row, strict=True)
    ]
    words = [word for key, value in given.items() for word in typed(formula.arguments[key].term, key, value)]
    told = run("ask", name, *words).stdout.removesuffix("\n")
    told = told if formula.fields else told.partition("\nnote: ")[0]
    told = told.removesuffix("\namounts of money in your currency").removesuffix(" in your currency")
    if label_parts.is_label(formula):  # its rows stand in three parts; what each says is there
        expected = [row.text for row in result if row.text]
    if formula.fields:
        assert all(" ".join(part.split()) in " ".join(told.split()) for part in expected if part != "-")
    else:
        assert told.splitlines() == expected


def in_pieces(formula, given):
    amounts = [value for key, value in given.items() if formula.arguments[key].term.goods]
    cells = [cell for value in amounts for cell in (value if isinstance(value, list) else [value])]
    return all(float(cell).is_integer() for cell in cells if cell is not None)


def typed(term, name, value):
    """An argument as words at the terminal: a list of words is one word each, as commas are its own."""
    if term.many and (term.text or term.unit == "date"):
        return [f"{name}={one}" for one in value if one is not None]
    parts = ["" if one is None else str(one) for one in value] if term.many else [str(value)]
    return [f"{name}={'; '.join(parts)}"]


WRONG = [  # words, exit code, what it says
    (["ask", "oil_for_wx", "1"], 2, "there is no function oil_for_wx. Nearest: oil_for_wax"),
    (["ask", "scented"], 2, "there is no function scented. Nearest: "),
    (["ask", "zzzz"], 2, "there is no function zzzz. List them with: candlecalc functions"),
    (["ask", "oil_for_wx", "1"], 2, "Nearest: oil_for_wax (Fragrance oil to weigh out for a weight of wax)"),
    (["ask", "oil_for_wax", "wx=10"], 2, "oil_for_wax has no wx. Nearest: wax (wax in the melt, before any oil)."),
    (["ask", "oil_for_wax", "zzzz=10"], 2, "oil_for_wax has no zzzz. In order: oil_for_wax wax load"),
    (["ask", "vessels_filled", "5 kg"], 2, "In order: vessels_filled wax fill [load]"),
    (["ask", "oil_for_wax", "1", "1/2", "8%"], 2, "1 1/2 may be one number or two: put quotes"),
    (["ask", "convert", "12 oz"], 2, "In order: convert value unit to"),
    (["ask", "convert", "unit=lb", "12 oz", "to=g"], 2, 'value is "12 oz", and unit is lb: which of the two?'),
    (["ask", "convert", "12 oz", "unit=lb", "to=g"], 2, "unit is given twice"),
    (["ask", "pour_by", "5/12/2026", "14"], 1, "write 2026-12-05 or 2026-05-12"),
    (["ask", "oil_for_wax", "wax=10"], 2, "oil_for_wax also needs load: fragrance load"),
    (["ask", "oil_for_wax", "10", "7%", "3"], 2, "3 is one too many. In order: oil_for_wax wax load"),
    (["ask", "oil_for_wax", "wax=10", "wax=11", "7%"], 2, "wax is given twice"),
    (["ask"], 2, "name a function"),
    (["ask", "oil_for_wax", "500", "load=8"], 1, 'load is "8"; it takes 0 to 0.5 of wax weight. Did you mean 8%?'),
    (["ask", "oil_for_wax", "8 fl oz", "8%"], 1, "Did you mean 8 oz on the scale?"),
    (["ask", "oil_for_wax", "ten", "80%"], 1, 'wax is "ten": it takes a weight such as 340 or "12 oz"; load is "80%"'),
    (["ask", "oil_parts", "40", "0,75,0,25"], 1, 'put semicolons between its values: "0; 75; 0; 25"'),
    (["ask", "oil_parts", "40", "50%;;50%"], 1, "is blank at place 2 of 3"),
    (["ask", "highest_on_wax", "10%", "basis=of air"], 1, 'basis is "of air"; it takes "of wax" or "of total"'),
    (["functions", "oil_for_wx"], 2, "Nearest: oil_for_wax"),
    (
        ["functions", "--find", "zzzz"],
        1,
        'no function answers to "zzzz"; candlecalc functions lists them all by subject',
    ),
    (["functions", "--find", "hot throw"], 1, 'no function answers to "hot throw"'),
    (["functions", "--find", "hot throw"], 1, "nearest: wick_signs (What was seen on a burn"),
    (["functions", "--find", "carbon footprint"], 1, "candlecalc functions lists them all by subject"),
    (["functions", "oil_for_wax", "--find", "oil"], 2, "give a NAME, --find, --markdown or --workbook"),
    (["functions", "--fnd", "oil"], 2, "--find"),
    (["melt"], 2, "melt"),
    (["new", "new.xlsx", "--season", "a\x1bb"], 2, "--season takes letters, digits and marks in one line"),
    (["new", "old.xlsx", "--date", "1899-01-01"], 2, "--date takes a day from 2000-01-01 to 2099-12-31"),
]


@pytest.mark.parametrize(("words", "code", "message"), WRONG, ids=lambda value: str(value)[:40])
def test_what_is_wrong_is_said_in_one_line(words, code, message):
    result = run(*words)
    assert result.exit_code == code
    assert result.stdout == ""
    assert result.stderr.startswith("candlecalc: ") and result.stderr.count("\n") == 1
    assert message in result.stderr


def test_functions_are_listed_by_subject_each_once():
    lines = run("functions", "--all").stdout.splitlines()
    assert sorted(listed(lines)) == sorted(formula.name for formula in reference.every())
    subjects = [line for line in lines if line and line[0] != " "]
    assert subjects[0].startswith("Vessels: ") and subjects[1].startswith("Fragrance: ")


def test_the_list_leaves_the_parts_that_tabs_need_to_all_and_says_how_many():
    *lines, last = run("functions").stdout.splitlines()
    parts = {formula.name for formula in reference.every() if formula.part}
    assert sorted(listed(lines)) == sorted({formula.name for formula in reference.every()} - parts)
    assert last == f"{len(parts)} more, which tabs need: candlecalc functions --all"


def listed(lines):
    return [line.split()[0] for line in lines if line.startswith("  ") and line[2] != " "]


@pytest.mark.parametrize("name", sorted(REGISTRY))
def test_a_page_tells_all_that_is_declared_in_eighty_columns(name):
    formula = REGISTRY[name]
    result = run("functions", name)
    told = " ".join(result.stdout.split())
    assert result.exit_code == 0
    assert max(map(len, result.stdout.splitlines())) < 80
    for argument in formula.arguments.values():
        assert f" {argument.name} {argument.term.help} " in told
    assert formula.result.help in told and formula.source in told and formula.summary in told
    assert re.search(rf">>> (round\()?{formula.bare.__name__}\(", told)
    assert "None" not in told.partition(">>>")[0]


def test_a_long_cell_formula_is_broken_after_a_sign_and_loses_nothing():
    form = 'MAX((cost+fixed)/(1-margin-fee*(1+tax*(basis="with a plus + in it"))),(cost+fixed+least)/(1-margin))'
    lines = list(terminal._broken(form))
    assert "".join(lines) == form
    assert len(lines) > 1 and max(map(len, lines)) <= terminal.WIDTH - 15


def test_json_holds_what_the_pages_hold():
    whole = json.loads(run("functions", "--json").stdout)
    assert [entry["name"] for entry in whole] == [formula.name for formula in reference.every()]
    (one,) = json.loads(run("functions", "price_for_margin", "--json").stdout)
    assert one == next(entry for entry in whole if entry["name"] == "price_for_margin")
    assert one["arguments"][5]["choices"] == ["net", "gross"] and one["arguments"][5]["default"] == "net"
    assert "default" not in one["arguments"][0]
    assert one["subject"] == "price" and one["result"]["unit"] == "money"
    assert one["example"] == [">>> price_for_margin(cost=6, margin=0.5, fee=0.1, fixed=0.45)", "16.125"]


def test_without_a_command_and_a_keyboard_help_is_printed():
    result = run(input="")
    assert result.exit_code == 0
    assert result.stdout == run("--help").stdout
    assert "ask" in result.stdout and "functions" in result.stdout


def test_help_fits_and_version_is_ours():
    assert run("--version").stdout == f"candlecalc {__version__}\n"
    for command in [[], *([name] for name in main.commands)]:
        result = run(*command, "--help")
        assert result.exit_code == 0
        assert max(map(len, result.stdout.splitlines())) <= 80


def test_a_value_is_asked_for_until_it_is_taken(monkeypatch):
    asked = iter(["8", "12 jars", "8%"])
    monkeypatch.setattr(click.termui, "visible_prompt_func", lambda text: next(asked))
    formula = REGISTRY["oil_for_wax"]
    assert menu.value_for(formula, formula.arguments["load"]) == "8%"
    assert list(asked) == []


def test_what_may_be_left_out_is_left_out_by_enter(monkeypatch):
    monkeypatch.setattr(click.termui, "visible_prompt_func", lambda text: "")
    formula = REGISTRY["pour_by_own_days"]
    assert menu.value_for(formula, formula.arguments["closed"]) is None
    assert menu.value_for(formula, formula.arguments["evenings"]) is None


@pytest.mark.parametrize("name", sorted(REGISTRY))
def test_every_argument_is_asked_for_with_its_unit_and_an_example_that_it_takes(name):
    formula = REGISTRY[name]
    for argument in formula.arguments.values():
        shown = reference.such_as(formula, argument)
        assert shown or argument.optional
        if shown:
            asking.checked(argument, shown)


def test_a_default_is_offered():
    term = Term("of the price", "what the place keeps of the price")
    assert reference.default_of(Argument("fee", term, 0.0)) == "0"
    assert reference.default_of(Argument("fee", term)) is None
    assert reference.default_of(REGISTRY["fee_at"].arguments["basis"]) == "net"


MADE = [  # what is typed at each question, the call it comes to
    (["1", "1", "spring"], ["new", "--demo", "spring.xlsx"]),
    (["1", "3", "old.xlsx", "spring.ods", "spring.xlsx"], ["new", "--region", "gb", "spring.xlsx"]),
    (["1", "4", "no/such.xlsx", "spring.xlsx"], ["new", "--region", "eu", "spring.xlsx"]),
    (["1", "5", "lost.xlsx", "old.xlsx", "spring.xlsx"], ["new", "--from", "old.xlsx", "spring.xlsx"]),
    (["2", "lost.xlsx", "old.xlsx"], ["check", "old.xlsx"]),
    (["3", "old.xlsx", "2"], ["show", "old.xlsx", "prices"]),
    (["4"], ["ask"]),
]


@pytest.mark.parametrize(("typed", "call"), MADE, ids=lambda value: " ".join(value))
def test_each_question_is_asked_in_words_until_it_is_answered(tmp_path, monkeypatch, typed, call):
    monkeypatch.chdir(tmp_path)
    (tmp_path / "old.xlsx").write_bytes(b"mine")
    asked, questions = iter(typed), []
    monkeypatch.setattr(click.termui, "visible_prompt_func", lambda text: questions.append(text) or next(asked))
    assert menu.words(lambda path: cli._new_file(path, ".xlsx", force=False)) == call
    assert list(asked) == []
    assert not [question for question in questions if question.isupper()]


def test_what_is_asked_for_is_made(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    asked = iter(["1", "3", "spring"])
    monkeypatch.setattr(click.termui, "visible_prompt_func", lambda text: next(asked))
    cli._menu(click.Context(main))
    assert [path.name for path in tmp_path.iterdir()] == ["spring.xlsx"]
    assert read.season_of(tmp_path / "spring.xlsx").settings["region"] == "gb"


def command(*words):
    return [sys.executable, "-c", "from candlecalc.commands.cli import main; main()", *words]


def test_a_shell_sees_the_exit_codes(tmp_path):
    calls = {0: ["oil_for_wax", "500", "8%"], 1: ["oil_for_wax", "500", "8"], 2: ["oil_for_wx"]}
    for code, words in calls.items():
        done = subprocess.run(command("ask", *words), capture_output=True, text=True, cwd=tmp_path, timeout=60)
        assert done.returncode == code
        assert "Traceback" not in done.stderr
    assert list(tmp_path.iterdir()) == []


def test_who_reads_the_first_line_alone_hears_no_complaint():
    reading, writing = os.pipe()
    os.close(reading)
    with os.fdopen(writing, "wb") as shut:
        done = subprocess.run(command("functions", "--json"), stdout=shut, stderr=subprocess.PIPE, timeout=60)
    assert (done.returncode, done.stderr) == (1, b"")


def test_the_installed_command_answers():
    installed = shutil.which("candlecalc", path=os.path.dirname(sys.executable))  # noqa: PTH120
    done = subprocess.run([installed, "ask", "oil_for_wax", "10 oz", "7%"], capture_output=True, text=True, timeout=60)
    assert done.stdout == "0.70 oz (19.8 g)\n"


def test_inch_marks_pass_through_a_pipe_with_an_old_code_page():
    old = {**os.environ, "PYTHONIOENCODING": "cp1252", "PYTHONUTF8": "0"}
    done = subprocess.run(command("ask", "oil_for_wax", "3 \u2033", "8%"), capture_output=True, env=old, timeout=60)
    assert done.returncode == 1
    assert "3 \u2033" in done.stderr.decode("utf-8")


@pytest.mark.skipif(sys.platform == "win32", reason="a pseudo terminal is not to be had on Windows")
def test_with_a_keyboard_it_leads_from_a_choice_to_an_answer():
    import pty

    ours, theirs = pty.openpty()
    talk = subprocess.Popen(command(), stdin=theirs, stdout=theirs, stderr=theirs, close_fds=True)
    try:
        shown = _until(ours, "Number: ")
        # The number beside "Ask a question", wherever it stands among the commands there are.
        number = next(line.split()[0] for line in shown.splitlines() if line.endswith("Ask a question"))
        steps = [(number, "What about?"), ("zzzz", "other words"), ("oil for wax", "Number: ")]
        steps += [("1", "wax: "), ("10 jars", "no unit known"), ("10 oz", "load: "), ("7%", "0.70 oz (19.8 g)")]
        steps[-1] = ("7%", "in one line: candlecalc ask oil_for_wax 'wax=10 oz' load=7%")
        for typed, expected in steps:
            os.write(ours, f"{typed}\n".encode())
            _until(ours, expected)
        assert talk.wait(20) == 0
    finally:
        talk.kill()
        os.close(ours)
        os.close(theirs)


def _until(terminal, text, seconds=20):
    end, shown = time.monotonic() + seconds, ""
    while text not in shown:
        assert select.select([terminal], [], [], max(0, end - time.monotonic()))[0], f"{text!r} is not in {shown!r}"
        shown += os.read(terminal, 4096).decode().replace("\r\n", "\n")
    return shown


# Bytes that are no text, and machines that speak no UTF-8


BYTES = [
    ["check", b"no\xff.xlsx"],
    ["show", b"no\xff.xlsx", "costs"],
    ["new", b"no\xff.xls"],
    ["new", b"no\xff/new.xlsx"],
    ["new", b"\xff.xlsx", "--from", b"no\xff"],
    ["new", "new.xlsx", "--season", b"S\xff"],
    ["new", "new.xlsx", b"--dem\xff"],
    ["ask", b"oil\xff", "1", "2"],
    ["ask", "oil_for_wax", b"1\xff", "8%"],
    ["ask", "oil_for_wax", b"w\xff=10", "8%"],
    ["ask", "coin_digits", b"US\xff"],
    ["formula", "oil_for_wax", b"wax=B\xff", "load=C4"],
    ["functions", b"oil\xff"],
    ["functions", "--find", b"z\xff"],
    ["functions", "--workbook", b"\xff.xls"],
    ["add-functions", b"\xff.xlsx", "out.xlsx"],
    ["addin", "calc", b"\xff.ox"],
    [b"mel\xff"],
]
PLACES = {
    "UTF-8": {"LC_ALL": "C.UTF-8"},
    "C": {"LC_ALL": "C", "PYTHONUTF8": "0", "PYTHONCOERCECLOCALE": "0"},
}


@pytest.mark.skipif(sys.platform in ("win32", "darwin"), reason="a path there is always text")
@pytest.mark.parametrize("place", PLACES)
@pytest.mark.parametrize("words", BYTES, ids=str)
def test_bytes_that_are_no_text_give_one_line(tmp_path, words, place):
    done = subprocess.run(command(*words), capture_output=True, cwd=tmp_path, env=_there(place), timeout=60)
    said = done.stderr.decode("utf-8")
    assert done.returncode in (1, 2)
    assert said.startswith("candlecalc: ") and said.count("\n") == 1
    assert done.stdout == b"" and list(tmp_path.iterdir()) == []


@pytest.mark.skipif(sys.platform in ("win32", "darwin"), reason="a path there is always text")
@pytest.mark.parametrize("place", PLACES)
def test_a_file_may_have_any_name_that_the_machine_gives_it(tmp_path, place):
    name = b"gr\xf6n.xlsx"
    done = subprocess.run(command("new", name), capture_output=True, cwd=tmp_path, env=_there(place), timeout=60)
    assert (done.returncode, done.stderr) == (0, b"")
    assert [os.fsencode(path.name) for path in tmp_path.iterdir()] == [name]
    done = subprocess.run(command("check", name), capture_output=True, cwd=tmp_path, env=_there(place), timeout=60)
    assert done.stderr == b"" and done.stdout.decode("utf-8").startswith("gr")


def _there(place):
    kept = {name: value for name, value in os.environ.items() if not name.startswith(("LC_", "LANG", "PYTHON"))}
    return kept | PLACES[place]


# A key pressed before the commands are there: it comes while their packages are read in.
PRESSED = """
import os, signal, time
os.kill(os.getpid(), signal.SIGINT)
time.sleep(5)
"""


@pytest.mark.skipif(sys.platform == "win32", reason="no such signal is sent on Windows")
@pytest.mark.parametrize("name", ["click", "openpyxl"])
def test_stopped_early_it_ends_without_a_traceback(tmp_path, name):
    (tmp_path / f"{name}.py").write_text(PRESSED)
    installed = shutil.which("candlecalc", path=os.path.dirname(sys.executable))  # noqa: PTH120
    done = subprocess.run(
        [installed, "new", "new.xlsx", "--demo"],
        capture_output=True, text=True, cwd=tmp_path, env=_there("UTF-8") | {"PYTHONPATH": str(tmp_path)}, timeout=60,
    )  # fmt: skip
    assert done.returncode in (-signal.SIGINT, cli.STOPPED)
    assert done.stderr.lstrip("\n") in ("", "candlecalc: stopped\n")


# Answers in another unit


@pytest.mark.parametrize(("words", "expected"), [
    (["oil_for_wax", "500", "8%", "to=oz"], "1.41 oz (40.0 g)"),
    (["oil_for_wax", "wax=10 oz", "load=7%", "in", "lb"], "0.044 lb (19.8 g)"),
    (["cylinder_volume", "3 in", "4 in", "to", "fl oz"], "15.67 US fl oz (463.3 ml)"),
    (["cylinder_volume", "3", "in", "4", "in", "to=imp", "fl", "oz"], "16.31 imp fl oz (463.3 ml)"),
    (["celsius", "180", "to=F"], "180 F (82 C)"),
])  # fmt: skip
def test_an_answer_may_be_asked_for_in_another_unit(words, expected):
    assert answer(*words) == expected


@pytest.mark.parametrize(("unit", "message"), [
    ("ml", 'oil_for_wax answers in g: "ml" is for a volume'),
    ("stone", '"stone" is no unit known here'),
])  # fmt: skip
def test_a_unit_that_does_not_fit_the_answer_is_refused(unit, message):
    result = run("ask", "oil_for_wax", "500", "8%", f"to={unit}")
    assert result.exit_code in (1, 2) and message in result.stderr


@pytest.mark.parametrize("place", [{"LC_ALL": "de_DE.UTF-8", "LANG": "de_DE.UTF-8"}, {"LC_ALL": "en_GB.UTF-8"}])
def test_an_answer_does_not_depend_on_the_machines_region(place):
    done = subprocess.run(
        command("ask", "cylinder_volume", "3 in", "4 in", "to=fl oz"),
        capture_output=True, text=True, env={**os.environ, **place}, timeout=60,
    )  # fmt: skip
    assert done.stdout == "15.67 US fl oz (463.3 ml)\n"


@pytest.mark.parametrize("watched, option, said", [(True, [], True), (True, ["--quiet"], False), (False, [], False)])
def test_who_waits_at_a_terminal_is_told_what_for(monkeypatch, watched, option, said):
    monkeypatch.setattr(cli, "MOMENT", 0.0)
    monkeypatch.setattr(cli, "_is_watched", lambda: watched)
    done = run("check", DEMO, *option)
    assert done.exit_code == 0
    assert ("calculating" in done.stderr) == said
