"""What goes into a batch, on the bench card: weights with what the jug reads, pieces, and the candles of a set.

Beside the page each line has the row of what it is of, and how much of that a piece takes; the line rests on both.
"""

from itertools import zip_longest
from typing import NamedTuple

from candlecalc.workbook.cells.references import Expression, Named, Whole
from candlecalc.workbook.tabs.make.batch.card import (
    BOXES,
    CANDLE_LINES,
    COUNTING,
    EXTRA_LINES,
    FEWER,
    FULLER,
    IN_A_POT,
    MAKES,
    PACKED,
    POTS_IN_ALL,
    STEP,
    UNPICKED,
    WEIGH,
    Card,
    asked,
    empty,
    line_of_product,
    lines_beyond,
    of,
    unless_set,
    words_unless_set,
)
from candlecalc.workbook.tabs.working.made_of import COUNTED, PARTS, WEIGHED
from candlecalc.workbook.writing.draft import whole_where
from candlecalc.workbook.writing.page import Part, made_of

COUNT_HEADS = ("Count", "pieces", "on hand", "short by", "instead", "", "", "", "lot", "counted")


class Line(NamedTuple):
    """What a line of the card is of: its row, on Materials or on Recipes, and how much of it a piece takes."""

    row: Expression
    each: Expression


def write(card: Card) -> None:
    last = WEIGH + len(WEIGHED)
    card.section(WEIGH, _weigh_heads(card), tall=True)
    # Before the lines: of two rules LibreOffice takes the first that holds.
    whole_where(card.sheet, f"B{WEIGH + 1}:B{last}", f'({PACKED}=1)*($A{WEIGH + 1}<>"")>0')
    for line, part in enumerate(WEIGHED, start=1):
        _weigh(card, WEIGH + line, _part(part), _candle(line))
    card.shows(f"A{last + 1}", lines_beyond("sets", "set_row", CANDLE_LINES), "note")
    card.section(COUNTING, COUNT_HEADS, words="AEIJ")
    extras = [_extra(line) for line in range(1, EXTRA_LINES + 1)]
    made = [*(_part(part) for part in COUNTED), *extras]
    packed = [*(_part(part) for part in OF_A_SET), *extras]
    for row, (one, other) in enumerate(zip_longest(made, packed, fillvalue=NOTHING), start=COUNTING + 1):
        _count(card, row, one, other)
    card.shows(f"A{COUNTING + len(made) + 1}", lines_beyond("extras", "row", EXTRA_LINES), "note")
    for row in (WEIGH, COUNTING):
        card.put(f"L{row}", "Row of it", "note")
        card.put(f"M{row}", "Each takes", "note")


OF_A_SET = ("label", "packing")  # the parts of its own that a set can have
NOTHING = Line(made_of('""'), made_of('""'))


def _part(part: str) -> Line:
    return Line(of("workings", PARTS[part]), of("amounts", part))


def _extra(line: int) -> Line:
    """What goes with the product besides, by its line on Extra parts."""
    found = line_of_product("extras", line)
    return Line(made_of('IFERROR({row},"")', row=of("extras", "material_row", found)), of("extras", "count", found))


def _candle(line: int) -> Line:
    """A candle of a set, by its line on Sets."""
    found = line_of_product("sets", line)
    return Line(made_of('IFERROR({row},"")', row=of("sets", "row", found)), of("sets", "count", found))


def _weigh_heads(card: Card) -> list[Part]:
    """Over what is weighed, with how many candles a pot is for; over the candles of a set."""
    plan = card.draft.plan
    whole = made_of('IF(N({pots})>1,"pot of "&{candles},"the pot")', pots=POTS_IN_ALL, candles=IN_A_POT)
    rest = made_of('IF(N({fewer})>0,"pot of "&({candles}-1),"")', fewer=FEWER, candles=IN_A_POT)
    reads = made_of('IF(N({fewer})>0,"jug reads","")', fewer=FEWER)
    words = (("Weigh", "Candles in it"), (plan.head("for all, {weight}"), "pieces"), (plan.head("also, {also}"), ""))
    last = (("short by", ""), ("lot", "batch no."), ("weighed", "counted"))
    in_pots = [unless_set(head, '""') for head in (whole, '"jug reads"', rest, reads)]
    return [*(words_unless_set(*each) for each in words), *in_pots, *(words_unless_set(*each) for each in last)]


