"""The Costing tab: what each candle's money is made of. Making cost first, then what prices must also cover."""

from dataclasses import dataclass

from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.season.tables import WHAT_IF
from candlecalc.workbook.cells.columns import Column, SumWhere, result, total
from candlecalc.workbook.cells.place import OWN_ROW, Place, Plan
from candlecalc.workbook.cells.references import Reference, named, own, same
from candlecalc.workbook.cells.table_tab import TableTab, follows, letters
from candlecalc.workbook.tabs.parts import piece
from candlecalc.workbook.writing.draft import Draft
from candlecalc.workbook.writing.lines import Line, write_line


def _with_set(key: str) -> SumWhere:
    """A piece's own cost, and for a set what its candles bring."""
    return SumWhere(
        head=piece(key),
        part=same("parts", key),
        table="sets",
        column=key,
        by="set_row",
        format="money",
    )


def _with_all_candles(plan: Plan, place: Place) -> str:
    """1 while every candle of a set has its cost: sums over other tabs are not stopped by an error everywhere."""
    sets = plan.places["sets"]
    lines = f"{sets.range('set_row')},{place.cell(OWN_ROW)}"
    missing = f'COUNTIFS({lines})-COUNTIFS({lines},{sets.range("brought")},">="&0)'
    return f"CHOOSE(1+({missing}=0),NA(),{same('workings', 'whole')(plan, place)})"


@dataclass(frozen=True, kw_only=True)
class Why(Column):
    """What is to mend, or waits, where a product has no cost: in the words of its row on Recipes."""

    format: str = "note"
    when: tuple[str | Reference, ...] = ()

    def expression(self, plan: Plan, place: Place) -> str:
        told = "&".join(same("recipes", key)(plan, place) for key in ("mend", "waits"))
        number, whole = own("full")(plan, place), same("workings", "whole")(plan, place)
        lines = f'REPT("Sets: see its lines there; ",({own("product")(plan, place)}<>"")*({told}=""))'
        return f'IF(COUNT({number})>0,"",IFERROR({told}&REPT({lines},ISERROR({whole})+ISERROR({number})>0),""))'


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
        "why": Why(head="Why there is no cost", width=34),
    },
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
