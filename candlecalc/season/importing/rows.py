"""Lines of a file as rows of a table of ours."""

import datetime
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from typing import NamedTuple, TypeVar

from candlecalc.quantities import units
from candlecalc.season.fields import Field, Value, short
from candlecalc.season.folder import value_of
from candlecalc.season.importing import texts
from candlecalc.season.importing.amounts import Amounts, amounts_of
from candlecalc.season.importing.faults import Fault, Faults
from candlecalc.season.importing.file import Line, Lines
from candlecalc.season.importing.layout import Layout, Rule
from candlecalc.season.importing.signs import SIGNED, SignError, settled
from candlecalc.season.season import Row, Season, without_blanks
from candlecalc.season.tables import TABLES
from candlecalc.season.tables.imports import (
    ABOVE,
    DATES,
    LEAVE_OUT,
    LINE_PRICE,
    PER_CENT,
    READ_AS,
    REPEATED,
    THING,
    TURNED,
)
from candlecalc.season.tables.stock import OPENING

Read = TypeVar("Read", Decimal, datetime.date)
HUNDREDTH = Decimal("0.01")
# What an order, a document or a payment has once, and what tells those apart.
ONCE_IN = {"postage": ("place", "order"), "charges": ("document",), "payout_sum": ("payout",)}
ON_IMPORTS = "say on Imports, under Their word and Is here, what it is"


class Cell(NamedTuple):
    """A text for a column of ours: of the file, or as the maker typed it on Imports."""

    text: str
    ours: bool


@dataclass(frozen=True)
class Taken:
    """A line of the file as a row of ours, with what it comes to as the file has it."""

    line: int
    row: Row
    amounts: Amounts


class Result(NamedTuple):
    """The lines of a file by what becomes of them."""

    taken: list[Taken]
    outside: list[Taken]
    meant_not: list[Taken]  # by a word on Imports
    faults: Faults
    notes: list[str]


