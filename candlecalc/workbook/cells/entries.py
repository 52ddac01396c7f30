"""What is typed: how it is shown, and the test that a cell does not hold what its field takes.

Nothing here may hold a number inside a text: a program reads such a text in its user's own language.
"""

from collections.abc import Mapping, Sequence

import candlecalc.declaration.native as native
from candlecalc.declaration.declared import LARGEST, Term
from candlecalc.declaration.term import limits, plain
from candlecalc.quantities.days import serial
from candlecalc.season.fields import FIRST_DAY, LAST_DAY, NAME_LENGTH, NOT_FIRST_IN_NAMES, NOT_IN_NAMES, Field
from candlecalc.season.tables import TABLES
from candlecalc.workbook.cells.layout import Plan
from candlecalc.workbook.cells.references import quoted
from candlecalc.workbook.cells.styles import BY_UNIT
from candlecalc.workbook.cells.words import TYPED

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


def fault(given: Field, cells: Mapping[str, str], codes: Sequence[str], plan: Plan) -> str:
    """Of what is wrong with an entry its code, in a cell's language: an empty text where nothing is; never an error.

    Its row is one in which something is typed. `codes` go with `told`.
    """
    cell = cells[given.key]
    holds = valid(given, cell, plan)
    missing = f"+ISBLANK({cell})*{needed}" if (needed := _needed(given, cells)) else ""
    # 0: nothing is wrong; 1: it is missing; from 2 on: what stands there is not taken.
    # A blank is asked by itself: to a look-up it is a 0 in some programs, and may be found.
    wrong = f"(1-ISBLANK({cell}))*(1-{holds})*{_which(given, cell, plan)}{missing}"
    return f'CHOOSE(1+{wrong},"",{",".join(codes)})'


def told(given: Field, label: str, plan: Plan) -> list[str]:
    """What can be said of an entry: that it is missing, then each way of not being taken."""
    not_taken = _no_such_name(given, label) if given.names_from else _not_taken(given, label, plan)
    return [_missing(given, label, plan), *not_taken]


def ways(given: Field) -> int:
    """How many things `told` says."""
    if given.names_from:
        return 4 if given.kind else 3
    return 3 if given.term else 2


def bad(given: Field, cells: Mapping[str, str], plan: Plan) -> str:
    """A test that is true where an entry that stands alone is not what its field takes; never an error."""
    cell = cells[given.key]
    return f"{valid(given, cell, plan)}=0" if given.required else f"{valid(given, cell, plan)}+ISBLANK({cell})=0"


def _which(given: Field, cell: str, plan: Plan) -> str:
    """2, or from 3 on for another way of being wrong: a text for a number, a name of another kind, an error."""
    if given.term:
        return f"(2+ISTEXT({cell}))"
    if given.kind:
        there = plan.layouts[given.names_from]
        return f"(2+ISNUMBER(MATCH({cell},{there.range(there.names)},0))+2*ISERROR({cell}))"
    return f"(2+ISERROR({cell}))" if given.names_from else "2"


def _needed(given: Field, cells: Mapping[str, str]) -> str:
    """1 where a row with something in it must have the entry, 0 where not; nothing where none must."""
    other, values = given.needed_when
    if given.required:
        return "1"
    if not other:
        return ""
    if not values:
        return f"(1-ISBLANK({cells[other]}))"
    return "(" + "+".join(f'COUNTIF({cells[other]},"{value}")' for value in values) + ")"


def _missing(given: Field, label: str, plan: Plan) -> str:
    """What to do about an entry that is missing."""
    if given.missing:
        return f"{label}: {given.missing}"
    if given.choices:
        return f"{label}: choose {' or '.join(given.choices)}"
    if given.name:
        return f"{label}: type a name"
    return f"{label}: {'choose' if given.names_from else 'type'} {plan.head(given.help)}"


