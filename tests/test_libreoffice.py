"""The judge itself: it must calculate anew, tell errors apart, and carry a typed value through."""

# ruff: noqa: S603, S607  the programs started here are our own choice

import datetime
import os
import re
import shutil
import signal
import subprocess
import zipfile

import libreoffice
import pytest
from libreoffice import Error, Office, OfficeError, stored
from openpyxl import Workbook, load_workbook


@pytest.fixture
def book(tmp_path):
    """40 entered in A1; formulas beside it, all with the stored value 999 but the last two."""
    made = Workbook()
    sheet = made.active
    sheet.title = "Pots"
    sheet["A1"], sheet["B1"], sheet["C1"] = 40, "=A1*2", "=B1+1"
    sheet["A2"], sheet["B2"] = "#N/A", "=NA()"
    sheet["A2"].data_type = "s"  # a text
    sheet["A3"], sheet["B3"] = datetime.date(2025, 10, 1), "=A3+1"
    sheet["A4"], sheet["B4"] = "soy", '=IF(A4="","none","")'
    sheet["B5"], sheet["B6"] = "=1/0", "=SUM(B1:B2)"
    made.create_sheet("Far")["AB30"] = "=Pots!C1=81"
    made.save(tmp_path / "book.xlsx")
    return _with_stored_values(tmp_path / "book.xlsx", 999)


def _with_stored_values(path, value):
    stale = path.with_name("stale.xlsx")
    with zipfile.ZipFile(path) as before, zipfile.ZipFile(stale, "w") as after:
        for name in before.namelist():
            text = before.read(name)
            if name.startswith("xl/worksheets/"):
                text = re.sub(rb"</f><v\s*/>|</f><v></v>", b"</f><v>%d</v>" % value, text)
            after.writestr(name, text)
    return stale


def test_stored_values_are_not_believed(office, book):
    assert stored(book)["Pots", "B1"] == 999.0
    values = office.recalculated(book)
    assert values["Pots", "B1"] == 80.0
    assert values["Pots", "C1"] == 81.0
    assert values["Far", "AB30"] == 1.0  # TRUE
    assert 999.0 not in values.values()


def test_a_plain_conversion_would_have_believed_them(book, tmp_path, office):
    # The reason for this harness: without a forced calculation the office passes stored values on.
    profile = (tmp_path / "profile").as_uri()
    command = ["soffice", f"-env:UserInstallation={profile}", "--headless", "--convert-to", "csv", "--outdir"]
    done = subprocess.run(
        [*command, str(tmp_path), str(book)], capture_output=True, timeout=120, env=libreoffice.surroundings()
    )
    assert done.returncode == 0
    assert (tmp_path / "stale.csv").read_text().startswith("40,999,999")


def test_errors_are_told_from_texts_that_look_alike(office, book):
    values = office.recalculated(book)
    assert values["Pots", "B2"] == "#N/A" and isinstance(values["Pots", "B2"], Error)
    assert values["Pots", "A2"] == "#N/A" and not isinstance(values["Pots", "A2"], Error)
    assert values["Pots", "B5"] == Error("#DIV/0!")
    assert isinstance(values["Pots", "B6"], Error)


def test_empty_cells_are_left_out_and_empty_texts_are_not(office, book):
    values = office.recalculated(book)
    assert values["Pots", "B4"] == ""
    assert ("Pots", "A5") not in values
    assert values["Pots", "B3"] == 45932.0  # the day after 1 October 2025


def test_an_edit_flows_through(office, book):
    changes = {
        ("Pots", "A1"): 50,
        ("Pots", "A4"): None,
        ("Pots", "A2"): "=A1+5",
        ("Pots", "A3"): datetime.date(2026, 1, 1),
    }
    values = office.edited(book, changes)
    assert values["Pots", "C1"] == 101.0
    assert values["Far", "AB30"] == 0.0
    assert values["Pots", "A2"] == 55.0
    assert values["Pots", "B4"] == "none" and ("Pots", "A4") not in values
    assert values["Pots", "B3"] == 46024.0


def test_each_set_of_edits_starts_from_the_file(office, book):
    first, second, third = office.edited_each(
        book, [{("Pots", "A1"): 50, ("Pots", "A5"): 1}, {("Pots", "A4"): "8%", ("Pots", "B1"): 3}, {}]
    )
    assert first["Pots", "A5"] == 1.0 and first["Pots", "C1"] == 101.0
    assert ("Pots", "A5") not in second
    assert second["Pots", "A4"] == "8%" and second["Pots", "C1"] == 4.0
    assert third == office.recalculated(book)


def test_several_files_are_read_in_one_go(office, book, tmp_path):
    other = shutil.copy(book, tmp_path / "other.xlsx")
    first, second = office.recalculated_all([book, other])
    assert first == second and first["Pots", "C1"] == 81.0


