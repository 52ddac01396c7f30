"""The left of Books: what each account comes to on the last day; and beside the page the sums that it is made of."""

from candlecalc.season import chart
from candlecalc.season.tables.books import MONEY_ACCOUNT, OWED_AT_THE_END
from candlecalc.season.tables.sales import SALES
from candlecalc.workbook.cells.references import (
    ByPlan,
    Expression,
    Named,
    Results,
    Whole,
    at,
    constant,
    in_coins,
    joined,
    written,
)
from candlecalc.workbook.tabs.books.by_month import BY_CASH, by_method
from candlecalc.workbook.tabs.books.sums import BALANCES, CHARGED, SUMS, of_expenses
from candlecalc.workbook.writing.page import Page, cell, made_of

NAME, CODE, DEBIT, CREDIT = "ABCD"
# Beside the page: the sums and their words; by account what tabs and Other entries come to, and both; of an account
# of the maker's own its row on Accounts, and what kind it is.
WORDS, SUM, TABS, OTHER, BOTH, OWN_ROW, KIND = "LMNOPQR"
HEAD = 5
FIRST = HEAD + 1
OWN_LINES = 10
FIRST_OWN = FIRST + len(chart.CHART)
LAST = FIRST_OWN + OWN_LINES - 1
TOTAL = LAST + 1
ROW_OF = {account.name: FIRST + nth for nth, account in enumerate(chart.CHART)}
SUM_ROW = {key: FIRST + nth for nth, key in enumerate(SUMS)}


def sum_of(key: str) -> Expression:
    """A sum of the tabs, by its word."""
    return cell(f"${SUM}${SUM_ROW[key]}")


def of_sums(signed: str) -> Expression:
    """Sums by their words, with signs: "{bought}-{paid}"."""
    return written(signed, **{key: sum_of(key) for key in SUMS if f"{{{key}}}" in signed})


def balance(*names: str) -> Expression:
    """What some accounts come to together; debits are above zero."""
    return joined("+", [cell(f"${BOTH}${ROW_OF[name]}") for name in names])


def of_kind(kind: str, column: str = BOTH) -> Expression:
    """What all accounts of a kind come to, the maker's own among them."""
    rows = [ROW_OF[account.name] for account in chart.CHART if account.kind == kind]
    ours = cell(f"${column}${rows[0]}:${column}${rows[-1]}")
    own, kinds = (cell(f"${letter}${FIRST_OWN}:${letter}${LAST}") for letter in (column, KIND))
    return written(f'SUM({{ours}})+SUMIFS({{own}},{{kinds}},"{kind}")', ours=ours, own=own, kinds=kinds)


def write(page: Page) -> None:
    page.section(HEAD, ["Account", "Your code", "Debit", "Credit"], f"{NAME}{CODE}")
    for letter, head in zip((WORDS, SUM, TABS, OTHER, BOTH, OWN_ROW, KIND), HEADS, strict=True):
        page.put(f"{letter}{HEAD}", head, "note")
    for key, (words, value) in SUMS.items():
        page.put(f"{WORDS}{SUM_ROW[key]}", words, "note")
        page.shows(f"{SUM}{SUM_ROW[key]}", in_coins(value), "note", "money")
    for account in chart.CHART:
        _ours(page, account.name)
    for nth, row in enumerate(range(FIRST_OWN, TOTAL), start=1):
        _own(page, row, nth)
    for row in range(FIRST, TOTAL):
        _line(page, row)
    _totals(page)


HEADS = ("Sums of the tabs", "Come to", "By the tabs", "By Other entries", "Both", "Row on Accounts", "Kind")


def _ours(page: Page, name: str) -> None:
    row = ROW_OF[name]
    page.put(f"{NAME}{row}", name)
    signed = BALANCES.get(name)
    accrual, cash = (of_sums(text) for text in (signed or ("0", "0")))
    spent = of_expenses(name)
    if spent:
        accrual, cash = (written("{sums}+{spent}", sums=sums, spent=spent) for sums in (accrual, cash))
    if name == chart.CASH_AND_BANK:  # what has an account of its own is not there
        accrual = cash = written("{all}-SUM({own})", all=accrual, own=cell(f"${TABS}${FIRST_OWN}:${TABS}${LAST}"))
    if name == chart.COST_SOLD:
        left = [cell(f"${letter}${ROW_OF[charged]}") for charged in CHARGED for letter in (TABS, OTHER)]
        accrual = joined("+", [accrual, *left])
    page.shows(f"{TABS}{row}", by_method(accrual, cash), "note", "money")
    both = made_of(f"{TABS}{row}+{OTHER}{row}")
    # What batches were not charged with is in the cost of candles sold.
    page.shows(f"{BOTH}{row}", in_coins(by_method(constant(0), both) if name in CHARGED else both), "note", "money")


