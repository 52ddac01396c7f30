"""Excel through xlwings, as far as it runs without Excel: the VBA text, the calling, the folder."""

# ruff: noqa: S603  the programs started here are our own choice

import io
import re
import subprocess
import sys
from datetime import date
from functools import cache
from types import SimpleNamespace

import pytest
import xlwings
from click.testing import CliRunner
from faces import excel_book
from libreoffice import Error

from candlecalc.calc import REGISTRY
from candlecalc.commands.cli import main
from candlecalc.declaration.declared import HELP_LENGTH, Term
from candlecalc.faces.addins import wizard
from candlecalc.faces.excel import vba

TEXT = vba.module()
NA = Error("#N/A")
OWN = re.compile(r"^Function (\w+)\(([^)]*)\)\n.*?^End Function\n", re.MULTILINE | re.DOTALL)
FUNCTIONS = {found[1]: found for found in OWN.finditer(TEXT)}
NAMES = [*map(wizard.name, REGISTRY.values()), wizard.WHY]


# The VBA text


@cache
def as_xlwings_writes_it():
    """The text that xlwings generates for the module, without its branch for other programs than Excel."""
    file = io.StringIO()
    book = SimpleNamespace(Name="costs.xlsm")
    excel_book.windows("udfs").generate_vba_wrapper(vba.FUNCTIONS, excel_book.functions(), file, book)
    text = re.sub(r"    #Else\n.*?    #End If\n", "", file.getvalue(), flags=re.DOTALL)
    text = text.replace('    #If App = "Microsoft Excel" Then\n', "").replace("\n        ", "\n    ")
    return {found[1]: found[0] for found in OWN.finditer(text)}


@pytest.mark.parametrize("name", NAMES)
def test_a_function_is_as_xlwings_writes_it_but_for_errors(name):
    theirs = as_xlwings_writes_it()[name]
    ours = FUNCTIONS[name][0]
    if name != wizard.WHY:
        ours = ours.replace("CandleCells(", "").replace("Caller))", "Caller)")
        ours = ours.replace("CVErr(xlErrNA)", "Err.Description")
    assert ours == theirs


def test_every_function_is_there_once():
    assert sorted(FUNCTIONS) == sorted(NAMES)
    defined = re.findall(r"^(?:Private )?(?:Function|Sub) (\w+)", TEXT, re.MULTILINE)
    assert len({name.lower() for name in defined}) == len(defined)


@pytest.mark.parametrize("name", NAMES)
def test_no_argument_has_a_name_that_vba_or_the_text_uses(name):
    given = FUNCTIONS[name][2].replace("Optional ", "").split(", ")
    used = set(re.findall(r"\w+", re.sub(r'"[^"]*"|Array\(.*?\)', "", FUNCTIONS[name][0].partition("\n")[2])))
    assert not {one.lower() for one in given} & ({word.lower() for word in used} | set(vba.KEPT.split()))
    assert len({one.lower() for one in given}) == len(given) <= 60  # the most that a VBA procedure takes


def test_a_name_that_vba_keeps_is_changed():
    assert vba.parameters(REGISTRY["weigh_out"]) == ["each_", "count", "step"]
    assert "Function CANDLE_WEIGH_OUT(each_, count, step)" in TEXT


def test_no_line_or_procedure_is_longer_than_vba_takes():
    # VBA's limits: 1023 characters a line, 24 continuations, 64 kB a procedure.
    assert max(map(len, TEXT.splitlines())) <= 1023
    for statement in re.findall(r"(?:.* _\n)+.*", TEXT):
        assert statement.count(" _\n") <= 24
    assert max(map(len, re.split(r"End (?:Function|Sub)\n", TEXT))) < 32_000
    assert TEXT.isascii()


def test_a_sign_beyond_the_plain_ones_is_given_by_its_number():
    assert vba._quoted('80 °C, "hot"') == '"80 " & ChrW(176) & "C, ""hot"""'


def test_the_texts_for_errors_are_excels_own():
    # xlwings' table of Excel's errors as they come over COM.
    numbers = {text: excel_book.over_com(Error(text)) for text in vba.ERRORS}
    assert {number: text for text, number in numbers.items()} == excel_book.windows("_xlwindows").cell_errors
    assert excel_book.replaced() == vba.ERRORS


TOLD = re.compile(r'CandleTell ("\w+"), (".*"), _\n +(".*"), _\n +Array\(("(?:.*, _\n)*.*")\)')


