"""Functions found by a maker's words.

A function answers to the stems of its name, of the words that its declaration says people use for it, of what it is for
and of its help texts. A stem counts the more the fewer functions have it. Where too little of what was said is answered
there is no answer, and what is nearest is told.
"""

import difflib
import math
import re
from collections import Counter
from collections.abc import Mapping
from functools import cache
from typing import NamedTuple

from candlecalc.declaration.declared import REGISTRY, Function
from candlecalc.faces.asked.sayings import NOT_HERE, SAYINGS
from candlecalc.faces.described.reference import every, told
from candlecalc.quantities import units

# "8 oz", "10 lb of": how much of it says nothing of what is asked.
QUANTITY = re.compile(
    r"(?<![a-z0-9])[0-9][0-9.,/]*\s*(?:[a-z]{1,2}\b|ounces?|pounds?|grams?|inch(?:es)?|%)?", re.IGNORECASE
)
# What is asked to be turned into one another: "grams in a pound".
TURNED = frozenset(["a weight", "a volume", "a length", "a temperature"])
SMALL_WORDS = frozenset(
    re.findall(
        "[a-z]+",
        "a about am an and any are as at be been but by can could did do does for from get give go have has "
        "how i if in into is it its just many may me much must my need not of off on one or our per put "
        "should so some than that the their them then there these they this to too use want was we what where "
        "which who why will with would you your ",
    )
)
# A stem is what is left when the first ending that fits is cut off and three letters stay.
ENDINGS = ("ation", "ings", "ing", "ies", "ers", "ed", "er", "es", "s", "y", "e")
NAME, SUMMARY, ARGUMENTS, HELP = 6, 3, 2, 1  # what a stem counts where it stands; in words for it as in its name
PHRASE = 20  # what was said is, as far as they have the same stems, what people call it
PART = 0.5  # parts stand behind what a maker asks
LEAST = 0.5  # of what was said, by how much each stem tells, that an answer takes up
MOST_NEAREST = 3
LONG_ENOUGH = 5  # letters of a stem that may be misspelt: of shorter ones too many are like each other


class Found(NamedTuple):
    """Functions that answer to words, best first; where none does, those that are nearest."""

    answers: list[Function]
    nearest: list[Function]


class Entry(NamedTuple):
    """What a function answers to: its stems with what they count, and what people call it, each as its stems."""

    formula: Function
    stems: dict[str, int]
    phrases: frozenset[frozenset[str]]


def find(words: str) -> list[Function]:
    """Functions that answer to a maker's words, best first.

    >>> [formula.name for formula in find("grams in a pound")][:1]
    ['convert']
    """
    return search(words).answers


def search(words: str) -> Found:
    """What answers to words, or what is nearest to them."""
    wanted = {stem: _meant(stem) for stem in _stems(QUANTITY.sub(" ", words))}
    nearest = _not_here(wanted)
    if nearest is not None:
        return Found([], nearest)
    scored = [(*_score(entry, wanted), entry.formula) for entry in _entries()]
    best = sorted((each for each in scored if each[0]), key=lambda each: -each[0])
    ranked = [formula for _, _, formula in best]
    first = _meant_by_name(words)
    if first:
        return Found([first, *(formula for formula in ranked if formula is not first)], [])
    answered = [formula for _, covered, formula in best if covered >= LEAST]
    return Found(answered, [] if answered else ranked[:MOST_NEAREST])


def _not_here(wanted: Mapping[str, frozenset[str]]) -> list[Function] | None:
    """What is nearest, where what was said is known to be nothing that is worked out here; None elsewhere."""
    known = {phrase: _alike(_stems(phrase), wanted) for phrase in NOT_HERE if _stems(phrase) <= wanted.keys()}
    phrase = max(known, key=lambda each: known[each], default="")
    # A function may be called so more nearly: "compare two wicks".
    if not phrase or known[phrase] < max(_alike(own, wanted) for entry in _entries() for own in entry.phrases):
        return None
    return [REGISTRY[name] for name in NOT_HERE[phrase].split()]


