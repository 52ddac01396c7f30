"""The Calc add-in: what is in the file, and what its functions do in a real LibreOffice.

That every function gives Python's answers, and every declared error, is shown by the tests that run over
all faces (`tests/face.py`).
"""

# ruff: noqa: S603  the programs started here are our own choice

import ast
import re
import subprocess
import sys
import zipfile
from datetime import date

import pytest
from click.testing import CliRunner
from faces.calc_addin_book import BLANK, Typed, calculate, rows_at, write
from faces.test_every_function import alike
from libreoffice import Error, Office, OfficeError
from openpyxl import Workbook
from openpyxl.worksheet.formula import ArrayFormula
from test_python39 import _old_python

from candlecalc.calc import REGISTRY
from candlecalc.commands.cli import main
from candlecalc.faces.addins import wizard
from candlecalc.faces.described import reference
from candlecalc.faces.libreoffice import extension as calc_addin
from candlecalc.faces.libreoffice.component import spelled
from candlecalc.quantities import days

ALL = list(REGISTRY.values())
NOT_AVAILABLE = [[Error("#N/A")]]
# Runs the carried files by themselves, in whatever Python it is given to, behind a candlecalc that would fail.
ALONE = """
import importlib, sys
sys.path.insert(0, sys.argv[1])
calc = importlib.import_module(sys.argv[2] + ".faces.libreoffice.component").methods()
print(calc["oilForWax"](None, "12 oz", 0.08), calc["oilForWax"](None, 100.0, 8.0), len(calc))
print(calc["why"](None, "OIL_FOR_WAX", (100.0, 8.0)))
"""


@pytest.fixture(scope="module")
def addin_office(tmp_path_factory):
    """An office that has the add-in installed, as a maker installs it."""
    addin = tmp_path_factory.mktemp("installed") / "candles.oxt"
    addin.write_bytes(calc_addin.addin())
    made = Office(addin=addin)
    yield made
    made.close()


@pytest.fixture(scope="module")
def unpacked(tmp_path_factory):
    folder = tmp_path_factory.mktemp("addin")
    (folder / "candles.oxt").write_bytes(calc_addin.addin())
    with zipfile.ZipFile(folder / "candles.oxt") as opened:
        opened.extractall(folder / "in")
    return folder / "in"


def run(*given):
    return CliRunner().invoke(main, ["addin", "calc", *map(str, given)])


# The file


def test_the_command_makes_the_same_bytes_each_time(tmp_path):
    assert run(tmp_path / "one.oxt").exit_code == run(tmp_path / "two.oxt").exit_code == 0
    assert (tmp_path / "one.oxt").read_bytes() == (tmp_path / "two.oxt").read_bytes()


def test_nothing_is_written_over_without_force(tmp_path):
    (tmp_path / "mine.oxt").write_text("mine")
    done = run(tmp_path / "mine.oxt")
    assert (done.exit_code, (tmp_path / "mine.oxt").read_text()) == (2, "mine")
    assert "--force writes over it" in done.stderr
    assert run(tmp_path / "mine.oxt", "--force").exit_code == 0
    assert zipfile.is_zipfile(tmp_path / "mine.oxt")


def test_a_file_of_another_kind_is_refused(tmp_path):
    assert run(tmp_path / "mine.xlsx").exit_code == 2
    assert run(tmp_path / "nowhere" / "mine.oxt").exit_code == 2
    assert list(tmp_path.iterdir()) == []


def test_no_two_functions_have_one_name_in_calc():
    names = [spelled(name).lower() for name in REGISTRY] + ["why"]
    assert len(set(names)) == len(names)
    # The type library takes no underscore, and a name must not read like a cell.
    assert all(re.fullmatch("[a-z]+", name) for name in names)


def test_every_function_is_in_the_type_library_with_its_arguments(unpacked):
    types = (unpacked / "functions.idl").read_text()
    for formula in REGISTRY.values():
        given = re.search(rf" {spelled(formula.name)}\((.*)\);", types)[1]
        assert given.count("[in] any ") == len(formula.arguments)


# What is carried


