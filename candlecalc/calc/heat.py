"""Heat: heat and time to melt, oil going in, and what to mind."""

from typing import List, Optional

from candlecalc.calc.sources import FLASH, HEAT, HEAT_BALANCE, HEATER, TEMPERATURE
from candlecalc.calc.terms import Oil, Wax
from candlecalc.calc.terms.heat import (
    Cautions,
    Ceiling,
    Celsius,
    CelsiusDifference,
    Efficiency,
    End,
    Fahrenheit,
    FahrenheitDifference,
    Heat,
    Heated,
    HeatingTime,
    Hot,
    LatentHeat,
    LiquidHeat,
    Melting,
    Mixed,
    Near,
    OilFlash,
    OilHeat,
    OilTemperature,
    Power,
    SolidHeat,
    SpecificHeat,
    Start,
    Temperature,
    TimeNeeded,
    WaxFlash,
)
from candlecalc.declaration.declared import formula


@formula(native="(fahrenheit-32)/1.8", source=TEMPERATURE, instead="convert")
def celsius(fahrenheit: Fahrenheit) -> Celsius:
    """A temperature in degrees Celsius, from one in Fahrenheit.

    For how far two temperatures are apart use `celsius_difference`: 18 F is 8 C
    below zero, and 18 F more is 10 C more.

    >>> celsius(fahrenheit=185)
    85.0
    """
    return (fahrenheit - 32) / 1.8


@formula(native="celsius*1.8+32", source=TEMPERATURE, instead="convert")
def fahrenheit(celsius: Celsius) -> Fahrenheit:
    """A temperature in degrees Fahrenheit, from one in Celsius.

    For how far two temperatures are apart use `fahrenheit_difference`.

    >>> fahrenheit(celsius=85)
    185.0
    """
    return celsius * 1.8 + 32


@formula(native="difference/1.8", source=TEMPERATURE, instead="convert")
def celsius_difference(difference: FahrenheitDifference) -> CelsiusDifference:
    """How many degrees Celsius a rise, a fall or a margin in Fahrenheit is; not a temperature.

    >>> celsius_difference(difference=18)
    10.0
    """
    return difference / 1.8


@formula(native="difference*1.8", source=TEMPERATURE, instead="convert")
def fahrenheit_difference(difference: CelsiusDifference) -> FahrenheitDifference:
    """How many degrees Fahrenheit a rise, a fall or a margin in Celsius is; not a temperature.

    >>> fahrenheit_difference(difference=10)
    18.0
    """
    return difference * 1.8


@formula(
    native="weight/1000*specific_heat*(end-start)",
    requires={"end >= start": "the end must not be colder than the start"},
    source=HEAT,
    words="double boiler, water bath, heat a pot",
)
def heat_to_warm(weight: Heated, start: Start, end: End, specific_heat: SpecificHeat) -> Heat:
    """Heat to warm something that does not melt on the way: a pot, a water bath, wax already melted.

    A kilogram of water takes 4.19 kJ for each degree C, aluminium 0.90.

    >>> heat_to_warm(weight=2000, start=20, end=70, specific_heat=4.2)
    420.0
    """
    return weight / 1000 * specific_heat * (end - start)


@formula(native="weight/1000*latent_heat", source=HEAT, part=True)
def heat_to_melt(weight: Heated, latent_heat: LatentHeat = 190.0) -> Heat:
    """Heat that goes into melting alone, with the wax no warmer for it.

    >>> heat_to_melt(weight=1000, latent_heat=190)
    190.0
    """
    return weight / 1000 * latent_heat


@formula(
    native="wax/1000*(solid*(melting-start)+latent_heat+liquid*(end-melting))",
    requires={
        "start <= melting": "wax that starts above its melting range is melted already: use heat_to_warm",
        "end >= melting": "the end must not be below the melting range",
    },
    source=HEAT,
    words="energy to melt wax, electricity to melt wax, heat needed, double boiler, kilowatt hours",
)
def heat_for_wax(
    wax: Wax,
    start: Start,
    end: End,
    melting: Melting,
    latent_heat: LatentHeat = 190.0,
    solid: SolidHeat = 2.1,
    liquid: LiquidHeat = 2.2,
) -> Heat:
    """Heat to warm set wax, melt it and bring it to a temperature.

    Most of it goes into the melting, and texts give 150 to 220 kJ/kg for that:
    take the figure off your wax's data sheet where it has one.

    >>> heat_for_wax(wax=1000, start=20, end=80, melting=55)
    318.5
    """
    return wax / 1000 * (solid * (melting - start) + latent_heat + liquid * (end - melting))


@formula(
    native="heat*1000/(power*efficiency)/60",
    source=HEATER,
    words="how long to melt wax, melting time, double boiler, wax melter",
)
def melt_time(heat: Heat, power: Power, efficiency: Efficiency) -> TimeNeeded:
    """Minutes that a heater takes to put an amount of heat into the pot.

    Find your own heater's efficiency from one melt, with `heater_efficiency`.
    Wax heats from the wall inwards: stay with it, and stir.

    >>> melt_time(heat=360, power=1000, efficiency=0.5)
    12.0
    """
    return heat * 1000 / (power * efficiency) / 60


