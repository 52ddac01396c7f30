"""What a formula is made of: expressions that spell themselves in a cell's language and say what they read.

A column's formula is one such tree, written once. `fed_by` walks it and answers what a cell depends on.
"""

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field

from openpyxl.utils import absolute_coordinate

import candlecalc.declaration.native as native
from candlecalc.workbook.cells.layout import ABOVE, OWN_ROW, WHEN_READY, Layout, Plan

Source = tuple[str, str]  # a column, as its table and its key; a named cell has no table


class Expression:
    """A part of a formula, as it stands in a cell of one tab."""

    def spell(self, plan: Plan, layout: Layout) -> str:
        raise NotImplementedError

    @property
    def parts(self) -> Iterable["Expression"]:
        """The expressions inside it."""
        return ()

    def reads(self, plan: Plan, layout: Layout) -> Iterable[Source]:
        """What it reads by itself, besides what its parts read."""
        return ()


Given = str | Expression  # an own column by its key, or an expression


def fed_by(expression: Expression, plan: Plan, layout: Layout) -> set[Source]:
    """Every column and named cell that an expression reads in a cell of this tab."""
    found: set[Source] = set()
    ahead = [expression]
    while ahead:
        one = ahead.pop()
        found.update(one.reads(plan, layout))
        ahead.extend(one.parts)
    return found


@dataclass(frozen=True)
class Own(Expression):
    """The cell of the same row and tab, or the cells from it to another."""

    key: str
    last: str = ""

    def spell(self, plan: Plan, layout: Layout) -> str:
        return f"{layout.cell(self.key)}:{layout.cell(self.last)}" if self.last else layout.cell(self.key)

    def reads(self, plan: Plan, layout: Layout) -> Iterable[Source]:
        return _columns(layout, self.key, self.last)


@dataclass(frozen=True)
class Carry(Expression):
    """The same row of a tab where people type."""

    table: str
    key: str

    def spell(self, plan: Plan, layout: Layout) -> str:
        return f"INDEX({plan.layouts[self.table].range(self.key)},{layout.cell(OWN_ROW)})"

    def reads(self, plan: Plan, layout: Layout) -> Iterable[Source]:
        return [(self.table, self.key)]


@dataclass(frozen=True)
class Same(Expression):
    """The same row of another tab, one cell or several side by side, where nobody types."""

    table: str
    key: str
    last: str = ""

    def spell(self, plan: Plan, layout: Layout) -> str:
        there = plan.layouts[self.table]
        end = f":{there.cell(self.last)}" if self.last else ""
        return f"{there.sheet}!{there.cell(self.key)}{end}"

    def reads(self, plan: Plan, layout: Layout) -> Iterable[Source]:
        return _columns(plan.layouts[self.table], self.key, self.last)


@dataclass(frozen=True)
class Whole(Expression):
    """A whole column of a tab, from its head to the row under the list; of its own tab without the tab's name."""

    table: str
    key: str

    def spell(self, plan: Plan, layout: Layout) -> str:
        there = plan.layouts[self.table]
        return there.column(self.key) if there is layout else there.range(self.key)

    def reads(self, plan: Plan, layout: Layout) -> Iterable[Source]:
        return [(self.table, self.key)]


@dataclass(frozen=True)
class Results(Expression):
    """The rows alone of a column that nobody types in, as a sorted list is looked through."""

    table: str
    key: str

    def spell(self, plan: Plan, layout: Layout) -> str:
        return plan.layouts[self.table].results(self.key)

    def reads(self, plan: Plan, layout: Layout) -> Iterable[Source]:
        return [(self.table, self.key)]


@dataclass(frozen=True)
class Block(Expression):
    """Whole columns of a tab side by side, from one to another."""

    table: str
    first: str
    last: str

    def spell(self, plan: Plan, layout: Layout) -> str:
        there = plan.layouts[self.table]
        begins, ends = there.range(self.first).partition(":")[0], there.column(self.last).partition(":")[2]
        return f"{begins}:{ends}"

    def reads(self, plan: Plan, layout: Layout) -> Iterable[Source]:
        return _columns(plan.layouts[self.table], self.first, self.last)


@dataclass(frozen=True)
class ResultsBlock(Expression):
    """The rows alone of columns side by side that nobody types in."""

    table: str
    first: str
    last: str

    def spell(self, plan: Plan, layout: Layout) -> str:
        there = plan.layouts[self.table]
        begins, ends = there.results(self.first).partition(":")[0], there.own_results(self.last).partition(":")[2]
        return f"{begins}:{ends}"

    def reads(self, plan: Plan, layout: Layout) -> Iterable[Source]:
        return _columns(plan.layouts[self.table], self.first, self.last)