def _score(entry: Entry, wanted: Mapping[str, frozenset[str]]) -> tuple[float, float]:
    """How well a function answers, and how much of what was said it takes up."""
    told = {stem: max(_telling(each) for each in alike) for stem, alike in wanted.items()}
    here = {stem: max(entry.stems.get(each, 0) for each in alike) for stem, alike in wanted.items()}
    whole = sum(told.values()) or 1.0
    covered = sum(told[stem] for stem, counts in here.items() if counts) / whole
    score = sum(told[stem] * counts for stem, counts in here.items()) * covered
    score += PHRASE * whole * max((_alike(phrase, wanted) for phrase in entry.phrases), default=0.0)
    return score * (PART if entry.formula.part else 1.0), covered


def _alike(phrase: frozenset[str], wanted: Mapping[str, frozenset[str]]) -> float:
    """How far a phrase is what was said, from 0 to 1: the stems of both over the stems of either, by what they tell."""
    both = [stem for stem, alike in wanted.items() if alike & phrase]
    met = frozenset(each for stem in both for each in wanted[stem] & phrase)
    shared = sum(_telling(stem) for stem in met)
    others = sum(_telling(stem) for stem in phrase - met) + sum(_telling(stem) for stem in wanted.keys() - set(both))
    return shared / (shared + others) if shared else 0.0


@cache
def _entries() -> list[Entry]:
    return [_entry(formula) for formula in every()]


def _entry(formula: Function) -> Entry:
    terms = [*(argument.term for argument in formula.arguments.values()), formula.result, *formula.fields.values()]
    texts = [
        (HELP, " ".join([told(formula)[0], *(term.help for term in terms)])),
        (ARGUMENTS, " ".join([*formula.arguments, *formula.fields, formula.subject])),
        (SUMMARY, formula.summary),
        (NAME, f"{formula.name} {formula.words}"),
    ]
    stems = {stem: counts for counts, text in texts for stem in _stems(text)}
    called = [formula.name, *formula.words.split(",")]
    return Entry(formula, stems, frozenset(_stems(phrase) for phrase in called))


@cache
def _telling(stem: str) -> float:
    """How much a stem tells: the more, the fewer functions have it; one that none has tells most."""
    return math.log(1 + len(_entries()) / max(1, _having()[stem]))


@cache
def _having() -> Counter[str]:
    return Counter(stem for entry in _entries() for stem in entry.stems)


@cache
def _meant(stem: str) -> frozenset[str]:
    """A stem with what it stands for: what a maker calls so, and the nearest one where it is known nowhere."""
    alike = {stem, *(_stem(meant) for said, meant in SAYINGS.items() if _stem(said) == stem)}
    if len(stem) >= LONG_ENOUGH and not any(_having()[each] for each in alike):
        near = difflib.get_close_matches(stem, _having(), n=1, cutoff=0.84)
        alike |= {each for each in near if each[0] == stem[0]}
    return frozenset(alike)


def _meant_by_name(words: str) -> Function | None:
    """The function that words name, or the one that turns units, where two units of one kind are said."""
    name = "_".join(words.lower().split())
    named = REGISTRY.get(name)
    if named and not named.instead:
        return named
    said = [word for word in re.findall(r"[a-z]+", words.lower()) if len(word) > 1 and word not in SMALL_WORDS]
    kinds = [units.kind_of_spelling(word) for word in said]
    return REGISTRY["convert"] if any(kinds.count(kind) > 1 for kind in TURNED) else None


def _stems(text: str) -> frozenset[str]:
    words = re.findall(r"[a-z]+[a-z0-9]*", text.lower().replace("_", " ").replace("'", ""))
    return frozenset(_stem(word) for word in words if word not in SMALL_WORDS)


@cache
def _stem(word: str) -> str:
    word = word.replace("our", "or") if word.endswith(("our", "ours")) else word  # labour, labor
    ending = next((end for end in ENDINGS if word.endswith(end) and len(word) - len(end) >= 3), "")
    stem = word[: len(word) - len(ending)] if not word.endswith("ss") else word
    return stem[:-1] if ending and len(stem) > 3 and stem[-1] == stem[-2] and stem[-1] not in "ls" else stem