@pytest.mark.parametrize("name", NAMES)
def test_the_help_is_what_xlwings_knows_of_the_function(name):
    told = {json_of(found[1]): found for found in TOLD.finditer(TEXT)}
    known = getattr(excel_book.functions(), name).__xlfunc__
    helps = [json_of(line) for line in told[name][4].split(", _\n        ")]
    assert json_of(told[name][3]) == known["ret"]["doc"]
    assert helps == [argument["doc"] for argument in known["args"]]
    assert json_of(told[name][2]) == known["category"]
    assert all(0 < len(text) <= HELP_LENGTH for text in [known["ret"]["doc"], *helps])


def json_of(literal):
    """A VBA text as Python has it."""
    return literal[1:-1].replace('""', '"')


def test_help_that_is_too_long_is_cut_at_a_word():
    text = wizard._fitted("a word and " * 30)
    assert len(text) <= HELP_LENGTH and text.endswith(" word...")


# Cells in, cells out, through xlwings' own code


CASES = [  # function, cells, what stands in the cells
    ("oil_for_wax", [500, 0.08], [[40]], "two numbers"),
    ("oil_for_wax", ["12 oz", "8 %"], [[pytest.approx(12 * 28.349523125 * 0.08)]], "an ounce is 28.349523125 g"),
    ("oil_for_wax", [0, 0.08], [[0]], "zero is a number"),
    ("oil_for_wax", [None, 0.08], [[NA]], "a blank is none"),
    ("oil_for_wax", ["", 0.08], [[NA]], "nor is an empty text"),
    ("oil_for_wax", [True, 0.08], [[NA]], "nor is TRUE"),
    ("oil_for_wax", [500, 8], [[NA]], "out of range"),
    ("oil_for_wax", [Error("#DIV/0!"), 0.08], [[Error("#DIV/0!")]], "an error stays the error it is"),
    ("oil_for_wax", [[500, None, 0, 600], 0.08], [[40], [""], [0], [48]], "a column; a blank stays blank"),
    ("oil_for_wax", [[[500, 600]], 0.08], [[40, 48]], "a row"),
    ("oil_for_wax", [[[500, 600], [1, 2]], 0.1], [[50, 60], [0.1, 0.2]], "a block"),
    ("oil_for_wax", [[500, -1, Error("#REF!"), "ten"], 0.08], [[40], [NA], [Error("#REF!")], [NA]], "errors in place"),
    ("oil_for_wax", [[500, 600], [0.08, 0.1]], [[40], [60]], "two columns, row by row"),
    ("oil_for_wax", [[[500]], [[0.08]]], [[40]], "a range of one cell is that cell"),
    ("oil_for_wax", [[500, 600], Error("#NAME?")], [[Error("#NAME?")]] * 2, "an error beside a range"),
    ("highest_on_wax", [0.2], [[0.2]], "an argument left out"),
    ("highest_on_wax", [0.2, "of total"], [[0.25]], "a choice"),
    ("highest_on_wax", [0.2, "of air"], [[NA]], "no such choice"),
    ("price_for_margin", [6, 0.5, 0.1, 0.45, None, None, 2], [[16.9]], "two left out: (6 + 0.45 + 2)/0.5"),
    ("parts_cost", [[100, 10], [0.01, 0.5]], [[6]], "lists"),
    ("parts_cost", [[[100, 10]], [0.01, 0.5]], [[6]], "a row and a column"),
    ("parts_cost", [[100, 10, None], [0.01, 0.5, None]], [[6]], "blanks at the end of a list"),
    ("parts_cost", [[100, None, 10], [0.01, 1, 0.5]], [[NA]], "a blank within a list"),
    ("parts_cost", [[100, Error("#REF!")], [0.01, 0.5]], [[NA]], "an error within a list"),
    ("parts_cost", [[100, "10 oz"], [0.01, 0.5]], [[NA]], "a weight where amounts have no unit"),
    ("oil_parts", [40, [0.75, 0.25]], [[30], [10]], "a column out"),
    ("oil_parts", [40, [[0.75, 0.25]]], [[30], [10]], "of a row, too"),
    ("oil_parts", [40, [0.75, 0.75]], [[NA]], "shares over the whole"),
    ("entries_out_of_balance", [["A", "A"], [5, None], [None, 5]], [[""]], "no rows: a blank cell"),
    ("entries_out_of_balance", [["A", "A"], [5, None], [None, 4]], [["A", 5, 4, 1]], "a row of several values"),
]


