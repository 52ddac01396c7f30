"""Every class that a mixture takes, what is close to a limit, and what stands on a label besides classes."""

from fractions import Fraction
from typing import Dict, List, NamedTuple, Tuple

import candlecalc.tables as tables
from candlecalc.calc.datasheet.answers import Result, reaches, shown
from candlecalc.calc.datasheet.aquatic_rules import aquatic
from candlecalc.calc.datasheet.substance import Part
from candlecalc.calc.datasheet.sums import aspiration, breathing, eyes, not_adding, single, skin
from candlecalc.calc.datasheet.toxicity import acute

# Of a kind and its milder sister the mixture takes one.
FAMILY = {"Skin Irrit.": "Skin Corr.", "Eye Irrit.": "Eye Dam."}
SENSITISING = ("Skin Sens.", "Resp. Sens.")


class Allergen(NamedTuple):
    """A sensitising substance below the limit of its class but at or above that of its name on the label."""

    name: str
    kind: str
    share: Fraction
    limit: Fraction

    @property
    def why(self) -> str:
        return f"{self.name} {shown(self.share)} %; {self.kind} is named from {shown(self.limit)} % on"


class Close(NamedTuple):
    """A class that would come, or go, within the margin of a limit."""

    result: Result
    above: bool  # the mixture takes it, just


def classes(parts: List[Part], route: str, viscosity: str) -> List[Result]:
    """Every class that the mixture takes, one of each kind: the most severe."""
    found = single(parts) + skin(parts) + eyes(parts) + breathing(parts) + aspiration(parts, viscosity)
    found += (not_adding(parts) if route == "stricter" else []) + acute(parts) + aquatic(parts)
    best: Dict[Tuple[str, str], Result] = {}
    for result in found:
        key = key_of(result)
        best[key] = min(best.get(key, result), result, key=_order)
    return sorted(best.values(), key=lambda result: result.rank)


def key_of(result: Result) -> Tuple[str, str]:
    """What a mixture takes one class of: a kind with its milder sister, by one way."""
    return FAMILY.get(result.kind, result.kind), result.row["route"]


def _order(result: Result) -> Tuple[int, bool, float]:
    ratio = result.amount / result.limit
    return result.rank, bool(result.unconfirmed), ratio if result.kind == "Acute Tox." else -ratio


def allergens(parts: List[Part], taken: List[Result]) -> List[Allergen]:
    """Sensitising substances that are named although the mixture does not take its class from them."""
    found: Dict[str, Allergen] = {}
    for part in parts:
        for row in tables.rows("hazard_limits"):
            if row["kind"] in SENSITISING and any(each.category == row["category"] for each in part.has(row["kind"])):
                # A tenth of the limit, specific or not: Table 3.4.6 and its first note.
                limit = part.limit(row["kind"], row["result"], Fraction(row["elicits"]) * 10) / 10
                behind = any(part.name in result.names for result in taken if result.kind == row["kind"])
                if reaches(part.share, limit) and not behind:
                    found[part.name] = Allergen(part.name, row["kind"], part.share, limit)
    return list(found.values())


def close(parts: List[Part], route: str, viscosity: str, margin: Fraction) -> List[Close]:
    """Classes that come with a little more of everything, and those that go with a little less."""
    taken = {key_of(result): result for result in classes(parts, route, viscosity)}
    more = {key_of(result): result for result in classes(_scaled(parts, 1 / (1 - margin)), route, viscosity)}
    less = {key_of(result): result for result in classes(_scaled(parts, 1 / (1 + margin)), route, viscosity)}
    coming = [result for key, result in more.items() if key not in taken or result.rank < taken[key].rank]
    going = [result for key, result in taken.items() if key not in less or result.rank < less[key].rank]
    return [Close(result, False) for result in coming] + [Close(result, True) for result in going]


def close_allergens(parts: List[Part], taken: List[Result], margin: Fraction) -> List[Allergen]:
    """Allergens just below the limit of their name on the label, as they are."""
    named = {each.name for each in allergens(parts, taken)} | {name for result in taken for name in result.names}
    shares = {part.name: part.share for part in parts}
    more = allergens(_scaled(parts, 1 / (1 - margin)), taken)
    return [each._replace(share=shares[each.name]) for each in more if each.name not in named]


def _scaled(parts: List[Part], factor: Fraction) -> List[Part]:
    return [part._replace(share=part.share * factor) for part in parts]
