"""Days of the calendar as spreadsheets count them."""

import re
from datetime import date, datetime, timedelta
from numbers import Real
from typing import Any, List, Optional

# Day 1 is 1 January 1900 by name; counted from here every day from 1 March 1900 is right, as the
# spreadsheets took 1900 for a leap year.
EPOCH = date(1899, 12, 30)
FIRST, LAST = 61, 2958465  # 1 March 1900 to 31 December 9999
MONTHS = ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november",
          "december"]  # fmt: skip
WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"]
# A month in words says which number is the day: "5 Dec 2026", "December 5, 2026".
IN_WORDS = re.compile(
    r"(?:(?P<first>[0-9]{1,2})[ -]+)?(?P<month>[a-z]{3,9})\.?[ -]+"
    r"(?:(?P<second>[0-9]{1,2})(?: *,|(?= )) *)?(?P<year>[0-9]{4})",
    re.IGNORECASE,
)
IN_NUMBERS = re.compile(r"([0-9]{1,2})[/.-]([0-9]{1,2})[/.-]([0-9]{4})")


def serial(day: date) -> float:
    """A day as the number a cell holds for it.

    >>> serial(date(2026, 3, 14))
    46095.0
    """
    return float((day - EPOCH).days)


def read(value: Any) -> Optional[date]:
    """A day from a date, a cell's number or text such as "2026-03-14" or "14 Mar 2026"; None where it is none."""
    if isinstance(value, date):
        # A time of day is left out. A table's blank date (NaT) is no day.
        return date(value.year, value.month, value.day) if value == value else None
    number: Any = value if isinstance(value, Real) and not isinstance(value, bool) else 0
    if FIRST <= number < LAST + 1:
        return EPOCH + timedelta(days=int(number))
    if isinstance(value, str):
        return _iso(value.strip()) or _in_words(value.strip())
    return None


def meant(value: Any) -> List[date]:
    """The days that a text such as "5/12/2026" can mean, the day first where it can be; it is read as none of them."""
    match = IN_NUMBERS.fullmatch(value.strip()) if isinstance(value, str) else None
    if not match:
        return []
    first, second, year = match.groups()
    days = [_iso(f"{year}-{month}-{day}") for day, month in ((first, second), (second, first))]
    return [day for place, day in enumerate(days) if day and day not in days[:place]]


def _iso(text: str) -> Optional[date]:
    try:
        return datetime.strptime(text, "%Y-%m-%d").date()
    except ValueError:
        return None


def _in_words(text: str) -> Optional[date]:
    match = IN_WORDS.fullmatch(text)
    if not match or bool(match.group("first")) == bool(match.group("second")):
        return None
    name = match.group("month").lower()
    # Sept is the one name that is also cut after four letters.
    name = "september" if name == "sept" else name
    numbers = [number for number, month in enumerate(MONTHS, start=1) if name in (month, month[:3])]
    day = match.group("first") or match.group("second")
    return _iso(f"{match.group('year')}-{numbers[0]}-{day}") if numbers else None
