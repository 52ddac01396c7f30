"""The units a maker's workbook is in, against the units that `calc` works in."""

from dataclasses import dataclass

from candlecalc.term import LARGEST, Term
from candlecalc.units import GRAMS, MILLIMETRES


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
        low, high = (
            limit if abs(limit) >= LARGEST else round(self.from_calc(limit, term.unit), 6)
            for limit in (term.low, term.high)
        )
        return low, high

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