def _own(page: Page, row: int, nth: int) -> None:
    """An account of the maker's own: a purse or bank account has what was paid from it or into it."""
    numbers = Results("accounts", "nth_own")
    found = written("MATCH({nth},{numbers},0)+1", nth=constant(nth), numbers=numbers)
    page.shows(f"{OWN_ROW}{row}", found, "note", "row", blank_if=[written(f"MAX({{all}})<{nth}", all=numbers)])
    none = [made_of(f'${OWN_ROW}{row}=""')]
    page.shows(f"{NAME}{row}", at("accounts", "account", cell(f"${OWN_ROW}{row}")), "result", blank_if=none)
    page.shows(f"{KIND}{row}", at("accounts", "kind", cell(f"${OWN_ROW}{row}")), "note", blank_if=none)
    purse = written("IF({kind}={money},{moved},0)", kind=cell(f"${KIND}{row}"), money=MONEY_WORD, moved=_moved(row))
    page.shows(f"{TABS}{row}", purse, "note", "money", blank_if=none)
    page.shows(f"{BOTH}{row}", in_coins(made_of(f"{TABS}{row}+{OTHER}{row}")), "note", "money", blank_if=none)


MONEY_WORD = written(f'"{MONEY_ACCOUNT}"')
LAST_DAY = Named("last_day")


def _moved(row: int) -> Expression:
    """What moved on an account of its own: its name stands beside what was paid."""
    ways = (
        ("purchases", "landed", "paid_from", "-", '*({kind}="")'),
        ("purchases", "claimed", "paid_from", "-", '*({kind}="")'),
        ("expenses", "amount", "paid_from", "-", ""),
        ("still_open", "sum", "paid_from", "-", '*({kind}="purchase")'),
        ("still_open", "sum", "paid_from", "+", '*(({kind}="sale")+({kind}="payout"))'),
    )
    parts = [written(f"{sign}{{part}}", part=_paid(row, table, key, by, where)) for table, key, by, sign, where in ways]
    return joined("", [_paid(row, SALES.key, "", "paid_into", "", of_sales("comes_in")), *parts])


def _paid(row: int, table: str, key: str, by: str, where: str, amounts: Expression | None = None) -> Expression:
    """Sums of a tab that were paid from or into the account of a row by the last day; compared, not by a criterion."""
    return written(
        f'SUMPRODUCT(({{names}}={{name}})*({{paid}}<>"")*({{paid}}<={{last}}){where},{{amounts}})',
        names=Whole(table, by),
        name=cell(f"${NAME}{row}"),
        paid=Whole(table, "paid_on"),
        last=LAST_DAY,
        amounts=amounts or Whole(table, key),
        kind=Whole(table, "kind") if where else constant(0),
    )


def of_sales(key: str) -> Expression:
    """A column of Sold beside that of Sales: its first rows are theirs."""
    rows = ByPlan(lambda plan: constant(plan.layouts[SALES.key].rows + 2))  # with the head and the row under the list
    return written("INDEX({all},1):INDEX({all},{rows})", all=Whole("sold", key), rows=rows)


def _line(page: Page, row: int) -> None:
    """What Other entries come to, by name; the bookkeeper's number; and the side it falls on."""
    name = cell(f"${NAME}{row}")
    left_out = written(
        f'(1-{{cash}}*({{kind}}="{OWED_AT_THE_END}"))', cash=Named(BY_CASH), kind=Whole("entries", "kind")
    )
    other = written(
        "SUMPRODUCT((({debits}={name})-({credits}={name}))*({days}<={last})*{counted},{amounts})",
        debits=Whole("entries", "debit"),
        credits=Whole("entries", "credit"),
        name=name,
        days=Whole("entries", "date"),
        last=LAST_DAY,
        counted=left_out,
        amounts=Whole("entries", "amount"),
    )
    none = [made_of('{name}=""', name=name)] if row >= FIRST_OWN else []
    page.shows(f"{OTHER}{row}", other, "note", "money", blank_if=none)
    number = at("accounts", "code", written("MATCH({name},{all},0)", name=name, all=Whole("accounts", "account")))
    page.shows(f"{CODE}{row}", written('IFERROR({number}&"","")', number=number), "result", blank_if=none)
    both = f"${BOTH}{row}"
    page.shows(f"{DEBIT}{row}", made_of(both), "result", "money", blank_if=[*none, made_of(f"{both}<=0")])
    page.shows(f"{CREDIT}{row}", made_of(f"-{both}"), "result", "money", blank_if=[*none, made_of(f"{both}>=0")])


def _totals(page: Page) -> None:
    page.put(f"{NAME}{TOTAL}", "Both sides", "strong")
    for letter in (DEBIT, CREDIT):
        cells = f"{letter}{FIRST}:{letter}{LAST}"
        page.shows(f"{letter}{TOTAL}", in_coins(made_of(f"SUM({cells})")), "strong_result", "money")
