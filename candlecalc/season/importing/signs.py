"""Sales as files write them: a minus is a refund, and the row of ours has no signs."""

from collections.abc import Mapping, MutableMapping
from decimal import Decimal

from candlecalc.season.fields import Value
from candlecalc.season.tables.imports import LINE_PRICE, TURNED

Values = MutableMapping[str, Decimal | Value]
PRICES = ("price", LINE_PRICE)
# What may have a minus; of other columns a minus is a fault, or asks for the sign to be turned.
SIGNED = {*PRICES, "pieces", "discount", "postage", "fee", "payout_sum"}
BACK = ("refund", "returned")
FEE = "fee"


class SignError(ValueError):
    """A minus where none can be meant, with the key of its column."""

    def __init__(self, key: str, words: str) -> None:
        super().__init__(words)
        self.key = key


def goes_back(values: Mapping[str, Decimal | Value]) -> bool:
    """Whether the money of a line goes back to the buyer: its kind says so, or a minus where it has no kind."""
    kind = values.get("kind")
    return kind in BACK if kind else any(_number(values, key) < 0 for key in (*PRICES, "pieces"))


def settled(values: Values) -> Decimal | None:
    """Take the signs off a line of sales; a fee that was given back has no place there, and is what this returns."""
    back = goes_back(values)
    if back and not values.get("kind"):
        values["kind"] = BACK[0]
    fee = _number(values, FEE)
    given_back = -fee if back and fee < 0 else None
    if given_back:
        del values[FEE]
    for key in SIGNED - {"payout_sum"}:
        number = _number(values, key)
        if number < 0 and not back:
            words = f'it is {number} on a line that is no refund. Where they write it with a minus, say "{TURNED}" on Imports'
            raise SignError(key, words)
        if key in values:
            values[key] = abs(number)
    return given_back


def _number(values: Mapping[str, Decimal | Value], key: str) -> Decimal:
    number = values.get(key)
    return number if isinstance(number, Decimal) else Decimal(0)