def test_the_carried_files_import_each_other_and_the_standard_library_alone(unpacked):
    texts = [path.read_text() for path in unpacked.rglob("*.py")]
    imported = {name.split(".")[0] for text in texts for name in imports(ast.parse(text, feature_version=(3, 9)))}
    assert imported - set(sys.stdlib_module_names) == {calc_addin.CARRIED, "uno", "unohelper"}
    assert not any(re.search(r"""["']candlecalc\.""", text) for text in texts)  # a module named in a string


def imports(tree):
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            yield node.module


@pytest.mark.parametrize("version", ["this Python", "Python 3.9"])
def test_the_carried_files_run_alone(unpacked, tmp_path, version):
    python = sys.executable if version == "this Python" else _old_python()
    if not python:
        pytest.skip("python3.9 is not installed")
    # -S leaves out installed packages, -E what the environment says of paths; a candlecalc beside it would fail.
    (tmp_path / "candlecalc").mkdir()
    (tmp_path / "candlecalc" / "__init__.py").write_text("raise ImportError('the wrong one')")
    command = [python, "-S", "-E", "-s", "-B", "-W", "error", "-c", ALONE, unpacked / "pythonpath", calc_addin.CARRIED]
    done = subprocess.run(command, cwd=tmp_path, capture_output=True, text=True, timeout=120)
    answers = f"((27.2155422,),) ((nan,),) {len(REGISTRY) + 1}\n"
    told = "oil_for_wax: load is 8; it takes 0 to 0.5 of wax weight. Did you mean 8%?\n"
    assert (done.returncode, done.stdout, done.stderr) == (0, answers + told, "")


def test_an_office_that_is_too_old_is_refused(unpacked, tmp_path, monkeypatch):
    monkeypatch.setattr(calc_addin, "OLDEST_OFFICE", "99.1")
    (tmp_path / "candles.oxt").write_bytes(calc_addin.addin())
    office = Office(addin=tmp_path / "candles.oxt")
    try:
        with pytest.raises(OfficeError, match="unsatisfied dependencies"):
            office.functions("CANDLE_")
    finally:
        office.close()


# In the office


def test_the_function_wizard_has_the_help_of_every_function_and_argument(addin_office):
    calculate([("oil_for_wax", (500, 0.08))], addin_office)  # arguments are told once a function has been called
    told = addin_office.functions("CANDLE_")
    assert len(told) == len(REGISTRY) + 1
    for formula in REGISTRY.values():
        help_of = told[f"CANDLE_{formula.name.upper()}"]
        subject = f"{wizard.category(formula)}, {formula.subject.replace('_', ' ')}"
        assert help_of["description"].startswith(f"{subject}: {wizard.purpose(formula)}")
        assert help_of["arguments"] == [[name, wizard.help_of(one)] for name, one in formula.arguments.items()]
        for (_, words), one in zip(help_of["arguments"], formula.arguments.values(), strict=True):
            assert one.term.help in words and reference.span(one.term) in words
    assert [name for name, _ in told["CANDLE_WHY"]["arguments"]] == ["name", "values"]


@pytest.fixture(scope="module")
def every_function(tmp_path_factory):
    """A workbook with the example of every function and one refused, where each answer stands, and each answer."""
    path = tmp_path_factory.mktemp("every") / "every.xlsx"
    cases = [(formula.name, tuple(map(reference.example(formula).get, formula.arguments))) for formula in ALL]
    places = write([*cases, ("oil_for_wax", (500, 8))], path)
    expected = [formula.rows(formula.checked(**reference.example(formula))) for formula in ALL] + [NOT_AVAILABLE]
    return path, [
        (place, [[_in_a_cell(value) for value in row] for row in rows])
        for place, rows in zip(places, expected, strict=True)
    ]


def _in_a_cell(value):
    if isinstance(value, date):
        return days.serial(value)
    return "" if value is None else value


@pytest.mark.parametrize("kind", ["xlsx", "ods"])
def test_a_sheet_with_every_function_is_there_again_after_saving(addin_office, every_function, kind):
    path, answers = every_function
    copy = addin_office.saved_as(path, kind)
    for values in (addin_office.recalculated(copy), addin_office.opened(copy)):
        for place, expected in answers:
            assert alike(rows_at(place, values), expected)
        assert isinstance(rows_at(answers[-1][0], values)[0][0], Error)


