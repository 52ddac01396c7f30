"""Functions found by a maker's words."""

import re

from candlecalc.declaration.declared import REGISTRY, Function
from candlecalc.faces.described.reference import every, told
from candlecalc.quantities import units

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
    **dict.fromkeys(["max", "maximum"], "highest"),
    "curing": "cure",
    **dict.fromkeys(["tunnel", "tunnelling"], "tunneling"),
    "long": "time",  # how long
    "when": "date",
}
# Words that makers say together -> the functions that answer them, where the declarations do not say so.
LEADS = {
    "many candle": "enough_for vessels_filled",
    "wax candle": "wax_for_fill",
    "cure": "pour_by pour_by_own_days",
    "when light": "pour_by pour_by_own_days",
    "highest load": "highest_load limit_of_blend load_at_limit highest_on_wax highest_of_total",
    "certificate": "limit_of_blend highest_load load_at_limit",
    "sinkhole": "setting_shrinkage top_up_pour",
    "soot": "burn_verdict flame_height next_wick",
    "tunneling": "pool_time pool_forecast next_wick",
    "consignment": "price_for_margin fee_at price_to_state",
    "cogs": "cost_of_goods_sold cost_of_goods_made cost_of_goods_schedule",
}
# Words that stand for what nothing here works out: half an answer would mislead.
UNANSWERED = frozenset(["throw", "frosting"])
# What is asked to be turned into one another: "grams in a pound".
TURNED = frozenset(["a weight", "a volume", "a length", "a temperature"])
SMALL_WORDS = frozenset(
    ["a", "an", "and", "are", "as", "at", "be", "by", "can", "do", "does", "for", "from", "how", "i", "if", "in", "is"]
    + ["it", "many", "may", "much", "must", "my", "need", "of", "on", "or", "per", "should", "the", "to", "what"]
    + ["when", "with"]
)


def find(words: str) -> list[Function]:
    """Functions that answer to a maker's words, best first."""
    said = _words(words)
    if UNANSWERED & set(said):
        return []
    # "when" says nothing where it stands in a text, but asks for a date.
    asked = {_stem(word) for word in said if word in SAYINGS or word not in SMALL_WORDS}
    wanted = [{stem, SAYINGS.get(stem, stem)} for stem in asked]
    phrase = "_".join(words.lower().split())
    scores = [(*_score(formula, wanted), phrase in formula.name, formula) for formula in every()]
    best = sorted(scores, key=lambda score: score[:3], reverse=True)
    first = [REGISTRY[name] for name in _leads(said)]
    return first + [formula for matched, _, _, formula in best if matched and formula not in first]


def _leads(said: list[str]) -> list[str]:
    """Names of the functions that words lead to by themselves."""
    meant = {SAYINGS.get(_stem(word), _stem(word)) for word in said} | {_stem(word) for word in said}
    names = [name for words, led in LEADS.items() if set(map(_stem, words.split())) <= meant for name in led.split()]
    kinds = [units.kind_of_spelling(word) for word in said if len(word) > 1 and word not in SMALL_WORDS]
    turned = any(kinds.count(kind) > 1 for kind in TURNED)
    return list(dict.fromkeys([*["convert"] * turned, *names]))


def _score(formula: Function, wanted: list[set[str]]) -> tuple[int, int]:
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