@dataclass(frozen=True)
class FromHere(Expression):
    """The cells of an own column that nobody types in, from this row down to the last."""

    key: str

    def spell(self, plan: Plan, layout: Layout) -> str:
        return f"{layout.cell(self.key)}:{layout.own_results(self.key).partition(':')[2]}"

    def reads(self, plan: Plan, layout: Layout) -> Iterable[Source]:
        return [(layout.key, self.key)]


@dataclass(frozen=True)
class Above(Expression):
    """The number in the row above of an own column that nobody types in; 0 where that is the head, or blank.

    So a column may rest on itself, a row higher.
    """

    key: str

    def spell(self, plan: Plan, layout: Layout) -> str:
        return f"N(${layout.letters[self.key]}{ABOVE})"

    def reads(self, plan: Plan, layout: Layout) -> Iterable[Source]:
        return [(layout.key, self.key)]


@dataclass(frozen=True)
class ByPlan(Expression):
    """What is written by how the workbook was made: with the year's records, or by the way stock is valued."""

    chosen: Callable[[Plan], Expression]

    def spell(self, plan: Plan, layout: Layout) -> str:
        return self.chosen(plan).spell(plan, layout)

    def reads(self, plan: Plan, layout: Layout) -> Iterable[Source]:
        return fed_by(self.chosen(plan), plan, layout)


def if_records(kept: Expression, otherwise: Expression) -> Expression:
    """What is written in a workbook that keeps the year's records, and what in one that does not."""
    return ByPlan(lambda plan: kept if plan.records else otherwise)


@dataclass(frozen=True)
class CoinDigits(Expression):
    """How many decimals the workbook's currency has."""

    def spell(self, plan: Plan, layout: Layout) -> str:
        return str(plan.coin_digits)


@dataclass(frozen=True)
class Names(Expression):
    """The column by which other tabs find a row; with `ready`, of rows that are ready alone, where a tab has that.

    What a row lacks would else count as nothing where the row is used, and make a candle cheaper.
    """

    table: str
    ready: bool = True

    def spell(self, plan: Plan, layout: Layout) -> str:
        return plan.layouts[self.table].range(self._key(plan))

    def reads(self, plan: Plan, layout: Layout) -> Iterable[Source]:
        return [(self.table, self._key(plan))]

    def _key(self, plan: Plan) -> str:
        there = plan.layouts[self.table]
        return WHEN_READY if self.ready and WHEN_READY in there.letters else there.names


@dataclass(frozen=True)
class Nth(Expression):
    """How many cells of an own column hold the same, from the head down to this row."""

    key: str

    def spell(self, plan: Plan, layout: Layout) -> str:
        cell, head = layout.cell(self.key), f"${layout.letters[self.key]}${layout.first_row - 1}"
        return f"COUNTIF({head}:{cell},{cell})"

    def reads(self, plan: Plan, layout: Layout) -> Iterable[Source]:
        return [(layout.key, self.key)]


@dataclass(frozen=True)
class Named(Expression):
    """A named cell of the workbook."""

    name: str

    def spell(self, plan: Plan, layout: Layout) -> str:
        return self.name

    def reads(self, plan: Plan, layout: Layout) -> Iterable[Source]:
        return [("", self.name)]


@dataclass(frozen=True)
class Written(Expression):
    """A formula's text with expressions in it, each where its name stands between braces."""

    text: str
    inside: Mapping[str, Expression] = field(default_factory=dict)

    def spell(self, plan: Plan, layout: Layout) -> str:
        return self.text.format_map({name: part.spell(plan, layout) for name, part in self.inside.items()})

    @property
    def parts(self) -> Iterable[Expression]:
        return self.inside.values()


def _columns(layout: Layout, first: str, last: str) -> list[Source]:
    keys = list(layout.letters)
    return [(layout.key, key) for key in keys[keys.index(first) : keys.index(last or first) + 1]]


def standing(entry: str, first: int, last: int, beside: str, sheet: str = "") -> str:
    """An entry that is typed once: the cell of its column in the row of a locked cell beside it.

    `first` and `last` are the rows of locked cells over and under it. A plain reference would follow the entry
    when it is cut and pasted elsewhere. `sheet` is named where the formula is on another tab.
    """
    column = entry.rstrip("0123456789")
    over, end, row = (absolute_coordinate(cell) for cell in (f"{column}{first}", f"{column}{last}", beside))
    there = f"{sheet}!" if sheet else ""
    return f"INDEX({there}{over}:{end},ROW({there}{row})-ROW({there}{over})+1)"


# --- shorthands, as tabs use them -------------------------------------------------------------


def expression_of(given: Given) -> Expression:
    return Own(given) if isinstance(given, str) else given


