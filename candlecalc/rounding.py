"""Rounding as spreadsheets round: half away from zero, on the fifteen digits they keep."""

from decimal import ROUND_HALF_UP, Decimal


def round_half_away(amount: float, digits: int = 0) -> float:
    """Round to `digits` decimals, half away from zero.

    >>> round_half_away(1.005, 2), round_half_away(-2.5)
    (1.01, -3.0)
    """
    # Fifteen digits, as spreadsheets keep: 1.005 is stored a hair below and must give 1.01.
    exact = Decimal(f"{amount:.15g}")
    return float(exact.quantize(Decimal(1).scaleb(-int(digits)), ROUND_HALF_UP))
