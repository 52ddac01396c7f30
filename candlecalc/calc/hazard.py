"""Hazard classes of a candle from section 3 of its oils' data sheets, by the limits of the EU.

How lines are read and classes found: `candlecalc.calc.datasheet`. Here are the questions a maker asks.
"""

import math
from typing import List, NamedTuple, Optional

from candlecalc.calc.datasheet.answers import shown
from candlecalc.calc.datasheet.findings import NOTHING_TYPED, HazardFound, found_in, notes_of
from candlecalc.calc.datasheet.lines import lines_of
from candlecalc.calc.datasheet.mixture import candle, described, named
from candlecalc.calc.datasheet.substance import Line
from candlecalc.calc.sources import CLP, MASS_PERCENT
from candlecalc.calc.terms import Load, ShareOfCandle
from candlecalc.calc.terms.hazard import (
    Adding,
    Change,
    Classes,
    ClassLimit,
    Concentrations,
    Dilutions,
    InOil,
    LoadReached,
    Loads,
    MFactor,
    Note,
    OilNumbers,
    Read,
    Region,
    Specifics,
    Substances,
    Typed,
    Uncertainty,
    Unread,
    Upper,
    Viscosity,
    WaterTest,
    WaterToxicity,
)
from candlecalc.declaration.declared import formula
from candlecalc.quantities.rounding import round_half_away

# Table 1.2: up to this share of the mixture, so much change of it.
DRIFT = [(0.025, 0.3), (0.1, 0.2), (0.25, 0.1), (1.0, 0.05)]


class LineRead(NamedTuple):
    """A line of the data sheet as it was read."""

    substance: Typed
    upper: Upper
    classes: Read
    specifics: Read
    unread: Unread
    note: Note


@formula(
    source="how data sheets print section 3: Regulation (EU) 2020/878, 3.2; common practice, no source",
    words="SDS, MSDS, safety data sheet, read section 3, data sheet lines, composition",
)
def hazard_lines(
    substances: Substances,
    concentrations: Concentrations,
    classes: Classes,
    specifics: Specifics = None,
) -> List[LineRead]:
    """Each line of a data sheet's section 3 as it is read here, with what was not read.

    Look these over before asking for the classes: what is not read is not counted.
    The upper end of a range is used. A bare number above 1 is read as %; up to 1 it may be a share, so it is refused.

    >>> hazard_lines(substances=["citral"], concentrations=["1-5"], classes=["Skin Sens. 1B H317"])[0].classes
    'Skin Sens. 1B'
    """
    with named("hazard_lines"):
        lines = lines_of(substances, concentrations, classes, specifics)
    return [_line_read(line) for line in lines] or [LineRead(NOTHING_TYPED, None, None, None, None, None)]


@formula(
    source=CLP,
    words="SDS, section 2, classify the oil, check the supplier's class",
)
def hazard_of_mixture(
    substances: Substances,
    concentrations: Concentrations,
    classes: Classes,
    specifics: Specifics = None,
    viscosity: Viscosity = None,
    route: Adding = "additive",
    region: Region = "EU",
) -> List[HazardFound]:
    """Classes of what a data sheet describes, the neat oil or a diluted sample: compare with its section 2.

    Where they differ, a line was misread, a limit is missing, or the supplier knows more.
    For the candle use `hazard_of_candle`. Flammability is for a test to decide.

    >>> hazard_of_mixture(substances=["citral"], concentrations=["5 %"], classes=["Skin Sens. 1B H317"])[0].found
    'Skin Sens. 1'
    """
    with named("hazard_of_mixture"):
        lines = lines_of(substances, concentrations, classes, specifics)
        return found_in(described(lines, viscosity, route, region))


@formula(
    source=CLP,
    words="clp, ghs, SDS, classify a candle, hazard class, allergens, skin sensitiser, sensitizer, H317, H412, "
    "EUH208, linalool, limonene, citral, harmful to aquatic life, aquatic toxicity, environment hazard",
)
def hazard_of_candle(
    substances: Substances,
    concentrations: Concentrations,
    classes: Classes,
    loads: Loads,
    specifics: Specifics = None,
    oils: OilNumbers = None,
    dilutions: Dilutions = None,
    viscosity: Viscosity = None,
    route: Adding = "additive",
    region: Region = "EU",
    uncertainty: Uncertainty = 0.0,
) -> List[HazardFound]:
    """Classes of a candle from the lines of its oils' and dyes' data sheets and their loads on wax.

    Oils that hold the same substance are added up by its CAS number or name; with several
    oils, lines without a CAS number are named, as another name would hide them. It is a
    calculation from what is typed, no substitute for the supplier's data sheet for the
    oil in wax, for tests, or for a competent person. For the label use `label_of_candle`.

    >>> hazard_of_candle(substances=["citral"], concentrations=["9 %"], classes=["H317"], loads=[0.1])[0].found
    'Skin Sens. 1'
    """
    with named("hazard_of_candle"):
        lines = lines_of(substances, concentrations, classes, specifics, oils)
        return found_in(candle(lines, loads, dilutions, viscosity, route, region, uncertainty))


