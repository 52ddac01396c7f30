"""A tab that is a list: its columns, its checks, and how it prints."""

import re
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from functools import partial
from typing import NamedTuple

from openpyxl.utils import get_column_letter

import candlecalc.declaration.native as native
from candlecalc.season.fields import Field, Table
from candlecalc.season.tables import TABLES
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import Column, look
from candlecalc.workbook.cells.entries import fault, told, ways
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
    constant,
    joined,
    row_in,
    unless,
    written,
)
from candlecalc.workbook.cells.words import (
    STOPS_NOT,
    Code,
    Said,
    all_codes,
    in_cells,
    says,
    with_numbers,
    words_of,
    words_of_doubt,
    words_of_entries,
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
    paper_to: str = ""  # the last column worth paper, where others behind it serve formulas alone

    goes_with: str = ""  # the table that people type whose rows its rows go with, where that is another
    # How many rows it has, by those of the tables that people type, where that is not the rows of the one it goes with.
    counted: Callable[[Mapping[str, int]], int] | None = None
    says: Mapping[str, Said] = field(default_factory=dict)  # what its rows speak of, by key
    tested_in: Mapping[str, str] = field(default_factory=dict)  # the column whose cells give the codes of each

    @property
    def printed(self) -> int:
        """How many columns are worth paper."""
        if not self.results_printed:
            return len(self.fields)
        worth = [key for key, column in self.columns.items() if not _is_word(column) and key not in BEHIND]
        return list(self.columns).index(self.paper_to or worth[-1]) + 1 - self.margin

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


# What formulas ask of a row: behind its results on a tab that people read.
BEHIND = ("ready", OWN_ROW)


def _is_word(column: Field | Column) -> bool:
    return isinstance(column, Column) and column.is_fault


@dataclass(frozen=True)
class Fault(Expression):
    """The code of what is wrong with an own entry; an empty text where nothing is. It is never an error itself."""

    table: Table
    field: Field

    def spell(self, plan: Plan, layout: Layout) -> str:
        keys = [self.field.key, self.field.needed_when[0]]
        cells = {key: layout.cell(key) for key in keys if key}
        before = STOPS_NOT if self.field.not_in_cost else ""
        codes = [Code(self.table.key, self.field.key, way, before) for way in range(ways(self.field))]
        return fault(self.field, cells, [each.spell(plan, layout) for each in codes], plan)

    @property
    def parts(self) -> Iterable[Expression]:
        of, other = self.field.names_from, self.field.needed_when[0]
        there = [Names(of, ready=False), *([Whole(of, "kind")] if self.field.kind else [])] if of else []
        return [Own(self.field.key), *([Own(other)] if other else []), *there]


@dataclass(frozen=True)
class Holds(Expression):
    """A check's condition over the columns of its tab."""

    condition: str

    def spell(self, plan: Plan, layout: Layout) -> str:
        tree = native.parse(self.condition)
        cells = {name: native.Leaf(layout.cell(name)) for name in native.names(tree) if name in layout.letters}
        # To Gnumeric the N of a blank cell is an error; a sum of that one cell is 0, there and of a word too.
        return re.sub(r"\bN\(", "SUM(", native.spell(native.replace(tree, cells)))

    def reads(self, plan: Plan, layout: Layout) -> Iterable[Source]:
        names = native.names(native.parse(self.condition))
        return [(layout.key, name) if name in layout.letters else ("", name) for name in names]


def no_number(key: str) -> Expression:
    """The test that an own result has no number."""
    return written("COUNT({result})=0", result=key)


TWICE = "twice"
NOT_READY = no_number("ready")


def _cells_of_faults(table: Table) -> dict[str, Sequence[str]]:
    """What each cell of tests of a row is about: first what the row does not count without, then the rest."""
    needed = [each.key for each in table.fields if not each.not_in_cost]
    rest = [each.key for each in table.fields if each.not_in_cost]
    things = [*needed, *([TWICE] if table.unique else []), *rest]
    return {f"mend_{at}": tested for at, tested in enumerate(in_cells(things), start=1)}


def fault_of(table: Table, thing: str) -> str:
    """The key of the column that says, by its codes, what is wrong with an entry, or that a row stands twice."""
    return next(key for key, things in _cells_of_faults(table).items() if thing in things)


def _fault(table: Table, thing: str) -> Expression:
    return _twice(table) if thing == TWICE else Fault(table, table[thing])


def _twice(table: Table) -> Expression:
    # Compared, not counted by a criterion: a criterion reads "<3" as a comparison and "1e3" as a number.
    alike = [written("({column}={cell})", column=Whole(table.key, key), cell=key) for key in table.unique]
    # Two rows may be alike in what may be left out: a product has one row that holds from the first day on.
    alike.append(written('({cell}<>"")', cell=joined("&", [key for key in table.unique if table[key].required])))
    return written(
        'IFERROR(REPT({code},SUMPRODUCT({alike}*1)>1),"")', code=Code(table.key, TWICE, 0), alike=joined("*", alike)
    )


def _faults(table: Table) -> dict[str, Column]:
    """The cells of a row that test its entries, where anything is typed in it."""
    # Its entries one by one: a range from the first to the last takes the embedded engine more time than all of them.
    blank_row = written("COUNTA({entries})=0", entries=joined(",", table.keys))
    return {
        key: _tests(
            "To mend",
            [_name(table, thing) for thing in things],
            [_fault(table, thing) for thing in things],
            unless_so=blank_row,
        )
        for key, things in _cells_of_faults(table).items()
    }


def _name(table: Table, thing: str) -> str:
    return "twice" if thing == TWICE else table.label(table[thing])


def _tests(head: str, names: Sequence[str], tests: Sequence[Expression], unless_so: Expression) -> Column:
    """A column whose cells join the codes of what is wrong; most rows are blank, and cost no time."""
    ends = dict.fromkeys((names[0], names[-1]))
    return words_column(f"{head}: {' to '.join(ends)}", unless([unless_so], joined("&", tests)), width=WIDTH_OF_CODES)


def _said_of_entries(table: Table) -> dict[str, Said]:
    """What rows can say of each entry, and of one that stands twice."""
    names = " and ".join(table.label(table[key]) for key in table.unique)
    said = {
        each.key: Said(each.head, ways(each), partial(told, each, table.label(each)), place)
        for place, each in enumerate(table.fields, start=1)
    }
    return said | ({TWICE: _one(names, f"{names}: twice on this tab; keep one row", 1)} if table.unique else {})


def _one(of: str, words: str, place: int | None = None) -> Said:
    """What is always said in the same words."""
    return Said(of, 1, lambda plan: [words], place)


def words_column(head: str, holds: Expression, width: float = 30) -> Column:
    """A column of words on what is wrong: red where there are any."""
    return Column(head=head, holds=holds, format="note", width=width, needs=(), is_fault=True)


WIDTH_OF_CODES = 12


def first_of(*keys: str) -> Expression:
    """The first words in own cells side by side; nothing where all are silent."""
    if len(keys) == 1:
        return written('{cell}&""', cell=keys[0])
    return written('IFERROR(INDEX({cells},1,MATCH("?*",{cells},0)),"")', cells=Own(keys[0], keys[-1]))


def or_error(table: Table, *keys: str) -> Expression:
    """An own entry that its row counts without: as it is, an error where something is wrong with it.

    Of several: 1, or an error where something is wrong with any of them.
    """
    wrong = [says(table.key, key, fault_of(table, key)) for key in keys]
    if len(keys) == 1:
        return written("CHOOSE(1+{wrong},{entry},NA())", wrong=wrong[0], entry=keys[0])
    return written("CHOOSE(1+({wrong}>0),1,NA())", wrong=joined("+", wrong))


def own_row_column() -> Column:
    """Which row of its list a row is, the head being the first: what reaches its entries, wherever they are moved."""
    return Column(head="Row", holds=written(f"ROW()-ROW($A${HEAD_ROW})+1"), format="row", width=5.5, needs=())


def _ready(table: Table, required: tuple[str, ...]) -> Column:
    """Blank while a row is not complete, 1 when every entry is what its field takes, an error otherwise."""
    # What stops a row comes before what does not.
    holds = written(
        f'IF(COUNTA({{cells}})<{len(required)},"",CHOOSE(1+(LEFT({{codes}}&"{STOPS_NOT}")<>"{STOPS_NOT}"),1,NA()))',
        cells=joined(",", required),
        codes=all_codes(list(_cells_of_faults(table))),
    )
    return Column(head="Ready", holds=holds, format="row", width=6, needs=())


def check_key(number: int) -> str:
    """What a check of a tab goes by, by its number there."""
    return f"check_{number}"


def _holds_not(table: str, number: int, check: Check) -> Expression:
    """The code of a check that does not hold in a row that is ready; nothing where numbers are missing."""
    said = Code(table, check_key(number), 0, STOPS_NOT if check.unlikely else "")
    return written('IFERROR(REPT({code},1-({holds})),"")', code=said, holds=Holds(check.holds))


LOOK_AT, IS_IT_MEANT = "Look at", "Is it meant"
SHARE_IN_WORDS = re.compile(r"\{(\w+)\}")


def _whole(check: Check) -> str:
    """What is wrong and what to do."""
    if check.words.endswith("?"):
        return f"{check.words} {_sentence(check.mend)}"
    return f"{check.told or _sentence(check.words)}: {check.mend}"


def _sentence(words: str) -> str:
    return words[0].upper() + words[1:]


def _waits(table: Table, waits: Mapping[str, Expression]) -> Column:
    """Of a row that is whole, the first name that stands for something which cannot be used yet: where to look next."""
    tests = [
        written('REPT({code},({entry}<>"")*({test}))', code=Code(table.key, waiting(key), 0), entry=key, test=test)
        for key, test in waits.items()
    ]
    return words_column("Waits for", unless([NOT_READY], words_of(joined("&", tests))))


def waiting(key: str) -> str:
    """What a name that may wait goes by."""
    return f"waits_{key}"


def _said_of_names(table: Table, keys: Iterable[str]) -> dict[str, Said]:
    labels = {key: (table.label(table[key]), TABLES[table[key].names_from].title) for key in keys}
    return {waiting(key): _one(label, f"{label}: see its row on {title}") for key, (label, title) in labels.items()}


def not_ready_there(table: str, key: str) -> Expression:
    """The test that the row which an entry names cannot be used yet."""
    return written("ISERROR({row})", row=row_in(table, key))


def _doubts(table: Table) -> Iterator[Check]:
    """What a spreadsheet is likely to have made of something else that was typed: asked, never refused."""
    for each in table.fields:
        if not each.term or each.term.unit.startswith("of "):
            continue
        number = f"N({each.key})"
        if each.term.low < FIRST_LIKELY_DAY < each.term.high:
            # A half, typed as 1/2, is the first of February.
            day = f"({number}>={FIRST_LIKELY_DAY})*({number}<={LAST_LIKELY_DAY})*({number}=INT({number}))"
            yield Check(f"{day}=0", f"{table.label(each)}: is it a date?", FRACTION, each.key, unlikely=True)
        if each.term.unit in MAY_BE_A_TIME and not each.term.whole:
            # Half past one is a sixteenth of a day: whole minutes of a day, and no number with three decimals.
            a_minute = f"ROUND({number}*1440,6)=ROUND({number}*1440,0)"
            a_number = f"ROUND({number}*1000,6)=ROUND({number}*1000,0)"
            time = f"({number}>0)*({number}<1)*({a_minute})*(1-({a_number}))"
            yield Check(f"{time}=0", f"{table.label(each)}: is it a time of day?", MINUTES, each.key, unlikely=True)


MAY_BE_A_TIME = ("", "min", "h", "money", "money per h")
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
    faults, tested = _faults(table), _checked(table.key, every)
    columns: dict[str, Field | Column] = {field.key: field for field in table.fields}
    # Before what reaches entries by it: else LibreOffice, asked to calculate all, leaves the first row a pass behind.
    columns[OWN_ROW] = own_row_column()
    columns["ready"] = _ready(table, required)
    columns |= {**(results or {}), **faults, **tested.columns}
    mend = words_of_entries(all_codes(list(faults)), table.keys[0], table.keys[-1])
    said = {"mend": words_column("To mend", mend)}
    said |= {"waits": _waits(table, waits)} if waits else {}
    said |= {**(also or {}), **tested.said}
    status = {STATUS: words_column("What to do", first_of(*said), width=WIDTH_OF_STATUS)}
    return TableTab(
        table.title,
        "input",
        table.purpose,
        table.key,
        {**status, **columns, **said},
        every,
        results_printed,
        says={**_said_of_entries(table), **_said_of_names(table, waits or ()), **tested.says},
        tested_in={thing: key for key, things in _cells_of_faults(table).items() for thing in things} | tested.by_check,
    )


class Checked(NamedTuple):
    """The columns of a tab that test its checks, those that say the first in words, and where each check is."""

    columns: dict[str, Column]
    said: dict[str, Column]
    by_check: dict[str, str]
    says: dict[str, Said]


def _checked(table: str, checks: tuple[Check, ...]) -> Checked:
    """Tests of what must hold, then of what is unlikely and may be meant."""
    ordered = sorted(range(len(checks)), key=lambda at: checks[at].unlikely)
    cells = {f"checked_{at}": numbers for at, numbers in enumerate(in_cells(ordered), start=1)}
    columns = {
        key: _tests(
            "Checks",
            [checks[at].words for at in numbers],
            [_holds_not(table, at, checks[at]) for at in numbers],
            unless_so=NOT_READY,
        )
        for key, numbers in cells.items()
    }
    by_check = {check_key(at): key for key, numbers in cells.items() for at in numbers}
    says = {check_key(at): _one(check.words, _whole(check)) for at, check in enumerate(checks)}
    return Checked(columns, _first_said(checks, list(columns)), by_check, says)


def _first_said(checks: tuple[Check, ...], cells: Sequence[str]) -> dict[str, Column]:
    """What does not hold in a row, and what is unlikely there and may be meant: the first words of each."""
    columns = {}
    if any(not check.unlikely for check in checks):
        shares = dict.fromkeys(key for check in checks for key in SHARE_IN_WORDS.findall(check.told))
        columns["warnings"] = words_column(LOOK_AT, with_numbers(words_of(all_codes(cells)), shares), width=42)
    if any(check.unlikely for check in checks):
        columns["doubts"] = words_column(f"{IS_IT_MEANT}?", words_of_doubt(all_codes(cells)), width=42)
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
    paper_to: str = "",
) -> TableTab:
    """A tab where nobody types, whose rows go with the rows of a table that people type.

    `when_so` is what Ready holds where the row is ready there: 1, or an error for a reason of this tab's own.
    `said` are further columns of words, `status` is what to do about a row, in words that stand left of its name: on a
    tab that makers read, what its checks say if nothing else.
    """
    first, tested = goes_with.fields[0], _checked(key, checks)
    if checks and kind == "output":
        status = status or first_of(*tested.said)
    # By plain reference: the cell is locked, so cut and paste cannot move it; and LibreOffice leaves a row a pass
    # behind where two tabs read each other through whole columns.
    ready = written('IF({there}=1,{when_so},"")', there=Same(goes_with.key, "ready"), when_so=when_so)
    all_columns: dict[str, Field | Column] = {
        **({STATUS: words_column("What to do", status, width=WIDTH_OF_STATUS)} if status else {}),
        # The name shows in a row that is not ready too: it says whose numbers are missing.
        first.key: look(first.head, as_text(Carry(goes_with.key, first.key)), needs=(), width=WIDTH_OF_NAMES),
        **_read(
            kind,
            columns,
            {"ready": Column(head="Ready", holds=ready, format="row", width=7, needs=()), OWN_ROW: own_row_column()},
        ),
        **tested.columns,
        **tested.said,
        **(said or {}),
    }
    return TableTab(
        title,
        kind,
        purpose,
        key,
        all_columns,
        checks,
        goes_with=goes_with.key,
        paper_to=paper_to,
        says=tested.says,
        tested_in=tested.by_check,
    )


