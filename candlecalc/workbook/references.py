"""What an argument of a result can be: a cell of the same row, one of another tab, a name, a number or a text."""

from collections.abc import Callable, Sequence

import candlecalc.native as native
from candlecalc.workbook.place import ABOVE, ROW, Place, Plan

Reference = Callable[[Plan, Place], str]


def own(key: str) -> Reference:
    """The cell of the same row and tab."""
    return lambda plan, place: f"${place.letters[key]}{ROW}"


def span(first: str, last: str) -> Reference:
    """Cells side by side in the same row and tab."""
    return lambda plan, place: f"${place.letters[first]}{ROW}:${place.letters[last]}{ROW}"


def carry(table: str, key: str) -> Reference:
    """The same row of a tab where people type: by place, since cut and paste there moves plain references."""

    def formula(plan: Plan, place: Place) -> str:
        # Counted from the head to the row above: a cell that counts itself reads as circular.
        return f"INDEX({plan.places[table].range(key)},ROWS($A${place.first_row - 1}:$A{ABOVE}))"

    return formula


def same(table: str, key: str, last: str = "") -> Reference:
    """The same row of a working tab, one cell or several side by side."""

    def formula(plan: Plan, place: Place) -> str:
        there = plan.places[table]
        end = f":${there.letters[last]}{ROW}" if last else ""
        return f"{there.sheet}!${there.letters[key]}{ROW}{end}"

    return formula


def at(table: str, key: str, row: str | Reference) -> Reference:
    """A value of another tab's row, by the row's place there."""

    def formula(plan: Plan, place: Place) -> str:
        return f"INDEX({plan.places[table].range(key)},{reference_to(row)(plan, place)})"

    return formula


def running(key: str) -> Reference:
    """An own cell's text with its running number down the column: "wax 2" for the second wax."""

    def formula(plan: Plan, place: Place) -> str:
        cell, letter = own(key)(plan, place), place.letters[key]
        return f'{cell}&" "&COUNTIF(${letter}${place.first_row}:{cell},{cell})'

    return formula


def as_text(reference: Reference) -> Reference:
    """A looked-up text, where a blank is no text rather than 0."""
    return lambda plan, place: f'{reference(plan, place)}&""'


def named(name: str) -> Reference:
    """A named cell of the workbook."""
    return lambda plan, place: name


def constant(value: float) -> Reference:
    return lambda plan, place: native.number(value)


def text(words: str) -> Reference:
    return lambda plan, place: quoted(words)


def reference_to(given: str | Reference) -> Reference:
    return own(given) if isinstance(given, str) else given


def guarded(expression: str, tests: Sequence[str]) -> str:
    """An expression that stays blank while one of the tests holds."""
    if not tests:
        return expression
    test = tests[0] if len(tests) == 1 else f"OR({','.join(tests)})"
    return f'IF({test},"",{expression})'


def blank(reference: str | Reference) -> Reference:
    """The test that a cell is blank."""
    return lambda plan, place: f'{reference_to(reference)(plan, place)}=""'


def differs(key: str, word: str) -> Reference:
    """The test that an own cell does not hold a word."""
    return lambda plan, place: f"{own(key)(plan, place)}<>{quoted(word)}"


def not_above_zero(key: str) -> Reference:
    """The test that an own number is nothing or less."""
    return lambda plan, place: f"{own(key)(plan, place)}<=0"


def as_test(given: str | Reference) -> Reference:
    return blank(given) if isinstance(given, str) else given


def place_of(table: str, name: str | Reference) -> Reference:
    """The place of a name among the rows of another tab; of a tab that says so, among the rows that are ready.

    What a row lacks would else count as nothing where the row is used, and make a candle cheaper.
    """

    def formula(plan: Plan, place: Place) -> str:
        there = plan.places[table]
        names = USABLE if USABLE in there.letters else next(iter(there.letters))
        return f"MATCH({reference_to(name)(plan, place)},{there.range(names)},0)"

    return formula


USABLE = "usable"  # the column of names of a tab's rows that are ready


def quoted(text: str) -> str:
    """A text inside a formula."""
    return '"' + text.replace('"', '""') + '"'
