"""The To order tab: the lines of To buy by the month in which each is to be ordered, with what a month comes to."""

from collections.abc import Iterable

from candlecalc.season.tables.set_up import MATERIALS
from candlecalc.workbook.cells.checks import WorkbookCheck, sums_agree
from candlecalc.workbook.cells.columns import Column, look
from candlecalc.workbook.cells.layout import OWN_ROW, Plan
from candlecalc.workbook.cells.references import Expression, Named, as_text, at, in_order, sum_where, written
from candlecalc.workbook.cells.table_tab import TableTab, own_row_column
from candlecalc.workbook.tabs.plan import to_buy
from candlecalc.workbook.tabs.registry import Shown, register
from candlecalc.workbook.tabs.working.plan_needs import PER_SUPPLIER
from candlecalc.workbook.writing.draft import Draft

KEY = "to_order"
THERE = ("number",)


def _of_line(key: str) -> Expression:
    return at(to_buy.KEY, key, "row")


def _same(key: str, head: str, number: str, width: float, *, words: bool = False) -> Column:
    """What the line on To buy holds."""
    value = _of_line(key)
    return look(head, as_text(value) if words else value, number, needs=THERE, width=width)


BEGINS = written(
    "MAX({day},DATE(YEAR({day}),MONTH({day})+{month},1))", day=Named("plan_from"), month=_of_line("order_month")
)
OF_MONTH = sum_where(to_buy.KEY, "cost", order_month=_of_line("order_month"))

FOR_PAPER = {
    "month": look("Order in the month from", BEGINS, "date", needs=THERE, width=13),
    "in_month": look("In the month, {money}", OF_MONTH, "money_strong", needs=THERE, width=12),
    "supplier": _same("supplier", "Supplier", "text", 23, words=True),
    "material": _same("material", "Material", "text", 27, words=True),
    "packs": _same("packs", "Packs", "pieces_strong", 7),
    "size": _same("size", "of", "count", 6),
    "unit": _same("unit", "each", "text", 7, words=True),
    "cost": _same("cost", "In all, {money}", "money", 11),
    "order_by": _same("order_by", "Order by", "date", 12),
    "ordered": look("Ordered", written('""'), needs=(), width=9),
}
TAB = TableTab(
    "To order",
    "output",
    "What to order in which month: the lines of To buy, with what each month comes to.",
    KEY,
    {
        **FOR_PAPER,
        OWN_ROW: own_row_column(),
        "number": look("Month and line, a number", in_order(to_buy.KEY, "by_month"), "row", needs=(), width=10),
        "row": look(
            "Row on To buy", written(f"MOD({{number}},{PER_SUPPLIER})", number="number"), "row", needs=THERE, width=8
        ),
    },
    goes_with=MATERIALS.key,
    counted=to_buy.rows,
)


def write(draft: Draft) -> None:
    to_buy.write_to_tick(draft, TAB, tick="ordered", once=("month", "in_month"))


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    here, buy = (plan.layouts[key] for key in (KEY, to_buy.KEY))
    yield sums_agree("To order comes to what To buy comes to", TAB.title, here.sum("cost"), buy.sum("cost"))


register(TAB, __name__, 65, write=write, checks=checks, shown=Shown("orders", tuple(FOR_PAPER)[:-1]), records=True)
