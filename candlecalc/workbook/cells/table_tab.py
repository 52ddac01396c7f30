"""A tab that is a list: its columns, its checks, and how it prints."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from openpyxl.utils import get_column_letter

import candlecalc.declaration.native as native
from candlecalc.season.fields import Field, Table
from candlecalc.season.tables import TABLES
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import Column, look
from candlecalc.workbook.cells.entries import bad
from candlecalc.workbook.cells.layout import FIRST_ROW, HEAD_ROW, OWN_ROW, Layout, Plan
from candlecalc.workbook.cells.references import (
    Carry,
    Expression,
    Given,
    Names,
    Own,
    Same,
    Source,
    Whole,
    as_text,
    braced,
    constant,
    joined,
    quoted,
    row_in,
    unless,
    written,
)

ALSO = "Also"  # begins what is wrong with an entry that its row counts without


@dataclass(frozen=True)
class Tab:
    """What a tab says of itself, at its head and on Start."""

    title: str
    kind: str  # input, working, output, check, control
    purpose: str


@dataclass(frozen=True)
class TableTab(Tab):
    """A list of a workbook. `columns` holds entries (fields) and formula columns, in order."""

    key: str
    columns: Mapping[str, Field | Column]
    checks: tuple[Check, ...] = ()
    results_printed: bool = True

    goes_with: str = ""  # the table that people type whose rows its rows go with, where that is another

    @property
    def printed(self) -> int:
        """How many columns are worth paper."""
        notes = [at for at, key in enumerate(self.columns) if key in ("waits", "warnings", "doubts", "why")]
        return min([*notes, len(self.columns)]) if self.results_printed else len(self.fields)

    @property
    def typed_on(self) -> str:
        """The table that people type whose rows the tab's rows go with."""
        return self.goes_with or self.key

    @property
    def fields(self) -> list[Field]:
        return [column for column in self.columns.values() if isinstance(column, Field)]


@dataclass(frozen=True)
class Refused(Expression):
    """The test that an own entry is not what its field takes; it is never an error itself."""

    field: Field
    entry: Expression
    other: Expression | None = None  # the entry that says whether this one is needed

    def spell(self, plan: Plan, layout: Layout) -> str:
        cells = {self.field.key: self.entry.spell(plan, layout)}
        if self.other:
            cells[self.field.needed_when[0]] = self.other.spell(plan, layout)
        return bad(self.field, cells, plan)

    @property
    def parts(self) -> Iterable[Expression]:
        of = self.field.names_from
        there = [Names(of, ready=False), *([Whole(of, "kind")] if self.field.kind else [])] if of else []
        return [self.entry, *([self.other] if self.other else []), *there]


def refused(field: Field) -> Refused:
    """The same of an own entry by its field."""
    other = field.needed_when[0]
    return Refused(field, Own(field.key), Own(other) if other else None)


@dataclass(frozen=True)
class Holds(Expression):
    """A check's condition over the columns of its tab."""

    condition: str

    def spell(self, plan: Plan, layout: Layout) -> str:
        tree = native.parse(self.condition)
        cells = {name: native.Leaf(layout.cell(name)) for name in native.names(tree) if name in layout.letters}
        return native.spell(native.replace(tree, cells))

    def reads(self, plan: Plan, layout: Layout) -> Iterable[Source]:
        names = native.names(native.parse(self.condition))
        return [(layout.key, name) if name in layout.letters else ("", name) for name in names]


def _mend(table: Table) -> Column:
    """What to put right in a row of entries, in words: the heads of the cells to look at."""
    said = {
        field: written(f"REPT({_text(to_mend(table, field))},{{refused}})", refused=refused(field))
        for field in table.fields
    }
    needed, aside = ([said[field] for field in table.fields if field.not_in_cost == apart] for apart in (False, True))
    # Compared, not counted by a criterion: a criterion reads "<3" as a comparison and "1e3" as a number.
    alike = [written("({column}={cell})", column=Whole(table.key, key), cell=key) for key in table.unique]
    twice = written('REPT("Twice on this tab; ",IFERROR(SUMPRODUCT({alike}*1),0)>1)', alike=joined("*", alike))
    holds = written(
        'IF(COUNTA({entries})=0,"",{words})',
        entries=Own(table.keys[0], table.keys[-1]),
        words=joined("&", [*needed, *([twice] if alike else []), *aside]),
    )
    return Column(head="To mend", holds=holds, format="note", width=30, needs=(), is_fault=True)


