"""The term: a quantity of the trade, and a value of it read as people and sheets give it."""

import inspect
import math
import numbers
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Any, List, Literal, Optional, Tuple

import candlecalc.quantities.days as days
import candlecalc.quantities.units as units

# A finite end for every range: NaN and infinity then fail the same comparison as any other number.
LARGEST = 1e12
# What sums of decimals may leave past an end of a range, as a part of the end or of 1: far below any scale or coin.
CRUMB = 1e-9
LONGEST_SHOWN = 200  # characters of what was given, in a message
NUMBERS = frozenset((float, int))


@dataclass(frozen=True)
class Term:
    """A quantity of the trade: what it is, the unit its numbers are in, and the range it takes.

    The unit "date" is a day of the calendar: a `datetime.date` in `calc`, a serial number in a cell.
    """

    unit: str
    help: str
    low: float = 0.0
    high: float = LARGEST
    low_excluded: bool = False  # `low` itself is refused
    whole: bool = False
    hint: str = ""  # the likely slip, shown only where a hundredth of the value would be taken
    bare: bool = False  # its numbers are typed without a unit, so that no other unit can have been meant
    many: bool = False
    choices: Tuple[str, ...] = ()
    text: bool = False  # words as they are typed
    blank: bool = False  # a blank is taken, and is None in `calc`
    # How an answer is rounded where it is shown: "down" for a highest that is permitted, "up" for a lowest.
    rounding: str = "nearest"
    unit_in: str = ""  # the argument that says which unit its numbers are in
    # Amounts in any one unit, pieces or a weight: of one thing throughout ("alike"), of another in each row ("each").
    goods: Literal["", "alike", "each"] = ""
    noun: str = ""  # what its numbers count, where an answer is read: "pots"
    own_semicolons: bool = False  # words that hold semicolons of their own, so that these part no list

    @property
    def range(self) -> str:
        """The range in words, as messages and help show it: "0 to 0.5 of wax weight"."""
        return self._range + (" or blank" if self.blank else "")

    @property
    def _range(self) -> str:
        if self.choices:
            return " or ".join(f'"{choice}"' for choice in self.choices)
        if self.text:
            return "text"
        if self.unit == "date":
            return 'a date such as "2026-03-14"'
        unit = {"": "", "money": ""}.get(self.unit, f" {self.unit}")
        what = "whole numbers " if self.whole else ""
        if self.low <= -LARGEST:
            return "any amount" + unit
        return what + limits(plain(self.low), plain(self.high) if self.high < LARGEST else "", self.low_excluded) + unit

    @property
    def is_number(self) -> bool:
        """Whether its values are numbers, neither words nor dates."""
        return not (self.choices or self.text or self.unit == "date")

    def takes(self, value: float) -> bool:
        """Whether a plain number is in range."""
        inside = self.low < value <= self.high if self.low_excluded else self.low <= value <= self.high
        return inside and (not self.whole or value == int(value))

    def gives(self, value: Any) -> bool:
        """Whether a result, or one of a list of results, is what the term says."""
        if value is None:
            return self.blank
        if self.is_number:
            return self.takes(value)
        return isinstance(value, date if self.unit == "date" else str)

    def end_at(self, value: float) -> Optional[float]:
        """The end of the range that a number lies past by a rounding crumb; None where it lies farther, or inside."""
        for end, past in ((self.low, self.low - value), (self.high, value - self.high)):
            taken = abs(end) < LARGEST and self.takes(end)
            if taken and 0 < past <= crumb_at(end):
                return end
        return None

    def read(self, value: Any) -> Any:
        """One value as given, as `calc` takes it; a ValueError says what is allowed."""
        return self.reading(value)[0]

    def reading(self, value: Any) -> Tuple[Any, str]:
        """The same with the unit that was written beside it ("" for none)."""
        if self.blank and _blank(value):
            return None, ""
        if not self.is_number:
            return self._read_words(value), ""
        unit = ""
        if isinstance(value, str):
            try:
                # A text that was read before brings along what it was read as.
                number, unit = getattr(value, "reading", None) or units.read(value, self.unit)
            except ValueError as problem:
                raise ValueError(f"is {shown(value)}: {problem}") from None
        elif isinstance(value, (numbers.Real, Decimal)) and not isinstance(value, bool):
            number = _float(value)
        elif is_quantity(value):
            try:
                number, unit = _float(magnitude(value, self.unit)), str(value.units)
            except ValueError as problem:
                raise ValueError(f"is {shown(value)}: {problem}") from None
        else:
            raise ValueError(f"is {shown(value)}; it takes {self.range}")
        if not self.takes(number):
            raise ValueError(f"is {shown(value)}; it takes {self.range}.{'' if unit else self._slip(number)}")
        return number, unit

    def _read_words(self, value: object) -> Any:
        if self.unit == "date":
            day = days.read(value)
            if day:
                return day
            meant = " or ".join(map(str, days.meant(value)))
            if meant:
                raise ValueError(f"is {shown(value)}; it takes {self.range}: write {meant}")
        elif self.choices:
            # As spreadsheets compare words: "Value" is "value".
            for choice in self.choices:
                if isinstance(value, str) and value.strip().lower() == choice.lower():
                    return choice
        elif isinstance(value, str) and value.strip():
            return value.strip()
        elif isinstance(value, (int, float)) and not isinstance(value, bool) and math.isfinite(_float(value)):
            # A cell makes a number of "5" by itself; it was typed as text.
            return f"{value:.15g}"
        if self.text and isinstance(value, date):
            made = "a sheet makes a date of words such as 1-5; type an apostrophe before them"
            raise ValueError(f"is the date {shown(value)}; it takes {self.range}: {made}")
        raise ValueError(f"is {shown(value)}; it takes {self.range}")

    def _slip(self, value: float) -> str:
        """What was likely meant: a percentage, or the number in another unit, where that would be taken."""
        plain_value = float(f"{value:.10g}")
        # A load of 1 may be a slip for 100 % as well as for 1 %: no guess from 1 down.
        if self.hint and max(self.high, 1) < value and self.takes(value / 100):
            return " " + self.hint.format(plain_value)
        meant = {} if self.bare else units.meant(value, self.unit)
        likely = [f"{plain_value:g} {unit}" for unit, inside in meant.items() if self.takes(inside)]
        return f" Did you mean {' or '.join(likely)}?" if likely else ""


