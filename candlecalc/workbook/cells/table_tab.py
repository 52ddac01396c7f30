"""A tab that is a list: its columns, its checks, and how it prints."""

import re
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass

from openpyxl.utils import get_column_letter

import candlecalc.declaration.native as native
from candlecalc.season.fields import Field, Table
from candlecalc.season.tables import TABLES
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import Column, look
from candlecalc.workbook.cells.entries import fault
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
    written,
)

WIDTH_OF_NAMES = 30  # a name of 32 letters as wide as most are
WIDTH_OF_REFERENCES = 25  # longer ones are shown smaller


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
    # How many rows it has, by those of the tables that people type, where that is not the rows of the one it goes with.
    counted: Callable[[Mapping[str, int]], int] | None = None

    @property
    def printed(self) -> int:
        """How many columns are worth paper."""
        worth = [at for at, column in enumerate(self.columns.values(), start=1) if not _is_word(column)]
        return worth[-1] - self.margin if self.results_printed else len(self.fields)

    @property
    def margin(self) -> int:
        """How many columns stand left of the list: what to do about a row is for the screen, not for paper."""
        return int(STATUS in self.columns)

    @property
    def typed_on(self) -> str:
        """The table that people type whose rows the tab's rows go with."""
        return self.goes_with or self.key

    def rows(self, rows_of: Mapping[str, int]) -> int:
        """How many rows it has room for, by those of the tables that people type."""
        return self.counted(rows_of) if self.counted else rows_of[self.typed_on]

    @property
    def fields(self) -> list[Field]:
        return [column for column in self.columns.values() if isinstance(column, Field)]


def _is_word(column: Field | Column) -> bool:
    return isinstance(column, Column) and column.is_fault


@dataclass(frozen=True)
class Fault(Expression):
    """What is wrong with an own entry, in words; an empty text where nothing is. It is never an error itself."""

    table: Table
    field: Field

    def spell(self, plan: Plan, layout: Layout) -> str:
        keys = [self.field.key, self.field.needed_when[0]]
        cells = {key: layout.cell(key) for key in keys if key}
        row = Own(self.table.keys[0], self.table.keys[-1]).spell(plan, layout)
        return fault(self.field, self.table.label(self.field), cells, row, plan)

    @property
    def parts(self) -> Iterable[Expression]:
        of, other = self.field.names_from, self.field.needed_when[0]
        there = [Names(of, ready=False), *([Whole(of, "kind")] if self.field.kind else [])] if of else []
        row = [Own(self.table.keys[0], self.table.keys[-1])] if self.field.required else []
        return [Own(self.field.key), *([Own(other)] if other else []), *row, *there]


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


def fault_of(field: Field) -> str:
    """The key of the column that says what is wrong with an entry."""
    return f"mend_{field.key}"


TWICE = "mend_twice"


def _faults(table: Table) -> dict[str, Column]:
    """What is wrong with each entry of a row, a column each: first what its cost rests on, then the rest."""
    ordered = sorted(table.fields, key=lambda field: field.not_in_cost)
    found = {
        fault_of(field): words_column(f"To mend: {field.head}", Fault(table, field), width=WIDTH_OF_A_FAULT)
        for field in ordered
    }
    if not table.unique:
        return found
    # Compared, not counted by a criterion: a criterion reads "<3" as a comparison and "1e3" as a number.
    alike = [written("({column}={cell})", column=Whole(table.key, key), cell=key) for key in table.unique]
    # Two rows may be alike in what may be left out: a product has one row that holds from the first day on.
    alike.append(written('({cell}<>"")', cell=joined("&", [key for key in table.unique if table[key].required])))
    names = " and ".join(table.label(table[key]) for key in table.unique)
    twice = written(
        f'IFERROR(REPT({_text(f"{names}: twice on this tab; keep one row")},SUMPRODUCT({{alike}}*1)>1),"")',
        alike=joined("*", alike),
    )
    needed = sum(not field.not_in_cost for field in table.fields)
    columns = list(found.items())
    return dict(
        [*columns[:needed], (TWICE, words_column("To mend: twice", twice, width=WIDTH_OF_A_FAULT)), *columns[needed:]]
    )


def _last_needed(table: Table) -> str:
    """The last of the columns without which a row does not count."""
    return TWICE if table.unique else fault_of([field for field in table.fields if not field.not_in_cost][-1])


