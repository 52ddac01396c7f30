"""How large a hazard pictogram is: the side of its red square, in mm."""

import math
import re

import candlecalc.tables as tables
from candlecalc.labels.shapes import OVER, Paper

PART = 1 / 15  # of the smallest label: CLP Annex I, 1.2.1.3
SYMBOLS = {
    "GHS02": "ghsystem_flame.png",
    "GHS05": "ghsystem_acid.png",
    "GHS06": "ghsystem_skull.png",
    "GHS08": "ghsystem_health.png",
    "GHS09": "ghsystem_aqpol.png",
}


def least_sides(holds: float, paper: Paper) -> list[float]:
    """Least sides by what the package holds, in ml: the one the rule asks for, then one it allows if need be.

    The larger of the table's side and of a fifteenth of the smallest label. A ValueError says that the label is
    smaller than the rule allows.
    """
    row = tables.row_up_to("hazard_packages", holds / 1000)
    label = _product(row["label"])
    *allowed, asked = (float(side) for side in re.findall(r"([0-9]+) x [0-9]+", row["pictogram"]))
    sides = [max(asked, math.sqrt(label * PART))]
    if paper.printed >= label:
        return sides
    if row["label_words"] == "at least":
        raise ValueError(
            f"a package of {holds:g} ml takes a hazard label of at least {row['label']} mm; {paper.name} is smaller"
        )
    return sides + [max(side, math.sqrt(paper.printed * PART)) for side in allowed]


def least_letters(holds: float) -> float:
    """Least height of a small x on a hazard label, in mm, by what the package holds."""
    return float(tables.row_up_to("hazard_packages", holds / 1000)["letters"])


def drawn(side: float) -> float:
    """The side as it is drawn: its area a little over the least."""
    return side * math.sqrt(OVER)


def _product(words: str) -> float:
    wide, high = words.split(" x ")
    return float(wide) * float(high)
