"""What an argument of a result can be: a cell of the same row, one of another tab, a name, a number or a text."""

from collections.abc import Callable, Sequence

from openpyxl.utils import absolute_coordinate

import candlecalc.declaration.native as native
from candlecalc.workbook.cells.place import OWN_ROW, Place, Plan

Reference = Callable[[Plan, Place], str]


def own(key: str) -> Reference:
    """The cell of the same row and tab."""
    return lambda plan, place: place.cell(key)


def span(first: str, last: str) -> Reference:
    """Cells side by side in the same row and tab."""
    return lambda plan, place: f"{place.cell(first)}:{place.cell(last)}"


def carry(table: str, key: str) -> Reference:
    """The same row of a tab where people type."""
    return lambda plan, place: f"INDEX({plan.places[table].range(key)},{place.cell(OWN_ROW)})"


def same(table: str, key: str, last: str = "") -> Reference:
    """The same row of another tab, one cell or several side by side, where nobody types."""

    def formula(plan: Plan, place: Place) -> str:
        there = plan.places[table]
        end = f":{there.cell(last)}" if last else ""
        return f"{there.sheet}!{there.cell(key)}{end}"

    return formula


def at(table: str, key: str, row: str | Reference) -> Reference:
    """A value of another tab's row, by the row's place there."""

    def formula(plan: Plan, place: Place) -> str:
        return f"INDEX({plan.places[table].range(key)},{reference_to(row)(plan, place)})"

    return formula


def running(key: str) -> Reference:
    """An own cell with its running number down the column: "wax 2" for the second wax."""

    def formula(plan: Plan, place: Place) -> str:
        cell, head = place.cell(key), f"${place.letters[key]}${place.first_row - 1}"
        return f'{cell}&" "&COUNTIF({head}:{cell},{cell})'

    return formula


def as_text(reference: Reference) -> Reference:
    """A looked-up text, where a blank is no text rather than 0."""
    return lambda plan, place: f'{reference(plan, place)}&""'


def standing(entry: str, first: int, last: int, beside: str, sheet: str = "") -> str:
    """An entry that is typed once: the cell of its column in the row of a locked cell beside it.

    `first` and `last` are the rows of locked cells over and under it. A plain reference would follow the entry
    when it is cut and pasted elsewhere. `sheet` is named where the formula is on another tab.
    """
    column = entry.rstrip("0123456789")
    over, end, row = (absolute_coordinate(cell) for cell in (f"{column}{first}", f"{column}{last}", beside))
    there = f"{sheet}!" if sheet else ""
    return f"INDEX({there}{over}:{end},ROW({there}{row})-ROW({there}{over})+1)"


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
