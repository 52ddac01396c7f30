"""A class that a mixture takes, and how amounts are held against limits.

Shares are in % of the mixture and exact; they are compared on twelve digits, so that a load in a cell
does not push 1.0 % below 1 %.
"""

from fractions import Fraction
from typing import Dict, Iterable, NamedTuple, Sequence, Tuple, Union

import candlecalc.tables as tables
from candlecalc.calc.datasheet.substance import DERMAL, ORAL, Part


class Result(NamedTuple):
    """A class that the mixture takes: by how much of what, and by which limit."""

    kind: str
    category: str
    route: str
    amount: float  # in % of the mixture, or an acute toxicity estimate
    limit: float
    why: str
    where: str
    names: Tuple[str, ...] = ()  # the substances it comes from, most first
    codes: Tuple[str, ...] = ()  # their hazard statements as printed
    unconfirmed: str = ""  # what to check it against, where something was not read in its text
    expert: str = ""  # what is left to expert judgement

    @property
    def name(self) -> str:
        return f"{self.kind} {self.category}".strip() + (f" ({self.route})" if self.route else "")

    @property
    def row(self) -> Dict[str, str]:
        """Its row in the table of label elements."""
        return tables.rows("hazard_labels")[self.rank]

    @property
    def rank(self) -> int:
        """Its place in the table of label elements: within a kind the most severe stands first."""
        route = "inhalation" if self.kind == "Acute Tox." and self.route not in (ORAL, DERMAL) else self.route
        wanted = (self.kind, self.category, route)
        found = tables.rows("hazard_labels")
        return next(at for at, row in enumerate(found) if (row["kind"], row["category"], row["route"]) == wanted)


def result(
    kind: str,
    category: str,
    route: str,
    amount: Fraction,
    limit: Fraction,
    why: str,
    where: str,
    parts: Sequence[Part],
    unconfirmed: str = "",
    expert: str = "",
) -> Result:
    """A result with the names of the substances it comes from, and the statements they are printed with."""
    names = tuple(dict.fromkeys(part.name for part in parts))
    codes = tuple(sorted({code for part in parts for words in part.said for code in words.codes}))
    return Result(kind, category, route, float(amount), float(limit), why, where, names, codes, unconfirmed, expert)


def reaches(amount: Fraction, limit: Fraction) -> bool:
    """Whether an amount is at or above a limit, on twelve digits."""
    return float(f"{float(amount):.12g}") >= float(f"{float(limit):.12g}")


def shown(value: Union[Fraction, float]) -> str:
    """A number as messages show it: so many digits that what is below a limit does not read as that limit."""
    return f"{float(value):.6g}"


def listed(parts: Iterable[Part]) -> str:
    """Substances with their shares, as reasons name them."""
    return ", ".join(f"{part.name} {shown(part.share)} %" for part in parts)
