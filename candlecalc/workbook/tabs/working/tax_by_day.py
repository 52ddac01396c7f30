"""The Tax rates in order tab: the rates of each tax area, by the day from which they hold."""

from candlecalc.season.tables.sales import TAX_RATES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import (
    Carry,
    Expression,
    Given,
    Named,
    Whole,
    at,
    in_force,
    in_order,
    line_key,
    while_known,
    written,
)
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import register

KEY = "tax_by_day"
EVERYWHERE_ELSE = written("1")  # rates without an area: the number of no row


def area_of(area: Given) -> Expression:
    """An area by the first row of Tax by day that names it; there as here a line without one is of all others."""
    areas = Whole(TAX_RATES.key, "area")
    return written(
        'IF({area}="",{other},IFERROR(MATCH({area}&"",{areas},0),{other}))',
        area=area,
        areas=areas,
        other=EVERYWHERE_ELSE,
    )


def tax_rate(area: Given, day: Given) -> Expression:
    """The rate of an area on a day: its own, else the one without an area, else what Settings say.

    A row that is not right may be of any area: each rate is an error until it is mended.
    """

    def of(thing: Given) -> Expression:
        return at(TAX_RATES.key, "rate", in_force(KEY, thing, day))

    rate = written(
        "IFERROR({of_area},IFERROR({of_others},{usual}))",
        of_area=of(area),
        of_others=of(EVERYWHERE_ELSE),
        usual=Named("tax_rate"),
    )
    return while_known(rate, TAX_RATES.key, "ready")


TAB = result_tab(
    "Tax rates in order",
    "working",
    "The rates of each tax area, by the day from which each holds.",
    KEY,
    TAX_RATES,
    {
        "area": look("Area, row", area_of(Carry(TAX_RATES.key, "area")), "row", width=8),
        "day_number": look("Row's number", line_key("area", Carry(TAX_RATES.key, "date")), "row", width=16),
        "number": look("The numbers in order", in_order(KEY, "day_number"), "row", needs=(), width=16),
    },
)

register(TAB, __name__, 8, records=True)
