"""Each module can be the first that a program imports: what one needs, it brings itself."""

# ruff: noqa: S603  the programs started here are our own choice

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
# All modules are imported once, and what each of them asks for is noted. One that never leads back to itself finds what
# it asks for whoever comes first. The others are each imported first: before each, the package is forgotten as if it
# had never been imported. Python imports what a module stands in before the module itself, so one that is brought by
# that has been the first already.
SCRIPT = """
import builtins, importlib, importlib.util, sys
root, *names = sys.argv[1:]
asked, bring, bring_named = {}, builtins.__import__, importlib.import_module

def ours():
    return {name for name in sys.modules if name.split(".")[0] == root}

def note(name, parts=()):
    # What a module's text asks for as it runs, by a function that it calls, too. What a name stands in comes before it.
    frame = sys._getframe(2)
    while frame and frame.f_code.co_name != "<module>":
        frame = frame.f_back
    for each in (name, *(f"{name}.{part}" for part in parts)) if frame else ():
        words = each.split(".")
        asked.setdefault(frame.f_globals["__name__"], set()).update(
            ".".join(words[:end + 1]) for end in range(len(words)))

def noted(name, globals=None, locals=None, fromlist=(), level=0):
    note(importlib.util.resolve_name("." * level + name, globals["__package__"]) if level else name, fromlist or ())
    return bring(name, globals, locals, fromlist, level)

def noted_named(name, package=None):
    note(importlib.util.resolve_name(name, package))
    return bring_named(name, package)

def forget():
    for known in ours():
        del sys.modules[known]

def tried(name):
    try:
        bring_named(name)
    except ImportError as problem:
        print(name, problem)

builtins.__import__, importlib.import_module = noted, noted_named
for name in names:
    tried(name)
    asked.setdefault(name, set()).update({name.rpartition(".")[0]} - {""})
builtins.__import__, importlib.import_module = bring, bring_named

all_of_it = ours()

def leads_back(name):
    seen, ahead = set(), [name]
    while ahead:
        at = ahead.pop()
        new = (asked.get(at, set()) & all_of_it) - seen - {at}
        seen |= new
        ahead += new
    return name in seen

brought = {}
for name in sorted(filter(leads_back, names)):
    package = name.rpartition(".")[0]
    if name not in brought.get(package, ()):
        forget()
        tried(name)
    brought[name] = brought[package] if name in brought.get(package, ()) else ours()
"""


def imported_first(root, names, folder):
    """What is said where each of some modules is the first that is imported."""
    # A module is imported many times, so what Python compiled is kept, wherever else it is not.
    kept = {**os.environ, "PYTHONDONTWRITEBYTECODE": ""}
    command = [sys.executable, "-c", SCRIPT, root, *names]
    run = subprocess.run(command, cwd=folder, env=kept, capture_output=True, text=True, timeout=120)
    assert (run.returncode, run.stderr) == (0, "")
    return run.stdout.splitlines()


def test_every_module_can_be_imported_first():
    files = [path.relative_to(ROOT).with_suffix("") for path in (ROOT / "candlecalc").rglob("*.py")]
    names = sorted(".".join(file.parts).removesuffix(".__init__") for file in files if "oxt" not in file.parts)
    assert len(names) > 50
    assert imported_first("candlecalc", names, ROOT) == []


def test_a_module_that_needs_another_to_come_first_is_found(tmp_path):
    texts = {"__init__": "", "wax": "import pots.melt\nmelted = 40", "melt": "from pots.wax import melted"}
    (tmp_path / "pots").mkdir()
    for name, text in texts.items():
        (tmp_path / "pots" / f"{name}.py").write_text(text)
    found = imported_first("pots", ["pots", "pots.melt", "pots.wax"], tmp_path)
    assert [line.split()[0] for line in found] == ["pots.wax"]


# Packages that take a while to come, and our own parts that bring them.
HEAVY = ["numpy", "pandas", "openpyxl", "formualizer", "xlwings", "pint", "defusedxml"]
OURS = ["candlecalc.calc", "candlecalc.season", "candlecalc.workbook"]
CALCULATES = ["candlecalc.calc"]
MAKES_A_BOOK = ["numpy", "openpyxl", "defusedxml", *OURS]
READS_A_SEASON = ["openpyxl", "defusedxml", *OURS, "formualizer"]
COMMANDS = [  # a call, and the most that it imports
    (["--help"], []),
    (["ask", "oil_for_wax", "10 oz", "8%"], CALCULATES),
    (["functions"], CALCULATES),
    (["functions", "--find", "oil for wax"], CALCULATES),
    (["functions", "oil_for_wax"], CALCULATES),
    (["formula", "oil_for_wax", "wax=B4", "load=C4"], CALCULATES),
    (["addin", "calc", "candles.oxt"], CALCULATES),
    (["addin", "excel", "folder"], CALCULATES),
    (["new", "new.xlsx"], READS_A_SEASON),
    (["check", "demo.xlsx"], READS_A_SEASON),
    (["show", "demo.xlsx", "costs"], READS_A_SEASON),
    (["functions", "--workbook", "functions.xlsx"], MAKES_A_BOOK),
    (["add-functions", "demo.xlsx", "mine.xlsx"], [*CALCULATES, "defusedxml"]),
]
RUN = f"""
import sys
from candlecalc.commands.cli import main
try:
    main(sys.argv[1:])
finally:
    print(*(name for name in {[*HEAVY, *OURS]!r} if name in sys.modules), file=sys.stderr)
"""


def run(folder, words):
    call = [sys.executable, "-c", RUN, *words]
    done = subprocess.run(call, cwd=folder, capture_output=True, text=True, timeout=120)
    assert done.returncode == 0, done.stderr
    return done.stderr.splitlines()[-1].split()


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    """A folder with a workbook in it."""
    path = tmp_path_factory.mktemp("commands")
    shutil.copy(ROOT / "workbooks" / "demo.xlsx", path)
    return path


@pytest.mark.parametrize("words, most", COMMANDS, ids=lambda value: " ".join(value))
def test_a_command_imports_no_more_than_it_needs(folder, words, most):
    assert set(run(folder, words)) <= set(most)
