"""Whether a folder that was handed over is whole: each file by its own rules, and all of them against each other."""

import datetime
import hashlib
import json
import re
from collections.abc import Callable, Iterator, Mapping
from decimal import InvalidOperation
from typing import Any

from candlecalc.books import plain_text
from candlecalc.books.checking import Kept, Rules, differences, problems, totals
from candlecalc.books.handover import BEANCOUNT, JOURNAL, NAME, PACKAGE, SUMMARY
from candlecalc.books.journal import added, coins_in
from candlecalc.books.sheets import read_csv
from candlecalc.season import chart

NUMBER = {account.name: account.code for account in chart.CHART}
HASH = re.compile(r"([0-9a-f]{64})  (\S.*)")


def is_ours(files: Mapping[str, bytes]) -> bool:
    """Whether a folder's files are a hand-over of ours."""
    try:
        return bool(json.loads(files.get(PACKAGE, b"{}")).get("name") == NAME)
    except (ValueError, AttributeError):
        return False


def wrong(files: Mapping[str, bytes]) -> list[str]:
    """Everything wrong with a folder's files, a line each."""
    package = json.loads(files[PACKAGE])
    absent = [
        name for name in ("journal.csv", "accounts.csv", "trial_balance.csv", JOURNAL, BEANCOUNT) if name not in files
    ]
    if absent:
        return [f"{name}: it is not there" for name in absent]
    try:
        found = list(_by_rules(files, package))
    except (KeyError, ValueError, InvalidOperation) as problem:
        found = [f"a file cannot be read: {problem}"]
    return [*found, *_changed(files, package)]


def _by_rules(files: Mapping[str, bytes], package: Mapping[str, Any]) -> Iterator[str]:
    digits = int(package["decimals"])
    first, last = (datetime.date.fromisoformat(package[key]) for key in ("from", "to"))
    accounts = read_csv(files["accounts.csv"])
    numbers = {row["journal_name"]: row["account_code"] for row in accounts}
    rules = Rules(set(numbers.values()), first, last, digits)
    balance = {row["account_code"]: _coins(row, digits) for row in read_csv(files["trial_balance.csv"])}
    over = sum(balance.values())
    if over:
        yield f"trial_balance.csv: its sides differ by {over} coins"
    for code in balance.keys() - rules.accounts:
        yield f"trial_balance.csv: there is no account {code}"
    readers: dict[str, Callable[[], list[Kept]]] = {
        "journal.csv": lambda: _csv_entries(files["journal.csv"], digits),
        JOURNAL: lambda: _by_number(plain_text.read_book_journal(files[JOURNAL].decode()), numbers),
        BEANCOUNT: lambda: _by_number(plain_text.read_beancount(files[BEANCOUNT].decode()), numbers),
    }
    for name, read in readers.items():
        entries = read()
        yield from (f"{name}, {words}" for words in problems(entries, rules))
        apart = differences(totals(entries), balance, digits, "trial_balance.csv")
        yield from (f"{name}: {words}" for words in apart)
    yield from _lines_twice(files["journal.csv"])
    yield from _stock(files, balance, digits, last)
    yield from _tax(files, digits)


def _coins(row: Mapping[str, str], digits: int, plus: str = "debit", minus: str = "credit") -> int:
    return coins_in(row.get(plus), digits) - coins_in(row.get(minus), digits)


def _csv_entries(data: bytes, digits: int) -> list[Kept]:
    entries: dict[str, tuple[str, datetime.date, list[tuple[str, int]]]] = {}
    for row in read_csv(data):
        day = datetime.date.fromisoformat(row["date"])
        entry = entries.setdefault(row["entry_no"], (row["doc_ref"], day, []))
        entry[2].append((row["account_code"], _coins(row, digits)))
    return [Kept(name, day, tuple(lines)) for name, day, lines in entries.values()]


