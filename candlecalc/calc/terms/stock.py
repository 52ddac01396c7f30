"""Words of stock: what came in and went out, what is left of it, and what that is worth."""

from datetime import date
from typing import Annotated, List, Literal, Optional, Sequence

from candlecalc.declaration.term import LARGEST, Term

# A log of stock
Moves = Annotated[
    Sequence[float],
    Term(
        "", "what came in, with a minus what went out, in the order it happened", low=-LARGEST, many=True, goods="alike"
    ),
]
MoveCosts = Annotated[
    Sequence[Optional[float]],
    Term("money per unit", "cost of one unit of what came in; blank where it went out", many=True, blank=True),
]
LogMethod = Annotated[
    Literal["FIFO", "moving average", "LIFO"],
    Term(
        "",
        "FIFO: the oldest goes first; moving average: one rate, new after each receipt; LIFO: to compare only",
        choices=("FIFO", "moving average", "LIFO"),
    ),
]
CountMethod = Annotated[
    Literal["FIFO", "periodic average", "LIFO"],
    Term(
        "",
        "FIFO: the newest is left; periodic average: one rate for the whole time; LIFO: to compare only",
        choices=("FIFO", "periodic average", "LIFO"),
    ),
]
Bought = Annotated[
    Sequence[float],
    Term("", "how much of each lot: what was there at the start first, then each receipt", many=True, goods="alike"),
]
LotCosts = Annotated[Sequence[float], Term("money per unit", "cost of one unit of each lot", many=True)]
Taken = Annotated[Sequence[float], Term("", "how much was taken out of each lot", many=True, goods="alike")]
Left = Annotated[float, Term("", "how much is left by the count", goods="alike")]
Used = Annotated[float, Term("money", "what the goods that went out cost")]
Worth = Annotated[float, Term("money", "what the stock on hand is worth at cost")]
IssueCosts = Annotated[List[float], Term("money", "cost of what went out, in its line; 0 for a receipt", many=True)]
LotLine = Annotated[float, Term("", "line of the log in which the lot came in, counted from 1", low=1.0, whole=True)]

# What it can still bring
SellingPrice = Annotated[float, Term("money", "what one is expected to sell for")]
ToFinish = Annotated[float, Term("money", "what it still costs to finish one")]
ToSell = Annotated[float, Term("money", "what it costs to sell one: fees, packing, postage paid by the maker")]
Realisable = Annotated[float, Term("money per unit", "what one brings after the costs to finish and to sell it")]
ItemAmounts = Annotated[Sequence[float], Term("", "how much there is of each item", many=True, goods="each")]
ItemCosts = Annotated[Sequence[float], Term("money per unit", "what one of each item cost", many=True)]
ItemWorth = Annotated[
    Sequence[float],
    Term("money per unit", "what one of each item brings after the costs to finish and to sell it", many=True),
]

# Counting, and how fast stock goes
Counted = Annotated[float, Term("", "how much the count finds", goods="alike")]
Booked = Annotated[float, Term("", "how much the books or the log say there is", goods="alike")]
Difference = Annotated[float, Term("", "more than the books say; minus for less", low=-LARGEST, goods="alike")]
GoodsCost = Annotated[float, Term("money", "cost of the goods sold or used over the time")]
OpeningStock = Annotated[float, Term("money", "what stock was worth at the start, at cost")]
ClosingStock = Annotated[float, Term("money", "what stock was worth at the end, at cost")]
Turns = Annotated[float, Term("times", "how often the average stock was sold or used over the time")]
Period = Annotated[float, Term("days", "how many days the time has", low_excluded=True, high=3660.0)]
DaysOfStock = Annotated[float, Term("days", "how many days the stock lasts")]
DaysCovered = Annotated[float, Term("days", "how many days the stock lasts", rounding="down")]
PerDay = Annotated[float, Term("", "how much is used or sold in a day", low_excluded=True, goods="alike")]

# Lots with a date
MadeDay = Annotated[date, Term("date", "the day the lot was made, or came in")]
ShelfLife = Annotated[
    float,
    Term("days", "how long it keeps, by the supplier's data sheet or the maker's own tests", high=36500.0, whole=True),
]
ShelfMonths = Annotated[
    float,
    Term(
        "months",
        "how many months it keeps, by the supplier's data sheet or the maker's own tests",
        high=600.0,
        whole=True,
    ),
]
UseBy = Annotated[date, Term("date", "the last day on which to use the lot")]
AsOf = Annotated[date, Term("date", "the day it is counted from: today, or the day of use")]
DaysLeft = Annotated[float, Term("days", "days that the lot still keeps; minus where it is past", low=-LARGEST)]
LotNames = Annotated[Sequence[str], Term("", "name or number of each lot", text=True, many=True)]
LotAmounts = Annotated[Sequence[float], Term("", "how much is left of each lot", many=True, goods="alike")]
LotDates = Annotated[Sequence[date], Term("date", "the last day on which to use each lot", many=True)]
ToUse = Annotated[float, Term("", "how much is needed now", low_excluded=True, goods="alike")]
LotName = Annotated[str, Term("", "name or number of the lot", text=True)]
