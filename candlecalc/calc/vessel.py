"""Vessels: what they hold, by size or by water, and the fill that goes in."""

import math

from candlecalc.calc.sources import ALGEBRA, DENSITY, GEOMETRY, PRACTICE, WATER
from candlecalc.calc.terms import (
    AnyDensity,
    AnyVolume,
    BaseRise,
    Brimful,
    Cavity,
    Density,
    Depth,
    Fill,
    Headspace,
    Load,
    Pieces,
    Side,
    Sides,
    Vessels,
    Volume,
    Water,
    WaterTemperature,
    Wax,
    Weighed,
)
from candlecalc.calc.terms.vessel import (
    BottomDiameter,
    InsideDiameter,
    InsideHeight,
    InsideLength,
    InsideWidth,
    OtherDensity,
    TopDiameter,
    WeighedFill,
    WeighedInDensity,
)
from candlecalc.declaration.declared import formula
from candlecalc.quantities.rounding import round_half_away

# Conventional mass: the density of air and of the weights a scale is adjusted with, g/ml.
AIR, SCALE_WEIGHTS = 0.0012, 8.0

BELOW_FILL = {"base < height": "the floor cannot rise above the fill"}

# A floor pushed up (or bulging down) at its middle is taken as a spherical cap, mm3.
CAP = "PI()/6*base*(0.75*{across}^2+base^2)"


def _cap(across: float, rise: float) -> float:
    return math.pi / 6 * rise * (0.75 * across**2 + rise**2)


@formula(
    native=f"(PI()/4*diameter^2*height-{CAP.format(across='diameter')})/1000",
    requires=BELOW_FILL,
    source=GEOMETRY,
    words="jar volume, round jar, how much does my jar hold, tin volume, capacity of a tin, pillar mould, "
    "pillar candle, straight sided",
)
def cylinder_volume(diameter: InsideDiameter, height: InsideHeight, base: BaseRise = 0.0) -> Volume:
    """Volume of a straight round vessel, from inside measures.

    Real glass has rounded corners and a thick floor: where you can, weigh the
    water it holds and use `volume_from_water`.

    >>> round(cylinder_volume(diameter=80, height=90), 1)
    452.4
    """
    return (math.pi / 4 * diameter**2 * height - _cap(diameter, base)) / 1000


@formula(
    native=f"(PI()/12*height*(top^2+top*bottom+bottom^2)-{CAP.format(across='bottom')})/1000",
    requires=BELOW_FILL,
    source=GEOMETRY,
    words="jar volume, cup wider at the top, tumbler, cone, how much does my jar hold, bowl",
)
def tapered_volume(top: TopDiameter, bottom: BottomDiameter, height: InsideHeight, base: BaseRise = 0.0) -> Volume:
    """Volume of a round vessel that widens or narrows evenly, from inside diameters.

    With `top` and `bottom` alike this is `cylinder_volume`.

    >>> round(tapered_volume(top=90, bottom=70, height=100), 1)
    505.3
    """
    return (math.pi / 12 * height * (top**2 + top * bottom + bottom**2) - _cap(bottom, base)) / 1000


@formula(
    native=f"(length*width*height-{CAP.format(across='MIN(length,width)')})/1000",
    requires=BELOW_FILL,
    source=GEOMETRY,
    words="square jar, rectangular vessel, oblong, wooden dough bowl, how much does my jar hold",
)
def box_volume(length: InsideLength, width: InsideWidth, height: InsideHeight, base: BaseRise = 0.0) -> Volume:
    """Volume of a square or oblong vessel with upright sides, from inside measures.

    A floor that is not flat is taken as a round cap as wide as the narrower side.

    >>> box_volume(length=70, width=70, height=80)
    392.0
    """
    return (length * width * height - _cap(min(length, width), base)) / 1000


@formula(
    native=f"(sides*side^2*height/(4*TAN(PI()/sides))-{CAP.format(across='(side/TAN(PI()/sides))')})/1000",
    requires=BELOW_FILL,
    source=GEOMETRY,
    words="hexagon jar, octagon, how much does my jar hold",
)
def prism_volume(sides: Sides, side: Side, height: InsideHeight, base: BaseRise = 0.0) -> Volume:
    """Volume of an upright vessel of equal sides: six for a hexagon jar.

    A floor that is not flat is taken as a round cap that touches every side.

    >>> round(prism_volume(sides=6, side=35, height=80), 1)
    254.6
    """
    across = side / math.tan(math.pi / sides)
    return (sides * side**2 * height / (4 * math.tan(math.pi / sides)) - _cap(across, base)) / 1000


# The Tanaka fit of water's density against temperature, g/ml; the paper's a1 to a5, the first without its minus.
A1, A2, A3, A4, A5 = 3.983035, 301.797, 522528.9, 69.34881, 0.99997495
WATER_DENSITY = f"{A5}*(1-(temperature-{A1})^2*(temperature+{A2})/({A3}*(temperature+{A4})))"


def _water_density(temperature: float) -> float:
    return A5 * (1 - (temperature - A1) ** 2 * (temperature + A2) / (A3 * (temperature + A4)))


