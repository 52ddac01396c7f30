"""What a maker buys, a log."""

from candlecalc.declaration.term import Term
from candlecalc.season.fields import Field, Table
from candlecalc.season.tables.taken import MONEY

PACKS = Term("", "how many packs", low=0.0, low_excluded=True, high=1e5)

PURCHASES = Table(
    "purchases",
    "Purchases",
    (
        Field("date", "Date", "the day on the supplier's document", date=True, required=True),
        Field("document", "Document", "the number of the invoice, receipt or delivery note", width=16, longest=32),
        Field("material", "Material", "what was bought: its line on Materials", names_from="materials", required=True),
        Field("packs", "Packs", "how many packs came, in the pack size on Materials", PACKS, required=True),
        Field("price", "Price, {money} a pack", "before tax you can claim back", MONEY, required=True),
        Field("discount", "Discount, {money}", "taken off this line", MONEY),
        Field("charges", "Freight and duty, {money}", "of the whole document: typed once, on any of its lines", MONEY),
        Field("tax", "Tax kept, {money}", "tax on this line that you cannot claim back", MONEY),
        Field("supplier", "Supplier", "who sold it", width=24, longest=28),
        Field("lot", "Supplier's lot", "the number on the pack", width=16, longest=32),
        Field("expiry", "Use by", "the day on the pack", date=True, not_in_cost=True),
    ),
    usual_rows=400,
    purpose="What you bought, a line for each material on a document, and what it cost with freight and duty.",
    optional=True,
    records=True,
)  # fmt: skip
