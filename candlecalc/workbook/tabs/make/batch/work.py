"""The foot of the bench card: what to do and how hot, what the batch costs, and cautions."""

from itertools import zip_longest
from typing import NamedTuple

from candlecalc.season.tables.set_up import MATERIALS
from candlecalc.workbook.cells.entries import valid, valid_date
from candlecalc.workbook.cells.references import Expression
from candlecalc.workbook.tabs.make.batch.card import (
    COLUMNS,
    COST_LINES,
    COSTS,
    DO,
    MAKES,
    NOTE_LINES,
    NOTES,
    PACKED,
    STEPS,
    UNPICKED,
    Card,
    asked,
    empty,
    of,
    of_material,
    typed,
    words_unless_set,
)
from candlecalc.workbook.writing.page import made_of


class Step(NamedTuple):
    """Something to do, and at what temperature: one that the wax's data sheet gives, or room to write one.

    A set is packed instead, and takes no heat.
    """

    words: str
    packing: str = ""
    key: str = ""  # on Materials, of the wax
    degrees: bool = True


LABELLING = Step("Trim wicks, wipe, label with the batch no.", degrees=False)
TO_DO = (
    Step("Vessels clean, dry and at room warmth; wicks fixed", "Take cured candles; put aside any with a flaw", degrees=False),
    Step("Melt the wax: its range is up to", "Check labels, cautions, batch nos.", "melt_high"),
    Step("Heat it to", "Write batch nos. in their boxes", "heat_to"),
    Step("Never hotter than", "Wrap so that none can knock", "ceiling"),
    Step("Stir dye in, then oil, slowly, at", "Close; label with its batch no.", "add_at"),
    Step("Pour at", "Count boxes, and what is left over", "pour_at"),
    Step("Leave to set level, out of draughts; room is at"),
    LABELLING,
    Step("Cure until", key="cure_days", degrees=False),
)  # fmt: skip


class Cost(NamedTuple):
    """A line of the costs: a part of the cost, or the sum that a function makes of lines above it."""

    words: str
    part: str = ""
    function: str = ""
    lines: tuple[tuple[str, int], ...] = ()  # argument, line


MAKING = Cost("Making cost", function="making_cost", lines=(("materials", 1), ("labour", 2), ("overhead", 3)))
FULL = Cost("Full cost", function="full_cost", lines=(("making", 4), ("own_time", 5), ("running", 6)))
COST = (
    Cost("Materials", "materials"),
    Cost("Paid work, with set-up", "paid"),
    Cost("Production overhead", "overhead"),
    MAKING,
    Cost("Own time, with set-up", "own"),
    Cost("Running costs", "running"),
    FULL,
)

CAUTIONS = (
    "Never leave melting wax. No water on burning wax:",
    "keep a lid and a fire blanket within reach.",
    "Hot wax burns skin: gloves, closed shoes, eyes covered.",
    "Keep neat oil off skin, and away from flames and children.",
    "Air the room. Follow each data sheet; where it and this",
    "card differ, the data sheet and local rules decide.",
)
PACKING_CAUTIONS = (
    "Pack candles that are set, cured and cool. Keep boxes out of",
    "sun and heat. Each candle keeps its own label and cautions.",
    "What must stand on the outside is for local rules to say.",
)


def write(card: Card) -> None:
    read, time = words_unless_set("read"), words_unless_set("time")
    card.section(DO, ["Do", words_unless_set("at"), "", "", "", "", "", "done", read, time], words="AHIJ")
    for row, step in zip(range(DO + 1, DO + 1 + STEPS), TO_DO, strict=True):
        _step(card, row, step)
    _panel(card, DO + 1 + TO_DO.index(LABELLING))
    card.section(COSTS, ["Cost at this number, {money}", "a piece", "the batch", "", "Cautions"], words="AEIJ")
    for row, cost in zip(range(COSTS + 1, COSTS + 1 + COST_LINES), COST, strict=True):
        _cost(card, row, cost)
    for row, (poured, packed) in enumerate(zip_longest(CAUTIONS, PACKING_CAUTIONS, fillvalue=""), start=COSTS + 1):
        card.shows(f"E{row}", words_unless_set(poured, packed), "label")
    _flash(card, COSTS + len(CAUTIONS) + 1)
    _notes(card)