def words_column(head: str, holds: Expression, width: float = 30) -> Column:
    """A column of words on what is wrong: red where there are any."""
    return Column(head=head, holds=holds, format="note", width=width, needs=(), is_fault=True)


WIDTH_OF_A_FAULT = 12


def first_of(*keys: str) -> Expression:
    """The first words in own cells side by side; nothing where all are silent."""
    if len(keys) == 1:
        return written('{cell}&""', cell=keys[0])
    return written('IFERROR(INDEX({cells},MATCH("?*",{cells},0)),"")', cells=Own(keys[0], keys[-1]))


def _text(words: str) -> str:
    return braced(quoted(words))


def or_error(table: Table, *keys: str) -> Expression:
    """An own entry that its row counts without: as it is, an error where something is wrong with it.

    Of several: 1, or an error where something is wrong with any of them.
    """
    wrong = [written('({fault}<>"")', fault=fault_of(table[key])) for key in keys]
    if len(keys) == 1:
        return written("CHOOSE(1+{wrong},{entry},NA())", wrong=wrong[0], entry=keys[0])
    return written("CHOOSE(1+({wrong}>0),1,NA())", wrong=joined("+", wrong))


def _own_row() -> Column:
    """Which row of its list a row is, the head being the first: what reaches its entries, wherever they are moved."""
    return Column(head="Row", holds=written(f"ROW()-ROW($A${HEAD_ROW})+1"), format="row", width=5.5, needs=())


def _ready(table: Table, required: tuple[str, ...]) -> Column:
    """Blank while a row is not complete, 1 when every entry is what its field takes, an error otherwise."""
    holds = written(
        f'IF(COUNTA({{cells}})<{len(required)},"",CHOOSE(1+({{wrong}}>0),1,NA()))',
        cells=joined(",", required),
        wrong=written('COUNTIF({faults},"?*")', faults=Own(fault_of(table.fields[0]), _last_needed(table))),
    )
    return Column(head="Ready", holds=holds, format="row", width=6, needs=())


def check_key(number: int) -> str:
    """The key of the column that says whether a check of a tab holds, by its number there."""
    return f"check_{number}"


def _said(check: Check) -> Column:
    """What does not hold in a row that is ready, in words; nothing where numbers are missing."""
    told = told_with_numbers(check)
    holds = written(
        'IFERROR(REPT({told},({ready}<>"")*(1-({holds}))),"")', told=told, ready="ready", holds=Holds(check.holds)
    )
    head = f"{IS_IT_MEANT if check.unlikely else LOOK_AT}: {check.words}"
    return Column(head=head, holds=holds, format="note", width=WIDTH_OF_A_FAULT, needs=(), is_fault=True)


LOOK_AT, IS_IT_MEANT = "Look at", "Is it meant"
NUMBER_IN_WORDS = re.compile(r"\{(\w+)\}")


def told_with_numbers(check: Check) -> Expression:
    """What a row says where a check does not hold, with the shares in it that the words ask for."""
    parts: list[Given] = []
    for at, words in enumerate(NUMBER_IN_WORDS.split(_whole(check))):
        # By itself, so that a program shows it with its own decimal mark.
        parts.append(written("ROUND({share}*100,2)", share=words) if at % 2 else written(_text(words)))
    return joined("&", parts)


def _whole(check: Check) -> str:
    """What is wrong and what to do."""
    if check.words.endswith("?"):
        return f"{check.words} {_sentence(check.mend)}"
    return f"{check.told or _sentence(check.words)}: {check.mend}"


def _sentence(words: str) -> str:
    return words[0].upper() + words[1:]


def _waits(table: Table, key: str, test: Expression) -> Column:
    """Whether a name of a row that is whole stands for something that cannot be used yet: where to look next."""
    words = _text(f"{table.label(table[key])}: see its row on {TABLES[table[key].names_from].title}")
    said = written(f'REPT({words},({{entry}}<>"")*({{test}}))', entry=key, test=test)
    holds = written('IF(COUNT({ready})=0,"",{said})', ready="ready", said=said)
    return words_column(f"Waits for: {table[key].head}", holds, width=WIDTH_OF_A_FAULT)


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


STATUS = "status"  # the column, left of a row's name, of what to do about the row
WIDTH_OF_STATUS = 27


