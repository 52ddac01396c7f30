"""The Batches in order tab: the batches of each product by day, with what was made up to each and what it cost."""

from candlecalc.season.tables.stock import POURS
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import Named, at, written
from candlecalc.workbook.cells.stock_card import NUMBERED, came_columns
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register

CURING = written("({ready}>{today})*{amount}", ready=at("pours", "ready_on", "line"), today=Named("as_of"), amount="amount")  # fmt: skip

TAB = lines_tab(
    "Batches in order",
    "working",
    "The batches of each product by day, with what was made up to each and what it cost.",
    "made",
    POURS,
    {
        **came_columns("pours", "out_card", ("good", "Good ones"), ("value", "Their value, {money}")),
        "curing": look("Not cured yet", CURING, "quantity", needs=NUMBERED),
    },
)

register(TAB, __name__, 48, records=True)
