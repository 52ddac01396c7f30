"""The Plan needs tab: what the whole plan takes of each material, what is to come of it, and what is short."""

from candlecalc.season.tables.set_up import MATERIALS
from candlecalc.workbook.cells.columns import look, result
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import (
    Carry,
    Expression,
    Given,
    Results,
    ResultsBlock,
    Same,
    Whole,
    sum_where,
    written,
)
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.extras_by_month import KEY as EXTRAS
from candlecalc.workbook.tabs.working.made_by_month import KEY as MADE
from candlecalc.workbook.tabs.working.made_by_month import UNTIL
from candlecalc.workbook.tabs.working.made_of import PARTS

KEY = "plan_needs"
FIRST, *_, LAST = PARTS
NO_SUPPLIER = 9999  # they come last
PER_SUPPLIER = 10**5  # more than there are materials


def needed(row: Given, until: str) -> Expression:
    """What the plan takes of a material until the end of a month."""
    return written(
        "SUMPRODUCT(({rows}={row})*{amounts}*{made})+SUMIFS({extras},{materials},{row})",
        rows=ResultsBlock("workings", PARTS[FIRST], PARTS[LAST]),
        row=row,
        amounts=ResultsBlock(MADE, FIRST, LAST),
        made=Results(MADE, until),
        extras=Results(EXTRAS, until),
        materials=Results("extras", "material_row"),
    )


# Materials of one supplier stand together, where the first of them stands.
SUPPLIER = Carry("materials", "supplier")
GROUP = written(
    'IF({supplier}="",{last},MATCH({supplier},{suppliers},0))',
    supplier=SUPPLIER,
    last=written(str(NO_SUPPLIER)),
    suppliers=Whole("materials", "supplier"),
)
NUMBER = written(
    'IF({short}>0,{group}*{many}+{row},"")', short="short", group=GROUP, many=written(str(PER_SUPPLIER)), row=OWN_ROW
)

TAB = result_tab(
    "Plan needs",
    "working",
    "What the whole plan takes of each material, what is to come of it, and what is short.",
    KEY,
    MATERIALS,
    {
        "need": look("Needed, {weight} or each", needed(OWN_ROW, UNTIL[-1]), "quantity"),
        "coming": look("On order, {weight} or each", sum_where("on_order", "amount", material_row=OWN_ROW), "quantity"),
        # What is left is not to be less than where the maker orders again.
        "short": result(
            "Short by, {weight} or each",
            "short_by",
            needed=written("{need}+SUM({reorder})", need="need", reorder=Same("materials", "reorder")),
            on_hand=written("({left}+{coming})", left=Same("materials", "stock"), coming="coming"),
            format="quantity",
        ),
        "number": look("Supplier and material, a number", NUMBER, "row", width=12),
    },
)

register(TAB, __name__, 66, records=True)
