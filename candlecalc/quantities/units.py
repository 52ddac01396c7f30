"""The edge where text such as "12 oz" or "180 F" becomes a number in a term's unit.

Text is read by a small grammar of our own over a table of accepted spellings, never by evaluating an
expression: a unit library alone takes `180 F` for farads, `454 gr` for grains and `1,5 kg` for 15 kg.
What units measure, and the exact factors between them, stand in `candlecalc.quantities.factors`.
"""

import re
from typing import Dict, List, NamedTuple, Optional, Tuple

import candlecalc.quantities.factors as factors
import candlecalc.quantities.numerals as numerals

FLUID_OUNCES = ("fl oz", "floz", "fluid ounce", "fluid ounces")
GALLONS = ("gal", "gals", "gallon", "gallons")
# Spelling -> the unit as pint knows it. What a maker types on a bench card, a scale or a data sheet.
SPELLINGS: Dict[str, str] = {
    **dict.fromkeys(["g", "gm", "gms", "gr", "gram", "grams", "gramme", "grammes"], "gram"),
    **dict.fromkeys(["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"], "kilogram"),
    **dict.fromkeys(["oz", "ounce", "ounces"], "ounce"),
    **dict.fromkeys(["lb", "lbs", "pound", "pounds"], "pound"),
    **dict.fromkeys(["ml", "mls", "cc", "millilitre", "millilitres", "milliliter", "milliliters"], "milliliter"),
    **dict.fromkeys(["cl", "centilitre", "centilitres", "centiliter", "centiliters"], "centiliter"),
    **dict.fromkeys(["l", "litre", "litres", "liter", "liters"], "liter"),
    # Bare, it is the US one, wherever the machine stands.
    **{us + oz: "fluid_ounce" for us in ("", "us ", "u s ") for oz in FLUID_OUNCES},
    **{imp + oz: "imperial_fluid_ounce" for imp in ("imp ", "imperial ", "uk ") for oz in FLUID_OUNCES},
    **{us + gal: "gallon" for us in ("", "us ", "u s ") for gal in GALLONS},
    **{imp + gal: "imperial_gallon" for imp in ("imp ", "imperial ", "uk ") for gal in GALLONS},
    **dict.fromkeys(["cup", "cups", "us cup", "us cups"], "cup"),
    **dict.fromkeys(["mm", "millimetre", "millimetres", "millimeter", "millimeters"], "millimeter"),
    **dict.fromkeys(["cm", "centimetre", "centimetres", "centimeter", "centimeters"], "centimeter"),
    **dict.fromkeys(["in", "inch", "inches", '"', "\u2033", "\u201d", "''", "\u2019\u2019"], "inch"),
    **dict.fromkeys(["cm2", "cm\u00b2", "sq cm", "square centimetres", "square centimeters"], "centimeter**2"),
    **dict.fromkeys(["in2", "in\u00b2", "sq in", "sq inch", "sq inches", "square inch", "square inches"], "inch**2"),
    **dict.fromkeys(["c", "degc", "deg c", "\u00b0c", "celsius"], "degC"),
    **dict.fromkeys(["f", "degf", "deg f", "\u00b0f", "fahrenheit"], "degF"),
    # How far two temperatures are apart, as terms and answers write it.
    "c difference": "delta_degC",
    "f difference": "delta_degF",
    **dict.fromkeys(["s", "sec", "secs", "second", "seconds"], "second"),
    **dict.fromkeys(["min", "mins", "minute", "minutes"], "minute"),
    **dict.fromkeys(["h", "hr", "hrs", "hour", "hours"], "hour"),
    **dict.fromkeys(["day", "days"], "day"),
    **dict.fromkeys(["wk", "wks", "week", "weeks"], "week"),
    # Of 365 days, as goods are dated. No months: they are of 28 to 31.
    **dict.fromkeys(["yr", "yrs", "year", "years"], "common_year"),
    **dict.fromkeys(["g/ml", "g/cc", "g/cm3"], "gram/milliliter"),
    "kg/m3": "kilogram/meter**3",
    "mg/l": "milligram/liter",
    **dict.fromkeys(["w", "watt", "watts"], "watt"),
    **dict.fromkeys(["kw", "kilowatt", "kilowatts"], "kilowatt"),
    "kj": "kilojoule",
    "mj": "megajoule",
    "kwh": "kilowatt_hour",
    **dict.fromkeys(["kj/kg", "j/g"], "kilojoule/kilogram"),
    **dict.fromkeys(["mj/kg", "kj/g"], "megajoule/kilogram"),
    "g/h": "gram/hour",
    "oz/h": "ounce/hour",
    "mm/h": "millimeter/hour",
    "in/h": "inch/hour",
    **dict.fromkeys(["%", "percent", "per cent"], "percent"),
}
# Data sheets write a specific heat in many ways, by the kelvin or by the degree C, which are one step.
for _heat, _pint in {"kj/{}kg {}{}": "kilojoule/kilogram/kelvin", "j/{}g {}{}": "kilojoule/kilogram/kelvin",
                     "j/{}kg {}{}": "joule/kilogram/kelvin"}.items():  # fmt: skip
    for _degree in ("k", "c", "\u00b0c"):
        for _open, _close in (("(", ")"), ("", "")):
            SPELLINGS[_heat.format(_open, _degree, _close)] = _pint

