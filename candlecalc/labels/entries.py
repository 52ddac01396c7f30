"""What a maker types for labels: a file a table, each column a field."""

from candlecalc.calc.terms import label
from candlecalc.declaration.term import Term
from candlecalc.labels.shapes import KINDS, RULER_ACROSS, RULER_DOWN, SHEETS
from candlecalc.season.fields import Field, Table, term_of
from candlecalc.season.tables.taken import YES_NO

A_SIZE = Term("mm", "a length", low=5.0, high=400.0)
A_MARGIN = Term("mm", "a length", high=400.0)
A_HEIGHT = Term("mm", "height of a small x", low=1.2, high=50.0)
LOAD = Term("of wax weight", "oil as a share of the wax", low_excluded=True, high=0.5)
A_COUNT = Term("", "how many", low=1.0, high=100.0, whole=True)
# A printer that is off by more than 2 % is set to scale: no reading puts that right.
AS_PRINTED = "what your ruler reads on the calibration page"
SHAPES = ("rectangle", "round")
# Of the EU and its neighbours, in letters that the font has.
_SPOKEN = "en bg cs da de el es et fi fr ga hr hu is it lt lv mt nl no pl pt ro sk sl sv tr uk vi"
LANGUAGES = tuple(_SPOKEN.split())
TYPED = ("name", "line", "net weight", "fire", "hazard")

PAPERS = Table(
    "papers",
    "Papers",
    (
        Field("paper", "Paper", "what you call these label sheets", name=True, required=True),
        Field("sheet", "Sheet", "the sheet's own size", choices=tuple(SHEETS), required=True),
        Field("shape", "Shape", "of one label", choices=SHAPES, required=True),
        Field("rows", "Rows", "labels down the sheet", A_COUNT, required=True),
        Field("columns", "Columns", "labels across the sheet", A_COUNT, required=True),
        Field("width", "Width, mm", "of one label; of a round one how far it is across", A_SIZE, required=True),
        Field("height", "Height, mm", "of one label", A_SIZE, required=True),
        Field("left", "Left, mm", "from the sheet's left edge to the first label", A_MARGIN, required=True),
        Field("top", "Top, mm", "from the sheet's upper edge to the first label", A_MARGIN, required=True),
        Field("gap_across", "Gap across, mm", "between two labels side by side", A_MARGIN),
        Field("gap_down", "Gap down, mm", "between two labels one below the other", A_MARGIN),
        Field("outline", "Outline", "whether to draw the edge of each label, on plain paper to cut", choices=YES_NO),
        Field("read_left", "Cross from the left, mm", AS_PRINTED, Term("mm", AS_PRINTED, low=5.0, high=35.0)),
        Field("read_top", "Cross from the top, mm", AS_PRINTED, Term("mm", AS_PRINTED, low=5.0, high=35.0)),
        Field("read_across", "Ruler across, mm", AS_PRINTED, Term("mm", AS_PRINTED, RULER_ACROSS * 0.98, RULER_ACROSS * 1.02)),
        Field("read_down", "Ruler down, mm", AS_PRINTED, Term("mm", AS_PRINTED, RULER_DOWN * 0.98, RULER_DOWN * 1.02)),
    ),
    usual_rows=40,
    purpose="The label sheets you print on.",
    unique=("paper",),
)  # fmt: skip

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
        Field("substance", "Substance", "as section 3 of its data sheet prints it", required=True, longest=200),
        Field("concentration", "Concentration", "as printed: 5-10 %", required=True),
        Field("classes", "Classes", "as printed: Skin Sens. 1 H317", required=True, longest=200),
        Field("specifics", "Specific limits", "as printed, with M-factors and toxicity estimates", longest=200),
    ),
    usual_rows=400,
    purpose="Section 3 of the data sheets.",
)

LABELS = Table(
    "labels",
    "Labels",
    (
        Field("product", "Product", "blank: every product"),
        Field("label", "Label", "where a line of your own stands", choices=KINDS, needed_when=("part", ("line",))),
        Field("part", "Part", "what it is", choices=TYPED, required=True),
        Field("code", "Code", "H317, GHS07, Warning, names; of a fire statement its topic, or sign", longest=100),
        Field("text", "Text", "your own words; blank: ours", needed_when=("part", ("name", "line")), longest=400),
        Field("height", "Height, mm", "least height of a small x", A_HEIGHT),
        Field("language", "Language", "of the text", choices=LANGUAGES),
        Field("confirmed_on", "Confirmed on", "the day on which you checked it", date=True),
        Field("against", "Against", "what you checked it against", needed_when=("confirmed_on", ()), longest=200),
    ),
    usual_rows=400,
    purpose="What stands on labels, and what of it is confirmed.",
)