def written(text: str, **inside: Given) -> Written:
    """A formula's text; a key stands for the own cell of that column."""
    return Written(text, {name: expression_of(given) for name, given in inside.items()})


def joined(sign: str, given: Iterable[Given]) -> Written:
    """Expressions in a row, with a sign between."""
    parts = {f"part_{at}": expression_of(one) for at, one in enumerate(given)}
    return Written(sign.join(f"{{{name}}}" for name in parts), parts)


def at(table: str, key: str, row: Given) -> Expression:
    """A value of another tab's row, by the row's place there."""
    return written("INDEX({column},{row})", column=Whole(table, key), row=row)


def row_in(table: str, name: Given, *, ready: bool = True) -> Expression:
    """The place of a name among the rows of another tab; of a tab that says so, among the rows that are ready.

    With `ready` false among all of them: a log keeps its order while one thing in it waits for an entry.
    """
    return written("MATCH({name},{names},0)", name=name, names=Names(table, ready))


def running(key: str) -> Expression:
    """An own cell with its running number down the column: "wax 2" for the second wax."""
    return written('{cell}&" "&{nth}', cell=key, nth=Nth(key))


# What a look-up takes for a wild card is spelled with a slash, and a slash comes twice: no two texts become one.
SPELLED_OUT = {"/": "//", "~": "/t", "*": "/a", "?": "/q"}
# Excel looks up no longer text; one that its entry takes is far shorter.
LONGEST_LOOKED_UP = 255


def looked_up_by(*parts: Given) -> Expression:
    """What is asked of rows, as one text: a look-up by it finds the first row that has all of it.

    The last part may be any text. Those before it hold no |, so that rows which differ never read alike.
    """
    name: Expression = joined('&"|"&', parts)
    for mark, spelled in SPELLED_OUT.items():
        name = written(f'SUBSTITUTE({{name}},"{mark}","{spelled}")', name=name)
    return written(f"LEFT({{name}},{LONGEST_LOOKED_UP})", name=name)


def first_alike(table: str, key: str) -> Expression:
    """The first row of a log that is named as this one, by `looked_up_by`; a row without a name is itself the first."""
    return written('IF({name}="",{row},MATCH({name},{names},0))', name=key, row=OWN_ROW, names=Whole(table, key))


def as_text(given: Given) -> Expression:
    """A looked-up text, where a blank is no text rather than 0."""
    return written('{cell}&""', cell=given)


def constant(value: float) -> Expression:
    return Written(native.number(value))


def text(words: str) -> Expression:
    return Written(braced(quoted(words)))


def blank(given: Given) -> Expression:
    """The test that a cell is blank."""
    return written('{cell}=""', cell=given)


def differs(key: str, word: str) -> Expression:
    """The test that an own cell does not hold a word."""
    return written(f"{{cell}}<>{braced(quoted(word))}", cell=key)


def not_above_zero(key: str) -> Expression:
    """The test that an own number is nothing or less."""
    return written("{number}<=0", number=key)


def sum_where(table: str, key: str, **same: Given) -> Expression:
    """The sum of another tab's column over the rows whose columns hold these numbers.

    By number and not by name: a criterion reads "<3" as a comparison and "1e3" as a thousand.
    """
    return sum_over(table, key, same.items())


def sum_over(table: str, key: str, where: Iterable[tuple[str, Given]], lines: str = "") -> Expression:
    """The sum of a column over the lines whose columns hold what is asked of each; one may be asked twice.

    `lines` is the tab of those columns, where the sum's own stands on a tab beside it.
    """
    ranges = [part for by, asked in where for part in (Whole(lines or table, by), expression_of(asked))]
    return written("SUMIFS({parts})", parts=joined(",", [Whole(table, key), *ranges]))


def while_known(value: Given, table: str, key: str) -> Expression:
    """A sum by criteria, and an error while any line of that column is one: some programs pass over it."""
    return written("{value}+0*SUM({all})", value=value, all=Results(table, key))


def in_coins(amount: Given) -> Expression:
    """Money as the currency's coins have it."""
    return written("ROUND({amount},{digits})", amount=amount, digits=CoinDigits())


def worked_out_coins(amount: Given) -> Expression:
    """The same of what was multiplied: to six decimals first, so that half a coin is half a coin in every program."""
    return in_coins(written("ROUND({amount},6)", amount=amount))


def alike(table: str, *keys: str) -> Expression:
    """Of each row of a log, 1 where it holds the same words in some columns as this row's.

    Compared, not counted by a criterion: words may read as a comparison or a number. As texts: a document's number may
    be typed as a number in one row and as a text in another.
    """
    return joined(
        "*", [written('({column}&""={cell}&"")', column=Whole(table, key), cell=Carry(table, key)) for key in keys]
    )


