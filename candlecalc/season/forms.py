"""Forms that small businesses are asked for, by region: which line asks for what.

Lines and articles are named from memory, but for US Schedule C, Part III, whose lines are those of `calc/books.py`
(its source stands there). Forms change from year to year: the bookkeeper says which a business uses, and whether a
line is still the same. In the US many small sellers may treat stock otherwise (Internal Revenue Code, section 471(c),
from memory).
"""

from collections.abc import Mapping

from candlecalc.season import chart

SCHEDULE_C = "US Schedule C, Part III"
SCHEDULE_C_LINES = {
    "35": "inventory at beginning of year: materials, work in hand and candles",
    "36": "purchases, less what was taken for yourself or given away",
    "37": "cost of labour: paid help at the bench, nothing for your own time",
    "38": "materials and supplies: they are among line 36",
    "39": "other costs: workshop",
    "40": "lines 35 to 39",
    "41": "inventory at end of year",
    "42": "cost of goods sold",
}
SCHEDULE_C_NOTE = "Many small sellers may treat stock otherwise: ask which method holds for you."
SALES_TAX = "US sales tax return, by area (state forms differ; from memory)"

VAT_RETURN = "UK VAT return, boxes (from memory)"
VAT_RETURN_LINES = {
    "1": "VAT due on sales",
    "3": "all VAT due: nothing acquired from elsewhere is known here",
    "4": "VAT claimed back",
    "5": "to pay; to get back where below nothing",
    "6": "sales before VAT, in whole pounds on the form",
    "7": "purchases and costs before VAT, in whole pounds on the form",
}


SELF_ASSESSMENT = "UK SA103F, boxes (from memory)"
# Each box with what it asks for and the accounts in it; "other" ones have what is left of income, and of costs.
Box = tuple[str, tuple[str, ...]]
INCOME_BOXES: Mapping[str, Box] = {
    "15": ("turnover", (chart.SALES, "Discounts for early payment")),
    "16": ("other business income", ()),
}
COST_BOXES: Mapping[str, Box] = {
    "17": ("cost of goods", (chart.COST_SOLD, chart.BOUGHT)),
    "19": ("wages", ("Wages, not for making", chart.PAID_HELP)),
    "20": ("travel", (chart.TRAVEL,)),
    "21": ("rent, power, insurance", (chart.OVERHEAD, "Insurance")),
    "23": ("phone, stationery, office", ("Office, phone and web",)),
    "24": ("advertising", ("Advertising",)),
    "25": ("interest", ("Interest",)),
    "26": ("bank and card charges", ("Bank and card",)),
    "28": ("accountancy, legal, professional", ("Professional help",)),
    "29": ("depreciation", ("Depreciation",)),
    "30": ("other expenses", ()),
}
COSTS_IN_ALL, NET_PROFIT = ("31", "total expenses"), ("47", "net profit; a loss, where below nothing, is box 48")

VAT_EU = "EU VAT return (Directive 2006/112/EC, Art. 250; from memory)"
VAT_EU_LINES = {
    "taxable": "sales on which tax is due, before tax",
    "exempt": "sales on which none is due",
    "due": "tax due on sales",
    "back": "tax to deduct on what was bought",
    "pay": "to pay; to get back where below nothing",
}
SMALL_ENTERPRISE = "EU small enterprises' exemption (Directive 2006/112/EC, Art. 288; from memory)"
ANNUAL_TURNOVER = "turnover before tax, for the limit of your country"