@dataclass(frozen=True)
class Argument:
    """One argument of a declared function."""

    name: str
    term: Term
    default: Any = inspect.Parameter.empty

    @property
    def optional(self) -> bool:
        return self.default is not inspect.Parameter.empty

    def read(self, value: object) -> Any:
        """The value checked and in the term's unit; a ValueError names this argument."""
        try:
            return self._read_list(value) if self.term.many else self.term.read(value)
        except ValueError as problem:
            raise ValueError(f"{self.name} {problem}") from None

    def _read_list(self, value: object) -> List[Any]:
        # Blanks at the end of a range are room to grow; a blank inside it is a value forgotten.
        cells = _line(value)
        while cells and _blank(cells[-1]):
            cells.pop()
        if not cells and not self.term.blank:
            raise ValueError(f"is empty; it takes a list, each {self.term.range}")
        read: List[Any] = []
        counts = self.term.is_number
        for position, cell in enumerate(cells, start=1):
            if counts and type(cell) in NUMBERS and self.term.takes(cell):
                read.append(float(cell))  # nearly all of a long log: no more is asked of a plain number
                continue
            if _blank(cell) and not self.term.blank:
                raise ValueError(
                    f"is blank at place {position} of {len(cells)}; only blanks at the end are passed over"
                )
            try:
                taken, unit = self.term.reading(cell)
            except ValueError as problem:
                raise ValueError(f"at place {position} {problem}") from None
            # Totals pass over a number that is text, so the maker's own sums would differ from ours.
            if counts and isinstance(cell, str) and cell and not unit:
                raise ValueError(f'at place {position} is the text "{cell}"; it takes a number, or one with its unit')
            read.append(taken)
        return read


