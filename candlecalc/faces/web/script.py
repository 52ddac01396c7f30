"""The script for web spreadsheets: every function that JavaScript can say, with what it reads and checks.

One file of plain JavaScript to paste into a script editor: the functions with their help first, then the tables
that they read by, written from ours, then the few hundred lines that all of them share.
"""

import json
from collections.abc import Mapping
from itertools import groupby
from pathlib import Path
from typing import Any

import candlecalc.declaration.native as language
from candlecalc import __version__, tables
from candlecalc.declaration import term as terms
from candlecalc.declaration.declared import LARGEST, Function, asked
from candlecalc.faces.addins import wizard
from candlecalc.faces.described import reference
from candlecalc.faces.web import jsdoc
from candlecalc.faces.web.ranges import Ranges, result_of
from candlecalc.faces.web.spelling import Speller
from candlecalc.quantities import days, factors, numerals, units

HERE = Path(__file__).parent
RUNTIME = ["cells", "checking", "reading", "sums", "statistics"]
# What the script does by its own reading of units.
BY_UNITS = {"convert": "convert_(value, unit, to)"}
RULE = "// " + "-" * 113


def script(*, module: bool = False) -> str:
    """The script; as a module it exports its functions."""
    said = [formula for formula in reference.every() if not why_not(formula)]
    ranges = Ranges(said)
    parts = [_head(), "const FUNCTIONS_ = {};\n"]
    for subject, group in groupby(said, key=lambda formula: formula.subject):
        members = list(group)
        parts += [_heading(reference.title(members[0]).rstrip(".") or subject)]
        parts += [_function(formula, ranges) for formula in members]
    parts += [_why(), _heading("What the functions read by"), _tables(ranges)]
    for name in RUNTIME:
        title, _, text = (HERE / "runtime" / f"{name}.js").read_text(encoding="utf-8").partition("\n\n")
        parts += [_heading(title.removeprefix("// ")), text]
    if module:
        names = [wizard.WHY, *map(wizard.name, said)]
        parts += [f"export {{ {', '.join(sorted(names))} }};\n"]
    return "\n".join(parts)


def why_not(formula: Function) -> str:
    """Why the script has not a function; nothing where it has it."""
    return "" if formula.native or formula.name in BY_UNITS else formula.no_native


def left_out() -> list[str]:
    """The functions that the script has not, a line for each reason."""
    found = sorted((why_not(formula), formula.name) for formula in reference.every() if why_not(formula))
    return [
        f"{reason}: {', '.join(name for _, name in group)}" for reason, group in groupby(found, key=lambda it: it[0])
    ]


def told_of_left_out() -> list[str]:
    """What is said of them; nothing where the script has all."""
    found = left_out()
    return ["Not in the script, but in the other ways of candlecalc:", *found] if found else []


def _head() -> str:
    text = (HERE / "install.txt").read_text(encoding="utf-8").replace("VERSION", __version__)
    lines = [*text.splitlines(), "", *(line for each in told_of_left_out() for line in jsdoc.wrapped(each, "  "))]
    return "\n".join(f"// {line}".rstrip() for line in lines) + "\n"


def _heading(title: str) -> str:
    return f"{RULE}\n// {title}\n"


def _function(formula: Function, ranges: Ranges) -> str:
    """A function with its comment, and beside it what it takes, asks and gives."""
    name, arguments = wizard.name(formula), ", ".join(formula.arguments)
    facts = {"takes": _object({name: _json(ranges.name(each.term)) for name, each in formula.arguments.items()})}
    optional = {each.name: each.default for each in formula.arguments.values() if each.optional}
    if optional:
        facts["left_out"] = _json(optional)
    asks = [_asks(formula, condition, words) for condition, words in formula.requires.items()]
    if asks:
        facts["asks"] = "[\n" + "".join(f"    {each},\n" for each in asks) + "  ]"
    facts["answer"] = f"({arguments}) => {_answer(formula)}"
    facts["gives"] = _json(ranges.name(result_of(formula)))
    inside = "".join(f"  {key}: {text},\n" for key, text in facts.items())
    return (
        f"{jsdoc.comment(formula)}\nfunction {name}({arguments}) {{\n"
        f"  return answer_({_json(formula.name)}, arguments);\n}}\nFUNCTIONS_.{formula.name} = {{\n{inside}}};\n"
    )


