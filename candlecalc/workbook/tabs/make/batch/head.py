"""The head of the bench card: what is made and how many, the pots it takes, and what there is wax for."""

from candlecalc.declaration.declared import Term
from candlecalc.season.fields import Field
from candlecalc.season.season import Row, Season
from candlecalc.workbook.cells.entries import valid_number
from candlecalc.workbook.cells.references import Expression, Named, row_in
from candlecalc.workbook.tabs.make.batch.card import (
    COLUMNS,
    ENOUGH,
    IS_SET,
    LARGEST,
    MAKES,
    MELT,
    PICK,
    POTS,
    SAID,
    UNPICKED,
    WEIGH,
    Card,
    Part,
    asked,
    empty,
    made_of,
    of,
    of_material,
    part,
    typed,
    words_unless_set,
)
from candlecalc.workbook.writing.draft import turns_red
from candlecalc.workbook.writing.validation import add_validation

IN_ALL = POTS + 2  # the row of the melt in all
MANY = Term("", "how many", low=1.0, high=100000.0, whole=True)
PRODUCT = Field("product", "Product", "what to make: a name from Recipes", names_from="recipes", required=True)
COUNT = Field("count", "Make", "how many pieces to make", MANY, required=True)
DATE = Field("date", "Pour on", "the day you pour", date=True)
ENTRIES = {"A": PRODUCT, "C": COUNT, "I": DATE}
NOTHING_PICKED: Row = dict.fromkeys(field.key for field in ENTRIES.values())
# As formulas reach them.
PICKED, COUNTED, POURED_ON = (typed(letter) for letter in ENTRIES)

BEGUN = made_of("OR(ISBLANK({product}),ISBLANK({count}))", product=PICKED, count=COUNTED)
TO_PICK, TO_COUNT, TO_FIND = (
    "Pick a product and type how many",
    "How many takes a whole number from 1",
    "This product is not on Recipes",
)


def write(card: Card) -> None:
    _pick(card)
    _checked(card)
    _said(card)
    _pots(card)
    _enough(card)


def _pick(card: Card) -> None:
    picked = card.draft.picked or _first(card.draft.season)
    card.put(f"A{PICK}", picked["product"], "big_entry")
    card.put(f"B{PICK}", "make", "label", "row")
    card.put(f"C{PICK}", picked["count"], "big_entry", "count")
    card.put(f"D{PICK}", "pieces", "label")
    card.put(f"H{PICK}", "pour on", "label", "row")
    card.put(f"I{PICK}", picked["date"], "entry", "date")
    card.put(f"H{ENOUGH}", "batch no.", "label", "row")
    card.boxes(ENOUGH)
    card.height(PICK, 28)
    card.height(ENOUGH, 24)
    for letter, field in ENTRIES.items():
        add_validation(card.draft, card.sheet, field, f"{letter}{PICK}")
        card.name(f"batch_{field.key}", f"{letter}{PICK}")


def _first(season: Season) -> Row:
    """A dozen of the first product, on the season's first day; nothing where there is no product."""
    made = season.names("recipes")
    return {"product": made[0], "count": 12.0, "date": season.settings["first_day"]} if made else NOTHING_PICKED


def _checked(card: Card) -> None:
    """The entries as they are used, beside the card: blank while nothing is picked, an error where one cannot be."""
    counts = valid_number(MANY, COUNTED, card.draft.plan)
    row = row_in("recipes", part(PICKED))
    wrong = made_of(f'IF({{counts}}=0,"{TO_COUNT}",IFERROR(IF({{row}}>0,""),"{TO_FIND}"))', counts=counts, row=row)
    makes = made_of(
        "CHOOSE(1+{counts}*COUNT({ready}),NA(),{count})",
        counts=counts,
        ready=of("costing", "ready"),
        count=COUNTED,
    )
    card.shows(f"B{ENOUGH}", made_of(f'IF({{begun}},"{TO_PICK}",{{wrong}})', begun=BEGUN, wrong=wrong), "note")
    turns_red(card.sheet, f"B{ENOUGH}", f'$B${ENOUGH}<>""')
    card.put(f"L{PICK}", "Row of the recipe", "note")
    card.shows(f"M{PICK}", row, "note", "row", blank_if=[BEGUN])
    card.put(f"L{ENOUGH}", "Pieces, once they count", "note")
    card.shows(f"M{ENOUGH}", makes, "note", "count", blank_if=[empty(Named("batch_row"))])
    card.name("batch_row", f"M{PICK}")
    card.name("batch_makes", f"M{ENOUGH}")


def _said(card: Card) -> None:
    """What other tabs say of the product: the bench is the last place to hear of a load above its limit."""
    said = made_of(
        "{mend}&{waits}&{warnings}",
        mend=of("recipes", "mend"),
        waits=of("recipes", "waits"),
        warnings=of("workings", "warnings"),
    )
    told = made_of('IFERROR(IF(batch_row="","",IF({said}="","","Look at: "&{said})),"")', said=said)
    card.shows(f"B{SAID}", told, "note")
    turns_red(card.sheet, f"B{SAID}:{COLUMNS[-1]}{SAID}", f'$B${SAID}<>""')


def _pots(card: Card) -> None:
    melt = asked("cost_of_all", cost=of("amounts", "melt"), count=MAKES)
    pots = asked("pots_needed", melt=MELT, pot=LARGEST)
    pot = asked("equal_pot", melt=MELT, pots=Named("batch_pots"))
    _pair(card, "A", "B", POTS, "Fill each, {weight}", of("workings", "fill"), "weight", IS_SET, look="fill")
    _pair(card, "D", "E", POTS, "Pots", pots, "count", IS_SET)
    _pair(card, "G", "H", POTS, "holding, {weight}", pot, "weight", IS_SET)
    _pair(card, "A", "B", IN_ALL, "Wax and oil in all, {weight}", melt, "weight", IS_SET)
    for name, cell in (("batch_melt", f"B{IN_ALL}"), ("batch_pots", f"E{POTS}"), ("batch_pot", f"H{POTS}")):
        card.name(name, cell)
    card.put(f"H{IN_ALL}", "started at", "label", "row")
    card.boxes(IN_ALL)
    card.height(POTS, 30)
    card.height(IN_ALL, 24)
    card.height(IN_ALL + 1, 8)


def _enough(card: Card) -> None:
    row, first = POTS + 1, WEIGH + 1
    wax, oils = f"SUM(D{first}:D{first + 1})", f"SUM(D{first + 2}:D{first + 4})"
    one, other = (
        asked("enough_for", available=of_material("stock", name), each=of("amounts", name))
        for name in ("wax_first", "wax_second")
    )
    enough = made_of('IFERROR(MIN({one},IFERROR({other},{one})),"")', one=one, other=other)
    load = asked("load_measured", wax=wax, oil=oils)
    _pair(card, "A", "B", row, "Wax on hand is enough for, pieces", enough, "count", IS_SET)
    _pair(card, "D", "E", row, "load in a pot", load, "fine_percent", IS_SET, f"{wax}=0")
    _pair(card, "G", "H", row, "recipe", of("workings", "load"), "fine_percent", IS_SET)


def _pair(
    card: Card,
    label: str,
    result: str,
    row: int,
    words: str,
    value: Expression,
    number: str,
    *blank_if: Part,
    look: str = "strong_result",
) -> None:
    """Words with their result beside them."""
    said = words_unless_set(card.draft.plan.head(words))
    card.shows(f"{label}{row}", said, "label", "text" if label == "A" else "row")
    card.shows(f"{result}{row}", value, look, number, blank_if=[UNPICKED, *blank_if])
