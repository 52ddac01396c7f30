"""The tab Books says in cells what the journal of the hand-over says event by event: two ways to the same figures."""

from decimal import Decimal

import book_years
import pytest
from book_years import no_values, worked
from libreoffice import stored
from openpyxl.utils.datetime import from_excel

from candlecalc.books.events import events_of
from candlecalc.books.handover import handed_over
from candlecalc.books.joining import Span
from candlecalc.books.journal import balances, sums
from candlecalc.books.sheets import read_csv
from candlecalc.season import chart
from candlecalc.workbook import book
from candlecalc.workbook.tabs.books import by_month as month_tab
from candlecalc.workbook.tabs.books import tax, trial
from candlecalc.workbook.tabs.books.books import AMOUNT, AREAS, COST, NOTES, RATES, STOCK, TAX
from candlecalc.workbook.tabs.sell.months import MOST_MONTHS

YEARS = {
    "month": book_years.worked_month,
    "british": book_years.british_year,
    "american, cash": lambda: book_years.american_year("cash"),
    "busy": book_years.busy_year,
    "busy, european, average": lambda: book_years.busy_year(region="eu", currency="EUR", stock="average"),
    "busy, british, cash": lambda: book_years.busy_year(region="gb", currency="GBP", books="cash"),
}


class Year:
    """A season worked out once: its cells, and what the journal makes of it."""

    def __init__(self, season):
        self.read, drafted = worked(season)
        self.values = {title: drafted.values[title] for title in ("Books", "Books by month", "Checks", "Candles")}
        self.events = list(events_of(self.read))
        with no_values():
            handed = handed_over([(self.read, drafted)], Span(self.read.first_day, self.read.last_day), {})
        self.journal, self.files = handed.journal, handed.files

    def column(self, tab, letter, rows):
        return [self.values[tab][row - 1][ord(letter) - ord("A")] for row in rows]

    def rows(self, name):
        return read_csv(self.files[name])


@pytest.fixture(scope="module", params=YEARS)
def year(request):
    return Year(YEARS[request.param]())


def coins(amount):
    return round((amount or 0) * 100)


def test_each_account_comes_to_what_the_journal_has(year):
    columns = (year.column("Books", letter, range(trial.FIRST, trial.TOTAL)) for letter in (*"ACD",))
    found = {name: coins(debit) - coins(credit) for name, debit, credit in zip(*columns, strict=True) if name}
    booked = balances(year.journal.entries)
    assert {name: sum for name, sum in found.items() if sum} == {name: sum for name, sum in booked.items() if sum}
    debit, credit = (year.column("Books", letter, [trial.TOTAL])[0] for letter in "CD")
    assert debit == credit > 0


def test_each_month_comes_to_what_the_journal_has(year):
    sold = [event for event in year.events if event.tab == "Sold" and event.day <= year.read.last_day]
    booked = {}
    for event in sold:
        found = sums([event])
        row = [-found.get(chart.SALES, 0), -found.get(chart.TAX_DUE, 0), found.get(chart.FEES, 0)]
        month = f"{event.day:%Y-%m}"
        booked[month] = [one + more for one, more in zip(booked.get(month, [0, 0, 0]), row, strict=True)]
    rows = range(month_tab.FIRST + 2, month_tab.FIRST + 2 + MOST_MONTHS)
    columns = (year.column("Books by month", letter, rows) for letter in "ABCD")
    months = [(month, list(map(coins, row))) for month, *row in zip(*columns, strict=True) if month]
    found = {f"{from_excel(month):%Y-%m}": row for month, row in months if any(row)}
    assert found == {month: row for month, row in booked.items() if any(row)}


def test_places_come_to_what_the_tax_report_has(year):
    letters = [*month_tab.PLACES, month_tab.OTHERS]
    for head, keys in ((month_tab.WITH_TAX, ["gross"]), (month_tab.BEFORE_TAX, ["exempt", "taxable"])):
        names = [year.column("Books by month", letter, [head])[0] for letter in letters]
        found = [coins(year.column("Books by month", letter, [head + 1])[0]) for letter in letters]
        booked = {}
        for row in year.rows("tax.csv"):
            if row["what"] == "on sales":
                booked[row["place"]] = booked.get(row["place"], 0) + sum(coins(Decimal(row[key])) for key in keys)
        assert {name: sum for name, sum in zip(names, found, strict=True) if sum} == booked


def test_tax_by_rate_comes_to_what_the_tax_report_has(year):
    columns = (year.column("Books", letter, range(TAX + 1, TAX + 1 + RATES)) for letter in (tax.BESIDE, *"GHIJ"))
    found = {round(rate, 6): list(map(coins, row)) for rate, *row in zip(*columns, strict=True) if rate != ""}
    booked = {}
    for row in year.rows("tax.csv"):
        if row["what"] == "on sales":
            gross, exempt, taxable, due = (coins(Decimal(row[key])) for key in ("gross", "exempt", "taxable", "tax"))
            by_maker = row["paid_by"] == "maker"
            there = [gross, exempt + taxable, due * by_maker, due * (not by_maker)]
            before = booked.get(float(row["rate"]), [0] * 4)
            booked[float(row["rate"])] = [one + more for one, more in zip(before, there, strict=True)]
    assert {rate: row for rate, row in found.items() if any(row)} == booked


