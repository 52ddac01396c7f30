"""What goes into a batch, on the bench card: weights with what the jug reads, pieces, and the candles of a set."""

from candlecalc.workbook.cells.columns import asked
from candlecalc.workbook.tabs.amounts import COUNTED, WEIGHED
from candlecalc.workbook.tabs.batch.card import COUNTING, SET_LINES, UNPICKED, WEIGH, Card, empty

WEIGH_HEADS = ("Weigh", "for all, {weight}", "also, {also}", "full pot, {weight}", "jug reads", "last pot, {weight}",
               "jug reads", "short by", "lot", "weighed")  # fmt: skip
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
    each, unless = card.of("amounts", part), [empty(f"$A{row}")]
    everything = asked("weigh_out", each=each, count="batch_makes", step="scale_step")
    also = asked("in_unit", size=f"B{row}", factor="also_factor")
    short = asked("short_by", needed=f"B{row}", on_hand=card.of_material("stock", part))
    _part(card, row, part)
    card.shows(f"B{row}", everything, "weigh", "weight", unless=unless)
    card.shows(f"C{row}", also, "weigh_small", "quantity", unless=unless)
    _in_pot(card, row, each, ("D", "E"), pot="largest_pot", unless="batch_pots=0")
    _in_pot(card, row, each, ("F", "G"), pot="batch_last", unless="batch_last=0")
    card.shows(f"H{row}", short, "weigh_small", "weight", unless=unless)
    card.boxes(row)
    card.height(row, 28)


def _part(card: Card, row: int, part: str) -> None:
    """The name of what a part is made of, where the recipe has the part."""
    each = card.of("amounts", part)
    # A vessel is bought under the name that Vessels gives.
    name = card.of("workings", "bought") if part == "vessel" else card.of("recipes", NAMED.get(part, part))
    card.shows(f"A{row}", name, "weigh_small", unless=[UNPICKED, empty(each)])


NAMED = {"wax_first": "wax"}  # the other parts have one key on Recipes and on Amounts


def _in_pot(card: Card, row: int, each: str, letters: tuple[str, str], *, pot: str, unless: str) -> None:
    """What of a part goes into one pot, and what its jug reads then: all that is in it so far."""
    weight, jug = letters
    here = asked("weigh_for_pot", each=each, pot=pot, melt=card.of("amounts", "melt"), step="scale_step")
    so_far = f"SUM({weight}${WEIGH + 1}:{weight}{row})"
    card.shows(f"{weight}{row}", here, "weigh_small", "weight", unless=[empty(f"$A{row}"), unless])
    card.shows(f"{jug}{row}", so_far, "weigh_small", "weight", unless=[empty(f"{weight}{row}")])


def _count(card: Card, row: int, part: str) -> None:
    unless, materials = [empty(f"$A{row}")], card.draft.plan.places["materials"]
    pieces = asked("pieces_for", each=card.of("amounts", part), count="batch_makes")
    short = asked("short_by", needed=f"B{row}", on_hand=f"C{row}")
    stand_in = card.of("materials", "material", f"MATCH(A{row},{materials.range('stands_in_for')},0)")
    _part(card, row, part)
    card.shows(f"B{row}", pieces, "weigh", "count", unless=unless)
    card.shows(f"C{row}", card.of_material("stock", part), "weigh_small", "pieces", unless=unless)
    card.shows(f"D{row}", short, "weigh_small", "count", unless=unless)
    card.shows(f"E{row}", f'IFERROR({stand_in},"")', "note", unless=[*unless, f"D{row}=0"])


def _candle(card: Card, row: int, line: int) -> None:
    """A candle of a set, by its line on Sets."""
    found = f'MATCH(batch_row&" {line}",{card.draft.plan.places["sets"].range("key")},0)'
    pieces = asked("pieces_for", each=card.of("sets", "count", found), count="batch_makes")
    card.shows(f"A{row}", f'IFERROR({card.of("sets", "product", found)},"")', "weigh_small", unless=[UNPICKED])
    card.shows(f"B{row}", pieces, "weigh", "pieces", unless=[empty(f"$A{row}")])
