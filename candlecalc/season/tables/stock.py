"""What is bought, poured, taken out and counted: the year's logs."""

from candlecalc.declaration.term import Term
from candlecalc.season.fields import Field, Table
from candlecalc.season.tables.taken import MONEY, RATE, YES_NO, entry

# Below what a day is to a spreadsheet: a half, typed as 1/2, is no number of packs.
MOST = 20e3
PACKS = Term("", "how many packs", low=0.0, low_excluded=True, high=MOST)
PIECES = Term("", "how many pieces", high=MOST, whole=True)
AMOUNT = Term("", "an amount", low_excluded=True, high=1e7)
COUNTED = Term("", "an amount", high=1e7)
BATCH_NUMBER = Term("", "a batch's number", low=1.0, high=1e9, whole=True)
WEIGHED_IN = Term("g", "a weight", high=1e6)
POURS_AT = entry(Term("C", "a temperature"), 30, 120)
ROOM = entry(Term("C", "a temperature"), 0, 45)
HOURS = Term("h", "hours", high=1000.0)
# What was there when the records began: no purchase and no batch of this season.
OPENING = "opening"

PURCHASES = Table(
    "purchases",
    "Purchases",
    (
        Field("date", "Date", "the day on the supplier's document", date=True, required=True),
        Field("document", "Document", "the number of the invoice, receipt or delivery note", width=16, longest=32, joins=True),
        Field("material", "Material", "what was bought: its line on Materials", names_from="materials", required=True),
        Field("packs", "Packs", "how many packs came, in the pack size on Materials", PACKS, required=True),
        Field("price", "Price, {money} a pack", "before tax you can claim back; of opening stock, what all of it is worth", MONEY, required=True),
        Field("discount", "Discount, {money}", "taken off this line", MONEY),
        Field("charges", "Freight and duty, {money}", "of the whole document: typed once, on any of its lines; shared by what the goods cost before discount", MONEY),
        Field("tax", "Tax kept, {money}", "tax on this line that you cannot claim back", MONEY),
        Field("supplier", "Supplier", "who sold it", width=24, longest=28, joins=True),
        Field("lot", "Supplier's lot", "the number on the pack", width=16, longest=32, joins=True, sought=True),
        Field("expiry", "Use by", "the day on the pack", date=True, not_in_cost=True),
        Field("opened", "Opened on", "the day you began to use it: what is used from then on is taken to be of it", date=True, not_in_cost=True),
        Field("kind", "Kind", "opening for what you had when these records began; else left out", choices=(OPENING,), width=9),
        Field("paid_on", "Paid on", "the day you paid; left out while it is open", date=True, not_in_cost=True),
        Field("paid_from", "Paid from", "the account or purse it was paid from", width=16, longest=28, not_in_cost=True),
        Field("claimed", "Tax to claim back, {money}", "tax on the whole document that you claim back: typed once, on any of its lines", MONEY, not_in_cost=True),
    ),
    usual_rows=120,
    purpose="What you bought, a line for each material on a document, and what it cost with freight and duty.",
    optional=True,
    records=True,
)  # fmt: skip

POURED = (OPENING,)
POURS = Table(
    "pours",
    "Batch log",
    (
        Field("date", "Poured on", "the day you poured, or packed a set", date=True, required=True),
        Field("batch", "Batch number", "its own number, as it stands on the labels: it never changes", BATCH_NUMBER, required=True),
        Field("product", "Product", "what was made, as it stands on Recipes", names_from="recipes", required=True),
        Field("good", "Good", "how many can be sold", PIECES, required=True),
        Field("planned", "Planned", "how many you weighed out for, if not for those that came out", PIECES),
        Field("seconds", "Seconds", "how many came out with a flaw and are kept apart", PIECES),
        Field("scrapped", "Scrapped", "how many were thrown away or melted down", PIECES),
        Field("tests", "Test pieces", "how many were kept to burn", PIECES),
        Field("hours", "Hours", "hours of work on the batch, if not as on Recipes", HOURS),
        Field("poured_at", "Poured at, {temperature}", "temperature of the wax when you poured", POURS_AT, not_in_cost=True),
        Field("room", "Room, {temperature}", "temperature of the room", ROOM, not_in_cost=True),
        Field("weighed_in", "Weighed in, {weight}", "wax and oil that went into the pots", WEIGHED_IN, not_in_cost=True),
        Field("left_over", "Left over, {weight}", "wax and oil that came back out of pots and jugs, and what went into samples", WEIGHED_IN, not_in_cost=True),
        Field("kind", "Kind", "opening for candles you had when these records began; else left out", choices=(OPENING,), width=9),
        Field("cost", "Cost in all, {money}", "of opening stock: what the batch cost to make", MONEY, needed_when=("kind", POURED)),
        Field("notes", "Notes", "what you want to know when you make it again", width=44, not_in_cost=True),
    ),
    usual_rows=120,
    purpose="What you made, a line for each batch; what it took and what it cost follow.",
    unique=("batch",),
    optional=True,
    records=True,
)  # fmt: skip