def another_holds(table: str, *same: str, day: Given = "holds_from") -> Expression:
    """How many other rows hold in this one's place today: of those alike in some columns the one with the latest From.

    A row whose From is yet to come does not hold either.
    """
    alike_rows = joined("*", [written("({all}={own})", all=Whole(table, key), own=key) for key in same])
    return written(
        # An error in one row is that row's own: the others go on as if it were not there.
        "(SUM({day})>{today})+IFERROR((SUMPRODUCT({alike}*({days}>{day})*({days}<={today}))>0)*1,0)",
        day=day,
        today=Named("as_of"),
        alike=alike_rows,
        days=Whole(table, "holds_from"),
    )


# --- a log in order: one number a line, sorted, looked through by halves ------------------------

# What a thing and a day count in a line's number: named cells of Settings.
KEY_THING, KEY_DAY = Named("key_thing"), Named("key_day")


def line_key(thing: Given, day: Given) -> Expression:
    """A line's number: it sorts by thing, by day, and by how lines were typed."""
    return written(
        "{thing}*{key_thing}+{day}*{key_day}+{row}",
        thing=thing,
        day=day,
        row=OWN_ROW,
        key_thing=KEY_THING,
        key_day=KEY_DAY,
    )


def in_order(table: str, key: str) -> Expression:
    """The numbers of a log's lines from the smallest on, one a row; nothing below the last.

    An error in any of them is one here, also where no line has a number: it must not read as no lines.
    """
    return written(
        'IF({place}>COUNT({numbers}),IF({place}=1,REPT("",SUM({numbers})),""),SMALL({numbers},{place}))',
        place=written("({row}-1)", row=OWN_ROW),
        numbers=Whole(table, key),
    )


def thing_of(number: Given) -> Expression:
    """Which thing a line's number is of."""
    return written("INT({number}/{key})", number=number, key=KEY_THING)


def day_of(number: Given) -> Expression:
    """Of which day a line's number is."""
    return written("INT(MOD({number},{thing})/{day})", number=number, thing=KEY_THING, day=KEY_DAY)


def line_of(number: Given) -> Expression:
    """Which row of its log a line's number is of."""
    return written("MOD({number},{key})", number=number, key=KEY_DAY)


def before_row(key: str, amount: str) -> Expression:
    """What a column of amounts comes to in the rows above this one. `key` is the column itself."""
    return written("{before}+{amount}", before=Above(key), amount=Above(amount))


def lines_of(table: str, key: str, before: Given, count: Given) -> Expression:
    """The sum of so many lines of a list, which stand together below as many others."""
    return written(
        "SUM(INDEX({cells},{before}+1):INDEX({cells},{before}+{count}))",
        cells=Results(table, key),
        before=before,
        count=count,
    )


def to_date(amount: Given, balance: str, thing: str) -> Expression:
    """A sum down a list in order, begun again with each thing. `balance` is the column itself."""
    before = written("IF({thing}={above},{balance},0)", thing=thing, above=Above(thing), balance=Above(balance))
    # To nine decimals: what is lost line by line stays far below what is shown, a thousand lines on.
    return written("ROUND({before}+{amount},9)", before=before, amount=amount)


def in_force(table: str, thing: Given, day: Given) -> Expression:
    """The row that holds for a thing on a day, by a list in order of rows and the day from which each holds."""
    latest = written(
        "LOOKUP({thing}*{key_thing}+({day}+1)*{key_day},{numbers})",
        thing=thing,
        day=day,
        numbers=Results(table, "number"),
        key_thing=KEY_THING,
        key_day=KEY_DAY,
    )
    return written("IF({there}={thing},{row},NA())", there=thing_of(latest), thing=thing, row=line_of(latest))


def at_row(table: str, key: str, row: Given) -> Expression:
    """A value of a list where nobody types, by its row among those that hold something."""
    return written("INDEX({column},{row})", column=Results(table, key), row=row)


def unless(tests: Sequence[Given], value: Given) -> Expression:
    """An expression that stays blank while one of the tests holds."""
    if not tests:
        return expression_of(value)
    test = expression_of(tests[0]) if len(tests) == 1 else written("OR({tests})", tests=joined(",", tests))
    return written('IF({test},"",{value})', test=test, value=value)


def step_by_step(tests: Sequence[Given], value: Given) -> Expression:
    """The same with each test asked only where those before it do not hold: a look-up by a row that may be blank."""
    for test in reversed(tests):
        value = unless([test], value)
    return expression_of(value)


def quoted(text: str) -> str:
    """A text inside a formula."""
    return '"' + text.replace('"', '""') + '"'


def braced(text: str) -> str:
    """A text as `Written` takes it, with no braces that mean anything."""
    return text.replace("{", "{{").replace("}", "}}")
