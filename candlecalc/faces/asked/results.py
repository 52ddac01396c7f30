"""Results in words, laid out for a terminal.

They come in the asker's unit with ours beside it: `0.70 oz (19.8 g)`.
"""

import math
import textwrap
from collections.abc import Sequence
from datetime import date
from fractions import Fraction
from typing import Any, NamedTuple

from candlecalc.declaration import native
from candlecalc.declaration.declared import Function, Term
from candlecalc.faces.asked.typed import Currency
from candlecalc.faces.described.terminal import WIDTH
from candlecalc.quantities import days, units
from candlecalc.quantities.rounding import round_to

DECIMALS = {"oz": 2, "lb": 3, "g": 1, "kg": 3, "ml": 1, "cl": 2, "l": 3, "US fl oz": 2, "imp fl oz": 2,
            "US gal": 3, "imp gal": 3, "US cups": 2, "mm": 1,
            "cm": 2, "in": 2, "cm2": 0, "sq in": 2, "C": 0, "F": 0, "C difference": 1, "F difference": 1, "s": 0,
            "min": 1, "h": 2, "days": 0, "weeks": 1, "years": 2, "g/ml": 3, "kg/m3": 0, "mg/l": 2, "W": 0, "kW": 2,
            "kJ": 1, "MJ": 3, "kWh": 3, "kJ/kg": 0, "MJ/kg": 1, "kJ/(kg C)": 2, "J/(kg C)": 0, "g/h": 2, "oz/h": 3,
            "mm/h": 1, "in/h": 2}  # fmt: skip
# From so many on, they are planned in whole ones.
WHOLE_FROM = {"days": 10, "min": 60}
# Decimals that are shown where there are such: a quarter of a minute, a quarter of a day.
MORE_DECIMALS = {"min": 2, "days": 2, "cm2": 2}


class Asked(NamedTuple):
    """How an answer was asked for: its unit as pint names it, the currency, its decimals, and the unit of goods."""

    unit: str = ""
    currency: Currency = Currency()
    digits: int = 2
    goods: str = ""
    whole: bool = False  # goods were counted in pieces


def shown(value: Any, term: Term, asked: Asked = Asked()) -> str:  # noqa: B008  never changed
    """A result in words: `0.70 oz (19.8 g)`, `9.09% of total weight`, `24 pots`."""
    if value is None:
        return "-"
    if isinstance(value, date):
        return f"{value.isoformat()} ({days.WEEKDAYS[value.weekday()]})"
    if not term.is_number:
        return str(value)
    if term.unit_in:
        return _converted(value, units.NAMES[asked.unit])
    if term.unit in units.DIMENSIONS:
        return f"{value:.0f} {term.unit}" if term.whole and not asked.unit else _measure(value, term, asked.unit)
    if term.unit.startswith("of "):
        return f"{_share(value * 100, term.rounding)}% {term.unit}"
    if term.unit.startswith("money"):
        return _money(value, term, asked)
    if term.goods and asked.goods:
        return f"{_trimmed(value, 0, max(2, _decimals_for(value, 2)), term.rounding)} {units.NAMES[asked.goods]}"
    return f"{_number(value, term, asked)} {term.unit or term.noun or 'units' * bool(term.goods)}".strip()


def _money(value: float, term: Term, asked: Asked) -> str:
    if term.unit == "money per unit":
        per = units.NAMES.get(asked.goods, "unit")
        return f"{asked.currency.beside(_significant(value, max(asked.digits, 2)))} per {per}"
    amount = asked.currency.beside(_rounded(value, asked.digits, side=term.rounding))
    return amount + term.unit.removeprefix("money")


def _measure(value: float, term: Term, unit: str) -> str:
    ours = term.unit
    own = units.DIMENSIONS[ours][1]
    plain = _in_decimals(value, ours, term.rounding)
    if unit in ("", own):
        inches = _sixteenths(value / units.MILLIMETRES["in"]) if ours == "mm" else ""
        return f"{plain} ({inches})" if inches else plain
    if unit == units.POUNDS_AND_OUNCES:
        return f"{_pounds(value / units.GRAMS['oz'], term.rounding)} ({plain})"
    name = units.NAMES[unit]
    inside = units.convert(value, own, unit)
    inches = _sixteenths(inside) if name == "in" else ""
    return f"{inches or _in_decimals(inside, name, term.rounding)} ({plain})"


def _in_decimals(value: float, unit: str, side: str) -> str:
    most = _most_decimals(value, unit)
    return f"{_rounded(value, min(DECIMALS[unit], most), most, side)} {unit}"


