"""The figures that small businesses are asked for, by region: which line of which form, from memory.

Forms and lines are named from memory, but for US Schedule C, Part III, whose lines are those of `calc/books.py`. The
bookkeeper says which of them a business uses; in the US many small sellers may treat stock otherwise.
"""

from collections.abc import Iterable, Sequence
from typing import NamedTuple

from candlecalc.books.journal import Entry, Event, Journal, as_money, as_number, balances, sums
from candlecalc.books.sheets import Column, Sheet
from candlecalc.books.tax_report import CHARGED, CLAIMED, MAKER, TaxLine
from candlecalc.season import chart


class Figure(NamedTuple):
    form: str
    line: str
    says: str
    coins: int


SCHEDULE, VAT = "US Schedule C, Part III", "UK VAT return (from memory)"
EU = "EU VAT, by rate (from memory)"
ANY = "result"


def figures(journal: Journal, tax: Sequence[TaxLine], region: str, *, by_cash: bool) -> list[Figure]:
    """What is asked for where the maker is; the result for everybody."""
    found = _result(journal)
    if region == "us" and not by_cash:
        found += schedule_c(journal)
    if region == "gb":
        found += _vat_return(journal, tax)
    if region == "eu":
        found += _by_rate(tax)
    return found


def _result(journal: Journal) -> list[Figure]:
    found = balances(journal.entries)
    by_kind = {
        kind: sum(coins for name, coins in found.items() if journal.account(name).kind == kind)
        for kind in (chart.INCOME, chart.COST)
    }
    return [
        Figure(ANY, "", "income before tax, discounts taken off", -by_kind[chart.INCOME]),
        Figure(ANY, "", "costs, with the candles sold at cost", by_kind[chart.COST]),
        Figure(ANY, "", "profit", -by_kind[chart.INCOME] - by_kind[chart.COST]),
    ]


def _moved(entries: Iterable[Entry], account: str, *, began: bool, debit: bool | None = None) -> int:
    """What an account got in the time, or what it began with; of one side alone where that is asked."""
    beginnings = ("OPENING ", "BROUGHT FORWARD ")
    return sum(
        line.coins
        for entry in entries
        if entry.reference.startswith(beginnings) == began
        for line in entry.lines
        if line.account == account and (debit is None or (line.coins > 0) == debit)
    )


def schedule_c(journal: Journal) -> list[Figure]:
    """Lines 35 to 42. What was taken for oneself or given away is no cost of goods sold: it is off line 36."""
    stocks = (chart.MATERIALS, chart.CANDLES, chart.WORK)
    opening = sum(_moved(journal.entries, account, began=True) for account in stocks)
    closing = sum(balances(journal.entries).get(account, 0) for account in stocks)
    bought = _of_entries(journal, "BILL ", chart.MATERIALS)
    other = _of_entries(journal, "TAKEN OUT ", *stocks) + _of_entries(journal, "GIVEN OR BROKEN ", *stocks)
    into_cost = sum(_of_entries(journal, name, chart.COST_SOLD) for name in ("TAKEN OUT ", "GIVEN OR BROKEN "))
    withdrawn = -other - into_cost
    labour = _costs(journal, chart.PAID_HELP)
    overhead = _costs(journal, chart.OVERHEAD)
    available = opening + bought - withdrawn + labour + overhead
    return [
        Figure(SCHEDULE, "35", "inventory at beginning of year: materials, work in hand and candles", opening),
        Figure(SCHEDULE, "36", "purchases, less what was taken for yourself or given away", bought - withdrawn),
        Figure(SCHEDULE, "37", "cost of labour: paid help at the bench, nothing for your own time", labour),
        Figure(SCHEDULE, "38", "materials and supplies: they are among line 36", 0),
        Figure(SCHEDULE, "39", "other costs: workshop", overhead),
        Figure(SCHEDULE, "40", "lines 35 to 39", available),
        Figure(SCHEDULE, "41", "inventory at end of year", closing),
        Figure(SCHEDULE, "42", "cost of goods sold", available - closing),
    ]


def _of_entries(journal: Journal, begin: str, *accounts: str) -> int:
    entries = [entry for entry in journal.entries if entry.reference.startswith(begin)]
    return sum(line.coins for entry in entries for line in entry.lines if line.account in accounts)


