"""The head of the bench card: what is made and how many, the pots it takes, and what there is wax for."""

from candlecalc.declaration.declared import Term
from candlecalc.season.fields import Field
from candlecalc.season.season import Row, Season
from candlecalc.workbook.cells.entries import valid_number
from candlecalc.workbook.cells.references import Expression, Named, Whole, as_text
from candlecalc.workbook.tabs.make.batch.card import (
    BOXES,
    COLUMNS,
    ENOUGH,
    FEWER,
    IN_A_POT,
    IS_SET,
    LARGEST,
    MAKES,
    NOT_POURED,
    PACKED,
    PICK,
    POTS,
    POTS_IN_ALL,
    ROW,
    SAID,
    WEIGH,
    Card,
    asked,
    empty,
    of,
    of_material,
    typed,
    words_unless_set,
)
from candlecalc.workbook.writing.draft import turns_red
from candlecalc.workbook.writing.page import Part, made_of
from candlecalc.workbook.writing.validation import add_validation

MANY = Term("", "how many", low=1.0, high=100000.0, whole=True)
PRODUCT = Field("product", "Product", "what to make: a name from Recipes", names_from="recipes", required=True)
COUNT = Field("count", "Make", "how many pieces to make", MANY, required=True)
DATE = Field("date", "Made on", "the day you pour, or pack a set", date=True)
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
TOO_LARGE = "One of these takes more than the largest pot on Settings holds"


# How the fill is known. 1: by water, 2: by size, 3: weighed in this wax, 4: scaled to it, 5: taken as weighed.
FILL_SAYS = made_of(
    'CHOOSE(1+({way}<>"water")+({way}="fill")*(1+IFERROR(N({other}),0)*(2-IFERROR((N({scaled})>0)*1,0))),'
    '"Fill: by the water it holds, less the headspace","Fill: by its size, less the headspace","Fill: weighed with "&{wax},'
    '"Fill: weighed with "&{wax}&", scaled to this wax by the densities",'
    '"Fill: weighed with "&{wax}&", and taken so: a density is missing on Materials")',
    way=of("workings", "measured"),
    other=of("workings", "other_wax"),
    scaled=of("workings", "scaled"),
    wax=of("workings", "fill_wax"),
)


def write(card: Card) -> None:
    _pick(card)
    _checked(card)
    _said(card)
    _pots(card)
    _enough(card)


def _pick(card: Card) -> None:
    picked = card.draft.picked or _first(card.draft.season)
    card.draft.put(card.sheet[f"A{PICK}"], picked["product"], "big_entry")  # as it was typed
    card.put(f"B{PICK}", "make", "label", "before")  # formulas reach the entries by it
    card.put(f"C{PICK}", picked["count"], "big_entry", "count")
    card.put(f"D{PICK}", "pieces", "label")
    card.put(f"H{PICK}", "made on", "label", "before")
    card.put(f"I{PICK}", picked["date"], "entry", "date")
    card.shows(f"E{PICK}", as_text(of("recipes", "tag")), "note", blank_if=[empty(ROW)])
    card.put(f"H{ENOUGH}", "batch no.", "label", "before")
    card.boxes(ENOUGH, BOXES)
    if card.draft.plan.records:  # the number that the batch will have on the log
        following = made_of("MAX({numbers})+1", numbers=Whole("pours", "batch"))
        card.shows(f"I{ENOUGH}", following, "write", "row", blank_if=[empty(Named("batch_makes"))])
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
    row = made_of("MATCH({name},{names},0)", name=PICKED, names=Whole("recipes", "now"))
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
    too_large = made_of(
        f'IFERROR(REPT("{TOO_LARGE}",ROUND({{largest}}-{{each}},6)<0),"")', largest=LARGEST, each=of("amounts", "melt")
    )
    said = made_of(
        "{mend}&{waits}&{extras}&{warnings}&{too_large}",
        **{key: of("recipes", key) for key in ("mend", "waits", "extras")},
        warnings=of("workings", "warnings"),
        too_large=too_large,
    )
    told = made_of('IFERROR(IF(batch_row="","",IF({said}="","","Look at: "&{said})),"")', said=said)
    card.shows(f"B{SAID}", told, "note")
    turns_red(card.sheet, f"B{SAID}:{COLUMNS[-1]}{SAID}", f'$B${SAID}<>""')


