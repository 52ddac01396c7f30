"""Words of the books: tax as it is booked, entries, cost of goods, terms of payment."""

from typing import Annotated, List, Literal, Optional, Sequence

from candlecalc.calc.terms import PERCENT
from candlecalc.declaration.term import LARGEST, Term

Currency = Annotated[str, Term("", "the currency's three letters, such as USD, GBP, EUR", text=True)]
LineAmounts = Annotated[Sequence[float], Term("money", "the amount of each line, all at one rate of tax", many=True)]
LineTaxes = Annotated[List[float], Term("money", "the tax of each line, rounded", many=True)]
TaxRounding = Annotated[
    Literal["nearest", "down"],
    Term(
        "",
        "to the nearest coin, half up; or down, where the tax office allows it on the total of an invoice",
        choices=("nearest", "down"),
    ),
]

EntryMarks = Annotated[
    Sequence[str], Term("", "number or date of the entry that each line is of", text=True, many=True)
]
Accounts = Annotated[Sequence[str], Term("", "the account of each line", text=True, many=True)]
Debits = Annotated[
    Sequence[float], Term("money", "debit of each line; blank where it is a credit", many=True, blank=True)
]
Credits = Annotated[
    Sequence[float], Term("money", "credit of each line; blank where it is a debit", many=True, blank=True)
]
EntryMark = Annotated[str, Term("", "number or date of the entry", text=True)]
Event = Annotated[str, Term("", "what happened", text=True)]
Account = Annotated[str, Term("", "the account", text=True)]
Debit = Annotated[Optional[float], Term("money", "amount on the debit side", blank=True)]
Credit = Annotated[Optional[float], Term("money", "amount on the credit side", blank=True)]

OpeningStock = Annotated[float, Term("money", "stock at the start of the period, at making cost")]
ClosingStock = Annotated[float, Term("money", "stock at the end of the period, at making cost")]
Bought = Annotated[float, Term("money", "bought in the period, less returns and discounts, freight in with it")]
Withdrawn = Annotated[float, Term("money", "cost of what was taken for the maker's own use")]
Used = Annotated[float, Term("money", "materials used in the period")]
PaidLabour = Annotated[float, Term("money", "paid labour of making; nothing for the maker's own time")]
MakingOverhead = Annotated[float, Term("money", "overhead of making")]
OverheadPaid = Annotated[MakingOverhead, "overhead of making that was paid"]
OverheadInGoods = Annotated[MakingOverhead, "overhead that was charged to candles by its rate"]
Supplies = Annotated[float, Term("money", "supplies used in making that are not in stock")]
OtherMaking = Annotated[float, Term("money", "other costs of making")]
Made = Annotated[float, Term("money", "cost of goods made")]
CostOfGoods = Annotated[float, Term("money", "cost of goods, over the period")]
Available = Annotated[float, Term("money", "the sum of the lines above it")]
OverheadGap = Annotated[
    float, Term("money", "overhead that was not charged to candles; minus where too much was", low=-LARGEST)
]
Sales = Annotated[float, Term("money", "sales of the period, before tax")]
SalesTax = Annotated[float, Term("money", "sales tax or VAT charged on them, owed to the tax office")]
SellingFees = Annotated[float, Term("money", "fees that places and card companies kept back")]
CountShort = Annotated[float, Term("money", "cost of what the count found missing")]

Invoice = Annotated[float, Term("money", "amount of the invoice")]
Returned = Annotated[float, Term("money", "taken back or allowed off before it is paid")]
EarlyDiscount = Annotated[float, Term("of the invoice", "discount for paying early", high=0.5, hint=PERCENT)]
EarlyDays = Annotated[float, Term("days", "days in which the discount is given", high=365.0, whole=True)]
DueDays = Annotated[float, Term("days", "days after which the whole is due", high=365.0, whole=True)]
YearDays = Annotated[float, Term("days", "days that a year is counted as", low=360.0, high=366.0, whole=True)]
YearlyCost = Annotated[float, Term("of the amount a year", "what it costs, as a share a year")]