def _costs(journal: Journal, account: str) -> int:
    """What was spent for batches: all but what batches were charged with, and what was left at the end."""
    charged = _of_entries(journal, "CHARGED ", account) + _of_entries(journal, "NOT CHARGED ", account)
    return balances(journal.entries).get(account, 0) - charged


def _vat_return(journal: Journal, tax: Sequence[TaxLine]) -> list[Figure]:
    due = sum(line.tax for line in tax if line.what == CHARGED and line.paid_by == MAKER)
    back = sum(line.tax for line in tax if line.what == CLAIMED)
    net = sum(line.exempt + line.taxable for line in tax if line.what == CHARGED)
    materials = _of_entries(journal, "BILL ", chart.MATERIALS) + _of_entries(journal, "PAID ", chart.BOUGHT)
    bought = materials + sum(
        line.coins
        for entry in journal.entries
        if entry.reference.startswith(("EXPENSE ", "MARKET COSTS "))
        for line in entry.lines
        if journal.account(line.account).kind == chart.COST or line.account == "Equipment"
    )
    return [
        Figure(VAT, "1", "VAT due on sales", due),
        Figure(VAT, "3", "all VAT due: nothing acquired from elsewhere is known here", due),
        Figure(VAT, "4", "VAT claimed back", back),
        Figure(VAT, "5", "to pay; to get back where below nothing", due - back),
        Figure(VAT, "6", "sales before VAT, in whole pounds on the form", net),
        Figure(VAT, "7", "purchases and costs before VAT, in whole pounds on the form", bought),
    ]


def _by_rate(tax: Sequence[TaxLine]) -> list[Figure]:
    rates = dict.fromkeys((line.area, line.rate) for line in tax if line.what == CHARGED and line.paid_by == MAKER)
    found = []
    for area, rate in rates:
        lines = [each for each in tax if (each.area, each.rate, each.paid_by) == (area, rate, MAKER)]
        name = " ".join(filter(None, (area, f"{round(rate * 100, 6):g} %")))
        found.append(Figure(EU, name, "taxable amount", sum(each.taxable for each in lines)))
        found.append(Figure(EU, name, "tax", sum(each.tax for each in lines)))
    return [*found, Figure(EU, "", "input tax to deduct", sum(each.tax for each in tax if each.what == CLAIMED))]


def figures_sheet(found: Iterable[Figure], digits: int) -> Sheet:
    rows = [[each.form, each.line, each.says, as_number(each.coins, digits)] for each in found]
    columns = (Column("form"), Column("line"), Column("says"), Column("amount", "number"))
    return Sheet("figures", "What forms ask for; your bookkeeper says which you use.", columns, rows)


# By month: what a maker asks first. An account's movement, and whether a credit is shown as a plain number.
BY_MONTH = {
    "Sales before tax": (chart.SALES, -1),
    "Tax charged": (chart.TAX_DUE, -1),
    "Selling fees": (chart.FEES, 1),
    "Cost of candles sold": (chart.COST_SOLD, 1),
}


def by_month(events: Iterable[Event], accounts: dict[str, chart.Account], digits: int) -> list[dict[str, object]]:
    """Each month's sales, costs, result and money, as records."""
    months: dict[str, list[Event]] = {}
    for event in events:
        if not event.opening:
            months.setdefault(f"{event.day:%Y-%m}", []).append(event)
    records = []
    for month in sorted(months):
        found = sums(months[month])
        kinds = {name: accounts[name.casefold()] for name in found}
        result = -sum(coins for name, coins in found.items() if kinds[name].kind in chart.RESULT)
        money = sum(coins for name, coins in found.items() if kinds[name].money)
        shown = {head: sign * found.get(name, 0) for head, (name, sign) in BY_MONTH.items()}
        other = sum(coins for name, coins in found.items() if kinds[name].kind == chart.COST)
        other -= sum(found.get(name, 0) for name in (chart.FEES, chart.COST_SOLD))
        shown |= {"Other costs": other, "Result": result, "Money in, less out": money}
        records.append({"Month": month, **{head: float(as_money(coins, digits)) for head, coins in shown.items()}})
    return records
