"""The Costing tab: what each candle's money is made of. Making cost first, then what prices must also cover."""

from collections.abc import Iterable

from candlecalc.season.tables.once import WHAT_IF
from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.checks import WorkbookCheck, sums_agree, words_in
from candlecalc.workbook.cells.columns import Column, result, total, with_sum_where
from candlecalc.workbook.cells.layout import OWN_ROW, Plan
from candlecalc.workbook.cells.references import Named, Same, Whole, if_records, joined, text, written
from candlecalc.workbook.cells.table_tab import first_of, letters, result_tab, words_column
from candlecalc.workbook.tabs.registry import Shown, register
from candlecalc.workbook.tabs.working.parts import PIECES, piece
from candlecalc.workbook.writing import chart
from candlecalc.workbook.writing.draft import Draft
from candlecalc.workbook.writing.single_entry import SingleEntry, write_entry
from candlecalc.workbook.writing.writer import write_table


def _with_set(key: str) -> Column:
    """A piece's own cost, and for a set what its candles bring."""
    return with_sum_where(piece(key), Same("parts", key), "sets", key, "set_row")


# 1 while every candle of a set and every extra part has its cost: sums over other tabs are not stopped by an error everywhere.
WITH_ALL_CANDLES = written(
    'CHOOSE(1+(COUNTIFS({sets},{row})-COUNTIFS({sets},{row},{brought},">="&0)=0)*(1-ISERROR({extra})),NA(),{whole})',
    extra=Same("parts", "extra"),
    sets=Whole("sets", "set_row"),
    row=OWN_ROW,
    brought=Whole("sets", "brought"),
    whole=Same("workings", "whole"),
)
# Where what tests cost is not known nothing that bears it has a cost.
TESTS_TOLD = if_records(
    written('REPT("Tests: what they cost is not known, see Wick summary",ISERROR({each}))', each=Named("tests_each")),
    text(""),
)
# What is to mend, or waits, where a product has no cost: in the words of its row on Recipes.
TOLD = joined("&", [Same("recipes", key) for key in ("mend", "waits", "extras", "checked")])
WHY = written(
    'IF(COUNT({full})>0,"",IFERROR(REPT("Recipes: ",{told}<>"")&{told}&REPT(REPT({tests}&REPT("Sets: see its lines there",{tests}=""),({product}<>"")*({told}="")),'
    'ISERROR({whole})+ISERROR({full})>0),""))',
    tests=TESTS_TOLD,
    full="full",
    told="told",
    product="product",
    whole=Same("workings", "whole"),
)

WITH_CANDLES_LOADS = written(
    'IF(COUNTIFS({sets},{row},{said},"?*")>0,"A candle in it has a load above a limit: see Sets",{own}&"")',
    sets=Whole("sets", "set_row"),
    row=OWN_ROW,
    said=Whole("sets", "loads"),
    own=Same("workings", "loads"),
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
    },
    when_so=WITH_ALL_CANDLES,
    said={
        "told": words_column("What Recipes says", TOLD, width=8),
        "why": words_column("Why there is no cost", WHY, width=8),
        "loads": words_column("Load above a limit, also in a set", WITH_CANDLES_LOADS, width=8),
    },
    status=first_of("why", "loads"),
)  # fmt: skip

RISE = WHAT_IF["materials_rise"]
# Over the heads: the rise above the column that reckons with it, the value used beside it.
RISE_ROW = 2


def _over(key: str, row: int = RISE_ROW) -> str:
    return f"{letters(TAB.columns)[key]}{row}"


RISE_LINE = SingleEntry(_over("full"), _over("risen"), _over("paid"), _over("work"), RISE_ROW - 1, RISE_ROW + 1)


# What the chart shows: parts that add up to the full cost.
CHART_PARTS = ("wax", "oils", "other", "work", "own", "running")


def write(draft: Draft) -> None:
    """The list; over its answers what is asked about dearer materials; and the chart."""
    sheet = write_table(draft, TAB)
    write_entry(draft, sheet, RISE, RISE_LINE, over_a_list=True)
    draft.put(sheet[_over("risen", RISE_ROW - 1)], "entry", "mark", "row")
    draft.name(RISE.key, TAB.title, RISE_LINE.used)
    chart.add(draft, sheet, draft.plan.layouts[TAB.key], "product", "work", CHART_PARTS)


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    costed, parts, sets = (plan.layouts[key] for key in ("costing", "parts", "sets"))
    mend = f"{costed.sheet}!{RISE_LINE.mend}"
    words = "see the words to the left of it, over the heads of Costing"
    yield WorkbookCheck("The rise of materials is what it takes", TAB.title, words_in(mend), words)
    full = costed.sum("full")
    yield sums_agree("Parts of the cost make up the full cost", TAB.title, costed.sum(*PIECES), full)
    own, brought = (",".join(layout.results(key) for key in PIECES) for layout in (parts, sets))
    yield sums_agree("Sets carry what their candles cost", TAB.title, full, f"SUM({own},{brought})")


SHOWN = ("product", "wax", "oils", "other", "materials", "paid", "overhead", "making", "own", "running", "full")
register(TAB, __name__, 10, write=write, checks=checks, shown=Shown("costs", SHOWN))
