"""The Costing tab: what each candle's money is made of. Making cost first, then what prices must also cover."""

from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.season.tables import WHAT_IF
from candlecalc.workbook.columns import SumWhere, result, total
from candlecalc.workbook.draft import Draft
from candlecalc.workbook.lines import Line, write_line
from candlecalc.workbook.place import Place, Plan
from candlecalc.workbook.references import named, own, same
from candlecalc.workbook.table_tab import TableTab, follows, letters
from candlecalc.workbook.tabs.parts import piece


def _with_set(key: str) -> SumWhere:
    """A piece's own cost, and for a set what its candles bring."""
    return SumWhere(
        head=piece(key),
        part=same("parts", key),
        table="sets",
        column=key,
        by="set",
        name="product",
        format="money",
    )


def _with_all_candles(plan: Plan, place: Place) -> str:
    """1 while every candle of a set has its cost: sums over other tabs are not stopped by an error everywhere."""
    sets, name = plan.places["sets"], own("product")(plan, place)
    lines = f"{sets.range('set')},{name}"
    missing = f'COUNTIFS({lines})-COUNTIFS({lines},{sets.range("brought")},">=0")'
    return f"CHOOSE(1+({missing}=0),NA(),{same('workings', 'whole')(plan, place)})"


TAB = TableTab(
    "Costing",
    "output",
    "What one piece costs at its usual batch: materials, making cost, full cost.",
    "costing",
    {
        **follows("recipes", "product", "Product", when_so=_with_all_candles),
        "wax": _with_set("wax"),
        "oils": _with_set("oils"),
        "other": _with_set("other"),
        "materials": total("Materials, {money}", "wax", "oils", "other"),
        "paid": _with_set("paid"),
        "overhead": _with_set("overhead"),
        "making": result("Making cost, {money}", "making_cost", materials="materials", labour="paid", overhead="overhead", format="money_strong"),
        "own": _with_set("own"),
        "running": _with_set("running"),
        "full": result("Full cost, {money}", "full_cost", making="making", own_time="own", running="running", format="money_strong"),
        "risen": result("Full cost if materials rise, {money}", "cost_with_rise", cost="full", materials="materials", rise=named("materials_rise")),
        "work": total("Paid work and overhead, {money}", "paid", "overhead"),
    },
)  # fmt: skip

RISE = WHAT_IF["materials_rise"]
# Over the heads: the rise above the column that reckons with it, the value used beside it.
RISE_ROW = 2


def _over(key: str, row: int = RISE_ROW) -> str:
    return f"{letters(TAB.columns)[key]}{row}"


RISE_LINE = Line(label=_over("full"), entry=_over("risen"), mend=_over("paid"), used=_over("work"))


def write_rise(draft: Draft, sheet: Worksheet) -> None:
    """What is asked about dearer materials, typed over its answers."""
    write_line(draft, sheet, RISE, RISE_LINE, over_a_list=True)
    draft.put(sheet[_over("risen", RISE_ROW - 1)], "entry", "mark", "row")
    draft.name(RISE.key, TAB.title, RISE_LINE.used)


# What the chart shows: parts that add up to the full cost.
CHART_PARTS = ("wax", "oils", "other", "work", "own", "running")