def _answer(formula: Function) -> str:
    return _spelled(formula, formula.native) if formula.native else BY_UNITS[formula.name]


def _asks(formula: Function, condition: str, words: str) -> str:
    names = language.names(asked(condition))
    return (
        f"[({', '.join(formula.arguments)}) => {_spelled(formula, asked(condition))}, "
        f"{', '.join(map(_json, [words, *names]))}]"
    )


def _spelled(formula: Function, tree: language.Node) -> str:
    return Speller(frozenset(name for name, each in formula.arguments.items() if each.term.many)).spell(tree)


def _why() -> str:
    tags = [(f"@param {{string}} {name}", text) for name, text in list(wizard.why_arguments().items())[:1]]
    tags += [("@param {...*} values", "what the function was given, in the same order")]
    return (
        f"{jsdoc.block([wizard.WHY_ABOUT], tags, '@return {string}')}\nfunction {wizard.WHY}(name, ...values) {{\n"
        + ("  return why_(name, values);\n}\n")
    )


def _tables(ranges: Ranges) -> str:
    """What the functions read by, from our own tables."""
    forms = {
        "piece": units.PIECE.pattern,
        "amount": numerals.AMOUNT.pattern,
        "fractions": numerals.SIGNS_OF_FRACTIONS.pattern,
        "an_hour": units.AN_HOUR.pattern,
        "day_in_words": days.IN_WORDS.pattern,
        "day_in_numbers": days.IN_NUMBERS.pattern,
        "minus": numerals.MINUS,
    }
    written: dict[str, str] = {
        "RANGES_": _object({_key(name): _json(facts) for name, facts in ranges.known.items()}, "  "),
        "DIMENSIONS_": _lines(units.DIMENSIONS),
        "EXAMPLES_": _lines(units.EXAMPLES),
        "OFTEN_": _lines(units.OFTEN),
        "SPELLINGS_": _json(units.SPELLINGS),
        "UNITS_": _sizes(),
        "CURRENCIES_": _json([row["currency"] for row in tables.rows("currencies")]),
        "MONTHS_": _json(days.MONTHS),
        "FORMS_": _lines({name: pattern.replace("(?P<", "(?<") for name, pattern in forms.items()}),
        "MOST_PIECES_": _json(units.MOST_PIECES),
        "FIRST_DAY_": _json(days.FIRST),
        "LAST_DAY_": _json(days.LAST),
        "LARGEST_": _json(LARGEST),
        "CRUMB_": _json(terms.CRUMB),
        "LONGEST_SHOWN_": _json(terms.LONGEST_SHOWN),
    }
    notes = {
        "RANGES_": "Ranges by their words: without a low it is 0, without a high there is none.",
        "UNITS_": "What a unit measures, and how many of the first of its kind make one: so much over so much.",
        "FORMS_": "How numbers and days are written.",
    }
    return "".join(
        (f"// {notes[name]}\n" if name in notes else "") + f"const {name} = {text};\n\n"
        for name, text in written.items()
    )


def _sizes() -> str:
    sizes = factors.sizes(units.ASKED)
    return _object(
        {_key(name): f"[{_json(kind)}, {top}n, {bottom}n]" for name, (kind, top, bottom) in sizes.items()}, "  "
    )


def _lines(mapping: Mapping[str, Any]) -> str:
    return _object({_key(name): _json(value) for name, value in mapping.items()}, "  ")


def _object(texts: Mapping[str, str], indent: str = "") -> str:
    """An object of keys and texts: in one line, or with an indent a key a line."""
    pairs = [f"{key}: {text}" for key, text in texts.items()]
    if indent:
        return "{\n" + "".join(f"{indent}{pair},\n" for pair in pairs) + "}"
    return f"{{ {', '.join(pairs)} }}" if pairs else "{}"


def _key(name: str) -> str:
    return name if name.isidentifier() and name.isascii() else _json(name)


def _json(value: Any) -> str:
    return json.dumps(value, ensure_ascii=False)
