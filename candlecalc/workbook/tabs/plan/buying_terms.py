"""The Buying terms tab: how long a material takes to come, and from how many packs on it is cheaper."""

from candlecalc.season.tables.plan import BUYING_TERMS
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import at, row_in
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there
from candlecalc.workbook.tabs.registry import register

TAB = entry_tab(
    BUYING_TERMS,
    {
        "material_row": look("Material, row", row_in("materials", "material", ready=False), "row", width=8),
        "price": look("Pack price today, {money}", at("materials", "pack_price", "material_row"), "money"),
    },
    checks=(
        Check('(first="")+(N(first_price)<=N(price))>0', "dearer by the pack in a larger order", "see the price of a pack here and on Materials", "first_price"),
        Check('(second="")+(N(second_price)<=N(first_price))*(N(second)>N(first))*(N(first)>0)>0', "second break at odds with the first", "the second begins at more packs and is no dearer; where there is one break, it is the first", "second"),
    ),
    waits={"material": not_ready_there("materials", "material")},
)  # fmt: skip

register(TAB, __name__, 30, records=True)
