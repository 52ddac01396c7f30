"""The functions at the terminal: one question asked and answered, and finding the function to ask.

Answers come in the asker's unit with ours beside it: `0.70 oz (19.8 g)`.
"""

import difflib
import json
import re
import sys
import textwrap
from collections.abc import Iterable, Iterator, Mapping
from contextlib import suppress
from itertools import groupby
from typing import Any

import candlecalc.calc  # noqa: F401  fills the registry
from candlecalc import native, units
from candlecalc.formula import REGISTRY, Argument, Formula, Term
from candlecalc.rounding import round_half_away

WIDTH = 79  # a full line of 80 wraps in some terminals
# The order in which a maker meets the subjects; any other comes after.
SUBJECTS = ["vessel", "fragrance", "wax", "heat", "burn", "cost", "price", "plan", "stock", "label", "hazard", "money"]
DECIMALS = {"oz": 2, "lb": 3, "g": 1, "kg": 3, "ml": 1, "cl": 2, "l": 3, "fl oz": 2, "mm": 1, "cm": 2, "in": 2,
            "C": 0, "F": 0, "min": 1, "h": 2, "g/ml": 3, "kg/m3": 0}  # fmt: skip
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
}
SMALL_WORDS = frozenset(
    ["a", "an", "and", "are", "as", "at", "be", "by", "can", "do", "does", "for", "from", "how", "i", "if", "in", "is"]
    + ["it", "many", "much", "my", "need", "of", "on", "or", "the", "to", "what", "when", "with"]
)

Given = dict[str, Any]


class CallError(ValueError):
    """The question itself is wrong, rather than a value in it."""


def ask(name: str, words: Iterable[str]) -> list[str]:
    """The answer to a question as typed, a line for each number; a ValueError says what is wrong."""
    formula = function(name)
    return answer(formula, arguments(formula, words))


def function(name: str) -> Formula:
    """The function of this name, however it is written: OIL-FOR-WAX, CANDLE_OIL_FOR_WAX."""
    plain = name.lower().replace("-", "_").removeprefix("candle_")
    if plain in REGISTRY:
        return REGISTRY[plain]
    near = difflib.get_close_matches(plain, REGISTRY, cutoff=0.5) or [found.name for found in find(plain)[:3]]
    raise CallError(f"there is no function {name}. {_nearest(near) or 'List them with: candlecalc functions'}")


def arguments(formula: Formula, words: Iterable[str]) -> Given:
    """Words such as `wax=10 oz` and `7%` by argument name, as text; those without a name in order."""
    given: Given = {}
    for word in _joined(words):
        name, equals, value = word.partition("=")
        if not equals:
            name, value = next((name for name in formula.arguments if name not in given), ""), word
        if not name:
            raise CallError(f"{word} is one too many: {formula.name} takes {', '.join(formula.arguments)}")
        _put(formula, given, name.strip().lower(), value.strip())
    missing = [name for name, argument in formula.arguments.items() if not argument.optional and name not in given]
    if missing:
        raise CallError(f"{formula.name} also needs {', and '.join(prompt_for(formula.arguments[n]) for n in missing)}")
    return given


def answer(formula: Formula, given: Mapping[str, Any]) -> list[str]:
    """The result of a function for arguments as text, as it is shown: a line for each number."""
    given = {name: _value(formula.arguments[name], text) for name, text in given.items()}
    per = ""
    if formula.result.unit == "money per unit":
        given, per = _without_pack_unit(formula, given)
    rows = formula.rows(formula.call(**given))
    digits = int(float(given.get("digits", 2)))
    terms = formula.fields or {"": formula.result}
    unit = {name: _unit_asked(formula, term, given) for name, term in terms.items()}
    words = [
        [shown(value, term, unit[name], digits, per) for (name, term), value in zip(terms.items(), row, strict=True)]
        for row in rows
    ]
    if not formula.fields:
        return [word for row in words for word in row]
    if formula.result.many:
        return _columns([list(formula.fields), *words])
    return [line for name, word in zip(formula.fields, words[0], strict=True) for line in _answered(name, word)]


def _answered(name: str, words: str) -> list[str]:
    return textwrap.wrap(f"{name.replace('_', ' ')}: {words}", WIDTH, subsequent_indent="  ")


def _columns(rows: list[list[str]]) -> list[str]:
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    return ["  ".join(f"{word:{width}}" for word, width in zip(row, widths, strict=True)).rstrip() for row in rows]


def shown(value: Any, term: Term, unit: str = "", digits: int = 2, per: str = "unit") -> str:
    """A result in words: `0.70 oz (19.8 g)`, `9.1% of total weight`, `24`."""
    if value is None:
        return "-"
    if not term.counts:
        return str(value)
    if term.unit in units.DIMENSIONS:
        return _measure(value, term.unit, unit)
    if term.unit.startswith("of "):
        return f"{_rounded(value * 100, 1)}% {term.unit}"
    if term.unit == "money per unit":
        return f"{_significant(value, max(digits, 2))} per {per or 'unit'}"
    if term.unit.startswith("money"):
        return _rounded(value, digits) + term.unit.removeprefix("money")
    number = _rounded(value, 0) if float(value).is_integer() else native.number(float(f"{value:.6g}"))
    return f"{number} {term.unit}".strip()


