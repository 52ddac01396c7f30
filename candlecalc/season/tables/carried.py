"""What a season takes over from the one before: what was still open, and what was sold then."""

from candlecalc.calc import terms
from candlecalc.declaration.term import Term
from candlecalc.season.fields import Field, Table
from candlecalc.season.tables.taken import entry

OWED_TO_MAKER, OWED_BY_MAKER = ("sale", "payout"), ("purchase", "deposit", "gift card")
# In a month more may have come back than was sold.
SOLD_THEN = Term("", "how many pieces", low=-1e6, high=1e6, whole=True)
SIGNED = entry(terms.SignedMoney, low=-1e6, high=1e6)

STILL_OPEN = Table(
    "still_open",
    "Still open",
    (
        Field("date", "Date", "the day of the sale, the purchase, the deposit", date=True, required=True),
        Field("kind", "Kind", "sales and payouts are owed to you; you owe purchases, deposits and gift cards", choices=(*OWED_TO_MAKER, *OWED_BY_MAKER), required=True, width=10),
        Field("who", "Place or supplier", "who owes it, or to whom you owe it", width=24, longest=32, required=True),
        Field("sum", "Sum, {money}", "what is open of it; minus for a sale of which you owe something back", SIGNED, required=True),
        Field("document", "Order or document", "its number", width=16, longest=32),
        Field("paid_on", "Settled on", "the day it was paid or used up; left out while it is open", date=True),
        Field("paid_from", "Paid from or into", "the account or purse", width=16, longest=28),
    ),
    usual_rows=24,
    purpose="What was owed to you, and what you owed, when this season began.",
    optional=True,
    records=True,
)  # fmt: skip

LAST_SOLD = Table(
    "last_sold",
    "Sold last season",
    (
        Field("month", "Month", "the first day of the month", date=True, required=True),
        Field("product", "Product", "the candle or set", names_from="recipes", required=True),
        Field("place", "Place", "where it was sold", names_from="places", required=True),
        Field("pieces", "How many", "how many were sold, less what came back", SOLD_THEN, required=True),
        Field("net", "Sales before tax, {money}", "what they brought before tax", SIGNED),
        Field("cost", "Cost of them, {money}", "what those candles cost to make", SIGNED),
    ),
    usual_rows=120,
    purpose="What was sold in the season before: Plan begins with it, and the report compares with it.",
    unique=("month", "product", "place"),
    optional=True,
    records=True,
)  # fmt: skip
