"""What tabs show of a year, figure by figure, and how two lists of figures differ, in words."""

from collections.abc import Iterable, Mapping
from datetime import date
from fractions import Fraction
from math import isfinite
from typing import NamedTuple

from year_cards import PARTS, average_left, last_landed, lots_left, sum_or_none
from year_reference import Worked
from year_sold import candles, owed, shops, sold, sums


class Figure(NamedTuple):
    """Which number: the tab, its row (a number in a log, or a name) and the head of the column."""

    tab: str
    row: object
    head: str


class Cents(int):
    """Money. Where a tab is read it may be any number instead, in whole money: 12.34."""


ERROR = "an error"  # what cannot be worked out: any error value of a cell, and no blank

Value = Cents | Fraction | str | bool | date | tuple[str, ...]
Figures = dict[Figure, Value]


def figures(worked: Worked) -> Figures:
    """Everything that a year comes to."""
    parts = (_purchases, _batches, _used, _moves, _sets, _counts, _stock, _candles, _sold, _sums, _lots, _trace)
    return {figure: value for part in parts for figure, value in part(worked)}


Found = Iterable[tuple[Figure, Value]]


def _row(tab: str, row: object, **heads: Value) -> Found:
    return [(Figure(tab, row, head.replace("_", " ")), value) for head, value in heads.items()]


def _money(cents: int | None) -> Value:
    return ERROR if cents is None else Cents(cents)


def _unit_cost(cents: Fraction | None) -> Value:
    return ERROR if cents is None else cents / 100


def _purchases(worked: Worked) -> Found:
    for row, line in enumerate(worked.bought, start=1):
        yield from _row(
            "Purchases",
            row,
            amount=line.amount,
            share_of_charges=Cents(line.share),
            landed_cost=Cents(line.landed),
            unit_cost=Fraction(line.landed, 100) / line.amount,
        )


def _batches(worked: Worked) -> Found:
    for row, (pour, batch) in enumerate(zip(worked.year.pours, worked.made, strict=True), start=1):
        yield from _row("Batch log", row, making_cost=_money(batch.cost), ready_on=batch.ready_on)
        if pour.kind != "opening":
            yield from _row(
                "Batch log",
                row,
                pieces=Fraction(batch.pieces),
                hours=batch.hours,
                materials=_money(batch.materials),
                labour=Cents(batch.labour),
                overhead=Cents(batch.overhead),
            )


def _used(worked: Worked) -> Found:
    lines = worked.lines
    for used in worked.used:
        row = (used.batch, used.planned)
        line = lines["Used", row]
        yield from _row("Used", row, thing=used.thing, amount=used.amount, cost=_money(line.cost), short=line.short)


def _moves(worked: Worked) -> Found:
    lines = worked.lines
    for row in range(1, len(worked.year.moves) + 1):
        line = lines.get(("Moves", row))  # none where no set of it was packed
        cost = sum_or_none(worked.costs["Moves", row])
        yield from _row("Moves", row, cost=_money(cost), short=line is not None and line.short)


def _sets(worked: Worked) -> Found:
    """What of each line nobody had packed, and what that took."""
    for lines in worked.sets.values():
        for line in lines:
            yield from _row(*line.issue.line, unpacked=line.unpacked)
    for part in worked.parts:
        row = (part.log, part.row, part.thing)
        line = worked.lines[PARTS, row]
        yield from _row(PARTS, row, amount=part.amount, cost=_money(line.cost), short=line.short)


def _counts(worked: Worked) -> Found:
    for row, count in enumerate(worked.year.counts, start=1):
        yield from _row("Counts", row, difference=worked.cards[count.thing].differences[row])
        if count.is_move:
            yield from _row("Counts", row, cost=_money(sum_or_none(worked.costs["Counts", row])))


def _stock(worked: Worked) -> Found:
    for material in worked.year.materials:
        card, name = worked.cards[material.name], material.name
        point = material.reorder_point
        yield from _both("Stock", worked, name)
        yield from _row(
            "Stock",
            name,
            bought=card.received,
            value_bought=_money(card.value_received),
            used=card.taken_by("Used") + card.taken_by(PARTS),
            below_reorder=point is not None and card.left < point,
            last_landed=_unit_cost(last_landed(card)),
            average=_unit_cost(average_left(card)),
        )


def _both(tab: str, worked: Worked, name: str) -> Found:
    """What materials and candles have alike."""
    card = worked.cards[name]
    counts = [(count.day, row) for row, count in enumerate(worked.year.counts, start=1) if count.thing == name]
    yield from _row(
        tab,
        name,
        moved=card.taken - card.taken_by("Used") - card.taken_by(PARTS),
        left=card.left,
        value=_money(card.value),
        spent=_money(card.spent),
        short_on_a_day=any(line.short for line in card.lines),
        short_at_the_end=card.left < 0,
    )
    if counts:
        _, latest = max(counts)
        counted = worked.year.counts[latest - 1].counted
        yield from _row(tab, name, counted=counted, difference=card.differences[latest])


