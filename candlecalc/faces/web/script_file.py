"""The script for web spreadsheets: every function that JavaScript can say, with what it reads and checks.

One file of plain JavaScript to paste into a script editor: the functions with their help first, then the tables
that they read by, written from ours, then the few hundred lines that all of them share.
"""

import json
from collections.abc import Mapping
from functools import cache
from itertools import groupby
from pathlib import Path
from typing import Any

from candlecalc import __version__, tables
from candlecalc.declaration import term as terms
from candlecalc.declaration.declared import LARGEST, REGISTRY, Function
from candlecalc.declaration.guard import native_of
from candlecalc.faces.addins import wizard
from candlecalc.faces.described import reference
from candlecalc.faces.web import jsdoc
from candlecalc.faces.web.conditions import Conditions
from candlecalc.faces.web.counterparts import safe
from candlecalc.faces.web.ranges import Ranges, result_of
from candlecalc.faces.web.spelling import spelled
from candlecalc.faces.web.translation import Translation, UnsayableError
from candlecalc.quantities import days, factors, numerals, units

HERE = Path(__file__).parent
RUNTIME = ["cells", "checking", "reading", "sums", "statistics", "steps"]
# What the script does by its own reading of units.
BY_UNITS = {"convert": "convert_(value, unit, to)"}
# The script would be too long to read with them, and whoever has a sheet of their own asks for others.
PART = "steps of the season workbook's tabs, which a sheet of your own hardly asks for"
READABLE = 400  # characters of a formula
RULE = "// " + "-" * 60


def script(*, module: bool = False) -> str:
    """The script; as a module it exports its functions."""
    said = functions()
    sources = {source: number for number, source in enumerate(dict.fromkeys(each.source for each in said), start=1)}
    ranges, conditions, steps = Ranges(said), Conditions(), Translation()
    parts = [_head(), "const FUNCTIONS_ = {};\n"]
    for subject, group in groupby(said, key=lambda formula: formula.subject):
        members = list(group)
        parts += [_heading(reference.title(members[0]).rstrip(".") or subject)]
        parts += [_function(formula, sources[formula.source], ranges, conditions, steps) for formula in members]
    parts += [_heading("Sources, by the number that stands with a function"), _numbered(sources)]
    parts += [_why(), _heading("Steps that functions share"), *steps.texts.values()]
    parts += [_heading("What the functions read by"), _tables(ranges, conditions)]
    for name in RUNTIME:
        title, _, text = (HERE / "runtime" / f"{name}.js").read_text(encoding="utf-8").partition("\n\n")
        parts += [_heading(title.removeprefix("// ")), text]
    if module:
        names = [wizard.WHY, *map(wizard.name, said)]
        parts += [f"export {{ {', '.join(sorted(names))} }};\n"]
    return "\n".join(parts)


def functions() -> list[Function]:
    """The functions that the script has, in their order."""
    return [formula for formula in reference.every() if not why_not(formula)]


@cache
def _why_not(name: str) -> str:
    formula = REGISTRY[name]
    if formula.part:
        return PART
    if name in BY_UNITS or _is_short(formula):
        return ""
    try:
        Translation().function(formula.bare)
    except UnsayableError as problem:
        return str(problem)
    return ""


def why_not(formula: Function) -> str:
    """Why the script has not a function; nothing where it has it."""
    return _why_not(formula.name)


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


def _numbered(sources: Mapping[str, int]) -> str:
    """The sources, a line or a few each: many functions share one."""
    lines = [line for source, number in sources.items() for line in jsdoc.wrapped(f"{number}  {source}", "   ")]
    return "\n".join(f"// {line}" for line in lines) + "\n"


def _heading(title: str) -> str:
    return f"{RULE}\n// {title}\n"


