"""What a maker types in a folder for labels alone, without a season: a file a table, each column a field."""

from candlecalc.calc.terms import label
from candlecalc.declaration.term import Term
from candlecalc.season.fields import Field, Table, term_of
from candlecalc.season.tables.labels import CLASSES, CONCENTRATION, SPECIFICS, SUBSTANCE

LOAD = Term("of wax weight", "oil as a share of the wax", low_excluded=True, high=0.5)

PRODUCTS = Table(
    "products",
    "Products",
    (
        Field("product", "Product", "the candle, as you call it", name=True, required=True),
        Field("rules", "Rules", "whose rules its label follows", choices=("us", "gb", "eu"), required=True),
        Field("net", "Net weight, g", "", term_of(label.NetWeight), required=True),
        Field("panel_shape", "Panel", "", choices=term_of(label.PanelShape).choices, needed_when=("rules", ("us",))),
        Field("panel_height", "Panel height, mm", "", term_of(label.PanelHeight), needed_when=("rules", ("us",))),
        Field("panel_around", "Panel around, mm", "", term_of(label.PanelAround), needed_when=("rules", ("us",))),
        Field("holds", "Holds, ml", "what the package holds: the weight of the candle over its density", Term("ml", "what the package holds", low=1.0, high=50e3)),
    ),
    usual_rows=100,
    purpose="What label functions are asked with.",
    unique=("product",),
)  # fmt: skip

OILS = Table(
    "oils",
    "Oils",
    (
        Field("product", "Product", "the candle it is in", required=True),
        Field("oil", "Oil", "name of the oil or dye", required=True),
        Field("load", "Load, of wax", "", LOAD, required=True),
        SUBSTANCE,
        CONCENTRATION,
        CLASSES,
        SPECIFICS,
    ),
    usual_rows=400,
    purpose="Section 3 of the data sheets.",
)
