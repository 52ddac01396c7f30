"""What a bookkeeper would call about: what is open, what does not agree, what is missing."""

import datetime
from collections.abc import Iterable, Iterator, Sequence
from typing import NamedTuple

from candlecalc.books.journal import Journal, as_number, balances
from candlecalc.books.reading import Reading, Typed
from candlecalc.books.sheets import Column, Sheet
from candlecalc.books.stock_sheet import Item, lower_of
from candlecalc.season.chart import CASH_AND_BANK, chart_of
from candlecalc.season.tables import TABLES
from candlecalc.season.tables.books import CATEGORIES
from candlecalc.workbook.tabs.sell.sold import FROM_SALES

Day = datetime.date
POSTAGE = CATEGORIES["postage and delivery"]
PAID_FROM = {"purchases": "paid_from", "sales": "paid_into", "expenses": "paid_from", "still_open": "paid_from"}


class Question(NamedTuple):
    about: str
    question: str
    tab: str = ""
    row: str = ""
    coins: int | None = None


def questions(
    read: Reading, journal: Journal, items: Sequence[Item], findings: Iterable[tuple[str, str, str]]
) -> list[Question]:
    """Those of one workbook at the end of a time. `findings` are what check says of it: tab, cell and words."""
    last = journal.last
    found = [
        *_together(_unpaid(read, last)),
        *_payouts(read),
        *_purses(read),
        *_cash_boxes(read, last),
        *_counts(read, last),
        *_sent_back(read, last),
        *_stock(journal, items),
        *_not_counted(items, last),
        *_postage(read, journal),
        *_year(read, journal),
        *_accounts(journal),
    ]
    return found + [Question("check", words, tab, cell) for tab, cell, words in findings]


def _open(line: Typed, last: Day, paid: Day | None) -> bool:
    """Whether a row of that time was not paid by its end."""
    return line.by(last) and not (paid and paid <= last)


def _unpaid(read: Reading, last: Day) -> Iterator[Question]:
    for at in read.lines("sold", "what"):
        if read.whole("sold", "what", at) != FROM_SALES:
            continue
        line, coins = read.row("sales", read.whole("sold", "source", at)), read.coins("sold", "comes_in", at)
        if coins and _open(line, last, read.value("sold", "paid", at)):
            words = f"{line.typed['place']}, {line.typed['order'] or 'no order'} of {line.day()}: not paid by {last}"
            yield Question("owed to you", words, line.tab, str(line.row), coins)
    for line in read.rows("purchases"):
        if not line.typed["kind"] and _open(line, last, line.day("paid_on")):
            coins = read.coins("purchases", "landed", line.at) + read.typed_coins(line, "claimed")
            who, bill = line.typed["supplier"] or "a supplier", line.typed["document"] or "no document"
            words = f"{who}, {bill} of {line.day()}: not paid by {last}"
            yield Question("you owe", words, line.tab, str(line.row), coins)
    for line in read.rows("expenses"):
        if _open(line, last, line.day("paid_on")):
            words = (
                f"{line.typed['payee']}, {line.typed['document'] or 'no document'} of {line.day()}: not paid by {last}"
            )
            yield Question("you owe", words, line.tab, str(line.row), read.typed_coins(line, "amount"))
    for line in read.rows("still_open"):
        if _open(line, last, line.day("paid_on")):
            words = f"{line.typed['who']}, {line.typed['kind']} from before: still open on {last}"
            yield Question("from before", words, line.tab, str(line.row), read.typed_coins(line, "sum"))


def _together(found: Iterable[Question]) -> Iterator[Question]:
    """The lines of one order or bill as one question, with all its rows."""
    lines: dict[tuple[str, ...], list[Question]] = {}
    for each in found:
        lines.setdefault((each.about, each.question, each.tab), []).append(each)
    for first, *others in lines.values():
        rows = ", ".join(each.row for each in (first, *others))
        yield first._replace(row=rows, coins=sum(each.coins or 0 for each in (first, *others)))


def _payouts(read: Reading) -> Iterator[Question]:
    for line in read.rows("sales"):
        off = read.coins("sales", "payout_off", line.at) if line.typed["payout_sum"] is not None else 0
        if off:
            words = f"payout {line.typed['payout']} is not what its lines come to"
            yield Question("payout", words, line.tab, str(line.row), off)


def _purses(read: Reading) -> Iterator[Question]:
    """Names under Paid from and Paid into that are no account: once a tab, with the first row."""
    accounts = chart_of(read.season)
    for table, key in PAID_FROM.items():
        rows: dict[str, list[int]] = {}
        for line in read.rows(table):
            name = str(line.typed[key] or "")
            if name and not (name.casefold() in accounts and accounts[name.casefold()].money):
                rows.setdefault(name, []).append(line.row)
        for name, there in rows.items():
            words = (
                f"{name} is no money account on Accounts: what was paid there is booked on {CASH_AND_BANK}; rows: "
                f"{len(there)}, this is the first"
            )
            yield Question("money", words, TABLES[table].title, str(there[0]))


