"""The Settings tab: what holds for the whole season, a line each, and what follows from it."""

from collections.abc import Iterable

from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.quantities.units import GRAMS
from candlecalc.season.fields import Field
from candlecalc.season.hazards import LOAD_PARTS
from candlecalc.season.tables.once import MADE_FOR, SETTINGS
from candlecalc.workbook.cells.checks import ANYTHING, Rows, WorkbookCheck, words_in
from candlecalc.workbook.cells.columns import calculated
from candlecalc.workbook.cells.layout import Layout, Plan
from candlecalc.workbook.cells.references import Named, Written, standing
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.make.rates import rate, rates_of
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.writing.draft import Draft, Formula, band
from candlecalc.workbook.writing.single_entry import SingleEntry, write_entry

TAB = Tab(SETTINGS.title, "input", SETTINGS.purpose)
FIRST_LINE = 5
PLACE = Layout(SETTINGS.key, TAB.title, 0, {})
KEY_THING, KEY_DAY, KEY_PLACE, KEY_LINE = 10**11, 10**6, 10**9, 10**3
# What the day of stock and recipes is where none is typed: the latest of these, if there are any.
BY_DAY = ("paid_rate",)  # ... where they hold for the whole season: with records they may change from a day on
DATED = ("purchases", "pours", "moves", "counts", "sales", "market_days")
# Settings that formulas use by name: the checked value, never the entry itself.
NAMED = (
    "first_day",
    "last_day",
    "tax_rate",
    "paid_rate",
    "own_rate",
    "waste",
    "price_step",
    "price_ending",
    "scale_step",
    "largest_pot",
    "spread_tests",
    "books",
)


def line_of(key: str) -> int:
    """The row of a setting."""
    return FIRST_LINE + [*SETTINGS.keys, "", *MADE_FOR.keys].index(key)


def as_typed(key: str) -> str:
    """A setting that is a text of any kind, as a formula on another tab reaches it."""
    row, over, under = line_of(key), FIRST_LINE - 1, FIRST_LINE + len(SETTINGS.fields)
    return standing(f"B{row}", over, under, f"A{row}", TAB.title)


def write(draft: Draft) -> None:
    sheet = draft.tab(TAB)
    for letter, width in zip("ABCDE", (36, 32, 30, 13, 69), strict=True):
        sheet.column_dimensions[letter].width = width
    for letter, head in zip("ABCDE", ("Setting", "Entry", "To mend", "Value used", "What it is"), strict=True):
        draft.put(sheet[f"{letter}{FIRST_LINE - 1}"], head, "head")
    draft.put(sheet["B2"], "entry", "mark")
    for field in SETTINGS.fields:
        _line(draft, sheet, field)
    row = FIRST_LINE + len(SETTINGS.fields)
    band(draft, sheet, row, "This workbook is made for (a change takes a new workbook)", "ABCDE")
    for field in MADE_FOR.fields:
        row = line_of(field.key)
        draft.put(sheet.cell(row, 1), field.head, "label")
        draft.put(sheet.cell(row, 2), draft.season.settings.get(field.key), "label")
        draft.put(sheet.cell(row, 5), field.help, "note")
    draft.name("shelf_prices", "Settings", f"B{line_of('shelf_prices')}")
    last = _derived(draft, sheet, row + 1)
    if not draft.plan.records:
        sheet.page_setup.fitToHeight = 1
    sheet.freeze_panes = f"B{FIRST_LINE}"
    sheet.print_area = f"A1:E{last}"


def _line(draft: Draft, sheet: Worksheet, field: Field) -> None:
    row = line_of(field.key)
    over, under = FIRST_LINE - 1, FIRST_LINE + len(SETTINGS.fields)
    line = SingleEntry(f"A{row}", f"B{row}", f"C{row}", f"D{row}", over, under)
    write_entry(draft, sheet, field, line)
    draft.put(sheet.cell(row, 5), field.help, "note")
    if field.key in NAMED and not (draft.plan.records and field.key in BY_DAY):
        draft.name(field.key, "Settings", line.used)


