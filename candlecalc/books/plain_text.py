"""A journal as plain text, in the two forms that programs for it read, and read back from them.

A name keeps its letters. In book.journal a semicolon becomes a comma and an upright line a stroke, since both end a
name there; in both, line ends and blanks in a row become one blank.
"""

import datetime
import re
from collections.abc import Iterable, Iterator

from candlecalc.books.checking import Kept
from candlecalc.books.journal import Entry, Journal, Line, balances
from candlecalc.season.chart import ASSET, COST, EQUITY, INCOME, LIABILITY, Account

ROOTS = {ASSET: "Assets", LIABILITY: "Liabilities", EQUITY: "Equity", INCOME: "Income", COST: "Expenses"}
CLOSING = "Closing balances"
ENDS_A_NAME = str.maketrans({";": ",", "|": "/"})
ENTRY = re.compile(r"(\d{4}-\d{2}-\d{2}) \* \((\d+)\) .*")
POSTING = re.compile(r"    (\S+) +(-?[\d.]+) [A-Z]+(?:  ; .*)?")
BEAN_ENTRY = re.compile(r'(\d{4}-\d{2}-\d{2}) \* ".*')
BEAN_NUMBER = re.compile(r'  entry: "(\d+)"')
BEAN_POSTING = re.compile(r"  ([A-Z]\S+) +(-?[\d.]+) [A-Z]+(?: ; .*)?")


def name_of(account: Account) -> str:
    """An account's name as both forms take it: letters and digits, each word with a capital."""
    words = re.findall(r"[A-Za-z0-9]+", account.name)
    return f"{ROOTS[account.kind]}:{account.code}-{''.join(word[:1].upper() + word[1:] for word in words)}".rstrip("-")


def _joined(text: str) -> str:
    return " ".join(text.split()) or "no name"


def payee_of(text: str) -> str:
    """A name as book.journal has it."""
    return _joined(text.translate(ENDS_A_NAME))


def _memo(entry: Entry) -> str:
    return ", ".join(dict.fromkeys(line.memo for line in entry.lines if line.memo))


def _from(line: Line) -> str:
    return f"{line.tab}, rows {line.rows}"


def book_journal(journal: Journal) -> str:
    """For hledger and ledger: with what is declared, and what each account comes to at the end."""
    unit = journal.currency
    out = [f"commodity {unit}"]
    # Without decimals neither program takes what the other asks for, and none is needed.
    out += [f"    format 1,000.{'0' * journal.digits} {unit}"] if journal.digits else []
    out.append("")
    out += [f"account {name_of(account)}" for account in _used(journal)]
    payees = dict.fromkeys([*(payee_of(entry.payee) for entry in journal.entries), CLOSING])
    out += ["", *(f"payee {payee}" for payee in payees), ""]
    for number, entry in enumerate(journal.entries, start=1):
        out.append(f"{entry.day} * ({number}) {payee_of(entry.payee)} | {payee_of(_memo(entry))}")
        out += [_posting(journal, line.account, line.coins, f"  ; {_from(line)}") for line in entry.lines]
        out.append("")
    out.append(f"{journal.last} * {CLOSING}")
    for name, coins in balances(journal.entries).items():
        out.append(_posting(journal, name, 0, f" = {journal.money(coins)} {unit}"))
    return "\n".join(out) + "\n"


def _posting(journal: Journal, account: str, coins: int, after: str) -> str:
    return f"    {name_of(journal.account(account)):44}  {journal.money(coins):>14} {journal.currency}{after}"


def _used(journal: Journal) -> list[Account]:
    return sorted({journal.account(name) for name in balances(journal.entries)}, key=lambda account: account.code)


def beancount(journal: Journal) -> str:
    unit = journal.currency
    out = [f'option "operating_currency" "{unit}"', ""]
    out += [f"{journal.first} open {name_of(account)} {unit}" for account in _used(journal)]
    for number, entry in enumerate(journal.entries, start=1):
        out += ["", f"{entry.day} * {_quoted(entry.payee)} {_quoted(_memo(entry))}", f'  entry: "{number}"']
        for line in entry.lines:
            name, amount = name_of(journal.account(line.account)), journal.money(line.coins)
            out.append(f"  {name:44}  {amount:>14} {unit} ; {_from(line)}")
    after = journal.last + datetime.timedelta(days=1)
    out.append("")
    for name, coins in balances(journal.entries).items():
        out.append(f"{after} balance {name_of(journal.account(name)):44}  {journal.money(coins):>14} {unit}")
    return "\n".join(out) + "\n"


def _quoted(text: str) -> str:
    return '"' + _joined(text).replace("\\", "\\\\").replace('"', '\\"') + '"'


def read_book_journal(text: str) -> list[Kept]:
    """The entries of book.journal; the closing balances are no entry."""
    return list(_read(text.splitlines(), ENTRY, POSTING))


def read_beancount(text: str) -> list[Kept]:
    lines = text.splitlines()
    # The number stands under the entry's first line: put there, both forms read alike.
    joined = [
        f"{found[1]} * ({number[1]}) x"
        if (found := BEAN_ENTRY.fullmatch(line)) and (number := BEAN_NUMBER.fullmatch(following))
        else line
        for line, following in zip(lines, [*lines[1:], ""], strict=True)
    ]
    return list(_read(joined, ENTRY, BEAN_POSTING))


def _read(lines: Iterable[str], first: re.Pattern[str], posting: re.Pattern[str]) -> Iterator[Kept]:
    entry: tuple[str, datetime.date, list[tuple[str, int]]] | None = None
    for line in [*lines, ""]:
        if found := first.fullmatch(line):
            entry = found[2], datetime.date.fromisoformat(found[1]), []
        elif entry and (found := posting.fullmatch(line)):
            entry[2].append((found[1], int(found[2].replace(".", ""))))
        elif entry and not line.strip():
            yield Kept(entry[0], entry[1], tuple(entry[2]))
            entry = None
