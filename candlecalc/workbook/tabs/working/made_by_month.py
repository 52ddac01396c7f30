"""The Made by month tab: of each recipe what Plan makes until the end of each month, and what one piece takes.

The last column is of the whole plan. A set counts where it is to be packed.
"""

from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.columns import Column, look
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import Expression, Named, Results, Same, Whole, joined, written
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.made_of import HEADS, PARTS

KEY = "made_by_month"
MONTHS = 6  # what is poured later counts with the last
UNTIL = tuple(f"until_{nth}" for nth in range(1, MONTHS + 1))


def month_begins(nth: int) -> Expression:
    """The first day of the plan's first month, or of one after it."""
    return written(f"DATE(YEAR({{day}}),MONTH({{day}})+{nth},1)", day=Named("plan_from"))


def before_end(days: Expression, nth: int) -> Expression:
    """What a sum by criteria asks of the days until the end of a month; nothing of the whole plan."""
    if nth == MONTHS:
        return written("")
    return written(',{days},"<"&{end}', days=days, end=month_begins(nth))


def _until(nth: int) -> Column:
    poured, packed = (
        written(
            "SUMIFS({pieces},{recipes},{row}{in_time})",
            pieces=pieces,
            recipes=recipes,
            row=OWN_ROW,
            in_time=before_end(days, nth),
        )
        for pieces, recipes, days in (
            [Results("plan", key) for key in ("make", "recipe", "begin")],
            [Whole("demand", key) for key in ("pack", "recipe", "day")],
        )
    )
    # A sum by criteria passes over errors, in some programs.
    errors = joined("+", [written("SUM({all})", all=Results(*of)) for of in (("plan", "make"), ("demand", "pack"))])
    head = "Made in the whole plan" if nth == MONTHS else f"Made until the end of month {nth}"
    whole = written("{poured}+{packed}+0*({errors})", poured=poured, packed=packed, errors=errors)
    return look(head, whole, "row", needs=(), width=9)


TAB = lines_tab(
    "Made by month",
    "working",
    "What Plan makes of each recipe until the end of each month, and what one piece takes.",
    KEY,
    RECIPES,
    {
        **{key: _until(nth) for nth, key in enumerate(UNTIL, start=1)},
        **{part: look(f"{HEADS[part]}, {{weight}} or each", written("SUM({amount})", amount=Same("amounts", part)), "quantity", needs=()) for part in PARTS},
    },
)  # fmt: skip

register(TAB, __name__, 64, records=True)
