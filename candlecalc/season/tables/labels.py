"""What goes on the jar: the lines of data sheets, the papers that labels are printed on, and their texts."""

from candlecalc.declaration.term import Term
from candlecalc.season.fields import Field, Table
from candlecalc.season.tables.taken import YES_NO

A_SIZE, A_MARGIN = Term("mm", "a length", low=5.0, high=400.0), Term("mm", "a length", high=400.0)
# A rule gives it in mm, and so does the ruler of the calibration page, whatever a workbook's lengths are in.
A_HEIGHT = Term("", "height of a small x, in mm", low=1.2, high=50.0)
FROM_AN_EDGE = Term("", "mm from an edge", low=5.0, high=35.0)
A_COUNT = Term("", "how many", low=1.0, high=100.0, whole=True)
SHEETS = {"a4": (210.0, 297.0), "letter": (215.9, 279.4)}  # mm
SHAPES = ("rectangle", "round")
KINDS = ("front", "warning", "base")
PARTS = ("name", "line", "net weight", "fire", "hazard", "burn hours")
# The calibration page has two rulers of these lengths, in mm. A printer that is off by more than 2 % is set to scale:
# no reading puts that right.
RULER_ACROSS, RULER_DOWN, MOST_OFF = 150.0, 200.0, 0.02
AS_PRINTED = "what your ruler reads on the calibration page"
# Of the EU and its neighbours, in letters that the font has.
SPOKEN = {
    "en": "English", "bg": "Bulgarian", "cs": "Czech", "da": "Danish", "de": "German", "el": "Greek", "es": "Spanish",
    "et": "Estonian", "fi": "Finnish", "fr": "French", "ga": "Irish", "hr": "Croatian", "hu": "Hungarian",
    "is": "Icelandic", "it": "Italian", "lt": "Lithuanian", "lv": "Latvian", "mt": "Maltese", "nl": "Dutch",
    "no": "Norwegian", "pl": "Polish", "pt": "Portuguese", "ro": "Romanian", "sk": "Slovak", "sl": "Slovene",
    "sv": "Swedish", "tr": "Turkish", "uk": "Ukrainian", "vi": "Vietnamese",
}  # fmt: skip
LANGUAGES = tuple(SPOKEN)

ONCE_A_SHEET = "typed once, on any of the sheet's lines"
# A line of section 3, as it is printed.
SUBSTANCE = Field("substance", "Substance", "its name and CAS number, as section 3 of the data sheet prints them", required=True, longest=200, width=40)  # fmt: skip
CONCENTRATION = Field("concentration", "Concentration", "as printed, with its sign: 5-10 %, or < 2.5 %", required=True, width=15)  # fmt: skip
CLASSES = Field("classes", "Classes", "as printed: Skin Sens. 1 H317; none where the sheet says so", required=True, longest=300, width=96)  # fmt: skip
SPECIFICS = Field("specifics", "Specific limits", "as printed, with M-factors and toxicity estimates: M = 10", longest=200, width=28)  # fmt: skip

OIL_SHEETS = Table(
    "oil_sheets",
    "Oil sheets",
    (
        Field("material", "Oil or dye", "its line on Materials", names_from="materials", required=True),
        SUBSTANCE,
        CONCENTRATION,
        CLASSES,
        SPECIFICS,
        Field("sheet_date", "Sheet of", f"the date on the data sheet: {ONCE_A_SHEET}", date=True),
        Field("version", "Version", f"of the data sheet: {ONCE_A_SHEET}", width=10, longest=20),
        Field("sample", "Oil in the sample", "where the sheet is of the oil in wax or a solvent: how much of that is oil; 100 % if left out", Term("of the sample", "how much of it is oil", low_excluded=True, high=1.0)),
        Field("transport", "Section 14", f"UN number, class and packing group as printed, or what it says: {ONCE_A_SHEET}", width=30, longest=120),
    ),
    usual_rows=160,
    purpose="Section 3 of each oil's and dye's data sheet, a line a substance, typed as it is printed.",
    optional=True,
    records=True,
)  # fmt: skip

