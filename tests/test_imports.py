"""Each module can be the first that a program imports: what one needs, it brings itself."""

# ruff: noqa: S603  the programs started here are our own choice

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
# One process for all: before each, the package is forgotten as if it had never been imported. Python imports what a
# module stands in before the module itself, so one that is brought by that has been the first already.
SCRIPT = """
import importlib, sys
brought = {"": ()}
for name in sorted(sys.argv[1:]):
    package = name.rpartition(".")[0]
    if name in brought[package]:
        brought[name] = brought[package]
        continue
    for known in [known for known in sys.modules if known.split(".")[0] == "candlecalc"]:
        del sys.modules[known]
    try:
        importlib.import_module(name)
    except ImportError as problem:
        print(name, problem)
    brought[name] = {known for known in sys.modules if known.split(".")[0] == "candlecalc"}
"""


def test_every_module_can_be_imported_first():
    files = [path.relative_to(ROOT).with_suffix("") for path in (ROOT / "candlecalc").rglob("*.py")]
    names = sorted(".".join(file.parts).removesuffix(".__init__") for file in files if "oxt" not in file.parts)
    assert len(names) > 50
    # A module is imported many times, so what Python compiled is kept, wherever else it is not.
    kept = {**os.environ, "PYTHONDONTWRITEBYTECODE": ""}
    command = [sys.executable, "-c", SCRIPT, *names]
    run = subprocess.run(command, cwd=ROOT, env=kept, capture_output=True, text=True, timeout=300)
    assert (run.returncode, run.stdout, run.stderr) == (0, "", "")


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
