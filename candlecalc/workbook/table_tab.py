"""A tab that is a list: its columns, its checks, and how it prints."""

from collections.abc import Mapping
from dataclasses import dataclass

from openpyxl.utils import get_column_letter

import candlecalc.native as native
from candlecalc.season.fields import Field, Table
from candlecalc.workbook.columns import Column, Look, look
from candlecalc.workbook.entries import bad
from candlecalc.workbook.place import FIRST_ROW, Place, Plan
from candlecalc.workbook.references import Reference, as_text, carry, constant, own, same


@dataclass(frozen=True)
class Check:
    """Something that must hold in every row of a tab: said in the native language over its columns."""

    holds: str
    words: str  # what is wrong, short: it stands in the row's "To mend"
    mend: str  # what to do, and where
    column: str  # the entry to look at


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
        return len(self.columns) if self.results_printed else len(self.fields)

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
        parts = [f'REPT("{short(field.head)}; ",{bad(field, cells, plan)})' for field in fields]
        entries = f"{cells[fields[0].key]}:{cells[fields[-1].key]}"
        return f'IF(COUNTA({entries})=0,"",{"&".join([*parts, self._twice(place, cells)])})'

    def _twice(self, place: Place, cells: Mapping[str, str]) -> str:
        pairs = []
        for key in self.table.alone:
            letter = place.letters[key]
            pairs.append(f"${letter}${place.first_row}:${letter}${place.last_row},{cells[key]}")
        return f'REPT("Twice on this tab; ",IFERROR(COUNTIFS({",".join(pairs)}),0)>1)'


@dataclass(frozen=True, kw_only=True)
class Ready(Column):
    """Blank while a row is not complete, 1 when every entry is what its field takes, an error otherwise."""

    required: tuple[str, ...]
    format: str = "row"
    width: float = 7

    def expression(self, plan: Plan, place: Place) -> str:
        cells = ",".join(own(key)(plan, place) for key in self.required)
        mend = own("mend")(plan, place)
        return f'IF(COUNTA({cells})<{len(self.required)},"",CHOOSE(1+({mend}=""),NA(),1))'


@dataclass(frozen=True, kw_only=True)
class Warnings(Column):
    """What does not hold in a row that is ready, in words; nothing of a row whose numbers are missing."""

    checks: tuple[Check, ...]
    format: str = "note"
    width: float = 42

    def formula(self, plan: Plan, place: Place) -> str:
        return f'=IFERROR({super().formula(plan, place)[1:]},"")'

    def expression(self, plan: Plan, place: Place) -> str:
        return "&".join(f'REPT("{check.words}; ",1-({self._holds(check, plan, place)}))' for check in self.checks)

    def _holds(self, check: Check, plan: Plan, place: Place) -> str:
        tree = native.parse(check.holds)
        cells = {name: native.Leaf(own(name)(plan, place)) for name in native.names(tree) if name in place.letters}
        return native.spell(native.replace(tree, cells))


def entry_tab(
    table: Table,
    results: Mapping[str, Column] | None = None,
    *,
    checks: tuple[Check, ...] = (),
    required: tuple[str, ...] = (),
    results_printed: bool = False,
) -> TableTab:
    """The tab of a table that people type: its fields, what to mend, whether it is ready, and results."""
    required = required or tuple(field.key for field in table.fields if field.required)
    columns: dict[str, Field | Column] = {field.key: field for field in table.fields}
    columns["mend"] = Mend(head="To mend", table=table, when=())
    columns["ready"] = Ready(head="Ready", required=required, when=())
    columns |= results or {}
    if checks:
        columns["warnings"] = Warnings(head="Look at", checks=checks)
    return TableTab(table.title, "input", table.purpose, table.key, columns, checks, results_printed)


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
    return {key: product, "ready": ReadyThere(head="Ready", table=table, when_so=when_so, when=())}


def short(head: str) -> str:
    """A head without its unit: "Pack price, {money}" becomes "Pack price"."""
    return head.partition(",")[0]


def letters(columns: Mapping[str, object]) -> dict[str, str]:
    """The column letter of each key."""
    return {key: get_column_letter(number) for number, key in enumerate(columns, start=1)}


def place_of_tab(tab: TableTab, rows: int) -> Place:
    return Place(tab.title, FIRST_ROW + rows - 1, letters(tab.columns))