def _function(formula: Function, source: int, ranges: Ranges, conditions: Conditions, steps: Translation) -> str:
    """A function with its comment, and beside it what it takes, asks and gives."""
    name, arguments = wizard.name(formula), ", ".join(map(safe, formula.arguments))
    facts = {"takes": _object({name: _json(ranges.name(each.term)) for name, each in formula.arguments.items()})}
    optional = {each.name: each.default for each in formula.arguments.values() if each.optional}
    if optional:
        facts["left_out"] = _json(optional)
    if formula.requires:
        facts["asks"] = _json([conditions.name(formula, each) for each in formula.requires])
    if formula.name in BY_UNITS or _is_short(formula):
        said = BY_UNITS.get(formula.name) or spelled(formula, native_of(formula))
        facts["answer"] = f"({arguments}) => {said}"
    else:
        facts["steps"] = steps.function(formula.bare)
    facts["gives"] = _json(ranges.name(result_of(formula)))
    if formula.result.many:
        facts["several"] = "true"
    if formula.fields:
        facts["fields"] = _object({name: _json(ranges.name(term)) for name, term in formula.fields.items()})
    inside = "".join(f"  {key}: {text},\n" for key, text in facts.items())
    return (
        f"{jsdoc.comment(formula, source)}\n"
        f"function {name}({arguments}) {{ return answer_({_json(formula.name)}, arguments); }}\n"
        f"FUNCTIONS_.{formula.name} = {{\n{inside}}};\n"
    )


def _is_short(formula: Function) -> bool:
    """Whether the script has a native form that can be read; else the function's own steps are plainer."""
    try:
        return len(spelled(formula, native_of(formula))) <= READABLE
    except ValueError:
        return False


def _why() -> str:
    tags = [
        ("@param {string} name", wizard.why_arguments()["name"]),
        ("@param {...*} values", "what the function was given, in the same order"),
    ]
    comment = jsdoc.block([wizard.WHY_ABOUT], tags)
    return f"{comment}\nfunction {wizard.WHY}(name, ...values) {{\n  return why_(name, values);\n}}\n"


def _tables(ranges: Ranges, conditions: Conditions) -> str:
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
        "ASKS_": _object({_key(words): text for words, text in conditions.known.items()}, "  "),
        "DIMENSIONS_": _lines(units.DIMENSIONS),
        "EXAMPLES_": _lines(units.EXAMPLES),
        "OFTEN_": _lines(units.OFTEN),
        "SPELLED_": _lines(_spellings()),
        "SPELLINGS_": "spellings_(SPELLED_)",
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
        "RANGES_": "Ranges by their units: without a low it is 0, without a high there is none; % asks for a share.",
        "ASKS_": "What functions ask of their arguments together: what holds, what is told where not, and of which.",
        "UNITS_": "What a unit measures, and how many of the first of its kind make one: so much over so much.",
        "FORMS_": "How numbers and days are written.",
    }
    return "".join(
        (f"// {notes[name]}\n" if name in notes else "") + f"const {name} = {text};\n\n"
        for name, text in written.items()
    )


def _spellings() -> dict[str, list[str]]:
    """The spellings of each unit."""
    found: dict[str, list[str]] = {}
    for spelling, unit in units.SPELLINGS.items():
        found.setdefault(unit, []).append(spelling)
    return found


def _sizes() -> str:
    """Each unit with the first of its kind, and how many of that make one: so much over so much."""
    apart = {f"delta_{name}" for name in units.TEMPERATURES}
    names = {*units.SPELLINGS.values(), *(unit for _, unit in units.DIMENSIONS.values()), *apart}
    rows: dict[str, str] = {}
    for name in sorted(names):
        # A scale with a zero of its own has no factor.
        scale = name in units.TEMPERATURES
        kind = next((each for each in rows if factors.alike(each, name)), name)
        first = next((each for each in rows if factors.alike(each, name) and each not in units.TEMPERATURES), name)
        top, bottom = (1, 1) if scale else factors.exact(name, first)
        rows[name] = f"[{_json(kind)}, {top}n, {bottom}n]"
    return _object({_key(name): row for name, row in rows.items()}, "  ")


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
    """A value as JavaScript is written by hand: plain keys, and whole numbers without a point."""
    if isinstance(value, Mapping):
        return _object({_key(name): _json(each) for name, each in value.items()})
    if isinstance(value, (list, tuple)):
        return f"[{', '.join(map(_json, value))}]"
    if isinstance(value, float) and value.is_integer():
        return str(int(value))
    return json.dumps(value, ensure_ascii=False)