@formula(
    native="concentration*load/(1+load)",
    source=MASS_PERCENT,
    words="linalool, limonene, citral, coumarin, share of an ingredient, how much of a substance",
)
def substance_in_candle(concentration: InOil, load: Load) -> ShareOfCandle:
    """Share of the finished candle that a substance in the oil comes to.

    >>> round(substance_in_candle(concentration=0.1, load=0.08), 6)
    0.007407
    """
    return concentration * load / (1 + load)


@formula(
    native="MIN(limit/(concentration-limit),0.5)",
    requires={"ROUND(concentration-3*limit,9) >= 0": "even at a load of 50 % this substance stays below the limit"},
    source=MASS_PERCENT,
    words="load below the label limit, linalool, limonene, stay under a limit, avoid a hazard label, H317",
)
def load_reaching_limit(concentration: InOil, limit: ClassLimit) -> LoadReached:
    """Load on wax at which a substance reaches a limit in the candle: to stay below it, pour less.

    At the limit itself the class is reached. It is one substance against one limit, 1 %
    for most skin sensitisers; sums and names on the label come earlier (`hazard_of_candle`).

    >>> round(load_reaching_limit(concentration=0.1, limit=0.01), 6)
    0.111111
    """
    return min(limit / (concentration - limit), 0.5)


@formula(
    native="IF(share<=0.025,0.3,IF(share<=0.1,0.2,IF(share<=0.25,0.1,0.05)))",
    source=CLP + "; Table 1.2",
    words="recipe changed, supplier changed the oil, new data sheet",
)
def change_before_reclassifying(share: ShareOfCandle) -> Change:
    """How far a substance's share may change before the candle must be classified again.

    A change of its share, up or down: 0.3 is 30 % more or less of what it was. Applies
    where nothing else in the recipe changes.

    >>> change_before_reclassifying(share=0.008)
    0.3
    """
    return next(change for upto, change in DRIFT if share <= upto)


@formula(
    native='10^INT(ROUND(0-LOG10(toxicity),9)-(test="chronic")-2*(test="chronic, degradable"))',
    requires={
        'ROUND(toxicity*(1+9*(test="chronic")+99*(test="chronic, degradable")),9) <= 1': (
            "there is an M-factor only up to 1 mg/l (acute), 0.1 (chronic) or 0.01 (chronic, degradable)"
        )
    },
    source=CLP + "; Table 4.1.3",
    words="aquatic toxicity, LC50, EC50, NOEC",
)
def m_factor(toxicity: WaterToxicity, test: WaterTest) -> MFactor:
    """M-factor of a substance from its toxicity to water life, where section 3 gives none.

    The supplier's own M-factor, or one fixed by law, goes before it.

    >>> m_factor(toxicity=0.05, test="acute")
    10.0
    """
    steps = round_half_away(-math.log10(toxicity), 9) - (test == "chronic") - 2 * (test == "chronic, degradable")
    return 10.0 ** math.floor(steps)


def _line_read(line: Line) -> LineRead:
    words = line.words
    specifics = [f"{limit.hazard.name} from {shown(limit.low)} %" for limit in words.limits]
    specifics += [f"M {which} {factor}" for which, factor in sorted(words.factors.items())]
    for form, estimate in sorted(words.estimates.items()):
        specifics.append(f"{form}: {'tested without toxicity' if estimate is None else f'estimate {shown(estimate)}'}")
    specifics += [f"{form}: unknown" for form in sorted(words.unknown)]
    return LineRead(
        line.substance,
        float(line.share.high) / 100,
        _joined(sorted(hazard.name for hazard in words.hazards)),
        _joined(specifics),
        _joined(words.unread),
        _joined(notes_of(line)),
    )


def _joined(words: List[str]) -> Optional[str]:
    return "; ".join(words) or None