# What the units of a workbook come to, by definition (international yard and pound agreement, 1959).
GRAMS: Dict[str, float] = {"g": 1.0, "kg": 1000.0, "oz": 453.59237 / 16, "lb": 453.59237}
MILLIMETRES: Dict[str, float] = {"mm": 1.0, "in": 25.4}

# What makers often have a quantity in: its unit, and how many of the term's own make one, by definition as above.
OFTEN: Dict[str, Dict[str, float]] = {
    "mm": {"in": 25.4, "cm": 10.0},
    "cm2": {"sq in": 6.4516},
    "g": {"oz": GRAMS["oz"]},
    "g/h": {"oz/h": GRAMS["oz"]},
    "ml": {"US fl oz": 29.5735295625},
    "g/ml": {"kg/m3": 0.001},
    "W": {"kW": 1000.0},
    "kJ/(kg C)": {"J/(kg C)": 0.001},
}

# The unit a term holds its numbers in -> what kind of thing it is, and that unit for pint.
DIMENSIONS: Dict[str, Tuple[str, str]] = {
    "g": ("a weight", "gram"),
    "ml": ("a volume", "milliliter"),
    "mm": ("a length", "millimeter"),
    "C": ("a temperature", "degC"),
    "F": ("a temperature", "degF"),
    "C difference": ("a difference in temperature", "delta_degC"),
    "F difference": ("a difference in temperature", "delta_degF"),
    "s": ("a time", "second"),
    "min": ("a time", "minute"),
    "h": ("a time", "hour"),
    "days": ("a number of days", "day"),
    "cm2": ("an area", "centimeter**2"),
    "g/ml": ("a density", "gram/milliliter"),
    "mg/l": ("a concentration", "milligram/liter"),
    "W": ("a power", "watt"),
    "kJ": ("an amount of heat", "kilojoule"),
    "kJ/kg": ("a heat by weight", "kilojoule/kilogram"),
    "MJ/kg": ("a heat by weight", "megajoule/kilogram"),
    "kJ/(kg C)": ("a specific heat", "kilojoule/kilogram/kelvin"),
    "g/h": ("a rate of burning", "gram/hour"),
    "mm/h": ("a growth", "millimeter/hour"),
}
EXAMPLES = {
    "a weight": '340 or "12 oz"',
    "a volume": '240 or "8 US fl oz"',
    "a length": '75 or "3 in"',
    "a temperature": '80 or "176 F"',
    "a difference in temperature": '10 or "18 F"',
    "a time": '90 or "90 min"',
    "a number of days": '14 or "2 weeks"',
    "an area": '90 or "14 sq in"',
    "a concentration": '0.5 or "0.5 mg/l"',
    "a density": '0.9 or "0.9 g/ml"',
    "a power": '1500 or "1.5 kW"',
    "an amount of heat": '320 or "0.1 kWh"',
    "a heat by weight": '190 or "190 kJ/kg"',
    "a specific heat": '2.2 or "2.2 kJ/(kg C)"',
    "a rate of burning": '4.5 or "0.16 oz/h"',
    "a growth": '25 or "1 in/h"',
    "a share": '0.08 or "8%"',
    "an amount of money": '12.50 or "$12.50"',
    "a number": "24",
}
NAMES = {"milliliter": "ml", "gram": "g", "kilogram": "kg", "ounce": "oz", "pound": "lb", "fluid_ounce": "US fl oz",
         "imperial_fluid_ounce": "imp fl oz", "gallon": "US gal", "imperial_gallon": "imp gal", "cup": "US cups",
         "centiliter": "cl", "liter": "l", "millimeter": "mm", "centimeter": "cm", "inch": "in", "degC": "C",
         "degF": "F", "delta_degC": "C difference", "delta_degF": "F difference", "second": "s", "minute": "min",
         "hour": "h", "day": "days", "week": "weeks", "common_year": "years", "centimeter**2": "cm2",
         "inch**2": "sq in", "milligram/liter": "mg/l", "percent": "%", "gram/milliliter": "g/ml",
         "kilogram/meter**3": "kg/m3", "watt": "W",
         "kilowatt": "kW", "kilojoule": "kJ", "megajoule": "MJ", "kilowatt_hour": "kWh",
         "kilojoule/kilogram": "kJ/kg", "megajoule/kilogram": "MJ/kg", "kilojoule/kilogram/kelvin": "kJ/(kg C)",
         "joule/kilogram/kelvin": "J/(kg C)", "gram/hour": "g/h", "ounce/hour": "oz/h",
         "millimeter/hour": "mm/h", "inch/hour": "in/h"}  # fmt: skip
