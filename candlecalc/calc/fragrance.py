"""Fragrance: oil and wax by load, blends of oils, and the highest load that is allowed."""

import math
from typing import Annotated, Dict, List, NamedTuple

from candlecalc.calc.sources import BLEND_LIMIT, MASS_PERCENT, MIXING, PRACTICE, RESOLUTION
from candlecalc.calc.terms import (
    DecidedBy,
    Fill,
    Highest,
    HighestLoad,
    HighestShare,
    Limit,
    Limits,
    Load,
    LoadBasis,
    LoadEnd,
    LoadSwing,
    Oil,
    OilHighest,
    Part,
    Parts,
    Step,
    TotalShare,
    Wax,
    WaxHighest,
)
from candlecalc.calc.terms.making import LoadNow, LoadWanted, OilBasis, WaxBasis
from candlecalc.declaration.declared import Term, formula
from candlecalc.quantities.rounding import round_half_away, whole_steps

Oils = Annotated[List[float], Term("g", "each oil to weigh out, in the order of the shares", many=True)]

# A third of the finished candle is a load of 0.5 on wax, the most that any function here takes.
MOST_OF_TOTAL = 1 / 3
ADD_UP = {"ROUND(SUM(shares),6) = 1": "the shares must add up to 1"}


@formula(
    native="wax*load",
    source=PRACTICE,
    words="fragrance load percentage, "
    "fragrance load 8%, scent load, how much fragrance oil, ounces of oil per pound of wax, essential "
    "oils, how much scent, how much "
    "oil, oil for a pound of wax, test batch, fragrance calculator, percent to grams",
)
def oil_for_wax(wax: Wax, load: Load) -> Oil:
    """Fragrance oil to weigh out for a weight of wax.

    Load is on wax, so the pour is heavier than the wax that went in: 500 g at
    8 % pours 540 g. For oil out of a finished fill use `oil_for_fill`.

    >>> oil_for_wax(wax=500, load=0.08)
    40.0
    """
    return wax * load


@formula(
    native="oil/load",
    requires={"load > 0": "load must be more than 0"},
    source=PRACTICE,
    words="use up a bottle of oil, how much wax for this oil, leftover oil",
)
def wax_for_oil(oil: Oil, load: Load) -> Wax:
    """Wax that a weight of oil is enough for, to use a bottle up.

    >>> wax_for_oil(oil=40, load=0.08)
    500.0
    """
    return oil / load


@formula(
    native="fill*load/(1+load)",
    source=MASS_PERCENT,
    words="oil for a jar, oil per candle, oil for an eight ounce candle, fragrance in one candle",
)
def oil_for_fill(fill: Fill, load: Load) -> Oil:
    """Fragrance oil in a finished fill of wax and oil together.

    >>> oil_for_fill(fill=540, load=0.08)
    40.0
    """
    return fill * load / (1 + load)


@formula(
    native="fill/(1+load)",
    source=MASS_PERCENT,
    words="wax for a jar, wax per candle, wax in one candle, refill, refilling a jar, how much wax per candle",
)
def wax_for_fill(fill: Fill, load: Load) -> Wax:
    """Wax in a finished fill of wax and oil together.

    >>> wax_for_fill(fill=250, load=0.25)
    200.0
    """
    return fill / (1 + load)


@formula(
    native="load/(1+load)",
    source=MASS_PERCENT,
    words="percent of wax vs total, load on wax or on total, "
    "oil as a share of the whole candle, fragrance percentage of total",
)
def share_of_total(load: Load) -> TotalShare:
    """Share of the finished candle that a load on wax comes to.

    The two are easily mixed up: 10 % of the wax is 9.09 % of the candle.

    >>> round(share_of_total(load=0.1), 4)
    0.0909
    """
    return load / (1 + load)


@formula(
    native="share/(1-share)",
    source=MASS_PERCENT,
    words="share of candle to load, percentage of total to load",
)
def load_from_share(share: TotalShare) -> Load:
    """Load on wax that a share of the finished candle comes to.

    >>> load_from_share(share=0.2)
    0.25
    """
    return share / (1 - share)


@formula(
    native="oil/wax",
    requires={"wax > 0": "wax must be more than 0"},
    source=PRACTICE,
    words="what load did I use, fo percentage, fragrance percentage, percentage of oil I used, actual load",
)
def load_measured(wax: Wax, oil: Oil) -> Load:
    """Load that a pot of wax really got, from the two weighings.

    >>> load_measured(wax=200, oil=16)
    0.08
    """
    return oil / wax


class OnScale(NamedTuple):
    """What to weigh out on a scale of this step, and the load you get."""

    wax: Wax
    oil: Oil
    load: Load
    lowest: LoadEnd
    highest: LoadEnd


