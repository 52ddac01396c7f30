"""The Weeks ahead tab: stock of one candle against what is wanted of it, week by week; and the cash that buying takes."""

from collections.abc import Iterable, Mapping

from candlecalc.season.fields import Field
from candlecalc.season.season import Season
from candlecalc.workbook.cells.checks import WorkbookCheck, sums_agree
from candlecalc.workbook.cells.layout import Plan
from candlecalc.workbook.cells.references import Expression, Named, Results, Whole, at, joined, while_known, written
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.plan.plan import KEY as PLAN
from candlecalc.workbook.tabs.plan.to_buy import KEY as TO_BUY
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.test.pick import PICK, picked
from candlecalc.workbook.tabs.working.made_by_month import MONTHS, month_begins
from candlecalc.workbook.tabs.working.plan_lines import KEY as LINES
from candlecalc.workbook.writing import chart
from candlecalc.workbook.writing.draft import Draft
from candlecalc.workbook.writing.page import Page, cell, made_of
from candlecalc.workbook.writing.printed import paper

TAB = Tab(
    "Weeks ahead", "output", "One candle's stock against what is wanted of it by week, and the cash that buying takes."
)
CANDLE = Field("plan_product", "Candle", "a candle from Recipes", names_from="recipes", kind="made")
THING, FIRST_DAY = Named("plan_product"), Named("plan_from")
UNPICKED = written("N({row})=0", row=THING)

# Rows: the weeks, with the chart beside them and cash by month under it.
HEADS, WEEKS = PICK + 2, 26
CASH = HEADS + 20
WIDTHS = (28, 11, 11, 11, 3, 24, 13, 13, 13, 13)
TOLD = (
    "What is wanted of a month is taken to sell evenly over its days.",
    "What sets take leaves on the day by which they are packed.",
)


def write(draft: Draft) -> None:
    page = Page(draft, TAB, draft.tab(TAB, portrait=False, master="F2"), "ABCDEFGHIJ")
    page.widths(WIDTHS)
    picked(page, CANDLE, _first(draft.season), "plan_product")
    _weeks(page)
    _cash(page)
    last = max(HEADS + 1 + WEEKS, CASH + MONTHS + 1 + len(TOLD))
    page.sheet.print_area = f"A1:J{last}"
    paper(page.sheet, str(draft.season.settings["paper"]), portrait=False, tall=1)


def _first(season: Season) -> object:
    """What the page opens with: the first candle that is wanted, else the first there is."""
    made = [row["product"] for _, row in season.rows("recipes") if row["kind"] == "made"]
    wanted = [row["product"] for _, row in season.rows("demand") if row["product"] in made]
    return next(iter([*wanted, *made]), None)


def _wanted_before(day: Expression) -> Expression:
    """What is wanted of the candle before a day."""
    lines = {key: Results(LINES, key) for key in ("thing", "pieces", "due", "until", "a_day")}
    gone = written('SUMIFS({pieces},{thing},{row},{until},"<="&{day})', row=THING, day=day, **_only(lines, "pieces", "thing", "until"))  # fmt: skip
    begun = written("({thing}={row})*({due}<{day})*({until}>{day})", row=THING, day=day, **_only(lines, "thing", "due", "until"))  # fmt: skip
    return written(
        "{gone}+{day}*SUMPRODUCT({begun},{a_day})-SUMPRODUCT({begun},{a_day},{due})",
        gone=gone,
        begun=begun,
        day=day,
        **_only(lines, "a_day", "due"),
    )


def _only(lines: Mapping[str, Expression], *keys: str) -> dict[str, Expression]:
    return {key: lines[key] for key in keys}


def _comes(begins: Expression, ends: Expression) -> Expression:
    """What has cured in a week: of batches that stand now, and of those that Plan makes."""
    sources = (
        (Whole("pours", "good"), Whole("pours", "product_row"), Whole("pours", "ready_on")),
        (Results(PLAN, "make"), Results(PLAN, "thing"), Results(PLAN, "ready_on")),
    )
    return joined(
        "+",
        [
            written('SUMIFS({pieces},{things},{row},{days},">="&{begins},{days},"<"&{ends})',
                    pieces=pieces, things=things, row=THING, days=days, begins=begins, ends=ends)
            for pieces, things, days in sources
        ],
    )  # fmt: skip


