"""The Months tab: what each month of the season brought, beside the same month of last season."""

from collections.abc import Iterable, Mapping

from candlecalc.season.tables.carried import LAST_SOLD
from candlecalc.season.tables.sales import SALES
from candlecalc.workbook.cells.checks import WorkbookCheck, sums_agree
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import OWN_ROW, Plan
from candlecalc.workbook.cells.references import Expression, Given, Named, Results, Whole, while_known, written
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import Shown, register
from candlecalc.workbook.tabs.sell.season_sums import MONEY, OF_SOLD, all_sold, less, making_hours, of_market_days, sums

KEY = "months"
MOST_MONTHS = 13  # a year that begins within a month
THERE = ("month",)

FIRST_DAY, LAST_DAY = Named("first_day"), Named("last_day")
NTH = written("DATE(YEAR({first}),MONTH({first})+{row}-2,1)", first=FIRST_DAY, row=OWN_ROW)
MONTH = written('IF({nth}>{last},"",{nth})', nth=NTH, last=LAST_DAY)
NEXT = written("DATE(YEAR({month}),MONTH({month})+1,1)", month="month")


def _from(day: Given) -> Expression:
    return written('">="&{day}', day=day)


def _before(day: Given) -> Expression:
    return written('"<"&{day}', day=day)


IN_IT = [("date", _from("month")), ("date", _before("until"))]
NONE_TYPED = written("COUNT({ready})=0", ready=Results(LAST_SOLD.key, "ready"))
YEAR_AGO = written("DATE(YEAR({month})-1,MONTH({month}),1)", month="month")
SOLD_THEN = written(
    "SUMIFS({net},{days},{from},{days},{until},{ready},1)",
    net=Whole(LAST_SOLD.key, "net"),
    days=Whole(LAST_SOLD.key, "month"),
    ready=Whole(LAST_SOLD.key, "ready"),
    **{
        "from": _from(YEAR_AGO),
        "until": _before(written("DATE(YEAR({month})-1,MONTH({month})+1,1)", month="month")),
    },
)
THEN = while_known(SOLD_THEN, LAST_SOLD.key, "ready")


def _rows(rows_of: Mapping[str, int]) -> int:
    return MOST_MONTHS


TAB = lines_tab(
    "Months",
    "output",
    "What each month brought. Left over is before what stands and places cost; hours are of making, and those on Market days.",
    KEY,
    SALES,
    {
        "month": look("Month", MONTH, "date", needs=()),
        **sums(IN_IT, THERE, {
            "left": look("Left over on candles, {money}", less("net", "fees", "sent", "cost"), "money_strong", needs=THERE),
            "hours": look("Own hours", written("{making}+{markets}", making=making_hours(IN_IT), markets=of_market_days("hours", IN_IT)), "hours", needs=THERE),
            "then": look("Same month last season, before tax, {money}", THEN, "money", needs=THERE, blank_if=(NONE_TYPED,)),
        }),
        "until": look("Until before", NEXT, "date", needs=THERE),
    },
    _rows,
    paper_to="cost",
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    months, days = plan.layouts[KEY], plan.layouts["sold"].results("date")
    first, end = f"MIN({months.results('month')})", f"MAX({months.results('until')})"
    too_early, too_late = f'{days},"<"&{first}', f'{days},">="&{end}'
    mend = "its day is before the first month on Months or after the last: see its date, and the days on Settings"
    outside = f"COUNTIF({too_early})+COUNTIF({too_late})"
    yield WorkbookCheck("Sales and Market lines are of the season's months", SALES.title, outside, mend)
    sold = plan.layouts["sold"]
    beside = "+".join(f"SUMIF({span},{sold.results(OF_SOLD[key])})" for key in MONEY for span in (too_early, too_late))
    yield sums_agree("Months add up to all that was sold", TAB.title, f"{months.sum(*MONEY)}+{beside}", all_sold(plan))


SHOWN = ("month", "pieces", "net", "tax", "fees", "sent", "cost", "left", "hours", "then")
register(TAB, __name__, 80, checks=checks, shown=Shown("months", SHOWN), records=True)
