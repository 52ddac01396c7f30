"""The Rates by day tab: what an hour costs from a day on."""

from candlecalc.season.tables.stock import RATES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import Expression, Given, Named, Results, Whole, at, expression_of, written
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

DAYS = Whole(RATES.key, "date")


def rates_of(day: Given) -> Expression:
    """The row of the rates that hold on a day: of those from that day or an earlier one the latest; blank before.

    An error where a row has something wrong with it: whatever its date should be, it may be the one that holds.
    """
    return written(
        'IF(COUNTIFS({days},"<="&{day})+0*SUM({ready})=0,"",MATCH(LARGE({days},COUNTIFS({days},">"&{day})+1),{days},0))',
        days=DAYS, day=day, ready=Results(RATES.key, "ready"),
    )  # fmt: skip


def rate(key: str, first: str, row: Given) -> Expression:
    """What an hour costs by a row of the rates, or by Settings where there is none."""
    return written('IF({row}="",{first},{rate})', row=row, first=Named(first), rate=at(RATES.key, f"{key}_used", row))


register(
    entry_tab(
        RATES,
        {
            "paid_rate_used": look("Paid help used, {money} an hour", expression_of("paid_rate"), "money"),
            "overhead_used": look("Overhead used, {money} an hour", expression_of("overhead"), "money"),
        },
    ),
    __name__,
    50,
    records=True,
)
