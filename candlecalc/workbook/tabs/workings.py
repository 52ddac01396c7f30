"""The Workings tab: where each named thing of a recipe stands, what a vessel takes, and the highest load."""

from candlecalc.season.tables import SETS
from candlecalc.workbook.cells.columns import CountWhere, Look, look, result, row_of, total
from candlecalc.workbook.cells.place import Place, Plan
from candlecalc.workbook.cells.references import as_text, at, blank, carry, constant, named, own, span
from candlecalc.workbook.cells.table_tab import Check, TableTab, follows, said

POURED = ("ready", "vessel_row")


def _material(head: str, key: str) -> Look:
    return row_of(head, "materials", carry("recipes", key))


CHECKS = (
    Check('ROUND(N(load)-MIN(load_wax,load_wax_second),6)<=0', "load above the wax's highest",
          "lower the load, or choose a wax that takes more", "load"),
    Check('ROUND(N(load)-N(load_supplier),6)<=0', "load above the oil supplier's highest",
          "lower the load: Materials has the supplier's highest", "load"),
    Check('ROUND(N(load)-N(load_certified),6)<=0', "load above the certified limit",
          "lower the load: the oil's certificate sets this ceiling", "load"),
    Check('(vessel_row="")+(ROUND(N(shares)-1,4)=0)>0', "oil shares that do not add up to 1", "make the shares of the oils add up to 1", "share_first", sums=True),
    Check('((wax_second_row<>"")=(N(share_wax)>0))*((oil_second_row<>"")=(N(share_second)>0))*((oil_third_row<>"")=(N(share_third)>0))*((dye_row<>"")=(N(share_dye)>0))>0',
          "part without its share, or share without its part", "name the wax, oil or dye that a share is of, and type the share of each that is named", "wax_second", sums=True),
    Check('(wick_row<>"")+(use<>"stays")*(N(wicks)=0)+(wicks=0)>0', "candle without its wick", "name the wick; for a melt type 0 wicks", "wick"),
    Check('(N(load)>0)=(oil_first_row<>"")', "load without an oil, or oil without a load",
          "choose the oil, or make the load 0", "oil_first", sums=True),
    Check('(kind="set")=(in_set>0)', "set without its candles", "list the set's candles on Sets; a made candle has none there", "kind", sums=True),
    Check("priced>0", "product without a price", "give it a line on Prices", "product"),
)  # fmt: skip


def _no_oil(plan: Plan, place: Place) -> str:
    """The test that no oil's flash point is known."""
    return f"COUNT({span('flash_first', 'flash_third')(plan, place)})=0"


def _whole(plan: Plan, place: Place) -> str:
    """1 for a candle, and for a set while every line of Sets names one: a stray line may be this set's."""
    kind, sets = own("kind")(plan, place), plan.places["sets"]
    stray = f'COUNTIFS({sets.range("mend")},"*{SETS["set"].head}; *",{sets.range("set")},"<>")'
    return f'CHOOSE(1+(({kind}<>"set")+({stray}=0)>0),NA(),1)'