TEMPERATURES = frozenset(["degC", "degF"])
POUNDS_AND_OUNCES = "pound, ounce"  # "5 lb 4 oz", as it is read

# A 2 or a 3 is the unit's own in cm2, in2 and g/cm3.
PIECE = re.compile(
    rf"\s*(?P<number>{numerals.NUMBER})\s*(?P<unit>[^0-9.,+\-\s/][^0-9]*(?:(?<=[mn^])[23](?![0-9.,]))?)?", re.IGNORECASE
)
MOST_PIECES = 3  # numbers in a text: one more than is ever read, so that a long text is not gone through
# "1 oz/lb", "28 g per 500 g": so much oil to so much wax.
_TO_WAX = re.compile(
    r"(?P<part>[^/]*(?:[0-9]/[0-9][^/]*)?[^/0-9\s])\s*(?:/|\bper\b|\bto\b(?=\s*[0-9]))\s*(?P<whole>[^/]+)",
    re.IGNORECASE,
)
OF_WAX = ("of wax weight", "of the stated basis")
# Each run of blanks is tried from its first one only.
AN_HOUR = re.compile(r"(?<!\s)\s*(?:/|\bper|\ban)\s*(?:h|hr|hour)$", re.IGNORECASE)


class Reading(NamedTuple):
    """Text as read: its value in the term's unit, and the unit it was written in ("" for none).

    Of pounds and ounces that unit is the ounce; of an amount beside a currency it is "money".
    """

    value: float
    unit: str


def kind_of(unit: str) -> str:
    """What a term's unit measures, in words: "a weight", "a share", "an amount of money", "a number"."""
    if unit in DIMENSIONS:
        return DIMENSIONS[unit][0]
    if unit.startswith("of "):
        return "a share"
    return "an amount of money" if unit.startswith("money") else "a number"


def kind_of_spelling(spelling: str) -> str:
    """What a unit as makers write it measures; nothing where it is no unit."""
    name = _name(spelling)
    return _kind_of_pint(SPELLINGS[name]) if name in SPELLINGS else ""