def _not_taken(given: Field, label: str, plan: Plan) -> list[str]:
    """What to do about an entry that is not taken; of a number, first of one that is out of range, then of a text."""
    if given.name:
        first = " ".join(NOT_FIRST_IN_NAMES)
        marks = f"without {' '.join(NOT_IN_NAMES)}, not after {first}"
        return [f"{label}: takes a name with no blank at its end, at most {NAME_LENGTH} characters, {marks}"]
    takes = f"{label}: takes {allowed(plan, given)}"
    if not given.term:
        return [takes]
    alone = f"{label}: type the number alone: no unit, and the decimal mark that your program uses"
    return [takes + _slip(given, given.term), alone]


def _slip(given: Field, term: Term) -> str:
    """What a spreadsheet is likely to have made of another number that was typed."""
    if term.unit.startswith("of "):
        return "; type it with its %"
    if given.smallest:
        return "; type 5 for five minutes, not 0:05"
    return "; type 0.5 for a half, not 1/2" if not term.unit and not term.whole else ""


def _no_such_name(given: Field, label: str) -> list[str]:
    """What is said of a name that is not there, then of one that is of another kind, and of an error."""
    title = TABLES[given.names_from].title
    other_kind = [f"{label}: no {given.kind} on {title}: {TYPED}"] if given.kind else []
    not_there = f"{label}: not on {title}: {TYPED}: a blank at its end, or another spelling?"
    return [not_there, *other_kind, f"{label}: holds an error"]


def allowed(plan: Plan, given: Field) -> str:
    """What a cell takes, in words and in the workbook's own units."""
    if given.names_from:
        of = f" of kind {given.kind}" if given.kind else ""
        return f"a name from {TABLES[given.names_from].title}{of}"
    if not given.term:
        return given.allowed()
    low, high = plan.measures.limits(given.term)
    if low <= -LARGEST:
        return "a number"
    percent = given.term.unit.startswith("of ")
    kind = "a percentage" if percent else "a whole number" if given.term.whole else "a number"
    first, last = (f"{plain(limit * 100)} %" if percent else plain(limit) for limit in (low, high))
    unit = "" if percent else _unit(plan, given)
    return f"{kind}, {limits(first, '' if high >= LARGEST else last, given.term.low_excluded)}{unit}"


def _unit(plan: Plan, given: Field) -> str:
    """The unit that a head names: "Pour at, {temperature}" is in degrees."""
    unit = given.head.partition(", ")[2]
    return f" {plan.head(unit)}" if "{" in unit or "/" in unit else ""


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
    if given.joins:
        return f"IFERROR((1-ISBLANK({cell}))*{_plain(cell, NOT_IN_NAMES if given.sought else '')},0)"
    return f"(1-ISERROR({cell})-ISBLANK({cell}))"


def valid_number(term: Term, cell: str, plan: Plan, least: float = 0.0) -> str:
    """1 where a cell holds a number that the term takes, 0 where not; never an error.

    `least` is the smallest besides nothing.
    """
    low, high = plan.measures.limits(term)
    tests = [] if low <= -LARGEST else [_than(">" if term.low_excluded else ">=", low)]
    tests += [] if high >= LARGEST else [_than("<=", high)]
    # A whole number is one that equals its own whole part; an error has none.
    tests += [f"IFERROR(INT({cell}),-1)"] if term.whole else []
    counted = f"COUNTIFS({','.join(f'{cell},{test}' for test in tests)})" if tests else f"COUNT({cell})"
    if least:
        counted = f'({counted}-COUNTIFS({cell},">"&0,{cell},{_than("<", least)}))'
    # To LibreOffice TRUE is the number 1 in another format.
    return f"{counted}*(1-ISLOGICAL({cell}))"


def valid_date(cell: str) -> str:
    """1 where a cell holds a day alone that every spreadsheet counts alike, 0 where not; never an error."""
    return f'COUNTIFS({cell},">="&{FIRST_SERIAL},{cell},"<="&{LAST_SERIAL},{cell},IFERROR(INT({cell}),-1))'


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


def _plain(cell: str, marks: str = NOT_IN_NAMES) -> str:
    """Whether a text has no wild card of a spreadsheet's look-ups in it, and no blank that nobody sees."""
    bare = cell
    for mark in (*marks, "\u00a0"):
        bare = f'SUBSTITUTE({bare},{quoted(mark)},"")'
    return f"EXACT(TRIM({bare}),{cell})"
