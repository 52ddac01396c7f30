"""The Python lines and the questions in README.md run, and give what stands there."""

import doctest
import re
import shlex
from pathlib import Path

import pytest
from click.testing import CliRunner

from candlecalc.commands.cli import main

README = Path(__file__).resolve().parent.parent / "README.md"


def test_the_python_lines_of_the_readme_give_what_stands_there():
    failed, tried = doctest.testfile(str(README), module_relative=False)
    assert (failed, tried > 5) == (0, True)


BLOCKS = re.findall(r"(?:^    .*\n|^\n)+", README.read_text(encoding="utf-8"), re.MULTILINE)
QUESTIONS = [part for block in BLOCKS for part in re.split(r"^    \$ ", block, flags=re.MULTILINE)[1:]]
ANSWERED = [part.splitlines() for part in QUESTIONS if part.startswith("candlecalc ask") and part.count("\n    ")]


@pytest.mark.parametrize("lines", ANSWERED, ids=lambda lines: lines[0])
def test_a_question_in_the_readme_has_the_answer_that_stands_under_it(lines):
    told = CliRunner().invoke(main, shlex.split(lines[0])[1:]).stdout
    assert told.rstrip() == "\n".join(line.removeprefix("    ") for line in lines[1:]).rstrip()


def test_there_are_such_questions():
    assert len(ANSWERED) >= 6
