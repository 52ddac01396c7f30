"""Wax: blends, dye, and how it draws together as it sets."""

import math

from candlecalc.calc.sources import EXPANSION, HEAT_BALANCE, MIXING, PRACTICE, SETTING
from candlecalc.calc.terms import Coloured, Cuts, Density, Dye, DyePieces, DyeShare, Fill, Part, Wax
from candlecalc.calc.terms.heat import (
    Densities,
    Expansion,
    HotDensity,
    LatentHeat,
    LatentHeats,
    MeasuredAt,
    SetDensity,
    Shrinkage,
    SpecificHeat,
    SpecificHeats,
    TopUp,
    WantedAt,
    Waxes,
    WaxShares,
)
from candlecalc.calc.terms.making import FirstDensity, SecondDensity
from candlecalc.declaration.declared import formula
from candlecalc.quantities.rounding import whole_steps

ADD_UP = {"ROUND(SUM(shares),6) = 1": "the shares must add up to 1"}


@formula(native="1/((1-share)/first+share/second)", source=MIXING, part=True)
def blend_density(first: FirstDensity, second: SecondDensity, share: Part) -> Density:
    """Density of two waxes mixed by weight; `share` is the second wax's.

    Volumes are taken to add up, as they do for waxes within a percent or so.

    >>> round(blend_density(first=0.9, second=0.8, share=0.5), 4)
    0.8471
    """
    return 1 / ((1 - share) / first + share / second)


@formula(native="wax*(1-share)", source=PRACTICE, part=True)
def first_wax(wax: Wax, share: Part = 0.0) -> Wax:
    """The first of two waxes in a blend; `share` is the second wax's.

    >>> first_wax(wax=1000, share=0.25)
    750.0
    """
    return wax * (1 - share)


@formula(native="wax*share", source=PRACTICE, part=True)
def second_wax(wax: Wax, share: Part) -> Wax:
    """The second of two waxes in a blend, by its share.

    >>> second_wax(wax=1000, share=0.25)
    250.0
    """
    return wax * share


@formula(
    native="wax*share",
    source=PRACTICE,
    words="dye amount, how much colour, color, dye chips, liquid dye, colouring, pigment, mica",
)
def dye_for_wax(wax: Wax, share: DyeShare) -> Dye:
    """Dye to weigh out for a weight of wax.

    >>> dye_for_wax(wax=1000, share=0.0005)
    0.5
    """
    return wax * share


@formula(
    native="ROUND(ROUND(wax/coloured*cuts,6),0)/cuts",
    source=PRACTICE,
    words="dye block, dye chips, colour block, dye chip, how many dye chips, dye chips per pound, colour "
    "blocks, color block",
)
def dye_pieces(wax: Wax, coloured: Coloured, cuts: Cuts = 1.0) -> DyePieces:
    """Pieces of dye (blocks, chips) for a melt, by how much wax one piece colours, to the nearest half or quarter.

    >>> dye_pieces(wax=1000, coloured=450, cuts=4)
    2.25
    """
    return whole_steps(wax / coloured * cuts) / cuts


@formula(
    requires=ADD_UP,
    source=PRACTICE,
    words="wax blend ratio, blend by weight, 70 30 blend, wax blend, blend of waxes, soy and coconut, soy "
    "coconut blend, additive, additives, stearic acid, "
    "polymer additive, UV inhibitor, beeswax and soy, hardener, recipe in parts, formula in percent",
)
def wax_parts(wax: Wax, shares: WaxShares) -> Waxes:
    """Every wax and additive of a blend, from the shares; the shares must add up to 1.

    >>> wax_parts(wax=1000, shares=[0.7, 0.25, 0.05])
    [700.0, 250.0, 50.0]
    """
    return [wax * share for share in shares]


@formula(
    native="1/SUMPRODUCT(shares/densities)",
    requires=ADD_UP,
    source=MIXING,
    words="density of a blend, specific gravity of a mix",
)
def mixed_density(shares: WaxShares, densities: Densities) -> Density:
    """Density of several waxes and additives mixed by weight; the shares must add up to 1.

    Volumes are taken to add up, as they do for waxes within a percent or so.
    The mean of the densities by weight comes out too high.

    >>> round(mixed_density(shares=[0.7, 0.3], densities=[0.9, 0.96]), 4)
    0.9172
    """
    return 1 / math.fsum(share / density for share, density in zip(shares, densities))


@formula(
    native="SUMPRODUCT(shares,heats)",
    requires=ADD_UP,
    source=HEAT_BALANCE,
    words="heat capacity of a blend",
)
def mixed_specific_heat(shares: WaxShares, heats: SpecificHeats) -> SpecificHeat:
    """Specific heat of several waxes and additives mixed by weight, all set or all melted.

    >>> round(mixed_specific_heat(shares=[0.75, 0.25], heats=[2.2, 2.0]), 4)
    2.15
    """
    return math.fsum(share * heat for share, heat in zip(shares, heats))


@formula(
    native="SUMPRODUCT(shares,heats)",
    requires=ADD_UP,
    source=HEAT_BALANCE,
    words="heat of fusion of a blend",
)
def mixed_latent_heat(shares: WaxShares, heats: LatentHeats) -> LatentHeat:
    """Heat that melts a kilogram of a blend, from each wax's own.

    A blend melts over a range, and waxes that dissolve in each other take up a
    little more or less than this; a figure measured on the blend beats it.

    >>> mixed_latent_heat(shares=[0.75, 0.25], heats=[190, 210])
    195.0
    """
    return math.fsum(share * heat for share, heat in zip(shares, heats))


@formula(
    native="density/(1+expansion*(temperature-measured))",
    source=EXPANSION,
    words="density of melted wax, specific gravity, wax density, soy wax density",
)
def liquid_density(
    density: Density, measured: MeasuredAt, temperature: WantedAt, expansion: Expansion = 0.00085
) -> Density:
    """Density of melted wax at another temperature than the one it was measured at.

    Poured 15 C hotter, the same mark holds 1.3 % less. Both temperatures must
    lie above the melting range: setting changes the density far more.

    >>> round(liquid_density(density=0.86, measured=70, temperature=85), 4)
    0.8492
    """
    return density / (1 + expansion * (temperature - measured))


@formula(
    native="1-hot/cold",
    requires={"hot <= cold": "set wax cannot be lighter than melted wax"},
    source=SETTING,
    words="shrinkage, sinkholes, wax sinks, sinks around the wick, contraction, wax pulls away, dips",
)
def setting_shrinkage(hot: HotDensity, cold: SetDensity) -> Shrinkage:
    """How much a wax shrinks from the pour until it has set and cooled, from two densities.

    >>> round(setting_shrinkage(hot=0.8, cold=0.9), 4)
    0.1111
    """
    return 1 - hot / cold


@formula(
    native="fill*shrinkage",
    source=SETTING,
    words="second pour, top up, sinkholes, holes around the wick, repour, top off, level top",
)
def top_up_pour(fill: Fill, shrinkage: Shrinkage = 0.1) -> TopUp:
    """Scented wax to keep back for a second pour that brings a vessel up to its first level again.

    This is the most it can need: a gap at the glass or an even drop in level needs no
    filling. A tenth is a guess until you have weighed your own.

    >>> top_up_pour(fill=220, shrinkage=0.08)
    17.6
    """
    return fill * shrinkage
