"""What classes bring to a label: signal word, pictograms by precedence, statements, names, small packages."""

from typing import Dict, Iterable, List, NamedTuple, Optional, Set, Tuple

import candlecalc.tables as tables
from candlecalc.calc.datasheet.answers import Result
from candlecalc.calc.datasheet.findings import code_of, wording
from candlecalc.calc.datasheet.substance import printed_name
from candlecalc.calc.sources import unconfirmed
from candlecalc.calc.terms import hazard as terms

PICTOGRAMS = {
    "GHS02": "flame",
    "GHS05": "corrosion",
    "GHS06": "skull and crossbones",
    "GHS07": "exclamation mark",
    "GHS08": "health hazard",
    "GHS09": "environment",
}
GRADES = {"HR": "highly recommended", "R": "recommended", "O": "optional", "listed": "listed"}
IRRITANT = ("Skin Irrit.", "Eye Irrit.")
WATER_ONLY = ("Aquatic Acute", "Aquatic Chronic", "Ozone", "ED ENV", "PBT", "vPvB", "PMT", "vPvM")
SMALL = 125.0  # ml
MOST_STATEMENTS, MOST_NAMES = 6, 4
GUIDANCE = "ECHA's guidance on labelling and packaging, 7.3"


class LabelLine(NamedTuple):
    """An element of the label, or a duty: what to print or do, why, and what is unconfirmed."""

    element: terms.Element
    code: terms.Code = None
    text: terms.Wording = None
    why: terms.Why = None
    status: terms.Status = None


def by_status(row: Dict[str, str], column: str, against: str) -> str:
    """In which words a cell of a table stands behind an element."""
    return against if row[f"status_{column}"] == "read in the text" else unconfirmed(f"{against} (read second-hand)")


def signal_word(results: List[Result]) -> List[LabelLine]:
    """Danger where any class brings it, and then no Warning: Art. 20(3)."""
    for word in ("Danger", "Warning"):
        among = [result for result in results if result.row["signal"] == word]
        if among:
            status = by_status(among[0].row, "signal", "the label tables of CLP Annex I")
            return [LabelLine("signal word", None, word, _for(among), status)]
    return [LabelLine("signal word", None, "none", "no class that brings one", None)] if results else []


def pictograms(results: List[Result]) -> List[LabelLine]:
    """Each once; a milder one gives way to a stronger one for the same hazard: Art. 26."""
    brought = {result.row["pictogram"] for result in results}
    lines = []
    for code in sorted(brought - {""}):
        among = [result for result in results if result.row["pictogram"] == code]
        kept = [result for result in among if not _article(result, brought, results)]
        status = by_status(among[0].row, "pictogram", "the label tables of CLP Annex I")
        if kept:
            lines.append(LabelLine("pictogram", code, PICTOGRAMS[code], _for(kept), status))
        else:
            articles = sorted({_article(result, brought, results) for result in among})
            lines.append(LabelLine("pictogram left out", code, PICTOGRAMS[code], _for(among), ", ".join(articles)))
    return lines


def _article(result: Result, brought: "Set[str]", results: List[Result]) -> str:
    """The article by which a pictogram is not printed for this class; blank where it is."""
    # Within one class, the most severe category has the word: STOT SE 1 or 2 over STOT SE 3.
    severe = min(
        (other for other in results if other.kind == result.kind and other.row["pictogram"]), key=lambda each: each.rank
    )
    if severe.row["pictogram"] != result.row["pictogram"]:
        return "CLP Art. 26(2)"
    return "CLP Art. 26(1)" if _covered(result, brought, results) else ""


def _covered(result: Result, brought: "Set[str]", results: List[Result]) -> bool:
    """Whether the exclamation mark is not printed for this class, as a stronger pictogram stands for it."""
    if result.row["pictogram"] != "GHS07":
        return False
    breathed = any(other.kind == "Resp. Sens." for other in results)
    irritant = result.kind in IRRITANT
    return (
        "GHS06" in brought
        or (irritant and "GHS05" in brought)
        or (breathed and (irritant or result.kind == "Skin Sens."))
    )


# What may be left out where the other stands: CLP Annex I, Table 3.3.5; the rest from Annex III, second-hand.
STANDS_FOR = {"H318": "H314", "H400": "H410", "EUH440": "EUH441", "EUH450": "EUH451"}


def statements(results: List[Result]) -> List[LabelLine]:
    """Hazard statements, with those that another one makes unnecessary."""
    lines = []
    codes = {code_of(result) for result in results}
    for code in dict.fromkeys(code_of(result) for result in results):
        among = [result for result in results if code_of(result) == code]
        other = STANDS_FOR.get(code)
        element = "hazard statement, may be left out" if other in codes else "hazard statement"
        read = code == "H318"
        status = f"{other} stands for it" + ("" if read else f"; {unconfirmed('CLP Annex III (read second-hand)')}")
        status = status if other in codes else _both(code, codes) or "CLP Annex III"
        lines.append(LabelLine(element, code, wording(code), _for(among), status))
    return lines


def _both(code: str, codes: "Set[str]") -> str:
    """Acute and chronic hazard to water side by side, other than H410."""
    pair = code == "H400" and codes & {"H411", "H412"}
    return unconfirmed("CLP Annex I, 4.1, whether one statement stands for both") if pair else ""


