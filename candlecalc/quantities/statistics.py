"""Quantiles of the normal and of Student's t, and a straight line through readings, on the standard library alone."""

import math
from statistics import NormalDist
from typing import NamedTuple, Optional, Sequence, Tuple

# Steps enough for any tail and any degrees of freedom here; a fraction or a search ends well before.
STEPS = 10_000


def normal_quantile(below: float) -> float:
    """The value with a share `below` of a standard normal distribution below it.

    >>> round(normal_quantile(0.975), 6)
    1.959964
    """
    return NormalDist().inv_cdf(below)


def t_quantile(below: float, freedom: float) -> float:
    """The value with a share `below` of Student's t distribution below it, for so many degrees of freedom.

    For an interval that holds a share of 0.95, both ends alike, ask for 0.975.

    >>> round(t_quantile(0.975, 17), 4)
    2.1098
    """
    if not 0 < below < 1 or not 0 < freedom < math.inf:
        raise ValueError("t_quantile: below lies between 0 and 1, and freedom is more than 0.")
    if below < 0.5:
        return -t_quantile(1 - below, freedom)
    tails, t = 2 * (1 - below), 0.0
    # What is left in the two tails falls ever more slowly as t grows, so Newton's steps come up to the
    # answer from below and never pass it; the first that is lost in rounding, or turns back, is the last.
    for _ in range(STEPS):
        step = (_tails(t, freedom) - tails) / (2 * _height(t, freedom))
        if t + step <= t:
            break
        t += step
    return t


class Line(NamedTuple):
    """A straight line through readings by least squares."""

    readings: int
    across: float  # the mean of what was set: hours
    up: float  # the mean of what was read: weights
    spread: float  # the sum of squares about the first mean
    slope: float
    scatter: float  # of a reading about the line; 0 where two readings leave none

    def at(self, x: float) -> float:
        """The height of the line."""
        return self.up + self.slope * (x - self.across)

    def slope_swing(self, confidence: float) -> float:
        """How far the slope may lie either side, at this confidence; from three readings on."""
        return self._t(confidence) * self.scatter / math.sqrt(self.spread)

    def where(self, y: float) -> float:
        """Where the line comes to a height; it must not be level."""
        return self.across + (y - self.up) / self.slope

    def where_between(self, y: float, confidence: float) -> Optional[Tuple[float, float]]:
        """Between which two places a reading would be `y`; None where the slope might as well be level.

        These are where the band that holds a reading to come, around the line, lets `y` in and out: the
        exact (Fieller) interval, which opens as the line is drawn on beyond its readings.
        """
        level = (self.slope_swing(confidence) / self.slope) ** 2
        if level >= 1:
            return None
        away = (y - self.up) / self.slope
        swing = self._t(confidence) * self.scatter / abs(self.slope)
        half = swing * math.sqrt((1 + 1 / self.readings) * (1 - level) + away**2 / self.spread)
        return self.across + (away - half) / (1 - level), self.across + (away + half) / (1 - level)

    def _t(self, confidence: float) -> float:
        return t_quantile((1 + confidence) / 2, self.readings - 2)


def line(xs: Sequence[float], ys: Sequence[float]) -> Line:
    """The line through two readings or more, not all at one place.

    >>> line([0, 1, 2], [5, 7, 9]).slope
    2.0
    """
    across, up = math.fsum(xs) / len(xs), math.fsum(ys) / len(ys)
    spread = math.fsum((x - across) ** 2 for x in xs)
    slope = math.fsum((x - across) * (y - up) for x, y in zip(xs, ys)) / spread
    left = math.fsum((y - up - slope * (x - across)) ** 2 for x, y in zip(xs, ys))
    scatter = math.sqrt(left / (len(xs) - 2)) if len(xs) > 2 else 0.0
    return Line(len(xs), across, up, spread, slope, scatter)


def _tails(t: float, freedom: float) -> float:
    """The share of the distribution beyond t and -t together: an incomplete beta function."""
    if t == 0:
        return 1.0
    far, near, half = freedom / (freedom + t * t), t * t / (freedom + t * t), freedom / 2
    front = math.exp(half * math.log(far) + math.log(near) / 2 - _log_beta(half))
    # The fraction comes to its end soon only on one side of the peak.
    if far < (half + 1) / (half + 2.5):
        return front / half * _beta_fraction(far, half, 0.5)
    return 1 - 2 * front * _beta_fraction(near, 0.5, half)


def _height(t: float, freedom: float) -> float:
    return math.exp(-(freedom + 1) / 2 * math.log1p(t * t / freedom) - _log_beta(freedom / 2)) / math.sqrt(freedom)


def _log_beta(a: float) -> float:
    """The logarithm of the beta function of a and a half."""
    if a > 100:  # a difference of two large logarithms would lose digits
        return (math.log(math.pi / a) + 1 / (4 * a) - 1 / (96 * a**3)) / 2
    return math.lgamma(a) + math.log(math.pi) / 2 - math.lgamma(a + 0.5)


def _beta_fraction(x: float, a: float, b: float) -> float:
    """The continued fraction of the incomplete beta function (DLMF 8.17.22), by Lentz's method."""
    value, up, down = 1.0, 1.0, 0.0
    for step in range(1, STEPS):
        m, odd = divmod(step, 2)
        top = -(a + m) * (a + b + m) if odd else m * (b - m)
        part = top * x / ((a + step) * (a + step - 1))
        up, down = 1 + part / up, 1 / (1 + part * down)
        value *= up * down
        if abs(up * down - 1) < 1e-16:
            break
    return 1 / value
