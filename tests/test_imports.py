"""Each module can be the first that a program imports: what one needs, it brings itself."""

# ruff: noqa: S603  the programs started here are our own choice

import os
import subprocess
import sys
from pathlib import Path

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
