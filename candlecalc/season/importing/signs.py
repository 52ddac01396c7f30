"""Sales as files write them: a minus is a refund, and the row of ours has no signs."""

from collections.abc import Mapping, MutableMapping
from decimal import Decimal

from candlecalc.season.tables.imports import LINE_PRICE, TURNED

PRICES = ("price", LINE_PRICE)
FEE = "fee"
# What has a minus on a refund. In other columns it is a fault.
SIGNED = (*PRICES, "pieces", "discount", "postage", FEE)
BACK = ("refund", "returned")
NO_REFUND = 'it is {} on a line that is no refund. Where they write it with a minus, say "{}" on Imports'


class SignError(ValueError):
    """A minus where none can be meant, with the key of its column."""

    def __init__(self, key: str, number: Decimal) -> None:
        super().__init__(NO_REFUND.format(number, TURNED))
        self.key = key


def goes_back(values: Mapping[str, object]) -> bool:
    """Whether the money of a line goes back to the buyer: its kind says so, or a minus where it has no kind."""
    kind = values.get("kind")
    return kind in BACK if kind else any(exact(values, key) < 0 for key in (*PRICES, "pieces"))


def settled(values: MutableMapping[str, object]) -> Decimal:
    """Take the signs off a line of sales. A fee that was given back has no place there: it is what this returns."""
    back = goes_back(values)
    if back and not values.get("kind"):
        values["kind"] = BACK[0]
    given_back = Decimal(0)
    if back and exact(values, FEE) < 0:
        given_back = -exact(values, FEE)
        del values[FEE]
    for key in SIGNED:
        if exact(values, key) < 0 and not back:
            raise SignError(key, exact(values, key))
        if key in values:
            values[key] = abs(exact(values, key))
    return given_back


def exact(values: Mapping[str, object], key: str) -> Decimal:
    """A number of a line; 0 where there is none."""
    value = values.get(key)
    if isinstance(value, Decimal):
        return value
    # Fifteen digits, as a workbook keeps them.
    return Decimal(f"{value:.15g}") if isinstance(value, float) else Decimal(0)
