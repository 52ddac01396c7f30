"""The texts of a product's labels: the maker's own, and what the functions give for its weight, its rules and its oils.

A text of ours stands until the maker types another in its place, and is unconfirmed until the maker says on which
day it was checked and against what.
"""

import datetime
import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Literal, NamedTuple

from candlecalc.calc.datasheet.findings import NOTHING_TYPED
from candlecalc.calc.datasheet.label import LabelLine
from candlecalc.calc.hazard_label import hazard_cautions, label_of_candle
from candlecalc.calc.label import (
    figure_height_metric,
    figure_height_us,
    fire_statements,
    net_weight_metric,
    net_weight_us,
    panel_area,
)
from candlecalc.calc.sources import unconfirmed
from candlecalc.labels.folder import Held, Row
from candlecalc.labels.letters import LEAST, plain
from candlecalc.labels.pictograms import least_letters
from candlecalc.labels.shapes import Label, Text
from candlecalc.season.tables.labels import SPOKEN
from candlecalc.season.texts import ALLERGENS, names_of_allergens, with_names, words_in

SIGN_HEIGHT = 5.0  # mm, as EN 15494:2019 has it for its other signs (second-hand); no height of this one was seen
# The statement of the functions that is a symbol, and the word that stands beside it.
SIGNS = {
    "Safety alert symbol, directly followed by WARNING in bold capitals": "WARNING",
    "General warning sign": "",
}
REGIONS: dict[str, Literal["US", "GB", "EU"]] = {"us": "US", "gb": "GB", "eu": "EU"}
ALWAYS = "required by the standard"
LEFT_OPEN = ("…", "...", "<", "[")  # what the law's wording leaves for the maker to fill in
# Elements of a hazard label that are printed, by the part that each is here.
PRINTED = {
    "signal word": "signal word",
    "pictogram": "pictogram",
    "hazard statement": "hazard",
    "supplemental": "hazard",
}
NO_WORD = "none"  # in place of a signal word
TOLD = ("duty", "small package", "size of label")
NOT_COUNTED = ("not read", "no data sheet typed", "cannot be estimated")  # what such an element begins with
BURN_HOURS = "burn hours"
HEIGHTS_IN_GB = "SI 2006/659 for Great Britain (from memory)"
NOT_CHECKED = "your own words; read them once more"


class Labelled(NamedTuple):
    """A label, and what is to be settled beside it."""

    label: Label
    beside: list[str]


def label_of(held: Held, product: str, kind: str) -> Labelled:
    """A kind of label of a product; a ValueError says which name or code is not known, or what is left to fill in."""
    facts = facts_of(held, product)
    own = [row for row in held.labels if row["product"] is None or row["product"].casefold() == product.casefold()]
    name = facts["product"]
    beside: list[str] = []
    texts, not_counted = [_name(name, kind, own)], list[str]()
    if kind == "front":
        texts += _lines(own, kind) + [_net_weight(held, facts, own)]
    elif kind == "warning":
        texts += [*_fire(held, facts, own), *_hazards(held, facts, own, beside, not_counted), *_lines(own, kind)]
    else:
        texts += _lines(own, kind)
    texts += _burn_hours(held, facts, own, kind, beside)
    _refuse_open(texts, held.called.labels)
    return Labelled(Label(name, kind, tuple(texts), facts["holds"], tuple(not_counted)), beside)


def facts_of(held: Held, product: str) -> Row:
    for row in held.products:
        if row["product"].casefold() == product.casefold():
            return row
    known = ", ".join(row["product"] for row in held.products)
    raise ValueError(f'"{product}" is not in {held.called.products}; there are {known}')


def _typed(own: Sequence[Row], part: str, code: str = "") -> Row:
    """The maker's row for a text, with nothing in it where there is none."""
    return _typed_each(own, part, code)[0]


def _typed_each(own: Sequence[Row], part: str, code: str) -> list[Row]:
    """The maker's rows for a text, a language each; one with nothing in it where there is none."""
    found = [row for row in own if row["part"] == part and _code(row["code"]) == _code(code)]
    # What is said of this product goes before what is said of every one.
    blank: Row = {"text": None, "height": None, "language": None, "confirmed_on": None, "against": None}
    return [row for row in found if row["product"] is not None] or found or [blank]


