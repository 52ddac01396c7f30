"""Money: tax as it is booked, in the coins of a currency, and paying early."""

import math

import candlecalc.tables as tables
from candlecalc.calc.terms import Digits, Money, Stated, Tax
from candlecalc.calc.terms.money import (
    Currency,
    DueDays,
    EarlyDays,
    EarlyDiscount,
    Invoice,
    LineAmounts,
    LineTaxes,
    Returned,
    TaxRounding,
    YearDays,
    YearlyCost,
)
from candlecalc.declaration.declared import formula
from candlecalc.quantities.rounding import round_half_away

MINOR_UNITS = "ISO 4217, minor units of currencies, second-hand"
TAX_ROUNDING = (
    "Streamlined Sales and Use Tax Agreement 324 (US); HMRC VATREC12010 to 12030 (UK); CJEU C-484/06 (EU), "
    "headline only: check against the tax office's own page"
)
PAYING_EARLY = "OpenStax, Financial Accounting 6.3; Principles of Finance 19.2"


@formula(source=MINOR_UNITS, no_native="it looks a table up", part=True)
def coin_digits(currency: Currency) -> Digits:
    """Decimals of a currency's smallest unit: 2 for cents, 0 for yen. For `split_charge` and `round_money`.

    >>> coin_digits(currency="JPY")
    0.0
    """
    found = {row["currency"]: float(row["decimals"]) for row in tables.rows("currencies")}
    if currency.upper() not in found:
        raise ValueError(f'coin_digits: "{currency}" is not in the table; type the decimals of its smallest coin.')
    return found[currency.upper()]


@formula(
    source=TAX_ROUNDING,
    words="sales tax on an order, VAT on an invoice, tax per item",
)
def tax_by_line(amounts: LineAmounts, tax: Tax, stated: Stated = "before tax", digits: Digits = 2) -> LineTaxes:
    """Sales tax or VAT of each line of an order, each rounded to the coin, half up.

    For a seller who rounds by the item. The total can differ by cents from
    `tax_by_order`: use one of them throughout.

    >>> tax_by_line(amounts=[38, 80], tax=0.06)
    [2.28, 4.8]
    """
    return [round_half_away(_tax(amount, tax, stated), int(digits)) for amount in amounts]


@formula(
    native='IF(rounding="down",ROUNDDOWN(ROUND(SUM(amounts)*tax/(1+tax*(stated="with tax")),6),digits),'
    'ROUND(SUM(amounts)*tax/(1+tax*(stated="with tax")),digits))',
    source=TAX_ROUNDING,
    words="sales tax on an order, VAT on an invoice, tax due, tax on the total, invoice total",
)
def tax_by_order(
    amounts: LineAmounts,
    tax: Tax,
    stated: Stated = "before tax",
    digits: Digits = 2,
    rounding: TaxRounding = "nearest",
) -> Money:
    """Sales tax or VAT of an order at one rate, worked out on its total and rounded once.

    >>> tax_by_order(amounts=[428.99], tax=0.0825)
    35.39
    """
    whole = _tax(math.fsum(amounts), tax, stated)
    if rounding == "nearest":
        return round_half_away(whole, int(digits))
    return math.floor(round_half_away(round_half_away(whole, 6) * 10**digits, 6)) / 10**digits


def _tax(amount: float, tax: float, stated: str) -> float:
    return amount * tax / (1 + tax * (stated == "with tax"))


DISCOUNT = "ROUND((invoice-returned)*discount,2)"
RETURNS = {"invoice >= returned": "no more can be returned than was invoiced"}


@formula(
    native=DISCOUNT,
    requires=RETURNS,
    source=PAYING_EARLY,
    words="payment terms, 2/10 net 30, invoice discount, prompt payment, net 30",
)
def early_discount(invoice: Invoice, discount: EarlyDiscount, returned: Returned = 0.0) -> Money:
    """Discount for paying an invoice early, on what is left of it after returns.

    >>> early_discount(invoice=12000, discount=0.02, returned=1000)
    220.0
    """
    return round_half_away((invoice - returned) * discount, 2)


@formula(
    native=f"invoice-returned-{DISCOUNT}",
    requires=RETURNS,
    source=PAYING_EARLY,
    words="payment terms, 2/10 net 30, pay an invoice early, net 30",
)
def early_payment(invoice: Invoice, discount: EarlyDiscount, returned: Returned = 0.0) -> Money:
    """What to pay in the days of the discount.

    >>> early_payment(invoice=12000, discount=0.02, returned=1000)
    10780.0
    """
    return invoice - returned - early_discount(invoice, discount, returned)


@formula(
    native="year/(due-early)*discount/(1-discount)",
    requires={"early < due": "the discount must end before the whole is due"},
    source=PAYING_EARLY,
    words="payment terms, net 30, late payment, skip the discount",
)
def cost_of_paying_late(discount: EarlyDiscount, early: EarlyDays, due: DueDays, year: YearDays = 360) -> YearlyCost:
    """What passing over an early-payment discount costs, as a simple rate a year.

    >>> round(cost_of_paying_late(discount=0.02, early=10, due=30), 4)
    0.3673
    """
    return year / (due - early) * discount / (1 - discount)