def _cash_boxes(read: Reading, last: Day) -> Iterator[Question]:
    for line in read.rows("market_days"):
        off = read.coins("market_days", "missing", line.at)
        if off and line.by(last):
            yield Question(
                "cash box", "what was counted is not what was sold; not booked", line.tab, str(line.row), off
            )


def _counts(read: Reading, last: Day) -> Iterator[Question]:
    for line in read.rows("counts"):
        off = read.number("counts", "difference", line.at)
        if off and line.typed["kept"] != "yes" and line.by(last):
            what = line.typed["material"] or line.typed["product"]
            words = f"{what}: counted {off:+g}, and the count was not taken over"
            yield Question("count", words, line.tab, str(line.row))


def _sent_back(read: Reading, last: Day) -> Iterator[Question]:
    for line in read.rows("moves"):
        if line.typed["kind"] == "sent back" and line.by(last):
            what = line.typed["material"] or line.typed["product"]
            words = f"{what} went back: it is in the cost of candles sold; was a credit booked?"
            yield Question("sent back", words, line.tab, str(line.row), read.coins("moves", "cost", line.at))


def _stock(journal: Journal, items: Iterable[Item]) -> Iterator[Question]:
    for item in items:
        if item.value < 0 or item.amount < 0:
            yield Question("stock", f"{item.name}: less than nothing in stock", coins=item.value)
        less = item.value - lower_of(item, journal.digits)
        if less > 0:
            words = f"{item.name}: costs more than it brings; write it down by this much, on Other entries? Not booked"
            yield Question("stock", words, coins=less)


LONG_AGO = datetime.timedelta(days=31)


def _not_counted(items: Sequence[Item], last: Day) -> Iterator[Question]:
    """One question for all that nobody counted in the last month of the time."""
    uncounted = [item for item in items if not item.counted_on or item.counted_on < last - LONG_AGO]
    if uncounted:
        words = (
            f"not counted in the month before {last}: {len(uncounted)} of {len(items)} in stock; how much there is "
            "follows from what was typed; see stock.csv"
        )
        yield Question("count", words, "Counts", coins=sum(item.value for item in uncounted))


def _postage(read: Reading, journal: Journal) -> Iterator[Question]:
    """Where orders took more postage than bills say."""
    sent, booked = read.sum("sold", "sent"), balances(journal.entries).get(POSTAGE, 0)
    if sent > booked:
        words = (
            f"postage and packing of what was sent, as Places sold has it, come to {journal.money(sent)}; under "
            f"{POSTAGE} {journal.money(booked)} is booked: is a bill missing, or is packing among the materials?"
        )
        yield Question("postage", words, "By place", coins=sent - booked)


def _year(read: Reading, journal: Journal) -> Iterator[Question]:
    if not read.season.settings.get("year_from"):
        words = f"the first day of the financial year is not typed; this is {journal.first} to {journal.last}"
        yield Question("year", words, "Settings")


def _accounts(journal: Journal) -> Iterator[Question]:
    found = balances(journal.entries)
    for name, coins in found.items():
        account = journal.account(name)
        if account.money and coins < 0:
            words = f"{name} is below nothing: is money that came in, or an opening balance, missing on Other entries?"
            yield Question("money", words, coins=coins)
    own = any(account.money and account.name != CASH_AND_BANK for account in journal.chart.values())
    if own and found.get(CASH_AND_BANK):
        words = f"{CASH_AND_BANK} has what no account was named for: markets, and lines without Paid from or Paid into"
        yield Question("money", words, coins=found[CASH_AND_BANK])
    unnumbered = [name for name in found if not journal.account(name).theirs]
    if 0 < len(unnumbered) < len(found):
        yield Question("account", f"without a number of your bookkeeper's on Accounts: {', '.join(unnumbered)}")


def questions_sheet(found: Iterable[Question], digits: int) -> Sheet:
    rows = [
        [number, each.about, each.question, each.tab, each.row]
        + [None if each.coins is None else as_number(each.coins, digits)]
        for number, each in enumerate(found, start=1)
    ]
    columns = (
        Column("number", "integer", {"required": True}),
        Column("about"),
        Column("question"),
        Column("from_tab"),
        Column("from_row"),
        Column("amount", "number"),
    )
    return Sheet("open_questions", "What is open, does not agree or is missing.", columns, rows, ("number",))
