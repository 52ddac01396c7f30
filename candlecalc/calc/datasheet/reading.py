"""Lines of section 3 of a data sheet, read: what a text says of one substance, and what of it was not read.

Everything that is known is taken out of a text where it stands; what is left over is named. Where a text
leaves a choice, the strictest meaning is taken and a note says so.
"""

import re
from fractions import Fraction
from functools import lru_cache
from typing import Dict, List, Match, NamedTuple, Optional, Pattern, Set, Tuple

import candlecalc.calc.datasheet.words as grammar
import candlecalc.tables as tables
from candlecalc.calc.datasheet.percentages import number, plain
from candlecalc.calc.datasheet.substance import DERMAL, DUST, FORMS, ORAL, Hazard, Limit, Words


class Item(NamedTuple):
    """Something that was taken out of a text: where it stood, what it is, and its words."""

    start: int
    sort: str
    found: "Match[str]"
    kind: str = ""
    category: str = ""
    routes: str = ""


class _Text:
    """A text out of which what is known is taken, place by place."""

    def __init__(self, text: str) -> None:
        self.left = plain(text)
        self.items: List[Item] = []

    def take(self, sort: str, pattern: "Pattern[str]", start: str = "") -> None:
        for found in pattern.finditer(self.left):
            # Words of a route that stand before an estimate may belong to a class before it.
            begin = found.end(start) if start and found[start] else found.start()
            self.items.append(Item(self._blank(begin, found.end()), sort, found))

    def take_factors(self) -> None:
        self.take("factor", grammar.FACTOR)
        for item in self.of("factor"):
            second = grammar.SECOND_FACTOR.match(self.left, item.found.end())
            # Beside one that says which it is; a bare "Chronic 1" is a class.
            if second and _which(item) and (second["middle"] or second["after"]):
                self.items.append(Item(self._blank(second.start(), second.end()), "factor", second))

    def take_classes(self) -> None:
        for found in grammar.CLASS.finditer(self.left):
            kind = grammar.KINDS[int((found.lastgroup or "k0")[1:])][0]
            end = found.end()
            # "Acute toxicity, oral (Category 4)": the way may stand before the category.
            before = grammar.FOLLOWING.match(self.left, end) if kind == "Acute Tox." else None
            end = before.end() if before else end
            category = grammar.CATEGORY.match(self.left, end) if kind not in grammar.NO_CATEGORY else None
            end = category.end() if category else end
            routes = grammar.FOLLOWING.match(self.left, end) or before
            start = self._blank(found.start(), end)
            printed = category["category"].upper() if category else ""
            self.items.append(Item(start, "class", found, kind, printed, routes[0].lower() if routes else ""))

    def _blank(self, start: int, end: int) -> int:
        self.left = self.left[:start] + " " * (end - start) + self.left[end:]
        return start

    def of(self, *sorts: str) -> List[Item]:
        return sorted((item for item in self.items if item.sort in sorts), key=lambda item: item.start)

    def unread(self) -> List[str]:
        """What is left, in the pieces it stood in."""
        pieces = re.split(r"\s{2,}|[;|\n]", self.left)
        return [piece.strip(" .,:-()[]/*+") for piece in pieces if _words(piece) - grammar.FILLERS]


def read(classes: str, specifics: str = "") -> Words:
    """What the classes of a substance, and the column of its limits, factors and estimates, say of it."""
    words = Words()
    own, beside = _taken(classes, grammar.LIMIT), _taken(specifics, grammar.LIMIT, grammar.PLAIN_LIMIT)
    _read_classes(own, words)
    for text in (own, beside):
        _read_limits(text, words, beside=text is beside)
        _read_factors(text, words)
        _read_estimates(text, words)
        words.unread += text.unread()
    _settle_breath(words)
    return words


