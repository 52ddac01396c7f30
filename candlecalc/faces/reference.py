"""The functions described: found by a maker's words, listed by subject, told in full."""

import ast
import json
import re
import sys
import textwrap
from collections.abc import Iterable, Iterator
from itertools import groupby
from typing import Any

import candlecalc.calc  # noqa: F401  fills the registry
from candlecalc import native
from candlecalc.formula import REGISTRY, Argument, Formula, Term

WIDTH = 79  # a full line of 80 wraps in some terminals
NAME_WIDTH = 12  # a longer name stands on a line of its own
# The order in which a maker meets the subjects; any other comes after.
SUBJECTS = (
    ["vessel", "fragrance", "wax", "heat", "cooling", "burn", "burn_time", "pool", "wick", "batch", "cost", "price"]
    + ["plan", "one_season", "schedule", "requirements", "stock", "stocktake"]
    + ["label", "measure", "hazard", "hazard_label", "money", "books", "conversion"]
)
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


def every() -> list[Formula]:
    """Every function, in the order of `listing`."""
    return sorted(REGISTRY.values(), key=lambda formula: _place(formula.subject))


def find(words: str) -> list[Formula]:
    """Functions that answer to a maker's words, best first."""
    # "when" says nothing where it stands in a text, but asks for a date.
    asked = {_stem(word) for word in _words(words) if word in SAYINGS or word not in SMALL_WORDS}
    wanted = [{stem, SAYINGS.get(stem, stem)} for stem in asked]
    phrase = "_".join(words.lower().split())
    scores = [(*_score(formula, wanted), phrase in formula.name, formula) for formula in every()]
    best = sorted(scores, key=lambda score: score[:3], reverse=True)
    return [formula for matched, _, _, formula in best if matched]


def found(words: str) -> list[str]:
    """The functions that best answer to a maker's words, best first."""
    return _table(find(words)[:8])


def listing() -> list[str]:
    """Every function by subject, with what it is for."""
    lines: list[str] = []
    for _, formulas in groupby(every(), key=lambda formula: formula.subject):
        group = list(formulas)
        lines += [*textwrap.wrap(title(group[0]), WIDTH), *_table(group), ""]
    return [*lines, "More on one of them: candlecalc functions NAME"]


def page(formula: Formula) -> list[str]:
    """All there is to know about one function."""
    purpose, example = told(formula)
    lines = [formula.name, ""]
    for paragraph in purpose.split("\n\n"):
        lines += [*textwrap.wrap(paragraph, WIDTH, break_on_hyphens=False), ""]
    for argument in formula.arguments.values():
        lines += _entry(argument.name, span(argument.term) + default_words(argument), argument.term.help)
    lines += ["", *_entry("result", formula.gives, formula.result.help)]
    lines += [line for name, term in formula.fields.items() for line in _entry(name, span(term), term.help)] + [""]
    lines += _heading("formula", _broken(native.spell(formula.native)) if formula.native else [formula.no_native])
    for words in formula.requires.values():
        lines += _heading("where", _wrapped(words))
    lines += _heading("source", _wrapped(formula.source))
    return [*lines, "", *(f"    {part}" for line in example for part in _wrapped_example(line))]


def as_json(formulas: Iterable[Formula]) -> str:
    """The same as data, for another program to read."""
    return json.dumps([_data(formula) for formula in formulas], indent=2, ensure_ascii=False)


def told(formula: Formula) -> tuple[str, list[str]]:
    """What the docstring tells, and the example at its end."""
    purpose, _, example = (formula.bare.__doc__ or "").partition("\n    >>> ")
    lines = textwrap.dedent("    >>> " + example).strip().splitlines() if example else []
    summary, _, rest = purpose.partition("\n")
    return f"{summary.strip()}\n{textwrap.dedent(rest)}".strip(), lines


