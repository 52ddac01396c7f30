"""Results in words, laid out for a terminal.

They come in the asker's unit with ours beside it: `0.70 oz (19.8 g)`.
"""

import textwrap
from collections.abc import Sequence
from typing import Any

from candlecalc import native, units
from candlecalc.faces.terminal import WIDTH
from candlecalc.formula import Formula, Term
from candlecalc.rounding import round_half_away

DECIMALS = {"oz": 2, "lb": 3, "g": 1, "kg": 3, "ml": 1, "cl": 2, "l": 3, "fl oz": 2, "mm": 1, "cm": 2, "in": 2,
            "C": 0, "F": 0, "C difference": 1, "F difference": 1, "s": 0, "min": 1, "h": 2, "g/ml": 3, "kg/m3": 0,
            "W": 0, "kW": 2, "kJ": 1, "MJ": 3, "kWh": 3, "kJ/kg": 0, "MJ/kg": 1, "kJ/(kg C)": 2, "J/(kg C)": 0,
            "g/h": 2, "oz/h": 3, "mm/h": 1, "in/h": 2}  # fmt: skip


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


def lines(formula: Formula, rows: Sequence[Sequence[str]]) -> list[str]:
    """Rows of results in words as lines: side by side where there are several with names and they fit."""
    if not rows:
        return ["none"]
    names = list(formula.fields)
    if not names:
        return [word for row in rows for word in row]
    if not formula.result.many:
        return [line for name, word in zip(names, rows[0], strict=True) for line in _answered(name, word)]
    columns = _columns([names, *rows])
    return columns if max(map(len, columns)) <= WIDTH else _blocks(names, rows)


def _answered(name: str, words: str) -> list[str]:
    return textwrap.wrap(f"{name.replace('_', ' ')}: {words}", WIDTH, subsequent_indent="  ")


def _columns(rows: Sequence[Sequence[str]]) -> list[str]:
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    return ["  ".join(f"{word:{width}}" for word, width in zip(row, widths, strict=True)).rstrip() for row in rows]


def _blocks(names: Sequence[str], rows: Sequence[Sequence[str]]) -> list[str]:
    """Rows of words too long to stand side by side: a paragraph each, without its blanks."""
    lines: list[str] = []
    for row in rows:
        said = [(name, word) for name, word in zip(names, row, strict=True) if word != "-"]
        lines += [line for name, word in said for line in _answered(name, word)] + [""]
    return lines[:-1]
