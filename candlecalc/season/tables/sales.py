"""What is sold, at markets and elsewhere, what tax is due on it, and what came back: the year's sales."""

from candlecalc.calc import terms
from candlecalc.declaration.term import Term
from candlecalc.season.fields import Field, Table, term_of
from candlecalc.season.tables.stock import BATCH_NUMBER, HOURS, MOST, PIECES
from candlecalc.season.tables.taken import MONEY, entry

SOLD = Term("", "how many pieces", low=1.0, high=MOST, whole=True)
ORDER_LINE = Term("", "a line's number", low=1.0, high=1e4, whole=True)

# What a line of Sales can be besides a sale; what each does is in workbook/tabs/sell/sold.py.
ON_CONSIGNMENT = ("out", "back", "sold there")
HELD_FOR_BUYERS = ("deposit", "deposit used", "gift card sold", "gift card spent")
# Handed over when they are taken, whether or not a day is typed under Paid on.
HANDED_OVER = ("deposit", "gift card sold")
SALE_KINDS = ("refund", "returned", *ON_CONSIGNMENT, *HELD_FOR_BUYERS)
ARE_SALES = ("", "sold there")
BACK_IN_STOCK = "back in stock"

SALES = Table(
    "sales",
    "Sales",
    (
        Field("date", "Date", "the day it was sold, or went out to the shop", date=True, required=True),
        Field("place", "Place", "where it was sold", names_from="places", required=True),
        Field("product", "Product", "the candle or set; none for a deposit, a gift card or a refund of money alone", names_from="recipes"),
        Field("pieces", "How many", "how many pieces", SOLD, needed_when=("product", ())),
        Field("kind", "Kind", "left out for a sale; out, back and sold there are of a shop that pays when it has sold", choices=SALE_KINDS, width=15),
        Field("price", "Price each, {money}", "what the buyer paid for each, as prices are stated there, if it was not your price less the usual discount; of a deposit or gift card, the sum", MONEY, needed_when=("kind", HELD_FOR_BUYERS)),
        Field("discount", "Discount, {money}", "taken off the line, as prices are stated there", MONEY),
        Field("order", "Order", "the number of the order or receipt; of a gift card its own", width=14, longest=32, joins=True),
        Field("order_line", "Line of order", "its line there, where an order has the same product twice", ORDER_LINE, not_in_cost=True),
        Field("postage", "Postage charged, {money}", "what the buyer paid for postage, as prices are stated there: once an order", MONEY),
        Field("fee", "Fee kept, {money}", "what the place kept of this line, if not as Places sold says", MONEY),
        Field("tax_rate", "Tax rate", "if not the one that held there that day", term_of(terms.Tax)),
        Field("area", "Tax area", "the state, county or country whose tax is due, where there are several", width=14, longest=32, joins=True, sought=True),
        Field("batch", "Batch", "the number on its label, if you noted it", BATCH_NUMBER, not_in_cost=True),
        Field("became", "What came back", "of a return: whether the candle can be sold again", choices=(BACK_IN_STOCK, "thrown away"), needed_when=("kind", ("returned",)), width=13),
        Field("paid_on", "Paid on", "the day you had the money; left out while it is owed", date=True, not_in_cost=True),
        Field("paid_into", "Paid into", "the account or purse it came into", width=16, longest=28, not_in_cost=True),
        Field("payout", "Payout", "the reference of the payment that it came with, where a place pays several sales together", width=16, longest=32, joins=True, not_in_cost=True),
        Field("payout_sum", "Payout came to, {money}", "what that payment was: typed once, on any of its lines", MONEY, not_in_cost=True),
        Field("notes", "Notes", "what you want to know of it later", width=36, not_in_cost=True),
    ),
    usual_rows=300,
    purpose="What you sold, a line for each product of an order, and what went to shops that pay when they have sold.",
    optional=True,
    records=True,
)  # fmt: skip

MARKET_DAYS = Table(
    "market_days",
    "Market days",
    (
        Field("date", "Date", "the day of the market", date=True, required=True),
        Field("place", "Place", "your stall, as it stands on Places sold", names_from="places", required=True),
        Field("fee", "Stand fee, {money}", "what the place at the market cost that day", MONEY),
        Field("travel", "Travel, {money}", "fuel, tickets, parking", MONEY),
        Field("hours", "Hours", "hours of your own time, with the way and setting up", HOURS),
        Field("float", "Cash taken along, {money}", "change in the cash box at the start", MONEY),
        Field("cash", "Cash counted, {money}", "what was in the cash box at the end", MONEY),
        Field("card", "Paid by card, {money}", "what the card reader took that day", MONEY),
        Field("notes", "Notes", "weather, neighbours, what people asked for", width=24, not_in_cost=True),
    ),
    usual_rows=24,
    purpose="Each market day: what it cost, how long it took, and what was in the cash box.",
    unique=("date", "place"),
    optional=True,
    records=True,
)  # fmt: skip

MARKET_LINES = Table(
    "market_lines",
    "Market lines",
    (
        Field("date", "Date", "the day of the market, as it stands on Market days", date=True, required=True),
        Field("product", "Product", "the candle or set", names_from="recipes", required=True),
        Field("along", "Taken along", "how many you took to the market", PIECES),
        Field("back", "Brought back", "how many you brought home: what is missing was sold, given away or broken", PIECES),
        Field("sold", "Sold", "how many were sold, if you kept count", PIECES),
        Field("given", "Given away", "how many were given away", PIECES),
        Field("broken", "Broken", "how many broke", PIECES),
        Field("price", "Price each, {money}", "what buyers paid for each, if not your price there", MONEY),
        Field("place", "Place", "which market, where there were two on that day", names_from="places"),
    ),
    usual_rows=120,
    purpose="What you took to a market and what you brought back, a line for each product.",
    unique=("date", "product", "place", "price"),
    optional=True,
    records=True,
)  # fmt: skip

TAX_RATES = Table(
    "tax_rates",
    "Tax by day",
    (
        Field("date", "From", "the first day the rate holds; before that, what Settings say", date=True, required=True),
        Field("rate", "Tax rate, of the price", "rate of sales tax or VAT; ask your tax office", entry(terms.Tax), required=True),
        Field("area", "Tax area", "the state, county or country, as it stands on Sales; none for all others", width=14, longest=32, joins=True, sought=True),
    ),
    usual_rows=12,
    purpose="Tax rates that changed, or that differ by area: earlier sales keep what held on their day.",
    unique=("date", "area"),
    optional=True,
    records=True,
)  # fmt: skip

COMPLAINTS = Table(
    "complaints",
    "Complaints",
    (
        Field("date", "Date", "the day you heard of it", date=True, required=True),
        Field("product", "Product", "the candle or set", names_from="recipes", required=True),
        Field("what", "What was wrong", "in a few words, without names: sooted, cracked, arrived broken", width=40, required=True),
        Field("batch", "Batch", "the number on its label: Trace shows what went into it", BATCH_NUMBER),
        Field("order", "Order", "the number of the order, if there was one", width=14, longest=32),
        Field("done", "What you did", "refunded, sent another, wrote to the supplier; left out while it is open", width=40),
    ),
    usual_rows=24,
    purpose="What buyers brought back or complained of, by batch.",
    optional=True,
    records=True,
)  # fmt: skip
