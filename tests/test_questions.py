"""A hundred questions of makers at the terminal: tests/questions.csv, which reads as what can be asked, and how.

Answers stand there where they can be worked out without this library. Of the rest, each has its unit and reads well.
"""

import csv
import re
import shlex
from pathlib import Path

import pytest
from click.testing import CliRunner

from candlecalc.commands.cli import main

TEXT = (Path(__file__).parent / "questions.csv").read_text(encoding="utf-8")
QUESTIONS = list(csv.DictReader(line for line in TEXT.splitlines() if not line.startswith("#")))
WORKED = [row for row in QUESTIONS if row["answer"]]
# A number that stands alone, and one that is drawn out.
BARE = re.compile(r"^(?:[a-z ]+: )?-?[0-9.]+$")
LONG = re.compile(r"[0-9]\.[0-9]{5,}|[0-9]e-?[0-9]")


def asked(row):
    result = CliRunner().invoke(main, ["ask", *shlex.split(row["call"])])
    assert (result.exit_code, result.stderr) == (0, "")
    return result.stdout.splitlines()


def by_question(row):
    return row["question"]


def test_there_are_a_hundred():
    assert len(QUESTIONS) >= 100
    assert len({row["question"] for row in QUESTIONS}) == len(QUESTIONS)


@pytest.mark.parametrize("row", WORKED, ids=by_question)
def test_a_question_has_the_answer_that_was_worked_out(row):
    assert " / ".join(asked(row)).partition(" / note: ")[0] == row["answer"], row["how"]


@pytest.mark.parametrize("row", QUESTIONS, ids=by_question)
def test_every_answer_says_its_unit_and_has_no_long_decimals(row):
    for line in asked(row):
        assert not BARE.match(line) and not LONG.search(line)
