"""What a bookkeeper asks for besides purchases, batches and sales: other costs, other entries, the chart of accounts."""

from candlecalc.season.fields import Field, Table
from candlecalc.season.tables.taken import MONEY

ACCRUAL, CASH = "accrual", "cash"
# What a cost is for, and the account of our own chart (season/chart.py) that it is booked on.
CATEGORIES = {
    "production overhead": "Production overhead",
    "paid help at the bench": "Paid help at the bench",
    "postage and delivery": "Postage and delivery",
    "stands and markets": "Stands and markets",
    "travel": "Travel",
    "samples, tests and gifts": "Samples, tests and gifts",
    "advertising": "Advertising",
    "insurance": "Insurance",
    "office, phone and web": "Office, phone and web",
    "bank and card": "Bank and card",
    "professional help": "Professional help",
    "wages, not for making": "Wages, not for making",
    "interest": "Interest",
    "equipment": "Equipment",
    "other costs": "Other costs",
}

EXPENSES = Table(
    "expenses",
    "Expenses",
    (
        Field("date", "Date", "the day on the bill or receipt", date=True, required=True),
        Field("payee", "Payee", "who was paid, or is to be", width=24, longest=40, required=True),
        Field("document", "Document", "the number of the bill or receipt", width=16, longest=32),
        Field("category", "What for", "which cost it is; not what stands on Purchases or Market days", choices=tuple(CATEGORIES), required=True, width=24),
        Field("amount", "Amount, {money}", "what it came to, with all tax", MONEY, required=True),
        Field("tax", "Tax to claim back, {money}", "of that amount, the tax that you claim back", MONEY),
        Field("paid_on", "Paid on", "the day you paid; left out while it is open", date=True),
        Field("paid_from", "Paid from", "the account or purse it was paid from", width=16, longest=28),
    ),
    usual_rows=60,
    purpose="What the business paid besides materials and market days: a line for each bill or receipt.",
    optional=True,
    records=True,
)  # fmt: skip

OPENING_BALANCE, OWED_AT_THE_END = "opening balance", "wages or bill owed"
ENTRY_KINDS = (
    OPENING_BALANCE,
    "equipment",
    "depreciation",
    "owner in or out",
    "loan",
    OWED_AT_THE_END,
    "deposit",
    "early-payment discount",
    "tax paid over",
    "other",
)
ENTRIES = Table(
    "entries",
    "Other entries",
    (
        Field("date", "Date", "the day it counts from", date=True, required=True),
        Field("debit", "Debit account", "what gets more: an asset or a cost that grows, a debt that is paid", width=30, longest=32, required=True, offers="chart"),
        Field("credit", "Credit account", "where it comes from: money that goes out, a debt or capital that grows", width=30, longest=32, required=True, offers="chart"),
        Field("amount", "Amount, {money}", "how much", MONEY, required=True),
        Field("text", "Text", "what it is for, as your bookkeeper will read it", width=44, required=True),
        Field("kind", "Kind", "opening balance for what was there before these records: money, equipment, loans, against Capital", choices=ENTRY_KINDS, required=True, width=22),
    ),
    usual_rows=30,
    purpose="What no other tab has: opening balances, equipment, loans, what you put in or took out, tax paid over.",
    optional=True,
    records=True,
)  # fmt: skip

MONEY_ACCOUNT = "money"
ACCOUNT_KINDS = (MONEY_ACCOUNT, "asset", "liability", "equity", "income", "cost")
ACCOUNTS = Table(
    "accounts",
    "Accounts",
    (
        Field("account", "Account", "one of Chart, or one of your own; a purse or bank account as it stands under Paid from", name=True, required=True),
        Field("kind", "Kind", "of an account of your own: money for a bank account, card or purse; else left out", choices=ACCOUNT_KINDS, width=10),
        Field("code", "Bookkeeper's code", "the number that your bookkeeper gives it", width=16, longest=20),
    ),
    usual_rows=40,
    purpose="Your bookkeeper's numbers for accounts, and accounts of your own; without any, Chart is used as it is.",
    unique=("account",),
    optional=True,
    records=True,
)  # fmt: skip
