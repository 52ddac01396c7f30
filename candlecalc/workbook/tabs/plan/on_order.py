"""The On order tab: what was ordered and is still to come."""

from candlecalc.season.tables.plan import ON_ORDER
from candlecalc.workbook.cells.columns import look, result
from candlecalc.workbook.cells.references import at, row_in
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there
from candlecalc.workbook.tabs.registry import register

TAB = entry_tab(
    ON_ORDER,
    {
        "material_row": look("Material, row", row_in("materials", "material", ready=False), "row", width=8),
        "amount": result("To come, {weight} or each", "pieces_for", each=at("materials", "size", "material_row"), count="packs", format="quantity"),
    },
    waits={"material": not_ready_there("materials", "material")},
)  # fmt: skip

register(TAB, __name__, 40, records=True)