def test_an_office_without_the_addin_shows_the_stored_answers_of_an_xlsx_file(office, addin_office, every_function):
    # Those of single cells: array formulas, refused cells and all of an .ods file are #NAME? there.
    path, answers = every_function
    values = office.opened(addin_office.saved_as(path, "xlsx"))
    single = [(place, expected) for place, expected in answers[:-1] if (place.high, place.wide) == (1, 1)]
    assert len(single) > len(answers) / 2
    for place, expected in single:
        assert alike(rows_at(place, values), expected)
    assert rows_at(answers[-1][0], values) == [[Error("#NAME?")]]


def test_bad_input_is_not_available_and_so_is_every_sum_over_it(addin_office, tmp_path):
    book = Workbook()
    book.active.append([500, 8, "=CANDLE.OILFORWAX(A1,B1)"])
    book.active.append([500, 0.08, "=CANDLE.OILFORWAX(A2,B2)"])
    book.active.append(["twelve", 0.08, "=CANDLE.OILFORWAX(A3,B3)"])
    for cell, formula in {"D1": "=SUM(C1:C2)", "D2": "=C2+C3", "D3": "=ISNA(C1)", "D4": "=IFERROR(C1,-1)"}.items():
        book.active[cell] = formula
    book.save(tmp_path / "bad.xlsx")
    values = addin_office.recalculated(tmp_path / "bad.xlsx")
    assert [values["Sheet", cell] for cell in ("C1", "C2", "C3", "D1", "D2")] == ["#N/A", 40.0, "#N/A", "#N/A", "#N/A"]
    assert all(isinstance(values["Sheet", cell], Error) for cell in ("C1", "C3", "D1", "D2"))
    assert (values["Sheet", "D3"], values["Sheet", "D4"]) == (1.0, -1.0)


SINGLE = {  # a formula over one answer, 40; A1 to A3 hold 10, 40, 70
    "SUM({})": 40.0,
    "SUM({},A1:A3)": 160.0,
    "{}*2": 80.0,
    "-{}": -40.0,
    "IF({}>30,1,2)": 1.0,
    "{}=40": 1.0,
    'IF({}="","none","some")': "some",
    "ROUND({}/3,2)": 13.33,
    'TEXT({},"0.0")': "40.0",
    '{}&" g"': "40 g",
    "IFERROR({},0)": 40.0,
    "ISNUMBER({})": 1.0,
    "MATCH({},A1:A3,0)": 2.0,
    "VLOOKUP({},A1:B3,2,0)": 2.0,
    "COUNTIF(A1:A3,{})": 1.0,
    'SUMIF(A1:A3,">"&{},B1:B3)': 3.0,
    "INDEX(B1:B3,{}/20)": 2.0,
    "CHOOSE({}/20,5,6)": 6.0,
    "MAX({},A1)": 40.0,
    "AND({}>1,TRUE())": 1.0,
    "SUMPRODUCT(A1:A3*{})": 4800.0,
    "DATE(2026,{}/20,1)": 46054.0,
    "CANDLE.OILFORWAX({},0.5)": 20.0,
}


@pytest.mark.parametrize("formula", SINGLE)
def test_a_single_answer_serves_as_a_plain_value(serving, formula):
    assert serving[formula] == SINGLE[formula]


@pytest.fixture(scope="module")
def serving(addin_office, tmp_path_factory):
    path = tmp_path_factory.mktemp("serving") / "serving.xlsx"
    book = Workbook()
    for row in ([10, 1], [40, 2], [70, 3]):
        book.active.append(row)
    for row, formula in enumerate(SINGLE, start=1):
        book.active[f"D{row}"] = "=" + formula.format("CANDLE.OILFORWAX(500,0.08)")
    book.save(path)
    values = addin_office.recalculated(path)
    return {formula: values["Sheet", f"D{row}"] for row, formula in enumerate(SINGLE, start=1)}


