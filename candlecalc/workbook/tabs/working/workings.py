"""The Workings tab: where each named thing of a recipe stands, what a vessel takes, and the highest load."""

from candlecalc.season.tables.set_up import RECIPES, SETS
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import Column, count_where, look, result, row_number, total
from candlecalc.workbook.cells.references import (
    Carry,
    Expression,
    Named,
    Own,
    Whole,
    as_text,
    at,
    constant,
    differs,
    joined,
    not_above_zero,
    written,
)
from candlecalc.workbook.cells.table_tab import check_key, fault_of, result_tab, words_column
from candlecalc.workbook.cells.words import WithCode, says
from candlecalc.workbook.tabs.registry import register

POURED = ("ready", "vessel_row")


def _material(head: str, key: str) -> Column:
    return row_number(head, "materials", Carry("recipes", key))


CHECKS = (
    Check('ROUND(N(load)-wax_takes,6)<=0', "load above the wax's highest",
          "lower the load, or choose a wax that takes more", "load",
          told="Load {load} % is above {wax_takes} %, the wax's highest"),
    Check('ROUND(N(load)-N(load_supplier),6)<=0', "load above the oil supplier's highest",
          "lower the load; Materials has the supplier's highest", "load",
          told="Load {load} % is above {load_supplier} %, the oil supplier's highest"),
    Check('ROUND(N(load)-N(load_certified),6)<=0', "load above the certified limit",
          "lower the load; the oil's certificate sets this ceiling", "load",
          told="Load {load} % is above {load_certified} %, the certified limit"),
    Check('(vessel_row="")+(ROUND(N(shares)-1,4)=0)>0', "oil shares that do not add up to 1", "make the shares of the oils add up to 1", "share_first", sums=True),
    Check('((wax_second_row<>"")=(N(share_wax)>0))*((oil_second_row<>"")=(N(share_second)>0))*((oil_third_row<>"")=(N(share_third)>0))*((dye_row<>"")=(N(share_dye)>0))>0',
          "part without its share, or share without its part", "name the wax, oil or dye that a share is of, and type the share of each that is named", "wax_second", sums=True),
    Check('(wick_row<>"")+(use<>"stays")*(N(wicks)=0)+(wicks=0)>0', "candle without its wick", "name the wick; for a melt type 0 wicks", "wick"),
    Check('(N(load)>0)=(oil_first_row<>"")', "load without an oil, or oil without a load",
          "choose the oil, or make the load 0", "oil_first", sums=True),
    Check('(kind="set")=(in_set>0)', "set without its candles", "list the set's candles on Sets, or choose made; a made candle has none there", "kind", sums=True),
    Check("N(unknown)=0", "wax without its density", "type it on Materials, or weigh a fill in this wax: see Vessels", "wax",
          told="A wax has no density, and its vessel goes by water or size", sums=True),
    Check('(as_weighed="")+(N(other_wax)=0)>0', "fill weighed with another wax, and a density missing",
          "type both densities on Materials, or weigh a fill in this wax", "vessel", unlikely=True),
    # A slip of the comma, or an oil that was changed and its load not.
    Check('(N(load)=0)+(N(usual)=0)+(ROUND(2*N(load)-3*N(usual),6)<=0)*(ROUND(3*N(load)-2*N(usual),6)>=0)>0', "load far from what you start from",
          "less than two thirds of it, or more than one and a half times", "load", told="Load {load} % is far from {usual} %, where you start with this oil or wax", unlikely=True),
    # Common practice, no source: from four inches across makers use more than one wick.
    Check('(wick_row="")+(N(wicks)>1)+(N(pool)*length_mm<=100)>0', "one wick in a wide vessel",
          "a melt pool of over 4 inches, 100 mm, across usually takes two wicks or more", "wicks", unlikely=True),
    Check("priced>0", "product without a price", "give it a line on Prices", "product"),
)  # fmt: skip

LOADS = range(3)  # the checks of a load against its limits: what they say goes wherever the load's figures are used

# They come before the others: where one of them is said, the first words are of a load.
OF_LOADS = written(
    "REPT({words},({any})>0)",
    words="warnings",
    any=joined("+", [says("workings", check_key(at), "checked_1") for at in LOADS]),
)

NO_OIL = written("COUNT({points})=0", points=Own("flash_first", "flash_third"))  # no oil's flash point is known
# 1 for a candle, and for a set while every line of Sets names one: a stray line may be this set's.
WHOLE = written(
    'CHOOSE(1+(({kind}<>"set")+(COUNTIFS({wrong},{strays},{sets},"<>")=0)>0),NA(),1)',
    kind="kind",
    wrong=Whole("sets", fault_of(SETS, "set")),
    strays=WithCode("sets", "set"),
    sets=Whole("sets", "set"),
)

# Of the one oil, where there is one and its load is known; else of the wax.
USUAL = written('CHOOSE(1+(N({oil})>0)*({second}=""),{wax},{oil})', oil="usual_oil", second="oil_second_row", wax="usual_wax")  # fmt: skip
BY_FILL = written('{measured}="fill"', measured="measured")
WEIGHED_IN = (*POURED, "fill_wax_row")


