"""Rounding as spreadsheets round: half away from zero, on the fifteen digits they keep. And to one side of a limit."""

from decimal import ROUND_CEILING, ROUND_FLOOR, ROUND_HALF_UP, Decimal


def round_half_away(amount: float, digits: int = 0) -> float:
    """Round to `digits` decimals, half away from zero.

    >>> round_half_away(1.005, 2), round_half_away(-2.5)
    (1.01, -3.0)
    """
    # Fifteen digits, as spreadsheets keep: 1.005 is stored a hair below and must give 1.01.
    exact = Decimal(f"{amount:.15g}")
    return float(exact.quantize(Decimal(1).scaleb(-int(digits)), ROUND_HALF_UP))


def whole_steps(amount: float) -> float:
    """A number of steps that was worked out, as a whole number: a half that division left a hair short is a half.

    >>> whole_steps(63.3 / 0.2), 63.3 / 0.2
    (317.0, 316.49999999999994)
    """
    return round_half_away(round_half_away(amount, 6))


def round_to(amount: float, digits: int, side: str) -> float:
    """Round to `digits` decimals: "down" never to more than there is, "up" never to less, or to the "nearest".

    >>> round_to(5.263, 1, "down"), round_to(5.203, 1, "up"), round_to(5.263, 1, "nearest")
    (5.2, 5.3, 5.3)
    """
    if side == "nearest":
        return round_half_away(amount, digits)
    # Twelve digits: 0.2/0.8 may be stored a hair below a quarter, and a sum of several farther off.
    exact = Decimal(f"{amount:.12g}")
    return float(exact.quantize(Decimal(1).scaleb(-digits), ROUND_FLOOR if side == "down" else ROUND_CEILING))
