"""Books: entries and their balance, cost of goods made and sold, the lines of a tax schedule.

What a bookkeeper is handed. Which accounts and methods a business may use is for the bookkeeper and the tax
office to say; the figures here follow from what is typed.
"""

import math
from typing import Dict, List, NamedTuple, Optional, Sequence, Tuple

from candlecalc.calc.sources import JOB_COST
from candlecalc.calc.terms import Money, SignedMoney
from candlecalc.calc.terms.money import (
    Account,
    Accounts,
    Available,
    Bought,
    ClosingStock,
    CostOfGoods,
    CountShort,
    Credit,
    Credits,
    Debit,
    Debits,
    EntryMark,
    EntryMarks,
    Event,
    Made,
    MakingOverhead,
    OpeningStock,
    OtherMaking,
    OverheadGap,
    OverheadInGoods,
    OverheadPaid,
    PaidLabour,
    Sales,
    SalesTax,
    SellingFees,
    Supplies,
    Used,
    Withdrawn,
)
from candlecalc.declaration.declared import formula
from candlecalc.quantities.rounding import round_half_away

ENTRIES = "double entry: OpenStax, Financial Accounting, chapters 3 and 6; Managerial Accounting 4.7"
COST_OF_GOODS = "schedules of cost of goods: OpenStax, Managerial Accounting 2.1 and 4.3"
SCHEDULE = "IRS Form 1040 Schedule C, Part III, by Publication 334 (editions of 2013 to 2019)"
NO_MORE_LEFT = "closing stock cannot be more than there was"


class EntrySum(NamedTuple):
    """An entry whose two sides differ."""

    entry: EntryMark
    debits: Money
    credits: Money
    over: SignedMoney


@formula(
    source=ENTRIES,
    words="books do not balance, journal check, debits and credits differ",
)
def entries_out_of_balance(entries: EntryMarks, debits: Debits, credits: Credits) -> List[EntrySum]:
    """Entries whose debits and credits differ, and by how much; none where every one balances.

    A difference that divides by 9 is often two digits swapped; half of one is
    often an amount on the wrong side.

    >>> entries_out_of_balance(entries=["1", "1", "2", "2"], debits=[90, None, 54, None], credits=[None, 90, None, 45])
    [EntrySum(entry='2', debits=54.0, credits=45.0, over=9.0)]
    """
    sums = _sums(entries, debits, credits)
    found = [
        EntrySum(entry, debit, credit, round_half_away(debit - credit, 6)) for entry, (debit, credit) in sums.items()
    ]
    return [one for one in found if one.over]


class TrialLine(NamedTuple):
    """An account with its balance on one side."""

    account: Account
    debit: Debit
    credit: Credit


@formula(
    source=ENTRIES,
    words="bookkeeper, accountant, journal totals, ledger",
)
def trial_balance(accounts: Accounts, debits: Debits, credits: Credits) -> List[TrialLine]:
    """Balance of every account of a journal, in the order met, on the side it falls; the last line is the total.

    Refused where the two sides differ: see `entries_out_of_balance`.

    >>> trial_balance(accounts=["cash", "sales", "cash"], debits=[540, None, None], credits=[None, 500, 40])[0].debit
    500.0
    """
    sums = _sums(accounts, debits, credits)
    total, other = (math.fsum(side) for side in zip(*sums.values()))
    if round_half_away(total - other, 6):
        raise ValueError(
            f"trial_balance: debits are {total:.15g} and credits {other:.15g}; they differ by "
            f"{round_half_away(abs(total - other), 6):.15g}."
        )
    lines = [_balance(account, debit - credit) for account, (debit, credit) in sums.items()]
    debit_total = math.fsum(line.debit or 0 for line in lines)
    return [*lines, TrialLine("total", round_half_away(debit_total, 6), round_half_away(debit_total, 6))]


def _balance(account: str, over: float) -> TrialLine:
    over = round_half_away(over, 6)
    return TrialLine(account, over if over > 0 else None, -over if over < 0 else None)


def _sums(
    marks: Sequence[str], debits: Sequence[Optional[float]], credits: Sequence[Optional[float]]
) -> Dict[str, Tuple[float, float]]:
    """The sum of each side for each mark, in the order met."""
    sides: Dict[str, Tuple[List[float], List[float]]] = {}
    for mark, debit, credit in zip(marks, debits, credits):
        here = sides.setdefault(mark, ([], []))
        here[0].append(debit or 0.0)
        here[1].append(credit or 0.0)
    return {mark: (math.fsum(debit), math.fsum(credit)) for mark, (debit, credit) in sides.items()}


class EntryLine(NamedTuple):
    """A line of an entry: what happened, the account, and the amount on one side."""

    event: Event
    account: Account
    debit: Debit
    credit: Credit