def to_mend(table: Table, field: Field) -> str:
    """What To mend says of a field; of one that the row counts without, after all others."""
    return f"{ALSO} " * field.not_in_cost + f"{table.label(field)}; "


def _text(words: str) -> str:
    return braced(quoted(words))


def or_error(table: Table, *keys: str) -> Expression:
    """An own entry that its row counts without: as it is, an error where To mend names it.

    Of several: 1, or an error where To mend names any of them.
    """
    said = [written(f"ISNUMBER(FIND({_text(to_mend(table, table[key]))},{{mend}}))", mend="mend") for key in keys]
    if len(keys) == 1:
        return written("CHOOSE(1+{said},{entry},NA())", said=said[0], entry=keys[0])
    return written("CHOOSE(1+OR({said}),1,NA())", said=joined(",", said))


def _own_row() -> Column:
    """Which row of its list a row is, the head being the first: what reaches its entries, wherever they are moved."""
    return Column(head="Row", holds=written(f"ROW()-ROW($A${HEAD_ROW})+1"), format="row", width=6, needs=())


def _ready(required: tuple[str, ...]) -> Column:
    """Blank while a row is not complete, 1 when every entry is what its field takes, an error otherwise."""
    right = written(f'LEFT({{mend}}&"{ALSO}",{len(ALSO)})="{ALSO}"', mend="mend")
    holds = written(
        f'IF(COUNTA({{cells}})<{len(required)},"",CHOOSE(1+({{right}}),NA(),1))',
        cells=joined(",", required),
        right=right,
    )
    return Column(head="Ready", holds=holds, format="row", width=7, needs=())


def _said(checks: tuple[Check, ...], head: str) -> Column:
    """What does not hold in a row that is ready, in words; nothing where numbers are missing."""
    # One that cannot be told must not hide the others.
    words = [
        written(f'IFERROR(REPT({_text(f"{check.words}; ")},1-({{holds}})),"")', holds=Holds(check.holds))
        for check in checks
    ]
    holds = written('IFERROR({words},"")', words=unless([written('{ready}=""', ready="ready")], joined("&", words)))
    return Column(head=head, holds=holds, format="note", width=42, needs=(), is_fault=True)


def _waits(table: Table, unusable: Mapping[str, Expression]) -> Column:
    """Which names of a row that is whole stand for something that cannot be used yet: where to look next.

    `unusable` is, by field, the test that what it names has no number to give.
    """
    parts = []
    for key, test in unusable.items():
        words = _text(f"{table.label(table[key])}: see {TABLES[table[key].names_from].title}; ")
        parts.append(written(f'REPT({words},({{entry}}<>"")*({{test}}))', entry=key, test=test))
    holds = written('IF(COUNT({ready})=0,"",{words})', ready="ready", words=joined("&", parts))
    return Column(head="Waits for", holds=holds, format="note", width=24, needs=(), is_fault=True)


def not_ready_there(table: str, key: str) -> Expression:
    """The test that the row which an entry names cannot be used yet."""
    return written("ISERROR({row})", row=row_in(table, key))


def no_number(key: str) -> Expression:
    """The test that an own result has no number."""
    return written("COUNT({result})=0", result=key)


def _doubts(table: Table) -> Iterator[Check]:
    """What a spreadsheet is likely to have made of something else that was typed: asked, never refused."""
    for field in table.fields:
        if not field.term or field.term.unit.startswith("of "):
            continue
        number = f"N({field.key})"
        if field.term.low < FIRST_LIKELY_DAY < field.term.high:
            # A half, typed as 1/2, is the first of February.
            day = f"({number}>={FIRST_LIKELY_DAY})*({number}<={LAST_LIKELY_DAY})*({number}=INT({number}))"
            yield Check(f"{day}=0", f"{table.label(field)}: is it a date?", FRACTION, field.key, unlikely=True)
        if field.term.unit in ("", "min") and not field.term.whole:
            # Half past one is a sixteenth of a day: whole minutes of a day, and no number with three decimals.
            a_minute = f"ROUND({number}*1440,6)=ROUND({number}*1440,0)"
            a_number = f"ROUND({number}*1000,6)=ROUND({number}*1000,0)"
            time = f"({number}>0)*({number}<1)*({a_minute})*(1-({a_number}))"
            yield Check(f"{time}=0", f"{table.label(field)}: is it a time of day?", MINUTES, field.key, unlikely=True)


