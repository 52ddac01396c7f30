"""Wax: what a blend of two is like."""

from candlecalc.calc.sources import MIXING
from candlecalc.calc.terms import Density, Part
from candlecalc.formula import formula


@formula(native="1/((1-share)/first+share/second)", source=MIXING)
def blend_density(first: Density, second: Density, share: Part) -> Density:
    """Density of two waxes mixed by weight; `share` is the second wax's.

    Volumes are taken to add up, as they do for waxes within a percent or so.

    >>> round(blend_density(first=0.9, second=0.8, share=0.5), 4)
    0.8471
    """
    return 1 / ((1 - share) / first + share / second)
