"""What was in stock at the end of a day, and what it is worth: at cost, or at what it will bring where that is less."""

import datetime
import math
from collections.abc import Iterator
from typing import NamedTuple

from candlecalc.books.journal import as_number
from candlecalc.books.reading import Reading
from candlecalc.books.sheets import Column, Sheet
from candlecalc.quantities.days import EPOCH
from candlecalc.quantities.rounding import round_half_away
from candlecalc.season.tables.sales import ON_CONSIGNMENT
from candlecalc.workbook.tabs.set_up.settings import KEY_DAY, KEY_THING

Day = datetime.date
MATERIAL, CANDLE = "material", "candle"
LISTS = {MATERIAL: ("lots", "card", "materials"), CANDLE: ("made", "out_card", "recipes")}
NAMED_BY = {MATERIAL: "material", CANDLE: "product"}
OUT = ON_CONSIGNMENT[0]


class Item(NamedTuple):
    """A thing in stock on a day."""

    kind: str
    name: str
    unit: str
    amount: float
    at_places: float  # of them, candles at shops that pay when they have sold
    counted: float | None
    counted_on: Day | None
    counted_by: str
    value: int  # coins, at cost
    brings: float | None  # the least that one leaves after tax and fees, by the prices


def items(read: Reading, last: Day) -> list[Item]:
    """All that was there, or was counted, at the end of a day."""
    return [item for kind in LISTS for item in _of_kind(read, kind, last) if item.amount or item.value]


def _of_kind(read: Reading, kind: str, last: Day) -> Iterator[Item]:
    came, went, table = LISTS[kind]
    amounts: dict[int, float] = {}
    values: dict[int, int] = {}
    # Down each list the last line of a thing by that day holds what came, or went, up to it.
    for number, (there, amount, worth) in enumerate(((came, "came", "worth"), (went, "gone", "spent"))):
        latest = {thing: at for at, thing, day in _dated(read, there) if day <= last}
        for thing, at in latest.items():
            sign = 1 - 2 * number
            amounts[thing] = amounts.get(thing, 0.0) + sign * read.number(there, amount, at)
            values[thing] = values.get(thing, 0) + sign * read.coins(there, worth, at)
    for thing, amount_left in amounts.items():
        name = str(read.row(table, thing).typed[NAMED_BY[kind]])
        yield _item(read, kind, name, round_half_away(amount_left, 6), values[thing], last)


def _dated(read: Reading, table: str) -> Iterator[tuple[int, int, Day]]:
    """(place, thing, day) of each line of a list in order, by its number."""
    for at in read.lines(table, "number"):
        number = read.whole(table, "number", at)
        yield at, number // KEY_THING, EPOCH + datetime.timedelta(days=number % KEY_THING // KEY_DAY)


def _item(read: Reading, kind: str, name: str, amount: float, value: int, last: Day) -> Item:
    counted: float | None = None
    counted_on: Day | None = None
    by = ""
    for line in read.rows("counts"):
        day = line.day()
        mine = str(line.typed[NAMED_BY[kind]] or "").casefold() == name.casefold()
        if mine and day and day <= last and (counted_on is None or day >= counted_on):
            counted, counted_on, by = float(str(line.typed["counted"])), day, str(line.typed["by"] or "")
    there = _at_places(read, name, last) if kind == CANDLE else 0.0
    brings = _brings(read, name) if kind == CANDLE else None
    return Item(kind, name, _unit(read, kind, name), amount, there, counted, counted_on, by, value, brings)


def _unit(read: Reading, kind: str, name: str) -> str:
    if kind == CANDLE:
        return "pieces"
    unit = next(str(line.typed["pack_unit"]) for line in read.rows("materials") if line.typed["material"] == name)
    return "pieces" if unit == "each" else read.season.measures.weight_unit


def _at_places(read: Reading, name: str, last: Day) -> float:
    found = 0.0
    for line in read.rows("sales"):
        kind = line.typed["kind"]
        mine = kind in ON_CONSIGNMENT and str(line.typed["product"]).casefold() == name.casefold()
        if mine and line.by(last):
            found += float(str(line.typed["pieces"])) * (1 if kind == OUT else -1)
    return found


def _brings(read: Reading, name: str) -> float | None:
    """What one brings at least, before tax and after fees, at the maker's prices; none where it has no price."""
    found = []
    for line in read.rows("prices"):
        if str(line.typed["product"]).casefold() == name.casefold():
            received, fees = (read.calculated.value("prices", key, line.at) for key in ("received", "fees"))
            if isinstance(received, (int, float)) and isinstance(fees, (int, float)):
                found.append(float(received) - float(fees))
    return min(found, default=None)


def lower_of(item: Item, digits: int) -> int:
    """Cost, or what candles will bring where that is less. Materials stay at cost while their candles bring more."""
    brings = math.inf if item.brings is None else round_half_away(item.brings * item.amount * 10**digits, 0)
    return int(min(item.value, brings))


def stock_sheet(read: Reading, held: list[Item]) -> Sheet:
    rows = [_row(read, item) for item in held]
    columns = (
        Column("kind"),
        Column("item", constraints={"required": True}),
        Column("unit"),
        Column("amount", "number"),
        Column("of_them_at_places", "number", says="candles at shops that pay when they have sold; they are yours"),
        Column("counted", "number", says="what was there when it was counted last"),
        Column("counted_on", "date"),
        Column("counted_by"),
        Column("unit_cost", "number"),
        Column("method", says="fifo: first in, first out; average: moving average"),
        Column("value", "number", says="at cost"),
        Column("brings_each", "number", says="the least that one leaves after tax and fees, at your prices"),
        Column("lower_of", "number", says="at cost, or at what it brings where that is less"),
    )
    return Sheet("stock", "What was in stock on the last day.", columns, rows, ("kind", "item"))


def _row(read: Reading, item: Item) -> list[object]:
    each = round(item.value / 10**read.digits / item.amount, 4) if item.amount > 0 else None
    brings = None if item.brings is None else round(item.brings, 4)
    value, lower = (as_number(coins, read.digits) for coins in (item.value, lower_of(item, read.digits)))
    return [*item[:8], each, read.season.stock, value, brings, lower]
