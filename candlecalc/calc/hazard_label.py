"""The label of a candle by its hazard classes: EU rules, to be confirmed where a row says so."""

from typing import Dict, List, Optional, Sequence, Set, Tuple

from candlecalc.calc.datasheet.answers import Result
from candlecalc.calc.datasheet.class_rules import SENSITISING, allergens, key_of
from candlecalc.calc.datasheet.duty_rules import beside_a_statement, cautions, duties, sheet_on_request
from candlecalc.calc.datasheet.findings import (
    ANNEX_TWO,
    ASK_US,
    BY_NAME,
    BY_STATEMENT,
    GB,
    NOTHING_REACHED,
    NOTHING_TYPED,
    PRINTED,
    US,
    HazardFound,
    allergen_status,
    found_in,
    wording,
)
from candlecalc.calc.datasheet.label import (
    LabelLine,
    names,
    pictograms,
    precautions,
    signal_word,
    sizes,
    small_package,
    statements,
)
from candlecalc.calc.datasheet.lines import LONGEST, lines_of
from candlecalc.calc.datasheet.mixture import candle, named
from candlecalc.calc.datasheet.reading import read
from candlecalc.calc.datasheet.substance import Words, printed_name
from candlecalc.calc.sources import CLP
from candlecalc.calc.terms.hazard import (
    Adding,
    Allergens,
    Buyer,
    Cautions,
    Classes,
    Concentrations,
    Dilutions,
    Holds,
    Loads,
    Names,
    OilNumbers,
    Region,
    Specifics,
    Substances,
    Uncertainty,
    Viscosity,
)
from candlecalc.declaration.declared import formula

LABELLING = CLP + "; ECHA Guidance on Labelling and Packaging v4.2, 7.3, in a transcription; each row says which"


@formula(
    source=LABELLING,
    words="clp label, ghs label, warning label, hazard label, allergens, allergy statement, contains statement, "
    "EUH208, pictogram, symbols, signal word, danger or warning, P statements, precautionary statements, "
    "H statements, H317, P102, poison centre, poison center, UFI, SDS, keep out of reach of children, "
    "made by, name and address on the label, label size",
)
def label_of_candle(
    substances: Substances,
    concentrations: Concentrations,
    classes: Classes,
    loads: Loads,
    specifics: Specifics = None,
    oils: OilNumbers = None,
    dilutions: Dilutions = None,
    viscosity: Viscosity = None,
    route: Adding = "additive",
    region: Region = "EU",
    uncertainty: Uncertainty = 0.0,
    holds: Holds = None,
    buyer: Buyer = "public",
) -> List[LabelLine]:
    """Label of a candle from its oils' data sheets: signal word, pictograms, statements, names, duties, cautions.

    What is found of the classes stands first, as `hazard_of_candle` gives it. Rows that say
    unconfirmed rest on what was not read in its text. Fire warnings are a duty of their own.

    >>> label_of_candle(substances=["citral"], concentrations=["9 %"], classes=["H317"], loads=[0.2])[0].text
    'Skin Sens. 1'
    """
    with named("label_of_candle"):
        lines = lines_of(substances, concentrations, classes, specifics, oils)
        mixture = candle(lines, loads, dilutions, viscosity, route, region, uncertainty)
    taken = {result.name for result in mixture.classes}
    rows = [each for each in found_in(mixture) if each.found != "caution"]
    # Sensitising substances below their class stand once, in the words of the label.
    found = [_as_label_line(each, taken) for each in rows if each.found not in (BY_STATEMENT, BY_NAME)]
    if region == "US" or not lines:
        return found
    others = [
        _named(each.name, each.why, allergen_status(each, mixture))
        for each in allergens(mixture.parts, mixture.classes)
    ]
    asked = sheet_on_request(mixture.parts) if buyer == "trade" and not mixture.classes else []
    besides = _elements(mixture.classes, others, holds, buyer, region, asked)
    return found + _in_region(besides, region) + _cautions(region)