def _most_decimals(value: float, unit: str) -> int:
    most = MORE_DECIMALS.get(unit, DECIMALS[unit])
    return 0 if abs(value) >= WHOLE_FROM.get(unit, math.inf) else most


def _sixteenths(inches: float) -> str:
    """A length that is so many sixteenths of an inch, as rulers have it: `3 1/2 in`; nothing for any other."""
    size = Fraction(round(inches * 16), 16)
    if not size or abs(inches - size) > 1e-9:
        return ""
    whole, part = divmod(size, 1)
    return " ".join([str(whole)] * bool(whole) + [str(part)] * bool(part) + ["in"])


def _pounds(ounces: float, side: str) -> str:
    """Pounds and ounces, as scales have them: `1 lb 9.60 oz`."""
    pounds, rest = divmod(round_to(ounces, DECIMALS["oz"], side), 16)
    return f"{pounds:.0f} lb" + f" {rest:.{DECIMALS['oz']}f} oz" * bool(round(rest, DECIMALS["oz"]))


def _converted(value: float, unit: str) -> str:
    """A value in a unit that was asked for, to a hundredth, a small one to four digits: `340.19 g`."""
    return f"{_trimmed(value, 0, max(2, _decimals_for(value, 4)))} {unit}"


def _share(percent: float, side: str) -> str:
    """A percentage to a hundredth, a small one to three digits: limits of such shares lie close to them."""
    # No further than a millionth: what is left of sums that cancel out is nothing.
    return _trimmed(percent, 1, min(6, max(2, _decimals_for(percent, 3))), side)


def _number(value: float, term: Term, asked: Asked) -> str:
    """A number to a hundredth, a small one to four digits; pieces whole, rounded the way that serves."""
    pieces = term.goods and (asked.whole or term.rounding != "nearest")
    return _trimmed(value, 0, 0 if pieces else max(2, _decimals_for(value, 4)), term.rounding)


def _rounded(value: float, decimals: int, most: int | None = None, side: str = "nearest") -> str:
    most = decimals if most is None else most
    # Something is not shown as nothing: a trace of dye is 0.02 g, not 0.0 g.
    trace = abs(value) >= 10.0 ** (-most - 3) and not round_to(value, most, "nearest")
    return _trimmed(value, decimals, _decimals_for(value, 2) if trace else most, side)


def _trimmed(value: float, least: int, most: int, side: str = "nearest") -> str:
    """A number with so many decimals at most, without the zeros at its end beyond the least."""
    number = round_to(value, most, side) + 0.0  # no minus before a zero
    whole, _, decimals = f"{number:.{most}f}".partition(".")
    decimals = decimals[:least] + decimals[least:].rstrip("0")
    return f"{whole}.{decimals}" if decimals else whole


def _decimals_for(value: float, digits: int) -> int:
    """The decimals that it takes to show so many digits of a number."""
    return digits - 1 - math.floor(math.log10(abs(value))) if value else 0


def _significant(value: float, decimals: int, digits: int = 4) -> str:
    """At least so many decimals, and as many more as it takes to show so many digits of a small number."""
    shown = native.number(float(f"{value:.{digits}g}"))
    return f"{value:.{decimals}f}" if len(shown.partition(".")[2]) < decimals else shown


def lines(formula: Function, rows: Sequence[Sequence[str]]) -> list[str]:
    """Rows of results in words as lines: side by side where there are several with names and they fit."""
    if not rows:
        return ["none"]
    names = list(formula.fields)
    if not names:
        return [word for row in rows for word in row]
    if not formula.result.many:
        return [line for name, word in zip(names, rows[0], strict=True) for line in answered(name, word)]
    columns = _columns([names, *rows])
    return columns if max(map(len, columns)) <= WIDTH else _blocks(names, rows)


def answered(name: str, words: str) -> list[str]:
    """What a name is said to be, in lines: `note: opened candles differ`."""
    return textwrap.wrap(f"{name.replace('_', ' ')}: {words}", WIDTH, subsequent_indent="  ", break_on_hyphens=False)


def _columns(rows: Sequence[Sequence[str]]) -> list[str]:
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    return ["  ".join(f"{word:{width}}" for word, width in zip(row, widths, strict=True)).rstrip() for row in rows]


def _blocks(names: Sequence[str], rows: Sequence[Sequence[str]]) -> list[str]:
    """Rows of words too long to stand side by side: a paragraph each, without its blanks."""
    lines: list[str] = []
    for row in rows:
        said = [(name, word) for name, word in zip(names, row, strict=True) if word != "-"]
        lines += [line for name, word in said for line in answered(name, word)] + [""]
    return lines[:-1]