def _derived(draft: Draft, sheet: Worksheet, row: int) -> int:
    """What formulas need besides the entries, each with its name."""
    measures = draft.plan.measures
    hours = f"D{line_of('season_hours')}"

    def an_hour(key: str) -> Formula:
        spread = calculated("overhead_rate", overhead=Written(f"D{line_of(key)}"), activity=Written(hours))
        return Formula("=" + spread.spell(draft.plan, PLACE))

    also = "=weight_g" if measures.also_unit == "g" else "=weight_g/grams_in_oz"
    registered = f"D{line_of('registered')}"
    lines = [
        *_making_rates(draft, an_hour("production_overhead")),
        ("Running costs, {money} an hour", "running_an_hour", an_hour("running_costs"), "money"),
        ("Registered for tax: 1 for yes", "registered_yes", Formula(f'=IF({registered}="yes",1,0)'), "count"),
        ("Grams in this workbook's unit of weight", "weight_g", measures.weight_g, "factor"),
        ("Grams in one oz", "grams_in_oz", GRAMS["oz"], "factor"),
        ("{also} in one {weight}", "also_factor", Formula(also), "factor"),
        ("Millimetres in one {length}", "length_mm", measures.length_mm, "factor"),
        ("{temperature} at the freezing point of water", "temp_zero", measures.temp_zero, "count"),
        ("{temperature} for one degree Celsius", "temp_step", measures.temp_step, "count"),
        ("Stock and recipes are shown as of", "as_of", _as_of(draft), "date"),
    ]
    if draft.plan.records:
        lines += [
            # A line of a log sorts by thing, day and row as one number, exact below two to the power of 53.
            ("A thing in a line's number", "key_thing", KEY_THING, "count"),
            ("A day in a line's number", "key_day", KEY_DAY, "count"),
            ("A thing in the number of a lot's place", "key_place", KEY_PLACE, "count"),
            ("A recipe in the number of its line", "key_line", KEY_LINE, "count"),
            ("Lines that batches take", "lines_of_pours", _lines_of_pours(draft), "count"),
            ("Materials taken out, lines", "material_moves", _most(draft, "moves", "nth_material"), "count"),
            ("Materials counted, lines", "material_counts", _most(draft, "counts", "nth_material"), "count"),
            ("Lines that batches take or were taken out", "before_sets", _before_sets(draft), "count"),
            (
                "Lines of sets that left and were not packed",
                "lines_for_unpacked",
                _most(draft, "out_card", "unpacked"),
                "count",
            ),
            ("Lines on Sets not packed", "unpacked_lines", _within(draft, "unpacked", "lines_for_unpacked"), "count"),
            ("Lines that their parts take", "set_parts", _sum(draft, "unpacked", "parts"), "count"),
            ("Lines on Used before those of counts", "before_counts", _all("before_sets", "set_parts"), "count"),
            (
                "Lines that Used needs",
                "lines_for_used",
                _all("lines_of_pours", "material_moves", "set_parts", "material_counts"),
                "count",
            ),
            ("Lines on Used", "used_lines", _within(draft, "used", "lines_for_used"), "count"),
            ("Candles taken out, lines", "product_moves", _sum(draft, "moves", "lines"), "count"),
            ("Candles sold, lines", "product_sales", _sum(draft, "sold", "lines"), "count"),
            ("Candles counted, lines", "product_counts", _most(draft, "counts", "nth_product"), "count"),
            (
                "Lines that Candles out needs",
                "lines_for_out",
                _all("product_moves", "product_sales", "product_counts"),
                "count",
            ),
            ("Lines on Candles out", "out_lines", _within(draft, "out", "lines_for_out"), "count"),
            ("Lines that At shops needs", "lines_at_shops", _lines_at_shops(draft), "count"),
            ("Parts of the wax in which Hazards tells a load", "load_parts", LOAD_PARTS, "count"),
            ("Plan begins on", "plan_from", _plan_from(draft), "date"),
            ("Lines that Plan needs", "lines_for_plan", _sum(draft, "demand", "lines"), "count"),
            ("Lines on Plan", "lines_of_plan", _within(draft, "plan_lines", "lines_for_plan"), "count"),
        ]
    band(draft, sheet, row, "What follows from it", "ABCDE")
    for step, (head, name, value, shown) in enumerate(lines, start=1):
        draft.put(sheet.cell(row + step, 1), draft.plan.head(head), "label")
        draft.put(sheet.cell(row + step, 4), value, "result", shown)
        draft.put(sheet.cell(row + step, 5), f"formulas call it {name}", "note")
        draft.name(name, "Settings", f"D{row + step}")
    return row + len(lines)