@pytest.mark.parametrize(("name", "cells", "shown", "what"), CASES, ids=[case[3] for case in CASES])
def test_cells_come_through_xlwings(name, cells, shown, what):
    (rows,) = excel_book.calculate([(name, cells)])
    assert flat(rows) == flat(shown)
    assert [len(row) for row in rows] == [len(row) for row in shown] or flat(rows) == [NA]
    for cell, expected in zip(flat(rows), flat(shown), strict=True):
        assert isinstance(cell, Error) == isinstance(expected, Error)


def flat(rows):
    return [cell for row in rows for cell in row]


@pytest.mark.parametrize("error", vba.ERRORS)
def test_each_of_excels_errors_stays_what_it_is(error):
    assert excel_book.calculate([("oil_for_wax", [500, Error(error)])]) == [[[error]]]


def test_an_error_that_only_later_excels_know_is_no_number():
    spill = 0x800A0000 - 2**32 + 2045  # xlErrSpill, as it comes over COM
    cell = excel_book.Range(1)
    cell.Value2 = spill
    assert excel_book.call("round_money", [cell, excel_book.LEFT_OUT]) == "#N/A"
    assert excel_book.call("round_money", [spill, excel_book.LEFT_OUT]) == "#N/A"


def test_a_range_in_pieces_is_refused_and_not_read_in_part():
    pieces = excel_book.Range([500, 600])
    pieces.Areas.Count = 2
    assert excel_book.call("oil_for_wax", [pieces, 0.08]) == "#VALUE!"


def test_values_typed_into_the_formula_come_as_they_are():
    # A row typed as {500,600}, or worked out, comes with one dimension; a column with two.
    assert excel_book.call("oil_for_wax", [500.0, 0.08]) == 40
    assert excel_book.call("oil_for_wax", [(500.0, 600.0), 0.08]) == [40, 48]
    assert excel_book.call("oil_for_wax", [((500.0,), (600.0,)), 0.08]) == [[40], [48]]
    assert excel_book.call("oil_for_wax", [excel_book.over_com(NA), 0.08]) == "#N/A"


def test_why_says_it_in_words():
    (((words,),), ((none,),), ((unknown,),), ((broken,),)) = excel_book.calculate(
        [
            (wizard.WHY, ["oil_for_wax", 500, 8]),
            (wizard.WHY, ["CANDLE_OIL_FOR_WAX", 500, 0.08]),
            (wizard.WHY, ["oil_for_wx", 500, 0.08]),
            (wizard.WHY, ["oil_for_wax", Error("#REF!"), 0.08]),
        ]
    )
    assert words == "oil_for_wax: load is 8; it takes 0 to 0.5 of wax weight. Did you mean 8%?"
    assert none == "no error"
    assert unknown == "there is no function oil_for_wx"
    assert broken == "oil_for_wax: wax is #REF!; it takes 0 or more g."


def test_days_are_numbers_in_cells():
    day = Term("date", "a day")
    read = xlwings.conversion.read(
        xlwings.Range(impl=excel_book.windows("_xlwindows").Range(xl=excel_book.Range(date(2026, 3, 14)))),
        None,
        excel_book.functions().CANDLE_OIL_FOR_WAX.__xlfunc__["args"][0]["options"],
    )
    assert read == 46095 and day.read(read) == date(2026, 3, 14)


# The VBA text run: LibreOffice's Basic takes much of VBA

BASIC = "Rem Attribute VBA_ModuleType={}\nOption VBASupport 1\n"
SERVER = """\
Option ClassModule
Public Function CallUDF(module, name, given, book, caller)
    If name = "CANDLE_OIL_FOR_WAX" Then
        CallUDF = Handed(given(0))
    ElseIf name = "CANDLE_WAX_FOR_OIL" Then
        Err.Raise 1000, "server", "Python was not found"
    ElseIf name = "CANDLE_WHY" Then
        Err.Raise 1000, "server", "Python was not found"
    Else
        CallUDF = "#N/A"
    End If
End Function
"""
PROBE = """\
Function XLPy()
    Set XLPy = New Server
End Function

Function Shown(cell)
    Dim wide, r, c, told_so_far
    If Not IsArray(cell) Then
        Shown = Told(cell)
        Exit Function
    End If
    wide = -1
    On Error Resume Next
    wide = UBound(cell, 2)
    On Error GoTo 0
    For r = LBound(cell) To UBound(cell)
        If wide = -1 Then
            told_so_far = told_so_far & Told(cell(r)) & " "
        Else
            For c = LBound(cell, 2) To wide
                told_so_far = told_so_far & Told(cell(r, c)) & " "
            Next c
            told_so_far = told_so_far & "/ "
        End If
    Next r
    Shown = told_so_far
End Function

Function Told(cell)
    If IsError(cell) Then
        Told = CStr(cell)
    Else
        Told = TypeName(cell) & ":" & cell
    End If
End Function

Function OilShown(place)
    OilShown = Shown(CANDLE_OIL_FOR_WAX(place, 1))
End Function
"""


