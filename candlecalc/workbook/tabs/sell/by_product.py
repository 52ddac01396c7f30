"""The By product tab: what each product brought, and what an hour of own time in its making earned."""

from collections.abc import Iterable

from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.checks import WorkbookCheck, sums_agree
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import OWN_ROW, Plan
from candlecalc.workbook.cells.references import Same, sum_where, written
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import Shown, register
from candlecalc.workbook.tabs.sell.season_sums import (
    MONEY,
    OF_SOLD,
    all_sold,
    an_hour,
    by_what_is_left,
    less,
    making_hours,
    sums,
)

KEY = "by_product"
# A product has one line, that of its first row on Recipes.
FIRST = ("first",)
OF_IT = [("thing", OWN_ROW)]

# A set's own work, and that on its candles. An error where there is no cost: it would be as short of a candle.
MINUTES = written(
    "{own}+{candles}+0*{cost}",
    own=Same("parts", "own_minutes"),
    candles=sum_where("sets", "own_minutes", set_row=OWN_ROW),
    cost=Same("costing", "full"),
)

TAB = result_tab(
    "By product",
    "output",
    "What each product brought. Left over is before what stands and places cost; own hours are making time that is not paid help.",
    KEY,
    RECIPES,
    {
        **sums(OF_IT, FIRST, {
            "left": look("Left over on candles, {money}", less("net", "fees", "sent", "cost"), "money_strong", needs=FIRST),
            "per_hour": an_hour("left", FIRST),
            "hours": look("Own hours", making_hours(OF_IT), "hours", needs=FIRST),
        }),
        "order": by_what_is_left("left", OWN_ROW, FIRST),
        "minutes": look("Own time a piece, minutes", MINUTES, "minutes"),
        "first": look("1: the product's first row", written('IF({first}={row},1,"")', first=Same("recipes_by_day", "first"), row=OWN_ROW), "row", width=8),
    },
    paper_to="cost",
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    sold = plan.layouts["sold"]
    # A refund of money alone is of no product.
    of_none = "+".join(f"SUMIF({sold.results('thing')},0,{sold.results(OF_SOLD[key])})" for key in MONEY)
    found = f"{plan.layouts[KEY].sum(*MONEY)}+{of_none}"
    yield sums_agree("Products add up to all that was sold", TAB.title, found, all_sold(plan))


SHOWN = ("product", "pieces", "net", "tax", "fees", "sent", "cost", "left", "hours", "per_hour")
register(TAB, __name__, 84, checks=checks, shown=Shown("season", SHOWN), records=True)