def _making_rates(draft: Draft, overhead: Formula) -> list[tuple[str, str, Formula, str]]:
    """What an hour of making costs: with records, what held first, and what holds now by Rates by day."""
    head = "Production overhead, {money} an hour"
    if not draft.plan.records:
        return [(head, "overhead_an_hour", overhead, "money")]
    today = rates_of(Named("as_of"))
    paid, now = (Formula("=" + rate(*of, today).spell(draft.plan, PLACE)) for of in (
        ("paid_rate", "paid_at_first"), ("overhead", "overhead_at_first")
    ))  # fmt: skip
    return [
        ("Paid help at first, {money} an hour", "paid_at_first", Formula(f"=D{line_of('paid_rate')}"), "money"),
        ("Production overhead at first, {money} an hour", "overhead_at_first", overhead, "money"),
        ("Paid help, {money} an hour", "paid_rate", paid, "money"),
        (head, "overhead_an_hour", now, "money"),
    ]


def _as_of(draft: Draft) -> Formula:
    """The day that is typed; else the latest in the records, which may all be from before the season; else its last."""
    typed, first, last = (f"D{line_of(key)}" for key in ("as_of", "first_day", "last_day"))
    if not draft.plan.records:
        return Formula(f'=IF({typed}="",{last},{typed})')
    days = ",".join(draft.plan.layouts[key].range("date") for key in DATED)
    return Formula(f'=IF({typed}<>"",{typed},IF(COUNT({days})=0,{last},MAX({first},{days})))')


def _plan_from(draft: Draft) -> Formula:
    """The day after the one for which stock is shown; the season's first where nothing is recorded yet."""
    typed, first = f"D{line_of('as_of')}", f"D{line_of('first_day')}"
    days = ",".join(draft.plan.layouts[key].range("date") for key in DATED)
    return Formula(f'=IF(AND({typed}="",COUNT({days})=0),{first},as_of+1)')


def _all(*names: str) -> Formula:
    return Formula(f"=SUM({','.join(names)})")


def _within(draft: Draft, table: str, lines: str) -> Formula:
    """How many lines a tab has; an error where there is no room for them, since what is left out would not be missed."""
    return Formula(f"=IF({lines}>{draft.plan.layouts[table].rows},NA(),{lines})")


def _before_sets(draft: Draft) -> Formula:
    """Lines of batches and of Taken out. They leave a row of Used free: it is where too many lines show as an error."""
    lines = "lines_of_pours+material_moves"
    return Formula(f"=IF({lines}<{draft.plan.layouts['used'].rows},{lines},NA())")


def _lines_of_pours(draft: Draft) -> Formula:
    """What batches take, in lines; an error while any line of a recipe is one."""
    lines = draft.plan.layouts["lines"].results("number")
    return Formula(f"=SUM({draft.plan.layouts['pours'].results('parts')})+0*SUM({lines})")


def _lines_at_shops(draft: Draft) -> Formula:
    """Those that it has, and one more where a shop and product come after the last."""
    numbers, there = draft.plan.layouts["sold"].results("shop_key"), draft.plan.layouts["at_shops"].results("number")
    return Formula(f'=COUNT({there})+(COUNTIF({numbers},">"&MAX({there}))>0)')


def _sum(draft: Draft, table: str, key: str) -> Formula:
    return Formula(f"=SUM({draft.plan.layouts[table].results(key)})")


def _most(draft: Draft, table: str, key: str) -> Formula:
    return Formula(f"=MAX({draft.plan.layouts[table].results(key)})")


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    first, last = (line_of(SETTINGS.keys[at]) for at in (0, -1))
    mend = f"{TAB.title}!$C${first}:$C${last}"
    begins, ends = (f"{TAB.title}!$D${line_of(key)}" for key in ("first_day", "last_day"))
    yield WorkbookCheck(
        "Settings are what they take",
        TAB.title,
        words_in(mend),
        "see To mend beside the setting",
        rows=Rows(mend, ANYTHING, first),
        rested_on=True,
    )
    turned = f"IF({ends}<{begins},1,0)"
    yield WorkbookCheck("The season ends after it begins", TAB.title, turned, "the last day comes after the first")


register(TAB, __name__, 10, write=write, checks=checks)
