"""The columns of a tab, declared once: what is typed, what is worked out, and what is looked up.

A column knows its head, its number format and its formula, written once with `ROW` for the row. No
column spells out arithmetic: a result names the declared function, and which cells feed its arguments.
"""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field

import candlecalc.native as native
from candlecalc.days import serial
from candlecalc.formula import LARGEST, Formula, Term, find
from candlecalc.guard import default, native_of
from candlecalc.scaling import scales_with
from candlecalc.season.fields import FIRST_DAY, LAST_DAY, NAME_LENGTH, NOT_IN_NAMES, Field
from candlecalc.season.measures import Measures

ROW = "\u00a7"  # stands for the row number in a formula that is written once a column
ABOVE = "\u00a4"  # ... and for the row above it
FIRST_ROW = 4


def in_row(formula: str, row: int) -> str:
    """A column's formula as it stands in one row."""
    return formula.replace(ROW, str(row)).replace(ABOVE, str(row - 1))


# Number format by the unit of a term.
FORMATS = {
    "g": "weight", "money": "money", "money per unit": "unit_cost", "money per h": "money", "mm": "length",
    "ml": "volume", "C": "temperature", "g/ml": "density", "min": "minutes", "h": "hours",
}  # fmt: skip


SMALL_SHARE = 0.1  # shares up to this, such as a dye's, are told in hundredths of a percent


@dataclass(frozen=True)
class Place:
    """Where a table stands: its tab, its rows, and the letter of each column."""

    title: str
    last_row: int
    letters: Mapping[str, str]
    first_row: int = FIRST_ROW

    @property
    def sheet(self) -> str:
        return f"'{self.title}'" if " " in self.title else self.title

    def range(self, key: str, last: str = "") -> str:
        """A whole column, or several side by side, as other tabs refer to it."""
        start, end = self.letters[key], self.letters[last or key]
        return f"{self.sheet}!${start}${self.first_row}:${end}${self.last_row}"


@dataclass(frozen=True)
class Plan:
    """What formulas need to know of the workbook they stand in."""

    measures: Measures
    currency: str
    coin_digits: int
    places: dict[str, Place] = field(default_factory=dict)

    def head(self, text: str) -> str:
        return self.measures.shown(text, self.currency)


# --- what an argument can be ------------------------------------------------------------------

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
        return f"INDEX({plan.places[table].range(key)},{_reference(row)(plan, place)})"

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


def _reference(given: str | Reference) -> Reference:
    return own(given) if isinstance(given, str) else given


# --- columns ----------------------------------------------------------------------------------


@dataclass(frozen=True, kw_only=True)
class Column:
    """One column of a table, or one line of a card."""

    head: str
    format: str = "text"
    width: float = 0
    # Blank while one of these is blank: an own column by its key, or a whole test.
    when: tuple[str | Reference, ...] = ("ready",)
    # (cell, value): the value where the cell is blank.
    instead: tuple[str | Reference, str | Reference] | None = None

    def expression(self, plan: Plan, place: Place) -> str:
        raise NotImplementedError

    def formula(self, plan: Plan, place: Place) -> str:
        """The cell's formula with `ROW` for the row: blank while what it waits for is blank."""
        text = self.expression(plan, place)
        if self.instead:
            cell, value = (_reference(one)(plan, place) for one in self.instead)
            text = f'CHOOSE(1+({cell}=""),{text},{value})'
        return "=" + guarded(text, [_test(one)(plan, place) for one in self.when])


def guarded(expression: str, tests: Sequence[str]) -> str:
    """An expression that stays blank while one of the tests holds."""
    if not tests:
        return expression
    test = tests[0] if len(tests) == 1 else f"OR({','.join(tests)})"
    return f'IF({test},"",{expression})'


def blank(reference: str | Reference) -> Reference:
    """The test that a cell is blank."""
    return lambda plan, place: f'{_reference(reference)(plan, place)}=""'


def differs(key: str, word: str) -> Reference:
    """The test that an own cell does not hold a word."""
    return lambda plan, place: f"{own(key)(plan, place)}<>{quoted(word)}"


def not_above_zero(key: str) -> Reference:
    """The test that an own number is nothing or less."""
    return lambda plan, place: f"{own(key)(plan, place)}<=0"


def _test(given: str | Reference) -> Reference:
    return blank(given) if isinstance(given, str) else given


@dataclass(frozen=True, kw_only=True)
class Result(Column):
    """What a declared function makes of other cells."""

    function: str
    arguments: Mapping[str, str | Reference]

    @property
    def declared(self) -> Formula:
        return find(self.function)

    def expression(self, plan: Plan, place: Place) -> str:
        given = {name: _reference(one)(plan, place) for name, one in self.arguments.items()}
        return call(self.declared, given)


