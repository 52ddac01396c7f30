"""The functions workbook: a row for each function, its stored answer right, and the answer follows its cells.

ironcalc calculates the very file; Excel was not run.
"""

import io
import math
import re
import subprocess
import zipfile
from datetime import date

import ironcalc
import openpyxl
import pytest
from click.testing import CliRunner
from openpyxl.utils import range_boundaries
from openpyxl.utils.datetime import to_excel

from candlecalc.calc import REGISTRY
from candlecalc.commands.cli import main
from candlecalc.faces.addins import wizard
from candlecalc.faces.lambdas import functions_book
from candlecalc.faces.lambdas import names as lambdas
from candlecalc.workbook.cells.layout import FIRST_ROW

NATIVE = {wizard.name(each): each for each in REGISTRY.values() if each.native and not each.instead}
ANSWER = list(functions_book.HEADS).index("Answer") + 1
TAB = 1  # Functions is the second


@pytest.fixture(scope="module")
def made():
    return functions_book.made()


@pytest.fixture(scope="module")
def book(made):
    """The same, read; not to be changed."""
    return openpyxl.load_workbook(io.BytesIO(made))


@pytest.fixture(scope="module")
def rows(made, book):
    """Each function's row: the number of the row, the call, the stored answer."""
    calls = book["Functions"]
    values = openpyxl.load_workbook(io.BytesIO(made), data_only=True)["Functions"]
    found = {}
    for row in range(FIRST_ROW, calls.max_row + 1):
        found[calls.cell(row, 1).value] = row, calls.cell(row, ANSWER).value, values.cell(row, ANSWER).value
    return found


@pytest.fixture(scope="module")
def model(made, tmp_path_factory):
    path = tmp_path_factory.mktemp("book") / "functions.xlsx"
    path.write_bytes(made)
    loaded = ironcalc.load_from_xlsx(str(path), "en", "UTC", "en")
    loaded.evaluate()
    return loaded


def test_every_function_that_a_cell_can_say_has_its_row_and_its_name(book, rows):
    assert set(rows) == set(NATIVE)
    assert {name: (held.attr_text, bool(held.hidden)) for name, held in book.defined_names.items()} == {
        named.name: (named.definition, named.hidden) for named in lambdas.every()
    }
    assert [row[0].value for row in book["Definitions"].iter_rows(min_row=FIRST_ROW)] == sorted(NATIVE)


@pytest.mark.parametrize("name", NATIVE)
def test_an_answer_is_stored_and_is_what_the_name_comes_to(name, rows, model):
    row, call, stored = rows[name]
    assert call.startswith(f"={name}(")
    assert model.get_cell_formula(TAB, row, ANSWER).upper() == call
    # The engines' normal distributions agree to some eleven digits.
    assert math.isclose(model.get_cell_value(TAB, row, ANSWER), number(stored), rel_tol=1e-10, abs_tol=1e-15)


@pytest.mark.parametrize("name", NATIVE)
def test_what_stands_in_the_yellow_cells_gives_the_stored_answer_in_python(name, rows, book):
    _, call, stored = rows[name]
    sheet, given = book["Functions"], {}
    for argument, reference in zip(NATIVE[name].arguments.values(), re.findall(r"[(,]([^,)]*)", call), strict=False):
        if reference:
            left, top, right, _ = range_boundaries(reference)
            cells = [sheet.cell(top, column) for column in range(left, right + 1)]
            assert all(not cell.protection.locked for cell in cells)
            assert all(cell.number_format.startswith(f'"{argument.name} "') for cell in cells)
            values = [cell.value for cell in cells]
            given[argument.name] = values if argument.term.many else values[0]
    assert number(NATIVE[name].checked(**given)) == pytest.approx(number(stored))


def number(value):
    """An answer as the number in its cell, where a day too is one."""
    return to_excel(value) if isinstance(value, date) else value


def test_a_changed_cell_changes_the_answer_and_a_slip_gives_an_error(rows, model):
    row, call, stored = rows["CANDLE_OIL_FOR_WAX"]
    wax, load = re.findall(r"([A-Z]+)[0-9]+", call)
    column = openpyxl.utils.column_index_from_string
    model.set_user_input(TAB, row, column(wax), "1000")
    model.evaluate()
    assert model.get_cell_value(TAB, row, ANSWER) == pytest.approx(stored * 1000 / 500)
    model.set_user_input(TAB, row, column(load), "8")
    model.evaluate()
    assert model.get_cell_value(TAB, row, ANSWER) == "#N/A"


def test_nothing_is_calculated_in_it_but_the_calls(book):
    formulas = {
        (sheet.title, cell.column)
        for sheet in book
        for cells in sheet.iter_rows()
        for cell in cells
        if cell.data_type == "f"
    }
    assert formulas == {("Functions", ANSWER)}
    assert book.calculation.fullCalcOnLoad


def test_it_has_no_more_number_formats_than_every_excel_takes(made):
    # Microsoft, "Excel specifications and limits": 200 to 250 in a workbook, by the language that it is installed in.
    styles = zipfile.ZipFile(io.BytesIO(made)).read("xl/styles.xml")
    assert styles.count(b"<numFmt ") <= 210


def test_the_same_bytes_each_time(made):
    assert functions_book.made() == made


def test_no_text_is_cut_by_its_column(made, office, tmp_path):
    # With values for calls, which the office does not calculate: a number too wide for its column shows as ###.
    book = openpyxl.load_workbook(io.BytesIO(made), data_only=True)
    book.save(tmp_path / "values.xlsx")
    pdf = office.pdf(tmp_path / "values.xlsx")
    told = subprocess.run(["pdftotext", "-layout", str(pdf), "-"], check=True, capture_output=True, text=True).stdout  # noqa: S603, S607
    assert "CANDLE_OIL_FOR_WAX" in told
    assert "###" not in told


def test_the_command_writes_it_and_writes_over_nothing(tmp_path, made):
    out = tmp_path / "functions.xlsx"
    assert CliRunner().invoke(main, ["functions", "--workbook", str(out)]).exit_code == 0
    assert out.read_bytes() == made
    assert zipfile.is_zipfile(out)
    again = CliRunner().invoke(main, ["functions", "--workbook", str(out)])
    assert (again.exit_code, "--force writes over it" in again.stderr) == (2, True)
    assert CliRunner().invoke(main, ["functions", "--workbook", str(out), "--force"]).exit_code == 0
    both = CliRunner().invoke(main, ["functions", "oil_for_wax", "--workbook", str(out)])
    assert both.exit_code == 2