def _code(typed: str | None) -> str:
    """A code as it is compared: a fire statement's topic may be typed as it is printed, with its full stop."""
    return (typed or "").casefold().removesuffix(".")


def _text(row: Row, part: str, words: str, height: float, code: str = "", against: str = NOT_CHECKED) -> Text:
    return Text(
        part,
        plain(row["text"] or _in_language(row["language"], part, code, words)),
        max(height, row["height"] or 0.0),
        code,
        row["language"] or "en",
        row["confirmed_on"] is not None,
        against,
        _checked(row),
    )


def _checked(row: Row) -> str:
    """When and against what a text was checked; of a batch's number only where it stands."""
    day, against = row["confirmed_on"], row["against"]
    return f"checked {day} against {against}" if isinstance(day, datetime.date) else against or ""


def _in_language(language: str | None, part: str, code: str, words: str) -> str:
    """Words of ours in the language that is asked for: the law's own, or none; nothing is translated here."""
    if not language or language == "en" or not words or part in ("pictogram", "net weight"):
        return words
    found = words_in(language, code) if part == "hazard" else None
    if found is None:
        raise ValueError(
            f'{part} "{code or words}": there are no words of ours in {SPOKEN[language]}, and nothing is translated '
            "here; type your text beside it: PROOF stands until you confirm it"
        )
    return with_names(found, names_of_allergens(words)) if code == ALLERGENS else found


def _name(name: str, kind: str, own: Sequence[Row]) -> Text:
    row = _typed(own, "name")
    # A height typed for the front is none for the others.
    return _text(row if kind == "front" else {**row, "height": None}, "name", name, LEAST)


def _lines(own: Sequence[Row], kind: str) -> list[Text]:
    lines = [row for row in own if row["part"] == "line" and row["label"] == kind]
    return [_text(row, "line", "", LEAST, row["code"] or "") for row in lines]


def _burn_hours(held: Held, facts: Row, own: Sequence[Row], kind: str, beside: list[str]) -> Iterator[Text]:
    """Hours that it burns, by the test that the maker names: as tested, and of this very product."""
    for row in own:
        if row["part"] != BURN_HOURS or (row["label"] or "base") != kind:
            continue
        number, where = str(row["code"]), f"{held.called.labels}: burn hours by test {row['code']}"
        tested = held.tests.get(number.casefold())
        if tested is None:
            raise ValueError(f"{where}: there is no such test on Burn tests of a workbook")
        if tested.product.casefold() != facts["product"].casefold():
            if row["product"] is None:
                continue  # each product has its own test
            raise ValueError(f"{where}: it is a test of {tested.product or 'a free trial'}, not of {facts['product']}")
        if tested.stopped or tested.hours is None:
            why = "it was stopped" if tested.stopped else "it has no hours for the label yet"
            raise ValueError(f"{where}: {why}; see Test results")
        words = f"Burns for about {tested.hours:.0f} hours, as tested ({number})."
        text = _by_its_words(row, _text(row, BURN_HOURS, words, LEAST, number, f"Test results, test {number}"))
        if tested.changed:
            beside.append(f"burn hours: of the recipe changed since test {number}: {tested.changed}")
        stale = bool(tested.changed) or text.words != words
        yield replace(text, confirmed=False, against=f"{text.against}: {words}") if stale else text


