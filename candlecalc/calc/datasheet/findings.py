"""What is found of a mixture, in rows: classes with their sums and limits, what is close, and what was not read."""

from typing import Dict, Iterable, List, NamedTuple

import candlecalc.calc.datasheet.aquatic_rules as water
import candlecalc.calc.datasheet.toxicity as toxicity
import candlecalc.tables as tables
from candlecalc.calc.datasheet.answers import Result, shown
from candlecalc.calc.datasheet.class_rules import Allergen, allergens, classes, close_allergens, key_of
from candlecalc.calc.datasheet.mixture import Mixture
from candlecalc.calc.datasheet.substance import Line, printed_name
from candlecalc.calc.sources import unconfirmed
from candlecalc.calc.terms import hazard as terms

NOTHING_TYPED = "no data sheet typed: cannot say"
PRINTED = "type it as the sheet prints its classes"
NUMBERED = "type its CAS number as the sheet prints it"
NOTHING_REACHED = "no class reached from the lines typed"
GB = "the GB list may differ: confirm"
US = "these rules do not apply in the US"
ASK_US = (
    "ask the oil's supplier for a data sheet by 29 CFR 1910.1200 (work places), and a licensed adviser or the Consumer "
    "Product Safety Commission about labels for consumers (the latter from memory)"
)
ABSENT = "a substance below the sheet's own thresholds is not printed: absence from the lines proves nothing"
ANNEX_TWO = "CLP Annex II, 2.8"
BY_STATEMENT, BY_NAME = "EUH208", "name on the label"
STRICTER = "where the substances are aldehydes, phenols, acids, bases or surfactants: expert judgement"
CAUTION = (
    "a calculation from the lines typed alone: the supplier's data sheet for the oil in wax, tests and a competent "
    "person's decision stand above it; whoever sells the candle answers for class and label"
)
FLAMMABLE = "flammability is decided by a test of the mixture: a liquid's flash point says nothing about a solid candle"
EU_ONLY = ("ED HH", "ED ENV", "PBT", "vPvB", "PMT", "vPvM")


class HazardFound(NamedTuple):
    """A class with its statement, the sum and the limit it comes from, and what is unconfirmed."""

    found: terms.Found
    code: terms.Code = None
    statement: terms.Statement = None
    amount: terms.Amount = None
    limit: terms.AmountLimit = None
    why: terms.Why = None
    status: terms.Status = None


def found_in(mixture: Mixture) -> List[HazardFound]:
    """Everything that is to be said of a mixture; classes first where all was read."""
    if mixture.region == "US":
        return [HazardFound(US, status=ASK_US)]
    if not mixture.lines:
        return [HazardFound(NOTHING_TYPED)]
    taken = mixture.classes
    found = _not_read(mixture) + _unnumbered(mixture) + _not_estimated(mixture)
    found += [_class(result, mixture) for result in taken] if taken else [_nothing(mixture)]
    found += [_allergen(each, mixture) for each in allergens(mixture.parts, taken)]
    found += _close(mixture) + _stricter(mixture) + _unknown(mixture) + _notes(mixture)
    return found + [HazardFound("caution", why=CAUTION, status="all cautions: hazard_cautions")]


def _not_read(mixture: Mixture) -> List[HazardFound]:
    rows = [HazardFound(f"{NOTHING_TYPED.replace('typed', f'typed for oil {oil}')}") for oil in mixture.without_sheet]
    for line in mixture.lines:
        for words in line.words.unread:
            why = f"{line.substance}, line {line.place}: not counted"
            rows.append(HazardFound(f"not read: {words}", why=why, status=PRINTED))
    return rows


def _unnumbered(mixture: Mixture) -> List[HazardFound]:
    why = "added up with lines of the same name alone; under another name it is counted apart, and less of it is seen"
    return [
        HazardFound(
            f"no CAS number: {line.substance}", why=f"line {line.place}, oil {line.oil}: {why}", status=NUMBERED
        )
        for line in mixture.unnumbered
    ]


def _not_estimated(mixture: Mixture) -> List[HazardFound]:
    if not mixture.not_estimated:
        return []
    found = f"cannot be estimated: Acute Tox. ({', '.join(mixture.not_estimated)})"
    why = "substances that make up all of the mixture are typed as of unknown toxicity: nothing known is left"
    return [HazardFound(found, why=why, status=_status(mixture, "CLP Annex I, 3.1.3.6.2.3"))]


def _nothing(mixture: Mixture) -> HazardFound:
    by_name = ", where lines without a CAS number are added up by name alone" if mixture.unnumbered else ""
    return HazardFound(NOTHING_REACHED + by_name, status=_status(mixture, ABSENT))


def _class(result: Result, mixture: Mixture) -> HazardFound:
    code = code_of(result)
    prefix = "unconfirmed: " if result.unconfirmed else ""
    near = [each for each in mixture.close if each.above and key_of(each.result) == key_of(result)]
    status = unconfirmed(result.unconfirmed) if result.unconfirmed else f"CLP Annex I, {result.where}"
    status = _status(mixture, status, result.expert, *[f"within {mixture.percent} of the limit" for _ in near[:1]])
    return HazardFound(prefix + result.name, code, wording(code), result.amount, result.limit, f"{result.why}", status)


def code_of(result: Result) -> str:
    """The code of its statement; with the letters of the substance where there is one kind of them."""
    base = result.row["code"]
    printed = {code for code in result.codes if code.startswith(base) and statement(code)}
    return printed.pop() if len(printed) == 1 else base


