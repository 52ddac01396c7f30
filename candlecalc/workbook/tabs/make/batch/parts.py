"""What goes into a batch, on the bench card: weights with what the jug reads, pieces, and the candles of a set."""

from candlecalc.workbook.cells.references import Expression, Named, Whole
from candlecalc.workbook.tabs.make.batch.card import (
    COUNTING,
    MAKES,
    SET_LINES,
    STEP,
    UNPICKED,
    WEIGH,
    Card,
    asked,
    empty,
    made_of,
    of,
    of_material,
)
from candlecalc.workbook.tabs.working.amounts import COUNTED, WEIGHED

WEIGH_HEADS = ("Weigh", "for all, {weight}", "also, {also}", "each pot, {weight}", "jug reads", "pot 1", "other pots", "short by", "lot", "weighed")  # fmt: skip
COUNT_HEADS = ("Count", "pieces", "on hand", "short by", "instead", "", "", "", "lot", "counted")


def write(card: Card) -> None:
    card.section(WEIGH, WEIGH_HEADS, tall=True)
    for row, part in enumerate(WEIGHED, start=WEIGH + 1):
        _weigh(card, row, part)
    card.section(COUNTING, COUNT_HEADS, words="AEIJ")
    for row, part in enumerate(COUNTED, start=COUNTING + 1):
        _count(card, row, part)
    for line in range(1, SET_LINES + 1):
        _candle(card, COUNTING + len(COUNTED) + line, line)
    for row in range(COUNTING + 1, COUNTING + len(COUNTED) + SET_LINES + 1):
        card.height(row, 24)
        card.boxes(row)


def _weigh(card: Card, row: int, part: str) -> None:
    each, blank_if = of("amounts", part), [empty(f"$A{row}")]
    # Weighed a pot at a time, so the whole is what the pots hold: rounding is in it already.
    everything = asked("weight_in_pots", weight=f"D{row}", pots=Named("batch_pots"))
    also = asked("in_unit", size=f"B{row}", factor=Named("also_factor"))
    short = asked("short_by", needed=f"B{row}", on_hand=of_material("stock", part))
    _part(card, row, part)
    card.shows(f"B{row}", everything, "weigh_small", "weight", blank_if=blank_if)
    card.shows(f"C{row}", also, "weigh_small", "quantity", blank_if=blank_if)
    _in_pot(card, row, each)
    card.shows(f"H{row}", short, "weigh_small", "weight", blank_if=blank_if)
    card.boxes(row, "FGIJ")
    card.height(row, 28)


def _part(card: Card, row: int, part: str) -> None:
    """The name of what a part is made of, where the recipe has the part."""
    each = of("amounts", part)
    # A vessel is bought under the name that Vessels gives.
    name = of("workings", "bought") if part == "vessel" else of("recipes", NAMED.get(part, part))
    card.shows(f"A{row}", name, "weigh_small", blank_if=[UNPICKED, empty(each)])


NAMED = {"wax_first": "wax"}  # the other parts have one key on Recipes and on Amounts


def _in_pot(card: Card, row: int, each: Expression) -> None:
    """What of a part goes into each pot, and what its jug reads then: all that is in it so far."""
    blank_if = [empty(f"$A{row}")]
    here = asked("weigh_for_pot", each=each, pot=Named("batch_pot"), melt=of("amounts", "melt"), step=STEP)
    card.shows(f"D{row}", here, "weigh", "weight", blank_if=blank_if)
    card.shows(f"E{row}", f"SUM(D${WEIGH + 1}:D{row})", "weigh_small", "weight", blank_if=blank_if)


def _count(card: Card, row: int, part: str) -> None:
    blank_if = [empty(f"$A{row}")]
    pieces = asked("pieces_for", each=of("amounts", part), count=MAKES)
    short = asked("short_by", needed=f"B{row}", on_hand=f"C{row}")
    there = made_of("MATCH({name},{names},0)", name=f"A{row}", names=Whole("materials", "stands_in_for"))
    stand_in = made_of('IFERROR({name},"")', name=of("materials", "material", there))
    _part(card, row, part)
    card.shows(f"B{row}", pieces, "weigh", "count", blank_if=blank_if)
    card.shows(f"C{row}", of_material("stock", part), "weigh_small", "pieces", blank_if=blank_if)
    card.shows(f"D{row}", short, "weigh_small", "count", blank_if=blank_if)
    card.shows(f"E{row}", stand_in, "note", blank_if=[*blank_if, f"D{row}=0"])


def _candle(card: Card, row: int, line: int) -> None:
    """A candle of a set, by its line on Sets."""
    found = made_of(f'MATCH(batch_row&" {line}",{{keys}},0)', keys=Whole("sets", "key"))
    named = made_of('IFERROR({name},"")', name=of("sets", "product", found))
    pieces = asked("pieces_for", each=of("sets", "count", found), count=MAKES)
    card.shows(f"A{row}", named, "weigh_small", blank_if=[UNPICKED])
    card.shows(f"B{row}", pieces, "weigh", "pieces", blank_if=[empty(f"$A{row}")])
