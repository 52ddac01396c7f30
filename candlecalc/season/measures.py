"""The units a maker's workbook is in, against the units that `calc` works in."""

import math
from dataclasses import dataclass

from candlecalc.declaration.term import LARGEST, Term
from candlecalc.quantities.rounding import round_to
from candlecalc.quantities.units import GRAMS, MILLIMETRES


@dataclass(frozen=True)
class Measures:
    """A workbook's units: what a number in it is in grams, millimetres and degrees Celsius."""

    weight_unit: str
    temperature_unit: str
    length_unit: str

    @property
    def weight_g(self) -> float:
        return GRAMS[self.weight_unit]

    @property
    def length_mm(self) -> float:
        return MILLIMETRES[self.length_unit]

    @property
    def temp_zero(self) -> float:
        """What the workbook's thermometer shows at 0 degrees Celsius."""
        return 32.0 if self.temperature_unit == "F" else 0.0

    @property
    def temp_step(self) -> float:
        """How far it moves for one degree Celsius."""
        return 1.8 if self.temperature_unit == "F" else 1.0

    @property
    def also_unit(self) -> str:
        """The second unit that weights on the bench card are shown in."""
        return "g" if self.weight_unit == "oz" else "oz"

    def to_calc(self, value: float, unit: str) -> float:
        """A number of the workbook in the unit that `calc` takes."""
        if unit == "C":
            return (value - self.temp_zero) / self.temp_step
        return value * {"g": self.weight_g, "mm": self.length_mm, "money per g": 1 / self.weight_g}.get(unit, 1.0)

    def from_calc(self, value: float, unit: str) -> float:
        """A number of `calc` in the workbook's unit."""
        if unit == "C":
            return value * self.temp_step + self.temp_zero
        return value / self.to_calc(1.0, unit)

    def limits(self, term: Term) -> tuple[float, float]:
        """A term's range in the workbook's units."""
        return self._limit(term.low, term.unit, "down"), self._limit(term.high, term.unit, "up")

    def _limit(self, limit: float, unit: str, outward: str) -> float:
        if abs(limit) >= LARGEST or unit not in ("g", "mm", "C"):
            return limit
        own = self.from_calc(limit, unit)
        # 705.479 oz is nothing that anybody reads: 710.
        exact = own == limit or unit == "C" or own == 0
        return round(own, 6) if exact else round_to(own, 1 - math.floor(math.log10(abs(own))), outward)

    def shown(self, text: str, currency: str) -> str:
        """A head with its units put in: "Pack price, {money}" becomes "Pack price, USD"."""
        temperature = f"\u00b0{self.temperature_unit}"
        return text.format(
            money=currency,
            weight=self.weight_unit,
            length=self.length_unit,
            temperature=temperature,
            also=self.also_unit,
        )
