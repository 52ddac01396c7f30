"""The journal, its accounts and their balances, as tables."""

from decimal import Decimal

from candlecalc.books.journal import Journal, balances
from candlecalc.books.plain_text import name_of
from candlecalc.books.sheets import Column, Sheet
from candlecalc.season.chart import RESULT

MONEY = {"minimum": 0}
OF_ACCOUNTS = ("account_code", "accounts")
CODE = Column("account_code", constraints={"required": True}, says="our number of the account")


def side(journal: Journal, coins: int, debit: bool) -> Decimal | None:
    """An amount on the side it falls on."""
    there = coins if debit else -coins
    return Decimal(journal.money(there)) if there > 0 else None


def journal_sheet(journal: Journal) -> Sheet:
    rows = []
    for number, place, entry, line in journal.numbered():
        account = journal.account(line.account)
        sides = [side(journal, line.coins, debit) for debit in (True, False)]
        of = [number, place, entry.day, entry.reference, account.code, account.name, account.theirs]
        rows.append([*of, *sides, line.tax_code, entry.payee, line.memo, line.tab, line.rows])
    within = {"required": True, "minimum": str(journal.first), "maximum": str(journal.last)}
    columns = (
        Column("entry_no", "integer", {"required": True, "minimum": 1}, "the number of the entry"),
        Column("line_no", "integer", {"required": True, "minimum": 1}, "the line in it"),
        Column("date", "date", within),
        Column("doc_ref", constraints={"required": True}, says="what the entry gathers; no two entries have the same"),
        CODE,
        Column("account_name"),
        Column("their_code", says="the bookkeeper's own number, where it was typed on Accounts"),
        Column("debit", "number", MONEY),
        Column("credit", "number", MONEY),
        Column("tax_code", says="rate, area and who pays it over, where the line counts for tax"),
        Column("payee"),
        Column("memo"),
        Column("from_tab", constraints={"required": True}, says="the tab of the workbook that the line is from"),
        Column("from_row", says="its rows there"),
    )
    says = "Every entry, a line for each account in it."
    return Sheet("journal", says, columns, rows, ("entry_no", "line_no"), OF_ACCOUNTS)


def accounts_sheet(journal: Journal) -> Sheet:
    accounts = sorted(set(journal.chart.values()), key=lambda account: account.code)
    rows = [[each.code, each.name, each.kind, name_of(each), each.theirs, each.purpose] for each in accounts]
    columns = (
        Column("account_code", constraints={"required": True, "unique": True}),
        Column("account_name"),
        Column("kind"),
        Column("journal_name", says="what book.journal and book.beancount call it"),
        Column("their_code", says="the bookkeeper's own number"),
        Column("what_stands_on_it"),
    )
    return Sheet("accounts", "The accounts, with the bookkeeper's own numbers.", columns, rows, ("account_code",))


def trial_balance_sheet(journal: Journal) -> Sheet:
    by_code = sorted((journal.account(name).code, name, coins) for name, coins in balances(journal.entries).items())
    rows = [
        [code, name, side(journal, coins, True), side(journal, coins, False)] for code, name, coins in by_code if coins
    ]
    columns = (CODE, Column("account_name"), Column("debit", "number", MONEY), Column("credit", "number", MONEY))
    says = "What each account comes to on the last day."
    return Sheet("trial_balance", says, columns, rows, ("account_code",), OF_ACCOUNTS)


def totals(journal: Journal) -> tuple[int, int]:
    """Both sides of the trial balance."""
    found = balances(journal.entries).values()
    return sum(coins for coins in found if coins > 0), -sum(coins for coins in found if coins < 0)


def result(journal: Journal) -> int:
    """Income less costs."""
    found = balances(journal.entries)
    return -sum(coins for name, coins in found.items() if journal.account(name).kind in RESULT)
