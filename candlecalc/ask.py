"""The functions at the terminal: one question asked and answered.

Answers come in the asker's unit with ours beside it: `0.70 oz (19.8 g)`.
"""

import difflib
import re
import textwrap
from collections.abc import Iterable, Mapping
from contextlib import suppress
from typing import Any

import candlecalc.calc  # noqa: F401  fills the registry
from candlecalc import native, units
from candlecalc.faces import reference, wizard
from candlecalc.formula import REGISTRY, Argument, Formula, Term
from candlecalc.rounding import round_half_away

DECIMALS = {"oz": 2, "lb": 3, "g": 1, "kg": 3, "ml": 1, "cl": 2, "l": 3, "fl oz": 2, "mm": 1, "cm": 2, "in": 2,
            "C": 0, "F": 0, "C difference": 1, "F difference": 1, "s": 0, "min": 1, "h": 2, "g/ml": 3, "kg/m3": 0,
            "W": 0, "kW": 2, "kJ": 1, "MJ": 3, "kWh": 3, "kJ/kg": 0, "MJ/kg": 1, "kJ/(kg C)": 2, "J/(kg C)": 0,
            "g/h": 2, "oz/h": 3, "mm/h": 1, "in/h": 2}  # fmt: skip

Given = dict[str, Any]


class CallError(ValueError):
    """The question itself is wrong, rather than a value in it."""


def ask(name: str, words: Iterable[str]) -> list[str]:
    """The answer to a question as typed, a line for each number; a ValueError says what is wrong."""
    formula = function(name)
    return answer(formula, arguments(formula, words))


def function(name: str) -> Formula:
    """The function of this name, however it is written: OIL-FOR-WAX, CANDLE_OIL_FOR_WAX."""
    plain = name.lower().replace("-", "_").removeprefix(wizard.PREFIX.lower())
    if plain in REGISTRY:
        return REGISTRY[plain]
    near = difflib.get_close_matches(plain, REGISTRY, cutoff=0.5) or [found.name for found in reference.find(plain)[:3]]
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
    if not rows:
        return ["none"]
    if not formula.fields:
        return [word for row in words for word in row]
    if formula.result.many:
        lines = _columns([list(formula.fields), *words])
        return lines if max(map(len, lines)) <= reference.WIDTH else _blocks(list(formula.fields), words)
    return [line for name, word in zip(formula.fields, words[0], strict=True) for line in _answered(name, word)]


def _answered(name: str, words: str) -> list[str]:
    return textwrap.wrap(f"{name.replace('_', ' ')}: {words}", reference.WIDTH, subsequent_indent="  ")


def _columns(rows: list[list[str]]) -> list[str]:
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    return ["  ".join(f"{word:{width}}" for word, width in zip(row, widths, strict=True)).rstrip() for row in rows]


def _blocks(names: list[str], rows: list[list[str]]) -> list[str]:
    """Rows of words too long to stand side by side: a paragraph each, without its blanks."""
    lines: list[str] = []
    for row in rows:
        said = [(name, word) for name, word in zip(names, row, strict=True) if word != "-"]
        lines += [line for name, word in said for line in _answered(name, word)] + [""]
    return lines[:-1]


def shown(value: Any, term: Term, unit: str = "", digits: int = 2, per: str = "unit") -> str:
    """A result in words: `0.70 oz (19.8 g)`, `9.1% of total weight`, `24`."""
    if value is None:
        return "-"
    if not term.counts:
        return str(value)
    if term.unit in units.DIMENSIONS:
        return f"{value:.0f} {term.unit}" if term.whole and not unit else _measure(value, term.unit, unit)
    if term.unit.startswith("of "):
        return f"{_rounded(value * 100, 1)}% {term.unit}"
    if term.unit == "money per unit":
        return f"{_significant(value, max(digits, 2))} per {per or 'unit'}"
    if term.unit.startswith("money"):
        return _rounded(value, digits) + term.unit.removeprefix("money")
    number = _rounded(value, 0) if float(value).is_integer() else native.number(float(f"{value:.6g}"))
    return f"{number} {term.unit}".strip()


def prompt_for(argument: Argument) -> str:
    """The question for one argument: `wax: wax in the melt, before any oil (0 g or more)`."""
    return f"{argument.name}: {argument.term.help} ({reference.span(argument.term)})"


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
    """A text as the declaration takes it: a list cut into its parts."""
    if argument.term.text or argument.term.unit == "date":
        return text  # commas and semicolons are its own
    if argument.term.many:
        return [_number(argument.term, part) for piece in text for part in _parts(argument.name, piece)]
    return text


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
        single = formula.arguments[name].term.unit == "" and isinstance(text, str)
        number, unit = _measured(text) if single else (0.0, "")
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
            unit = units.read(text, term.unit).unit if alike and isinstance(text, str) and text else ""
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
