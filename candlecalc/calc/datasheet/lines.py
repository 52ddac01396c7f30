"""Section 3 of one or several data sheets, typed in columns, as lines; and what each stands for in a candle."""

from fractions import Fraction
from typing import Dict, List, Optional, Sequence, Tuple

from candlecalc.calc.datasheet.percentages import concentration
from candlecalc.calc.datasheet.reading import read
from candlecalc.calc.datasheet.substance import Line, identifiers

LONGEST = 1000  # characters: no line of a data sheet is longer
MOST = 101  # %: printed figures are rounded
Column = Optional[Sequence[Optional[str]]]
Numbers = Optional[Sequence[Optional[float]]]


def lines_of(
    substances: Column, concentrations: Column, classes: Column, specifics: Column = None, oils: Numbers = None
) -> List[Line]:
    """A line for each row that is not blank; a ValueError says all that is wrong, each with its place."""
    lines: List[Line] = []
    problems: List[str] = []
    for at, substance in enumerate(substances or []):
        said = [_at(column, at) for column in (concentrations, classes, specifics)]
        if substance or any(said):
            try:
                oil = int((oils[at] if oils else None) or 1)
                lines.append(_line(at + 1, substance, said[0], said[1] or "", said[2] or "", oil))
            except ValueError as problem:
                problems.append(str(problem))
    if problems:
        raise ValueError("; ".join(problems))
    _refuse_more_than_whole(lines)
    return lines


def _at(column: Column, at: int) -> Optional[str]:
    return column[at] if column else None


def _line(place: int, substance: Optional[str], share: Optional[str], classes: str, specifics: str, oil: int) -> Line:
    if not substance:
        raise ValueError(
            f"substances at place {place} is blank beside a line that is typed; type its name or CAS number"
        )
    if not share:
        raise ValueError(
            f'concentrations at place {place} is blank; type that of {substance} as printed, such as "1-5"'
        )
    for name, text in (("substances", substance), ("classes", classes), ("specifics", specifics)):
        if len(text) > LONGEST:
            raise ValueError(f"{name} at place {place} is {len(text)} characters long; a line is of one substance")
    for name, check, value in (("substances", identifiers, substance), ("concentrations", concentration, share)):
        try:
            check(value)
        except ValueError as problem:
            raise ValueError(f"{name} at place {place} {problem}") from None
    return Line(place, substance, concentration(share), read(classes, specifics), oil)


def _refuse_more_than_whole(lines: List[Line]) -> None:
    lowest: Dict[int, Fraction] = {}
    for line in lines:
        lowest[line.oil] = lowest.get(line.oil, Fraction(0)) + line.share.low
    for oil, total in lowest.items():
        if total > MOST:
            raise ValueError(
                f"the lower ends of oil {oil} add up to {float(total):.6g} %, more than the whole; is a line typed "
                "twice, or one of another oil?"
            )


def shares_in_candle(lines: List[Line], loads: Sequence[Optional[float]], dilutions: Numbers) -> Dict[int, Fraction]:
    """How much of the candle each oil's sheet stands for: its share of the candle over its dilution.

    A sheet of a diluted sample lists less of each substance than the neat oil holds.
    """
    given = {oil: Fraction(repr(load)) for oil, load in enumerate(loads, start=1) if load is not None}
    whole = 1 + sum(given.values(), Fraction(0))
    diluted = {oil: Fraction(repr(share)) for oil, share in enumerate(dilutions or [], start=1) if share is not None}
    for line in lines:
        if line.oil not in given:
            raise ValueError(f"the line at place {line.place} is of oil {line.oil}, which has no load")
        if line.share.low > 100 * diluted.get(line.oil, 1):
            raise ValueError(
                f"{line.substance} is {float(line.share.low):.6g} % of a sample that holds "
                f"{float(100 * diluted[line.oil]):.6g} % oil; is the sheet that of the neat oil?"
            )
    return {oil: load / whole / diluted.get(oil, Fraction(1)) for oil, load in given.items()}


def in_oils(lines: List[Line], dilutions: Numbers) -> List[Line]:
    """Lines with the upper ends that a sample can hold: never more of a substance than of the oil."""
    most = {oil: 100 * Fraction(repr(share)) for oil, share in enumerate(dilutions or [], start=1) if share is not None}
    return [
        line._replace(share=line.share._replace(high=min(line.share.high, most.get(line.oil, Fraction(100)))))
        for line in lines
    ]


def oils_without_sheet(lines: List[Line], loads: Sequence[Optional[float]]) -> "Tuple[int, ...]":
    """Oils that are poured but have no line typed."""
    typed = {line.oil for line in lines}
    return tuple(oil for oil, load in enumerate(loads, start=1) if load and oil not in typed)
