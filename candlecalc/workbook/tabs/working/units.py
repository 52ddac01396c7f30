"""The Units tab: units that packs are bought in."""

from collections.abc import Mapping

from candlecalc.quantities.units import GRAMS
from candlecalc.season.tables.taken import UNITS
from candlecalc.workbook.cells.layout import FIRST_ROW, Layout
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.writing.draft import Draft, Formula, mark_up

TAB = Tab("Units", "working", "Units that packs are bought in, and how each comes into recipes.")


def layout(rows_of: Mapping[str, int]) -> Layout:
    return Layout("units", "Units", FIRST_ROW + len(UNITS) - 1, {"unit": "A", "grams": "B", "factor": "C"}, "unit")


def write(draft: Draft) -> None:
    sheet = draft.tab(TAB, portrait=True)
    heads = ["Unit", "Grams in one", draft.plan.head("In one, {weight} or each")]
    for number, head in enumerate(heads, start=1):
        draft.put(sheet.cell(FIRST_ROW - 1, number), head, "head", "text" if number == 1 else "row", wrap=True)
    for row, unit in enumerate(UNITS, start=FIRST_ROW):
        draft.put(sheet.cell(row, 1), unit, "label")
        draft.put(sheet.cell(row, 2), GRAMS.get(unit), "result", "factor")
        # A formula, since a saved constant keeps fifteen digits only.
        draft.put(sheet.cell(row, 3), Formula(f'=IF(B{row}="",1,B{row}/weight_g)'), "result", "factor")
    for letter, width in zip("ABC", (35, 16, 18), strict=True):
        sheet.column_dimensions[letter].width = width
    mark_up(sheet, "Units_list", heads, FIRST_ROW + len(UNITS) - 1)
    sheet.print_area = f"A1:H{FIRST_ROW + len(UNITS) - 1}"
    sheet.freeze_panes = f"B{FIRST_ROW}"


register(TAB, __name__, 50, write=write, layout=layout)