def example(formula: Formula) -> dict[str, Any]:
    """The arguments of the example, by name; it may go over several lines."""
    first, *more = told(formula)[1]
    lines = [first.removeprefix(">>> "), *(line.removeprefix("... ") for line in more if line.startswith("... "))]
    calls = [node for node in ast.walk(ast.parse("\n".join(lines))) if isinstance(node, ast.Call)]
    call = next(node for node in calls if ast.unparse(node.func) == formula.name)
    return {str(keyword.arg): ast.literal_eval(keyword.value) for keyword in call.keywords}


def title(formula: Formula) -> str:
    return (sys.modules[formula.bare.__module__].__doc__ or formula.subject).partition("\n")[0]


def span(term: Term) -> str:
    return f"list, each {term.range}" if term.many else term.range


def default_of(argument: Argument) -> str | None:
    """What stands for an argument left out, as text."""
    if not argument.optional:
        return None
    if argument.default is None:
        return "blank"
    return argument.default if isinstance(argument.default, str) else f"{argument.default:g}"


def default_words(argument: Argument) -> str:
    return f"; {default_of(argument)} if left out" if argument.optional else ""


def _place(subject: str) -> tuple[int, str]:
    return (SUBJECTS.index(subject) if subject in SUBJECTS else len(SUBJECTS), subject)


def _table(formulas: list[Formula]) -> list[str]:
    column = max((len(formula.name) for formula in formulas), default=0)
    lines: list[str] = []
    for formula in formulas:
        first, *rest = textwrap.wrap(formula.summary, WIDTH - column - 4) or [""]
        lines += [f"  {formula.name:{column}}  {first}".rstrip(), *(" " * (column + 4) + line for line in rest)]
    return lines


def _entry(name: str, span: str, help_text: str) -> list[str]:
    return _heading(name, [*_wrapped(help_text), *_wrapped(span)])


def _heading(name: str, lines: Iterable[str]) -> list[str]:
    rows = [""] * (len(name) > NAME_WIDTH) + list(lines) or [""]
    return [f"  {name if not row else '':{NAME_WIDTH}} {text}".rstrip() for row, text in enumerate(rows)]


def _wrapped(text: str) -> list[str]:
    return textwrap.wrap(text, WIDTH - 15)


def _wrapped_example(line: str) -> list[str]:
    return textwrap.wrap(line, WIDTH - 4, subsequent_indent="... ", break_on_hyphens=False)


def _broken(form: str) -> Iterator[str]:
    """A cell formula broken after its signs, as it has no spaces to break at."""
    line = ""
    for piece in re.findall(r'"[^"]*"|[^-+*/,"]+[-+*/,]?|[-+*/,]', form):
        if line and len(line + piece) > WIDTH - 15:
            yield line
            line = ""
        line += piece
    yield line


def _stems(text: str) -> set[str]:
    return {_stem(word) for word in _words(text) if word not in SMALL_WORDS}


def _words(text: str) -> list[str]:
    return re.findall(r"[a-z]+", text.lower().replace("_", " "))


def _stem(word: str) -> str:
    return word[:-1] if word.endswith("s") and not word.endswith("ss") and len(word) > 3 else word


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


def _data(formula: Formula) -> dict[str, object]:
    purpose, example = told(formula)
    return {
        "name": formula.name,
        "subject": formula.subject,
        "summary": formula.summary,
        "purpose": purpose,
        "arguments": [_argument_data(argument) for argument in formula.arguments.values()],
        "result": _term_data(formula.result),
        "fields": [{"name": name, **_term_data(term)} for name, term in formula.fields.items()],
        "formula": native.spell(formula.native) if formula.native else None,
        "no formula because": formula.no_native or None,
        "requires": list(formula.requires.values()),
        "source": formula.source,
        "example": example,
    }


def _argument_data(argument: Argument) -> dict[str, object]:
    default = {"default": argument.default} if argument.optional else {}
    return {"name": argument.name, **_term_data(argument.term), **default}


def _term_data(term: Term) -> dict[str, object]:
    choices = {"choices": list(term.choices)} if term.choices else {}
    return {"unit": term.unit, "range": term.range, "help": term.help, "list": term.many, **choices}