def _weigh(card: Card, row: int, made: Line, packed: Line) -> None:
    """A part that is weighed; on the card of a set one of its candles."""
    nothing: list[Part] = [empty(f"$A{row}")]
    poured: list[Part] = [*nothing, f"{PACKED}=1"]
    candle, material = (
        of(table, key, f"$L{row}") for table, key in (("recipes", "product"), ("materials", "material"))
    )
    _line(card, row, made, packed)
    card.shows(f"A{row}", unless_set(material, candle), "weigh_small", blank_if=[f'$L{row}=""'])
    card.shows(f"B{row}", unless_set(_in_all(row), _pieces(row)), "weigh_small", "weight", blank_if=nothing)
    also = asked("in_unit", size=f"B{row}", factor=Named("also_factor"))
    card.shows(f"C{row}", also, "weigh_small", "quantity", blank_if=poured)
    one_fewer, no_fewer = made_of("({fuller}-1)", fuller=IN_A_POT), made_of("{fewer}=0", fewer=FEWER)
    for letter, jug, candles, tests in (
        ("D", "E", IN_A_POT, poured),
        ("F", "G", one_fewer, [*poured, no_fewer]),
    ):
        in_pot = asked("weigh_out", each=f"$M{row}", count=candles, step=STEP)
        card.shows(f"{letter}{row}", in_pot, "weigh", "weight", blank_if=tests)
        # All that is in the pot so far.
        card.shows(f"{jug}{row}", f"SUM({letter}${WEIGH + 1}:{letter}{row})", "weigh_small", "weight", blank_if=tests)
    short = asked("short_by", needed=f"B{row}", on_hand=_stock(row))
    card.shows(f"H{row}", short, "weigh_small", "weight", blank_if=poured)
    _to_fill_in(card, row, 26)


def _line(card: Card, row: int, made: Line, packed: Line) -> None:
    """Beside the page: what the line is of."""
    card.shows(f"L{row}", unless_set(made.row, packed.row), "note", "row", blank_if=[UNPICKED])
    card.shows(f"M{row}", unless_set(made.each, packed.each), "note", "count", blank_if=[f'$L{row}=""'])


def _pieces(row: int) -> Expression:
    return asked("pieces_for", each=f"$M{row}", count=MAKES)


def _stock(row: int) -> Expression:
    return of("materials", "stock", f"$L{row}")


def _in_all(row: int) -> Expression:
    """What the pots hold together: each is weighed by itself, so rounding is in it already."""
    parts = {
        name: asked("weight_in_pots", weight=f"N({letter}{row})", pots=pots)
        for name, letter, pots in (("fuller", "D", FULLER), ("fewer", "F", FEWER))
    }
    return made_of("SUM({fuller},{fewer})", **parts)


def _count(card: Card, row: int, made: Line, packed: Line) -> None:
    """A line of what is counted."""
    nothing: list[Part] = [empty(f"$A{row}")]
    short = asked("short_by", needed=f"B{row}", on_hand=f"C{row}")
    there = made_of("MATCH({name},{names},0)", name=f"A{row}", names=Whole("materials", "stands_in_for"))
    stand_in = made_of('IFERROR({name},"")', name=of("materials", "material", there))
    _line(card, row, made, packed)
    card.shows(f"A{row}", of("materials", "material", f"$L{row}"), "weigh_small", blank_if=[f'$L{row}=""'])
    card.shows(f"B{row}", _pieces(row), "weigh", "count", blank_if=nothing)
    card.shows(f"C{row}", _stock(row), "weigh_small", "pieces", blank_if=nothing)
    card.shows(f"D{row}", short, "weigh_small", "count", blank_if=nothing)
    card.shows(f"E{row}", stand_in, "note", blank_if=[*nothing, f"D{row}=0"])
    _to_fill_in(card, row, 24)


def _to_fill_in(card: Card, row: int, points: float) -> None:
    """Lines and boxes for a row that says something."""
    there = f'$A{row}<>""'
    card.line(row, "AH", there)
    card.boxes(row, BOXES, where=there)
    card.height(row, points)
