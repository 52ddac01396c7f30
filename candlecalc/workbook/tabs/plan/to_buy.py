"""The To buy tab: what to buy for the plan, in whole packs, by supplier and by when: a list to print and to tick.

Each material is bought once for the whole plan: larger orders are never dearer by the pack, so no other way of parting
it costs less. It is to be there when the month begins in which there would be too little.
"""

from collections.abc import Iterable, Mapping

from candlecalc.season.tables.set_up import MATERIALS
from candlecalc.workbook.cells.checks import WorkbookCheck, sums_agree
from candlecalc.workbook.cells.columns import Calculated, Column, calculated, look, result
from candlecalc.workbook.cells.layout import FIRST_ROW, OWN_ROW, Plan
from candlecalc.workbook.cells.references import (
    Expression,
    Named,
    Own,
    Whole,
    as_text,
    at,
    expression_of,
    in_order,
    joined,
    written,
)
from candlecalc.workbook.cells.table_tab import STATUS, WIDTH_OF_STATUS, TableTab, own_row_column, words_column
from candlecalc.workbook.tabs.registry import Shown, register
from candlecalc.workbook.tabs.working.extras_by_month import KEY as EXTRAS
from candlecalc.workbook.tabs.working.made_by_month import KEY as MADE
from candlecalc.workbook.tabs.working.made_by_month import MONTHS, UNTIL, month_begins
from candlecalc.workbook.tabs.working.made_of import PARTS
from candlecalc.workbook.tabs.working.plan_needs import KEY as NEEDS
from candlecalc.workbook.tabs.working.plan_needs import PER_SUPPLIER, needed
from candlecalc.workbook.writing.draft import Draft, ruled_where, unseen_where
from candlecalc.workbook.writing.printed import paper, print_list
from candlecalc.workbook.writing.writer import write_table

KEY = "to_buy"
LEAST_ROWS, SHARE = 40, 0.3  # rows there are: for all of few materials, for a share of many
THERE = ("number",)
FIRST_MONTH = Named("plan_from")


def _of_material(key: str) -> Expression:
    return at("materials", key, "row")


def _of_terms(key: str) -> Expression:
    return at("buying_terms", key, "terms")


def _short(nth: int) -> Column:
    """1 where there would be too little by the end of a month."""
    coming = written(
        'SUMIFS({amounts},{materials},{row},{days},"<"&{end})',
        amounts=Whole("on_order", "amount"),
        materials=Whole("on_order", "material_row"),
        row="row",
        days=Whole("on_order", "due"),
        end=month_begins(nth),
    )
    missing = written(
        "(ROUND({need}+SUM({reorder})-{left}-{coming},6)>0)*1",
        need=needed("row", UNTIL[nth - 1]),
        reorder=_of_material("reorder"),
        left=_of_material("stock"),
        coming=coming,
    )
    return look(f"Short by the end of month {nth}", missing, "row", needs=THERE, width=7)


SHORT = {f"short_{nth}": _short(nth) for nth in range(1, MONTHS)}
# The month in which there is too little first; where in none of the others, in the last.
MONTH = written(f"IFERROR(MATCH(1,{{short}},0),{MONTHS})", short=Own("short_1", f"short_{MONTHS - 1}"))
THERE_BY = written(
    "MAX({day},DATE(YEAR({day}),MONTH({day})+{month}-1,1))", day=FIRST_MONTH, month="month"
)  # fmt: skip


def _or(key: str, otherwise: Expression) -> Expression:
    """What the material's terms say; what else holds where they say nothing."""
    return written('IF({terms}=0,{otherwise},IF({said}="",{otherwise},{said}))', terms="terms", said=_of_terms(key), otherwise=otherwise)  # fmt: skip


# A break that is not there is one that changes nothing: the same number of packs at the same price.
BREAKS = {
    "price": look("Pack price, {money}", _of_material("pack_price"), "money", needs=THERE),
    "first": look("Cheaper from, packs", _or("first", expression_of("least")), "row", needs=THERE),
    "first_price": look("Then, {money} a pack", _or("first_price", expression_of("price")), "money", needs=THERE),
    "second": look("Cheaper still from, packs", _or("second", expression_of("first")), "row", needs=THERE),
    "second_price": look("And then, {money} a pack", _or("second_price", expression_of("first_price")), "money", needs=THERE),
}  # fmt: skip


def _at_breaks(function: str, packs: str) -> Calculated:
    return calculated(function, packs=packs, **{key: key for key in BREAKS})


# The month of the plan in which it is to be ordered, from 0: what is late in the first, what is later still in the last.
ORDER_MONTH = written(
    f"MAX(0,MIN({MONTHS - 1},(YEAR({{by}})-YEAR({{first}}))*12+MONTH({{by}})-MONTH({{first}})))",
    by="order_by",
    first=FIRST_MONTH,
)
SHIPPED = joined("+", [written("SUM({each})", each=_of_material(key)) for key in ("shipping", "tax")])
TOO_LATE = written(
    'IF({number}="","",IFERROR(REPT("Order at once: it takes "&{lead}&" days",{order_by}<{today}),""))',
    number="number",
    lead="lead",
    order_by="order_by",
    today=FIRST_MONTH,
)
NOTHING = written('""')


