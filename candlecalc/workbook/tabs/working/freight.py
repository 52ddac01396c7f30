"""The Freight shared tab: how the freight and duty of a document are shared out over its lines, to the coin.

Each line gets the whole coins of its share by value; what is left goes one coin each to the largest rests, the first
of equal ones first. So the parts add up, as `split_charge` has it.
"""

from candlecalc.season.tables.stock import PURCHASES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import (
    Carry,
    CoinDigits,
    Expression,
    Given,
    Same,
    Whole,
    alike,
    joined,
    written,
)
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import register

LOG, KEY = PURCHASES.key, "freight"
DOCUMENT = Carry(LOG, "document")
ALIKE, SUPPLIER, SUPPLIERS = alike(LOG, "document"), Carry(LOG, "supplier"), Whole(LOG, "supplier")
# A line whose supplier was left out is of the document that its others are of.
OF_ONE = written('(({all}={own})+({all}="")+({own}="")>0)', all=SUPPLIERS, own=SUPPLIER)
TOGETHER = joined("*", [ALIKE, OF_ONE])


def _of_document(one: Given, all_lines: Expression) -> Expression:
    """What the lines of one document hold together; a line without a document is one by itself."""
    return written(
        'IF({document}="",SUM({one}),SUMPRODUCT({together}*1,{all_lines}))',
        document=DOCUMENT,
        one=one,
        together=TOGETHER,
        all_lines=all_lines,
    )


CHARGES = _of_document(Carry(LOG, "charges"), Whole(LOG, "charges"))
BEFORE_IT = written(
    'IF({document}="",0,SUMPRODUCT({together}*(({rests}>{rest})+({rests}={rest})*({rows}<{row}))*({rests}<>"")))',
    document=DOCUMENT,
    together=TOGETHER,
    rest="rest",
    rests=Whole(KEY, "rest"),
    rows=Whole(KEY, OWN_ROW),
    row=OWN_ROW,
)
SHARE = written(
    "({whole}+({before}<{coins}-{given})*1)/10^{digits}",
    whole="whole",
    before="before",
    coins="coins",
    given="given",
    digits=CoinDigits(),
)

TAB = result_tab(
    "Freight shared",
    "working",
    "How the freight and duty of a document are shared out over its lines, to the coin.",
    KEY,
    PURCHASES,
    {
        "goods": look("Goods, {money}", Same(LOG, "goods"), "money"),
        "goods_of_document": look("Goods of the document, {money}", _of_document("goods", Whole(KEY, "goods")), "money"),
        "coins": look("Freight and duty of the document, in coins", written("ROUND({charges}*10^{digits},0)", charges=CHARGES, digits=CoinDigits()), "count"),
        "exact": look("This line's share, in coins", written("IF({all}=0,0,{coins}*{goods}/{all})", all="goods_of_document", coins="coins", goods="goods"), "quantity"),
        "whole": look("Whole coins", written("INT(ROUND({exact},6))", exact="exact"), "count"),
        "rest": look("Rest", written("ROUND({exact}-{whole},6)", exact="exact", whole="whole"), "quantity"),
        "before": look("Lines before it for a coin", BEFORE_IT, "count"),
        "given": look("Whole coins of the document", _of_document("whole", Whole(KEY, "whole")), "count"),
        "share": look("Freight and duty, {money}, of this line", SHARE, "money"),
    },
)  # fmt: skip

register(TAB, __name__, 43, records=True)