@formula(
    native=f"water*(1-{AIR}/{SCALE_WEIGHTS:g})/({WATER_DENSITY}-{AIR})",
    source=WATER,
    words="water test, weigh it with water, odd shaped vessel, oval bowl, irregular vessel, how much does my "
    "jar hold, jar volume, fill it with water",
)
def volume_from_water(water: Water, temperature: WaterTemperature = 20.0) -> Volume:
    """Volume of a vessel from the water that fills it to the brim, as the scale shows it.

    The best measure of real glass: it takes the floor, the corners and the
    neck as they are. Dry the vessel and set the scale to zero with it on.

    >>> round(volume_from_water(water=250, temperature=20), 2)
    250.71
    """
    return water * (1 - AIR / SCALE_WEIGHTS) / (_water_density(temperature) - AIR)


@formula(
    native="volume*(1-headspace)*density",
    source=ALGEBRA,
    words="wax per jar by volume, "
    "how much do I pour, how much wax does a jar take, headspace, fill level, room at the top, wax for a "
    "jar, volume to weight, jar size to wax, how full, refill, density, specific gravity",
)
def fill_weight(volume: Brimful, headspace: Headspace, density: Density) -> Fill:
    """Weight of wax and oil that fills a vessel up to its headspace.

    Use the density at the temperature you fill to the mark: hot wax is lighter
    than set wax, and a fill measured cold weighs more. A fill you have weighed
    yourself beats this figure.

    >>> fill_weight(volume=300, headspace=0.2, density=0.9)
    216.0
    """
    return volume * (1 - headspace) * density


@formula(
    native="fill*density/measured",
    source=DENSITY,
    words="same jar in another wax, change of wax, switch wax, how much of the new wax, fill weight for another wax",
)
def fill_in_another_wax(fill: WeighedFill, measured: WeighedInDensity, density: OtherDensity) -> Fill:
    """Weight of wax and oil to the same mark in another wax, from a fill that was weighed.

    A heavier wax weighs more in the same room. Take both densities at one
    temperature, set or melted alike.

    >>> fill_in_another_wax(fill=216, measured=0.9, density=0.875)
    210.0
    """
    return fill * density / measured


@formula(
    native="INT(ROUND(wax*(1+load)/fill,6))",
    requires={"fill > 0": "fill must be more than 0"},
    source=PRACTICE,
    words="leftover wax how many candles, how many jars from this wax, how many jars can I fill, how many "
    "candles can I make, candles from a bag of wax, wax melts, "
    "clamshells, tealights, votives, how many tins",
)
def vessels_filled(wax: Wax, fill: Fill, load: Load = 0.0) -> Vessels:
    """Vessels that a weight of wax fills, once its oil is in.

    >>> vessels_filled(wax=5000, fill=216, load=0.08)
    25.0
    """
    return math.floor(round_half_away(wax * (1 + load) / fill, 6))


@formula(
    native=f"(PI()/4*diameter^2*depth-{CAP.format(across='diameter')})/1000*density",
    requires={"base < depth": "the floor cannot rise above the wax"},
    source=GEOMETRY,
    words="fill line, partly filled, how deep, how full, fill height, depth of wax, how much wax to a line",
)
def fill_to_depth(diameter: InsideDiameter, depth: Depth, density: Density, base: BaseRise = 0.0) -> Fill:
    """Weight of wax and oil to a given depth in a straight round vessel.

    Use the density at the temperature you measure the depth at: set wax stands
    lower than the hot pour.

    >>> round(fill_to_depth(diameter=80, depth=60, density=0.9), 1)
    271.4
    """
    return (math.pi / 4 * diameter**2 * depth - _cap(diameter, base)) / 1000 * density


@formula(
    native="volume*density",
    source=DENSITY,
    words="fl oz to grams, ml to grams, fluid ounces of oil, fl oz to oz, fluid ounces to weight, specific "
    "gravity, density, cups of wax, ml of oil to grams, how much does oil weigh, gallon of wax in pounds",
)
def volume_to_weight(volume: AnyVolume, density: AnyDensity) -> Weighed:
    """Weight of a volume of anything that pours, by its density: oil by the fluid ounce, melted wax by the cup.

    A fluid ounce is a volume and an ounce a weight: only of water are they nearly
    the same.

    >>> round(volume_to_weight(volume=100, density=0.98), 6)
    98.0
    """
    return volume * density


@formula(
    native="INT(ROUND(wax*(1+load)/(cavity*density),6))",
    source=PRACTICE,
    words="wax melts, clamshell, tarts, snap bars, mold, mould, votives, pieces out of a mould, how many melts, "
    "clamshells, silicone mould, pillar mould",
)
def pieces_from_mould(wax: Wax, load: Load, cavity: Cavity, density: Density) -> Pieces:
    """Whole pieces, such as wax melts, from one melt: wax and oil divided by what one mould cavity holds.

    A cavity that you have weighed filled beats this figure.

    >>> pieces_from_mould(wax=1000, load=0.08, cavity=15, density=0.9)
    80.0
    """
    return math.floor(round_half_away(wax * (1 + load) / (cavity * density), 6))
