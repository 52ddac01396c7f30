"""Curing: when to pour, and when what was poured is ready."""

import re
from datetime import date, timedelta
from typing import FrozenSet, List

from candlecalc.calc.sources import CALENDAR
from candlecalc.calc.terms.plan import (
    Cure,
    DaysOff,
    Evenings,
    Finishing,
    PourDay,
    PouredDay,
    ReadyDay,
    SaleDay,
    Working,
)
from candlecalc.declaration.declared import formula

WEEK = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
DAY = timedelta(days=1)


@formula(
    native="INT(poured)+cure",
    source=CALENDAR,
    words="cure time, when can I sell, when can I burn, cured, ready date, curing, when is it ready, how long "
    "to cure, cure date, wait before burning",
)
def ready_on(poured: PouredDay, cure: Cure) -> ReadyDay:
    """The day on which candles have cured: ready to label, to test or to sell.

    How long a wax and an oil need is your supplier's advice and your own tests.

    >>> ready_on(poured="2026-11-17", cure=14).isoformat()
    '2026-12-01'
    """
    return poured + timedelta(days=cure)


@formula(
    native="WORKDAY(WORKDAY(sale,0-finishing)-cure+1,0-evenings)",
    source=CALENDAR,
    words="backward schedule, back from a deadline, "
    "when to pour, when to start, Christmas rush, deadline, market date, how far ahead, cure time, "
    "curing, last day to pour, working back from a market, two weeks of cure, may I light it, when to "
    "light",
    notes={"": "counted Monday to Friday; for Saturdays, Sundays or days off use pour_by_own_days"},
)
def pour_by(sale: SaleDay, cure: Cure, evenings: Evenings = 1.0, finishing: Finishing = 0.0) -> PourDay:
    """The last day to start pouring for a market or an order, working Monday to Friday.

    Back from the day of sale: the working days to label and pack, all before
    it; then the days of cure, weekends too; then the evenings of pouring. The
    last pour is on the last working day that leaves its cure. Saturdays and
    Sundays are left out: if you pour then too, or are away on some days, use
    `pour_by_own_days`.

    >>> pour_by(sale="2026-12-05", cure=14, evenings=3, finishing=2).isoformat()
    '2026-11-17'
    """
    return _pour_by(sale, cure, evenings, finishing, frozenset(range(5)), frozenset())


@formula(
    no_native="it reads the maker's own week and days off",
    source=CALENDAR,
    words="when to pour, when to start, Christmas rush, deadline, weekends, market date, cure time, curing, "
    "last day to pour, days off, may I light it, when to light",
)
def pour_by_own_days(
    sale: SaleDay,
    cure: Cure,
    working: Working,
    evenings: Evenings = 1.0,
    finishing: Finishing = 0.0,
    closed: DaysOff = None,
) -> PourDay:
    """The last day to start pouring for a market or an order, on the days that you work.

    Counted as in `pour_by`, with your own week and the days that you are away.

    >>> pour_by_own_days(sale="2026-12-05", cure=14, working="Tue Thu Sat", evenings=3).isoformat()
    '2026-11-17'
    """
    return _pour_by(sale, cure, evenings, finishing, _week(working), frozenset(day for day in closed or () if day))


def _pour_by(
    sale: date, cure: float, evenings: float, finishing: float, week: FrozenSet[int], closed: FrozenSet[date]
) -> date:
    cured = _back(sale, finishing, week, closed)
    return _back(cured - timedelta(days=cure) + DAY, evenings, week, closed)


def _back(day: date, working_days: float, week: FrozenSet[int], closed: FrozenSet[date]) -> date:
    """So many working days before a day."""
    while working_days > 0:
        day -= DAY
        working_days -= day.weekday() in week and day not in closed
    return day


def _week(working: str) -> FrozenSet[int]:
    """The days of the week in words such as "Mon-Fri" or "Tue Thu Sat"."""
    words = working.lower().replace("\u2013", "-")
    if words in ("every day", "daily", "all"):
        return frozenset(range(7))
    words = words.replace("weekends", "sat sun").replace("weekdays", "mon-fri").replace(" and ", " ")
    days: List[int] = []
    for part in re.split(r"[\s,;]+", re.sub(r"\s*-\s*", "-", words)):
        ends = [name[:3] for name in part.split("-")]
        if len(ends) > 2 or not set(ends) <= set(WEEK):
            raise ValueError(f'pour_by_own_days: working is "{working}"; it takes days such as "Mon-Fri" or "Tue Thu".')
        first, last = WEEK.index(ends[0]), WEEK.index(ends[-1])
        days += [day % 7 for day in range(first, last + 1 + 7 * (last < first))]
    return frozenset(days)