def _net_weight(held: Held, facts: Row, own: Sequence[Row]) -> Text:
    row = _typed(own, "net weight")
    net, called = facts["net"], held.called
    if net is None:
        raise ValueError(f"{called.products}: {facts['product']} has no fill yet; candlecalc check says why")
    if facts["rules"] == "us":
        if not (facts["panel_height"] and facts["panel_around"]):
            raise ValueError(
                f"{called.panels}: type the width and height of the label panel of {facts['product']}: in the US the "
                "figures of its net weight go by them"
            )
        stated, note = net_weight_us(net)
        area = panel_area(facts["panel_height"], facts["panel_around"], facts["panel_shape"])
        height, of_height = figure_height_us(area)
        # In capitals, whose height is the one asked for; the symbol of the gram is small by its own rules.
        ounces, mark, metric = stated.partition(" (")
        words, against = ounces.upper() + mark + metric, f"{note}; {of_height}"
    else:
        height, against = figure_height_metric(net)
        words = net_weight_metric(net)
        against += f"; {unconfirmed(HEIGHTS_IN_GB)}" if facts["rules"] == "gb" else ""
    if row["text"] and plain(row["text"]) != words:
        raise ValueError(
            f'{called.labels}: the net weight of {facts["product"]} is "{words}" by {called.products}, not '
            f'"{row["text"]}": '
            "put right what is wrong, and confirm it anew"
        )
    return _by_its_words(row, _text(row, "net weight", words, height, "", against))


def _by_its_words(row: Row, text: Text) -> Text:
    """A text that follows amounts or a recipe is confirmed only where the words that were confirmed stand beside it."""
    return text if row["text"] else replace(text, confirmed=False, against=f"{text.against}; type the words with it")


def _fire(held: Held, facts: Row, own: Sequence[Row]) -> Iterator[Text]:
    """The sign, and the statements that the standard requires or the maker has named, by topic."""
    ours = fire_statements(REGIONS[facts["rules"]])
    topics = {"sign", *(each.statement.casefold() for each in ours)}
    for standing, topic, note in ours:
        if topic in SIGNS:
            yield _text(_typed(own, "fire", "sign"), "sign", SIGNS[topic], SIGN_HEIGHT, "sign", note)
            continue
        for row in _typed_each(own, "fire", topic):
            if standing == ALWAYS or row in own:
                yield _text(row, "fire", topic + ".", LEAST, topic, note)
    for row in own:
        if row["part"] == "fire" and _code(row["code"]) not in topics:
            if not row["text"]:
                raise ValueError(f'{held.called.labels}: "{row["code"]}" is no fire statement of ours; type its text')
            yield _text(row, "fire", "", LEAST, row["code"] or "")


def _hazards(held: Held, facts: Row, own: Sequence[Row], beside: list[str], not_counted: list[str]) -> list[Text]:
    """What the oils bring to the label; of the precautions those that the maker has chosen."""
    lines = [row for row in held.oils if row["product"].casefold() == facts["product"].casefold()]
    if not lines:
        return []
    if facts["rules"] == "us":
        beside += [f"hazard elements are worked out by the rules of the EU; {words}" for words in hazard_cautions("US")]
        return []
    chosen = {_code(row["code"]) for row in own if row["part"] == "hazard"}
    if not facts["holds"]:
        raise ValueError(
            f"{held.called.products}: what {facts['product']} holds in ml is not known: a hazard label goes by it"
        )
    height = least_letters(facts["holds"])
    found = _of_oils(held, lines, facts)
    beside += [_told(each) for each in found if each.element in TOLD]
    oils = list(dict.fromkeys(row["oil"] for row in lines))
    classes = [each.text for each in found if each.element == "class" and each.text and each.text != NO_WORD]
    beside += [f"classes found: {'; '.join(dict.fromkeys(classes))}"] if classes else []
    not_counted += [_by_name(each, oils) for each in found if each.element.startswith(NOT_COUNTED)]
    offered = {each.code: each for each in found if each.element == "precaution" and each.code}
    taken = [line for code, line in offered.items() if _code(code) in chosen]
    printed = [each for each in found if each.element in PRINTED and each.text != NO_WORD]
    texts = [text for each in printed + taken for text in _element(each, own, height, beside)]
    names = [each for each in found if each.element == "name"]
    texts += [_names(names, row, height, beside) for row in _typed_each(own, "hazard", "names") if names]
    _refuse_unknown(held, own, {*(text.code for text in texts), *offered})
    left = [code for code, line in offered.items() if line not in taken]
    if left:
        beside.append(f"precautions to choose from, not more than six: {', '.join(left)}")
    return sorted(texts, key=_standing)


def _told(found: LabelLine) -> str:
    return ": ".join(filter(None, [found.element, found.code, found.text or found.why]))