def _weeks(page: Page) -> None:
    """Each week: what is wanted, what has cured, and what is left at its end; below nothing where there is too little."""
    page.section(HEADS, ["Week from", "wanted", "cured", "left"], tall=False)
    page.put(f"A{HEADS + 1}", "ready to sell now")
    page.shows(f"D{HEADS + 1}", at("candles", "ready_now", THING), "strong_result", "pieces", blank_if=[UNPICKED])
    for week in range(WEEKS):
        row = HEADS + 2 + week
        begins, ends = cell(f"$A{row}"), cell(f"($A{row}+7)")
        page.shows(f"A{row}", written(f"{{day}}+{7 * week}", day=FIRST_DAY), "result", "date")
        wanted = made_of("ROUND({after}-({before}),6)", after=_wanted_before(ends), before=_wanted_before(begins))
        page.shows(f"B{row}", wanted, "result", "pieces", blank_if=[UNPICKED])
        page.shows(f"C{row}", _comes(begins, ends), "result", "pieces", blank_if=[UNPICKED])
        left = made_of("{above}+{cured}-{wanted}", above=f"D{row - 1}", cured=f"C{row}", wanted=f"B{row}")
        page.shows(f"D{row}", left, "strong_result", "pieces", blank_if=[UNPICKED])
    rows = HEADS + 2, HEADS + 1 + WEEKS
    chart.over_weeks(page.draft, page.sheet, f"F{HEADS}", "ABD", rows)


def _cash(page: Page) -> None:
    """Of each month what is to be paid: for what is to be ordered in it, and for what comes that was ordered."""
    for letter, head in zip("FGHI", ("Cash for materials, from", "to order", "on its way", "in all"), strict=True):
        page.put(f"{letter}{CASH}", head, "section", "text" if letter == "F" else "row")
    first, last = CASH + 1, CASH + MONTHS
    for nth in range(MONTHS):
        row = first + nth
        page.shows(f"F{row}", month_begins(nth) if nth else FIRST_DAY, "result", "date")
        begins = f'">="&$F{row}' if nth else ""
        ends = f'"<"&$F{row + 1}' if nth < MONTHS - 1 else ""
        page.shows(
            f"G{row}", _paid(Results(TO_BUY, "cost"), Results(TO_BUY, "order_by"), begins, ends), "result", "money"
        )
        # An error on a line there must be one here.
        way = _paid(Whole("on_order", "to_pay"), Whole("on_order", "due"), begins, ends)
        page.shows(f"H{row}", while_known(way, "on_order", "amount"), "result", "money")
        page.shows(f"I{row}", made_of("SUM({both})", both=cell(f"G{row}:H{row}")), "strong_result", "money")
    page.put(f"F{last + 1}", "all of it", "strong")
    for letter in "GHI":
        page.shows(f"{letter}{last + 1}", made_of("SUM({all})", all=cell(f"{letter}{first}:{letter}{last}")), "strong_result", "money")  # fmt: skip
    for step, words in enumerate(TOLD, start=last + 2):
        page.put(f"F{step}", words, "note")


def _paid(money: Expression, days: Expression, begins: str, ends: str) -> Expression:
    """What falls due from a day on, before another; what should have been ordered by now is ordered at once."""
    tests = joined(",", [part for test in (begins, ends) if test for part in (days, cell(test))])
    return written("SUMIFS({money},{tests})", money=money, tests=tests)


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    total = f"'{TAB.title}'!$G${CASH + MONTHS + 1}"
    yield sums_agree(
        "Cash to order by month is what To buy comes to", TAB.title, total, plan.layouts[TO_BUY].sum("cost")
    )


register(TAB, __name__, 70, write=write, checks=checks, records=True)