# An oil's lines say the same of many substances, and a load is tried again and again with the same lines.
@lru_cache(maxsize=1024)
def _taken(text: str, *limits: "Pattern[str]") -> _Text:
    taken = _Text(text)
    taken.take("unknown", grammar.UNKNOWN)
    taken.take("estimate", grammar.ESTIMATE, start="before")
    taken.take_factors()
    taken.take("nothing", grammar.NOTHING)
    taken.take_classes()
    for pattern in limits:
        taken.take("limit", pattern)
    taken.take("code", grammar.CODE)
    taken.take("tested", grammar.TESTED)
    return taken


def _read_classes(text: _Text, words: Words) -> None:
    codes = text.of("code")
    for item in text.of("class"):
        words.hazards |= _hazards(item, codes, words)
    for item in codes:
        _read_code(item, words)
    for item in text.of("tested"):
        words.notes.append(f"{item.found[0].strip()}: read; not decided by adding up")
    if not words.hazards and not text.of("nothing", "tested", "code") and not text.unread():
        words.notes.append("no class is typed: taken as unknown, not as harmless")


def _hazards(item: Item, codes: List[Item], words: Words) -> "Set[Hazard]":
    """The hazards that a class as printed stands for: several where its route is not printed."""
    kind, category = _merged(item.kind, item.category)
    beside = [row for code in codes for row in _coded(code) if row["kind"] == kind]
    if not category and kind not in grammar.NO_CATEGORY:
        category = (beside or _rows(kind))[0]["alone"]
        words.notes.append(f"{kind} printed without a category: read as {category}")
    if (kind, category) in grammar.OUTSIDE:
        words.notes.append(f"{kind} {category} is not in the EU rules: not counted")
        return set()
    if category not in _categories(kind):
        words.unread.append(f"{kind} {category}")
        return set()
    return {Hazard(kind, category, route) for route in _routes(kind, category, item.routes, beside, words)}


def _merged(kind: str, category: str) -> "Tuple[str, str]":
    """A kind printed together with its sister, and the sub-categories of eye irritation, as the EU rules name them."""
    if kind in ("Skin Corr.", "Eye Dam.") and category[:1] == "2":
        kind = {"Skin Corr.": "Skin Irrit.", "Eye Dam.": "Eye Irrit."}[kind]
    return kind, "2" if kind == "Eye Irrit." and category in ("2A", "2B") else category


def _routes(kind: str, category: str, printed: str, beside: List[Dict[str, str]], words: Words) -> List[str]:
    if kind == "Acute Tox.":
        found = forms(printed) or [row["route"] for row in beside if row["category"] == category]
        every = [ORAL, DERMAL, "inhalation"]
    elif (kind, category) == ("STOT SE", "3"):
        found, every = [row["route"] for row in beside if row["category"] == category], ["H335", "H336"]
    else:
        return [""]
    if not found:
        words.notes.append(f"{kind} {category}: not printed by which way, so counted for {' and '.join(every)}")
    return found or every


def forms(printed: str) -> List[str]:
    """The ways into the body that words name: by mouth, by skin, or breathed in and in which form."""
    named = {ORAL: "oral", DERMAL: "dermal", "gas": "gas", "vapour": "vapo", DUST: "dust|mist"}
    found = [form for form, pattern in named.items() if re.search(pattern, printed)]
    breathed = "inhal" in printed and not set(found) - {ORAL, DERMAL}
    return found + ["inhalation"] * breathed


def _read_code(item: Item, words: Words) -> None:
    """A hazard statement: known by a class beside it, or read as the strictest class it can stand for."""
    code = re.sub(r"[\s-]", "", item.found["code"]).upper() + item.found["suffix"]
    if not _coded(item):
        known = code.startswith(("H2", "EUH0"))
        words.notes += [f"{code}: read; not decided by adding up"] * known
        words.unread += [] if known else [code]
        return
    words.codes.add(code)
    row = _coded(item)[0]
    if not any(_says(each, hazard) for each in _coded(item) for hazard in words.hazards):
        hazard = Hazard(row["kind"], row["alone"], row["route"])
        words.hazards.add(hazard)
        words.notes.append(f"{code} printed without its class: read as {hazard.name}")


