"""What is known of a substance, and the lines of several data sheets brought together by substance."""

import re
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Dict, FrozenSet, Iterable, List, Mapping, NamedTuple, Optional, Set, Tuple

from candlecalc.calc.datasheet.percentages import Concentration

ORAL, DERMAL, DUST = "oral", "dermal", "dust or mist"
FORMS = [ORAL, DERMAL, "gas", "vapour", DUST]  # the ways into the body that have estimates of their own

# Chemical Abstracts Service number; the number of the EU's inventories; that of the index of harmonised classes.
CAS = re.compile(r"(?<![\d-])(\d{2,7})-(\d{2})-(\d)(?![\d-])")
EC = re.compile(r"(?<![\d-])\d{3}-\d{3}-\d(?![\d-])")
INDEX = re.compile(r"(?<![\d-])\d{3}-\d{3}-\d{2}-[\dX](?![\d-])", re.I)
# A registration: its last part is the registrant's, so that it does not tell one substance from another.
REGISTERED = re.compile(r"(?<![\d-])\d{2}-\d{10}-\d{2}(?:-\w{4})?(?![\d-])")
# The words that stand before such numbers.
NUMBERED = re.compile(
    r"\b(?:CAS|EC|EINECS|index|REACH|reg(?:istration)?)\b[\s:.-]*(?:(?:no|nr)\b\.?|number)?[\s:.]*", re.I
)


class Hazard(NamedTuple):
    """A class of a substance: its kind, its category, and by which way or statement where that matters."""

    kind: str
    category: str = ""
    route: str = ""

    @property
    def name(self) -> str:
        return f"{self.kind} {self.category}".strip() + (f" ({self.route})" if self.route else "")


class Limit(NamedTuple):
    """A specific limit: from this share on, in %, the substance gives the mixture this class."""

    hazard: Hazard
    low: Fraction
    certain: bool = True  # printed beside its class, or there is no other that it can be for


@dataclass
class Words:
    """What a text says of one substance."""

    hazards: Set[Hazard] = field(default_factory=set)
    limits: List[Limit] = field(default_factory=list)
    factors: Dict[str, int] = field(default_factory=dict)  # M by "acute" and "chronic"
    estimates: Dict[str, Optional[Fraction]] = field(default_factory=dict)  # by form; None: tested without toxicity
    unknown: Set[str] = field(default_factory=set)  # forms, or "aquatic"
    codes: Set[str] = field(default_factory=set)  # hazard statements as printed
    unread: List[str] = field(default_factory=list)
    notes: List[str] = field(default_factory=list)


class Line(NamedTuple):
    """A line of section 3: a substance, how much of the oil it is, and what is said of it."""

    place: int
    substance: str
    share: Concentration  # % of what the sheet describes
    words: Words
    oil: int = 1


class Part(NamedTuple):
    """A substance in the mixture, from one line or several."""

    name: str
    share: Fraction  # % of the mixture, by the upper ends
    said: Tuple[Words, ...]

    def has(self, kind: str) -> "Set[Hazard]":
        return {hazard for words in self.said for hazard in words.hazards if hazard.kind == kind}

    def category(self, *kinds: str) -> str:
        """The strictest category it is typed with, blank where it has none."""
        return min((hazard.category for kind in kinds for hazard in self.has(kind)), default="")

    def limit(self, kind: str, category: str, generic: Fraction, route: str = "") -> Fraction:
        """The limit for a result: a specific one goes before the generic one.

        A specific limit above the generic one counts only where every line of the substance prints it. Of limits
        in steps, those of a category and of all that are more severe bring that category: 1B from 25 % on is also
        what 1A from 90 % on comes to.
        """
        found = [
            [limit for limit in words.limits if _brings(limit.hazard, kind, category, route)] for words in self.said
        ]
        lows = [limit.low for line in found for limit in line]
        return min(lows + ([] if all(any(limit.certain for limit in line) for line in found) else [generic]))

    def has_limit(self, kind: str) -> bool:
        """Whether every line of the substance prints a specific limit for a class."""
        return all(any(limit.certain and limit.hazard.kind == kind for limit in words.limits) for words in self.said)

    def factor(self, which: str) -> int:
        return max(words.factors.get(which, 1) for words in self.said)


def _brings(hazard: Hazard, kind: str, category: str, route: str) -> bool:
    """Whether what has this class has the category that is asked for, or a more severe one of the same number."""
    alike = hazard.kind == kind and hazard.category[:1] == category[:1] and route in ("", hazard.route)
    return alike and (len(category) < 2 or hazard.category <= category)


def identifiers(substance: str) -> "FrozenSet[str]":
    """The numbers and the name by which a substance as typed may be known elsewhere."""
    if re.fullmatch(r"[\d.,]+", substance):
        raise ValueError(
            f"is {substance}; a sheet makes a date of a CAS number such as 80-05-7: type an apostrophe before it"
        )
    for found in CAS.finditer(substance):
        digits = [int(digit) for digit in found[1] + found[2]]
        if sum(weight * digit for weight, digit in enumerate(reversed(digits), start=1)) % 10 != int(found[3]):
            raise ValueError(f'is "{substance}"; the last digit of {found[0]} does not fit: type the CAS number again')
    numbers = [found[0] for pattern in (CAS, EC, INDEX) for found in pattern.finditer(substance)]
    name = _bare(substance).casefold().strip("()[]")
    return frozenset(numbers + ([name] if name else []))


def _bare(substance: str) -> str:
    """A substance as typed without its numbers and the words before them."""
    for pattern in (REGISTERED, INDEX, EC, CAS, NUMBERED):
        substance = pattern.sub(" ", substance)
    # Brackets that held nothing but numbers go; those of "(R)-" and "(-)-" belong to the name.
    left = re.sub(r"[(\[](?:[\s,;:/.*]|\s-\s)*[)\]]", " ", substance)
    return " ".join(left.split()).strip(" ,;:/*-").rstrip(" ([,;:/").lstrip(")] ")


def printed_name(substance: str) -> str:
    """The name that a label prints; where a number alone is typed, what is to be put in its place."""
    return _bare(substance) or f"<name of {', '.join(sorted(identifiers(substance))) or substance}>"


def parts_of(lines: Iterable[Line], shares: Mapping[int, Fraction]) -> List[Part]:
    """Lines added up by substance; `shares` says how much of the mixture each oil's sheet stands for."""
    groups: List[Tuple[Set[str], List[Line]]] = []
    for line in lines:
        known = set(identifiers(line.substance))
        alike = [group for group in groups if group[0] & known]
        groups = [group for group in groups if group not in alike]
        groups.append(
            (known.union(*(names for names, _ in alike)), [one for _, each in alike for one in each] + [line])
        )
    return sorted((_part(each, shares) for _, each in groups), key=lambda part: (-part.share, part.name))


def _part(lines: List[Line], shares: Mapping[int, Fraction]) -> Part:
    share = sum((line.share.high * shares[line.oil] for line in lines), Fraction(0))
    # The longest way it was typed tells most, name and number; a number alone names nothing.
    typed = max((line.substance for line in lines), key=lambda substance: (bool(_bare(substance)), len(substance)))
    return Part(typed, share, tuple(line.words for line in lines))
