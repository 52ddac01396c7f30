"""The Start tab: what the workbook is, what to do in it, and where things are."""

from collections.abc import Sequence

from openpyxl.worksheet.worksheet import Worksheet

from candlecalc import __version__
from candlecalc.season.room import CROWDED
from candlecalc.workbook.cells.layout import OWN_ROW, Plan
from candlecalc.workbook.cells.table_tab import Tab, TableTab
from candlecalc.workbook.tabs.registry import GROUPS, MORE_ROWS, Group, Registered, register, registered
from candlecalc.workbook.writing.draft import Draft, Formula, band, link, turns_red

# Of a workbook's layout and formulas: it goes up when either changes. Earlier ones are read, newer ones refused.
FORMAT = 2
FORMAT_WORDS = f"workbook format {FORMAT}"
SUBJECT = "Costs, prices and batches of a candle maker's season"
START = Tab("Start", "control", f"{SUBJECT}, for the maker and a bookkeeper.")

ENOUGH = "enough on every tab"
MORE = f". For more, in a terminal: {MORE_ROWS}"

CAUTION = (
    "Hot wax burns and wax can catch fire. Data sheets, local rules and licensed practice come before anything here."
)

STEPS = (
    "1. Type what holds for the season on Settings.",
    "2. Type what you buy on Materials, and what you pour into on Vessels.",
    "3. Type what you sell on Recipes, what else goes with it on Extra parts, and boxes of candles on Sets.",
    "4. Read what each one costs on Costing.",
    "5. Type where you sell on Places sold, and your prices on Prices.",
    "6. On Batch pick a product and say how many: weigh, count and tick.",
    "7. Look at Checks: it says what does not agree, what to do, and leads to the first row concerned.",
)
OF_RECORDS = (
    "8. As goods come, type a line for each material on Purchases; what you had when you began is a line of the kind opening.",
    "9. After a pour type a line on Batch log: day, batch number (Batch shows the next), product, how many are good. What it took,",
    "   what it cost and when it is ready follow. What was otherwise than the recipe goes on Used otherwise.",
    "10. What leaves without a sale goes on Taken out, what you counted on Counts.",
    "11. Stock says what is left, what it is worth and what to order, Candles what can be sold, Trace which lot is in which batch.",
    "12. When a recipe changes, copy its row, change it there and type its first day under From: earlier batches keep the old one.",
    "    When wages or overhead change, type a line on Rates by day.",
    "13. Before you sell a candle, burn some: type your wicks on Wicks and your aims on Burn targets, a line for each piece on",
    "    Burn tests, print its Test sheet for the bench, and type each burn on Burn cycles. Test results says what they come to.",
    "    Pieces poured to burn are Test pieces on Batch log; materials for a trial by itself go on Taken out, as test.",
    "14. For an evening of several products type them on Pour list, and your own melts on Melts timed: Pour day has it on a page.",
    "15. For labels type section 3 of each oil's data sheet on Oil sheets; candlecalc new NEW.xlsx --from THIS.xlsx reads it.",
    "16. Read what it brings on Hazards; type your texts, and what you confirmed, on Label texts, your label sheets on Papers.",
    "17. candlecalc labels THIS.xlsx OUT.pdf prints labels, and with --check-sheet what they state and lack, to sign.",
    "18. A file from a shop, a till or a scale need not be typed: say on Imports which of its columns is which, then",
    "    candlecalc import THIS.xlsx FILE.csv NEW.xlsx --as sales (or purchases, counts, weighings).",
    "19. Type what you want to sell on Demand, and when you pour on Evenings: Plan says what to pour by when, To buy what to buy, To order in which month.",
)  # fmt: skip
LOGS_STAY = "Never clear a line of Purchases, the Batch log, Taken out or Counts: what you have in stock rests on it."
ROWS = (
    "What is wrong with a row stands in red left of its name; the line beside the tab's title says it whole, for the first row.",
    "To clear a row, select its entries and press Delete. A row that was cut has lost its look: copy an empty row onto it.",
    "To sort, select the entries of all rows, from the name to the last yellow column, without the heads: then Data, Sort.",
    "Where rows run short, clear those that are past and sort: blank rows come last, and take new entries. Or ask for more: see Room.",
)  # fmt: skip
ABOUT = (
    "Cells with a yellow ground and a brown border are yours to type in, also on Batch and over the heads of Costing.",
    "A row counts once its columns marked needed are filled; those marked entry may be left out, or are asked for where one goes with another.",
    "Everything else is worked out. A result that is blank waits for an entry, or has no use in its row. A title leads back here.",
    "What you type is your own, as of the date above; Materials says of a price from whom and when, Vessels how it was measured.",
    "Nothing needs installing. The functions, for a sheet of your own, are in functions.xlsx, and in words in functions.md.",
    "Money: costs and prices are positive; a loss carries a minus. Shares such as a load are typed as 8 %.",
    "Fragrance load is a share of wax weight, never of the whole, unless a head says of candle.",
    "Making cost is materials, paid work and production overhead: for stock and books. Full cost adds your own time and running costs: for prices.",
    CAUTION,
)  # fmt: skip


