"""Measure: tare, whether a scale is fine enough, and what the weighings of a batch say.

A maker's own check before the candles leave. An inspector's test, its equipment and its edition are the
weights and measures office's.
"""

import math
import statistics
from typing import NamedTuple, Sequence, Tuple

import candlecalc.tables as tables
from candlecalc.calc.label import TOLERABLE, tolerable_negative_error
from candlecalc.calc.sources import unconfirmed
from candlecalc.calc.terms.label import (
    BatchSize,
    Factor,
    Gross,
    Mean,
    MeanError,
    MeanNeeded,
    MeasuringError,
    NetWeight,
    Note,
    SampleSize,
    ScaleStep,
    ShortBy,
    ShortCount,
    Spread,
    Tare,
    Tares,
    Verdict,
    Weighed,
    Weighings,
)
from candlecalc.declaration.declared import formula
from candlecalc.quantities.rounding import round_half_away
from candlecalc.quantities.statistics import t_quantile

GROSS = "NIST Handbook 133 (2026), 2.3.5 and 2.3.6"
WEIGHING_ERROR = "SR (NI) 2011/331, Schedule 2, 1.3; WELMEC Guide 6.9"
REFERENCE_TEST = "UK SI 2006/659, Schedule 2, 3 and 4; Directive 76/211/EEC, Annex II"
HANDBOOK = "NIST Handbook 133 (2026), 2.2 and 2.3; its tables 2-1 and 2-5 from memory"
HANDBOOK_TABLES = unconfirmed("NIST Handbook 133, Appendix A")
READ_AT = (113, 907)  # g: where a variation was read in the handbook's chapter 2
WHOLE_BATCH = 100  # a smaller one is weighed whole
SAMPLE = tables.native_steps("reference_test", "batch", lambda row: row["sample"])


@formula(
    native="AVERAGE(tares)",
    source=GROSS,
    words="weight of empty jars, tare",
)
def average_tare(tares: Tares) -> Tare:
    """Average weight of what is not sold by weight: vessel, lid, wick and label together.

    Weigh two; where they differ, three more.

    >>> average_tare(tares=[212, 214, 213])
    213.0
    """
    return math.fsum(tares) / len(tares)


@formula(
    native="net+tare",
    source=GROSS,
    words="weight with the jar, total weight of a filled jar, target fill weight, scale reading when full",
)
def gross_weight(net: NetWeight, tare: Tare) -> Gross:
    """What a whole package must weigh to hold its declared net weight.

    >>> gross_weight(net=907, tare=14)
    921.0
    """
    return net + tare


@formula(native=f"{TOLERABLE}/5", source=WEIGHING_ERROR, part=True)
def weighing_error_allowed(net: NetWeight) -> MeasuringError:
    """Error that the weighing of a package may have at most, in the EU and GB: a fifth of the tolerable one.

    >>> round(weighing_error_allowed(net=180), 6)
    1.62
    """
    return tolerable_negative_error(net) / 5


class Variation(NamedTuple):
    """A US variation with the coarsest step of a scale for it, and what it rests on."""

    variation: ShortBy
    coarsest_step: ScaleStep
    note: Note


@formula(
    source=HANDBOOK,
    formerly=("variation_us",),
    words="MAV, underweight, tolerance, how short may a candle be, underfilled",
)
def maximum_allowable_variation(net: NetWeight) -> Variation:
    """How far under its declared weight a single package may be in the US, and the coarsest scale step for it.

    Most rows of the handbook's table stand here from memory, and say so.

    >>> maximum_allowable_variation(net=113).coarsest_step
    1.2
    """
    row = tables.row_up_to("allowable_variations", net)
    variation = _variation(net)
    read = row["status"] == "read in the text"
    note = "read at 113 g and 907 g only: check against NIST Handbook 133, Appendix A" if read else HANDBOOK_TABLES
    return Variation(variation, round_half_away(variation / 6, 6), note)


def _variation(net: float) -> float:
    row = tables.row_up_to("allowable_variations", net)
    return float(row["variation"] or 0) or net * float(row["share"])


@formula(
    native="TINV(0.01,count-1)/SQRT(count)",
    requires={"count > 1": "one weighing has no spread"},
    source=REFERENCE_TEST,
    part=True,
)
def mean_factor(count: Weighed) -> Factor:
    """How many standard deviations the mean of a sample may lie under the declared weight (EU and GB test).

    >>> round(mean_factor(count=30), 3)
    0.503
    """
    return t_quantile(0.995, count - 1) / math.sqrt(count)


@formula(
    native=f"IF(batch<{WHOLE_BATCH},batch,{SAMPLE})",
    source=REFERENCE_TEST,
    words="sample size, how many to weigh, how many to check",
)
def packages_to_weigh(batch: BatchSize) -> SampleSize:
    """How many packages of a batch the EU and GB test weighs without opening them; all of a small batch.

    >>> packages_to_weigh(batch=400)
    50.0
    """
    return batch if batch < WHOLE_BATCH else int(tables.row_up_to("reference_test", batch)["sample"])


