"""The Batch tab: the bench card. Pick a product, say how many, and weights, pieces, costs and cautions follow."""

from collections.abc import Sequence

from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.formula import Term, find
from candlecalc.season.fields import Field
from candlecalc.workbook.columns import call
from candlecalc.workbook.printed import paper
from candlecalc.workbook.table_tab import Tab
from candlecalc.workbook.tabs.amounts import COUNTED, WEIGHED
from candlecalc.workbook.writer import Draft, Formula, add_validation, turns_red

TAB = Tab("Batch", "output", "The bench card: pick a product, say how many, weigh and tick.")
COUNT = Field(
    "count", "Make", "how many pieces to make", Term("", "how many", low=1.0, high=100000.0, whole=True), required=True
)
PRODUCT = Field("product", "Product", "what to make: a name from Recipes", of="recipes", required=True)
DATE = Field("date", "Pour on", "the day you pour", date=True)

# In all, what a page shows at 8 points; the blanks to write in are an inch wide on paper.
WIDTHS = {"A": 34, "B": 12, "C": 10.5, **dict.fromkeys("DEFGH", 8.5), "I": 17, "J": 17}
# Rows of the card.
TITLE, PICK, ENOUGH, POTS, WEIGH = 1, 3, 4, 5, 8
COUNTING = WEIGH + len(WEIGHED) + 3
SET_LINES = 4
DO = COUNTING + len(COUNTED) + SET_LINES + 2
STEPS = 8
COSTS = DO + STEPS + 2
LAST = COSTS + 7

RECIPE_COLUMN = {
    "wax_first": "wax", "wax_second": "wax_second", "oil_first": "oil_first", "oil_second": "oil_second",
    "oil_third": "oil_third", "dye": "dye", "lid": "lid", "wick": "wick", "label": "label", "packing": "packing",
}  # fmt: skip
CAUTIONS = (
    "Never leave melting wax. No water on burning wax:",
    "keep a lid and a fire blanket within reach.",
    "Hot wax burns skin: gloves, closed shoes, eyes covered.",
    "Keep neat oil off skin, and away from flames and children.",
    "Air the room. Follow each data sheet; where it and this",
    "card differ, the data sheet and local rules decide.",
)  # fmt: skip


def write(draft: Draft) -> None:
    sheet = draft.tab(TAB, portrait=True)
    for letter, width in WIDTHS.items():
        sheet.column_dimensions[letter].width = width
    _pick(draft, sheet)
    _pots(draft, sheet)
    _weigh(draft, sheet)
    _count(draft, sheet)
    _do(draft, sheet)
    _costs(draft, sheet)
    _cautions(draft, sheet)
    sheet.print_area = f"A1:J{LAST}"
    paper(sheet, str(draft.season.settings["paper"]), portrait=True, tall=1)


def _of(draft: Draft, table: str, key: str) -> str:
    """A value of the chosen product's row."""
    return f"INDEX({draft.plan.places[table].range(key)},batch_row)"


def _section(draft: Draft, sheet: Worksheet, row: int, heads: Sequence[str]) -> None:
    for number, head in enumerate([*heads, *[""] * (10 - len(heads))], start=1):
        side = "text" if number in (1, 9, 10) else "row"
        draft.put(sheet.cell(row, number), draft.plan.head(head) or None, "section", side, wrap=row == WEIGH)
    sheet.row_dimensions[row].height = 34 if row == WEIGH else 20


