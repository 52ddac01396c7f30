"""Files that would take all of a machine's time or memory are refused in one line, before they are read.

What each costs at its full size was measured by hand: under 10 seconds and 1 GB.
"""

import hostile
import pytest
from click.testing import CliRunner
from earlier import FIXTURES

from candlecalc.commands.cli import main

BLANK = (FIXTURES / "blank-gb.xlsx").read_bytes()
TOO_LARGE = "too large or too oddly packed to be a season workbook"
TOO_MANY = "its workbook part is larger than any such part should be: it has very many names"
# A little over what is taken, so that the files are quickly made.
CHECKED = {
    "filled rows": lambda: hostile.filled_rows(BLANK, rows=14_000),
    "a custom part": lambda: hostile.custom_part(BLANK, size=151_000_000),
    "nested XML": lambda: hostile.nested(BLANK, size=2_000_000),
    "names": lambda: hostile.names(BLANK, count=41_000),
    "strings": lambda: hostile.strings(BLANK, count=121_000),
}
ADDED_TO = {
    "a custom part": (lambda: hostile.custom_part(BLANK, size=11_000_000), "what add-ins have stored in it is over 10"),
    "large parts": (lambda: hostile.custom_part(BLANK, size=101_000_000), "unpacked it is over 100 MB"),
    "nested XML": (lambda: hostile.nested(BLANK, size=2_000_000), TOO_MANY),
    "names": (lambda: hostile.names(BLANK, count=51_000), TOO_MANY),
}


def run(*given):
    return CliRunner().invoke(main, [str(each) for each in given])


@pytest.mark.parametrize("made", CHECKED.values(), ids=CHECKED)
def test_a_workbook_that_is_too_much_is_refused(tmp_path, made):
    path = tmp_path / "mine.xlsx"
    path.write_bytes(made())
    done = run("check", path)
    assert (done.exit_code, done.output) == (1, f"candlecalc: {path}: {TOO_LARGE}\n")


@pytest.mark.parametrize("made, words", ADDED_TO.values(), ids=ADDED_TO)
def test_a_workbook_that_is_too_much_gets_no_functions(tmp_path, made, words):
    path = tmp_path / "mine.xlsx"
    path.write_bytes(made())
    done = run("add-functions", path, tmp_path / "out.xlsx")
    assert (done.exit_code, done.output.count("\n"), words in done.output) == (1, 1, True)
    assert not (tmp_path / "out.xlsx").exists()


@pytest.mark.parametrize("made", [hostile.pipe, hostile.device], ids=["a pipe", "a link to a device"])
def test_what_is_no_file_is_not_waited_for(tmp_path, made):
    path, out = made(tmp_path / "mine.xlsx"), tmp_path / "out.xlsx"
    for given in (("check", path), ("show", path, "costs"), ("new", out, "--from", path), ("add-functions", path, out)):
        done = run(*given)
        assert (done.exit_code, done.output) == (1, f"candlecalc: {path}: it is a pipe or a device, no file\n")


def test_wide_rows_are_refused_at_the_first(tmp_path):
    path = tmp_path / "mine.xlsx"
    path.write_bytes(hostile.wide_rows(BLANK, rows=20))
    assert run("check", path).output == f"candlecalc: {path}: Materials is too large\n"


def test_a_cell_far_out_is_refused_and_an_empty_one_is_not(tmp_path):
    path = tmp_path / "mine.xlsx"
    for cell, code in ((b'<c r="XFD1048576" s="1"/>', 0), (b'<c r="XFD900"><v>1</v></c>', 1)):
        end = b'<row r="900">' + cell.replace(b"1048576", b"900") + b"</row></sheetData>"
        path.write_bytes(
            hostile.with_parts(BLANK, **{hostile.MATERIALS: lambda xml, end=end: xml.replace(b"</sheetData>", end)})
        )
        assert run("check", path).exit_code == code


DECLARED = {"plain": {}, "UTF-16": {"encoding": "utf-16"}, "after a remark": {"head": f"<!--{'wax ' * 5000}-->"}}


@pytest.mark.parametrize("how", DECLARED.values(), ids=DECLARED)
def test_a_tab_that_declares_an_entity_is_refused(tmp_path, how):
    path = tmp_path / "mine.xlsx"
    path.write_bytes(hostile.declaring(BLANK, **how))
    done = run("check", path)
    assert (done.exit_code, done.output.count("\n")) == (1, 1)
    assert f"{path}: it cannot be read as a workbook" in done.output