def write_start(draft: Draft) -> None:
    settings = draft.season.settings
    sheet = draft.tab(START, portrait=True)
    for letter, width in zip("ABCD", (30, 16, 84, 21), strict=True):
        sheet.column_dimensions[letter].width = width
    facts = [
        ("Maker", settings["maker"]), ("Place", settings["place"]), ("Season", settings["season"]),
        ("First day", settings["first_day"]), ("Last day", settings["last_day"]),
        ("Currency", settings["currency"]), ("Made by", f"candlecalc {__version__}, {FORMAT_WORDS}"),
        ("Dated", draft.dated),
    ]  # fmt: skip
    row = 4
    for label, value in facts:
        draft.put(sheet.cell(row, 1), label, "label")
        draft.put(sheet.cell(row, 2), value, "strong", "date" if "day" in label or label == "Dated" else "text")
        row += 1
    room, row = row, row + 1
    records = draft.plan.records
    row = _paragraph(draft, sheet, row + 1, "What to do", (*STEPS, *(OF_RECORDS if records else ())))
    row = _paragraph(draft, sheet, row + 1, "Rows", (*ROWS, *([LOGS_STAY] if records else ())))
    row = _paragraph(draft, sheet, row + 1, "Good to know", ABOUT)
    first = row = row + 1
    for key, group in GROUPS.items():
        tabs = [each for each in registered(records) if each.group == key and each.tab is not START]
        row = _group(draft, sheet, row, group, tabs) if tabs else row
    _room(draft, sheet, room, first, row - 1)
    sheet.print_area = f"A1:D{row - 1}"


def _group(draft: Draft, sheet: Worksheet, row: int, group: Group, tabs: Sequence[Registered]) -> int:
    band(draft, sheet, row, f"{group.title}: {group.purpose}", "ABCD")
    for step, each in enumerate(tabs, start=1):
        link(draft, sheet.cell(row + step, 1), each.tab.title, each.tab.title)
        draft.put(sheet.cell(row + step, 2), each.tab.kind, "label")
        draft.put(sheet.cell(row + step, 3), each.tab.purpose, "note")
        left = _rows_left(draft.plan, each)
        if left:
            draft.put(sheet.cell(row + step, 4), left, "note")
    return row + len(tabs) + 1


def _rows_left(plan: Plan, each: Registered) -> Formula | None:
    """What a tab says once four fifths of its rows are filled: how many are left."""
    if not isinstance(each.tab, TableTab) or not (each.tab.fields or each.room):
        return None
    layout = plan.layouts[each.tab.key]
    # What is filled is counted from the head on. Of lines that follow from a log, Checks say what gives them room.
    filled = each.room.lines if each.room else f"(COUNTA({layout.range(each.tab.fields[0].key)})-1)"
    then = '&": see Checks"' if each.room else ""
    rows = f"ROWS({layout.results(OWN_ROW)})"
    left = f'"room for "&MAX(0,{rows}-{filled}){then}'
    return Formula(f'=IFERROR(IF({filled}<{CROWDED}*{rows},"",{left}),"")')


def _room(draft: Draft, sheet: Worksheet, row: int, first: int, last: int) -> None:
    """Which list is the first whose rows run short, and how to get more of them."""
    draft.put(sheet.cell(row, 1), "Room", "label")
    found = f'MATCH("?*",$D${first}:$D${last},0)'
    told = f'INDEX($A${first}:$A${last},{found})&": "&INDEX($D${first}:$D${last},{found})'
    draft.put(sheet.cell(row, 2), Formula(f'=IFERROR({told}&"{MORE}","{ENOUGH}")'), "strong", "words")
    turns_red(sheet, f"B{row}", f'$B${row}<>"{ENOUGH}"')
    turns_red(sheet, f"D{first}:D{last}", f'D{first}<>""')


def _paragraph(draft: Draft, sheet: Worksheet, row: int, head: str, words: Sequence[str]) -> int:
    band(draft, sheet, row, head, "ABCD")
    for step, line in enumerate(words, start=1):
        draft.put(sheet.cell(row + step, 1), line, "label")
    return row + len(words) + 1


register(START, __name__, 10, write=write_start)
