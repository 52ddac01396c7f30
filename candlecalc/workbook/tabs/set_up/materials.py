"""The Materials tab: what is bought, brought to the maker's own unit once, with its cost."""

from candlecalc.season.tables.set_up import MATERIALS
from candlecalc.season.tables.taken import WEIGHED
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import calculated, look, names_when_ready, result
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import (
    Same,
    Whole,
    at,
    constant,
    expression_of,
    if_records,
    row_in,
    running,
    text,
    written,
)
from candlecalc.workbook.cells.table_tab import entry_tab, or_error, words_column
from candlecalc.workbook.tabs.registry import register

TYPED = expression_of("typed_cost")
# What was paid, where that is asked for and something was bought; else the price that was typed.
ASKED = written(
    'IF({choice}="last",{last},IF({choice}="average",{average},""))',
    choice="price_from",
    last=Same("stock", "unit_cost"),
    average=Same("stock", "average"),
)
PAID = written("IF(COUNT({paid})=0,{typed},{paid})", paid=ASKED, typed=TYPED)
ON_HAND = calculated("in_unit", size="on_hand", factor="factor")

THEN = written("MATCH({material},{names},0)", material="material", names=Whole("packs_before", "material"))
# What was bought counts in packs, and a pack is not what it was when the workbook was made.
CHANGED = written(
    'IFERROR(REPT("Pack was another when this workbook was made, and purchases go by it: bring it back, and give the new '
    'pack a line of its own",({sizes}+{units}>0)*(COUNTIF({bought},{row})>0)),"")',
    sizes=written("({now}<>{then})", now="pack_size", then=at("packs_before", "pack_size", THEN)),
    units=written("({now}<>{then})", now="pack_unit", then=at("packs_before", "pack_unit", THEN)),
    bought=Whole("purchases", "material_row"),
    row=OWN_ROW,
)

TAB = entry_tab(
    MATERIALS,
    {
        "factor": look("Pack unit, in {weight} or each", at("units", "factor", row_in("units", "pack_unit")), "factor", width=10),
        "size": result("Pack, {weight} or each", "in_unit", size="pack_size", factor="factor", format="quantity"),
        "typed_cost": result("Cost as typed, {money} per {weight} or each", "unit_cost", price="pack_price", size="size", shipping="shipping", tax="tax"),
        "unit_cost": look("Cost, {money} per {weight} or each", if_records(PAID, TYPED), "unit_cost"),
        "stock": look("On hand, {weight} or each", if_records(Same("stock", "left"), ON_HAND), "quantity"),
        "least": look("Order again below, in pack unit, if it is right", or_error(MATERIALS, "reorder_at"), "quantity", needs=("ready", "reorder_at")),
        "reorder": result("Order again below, {weight} or each", "in_unit", size="least", factor="factor", needs=("ready", "least"), format="quantity"),
        # An error where the limit, or what it is of, is not what it takes: it must not count as none.
        "limits": look("Highest load, known", or_error(MATERIALS, "highest_load", "basis"), "row", width=9),
        "load_limit": result("Highest load, of wax", "highest_on_wax", highest="highest_load", basis="basis", needs=("ready", "limits"), if_blank=("highest_load", constant(0.5))),
        "share_limit": result("Supplier's highest, of candle", "highest_of_total", highest="highest_load", basis="basis", needs=("ready", "limits"), if_blank=("highest_load", constant(1))),
        "flash": look("Flash point, {temperature}, or none", or_error(MATERIALS, "flash_point"), "temperature", if_blank=("flash_point", text(""))),
        "of_kind": look("Kind, number", running("kind"), needs=("material", "kind"), width=18),
        "candle_limit": look("Certificate's highest, of candle", or_error(MATERIALS, "certified_limit"), "percent", if_blank=("certified_limit", constant(1))),
        **names_when_ready("material"),
    },
    also={"changed": words_column("Typed over", if_records(CHANGED, text("")))},
    checks=(
        Check("+".join(f'(kind="{kind}")' for kind in WEIGHED) + '+(pack_unit="each")=1',
              "pack unit at odds with the kind", "wax, oil and dye go by weight, all else by the piece", "pack_unit"),
        Check('N(melt_low)<=N(melt_high)+1000*(N(melt_high)=0)', "melting range upside down", "the low end comes first", "melt_high"),
        Check('MAX(N(heat_to),N(add_at),N(pour_at))<=N(ceiling)+1000*(N(ceiling)=0)', "temperature above its ceiling",
              "heat, add and pour no hotter than the wax's data sheet allows", "ceiling"),
        Check('N(melt_high)<=N(ceiling)+1000*(N(ceiling)=0)', "melting range above the ceiling",
              "see the wax's data sheet: one of the two is another wax's", "ceiling"),
        Check('(N(heat_to)>=N(melt_high))+(N(heat_to)=0)>0', "heated to less than it melts at",
              "some of the wax stays set below the end of its melting range: see its data sheet", "heat_to", unlikely=True),
        Check('(N(add_at)<=N(heat_to))+(N(heat_to)=0)>0', "oil goes in hotter than the wax is heated",
              "heat the wax to where the oil goes in, or further: see its data sheet", "add_at", unlikely=True),
        Check('(N(add_at)>=N(melt_low))+(N(add_at)=0)>0', "oil goes into wax that is set",
              "the oil goes in below the wax's melting range: see its data sheet", "add_at", unlikely=True),
        Check('(N(pour_at)<=N(add_at))+(N(add_at)=0)>0', "poured hotter than the oil went in",
              "see the wax's data sheet: wax cools between the two", "pour_at", unlikely=True),
        Check('(kind<>"wax")+(N(density)>0)>0', "wax without its density", "wax needs it, but where each fill is weighed; see the data sheet, or weigh 100 ml",
              "density", told="Density", unlikely=True),
    ),
)  # fmt: skip
register(TAB, __name__, 20)
