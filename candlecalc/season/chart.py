"""The chart of accounts: our own, with the bookkeeper's numbers and the maker's own accounts where they are typed."""

from typing import NamedTuple

from candlecalc.season.season import Season
from candlecalc.season.tables.books import MONEY_ACCOUNT

ASSET, LIABILITY, EQUITY, INCOME, COST = "asset", "liability", "equity", "income", "cost"
RESULT = (INCOME, COST)  # what a year's result is made of; the others go on into the next
FIRST_OF_YOUR_OWN = 8000


class Account(NamedTuple):
    """An account: our number, its name, what it is, what it is for, and the bookkeeper's own number."""

    code: str
    name: str
    kind: str
    purpose: str = ""
    theirs: str = ""
    money: bool = False


# The accounts that entries are made on by themselves.
CASH_AND_BANK, OWED_TO_YOU = "Bank and cash", "Owed by buyers and places"
MATERIALS, WORK, CANDLES = "Materials in stock", "Work in hand", "Candles in stock"
STOCKS = (MATERIALS, WORK, CANDLES)  # worked out from the tabs
TAX_BACK, TAX_DUE = "Tax to claim back", "Sales tax or VAT owed"
OWED, HELD = "Owed for purchases and bills", "Held for buyers"
CAPITAL, TAKEN = "Capital", "Taken by the owner"
SALES, COST_SOLD, BOUGHT, FEES = "Sales", "Cost of candles sold", "Materials bought", "Selling fees"
OVERHEAD, PAID_HELP = "Production overhead", "Paid help at the bench"
STANDS, TRAVEL, SAMPLES = "Stands and markets", "Travel", "Samples, tests and gifts"

CHART = (
    Account("1000", CASH_AND_BANK, ASSET, "all money, unless Accounts names the purse or bank account", money=True),
    Account("1100", OWED_TO_YOU, ASSET, "what buyers and places have not paid yet"),
    Account("1200", MATERIALS, ASSET, "materials at cost, as on Stock"),
    Account("1210", WORK, ASSET, "batches between their materials and their candles"),
    Account("1220", CANDLES, ASSET, "candles at cost, as on Candles; those at shops are among them"),
    Account("1300", TAX_BACK, ASSET, "tax on what was bought that the tax office gives back"),
    Account("1500", "Equipment", ASSET, "what is used for years: a melter, a stand"),
    Account("1510", "Depreciation so far", ASSET, "what equipment has lost of its value; a credit"),
    Account("2000", OWED, LIABILITY, "purchases and bills not paid yet"),
    Account("2050", "Wages and bills owed", LIABILITY, "at the end of a year: what no bill has come for yet"),
    Account("2100", TAX_DUE, LIABILITY, "tax that you charged and pay over; never what a place pays over"),
    Account("2200", HELD, LIABILITY, "deposits and gift cards that no candle was given for yet"),
    Account("2300", "Loans", LIABILITY, "what is owed to a bank or a friend"),
    Account("3000", CAPITAL, EQUITY, "what the owner has in the business"),
    Account("3100", TAKEN, EQUITY, "money and candles that the owner took, in this year"),
    Account("4000", SALES, INCOME, "sales before tax, returns and refunds taken off"),
    Account("4100", "Discounts for early payment", INCOME, "what shops took off for paying early; a debit"),
    Account("4200", "Other income", INCOME, "what came in otherwise"),
    Account("5000", COST_SOLD, COST, "candles sold at cost, and what broke, failed or was missing when counted"),
    Account("5100", OVERHEAD, COST, "workshop costs, less what batches were charged with"),
    Account("5110", PAID_HELP, COST, "wages for making, less what batches were charged with"),
    Account("5200", BOUGHT, COST, "by the cash method: materials paid for"),
    Account("6000", FEES, COST, "what places and card firms kept"),
    Account("6100", "Postage and delivery", COST, "what sending candles cost"),
    Account("6200", STANDS, COST, "stand fees"),
    Account("6300", TRAVEL, COST, "fuel, tickets, parking"),
    Account("6400", SAMPLES, COST, "what was given away, tried or burned"),
    Account("6500", "Advertising", COST, ""),
    Account("6600", "Insurance", COST, ""),
    Account("6700", "Office, phone and web", COST, ""),
    Account("6750", "Bank and card", COST, "what banks and card firms charge, besides fees of sales"),
    Account("6800", "Professional help", COST, "bookkeeper, lawyer, tests by a laboratory"),
    Account("6850", "Wages, not for making", COST, "help at the stall, at packing"),
    Account("6900", "Depreciation", COST, "of equipment that is not for making"),
    Account("6950", "Interest", COST, ""),
    Account("6990", "Other costs", COST, ""),
)
OURS = {account.name.casefold(): account for account in CHART}


def chart_of(season: Season) -> dict[str, Account]:
    """The accounts of a season by their names in small letters. A ValueError names one that is not whole."""
    chart = dict(OURS)
    for place, row in season.rows("accounts"):
        name, kind, code = (str(row[key] or "") for key in ("account", "kind", "code"))
        own = chart.get(name.casefold())
        if not own and not kind:
            raise ValueError(f"tab Accounts, {name}: it is not on Chart, so its kind is needed: money, asset, cost ...")
        number = str(FIRST_OF_YOUR_OWN + 10 * place)
        money = kind == MONEY_ACCOUNT
        account = own or Account(number, name, ASSET if money else kind, "your own", money=money)
        chart[name.casefold()] = account._replace(theirs=code)
    return chart