def _panel(card: Card, row: int) -> None:
    """How large a label the vessel has room for, where that is known."""
    wide, high = (of("vessels", f"panel_{side}", of("workings", "vessel_row")) for side in ("width", "height"))
    unknown = [UNPICKED, empty(of("workings", "vessel_row")), made_of("COUNT({wide},{high})<2", wide=wide, high=high)]
    unit = card.draft.plan.measures.length_unit
    for letter, shown, number in (
        ("D", f'"label panel, {unit}"', "before"), ("E", wide, "length"), ("F", '"by"', "before"), ("G", high, "length"),
    ):  # fmt: skip
        card.shows(f"{letter}{row}", shown, "label", number, blank_if=unknown)


def _step(card: Card, row: int, step: Step) -> None:
    card.shows(f"A{row}", words_unless_set(step.words, step.packing), "label")
    if step.key:
        _from_the_wax(card, row, step.key)
    if step.degrees:
        card.shows(f"C{row}", words_unless_set(_degree(card)), "label")
    card.boxes(row, "H", where=f'$A{row}<>""')
    card.boxes(row, "IJ", where=f"{PACKED}<>1")
    card.height(row, 21)


def _from_the_wax(card: Card, row: int, key: str) -> None:
    # Of two waxes the longer cure counts; for all else the first goes.
    value = of("workings", "cure") if key == "cure_days" else of_material(key, "wax_first")
    no_wax, plan, day = empty(of("workings", "wax_row")), card.draft.plan, typed("I")
    known = valid(MATERIALS[key], value.spell(plan, card.place), plan)
    if key == "cure_days":
        unknown = made_of("OR({known}=0,{days}=0,{day}=0)", known=known, days=value, day=valid_date(day))
        shown, number = made_of("{day}+{days}", day=day, days=value), "date"
    else:
        unknown = made_of("{known}=0", known=known)
        shown, number = value, "temperature"
    card.shows(f"B{row}", shown, "strong", number, blank_if=[UNPICKED, no_wax, unknown])


def _notes(card: Card) -> None:
    """Lines to write on, across the page."""
    card.height(NOTES - 1, 8)
    card.section(NOTES, ["Notes"])
    for row in range(NOTES + 1, NOTES + 1 + NOTE_LINES):
        for letter in COLUMNS:
            card.put(f"{letter}{row}", None, "write_line")
        card.height(row, 24)


def _degree(card: Card) -> str:
    return f"\u00b0{card.draft.plan.measures.temperature_unit}"


def _cost(card: Card, row: int, cost: Cost) -> None:
    look = "strong_result" if cost.function else "result"
    card.put(f"A{row}", cost.words, "strong" if cost.function else "label")
    for letter in "BC":
        card.shows(f"{letter}{row}", _money(card, letter, row, cost), look, "money", blank_if=[UNPICKED])


def _money(card: Card, letter: str, row: int, cost: Cost) -> Expression:
    if cost.function:
        return asked(cost.function, **{argument: f"{letter}{COSTS + line}" for argument, line in cost.lines})
    if letter == "B":
        return _a_piece(cost.part)
    # The batch is what the books take: its lines are in whole coins, and its sums are sums of the lines.
    of_all = asked("cost_of_all", cost=f"B{row}", count=MAKES)
    return asked("round_money", amount=of_all, digits=str(card.draft.plan.coin_digits))


def _a_piece(part: str) -> Expression:
    each = of("costing", part)
    if part == "materials":
        return each
    setup, usual = of("parts", f"setup_{part}"), of("recipes", "usual_batch")
    return asked("cost_at_batch", cost=each, setup=setup, usual=usual, batch=MAKES)


def _flash(card: Card, row: int) -> None:
    lowest = of("workings", "flash")
    words = made_of(
        f'"Lowest flash point of its neat oils: "&TEXT({{lowest}},"0")&" {_degree(card)}, for storing and shipping"',
        lowest=lowest,
    )
    card.shows(f"E{row}", words, "label", blank_if=[UNPICKED, made_of("ISNUMBER({lowest})*1=0", lowest=lowest)])