ONE, MANY = "CANDLE.OILFORWAX(500,0.08)", "CANDLE.OILFORWAX(A1:A3,0.1)"
ARRAYS = {  # an array formula of three rows; A1 to A3 hold 10, 40, 70
    f"A1:A3+{ONE}": [50.0, 80.0, 110.0],
    f"A1:A3={ONE}": [0.0, 1.0, 0.0],
    f"IF({ONE}>30,A1:A3,0)": [10.0, 40.0, 70.0],
    f"IF(A1:A3>20,{ONE},0)": [0.0, 40.0, 40.0],
    f"{MANY}+{MANY}": [2.0, 8.0, 14.0],
    f'IF(A1:A3=40,"",{MANY})': [1.0, "", 7.0],
    f"SUMPRODUCT(({MANY}>3)*A1:A3)": [110.0, 110.0, 110.0],
    f"SUM({MANY})": [12.0, 12.0, 12.0],
    f"INDEX({MANY},3)": [7.0, 7.0, 7.0],
    "CANDLE.OILFORWAX(IFERROR(A1:A3/{1;0;1},0),0.1)": [1.0, 0.0, 7.0],
}


@pytest.mark.parametrize("formula", ARRAYS)
def test_answers_serve_in_array_formulas(arrays, formula):
    assert arrays[formula] == ARRAYS[formula]


@pytest.fixture(scope="module")
def arrays(addin_office, tmp_path_factory):
    path = tmp_path_factory.mktemp("arrays") / "arrays.xlsx"
    book = Workbook()
    for row in ([10], [40], [70]):
        book.active.append(row)
    for at, formula in enumerate(ARRAYS):
        book.active[f"D{3 * at + 1}"] = ArrayFormula(f"D{3 * at + 1}:D{3 * at + 3}", f"={formula}")
    book.save(path)
    values = addin_office.recalculated(path)
    return {formula: [values["Sheet", f"D{3 * at + row}"] for row in (1, 2, 3)] for at, formula in enumerate(ARRAYS)}


def test_the_shown_names_are_known_when_typed(addin_office, tmp_path):
    Workbook().save(tmp_path / "blank.xlsx")
    typed = {("Sheet", "A1"): "=CANDLE_OIL_FOR_WAX(500;8%)", ("Sheet", "A2"): '=candle_convert(1;"lb";"g")'}
    values = addin_office.edited(tmp_path / "blank.xlsx", typed)
    assert [values[cell] for cell in typed] == [40.0, 453.59237]


