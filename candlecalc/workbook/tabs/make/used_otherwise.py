"""The Used otherwise tab: where a batch took something else than its recipe, or an amount that was weighed."""

from candlecalc.season.tables.stock import INSTEAD
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import Named, Results, Whole, row_in, written
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.recipe_lines import KEY_LINE

LOT_ROW = written(
    'IF({lot}="","",MATCH({used}&"|"&{lot},{lots},0))', lot="lot", used="used_row", lots=Whole("purchases", "lot_name")
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
        "lines": look("Lines on Used", LINES, "row", width=8),
    },
    checks=(
        Check("lines>0", "material that the batch does not take", "see the number on the Batch log, and the batch's recipe", "material"),
        Check('(other<>"")+(N(amount)>0)+(lot<>"")>0', "line in which nothing is otherwise", "type what was used, how much, or which lot", "other"),
    ),
)  # fmt: skip

register(TAB, __name__, 40, records=True)