def _says(row: Dict[str, str], hazard: Hazard) -> bool:
    """Whether a class is one that the statement of a row of the label table goes with."""
    alike = row["kind"] == hazard.kind and row["category"][:1] == hazard.category[:1]
    breathed = row["route"] == "inhalation" and hazard.route not in (ORAL, DERMAL)
    return alike and (row["route"] == hazard.route or breathed)


def _read_limits(text: _Text, words: Words, beside: bool) -> None:
    """Specific limits: each belongs to the class it stands beside, or to those typed where it stands alone."""
    limits = text.of("limit")
    printed = text.of("class") or [item for item in text.of("code") if _coded(item)]
    if beside and not printed:
        for alone in limits:
            _read_limit_alone(alone, words)
        return
    first = bool(limits) and bool(printed) and limits[0].start < printed[0].start
    used = set()
    for item in printed:
        later = [other.start for other in printed if other.start > item.start]
        limit = _limit_of(item, limits, first, later if not beside else [])
        if limit is None:
            words.unread += [f"{item.found[0].strip()} without a limit"] * beside
            continue
        used.add(limit)
        kind, category = _class_of(item)
        if category not in _categories(kind):
            words.unread += [item.found[0].strip() + f" {category}"] * beside
            continue
        share = _share_of(limit)
        if kind in WITHOUT_LIMIT:
            words.notes.append(f"{kind} {category}: its limit is not used here; it goes by {WITHOUT_LIMIT[kind]}")
        codes = [row for code in text.of("code") for row in _coded(code) if row["kind"] == kind]
        for route in _routes(kind, category, item.routes, codes, Words()):
            words.limits.append(Limit(Hazard(kind, category, route), share))
    words.unread += [f"{limit.found[0].strip()} without a class" for limit in limits if limit not in used]
    for limit_ in words.limits:
        _class_behind(limit_.hazard, words)


def _read_limit_alone(limit: Item, words: Words) -> None:
    """A limit with no class beside it: of the one class that takes a limit, or of each where it is stricter."""
    among = sorted(hazard for hazard in words.hazards if hazard.kind not in WITHOUT_LIMIT)
    if not among:
        words.unread.append(f"{limit.found[0].strip()} without a class")
    words.limits += [Limit(hazard, _share_of(limit), certain=len(among) == 1) for hazard in among]
    if len(among) > 1:
        words.notes.append(f"{limit.found[0].strip()} has no class beside it: counted for each where it is stricter")


def _share_of(limit: Item) -> Fraction:
    return number(next(filter(None, limit.found.groupdict().values())))


def _limit_of(item: Item, limits: List[Item], first: bool, later: List[int]) -> Optional[Item]:
    if first:
        return next((limit for limit in reversed(limits) if limit.start < item.start), None)
    following = next((limit for limit in limits if limit.start > item.start), None)
    return None if following and later and later[0] < following.start else following


def _class_of(item: Item) -> "Tuple[str, str]":
    if item.sort == "code":
        row = _coded(item)[0]
        return row["kind"], row["alone"]
    kind, category = _merged(item.kind, item.category)
    return kind, category or _rows(kind)[0]["alone"]


def _class_behind(hazard: Hazard, words: Words) -> None:
    """A limit for a class that the substance is not typed with: the class is taken to be forgotten."""
    family = next((kinds for kinds in FAMILIES if hazard.kind in kinds), {hazard.kind})
    if not any(other.kind in family for other in words.hazards):
        words.hazards.add(hazard)
        words.notes.append(f"a limit for {hazard.name} but no class: read as that class")


def _read_factors(text: _Text, words: Words) -> None:
    for item in text.of("factor"):
        printed = item.found.groupdict()
        factor = int(re.sub(r"\D", "", printed["value"]))
        if str(factor).strip("0") != "1":
            words.unread.append(f"{item.found[0].strip()} (M-factors are 1, 10, 100 and so on)")
            continue
        named = _which(item)
        before = [other.kind for other in text.of("class") if other.start < item.start and "Aquatic" in other.kind]
        for which in [named] if named else [before[-1][8:].lower()] if before else ["acute", "chronic"]:
            words.factors[which] = max(factor, words.factors.get(which, 1))