INSTEAD = Table(
    "instead",
    "Used otherwise",
    (
        Field("batch", "Batch number", "the batch that was made otherwise than Recipes say", BATCH_NUMBER, required=True),
        Field("material", "Material in the recipe", "what the recipe has", names_from="materials", required=True),
        Field("other", "Used instead", "what stood in for it, if anything", names_from="materials"),
        Field("amount", "Amount, {weight} or each", "how much it took in all, if it was weighed", AMOUNT),
        Field("lot", "Supplier's lot", "the lot it came from, if you noted it", width=16, longest=32, joins=True, sought=True),
    ),
    usual_rows=60,
    purpose="What a batch took otherwise than its recipe says: a stand-in, an amount that was weighed, a lot.",
    unique=("batch", "material"),
    optional=True,
    records=True,
)  # fmt: skip

MOVES_OUT = ("test", "sample", "gift", "broken", "own use", "sent back")
MOVES = Table(
    "moves",
    "Taken out",
    (
        Field("date", "Date", "the day it left your stock", date=True, required=True),
        Field("kind", "Kind", "why it left without a sale; sent back is to a supplier", choices=MOVES_OUT, required=True, width=11),
        Field("material", "Material", "the material; none if it was a candle", names_from="materials"),
        Field("product", "Product", "the candle or set; none if it was a material", names_from="recipes"),
        Field("amount", "Amount, {weight} or each", "how much or how many", AMOUNT, required=True),
        Field("lot", "Lot or batch", "the supplier's lot or your batch, if you know it", width=16, longest=32, not_in_cost=True),
        Field("notes", "Notes", "who got it, or what happened", width=44, not_in_cost=True),
    ),
    usual_rows=60,
    purpose="What left without a sale: tests, samples, gifts, what broke, what you used yourself.",
    optional=True,
    records=True,
)  # fmt: skip

COUNTS = Table(
    "counts",
    "Counts",
    (
        Field("date", "Date", "the day you counted, when its work was done", date=True, required=True),
        Field("material", "Material", "the material; none if it was a candle", names_from="materials"),
        Field("product", "Product", "the candle or set; none if it was a material", names_from="recipes"),
        Field("counted", "Counted, {weight} or each", "what there was: of a candle all that you had at home, also in packed sets, and none that is at a shop", COUNTED, required=True),
        Field("by", "Counted by", "who counted", width=16, longest=28, not_in_cost=True),
        Field("kept", "Take over", "yes: from then on the count holds, and what is missing is taken out", choices=YES_NO, width=9),
    ),
    usual_rows=60,
    purpose="What you counted: Stock shows the difference, and takes it over where you say so.",
    optional=True,
    records=True,
)  # fmt: skip

RATES = Table(
    "rates",
    "Rates by day",
    (
        Field("date", "From", "the first day it holds; before that, what Settings say", date=True, required=True),
        Field("paid_rate", "Paid help, {money} an hour", "what an hour of paid help costs you, all told", RATE, required=True),
        Field("overhead", "Production overhead, {money} an hour", "rent, power and tools, for an hour at the bench", RATE, required=True),
    ),
    usual_rows=12,
    purpose="What an hour costs from a day on: earlier batches keep what held when they were poured.",
    unique=("date",),
    optional=True,
    records=True,
)  # fmt: skip