def _pick(draft: Draft, sheet: Worksheet) -> None:
    made = draft.season.names("recipes")
    product, count = draft.picked or (made[0] if made else None, 12 if made else None)
    draft.put(sheet.cell(PICK, 1), product, "big_entry")
    draft.put(sheet.cell(PICK, 2), "make", "label", "row")
    draft.put(sheet.cell(PICK, 3), count, "big_entry", "count")
    draft.put(sheet.cell(PICK, 4), "pieces", "label")
    draft.put(sheet.cell(PICK, 8), "pour on", "label", "row")
    draft.put(sheet.cell(PICK, 9), draft.season.settings["first_day"] if made else None, "entry", "date")
    draft.put(sheet.cell(ENOUGH, 8), "batch no.", "label", "row")
    for number in (9, 10):
        draft.put(sheet.cell(ENOUGH, number), None, "write")
    sheet.row_dimensions[PICK].height = 28
    sheet.row_dimensions[ENOUGH].height = 24
    for field, cell in ((PRODUCT, "A"), (COUNT, "C"), (DATE, "I")):
        add_validation(draft, sheet, field, f"{cell}{PICK}")
    for name, letter in (("batch_product", "A"), ("batch_count", "C"), ("batch_date", "I")):
        draft.name(name, "Batch", f"{letter}{PICK}")
    count_ok = 'COUNTIFS(batch_count,">=1",batch_count,"<=100000",batch_count,IFERROR(INT(batch_count),-1))'
    # The checked entries: blank while nothing is picked, an error where what is typed cannot be used.
    found = f"MATCH(batch_product,{draft.plan.places['recipes'].range('product')},0)"
    draft.put(
        sheet.cell(ENOUGH, 1),
        Formula(
            f'=IF(OR(ISBLANK(batch_product),ISBLANK(batch_count)),"Pick a product and type how many",IF({count_ok}=0,"How many takes a whole number from 1",IFERROR(IF({found}>0,""),"This product is not on Recipes")))'
        ),
        "note",
    )
    turns_red(sheet, f"A{ENOUGH}", f'$A${ENOUGH}<>""')
    draft.put(sheet.cell(ENOUGH, 4), "recipe line", "note", "row")
    draft.put(
        sheet.cell(ENOUGH, 6),
        Formula(f'=IF(OR(ISBLANK(batch_product),ISBLANK(batch_count)),"",{found})'),
        "note",
        "row",
    )
    draft.put(sheet.cell(ENOUGH, 2), "making", "note", "row")
    draft.put(
        sheet.cell(ENOUGH, 3),
        Formula(
            f'=IF(F{ENOUGH}="","",CHOOSE(1+{count_ok},NA(),batch_count*{_of(draft, "costing", "ready")}))'.replace(
                "batch_row", f"$F${ENOUGH}"
            )
        ),
        "note",
        "count",
    )
    draft.name("batch_row", "Batch", f"F{ENOUGH}")
    draft.name("batch_makes", "Batch", f"C{ENOUGH}")


def _pots(draft: Draft, sheet: Worksheet) -> None:
    unit = draft.plan.measures.weight_unit
    row = POTS
    first = WEIGH + 1
    melt_each = _of(draft, "amounts", "melt")
    lines = [
        (
            f"Wax and oil in all, {unit}",
            call(find("cost_of_all"), {"cost": melt_each, "count": "batch_makes"}),
            "weight",
            "batch_melt",
        ),
        ("Full pots", call(find("full_pots"), {"melt": "batch_melt", "pot": "largest_pot"}), "count", "batch_pots"),
        (
            f"Last pot, {unit}",
            call(find("last_pot"), {"melt": "batch_melt", "pots": "batch_pots", "pot": "largest_pot"}),
            "weight",
            "batch_last",
        ),
    ]
    for step, (head, text, shown, name) in enumerate(lines):
        column = 1 + (0, 3, 6)[step]
        label = sheet.cell(row, column)
        draft.put(label, head, "label", "text" if step == 0 else "row")
        cell = sheet.cell(row, column + 1)
        draft.put(cell, Formula(f'=IF(batch_makes="","",{text})'), "strong_result", shown)
        draft.name(name, "Batch", cell.coordinate)
    draft.put(sheet.cell(row + 1, 1), "Wax on hand is enough for, pieces", "label")
    enough = sheet.cell(row + 1, 2)
    wax = [
        call(find("enough_for"), {"available": _of_material(draft, "stock", part), "each": _of(draft, "amounts", part)})
        for part in ("wax_first", "wax_second")
    ]
    draft.put(
        enough,
        Formula(f'=IF(batch_makes="","",IFERROR(MIN({wax[0]},IFERROR({wax[1]},{wax[0]})),""))'),
        "strong_result",
        "count",
    )
    draft.put(sheet.cell(row + 1, 4), "load weighed", "label", "row")
    oils = f"SUM(B{first + 2}:B{first + 4})"
    draft.put(
        sheet.cell(row + 1, 5),
        Formula(
            f'=IF(batch_makes="","",IF(SUM(B{first}:B{first + 1})=0,"",{call(find("load_measured"), {"wax": f"SUM(B{first}:B{first + 1})", "oil": oils})}))'
        ),
        "strong_result",
        "fine_percent",
    )
    draft.put(sheet.cell(row + 1, 7), "recipe", "label", "row")
    draft.put(
        sheet.cell(row + 1, 8),
        Formula(f'=IF(batch_makes="","",{_of(draft, "workings", "load")})'),
        "strong_result",
        "fine_percent",
    )


def _of_material(draft: Draft, key: str, part: str) -> str:
    row = _of(draft, "workings", {**WEIGHED, **COUNTED}[part])
    return f"INDEX({draft.plan.places['materials'].range(key)},{row})"


