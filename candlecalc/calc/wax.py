"""Wax: blends of two, and dye."""

from candlecalc.calc.sources import MIXING, PRACTICE
from candlecalc.calc.terms import Density, Dye, DyeShare, Part, Wax
from candlecalc.formula import formula


@formula(native="1/((1-share)/first+share/second)", source=MIXING)
def blend_density(first: Density, second: Density, share: Part) -> Density:
    """Density of two waxes mixed by weight; `share` is the second wax's.

    Volumes are taken to add up, as they do for waxes within a percent or so.

    >>> round(blend_density(first=0.9, second=0.8, share=0.5), 4)
    0.8471
    """
    return 1 / ((1 - share) / first + share / second)


@formula(native="wax*(1-share)", source=PRACTICE)
def first_wax(wax: Wax, share: Part = 0.0) -> Wax:
    """The first of two waxes in a blend; `share` is the second wax's.

    >>> first_wax(wax=1000, share=0.25)
    750.0
    """
    return wax * (1 - share)


@formula(native="wax*share", source=PRACTICE)
def second_wax(wax: Wax, share: Part) -> Wax:
    """The second of two waxes in a blend, by its share.

    >>> second_wax(wax=1000, share=0.25)
    250.0
    """
    return wax * share


@formula(native="wax*share", source=PRACTICE)
def dye_for_wax(wax: Wax, share: DyeShare) -> Dye:
    """Dye to weigh out for a weight of wax.

    >>> dye_for_wax(wax=1000, share=0.0005)
    0.5
    """
    return wax * share
