"""The Evenings by day tab: each day of the plan, how many pots can be poured on it, and up to it.

A day that stands on Evenings by itself goes before its day of the week. The day of a row is the plan's first and as many
more as rows stand above it.
"""

from candlecalc.season.tables.plan import EVENINGS
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import Above, Expression, Given, Named, Results, Whole, written
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register

KEY = "evenings_by_day"
DAYS = 53 * 7  # a year and some days: as far as a plan reaches
FIRST_DAY = Named("plan_from")
DAY = written("({today}+{row}-2)", today=FIRST_DAY, row=OWN_ROW)
ALONE = written("COUNTIF({days},{day})", days=Whole(EVENINGS.key, "date"), day=DAY)
POTS = written(
    "IF({alone}>0,SUMIFS({pots},{days},{day}),SUMIFS({pots},{weekdays},WEEKDAY({day},2)))",
    alone=ALONE,
    pots=Whole(EVENINGS.key, "pots"),
    days=Whole(EVENINGS.key, "date"),
    day=DAY,
    weekdays=Whole(EVENINGS.key, "weekday_number"),
)

TAB = lines_tab(
    "Evenings by day",
    "working",
    "Each day from the one on which Plan begins: pots that can be poured on it, and up to it.",
    KEY,
    EVENINGS,
    {
        "pots": look("Pots that day", POTS, "row", needs=(), width=8),
        "pots_by": look("Pots up to that day", written("{above}+{pots}", above=Above("pots_by"), pots="pots"), "row", needs=(), width=8),
        "evenings_by": look("Evenings up to that day", written("{above}+({pots}>0)", above=Above("evenings_by"), pots="pots"), "row", needs=(), width=9),
    },
    lambda rows_of: DAYS,
)  # fmt: skip

register(TAB, __name__, 60, records=True)

POTS_BY, EVENINGS_BY = (Results(KEY, key) for key in ("pots_by", "evenings_by"))


def up_to(column: Expression, day: Given) -> Expression:
    """How many there are up to a day; none before the plan begins."""
    return written(
        "IF({day}<{today},0,INDEX({column},MIN({day}-{today}+1,ROWS({column}))))",
        day=day,
        column=column,
        today=FIRST_DAY,
    )


def day_of(column: Expression, nth: Given) -> Expression:
    """The day of the nth pot or evening from the plan's first day on; blank where there are not so many."""
    return written(
        'IF(MAX({column})<{nth},"",{today}+COUNTIF({column},"<"&{nth}))', column=column, nth=nth, today=FIRST_DAY
    )
