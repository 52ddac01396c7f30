"""The Candles tab: of each product what was made, what left, what is curing and what can be sold."""

from collections.abc import Iterable

from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.checks import Check, WorkbookCheck, sums_agree
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import OWN_ROW, Plan
from candlecalc.workbook.cells.references import (
    KEY_THING,
    Same,
    in_coins,
    sum_where,
    while_known,
    worked_out_coins,
    written,
)
from candlecalc.workbook.cells.stock_card import last_below
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import Shown, register
from candlecalc.workbook.tabs.stock.stock import NUMBER, last_count, of_last
from candlecalc.workbook.tabs.working.prices_by_day import least_brought
from candlecalc.workbook.tabs.working.recipe_lines import KEY_LINE

COUNT_NUMBER = written("({more}+{thing}+1)*{key}", more=KEY_LINE, thing=OWN_ROW, key=KEY_THING)
# Cost, or what all of them will bring where that is less.
LOWER = written('IF({each}="",{value},MIN({value},{brings}))', each="brings", value="value", brings=worked_out_coins(written("{each}*{left}", each="brings", left="left")))  # fmt: skip
# A product has one line, that of its first row on Recipes.
FIRST = ("first",)
# An error while any line sold is one: what is left would be, too.
EARLY = while_known(sum_where("out_card", "early", thing=OWN_ROW), "out_card", "early")
UNPACKED = while_known(sum_where("unpacked", "pieces", thing=OWN_ROW), "unpacked", "pieces")
AT_SHOPS = while_known(sum_where("sold", "there", thing=OWN_ROW), "sold", "there")

CHECKS = (
    Check(
        '(first="")+(N(early)=0)>0',
        "sold before they were cured",
        "see the days of its batches and of its sales",
        "product",
        unlikely=True,
    ),
    Check(
        '(first="")+(N(left)>=0)>0',
        "more gone than were made",
        "type the batch that is missing, or count them",
        "product",
    ),
    Check(
        '(first="")+(N(loose)>=0)>0',
        "more in packed sets than there are",
        "see the batches of the sets, or count them",
        "product",
    ),
)

TAB = result_tab(
    "Candles",
    "output",
    "What you made of each product, what is gone, what is curing, what can be sold, and what all of it is worth.",
    "candles",
    RECIPES,
    {
        "ready_now": look("Ready to sell", written("MAX(0,{loose}-{there}-{curing})", loose="loose", there="there", curing="curing"), "pieces", needs=FIRST),
        "curing": look("Curing", written("MAX(0,MIN({loose}-{there},{curing}))", loose="loose", there="there", curing=sum_where("made", "curing", thing=OWN_ROW)), "pieces", needs=FIRST),
        "in_sets": look("In packed sets", sum_where("sets", "packed", product_row=OWN_ROW), "pieces", needs=FIRST),
        "there": look("At shops", AT_SHOPS, "pieces", needs=FIRST),
        "left": look("All there are", written("ROUND({made}-{gone},6)", made="made", gone="gone"), "pieces", needs=FIRST),
        "value": look("Value, {money}", in_coins(written("{worth}-{spent}", worth="worth", spent="spent")), "money_strong", needs=FIRST),
        "made": look("Made", of_last("made", "came", "last"), "pieces", needs=FIRST),
        "unpacked": look("Gone without packing", UNPACKED, "pieces", needs=FIRST),
        "gone": look("Gone", of_last("out_card", "gone", "last_gone"), "pieces", needs=FIRST),
        "worth": look("Cost of those made, {money}", of_last("made", "worth", "last"), "money", needs=FIRST),
        "spent": look("Cost of those gone, {money}", of_last("out_card", "spent", "last_gone"), "money", needs=FIRST),
        "loose": look("Not in sets", written("{left}-{in_sets}", left="left", in_sets="in_sets"), "pieces", needs=FIRST),
        **last_count(COUNT_NUMBER, written("{more}+{row}", more=KEY_LINE, row=OWN_ROW)),
        "early": look("Lines sold before they were cured", EARLY, "row", width=8),
        "last": look("Last line of what came", last_below("made", NUMBER), "row", width=8),
        "last_gone": look("Last line of what went", last_below("out_card", NUMBER), "row", width=8),
        "first": look("1: the product's first row", written('IF({first}={row},1,"")', first=Same("recipes_by_day", "first"), row=OWN_ROW), "row", width=8),
        "brings": look("One brings at least, {money}", least_brought("product"), "money", needs=FIRST),
        "lower": look("Value, or what it brings if less, {money}", LOWER, "money", needs=FIRST),
    },
    CHECKS,
    paper_to="spent",
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    candles, pours, out = (plan.layouts[key] for key in ("candles", "pours", "out_card"))
    went = f"{out.sum('cost')}+{candles.sum('value')}"
    yield sums_agree(
        "Candles that are gone and those there are come to what batches cost", TAB.title, went, pours.sum("value")
    )


SHOWN = ("product", "ready_now", "curing", "in_sets", "there", "left", "value", "made", "unpacked", "gone")
register(TAB, __name__, 60, checks=checks, shown=Shown("candles", SHOWN), records=True)