@formula(
    source=LABELLING,
    words="clp label, hazard label, allergens, pictogram, signal word, precautionary statements, P102, poison "
    "centre, UFI, warning label",
)
def label_of_classes(
    classes: Classes,
    names: Names = None,
    allergens: Allergens = None,
    region: Region = "EU",
    holds: Holds = None,
    buyer: Buyer = "public",
) -> List[LabelLine]:
    """Label elements for the classes that the supplier states for the oil in wax at the load poured.

    The supplier's own label elements go before it. To find the classes use `hazard_of_candle`.

    >>> label_of_classes(classes=["Skin Sens. 1 H317"], names=["citral"])[1].text
    'Warning'
    """
    if region == "US":
        return [LabelLine(US, status=ASK_US)]
    typed = [words for words in classes if words]
    for words in typed:
        if len(words) > LONGEST:
            raise ValueError(f"label_of_classes: a class is {len(words)} characters long; type one to a cell.")
    others = [_named(name, None, ANNEX_TWO) for name in allergens or [] if name]
    if not typed and not others:
        return [LabelLine(NOTHING_TYPED)]
    results, said = _typed_results(typed, tuple(name for name in names or [] if name))
    lines = [LabelLine("not read", None, unread, "not counted", PRINTED) for unread in said.unread]
    lines += [LabelLine("note", None, note) for note in said.notes]
    lines += [LabelLine("class", None, result.name, result.why) for result in results]
    lines += [] if results else [LabelLine("class", None, NOTHING_REACHED)]
    return lines + _in_region(_elements(results, others, holds, buyer, region), region) + _cautions(region)


@formula(
    source="drawn up from the cautions of the sources named in hazard_of_candle; common practice",
    words="gloves, neat oil on skin, clp caveats",
)
def hazard_cautions(region: Region = "EU") -> Cautions:
    """What to bear in mind with hazard classes and labels from this library.

    >>> hazard_cautions(region="GB")[-1]
    'Great Britain: the GB list may differ: confirm.'
    """
    return [US + ": " + ASK_US] if region == "US" else cautions(region)


def _named(substance: str, why: Optional[str], status: str) -> LabelLine:
    return LabelLine("name", None, printed_name(substance), why, status)


def _elements(
    results: List[Result],
    others: List[LabelLine],
    holds: Optional[float],
    buyer: str,
    region: str,
    asked: Sequence[LabelLine] = (),
) -> List[LabelLine]:
    """What the label shows by its classes, by `others` that it names as sensitising, and by what is `asked` besides."""
    sensitising = any(result.kind in SENSITISING for result in results)
    lines = signal_word(results) + pictograms(results) + statements(results)
    lines += [_may_react(others)] if others and not sensitising else []
    lines += names(results, others if sensitising else []) + precautions(results, buyer)
    if results or others:
        lines += small_package(results, holds, buyer) + sizes(holds)
    lines += [*duties(results, buyer, region), *asked]
    return lines + [beside_a_statement()] * bool(not results and (others or asked))


def _may_react(others: List[LabelLine]) -> LabelLine:
    """EUH208 with every name that it takes."""
    text = wording("EUH208", [line.text for line in others if line.text])
    why = "; ".join(line.why for line in others if line.why) or None
    status = "; ".join(dict.fromkeys(line.status for line in others if line.status))
    return LabelLine("supplemental", "EUH208", text, why, status)


def _typed_results(typed: List[str], behind: "Tuple[str, ...]") -> "Tuple[List[Result], Words]":
    """Classes as typed, each once, and what else is to be said of the words."""
    said = Words()
    results: Dict[Tuple[str, str], Result] = {}
    for cell in typed:
        words = read(cell)
        said.unread += words.unread
        said.notes += words.notes
        for hazard in sorted(words.hazards):
            category = "1" if hazard.kind in SENSITISING else hazard.category
            codes = tuple(sorted(words.codes))
            result = Result(hazard.kind, category, hazard.route, 0.0, 0.0, "as typed", "", behind, codes)
            results[key_of(result)] = min(results.get(key_of(result), result), result, key=lambda each: each.rank)
    return sorted(results.values(), key=lambda each: each.rank), said


def _as_label_line(each: HazardFound, classes: "Set[str]") -> LabelLine:
    """What was found of the classes, in the columns of a label."""
    if each.found.replace("unconfirmed: ", "") in classes:
        return LabelLine("class", each.code, each.found, each.why, each.status)
    return LabelLine(each.found, each.code, each.statement, each.why, each.status)


def _in_region(lines: List[LabelLine], region: str) -> List[LabelLine]:
    if region != "GB":
        return lines
    return [line._replace(status="; ".join(filter(None, [line.status, GB]))) for line in lines]


def _cautions(region: str) -> List[LabelLine]:
    return [LabelLine("caution", None, text) for text in cautions(region)]
