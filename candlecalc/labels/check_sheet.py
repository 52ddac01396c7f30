"""Check sheets: a page a product and a set of rules, of all that its labels state and of what they lack, to sign."""

from collections.abc import Iterable, Iterator, Sequence
from typing import NamedTuple

import candlecalc.tables as tables
from candlecalc.calc.datasheet.findings import GB
from candlecalc.calc.sources import unconfirmed
from candlecalc.labels.folder import Held, Row
from candlecalc.labels.shapes import Text
from candlecalc.labels.texts import NOT_CHECKED, REGIONS, facts_of, label_of
from candlecalc.quantities.rounding import round_half_away
from candlecalc.season.tables.labels import KINDS

THE = {"us": "the US", "gb": "Great Britain", "eu": "the EU"}
TO_SIGN = (
    "This sheet lists what was typed and what follows from it; it is no decision on the candle. Confirm each line with "
    "the market's own authorities, each standard's text and the supplier's data sheets: whoever sells the candle "
    "answers for it."
)
MISSING, TO_CONFIRM = "MISSING", "to confirm"
IF_OUTSIDE = "if outside"  # of an importer, where the maker's workbook is of the region itself
IMPORTER = "importer"
# Of what an inspector measures the height, by part.
MEASURED = {"net weight": "figures", "names": "small x", "hazard": "small x"}
OF_GB = "GB CLP was not read"


class Line(NamedTuple):
    """A line of a check sheet: what it is, what the label prints, by what, and how far it is confirmed."""

    what: str
    printed: str
    by: str
    state: str


class Heard(NamedTuple):
    """A list under its head."""

    head: str
    lines: list[str]


class CheckSheet(NamedTuple):
    """A page: its title, what the labels state, what else is asked for, and what there is to know besides."""

    title: str
    maker: str
    stated: list[Line]
    asked: list[Line]
    lists: list[Heard]


def check_sheet(
    held: Held, product: str, of_batch: Iterable[str] = (), oils: Iterable[str] = (), maker: str = "", *, at_home: bool
) -> CheckSheet:
    """What the three labels of a product state by the rules it follows, and what they lack.

    `of_batch` is what the season says of its batch, `oils` of each oil; `at_home` says that the maker is in the region.
    """
    facts = facts_of(held, product)
    stated: dict[str, Line] = {}
    besides: list[str] = []
    lines: dict[str, Text] = {}
    for kind in KINDS:
        label, told = label_of(held, product, kind)
        besides += [*(f"not counted: {words}" for words in label.not_counted), *told]
        for text in label.texts:
            lines |= {text.code.casefold(): text} if text.part == "line" and text.code else {}
            stated.setdefault(text.called, Line(_what(text, kind, facts), _printed(text), _by(text), _state(text)))
    title = f"{facts['product']}: check sheet by the rules of {THE[facts['rules']]}"
    asked = [*_asked(facts, lines, at_home), *_due(besides, lines, GB if facts["rules"] == "gb" else "")]
    lists = [
        Heard("To do, and to confirm", [*_still_open(list(stated.values())), *besides, *of_batch]),
        Heard("Oils and dyes: to confirm with the carrier, for the candle and for the oil", list(oils)),
        Heard(
            "Whom to ask (common practice)", [f"{row['what']}: {row['whom']}" for row in _of_region("askers", facts)]
        ),
        Heard("What its rules say besides, and how that was read", list(_notes(facts))),
    ]
    return CheckSheet(title, maker, _together(stated.values()), asked, [each for each in lists if each.lines])


def _still_open(lines: Sequence[Line]) -> Iterator[str]:
    still = sum(line.state == TO_CONFIRM for line in lines)
    if still:
        yield f"{still} of the {len(lines)} texts on its labels {'is' if still == 1 else 'are'} still to confirm"


def _together(lines: Iterable[Line]) -> list[Line]:
    """Lines that differ in their words alone as one, such as the statements on fire."""
    found: list[Line] = []
    for line in lines:
        if found and found[-1]._replace(printed="") == line._replace(printed=""):
            found[-1] = line._replace(printed=f"{found[-1].printed} {line.printed}")
        else:
            found.append(line)
    return found


def _printed(text: Text) -> str:
    """What stands on the label; of a symbol that it is drawn."""
    if text.part == "pictogram":
        return f"drawn: {text.words}"
    if text.part == "sign":
        return " ".join(["drawn: warning sign", *([f"and {text.words}"] if text.words else [])])
    return text.words


def _what(text: Text, kind: str, facts: Row) -> str:
    code = f" {text.code}" if text.code and text.code not in (*text.words.split(), text.part) else ""
    code = "" if text.part == "fire" else code
    height = ""
    if text.part in MEASURED:
        height = f", {MEASURED[text.part]} {round_half_away(text.height, 2):g} mm at least"
    if text.part == "pictogram":
        height = f", {tables.row_up_to('hazard_packages', facts['holds'] / 1000)['pictogram']} mm"
    return f"{kind}: {text.part}{code}{height}"


def _short(against: str) -> str:
    """By what a line stands, each text once; of Great Britain that what was read is the EU's."""
    parts = list(dict.fromkeys(against.replace(unconfirmed(""), "unconfirmed: ").split("; ")))
    if GB in parts:
        parts = [part.replace("CLP ", "EU CLP ") for part in parts if part != GB] + [OF_GB]
    return "; ".join(parts)


def _by(text: Text) -> str:
    """By what a text stands, and once it is confirmed when and against what."""
    rule = "" if text.confirmed and text.against == NOT_CHECKED else _short(text.against)
    return "; ".join(filter(None, [rule, text.checked if text.confirmed else ""]))


def _state(text: Text) -> str:
    return "confirmed" if text.confirmed else TO_CONFIRM


def _of_region(table: str, facts: Row) -> list[dict[str, str]]:
    return [row for row in tables.rows(f"label_{table}") if row["region"] == REGIONS[facts["rules"]]]


def _asked(facts: Row, lines: dict[str, Text], at_home: bool) -> Iterable[Line]:
    """What the region asks for in lines of the maker's own, by their codes."""
    for row in _of_region("particulars", facts):
        read = row["status"] == "read in the text"
        by = row["against"] if read else f"unconfirmed: {row['against']} ({row['status']})"
        line = _particular(row["what"], row["code"], by, lines)
        not_due = line.state == MISSING and at_home and row["code"] == IMPORTER
        yield line._replace(state=IF_OUTSIDE) if not_due else line


# What hazard elements bring along, by a word of the duty that they are: what it is, its code, by what.
DUE = {
    "telephone": ("The supplier's telephone, where there are hazard elements", "phone", "CLP Art. 17 (from memory)"),
    "UFI": ("The UFI code, where poison centres are to be told", "UFI", "CLP Art. 45 and Annex VIII (second-hand)"),
}  # fmt: skip


def _due(besides: Iterable[str], lines: dict[str, Text], where: str) -> Iterable[Line]:
    for word, (what, code, by) in DUE.items():
        if any(words.startswith("duty: ") and word in words for words in besides):
            yield _particular(what, code, _short(f"unconfirmed: {by}; {where}".removesuffix("; ")), lines)


def _particular(what: str, code: str, by: str, lines: dict[str, Text]) -> Line:
    there = lines.get(code.casefold())
    return Line(f"{what} (code {code})", there.words if there else "", by, _state(there) if there else MISSING)


def _notes(facts: Row) -> Iterable[str]:
    """What the region's rules say besides, with how each was read."""
    for row in _of_region("notes", facts):
        yield f"{row['what']}: {row['against']} ({row['status']})"
