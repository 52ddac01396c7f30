"""Batch: weighing out to the scale's step, pots, pieces, and what is on hand."""

import math

from candlecalc.calc.sources import ALGEBRA, PRACTICE
from candlecalc.calc.terms import Candles, Pieces, Pots, Quantity, Weight
from candlecalc.calc.terms.making import (
    AllOfEach,
    CandlesToMake,
    InThePot,
    IntoEach,
    PartOfEach,
    PiecesEach,
    PotHolds,
    PotsFull,
    QuantityNeeded,
    QuantityThere,
    ScaleShows,
    ThereIs,
    WholeMelt,
)
from candlecalc.declaration.declared import formula
from candlecalc.quantities.rounding import round_half_away, whole_steps

STEP = {"step > 0": "step must be more than 0"}


@formula(native="ROUND(ROUND(weight/step,6),0)*step", requires=STEP, source=PRACTICE, part=True)
def to_scale_step(weight: Weight, step: ScaleShows) -> Weight:
    """A weight as the scale can show it: the nearest whole number of steps.

    >>> to_scale_step(weight=41.27, step=0.5)
    41.5
    """
    return whole_steps(weight / step) * step


@formula(
    native="ROUND(ROUND(each*count/step,6),0)*step",
    requires=STEP,
    source=PRACTICE,
    words="scale a recipe, scale up a recipe, double the batch, batch weights, make a bigger batch, wax for so "
    "many candles, test batch, how much wax for candles",
)
def weigh_out(each: IntoEach, count: CandlesToMake, step: ScaleShows) -> Weight:
    """What to weigh out for a batch, to the scale's step.

    >>> weigh_out(each=15.52, count=24, step=0.5)
    372.5
    """
    return whole_steps(each * count / step) * step


@formula(
    native="INT(ROUND(melt/pot,6))", requires={"pot > 0": "the pot must hold more than 0"}, source=PRACTICE, part=True
)
def full_pots(melt: WholeMelt, pot: PotHolds) -> Pots:
    """Full pots in a melt, by the most that one pot holds.

    >>> full_pots(melt=7040, pot=3200)
    2.0
    """
    return math.floor(round_half_away(melt / pot, 6))


@formula(native="MAX(0,ROUND(melt-pots*pot,6))", source=PRACTICE, part=True)
def last_pot(melt: WholeMelt, pots: PotsFull, pot: PotHolds) -> Weight:
    """What is left for the last pot after the full ones; nothing where they take it all.

    >>> last_pot(melt=7040, pots=2, pot=3200)
    640.0
    """
    return max(0.0, round_half_away(melt - pots * pot, 6))


@formula(
    native="ROUND(ROUND(each*pot/melt/step,6),0)*step",
    requires={**STEP, "melt > 0": "melt must be more than 0"},
    source=PRACTICE,
    part=True,
)
def weigh_for_pot(each: PartOfEach, pot: InThePot, melt: AllOfEach, step: ScaleShows) -> Weight:
    """How much of one part goes into a pot, to the scale's step: a candle needs `each` out of `melt`.

    >>> weigh_for_pot(each=16, pot=2160, melt=216, step=1)
    160.0
    """
    return whole_steps(each * pot / melt / step) * step


@formula(
    native="melt/pots",
    requires={"pots > 0": "pots must be more than 0"},
    source=PRACTICE,
    words="share a melt over pots, even pots, same size pots, split the batch into pots",
)
def equal_pot(melt: Weight, pots: Pots) -> Weight:
    """What each pot holds where a melt is shared out evenly, so that every pot can be stirred and weighed alike.

    `pots_needed` says how many pots a melt takes.

    >>> equal_pot(melt=7040, pots=3)
    2346.6666666666665
    """
    return melt / pots


@formula(
    native="ROUNDUP(ROUND(count/INT(ROUND(pot/each,6)),6),0)",
    requires={
        "each > 0": "each must be more than 0",
        "pot >= each": "the pot must hold one candle at least",
        "pot <= 100000*each": "no pot holds more than 100,000 candles",
    },
    source=PRACTICE,
    words="how many pots, how many pours, pots for a batch, pitchers, pouring pitchers, melter too small",
)
def pots_for_candles(count: CandlesToMake, each: IntoEach, pot: PotHolds) -> Pots:
    """Pots to melt for a batch where no candle is filled from two of them.

    Each pot is for whole candles, so it may take more pots than the wax alone
    would: three candles to a pot that has room for three and a half.

    >>> pots_for_candles(count=24, each=220, pot=800)
    8.0
    """
    return math.ceil(round_half_away(count / math.floor(round_half_away(pot / each, 6)), 6))


@formula(
    native="ROUNDUP(ROUND(count/pots,6),0)",
    requires={"pots > 0": "pots must be more than 0"},
    source=PRACTICE,
    words="candles from one pot, share candles over pots, split the batch into pots, candles in each pour",
)
def candles_a_pot(count: CandlesToMake, pots: Pots) -> Candles:
    """Candles that a pot is for, where a batch is shared evenly over pots in whole candles.

    Where it does not come out even, some pots are for one candle fewer:
    `pots_with_one_fewer` says how many.

    >>> candles_a_pot(count=50, pots=8)
    7.0
    """
    return math.ceil(round_half_away(count / pots, 6))


@formula(
    native="pots*ROUNDUP(ROUND(count/pots,6),0)-count",
    requires={"pots > 0": "pots must be more than 0"},
    source=ALGEBRA,
    part=True,
)
def pots_with_one_fewer(count: CandlesToMake, pots: Pots) -> Pots:
    """Pots that are for one candle fewer than `candles_a_pot` says; none where the batch comes out even.

    >>> pots_with_one_fewer(count=50, pots=8)
    6.0
    """
    return pots * candles_a_pot(count, pots) - count


@formula(native="weight*pots", source=ALGEBRA, part=True)
def weight_in_pots(weight: Weight, pots: Pots) -> Weight:
    """What is weighed out in all, where each pot takes the same weight, to the scale's step.

    >>> weight_in_pots(weight=2173, pots=3)
    6519.0
    """
    return weight * pots


@formula(
    native="each*count",
    source=ALGEBRA,
    part=True,
    words="how many wicks, how many lids, how many labels, wick stickers, wick tabs, sustainers",
)
def pieces_for(each: PiecesEach, count: CandlesToMake) -> Pieces:
    """Pieces to count out for a batch.

    >>> pieces_for(each=2, count=24)
    48.0
    """
    return each * count


@formula(native="MAX(0,needed-on_hand)", source=ALGEBRA, part=True)
def short_by(needed: QuantityNeeded, on_hand: QuantityThere) -> Quantity:
    """How much is missing; nothing where there is enough.

    >>> short_by(needed=24, on_hand=20)
    4.0
    """
    return max(0, needed - on_hand)


@formula(
    native="INT(ROUND(available/each,6))",
    requires={"each > 0": "each must be more than 0"},
    source=PRACTICE,
    words="candles left from stock, "
    "how many candles can I make, candles from a bag of wax, candles out of ten pounds of wax, tealights, "
    "votives, melts from a kilo",
)
def enough_for(available: ThereIs, each: IntoEach) -> Candles:
    """How many candles you can make from what is on hand, at one weight for each.

    >>> enough_for(available=2000, each=160)
    12.0
    """
    return math.floor(round_half_away(available / each, 6))