@formula(
    source=ENTRIES,
    words="bookkeeper, accountant, journal entries, month end, year end books, double entry",
)
def period_entries(
    bought: Bought,
    used: Used,
    labour: PaidLabour,
    overhead: MakingOverhead,
    made: Made,
    sold: CostOfGoods,
    sales: Sales,
    tax: SalesTax = 0.0,
    fees: SellingFees = 0.0,
    short: CountShort = 0.0,
) -> List[EntryLine]:
    """Balanced journal entries for a period's figures, from materials bought to candles sold.

    All is taken as paid in the period; a bookkeeper puts what is owed in
    place of cash. Overhead is what was paid and charged to candles alike.

    >>> period_entries(bought=0, used=0, labour=0, overhead=0, made=0, sold=0, sales=300, fees=15)[1].account
    'selling fees'
    """
    entries: List[Tuple[str, Dict[str, float], Dict[str, float]]] = [
        ("materials bought", {"materials": bought}, {"cash": bought}),
        ("materials used", {"work in hand": used}, {"materials": used}),
        ("paid labour", {"work in hand": labour}, {"cash": labour}),
        ("overhead of making", {"work in hand": overhead}, {"cash": overhead}),
        ("candles made", {"finished candles": made}, {"work in hand": made}),
        ("candles sold", {"cash": sales + tax - fees, "selling fees": fees}, {"sales": sales, "tax owed": tax}),
        ("cost of candles sold", {"cost of goods sold": sold}, {"finished candles": sold}),
        ("count short", {"cost of goods sold": short}, {"finished candles": short}),
    ]
    lines: List[EntryLine] = []
    for event, debits, credits in entries:
        lines += [EntryLine(event, account, float(amount), None) for account, amount in debits.items() if amount]
        lines += [EntryLine(event, account, None, float(amount)) for account, amount in credits.items() if amount]
    return lines


@formula(
    native="opening+bought-closing",
    requires={"opening+bought >= closing": NO_MORE_LEFT},
    source=COST_OF_GOODS,
    words="wax usage, how much material went, usage in money",
)
def materials_used(opening: OpeningStock, bought: Bought, closing: ClosingStock) -> Used:
    """Materials used in a period, from what was there, what was bought and what is left.

    >>> materials_used(opening=2500, bought=10500, closing=11600)
    1400.0
    """
    return opening + bought - closing


@formula(
    native="opening+materials+labour+overhead-closing",
    requires={"opening+materials+labour+overhead >= closing": "closing work in hand cannot be more than went in"},
    source=COST_OF_GOODS,
    words="cost of goods manufactured, work in progress",
)
def cost_of_goods_made(
    materials: Used,
    labour: PaidLabour,
    overhead: MakingOverhead,
    opening: OpeningStock = 0.0,
    closing: ClosingStock = 0.0,
) -> Made:
    """Making cost of the candles finished in a period; opening and closing are work in hand, half-made.

    >>> cost_of_goods_made(materials=15000, labour=25000, overhead=23000, opening=75000, closing=43000)
    95000.0
    """
    return opening + materials + labour + overhead - closing


@formula(
    native="opening+made-closing",
    requires={"opening+made >= closing": NO_MORE_LEFT},
    source=COST_OF_GOODS,
    words="cogs, cost of sales",
)
def cost_of_goods_sold(opening: OpeningStock, made: Made, closing: ClosingStock) -> CostOfGoods:
    """Making cost of the candles sold in a period, from finished stock before, made, and left.

    >>> cost_of_goods_sold(opening=65000, made=95000, closing=58000)
    102000.0
    """
    return opening + made - closing


@formula(
    native="actual-charged",
    source=JOB_COST,
    words="overhead variance, under or over absorbed overhead",
)
def overhead_uncharged(actual: OverheadPaid, charged: OverheadInGoods) -> OverheadGap:
    """Overhead that was paid and not charged to candles by its rate; minus where more was charged.

    It is added to cost of goods sold when the period is closed.

    >>> overhead_uncharged(actual=256500, charged=250000)
    6500.0
    """
    return actual - charged


class ScheduleLines(NamedTuple):
    """Lines 35 to 42 of Schedule C, Part III."""

    line_35: OpeningStock
    line_36: Bought
    line_37: PaidLabour
    line_38: Supplies
    line_39: OtherMaking
    line_40: Available
    line_41: ClosingStock
    line_42: CostOfGoods


@formula(
    requires={
        "bought >= withdrawn": "no more can be taken for own use than was bought",
        "opening+bought-withdrawn+labour+supplies+other >= closing": NO_MORE_LEFT,
    },
    source=SCHEDULE,
    words="schedule c, cogs, tax return, sole proprietor, tax form, cost of goods sold",
    notes={"": "small US businesses may account for stock otherwise: see the form's instructions"},
)
def cost_of_goods_schedule(
    opening: OpeningStock,
    bought: Bought,
    closing: ClosingStock,
    labour: PaidLabour = 0.0,
    supplies: Supplies = 0.0,
    other: OtherMaking = 0.0,
    withdrawn: Withdrawn = 0.0,
) -> ScheduleLines:
    """Cost of goods sold as a US sole owner's Schedule C asks for it, lines 35 to 42.

    Stock is materials, work in hand and finished candles together. Check the
    lines against the form and instructions of the year.

    >>> cost_of_goods_schedule(opening=67000, bought=610000, closing=77200, withdrawn=1780).line_42
    598020.0
    """
    net = bought - withdrawn
    available = opening + net + labour + supplies + other
    return ScheduleLines(opening, net, labour, supplies, other, available, closing, available - closing)