def as_basic(text):
    """The text as LibreOffice's Basic takes it: without the first line, which names it; with names for
    arguments that are no words of that Basic's own; and, as no formula calls, with a cell that does."""
    text = text.partition("\n")[2].replace("Application.Caller", 'ThisWorkbook.Sheets(1).Range("A1")')
    text = re.sub(r"^Function CANDLE.*|Array\(.*?\), ThisWorkbook", _renamed, text, flags=re.MULTILINE)
    return BASIC.format("VBAModule") + text


def _renamed(found):
    return re.sub(r"(?<=[(\s])(\w+)(?=[,)])", r"\1_x", found[0])


def handed(answers):
    """A Basic function that hands over one of these answers, as the server's arrays reach VBA."""
    lines = ["Function Handed(place)", "    Select Case place"]
    for place, answer in enumerate(answers):
        lines += [f"    Case {place}", *(f"        {line}" for line in _built(answer, f"a{place}"))]
    return "\n".join([*lines, "    End Select", "End Function", ""])


def _built(answer, name):
    if not isinstance(answer, list):
        return [f"Handed = {_literal(answer)}"]
    if not isinstance(answer[0], list):
        return [f"Handed = Array({', '.join(map(_literal, answer))})"]
    cells = [f"{name}({r}, {c}) = {_literal(cell)}" for r, row in enumerate(answer) for c, cell in enumerate(row)]
    return [f"Dim {name}(0 To {len(answer) - 1}, 0 To {len(answer[0]) - 1}) As Variant", *cells, f"Handed = {name}"]


def _literal(cell):
    return f'"{cell}"' if isinstance(cell, str) else repr(cell)


ANSWERS = [  # cells of oil_for_wax, what the VBA text makes of the server's answer
    ([500, 0.08], "Double:40"),
    ([500, 8], "Error 2042"),
    ([Error("#DIV/0!"), 0.08], "Error 2007"),
    ([[500, None, 8, -1, Error("#REF!")], 0.08], "Double:40 / String: / Double:0.64 / Error 2042 / Error 2023 / "),
    ([[[500, -1]], 0.08], "Double:40 Error 2042 "),
    ([[[500, -1], [Error("#NUM!"), 1]], 0.08], "Double:40 Error 2042 / Error 2036 Double:0.08 / "),
]


@pytest.fixture(scope="module")
def basic(office):
    """What formulas over the VBA text show in LibreOffice, where a stub stands for xlwings."""
    answers = [excel_book.call("oil_for_wax", excel_book.as_given("oil_for_wax", cells)) for cells, _ in ANSWERS]
    # That Basic takes a module of over 200 kB only every other time; Excel's limit is on procedures.
    functions, told, helps = TEXT.partition("' Run this once")
    modules = {
        "CandleFunctions": as_basic(functions),
        "CandleHelps": BASIC.format("VBAModule") + told + helps,
        "Server": BASIC.format("VBAClassModule") + SERVER,
        "Probe": BASIC.format("VBAModule") + PROBE + handed(answers),
    }
    return lambda formulas: office.shown(modules, formulas)


def test_texts_for_errors_become_error_values_one_by_one(basic):
    shown = basic([f"=OILSHOWN({place})" for place in range(len(ANSWERS))])
    assert shown == [expected for _, expected in ANSWERS]


def test_every_function_runs_and_gives_an_error_value(basic):
    # 2042 is #N/A among VBA's errors; a LibreOffice cell can only show it as text.
    calls = [f"={wizard.name(one)}({';'.join('1' for _ in one.arguments)})" for one in REGISTRY.values()]
    few = [f"={wizard.name(one)}({';'.join(_required(one))})" for one in REGISTRY.values()]
    calls = [call for call in calls + few if "CANDLE_OIL_FOR_WAX" not in call]
    assert basic(calls) == ["Error 2042"] * len(calls)


def _required(declared):
    return ["1" for argument in declared.arguments.values() if not argument.optional]


def test_where_python_is_not_found_why_says_so(basic):
    shown = basic(["=CANDLE_WAX_FOR_OIL(1;1)", '=CANDLE_WHY("wax_for_oil";1;1)'])
    assert shown[0] == "Error 2042"
    assert "Python was not found" in shown[1]


# The folder