def _weigh(draft: Draft, sheet: Worksheet) -> None:
    heads = [
        "Weigh",
        "for all, {weight}",
        "also, {also}",
        "full pot, {weight}",
        "jug reads",
        "last pot, {weight}",
        "jug reads",
        "short by",
        "lot",
        "weighed",
    ]
    _section(draft, sheet, WEIGH, heads)
    for step, part in enumerate(WEIGHED, start=1):
        row = WEIGH + step
        each = _of(draft, "amounts", part)
        name = f"{_of(draft, 'recipes', RECIPE_COLUMN[part])}"
        draft.put(
            sheet.cell(row, 1),
            Formula(f'=IF(batch_makes="","",IF({_of(draft, "amounts", part)}="","",{name}))'),
            "weigh_small",
        )
        _weight(
            draft,
            sheet,
            row,
            2,
            call(find("weigh_out"), {"each": each, "count": "batch_makes", "step": "scale_step"}),
            "weigh",
        )
        _weight(
            draft,
            sheet,
            row,
            3,
            call(find("in_unit"), {"size": f"B{row}", "factor": "also_factor"}),
            "weigh_small",
            "quantity",
        )
        melt = _of(draft, "amounts", "melt")
        for column, pot, some in ((4, "largest_pot", "batch_pots"), (6, "batch_last", "batch_last")):
            text = call(find("weigh_for_pot"), {"each": each, "pot": pot, "melt": melt, "step": "scale_step"})
            cell = f"{'D' if column == 4 else 'F'}{row}"
            draft.put(
                sheet.cell(row, column), Formula(f'=IF($A{row}="","",IF({some}=0,"",{text}))'), "weigh_small", "weight"
            )
            top = f"{cell[0]}${WEIGH + 1}"
            draft.put(
                sheet.cell(row, column + 1), Formula(f'=IF({cell}="","",SUM({top}:{cell}))'), "weigh_small", "weight"
            )
        short = call(find("short_by"), {"needed": f"B{row}", "on_hand": _of_material(draft, "stock", part)})
        _weight(draft, sheet, row, 8, short, "weigh_small")
        for column in (9, 10):
            draft.put(sheet.cell(row, column), None, "write")
        sheet.row_dimensions[row].height = 28


def _weight(draft: Draft, sheet: Worksheet, row: int, column: int, text: str, look: str, shown: str = "weight") -> None:
    draft.put(sheet.cell(row, column), Formula(f'=IF($A{row}="","",{text})'), look, shown)


def _count(draft: Draft, sheet: Worksheet) -> None:
    _section(
        draft, sheet, COUNTING, ["Count", "pieces", "on hand", "short by", "instead", "", "", "", "lot", "counted"]
    )
    for step, part in enumerate(COUNTED, start=1):
        row = COUNTING + step
        named = _of(draft, "workings", "bought") if part == "vessel" else _of(draft, "recipes", RECIPE_COLUMN[part])
        each = _of(draft, "amounts", part)
        draft.put(sheet.cell(row, 1), Formula(f'=IF(batch_makes="","",IF({each}="","",{named}))'), "weigh_small")
        _weight(
            draft, sheet, row, 2, call(find("pieces_for"), {"each": each, "count": "batch_makes"}), "weigh", "count"
        )
        _weight(draft, sheet, row, 3, _of_material(draft, "stock", part), "weigh_small", "pieces")
        _weight(
            draft,
            sheet,
            row,
            4,
            call(find("short_by"), {"needed": f"B{row}", "on_hand": f"C{row}"}),
            "weigh_small",
            "count",
        )
        materials = draft.plan.places["materials"]
        instead = f'IFERROR(INDEX({materials.range("material")},MATCH(A{row},{materials.range("stands_in_for")},0)),"")'
        draft.put(sheet.cell(row, 5), Formula(f'=IF($A{row}="","",IF(D{row}=0,"",{instead}))'), "note")
    sets = draft.plan.places["sets"]
    for line in range(1, SET_LINES + 1):
        row = COUNTING + len(COUNTED) + line
        found = f'MATCH(batch_product&" {line}",{sets.range("key")},0)'
        draft.put(
            sheet.cell(row, 1),
            Formula(f'=IF(batch_makes="","",IFERROR(INDEX({sets.range("product")},{found}),""))'),
            "weigh_small",
        )
        pieces = call(find("pieces_for"), {"each": f"INDEX({sets.range('count')},{found})", "count": "batch_makes"})
        _weight(draft, sheet, row, 2, pieces, "weigh", "pieces")
    for row in range(COUNTING + 1, COUNTING + len(COUNTED) + SET_LINES + 1):
        sheet.row_dimensions[row].height = 24
        for column in (9, 10):
            draft.put(sheet.cell(row, column), None, "write")


