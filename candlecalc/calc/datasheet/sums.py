"""Classes by the share of one substance, and by the shares of several added up: CLP, Annex I."""

import re
from fractions import Fraction
from typing import Dict, Iterable, List, NamedTuple, Tuple

import candlecalc.tables as tables
from candlecalc.calc.datasheet.answers import Result, listed, reaches, result, shown
from candlecalc.calc.datasheet.substance import Hazard, Part, Words

# Table 1.1: a substance below this is not added up, or below its own specific limit where that is less.
COUNTED = Fraction(1)
SPECIFIC_SUM = "ECHA's guidance on the CLP criteria, part 1, 1.6.3.3.3: specific limits in a sum (read second-hand)"
VISCOSITY = Fraction("20.5")  # mm2/s at 40 C


def single(parts: List[Part]) -> List[Result]:
    """Classes that one substance brings by its own share; nothing is added up."""
    reached: Dict[Tuple[str, str, str], List[Tuple[Fraction, Part, Fraction]]] = {}
    for row in tables.rows("hazard_limits"):
        for part in parts:
            if any(hazard.category == row["category"] for hazard in part.has(row["kind"])):
                limit = part.limit(row["kind"], row["result"], Fraction(row["limit"]))
                if reaches(part.share, limit):
                    key = (row["kind"], row["result"], row["where"])
                    reached.setdefault(key, []).append((part.share / limit, part, limit))
    return [_by_itself(*key, found=found) for key, found in reached.items()]


def _by_itself(kind: str, category: str, where: str, found: List[Tuple[Fraction, Part, Fraction]]) -> Result:
    ordered = sorted(found, key=lambda each: -each[0])
    _, most, limit = ordered[0]
    why = f"one substance by itself: {listed(part for _, part, _ in ordered)}; limit {shown(limit)} %"
    return result(kind, category, "", most.share, limit, why, where, [part for _, part, _ in ordered])


class _Share(NamedTuple):
    """What a substance puts into a sum: its share, weighed by the limit it has alone."""

    part: Part
    limit: Fraction
    generic: Fraction


def _counted(shares: Iterable[_Share]) -> List[_Share]:
    return [each for each in shares if reaches(each.part.share, min(COUNTED, each.limit))]


def _shares(parts: Iterable[Part], kind: str, category: str, generic: int, route: str = "") -> List[_Share]:
    alone = Fraction(generic)
    return [_Share(part, part.limit(kind, category, alone, route), alone) for part in parts]


def _added(
    kind: str, category: str, shares: List[_Share], limit: int, where: str, route: str = "", expert: str = ""
) -> List[Result]:
    """The class, where the shares weighed by their limits add up to its limit."""
    counted = _counted(shares)
    total = sum((each.part.share * limit / each.limit for each in counted), Fraction(0))
    if not counted or not reaches(total, Fraction(limit)):
        return []
    alone = any(reaches(each.part.share, each.limit) for each in counted)
    specific = any(each.limit != each.generic for each in counted)
    weighed = "weighted sum" if any(each.limit != limit for each in counted) else "sum"
    why = f"{weighed} {shown(total)} % of {listed(each.part for each in counted)}; limit {limit} %"
    unconfirmed = SPECIFIC_SUM if specific and not alone else ""
    parts = [each.part for each in counted]
    return [result(kind, category, route, total, Fraction(limit), why, where, parts, unconfirmed, expert)]


def _corrosive(parts: List[Part]) -> List[Part]:
    return [part for part in parts if part.has("Skin Corr.")]


def _irritant(parts: List[Part]) -> List[Part]:
    return [part for part in parts if part.has("Skin Irrit.") and not part.has("Skin Corr.")]


def _damaging(parts: List[Part]) -> List[Part]:
    """Damaging to the eye, or corrosive to skin; a substance with both counts once."""
    return [part for part in parts if part.has("Skin Corr.") or part.has("Eye Dam.")]


def _smarting(parts: List[Part]) -> List[Part]:
    return [part for part in parts if part.has("Eye Irrit.") and part not in _damaging(parts)]


def skin(parts: List[Part]) -> List[Result]:
    where = "Table 3.2.3"
    corrosive = _shares(_corrosive(parts), "Skin Corr.", "1", 5)
    both = _shares(_corrosive(parts), "Skin Irrit.", "2", 1) + _shares(_irritant(parts), "Skin Irrit.", "2", 10)
    # The weighted sum holds the plain ones: 1 % corrosive alone weighs 10.
    return _added("Skin Corr.", _subcategory(corrosive), corrosive, 5, where) + _added(
        "Skin Irrit.", "2", both, 10, where
    )