def _which(factor: Item) -> str:
    """Whether an M-factor is printed as acute or chronic; blank where it is not."""
    printed = factor.found.groupdict()
    return next((printed[where].lower() for where in ("before", "middle", "after") if printed.get(where)), "")


def _read_estimates(text: _Text, words: Words) -> None:
    for item in text.of("unknown"):
        printed = item.found.groupdict()
        words.unknown |= {"aquatic"} if printed["water"] else set(_forms_of(printed["route"] or "", "", words) or FORMS)
    for item in text.of("estimate"):
        printed = item.found.groupdict()
        ways = (printed["middle"] or "") + (printed["after"] or "")
        routes = ways if forms(ways.lower()) else printed["before"] or ""
        found = _forms_of(routes.lower(), (printed["unit"] or "").lower(), words)
        if printed["none"]:
            words.unknown |= set(found or FORMS)
        elif not found or (re.search(r",\d{3}$", printed["low"]) and "kg" in (printed["unit"] or "").lower()):
            words.unread.append(
                f"{item.found[0].strip()} (by mouth, by skin or breathed in?)" if not found else item.found[0]
            )
        else:
            value = None if printed["sign"] else number(printed["low"].replace(" ", ""))
            words.estimates.update({form: _stricter(value, words.estimates.get(form, value)) for form in found})


def _stricter(one: "Optional[Fraction]", other: "Optional[Fraction]") -> "Optional[Fraction]":
    known = [value for value in (one, other) if value is not None]
    return min(known) if known else None


def _forms_of(routes: str, unit: str, words: Words) -> List[str]:
    found = forms(routes.lower())
    if not found and "kg" not in unit and unit:
        found = ["inhalation"]
    if not found:
        typed = {hazard.route for hazard in words.hazards if hazard.kind == "Acute Tox."}
        found = sorted(typed) if len(typed) == 1 else []
    if "inhalation" in found:
        found.remove("inhalation")
        found.append("gas" if unit.startswith("ppm") else DUST)
        if found[-1] == DUST:
            words.notes.append("breathed in, form not printed: taken as dust or mist, the stricter")
    return found


def _settle_breath(words: Words) -> None:
    """Acute toxicity of what is breathed in gets its form from the estimates beside it, else the stricter one."""
    for hazard in [hazard for hazard in words.hazards if hazard.route == "inhalation"]:
        typed = [form for form in words.estimates if form not in (ORAL, DERMAL)]
        words.hazards.remove(hazard)
        words.hazards |= {hazard._replace(route=form) for form in typed or [DUST]}
        if not typed:
            words.notes.append(f"{hazard.name}: form not printed, taken as dust or mist, the stricter")


# Classes for which a limit is read and not used, and what they go by.
WITHOUT_LIMIT = {
    "Aquatic Acute": "its M-factor",
    "Aquatic Chronic": "its M-factor",
    "Acute Tox.": "its estimate",
    "Flam. Liq.": "a test",
    "Flam. Sol.": "a test",
}
# A limit of the one is a limit for a substance typed with the other.
FAMILIES = [{"Skin Corr.", "Skin Irrit."}, {"Skin Corr.", "Eye Dam.", "Eye Irrit."}]


def _rows(kind: str) -> List[Dict[str, str]]:
    return [row for row in tables.rows("hazard_labels") if row["kind"] == kind]


def _categories(kind: str) -> "Set[str]":
    both = tables.rows("hazard_labels") + tables.rows("hazard_limits")
    return {row["category"] for row in both if row["kind"] == kind}


def _coded(item: Item) -> List[Dict[str, str]]:
    """The rows of the label table that a hazard statement stands for."""
    code = re.sub(r"[\s-]", "", item.found["code"]).upper()
    return [row for row in tables.rows("hazard_labels") if row["code"] == code]


def _words(text: str) -> "Set[str]":
    return {word.lower() for word in re.findall(r"\w+", text)}
