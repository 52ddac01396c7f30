"""The Counts tab: what was counted, what should have been there, and the difference."""

from candlecalc.season.tables.stock import COUNTS
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import Expression, Named, Results, at_row, line_key, written
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.stock.taken_out import ONE_OF_TWO, things
from candlecalc.workbook.tabs.stock.used import MOVED, POURED
from candlecalc.workbook.tabs.working.recipe_lines import KEY_LINE


def _should_be(went: str) -> Expression:
    """What came by that day, less what had gone before the count."""
    place = "place"
    of_it = written("{there}={thing}", there=at_row(went, "thing", written("MAX(1,{place}-1)", place=place)), thing=at_row(went, "thing", place))  # fmt: skip
    gone = written("IF({place}=1,0,IF({of_it},{gone},0))", place=place, of_it=of_it, gone=at_row(went, "gone", written("MAX(1,{place}-1)", place=place)))  # fmt: skip
    return written("ROUND({came}-{gone},9)", came=at_row(went, "came", place), gone=gone)


def _place(log: str, went: str, before: Expression, nth: str) -> Expression:
    """Where the line of this count stands in the list in order. `before` is how many lines of its list come first."""
    line = written("({before}+{nth})", before=before, nth=nth)
    return written("MATCH({number},{numbers},1)", number=at_row(log, "number", line), numbers=Results(went, "number"))


IS_MATERIAL = written('{product}=""', product="product")
TAB = entry_tab(
    COUNTS,
    {
        "should_be": look("Should be, {weight} or each", written("IF({is_material},{material},{product})", is_material=IS_MATERIAL, material=_should_be("card"), product=_should_be("out_card")), "quantity"),
        "difference": look("Difference, {weight} or each", written("ROUND({counted}-{should_be},6)", counted="counted", should_be="should_be"), "quantity"),
        "place": look("Its line in order", written("IF({is_material},{material},{product})", is_material=IS_MATERIAL, material=_place("used", "card", written("{poured}+{moved}", poured=POURED, moved=MOVED), "nth_material"), product=_place("out", "out_card", Named("product_moves"), "nth_product")), "row", width=9),
        **things("Counts"),
        "number": look("Line's number", line_key(written("IF({is_material},{material},{more}+{product})", is_material=IS_MATERIAL, material="material_row", more=KEY_LINE, product="product_row"), "date"), "row", width=16),
    },
    checks=(ONE_OF_TWO,),
    waits={"material": not_ready_there("materials", "material"), "product": not_ready_there("recipes", "product")},
)  # fmt: skip

register(TAB, __name__, 40, records=True)
