"""What is typed: how it is shown, and the test that a cell does not hold what its field takes."""

from collections.abc import Mapping

import candlecalc.native as native
from candlecalc.days import serial
from candlecalc.formula import LARGEST, Term
from candlecalc.season.fields import FIRST_DAY, LAST_DAY, NAME_LENGTH, NOT_IN_NAMES, Field
from candlecalc.workbook.place import Plan
from candlecalc.workbook.references import quoted
from candlecalc.workbook.styles import BY_UNIT

SMALL_SHARE = 0.1  # shares up to this, such as a dye's, are told in hundredths of a percent
# The days that an entry takes, as a cell holds them.
FIRST_SERIAL, LAST_SERIAL = f"{serial(FIRST_DAY):.0f}", f"{serial(LAST_DAY):.0f}"


def entry_format(given: Field) -> str:
    """The number format of an entry, by its term."""
    if given.date:
        return "date"
    if given.term is None:
        return "text"
    if given.term.unit.startswith("of "):
        return "fine_percent" if given.term.high <= SMALL_SHARE else "percent"
    return BY_UNIT.get(given.term.unit, "count")


def bad(given: Field, cells: Mapping[str, str], plan: Plan) -> str:
    """A test, in a cell's language, that is true where an entry is not what its field takes.

    It must itself never be an error: what was typed may be one.
    Whether an entry is valid is a number: Excel finds that FALSE=0 is not so.
    """
    cell = cells[given.key]
    valid = _valid(given, cell, plan)
    other, values = given.needed_when
    if given.required:
        return f"{valid}=0"
    if not other:
        return f"{valid}+ISBLANK({cell})=0"
    needed = "+".join(f'COUNTIF({cells[other]},"{value}")' for value in values)
    return f"{valid}+ISBLANK({cell})*({needed}=0)=0"


def _valid(given: Field, cell: str, plan: Plan) -> str:
    if given.term:
        return valid_number(given.term, cell, plan)
    if given.date:
        return f'COUNTIFS({cell},">={FIRST_SERIAL}",{cell},"<={LAST_SERIAL}")'
    if given.choices:
        return f"IFERROR(OR({','.join(f'{cell}={quoted(choice)}' for choice in given.choices)})*1,0)"
    if given.of:
        there = plan.places[given.of]
        names = there.range(next(iter(there.letters)))
        found = f"MATCH({cell},{names},0)"
        known = f"(INDEX({there.range('kind')},{found})={quoted(given.kind)})*1" if given.kind else found
        return f"IFERROR({known},0)*{_plain_name(cell)}"
    if given.name:
        return f"ISTEXT({cell})*(IFERROR(LEN({cell}),99)<={NAME_LENGTH})*{_plain_name(cell)}"
    return f"1-ISERROR({cell})-ISBLANK({cell})"


def valid_number(term: Term, cell: str, plan: Plan) -> str:
    """1 where a cell holds a number that the term takes, 0 where not; never an error."""
    low, high = plan.measures.limits(term)
    limits = [] if low <= -LARGEST else [f'">{"" if term.above else "="}{native.number(low)}"']
    limits += [] if high >= LARGEST else [f'"<={native.number(high)}"']
    # A whole number is one that equals its own whole part; an error has none.
    limits += [f"IFERROR(INT({cell}),-1)"] if term.whole else []
    return f"COUNTIFS({','.join(f'{cell},{limit}' for limit in limits)})" if limits else f"COUNT({cell})"


def _plain_name(cell: str) -> str:
    # A spreadsheet looks names up with these as wild cards.
    return "*".join(f"ISERROR(FIND({quoted(mark)},{cell}))" for mark in NOT_IN_NAMES)