class Reader:
    """The lines of one file, read by one layout."""

    def __init__(self, layout: Layout, lines: Lines, season: Season) -> None:
        self.layout, self.lines, self.season = layout, lines, season
        self.faults = Faults()
        self.columns = self._columns()
        self.foot = self._foot()
        self.body = lines.lines[: len(lines.lines) - len(self.foot)]
        self._ways = {"date": "", "number": ""}
        self._ours = {
            (table, kind): {without_blanks(name).casefold(): name for name in season.names(table, kind)}
            for table, kind in {(field.names_from, field.kind) for field in layout.fields.values() if field.names_from}
            | {("materials", ""), ("recipes", "")}
        }
        self._returned_fees: list[Decimal] = []
        self._met: set[tuple[str, ...]] = set()

    @property
    def unread(self) -> list[str]:
        """Their columns that go into nothing of ours."""
        return [head for at, head in enumerate(self.lines.heads) if head and at not in self.columns.values()]

    @property
    def by_their_heads(self) -> list[str]:
        """Their columns that no line on Imports names: their heads are ours."""
        return [self.lines.heads[at] for key, at in self.columns.items() if key not in self.layout.rules]

    def result(self) -> Result:
        for line in self.lines.too_long:
            words = f'"{line.cells[-1] or "blank"}" and more stand beyond the last head; a decimal comma may have parted a number'
            self.faults.add(line.number, "", Fault("the whole line", words))
        given = self._given()
        self._ways = {each: self._way(each, given) for each in ("date", "number")}
        result = Result([], [], [], self.faults, [])
        first, last = self.season.settings["first_day"], self.season.settings["last_day"]
        for line, cells in zip(self.body, given, strict=True):
            left_out = any(cell.text.casefold() == LEAVE_OUT and cell.ours for cell in cells.values())
            values = self._values(line, cells, judged=not left_out)
            date = values.get("date")
            outside = isinstance(date, datetime.date) and not _within(date, first, last)
            self._drop_repeated(values)
            amounts = amounts_of(self.layout.kind, values)
            if left_out or outside:
                (result.meant_not if left_out else result.outside).append(Taken(line.number, {}, amounts))
                continue
            self._name_things(line, values)
            result.taken.append(Taken(line.number, self._row(line, values), amounts))
        if self._returned_fees:
            come_to = sum(self._returned_fees)
            result.notes.append(f"{len(self._returned_fees)} fees given back on refunds, {come_to} in all, have no place on Sales")
        return result

    # --- which of their columns is which of ours ---------------------------------------------------

    def _columns(self) -> dict[str, int]:
        heads = [head.casefold() for head in self.lines.heads]
        found = {}
        for key, field in self.layout.fields.items():
            rule = self.layout.rules.get(key)
            names = [rule.column] if rule else own_heads(self.layout, field)
            there = [at for at, head in enumerate(heads) if head and head in [name.casefold() for name in names]]
            if len(there) > 1:
                words = "stands in the line of heads twice; name one of them otherwise"
                self.faults.add(0, key, Fault(self.lines.heads[there[0]], words))
            if there:
                found[key] = there[0]
        return found

    def head(self, key: str) -> str:
        """What a column of ours is called in the file; its own name where the file has none."""
        field = self.layout.fields.get(key)
        return self.lines.heads[self.columns[key]] if key in self.columns else short(field.head) if field else key

    def number_in(self, key: str, line: Line) -> Decimal | None:
        """The number of a line in a column of ours, as the file has it; none where there is none."""
        text = line.cells[self.columns[key]]
        try:
            return self._number(self.layout.fields[key], text) if text else None
        except ValueError:
            return None

    def sum_of(self, key: str) -> Decimal:
        """What a column comes to, as the file has it."""
        return sum((self.number_in(key, line) or Decimal(0) for line in self.body), Decimal(0))

    # --- the cells of each line --------------------------------------------------------------------

    def _given(self) -> list[dict[str, Cell]]:
        """The cells of each line by our columns, their words put into ours, and what is as above filled in."""
        above: dict[str, Cell] = {}
        given = []
        for line in self.body:
            cells = {}
            for key in dict.fromkeys([*self.columns, *self.layout.rules]):
                text = line.cells[self.columns[key]] if key in self.columns else ""
                cell = _in_our_words(self.layout.rules.get(key), text)
                cells[key] = above.get(key, Cell("", False)) if cell.ours and cell.text.casefold() == ABOVE else cell
            above |= {key: cell for key, cell in cells.items() if cell.text}
            given.append(cells)
        return given

    def _foot(self) -> list[Line]:
        """The last lines, where they have no thing and no day: a total, or when the file was written."""
        things = [key for key in ("product", "material", THING, "batch", "package") if key in self.columns]
        at = len(self.lines.lines)
        while at and things and self._is_foot(self.lines.lines[at - 1], things):
            at -= 1
        return self.lines.lines[at:]

    def _is_foot(self, line: Line, things: Sequence[str]) -> bool:
        day = line.cells[self.columns["date"]] if "date" in self.columns else ""
        first = next(cell for cell in line.cells if cell)
        named = any(line.cells[self.columns[key]] not in ("", first) for key in things)
        of_thing = any(line.cells[self.columns[key]] == first for key in things)
        return not named and not day[:1].isdigit() and (not of_thing or _is_total(first))

    # --- what they mean ----------------------------------------------------------------------------

    def _way(self, what: str, given: Sequence[Mapping[str, Cell]]) -> str:
        """How the file writes days or numbers, where cells that can be read in one way alone all say the same."""
        ways = set()
        for key, field in self.layout.fields.items():
            if (field.date if what == "date" else field.numeric) and not self.layout.way(key):
                for text in {cells[key].text for cells in given if key in cells and not cells[key].ours}:
                    found = list(self._readings(field, text))
                    ways |= set(found if len(found) == 1 else [])
        return ways.pop() if len(ways) == 1 else ""

    def _readings(self, field: Field, text: str) -> Mapping[str, Decimal] | Mapping[str, datetime.date]:
        if field.date:
            return {way: day for way, day in texts.day(text).items() if way != DATES[2] or _has_century(text)}
        unit = field.term.unit if field.term else ""
        if unit == "g":
            return texts.number(text, self.season.measures.weight_unit)
        if unit.startswith("money"):
            return texts.number(text, "", self.season.currency)
        return texts.number(text, "%" if _is_share(field) else "")

    def _values(self, line: Line, cells: Mapping[str, Cell], *, judged: bool) -> dict[str, Decimal | Value]:
        values: dict[str, Decimal | Value] = {}
        for key, cell in cells.items():
            field = self.layout.fields[key]
            if not cell.text or (cell.ours and cell.text.casefold() == LEAVE_OUT):
                continue
            try:
                values[key] = self._value(field, cell)
            except ValueError as problem:
                if judged:
                    self.faults.add(line.number, key, Fault(self.head(key), str(problem)))
        return values

    def _value(self, field: Field, cell: Cell) -> Decimal | Value:
        if cell.ours:
            typed = value_of(cell.text, field)
            return Decimal(f"{typed:.15g}") if isinstance(typed, float) else typed
        if field.date:
            way = self.layout.way(field.key) or self._ways["date"]
            return _settled(self._days(field, cell.text), cell.text, way, field)
        if field.numeric:
            return self._as_written(field, self._number(field, cell.text), cell.text)
        if len(cell.text) > field.longest:
            raise ValueError(f"it has {len(cell.text)} characters; it takes {field.allowed()}")
        taken = field.as_declared(cell.text.removeprefix("'"))
        if field.choices and taken not in field.choices:
            raise ValueError(f'it is "{cell.text}"; it takes {field.allowed()}: {ON_IMPORTS}')
        return taken

    def _number(self, field: Field, text: str) -> Decimal:
        way = self.layout.way(field.key) or self._ways["number"]
        return _settled(self._readings(field, text), text, way, field)  # type: ignore[type-var, return-value]

    def _days(self, field: Field, text: str) -> Mapping[str, datetime.date]:
        """A year of two digits stands first only where the layout says so."""
        return texts.day(text) if self.layout.way(field.key) == DATES[2] else self._readings(field, text)  # type: ignore[return-value]

    def _as_written(self, field: Field, number: Decimal, text: str) -> Decimal:
        written = self._written(field.key)
        if _is_share(field) and ("%" in text or PER_CENT in written):
            number *= HUNDREDTH
        number = -number if TURNED in written else number
        if number < 0 and field.key not in SIGNED and field.term and field.term.low >= 0:
            raise ValueError(f'it is {text}; it takes {field.allowed()}. Where they write it with a minus, say "{TURNED}" on Imports')
        return number

    def _written(self, key: str) -> set[str]:
        return self.layout.rules[key].written if key in self.layout.rules else set()

    def _drop_repeated(self, values: dict[str, Decimal | Value]) -> None:
        """What a file says on every line of an order counts once."""
        for key, parts in ONCE_IN.items():
            if key in values and REPEATED in self._written(key):
                met = (key, *(str(values.get(part)) for part in parts))
                if met in self._met:
                    del values[key]
                self._met.add(met)

    def _name_things(self, line: Line, values: dict[str, Decimal | Value]) -> None:
        """Put our names in place of theirs."""
        for key, field in self.layout.fields.items():
            if key not in values or not field.names_from:
                continue
            name = str(values[key])
            ours = self._ours[field.names_from, field.kind]
            if name.casefold() in ours:
                values[key] = ours[name.casefold()]
            else:
                kind = f", of kind {field.kind}" if field.kind else ""
                self._unknown(line, key, name, f"{TABLES[field.names_from].title}{kind}", ours)
                del values[key]
        if THING in values:
            self._name_either(line, values, str(values.pop(THING)))

    def _name_either(self, line: Line, values: dict[str, Decimal | Value], name: str) -> None:
        found = {
            key: self._ours[table, ""].get(name.casefold())
            for key, table in {"material": "materials", "product": "recipes"}.items()
        }
        there = {key: ours for key, ours in found.items() if ours}
        if len(there) == 1:
            values |= there
        else:
            ours = self._ours["materials", ""] | self._ours["recipes", ""]
            self._unknown(line, THING, name, "Materials or Recipes" if not there else "one of Materials and Recipes alone", ours)

    def _unknown(self, line: Line, key: str, name: str, where: str, ours: Mapping[str, str]) -> None:
        fault = Fault(self.head(key), f'"{name}" is not on {where}', name, tuple(ours.values()))
        self.faults.add(line.number, key, fault)

    def _row(self, line: Line, values: dict[str, Decimal | Value]) -> Row:
        """The row as its tab takes it: a price for each, no signs, numbers as floats."""
        if self.layout.kind == "sales":
            try:
                given_back = settled(values)
            except SignError as problem:
                self.faults.add(line.number, problem.key, Fault(self.head(problem.key), str(problem)))
                given_back = None
            self._returned_fees += [given_back] if given_back else []
        count = values.get("packs" if self.layout.kind == "purchases" else "pieces") or Decimal(1)
        if values.get("kind") == OPENING:  # its price is that of all of it
            count = Decimal(1)
        whole = values.pop(LINE_PRICE, None)
        if isinstance(whole, Decimal) and isinstance(count, Decimal):
            values["price"] = whole / count
        plain = {key: float(value) if isinstance(value, Decimal) else value for key, value in values.items()}
        return dict.fromkeys(READ_AS[self.layout.kind].keys) | plain