def _missing(row: str) -> Expression:
    """Whether a wax that is named has no density on Materials; without a wax the head is asked, which is no number."""
    return written(
        '({row}<>"")*(N({known})=0)', row=row, known=at("materials", "density", written("MAX({row},1)", row=row))
    )


def _density(row: str) -> Expression:
    """A wax's density; an error where it is not known and the fill goes by it."""
    known = at("materials", "density", row)
    return written('CHOOSE(1+({known}=0)*({measured}<>"fill"),{known},NA())', known=known, measured="measured")


TAB = result_tab(
    "Workings",
    "working",
    "Where each part of a recipe stands, what its vessel takes, and the highest load it may have.",
    "workings",
    RECIPES,
    {
        "kind": look("Made or set", Carry("recipes", "kind"), width=8),
        "vessel_row": row_number("Vessel, row", "vessels", Carry("recipes", "vessel")),
        "bought": look("Vessel bought as", as_text(at("vessels", "bought_as", "vessel_row")), needs=POURED, width=35),
        "wax_row": _material("Wax, row", "wax"),
        "wax_second_row": _material("Second wax, row", "wax_second"),
        "oil_first_row": _material("Oil 1, row", "oil_first"),
        "oil_second_row": _material("Oil 2, row", "oil_second"),
        "oil_third_row": _material("Oil 3, row", "oil_third"),
        "dye_row": _material("Dye, row", "dye"),
        "bought_row": row_number("Vessel bought, row", "materials", Own("bought")),
        "lid_row": _material("Lid, row", "lid"),
        "wick_row": _material("Wick, row", "wick"),
        "label_row": _material("Label, row", "label"),
        "packing_row": _material("Packing, row", "packing"),
        "measured": look("Fill goes by", at("vessels", "measured", "vessel_row"), needs=POURED, width=8),
        "volume": look("Brim volume, ml", at("vessels", "volume", "vessel_row"), "volume", needs=POURED, blank_if=(BY_FILL,)),
        "headspace": look("Headspace, of volume", at("vessels", "headspace", "vessel_row"), "percent", needs=POURED, blank_if=(BY_FILL,)),
        "unknown": look("Densities missing", written('({first}+{second}>0)*({measured}<>"fill")', first=_missing("wax_row"), second=_missing("wax_second_row"), measured="measured"), "row", needs=POURED),
        "density": look("Density, g/ml", _density("wax_row"), "density", needs=POURED),
        "density_second": look("Second density, g/ml", _density("wax_second_row"), "density", needs=POURED, if_blank=("wax_second_row", "density")),
        "share_wax": look("Second wax, of wax", Carry("recipes", "share_wax"), "percent", needs=POURED),
        "least": total("Lesser density, g/ml", "density", "density_second", format="density", of="MIN", needs=POURED),
        "blend": result("Blend, g/ml", "blend_density", first="density", second="density_second", share="share_wax", needs=POURED, blank_if=(not_above_zero("least"),)),
        "by_volume": result("Fill by volume, {weight}", "fill_weight", volume="volume", headspace="headspace", density="blend", needs=(*POURED, "volume")),
        "fill_wax": look("Fill weighed with", as_text(at("vessels", "fill_wax", "vessel_row")), needs=POURED, blank_if=(differs("measured", "fill"),), width=35),
        "fill_wax_row": row_number("Fill weighed with, row", "materials", Own("fill_wax")),
        "fill_density": look("Its density, g/ml", at("materials", "density", "fill_wax_row"), "density", needs=WEIGHED_IN),
        "other_wax": look("In another wax", written("1-(ROUND({row},0)={own})*(N({share})=0)", row="fill_wax_row", own="wax_row", share="share_wax"), "row", needs=WEIGHED_IN),
        "scaled": result("Weighed fill in this wax, {weight}", "fill_in_another_wax", fill=at("vessels", "fill", "vessel_row"), measured="fill_density", density="blend", needs=(*WEIGHED_IN, "blend"), blank_if=(not_above_zero("other_wax"), not_above_zero("fill_density"))),
        "as_weighed": look("Fill as weighed, {weight}", at("vessels", "fill", "vessel_row"), "weight", needs=WEIGHED_IN, blank_if=(differs("scaled", ""),)),
        "fill": total("Fill, {weight}", "by_volume", "scaled", "as_weighed", format="weight", needs=POURED),
        "weigh": result("Fill with waste, {weight}", "before_waste", amount="fill", waste=Named("waste"), needs=POURED),
        "load": look("Load, of wax", Carry("recipes", "load"), "percent", needs=POURED),
        "wax": result("Wax, {weight}", "wax_for_fill", fill="weigh", load="load", needs=POURED),
        "oil": result("Oil, {weight}", "oil_for_fill", fill="weigh", load="load", needs=POURED),
        "share_first": look("Oil 1, of oil", Carry("recipes", "share_first"), "percent", needs=POURED, if_blank=(Carry("recipes", "share_first"), constant(1))),
        "share_second": look("Oil 2, of oil", Carry("recipes", "share_second"), "percent", needs=POURED),
        "share_third": look("Oil 3, of oil", Carry("recipes", "share_third"), "percent", needs=POURED),
        "shares": total("Oils, of oil", "share_first", "share_second", "share_third", format="percent", needs=POURED),
        "share_dye": look("Dye, of wax", Carry("recipes", "dye_share"), "fine_percent", needs=POURED),
        "wicks": look("Wicks, each", Carry("recipes", "wicks"), "count", needs=(*POURED, Carry("recipes", "wicks"))),
        "pool": look("Melt pool across, {length}", at("vessels", "diameter", "vessel_row"), "length", needs=POURED),
        "use": look("Use of vessel", at("vessels", "use", "vessel_row"), needs=POURED, width=8),
        "usual_wax": look("Load to start from, by the wax", at("materials", "usual_load", "wax_row"), "percent", needs=POURED),
        "usual_oil": look("Load to start from, by oil 1", at("materials", "usual_load", "oil_first_row"), "percent", needs=(*POURED, "oil_first_row")),
        "usual": look("Load to start from, of wax", USUAL, "percent", needs=POURED),
        "supplier_first": look("Oil 1 supplier, of candle", at("materials", "share_limit", "oil_first_row"), "percent", needs=POURED, if_blank=("oil_first_row", constant(1))),
        "supplier_second": look("Oil 2 supplier, of candle", at("materials", "share_limit", "oil_second_row"), "percent", needs=POURED, if_blank=("oil_second_row", constant(1))),
        "supplier_third": look("Oil 3 supplier, of candle", at("materials", "share_limit", "oil_third_row"), "percent", needs=POURED, if_blank=("oil_third_row", constant(1))),
        "certified_first": look("Oil 1 certificate, of candle", at("materials", "candle_limit", "oil_first_row"), "percent", needs=POURED, if_blank=("oil_first_row", constant(1))),
        "certified_second": look("Oil 2 certificate, of candle", at("materials", "candle_limit", "oil_second_row"), "percent", needs=POURED, if_blank=("oil_second_row", constant(1))),
        "certified_third": look("Oil 3 certificate, of candle", at("materials", "candle_limit", "oil_third_row"), "percent", needs=POURED, if_blank=("oil_third_row", constant(1))),
        "blend_supplier": result("Blend by suppliers, of candle", "limit_of_blend", shares=Own("share_first", "share_third"), limits=Own("supplier_first", "supplier_third"), needs=POURED),
        "blend_certified": result("Blend by certificates, of candle", "limit_of_blend", shares=Own("share_first", "share_third"), limits=Own("certified_first", "certified_third"), needs=POURED),
        "load_supplier": result("Highest by oil suppliers, of wax", "load_at_limit", limit="blend_supplier", needs=POURED),
        "load_certified": result("Highest by certificates, of wax", "load_at_limit", limit="blend_certified", needs=POURED),
        "load_wax": look("Highest by the wax, of wax", at("materials", "load_limit", "wax_row"), "percent", needs=POURED),
        "load_wax_second": look("Highest by second wax, of wax", at("materials", "load_limit", "wax_second_row"), "percent", needs=POURED, if_blank=("wax_second_row", "load_wax")),
        "wax_takes": total("Highest by the waxes, of wax", "load_wax", "load_wax_second", format="percent", of="MIN", needs=POURED),
        "highest": total("Highest load, of wax", "load_supplier", "load_certified", "wax_takes", format="percent", of="MIN", needs=POURED),
        "flash_first": look("Oil 1 flash point, {temperature}", at("materials", "flash", "oil_first_row"), "temperature", needs=("ready", "oil_first_row")),
        "flash_second": look("Oil 2 flash point, {temperature}", at("materials", "flash", "oil_second_row"), "temperature", needs=("ready", "oil_second_row")),
        "flash_third": look("Oil 3 flash point, {temperature}", at("materials", "flash", "oil_third_row"), "temperature", needs=("ready", "oil_third_row")),
        "flash": total("Lowest flash point, {temperature}", "flash_first", "flash_second", "flash_third", format="temperature", of="MIN", blank_if=(NO_OIL,)),
        "cure_first": look("Cure of the wax, days", at("materials", "cure_days", "wax_row"), "count", needs=POURED),
        "cure_second": look("Cure of the second wax, days", at("materials", "cure_days", "wax_second_row"), "count", needs=POURED, if_blank=("wax_second_row", "cure_first")),
        "cure": total("Longer cure, days", "cure_first", "cure_second", format="count", of="MAX", needs=POURED),
        "whole": look("Set whole", WHOLE, "row", width=7),
        "in_set": count_where("Lines on Sets", "sets", "set", "product"),
        "priced": count_where("Lines on Prices", "prices", "product", "product"),
    },
    CHECKS,
    said={"loads": words_column("Load above a limit", OF_LOADS)},
)  # fmt: skip
register(TAB, __name__, 10)