TAB = TableTab(
    "Workings",
    "working",
    "Where each part of a recipe stands, what its vessel takes, and the highest load it may have.",
    "workings",
    {
        **follows("recipes", "product", "Product"),
        "kind": look("Made or set", carry("recipes", "kind"), width=8),
        "vessel_row": row_of("Vessel, row", "vessels", carry("recipes", "vessel")),
        "wax_row": _material("Wax, row", "wax"),
        "wax_second_row": _material("Second wax, row", "wax_second"),
        "oil_first_row": _material("Oil 1, row", "oil_first"),
        "oil_second_row": _material("Oil 2, row", "oil_second"),
        "oil_third_row": _material("Oil 3, row", "oil_third"),
        "dye_row": _material("Dye, row", "dye"),
        "bought": look("Vessel bought as", as_text(at("vessels", "bought_as", "vessel_row")), when=POURED, width=35),
        "bought_row": row_of("Vessel bought, row", "materials", own("bought")),
        "lid_row": _material("Lid, row", "lid"),
        "wick_row": _material("Wick, row", "wick"),
        "label_row": _material("Label, row", "label"),
        "packing_row": _material("Packing, row", "packing"),
        "volume": look("Brim volume, ml", at("vessels", "volume", "vessel_row"), "volume", when=POURED),
        "headspace": look("Headspace, of volume", at("vessels", "headspace", "vessel_row"), "percent", when=POURED),
        "density": look("Density, g/ml", at("materials", "density", "wax_row"), "density", when=POURED),
        "density_second": look("Second density, g/ml", at("materials", "density", "wax_second_row"), "density", when=POURED, instead=("wax_second_row", "density")),
        "share_wax": look("Second wax, of wax", carry("recipes", "share_wax"), "percent", when=POURED),
        "blend": result("Blend, g/ml", "blend_density", first="density", second="density_second", share="share_wax", when=POURED),
        "fill": result("Fill, {weight}", "fill_weight", volume="volume", headspace="headspace", density="blend", when=POURED),
        "weigh": result("Fill with waste, {weight}", "before_waste", amount="fill", waste=named("waste"), when=POURED),
        "load": look("Load, of wax", carry("recipes", "load"), "percent", when=POURED),
        "wax": result("Wax, {weight}", "wax_for_fill", fill="weigh", load="load", when=POURED),
        "oil": result("Oil, {weight}", "oil_for_fill", fill="weigh", load="load", when=POURED),
        "share_first": look("Oil 1, of oil", carry("recipes", "share_first"), "percent", when=POURED, instead=(carry("recipes", "share_first"), constant(1))),
        "share_second": look("Oil 2, of oil", carry("recipes", "share_second"), "percent", when=POURED),
        "share_third": look("Oil 3, of oil", carry("recipes", "share_third"), "percent", when=POURED),
        "shares": total("Oils, of oil", "share_first", "share_second", "share_third", format="percent", when=POURED),
        "share_dye": look("Dye, of wax", carry("recipes", "dye_share"), "fine_percent", when=POURED),
        "wicks": look("Wicks, each", carry("recipes", "wicks"), "count", when=(*POURED, blank(carry("recipes", "wicks")))),
        "use": look("Use of vessel", at("vessels", "use", "vessel_row"), when=POURED, width=8),
        "supplier_first": look("Oil 1 supplier, of candle", at("materials", "share_limit", "oil_first_row"), "percent", when=POURED, instead=("oil_first_row", constant(1))),
        "supplier_second": look("Oil 2 supplier, of candle", at("materials", "share_limit", "oil_second_row"), "percent", when=POURED, instead=("oil_second_row", constant(1))),
        "supplier_third": look("Oil 3 supplier, of candle", at("materials", "share_limit", "oil_third_row"), "percent", when=POURED, instead=("oil_third_row", constant(1))),
        "certified_first": look("Oil 1 certificate, of candle", at("materials", "candle_limit", "oil_first_row"), "percent", when=POURED, instead=("oil_first_row", constant(1))),
        "certified_second": look("Oil 2 certificate, of candle", at("materials", "candle_limit", "oil_second_row"), "percent", when=POURED, instead=("oil_second_row", constant(1))),
        "certified_third": look("Oil 3 certificate, of candle", at("materials", "candle_limit", "oil_third_row"), "percent", when=POURED, instead=("oil_third_row", constant(1))),
        "blend_supplier": result("Blend by suppliers, of candle", "limit_of_blend", shares=span("share_first", "share_third"), limits=span("supplier_first", "supplier_third"), when=POURED),
        "blend_certified": result("Blend by certificates, of candle", "limit_of_blend", shares=span("share_first", "share_third"), limits=span("certified_first", "certified_third"), when=POURED),
        "load_supplier": result("Highest by oil suppliers, of wax", "load_at_limit", limit="blend_supplier", when=POURED),
        "load_certified": result("Highest by certificates, of wax", "load_at_limit", limit="blend_certified", when=POURED),
        "load_wax": look("Highest by the wax, of wax", at("materials", "load_limit", "wax_row"), "percent", when=POURED),
        "load_wax_second": look("Highest by second wax, of wax", at("materials", "load_limit", "wax_second_row"), "percent", when=POURED, instead=("wax_second_row", "load_wax")),
        "highest": total("Highest load, of wax", "load_supplier", "load_certified", "load_wax", "load_wax_second", format="percent", of="MIN", when=POURED),
        "flash_first": look("Oil 1 flash point, {temperature}", at("materials", "flash", "oil_first_row"), "temperature", when=("ready", "oil_first_row")),
        "flash_second": look("Oil 2 flash point, {temperature}", at("materials", "flash", "oil_second_row"), "temperature", when=("ready", "oil_second_row")),
        "flash_third": look("Oil 3 flash point, {temperature}", at("materials", "flash", "oil_third_row"), "temperature", when=("ready", "oil_third_row")),
        "flash": total("Lowest flash point, {temperature}", "flash_first", "flash_second", "flash_third", format="temperature", of="MIN", when=("ready", _no_oil)),
        "whole": look("Set whole", _whole, "row", width=7),
        "in_set": CountWhere(head="Lines on Sets", table="sets", by="set", name="product", format="row", width=7),
        "priced": CountWhere(head="Lines on Prices", table="prices", by="product", name="product", format="row", width=7),
        **said(CHECKS),
    },
    CHECKS,
)  # fmt: skip