def names(results: List[Result], others: Iterable[LabelLine] = ()) -> List[LabelLine]:
    """Substances that the label names: those behind the classes by Art. 18(3), and others."""
    behind: Dict[str, List[Result]] = {}
    for result in results:
        if result.row["names"]:
            for name in result.names:
                behind.setdefault(printed_name(name), []).append(result)
    status = unconfirmed("CLP Art. 18(3) (list read second-hand)")
    lines = [LabelLine("name", None, name, _for(among), status) for name, among in behind.items()]
    besides = "sensitising, though not behind the class"
    lines += [line._replace(why=line.why or besides) for line in others if line.text not in behind]
    if len(behind) > MOST_NAMES:
        lines.append(LabelLine("names", None, "four are enough unless more are needed", None, status))
    return lines


def precautions(results: List[Result], buyer: str) -> List[LabelLine]:
    """Precautionary statements to choose from, the most recommended first, with what each is for."""
    if not results:
        return []
    offered: Dict[str, List[Tuple[str, Result]]] = {}
    for result in results:
        for each in result.row["precautions"].split():
            code, grade = each.split(":")
            offered.setdefault(code, []).append((grade, result))
    if "P333+P313" in offered:
        offered.pop("P332+P313", None)
    lines = [_precaution(code, among) for code, among in offered.items()]
    lines.sort(key=lambda line: list(GRADES.values()).index((line.why or "").partition(" for ")[0]))
    for result in results:
        if not result.row["precautions"]:
            lines.append(LabelLine("precaution", None, f"none is listed here for {result.name}", None,
                                   unconfirmed("the label tables of CLP Annex I")))  # fmt: skip
    lines += _for_everyone(results, buyer)
    advice = f"choose: not more than {MOST_STATEMENTS} unless needed; leave out repeats"
    advice += ", one of disposal for the public" if buyer == "public" else ""
    return [LabelLine("precautions", None, advice, "CLP Art. 28"), *lines]


def _precaution(code: str, among: List[Tuple[str, Result]]) -> LabelLine:
    best = min((grade for grade, _ in among), key=list(GRADES).index)
    why = f"{GRADES[best]} for {', '.join(result.name for _, result in among)}"
    status = unconfirmed(f"{GUIDANCE} (read second-hand)") + _worded_twice(code)
    if code == "P210":
        status += (
            "; it makes no sense on a candle: ask whether to leave it out (that repeats may be left out is from memory)"
        )
    return LabelLine("precaution", code, wording(code), why, status)


def _for_everyone(results: List[Result], buyer: str) -> List[LabelLine]:
    lines = []
    if any(result.row["disposal"] for result in results):
        why = "disposal; due to the public where waste law asks for it"
        lines.append(
            LabelLine("precaution", "P501", wording("P501"), why, unconfirmed(f"{GUIDANCE} (read second-hand)"))
        )
    if buyer == "public":
        for code in ("P102", "P101", "P103"):
            status = unconfirmed("CLP Annex IV (when it applies: from memory)") + _worded_twice(code)
            lines.append(LabelLine("precaution", code, wording(code), "products for consumers", status))
    return lines


def _worded_twice(code: str) -> str:
    """The other words of a precaution, where the two parts of Annex IV differ: Art. 22(4) points to Part 2."""
    others = [row["text"] for row in tables.rows("precautions_part_1") if row["code"] == code]
    part_1 = 'CLP Annex IV, whose Part 1, amended by Regulation (EU) 2019/521, reads "{}" (read second-hand)'
    return "".join(f"; {unconfirmed(part_1.format(other))}" for other in others)


def small_package(results: List[Result], holds: Optional[float], buyer: str) -> List[LabelLine]:
    """What may be left off a package of up to 125 ml: CLP Annex I, 1.5.2.1."""
    if holds is None:
        return [LabelLine("package", None, "type what the package holds, in ml: weight over density",
                          "the label's size and what may be left off a small package depend on it")]  # fmt: skip
    if holds > SMALL:
        return []
    return [_spared(result, buyer) for result in results]


def _spared(result: Result, buyer: str) -> LabelLine:
    spared, code = result.row["small"], code_of(result)
    against = "CLP Annex I, 1.5.2.1"
    status = by_status(result.row, "small", against)
    if spared == "H and P" or (spared.startswith("H and P") and buyer == "trade"):
        text = f"{code} and its P statements may be left out; pictogram and signal word stay"
    elif spared == "P":
        text = f"P statements of {code} may be left out"
    else:
        text, status = f"{code} and its P statements stay at any size", f"{against} does not list it"
    return LabelLine("small package", code, text, result.name, status)


def sizes(holds: Optional[float]) -> List[LabelLine]:
    """Smallest label, pictogram and letters by what the package holds: CLP Annex I, Table 1.3."""
    if holds is None:
        return []
    row = tables.row_up_to("hazard_packages", holds / 1000)
    where = "CLP Annex I, 1.2.1.4"
    letters = unconfirmed("Regulation (EU) 2024/2865, due 2028 (read second-hand)")
    return [
        LabelLine("size of label", None, f"{row['label_words']} {row['label']} mm", None, where),
        LabelLine("size of pictogram", None, f"{row['pictogram']} mm", "and a fifteenth of the least label", where),
        LabelLine("height of letters", None, f"{row['letters']} mm, measured on a small x", None, letters),
    ]


def _for(results: Iterable[Result]) -> str:
    return ", ".join(dict.fromkeys(result.name for result in results))
