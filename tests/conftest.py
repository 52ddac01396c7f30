"""What every test may ask for."""

import functools
import gc
import hashlib

import face as faces
import libreoffice
import pytest
import spread
import typed_in
from hypothesis import settings

from candlecalc.calc import REGISTRY
from candlecalc.season import folder
from candlecalc.season.tables import TABLES
from candlecalc.workbook import book
from candlecalc.workbook.reading import read
from candlecalc.workbook.writing import memory
from candlecalc.workbook.writing.draft import FROM_NOTHING

# What is right does not depend on how fast a machine is.
settings.register_profile("any machine", deadline=None)
settings.load_profile("any machine")

# Test processes share the cores: on one each calculates in less time of a processor.
memory.quick = functools.partial(memory.quick, on_all_cores=False)

collect_ignore = ["office_inside.py", "office_gestures.py"]  # they run in the office


@pytest.fixture(scope="session")
def office():
    """LibreOffice, started at the first question and stopped with the run; one for each test process.

    `libreoffice.py` says what it can be asked.
    """
    shared = libreoffice.shared()
    yield shared
    shared.close()


@pytest.fixture(scope="session")
def office_in(office):
    """The office of a locale, such as office_in("de-DE"); each is started once for a test process, too."""
    offices = {"en-US": office}

    def of(locale):
        offices[locale] = offices.get(locale) or libreoffice.Office(locale=locale)
        return offices[locale]

    yield of
    for other in offices.values():
        other.close()


@pytest.fixture(scope="module")
def few_rows():
    """The commands make workbooks of few rows: formulas that stay blank would take most of the time."""
    with pytest.MonkeyPatch.context() as patch:
        filled = {key: len(rows) for key, rows in folder.read(folder.DEMO).tables.items()}
        for key in TABLES:
            patch.setitem(book.USUAL_ROWS, key, filled.get(key, 0) + 2)
        yield


@pytest.fixture
def all_rows(few_rows, monkeypatch):
    """... and in one test with all the rows that a maker gets."""
    for key, table in TABLES.items():
        monkeypatch.setitem(book.USUAL_ROWS, key, table.usual_rows)


KEPT = 8  # workbooks made, and as many read: they take memory


@pytest.fixture(scope="module")
def made_once():
    """A workbook that commands make or read again is the one that they made or read: only what differs takes time.

    It gives what makes each anew.
    """
    makers = book.drafted, book.packed, memory.calculated
    made, opened = typed_in.Kept(KEPT), typed_in.Kept(KEPT)

    def drafted(season, dated, picked=None, before=FROM_NOTHING, rows_of=book.USUAL_ROWS):
        tables = {name: list(season.tables.rows(name)) for name in season.tables}
        key = repr((season.settings, tables, dated, picked, before, dict(rows_of)))
        return made.asked(key, lambda: (makers[0](season, dated, picked, before, rows_of), {}))[0]

    def packed(written, *, stored=True):
        packages = next((packages for each, packages in made.held.values() if each is written), {})
        if stored not in packages:
            packages[stored] = makers[1](written, stored=stored)
        return packages[stored]

    def opened_once(path, titles, open_it=read.opened):
        if not path.is_file():
            return open_it(path, titles)
        key = hashlib.sha256(path.read_bytes()).digest(), tuple(titles)
        return opened.asked(key, lambda: open_it(path, titles))

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(read, "opened", opened_once)
        patch.setattr(book, "drafted", drafted)
        patch.setattr(book, "packed", packed)
        patch.setattr(memory, "calculated", typed_in.calculated)
        yield makers


@pytest.fixture
def made_anew(made_once, monkeypatch):
    """... but where a test asks whether it comes out the same."""
    monkeypatch.setattr(book, "drafted", made_once[0])
    monkeypatch.setattr(book, "packed", made_once[1])
    monkeypatch.setattr(memory, "calculated", made_once[2])


@pytest.fixture
def face(request):
    """The functions on one face; the test runs for each. `face.py` says how."""
    name, calls = request.param, tuple(request.node.stash[CALLS])
    if name == "Python":
        return faces.Recorder()
    answers = request.config.stash[ANSWERS]
    if name not in answers:
        answers[name] = faces.calculated(name, list(request.config.stash[ALL_CALLS][name].values()))
    return faces.Replay(calls, [answers[name][call.key] for call in calls])


CALLS = pytest.StashKey()
ALL_CALLS = pytest.StashKey()  # face -> key -> call
ANSWERS = pytest.StashKey()  # face -> key -> rows, once it has calculated


@pytest.hookimpl(wrapper=True)
def pytest_collection():
    """Thousands of tests are collected and stay: Python need not look through them for what it can throw away.

    Neither as they become more nor, over and over, while they run. What tests make, workbooks above all, it looks
    through once in three million new things in place of 700: that took a tenth of the time, and it needs no more
    memory.
    """
    gc.disable()
    try:
        return (yield)
    finally:
        gc.collect()
        gc.freeze()
        gc.set_threshold(3_000_000, 2, 2)
        gc.enable()


def pytest_generate_tests(metafunc):
    if "face" in metafunc.fixturenames:
        metafunc.parametrize("face", list(faces.FACES), indirect=True)


def pytest_itemcollected(item):
    """Let -k find a test over faces by the functions that it calls; its own name is a sentence."""
    if "face" in getattr(item, "fixturenames", ()):
        item.extra_keyword_matches.update(set(item.function.__code__.co_names) & REGISTRY.keys())


@pytest.hookimpl(trylast=True)  # of what -k and -m have left
def pytest_collection_modifyitems(config, items):
    """Note the calls of every test over faces, and leave out those that a face has no function for."""
    known, left, gathered = {}, set(), {name: {} for name in faces.FACES}
    for item in [item for item in items if "face" in getattr(item, "fixturenames", ())]:
        given = {name: value for name, value in item.callspec.params.items() if name != "face"}
        key = (item.function, item.callspec.id.replace(item.callspec.params["face"], ""))
        if key not in known:
            known[key] = faces.recorded(item.function, given)
        item.stash[CALLS] = known[key]
        name = item.callspec.params["face"]
        if all(faces.takes(name, call) for call in known[key]):
            gathered[name].update((call.key, call) for call in known[key])
        else:
            left.add(item)
    config.stash[ALL_CALLS], config.stash[ANSWERS] = gathered, {}
    items[:] = sorted([item for item in items if item not in left], key=spread.begins)


@pytest.hookimpl(optionalhook=True)
def pytest_xdist_make_scheduler(config, log):
    # Not --dist loadgroup: from pytest 9.2 on, pytest-xdist 3.8 writes its groups where nothing reads them.
    return spread.scheduler(config, log)
