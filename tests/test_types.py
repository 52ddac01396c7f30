"""What a user's editor and type checker see: the README's own lines are accepted, slips are refused."""

# ruff: noqa: S603  the programs started here are our own choice

import doctest
import json
import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
README = (ROOT / "README.md").read_text(encoding="utf-8")
# Each line with what it is; what is declared here is what comes back.
GOOD = """
import numpy as np
import pandas as pd

number: float = candlecalc.oil_for_wax("10 oz", "8%")
of_numpy: float = candlecalc.oil_for_wax(np.float64(500), 0.08)
array: float = candlecalc.oil_for_wax([500, "10 oz"], 0.08).sum()
series: pd.Index = candlecalc.oil_for_wax(pd.Series([500.0, 250.0]), [0.08, 0.1]).index
word: str = candlecalc.highest_load_decided_by(0.1, 0.1, 0.1)
label: float | None = candlecalc.burn_time_from_log([0, 4, 8, 12], [412, 392.5, 372, 352.5], 180, 15).label
named: float = candlecalc.highest_on_wax(0.1, "of total")
"""
WRONG = [
    "candlecalc.oil_for_wax(500, lod=0.08)",
    "candlecalc.nonsense(3)",
    "candlecalc.oil_for_wax(500)",
    "candlecalc.oil_for_wax(None, 0.08)",
    'candlecalc.highest_on_wax(0.1, "of waks")',
    "text: str = candlecalc.oil_for_wax(500, 0.08)",
    "whole: float = candlecalc.oil_for_wax([500, 250], 0.08)",
]


def by_mypy(path):
    command = [sys.executable, "-m", "mypy", "--strict", "--cache-dir", str(ROOT / ".mypy_cache"), str(path)]
    return run(command, path.parent, MYPYPATH=str(ROOT))


def by_pyright(path):
    settings = {"extraPaths": [str(ROOT)], "typeCheckingMode": "strict", "reportUnusedVariable": False}
    # A lambda's argument is of no type that pandas states.
    settings |= dict.fromkeys(
        ["reportUnknownLambdaType", "reportUnknownMemberType", "reportUnknownArgumentType"], False
    )
    settings |= dict.fromkeys(["reportUnknownVariableType", "reportMissingTypeStubs"], False)
    (path.parent / "pyrightconfig.json").write_text(json.dumps(settings), encoding="utf-8")
    told = run([sys.executable, "-m", "pyright", "--pythonpath", sys.executable, str(path)], path.parent)
    if not re.search(r"\d+ errors?,", told):
        pytest.skip(f"pyright cannot be fetched here: {told[:200]}")
    return told


def run(command, folder, **more):
    told = subprocess.run(
        command, cwd=folder, env={**os.environ, **more}, capture_output=True, text=True, timeout=300, check=False
    )
    return told.stdout + told.stderr


def wrong_lines(told):
    """The lines of a file that a checker refuses."""
    return {int(line) for line in re.findall(r"\.py:(\d+):[^\n]*error", told)}


each_checker = pytest.mark.parametrize("checked", [by_mypy, by_pyright])


@each_checker
def test_the_lines_of_the_readme_and_right_calls_are_accepted(checked, tmp_path):
    path = tmp_path / "right.py"
    lines = [example.source for example in doctest.DocTestParser().get_examples(README)]
    path.write_text("".join(lines) + GOOD, encoding="utf-8")
    told = checked(path)
    assert wrong_lines(told) == set() and re.search("no issues found|0 errors", told), told


@each_checker
def test_slips_are_refused(checked, tmp_path):
    path = tmp_path / "wrong.py"
    path.write_text("\n".join(["import candlecalc", *WRONG]), encoding="utf-8")
    assert wrong_lines(checked(path)) == set(range(2, 2 + len(WRONG)))
