"""Each sum of the journal beside the tab that has it, too."""

from collections.abc import Iterable, Sequence

from candlecalc.books.checking import Tie
from candlecalc.books.journal import Event, sums
from candlecalc.books.reading import Reading
from candlecalc.season import chart


def ties(read: Reading, events: Sequence[Event]) -> list[Tie]:
    """What all of a workbook's events come to, beside its tabs."""
    found, of_sold = sums(events), sums(event for event in events if event.tab == "Sold")
    if read.by_cash:
        return [
            _of_tab("Tax to claim back", "Expenses", events, chart.TAX_BACK, _typed(read, "expenses", "tax", paid=True))
        ]
    return [
        Tie("Materials in stock", found.get(chart.MATERIALS, 0), "Stock", read.sum("stock", "value")),
        Tie("Candles in stock", found.get(chart.CANDLES, 0), "Candles", read.sum("candles", "value")),
        Tie("Work in hand", found.get(chart.WORK, 0), "Batch log", 0),
        _of_tab("Materials bought", "Purchases", events, chart.MATERIALS, read.sum("purchases", "landed")),
        Tie("Sales before tax", -of_sold.get(chart.SALES, 0), "Sold", read.sum("sold", "net")),
        Tie("Selling fees", of_sold.get(chart.FEES, 0), "Sold", read.sum("sold", "fee")),
        Tie("Owed by buyers", of_sold.get(chart.OWED_TO_YOU, 0), "Sales", read.sum("sales", "owed")),
        Tie("Cost of candles sold", _sold_at_cost(events), "Sold", read.sum("sold", "cost")),
        _of_tab("Tax to claim back", "Expenses", events, chart.TAX_BACK, _typed(read, "expenses", "tax")),
    ]  # fmt: skip


def _of_tab(what: str, tab: str, events: Iterable[Event], account: str, there: int) -> Tie:
    return Tie(what, sums(event for event in events if event.tab == tab).get(account, 0), tab, there)


def _sold_at_cost(events: Iterable[Event]) -> int:
    return sums(event for event in events if event.reference.startswith("COST ")).get(chart.COST_SOLD, 0)


def _typed(read: Reading, table: str, key: str, *, paid: bool = False) -> int:
    return sum(read.typed_coins(line, key) for line in read.rows(table) if not paid or line.typed["paid_on"])