def own_heads(layout: Layout, field: Field) -> list[str]:
    """Heads by which a column goes into ours without a line on Imports."""
    table = READ_AS[layout.kind]
    return [field.key, table.label(field)] if field.key in table.by_key else []


def _in_our_words(rule: Rule | None, text: str) -> Cell:
    if rule and text.casefold() in rule.words:
        return Cell(rule.words[text.casefold()], True)
    return Cell(text, False)


def _settled(found: Mapping[str, Read], text: str, way: str, field: Field) -> Read:
    """What a text means: as it is written here, or in the only way that it can be read."""
    if way in found:
        return found[way]
    if not found:
        raise ValueError(f'it is "{text}"; it takes {field.allowed()}')
    if len(set(found.values())) > 1:
        either = " or ".join(str(value) for value in dict.fromkeys(found.values()))
        raise ValueError(f'"{text}" may be {either}: say on Imports, under Written, {" or ".join(found)}')
    return next(iter(found.values()))


def _has_century(text: str) -> bool:
    return not texts.IN_FIGURES.match(text) or text[:4].isdigit()


def _is_share(field: Field) -> bool:
    return bool(field.term) and units.kind_of(field.term.unit) == "a share"  # type: ignore[union-attr]


def _within(day: datetime.date, first: Value, last: Value) -> bool:
    return not (isinstance(first, datetime.date) and day < first) and not (isinstance(last, datetime.date) and day > last)


def _is_total(text: str) -> bool:
    return text.casefold().rstrip(":").split(" ")[-1] in ("total", "totals", "sum", "subtotal")
