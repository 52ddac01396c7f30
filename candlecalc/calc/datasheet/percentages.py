"""A concentration as section 3 of a data sheet prints it, read as its two ends in %.

Data sheets print `5 %`, `1-5`, `>= 1 - < 5 %`, `<= 2,5`; a cell may have made a date or a share of it.
"""

import re
from fractions import Fraction
from typing import NamedTuple

NUMBER = r"\d+(?:[.,]\d+)?"
AS_PRINTED = 'type it as it is printed, such as "5 %", "1-5" or ">= 1 - < 5 %"'
DATED = 'a sheet makes a date of words such as 1-5: type an apostrophe before them, such as "\'1-5"'
# The serial numbers of days from 1990 to 2079: what "1-5" or "5/10" becomes in a cell.
DAYS = (32874, 65745)

SPELLINGS = [
    (r"[≥⩾]|=>", ">="),
    (r"[≤⩽]|=<", "<="),
    (r"[–—−‐‑]", "-"),
    ("\N{FULLWIDTH PERCENT SIGN}", "%"),
    (r"[\u00a0\u2009\u202f]", " "),
]
# What is printed beside a number and says only that it is by weight.
BESIDE = re.compile(r"\(?\b(?:w/w|m/m|wt\.?|w\.?-?|by weight|weight)\b\.?\)?")
ABOUT = r"(?:~|ca\.?|circa|about|approx\.?|approximately)?\s*"
UNIT = r"\s*(?P<unit>%|ppm)?"
SHAPES = [
    # 5 %; about 5 %
    rf"(?P<about>{ABOUT})(?P<only>{NUMBER}){UNIT}",
    # 1-5; >= 1 - < 5 %; 1 to 5 %; >= 1 and < 5
    rf"(?:>=?)?\s*(?P<low>{NUMBER})\s*(?:%|ppm)?\s*(?:-|to|and|\.\.+)\s*(?:<=?)?\s*(?P<high>{NUMBER}){UNIT}",
    # >= 1 < 5
    rf">=?\s*(?P<low>{NUMBER})\s*(?:%|ppm)?\s*<=?\s*(?P<high>{NUMBER}){UNIT}",
    # 1 <= C < 5
    rf"(?P<low>{NUMBER})\s*(?:%|ppm)?\s*<=?\s*(?:x|c|conc\.?)\s*<=?\s*(?P<high>{NUMBER}){UNIT}",
    # < 5; up to 5 %
    rf"(?:<=?|max\.?|up to|not more than)\s*(?P<high>{NUMBER}){UNIT}",
    # >= 50
    rf"(?:>=?|min\.?|at least|more than)\s*(?P<low>{NUMBER}){UNIT}",
]
PATTERNS = [re.compile(shape) for shape in SHAPES]


class Concentration(NamedTuple):
    """The two ends of a concentration in %, and what there is to know about it."""

    low: Fraction
    high: Fraction
    note: str = ""


def plain(text: str) -> str:
    """Signs that are printed in several ways brought to one."""
    for printed, ours in SPELLINGS:
        text = re.sub(printed, ours, text)
    return text.strip()


def number(text: str) -> Fraction:
    """A number with a decimal point or comma, exactly."""
    return Fraction(text.replace(",", "."))


def concentration(text: str) -> Concentration:
    """The ends of a concentration as printed; a ValueError says in words what to type."""
    words = BESIDE.sub("", plain(text).lower()).strip()
    found = next(filter(None, (pattern.fullmatch(words) for pattern in PATTERNS)), None)
    if not found:
        raise ValueError(f'is "{text}"; {DATED if _dated(words) else AS_PRINTED}')
    printed = found.groupdict()
    if printed.get("only") and not printed["unit"]:
        _refuse_unclear(text, number(printed["only"]))
    unit = Fraction(1, 10000) if printed["unit"] == "ppm" else Fraction(1)
    low = number(printed.get("only") or printed.get("low") or "0") * unit
    high = number(printed.get("only") or printed.get("high") or "100") * (
        unit if "high" in printed or "only" in printed else 1
    )
    if low > high:
        raise ValueError(f'is "{text}"; its ends stand the wrong way round, or {DATED}')
    if high > 100:
        raise ValueError(f'is "{text}"; no part is more than 100 % of the whole')
    return Concentration(low, high, _note(printed))


def _refuse_unclear(text: str, value: Fraction) -> None:
    # A cell formatted as a percentage hands over 0.05 for 5 %; the sheet may mean 0.05 %.
    if value <= 1:
        raise ValueError(
            f'is {text} without a sign; it may be a share or a percentage: type it as "5 %", with the sign'
        )
    if DAYS[0] <= value <= DAYS[1]:
        raise ValueError(f"is {text}, which looks like a date; {DATED}")


def _dated(words: str) -> bool:
    month = r"jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec"
    return bool(re.search(rf"(?<!\d)\d+\W({month})|({month})\w*\W\d+|(?<!\d)\d+[-/.]\d+[-/.]\d+|^\d+/\d+$", words))


def _note(printed: "dict[str, str]") -> str:
    if "high" not in printed and "only" not in printed:
        return "no upper end is printed: taken as 100 %"
    return "printed as about" if printed.get("about", "").strip() else ""
