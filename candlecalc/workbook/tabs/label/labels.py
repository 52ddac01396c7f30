"""The Labels tab: what each candle's label declares, how high its figures are, and under whose rules it is sold."""

from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.columns import Column, calculated, look, result
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import Carry, Expression, Named, Same, Whole, as_text, at, text, written
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import Shown, register

FILLED = ("ready", Same("workings", "fill"))


def _side(head: str, key: str) -> Column:
    """A side of the label panel, where the vessel has one."""
    length = at("vessels", key, Same("workings", "vessel_row"))
    return look(head, written('IFERROR({length}/({length}>0),"")', length=length), "length", needs=FILLED)


def _sold(rules: str, head: str) -> Column:
    """Whether a product has a price at a place whose buyers live under these rules."""
    many = written(
        "COUNTIFS({products},{row},{all_rules},{rules})",
        products=Whole("price_rules", "product_row"),
        row=OWN_ROW,
        all_rules=Whole("price_rules", "rules"),
        rules=text(rules),
    )
    return look(head, written('REPT("yes",{many}>0)', many=many), width=8)


def _in_millimetres(length: Expression) -> Expression:
    """A length in mm, as rules give it and rulers for print show it, whatever the workbook's own lengths are in."""
    return written("{length}*{millimetres}", length=length, millimetres=Named("length_mm"))


TAB = result_tab(
    "Labels",
    "output",
    "What each label declares at its recipe's fill, and how high its figures are at least.",
    "labelled",
    RECIPES,
    {
        "us": _sold("us", "Sold in the US"),
        "gb": _sold("gb", "Sold in GB"),
        "eu": _sold("eu", "Sold in the EU"),
        "fill": look("Fill, {weight}", Same("workings", "fill"), "weight", needs=FILLED),
        "ounces": result("Net weight, oz", "ounces_to_declare", net="fill", needs=FILLED, format="quantity"),
        "grams": result("Net weight, g", "grams_to_declare", net="fill", needs=FILLED, format="pieces"),
        "high": _side("Label panel high, {length}", "panel_height"),
        "wide": _side("Label panel wide, {length}", "panel_width"),
        "panel": result("Label panel, cm2", "panel_area", height="high", around="wide", shape=text("flat"), needs=("high", "wide"), format="quantity"),
        "figures_us": look("Figures in the US at least, mm", _in_millimetres(calculated("least_figures_us", size="panel")), "quantity", needs=("panel",)),
        "figures_metric": look("Figures in GB and the EU at least, mm", _in_millimetres(calculated("least_figures_metric", net="fill")), "quantity", needs=FILLED),
        "vessel": look("Vessel", as_text(Carry("recipes", "vessel")), width=25),
        "hazards": look("Hazard statements", as_text(Same("hazards", "statements")), width=24),
    },
)  # fmt: skip

SHOWN = ("product", "us", "gb", "eu", "fill", "ounces", "grams", "figures_us", "figures_metric", "hazards")
register(TAB, __name__, 50, shown=Shown("labels", SHOWN), records=True)
