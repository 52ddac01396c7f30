"""The Used otherwise tab: where a batch took something else than its recipe, or an amount that was weighed."""

from candlecalc.season.tables.stock import INSTEAD
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import calculated, look
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import Named, Results, Whole, at, row_in, written
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.recipe_lines import KEY_LINE

LOT_ROW = written(
    'IF({lot}="","",MATCH({used}&"|"&{lot},{lots},0))', lot="lot", used="used_row", lots=Whole("purchases", "lot_name")
)
# What stands in may take less than the recipe has. A wax by its own highest load; an oil as if it were all of the oil.
POUR = written("MATCH({batch},{batches},0)", batch="batch", batches=Whole("pours", "batch"))
OIL_LIMIT = calculated(
    "load_at_limit",
    limit=written(
        "MIN({supplier},{certified})",
        supplier=at("materials", "share_limit", "used_row"),
        certified=at("materials", "candle_limit", "used_row"),
    ),
)
KIND = at("materials", "kind", "used_row")
TAKES = written(
    'IF({kind}="wax",{wax},IF({kind}="fragrance oil",{oil},""))',
    kind=KIND,
    wax=at("materials", "load_limit", "used_row"),
    oil=OIL_LIMIT,
)

# Where Used cannot be made, for a batch that is to mend, no row here is to blame.
LINES = written("COUNTIF({changes},{row})+0*{all}", changes=Results("used", "otherwise"), row=OWN_ROW, all=Named("used_lines"))  # fmt: skip
TAB = entry_tab(
    INSTEAD,
    {
        "material_row": look("Material, row", row_in("materials", "material", ready=False), "row", width=8),
        "used_row": look("What was used, row", row_in("materials", written('IF({other}="",{material},{other})', other="other", material="material"), ready=False), "row", width=8),
        "number": look("Batch and material, a number", written("{batch}*{key}+{material}", batch="batch", key=KEY_LINE, material="material_row"), "row", width=14),
        "lot_row": look("Lot, row on Purchases", LOT_ROW, "row", width=9),
        "load": look("Load of the recipe, of wax", at("workings", "load", at("pours", "recipe", POUR)), "percent"),
        "takes": look("What stands in takes, of wax", TAKES, "percent", needs=("ready", "other")),
        "lines": look("Lines on Used", LINES, "row", width=8),
    },
    checks=(
        Check("lines>0", "material that the batch does not take", "see the number on the Batch log, and the batch's recipe", "material"),
        Check('(N(takes)=0)+(ROUND(N(load)-N(takes),6)<=0)>0', "stand-in that takes a lower load", "see its highest load on Materials, and its data sheet", "other",
              told="What stands in takes {takes} %, and the batch has {load} %"),
        Check('(other<>"")+(N(amount)>0)+(lot<>"")>0', "line in which nothing is otherwise", "type what was used, how much, or which lot", "other"),
    ),
)  # fmt: skip

register(TAB, __name__, 40, records=True)
