"""LibreOffice as the judge: what a workbook's cells come to when every formula is calculated anew.

    office.recalculated(path)                              {("Melts", "B4"): 40.0, ...}
    office.recalculated_all([path, other])                 the same for several files
    office.edited(path, {("Melts", "B4"): "=2*20"})        the same after typing into cells (None clears one)
    office.edited_each(path, [changes, other_changes])     one file opened once; each set from the file as it is,
                                                           and calculated once, or as many `times` as are given;
                                                           of some `tabs`, if they are named
    office.after_gestures(path, [[("cut", "Vessels", "A4:N4"), ("paste", "Vessels", "A20")], ...])
                                                           the same after each sequence of what a person does
    office.opened(path)                                    what it shows on opening a file, not calculated
    office.saved_as(path, "ods")                           the path of a copy that LibreOffice saved
    office.pdf(path)                                       the path of its pages as PDF
    office.shown({"Module1": text}, ["=F(1)"])             what formulas over VBA functions show in a new book
    office.functions("CANDLE_")                            what the function wizard says of functions so named
    office.seconds_to_calculate(path, rounds)              how long each calculation of the whole file takes
    office.processor_seconds(path, changes)                of a processor: to open it, to calculate all, for each change
    stored(file)                                           what the file holds, in the same form, not calculated

Numbers, dates and TRUE are floats, as the office keeps them; an error is an `Error`, a text that equals
"#N/A" and the like. Empty cells are left out; a formula that gives an empty text is there as "".

One office serves a test process: it is started at the first question, under a profile of its own. One that is lost,
killed or crashed, is started anew and asked once more, so that what it was lost at is all that can fail.
`Office(addin=path)` is one that has that .oxt installed, `Office(comes_with=folder)` one that comes with those unpacked
in a folder, which is quicker; `Office(locale="de-DE")` one that reads and shows numbers as they are written there.
"""

import atexit
import contextlib
import datetime
import json
import os
import re
import selectors
import shutil
import signal
import subprocess
import tempfile
import time
import warnings
import zipfile
from collections.abc import Iterable, Mapping
from functools import cache
from pathlib import Path
from typing import Any, BinaryIO
from xml.etree.ElementTree import Element, fromstring, iterparse

from openpyxl.utils.datetime import to_excel

SECONDS = 120  # for one question; a start takes a few
ORDINARY = 12345  # a user of no name and no rights, for what root may not do
WORKBOOK = "xl/workbook.xml"
PAGES = re.compile(rb'<definedName name="_xlnm\.Print_[^>]*>[^<]*</definedName>')
Cell = tuple[str, str]
Values = dict[Cell, object]
Changes = Mapping[Cell, object]


class OfficeError(RuntimeError):
    """The office is missing, did not answer, or could not do what was asked."""


class LostError(OfficeError):
    """The office is there no more."""


class Error(str):
    """An error value in a cell, equal to its text; a cell that holds the text itself is a plain str."""


