"""Duties that follow from classes, and the cautions that go with every result."""

from fractions import Fraction
from typing import List, Tuple

from candlecalc.calc.datasheet.answers import Result, reaches
from candlecalc.calc.datasheet.class_rules import SENSITISING
from candlecalc.calc.datasheet.findings import code_of, wording
from candlecalc.calc.datasheet.label import WATER_ONLY, LabelLine
from candlecalc.calc.datasheet.substance import Part
from candlecalc.calc.sources import unconfirmed

ECHA_TABLE = "a table on ECHA's pages"
SUPPLIER = "supplier's name, address and telephone; the product's name"
RESTRICTED = ("H340", "H350", "H360")
TENTH, ONE = Fraction(1, 10), Fraction(1)
# Sold to trade alone and of no class, a mixture offers its data sheet from 0.1 % of these on: CLP Annex II, 2.10.
ON_REQUEST = [("Carc.", "2"), ("Repr.", ""), ("Lact.", ""), ("ED HH", "2"), ("ED ENV", "2")]
CAUTIONS = [
    "Worked out from the lines typed, by limits and sums alone. The supplier's data sheet for the oil, or for the oil "
    "in wax, test results, comparison with mixtures already judged, and a competent person's decision stand above it. "
    "Whoever sells the candle answers for its class and label.",
    "EU rules: limits as consolidated in May 2026, wording of September 2025. Great Britain, Northern Ireland, "
    "Switzerland, the United States, Canada and others differ in law, language, dates and statements. National rules "
    "on language, waste, poison centres and goods for consumers come on top.",
    "A data sheet prints ranges, leaves out what is below its thresholds, may be old, and may lack specific limits, "
    "M-factors or toxicity estimates. The upper ends are taken; what is missing is unknown, not harmless.",
    "For experts or tests: substances that do not add up (aldehydes, phenols, acids, bases, surfactants), the 20 % "
    "guide for irritation of the airways and drowsiness, viscosity, how the solid burns, fumes and soot, dyes, "
    "additives of the wax, and impurities.",
    "Labels for hazards are no labels for burning: fire warnings and their standards (EN 15493, 15494 and 15426, from "
    "memory) are a duty of their own.",
    "A fragrance certificate by the IFRA standards is no hazard classification.",
    "Weighing and drift from batch to batch may cross a limit that is near.",
    "That a candle is judged as a mixture is from memory: confirm it with a competent person.",
]


def cautions(region: str) -> List[str]:
    """What to bear in mind with every class and label."""
    return CAUTIONS + ["Great Britain: the GB list may differ: confirm."] * (region == "GB")


# What poison centres are to be told, and by what: the EU's code and its annex are no part of Great Britain's law.
NOTIFIED = (
    "notify poison centres and print the UFI code before it is sold",
    "CLP Art. 45 and Annex VIII, by an authority's page",
)
NOTIFIED_IN_GB = (
    "ask Great Britain's poison centre what it is to be told before it is sold",
    unconfirmed("GB CLP (from memory)"),
)


def duties(results: List[Result], buyer: str, region: str) -> List[LabelLine]:
    """What the classes ask of the package and of the seller."""
    found = []
    if buyer == "public":
        found += _by_class(results, "tactile", "tactile warning of danger on the package, for the blind")
        found += _by_class(results, "closure", "child-resistant closure")
        found += _restricted(results)
    bodily = [result for result in results if result.kind not in WATER_ONLY]
    if bodily:
        text, where = NOTIFIED_IN_GB if region == "GB" else NOTIFIED
        found.append(LabelLine("duty", None, text, ", ".join(result.name for result in bodily), where))
    if results:
        text = f"{SUPPLIER}; for the public the weight"
        found.append(LabelLine("duty", None, text, "every label", unconfirmed("CLP Art. 17 (from memory)")))
    return found


def beside_a_statement() -> LabelLine:
    """What stands beside EUH208 or EUH210 on the label of a mixture without a class."""
    status = unconfirmed("CLP Art. 25(6) (from memory)")
    return LabelLine("duty", None, SUPPLIER, "a statement of Annex II, Part 2, without a class", status)


def _by_class(results: List[Result], column: str, text: str) -> List[LabelLine]:
    among = [result.name for result in results if result.row[column]]
    return [LabelLine("duty", None, text, ", ".join(among), ECHA_TABLE)] if among else []


def _restricted(results: List[Result]) -> List[LabelLine]:
    among = [result.name for result in results if code_of(result)[:4] in RESTRICTED]
    text = "not to be supplied to the public where the substance is listed"
    where = unconfirmed("REACH Annex XVII, entries 28 to 30 (read second-hand)")
    return [LabelLine("duty", None, text, ", ".join(among), where)] if among else []


def sheet_on_request(parts: List[Part]) -> List[LabelLine]:
    """EUH210, of a mixture without a class that is not meant for the public."""
    names = [part.name for part in parts if _on_request(part)]
    if not names:
        return []
    return [LabelLine("supplemental", "EUH210", wording("EUH210"), ", ".join(names), "CLP Annex II, 2.10")]


def _on_request(part: Part) -> bool:
    bounds: List[Tuple[bool, Fraction]] = [(True, ONE)]
    for kind in SENSITISING:
        for hazard in part.has(kind):
            generic = ONE / 10 if hazard.category == "1A" else ONE
            bounds.append((True, part.limit(kind, "1", generic) / 10))
    for kind, category in ON_REQUEST:
        bounds.append((any(hazard.category.startswith(category) for hazard in part.has(kind)), TENTH))
    health = any(not hazard.kind.startswith("Flam.") for words in part.said for hazard in words.hazards)
    return health and any(applies and reaches(part.share, bound) for applies, bound in bounds)
