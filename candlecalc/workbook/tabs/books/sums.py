"""What the books are made of: sums of the tabs, each by a word, and what each account comes to by them.

An account's balance is a sum of a few columns, so no cell needs to hold every event. Debits are above zero. What
counts by its day and is not paid by the season's last day is owed; by the cash method only what is paid counts.
`candlecalc/books/events.py` says the same event by event for the journal; the tests hold both equal.
"""

from collections.abc import Iterable, Mapping
from typing import NamedTuple

from candlecalc.season import chart
from candlecalc.season.tables.books import CATEGORIES
from candlecalc.season.tables.carried import OWED_BY_MAKER, OWED_TO_MAKER
from candlecalc.season.tables.stock import OPENING
from candlecalc.workbook.cells.references import (
    Expression,
    Given,
    Named,
    Results,
    Whole,
    constant,
    joined,
    sum_over,
    text,
    while_known,
    written,
)
from candlecalc.workbook.tabs.stock.used import FROM_POURS, FROM_SETS

TILL = written('"<="&{last}', last=Named("last_day"))
ABOVE_NOTHING = written('">"&{none}', none=constant(0))
PURCHASE, *HELD_BEFORE = OWED_BY_MAKER


def of(table: str, key: str, *where: tuple[str, Given]) -> Expression:
    """The sum of a column where others hold what is asked; an error while a line of it is one."""
    return sum_over(table, key, where)


def known(table: str, key: str, *where: tuple[str, Given]) -> Expression:
    """The same of a column that is worked out: an error while any line of it is one."""
    return while_known(of(table, key, *where), table, key)


def every(table: str, key: str) -> Expression:
    """The sum of a whole column that is worked out."""
    return written("SUM({all})", all=Results(table, key))


def typed(table: str, key: str) -> Expression:
    """The sum of a whole column that is typed."""
    return written("SUM({all})", all=Whole(table, key))


def _kinds(table: str, key: str, kinds: Iterable[str], *where: tuple[str, Given]) -> Expression:
    return joined("+", [of(table, key, ("kind", text(kind)), *where) for kind in kinds])


def _held(key: str) -> Expression:
    """Of lines that are no sale: deposits and gift cards, given and used."""
    return known("sold", key, ("sign", constant(0)), ("counts", TILL))


GIVEN = ("given", ABOVE_NOTHING)
# By word: what it says, and the sum.
SUMS: Mapping[str, tuple[str, Expression]] = {
    "net": ("Sold: before tax", known("sold", "net", ("counts", TILL))),
    "fee": ("Sold: fees", known("sold", "fee", ("counts", TILL))),
    "due": ("Sold: tax that you pay over", known("sold", "tax_due", ("counts", TILL))),
    "comes_in": ("Sold: yours to have", known("sold", "comes_in", ("counts", TILL))),
    "held": ("Sold: held for buyers", written("{sum}+{fees}", sum=_held("comes_in"), fees=_held("fee"))),
    "sold_paid": ("Sold: paid by the last day", known("sold", "comes_in", ("paid", TILL))),
    "opened": ("Purchases: there at the start", known("purchases", "landed", ("kind", text(OPENING)))),
    "landed": ("Purchases: all, at cost", every("purchases", "landed")),
    "claimed": ("Purchases: tax to claim back", typed("purchases", "claimed")),
    "landed_paid": ("Purchases: paid by the last day", known("purchases", "landed", ("paid_on", TILL))),
    "claimed_paid": ("Purchases: tax on those paid", of("purchases", "claimed", ("paid_on", TILL))),
    "spent": ("Expenses: with tax", of("expenses", "amount", ("counts", TILL))),
    "spent_tax": ("Expenses: tax to claim back", of("expenses", "tax", ("counts", TILL))),
    "spent_paid": ("Expenses: paid by the last day", of("expenses", "amount", ("paid_on", TILL))),
    "stands": ("Market days: stand fees", of("market_days", "fee", ("date", TILL))),
    "travel": ("Market days: travel", of("market_days", "travel", ("date", TILL))),
    "owed_before": ("Still open: owed to you", _kinds("still_open", "sum", OWED_TO_MAKER)),
    "owed_settled": ("Still open: that was paid to you", _kinds("still_open", "sum", OWED_TO_MAKER, ("paid_on", TILL))),
    "owing_before": ("Still open: purchases", _kinds("still_open", "sum", [PURCHASE])),
    "owing_settled": ("Still open: purchases that you paid", _kinds("still_open", "sum", [PURCHASE], ("paid_on", TILL))),
    "held_before": ("Still open: held for buyers", _kinds("still_open", "sum", HELD_BEFORE)),
    "used": ("Used: all, at cost", every("used", "cost")),
    "poured": ("Used: by batches", known("used", "cost", ("what", constant(FROM_POURS)))),
    "unpacked": ("Used: by sets that were not packed", known("used", "cost", ("what", constant(FROM_SETS)))),
    "help": ("Batch log: paid work", every("pours", "paid")),
    "overhead": ("Batch log: production overhead", every("pours", "overhead")),
    "made": ("Batch log: making cost", every("pours", "making")),
    "opened_made": ("Batch log: making cost, there at the start", known("pours", "making", ("kind", text(OPENING)))),
    "good": ("Batch log: value of the good ones", every("pours", "value")),
    "opened_good": ("Batch log: there at the start", known("pours", "value", ("kind", text(OPENING)))),
    "out": ("Candles out: all, at cost", every("out", "cost")),
    "cost": ("Sold: cost of candles", every("sold", "cost")),
    "own_use": ("Taken out: own use", known("moves", "cost", ("kind", text("own use")))),
    "samples": ("Taken out: tests, samples, gifts", while_known(_kinds("moves", "cost", ("test", "sample", "gift")), "moves", "cost")),
    "given": ("Market lines: given away, none broken", written("{given}-{both}", given=known("market_lines", "lost_cost", GIVEN), both=of("market_lines", "lost_cost", GIVEN, ("broken", ABOVE_NOTHING)))),
    "materials": ("Stock: value", every("stock", "value")),
    "candles": ("Candles: value", every("candles", "value")),
}  # fmt: skip