def written(folder, *options):
    return CliRunner().invoke(main, ["addin", "excel", str(folder), *options])


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    folder = tmp_path_factory.mktemp("excel") / "candles"
    result = written(folder)
    assert (result.exit_code, result.output) == (0, f"{folder}: read INSTALL.txt\n")
    return folder


def contents(folder):
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()}


def test_the_folder_holds_the_text_the_module_and_what_that_needs(folder):
    files = contents(folder)
    assert {"INSTALL.txt", "candles.bas", "personal/candles.py", "personal/candlecalc/calc/price.py"} <= set(files)
    assert files["candles.bas"].replace(b"\r\n", b"\n").decode("ascii") == TEXT
    for name in ("INSTALL.txt", "candles.bas"):
        assert files[name].count(b"\n") == files[name].count(b"\r\n") > 50
        files[name].decode("ascii")


def test_the_folder_is_the_same_each_time(folder, tmp_path):
    written(tmp_path / "again")
    assert contents(tmp_path / "again") == contents(folder)


def test_nothing_is_written_over_without_force(folder):
    before = contents(folder)
    (folder / "candles.bas").write_text("mine")
    result = written(folder)
    assert result.exit_code == 1
    assert result.stderr.startswith("candlecalc: ") and "is there already; --force writes over it" in result.stderr
    assert (folder / "candles.bas").read_text() == "mine"
    assert written(folder, "--force").exit_code == 0
    assert contents(folder) == before


ALONE = """
import sys
sys.path.insert(0, sys.argv[1])
import candles, candlecalc
given = candles.CANDLE_OIL_FOR_WAX("12 oz", 0.08), candles.CANDLE_OIL_FOR_WAX(500.0, 8.0)
print(candlecalc.__file__.startswith(sys.argv[1]), "pint" in sys.modules, given)
print(sum(name.startswith("CANDLE_") for name in dir(candles)))
"""


def test_the_module_for_python_inside_excel_needs_nothing_else_of_ours(folder):
    # Run here with xlwings as it is on this machine; in Excel itself it was not run.
    command = [sys.executable, "-B", "-c", ALONE, str(folder / "personal")]
    run = subprocess.run(command, capture_output=True, text=True, timeout=60)
    assert run.stdout == f"True False ([[27.2155422]], [['#N/A']])\n{len(REGISTRY) + 1}\n", run.stderr


def test_python_inside_excel_hands_over_errors_and_blanks_its_own_way():
    # As xlwings 0.37.8 reads them there: an error as a record, a blank as an empty text or nothing.
    class Engine:
        name = "inside"

        def clean_value_data(self, rows, dates, empty, numbers, errors_as_text):
            assert errors_as_text
            plain = {"": empty, None: empty}
            return [
                [cell["basicValue"] if isinstance(cell, dict) else plain.get(cell, cell) for cell in row]
                for row in rows
            ]

    xlwings.engines.add(xlwings.Engine(impl=Engine()))
    options = excel_book.functions().CANDLE_OIL_FOR_WAX.__xlfunc__["args"][0]["options"]
    error = {"type": "Error", "basicType": "Error", "basicValue": "#DIV/0!"}
    read = xlwings.conversion.read(None, [[5, ""], [error, "12 oz"]], options, engine_name="inside")
    assert read[0] == [5, None] and read[1][1] == "12 oz"
    assert repr(read[1][0]) == "#DIV/0!"


def test_the_text_on_installing_names_what_is_there(folder):
    text = (folder / "INSTALL.txt").read_text(encoding="ascii")
    for name in ("candles.bas", "CandleFunctions", "CandleHelp", "personal", "xlwings addin install"):
        assert name in text
    assert 'Attribute VB_Name = "CandleFunctions"' in TEXT and "Sub CandleHelp()" in TEXT
    assert all(len(line) <= 80 for line in text.splitlines())


SHOWS = re.compile(r"^ +=(CANDLE_\w+)\((.*)\) +shows (.*)$", re.MULTILINE)


def test_the_examples_of_the_text_on_installing_show_what_they_say(folder):
    shown = SHOWS.findall((folder / "INSTALL.txt").read_text())
    assert len(shown) == 3
    for name, given, expected in shown:
        values = [value.strip() for value in given.split(",")]
        cells = [
            float(value.rstrip("%")) / (100 if "%" in value else 1) if '"' not in value else value[1:-1]
            for value in values
        ]
        (((cell,),),) = excel_book.calculate([(name.removeprefix(wizard.PREFIX).lower(), cells)])
        assert str(cell).startswith(expected.rstrip("."))
