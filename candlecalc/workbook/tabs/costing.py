"""The Costing tab: what each candle's money is made of. Making cost first, then what prices must also cover."""

from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.season.tables import RECIPES, WHAT_IF
from candlecalc.workbook.cells.columns import Column, result, total, with_sum_where
from candlecalc.workbook.cells.place import OWN_ROW
from candlecalc.workbook.cells.references import Named, Same, Whole, joined, written
from candlecalc.workbook.cells.table_tab import letters, result_tab
from candlecalc.workbook.tabs.parts import piece
from candlecalc.workbook.writing.draft import Draft
from candlecalc.workbook.writing.lines import Line, write_line


def _with_set(key: str) -> Column:
    """A piece's own cost, and for a set what its candles bring."""
    return with_sum_where(piece(key), Same("parts", key), "sets", key, "set_row")


# 1 while every candle of a set has its cost: sums over other tabs are not stopped by an error everywhere.
WITH_ALL_CANDLES = written(
    'CHOOSE(1+(COUNTIFS({sets},{row})-COUNTIFS({sets},{row},{brought},">="&0)=0),NA(),{whole})',
    sets=Whole("sets", "set_row"),
    row=OWN_ROW,
    brought=Whole("sets", "brought"),
    whole=Same("workings", "whole"),
)
# What is to mend, or waits, where a product has no cost: in the words of its row on Recipes.
TOLD = joined("&", [Same("recipes", key) for key in ("mend", "waits")])
WHY = written(
    'IF(COUNT({full})>0,"",IFERROR({told}&REPT(REPT("Sets: see its lines there; ",({product}<>"")*({told}="")),'
    'ISERROR({whole})+ISERROR({full})>0),""))',
    full="full",
    told=TOLD,
    product="product",
    whole=Same("workings", "whole"),
)

TAB = result_tab(
    "Costing",
    "output",
    "What one piece costs at its usual batch: materials, making cost, full cost.",
    "costing",
    RECIPES,
    {
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
        "risen": result("Full cost if materials rise, {money}", "cost_with_rise", cost="full", materials="materials", rise=Named("materials_rise")),
        "work": total("Paid work and overhead, {money}", "paid", "overhead"),
        "why": Column(head="Why there is no cost", holds=WHY, format="note", width=34, needs=()),
    },
    when_so=WITH_ALL_CANDLES,
)  # fmt: skip

RISE = WHAT_IF["materials_rise"]
# Over the heads: the rise above the column that reckons with it, the value used beside it.
RISE_ROW = 2


def _over(key: str, row: int = RISE_ROW) -> str:
    return f"{letters(TAB.columns)[key]}{row}"


RISE_LINE = Line(_over("full"), _over("risen"), _over("paid"), _over("work"), RISE_ROW - 1, RISE_ROW + 1)


def write_rise(draft: Draft, sheet: Worksheet) -> None:
    """What is asked about dearer materials, typed over its answers."""
    write_line(draft, sheet, RISE, RISE_LINE, over_a_list=True)
    draft.put(sheet[_over("risen", RISE_ROW - 1)], "entry", "mark", "row")
    draft.name(RISE.key, TAB.title, RISE_LINE.used)


# What the chart shows: parts that add up to the full cost.
CHART_PARTS = ("wax", "oils", "other", "work", "own", "running")
