"""Days of the calendar as spreadsheets count them."""

from datetime import date, datetime, timedelta
from numbers import Real
from typing import Any, Optional

# Day 1 is 1 January 1900 by name; counted from here every day from 1 March 1900 is right, as the
# spreadsheets took 1900 for a leap year.
EPOCH = date(1899, 12, 30)
FIRST, LAST = 61, 2958465  # 1 March 1900 to 31 December 9999


def serial(day: date) -> float:
    """A day as the number a cell holds for it.

    >>> serial(date(2026, 3, 14))
    46095.0
    """
    return float((day - EPOCH).days)


def read(value: Any) -> Optional[date]:
    """A day from a date, a cell's number or text such as "2026-03-14"; None where it is none of these."""
    if isinstance(value, date):
        # A time of day is left out. A table's blank date (NaT) is no day.
        return date(value.year, value.month, value.day) if value == value else None
    if isinstance(value, Real) and not isinstance(value, bool) and FIRST <= float(value) < LAST + 1:
        return EPOCH + timedelta(days=int(float(value)))
    if isinstance(value, str):
        try:
            return datetime.strptime(value.strip(), "%Y-%m-%d").date()
        except ValueError:
            return None
    return None