def limits(low: str, high: str, above: bool) -> str:
    """Two limits in words; `high` is empty where there is none, `above` says that `low` itself is out.

    >>> limits("0", "2000", above=True), limits("0", "", above=False)
    ('more than 0, at most 2000', '0 or more')
    """
    if above:
        return f"more than {low}, at most {high}" if high else f"more than {low}"
    return f"{low} to {high}" if high else f"{low} or more"


def crumb_at(end: float) -> float:
    """How far past an end of a range rounding may put a number."""
    return CRUMB * max(1.0, abs(end))


def plain(limit: float) -> str:
    """A limit as it is read: a million as 1000000, and not as 1e+06."""
    return f"{limit:g}" if abs(limit) < 1e5 else f"{limit:.0f}"


def is_column(value: Any) -> bool:
    """Whether many rows are given where one value is wanted: a list, a NumPy array or a pandas Series.

    A table of several columns is none.
    """
    if is_quantity(value):
        value = value.magnitude
    several = hasattr(value, "__array__") and getattr(value, "ndim", 0) > 0 and not hasattr(value, "columns")
    return isinstance(value, (list, tuple)) or several


def is_quantity(value: Any) -> bool:
    """Whether a value brings its unit along, as a Quantity of pint does; pint itself is not asked for."""
    return hasattr(value, "magnitude") and hasattr(value, "units") and hasattr(value, "to")


def magnitude(value: Any, unit: str) -> Any:
    """A Quantity's number, or array of numbers, in a term's unit; a ValueError where it measures something else."""
    kind = units.kind_of(unit)
    told = f"it takes {kind} such as {units.EXAMPLES[kind]}"
    if kind == "an amount of money":
        raise ValueError(told)  # pint knows no currency
    try:
        return value.to(units.DIMENSIONS[unit][1] if unit in units.DIMENSIONS else "").magnitude
    except (ArithmeticError, AttributeError, TypeError, ValueError):
        raise ValueError(told) from None


def _float(value: Any) -> float:
    try:
        return float(value)
    except OverflowError:  # beyond what a float holds: out of every range
        return math.inf if value > 0 else -math.inf
    except ValueError:  # a NaN that must not be counted with
        return math.nan


def _line(value: object) -> List[Any]:
    """A list, a column or a row of cells, as a flat list."""
    cells = _cells(value)
    if all(type(cell) in NUMBERS for cell in cells):
        return cells
    rows = [_cells(row) for row in cells]
    if len(rows) > 1 and any(len(row) > 1 for row in rows):
        raise ValueError(f"is a block of {len(rows)} rows; it takes one column or one row")
    return [cell for row in rows for cell in row]


def _cells(value: Any) -> List[Any]:
    if isinstance(value, str) or not hasattr(value, "__iter__") or (is_quantity(value) and not is_column(value)):
        return [value]
    return list(value)


def _blank(cell: object) -> bool:
    # NaN is a table's blank.
    return (
        cell is None
        or (isinstance(cell, str) and not cell)
        or type(cell).__name__ in ("NAType", "NaTType")
        or (not isinstance(cell, Decimal) and cell != cell)
        or (isinstance(cell, Decimal) and cell.is_qnan())
    )


def shown(value: object) -> str:
    """A value as messages name it."""
    if isinstance(value, str):
        return f'"{_cut(value)}"'
    if isinstance(value, date):
        return value.isoformat()
    if is_quantity(value):
        return _cut(str(value))
    if isinstance(value, bool) or value is None:
        return "blank" if value is None else str(value).upper()
    return f"{_float(value):.10g}" if isinstance(value, (numbers.Real, Decimal)) else _cut(repr(value))


def _cut(text: str) -> str:
    return text if len(text) <= LONGEST_SHOWN else f"{text[:LONGEST_SHOWN]}..."
