"""Labels drawn: how a label fits a paper, and the sheet as a PDF at true size."""

import functools
import io
import json
from collections.abc import Mapping, Sequence
from itertools import groupby
from pathlib import Path
from typing import Any, NamedTuple

import pypdf
import typst
from pypdf.generic import DictionaryObject, NameObject

from candlecalc.labels import letters
from candlecalc.labels.check_sheet import TO_SIGN, CheckSheet
from candlecalc.labels.pictograms import SYMBOLS, drawn, least_sides
from candlecalc.labels.positions import correction, places
from candlecalc.labels.shapes import CROSS, OVER, Label, Paper, Text
from candlecalc.season.fields import short
from candlecalc.season.tables.labels import PAPERS, RULER_ACROSS, RULER_DOWN

LABELS, RULERS, CHECKS = (Path(__file__).parent / name for name in ("label.typ", "rulers.typ", "check.typ"))
SYMBOL_FILES = {code: f"symbols/{name}" for code, name in SYMBOLS.items()}
MARGIN = 1.5  # mm that stay free along the edge of a label, where a sheet may have slipped
SQUARE_IN_CIRCLE = 0.5**0.5
NORMAL, CONDENSED = 100, 75  # % of the font's width
LARGEST = {"front": 2.2, "warning": 1.6, "base": 1.5}  # texts that no rule holds to a height grow up to so much
# mm of a small x of the name: it is to be larger than the rest, where there is room.
NAMES = {"front": (2.2, 1.6, letters.LEAST), "warning": (1.4, letters.LEAST), "base": (1.4, letters.LEAST)}
BETWEEN = 1.2  # mm between two blocks
SYMBOLIC = ("sign", "pictogram")
# What stands together in a group, and in one paragraph of it.
HAZARD = ("pictogram", "signal word", "names", "hazard")
RUN_ON = ("names", "hazard")
STATED_AS_ASKED = ("net weight", "sign")


class Fitted(NamedTuple):
    """How a label stands on a paper: in which way, and by how much its letters have grown."""

    way: Mapping[str, Any]
    grown: float


class DoesNotFitError(ValueError):
    """What is to be printed is larger than the label."""


@functools.cache
def fit(label: Label, paper: Paper) -> Fitted:
    """How a label stands on a paper with every letter at least as high as it must be.

    A DoesNotFitError says how many millimetres are missing, a ValueError which letter the font lacks.
    """
    _refuse_letters(label.texts)
    asked = {
        "mode": "fit",
        "ways": _ways(label, paper),
        "largest": LARGEST[label.kind],
        **_body(label, paper),
    }
    found = json.loads(typst.query(LABELS, "<fit>", field="value", one=True, **_how(asked)))
    if found["way"] is None:
        raise DoesNotFitError(_missing(label, paper, found["over"]))
    return Fitted(found["way"], found["grown"])


def as_printed(label: Label, paper: Paper) -> str:
    """How large a label's letters and pictograms come out, for whoever measures them."""
    fitted = fit(label, paper)
    heights = [text.height for text in label.texts if text.part not in (*STATED_AS_ASKED, "name", "pictogram")]
    told = [f"small x {min(heights) * OVER * fitted.grown:.2f} mm"] if heights else []
    told += [f"figures {text.height * OVER:.2f} mm" for text in label.texts if text.part == "net weight"]
    if any(text.part == "pictogram" for text in label.texts):
        told.append(f"pictogram {fitted.way['side']:.1f} mm along its side")
    return f"printed: {', '.join(told)}" if told else ""


def sheet(label: Label, paper: Paper, skip: int = 0) -> bytes:
    """A sheet of one label as a PDF, from the first place that is not skipped to the last."""
    fitted = fit(label, paper)
    told = correction(paper)
    asked = {
        "mode": "sheet",
        "title": f"{label.product}, {label.kind} labels, on {paper.name} ({paper.sheet})",
        "places": [told.told(place) for place in places(paper, skip)],
        "scale": [1 / factor for factor in told.factor],
        "label": [paper.width, paper.height],
        "outline": paper.outline,
        "round": paper.shape == "round",
        "proof": label.is_proof,
        "way": fitted.way,
        "grown": fitted.grown,
        **_body(label, paper),
    }
    return _pdf(LABELS, asked)


def calibration(paper: Paper, where: str) -> bytes:
    """Two rulers from a cross, to be read on paper; what they read is typed `where` the paper is described."""
    mm = "{:g}\u00a0mm".format
    asked = {
        "title": f"Calibration page for {paper.name} ({paper.sheet})",
        "page": paper.page,
        "cross": CROSS,
        "across": int(RULER_ACROSS),
        "down": int(RULER_DOWN),
        "lines": [
            f"Calibration page for {paper.name}, {paper.sheet} paper. Print it at actual size, without scaling, "
            f"then measure it with a ruler and type what you read in {where}:",
            f"{_typed_as('read_left')}: from the left edge of the paper to the long line down"
            f" ({mm(CROSS[0])} if all is well)",
            f"{_typed_as('read_top')}: from the upper edge of the paper to the long line across ({mm(CROSS[1])})",
            f"{_typed_as('read_across')}: from the crossing to the long mark at the right end ({mm(RULER_ACROSS)})",
            f"{_typed_as('read_down')}: from the crossing to the long mark at the lower end ({mm(RULER_DOWN)})",
            f"Marks are {mm(10)} apart. More than 2\u00a0% off is a setting of the printer: look for scaling there.",
        ],
    }
    return _pdf(RULERS, asked)


