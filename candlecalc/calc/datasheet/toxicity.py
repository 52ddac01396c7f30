"""Acute toxicity of a mixture from the estimates of its substances: CLP, Annex I, 3.1.3."""

from fractions import Fraction
from typing import Dict, List, NamedTuple, Optional, Tuple

import candlecalc.tables as tables
from candlecalc.calc.datasheet.answers import Result, listed, reaches, result, shown
from candlecalc.calc.datasheet.substance import FORMS, Part, Words

COUNTED, COUNTED_TOXIC = Fraction(1), Fraction(1, 10)  # Table 1.1: category 4, and 1 to 3
# The UN system's worked examples leave out estimates above 5000 mg/kg, 2.5 times the end of category 4.
LEFT_OUT = Fraction(5, 2)
WHOLE = Fraction(100)
MOST_UNKNOWN = 10  # %; from more on, the known substances stand for the whole less the unknown
CONVERTED = "CLP Annex I, Table 3.1.2, converted estimates (read second-hand); better, type the ATE"
ONE_CATEGORY = "CLP Annex I, 3.1.3: all in one category (read in the US text only)"


def _bounds(form: str) -> List[Dict[str, str]]:
    return [row for row in tables.rows("hazard_acute") if row["form"] == form]


class _Toxic(NamedTuple):
    part: Part
    estimate: Fraction
    converted: bool


def acute(parts: List[Part]) -> List[Result]:
    """The category of the mixture by each way into the body, each for itself."""
    return [found for form in FORMS for found in _by(form, parts)]


def unknown(parts: List[Part]) -> Fraction:
    """The share of substances of unknown acute toxicity by any way, in %."""
    among = [part for part in parts if any(_unknown(part, form) for form in FORMS)]
    return sum((part.share for part in among if reaches(part.share, COUNTED)), Fraction(0))


def not_estimated(parts: List[Part]) -> List[str]:
    """The ways into the body for which all of the mixture is typed as unknown."""
    return [form for form in FORMS if reaches(_dark(form, parts), WHOLE)]


def learned(part: Part) -> List[str]:
    """The ways for which one line says that a substance's toxicity is unknown, and another line knows it."""
    known = [{form for form in FORMS if _estimate(form, words)} for words in part.said]
    dark = set().union(*(words.unknown - known_here for words, known_here in zip(part.said, known)))
    return [form for form in FORMS if form in dark & set().union(*known)]


def _all_toxic(form: str, parts: List[Part]) -> List[_Toxic]:
    return [each for part in parts for each in _toxic(form, part)]


def _dark(form: str, parts: List[Part]) -> Fraction:
    return sum((part.share for part in parts if _unknown(part, form) and reaches(part.share, COUNTED)), Fraction(0))


def _by(form: str, parts: List[Part]) -> List[Result]:
    toxic, dark = _all_toxic(form, parts), _dark(form, parts)
    if not toxic or reaches(dark, WHOLE):
        return []
    known = WHOLE - dark if dark > MOST_UNKNOWN else WHOLE
    # Upper ends may add up to more than the whole; no mean of what is known is below the least of it.
    least = min(each.estimate for each in toxic)
    estimate = max(least, known / sum((each.part.share / each.estimate for each in toxic), Fraction(0)))
    row = _row(form, estimate)
    alike = _one_category(form, toxic)
    if row is None:
        return []
    unconfirmed = CONVERTED if any(each.converted for each in toxic) else ""
    if alike and alike["category"] > row["category"]:
        row, unconfirmed = alike, ONE_CATEGORY
    way = "that of the most toxic" if estimate == least else f"{shown(known)} over the sum of share/estimate"
    why = f"estimate {shown(estimate)} {row['unit']} ({way}) of "
    why += f"{listed(each.part for each in toxic)}; category {row['category']} is up to {row['upto']} {row['unit']}"
    amounts = estimate, Fraction(row["upto"])
    parts = [each.part for each in toxic]
    return [result("Acute Tox.", row["category"], form, *amounts, why, "Table 3.1.1", parts, unconfirmed)]


def _toxic(form: str, part: Part) -> List[_Toxic]:
    """The strictest estimate of a substance, where it has one and there is enough of it to count."""
    found = [each for each in (_estimate(form, words) for words in part.said) if each]
    if not found:
        return []
    estimate, converted = min(found)
    row = _row(form, estimate)
    least = COUNTED if row is None or row["category"] == "4" else COUNTED_TOXIC
    return [_Toxic(part, estimate, converted)] if reaches(part.share, least) else []


def _estimate(form: str, words: Words) -> "Optional[Tuple[Fraction, bool]]":
    """An estimate as typed, or the one that stands for the category where none is typed, or a milder one."""
    typed = words.estimates.get(form)
    among = [each.category for each in words.hazards if each.kind == "Acute Tox." and each.route == form]
    if among:
        row = next(row for row in _bounds(form) if row["category"] == min(among))
        fits = typed is not None and typed <= Fraction(row["upto"])
        return (typed, False) if fits and typed is not None else (Fraction(row["estimate"]), True)
    counts = typed is not None and typed <= LEFT_OUT * Fraction(_bounds(form)[-1]["upto"])
    return (typed, False) if counts and typed is not None else None


def _unknown(part: Part, form: str) -> bool:
    return any(form in words.unknown for words in part.said) and not any(_estimate(form, words) for words in part.said)


def _row(form: str, estimate: Fraction) -> "Optional[Dict[str, str]]":
    return next((row for row in _bounds(form) if reaches(Fraction(row["upto"]), estimate)), None)


def _one_category(form: str, toxic: List[_Toxic]) -> "Optional[Dict[str, str]]":
    """The category of a mixture that is toxic throughout, where all of it is of one category.

    Its converted estimate would fall on the end of the next stricter one.
    """
    if not reaches(sum((each.part.share for each in toxic), Fraction(0)), Fraction(100)):
        return None
    among = {min(_categories(form, each.part), default="") for each in toxic}
    category = among.pop() if len(among) == 1 else ""
    return next((row for row in _bounds(form) if row["category"] == category), None)


def _categories(form: str, part: Part) -> List[str]:
    return [each.category for each in part.has("Acute Tox.") if each.route == form]