class Office:
    def __init__(
        self,
        seconds: float = SECONDS,
        addin: Path | None = None,
        comes_with: Path | None = None,
        locale: str = "en-US",
    ) -> None:
        self.seconds = seconds
        self._addin = addin
        self._options = [f"-env:BUNDLED_EXTENSIONS={comes_with.as_uri()}"] if comes_with else []
        self._locale = locale
        self._folder: Path | None = None
        self._unpaged: dict[tuple[str, int, int], str] = {}  # the copy of each file as it stands
        self._worker: subprocess.Popen[bytes] | None = None

    def recalculated(self, path: Path) -> Values:
        return self.edited(path, {})

    def recalculated_all(self, paths: Iterable[Path]) -> list[Values]:
        return [self.recalculated(path) for path in paths]

    def opened(self, path: Path) -> Values:
        return _values(self._ask(path=self._to_read(path), anew=False)[0])

    def edited(self, path: Path, changes: Changes) -> Values:
        return self.edited_each(path, [changes])[0]

    def edited_each(
        self, path: Path, edits: Iterable[Changes], times: int = 1, tabs: Iterable[str] = ()
    ) -> list[Values]:
        rows = [_rows(changes) for changes in edits]
        answer = self._ask(path=self._to_read(path), edits=rows, times=times, tabs=list(tabs))
        return [_values(values) for values in answer]

    def after_gestures(
        self, path: Path, sequences: Iterable[Iterable[tuple[object, ...]]], tabs: Iterable[str] = ()
    ) -> list[Values]:
        gestures = [list(sequence) for sequence in sequences]
        return [_values(values) for values in self._ask(path=self._to_read(path), gestures=gestures, tabs=list(tabs))]

    def saved_as(self, path: Path, kind: str, changes: Changes | None = None) -> Path:
        folder = tempfile.mkdtemp(dir=self._home())
        copy = Path(folder, Path(path).stem).with_suffix(f".{kind}")
        self._ask(path=_existing(path), edits=[_rows(changes or {})], save=str(copy), kind=kind)
        return copy

    def pdf(self, path: Path) -> Path:
        return self.saved_as(path, "pdf")

    def shown(self, modules: Mapping[str, str], formulas: Iterable[str]) -> list[object]:
        return self._ask(modules=dict(modules), formulas=list(formulas))

    def functions(self, prefix: str) -> dict[str, dict]:
        """By name: description, and arguments as (name, help)."""
        return self._ask(functions=prefix)

    def seconds_to_calculate(self, path: Path, rounds: int) -> list[float]:
        return self._ask(path=_existing(path), rounds=rounds)

    def processor_seconds(self, path: Path, changes: Changes) -> list[float]:
        return self._ask(path=_existing(path), timed=_rows(changes))

    def close(self) -> None:
        if self._worker:
            # Nothing of it is kept, so it need not leave in its own time.
            self._stop()
        if self._folder:
            shutil.rmtree(self._folder, ignore_errors=True)
            self._folder = None
            self._unpaged = {}

    def _home(self) -> Path:
        # Saved copies live as long as the office; the profile beside them is this process's alone.
        if not self._folder:
            self._folder = Path(tempfile.mkdtemp(prefix="office"))
        return self._folder

    def _to_read(self, path: Path) -> str:
        """A file whose values alone are asked for: of a workbook a copy that says nothing of its pages.

        To work them out takes up to half the time of opening.
        """
        file = _existing(path)
        known = file, Path(file).stat().st_mtime_ns, Path(file).stat().st_size
        if known not in self._unpaged:
            self._unpaged[known] = _without_pages(file, Path(tempfile.mkdtemp(dir=self._home()), Path(file).name))
        return self._unpaged[known]

    def _ask(self, **request: object) -> Any:
        try:
            reply = self._asked(request)
        except LostError as lost:
            warnings.warn(f"{lost} It is started anew and asked once more.", stacklevel=3)
            reply = self._asked(request)
        if "problem" in reply:
            raise OfficeError(f"{Path(str(request.get('path', ''))).name}: {reply['problem']}")
        return reply["answer"]

    def _asked(self, request: Mapping[str, object]) -> dict:
        if not self._worker:
            self._start()
        assert self._worker and self._worker.stdin
        # Where nobody reads any more, the reply below says so.
        with contextlib.suppress(BrokenPipeError):
            self._worker.stdin.write(json.dumps(request).encode() + b"\n")
            self._worker.stdin.flush()
        return self._reply()

    def _start(self) -> None:
        profile = self._home() / f"{self._home().name}profile"
        profile.mkdir(exist_ok=True)
        _set_up(profile, self._locale)
        if self._addin:
            _install(self._addin, profile)
        self._worker = subprocess.Popen(  # noqa: S603
            [_python(), str(Path(__file__).with_name("office_worker.py")), _soffice(), str(profile)] + self._options,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            start_new_session=True,  # so that the office and its children are stopped together
            env=surroundings(),
        )
        self._reply()

    def _reply(self) -> dict:
        assert self._worker and self._worker.stdout
        end, line = time.monotonic() + self.seconds, bytearray()  # bytes would be copied with each part
        with selectors.DefaultSelector() as waiting:
            waiting.register(self._worker.stdout, selectors.EVENT_READ)
            while not line.endswith(b"\n"):
                ready = waiting.select(max(0, end - time.monotonic()))
                part = os.read(self._worker.stdout.fileno(), 1 << 20) if ready else b""
                if not part:
                    self._stop()
                    if ready:
                        raise LostError("LibreOffice stopped.")
                    raise OfficeError(f"LibreOffice gave no answer in {self.seconds:g} seconds.")
                line += part
        return json.loads(line)

    def _stop(self) -> None:
        assert self._worker
        with contextlib.suppress(ProcessLookupError):
            os.killpg(self._worker.pid, signal.SIGKILL)
        self._worker.communicate()
        self._worker = None


