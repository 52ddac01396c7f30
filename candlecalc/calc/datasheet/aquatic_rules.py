"""Hazard to water: the sums of CLP, Annex I, Tables 4.1.1 and 4.1.2, with M-factors."""

from fractions import Fraction
from typing import Dict, List

from candlecalc.calc.datasheet.answers import Result, listed, reaches, result, shown
from candlecalc.calc.datasheet.substance import Part

LIMIT = Fraction(25)
COUNTED = Fraction(1)
COUNTED_TOXIC = Fraction(1, 10)  # category 1; divided by M
# What a share of each chronic category weighs towards a category of the mixture; M multiplies category 1.
WEIGHTS: List[Dict[str, int]] = [{"1": 1}, {"1": 10, "2": 1}, {"1": 100, "2": 10, "3": 1}]


def aquatic(parts: List[Part]) -> List[Result]:
    """Acute and chronic hazard, each for itself; the chronic ladder stops at its first hit."""
    acute = [part for part in parts if part.has("Aquatic Acute") and _counts(part, "acute", "1")]
    found = _sum(acute, {"1": 1}, "acute", "Aquatic Acute", "1", "Table 4.1.1")
    chronic = [part for part in parts if _chronic(part) and _counts(part, "chronic", _chronic(part))]
    for category, weights in enumerate(WEIGHTS, start=1):
        among = [part for part in chronic if _chronic(part) in weights]
        found += _sum(among, weights, "chronic", "Aquatic Chronic", str(category), "Table 4.1.2")
    return found + _any_chronic(chronic)


def unknown(parts: List[Part]) -> Fraction:
    """The share of substances whose hazard to water is typed as unknown, in %."""
    return sum((part.share for part in parts if any("aquatic" in words.unknown for words in part.said)), Fraction(0))


def _chronic(part: Part) -> str:
    return part.category("Aquatic Chronic")


def _counts(part: Part, which: str, category: str) -> bool:
    return reaches(part.share, COUNTED_TOXIC / part.factor(which) if category == "1" else COUNTED)


def _sum(parts: List[Part], weights: Dict[str, int], which: str, kind: str, category: str, where: str) -> List[Result]:
    shares = [part.share * _weight(part, weights, which) for part in parts]
    total = sum(shares, Fraction(0))
    if not reaches(total, LIMIT):
        return []
    factors = [f"{part.name} M {part.factor(which)}" for part in parts if part.factor(which) > 1]
    why = f"weighted sum {shown(total)} % of {listed(parts)}; limit 25 %" + "".join(f"; {each}" for each in factors)
    return [result(kind, category, "", total, LIMIT, why, where, parts)]


def _weight(part: Part, weights: Dict[str, int], which: str) -> int:
    category = "1" if which == "acute" else _chronic(part)
    return weights[category] * (part.factor(which) if category == "1" else 1)


def _any_chronic(parts: List[Part]) -> List[Result]:
    """Category 4: all chronic categories added up plainly, without M."""
    total = sum((part.share for part in parts), Fraction(0))
    if not reaches(total, LIMIT):
        return []
    why = f"sum {shown(total)} % of {listed(parts)}; limit 25 %"
    return [result("Aquatic Chronic", "4", "", total, LIMIT, why, "Table 4.1.2", parts)]
