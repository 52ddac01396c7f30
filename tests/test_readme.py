"""The Python lines of README.md run, and give what stands there."""

import doctest
from pathlib import Path

README = Path(__file__).resolve().parent.parent / "README.md"


def test_the_python_lines_of_the_readme_give_what_stands_there():
    failed, tried = doctest.testfile(str(README), module_relative=False)
    assert (failed, tried > 5) == (0, True)