# What a person chooses under Tools, Options: the locale, to paste over cells without being asked, and that a file
# which one office has open may be opened by another.
SETTINGS = """<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema">
<item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale"><value>{}</value></prop></item>
<item oor:path="/org.openoffice.Office.Calc/Input">
<prop oor:name="ReplaceCellsWarning"><value>false</value></prop></item>
<item oor:path="/org.openoffice.Office.Common/Misc">
<prop oor:name="UseLocking"><value>false</value></prop>
<prop oor:name="UseDocumentSystemFileLocking"><value>false</value></prop></item>
</oor:items>
"""


def _set_up(profile: Path, locale: str) -> None:
    settings = profile / "user" / "registrymodifications.xcu"
    settings.parent.mkdir(exist_ok=True)
    settings.write_text(SETTINGS.format(locale))


@cache
def shared() -> Office:
    """The office of this process."""
    office = Office()
    atexit.register(office.close)
    return office


def recalculated(path: Path) -> Values:
    return shared().recalculated(path)


def recalculated_all(paths: Iterable[Path]) -> list[Values]:
    return shared().recalculated_all(paths)


def edited(path: Path, changes: Changes) -> Values:
    return shared().edited(path, changes)


def stored(file: Path | BinaryIO) -> Values:
    """Every value a workbook file holds as it stands, in the form that `recalculated` gives."""
    with zipfile.ZipFile(file) as package:
        shared = [_text(each) for each in _root(package, STRINGS)] if STRINGS in package.namelist() else []
        values: Values = {}
        for title, part in _tabs(package):
            with package.open(part) as tab:
                for _, cell in iterparse(tab):  # noqa: S314  a file of the tests' own
                    if cell.tag == f"{MAIN}c" and (value := _held(cell, shared)) is not None:
                        values[title, str(cell.get("r"))] = value
                    elif cell.tag == f"{MAIN}row":
                        cell.clear()
    return values


MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
LINK = "{http://schemas.openxmlformats.org/officeDocument/2006/relationships}id"
STRINGS = "xl/sharedStrings.xml"


def _root(package: zipfile.ZipFile, part: str) -> Element:
    return fromstring(package.read(part))  # noqa: S314


def _tabs(package: zipfile.ZipFile) -> list[tuple[str, str]]:
    """The title of each tab, and the part that holds it."""
    links = {each.get("Id"): str(each.get("Target")) for each in _root(package, "xl/_rels/workbook.xml.rels")}
    sheets = _root(package, WORKBOOK).iter(f"{MAIN}sheet")
    return [(str(each.get("name")), f"xl/{links[each.get(LINK)].removeprefix('/xl/')}") for each in sheets]


def _text(element: Element) -> str:
    return "".join(each.text or "" for each in element.iter(f"{MAIN}t"))


def _held(cell: Element, shared: list[str]) -> object:
    """What a cell holds; a number is a date by its looks alone."""
    kind, value = cell.get("t", "n"), cell.findtext(f"{MAIN}v")
    if kind == "inlineStr":
        return _text(cell) or None
    if not value:
        return None
    if kind in ("s", "str"):
        return shared[int(value)] if kind == "s" else value
    return Error(value) if kind == "e" else float(value)