@formula(
    requires={"wax > step": "the wax must weigh more than one step of the scale"},
    source=f"to the nearest step: {PRACTICE}; {RESOLUTION}",
    words="scale accuracy, is my scale good enough, rounding grams, can my scale weigh it, scale resolution, "
    "weighing error, kitchen scale, round to my scale, precision",
)
def load_on_scale(wax: Wax, load: Load, step: Step) -> OnScale:
    """Load that a pot gets on a scale of this step: the load it shows, and the range of the true one.

    A scale in whole grams is coarse for a small pot: 16 g of oil in 200 g of wax
    can be anything from 7.7 % to 8.3 %.

    >>> round(load_on_scale(wax=200, load=0.08, step=1).highest, 4)
    0.0827
    """
    shown_wax, shown_oil = (round_half_away(whole_steps(each / step) * step, 9) for each in (wax, wax * load))
    lowest = max(0.0, shown_oil - step / 2) / (shown_wax + step / 2)
    highest = (shown_oil + step / 2) / (shown_wax - step / 2)
    return OnScale(shown_wax, shown_oil, shown_oil / shown_wax, lowest, highest)


@formula(
    native="(oil+step/2)/(wax-step/2)-oil/wax",
    requires={"wax > step": "the wax must weigh more than one step of the scale"},
    source=RESOLUTION,
    part=True,
)
def load_swing(wax: Wax, oil: Oil, step: Step) -> LoadSwing:
    """How far the scale's step can move the load: both readings half a step off, the worst way.

    A scale in whole grams is coarse for a small pot: 16 g of oil in 200 g of wax
    can be anything from 7.7 % to 8.3 %.

    >>> round(load_swing(wax=200, oil=16, step=1), 4)
    0.0027
    """
    return (oil + step / 2) / (wax - step / 2) - oil / wax


@formula(
    native="ROUND(ROUND(wax*load/step,6),0)/ROUND(ROUND(wax/step,6),0)",
    requires={"wax >= step": "the wax must weigh at least one step of the scale"},
    source=PRACTICE,
    part=True,
)
def load_after_rounding(wax: Wax, load: Load, step: Step) -> Load:
    """Load that a pot gets when wax and oil are weighed to the scale's step.

    >>> load_after_rounding(wax=100, load=0.065, step=1)
    0.07
    """
    return whole_steps(wax * load / step) / whole_steps(wax / step)


@formula(native="oil*share", source=PRACTICE, part=True)
def oil_part(oil: Oil, share: Part) -> Oil:
    """One oil out of a blend, by its share of the blend.

    >>> oil_part(oil=40, share=0.75)
    30.0
    """
    return oil * share


@formula(
    requires=ADD_UP,
    source=PRACTICE,
    words="blend two oils, mix fragrance oils, fragrance blend ratio, scent blend, oils in a ratio",
)
def oil_parts(oil: Oil, shares: Parts) -> Oils:
    """Weight of each oil in a blend, from shares that must add up to 1.

    >>> oil_parts(oil=40, shares=[0.5, 0.25, 0.25])
    [20.0, 10.0, 10.0]
    """
    return [oil * share for share in shares]


@formula(native='highest/(1-highest*(basis="of total"))', source=MASS_PERCENT, part=True)
def highest_on_wax(highest: Highest, basis: LoadBasis = "of wax") -> HighestLoad:
    """The supplier's highest load as a load on wax, whichever way it was stated.

    >>> highest_on_wax(highest=0.2, basis="of total")
    0.25
    """
    return highest / (1 - highest * (basis == "of total"))


@formula(native='highest/(1+highest*(basis<>"of total"))', source=MASS_PERCENT, part=True)
def highest_of_total(highest: Highest, basis: LoadBasis = "of wax") -> HighestShare:
    """The supplier's highest load as a share of the finished candle, whichever way it was stated.

    >>> highest_of_total(highest=0.25, basis="of wax")
    0.2
    """
    return highest / (1 + highest * (basis == "of wax"))


@formula(
    native="MIN(limit,1/3)/(1-MIN(limit,1/3))",
    source=BLEND_LIMIT,
    words="ifra limit, ifra category, ifra certificate, certificate limit, maximum load, max percentage, highest load",
)
def load_at_limit(limit: Limit) -> HighestLoad:
    """Load on wax at which a certified limit in the finished candle is reached, counted up to 0.5.

    One limit of several, not a go-ahead: where a certificate sets none (100 %) it says
    nothing, and 0.5 is only where this stops counting. What the
    suppliers of wax and oil state may be lower: `highest_load` takes all three.

    >>> load_at_limit(limit=0.2)
    0.25
    """
    return min(limit, MOST_OF_TOTAL) / (1 - min(limit, MOST_OF_TOTAL))


# A supplier's highest load as a load on wax, and a certificate's limit as `load_at_limit` has it.
OF_WAX = 'wax/(1-wax*(wax_basis="of total"))'
OF_OIL = 'oil/(1-oil*(oil_basis="of total"))'
AT_LIMIT = "MIN(limit,1/3)/(1-MIN(limit,1/3))"
MOST = 0.5  # on wax, the most that any function here takes


