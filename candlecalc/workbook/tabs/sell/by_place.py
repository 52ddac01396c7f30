"""The By place tab: what each place brought, what it cost besides its fees, and what an hour of own time earned there."""

from collections.abc import Iterable

from candlecalc.season.tables.sales import MARKET_DAYS
from candlecalc.season.tables.sell import PLACES
from candlecalc.workbook.cells.checks import WorkbookCheck, sums_agree
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import OWN_ROW, Plan
from candlecalc.workbook.cells.references import Same, Whole, at, row_in, written
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import Shown, register
from candlecalc.workbook.tabs.sell.season_sums import (
    MONEY,
    all_sold,
    an_hour,
    by_what_is_left,
    less,
    making_hours,
    of_market_days,
    sums,
)

KEY = "by_place"
# A place has one line, that of its first row on Places sold.
FIRST = ("first",)
THERE = [("place_first", OWN_ROW)]

DAYS = written("{fee}+{travel}", fee=of_market_days("fee", THERE), travel=of_market_days("travel", THERE))
# What Market days say is not counted again; nor a place that was only thought of.
FEES_TYPED = written(
    'COUNTIFS({places},{row},{fees},">="&0)',
    places=Whole(MARKET_DAYS.key, "place_first"),
    fees=Whole(MARKET_DAYS.key, "fee"),
    row=OWN_ROW,
)
LINES = written("COUNTIF({places},{row})", places=Whole("sold", "place_first"), row=OWN_ROW)
FIXED = written(
    "IF(({typed}>0)+({lines}=0)>0,0,SUM({fixed}))",
    typed=FEES_TYPED,
    lines=LINES,
    fixed=at(PLACES.key, "season_fixed", row_in(PLACES.key, "place")),
)
LEFT = less("net", "fees", "sent", "cost", "days", "fixed")

TAB = result_tab(
    "By place",
    "output",
    "What each place brought, with postage charged, less refunds. Fees of stands are as on Market days, else the fixed cost on Places sold; postage and packing as there.",
    KEY,
    PLACES,
    {
        **sums(THERE, FIRST, {
            "left": look("Left over, {money}", LEFT, "money_strong", needs=FIRST),
            "per_hour": an_hour("left", FIRST),
            "hours": look("Own hours", written("{making}+{markets}", making=making_hours(THERE), markets=of_market_days("hours", THERE)), "hours", needs=FIRST),
        }),
        "days": look("Stand fees and travel, {money}", DAYS, "money", needs=FIRST),
        "fixed": look("Fixed cost, from Places sold, {money}", FIXED, "money", needs=FIRST),
        "order": by_what_is_left("left", OWN_ROW, FIRST),
        "first": look("1: the place's first row", written('IF({first}={row},1,"")', first=Same("places_by_day", "first"), row=OWN_ROW), "row", width=8),
    },
    paper_to="fixed",
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    found = plan.layouts[KEY].sum(*MONEY)
    yield sums_agree("Places add up to all that was sold", TAB.title, found, all_sold(plan))


SHOWN = ("place", "pieces", "net", "tax", "fees", "sent", "cost", "days", "fixed", "left", "hours", "per_hour")
register(TAB, __name__, 82, checks=checks, shown=Shown("places", SHOWN), records=True)