def statement(code: str) -> Dict[str, str]:
    """The row of a statement; empty where there is none."""
    return next((row for row in tables.rows("hazard_statements") if row["code"] == code), {})


def wording(code: str, names: Iterable[str] = ()) -> str:
    """The wording of a statement, with the names of substances where it takes them."""
    return statement(code)["text"].replace("<name of sensitising substance>", ", ".join(names))


def _allergen(each: Allergen, mixture: Mixture) -> HazardFound:
    """EUH208, or the name alone where the mixture has its class as a sensitiser already."""
    amounts = float(each.share), float(each.limit)
    name, status = printed_name(each.name), _status(mixture, allergen_status(each, mixture))
    if mixture.sensitising:
        return HazardFound(BY_NAME, None, name, *amounts, each.why, status)
    return HazardFound(BY_STATEMENT, "EUH208", wording("EUH208", [name]), *amounts, each.why, status)


def allergen_status(each: Allergen, mixture: Mixture) -> str:
    """By which text a sensitising substance is named, and whether its amount is near the limit."""
    near = each.share <= each.limit * (1 + mixture.margin)
    return f"{ANNEX_TWO}, and Annex I, Table 3.4.6" + f"; within {mixture.percent} of the limit" * near


def _close(mixture: Mixture) -> List[HazardFound]:
    """Classes and names that a little more of everything would bring."""
    more = f"comes with {float(100 * mixture.margin / (1 - mixture.margin)):.3g} % more of everything"
    status = _status(mixture, f"within {mixture.percent} below a limit")
    found = []
    for each in mixture.close:
        if not each.above:
            code = code_of(each.result)
            name, limit = f"just below {each.result.name}", each.result.limit
            found.append(HazardFound(name, code, wording(code), None, limit, f"{more}: {each.result.why}", status))
    for allergen in close_allergens(mixture.parts, mixture.classes, mixture.margin):
        amounts = float(allergen.share), float(allergen.limit)
        found.append(HazardFound("just below EUH208", "EUH208", None, *amounts, allergen.why, status))
    return found


def _stricter(mixture: Mixture) -> List[HazardFound]:
    """What the limits for substances that do not add up would bring besides."""
    if mixture.route == "stricter":
        return []
    taken = {key_of(result): result.rank for result in mixture.classes}
    other = classes(mixture.parts, "stricter", mixture.viscosity)
    more = [result for result in other if result.rank < taken.get(key_of(result), result.rank + 1)]
    return [
        HazardFound(
            f"by the stricter route: {result.name}", code_of(result), wording(code_of(result)),
            result.amount, result.limit, result.why, _status(mixture, STRICTER),
        )
        for result in more
    ]  # fmt: skip


def _unknown(mixture: Mixture) -> List[HazardFound]:
    """Statements on what is typed as unknown."""
    toxic, aquatic = toxicity.unknown(mixture.parts), water.unknown(mixture.parts)
    found = []
    if toxic:
        words = f"{shown(toxic)} % of the mixture consists of component(s) of unknown acute toxicity"
        found.append(HazardFound("statement", None, words, float(toxic), 1.0, None, "CLP Annex I, 3.1.3.6.2.2"))
    if aquatic:
        words = f"Contains {shown(aquatic)} % of components with unknown hazards to the aquatic environment"
        found.append(HazardFound("statement", None, words, float(aquatic), None, None, "CLP Annex I, 4.1.3.6.1"))
    return found


def _notes(mixture: Mixture) -> List[HazardFound]:
    """How lines were read, and what no sum decides."""
    notes = [f"{line.substance}: {note}" for line in mixture.lines for note in notes_of(line)]
    for part in mixture.parts:
        ways = ", ".join(toxicity.learned(part))
        notes += [f"{part.name}: toxicity unknown on one line, known on another: the known one counts ({ways})"] * bool(
            ways
        )
    eu_only = [result.name for result in mixture.classes if result.kind in EU_ONLY]
    if eu_only and mixture.region == "GB":
        notes.append(f"{', '.join(eu_only)}: a class of the EU alone (read second-hand)")
    elif eu_only:
        notes.append(
            f"{', '.join(eu_only)}: for mixtures placed on the EU market from 1 May 2026, older ones from 2028"
        )
    return [HazardFound("note", why=note) for note in dict.fromkeys(notes)]


def notes_of(line: Line) -> List[str]:
    """What to know about a line as read."""
    kinds = {hazard.kind for hazard in line.words.hazards}
    notes = [line.share.note] if line.share.note else []
    for kind, which in (("Aquatic Acute", "acute"), ("Aquatic Chronic", "chronic")):
        first = any(hazard[:2] == (kind, "1") for hazard in line.words.hazards)
        if first and which not in line.words.factors:
            notes.append(f"no {which} M-factor typed: taken as 1; ask the supplier")
    for hazard in sorted(line.words.hazards):
        if hazard.kind == "Acute Tox." and hazard.route not in line.words.estimates:
            notes.append(f"{hazard.name} without an estimate: unconfirmed, check against {toxicity.CONVERTED}")
    if {"Flam. Liq.", "Flam. Sol."} & kinds:
        notes.append(FLAMMABLE)
    return notes + line.words.notes


def _status(mixture: Mixture, *words: str) -> str:
    return "; ".join([word for word in words if word] + [GB] * (mixture.region == "GB"))