def listing() -> list[str]:
    """Every function by subject, with what it is for."""
    lines: list[str] = []
    for _, formulas in groupby(every(), key=lambda formula: formula.subject):
        group = list(formulas)
        lines += [*textwrap.wrap(_title(group[0]), WIDTH), *_table(group), ""]
    return [*lines, "More on one of them: candlecalc functions NAME"]


def every() -> list[Formula]:
    """Every function, in the order of `listing`."""
    return sorted(REGISTRY.values(), key=lambda formula: _place(formula.subject))


def found(words: str) -> list[str]:
    """The functions that best answer to a maker's words, best first."""
    return _table(find(words)[:8])


def find(words: str) -> list[Formula]:
    """Functions that answer to a maker's words, best first."""
    wanted = [{stem, SAYINGS.get(stem, stem)} for stem in _stems(words)]
    phrase = "_".join(words.lower().split())
    scores = [(*_score(formula, wanted), phrase in formula.name, formula) for formula in every()]
    best = sorted(scores, key=lambda score: score[:3], reverse=True)
    return [formula for matched, _, _, formula in best if matched]


def page(formula: Formula) -> list[str]:
    """All there is to know about one function."""
    purpose, example = _told(formula)
    lines = [formula.name, ""]
    for paragraph in purpose.split("\n\n"):
        lines += [*textwrap.wrap(paragraph, WIDTH, break_on_hyphens=False), ""]
    for argument in formula.arguments.values():
        lines += _entry(argument.name, _range(argument.term) + _default(argument), argument.term.help)
    lines += ["", *_entry("result", formula.gives, formula.result.help)]
    lines += [line for name, term in formula.fields.items() for line in _entry(name, _range(term), term.help)] + [""]
    lines += _heading("formula", _broken(native.spell(formula.native)) if formula.native else [formula.no_native])
    for words in formula.requires.values():
        lines += _heading("where", _wrapped(words))
    lines += _heading("source", _wrapped(formula.source))
    return [*lines, "", *(f"    {part}" for line in example for part in _wrapped_example(line))]


def as_json(formulas: Iterable[Formula]) -> str:
    """The same as data, for another program to read."""
    return json.dumps([_data(formula) for formula in formulas], indent=2, ensure_ascii=False)


def prompt_for(argument: Argument) -> str:
    """The question for one argument: `wax: wax in the melt, before any oil (0 g or more)`."""
    return f"{argument.name}: {argument.term.help} ({_range(argument.term)})"


def default_of(argument: Argument) -> str | None:
    """What stands for an argument left out, as text."""
    if not argument.optional:
        return None
    if argument.default is None:
        return "blank"
    return argument.default if isinstance(argument.default, str) else f"{argument.default:g}"


def checked(argument: Argument, text: str) -> Any:
    """A text for one argument as `answer` takes it; a ValueError says what is wrong with it."""
    given = [text] if argument.term.many else text
    argument.read(_value(argument, given))
    return given


def _put(formula: Formula, given: Given, name: str, value: str) -> None:
    if name not in formula.arguments:
        near = difflib.get_close_matches(name, formula.arguments, cutoff=0.5)
        raise CallError(f"{formula.name} has no {name}. {_nearest(near or formula.arguments)}")
    many = formula.arguments[name].term.many
    if name in given and not many:
        raise CallError(f"{name} is given twice")
    given[name] = [*given.get(name, []), value] if many else value


def _joined(words: Iterable[str]) -> list[str]:
    """Words with a unit put back where quotes were forgotten: `wax=10 oz` arrives as two words."""
    joined: list[str] = []
    for word in words:
        if joined and _goes_on(joined[-1].lower(), word.lower()):
            joined[-1] += f" {word}"
        else:
            joined.append(word)
    return joined


def _goes_on(before: str, word: str) -> bool:
    if before.endswith(" fl"):
        return word == "oz"
    return before[-1:].isdigit() and (word in units.SPELLINGS or word == "fl")


def _value(argument: Argument, text: Any) -> Any:
    """A text as the declaration takes it: a list cut into its parts, a choice in its own spelling."""
    if argument.term.text or argument.term.unit == "date":
        return text  # commas and semicolons are its own
    if argument.term.many:
        return [_number(argument.term, part) for piece in text for part in _parts(argument.name, piece)]
    spelled = {choice.lower(): choice for choice in argument.term.choices}
    return spelled.get(text.lower(), text)


def _number(term: Term, text: str) -> Any:
    """At the terminal all is text: a bare number in a list is one."""
    with suppress(ValueError):
        value, unit = units.read(text, term.unit)
        return text if unit else value
    return text


