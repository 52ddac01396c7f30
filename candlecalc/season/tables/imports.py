"""How files from elsewhere are read in: which of their columns is which of ours, and how they write things."""

from typing import NamedTuple

from candlecalc.season.fields import Field, Table, short
from candlecalc.season.tables.labels import WEIGHTS
from candlecalc.season.tables.sales import SALES
from candlecalc.season.tables.stock import COUNTS, PURCHASES
from candlecalc.season.tables.taken import MONEY

# What a file may be read as, and the table that its lines go to.
READ_AS = {"purchases": PURCHASES, "sales": SALES, "counts": COUNTS, "weighings": WEIGHTS}

# What a file may have in place of one of our fields: the sum of a line for the price of each, one list of all names.
LINE_PRICE, THING = "line_price", "thing"
PRICE_OF_LINE = Field(
    LINE_PRICE, "Price of the line, {money}", "what the whole line came to, in place of the price of each", MONEY
)
BESIDE = {
    "purchases": (PRICE_OF_LINE,),
    "sales": (PRICE_OF_LINE,),
    "counts": (Field(THING, "Material or product", "one column of theirs that names both"),),
    "weighings": (),
}

DAY_FIRST, MONTH_FIRST, YEAR_FIRST = DATES = ("day first", "month first", "year first")
COMMA, POINT = DECIMALS = ("decimal comma", "decimal point")
TURNED, PER_CENT, REPEATED = "sign turned", "per cent", "on every line"
WRITTEN = (*DATES, *DECIMALS, TURNED, PER_CENT, REPEATED)
ABOVE, LEAVE_OUT = "as above", "leave out"


class Into(NamedTuple):
    """A column of ours that a column of theirs can go into."""

    kind: str
    field: Field

    @property
    def name(self) -> str:
        table = READ_AS[self.kind]
        label = table.label(self.field) if self.field.key in table.by_key else short(self.field.head)
        return f"{table.title}: {label}"


INTO = {
    each.name.casefold(): each
    for kind, table in READ_AS.items()
    for each in (Into(kind, field) for field in (*table.fields, *BESIDE[kind]))
}

IMPORTS = Table(
    "imports",
    "Imports",
    (
        Field("layout", "Layout", "a name of yours for files of one form, on each of its lines; left out where all files of a kind have one form", width=24, longest=32),
        Field("into", "Goes into", "the tab and the column of ours; Import columns says what each takes", required=True, offers="import_columns", longest=60, width=32),
        Field("column", "Their column", "its head, as it stands in the file; left out where the file has none for it", width=28, longest=60),
        Field("word", "Their word", "what stands in a cell of theirs that is called otherwise here; left out for a blank cell", width=26, longest=60),
        Field("here", "Is here", f"what that is here, as you would type it; {ABOVE}; or {LEAVE_OUT}, for lines that are not meant", width=26, longest=60),
        Field("written", "Written", "how they write dates or numbers, where that is in doubt or not as here", choices=WRITTEN, width=15),
    ),
    usual_rows=40,
    purpose="How to read in files from a shop, a till or a scale: a line for each column of theirs, and for a word that differs.",
    optional=True,
    records=True,
)  # fmt: skip