def read(text: str, unit: str) -> Reading:
    """Read `text` as a value in `unit`; a ValueError says what was got and what is taken.

    >>> read("10 oz", "g")
    Reading(value=283.49523125, unit='ounce')
    """
    kind = kind_of(unit)
    text, beside = _bare(text, unit)
    ratio = _to_wax(text) if unit in OF_WAX else None
    if ratio is not None:
        return Reading(ratio, "percent")
    pieces = _pieces(text, kind)
    # The same words say where on the scale, and how far apart on it: what is wanted decides.
    apart = "delta_" if kind == "a difference in temperature" else ""
    spelled = [apart * (SPELLINGS[name] in TEMPERATURES) + SPELLINGS[name] for _, name in pieces if name]
    if not spelled:
        if len(pieces) > 1:
            raise ValueError(f"it takes {kind} such as {EXAMPLES[kind]}")
        return Reading(pieces[0][0], beside)
    if len(spelled) < len(pieces):
        raise ValueError(f"a unit is missing beside a number; it takes {kind} such as {EXAMPLES[kind]}")
    _one_quantity(spelled)
    target = "percent" if kind == "a share" else DIMENSIONS.get(unit, ("", ""))[1]
    for name in spelled:
        if not target or not factors.alike(name, target):
            raise ValueError(_other_kind(pieces[0], name, kind))
    if kind == "a share":
        return Reading(pieces[0][0] / 100, "percent")
    return Reading(sum(convert(value, name, target) for (value, _), name in zip(pieces, spelled)), spelled[-1])


def written(text: str) -> Reading:
    """A quantity in the unit it is written in, whatever it measures; a ValueError where it has none.

    >>> written("1 lb 4 oz")
    Reading(value=20.0, unit='ounce')
    """
    pieces = _pieces(text, "a number")
    spelled = [SPELLINGS[name] for _, name in pieces if name]
    if not spelled or len(spelled) < len(pieces):
        raise ValueError("a unit is missing beside a number")
    _one_quantity(spelled)
    return Reading(sum(convert(value, name, spelled[-1]) for (value, _), name in zip(pieces, spelled)), spelled[-1])


def meant(value: float, unit: str) -> Dict[str, float]:
    """A bare number as it may have been meant, in units that makers often use: each with what it is in `unit`.

    >>> meant(3, "mm")
    {'in': 76.2, 'cm': 30.0}
    """
    if unit == "C":
        return {"F": (value - 32) / 1.8}
    return {name: round(value * factor, 9) for name, factor in OFTEN.get(unit, {}).items()}


def one(text: str) -> bool:
    """Whether a text is one number, with one unit or a currency beside it; or so much to so much wax.

    >>> one("2 7/8 in"), one("5 lb 4 oz"), one("12"), one("1 oz/lb")
    (True, False, False, True)
    """
    ratio = _TO_WAX.fullmatch(text)
    if ratio and _to_wax(text) is not None:
        return one(ratio.group("part"))
    bare, currency = numerals.without_currency(text.strip())
    match = PIECE.fullmatch(numerals.plain(bare).lstrip(numerals.MINUS))
    unit = _name(match.group("unit") or "") if match else ""
    return bool(match) and (currency if not unit else not currency and unit in SPELLINGS)


def _to_wax(text: str) -> Optional[float]:
    """A weight of oil to a weight of wax as a share: an ounce to a pound is 1/16. None where a text is no such pair."""
    match = _TO_WAX.fullmatch(numerals.plain(text))
    if not match:
        return None
    whole = match.group("whole")
    try:
        oil, wax = written(match.group("part")), written(whole if whole[0].isdigit() else f"1 {whole}")
    except ValueError:
        return None
    weights = all(factors.alike(each.unit, "gram") for each in (oil, wax))
    return convert(oil.value, oil.unit, wax.unit) / wax.value if weights and wax.value else None


def _one_quantity(spelled: List[str]) -> None:
    if len(spelled) > 1 and spelled != ["pound", "ounce"]:
        raise ValueError('only pounds and ounces are read together ("5 lb 4 oz")')


def convert(value: float, unit: str, to: str) -> float:
    """A value from one unit to another, both as pint names them; factors are exact by definition."""
    if unit == to:
        return value
    if unit in TEMPERATURES:  # the one conversion with a zero of its own
        return (value - 32) * 5 / 9 if unit == "degF" else value * 9 / 5 + 32
    numerator, denominator = factors.exact(unit, to)
    return value * numerator / denominator


