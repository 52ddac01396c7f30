"""The Purchases in order tab: each material's purchases by date, with what they add up to and what is left of each."""

from candlecalc.season.tables.stock import PURCHASES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import Named, as_text, at, written
from candlecalc.workbook.cells.stock_card import NUMBERED, came_columns
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import Shown, register

# By the amounts alone, the oldest lot first: a lot that was noted moves no other.
LEFT = written("MAX(0,MIN({amount},ROUND({came}-{gone},9)))", amount="amount", came="came", gone=at("stock", "gone", "thing"))  # fmt: skip
SOON = 60  # days
EXPIRING = written(
    f'({{left}}>0)*({{day}}<>"")*({{day}}<={{today}}+{SOON})*{{left}}', left="left", day=at("purchases", "expiry", "line"), today=Named("as_of")
)  # fmt: skip

TAB = lines_tab(
    "Purchases in order",
    "working",
    "Each material's purchases by date, with what was bought and paid up to each, and what is left of it.",
    "lots",
    PURCHASES,
    {
        **came_columns("purchases", "card", ("amount", "Bought, {weight} or each"), ("landed", "Cost landed, {money}")),
        "left": look("Left of it, {weight} or each", LEFT, "quantity", needs=NUMBERED),
        "unit": look("Cost, {money} per {weight} or each", at("purchases", "unit_cost", "line"), "unit_cost", needs=NUMBERED),
        "material": look("Material", as_text(at("materials", "material", "thing")), needs=NUMBERED, width=30),
        "lot": look("Lot", as_text(at("purchases", "lot", "line")), needs=NUMBERED, width=16),
        "expiring": look("Of that, use by soon", EXPIRING, "quantity", needs=NUMBERED),
    },
)  # fmt: skip

SHOWN = ("material", "lot", "date", "amount", "value", "left", "unit", "expiring")
register(TAB, __name__, 45, shown=Shown("lots", SHOWN), records=True)
