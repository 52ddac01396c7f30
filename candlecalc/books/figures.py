"""The figures that small businesses are asked for, by region: which line of which form (season/forms.py)."""

from collections.abc import Iterable, Mapping, Sequence
from typing import NamedTuple

from candlecalc.books.journal import (
    BROUGHT_FORWARD,
    LATE,
    OPENING,
    Entry,
    Event,
    Journal,
    as_money,
    as_number,
    balances,
    sums,
)
from candlecalc.books.sheets import Column, Sheet
from candlecalc.books.tax_report import CHARGED, CLAIMED, MAKER, TaxLine
from candlecalc.season import chart, forms


class Figure(NamedTuple):
    form: str
    line: str
    says: str
    coins: int | None  # none where it is a note


ANY = "result"


def figures(journal: Journal, tax: Sequence[TaxLine], region: str, *, by_cash: bool) -> list[Figure]:
    """What is asked for where the maker is; the result for everybody."""
    found = _result(journal)
    if region == "us":
        found += [] if by_cash else schedule_c(journal)
        found += _by_area(tax)
    if region == "gb":
        found += [*_vat_return(journal, tax), *_self_assessment(journal)]
    if region == "eu":
        found += [*_vat_of_the_union(tax), Figure(forms.SMALL_ENTERPRISE, "", forms.ANNUAL_TURNOVER, _net(tax))]
    return found


def _result(journal: Journal) -> list[Figure]:
    by_kind = {kind: _of_kind(journal, kind) for kind in (chart.INCOME, chart.COST)}
    return [
        Figure(ANY, "", "income before tax, discounts taken off", -by_kind[chart.INCOME]),
        Figure(ANY, "", "costs, with the candles sold at cost", by_kind[chart.COST]),
        Figure(ANY, "", "profit", -by_kind[chart.INCOME] - by_kind[chart.COST]),
    ]


def _of_kind(journal: Journal, kind: str) -> int:
    """What all accounts of a kind come to."""
    return sum(coins for name, coins in balances(journal.entries).items() if journal.account(name).kind == kind)


def _moved(entries: Iterable[Entry], account: str, *, began: bool, debit: bool | None = None) -> int:
    """What an account got in the time, or what it began with; of one side alone where that is asked."""
    beginnings = (OPENING, BROUGHT_FORWARD)
    return sum(
        line.coins
        for entry in entries
        if entry.reference.startswith(beginnings) == began
        for line in entry.lines
        if line.account == account and (debit is None or (line.coins > 0) == debit)
    )


def schedule_c(journal: Journal) -> list[Figure]:
    """Lines 35 to 42. What was taken for oneself or given away is no cost of goods sold: it is off line 36."""
    opening = sum(_moved(journal.entries, account, began=True) for account in chart.STOCKS)
    closing = sum(balances(journal.entries).get(account, 0) for account in chart.STOCKS)
    bought = _of_entries(journal, "BILL ", chart.MATERIALS)
    other = _of_entries(journal, "TAKEN OUT ", *chart.STOCKS) + _of_entries(journal, "GIVEN OR BROKEN ", *chart.STOCKS)
    into_cost = sum(_of_entries(journal, name, chart.COST_SOLD) for name in ("TAKEN OUT ", "GIVEN OR BROKEN "))
    withdrawn = -other - into_cost
    labour = _costs(journal, chart.PAID_HELP)
    overhead = _costs(journal, chart.OVERHEAD)
    available = opening + bought - withdrawn + labour + overhead
    amounts = {
        "35": opening,
        "36": bought - withdrawn,
        "37": labour,
        "38": 0,
        "39": overhead,
        "40": available,
        "41": closing,
        "42": available - closing,
    }
    found = [Figure(forms.SCHEDULE_C, line, says, amounts[line]) for line, says in forms.SCHEDULE_C_LINES.items()]
    return [*found, Figure(forms.SCHEDULE_C, "", forms.SCHEDULE_C_NOTE, None)]


def _of_entries(journal: Journal, begin: str, *accounts: str) -> int:
    entries = [entry for entry in journal.entries if entry.reference.removeprefix(LATE).startswith(begin)]
    return sum(line.coins for entry in entries for line in entry.lines if line.account in accounts)


def _costs(journal: Journal, account: str) -> int:
    """What was spent for batches: all but what batches were charged with, and what was left at the end."""
    charged = _of_entries(journal, "CHARGED ", account) + _of_entries(journal, "NOT CHARGED ", account)
    return balances(journal.entries).get(account, 0) - charged


def _due(tax: Iterable[TaxLine]) -> int:
    """Tax on sales that the maker pays over."""
    return sum(line.tax for line in tax if line.what == CHARGED and line.paid_by == MAKER)


def _back(tax: Iterable[TaxLine]) -> int:
    return sum(line.tax for line in tax if line.what == CLAIMED)


