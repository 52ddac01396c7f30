"""Letters: the font, how high its letters are, which it has, and where a long name may break."""

import functools
import re
import unicodedata
from pathlib import Path

import fontpkg_noto_sans
from fontTools.ttLib import TTFont

from candlecalc.labels.shapes import OVER, Text

FAMILY = "Noto Sans"
POINT = 25.4 / 72  # mm
# Of the font's size: the height of its flat figures (1, 7) and of N, and of its small x, in regular and in bold.
FIGURES, SMALL, SMALL_BOLD = 0.714, 0.536, 0.546
LEAST = 1.2  # mm of a small x where no rule says more: below, few people read it
LONG_WORD = 18  # letters
MAY_BREAK, NO_BREAK = "\u200b", "\u00a0"
MARK = re.compile(r"(?<=[-,/)\]])(?=.)")
AMOUNT = re.compile(r"(?<=[0-9]) (?=[0-9%]|(?:mm|cm|in|g|kg|oz|lb|ml|h)\b)")
IN_CAPITALS = ("net weight", "sign")
BESIDE_SIGN = 0.6  # the word beside a sign, of the sign's height
BOLD = ("name", "signal word", "sign")


def size(text: Text) -> float:
    """The font's size in points by which a text has its least height, and a little over."""
    bold = text.part in BOLD
    share = FIGURES if text.part in IN_CAPITALS else SMALL_BOLD if bold else SMALL
    height = text.height * (BESIDE_SIGN if text.part == "sign" else 1.0)
    return height * OVER / share / POINT


def plain(words: str) -> str:
    """Words in one line, with no space that nobody sees and no mark that no font draws."""
    composed = unicodedata.normalize("NFC", words)
    return " ".join(re.sub(r"[\s\u00a0]+", " ", composed).split())


def breakable(words: str) -> str:
    """Words in which a long one, such as a substance's name, may break after a mark, and an amount nowhere."""
    words = AMOUNT.sub(NO_BREAK, words)
    return " ".join(MARK.sub(MAY_BREAK, word) if len(word) > LONG_WORD else word for word in words.split(" "))


def folder() -> Path:
    """The folder of the font's files."""
    return Path(fontpkg_noto_sans.__file__).parent / "files"


def lacking(words: str) -> list[str]:
    """The letters that the font lacks, each once, by name."""
    missing = dict.fromkeys(letter for letter in words if ord(letter) not in _drawn())
    return [f'"{letter}" ({unicodedata.name(letter, f"U+{ord(letter):04X}")})' for letter in missing]


@functools.cache
def _drawn() -> frozenset[int]:
    path = next(path for path in folder().iterdir() if path.name.startswith("NotoSans["))
    with TTFont(path, lazy=True) as font:
        return frozenset(font.getBestCmap())
