"""What units measure, and the exact factors between them, from pint.

Asked by `units` alone, so that what must run without a package can carry a written table in this
module's place: `written` makes it.
"""

from fractions import Fraction
from functools import cache, lru_cache
from typing import Any, Dict, Iterable, Tuple


@cache
def alike(unit: str, other: str) -> bool:
    """Whether two units, as pint names them, measure the same kind of thing.

    A share is one of its own, and a temperature on a scale is no difference of two.
    """
    if "percent" in (unit, other):
        return unit == other
    if _on_scale(unit) != _on_scale(other):
        return False
    registry = _registry()
    same: bool = registry.Unit(unit).dimensionality == registry.Unit(other).dimensionality
    return same


@cache
def exact(unit: str, to: str) -> Tuple[int, int]:
    """How many of `to` make one `unit`, over one another: numerator, denominator (no temperatures)."""
    # Worked in fractions: floats reach some factors through metres and litres and lose the last digit.
    factor = _registry().Quantity(Fraction(1), unit).to(to).magnitude
    return factor.numerator, factor.denominator


def _on_scale(unit: str) -> bool:
    return unit.startswith("deg")


def written(names: Iterable[str]) -> str:
    """This module for the units named, as a table that needs no package."""
    rows: Dict[str, Tuple[str, int, int]] = {}
    first: Dict[str, str] = {}  # of each kind, the unit that the others are counted in
    for name in sorted(set(names)):
        powers = sorted(_registry().Unit(name).dimensionality.items())
        kind = "percent" if name == "percent" else " ".join(f"{base}{power}" for base, power in powers)
        # A scale with a zero of its own has no factor.
        scale = _on_scale(name)
        kind += " on a scale" * scale
        rows[name] = (kind, *((1, 1) if scale else exact(name, first.setdefault(kind, name))))
    return TABLE.replace("ROWS", "\n".join(f"    {name!r}: {row!r}," for name, row in rows.items()))


TABLE = '''"""What units measure, and the exact factors between them, worked out when this was built."""

from fractions import Fraction

# Unit -> what it measures, and how many of the first of its kind make one: numerator, denominator.
SIZES = {
ROWS
}


def alike(unit, other):
    return SIZES[unit][0] == SIZES[other][0]


def exact(unit, to):
    factor = Fraction(*SIZES[unit][1:]) / Fraction(*SIZES[to][1:])
    return factor.numerator, factor.denominator
'''


@lru_cache(maxsize=1)
def _registry() -> Any:
    from pint import UnitRegistry  # a third of a second: only where text with a unit is read

    return UnitRegistry(non_int_type=Fraction)