def _net(tax: Iterable[TaxLine]) -> int:
    """Sales before tax."""
    return sum(line.exempt + line.taxable for line in tax if line.what == CHARGED)


def _vat_return(journal: Journal, tax: Sequence[TaxLine]) -> list[Figure]:
    due, back = _due(tax), _back(tax)
    materials = _of_entries(journal, "BILL ", chart.MATERIALS) + _of_entries(journal, "PAID ", chart.BOUGHT)
    bought = materials + sum(
        line.coins
        for entry in journal.entries
        if entry.reference.removeprefix(LATE).startswith(("EXPENSE ", "MARKET COSTS "))
        for line in entry.lines
        if journal.account(line.account).kind == chart.COST or line.account == "Equipment"
    )
    amounts = {"1": due, "3": due, "4": back, "5": due - back, "6": _net(tax), "7": bought}
    return [Figure(forms.VAT_RETURN, line, says, amounts[line]) for line, says in forms.VAT_RETURN_LINES.items()]


def _self_assessment(journal: Journal) -> list[Figure]:
    income, costs = -_of_kind(journal, chart.INCOME), _of_kind(journal, chart.COST)
    found = [*_boxes(journal, forms.INCOME_BOXES, income, -1), *_boxes(journal, forms.COST_BOXES, costs, 1)]
    last = (*forms.COSTS_IN_ALL, costs), (*forms.NET_PROFIT, income - costs)
    return [*found, *(Figure(forms.SELF_ASSESSMENT, *line) for line in last)]


def _boxes(journal: Journal, boxes: Mapping[str, forms.Box], whole: int, sign: int) -> list[Figure]:
    """Boxes by their accounts; the one without any has what is left of the whole."""
    found = balances(journal.entries)
    sums = {box: sign * sum(found.get(name, 0) for name in names) for box, (_, names) in boxes.items()}
    rest = whole - sum(sums.values())
    return [
        Figure(forms.SELF_ASSESSMENT, box, says, sums[box] if names else rest) for box, (says, names) in boxes.items()
    ]


def _vat_of_the_union(tax: Sequence[TaxLine]) -> list[Figure]:
    """What a return asks for, then the taxable amount and the tax of each rate, with its country where there is one."""
    due, back = _due(tax), _back(tax)
    exempt = sum(line.exempt for line in tax if line.what == CHARGED)
    amounts = {"taxable": _net(tax) - exempt, "exempt": exempt, "due": due, "back": back, "pay": due - back}
    found = [Figure(forms.VAT_EU, "", says, amounts[key]) for key, says in forms.VAT_EU_LINES.items()]
    return found + _by_rate(tax, forms.VAT_EU)


def _by_area(tax: Sequence[TaxLine]) -> list[Figure]:
    return _by_rate(tax, forms.SALES_TAX)


def _by_rate(tax: Sequence[TaxLine], form: str) -> list[Figure]:
    """What the maker pays over, by area and rate."""
    own = [line for line in tax if line.what == CHARGED and line.paid_by == MAKER]
    found = []
    for area, rate in dict.fromkeys((line.area, line.rate) for line in own):
        lines = [each for each in own if (each.area, each.rate) == (area, rate)]
        name = " ".join(filter(None, (area, f"{round(rate * 100, 6):g} %")))
        found.append(Figure(form, name, "sales before tax", sum(each.taxable for each in lines)))
        found.append(Figure(form, name, "tax", sum(each.tax for each in lines)))
    return found


def figures_sheet(found: Iterable[Figure], digits: int) -> Sheet:
    rows = [
        [each.form, each.line, each.says, None if each.coins is None else as_number(each.coins, digits)]
        for each in found
    ]
    columns = (Column("form"), Column("line"), Column("says"), Column("amount", "number"))
    return Sheet("figures", "What forms ask for; your bookkeeper says which you use.", columns, rows)


# By month: what a maker asks first. An account's movement, and whether a credit is shown as a plain number.
BY_MONTH = {
    "Sales before tax": (chart.SALES, -1),
    "Tax charged": (chart.TAX_DUE, -1),
    "Selling fees": (chart.FEES, 1),
    "Cost of candles sold": (chart.COST_SOLD, 1),
}


def _charged(events: Iterable[Event]) -> int:
    """Tax on sales, without what was paid over."""
    parts = (part for event in events for part in event.parts)
    return sum(part.coins for part in parts if part.account == chart.TAX_DUE and part.tax_code)


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
        shown["Tax charged"] = -_charged(months[month])
        other = sum(coins for name, coins in found.items() if kinds[name].kind == chart.COST)
        other -= sum(found.get(name, 0) for name in (chart.FEES, chart.COST_SOLD))
        shown |= {"Other costs": other, "Result": result, "Money in, less out": money}
        records.append({"Month": month, **{head: float(as_money(coins, digits)) for head, coins in shown.items()}})
    return records