@formula(
    native="heat*1000/(power*minutes*60)",
    source=HEATER,
    words="how good is my melter, heat lost",
)
def heater_efficiency(heat: Heat, power: Power, minutes: HeatingTime) -> Efficiency:
    """Share of a heater's power that got into the wax, from one melt with a clock.

    >>> heater_efficiency(heat=360, power=1000, minutes=12)
    0.5
    """
    return heat * 1000 / (power * minutes * 60)


SETS = "the wax would begin to set: warm it more, or warm the oil"


@formula(
    native="(wax*liquid*hot+oil*oil_heat*room)/(wax*liquid+oil*oil_heat)",
    requires={
        "wax > 0": "wax must be more than 0",
        # What the wax has above its melting range is enough to bring the oil there.
        "ROUND(wax*liquid*(hot-melting)-oil*oil_heat*(melting-room),6) >= 0": SETS,
    },
    source=HEAT_BALANCE,
    words="cold oil cools the wax, temperature after adding fragrance, how much does oil cool the wax",
)
def temperature_after_oil(
    wax: Wax,
    oil: Oil,
    hot: Hot,
    room: OilTemperature,
    melting: Melting,
    liquid: LiquidHeat = 2.2,
    oil_heat: OilHeat = 2.2,
) -> Mixed:
    """Temperature once oil has gone into melted wax, before the pot loses any heat.

    Refused where wax would begin to set: then it gives up heat of its own, and
    this sum no longer holds.

    >>> round(temperature_after_oil(wax=1000, oil=80, hot=80, room=20, melting=55), 1)
    75.6
    """
    return (wax * liquid * hot + oil * oil_heat * room) / (wax * liquid + oil * oil_heat)


@formula(
    native="wanted+oil*oil_heat/(wax*liquid)*(wanted-room)",
    requires={"wax > 0": "wax must be more than 0", "wanted >= melting": SETS},
    source=HEAT_BALANCE,
    words="when to add fragrance, temperature to add oil, mixing temperature, how hot to add scent",
)
def temperature_before_oil(
    wax: Wax,
    oil: Oil,
    wanted: Mixed,
    room: OilTemperature,
    melting: Melting,
    liquid: LiquidHeat = 2.2,
    oil_heat: OilHeat = 2.2,
) -> Hot:
    """Temperature to bring the wax to, so that it is as warm as wanted once the oil is in.

    >>> round(temperature_before_oil(wax=1000, oil=80, wanted=75, room=20, melting=55), 1)
    79.4
    """
    return wanted + oil * oil_heat / (wax * liquid) * (wanted - room)


ALWAYS = (
    "hot wax burns skin and can catch fire: stay with the pot, keep flames away and water out of it; "
    "the suppliers' data sheets come first"
)


@formula(
    source=FLASH,
    words="flash point, wax fire, wax caught fire, overheated wax, wax too hot, smoke point, safety when "
    "melting, ventilation, fumes, gloves, oil on skin, protective gear, when to add fragrance, burns, "
    "safety, pouring too hot",
)
def melt_cautions(
    temperature: Temperature,
    ceiling: Ceiling = None,
    wax_flash: WaxFlash = None,
    oil_flash: OilFlash = None,
    near: Near = 20.0,
) -> Cautions:
    """What to mind at the temperature of a melt, a line each.

    A flash point is where vapour over the neat oil or wax catches from a flame
    in a test. Do not work up to it; it is also not where scent is lost.

    >>> melt_cautions(temperature=90, ceiling=85, wax_flash=204, oil_flash=93)[0]
    "above the wax supplier's stated ceiling of 85 C (185 F): let it cool"
    """
    lines = []
    if ceiling is None:
        lines.append("no ceiling typed for the wax: see its supplier's data sheet")
    elif temperature > ceiling:
        lines.append(f"above the wax supplier's stated ceiling of {_degrees(ceiling)}: let it cool")
    lines += _near_flash("wax", temperature, wax_flash, near) + _near_flash("oil", temperature, oil_flash, near)
    return [*lines, ALWAYS]


def _near_flash(what: str, temperature: float, flash: Optional[float], near: float) -> List[str]:
    if flash is None:
        return [f"no flash point typed for the {what}: see its safety data sheet"]
    if temperature >= flash:
        return [f"at or above the {what}'s flash point of {_degrees(flash)}: heat off, no flame or spark near"]
    if temperature >= flash - near:
        within = f"within {near:.4g} C ({near * 1.8:.4g} F) of the {what}'s flash point of {_degrees(flash)}"
        return [f"{within}: heat down, no flame or spark near"]
    return []


def _degrees(temperature: float) -> str:
    return f"{temperature:.4g} C ({temperature * 1.8 + 32:.4g} F)"
