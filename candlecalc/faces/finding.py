"""Functions found by a maker's words."""

import re

from candlecalc.faces.reference import every, told
from candlecalc.formula import Formula

# What makers say -> what the declarations say.
SAYINGS = {
    **dict.fromkeys(["jar", "glass", "tin", "tumbler", "container"], "vessel"),
    **dict.fromkeys(["scent", "perfume"], "fragrance"),
    **dict.fromkeys(["pour", "poured"], "fill"),
    **dict.fromkeys(["vat", "gst"], "tax"),
    **dict.fromkeys(["sell", "charge", "retail"], "price"),
    **dict.fromkeys(["wage", "labor", "work"], "labour"),
    **dict.fromkeys(["postage", "freight", "delivery"], "shipping"),
    **dict.fromkeys(["profit", "earn"], "margin"),
    "when": "date",
}
SMALL_WORDS = frozenset(
    ["a", "an", "and", "are", "as", "at", "be", "by", "can", "do", "does", "for", "from", "how", "i", "if", "in", "is"]
    + ["it", "many", "much", "must", "my", "need", "of", "on", "or", "should", "the", "to", "what", "when", "with"]
)


def find(words: str) -> list[Formula]:
    """Functions that answer to a maker's words, best first."""
    # "when" says nothing where it stands in a text, but asks for a date.
    asked = {_stem(word) for word in _words(words) if word in SAYINGS or word not in SMALL_WORDS}
    wanted = [{stem, SAYINGS.get(stem, stem)} for stem in asked]
    phrase = "_".join(words.lower().split())
    scores = [(*_score(formula, wanted), phrase in formula.name, formula) for formula in every()]
    best = sorted(scores, key=lambda score: score[:3], reverse=True)
    return [formula for matched, _, _, formula in best if matched]


def _score(formula: Formula, wanted: list[set[str]]) -> tuple[int, int]:
    """How many of the words it answers to, then how well: a name counts most, help least."""
    terms = [*(argument.term for argument in formula.arguments.values()), formula.result]
    texts = [
        (6, formula.name),
        (3, f"{formula.summary} {formula.gives}"),
        (2, " ".join([*formula.arguments, formula.subject])),
    ]
    texts += [(1, " ".join([told(formula)[0], *(term.help for term in terms)]))]
    best = [max((weight for weight, text in texts if alike & _stems(text)), default=0) for alike in wanted]
    return sum(map(bool, best)), sum(best)


def _stems(text: str) -> set[str]:
    return {_stem(word) for word in _words(text) if word not in SMALL_WORDS}


def _words(text: str) -> list[str]:
    return re.findall(r"[a-z]+", text.lower().replace("_", " "))


def _stem(word: str) -> str:
    return word[:-1] if word.endswith("s") and not word.endswith("ss") and len(word) > 3 else word