def test_tax_by_area_comes_to_what_the_tax_report_has(year):
    if year.read.season.settings["region"] == "gb":  # one rate holds in the whole country
        assert "Sales and tax, by area" not in year.column("Books", "F", range(1, NOTES))
        return
    rows = range(AREA_HEAD + 1, AREA_HEAD + 2 + AREAS)
    columns = (year.column("Books", letter, rows) for letter in "FGI")
    found = {name: [coins(gross), coins(due)] for name, gross, due in zip(*columns, strict=True) if name}
    booked = {}
    for row in year.rows("tax.csv"):
        if row["what"] == "on sales":
            there = booked.setdefault(row["area"] or "elsewhere", [0, 0])
            there[0] += coins(Decimal(row["gross"]))
            there[1] += coins(Decimal(row["tax"])) * (row["paid_by"] == "maker")
    assert {name: row for name, row in found.items() if any(row)} == booked


RESULTS = {
    "income before tax, discounts taken off": "Income",
    "costs, with the candles sold at cost": "Costs, with the candles sold at cost",
    "profit": "Profit",
}
AREA_HEAD = TAX + RATES + 4
BY_RATE = ("tax", "sales before tax")  # on the tab in a section of their own


def test_forms_ask_for_what_the_hand_over_has(year):
    columns = [year.column("Books", letter, range(1, NOTES)) for letter in "FJ"]
    said = {name: coins(amount) for name, amount in zip(*columns, strict=True) if isinstance(amount, (int, float))}
    lines = [row for row in year.rows("figures.csv") if row["amount"] and row["says"] not in BY_RATE]
    assert len(lines) > len(RESULTS) or year.read.by_cash
    for row in lines:
        name = RESULTS.get(row["says"]) or f"{row['line']}  {row['says']}".strip()
        assert said[name] == coins(Decimal(row["amount"])), name


def test_stock_stands_at_cost_and_at_what_it_brings_where_that_is_less(year):
    booked = {"material": [0, 0], "candle": [0, 0]}
    for row in year.rows("stock.csv"):
        for at, key in enumerate(("value", "lower_of")):
            booked[row["kind"]][at] += coins(Decimal(row[key]))
    rows = [STOCK + 1, STOCK + 3]
    found = [[coins(each) for each in year.column("Books", letter, rows)] for letter in (COST, AMOUNT)]
    if year.read.by_cash:  # then stock is not booked
        assert found == [[0, 0], [0, 0]]
    else:
        assert found == [[booked[kind][at] for kind in booked] for at in (0, 1)]


def test_a_candle_that_brings_less_than_it_cost_stands_at_what_it_brings():
    # Poured at 2.00, its price is 1.50, half of it for the shop's discount, no fee: 100 less 43 are left.
    year = Year(book_years.busy_year())
    cost, brings = (coins(year.column("Books", letter, [STOCK + 3])[0]) for letter in (COST, AMOUNT))
    assert 0 < brings < cost


OWN_LINES = "Books has a line for each account of your own"


def test_the_lines_of_checks_on_the_books_hold(year):
    verdicts = {row[0]: row[6] for row in year.values["Checks"]}
    names = (
        "Debits are credits",
        "Months come to the profit by accounts",
        "Books has a line for each account of your own",
    )
    assert {name: verdicts[name] for name in names} == dict.fromkeys(names, "agrees")


def test_more_accounts_of_your_own_than_there_are_lines_for_are_told():
    season = book_years.worked_month()
    own = [{"account": f"Purse {nth}", "kind": "money"} for nth in range(trial.OWN_LINES + 1)]
    values = worked(book_years.type_in(season, accounts=own))[1].values["Checks"]
    line = next(row for row in values if row[0] == OWN_LINES)
    assert (line[2], line[6]) == (1, "to fix")


@pytest.mark.parametrize("settings", [{}, {"region": "gb", "books": "cash"}], ids=["accrual", "cash"])
def test_the_office_comes_to_the_same_figures(office, tmp_path, settings):
    season = book_years.busy_year(**settings)
    path = tmp_path / "year.xlsx"
    path.write_bytes(book.packed(book_years.made(season)[1]))
    found = office.recalculated(path)
    tabs = ("Books", "Books by month", "Candles", "Taken out", "Market lines", "Expenses")
    wanted = {cell: value for cell, value in stored(path).items() if cell[0] in tabs}
    apart = {cell: (value, found.get(cell)) for cell, value in wanted.items() if not same(found.get(cell), value)}
    assert apart == {}


def same(one, other):
    numbers = isinstance(one, (int, float)) and isinstance(other, (int, float))
    return one == pytest.approx(other, abs=1e-9) if numbers else one == other
