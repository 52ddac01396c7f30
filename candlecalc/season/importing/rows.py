"""Lines of a file as rows of a table of ours."""

import datetime
from collections.abc import Iterator, Mapping
from decimal import Decimal
from typing import NamedTuple

from candlecalc.season.fields import Value, short
from candlecalc.season.importing.amounts import Amounts, amounts_of
from candlecalc.season.importing.faults import Fault, Faults
from candlecalc.season.importing.file import Line, Lines
from candlecalc.season.importing.foot import lines_of_foot
from candlecalc.season.importing.layout import Cell, Layout
from candlecalc.season.importing.meanings import Meanings
from candlecalc.season.importing.names import Names
from candlecalc.season.importing.signs import SignError, settled
from candlecalc.season.season import Row, Season
from candlecalc.season.tables.imports import ABOVE, LEAVE_OUT, LINE_PRICE, READ_AS, REPEATED, THING
from candlecalc.season.tables.stock import OPENING

# What an order, a document or a payment has once, and what tells those apart.
ONCE_IN = {"postage": ("place", "order"), "charges": ("document",), "payout_sum": ("payout",)}
PIECES = {"purchases": "packs", "sales": "pieces"}
TOO_LONG = (
    "more cells than there are heads: a decimal comma may have parted a number, or a text lacks its quotation marks"
)


class Taken(NamedTuple):
    """A line of the file as a row of ours, with what it comes to as the file has it."""

    line: int
    row: Row
    amounts: Amounts


class Result(NamedTuple):
    """The lines of a file by what becomes of them."""

    taken: list[Taken]
    outside: list[Taken]  # of the season
    not_meant: list[Taken]  # by a word on Imports
    fees_given_back: list[Decimal]


class Reader:
    """The lines of one file, read by one layout."""

    def __init__(self, layout: Layout, lines: Lines, season: Season) -> None:
        self.layout, self.lines, self.season = layout, lines, season
        self.faults = Faults()
        self.columns = dict(self._columns())
        self.foot = lines_of_foot(lines.lines, self.columns)
        self.body = lines.lines[: len(lines.lines) - len(self.foot)]
        self._given = [*self._cells()]
        self.meanings = Meanings(layout, season, self._given)
        self._names = Names(season, layout)
        self._met: set[tuple[str, ...]] = set()

    @property
    def unread(self) -> list[str]:
        """Their columns that go into nothing of ours."""
        return [head for at, head in enumerate(self.lines.heads) if head and at not in self.columns.values()]

    @property
    def by_heads(self) -> list[str]:
        """Their columns that no line on Imports names: their heads are ours."""
        return [self.lines.heads[at] for key, at in self.columns.items() if key not in self.layout.rules]

    def head(self, key: str) -> str:
        """What a column of ours is called in the file; its own name where the file has none."""
        if key in self.columns:
            return self.lines.heads[self.columns[key]]
        return short(self.layout.fields[key].head) if key in self.layout.fields else key

    def number_in(self, key: str, line: Line) -> Decimal | None:
        """The number of a line in a column of ours, as the file has it; none where there is none."""
        text = line.cells[self.columns[key]]
        try:
            return self.meanings.number(key, text) if text else None
        except ValueError:
            return None

    def result(self) -> Result:
        """The lines as rows; what is not understood is added to the faults."""
        result = Result([], [], [], [])
        for line in self.lines.too_long:
            self.faults.add(line.number, "", Fault("the line", TOO_LONG))
        for line, cells in zip(self.body, self._given, strict=True):
            left_out = any(cell.says(LEAVE_OUT) for cell in cells.values())
            values = self._values(line, cells, judged=not left_out)
            self._drop_repeated(values)
            amounts = amounts_of(self.layout.kind, values)
            if left_out:
                result.not_meant.append(Taken(line.number, {}, amounts))
            elif self._is_outside(values.get("date")):
                result.outside.append(Taken(line.number, {}, amounts))
            else:
                row = self._row(line, values, result.fees_given_back)
                result.taken.append(Taken(line.number, row, amounts))
        return result

    def _columns(self) -> Iterator[tuple[str, int]]:
        """Of each column of ours that the file has, where it stands in the file."""
        for key in self.layout.fields:
            names = self.layout.heads(key)
            there = [at for at, head in enumerate(self.lines.heads) if head and head.casefold() in names]
            if len(there) > 1:
                words = "it stands in the line of heads twice: give one of the two another name"
                self.faults.add(self.lines.head_line, key, Fault(self.lines.heads[there[0]], words))
            if there:
                yield key, there[0]

    def _cells(self) -> Iterator[dict[str, Cell]]:
        """The cells of each line by our columns, their words put into ours, and what is as above filled in."""
        above: dict[str, Cell] = {}
        keys = dict.fromkeys([*self.columns, *self.layout.rules])
        for line in self.body:
            texts = {key: line.cells[self.columns[key]] if key in self.columns else "" for key in keys}
            found = {key: self.layout.cell(key, text) for key, text in texts.items()}
            cells = {key: above.get(key, Cell("", False)) if cell.says(ABOVE) else cell for key, cell in found.items()}
            above |= {key: cell for key, cell in cells.items() if cell.text}
            yield cells

    def _values(self, line: Line, cells: Mapping[str, Cell], *, judged: bool) -> dict[str, object]:
        values: dict[str, object] = {}
        for key, cell in cells.items():
            if cell.text and not cell.says(LEAVE_OUT):
                try:
                    values[key] = self.meanings.value(key, cell)
                except ValueError as problem:
                    if judged:
                        self.faults.add(line.number, key, Fault(self.head(key), str(problem)))
        return values

    def _drop_repeated(self, values: dict[str, object]) -> None:
        """What a file says on every line of an order counts once."""
        for key, parts in ONCE_IN.items():
            if key in values and REPEATED in self.layout.written(key):
                met = (key, *(str(values.get(part)) for part in parts))
                if met in self._met:
                    del values[key]
                self._met.add(met)

    def _is_outside(self, day: object) -> bool:
        first, last = self.season.settings["first_day"], self.season.settings["last_day"]
        if not isinstance(day, datetime.date):
            return False
        return (isinstance(first, datetime.date) and day < first) or (isinstance(last, datetime.date) and day > last)

    def _row(self, line: Line, values: dict[str, object], fees_given_back: list[Decimal]) -> Row:
        """The row as its tab takes it: our names, a price for each, no signs, numbers as floats."""
        for key, fault in self._names.put_in(values):
            self.faults.add(line.number, key, fault._replace(column=self.head(key)))
        if self.layout.kind == "sales":
            try:
                given_back = settled(values)
                fees_given_back += [given_back] if given_back else []
            except SignError as problem:
                self.faults.add(line.number, problem.key, Fault(self.head(problem.key), str(problem)))
        _price_each(values, PIECES.get(self.layout.kind, ""))
        plain: dict[str, Value] = {key: _plain(value) for key, value in values.items() if key != THING}
        return dict.fromkeys(READ_AS[self.layout.kind].keys) | plain


def _price_each(values: dict[str, object], pieces: str) -> None:
    """Put the price of each in place of that of the line. The price of opening stock is that of all of it."""
    whole, count = values.pop(LINE_PRICE, None), values.get(pieces)
    if isinstance(whole, Decimal):
        by = count if isinstance(count, Decimal) and count and values.get("kind") != OPENING else Decimal(1)
        values["price"] = whole / by


def _plain(value: object) -> Value:
    return float(value) if isinstance(value, Decimal) else value  # type: ignore[return-value]
