"""A mixture as it is asked about: what is in it, and how it is to be judged."""

import re
from contextlib import contextmanager
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from typing import Iterator, List, Optional, Tuple

from candlecalc.calc.datasheet.answers import Result, shown
from candlecalc.calc.datasheet.class_rules import SENSITISING, Close, classes, close
from candlecalc.calc.datasheet.lines import Numbers, in_oils, oils_without_sheet, shares_in_candle
from candlecalc.calc.datasheet.substance import CAS, Line, Part, parts_of
from candlecalc.calc.datasheet.toxicity import not_estimated

# A limit this near is pointed out; weighing and drift from batch to batch may cross it.
LEAST_MARGIN = Fraction(1, 10)


@dataclass(frozen=True)
class Mixture:
    """Lines of data sheets, the substances they come to, and the rules by which they are judged."""

    lines: List[Line]
    parts: List[Part]
    viscosity: str
    route: str
    region: str
    margin: Fraction = LEAST_MARGIN
    without_sheet: Tuple[int, ...] = ()  # numbers of oils that are poured but have no line

    @cached_property
    def classes(self) -> List[Result]:
        return classes(self.parts, self.route, self.viscosity)

    @cached_property
    def close(self) -> List[Close]:
        return close(self.parts, self.route, self.viscosity, self.margin)

    @cached_property
    def not_estimated(self) -> List[str]:
        return not_estimated(self.parts)

    @property
    def unnumbered(self) -> List[Line]:
        """Lines without a CAS number: between several oils, these are added up by their names alone."""
        several = len({line.oil for line in self.lines}) > 1
        return [line for line in self.lines if several and not CAS.search(line.substance)]

    @property
    def sensitising(self) -> bool:
        return any(result.kind in SENSITISING for result in self.classes)

    @property
    def percent(self) -> str:
        """The margin in words."""
        return f"{shown(100 * self.margin)} %"


def described(lines: List[Line], viscosity: Optional[str], route: str, region: str) -> Mixture:
    """What a data sheet describes, as it is."""
    return Mixture(lines, parts_of(lines, {1: Fraction(1)}), viscosity_at_forty(viscosity), route, region)


def candle(
    lines: List[Line],
    loads: Numbers,
    dilutions: Numbers,
    viscosity: Optional[str],
    route: str,
    region: str,
    uncertainty: float,
) -> Mixture:
    """The candle that the lines of its oils and dyes come to at their loads."""
    if all(load is None for load in loads or []):
        raise ValueError("loads is empty; it takes the load of each oil and dye, of wax weight")
    shares = shares_in_candle(lines, loads or [], dilutions)
    return Mixture(
        lines,
        parts_of(in_oils(lines, dilutions), shares),
        viscosity_at_forty(viscosity),
        route,
        region,
        max(LEAST_MARGIN, Fraction(repr(uncertainty))),
        oils_without_sheet(lines, loads or []) if lines else (),
    )


def viscosity_at_forty(typed: Optional[str]) -> str:
    """A viscosity as typed, checked; blank where there is none."""
    words = (typed or "").strip().lower()
    if words and words != "solid" and not re.fullmatch(r"\d+(?:[.,]\d+)?(?:\s*(?:mm2/s|cst))?", words):
        raise ValueError(f'viscosity is "{typed}"; it takes a number in mm2/s at 40 C, or "solid"')
    return words


@contextmanager
def named(asked: str) -> Iterator[None]:
    """Messages name the function that was asked, as those of the declaration do."""
    try:
        yield
    except ValueError as problem:
        raise ValueError(f"{asked}: {problem}.") from None