CASES = {
    "text with a unit": ("oil_for_wax", ("5 lb 4 oz", "8%"), [[pytest.approx(84 * 28.349523125 * 0.08, rel=1e-12)]]),
    "a fraction with its unit": ("oil_for_wax", ("1 1/2 lb", "10 percent"), [[pytest.approx(68.0388555, rel=1e-12)]]),
    "money with its currency": ("labour_cost", (90, "$16 an hour"), [[24.0]]),
    "money in a list": ("parts_cost", ([1, 2], ["$3", "\u00a34.50"]), [[12.0]]),
    "a day in words, and weeks": ("pour_by", ("5 Dec 2026", "2 weeks"), [[days.serial(date(2026, 11, 20))]]),
    "an area in square inches": (
        "figure_height_us",
        ("12 sq in",),
        [[3.175, "unconfirmed: check against 16 CFR 500.21(b)"]],
    ),
    "optional left out at the end": ("highest_on_wax", (0.2,), [[0.2]]),
    "optional left out before another": (
        "price_for_margin",
        (6, 0.5, 0.1, None, None, None, 2),
        [[REGISTRY["price_for_margin"].checked(6, 0.5, 0.1, least=2)]],
    ),
    "required left out": ("oil_for_wax", (500,), NOT_AVAILABLE),
    "choice in another case": ("highest_on_wax", (0.2, "Of Total"), [[0.25]]),
    "choice in an empty cell": ("highest_on_wax", (0.2, BLANK), NOT_AVAILABLE),
    "text in an empty cell": ("coin_digits", (BLANK,), NOT_AVAILABLE),
    "an empty cell counts as nothing": ("oil_for_wax", (BLANK, 0.08), [[0.0]]),
    "an error before it passes": ("oil_for_wax", (Typed("=1/0"), 0.08), [[Error("#DIV/0!")]]),
    "an error in its range is one": ("parts_cost", ([1, Typed("=1/0")], [2, 3]), [[Error("Err:504")]]),
    "a list": ("limit_of_blend", ([0.7, 0.3], [0.2, 0.05]), [[pytest.approx(1 / 9.5)]]),
    "room to grow in a list": ("limit_of_blend", ([0.7, 0.3, None], [0.2, 0.05, None]), [[pytest.approx(1 / 9.5)]]),
    "a list in a row": ("limit_of_blend", ([[0.7, 0.3]], [[0.2, 0.05]]), [[pytest.approx(1 / 9.5)]]),
    "a list of one": ("oil_parts", (40, [1]), [[40.0]]),
    "rows out": ("oil_parts", (40, [0.5, 0.25, 0.25]), [[20.0], [10.0], [10.0]]),
    "no rows out": ("oil_parts", (40, [0.5, 0.25]), NOT_AVAILABLE),
    "down a range": ("oil_for_wax", ([100, 200, 300], [0.1, 0.2, 0.3]), [[10.0], [40.0], [90.0]]),
    "down a range, one value beside it": (
        "oil_for_wax",
        ([100, "7 oz"], "10%"),
        [[10.0], [pytest.approx(19.84466619)]],
    ),
    "a refused cell in a range": ("oil_for_wax", ([100, 200], [0.1, 8]), [[10.0], [Error("#N/A")]]),
    "a refused value beside a range": ("oil_for_wax", ([100, 200], 8), [[Error("#N/A")], [Error("#N/A")]]),
    "blank rows of a range": ("oil_for_wax", ([100, None, 300, None], 0.1), [[10.0], [""], [30.0], [""]]),
    "a blank in a row that is not": ("oil_for_wax", ([100, None], [0.1, 0.1]), [[10.0], [Error("#N/A")]]),
    "a block": ("oil_for_wax", ([[100, 200], [300, 400]], 0.1), [[10.0, 20.0], [30.0, 40.0]]),
    "ranges of two shapes": ("oil_for_wax", ([100, 200, 300], [0.1, 0.2]), NOT_AVAILABLE),
    "a range of one cell": ("oil_for_wax", ([500], 0.08), [[40.0]]),
    "exact conversion": ("convert", (1, "lb", "g"), [[453.59237]]),
    "why": (
        "why",
        ("OIL_FOR_WAX", 500, 8),
        "oil_for_wax: load is 8; it takes 0 to 0.5 of wax weight. Did you mean 8%?",
    ),
    "why, as it is typed": ("why", ("CANDLE_OIL_FOR_WAX", "8 fl oz", 0.08), "8 fl oz"),
    "why, as files have it": ("why", ("CANDLE.OILFORWAX", 500), "load is blank"),
    "why, of a range": ("why", ("oil_for_wax", [100, 200], [0.1, 8]), "row 2: oil_for_wax: load is 8"),
    "why, of an empty text": ("why", ("coin_digits", BLANK), 'currency is ""'),
    "why, without a reason": ("why", ("oil_for_wax", 500, 0.08), "no error"),
    "why, of no function": ("why", ("OIL", 500, 0.08), "there is no function OIL"),
}


@pytest.fixture(scope="module")
def answers(addin_office):
    told = calculate([(name, given) for name, given, _ in CASES.values()], addin_office)
    return dict(zip(CASES, told, strict=True))


@pytest.mark.parametrize("case", CASES)
def test_cells_and_ranges_go_in_and_answers_come_out(answers, case):
    expected = CASES[case][2]
    if isinstance(expected, str):
        assert expected in answers[case][0][0]
    else:
        assert answers[case] == expected
        assert [type(cell) for row in answers[case] for cell in row if isinstance(cell, str)] == [
            type(cell) for row in expected for cell in row if isinstance(cell, str)
        ]


def test_an_array_formula_of_ten_thousand_rows_is_one_call(addin_office, tmp_path):
    book, rows = Workbook(), 10_000
    for row in range(1, rows + 1):
        book.active.append([row, 0.1])
    book.active["C1"] = ArrayFormula(f"C1:C{rows}", f"=CANDLE.OILFORWAX(A1:A{rows},B1:B{rows})")
    book.save(tmp_path / "long.xlsx")
    values = addin_office.recalculated(tmp_path / "long.xlsx")
    assert all(values["Sheet", f"C{row}"] == pytest.approx(row / 10) for row in range(1, rows + 1))
