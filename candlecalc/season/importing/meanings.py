"""What the cells of a file mean, by its layout: numbers and days as it writes them, words as ours."""

import datetime
from collections.abc import Iterable, Mapping
from decimal import Decimal
from typing import TypeVar

from candlecalc.quantities import units
from candlecalc.season.fields import Field
from candlecalc.season.folder import value_of
from candlecalc.season.importing import texts
from candlecalc.season.importing.layout import Cell, Layout
from candlecalc.season.importing.signs import SIGNED
from candlecalc.season.season import Season
from candlecalc.season.tables.imports import PER_CENT, TURNED, YEAR_FIRST

Read = TypeVar("Read", Decimal, datetime.date)
HUNDREDTH = Decimal("0.01")
OTHERWISE = "Where it is a word of theirs, say on Imports, under Their word and Is here, what it is here"
WITH_MINUS = 'Where they write it with a minus, say "{}" on Imports'


class Meanings:
    """The values of cells. How the file writes is told by its layout, or by cells that can be read in one way alone."""

    def __init__(self, layout: Layout, season: Season, given: Iterable[Mapping[str, Cell]]) -> None:
        self.layout, self.season = layout, season
        seen: dict[str, set[str]] = {}
        for cells in given:
            for key, cell in cells.items():
                if not cell.ours:
                    seen.setdefault(key, set()).add(cell.text)
        keys = [key for key in seen if not layout.way(key)]
        self._days_as = _only_way(
            self._days(field, text) for key in keys if (field := layout.fields[key]).date for text in seen[key]
        )
        self._numbers_as = _only_way(
            self._numbers(field, text) for key in keys if (field := layout.fields[key]).numeric for text in seen[key]
        )

    def value(self, key: str, cell: Cell) -> object:
        """The value of a cell that is not blank; a ValueError says what is wrong with it."""
        field = self.layout.fields[key]
        if cell.ours:
            typed = value_of(cell.text, field)
            return Decimal(f"{typed:.15g}") if isinstance(typed, float) else typed
        if field.date:
            way = self.layout.way(key) or self._days_as
            return _settled(self._days(field, cell.text), cell.text, way, field.allowed())
        if field.numeric:
            return self._as_written(field, self.number(key, cell.text), cell.text)
        return _word(field, cell.text)

    def number(self, key: str, text: str) -> Decimal:
        """A number as the file has it, with its own sign."""
        field = self.layout.fields[key]
        way = self.layout.way(key) or self._numbers_as
        return _settled(self._numbers(field, text), text, way, self._allowed(field))

    def _days(self, field: Field, text: str) -> texts.Day:
        """A year of two digits stands first only where the layout says so."""
        found = texts.day(text)
        if self.layout.way(field.key) == YEAR_FIRST or text[:4].isdigit():
            return found
        return {way: day for way, day in found.items() if way != YEAR_FIRST or len(set(found.values())) == 1}

    def _numbers(self, field: Field, text: str) -> texts.Number:
        return texts.number(text, self._unit(field), self.season.currency if _is_money(field) else "")

    def _unit(self, field: Field) -> str:
        """What may stand beside a number that is no money."""
        of_weight = field.term is not None and field.term.unit == "g"
        return self.season.measures.weight_unit if of_weight else "%" if _is_share(field) else ""

    def _allowed(self, field: Field) -> str:
        """What a number may be, with what may stand beside it."""
        unit = self.season.currency if _is_money(field) else self._unit(field)
        return f"a number{f', alone or with {unit}' if unit else ''}: {field.allowed()}"

    def _as_written(self, field: Field, number: Decimal, text: str) -> Decimal:
        written = self.layout.written(field.key)
        if _is_share(field) and ("%" in text or PER_CENT in written):
            number *= HUNDREDTH
        number = -number if TURNED in written else number
        may_be_negative = field.key in SIGNED and self.layout.kind == "sales"
        if number < 0 and not may_be_negative and field.term and field.term.low >= 0:
            raise ValueError(f"it is {text}; it takes {self._allowed(field)}. {WITH_MINUS.format(TURNED)}")
        return number


def _only_way(readings: Iterable[Mapping[str, object]]) -> str:
    """The way in which all can be read that can be read in one way alone, if that is one."""
    ways = {next(iter(found)) for found in readings if len(found) == 1}
    return ways.pop() if len(ways) == 1 else ""


def _settled(found: Mapping[str, Read], text: str, way: str, allowed: str) -> Read:
    """What a text means: as it is written here, or in the only way that it can be read."""
    if way in found:
        return found[way]
    if not found:
        raise ValueError(f'it is "{text}"; it takes {allowed}')
    if len(set(found.values())) > 1:
        either = " or ".join(str(value) for value in dict.fromkeys(found.values()))
        raise ValueError(f'"{text}" may be {either}: say on Imports, under Written, {" or ".join(found)}')
    return next(iter(found.values()))


def _word(field: Field, text: str) -> str:
    taken = str(field.as_declared(text))
    if field.choices and taken not in field.choices:
        raise ValueError(f'it is "{text}"; it takes {field.allowed()}. {OTHERWISE}')
    if field.any_text and len(taken) > field.longest:
        raise ValueError(f"it has {len(taken)} characters; it takes {field.allowed()}")
    return taken


def _is_share(field: Field) -> bool:
    return field.term is not None and units.kind_of(field.term.unit) == "a share"


def _is_money(field: Field) -> bool:
    return field.term is not None and field.term.unit.startswith("money")
