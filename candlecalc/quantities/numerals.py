"""Numbers as makers write them, with a decimal comma or a fraction, and amounts with a currency beside them."""

import re
import unicodedata
from typing import Tuple

import candlecalc.tables as tables

# "2 7/8", "1/2", "12.5", "12,5", ".5"
NUMBER = r"(?:[0-9]+ +)?[0-9]+/[0-9]+(?![0-9.,/])|[0-9][0-9.,]*|[.,][0-9]+"
MINUS = "-\u2212"
# A sign such as those of dollar, pound and euro, or three letters. No sign of a cent: it is a hundredth.
CURRENCY = "[A-Za-z]{0,2}[$\u00a3\u00a5\u20a0-\u20cf]|[A-Za-z]{3}"
AMOUNT = re.compile(
    rf"(?P<minus>[{MINUS}]?)\s*(?:(?P<before>{CURRENCY})\s*)?"
    rf"(?P<number>[{MINUS}]?[0-9.,](?:[0-9 .,/]*[0-9.,/])?)\s*(?P<after>{CURRENCY})?"
)
# One character for a fraction: one half, seven eighths.
SIGNS_OF_FRACTIONS = re.compile("[\u00bc-\u00be\u2150-\u215e]")


def plain(text: str) -> str:
    """Text with its blanks and fractions as `NUMBER` has them.

    >>> plain("2\u215e in")
    '2 7/8 in'
    """
    text = text.replace("\u00a0", " ").replace("\u202f", " ")
    text = SIGNS_OF_FRACTIONS.sub(lambda sign: " " + unicodedata.normalize("NFKC", sign.group()), text)
    return text.replace("\u2044", "/").strip()


def value(text: str) -> float:
    """What a text that `NUMBER` matches comes to; a ValueError says why it cannot be told.

    >>> value("2 7/8")
    2.875
    """
    return _fraction(text) if "/" in text else _decimal(text)


def _fraction(text: str) -> float:
    whole, _, part = text.rpartition(" ")
    top, bottom = map(float, part.split("/"))
    if not bottom or (whole and top >= bottom):
        raise ValueError(f'"{text}" is no number: a fraction is written as in 2 7/8')
    return float(whole or 0) + top / bottom


def _decimal(text: str) -> float:
    """Digits with a decimal point or a decimal comma. Thousands marks are refused, never guessed."""
    whole, comma, decimals = text.partition(",")
    if comma and len(decimals) == 3 and whole.isdigit() and whole.strip("0"):
        raise ValueError(f'"{text}" can be read two ways: write {whole}.{decimals} or {whole}{decimals}')
    point = text.replace(",", ".")
    if point.count(".") > 1:
        raise ValueError(f'"{text}" is not a plain number: leave out thousands marks, as in 1234.5')
    return float(point)


def without_currency(text: str) -> Tuple[str, bool]:
    """An amount without the currency beside it, and whether there was one: all amounts are in the maker's own.

    >>> without_currency("GBP 4.50"), without_currency("24 EUR"), without_currency("24")
    (('4.50', True), ('24', True), ('24', False))
    """
    match = AMOUNT.fullmatch(text)
    beside = [match.group("before") or "", match.group("after") or ""] if match else []
    marks = [mark for mark in beside if mark]
    if not match or len(marks) != 1 or not _is_currency(marks[0]):
        return text, False
    return match.group("minus") + match.group("number"), True


def currency(text: str) -> Tuple[str, bool]:
    """The currency that an amount begins or ends with, and whether it begins with it; ("", True) for none.

    >>> currency("$15 an hour"), currency("24 EUR"), currency("24")
    (('$', True), ('EUR', False), ('', True))
    """
    match = AMOUNT.match(text.strip())
    for side in ("before", "after"):
        mark = match.group(side) if match else None
        if mark and _is_currency(mark):
            return mark, side == "before"
    return "", True


def _is_currency(mark: str) -> bool:
    return not mark.isalpha() or mark.upper() in {row["currency"] for row in tables.rows("currencies")}