def _install(addin: Path, profile: Path) -> None:
    """Install an add-in for one user; that cannot be root, to whom the profile is handed back."""
    home = profile.parent
    copy = Path(shutil.copy(addin, home))
    owner = {"user": ORDINARY, "group": ORDINARY, "extra_groups": []} if os.geteuid() == 0 else {}
    if owner:
        _hand_over(home, ORDINARY)
    command = [_beside_soffice("unopkg"), "add", "--force", str(copy), f"-env:UserInstallation={profile.as_uri()}"]
    done = subprocess.run(command, capture_output=True, text=True, env={**surroundings(), "HOME": str(home)}, **owner)  # noqa: S603
    if owner:
        _hand_over(home, 0)
    if done.returncode:
        raise OfficeError(f"{addin.name} was not installed: {done.stdout}{done.stderr}")


def _hand_over(folder: Path, owner: int) -> None:
    for path in (folder, *folder.rglob("*")):
        os.chown(path, owner, owner, follow_symlinks=False)


def _existing(path: Path) -> str:
    if not Path(path).is_file():
        raise FileNotFoundError(path)
    return str(Path(path).resolve())


def _without_pages(file: str, copy: Path) -> str:
    """A copy without the names of areas to print and of rows that each page repeats; what is no workbook as it is."""
    if not zipfile.is_zipfile(file):
        return file
    with zipfile.ZipFile(file) as before, zipfile.ZipFile(copy, "w") as after:
        if WORKBOOK not in before.namelist():
            return file
        for name in before.namelist():
            part = before.read(name)
            after.writestr(name, PAGES.sub(b"", part) if name == WORKBOOK else part)
    return str(copy)


def _rows(changes: Changes) -> list[list[object]]:
    return [[sheet, cell, _plain(value)] for (sheet, cell), value in changes.items()]


def _plain(value: object) -> object:
    if isinstance(value, datetime.date | datetime.time | datetime.timedelta):
        return float(to_excel(value))
    return float(value) if isinstance(value, int | float) else value


def _values(cells: Iterable[tuple[str, str, object]]) -> Values:
    return {(sheet, cell): _value(value) for sheet, cell, value in cells}


def _value(value: object) -> object:
    return Error(value["error"]) if isinstance(value, dict) else value


def surroundings() -> dict[str, str]:
    """The environment without what a shell has for another Python: the office's own would look for its modules there.

    It finds where it is by the first Python on the PATH, so the folder of a virtual environment goes from there too.
    """
    kept = {name: value for name, value in os.environ.items() if not name.startswith(("PYTHON", "VIRTUAL_ENV"))}
    folders = [each for each in kept["PATH"].split(os.pathsep) if not Path(each).with_name("pyvenv.cfg").exists()]
    return kept | {"PATH": os.pathsep.join(folders)}


def _beside_soffice(name: str) -> str:
    return str(Path(_soffice()).resolve().with_name(name))


def _soffice() -> str:
    found = shutil.which("soffice") or shutil.which("libreoffice")
    if not found:
        raise OfficeError("LibreOffice is not installed (soffice is not on the PATH); see tests/setup.sh.")
    return found


@cache
def _python() -> str:
    """A Python that can talk to the office: the system's with python3-uno, or the suite's own."""
    # Where the office is, its Python is first: to try others takes longer than all else of a start.
    beside = [Path(_soffice()).parent, Path(_soffice()).resolve().parent]
    folders = [*beside, *map(Path, os.get_exec_path(surroundings()))]
    for python in [folder / name for folder in folders for name in ("python3", "python")]:
        asked = [python, "-c", "import uno"]
        if python.exists() and subprocess.run(asked, capture_output=True, env=surroundings()).returncode == 0:  # noqa: S603
            return str(python)
    raise OfficeError("No Python can talk to LibreOffice (python3-uno is missing); see tests/setup.sh.")