def _do(draft: Draft, sheet: Worksheet) -> None:
    unit = f"\u00b0{draft.plan.measures.temperature_unit}"
    _section(draft, sheet, DO, ["Do", "at", "", "", "", "", "", "done", "read", "time"])
    steps = [
        ("Vessels clean, dry and at room warmth; wicks fixed", "", ""),
        ("Melt the wax: its range is up to", "melt_high", unit),
        ("Melt no hotter than", "ceiling", unit),
        ("Dye in, then oil in at; stir slowly", "add_at", unit),
        ("Pour at", "pour_at", unit),
        ("Leave to set level, out of draughts; room is at", "", unit),
        ("Trim wicks, wipe, label with the batch no.", "", ""),
        ("Cure until", "cure_days", ""),
    ]
    for step, (words, key, after) in enumerate(steps, start=1):
        row = DO + step
        draft.put(sheet.cell(row, 1), words, "label")
        if key:
            value = _of_material(draft, key, "wax_first")
            shown = "date" if key == "cure_days" else "temperature"
            until = f"batch_date+{value}" if key == "cure_days" else value
            waits = f'{_of(draft, "workings", "wax_row")}=""'
            unknown = f'OR({value}="",batch_date="")' if key == "cure_days" else f'{value}=""'
            text = f'=IF(batch_makes="","",IF({waits},"",IF({unknown},"",{until})))'
            draft.put(sheet.cell(row, 2), Formula(text), "strong_result", shown)
        draft.put(sheet.cell(row, 3), after or None, "label")
        for column in (8, 9, 10):
            draft.put(sheet.cell(row, column), None, "write")
        sheet.row_dimensions[row].height = 24


def _costs(draft: Draft, sheet: Worksheet) -> None:
    _section(draft, sheet, COSTS, ["Cost, {money}", "a piece", "the batch", "", "Cautions"])
    usual = _of(draft, "recipes", "usual_batch")

    def anew(part: str) -> str:
        given = {
            "cost": _of(draft, "costing", part),
            "setup": _of(draft, "parts", f"setup_{part}"),
            "usual": usual,
            "batch": "batch_makes",
        }
        return call(find("cost_at_batch"), given)

    first = COSTS + 1
    lines = [
        ("Materials", _of(draft, "costing", "materials")),
        ("Paid work, with set-up", anew("paid")),
        ("Production overhead", anew("overhead")),
        ("Making cost", ""),
        ("Own time, with set-up", anew("own")),
        ("Running costs", anew("running")),
        ("Full cost", ""),
    ]
    for row, (head, each) in enumerate(lines, start=first):
        look = "result" if each else "strong_result"
        draft.put(sheet.cell(row, 1), head, "label" if each else "strong")
        # The batch is what the books take: its lines are in whole coins, and its sums are sums of the lines.
        texts = (each, _in_coins(draft, f"B{row}")) if each else (_sum_of_cost(head, first, letter) for letter in "BC")
        for column, text in enumerate(texts, start=2):
            draft.put(sheet.cell(row, column), Formula(f'=IF(batch_makes="","",{text})'), look, "money")


def _in_coins(draft: Draft, each: str) -> str:
    """What all of the batch costs at so much a piece, to the coin."""
    of_all = call(find("cost_of_all"), {"cost": each, "count": "batch_makes"})
    return call(find("round_money"), {"amount": of_all, "digits": str(draft.plan.coin_digits)})


def _sum_of_cost(head: str, first: int, letter: str) -> str:
    """The making cost or the full cost, of the lines above it in its column."""
    if head == "Making cost":
        parts = {"materials": 0, "labour": 1, "overhead": 2}
        return call(find("making_cost"), {part: f"{letter}{first + step}" for part, step in parts.items()})
    parts = {"making": 3, "own_time": 4, "running": 5}
    return call(find("full_cost"), {part: f"{letter}{first + step}" for part, step in parts.items()})


def _cautions(draft: Draft, sheet: Worksheet) -> None:
    for step, words in enumerate(CAUTIONS, start=1):
        draft.put(sheet.cell(COSTS + step, 5), words, "label")
    row = COSTS + len(CAUTIONS) + 1
    unit = f"\u00b0{draft.plan.measures.temperature_unit}"
    lowest = _of(draft, "workings", "flash")
    words = f'"Lowest flash point of its neat oils: "&TEXT({lowest},"0")&" {unit}, for storing and shipping"'
    draft.put(sheet.cell(row, 5), Formula(f'=IF(batch_makes="","",IF(N({lowest})=0,"",{words}))'), "label")