def _candles(worked: Worked) -> Found:
    for product, there in candles(worked).items():
        card = worked.cards[product]
        yield from _both("Candles", worked, product)
        yield from _row(
            "Candles",
            product,
            made=card.received,
            packed=card.taken_by("Used"),
            at_shops=there.there,
            in_sets=there.packed,
            ready=there.ready,
            curing=there.curing,
        )


def _sold(worked: Worked) -> Found:
    for line in sold(worked):
        yield from _row(
            line.log,
            line.row,
            day=line.day,
            place=Fraction(line.place_row),
            product=line.product,
            rate=line.rate,
            pieces=Fraction(line.pieces),
            gross=Cents(line.gross),
            tax=Cents(line.tax),
            net=Cents(line.net),
            fee=Cents(line.fee),
            sent=Cents(line.sent),
            comes_in=Cents(line.comes_in),
            cost=_money(line.cost),
        )


def _sums(worked: Worked) -> Found:
    """What the tabs of sums have: by place, product and month, what is owed, and what lies at shops."""
    lines = sold(worked)
    for tab, by in (("By place", "place"), ("By product", "product"), ("Months", "month")):
        for row, summed in sums(lines, by).items():
            money = {name: Cents(summed[name]) for name in ("net", "tax", "fee", "sent", "cost") if name in summed}
            yield from _row(tab, row, pieces=Fraction(summed["pieces"]), **money)
    yield from _row("Sold", "all of it", owed=Cents(owed(lines)))
    for (product, place), shop in shops(worked.year.selling, lines).items():
        pieces = {name: Fraction(getattr(shop, name)) for name in ("out", "back", "sold", "there")}
        money = {name: Cents(getattr(shop, name)) for name in ("comes_in", "owed")}
        yield from _row("At shops", f"{product} at {place}", **pieces, **money)


def _lots(worked: Worked) -> Found:
    materials = {material.name for material in worked.year.materials}
    for name, card in worked.cards.items():
        tab = "Lots" if name in materials else "Candle lots"
        for lot in lots_left(card):
            batches = tuple(worked.batches_of(name, lot.row))
            yield from _row(tab, lot.row, left=lot.left, value=_money(lot.value), batches=batches)


def _trace(worked: Worked) -> Found:
    """The lots of each used line and move: the receipts' rows, and how it is known."""
    by_line: dict[tuple[str, object], list[str]] = {}
    for each in worked.took():
        by_line.setdefault((each.tab, each.row), []).append(f"{each.lot} {each.how}")
    for (tab, row), lots in by_line.items():
        yield from _row(tab, row, lots=tuple(lots))


# Spreadsheets keep amounts to six decimals, and a sum of cents a hair beside them.
CRUMB_OF_AMOUNT, CRUMB_OF_A_CENT = Fraction(2, 10**6), Fraction(1, 10**4)


def differences(expected: Mapping[Figure, Value], found: Mapping[Figure, object]) -> list[str]:
    """Every figure that is not what it should be, in words, in the order they were expected."""
    wrong = []
    for figure, value in expected.items():
        if figure not in found:
            wrong.append(f"{_place(figure)}: {_words(value)} expected, nothing found")
        elif not _same(value, found[figure]):
            wrong.append(f"{_place(figure)}: {_words(value)} expected, {_words(found[figure])} found")
    return wrong + [
        f"{_place(figure)}: nothing expected, {_words(found[figure])} found"
        for figure in found
        if figure not in expected
    ]


def _same(expected: Value, found: object) -> bool:
    if isinstance(expected, Cents) and isinstance(found, Cents):
        return expected == found
    if isinstance(expected, (Cents, Fraction)):
        if isinstance(found, bool) or not isinstance(found, (int, float, Fraction)) or not isfinite(found):
            return False
        if isinstance(expected, Cents):
            return abs(Fraction(found) * 100 - expected) <= CRUMB_OF_A_CENT
        return abs(Fraction(found) - expected) <= CRUMB_OF_AMOUNT * max(1, abs(expected))
    return type(expected) is type(found) and expected == found


def _place(figure: Figure) -> str:
    return f"{figure.tab}, {_row_in_words(figure.row)}, {figure.head}"


def _row_in_words(row: object) -> object:
    if isinstance(row, int):
        return f"row {row}"
    if isinstance(row, tuple):
        *of, thing = row
        return f"{thing} of batch {of[0]}" if len(of) == 1 else f"{thing} of {of[0]}, row {of[1]}"
    return row


def _words(value: object) -> str:
    if isinstance(value, Cents):
        return f"{'-' * (value < 0)}{abs(value) // 100}.{abs(value) % 100:02}"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, (Fraction, float)):
        return f"{float(value):.6f}".rstrip("0").rstrip(".")
    if isinstance(value, tuple):
        return ", ".join(map(str, value)) or "none"
    return "a blank" if value is None else str(value)
