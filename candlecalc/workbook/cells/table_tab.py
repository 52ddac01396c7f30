"""A tab that is a list: its columns, its checks, and how it prints."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from openpyxl.utils import get_column_letter

import candlecalc.declaration.native as native
from candlecalc.season.fields import Field, Table
from candlecalc.season.tables import TABLES
from candlecalc.workbook.cells.columns import Column, Look, look
from candlecalc.workbook.cells.entries import bad
from candlecalc.workbook.cells.place import FIRST_ROW, HEAD_ROW, OWN_ROW, Place, Plan
from candlecalc.workbook.cells.references import Reference, as_text, carry, constant, own, place_of, same, span

ALSO = "Also"  # begins what is wrong with an entry that its row counts without


@dataclass(frozen=True)
class Check:
    """Something that must hold in every row of a tab: said in the native language over its columns."""

    holds: str
    words: str  # what is wrong, short: it stands in the row
    mend: str  # what to do, and where
    column: str  # the entry to look at
    unlikely: bool = False  # what a maker may mean: it is asked, and the numbers agree all the same
    sums: bool = False  # without it parts do not add up to their whole


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

    @property
    def printed(self) -> int:
        """How many columns are worth paper."""
        notes = [at for at, key in enumerate(self.columns) if key in ("waits", "warnings", "doubts", "why")]
        return min([*notes, len(self.columns)]) if self.results_printed else len(self.fields)

    @property
    def typed_on(self) -> str:
        """The table that people type whose rows the tab's rows go with."""
        ready = self.columns["ready"]
        return ready.table if isinstance(ready, ReadyThere) else self.key

    @property
    def fields(self) -> list[Field]:
        return [column for column in self.columns.values() if isinstance(column, Field)]


@dataclass(frozen=True, kw_only=True)
class Mend(Column):
    """What to put right in a row of entries, in words: the heads of the cells to look at."""

    table: Table
    format: str = "note"
    width: float = 30

    def expression(self, plan: Plan, place: Place) -> str:
        fields = self.table.fields
        cells = {field.key: own(field.key)(plan, place) for field in fields}
        told = {field: f'REPT("{to_mend(self.table, field)}",{bad(field, cells, plan)})' for field in fields}
        needed, aside = ([told[field] for field in fields if field.aside == apart] for apart in (False, True))
        entries = span(fields[0].key, fields[-1].key)(plan, place)
        return f'IF(COUNTA({entries})=0,"",{"&".join([*needed, self._twice(place, cells), *aside])})'

    def _twice(self, place: Place, cells: Mapping[str, str]) -> str:
        # Compared, not counted by a criterion: a criterion reads "<3" as a comparison and "1e3" as a number.
        alike = [f"({place.column(key)}={cells[key]})" for key in self.table.alone]
        return f'REPT("Twice on this tab; ",IFERROR(SUMPRODUCT({"*".join([*alike, "1"])}),0)>1)'


def to_mend(table: Table, field: Field) -> str:
    """What To mend says of a field; of one that the row counts without, after all others."""
    return f"{ALSO} " * field.aside + f"{table.label(field)}; "


def or_error(table: Table, *keys: str) -> Reference:
    """An own entry that its row counts without: as it is, an error where To mend names it.

    Of several: 1, or an error where To mend names any of them.
    """

    def formula(plan: Plan, place: Place) -> str:
        said = [f'ISNUMBER(FIND("{to_mend(table, table[key])}",{place.cell("mend")}))' for key in keys]
        if len(keys) == 1:
            return f"CHOOSE(1+{said[0]},{place.cell(keys[0])},NA())"
        return f"CHOOSE(1+OR({','.join(said)}),1,NA())"

    return formula


@dataclass(frozen=True, kw_only=True)
class OwnRow(Column):
    """Which row of its list a row is, the head being the first: what reaches its entries, wherever they are moved."""

    head: str = "Row"
    format: str = "row"
    width: float = 6
    when: tuple[str | Reference, ...] = ()

    def expression(self, plan: Plan, place: Place) -> str:
        return f"ROW()-ROW($A${HEAD_ROW})+1"


@dataclass(frozen=True, kw_only=True)
class Ready(Column):
    """Blank while a row is not complete, 1 when every entry is what its field takes, an error otherwise."""

    required: tuple[str, ...]
    format: str = "row"
    width: float = 7

    def expression(self, plan: Plan, place: Place) -> str:
        cells = ",".join(own(key)(plan, place) for key in self.required)
        mend = own("mend")(plan, place)
        usable = f'LEFT({mend}&"{ALSO}",{len(ALSO)})="{ALSO}"'
        return f'IF(COUNTA({cells})<{len(self.required)},"",CHOOSE(1+({usable}),NA(),1))'