def rows(rows_of: Mapping[str, int]) -> int:
    materials = rows_of[MATERIALS.key]
    return min(materials, max(LEAST_ROWS, int(materials * SHARE)))


FOR_PAPER = {
    "supplier": look("Supplier", as_text(_of_material("supplier")), width=23, needs=THERE),
    "material": look("Material", as_text(_of_material("material")), width=27, needs=THERE),
    "packs": look("Packs", _at_breaks("packs_at_breaks", "least"), "pieces_strong", needs=THERE),
    "size": look("of", _of_material("pack_size"), "count", needs=THERE, width=6),
    "unit": look("each", as_text(_of_material("pack_unit")), needs=THERE, width=7),
    "each": look("A pack with shipping, {money}", written("{price}+{shipped}", price=_at_breaks("price_at_breaks", "packs"), shipped=SHIPPED), "money", needs=THERE),
    "cost": result("In all, {money}", "cost_of_all", cost="each", count="packs", needs=THERE, format="money"),
    "order_by": look("Order by", written("{there_by}-{lead}", there_by="there_by", lead="lead"), "date", needs=THERE),
    "there_by": look("Needed from", THERE_BY, "date", needs=THERE),
    "got": look("Got it", NOTHING, needs=(), width=7),
}  # fmt: skip
TAB = TableTab(
    "To buy",
    "output",
    "What to buy for Plan in whole packs, by supplier; with what is to be left where you order again.",
    KEY,
    {
        STATUS: words_column("What to do", TOO_LATE, width=WIDTH_OF_STATUS),
        **FOR_PAPER,
        OWN_ROW: own_row_column(),
        "number": look("Supplier and material, a number", in_order(NEEDS, "number"), "row", needs=(), width=12),
        "row": look("Row on Materials", written(f"MOD({{number}},{PER_SUPPLIER})", number="number"), "row", needs=THERE, width=8),
        "terms": look("Row on Buying terms", written("IFERROR(MATCH({row},{rows},0),0)", row="row", rows=Whole("buying_terms", "material_row")), "row", needs=THERE, width=8),
        "lead": look("Days to come", _or("lead", written("0")), "row", needs=THERE, width=8),
        "least": result("Packs needed", "packs_to_buy", needed=at(NEEDS, "short", "row"), pack=_of_material("size"), needs=THERE),
        **BREAKS,
        **SHORT,
        "month": look("Month in which there is too little", MONTH, "row", needs=THERE, width=8),
        "order_month": look("Month of the plan in which to order, from 0", ORDER_MONTH, "row", needs=THERE, width=8),
        "by_month": look("Month and line, a number", written("({month}+1)*{many}+{row}", month="order_month", many=written(str(PER_SUPPLIER)), row=OWN_ROW), "row", needs=THERE, width=10),
    },
    goes_with=MATERIALS.key,
    counted=rows,
)  # fmt: skip


def write(draft: Draft) -> None:
    write_to_tick(draft, TAB, tick="got", once=("supplier",))


def write_to_tick(draft: Draft, tab: TableTab, tick: str, once: Iterable[str]) -> None:
    """A list on upright paper: what its lines are gathered by stands `once`, over them, and each has a box to tick.

    Lines are of one kind where their numbers are, but for the last digits.
    """
    sheet, here = write_table(draft, tab), draft.plan.layouts[tab.key]

    def down(key: str) -> str:
        return f"{here.letters[key]}{FIRST_ROW}:{here.letters[key]}{here.last_row}"

    ruled_where(sheet, down(tick), f'${here.letters["material"]}{FIRST_ROW}<>""', box=True)
    number = f"${here.letters['number']}"
    same = f"INT({number}{FIRST_ROW}/{PER_SUPPLIER})=INT(N({number}{FIRST_ROW - 1})/{PER_SUPPLIER})"
    for key in once:
        unseen_where(sheet, down(key), same)
    columns = list(tab.columns).index(tick) + 1 - tab.margin
    used = max(draft.season.tables.room(MATERIALS.key), LEAST_ROWS)
    print_list(sheet, columns, min(here.last_row, FIRST_ROW + used - 1), left=tab.margin)
    paper(sheet, str(draft.season.settings["paper"]), portrait=True)


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    here, needs, made, extras = (plan.layouts[key] for key in (KEY, NEEDS, MADE, EXTRAS))
    taken = "+".join(f"SUMPRODUCT({made.results(UNTIL[-1])},{made.results(part)})" for part in PARTS)
    whole = f"{taken}+{extras.sum(UNTIL[-1])}"
    name = "Needed of all materials is what Plan's candles take"
    yield sums_agree(name, TAB.title, needs.sum("need"), whole, tolerance=0.001)
    numbers = needs.results("number")
    room = "To buy has a line for each material that is short"
    more = "there are more than the tab has lines: ask for more rows of Materials"
    yield WorkbookCheck(room, TAB.title, f"COUNT({here.results('number')})", more, f"COUNT({numbers})")


register(TAB, __name__, 60, write=write, checks=checks, shown=Shown("buy", tuple(FOR_PAPER)[:-1]), records=True)