class BatchTest(NamedTuple):
    """What the weighings of a batch say, with the figures they say it by."""

    verdict: Verdict
    mean: Mean
    mean_needed: MeanNeeded
    short: ShortCount
    short_allowed: ShortCount
    far_short: ShortCount


@formula(
    source=REFERENCE_TEST,
    words="average weight test, average system, underweight batch, fill weights check, target fill",
    notes={"": "in an inspection the inspector's own sample decides"},
)
def batch_test(net: NetWeight, weighings: Weighings, batch: BatchSize) -> BatchTest:
    """The two tests of a batch in the EU and GB, on net weights: its average, and its short packages.

    Weigh as many as `packages_to_weigh` says, taken at random, and type them in that
    order: of a batch from 100 on the average is that of the first 30, from 501 on of the
    first 50, as the schedule has it. A batch that fails is not to be sold under this weight.

    >>> batch_test(net=180, weighings=[181, 179.5, 180.5, 182], batch=4).verdict
    'both tests are met'
    """
    wanted = int(packages_to_weigh(batch))
    if len(weighings) < wanted:
        raise ValueError(f"batch_test: {len(weighings)} weighed; a batch of {batch:g} asks for {wanted}.")
    if len(weighings) > batch:
        raise ValueError(f"batch_test: {len(weighings)} weighed of a batch of {batch:g}.")
    mean, needed, allowed = _planned(net, weighings, batch)
    error = tolerable_negative_error(net)
    under = [round_half_away(net - weighing, 6) for weighing in weighings]
    short, far = sum(by > error for by in under), sum(by > 2 * error for by in under)
    reasons = []
    if round_half_away(mean - needed, 6) < 0:
        reasons.append(f"the average is {mean:.2f} g, under the {needed:.2f} g needed")
    if short > allowed:
        reasons.append(f"{short} are under {net - error:g} g, more than the {allowed} allowed")
    if far:
        reasons.append(f"{far} under {net - 2 * error:g} g may not carry the e mark")
    verdict = "; ".join(reasons) or "both tests are met"
    return BatchTest(verdict, mean, needed, short, allowed, far)


def _planned(net: float, weighings: Sequence[float], batch: float) -> Tuple[float, float, int]:
    """The mean that the plan asks for, the least that it may be, and how many may be short."""
    if batch < WHOLE_BATCH:
        return math.fsum(weighings) / len(weighings), net, math.floor(round_half_away(batch * 0.05, 6))
    row = tables.row_up_to("reference_test", batch)
    averaged = weighings[: int(row["averaged"])]
    needed = net - float(row["factor"]) * statistics.stdev(averaged)
    return math.fsum(averaged) / len(averaged), needed, int(row["short_allowed"])


class LotTest(NamedTuple):
    """What the weighings of a US lot say, with the figures they say it by."""

    verdict: Verdict
    average_error: MeanError
    spread: Spread
    error_limit: ShortBy
    note: Note
    variation: ShortBy
    beyond: ShortCount


@formula(
    source=HANDBOOK,
    words="underweight lot, weights inspector, fill weights check, lot inspection",
)
def lot_test_us(net: NetWeight, weighings: Weighings) -> LotTest:
    """The two requirements of a US lot on the net weights of its sample: its average, and each package by itself.

    Zero or more on average meets the first with no table. What rests on a table that
    stands here from memory, the limit of a minus and most variations of a single
    package, gets no verdict.

    >>> lot_test_us(net=227, weighings=[190, 240, 260]).beyond
    1.0
    """
    if len(weighings) < 2:
        raise ValueError("lot_test_us: one weighing has no spread; weigh two or more.")
    errors = [weighing - net for weighing in weighings]
    average, spread = math.fsum(errors) / len(errors), statistics.stdev(errors)
    limit = spread * t_quantile(0.975, len(errors) - 1) / math.sqrt(len(errors))
    if round_half_away(average, 6) >= 0:
        verdict = "the average is not under the declared weight"
    else:
        side = "within" if -average < limit else "not within"
        verdict = f"no verdict: {-average:.3f} g under on average, {side} a limit of {limit:.3f} g that is from memory"
    variation = _variation(net)
    beyond = sum(round_half_away(-error - variation, 6) > 0 for error in errors)
    verdict += f"; {_on_each(net, variation, beyond, -min(errors))}"
    return LotTest(verdict, average, spread, limit, HANDBOOK_TABLES, variation, beyond)


def _on_each(net: float, variation: float, beyond: int, furthest: float) -> str:
    """What is to be said of single packages: an error over the variation is called unreasonable, 2.3.7.1."""
    read = net in READ_AT
    if not beyond:
        return f"none is more than {variation:g} g under" + ("" if read else f", {HANDBOOK_TABLES}")
    words = f"{beyond} more than {variation:g} g under, the furthest {furthest:.3f} g: "
    return words + ("that is an unreasonable minus error" if read else f"no verdict, {HANDBOOK_TABLES}")
