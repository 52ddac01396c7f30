"""What an entry takes: numbers that a candle maker can mean, in the units of `calc`."""

from dataclasses import replace

from candlecalc.calc import terms
from candlecalc.declaration.term import Term
from candlecalc.season.fields import term_of


def entry(annotated: object, low: float | None = None, high: float | None = None) -> Term:
    """A term as an entry takes it: within what a candle maker can mean, in the units of `calc`.

    A number outside is a slip: another unit, a fraction that became a date, minutes that became a time of day.
    """
    term = annotated if isinstance(annotated, Term) else term_of(annotated)
    return replace(term, low=term.low if low is None else low, high=term.high if high is None else high)


# In any currency: a pack may cost a million where a coin is worth little.
MONEY = entry(terms.Money, high=1e6)
RATE = entry(terms.HourlyRate, high=1e6)
PRICE = Term("money", "a price", low_excluded=True, high=1e6)
A_WEIGHT, A_DEGREE = Term("g", "a weight", low_excluded=True), Term("C", "a temperature")
MELTS, POURS = entry(A_DEGREE, 20, 110), entry(A_DEGREE, 30, 120)  # wax freezes below, and smokes above
CEILING, FLASH = entry(A_DEGREE, 40, 250), entry(A_DEGREE, 20, 300)
WATER, POT, FILL = entry(A_WEIGHT, 10, 20e3), entry(A_WEIGHT, 100, 200e3), entry(terms.Fill, 5, 20e3)
INSIDE, PANEL, BASE = entry(terms.Length, 10, 600), entry(terms.Length, 5, 600), entry(terms.BaseRise, -50, 50)
MINUTES = entry(terms.Minutes, high=1440)
A_MOMENT = 0.05  # minutes; 0:05, typed for five, is a 288th of a day to a spreadsheet
STATED = term_of(terms.Stated).choices
CURE_DAYS = Term("", "whole days", high=365.0, whole=True)

WEIGHED = ("wax", "fragrance oil", "dye")
KINDS = (*WEIGHED, "wick", "vessel", "lid", "label", "packaging", "other")
UNITS = ("each", "g", "kg", "oz", "lb")
YES_NO = ("yes", "no")
RULES = ("us", "gb", "eu", "other")