def entry_tab(
    table: Table,
    results: Mapping[str, Column] | None = None,
    *,
    checks: tuple[Check, ...] = (),
    required: tuple[str, ...] = (),
    waits: Mapping[str, Expression] | None = None,
    also: Mapping[str, Column] | None = None,
    results_printed: bool = False,
) -> TableTab:
    """The tab of a table that people type: what to do about a row, its fields, results, and what is wrong.

    `also` are columns of words that other tabs say of a row.
    """
    required = required or tuple(field.key for field in table.fields if field.required and not field.not_in_cost)
    every = (*checks, *_doubts(table))
    faults = _faults(table)
    waiting = {f"waits_{key}": _waits(table, key, test) for key, test in (waits or {}).items()}
    columns: dict[str, Field | Column] = {field.key: field for field in table.fields}
    # Before what reaches entries by it: else LibreOffice, asked to calculate all, leaves the first row a pass behind.
    columns[OWN_ROW] = _own_row()
    columns["ready"] = _ready(table, required)
    columns |= {**(results or {}), **faults, **waiting, **_each_said(every)}
    said = {"mend": words_column("To mend", first_of(*faults))}
    said |= {"waits": words_column("Waits for", first_of(*waiting))} if waiting else {}
    said |= {**(also or {}), **_first_said(every)}
    status = {STATUS: words_column("What to do", first_of(*said), width=WIDTH_OF_STATUS)}
    return TableTab(
        table.title, "input", table.purpose, table.key, {**status, **columns, **said}, every, results_printed
    )


def _each_said(checks: tuple[Check, ...]) -> dict[str, Column]:
    """A column for each check: those that must hold, then those of what is unlikely and may be meant."""
    ordered = sorted(range(len(checks)), key=lambda at: checks[at].unlikely)
    return {check_key(at): _said(checks[at]) for at in ordered}


def _first_said(checks: tuple[Check, ...]) -> dict[str, Column]:
    """What does not hold in a row, and what is unlikely there and may be meant: the first words of each."""
    columns = {}
    for key, head, unlikely in (("warnings", LOOK_AT, False), ("doubts", f"{IS_IT_MEANT}?", True)):
        if keys := [check_key(at) for at, check in enumerate(checks) if check.unlikely == unlikely]:
            columns[key] = words_column(head, first_of(*keys), width=42)
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
    said: Mapping[str, Column] | None = None,
    status: Expression | None = None,
) -> TableTab:
    """A tab where nobody types, whose rows go with the rows of a table that people type.

    `when_so` is what Ready holds where the row is ready there: 1, or an error for a reason of this tab's own.
    `said` are further columns of words, `status` is what to do about a row, in words that stand left of its name.
    """
    first = goes_with.fields[0]
    # By plain reference: the cell is locked, so cut and paste cannot move it; and LibreOffice leaves a row a pass
    # behind where two tabs read each other through whole columns.
    ready = written('IF({there}=1,{when_so},"")', there=Same(goes_with.key, "ready"), when_so=when_so)
    all_columns: dict[str, Field | Column] = {
        **({STATUS: words_column("What to do", status, width=WIDTH_OF_STATUS)} if status else {}),
        # The name shows in a row that is not ready too: it says whose numbers are missing.
        first.key: look(first.head, as_text(Carry(goes_with.key, first.key)), needs=(), width=WIDTH_OF_NAMES),
        "ready": Column(head="Ready", holds=ready, format="row", width=7, needs=()),
        OWN_ROW: _own_row(),
        **columns,
        **_each_said(checks),
        **_first_said(checks),
        **(said or {}),
    }
    return TableTab(title, kind, purpose, key, all_columns, checks, goes_with=goes_with.key)


def lines_tab(
    title: str,
    kind: str,
    purpose: str,
    key: str,
    goes_with: Table,
    columns: Mapping[str, Column],
    counted: Callable[[Mapping[str, int]], int] | None = None,
) -> TableTab:
    """A tab of lines that follow from a log, where nobody types: the log's in another order, or several for each.

    It has as many rows as the log, or as `counted` says.
    """
    own_row = {OWN_ROW: _own_row()}
    return TableTab(title, kind, purpose, key, {**own_row, **columns}, goes_with=goes_with.key, counted=counted)


def letters(columns: Mapping[str, object]) -> dict[str, str]:
    """The column letter of each key."""
    return {key: get_column_letter(number) for number, key in enumerate(columns, start=1)}


def layout_of_tab(tab: TableTab, rows: int) -> Layout:
    fields = tab.fields
    names = next((field.key for field in fields if field.name), "")
    typed = frozenset(field.key for field in fields)
    return Layout(tab.key, tab.title, FIRST_ROW + rows - 1, letters(tab.columns), names, typed=typed)
