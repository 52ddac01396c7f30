"""Phrases of makers, with what answers each; tests/phrases.csv says how they came to be."""

import csv
from pathlib import Path
from typing import NamedTuple

from candlecalc.declaration.declared import REGISTRY
from candlecalc.faces.asked.finding import find

FIRST = 3


class Phrase(NamedTuple):
    """What is typed, and the functions that answer it; none where nothing here does."""

    said: str
    answers: frozenset


def every():
    text = (Path(__file__).parent / "phrases.csv").read_text(encoding="utf-8")
    rows = csv.DictReader(line for line in text.splitlines() if not line.startswith("#"))
    return [Phrase(row["phrase"], frozenset(row["answers"].split()) & set(REGISTRY)) for row in rows]


def worked_with():
    return [phrase for place, phrase in enumerate(every()) if place % 3 != 2]


def aside():
    return [phrase for place, phrase in enumerate(every()) if place % 3 == 2]


def first_three(phrase):
    return [formula.name for formula in find(phrase.said)[:FIRST]]


def right(phrase):
    """An answer among the first three; or, where there is none, that it is said so."""
    return bool(phrase.answers & set(first_three(phrase))) or (not phrase.answers and not first_three(phrase))