def _read(kind: str, columns: Mapping[str, Column], behind: Mapping[str, Column]) -> dict[str, Column]:
    """What is read comes first where a tab is for reading; elsewhere what its formulas ask of a row."""
    return {**columns, **behind} if kind == "output" else {**behind, **columns}


def lines_tab(
    title: str,
    kind: str,
    purpose: str,
    key: str,
    goes_with: Table,
    columns: Mapping[str, Column],
    counted: Callable[[Mapping[str, int]], int] | None = None,
    paper_to: str = "",
) -> TableTab:
    """A tab of lines that follow from a log, where nobody types: the log's in another order, or several for each.

    It has as many rows as the log, or as `counted` says.
    """
    all_columns: dict[str, Field | Column] = {**_read(kind, columns, {OWN_ROW: own_row_column()})}
    return TableTab(title, kind, purpose, key, all_columns, goes_with=goes_with.key, counted=counted, paper_to=paper_to)


def letters(columns: Mapping[str, object]) -> dict[str, str]:
    """The column letter of each key."""
    return {key: get_column_letter(number) for number, key in enumerate(columns, start=1)}


def layout_of_tab(tab: TableTab, rows: int) -> Layout:
    fields = tab.fields
    names = next((field.key for field in fields if field.name), "")
    typed = frozenset(field.key for field in fields)
    return Layout(tab.key, tab.title, FIRST_ROW + rows - 1, letters(tab.columns), names, typed=typed)
