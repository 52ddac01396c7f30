"""The Market days tab: what each day brought, what it cost, what an hour of it earned, and whether the cash is right."""

from candlecalc.season.tables.sales import MARKET_DAYS
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import Expression, row_in, sum_where, while_known, written
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there
from candlecalc.workbook.tabs.registry import Shown, register


def _that_day(key: str) -> Expression:
    """What was sold that day in that place; an error while any line sold is one."""
    there = sum_where("sold", key, place_first="place_first", date="date")
    return while_known(written("ROUND({sum},6)", sum=there), "sold", key)


COUNTED = written('({cash}<>"")+({card}<>"")=0', cash="cash", card="card")
MISSING = written("SUM({cash},{card})-SUM({float})-{gross}", cash="cash", card="card", float="float", gross="gross")
RESULT = written(
    "ROUND({net}-{fees}-{cost}-SUM({fee},{travel}),6)", net="net", fees="fees", cost="cost", fee="fee", travel="travel"
)
# What no card is typed for counts as paid by card: so a fee is rather too high than left out.
CARD_SHARE = written('IF(({card}="")+({gross}<=0)>0,1,MIN(1,{card}/{gross}))', card="card", gross="gross")
NO_HOURS = written("SUM({hours})=0", hours="hours")

TAB = entry_tab(
    MARKET_DAYS,
    {
        "gross": look("Sold, with tax, {money}", _that_day("gross"), "money_strong"),
        "result": look("Left over, {money}", RESULT, "money_strong"),
        "per_hour": look("... an hour there, {money}", written("{result}/{hours}", result="result", hours="hours"), "money", blank_if=(NO_HOURS,)),
        "missing": look("Cash and card over, or short (-), {money}", written("ROUND({missing},6)", missing=MISSING), "money", blank_if=(COUNTED,)),
        "pieces": look("Pieces sold", _that_day("pieces"), "pieces"),
        "card_share": look("Share paid by card", CARD_SHARE, "percent"),
        "net": look("Sold, before tax, {money}", _that_day("net"), "money"),
        "fees": look("Fees on it, {money}", _that_day("fee"), "money"),
        "cost": look("Cost of candles sold, {money}", _that_day("cost"), "money"),
        "place_first": look("Place's first row", row_in("places", "place", ready=False), "row", width=8),
    },
    checks=(
        Check('(missing="")+(ABS(N(missing))<=5)>0', "cash that is not what was sold", "count again; a sale, a gift or change from your own purse not typed?", "cash", unlikely=True),
    ),
    waits={"place": not_ready_there("places", "place")},
    results_printed=True,
)  # fmt: skip

SHOWN = ("date", "place", "pieces", "gross", "net", "fees", "cost", "result", "per_hour", "missing")
register(TAB, __name__, 40, shown=Shown("markets", SHOWN), records=True)