def _parts(name: str, text: str) -> list[str]:
    if ";" in text:
        return [part.strip() for part in text.split(";")]
    # "1,5" may be one and a half or two numbers; where points are in use it can only be two.
    unclear = re.search(r"[0-9],[0-9]", text) and "." not in text
    if unclear:
        raise ValueError(f'{name} is "{text}"; put semicolons between its values: "{text.replace(",", "; ")}"')
    return [part.strip() for part in text.split(",")]


def _without_pack_unit(formula: Formula, given: Given) -> tuple[Given, str]:
    """A cost per unit is per the unit its pack was counted in: "10 lb" is ten, and the cost is per lb."""
    for name, text in given.items():
        number, unit = _measured(text) if formula.arguments[name].term.unit == "" else (0.0, "")
        if unit:
            return {**given, name: number}, unit
    return given, ""


def _measured(text: str) -> tuple[float, str]:
    """A text as a number of its own unit, whatever it measures; no unit where it has none."""
    for unit, (_, ours) in units.DIMENSIONS.items():
        with suppress(ValueError):
            value, spelled = units.read(text, unit)
            if spelled:
                return float(f"{units.convert(value, ours, spelled):.12g}"), units.NAMES[spelled]
    return 0.0, ""


def _unit_asked(formula: Formula, result: Term, given: Given) -> str:
    """The unit of the first argument that measures the same kind of thing as the result, where it has one."""
    for name, value in given.items():
        term = formula.arguments[name].term
        for text in value if isinstance(value, list) else [value]:
            alike = term.unit in units.DIMENSIONS and units.kind_of(term.unit) == units.kind_of(result.unit)
            unit = units.read(text, term.unit).unit if alike and isinstance(text, str) else ""
            if unit:
                return unit
    return ""


def _measure(value: float, ours: str, unit: str) -> str:
    own = units.DIMENSIONS[ours][1]
    plain = f"{_rounded(value, DECIMALS[ours])} {ours}"
    if unit in ("", own):
        return plain
    name = units.NAMES[unit]
    return f"{_rounded(units.convert(value, own, unit), DECIMALS[name])} {name} ({plain})"


def _rounded(value: float, decimals: int) -> str:
    number = round_half_away(value, decimals) + 0.0  # no minus before a zero
    # Something is not shown as nothing: a trace of dye is 0.02 g, not 0.0 g.
    trace = not number and abs(value) >= 10.0 ** (-decimals - 3)
    return _significant(value, 0, 2) if trace else f"{number:.{decimals}f}"


def _significant(value: float, decimals: int, digits: int = 4) -> str:
    """At least so many decimals, and as many more as it takes to show so many digits of a small number."""
    shown = native.number(float(f"{value:.{digits}g}"))
    return f"{value:.{decimals}f}" if len(shown.partition(".")[2]) < decimals else shown


def _nearest(names: Iterable[str]) -> str:
    return f"Nearest: {', '.join(names)}." if names else ""


def _range(term: Term) -> str:
    return f"list, each {term.range}" if term.many else term.range


def _default(argument: Argument) -> str:
    return f"; {default_of(argument)} if left out" if argument.optional else ""


def _place(subject: str) -> tuple[int, str]:
    return (SUBJECTS.index(subject) if subject in SUBJECTS else len(SUBJECTS), subject)


def _title(formula: Formula) -> str:
    return (sys.modules[formula.bare.__module__].__doc__ or formula.subject).partition("\n")[0]


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
    rows = list(lines) or [""]
    return [f"  {name if not row else '':12} {text}".rstrip() for row, text in enumerate(rows)]


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


def _told(formula: Formula) -> tuple[str, list[str]]:
    """What the docstring tells, and the example at its end."""
    purpose, _, example = (formula.bare.__doc__ or "").partition("\n    >>> ")
    lines = textwrap.dedent("    >>> " + example).strip().splitlines() if example else []
    summary, _, rest = purpose.partition("\n")
    return f"{summary.strip()}\n{textwrap.dedent(rest)}".strip(), lines


def _stems(text: str) -> set[str]:
    words = re.findall(r"[a-z]+", text.lower().replace("_", " "))
    return {_stem(word) for word in words if word not in SMALL_WORDS}


def _stem(word: str) -> str:
    return word[:-1] if word.endswith("s") and not word.endswith("ss") and len(word) > 3 else word


def _score(formula: Formula, wanted: list[set[str]]) -> tuple[int, int]:
    """How many of the words it answers to, then how well: a name counts most, help least."""
    terms = [*(argument.term for argument in formula.arguments.values()), formula.result]
    texts = [(6, formula.name), (3, formula.summary), (2, " ".join([*formula.arguments, formula.subject]))]
    texts += [(1, " ".join([_told(formula)[0], *(term.help for term in terms)]))]
    best = [max((weight for weight, text in texts if alike & _stems(text)), default=0) for alike in wanted]
    return sum(map(bool, best)), sum(best)


def _data(formula: Formula) -> dict[str, object]:
    purpose, example = _told(formula)
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