def check_sheets(sheets: Sequence[CheckSheet], page: tuple[float, float]) -> bytes:
    """Check sheets as a PDF, each from a page of its own on; a ValueError says which letter the font lacks."""
    asked = {
        "title": "Check sheets for labels",
        "page": page,
        "to_sign": TO_SIGN,
        "sheets": [sheet._asdict() for sheet in sheets],
    }
    missing = letters.lacking(letters.plain(json.dumps(asked, ensure_ascii=False)))
    if missing:
        raise ValueError(f"check sheet: the font has no {', '.join(missing)}; write it otherwise")
    return _pdf(CHECKS, asked)


def _typed_as(key: str) -> str:
    """What a reading is called on the tab, and in a file."""
    return f"{short(PAPERS[key].head)} ({key})"


def _body(label: Label, paper: Paper) -> dict[str, Any]:
    return {
        "page": paper.page,
        "kind": label.kind,
        "middle": label.kind != "warning" or paper.shape == "round",
        "between": BETWEEN,
        "room": _room(paper),
        "groups": [_group(list(among)) for _, among in groupby(label.texts, key=_group_of)],
    }


def _group_of(text: Text) -> str:
    # A sign without a word stands beside the statements, one with a word over them.
    alone = text.part == "sign" and not text.words
    return "hazard" if text.part in HAZARD else "fire" if alone else text.part


def _group(texts: Sequence[Text]) -> dict[str, Any]:
    """Texts that stand together: symbols, and the paragraphs beside or under them."""
    words = [text for text in texts if text.part != "pictogram" and text.words]
    # Each line of the maker's own is a paragraph, and so are names and statements of a language.
    runs = groupby(
        enumerate(words),
        key=lambda each: each[0] if each[1].part == "line" else each[1].part in RUN_ON and each[1].language,
    )
    return {
        "foot": texts[0].part == "net weight",
        "symbols": [_piece(text) for text in texts if text.part in SYMBOLIC],
        "paragraphs": [[_piece(text) for _, text in among] for _, among in runs],
    }


def _piece(text: Text) -> dict[str, Any]:
    return {
        "part": text.part,
        "words": letters.breakable(text.words),
        "code": text.code,
        "size": letters.size(text),
        "height": text.height * OVER,
        "least": text.height,
        "bold": text.part in letters.BOLD,
        "grows": text.part not in STATED_AS_ASKED,
        "lang": text.language,
    }


def _room(paper: Paper) -> tuple[float, float]:
    """Of a label what may be printed on; of a round one the square inside it."""
    inside = SQUARE_IN_CIRCLE if paper.shape == "round" else 1.0
    return inside * paper.width - 2 * MARGIN * inside, inside * paper.height - 2 * MARGIN * inside


def _ways(label: Label, paper: Paper) -> list[dict[str, Any]]:
    """Ways to set a label, the one to be preferred first."""
    symbols = any(text.part == "pictogram" for text in label.texts)
    sides = least_sides(label.holds, paper) if symbols and label.holds else [0.0]
    return [
        {"stretch": stretch, "side": drawn(side), "beside": beside, "name": name}
        for side in sides
        for stretch in (NORMAL, CONDENSED)
        for name in NAMES[label.kind]
        for beside in ((True, False) if symbols else (False,))
    ]


def _missing(label: Label, paper: Paper, over: Mapping[str, Any]) -> str:
    """By how much what is to be printed is too large, in the way that asks for the least."""
    what = f"{label.product}, {label.kind}, on {paper.name} ({paper.width:g} x {paper.height:g} mm)"
    if over["wide"] > 0:
        word = over["word"].replace(letters.MAY_BREAK, "")
        return f'{what}: "{word}" needs {over["wide"]:.2f} mm more width'
    return f"{what}: the text needs {over['high']:.2f} mm more height"


def _refuse_letters(texts: Sequence[Text]) -> None:
    for text in texts:
        if not text.words and text.part != "sign":
            raise ValueError(f"{text.called} has no words")
        missing = letters.lacking(text.words)
        if missing:
            raise ValueError(f"{text.called}: the font has no {', '.join(missing)}; write it otherwise")


def _pdf(template: Path, asked: Mapping[str, Any]) -> bytes:
    made = typst.compile(template, format="pdf", pdf_standards=["ua-1"], timestamp=0, **_how(asked))
    return _unscaled(made)


def _how(asked: Mapping[str, Any]) -> dict[str, Any]:
    data = {"font": letters.FAMILY, "title": "", "symbols": SYMBOL_FILES, **asked}
    return {"sys_inputs": {"data": json.dumps(data, ensure_ascii=False)}, "font_paths": _fonts()}


@functools.cache
def _fonts() -> typst.Fonts:
    return typst.Fonts(include_system_fonts=False, include_embedded_fonts=False, font_paths=[str(letters.folder())])


def _unscaled(made: bytes) -> bytes:
    """The same PDF, asking the program that prints it not to scale the page."""
    writer = pypdf.PdfWriter(clone_from=io.BytesIO(made))
    shown = writer.root_object.setdefault(NameObject("/ViewerPreferences"), DictionaryObject()).get_object()
    shown[NameObject("/PrintScaling")] = NameObject("/None")
    out = io.BytesIO()
    writer.write(out)
    return out.getvalue()
