"""What the sales of a season came to, by its tab Sold: a line for each of Sales, and below them of Market lines."""

import datetime
from collections import defaultdict
from collections.abc import Iterator
from typing import Any

from candlecalc.quantities.rounding import round_half_away
from candlecalc.season.season import Row
from candlecalc.season.tables.carried import LAST_SOLD
from candlecalc.season.tables.sales import MARKET_LINES, SALES
from candlecalc.workbook.reports.report import Calculated

SOLD = "sold"
MONTHLY = ("pieces", "net", "cost")


def comes_in(calculated: Calculated) -> dict[int, float]:
    """What comes in of each line of Sales, by its place there."""
    return {place: calculated.value(SOLD, "comes_in", place) for place, _ in calculated.season.rows(SALES.key)}


def by_month(calculated: Calculated) -> list[Row]:
    """What was sold of each product by place and month, less what came back: pieces, before tax, and their cost."""
    sums: defaultdict[tuple[datetime.date, str, str], dict[str, float]] = defaultdict(
        lambda: dict.fromkeys(MONTHLY, 0.0)
    )
    for line in _lines(calculated):
        if line["product"]:
            month = sums[line["date"].replace(day=1), line["product"], line["place"]]
            for key in MONTHLY:
                month[key] = round_half_away(month[key] + line[key], calculated.plan.coin_digits)
    return [
        dict.fromkeys(LAST_SOLD.keys) | {"month": month, "product": product, "place": place} | of_month
        for (month, product, place), of_month in sorted(sums.items())
        if any(of_month.values())
    ]


def of_no_product(calculated: Calculated) -> float:
    """What sales of no product came to before tax: money that was paid back."""
    return round_half_away(
        sum(line["net"] for line in _lines(calculated) if not line["product"]), calculated.plan.coin_digits
    )


def not_known(calculated: Calculated) -> Iterator[tuple[str, int]]:
    """Lines of which it cannot be told what they came to: their table, and their place there."""
    below = calculated.room(SALES.key)
    for table, first in ((SALES.key, 0), (MARKET_LINES.key, below)):
        for place, _ in calculated.season.rows(table):
            values = [calculated.value(SOLD, key, first + place) for key in ("net", "cost", "comes_in")]
            if not all(isinstance(value, (int, float)) for value in values):
                yield table, place


def _lines(calculated: Calculated) -> Iterator[dict[str, Any]]:
    for row in range(calculated.room(SOLD)):
        if isinstance(calculated.value(SOLD, "what", row), (int, float)):
            yield {key: calculated.value(SOLD, key, row) for key in ("date", "place", "product", *MONTHLY)}
