"""Check sheets: a page a product and a set of rules, of all that its labels state and of what they lack, to sign."""

from collections.abc import Iterable
from typing import NamedTuple

import candlecalc.tables as tables
from candlecalc.calc.sources import unconfirmed
from candlecalc.labels.folder import Held, Row
from candlecalc.labels.shapes import Text
from candlecalc.labels.texts import REGIONS, facts_of, label_of
from candlecalc.quantities.rounding import round_half_away
from candlecalc.season.tables.labels import KINDS

THE = {"us": "the US", "gb": "Great Britain", "eu": "the EU"}
TO_SIGN = (
    "This sheet lists what was typed and what follows from it; it is no decision on the candle. Confirm each line with "
    "the market's own authorities, each standard's text and the supplier's data sheets: whoever sells the candle "
    "answers for it."
)
MISSING = "MISSING"


class Line(NamedTuple):
    """A line of a check sheet: what it is, what the label prints, by what, and how far it is confirmed."""

    what: str
    printed: str
    by: str
    state: str


class CheckSheet(NamedTuple):
    """A page: its title, what the labels state, what else is asked for, and what to do besides."""

    title: str
    stated: list[Line]
    asked: list[Line]
    besides: list[str]


def check_sheet(held: Held, product: str, shipping: Iterable[str] = ()) -> CheckSheet:
    """What the three labels of a product state by the rules it follows, and what they lack."""
    facts = facts_of(held, product)
    stated: dict[str, Line] = {}
    besides: list[str] = []
    lines: dict[str, Text] = {}
    for kind in KINDS:
        label, told = label_of(held, product, kind)
        besides += [*(f"not counted: {words}" for words in label.not_counted), *told]
        for text in label.texts:
            lines |= {text.code.casefold(): text} if text.part == "line" and text.code else {}
            stated.setdefault(text.called, Line(_what(text, kind), text.words, _short(text.against), _state(text)))
    title = f"{facts['product']}: check sheet by the rules of {THE[facts['rules']]}"
    return CheckSheet(title, list(stated.values()), list(_asked(facts, lines)), [*besides, *shipping])


def _what(text: Text, kind: str) -> str:
    code = f" {text.code}" if text.code and text.code not in (*text.words.split(), text.part) else ""
    code = "" if text.part == "fire" else code
    height = f", figures {round_half_away(text.height, 2):g} mm at least" if text.part == "net weight" else ""
    return f"{kind}: {text.part}{code}{height}"


def _short(against: str) -> str:
    """By what a line stands, each text once and without the words that the sheet says once for all."""
    return "; ".join(dict.fromkeys(against.replace(unconfirmed(""), "unconfirmed: ").split("; ")))


def _state(text: Text) -> str:
    return "confirmed" if text.confirmed else "to confirm"


def _asked(facts: Row, lines: dict[str, Text]) -> Iterable[Line]:
    """What the region asks for in lines of the maker's own, by their codes."""
    for row in tables.rows("label_particulars"):
        if row["region"] == REGIONS[facts["rules"]]:
            read = row["status"] == "read in the text"
            by = row["against"] if read else f"unconfirmed: {row['against']} ({row['status']})"
            there = lines.get(row["code"])
            what = f"{row['what']} (code {row['code']})"
            yield Line(what, there.words if there else "", by, _state(there) if there else MISSING)
