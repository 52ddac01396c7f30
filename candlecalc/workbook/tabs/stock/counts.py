"""The Counts tab: what was counted, what should have been there, and the difference."""

from candlecalc.season.tables.stock import COUNTS
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import (
    KEY_DAY,
    KEY_THING,
    Expression,
    at,
    line_key,
    sum_over,
    while_known,
    written,
)
from candlecalc.workbook.cells.stock_card import last_below, of_same_thing
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.stock.taken_out import ONE_OF_TWO, things
from candlecalc.workbook.tabs.stock.used import BEFORE_COUNTS
from candlecalc.workbook.tabs.working.candles_out import BEFORE_COUNTS as CANDLES_BEFORE
from candlecalc.workbook.tabs.working.recipe_lines import KEY_LINE


def _of_either(material: Expression, product: Expression) -> Expression:
    return written(
        'IF({product}="",{of_material},{of_product})', product="product", of_material=material, of_product=product
    )


HOLDS = written('{kept}="yes"', kept="kept")
THING = _of_either(written("{row}", row="material_row"), written("{row}", row="product_row"))
# Of its list all that stands before it: what is no count, then the counts above that hold.
BEFORE = written(
    "{thing}*{key_thing}+{day}*{key_day}+{lines}-({holds})*1+1.5",
    thing="thing",
    key_thing=KEY_THING,
    day="date",
    key_day=KEY_DAY,
    lines=_of_either(
        *(
            written("{before}+{nth}", before=before, nth=nth)
            for before, nth in ((BEFORE_COUNTS, "nth_material"), (CANDLES_BEFORE, "nth_product"))
        ),
    ),
    holds=HOLDS,
)
NEXT_DAY = written(
    "{thing}*{key_thing}+({day}+1)*{key_day}", thing="thing", key_thing=KEY_THING, day="date", key_day=KEY_DAY
)
CAME, WENT = (
    _of_either(*(of_same_thing(table, place, key) for table in tables))
    for tables, place, key in ((("lots", "made"), "came_line", "came"), (("card", "out_card"), "went_line", "gone"))
)

# What is at a shop is the maker's still, and nobody counts it at home.
AT_SHOPS = written(
    'IF({product}="",0,{there})',
    product="product",
    there=while_known(
        sum_over("sold", "there", [("thing", "product_row"), ("date", written('"<="&{day}', day="date"))]),
        "sold",
        "there",
    ),
)
IS_SET = written('IF({row}="",0,({kind}="set")*1)', row="product_row", kind=at("recipes", "kind", "product_row"))
# What a set holds would else be loose candles again: its candles leave where it is sold or taken out.
SETS_MISSING = Check(
    '(kept="yes")*is_set*(N(difference)<>0)=0',
    "count of sets that does not agree",
    "if their candles are gone too, type both on Taken out, or count the candles as well",
    "counted",
    unlikely=True,
)

TAB = entry_tab(
    COUNTS,
    {
        "should_be": look("Should be, {weight} or each", written("ROUND({came}-{went}-{there},9)", came=CAME, went=WENT, there="at_shops"), "quantity"),
        "difference": look("Difference, {weight} or each", written("ROUND({counted}-{should_be},6)", counted="counted", should_be="should_be"), "quantity"),
        "at_shops": look("At shops then", AT_SHOPS, "pieces"),
        "all_there": look("All there were, {weight} or each", written("{counted}+{there}", counted="counted", there="at_shops"), "quantity"),
        **things("Counts", HOLDS),
        "is_set": look("1: a set", IS_SET, "row", width=8),
        "thing": look("Its row", THING, "row", width=8),
        "came_line": look("Last line of what came by then", _of_either(*(last_below(table, NEXT_DAY) for table in ("lots", "made"))), "row", width=8),
        "went_line": look("Last line of what went by then", _of_either(*(last_below(table, "before") for table in ("card", "out_card"))), "row", width=8),
        "before": look("Number of what went before", BEFORE, "row", width=16),
        "number": look("Line's number", line_key(written("({thing}+({product}<>\"\")*{more})", thing="thing", product="product", more=KEY_LINE), "date"), "row", width=16),
    },
    checks=(ONE_OF_TWO, SETS_MISSING),
    waits={"material": not_ready_there("materials", "material"), "product": not_ready_there("recipes", "product")},
)  # fmt: skip

register(TAB, __name__, 40, records=True)