def between(value: float, unit: str, to: str) -> float:
    """A value from one unit to another of its kind, both as makers write them.

    >>> between(1, "lb", "oz")
    16.0
    """
    names = [named(unit), named(to)]
    if not factors.alike(*names):
        raise ValueError(f'"{unit}" is for {_kind_of_pint(names[0])} and "{to}" for {_kind_of_pint(names[1])}')
    return convert(value, *names)


def named(spelling: str) -> str:
    """A unit as pint names it, from a maker's spelling of it."""
    name = _name(spelling)
    if name not in SPELLINGS:
        raise ValueError(f'"{spelling}" is no unit known here; it takes a unit such as g, oz, ml or C')
    return SPELLINGS[name]


def in_kind(spelling: str, unit: str) -> str:
    """A unit as makers write it, as pint names it, where it measures what a term's unit does; "" elsewhere.

    Degrees are degrees apart where the term is a difference.

    >>> in_kind("oz", "g"), in_kind("F", "C difference"), in_kind("oz", "ml")
    ('ounce', 'delta_degF', '')
    """
    name, kind = named(spelling), kind_of(unit)
    if kind == "a difference in temperature" and name in TEMPERATURES:
        return f"delta_{name}"
    return name if _kind_of_pint(name) == kind else ""


def factor(unit: str, to: str) -> float:
    """How many of `to` make one `unit`, both as pint names them (no temperatures)."""
    return convert(1.0, unit, to)


def _name(spelling: str) -> str:
    return " ".join(spelling.lower().replace(".", "").replace("^", "").split())


def _bare(text: str, unit: str) -> Tuple[str, str]:
    """A text without the words that its term says already: "24 times", "8% of wax weight", "$15 an hour"."""
    text = text.strip()
    if not unit.startswith("money"):
        own = unit and unit not in DIMENSIONS and text.lower().endswith(unit.lower())
        return text[: -len(unit)] if own else text, ""
    text, currency = numerals.without_currency(AN_HOUR.sub("", text) if unit == "money per h" else text)
    return text, "money" if currency else ""


def _pieces(text: str, kind: str) -> List[Tuple[float, str]]:
    rest = numerals.plain(text)
    if not rest:
        raise ValueError(f"it is empty; it takes {kind} such as {EXAMPLES[kind]}")
    sign = -1.0 if rest[0] in numerals.MINUS else 1.0
    rest = rest[1:] if sign < 0 else rest
    if not rest:
        raise ValueError(f"it takes {kind} such as {EXAMPLES[kind]}")
    found: List[Tuple[float, str]] = []
    while rest:
        match = PIECE.match(rest)
        if not match:
            raise ValueError(f"it takes {kind} such as {EXAMPLES[kind]}")
        name = _name(match.group("unit") or "")
        if name and name not in SPELLINGS:
            raise ValueError(f'"{name}" is no unit known here; it takes {kind} such as {EXAMPLES[kind]}')
        if len(found) == MOST_PIECES:
            raise ValueError(f"it takes {kind} such as {EXAMPLES[kind]}")
        found.append((sign * numerals.value(match.group("number")), name))
        rest = rest[match.end() :].strip()
    if sign < 0 and len(found) > 1:
        raise ValueError(f"a minus is read before one number only; it takes {kind} such as {EXAMPLES[kind]}")
    return found


def _other_kind(piece: Tuple[float, str], got: str, wanted: str) -> str:
    value, spelling = piece
    text = f'"{value:g} {spelling}" is {_kind_of_pint(got)}; it takes {wanted} such as {EXAMPLES[wanted]}'
    if got == "ounce" and wanted == "a volume":
        return f"{text}. Did you mean {value:g} US fl oz, or {value:g} oz of water weighed?"
    if got == "fluid_ounce" and wanted == "a weight":
        return f"{text}. Did you mean {value:g} oz on the scale?"
    return text


def _kind_of_pint(name: str) -> str:
    if name == "percent":
        return "a share"
    return next(kind for kind, target in DIMENSIONS.values() if factors.alike(name, target))