def _subcategory(shares: List[_Share]) -> str:
    """1A, 1A and 1B, or all three are held against their limits in turn; a category without a letter stays so."""
    counted = _counted(shares)
    if any(_without_letter(words) for each in counted for words in each.part.said):
        return "1"
    for letter in ("1A", "1B"):
        among = [each.part for each in counted if each.part.category("Skin Corr.") <= letter]
        limits = [part.limit("Skin Corr.", letter, Fraction(5)) for part in among]
        if reaches(sum((part.share / limit for part, limit in zip(among, limits)), Fraction(0)), Fraction(1)):
            return letter
    return "1C"


def _without_letter(words: Words) -> bool:
    """Whether a line prints no sub-category of what corrodes: neither as its class nor in limits in steps."""
    steps = {limit.hazard.category for limit in words.limits if limit.hazard.kind == "Skin Corr."}
    return Hazard("Skin Corr.", "1") in words.hazards and steps <= {"1"}


def _eye_damage(parts: Iterable[Part], generic: int) -> List[_Share]:
    return [_Share(part, _eye_limit(part, Fraction(generic)), Fraction(generic)) for part in _damaging(list(parts))]


def _eye_limit(part: Part, generic: Fraction) -> Fraction:
    """What corrodes skin damages the eye: sheets print no limit for that beside those in steps for the skin.

    Where the step at which it irritates the eye is printed as well, nothing general is left to go by.
    """
    own = part.limit("Eye Dam.", "1", generic)
    if not part.has("Skin Corr.") or part.has_limit("Eye Dam."):
        return own
    corrodes = part.limit("Skin Corr.", "1", Fraction(5))
    in_steps = part.has_limit("Skin Corr.") and part.has_limit("Eye Irrit.")
    return part.limit("Eye Dam.", "1", corrodes) if in_steps else min(own, corrodes)


def eyes(parts: List[Part]) -> List[Result]:
    where = "Table 3.3.3"
    damaging = _eye_damage(parts, 3)
    both = _shares(_damaging(parts), "Eye Irrit.", "2", 1) + _shares(_smarting(parts), "Eye Irrit.", "2", 10)
    return _added("Eye Dam.", "1", damaging, 3, where) + _added("Eye Irrit.", "2", both, 10, where)


def not_adding(parts: List[Part]) -> List[Result]:
    """The limits for aldehydes, phenols, acids, bases and surfactants, which do not add up."""
    found = []
    for kind, category, among in (
        ("Skin Corr.", "1", _shares(_corrosive(parts), "Skin Corr.", "1", 1)),
        ("Skin Irrit.", "2", _shares(_irritant(parts), "Skin Irrit.", "2", 3)),
        ("Eye Dam.", "1", _eye_damage(parts, 1)),
        ("Eye Irrit.", "2", _shares(_smarting(parts), "Eye Irrit.", "2", 3)),
    ):
        # What reaches a limit of its own has its class by the sums already, in the right step.
        reached = [
            (each.part.share / each.limit, each.part, each.limit)
            for each in among
            if each.limit == each.generic and reaches(each.part.share, each.limit)
        ]
        if reached:
            alone = _by_itself(kind, category, "Tables 3.2.4 and 3.3.4", reached)
            found.append(alone._replace(expert="by the stricter route, for substances that do not add up"))
    return found


def breathing(parts: List[Part]) -> List[Result]:
    """Irritation of the airways (H335) and drowsiness (H336), each for itself."""
    found = []
    for code in ("H335", "H336"):
        among = [part for part in parts if any(hazard[1:] == ("3", code) for hazard in part.has("STOT SE"))]
        shares = _shares(among, "STOT SE", "3", 20, code)
        found += _added("STOT SE", "3", shares, 20, "section 3.8.3.4.5", code, "20 % is a guide, no hard limit")
    return found


def aspiration(parts: List[Part], viscosity: str) -> List[Result]:
    """By the sum and by how thin the mixture is at 40 C: what is solid there does not run into airways."""
    number = re.search(r"\d+(?:[.,]\d+)?", viscosity)
    if viscosity == "solid" or (number and Fraction(number[0].replace(",", ".")) > VISCOSITY):
        return []
    shares = _shares([part for part in parts if part.has("Asp. Tox.")], "Asp. Tox.", "1", 10)
    unknown = (
        ""
        if number
        else 'the viscosity at 40 C, which is not typed: 20.5 mm2/s or less is wanted (type it, or "solid")'
    )
    found = _added("Asp. Tox.", "1", shares, 10, "section 3.10.3.3.1")
    return [each._replace(unconfirmed=unknown) for each in found]
