"""Label: the net weight as it may be declared, the height of its figures, fire-safety statements.

What holds where, and in which edition, is for the market's own weights and measures office to say.
"""

import math
from typing import Dict, List, NamedTuple

import candlecalc.tables as tables
from candlecalc.calc.sources import unconfirmed
from candlecalc.calc.terms.label import (
    Content,
    Decimals,
    Declaration,
    Grams,
    Height,
    NetWeight,
    Note,
    Ounces,
    PanelArea,
    PanelAround,
    PanelHeight,
    PanelShape,
    Region,
    ShortBy,
    ShownArea,
    Standing,
    Statement,
    WholeGrams,
    WholeOunces,
)
from candlecalc.declaration.declared import formula
from candlecalc.quantities.rounding import round_half_away

OUNCE = 28.3495  # g, the factor that 16 CFR 500.19(a) allows and no other
SQUARE_INCH = 6.4516  # cm2, exact
SIXTEENTH = 25.4 / 16  # mm

NET_WEIGHT = (
    "15 U.S.C. 1453(a)(3); 16 CFR 500.19; under a pound in ounces: 16 CFR 500.9, from memory; down, never up: a NIST "
    "fact sheet, second-hand; two decimals: American Samoa, Admin. Code 27.0632"
)
BINDING = "NIST Handbook 133 (2026), 2.3.3; factor of 16 CFR 500.19(a)"
METRIC = "rounded down, three digits: 16 CFR 500.19(b); Directive 76/211/EEC, Annex I, 1.1"
AVERAGE_SYSTEM = "Council Directive 76/211/EEC, Annex I, 2.4; rounding: GOV.UK, Packaged goods"
PANEL = "16 CFR 500.21(a)"
OF_THE_PANEL = {"flat": 1.0, "round": 0.4, "round lid": math.pi / 4}  # of height by width, circumference or diameter
HEIGHT_US = "16 CFR 500.21(b), by a page on the parallel FDA rule"
HEIGHT_METRIC = "Directive 76/211/EEC by a summary of USDA Foreign Agricultural Service"
FIRE = "ASTM F2058 (US); EN 15494:2019 (EU, GB), both by reports of others"


class NetStatement(NamedTuple):
    """A net weight as it may be printed, and what to check."""

    statement: Declaration
    note: Note


@formula(
    source=NET_WEIGHT,
    words="net weight, ounces and grams on the label, dual units, weight statement, net wt",
)
def net_weight_us(net: NetWeight, decimals: Decimals = 2) -> NetStatement:
    """Net weight statement for a US label: pounds and ounces with grams beside them, both rounded down.

    `net` is the least that every candle is filled with. Neither figure says
    more than there is: 340 g are 11.99 oz, and 12 oz take 340.2 g. The larger
    of the two is the one that binds.

    >>> net_weight_us(net=227)
    NetStatement(statement='Net Wt 8 oz (227 g)', note='unconfirmed: check against 16 CFR 500.9 and 500.17')
    """
    ounces = _down(net / OUNCE, int(decimals))
    pounds, rest = divmod(ounces, 16)
    pound = [f"{pounds:.0f} lb"] if pounds else []
    rest_words = [f"{round_half_away(rest, int(decimals)):g} oz"] if rest or not pounds else []
    statement = f"Net Wt {' '.join(pound + rest_words)} ({_metric(net)})"
    return NetStatement(statement, unconfirmed("16 CFR 500.9 and 500.17"))


@formula(
    source=METRIC,
    no_native="its answer is words",
    words="net weight, grams on the label, weight statement",
)
def net_weight_metric(net: NetWeight) -> Declaration:
    """Net weight in metric units as a label may state it, rounded down to three digits, never up.

    >>> net_weight_metric(net=226.8)
    '226 g'
    """
    return _metric(net)


def _metric(net: float) -> str:
    if net >= 1000:
        return f"{_down(net / 1000, 2 if net < 10_000 else 1):g} kg"
    return f"{_down(net, 0):g} g"


def _down(amount: float, digits: int) -> float:
    # Rounded first: what is a hair under a whole number by its binary fraction is that number.
    return math.floor(round_half_away(amount * 10.0**digits, 3)) / 10.0**digits


@formula(native=f"INT(ROUND(net/{OUNCE}*100,3))/100", source=NET_WEIGHT, part=True)
def ounces_to_declare(net: NetWeight) -> WholeOunces:
    """Ounces of a US declaration, all in ounces: down to two decimals. `net_weight_us` writes it out.

    >>> ounces_to_declare(net=227)
    8.0
    """
    return _down(net / OUNCE, 2)


@formula(
    native="IF(net<1000,INT(ROUND(net,3)),IF(net<10000,INT(ROUND(net/10,3))*10,INT(ROUND(net/100,3))*100))",
    source=METRIC,
    part=True,
)
def grams_to_declare(net: NetWeight) -> WholeGrams:
    """Grams of a metric declaration: down to three digits. `net_weight_metric` writes it out.

    >>> grams_to_declare(net=226.8)
    226.0
    """
    step = 1 if net < 1000 else 10 if net < 10_000 else 100
    return _down(net / step, 0) * step


@formula(
    native=f"MAX(ounces*{OUNCE},grams)",
    source=BINDING,
    words="ounces and grams on the label, dual declaration, dual units",
)
def binding_weight(ounces: Ounces, grams: Grams) -> Grams:
    """Grams that a label with both declarations is held to: the larger of the two.

    >>> binding_weight(ounces=16, grams=454)
    454.0
    """
    return max(ounces * OUNCE, grams)


def _native_error(row: Dict[str, str]) -> str:
    """A row's fixed amount, or its share rounded up to 0.1 g."""
    return row["fixed"] or f"ROUNDUP(ROUND(net*{row['share']},6),1)"