def test_a_saved_copy_holds_calculated_values(office, book):
    saved = office.saved_as(book, "xlsx", {("Pots", "A1"): 10})
    assert load_workbook(saved, data_only=True)["Pots"]["C1"].value == 21
    ods = office.saved_as(book, "ods")
    assert zipfile.ZipFile(ods).read("mimetype") == b"application/vnd.oasis.opendocument.spreadsheet"
    assert office.recalculated(ods)["Pots", "C1"] == 81.0


def test_pages_are_set_in_a_face_as_wide_as_calibri(office, book):
    fonts = subprocess.run(["pdffonts", office.pdf(book)], check=True, capture_output=True, text=True).stdout
    assert "Carlito" in fonts


def test_a_locked_cell_refuses_to_be_typed_into(office, tmp_path):
    made = Workbook()
    made.active["A1"] = 1
    made.active.protection.enable()
    made.save(tmp_path / "locked.xlsx")
    with pytest.raises(OfficeError, match=r"locked\.xlsx: ValueError: Sheet, A1 is locked"):
        office.edited(tmp_path / "locked.xlsx", {("Sheet", "A1"): 2})


def test_what_cannot_be_done_is_said(office, book, tmp_path):
    with pytest.raises(OfficeError, match="there is no sheet Jars"):
        office.edited(book, {("Jars", "A1"): 2})
    with pytest.raises(FileNotFoundError):
        office.recalculated(tmp_path / "none.xlsx")
    assert office.recalculated(book)["Pots", "B1"] == 80.0  # the office still serves


def test_an_office_that_gives_no_answer_is_stopped(book):
    slow = Office(seconds=0.01)
    with pytest.raises(OfficeError, match=r"gave no answer in 0\.01 seconds"):
        slow.recalculated(book)
    assert slow._worker is None
    slow.close()


def kill(office, *, worker):
    """Kill an office, with or without the process that hands it the questions."""
    group = office._worker.pid
    told = subprocess.run(["pgrep", "-g", str(group)], check=True, capture_output=True, text=True).stdout
    for process in map(int, told.split()):
        if worker or process != group:
            os.kill(process, signal.SIGKILL)


@pytest.mark.parametrize("worker", [False, True], ids=["the office", "all of its processes"])
def test_an_office_that_is_lost_is_started_anew_and_answers(office, book, worker):
    before = office.recalculated(book)
    kill(office, worker=worker)
    with pytest.warns(UserWarning, match="LibreOffice stopped. It is started anew and asked once more."):
        assert office.recalculated(book) == before


def test_a_question_that_loses_the_office_twice_fails_and_the_next_is_answered(office, book, monkeypatch):
    before, start = office.recalculated(book), Office._start

    def start_in_vain(office):
        start(office)
        kill(office, worker=False)

    kill(office, worker=False)
    with monkeypatch.context() as patch:
        patch.setattr(Office, "_start", start_in_vain)
        with pytest.warns(UserWarning), pytest.raises(OfficeError, match="LibreOffice stopped"):
            office.recalculated(book)
    assert office.recalculated(book) == before


def test_a_missing_office_is_named(monkeypatch, book):
    monkeypatch.setattr(shutil, "which", lambda name: None)
    with pytest.raises(OfficeError, match="LibreOffice is not installed"):
        libreoffice._soffice()


def test_a_virtual_environment_of_the_shell_is_not_the_offices(monkeypatch, tmp_path):
    (tmp_path / "bin").mkdir()
    (tmp_path / "pyvenv.cfg").touch()
    there = os.environ["PATH"]
    monkeypatch.setenv("PATH", f"{tmp_path / 'bin'}{os.pathsep}{there}")
    for name in ("VIRTUAL_ENV", "PYTHONHOME", "PYTHONPATH"):
        monkeypatch.setenv(name, str(tmp_path))
    found = libreoffice.surroundings()
    assert not {"VIRTUAL_ENV", "PYTHONHOME", "PYTHONPATH"} & found.keys()
    assert str(tmp_path) not in found["PATH"] and shutil.which("soffice", path=found["PATH"])


def test_two_offices_may_have_one_file_open(office, office_in, book):
    assert office.recalculated(book) == office_in("de-DE").recalculated(book) == office.recalculated(book)


def test_a_file_that_is_written_anew_is_opened_anew(office, book):
    before = office.recalculated(book)["Pots", "B1"]
    made = load_workbook(book)
    made["Pots"]["A1"] = 50
    made.save(book)
    assert (before, office.recalculated(book)["Pots", "B1"]) == (80, 100)


def test_what_was_typed_before_a_refusal_is_not_kept(office, book):
    with pytest.raises(OfficeError, match="there is no sheet Pans"):
        office.edited(book, {("Pots", "A1"): 7, ("Pans", "A1"): 1})
    assert office.recalculated(book)["Pots", "B1"] == 80
