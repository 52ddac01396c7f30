"""What is typed: how it is shown, and the test that a cell does not hold what its field takes.

Nothing here may hold a number inside a text: a program reads such a text in its user's own language.
"""

from collections.abc import Mapping

import candlecalc.declaration.native as native
from candlecalc.declaration.declared import LARGEST, Term
from candlecalc.quantities.days import serial
from candlecalc.season.fields import FIRST_DAY, LAST_DAY, NAME_LENGTH, NOT_FIRST_IN_NAMES, NOT_IN_NAMES, Field
from candlecalc.workbook.cells.layout import Plan
from candlecalc.workbook.cells.references import quoted
from candlecalc.workbook.cells.styles import BY_UNIT

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
    holds = valid(given, cell, plan)
    other, values = given.needed_when
    if given.required:
        return f"{holds}=0"
    if not other:
        return f"{holds}+ISBLANK({cell})=0"
    if not values:
        return f"{holds}+ISBLANK({cell})*ISBLANK({cells[other]})=0"
    needed = "+".join(f'COUNTIF({cells[other]},"{value}")' for value in values)
    return f"{holds}+ISBLANK({cell})*({needed}=0)=0"


def valid(given: Field, cell: str, plan: Plan) -> str:
    """1 where a cell holds what its field takes, 0 where not, as where it is blank; never an error."""
    if given.term:
        return valid_number(given.term, cell, plan, given.smallest)
    if given.date:
        return valid_date(cell)
    if given.choices:
        return f"IFERROR(OR({','.join(f'{cell}={quoted(choice)}' for choice in given.choices)})*1,0)"
    if given.names_from:
        return _valid_reference(given, cell, plan)
    if given.name:
        return _valid_name(given, cell, plan)
    return f"1-ISERROR({cell})-ISBLANK({cell})"


def valid_number(term: Term, cell: str, plan: Plan, least: float = 0.0) -> str:
    """1 where a cell holds a number that the term takes, 0 where not; never an error.

    `least` is the smallest besides nothing.
    """
    low, high = plan.measures.limits(term)
    tests = [] if low <= -LARGEST else [_than(">" if term.above else ">=", low)]
    tests += [] if high >= LARGEST else [_than("<=", high)]
    # A whole number is one that equals its own whole part; an error has none.
    tests += [f"IFERROR(INT({cell}),-1)"] if term.whole else []
    counted = f"COUNTIFS({','.join(f'{cell},{test}' for test in tests)})" if tests else f"COUNT({cell})"
    if least:
        counted = f'({counted}-COUNTIFS({cell},">"&0,{cell},{_than("<", least)}))'
    # To LibreOffice TRUE is the number 1 in another format.
    return f"{counted}*(1-ISLOGICAL({cell}))"


def valid_date(cell: str) -> str:
    """1 where a cell holds a day that every spreadsheet counts alike, 0 where not; never an error."""
    return f'COUNTIFS({cell},">="&{FIRST_SERIAL},{cell},"<="&{LAST_SERIAL})'


def _than(sign: str, limit: float) -> str:
    """A criterion with its number outside the text, so that it means the same where decimals have a comma."""
    return f'"{sign}"&{native.number(limit)}'


def _valid_reference(given: Field, cell: str, plan: Plan) -> str:
    there = plan.layouts[given.names_from]
    found = f"MATCH({cell},{there.range(there.names)},0)"
    # The first of the range is its head.
    known = f"(INDEX({there.range('kind')},{found})={quoted(given.kind)})" if given.kind else f"({found}>1)"
    return f"IFERROR({known}*{_plain(cell)},0)"


def _valid_name(given: Field, cell: str, plan: Plan) -> str:
    tests = (
        f"ISTEXT({cell})",
        f"(LEN({cell})<={NAME_LENGTH})",
        f"ISERROR(FIND(LEFT({cell}),{quoted(NOT_FIRST_IN_NAMES)}))",
        f"({cell}<>{quoted(plan.head(given.head))})",
        _plain(cell),
    )
    return f"IFERROR({'*'.join(tests)},0)"


def _plain(cell: str) -> str:
    """Whether a name has no wild card of a spreadsheet's look-ups in it, and no blank that nobody sees."""
    bare = cell
    for mark in (*NOT_IN_NAMES, "\u00a0"):
        bare = f'SUBSTITUTE({bare},{quoted(mark)},"")'
    return f"EXACT(TRIM({bare}),{cell})"