@dataclass(frozen=True, kw_only=True)
class Warnings(Column):
    """What does not hold in a row that is ready, in words; nothing where numbers are missing."""

    checks: tuple[Check, ...]
    format: str = "note"
    width: float = 42

    def formula(self, plan: Plan, place: Place) -> str:
        return f'=IFERROR({super().formula(plan, place)[1:]},"")'

    def expression(self, plan: Plan, place: Place) -> str:
        return "&".join(self._said(check, plan, place) for check in self.checks)

    def _said(self, check: Check, plan: Plan, place: Place) -> str:
        # One that cannot be told must not hide the others.
        return f'IFERROR(REPT("{check.words}; ",1-({self._holds(check, plan, place)})),"")'

    def _holds(self, check: Check, plan: Plan, place: Place) -> str:
        tree = native.parse(check.holds)
        cells = {name: native.Leaf(own(name)(plan, place)) for name in native.names(tree) if name in place.letters}
        return native.spell(native.replace(tree, cells))


@dataclass(frozen=True, kw_only=True)
class Waits(Column):
    """Which names of a row that is whole stand for something that cannot be used yet: where to look next."""

    table: Table
    unusable: Mapping[str, Reference]  # by field: the test that what it names has no number to give
    when: tuple[str | Reference, ...] = ()
    head: str = "Waits for"
    format: str = "note"
    width: float = 24

    def expression(self, plan: Plan, place: Place) -> str:
        parts = [
            f'REPT("{self.words(key)}",({own(key)(plan, place)}<>"")*({test(plan, place)}))'
            for key, test in self.unusable.items()
        ]
        return f'IF(COUNT({own("ready")(plan, place)})=0,"",{"&".join(parts)})'

    def words(self, key: str) -> str:
        field = self.table[key]
        return f"{self.table.label(field)}: see {TABLES[field.of].title}; "


def not_usable(table: str, key: str) -> Reference:
    """The test that the row which an entry names cannot be used yet."""
    return lambda plan, place: f"ISERROR({place_of(table, key)(plan, place)})"


def no_number(key: str) -> Reference:
    """The test that an own result has no number."""
    return lambda plan, place: f"COUNT({own(key)(plan, place)})=0"


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
    waits: Mapping[str, Reference] | None = None,
    results_printed: bool = False,
) -> TableTab:
    """The tab of a table that people type: its fields, what to mend, whether it is ready, and results."""
    required = required or tuple(field.key for field in table.fields if field.required and not field.aside)
    doubts = tuple(_doubts(table))
    columns: dict[str, Field | Column] = {field.key: field for field in table.fields}
    # Before what reaches entries by it: else LibreOffice, asked to calculate all, leaves the first row a pass behind.
    columns[OWN_ROW] = OwnRow()
    columns["mend"] = Mend(head="To mend", table=table, when=())
    columns["ready"] = Ready(head="Ready", required=required, when=())
    columns |= results or {}
    if waits:
        columns["waits"] = Waits(table=table, unusable=waits)
    columns |= said((*doubts, *checks))
    return TableTab(table.title, "input", table.purpose, table.key, columns, (*checks, *doubts), results_printed)


def said(checks: tuple[Check, ...]) -> dict[str, Field | Column]:
    """The columns of what does not hold in a row, and of what is unlikely there and may be meant."""
    columns: dict[str, Field | Column] = {}
    for key, head, unlikely in (("warnings", "Look at", False), ("doubts", "Is it meant?", True)):
        if asked := tuple(check for check in checks if check.unlikely == unlikely):
            columns[key] = Warnings(head=head, checks=asked)
    return columns


READY = constant(1)


@dataclass(frozen=True, kw_only=True)
class ReadyThere(Column):
    """Whether the same row of a tab where people type is ready: 1, blank, or its error."""

    table: str
    when_so: Reference = READY
    format: str = "row"
    width: float = 7

    def expression(self, plan: Plan, place: Place) -> str:
        # By plain reference: the cell is locked, so cut and paste cannot move it; and LibreOffice
        # leaves a row a pass behind where two tabs read each other through whole columns.
        return f'IF({same(self.table, "ready")(plan, place)}=1,{self.when_so(plan, place)},"")'


def follows(
    table: str, key: str, head: str, width: float = 35, when_so: Reference = READY
) -> dict[str, Field | Column]:
    """The first columns of a tab whose rows go with the rows of a table that people type.

    `when_so` is what Ready holds where the row is ready there: 1, or an error for a reason of this tab's own.
    """
    # The name shows in a row that is not ready too: it says whose numbers are missing.
    product: Look = look(head, as_text(carry(table, key)), when=(), width=width)
    return {
        key: product,
        "ready": ReadyThere(head="Ready", table=table, when_so=when_so, when=()),
        OWN_ROW: OwnRow(),
    }


def letters(columns: Mapping[str, object]) -> dict[str, str]:
    """The column letter of each key."""
    return {key: get_column_letter(number) for number, key in enumerate(columns, start=1)}


def place_of_tab(tab: TableTab, rows: int) -> Place:
    typed = frozenset(field.key for field in tab.fields)
    return Place(tab.title, FIRST_ROW + rows - 1, letters(tab.columns), typed=typed)