def _by_number(entries: list[Kept], numbers: Mapping[str, str]) -> list[Kept]:
    """The entries with our numbers for their accounts; a name that is not known stays."""
    return [
        entry._replace(lines=tuple((numbers.get(name, name), coins) for name, coins in entry.lines))
        for entry in entries
    ]


def _lines_twice(data: bytes) -> Iterator[str]:
    seen = set()
    for row in read_csv(data):
        key = row["entry_no"], row["line_no"]
        if key in seen:
            yield f"journal.csv, entry {row['doc_ref']}: line {row['line_no']} is there twice"
        seen.add(key)


def _stock(files: Mapping[str, bytes], balance: Mapping[str, int], digits: int, last: datetime.date) -> Iterator[str]:
    """What is in stock comes to what its accounts do. By the cash method it has none."""
    if "stock.csv" not in files:
        yield "stock.csv: it is not there"
        return
    rows = read_csv(files["stock.csv"])
    seen = set()
    for row in rows:
        if (row["kind"], row["item"]) in seen:
            yield f"stock.csv: {row['item']} is there twice"
        seen.add((row["kind"], row["item"]))
        if row["counted_on"] and datetime.date.fromisoformat(row["counted_on"]) > last:
            yield f"stock.csv: {row['item']} was counted on {row['counted_on']}, after {last}"
    for kind, account in (("material", chart.MATERIALS), ("candle", chart.CANDLES)):
        there = sum(_coins(row, digits, "value", "") for row in rows if row["kind"] == kind)
        if NUMBER[account] in balance or not _is_cash(files):
            found, wanted = {account: there}, {account: balance.get(NUMBER[account], 0)}
            yield from (f"stock.csv: {words}" for words in differences(found, wanted, digits, "trial_balance.csv"))


def _is_cash(files: Mapping[str, bytes]) -> bool:
    return b"by the cash method" in files.get(SUMMARY, b"").splitlines()[0]


def _tax(files: Mapping[str, bytes], digits: int) -> Iterator[str]:
    """Tax that the maker owes, by rate and area, as the journal has it."""
    if "tax.csv" not in files:
        yield "tax.csv: it is not there"
        return
    rows = read_csv(files["tax.csv"])
    for row in rows:
        if _coins(row, digits, "gross", "") and _coins(row, digits, "gross", "") != sum(
            _coins(row, digits, key, "") for key in ("exempt", "taxable", "tax")
        ):
            yield f"tax.csv: {row['place']}, {row['tax_code']}: exempt, taxable and tax do not come to gross"
    found = added((row["tax_code"], _coins(row, digits, "tax", "")) for row in rows if row["paid_by"] == "maker")
    sides = {NUMBER[chart.TAX_DUE]: -1, NUMBER[chart.TAX_BACK]: 1}
    booked = added(
        (row["tax_code"], sides[row["account_code"]] * _coins(row, digits))
        for row in read_csv(files["journal.csv"])
        if row["account_code"] in sides and row["tax_code"]
    )
    there = {code: coins for code, coins in found.items() if coins}
    for code in dict.fromkeys([*there, *booked]):
        if there.get(code, 0) != booked.get(code, 0):
            yield f"tax.csv: tax at {code} is not what journal.csv has"


def _changed(files: Mapping[str, bytes], package: Mapping[str, Any]) -> Iterator[str]:
    """Files that are not as they were handed over, by the hashes in the summary and the description."""
    listed = {name: digest for digest, name in HASH.findall(files.get(SUMMARY, b"").decode())}
    if not listed:
        yield f"{SUMMARY}: it is not there, or lists no files"
    for name, digest in listed.items():
        if name not in files:
            yield f"{name}: it is not there"
        elif hashlib.sha256(files[name]).hexdigest() != digest:
            yield f"{name}: it is not as it was handed over"
    for each in package["resources"]:
        data = files.get(each["path"], b"")
        if f"sha256:{hashlib.sha256(data).hexdigest()}" != each["hash"]:
            yield f"{each['path']}: it is not as {PACKAGE} describes it"