@dataclass(frozen=True, kw_only=True)
class Look(Column):
    """A value from elsewhere, as it stands."""

    reference: Reference

    def expression(self, plan: Plan, place: Place) -> str:
        return self.reference(plan, place)


@dataclass(frozen=True, kw_only=True)
class Total(Column):
    """A sum of cells, or the least of them; text among them counts as nothing, an error spreads."""

    parts: Sequence[str | Reference]
    of: str = "SUM"

    def expression(self, plan: Plan, place: Place) -> str:
        return f"{self.of}({','.join(_reference(part)(plan, place) for part in self.parts)})"


@dataclass(frozen=True, kw_only=True)
class SumWhere(Column):
    """The sum of another tab's column over the rows that carry this row's name, added to an own part."""

    part: str | Reference
    table: str
    column: str
    by: str
    name: str

    def expression(self, plan: Plan, place: Place) -> str:
        there = plan.places[self.table]
        part, name = (_reference(one)(plan, place) for one in (self.part, self.name))
        return f"SUM({part},SUMIFS({there.range(self.column)},{there.range(self.by)},{name}))"


@dataclass(frozen=True, kw_only=True)
class CountWhere(Column):
    """How many rows of another tab carry this row's name."""

    table: str
    by: str
    name: str

    def expression(self, plan: Plan, place: Place) -> str:
        return f"COUNTIF({plan.places[self.table].range(self.by)},{_reference(self.name)(plan, place)})"


def call(formula: Formula, given: Mapping[str, str]) -> str:
    """A declared function's native form with its arguments put in, in the workbook's own units."""
    values = {
        name: _converted(formula, formula.arguments[name].term, native.Leaf(text)) for name, text in given.items()
    }
    for name, argument in formula.arguments.items():
        if name not in values:
            values[name] = default(argument)
    return native.spell(_converted_back(formula, native.replace(native_of(formula), values)))


def asked(function: str, **given: str) -> str:
    """The same of a function by its name."""
    return call(find(function), given)


def _converted(formula: Formula, term: Term, cell: native.Node) -> native.Node:
    """A cell in the workbook's unit as the argument in `calc`'s, where the function does not scale."""
    if term.unit == "C":
        moved = native.Operation("-", cell, native.Leaf("temp_zero"))
        return native.Operation("/", moved, native.Leaf("temp_step"))
    factor = {"g": "weight_g", "mm": "length_mm"}.get(term.unit)
    if factor and not scales_with(formula.name, term.unit):
        return native.Operation("*", cell, native.Leaf(factor))
    return cell


def _converted_back(formula: Formula, tree: native.Node) -> native.Node:
    unit = formula.result.unit
    factor = {"g": "weight_g", "mm": "length_mm"}.get(unit)
    if factor and not scales_with(formula.name, unit):
        return native.Operation("/", tree, native.Leaf(factor))
    return tree


# --- shorthands for the tabs ------------------------------------------------------------------

When = tuple[str | Reference, ...]
Instead = tuple[str | Reference, str | Reference] | None
READY: When = ("ready",)


def result(
    head: str,
    function: str,
    *,
    when: When = READY,
    instead: Instead = None,
    format: str = "",  # noqa: A002
    **arguments: str | Reference,
) -> Result:
    """A result column: the format is the one of the function's result."""
    term = find(function).result
    shown = format or ("percent" if term.unit.startswith("of ") else FORMATS.get(term.unit, "count"))
    return Result(head=head, function=function, arguments=arguments, when=when, instead=instead, format=shown)


def look(
    head: str,
    reference: Reference,
    format: str = "text",  # noqa: A002
    *,
    when: When = READY,
    instead: Instead = None,
    width: float = 0,
) -> Look:
    return Look(head=head, reference=reference, format=format, when=when, instead=instead, width=width)


def row_of(head: str, table: str, name: Reference) -> Look:
    """A column that holds the place of a name in another tab; blank where no name is given."""
    return look(head, place_of(table, name), "row", when=("ready", blank(name)), width=7)


def place_of(table: str, name: str | Reference) -> Reference:
    """The place of a name among the rows of another tab."""

    def formula(plan: Plan, place: Place) -> str:
        there = plan.places[table]
        return f"MATCH({_reference(name)(plan, place)},{there.range(next(iter(there.letters)))},0)"

    return formula


def total(head: str, *parts: str | Reference, format: str = "money", of: str = "SUM", when: When = READY) -> Total:  # noqa: A002
    return Total(head=head, parts=parts, format=format, of=of, when=when)


# --- what is typed ----------------------------------------------------------------------------

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
    return FORMATS.get(given.term.unit, "count")


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


def quoted(text: str) -> str:
    """A text inside a formula."""
    return '"' + text.replace('"', '""') + '"'
