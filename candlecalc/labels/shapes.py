"""What a label is, and what a paper is: plain data, whoever typed it."""

import math
from dataclasses import dataclass

from candlecalc.season.tables.labels import RULER_ACROSS, RULER_DOWN, SHEETS

# What is drawn may shrink a little on its way to paper: so much over every least height, side and area.
OVER = 1.01


@dataclass(frozen=True)
class Text:
    """One text of a label, or a symbol, whose words say what it shows."""

    part: str  # name, line, net weight, sign, fire, pictogram, signal word, names or hazard
    words: str
    height: float  # mm, the least: of the figures of a net weight and of capitals in bold, else of a small x
    code: str = ""  # H317, GHS07; of a fire statement the topic
    language: str = "en"
    confirmed: bool = False
    against: str = ""  # what it is to be confirmed against
    checked: str = ""  # when and against what it was

    @property
    def called(self) -> str:
        """What it is called in a sentence, by part and code as a maker types them, with its words."""
        part = TYPED_AS.get(self.part, self.part)
        code = f" {self.code}" if self.code and self.code not in self.words else ""
        return f"{part}{code}" + (f', "{self.words}"' if self.words else "")


@dataclass(frozen=True)
class Label:
    """The texts of one kind of label of a product, in the order in which they stand."""

    product: str
    kind: str  # front, warning or base
    texts: tuple[Text, ...]
    holds: float | None = None  # ml, which decides the sizes of a hazard label
    not_counted: tuple[str, ...] = ()  # what the hazard elements leave out

    @property
    def unconfirmed(self) -> list[Text]:
        return [text for text in self.texts if not text.confirmed]

    @property
    def is_proof(self) -> bool:
        """Whether PROOF stands across it: something is still to be confirmed, or was not counted."""
        return bool(self.unconfirmed or self.not_counted)


@dataclass(frozen=True)
class Paper:
    """A sheet of labels, in mm: described once, with what a ruler read on its calibration page."""

    name: str
    sheet: str  # a key of SHEETS
    shape: str  # rectangle or round
    rows: int
    columns: int
    width: float
    height: float
    left: float
    top: float
    gap_across: float = 0.0
    gap_down: float = 0.0
    outline: bool = False
    read_left: float = 20.0
    read_top: float = 20.0
    read_across: float = RULER_ACROSS
    read_down: float = RULER_DOWN

    @property
    def page(self) -> tuple[float, float]:
        return SHEETS[self.sheet]

    @property
    def places(self) -> int:
        return self.rows * self.columns

    @property
    def area(self) -> float:
        """mm2 of one label, a round one by the square around it."""
        return self.width * self.height

    @property
    def printed(self) -> float:
        """mm2 of one label itself."""
        return self.area * (math.pi / 4 if self.shape == "round" else 1)


TYPED_AS = {"sign": "fire", "signal word": "hazard", "pictogram": "hazard", "names": "hazard"}

# The calibration page has a cross so far from the left edge and from the top; its rulers begin there.
CROSS = (20.0, 20.0)