def _by_name(found: LabelLine, oils: Sequence[str]) -> str:
    """What was not counted, an oil by its name in place of its number."""
    if found.element == NOTHING_TYPED:
        return f"no data sheet typed for {', '.join(oils)}"
    told = re.sub(r"for oil (\d+).*", lambda number: f"for {oils[int(number[1]) - 1]}", found.element)
    return f"{told} ({found.why.partition(',')[0]})" if found.why and told.startswith("not read") else told


def _element(found: LabelLine, own: Sequence[Row], height: float, beside: list[str]) -> Iterator[Text]:
    """An element in each language that it is typed in; a drawing once."""
    # A signal word is its own code: what is confirmed of Warning says nothing of Danger.
    code = found.code or found.text or ""
    part = PRINTED.get(found.element, "hazard")
    for row in _typed_each(own, "hazard", code)[: 1 if part == "pictogram" else None]:
        text = _text(row, part, found.text or "", height, code, found.status or "")
        yield _naming(names_of_allergens(found.text or ""), row, text, beside) if code == ALLERGENS else text


def _names(found: Sequence[LabelLine], row: Row, height: float, beside: list[str]) -> Text:
    """The substances to be named."""
    names = list(dict.fromkeys(each.text or "" for each in found))
    against = "; ".join(dict.fromkeys(each.status or "" for each in found))
    text = _text(row, "names", f"Contains {', '.join(names)}.", height, "names", against)
    return _naming(names, row, text, beside)


def _naming(names: Sequence[str], row: Row, text: Text, beside: list[str]) -> Text:
    """A text that names substances; words of the maker's own that lack one are not confirmed."""
    lacking = [name for name in names if name.casefold() not in text.words.casefold()]
    if lacking:
        beside.append(f"{text.code}: your words lack {', '.join(lacking)}, which the oils bring")
        return replace(text, confirmed=False)
    return _by_its_words(row, text)


def _standing(text: Text) -> tuple[int, str, str]:
    """Statements of one language stand together, in the order of the classes, precautions after them by their codes."""
    order = ("pictogram", "signal word", "names", "hazard")
    precaution = text.code if text.part == "hazard" and text.code.startswith("P") else ""
    return order.index(text.part), text.language, precaution


def _refuse_unknown(held: Held, own: Sequence[Row], known: set[str]) -> None:
    """A code typed for this product that its oils do not bring: a slip, or a recipe that has changed since."""
    folded = {code.casefold() for code in known}
    for row in own:
        code = row["code"] or ""
        if row["part"] == "hazard" and row["product"] and code.casefold() not in folded:
            raise ValueError(
                f'{held.called.labels}: "{code}" is nothing that the oils of {row["product"]} bring; '
                f"they bring {', '.join(sorted(known))}"
            )


def _of_oils(held: Held, lines: Sequence[Row], facts: Row) -> list[LabelLine]:
    oils = list(dict.fromkeys(row["oil"] for row in lines))
    loads = [_load(held, oil, {row["load"] for row in lines if row["oil"] == oil}, facts["product"]) for oil in oils]
    return label_of_candle(
        substances=[row["substance"] for row in lines],
        concentrations=[row["concentration"] for row in lines],
        classes=[row["classes"] for row in lines],
        loads=loads,
        specifics=[row["specifics"] for row in lines],
        oils=[float(oils.index(row["oil"]) + 1) for row in lines],
        dilutions=[next(row.get("sample") for row in lines if row["oil"] == oil) for oil in oils],
        region=REGIONS[facts["rules"]],
        holds=facts["holds"],
    )


def _load(held: Held, oil: str, loads: set[float], product: str) -> float:
    if len(loads) > 1:
        shown = " and ".join(f"{load:.4g}" for load in sorted(loads))
        raise ValueError(f"{held.called.oils}: {oil} in {product} has the loads {shown}; give all its lines the same")
    return loads.pop()


def _refuse_open(texts: Sequence[Text], where: str) -> None:
    for text in texts:
        if text.part == "hazard" and any(mark in text.words for mark in LEFT_OPEN):
            raise ValueError(
                f'{text.code} reads "{text.words}": what its wording leaves open is yours to fill in; '
                f"type the text in {where}, part hazard, code {text.code}"
            )
