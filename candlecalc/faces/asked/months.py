"""Months in a question: they are of 28 to 31 days, so they are counted on the calendar or refused."""

import re
from collections.abc import Mapping
from datetime import date, timedelta
from typing import Any

from candlecalc.declaration.declared import Function
from candlecalc.quantities import days

MONTHS = re.compile(r"(?P<count>[0-9]{1,3}) *(?:months?|mos?\.?)", re.IGNORECASE)
# A span that begins on the day of this argument.
BEGINS = ("made", "poured")


def as_days(formula: Function, given: Mapping[str, Any]) -> dict[str, Any]:
    """What was given, with months as days; a ValueError where how many days they have cannot be told."""
    return {
        name: f"{_days(name, match, given)} days" if (match := _months(formula, name, value)) else value
        for name, value in given.items()
    }


def _months(formula: Function, name: str, value: Any) -> "re.Match[str] | None":
    counted_in_days = formula.arguments[name].term.unit == "days" and isinstance(value, str)
    return MONTHS.fullmatch(value.strip()) if counted_in_days else None


def _days(name: str, match: "re.Match[str]", given: Mapping[str, Any]) -> int:
    count = int(match["count"])
    begins = next((day for first in BEGINS if first in given and (day := days.read(given[first]))), None)
    if begins:
        return (after(begins, count) - begins).days
    if count % 12:
        raise ValueError(f'{name} is "{match[0]}"; months are of 28 to 31 days: write days or weeks, such as "4 weeks"')
    return 365 * count // 12


def after(day: date, months: int) -> date:
    """The same day so many months later, or the last of that month.

    >>> after(date(2026, 8, 31), 6).isoformat()
    '2027-02-28'
    """
    years, month = divmod(day.month - 1 + months, 12)
    first = date(day.year + years, month + 1, 1)
    next_first = date(first.year + (month == 11), (month + 1) % 12 + 1, 1)
    return min(first + timedelta(days=day.day - 1), next_first - timedelta(days=1))