PAPERS = Table(
    "papers",
    "Papers",
    (
        Field("paper", "Paper", "what you call these label sheets", name=True, required=True),
        Field("sheet", "Sheet", "the sheet's own size", choices=tuple(SHEETS), required=True, width=8),
        Field("shape", "Shape", "of one label", choices=SHAPES, required=True, width=10),
        Field("rows", "Rows", "labels down the sheet", A_COUNT, required=True),
        Field("columns", "Columns", "labels across the sheet", A_COUNT, required=True),
        Field("width", "Width, {length}", "of one label; of a round one how far it is across", A_SIZE, required=True),
        Field("height", "Height, {length}", "of one label", A_SIZE, required=True),
        Field("left", "Left, {length}", "from the sheet's left edge to the first label", A_MARGIN, required=True),
        Field("top", "Top, {length}", "from the sheet's upper edge to the first label", A_MARGIN, required=True),
        Field("gap_across", "Gap across, {length}", "between two labels side by side", A_MARGIN),
        Field("gap_down", "Gap down, {length}", "between two labels one below the other", A_MARGIN),
        Field("outline", "Outline", "whether to draw the edge of each label, on plain paper to cut", choices=YES_NO, width=8),
        Field("read_left", "Cross from the left, mm", AS_PRINTED, FROM_AN_EDGE),
        Field("read_top", "Cross from the top, mm", AS_PRINTED, FROM_AN_EDGE),
        Field("read_across", "Ruler across, mm", AS_PRINTED, Term("", AS_PRINTED, RULER_ACROSS * (1 - MOST_OFF), RULER_ACROSS * (1 + MOST_OFF))),
        Field("read_down", "Ruler down, mm", AS_PRINTED, Term("", AS_PRINTED, RULER_DOWN * (1 - MOST_OFF), RULER_DOWN * (1 + MOST_OFF))),
    ),
    usual_rows=12,
    purpose="The label sheets you print on, each described once.",
    unique=("paper",),
    optional=True,
    records=True,
)  # fmt: skip

LABELS = Table(
    "labels",
    "Label texts",
    (
        Field("product", "Product", "blank: every product", names_from="recipes"),
        Field("label", "Label", "where a line of your own stands; burn hours on the base if left out", choices=KINDS, needed_when=("part", ("line",)), width=9),
        Field("part", "Part", "what it is", choices=PARTS, required=True, width=11),
        Field("code", "Code", "H317, GHS07, Warning, names; of a fire statement its topic, or sign; of a line what it says: maker, importer, UFI; of burn hours the test: T1", needed_when=("part", ("fire", "hazard", "burn hours")), longest=100, width=30),
        Field("text", "Your text", "your own words, or those of a language; blank: ours", needed_when=("part", ("name", "line")), longest=400, width=60),
        Field("height", "Height, mm", "least height of a small x; of a net weight, of its figures", A_HEIGHT),
        Field("language", "Language", "of the text", choices=LANGUAGES, width=9),
        Field("confirmed_on", "Confirmed on", "the day on which you checked it", date=True),
        Field("against", "Against", "what you checked it against: a text, an authority, a supplier", needed_when=("confirmed_on", ()), longest=200, width=36),
    ),
    usual_rows=180,
    purpose="What stands on labels, in your words or ours. PROOF stands across a label until each text on it is confirmed.",
    optional=True,
    records=True,
)  # fmt: skip

WEIGHTS = Table(
    "weights",
    "Weights",
    (
        Field("batch", "Batch", "its number", required=True, longest=32, width=14),
        Field("product", "Product", "the candle", names_from="recipes", kind="made", required=True),
        Field("package", "Package", "its own number or mark", longest=16, width=12),
        Field("net", "Net weight, {weight}", "what the package weighs less its vessel, wick tab, lid and label", Term("g", "a net weight", low_excluded=True, high=25e3), required=True),
        Field("size", "Batch of", "how many candles the batch has: typed once, on any of its lines", Term("", "how many", low=1.0, high=1e5, whole=True)),
    ),
    usual_rows=160,
    purpose="What packages of a batch weigh, in the order in which they were taken; the check sheet says what they come to.",
    optional=True,
    records=True,
)  # fmt: skip
