"""Hazards of a season's candles by the lines of its oil sheets, a row each: what cells cannot work out.

Each row holds the state that it was written for, as the workbook's own formulas spell it: where the two differ, a
recipe or a sheet has changed since.
"""

import re
from collections.abc import Iterable, Sequence

from candlecalc.calc.datasheet.findings import NOTHING_REACHED
from candlecalc.calc.datasheet.label import LabelLine
from candlecalc.calc.datasheet.lines import lines_of
from candlecalc.calc.datasheet.rising import rise
from candlecalc.calc.hazard import hazard_lines
from candlecalc.calc.hazard_label import label_of_candle
from candlecalc.season.oils import COLUMNS, Asked, Poured, asked, poured, sheets
from candlecalc.season.season import Row, Season
from candlecalc.season.texts import ALLERGENS, names_of_allergens

LOAD_PARTS = 10**9  # a load is told in whole billionths of the wax: a text of digits alone is the same in any locale
FIRST_PLACE = 2  # of a list, under its head
SMALL_PACKAGE = 125.0  # ml
NO_WORD = "none"


def line_text(row: Row) -> str:
    """A line of a sheet as the workbook joins it."""
    sample = row["sample"]
    diluted = round(sample * LOAD_PARTS) if isinstance(sample, float) else 0
    return "|".join([*("" if row[key] is None else str(row[key]) for key in ("material", *COLUMNS)), str(diluted)])


def lines_read(season: Season) -> list[Row]:
    """Each line of the oil sheets once, with what was read of it and what was not."""
    distinct = {line_text(row).casefold(): row for rows in sheets(season).values() for row in rows}
    return [
        {"text": line_text(row), "place": float(place), **_read(row)}
        for place, row in enumerate(distinct.values(), start=FIRST_PLACE)
    ]


def _read(row: Row) -> Row:
    try:
        (line,) = hazard_lines(*([str(row[key])] if row[key] is not None else [None] for key in COLUMNS))
    except ValueError as problem:
        return {"read": None, "unread": _plain(problem)}
    upper = f"up to {100 * line.upper:.6g} %" if line.upper is not None else None
    return {"read": _joined([upper, line.classes or "no class", line.specifics, line.note]), "unread": line.unread}


def found(season: Season) -> list[Row]:
    """The hazards of each candle that has a line of a sheet among its oils and dyes."""
    typed = sheets(season)
    places = {row["text"].casefold(): int(row["place"]) for row in lines_read(season)}  # type: ignore[union-attr, arg-type]
    rows: dict[str, Row] = {}
    for _, recipe in season.rows("recipes"):
        parts = poured(recipe) if recipe["kind"] == "made" else []
        given = asked(parts, typed)
        if given.columns["substances"]:
            state = state_of(parts, typed, places)
            rows[state.casefold()] = {"state": state, **_hazards(given)}
    return list(rows.values())


def state_of(parts: Iterable[Poured], typed: dict[str, list[Row]], places: dict[str, int]) -> str:
    """What the hazards of a recipe rest on: each oil and dye, how much of it, and the lines of its sheet."""
    told = ""
    for part in parts:
        lines = [places[line_text(row).casefold()] for row in typed.get(part.material.casefold(), [])]
        told += f"{part.material} {round(part.load * LOAD_PARTS)} {len(lines)} {sum(lines)}; "
    return told


def _hazards(given: Asked) -> Row:
    try:
        label = label_of_candle(loads=given.loads, holds=SMALL_PACKAGE, **given.columns)
    except ValueError as problem:
        return {"not_counted": _plain(problem)}
    by = _By(label, given.names)
    return {
        "classes": by.texts("class") or by.none_reached(),
        "signal": by.texts("signal word"),
        "pictograms": by.codes("pictogram"),
        "statements": by.codes("hazard statement", "supplemental"),
        "names": by.texts("name") or by.allergens(),
        "precautions": by.codes("precaution"),
        "duties": by.texts("duty"),
        "small": by.texts("small package"),
        "unconfirmed": by.unconfirmed(),
        "not_counted": by.not_counted(given.without_sheet),
        **_rise(given),
    }


def _rise(given: Asked) -> Row:
    columns = given.columns
    lines = lines_of(*(columns[key] for key in ("substances", "concentrations", "classes", "specifics", "oils")))
    higher = rise(lines, given.loads, columns["dilutions"], given.dyes)
    return {"keeps_to": higher.load, "then": _joined(higher.then)} if higher else {}


class _By:
    """The rows of a label by their element."""

    def __init__(self, label: Sequence[LabelLine], oils: Sequence[str]) -> None:
        self._label, self._oils = label, oils

    def texts(self, element: str) -> str | None:
        return _joined(each.text for each in self._label if each.element == element and each.text != NO_WORD)

    def none_reached(self) -> str | None:
        """In words: a blank cell would read as if nothing had been looked for."""
        return _joined(each.element for each in self._label if each.element.startswith(NOTHING_REACHED))

    def allergens(self) -> str | None:
        """The names that stand in a statement, where the label has none besides."""
        return _joined(
            name for each in self._label if each.code == ALLERGENS for name in names_of_allergens(each.text or "")
        )

    def codes(self, *elements: str) -> str | None:
        return _joined(each.code for each in self._label if each.element in elements)

    def not_counted(self, without_sheet: Sequence[str]) -> str | None:
        """What of the sheets was not read, and which oils have none."""
        words = [each.element for each in self._label if each.element.startswith(("not read", "cannot"))]
        return _joined([*(f"no data sheet typed: {name}" for name in without_sheet), *words])

    def unconfirmed(self) -> str | None:
        """What is to be checked against which text, each text once."""
        texts: dict[str, list[str]] = {}
        for each in self._label:
            for text in re.findall("unconfirmed: check against (.*?)(?:; unconfirmed|$)", each.status or ""):
                texts.setdefault(text, []).append(each.code or each.text or each.element)
        return _joined(f"{', '.join(dict.fromkeys(named))}: {text}" for text, named in texts.items())


def _joined(words: Iterable[str | None]) -> str | None:
    return "; ".join(dict.fromkeys(filter(None, words))) or None


def _plain(problem: ValueError) -> str:
    """A function's refusal without the function's name: here nobody has called one."""
    return str(problem).partition(": ")[2].removesuffix(".")
