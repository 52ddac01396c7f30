"""The Demand tab: what is wanted of each product by which day, and what of sets is to be packed for it."""

from candlecalc.season.tables.carried import LAST_SOLD
from candlecalc.season.tables.plan import DEMAND
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import calculated, look
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import (
    KEY_DAY,
    KEY_THING,
    Above,
    Expression,
    Whole,
    at,
    row_in,
    written,
)
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.evenings_by_day import DAYS, FIRST_DAY
from candlecalc.workbook.tabs.working.wanted import at_home, to_make, wanted_by

KEY = DEMAND.key


def _sold(key: str) -> Expression:
    return Whole(LAST_SOLD.key, key)


# What was sold in that month of the year, at the line's place if it names one: compared, not counted by a criterion.
SOLD = written(
    'SUMPRODUCT(({products}={product})*({months}=MONTH({day}))*((({places}={place})+({place}=""))>0),{pieces})',
    products=_sold("product"),
    product="product",
    months=_sold("month_number"),
    day="day",
    places=_sold("place"),
    place="place",
    pieces=_sold("pieces"),
)
OFFERED = written(
    'IF(DAY({day})<>1,"",ROUND({sold}*IF({factor}="",1,{factor}),0))', day="day", sold=SOLD, factor="factor"
)
MOST_LIKELY = written('IF({pieces}<>"",{pieces},SUM({offered}))', pieces="pieces", offered="offered")
# Of a scent that will not sell later: where one more would lose as much, left over, as it would earn.
OF_ONE_SEASON = written(
    "ROUNDUP(ROUND({stock},6),0)",
    stock=calculated(
        "season_stock",
        price="brings",
        cost="each",
        leftover=written("SUM({left})", left="leftover"),
        demand=MOST_LIKELY,
        spread="spread",
    ),
)
WANTED = written('IF({spread}="",{likely},{season})', spread="spread", likely=MOST_LIKELY, season=OF_ONE_SEASON)
# What is wanted on the first day of a month sells over the month; anything else on its day.
UNTIL = written("IF(DAY({day})=1,DATE(YEAR({day}),MONTH({day})+1,1),{day}+1)", day="day")
# Of a month that has begun, the days that are left.
STILL = written(
    'IF({ready}="",0,ROUNDUP(ROUND({wanted}*MAX(0,MIN(1,({until}-{today})/({until}-{day}))),6),0))',
    ready="ready",
    wanted="wanted",
    until="until",
    day="day",
    today=FIRST_DAY,
)
DUE = written("MAX({day},{today})", day="day", today=FIRST_DAY)
NUMBER = written(
    'IF({ready}="",0,{thing}*{key_thing}+{due}*{key_day}+{row})',
    ready="ready",
    thing="product_row",
    due=DUE,
    row=OWN_ROW,
    key_thing=KEY_THING,
    key_day=KEY_DAY,
)
HOLDS = written("COUNTIF({sets},{row})", sets=Whole("sets", "set_row"), row="recipe")
NEED = written(
    "IF(SUM({holds})=0,0,{wanted}+SUM({buffer})-{home})",
    holds="holds",
    wanted=wanted_by(KEY, "pieces_due", "product_row"),
    buffer="buffer",
    home=at_home("product_row"),
)
LINES = written("IF({holds}=0,1,({pack}>0)*{holds})", holds="holds", pack="pack")
NO_SET = written("{holds}=0", holds="holds")

TAB = entry_tab(
    DEMAND,
    {
        "offered": look("Last season, times the factor", OFFERED, "pieces"),
        "wanted": look("Wanted", WANTED, "pieces"),
        "pieces_due": look("Still to come", STILL, "pieces", needs=()),
        "each": look("Making cost, {money}", at("costing", "making", "recipe"), "money", needs=("ready", "spread")),
        "until": look("Sells before", UNTIL, "date"),
        "product_row": look("Product's first row", row_in("recipes", "product", ready=False), "row", width=8),
        "number": look("Line's number", NUMBER, "row", needs=(), width=16),
        "recipe": look("Recipe that holds now, row", row_in("recipes", "product"), "row", width=8),
        "holds": look("Candles in the set, lines", HOLDS, "row", width=8),
        "need": look("Sets needed up to here", NEED, "row", needs=(), width=8),
        "pack": look("Sets to pack", to_make(KEY, "product_row"), "pieces", blank_if=(NO_SET,)),
        "lines": look("Lines on Plan lines", LINES, "row", width=8),
        "start": look("Lines there before", written("{start}+N({lines})", start=Above("start"), lines=Above("lines")), "row", needs=(), width=8),
    },
    checks=(
        Check(f"N(day)<plan_from+{DAYS}", "further ahead than a plan reaches", "a plan reaches a year: type it when the day is nearer", "day"),
        Check('(spread="")+(N(brings)>N(each))*(N(leftover)<N(each))>0', "scent of one season that does not pay", "one must bring more than it costs, and less once it is left over; else leave out how much it may differ by", "brings"),
        Check('(pieces<>"")+(N(wanted)>0)>0', "nothing is wanted", "type how many: no sales of last season stand for that day", "pieces", unlikely=True),
    ),
    waits={"product": not_ready_there("recipes", "product")},
)  # fmt: skip

register(TAB, __name__, 10, records=True)