FIRST_LIKELY_DAY, LAST_LIKELY_DAY = 43831, 49674  # 2020 to 2035, as a cell holds them
FRACTION = "a spreadsheet makes a date of 1/2; type 0.5, or 0 1/2"
MINUTES = "a spreadsheet makes a time of day of 1:30; type 1.5"


def entry_tab(
    table: Table,
    results: Mapping[str, Column] | None = None,
    *,
    checks: tuple[Check, ...] = (),
    required: tuple[str, ...] = (),
    waits: Mapping[str, Expression] | None = None,
    results_printed: bool = False,
) -> TableTab:
    """The tab of a table that people type: its fields, what to mend, whether it is ready, and results."""
    required = required or tuple(field.key for field in table.fields if field.required and not field.not_in_cost)
    doubts = tuple(_doubts(table))
    columns: dict[str, Field | Column] = {field.key: field for field in table.fields}
    # Before what reaches entries by it: else LibreOffice, asked to calculate all, leaves the first row a pass behind.
    columns[OWN_ROW] = _own_row()
    columns["mend"] = _mend(table)
    columns["ready"] = _ready(required)
    columns |= results or {}
    if waits:
        columns["waits"] = _waits(table, waits)
    columns |= said((*doubts, *checks))
    return TableTab(table.title, "input", table.purpose, table.key, columns, (*checks, *doubts), results_printed)


def said(checks: tuple[Check, ...]) -> dict[str, Field | Column]:
    """The columns of what does not hold in a row, and of what is unlikely there and may be meant."""
    columns: dict[str, Field | Column] = {}
    for key, head, unlikely in (("warnings", "Look at", False), ("doubts", "Is it meant?", True)):
        if asked := tuple(check for check in checks if check.unlikely == unlikely):
            columns[key] = _said(asked, head)
    return columns


ONE = constant(1)


def result_tab(
    title: str,
    kind: str,
    purpose: str,
    key: str,
    goes_with: Table,
    columns: Mapping[str, Column],
    checks: tuple[Check, ...] = (),
    *,
    when_so: Given = ONE,
) -> TableTab:
    """A tab where nobody types, whose rows go with the rows of a table that people type.

    `when_so` is what Ready holds where the row is ready there: 1, or an error for a reason of this tab's own.
    """
    first = goes_with.fields[0]
    # By plain reference: the cell is locked, so cut and paste cannot move it; and LibreOffice leaves a row a pass
    # behind where two tabs read each other through whole columns.
    ready = written('IF({there}=1,{when_so},"")', there=Same(goes_with.key, "ready"), when_so=when_so)
    all_columns: dict[str, Field | Column] = {
        # The name shows in a row that is not ready too: it says whose numbers are missing.
        first.key: look(first.head, as_text(Carry(goes_with.key, first.key)), needs=(), width=35),
        "ready": Column(head="Ready", holds=ready, format="row", width=7, needs=()),
        OWN_ROW: _own_row(),
        **columns,
        **said(checks),
    }
    return TableTab(title, kind, purpose, key, all_columns, checks, goes_with=goes_with.key)


def sorted_tab(title: str, purpose: str, key: str, goes_with: Table, columns: Mapping[str, Column]) -> TableTab:
    """A working tab with the lines of a log in another order, as many rows as the log has."""
    own_row = {OWN_ROW: _own_row()}
    return TableTab(title, "working", purpose, key, {**own_row, **columns}, goes_with=goes_with.key)


def letters(columns: Mapping[str, object]) -> dict[str, str]:
    """The column letter of each key."""
    return {key: get_column_letter(number) for number, key in enumerate(columns, start=1)}


def layout_of_tab(tab: TableTab, rows: int) -> Layout:
    fields = tab.fields
    names = next((field.key for field in fields if field.name), "")
    typed = frozenset(field.key for field in fields)
    return Layout(tab.key, tab.title, FIRST_ROW + rows - 1, letters(tab.columns), names, typed=typed)