TOLERABLE = tables.native_steps("tolerable_errors", "net", _native_error)


@formula(
    native=TOLERABLE,
    source=AVERAGE_SYSTEM,
    words="underweight, tolerance, average system, how short may a candle be, underfilled, legal weight, e mark",
)
def tolerable_negative_error(net: NetWeight) -> ShortBy:
    """How far under its declared weight a single candle may be in the EU and GB, by the average system.

    The average of a batch may not be under the declared weight at all.

    >>> tolerable_negative_error(net=180)
    8.1
    """
    row = tables.row_up_to("tolerable_errors", net)
    if row["fixed"]:
        return float(row["fixed"])
    return math.ceil(round_half_away(net * float(row["share"]) * 10, 5)) / 10


@formula(native=f"net-{TOLERABLE}", source=AVERAGE_SYSTEM, part=True)
def short_under(net: NetWeight) -> Content:
    """Content under which a candle counts as short in the reference test of the EU and GB.

    >>> short_under(net=180)
    171.9
    """
    return net - tolerable_negative_error(net)


@formula(native=f"net-2*{TOLERABLE}", source=AVERAGE_SYSTEM, part=True)
def never_under(net: NetWeight) -> Content:
    """Least net weight of any candle with the e mark.

    >>> never_under(net=180)
    163.8
    """
    return net - 2 * tolerable_negative_error(net)


@formula(
    native='height*around*IF(shape="flat",1,IF(shape="round",0.4,PI()/4))/100',
    source=PANEL,
    words="label wrap, label size for a round jar, label area, label size, principal display panel, PDP",
)
def panel_area(height: PanelHeight, around: PanelAround, shape: PanelShape = "round") -> PanelArea:
    """Area of the principal display panel: the whole of a flat side, two fifths of the side of a round package.

    Lids, bottoms, shoulders and necks are left out, unless the buyer looks at the
    lid first: then all of it is the panel, a round one by how far it is across both ways.

    >>> panel_area(height=90, around=250)
    90.0
    """
    return height * around * OF_THE_PANEL[shape] / 100


class FigureHeight(NamedTuple):
    """A least height, and what it rests on."""

    height: Height
    note: Note


@formula(
    source=HEIGHT_US,
    words="font size, letter height, text size on the label, type size, how big must the print be, minimum font",
)
def figure_height_us(area: ShownArea) -> FigureHeight:
    """Least height of the figures of a net weight on a US label, by the area of the panel it stands on.

    >>> figure_height_us(area=90)
    FigureHeight(height=3.175, note='unconfirmed: check against 16 CFR 500.21(b)')
    """
    row = tables.row_up_to("figure_heights_us", round_half_away(area / SQUARE_INCH, 6))
    return FigureHeight(float(row["height"]) * SIXTEENTH, unconfirmed("16 CFR 500.21(b)"))


@formula(
    source=HEIGHT_METRIC,
    words="font size, letter height, text size on the label, type size, how big must the print be, minimum font",
)
def figure_height_metric(net: NetWeight) -> FigureHeight:
    """Least height of the figures of a declared weight in the EU and GB, by the weight.

    >>> figure_height_metric(net=180).height
    3.0
    """
    height = float(tables.row_up_to("figure_heights_metric", net)["height"])
    return FigureHeight(height, unconfirmed("Directive 76/211/EEC, Annex I, 3.1"))


@formula(
    native=tables.native_steps(
        "figure_heights_us", f"ROUND(size/{SQUARE_INCH},6)", lambda row: f"{row['height']}*{SIXTEENTH}"
    ),
    source=HEIGHT_US,
    part=True,
)
def least_figures_us(size: ShownArea) -> Height:
    """Least height of the figures of a US net weight, as a number: see `figure_height_us`.

    >>> least_figures_us(size=90)
    3.175
    """
    return figure_height_us(size).height


@formula(
    native=tables.native_steps("figure_heights_metric", "net", lambda row: row["height"]),
    source=HEIGHT_METRIC,
    part=True,
)
def least_figures_metric(net: NetWeight) -> Height:
    """Least height of the figures of a declared weight in the EU and GB, as a number: see `figure_height_metric`.

    >>> least_figures_metric(net=180)
    3.0
    """
    return figure_height_metric(net).height


class FireStatement(NamedTuple):
    """A fire-safety statement, whether the standard requires it, and what to check."""

    standing: Standing
    statement: Statement
    note: Note


@formula(
    source=FIRE,
    words="warning label, burn instructions, care card, candle care, trim wick, wick trimming, never leave "
    "unattended, keep away from children and pets, burn no longer than four hours, four hour burn, safety "
    "symbols, fire safety label, instructions for customers, keep out of drafts, stop burning with half "
    "an inch left, first burn",
)
def fire_statements(region: Region) -> List[FireStatement]:
    """Fire-safety statements for the label of a container candle: those of the standard first, then optional ones.

    The standards are voluntary. Wording, signs and sizes are theirs: have yours
    beside you when the label is made. The US warning stands on the unit of sale,
    where the buyer sees it. A hazard label is a duty of its own.

    >>> fire_statements(region="US")[1].statement
    'Burn within sight'
    """
    standard = ("ASTM F2058" if region == "US" else "EN 15494") + ", a voluntary standard"
    kept = [row for row in tables.rows("fire_statements") if row["region"] == ("US" if region == "US" else "EU")]
    return [FireStatement(row["standing"], row["statement"], _fire_note(standard, row["status"])) for row in kept]


def _fire_note(standard: str, status: str) -> str:
    if status == "read in the text":
        return f"{standard}, by its abstract"
    return unconfirmed(f"{standard} ({'read second-hand' if status == 'second-hand' else status})")
