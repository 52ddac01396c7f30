"""The office suite may carry a Python as old as 3.9, without one package: what add-ins carry must run in it."""

# ruff: noqa: S603  the programs started here are our own choice

import shutil
import subprocess
from pathlib import Path

import pytest

from candlecalc.faces.addins.carrying import carried

SCRIPT = """
import doctest, importlib, pkgutil, sys
sys.path.insert(0, sys.argv[1])
import candlecalc.calc, candlecalc.quantities.rounding, candlecalc.quantities.statistics
from candlecalc.declaration.declared import REGISTRY

modules = [candlecalc.quantities.rounding, candlecalc.quantities.statistics] + [
    importlib.import_module("candlecalc.calc." + found.name) for found in pkgutil.iter_modules(candlecalc.calc.__path__)
]
failed = sum(doctest.testmod(module).failed for module in modules)
tried = sum(bool(test.examples) for module in modules for test in doctest.DocTestFinder().find(module))
print(sys.version_info[:2], failed, tried >= len(REGISTRY) > 20)
"""


def _old_python():
    candidates = [shutil.which("python3.9"), *Path.home().glob(".pyenv/versions/3.9.*/bin/python3.9")]
    for python in filter(None, candidates):
        if subprocess.run([python, "-c", ""], capture_output=True).returncode == 0:
            return python
    return None


def test_every_function_runs_its_example_on_python_3_9_alone(tmp_path):
    python = _old_python()
    if not python:
        pytest.skip("python3.9 is not installed")
    for name, text in carried("faces/libreoffice/component.py").items():
        path = tmp_path / "candlecalc" / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
    # -S leaves out installed packages, -E what the environment says of paths.
    command = [python, "-S", "-E", "-s", "-B", "-W", "error", "-c", SCRIPT, str(tmp_path)]
    run = subprocess.run(command, cwd=tmp_path, capture_output=True, text=True, timeout=120)
    assert (run.returncode, run.stdout, run.stderr) == (0, "(3, 9) 0 True\n", "")
