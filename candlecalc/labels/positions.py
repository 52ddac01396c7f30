"""Where labels stand on a sheet, as asked and as a printer must be told so that they come out there."""

from typing import NamedTuple

from candlecalc.labels.shapes import CROSS, Paper
from candlecalc.season.tables.labels import RULER_ACROSS, RULER_DOWN

CRUMB = 0.005  # mm; inches written with two decimals are no fault


class Correction(NamedTuple):
    """What a ruler read: a printer puts what is told x at shift + factor * x."""

    shift: tuple[float, float]
    factor: tuple[float, float]

    def told(self, place: tuple[float, float]) -> tuple[float, float]:
        """The place to tell the printer for one that is wanted on paper."""
        x, y = ((at - shift) / factor for at, shift, factor in zip(place, self.shift, self.factor, strict=True))
        return x, y


def correction(paper: Paper) -> Correction:
    """How a printer is off, from the readings of the calibration page."""
    across, down = paper.read_across / RULER_ACROSS, paper.read_down / RULER_DOWN
    return Correction((paper.read_left - across * CROSS[0], paper.read_top - down * CROSS[1]), (across, down))


def places(paper: Paper, skip: int = 0) -> list[tuple[float, float]]:
    """The left upper corner of each label in mm from that of the sheet, row by row, the skipped ones left out.

    A ValueError says by how much the labels overrun the sheet, or that all are skipped.
    """
    _refuse_overrun(paper)
    if not 0 <= skip < paper.places:
        raise ValueError(f"{paper.name} has {paper.places} labels; --skip takes 0 to {paper.places - 1}")
    every = [
        (paper.left + column * (paper.width + paper.gap_across), paper.top + row * (paper.height + paper.gap_down))
        for row in range(paper.rows)
        for column in range(paper.columns)
    ]
    return every[skip:]


def _refuse_overrun(paper: Paper) -> None:
    wide = paper.left + paper.columns * paper.width + (paper.columns - 1) * paper.gap_across
    high = paper.top + paper.rows * paper.height + (paper.rows - 1) * paper.gap_down
    for size, page, way in ((wide, paper.page[0], "wider"), (high, paper.page[1], "higher")):
        if size > page + CRUMB:
            raise ValueError(
                f"{paper.name}: its labels reach {size:.2f} mm, {size - page:.2f} mm {way} than {paper.sheet} paper; "
                "measure rows, columns, margins and gaps anew"
            )