@formula(
    native=f"MIN({OF_WAX},{OF_OIL},{AT_LIMIT},{MOST})",
    source=PRACTICE,
    words="max fragrance load, maximum load, how much oil can wax hold, most oil, ifra limit, ifra certificate, "
    "too much oil, highest load, scent too weak",
)
def highest_load(
    wax: WaxHighest, oil: OilHighest, limit: Limit, wax_basis: WaxBasis = "of wax", oil_basis: OilBasis = "of wax"
) -> HighestLoad:
    """Highest load on wax: the lowest of those stated for the wax, for the oil and in the oil's certificate.

    It uses only what you typed: burn tests, the law and the data sheets may put the
    load lower. `highest_load_decided_by` says which of the three
    decides. For a blend of oils take `limit_of_blend` first.

    >>> round(highest_load(wax=0.1, oil=0.12, limit=0.05), 4)
    0.0526
    """
    return min(*_three(wax, oil, limit, wax_basis, oil_basis).values(), MOST)


@formula(
    no_native="its answer is words",
    source=PRACTICE,
    words="which limit applies, why that maximum",
)
def highest_load_decided_by(
    wax: WaxHighest, oil: OilHighest, limit: Limit, wax_basis: WaxBasis = "of wax", oil_basis: OilBasis = "of wax"
) -> DecidedBy:
    """Which limit decides the highest load: the wax's supplier, the oil's supplier or the certificate.

    >>> highest_load_decided_by(wax=0.1, oil=0.12, limit=0.05)
    'the certificate'
    """
    loads = _three(wax, oil, limit, wax_basis, oil_basis)
    lowest = min(loads.values())
    # By more than rounding: 20 % of the candle is 25 % of the wax.
    deciding = [which for which, load in loads.items() if round_half_away(load - lowest, 9) == 0]
    if round_half_away(lowest - MOST, 9) >= 0 and len(deciding) == len(loads):
        return f"none of the three: no load above {MOST:.0%} of wax weight is counted with"
    first, last = deciding[:-1], deciding[-1]
    return f"{', '.join(first)} and {last}" if first else last


def _three(wax: float, oil: float, limit: float, wax_basis: str, oil_basis: str) -> Dict[str, float]:
    """Each limit as a load on wax, no higher than is counted with."""
    return {
        "the wax's supplier": min(MOST, wax / (1 - wax * (wax_basis == "of total"))),
        "the oil's supplier": min(MOST, oil / (1 - oil * (oil_basis == "of total"))),
        "the certificate": min(limit, MOST_OF_TOTAL) / (1 - min(limit, MOST_OF_TOTAL)),
    }


@formula(
    native="MIN(1,1/SUMPRODUCT(shares/limits))",
    requires=ADD_UP,
    source=BLEND_LIMIT,
    words="ifra limit of a blend, certificate of a mix of oils, blend limit, certificate, highest load of a blend",
)
def limit_of_blend(shares: Parts, limits: Limits) -> Limit:
    """Highest share of a blend of oils in the finished candle, by each oil's certified limit.

    This holds even where two oils share a restricted material; the lowest limit divided
    by share does not. The shares must add up to 1.

    >>> round(limit_of_blend(shares=[0.7, 0.3], limits=[0.2, 0.05]), 4)
    0.1053
    """
    return min(1.0, 1 / math.fsum(share / limit for share, limit in zip(shares, limits)))


@formula(
    native="scented*(wanted-load)/(1+load)",
    requires={"wanted >= load": "the wanted load must not be below the load it has; to lower it use wax_to_lower_load"},
    source=MIXING,
    words="too little oil, add more fragrance, scent too weak, weak scent, fix a batch, increase the load",
)
def oil_to_raise_load(scented: Fill, load: LoadNow, wanted: LoadWanted) -> Oil:
    """Oil to add to wax that is already scented, to bring it up to a higher load.

    >>> round(oil_to_raise_load(scented=540, load=0.08, wanted=0.1), 6)
    10.0
    """
    return scented * (wanted - load) / (1 + load)


@formula(
    native="scented/(1+load)*(load/wanted-1)",
    requires={
        "wanted > 0": "the wanted load must be more than 0",
        "wanted <= load": "the wanted load must not be above the load it has; to raise it use oil_to_raise_load",
    },
    source=MIXING,
    words="too much oil, over poured oil, put too much fragrance in, fix a batch, dilute, lower the load, scent "
    "too strong",
)
def wax_to_lower_load(scented: Fill, load: LoadNow, wanted: LoadWanted) -> Wax:
    """Plain wax to add to wax that is already scented, to bring it down to a lower load.

    >>> round(wax_to_lower_load(scented=550, load=0.1, wanted=0.08), 6)
    125.0
    """
    return scented / (1 + load) * (load / wanted - 1)