class Balance(NamedTuple):
    """What an account comes to by the tabs, as signed sums by their words: by accrual, and by the cash method."""

    accrual: str = "0"
    cash: str = "0"


MONEY = "{sold_paid}-{landed_paid}-{claimed_paid}-{spent_paid}-{stands}-{travel}+{owed_settled}-{owing_settled}"
GONE = "{out}+{used}-{poured}-{unpacked}-{own_use}-{samples}-{given}+({made}-{opened_made})-({good}-{opened_good})"
BALANCES: Mapping[str, Balance] = {
    chart.CASH_AND_BANK: Balance(MONEY, MONEY),
    chart.OWED_TO_YOU: Balance("{comes_in}-{sold_paid}+{owed_before}-{owed_settled}"),
    chart.MATERIALS: Balance("{materials}"),
    chart.WORK: Balance("{poured}+{help}+{overhead}-({made}-{opened_made})"),
    chart.CANDLES: Balance("{candles}"),
    chart.TAX_BACK: Balance("{claimed}+{spent_tax}", "{claimed_paid}+{spent_tax}"),
    chart.OWED: Balance(
        "-(({landed}-{opened})+{claimed}-{landed_paid}-{claimed_paid})-({spent}-{spent_paid})"
        "-({owing_before}-{owing_settled})"
    ),
    chart.TAX_DUE: Balance("-{due}", "-{due}"),
    chart.HELD: Balance("-{held_before}-{held}", "-{held_before}-{held}"),
    chart.CAPITAL: Balance("-{opened}-{opened_good}-{owed_before}+{owing_before}+{held_before}", "{held_before}"),
    chart.TAKEN: Balance("{own_use}"),
    chart.SALES: Balance("-{net}", "-{net}-{owed_settled}"),
    chart.COST_SOLD: Balance(GONE),
    chart.OVERHEAD: Balance("-{overhead}"),
    chart.PAID_HELP: Balance("-{help}"),
    chart.BOUGHT: Balance("0", "{landed_paid}+{owing_settled}"),
    chart.FEES: Balance("{fee}", "{fee}"),
    chart.STANDS: Balance("{stands}", "{stands}"),
    chart.TRAVEL: Balance("{travel}", "{travel}"),
    chart.SAMPLES: Balance("{samples}+{given}"),
}
# Costs of making that batches are charged with: by accrual what is left at the end goes to the cost of candles sold.
CHARGED = (chart.OVERHEAD, chart.PAID_HELP)


def of_expenses(account: str) -> Expression | None:
    """What Expenses have for an account, before tax; none where no category of theirs is booked on it."""
    kinds = [category for category, name in CATEGORIES.items() if name == account]
    if not kinds:
        return None
    return joined("+", [known("expenses", "net", ("category", text(kind)), ("counts", TILL)) for kind in kinds])
