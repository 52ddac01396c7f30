"""What was sold, added up alike by month, by place and by product. Each sum is an error while any line sold is one.

The embedded engine's SUMIFS passes over errors, so the sum of the whole column stands beside it, times nothing.
"""

from collections.abc import Mapping, Sequence

from candlecalc.season.tables.sales import MARKET_DAYS
from candlecalc.workbook.cells.columns import Column, look
from candlecalc.workbook.cells.layout import Plan
from candlecalc.workbook.cells.references import (
    Expression,
    Given,
    Results,
    joined,
    sum_over,
    while_known,
    written,
)

# A column of a tab, and what stands in it on the lines that are meant.
Where = Sequence[tuple[str, Given]]
# What of Sold is added up, by the keys of the sums.
OF_SOLD = {"pieces": "pieces", "net": "net", "tax": "tax", "fees": "fee", "sent": "sent", "cost": "cost"}
MONEY = ("net", "tax", "fees", "sent", "cost")
OWN_TIME = "own_time"


def _sold(key: str, where: Where) -> Expression:
    # To six decimals: no crumbs of a sum of decimals where the figures are taken on.
    return written("ROUND({sum},6)", sum=while_known(sum_over("sold", key, where), "sold", key))


def of_market_days(key: str, where: Where) -> Expression:
    """What was typed on Market days; an error while a day there is not right."""
    return while_known(sum_over(MARKET_DAYS.key, key, where), MARKET_DAYS.key, "place_first")


def making_hours(where: Where) -> Expression:
    """Hours of your own in the making of what was sold."""
    minutes = while_known(sum_over(OWN_TIME, "minutes", where, "sold"), OWN_TIME, "minutes")
    return written("({minutes})/60", minutes=minutes)


def sums(where: Where, needs: tuple[Given, ...], left: Mapping[str, Column]) -> dict[str, Column]:
    """The columns that months, places and products have alike; right of the sales what is `left` over, and by the hour."""
    heads = {
        "pieces": ("Pieces sold", "pieces"),
        "net": ("Sales before tax, {money}", "money_strong"),
        "tax": ("Tax on them, {money}", "money"),
        "fees": ("Fees, {money}", "money"),
        "sent": ("Postage and packing, {money}", "money"),
        "cost": ("Cost of candles sold, {money}", "money"),
    }
    found = {key: look(head, _sold(OF_SOLD[key], where), shown, needs=needs) for key, (head, shown) in heads.items()}
    return {"pieces": found["pieces"], "net": found["net"], **left, **found}


def less(first: str, *rest: str) -> Expression:
    """What is left of an own sum when others are taken off."""
    return written("ROUND({sums},6)", sums=joined("-", (first, *rest)))


def an_hour(left: str, needs: tuple[Given, ...]) -> Column:
    """What is left over for an hour of own time; nothing where no time of one's own went into it."""
    no_hours = written("SUM({hours})<=0", hours="hours")
    return look(
        "Left over an hour of own time, {money}",
        written("{left}/{hours}", left=left, hours="hours"),
        "money",
        needs=needs,
        blank_if=(no_hours,),
    )


def by_what_is_left(left: str, row: str, needs: tuple[Given, ...]) -> Column:
    """A number by which what was sold stands in order, most left over first; of two alike the upper one.

    Blank where nothing was sold, nothing came back and nothing was spent.
    """
    something = written("({pieces}<>0)+(ROUND({net},6)<>0)+(ROUND({left},6)<>0)", pieces="pieces", net="net", left=left)
    return look(
        "Its place by what is left",
        written('IF({something}=0,"",ROUND({left},4)-{row}/10^6)', something=something, left=left, row=row),
        "unit_cost",
        needs=needs,
        width=12,
    )


def nth_by_what_is_left(table: str, nth: int) -> tuple[Expression, Expression]:
    """Where in a list the one stands that left the nth most over, and the test that there are not so many."""
    order = Results(table, "order")
    place = written(f"MATCH(LARGE({{order}},{nth}),{{order}},0)", order=order)
    return place, written(f"COUNT({{order}})+0*SUM({{order}})<{nth}", order=order)


def all_sold(plan: Plan) -> str:
    """The money of all lines sold in one number, as a list of sums must come to it."""
    return plan.layouts["sold"].sum(*(OF_SOLD[key] for key in MONEY))