def _pots(card: Card) -> None:
    """The pots of a batch, each for whole candles: the fuller ones, and those for one candle fewer, if any."""
    is_set = made_of('IFERROR(IF({makes}="","",({kind})*1),"")', makes=MAKES, kind=IS_SET)
    each = of("amounts", "melt")
    pots = asked("pots_for_candles", count=MAKES, each=each, pot=LARGEST)
    in_a_pot = asked("candles_a_pot", count=MAKES, pots=POTS_IN_ALL)
    fewer = asked("pots_with_one_fewer", count=MAKES, pots=POTS_IN_ALL)
    _aside(card, POTS, "1 for a set, which is packed", "batch_packed", is_set)
    _aside(card, POTS + 1, "Pots in all", "batch_pots", pots, *NOT_POURED)
    _aside(card, POTS + 2, "Candles in the fuller pots", "batch_in_pot", in_a_pot, *NOT_POURED)
    _aside(card, POTS + 3, "Pots for one candle fewer", "batch_fewer_pots", fewer, *NOT_POURED)
    no_fewer = made_of("N({fewer})=0", fewer=FEWER)
    fuller = made_of("({pots}-{fewer})", pots=POTS_IN_ALL, fewer=FEWER)
    one_fewer = made_of("({fuller}-1)", fuller=IN_A_POT)
    _pair(card, "A", POTS, "Fill each, {weight}", of("workings", "fill"), "weight", look="fill")
    _pair(card, "D", POTS, "pots", fuller, "count")
    _pair(card, "G", POTS, "of candles", IN_A_POT, "count")
    _pair(card, "I", POTS, "load in each", _load("D"), "fine_percent", f"{_wax('D')}=0")
    _pair(card, "D", POTS + 1, "and pots", FEWER, "count", no_fewer, words_if_blank=no_fewer)
    _pair(card, "G", POTS + 1, "of candles", one_fewer, "count", no_fewer, words_if_blank=no_fewer)
    _pair(card, "I", POTS + 1, "load in each", _load("F"), "fine_percent", no_fewer, f"{_wax('F')}=0", words_if_blank=no_fewer)  # fmt: skip
    card.name("batch_fuller_pots", f"E{POTS}")
    card.height(POTS, 30)


def _aside(card: Card, row: int, words: str, name: str, value: Expression, *blank_if: Part) -> None:
    """A number that the card rests on, beside the page."""
    card.put(f"L{row}", words, "note")
    card.shows(f"M{row}", value, "note", "count", blank_if=blank_if)
    card.name(name, f"M{row}")


def _wax(letter: str) -> str:
    return f"SUM({letter}{WEIGH + 1}:{letter}{WEIGH + 2})"


def _load(letter: str) -> Expression:
    """The load of a pot as it is weighed, to the step of the scale."""
    oils = f"SUM({letter}{WEIGH + 3}:{letter}{WEIGH + 5})"
    return asked("load_measured", wax=_wax(letter), oil=oils)


def _enough(card: Card) -> None:
    one, other = (
        asked("enough_for", available=of_material("stock", name), each=of("amounts", name))
        for name in ("wax_first", "wax_second")
    )
    enough = made_of('IFERROR(MIN({one},IFERROR({other},{one})),"")', one=one, other=other)
    melt = asked("cost_of_all", cost=of("amounts", "melt"), count=MAKES)
    _pair(card, "A", POTS + 1, "Wax on hand is enough for, pieces", enough, "count")
    _pair(card, "A", POTS + 2, "Wax and oil in all, {weight}", melt, "weight")
    _pair(card, "D", POTS + 2, "recipe's load", of("workings", "load"), "fine_percent")
    card.name("batch_melt", f"B{POTS + 2}")
    card.shows(f"H{POTS + 2}", words_unless_set("started at"), "label", "before")
    card.boxes(POTS + 2, BOXES, where=f"{PACKED}<>1")
    for row in (POTS + 1, POTS + 2):
        card.height(row, 24)
    card.shows(f"A{POTS + 3}", FILL_SAYS, "note", blank_if=NOT_POURED)
    card.height(POTS + 3, 20)


def _pair(
    card: Card,
    label: str,
    row: int,
    words: str,
    value: Expression,
    number: str,
    *blank_if: Part,
    look: str = "strong",
    words_if_blank: Part | None = None,
) -> None:
    """Words with their result beside them, on the card of what is poured."""
    result = COLUMNS[COLUMNS.index(label) + 1]
    said = words_unless_set(card.draft.plan.head(words))
    card.shows(f"{label}{row}", said, "label", "text" if label == "A" else "before", blank_if=[words_if_blank] if words_if_blank else ())  # fmt: skip
    card.shows(f"{result}{row}", value, look, number, blank_if=[*NOT_POURED, *blank_if])
