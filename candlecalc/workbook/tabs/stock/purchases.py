"""The Purchases tab: what was bought, and what each line cost with its share of freight and duty."""

from collections.abc import Iterable

from candlecalc.season.tables.stock import PURCHASES
from candlecalc.workbook.cells.checks import Check, WorkbookCheck, sums_agree
from candlecalc.workbook.cells.columns import calculated, look, result
from candlecalc.workbook.cells.layout import Plan
from candlecalc.workbook.cells.references import CoinDigits, Same, Whole, alike, at, line_key, row_in, written
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there
from candlecalc.workbook.tabs.registry import Shown, register

# Of opening stock the price is of all of it.
GOODS = written(
    'ROUND(IF({kind}="",{bought},{price}),{digits})',
    kind="kind",
    price="price",
    bought=calculated("cost_of_all", cost="price", count="packs"),
    digits=CoinDigits(),
)

# A line without a supplier is of the document that its others are of (tabs/working/freight.py). Where two suppliers
# have documents of that number, nobody can say of which.
OF_EITHER = written(
    'IF(({document}="")+({own}="")>0,0,'
    'SUMPRODUCT({alike}*({suppliers}=""))*SUMPRODUCT({alike}*({suppliers}<>{own})*({suppliers}<>"")))',
    document="document",
    own="supplier",
    suppliers=Whole(PURCHASES.key, "supplier"),
    alike=alike(PURCHASES.key, "document"),
)

TAB = entry_tab(
    PURCHASES,
    {
        "landed": result("Cost landed, {money}", "landed_cost", price="goods", returned="discount", shipping=Same("freight", "share"), tax="tax", format="money_strong"),
        "unit_cost": result("Cost, {money} per {weight} or each", "unit_cost", price="landed", size="amount"),
        "amount": result("Bought, {weight} or each", "pieces_for", each=at("materials", "size", "material_row"), count="packs", format="quantity"),
        "goods": look("Goods, {money}", GOODS, "money"),
        "material_row": look("Material, row", row_in("materials", "material", ready=False), "row", width=8),
        "number": look("Line's number", line_key("material_row", "date"), "row", width=16),
        "opened_number": look("Number by the day it was opened", line_key("material_row", "opened"), "row", needs=("ready", "opened"), width=16),
        "of_either": look("Lines of its document that may be of another supplier", OF_EITHER, "row", width=10),
        "lot_name": look("Material and lot", written('{material}&"|"&{lot}', material="material_row", lot="lot"), needs=("ready", "lot"), width=16),
    },
    checks=(
        Check(
            "N(of_either)=0",
            "document number of two suppliers, with a line that names neither",
            "type the supplier on each line of that document",
            "supplier",
            sums=True,
        ),
    ),
    waits={"material": not_ready_there("materials", "material")},
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    charges = f"SUM({plan.layouts['purchases'].range('charges')})"
    shared = plan.layouts["freight"].sum("share")
    yield sums_agree("Freight and duty are shared out whole", TAB.title, shared, charges)


SHOWN = ("date", "document", "material", "packs", "amount", "landed", "unit_cost", "lot")
register(TAB, __name__, 10, checks=checks, shown=Shown("purchases", SHOWN), records=True)
