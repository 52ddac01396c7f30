"""The year handed to a bookkeeper: worked on paper first, then typed, then held against programs for such journals."""

import csv
import io
import shutil
import subprocess
import sys
import zipfile
from dataclasses import replace
from decimal import Decimal
from pathlib import Path

import book_years
import openpyxl
import pytest
from book_years import day, handed, worked
from click.testing import CliRunner
from libreoffice import stored

from candlecalc.books import folder_check, plain_text
from candlecalc.books.handover import handed_over
from candlecalc.books.joining import Span
from candlecalc.books.sheets import read_csv
from candlecalc.commands.cli import main
from candlecalc.season import folder, forms

pytestmark = pytest.mark.usefixtures("few_rows", "made_once")


def rows(files, name):
    return list(csv.DictReader(io.StringIO(files[name].decode("utf-8-sig"), newline="")))


def trial_balance(files):
    """{account: its balance, a credit below nothing}, accounts at nothing left out."""
    found = rows(files, "trial_balance.csv")
    return {row["account_name"]: Decimal(row["debit"] or 0) - Decimal(row["credit"] or 0) for row in found}


@pytest.fixture(scope="module")
def month(made_once):
    return handed(book_years.worked_month(), whole=True)


# The month on paper; patterns of the entries: OpenStax, Financial Accounting and Managerial Accounting 4.7.
# Opening: money 5,000, materials 1,200, candles 800 (160 at 5.00), equipment 2,400, depreciated 600, capital 8,800.
#   materials bought: list 2,000, 10 % trade discount, 2 % of the goods for paying early, freight 90      1,854.00
#   into batches: wax 1,200 and 500 jars 900, paid work 600, overhead 50 % of it 300: 500 candles at 6    3,000.00
#   web shop: 250 at 18, 8 % tax, 100 orders, fee 3 % of 4,860 and 0.30 each: sales 4,500, tax 360, fees    175.80
#   market: 120 at 18 with tax in it: sales 2,000, tax 160; shop: 200 at 9, less 2 % for paying early         36.00
#   cost, first in first out: 160 at 5 and 410 at 6 = 3,260; two short at 6 = 12; overhead 320 less 300 = 20
PAPER = {
    "Bank and cash": "9514.20", "Materials in stock": "954.00", "Candles in stock": "528.00", "Equipment": "2400.00",
    "Taken by the owner": "1000.00", "Discounts for early payment": "36.00", "Cost of candles sold": "3292.00",
    "Selling fees": "175.80", "Postage and delivery": "210.00", "Stands and markets": "150.00",
    "Depreciation so far": "-640.00", "Sales tax or VAT owed": "-520.00", "Capital": "-8800.00", "Sales": "-8300.00",
}  # fmt: skip


def test_the_worked_month_comes_to_its_trial_balance(month):
    found = trial_balance(month.files)
    assert found == {name: Decimal(amount) for name, amount in PAPER.items()}
    assert sum(amount for amount in found.values() if amount > 0) == Decimal("18260.00")
    assert sum(found.values()) == 0


def test_the_worked_month_has_its_net_income_and_cost_of_goods(month):
    found = {(row["form"], row["line"], row["says"]): row["amount"] for row in rows(month.files, "figures.csv")}
    assert found["result", "", "profit"] == "4436.20"
    # IRS Form 1040 Schedule C, Part III: 2,000 + 1,854 + 600 + 320 - (954 + 528) = 3,292.
    by_line = {line: amount for (form, line, _), amount in found.items() if form.startswith("US Schedule C")}
    assert [by_line[line] for line in ("35", "36", "37", "39", "41", "42")] == [
        *("2000.00", "1854.00", "600.00", "320.00", "1482.00", "3292.00")
    ]


def tool(name):
    """A program that the tests' setup installs, or the reason why it was not run."""
    found = shutil.which(name) or shutil.which(str(Path(sys.executable).parent / name))
    return found or pytest.skip(f"{name} is not installed: bash tests/setup.sh installs it")


OUTSIDE = {
    "hledger": ["-f", "book.journal", "check", "--strict", "ordereddates", "payees"],
    "ledger": ["-f", "book.journal", "--pedantic", "balance"],
    "bean-check": ["book.beancount"],
    "frictionless": ["validate", "datapackage.json"],
}


def run(name, files, path):
    for each, data in files.items():
        (path / each).write_bytes(data)
    return subprocess.run([tool(name), *OUTSIDE[name]], cwd=path, capture_output=True, text=True)  # noqa: S603


@pytest.mark.parametrize("name", OUTSIDE)
def test_programs_for_journals_take_the_month(month, name, tmp_path):
    done = run(name, month.files, tmp_path)
    assert done.returncode == 0, done.stdout + done.stderr


@pytest.mark.parametrize("currency, digits", [("JPY", 0), ("KWD", 3)])  # ISO 4217
@pytest.mark.parametrize("name", ["hledger", "ledger", "bean-check"])
def test_programs_for_journals_take_currencies_of_other_decimals(month, name, currency, digits, tmp_path):
    other = replace(month.journal, currency=currency, digits=digits)
    files = {"book.journal": plain_text.book_journal(other), "book.beancount": plain_text.beancount(other)}
    done = run(name, {each: text.encode() for each, text in files.items()}, tmp_path)
    assert done.returncode == 0, done.stdout + done.stderr


def test_our_own_check_finds_nothing_wrong_with_the_month(month):
    assert folder_check.wrong(month.files) == []


# A British year on paper. VAT fraction at 20 %: one sixth of a price with tax (VAT Notice 700, from memory).
#   bought: 206 jars for 206.00, 100 kg of wax for 200.00; tax to claim back 41.20 + 40.00, wax not paid
#   150 candles of 1.00 wax and 1.00 jar: 2.00 each, 300.00 in all; left: 25 kg of wax 50.00, 56 jars 56.00
#   web shop: 60 at 12.00 = 720.00, tax 120.00, net 600.00, fee 10 % 72.00, comes in 648.00
#   gallery: 10 at 15.00 = 150.00, tax 25.00, net 125.00, fee 40 % of net 50.00, owes 100.00
#   returned: 2 at 12.00 = 24.00, tax 4.00, net 20.00; two candles back at 2.00
#   printer 120.00 with 20.00 of tax; 30.00 of VAT paid over
#   bank: 500.00 - 247.20 jars + 648.00 - 24.00 - 120.00 - 30.00 = 726.80
BRITISH = {
    "Bank and cash": "726.80", "Owed by buyers and places": "100.00", "Materials in stock": "106.00",
    "Candles in stock": "164.00", "Tax to claim back": "101.20", "Owed for purchases and bills": "-240.00",
    "Sales tax or VAT owed": "-111.00", "Capital": "-500.00", "Sales": "-705.00", "Cost of candles sold": "136.00",
    "Selling fees": "122.00", "Advertising": "100.00",
}  # fmt: skip


@pytest.fixture(scope="module")
def british(made_once):
    return handed(book_years.british_year())


def test_a_british_year_with_vat_comes_to_what_was_worked_on_paper(british):
    assert trial_balance(british.files) == {name: Decimal(amount) for name, amount in BRITISH.items()}
    assert folder_check.wrong(british.files) == []


def test_the_vat_return_of_the_british_year_has_its_boxes(british):
    boxes = {
        row["line"]: row["amount"] for row in rows(british.files, "figures.csv") if row["form"] == forms.VAT_RETURN
    }
    # Due 120 + 25 - 4 = 141; back 41.20 + 40 + 20; sales 600 + 125 - 20; purchases 206 + 200 + 100.
    assert boxes == {"1": "141.00", "3": "141.00", "4": "101.20", "5": "39.80", "6": "705.00", "7": "506.00"}


def test_the_stock_of_the_british_year_tells_what_stands_at_the_gallery(british):
    candle = next(row for row in rows(british.files, "stock.csv") if row["kind"] == "candle")
    # 150 made, 60 and 10 sold, 2 back: 82 at 2.00; 30 went to the gallery and 10 were sold there.
    assert [candle[key] for key in ("amount", "of_them_at_places", "value")] == ["82.0", "20.0", "164.00"]


# An American year on paper. North county 6.25 %, South county 8.25 % and from July 8.5 %, elsewhere 5 %.
#   north: 160.00, tax 10.00; south in June: 320.00, tax 26.40; south in July: 80.00, tax 6.80, not paid;
#   elsewhere: 16.00, tax 0.80; the marketplace: 160.00, its tax 10.00 is its own to pay, fee 16.00
AMERICAN_TAX = {
    ("North county", "0.0625", "Web shop", "maker"): ("170.00", "160.00", "10.00"),
    ("South county", "0.0825", "Web shop", "maker"): ("346.40", "320.00", "26.40"),
    ("South county", "0.085", "Web shop", "maker"): ("86.80", "80.00", "6.80"),
    ("North county", "0.0625", "Marketplace", "place"): ("170.00", "160.00", "10.00"),
    ("", "0.05", "Web shop", "maker"): ("16.80", "16.00", "0.80"),
}


def tax_of(files):
    key, sums = ("area", "rate", "place", "paid_by"), ("gross", "taxable", "tax")
    return {tuple(row[each] for each in key): tuple(row[each] for each in sums) for row in rows(files, "tax.csv")}


def test_an_american_year_has_its_tax_by_area_and_by_who_pays_it():
    files = handed(book_years.american_year()).files
    assert tax_of(files) == AMERICAN_TAX
    found = trial_balance(files)
    assert found["Sales tax or VAT owed"] == Decimal("-44.00")  # 10.00 + 26.40 + 6.80 + 0.80
    assert (found["Sales"], found["Selling fees"]) == (Decimal("-736.00"), Decimal("16.00"))
    assert found["Owed by buyers and places"] == Decimal("86.80")
    assert found["Cost of candles sold"] == Decimal("88.00")  # 44 candles at 2.00
    assert folder_check.wrong(files) == []


def test_by_the_cash_method_only_what_was_paid_counts():
    files = handed(book_years.american_year("cash")).files
    # In: 170.00 + 346.40 + 16.80 + 144.00 of the marketplace; out: the jars, 206.00. The wax is not paid.
    assert trial_balance(files) == {
        "Bank and cash": Decimal("471.20"), "Materials bought": Decimal("206.00"), "Selling fees": Decimal("16.00"),
        "Sales": Decimal("-656.00"), "Sales tax or VAT owed": Decimal("-37.20"),
    }  # fmt: skip
    assert "South county" not in {row["area"] for row in rows(files, "tax.csv") if row["rate"] == "0.085"}
    assert folder_check.wrong(files) == []


def test_what_is_held_for_buyers_is_no_sale_yet_and_what_broke_at_the_stall_is_a_cost():
    # A deposit of 30.00 in May, of which 20.00 is used in June for two candles at 16.00 with 5 % tax (33.60, so 13.60
    # comes in). At a market 10 go along, 6 come back, 1 is given away, 1 breaks: 2 sold at 16.00, 33.60 with tax; stand
    # 25.00. Money: 30 + 13.60 + 33.60 - 25 - 206 jars. Refunded: 8.00 back, with 0.40 of tax.
    season = book_years.american_year()
    season.tables["places"].loc[1, ["place", "collector", "fee"]] = ["Stall", "maker", None]
    season = book_years.type_in(
        season,
        sales=[
            book_years.sale(day(5, 1), "Web shop", None, 30.0, kind="deposit", product=None),
            book_years.sale(day(6, 1), "Web shop", 2, 16.0),
            book_years.sale(day(6, 1), "Web shop", None, 20.0, kind="deposit used", product=None),
            book_years.sale(day(6, 5), "Web shop", None, 8.0, kind="refund", product=None),
        ],
        market_days=[{"date": day(7, 3), "place": "Stall", "fee": 25.0}],
        market_lines=[
            {
                "date": day(7, 3),
                "product": "Candle",
                "along": 10.0,
                "back": 6.0,
                "given": 1.0,
                "broken": 1.0,
                "price": 16.0,
            }
        ],
    )
    found = trial_balance(handed(season).files)
    assert found["Held for buyers"] == Decimal("-10.00")
    assert found["Bank and cash"] == Decimal("-162.20")  # -153.80 less the refund of 8.40
    assert found["Sales"] == Decimal("-56.00")  # 32 + 32 - 8
    assert found["Stands and markets"] == Decimal("25.00")
    assert found["Cost of candles sold"] == Decimal("12.00")  # four sold, one given away and one broken, at 2.00


def planted(files, name, old, new, times=1):
    """The files with one of them changed, and its hash made to fit, so that only the rules can tell."""
    text = files[name].decode("utf-8-sig")
    assert old in text, (name, old)
    changed = text.replace(old, new, times).encode("utf-8-sig" if name.endswith(".csv") else "utf-8")
    return files | {name: changed}


def found_by_rules(files):
    return [words for words in folder_check.wrong(files) if "it is not as" not in words]


FAULTS = [
    ("journal.csv", ",1854.00,", ",1854.01,", "debits are 0.01 more than credits"),
    ("journal.csv", ",2100,", ",2190,", "there is no account 2190"),
    ("journal.csv", "2027-03-14", "2027-04-14", "its day, 2027-04-14, is not from 2027-03-01 to 2027-03-31"),
    ("book.journal", "1854.00 USD", "1854.01 USD", "debits are 0.01 more than credits"),
    ("book.journal", "Stock  ", "Stack  ", "there is no account Assets:1200-MaterialsInStack"),
    ("book.journal", "2027-03-14 *", "2027-04-14 *", "its day, 2027-04-14, is not"),
    ("book.beancount", "1854.00 USD", "1854.01 USD", "debits are 0.01 more than credits"),
    ("book.beancount", "  Liabilities:2100-SalesTax", "  Liabilities:2190-SalesTax", "no account Liabilities:2190-"),
    ("book.beancount", "2027-03-14 *", "2027-04-14 *", "its day, 2027-04-14, is not"),
    ("trial_balance.csv", "954.00", "954.01", "trial_balance.csv: its sides differ by 1 coin"),
    ("trial_balance.csv", "2100,", "2190,", "trial_balance.csv: there is no account 2190"),
    ("accounts.csv", "2100,", "2190,", "there is no account 2100"),
    ("stock.csv", ",528.00,", ",528.01,", "stock.csv: account Candles in stock comes to 528.01"),
    ("stock.csv", "2027-03-31", "2027-04-01", "stock.csv: Candle was counted on 2027-04-01, after 2027-03-31"),
    ("tax.csv", "360.00", "360.01", "tax.csv: tax at 8% is not what journal.csv has"),
]  # fmt: skip


@pytest.mark.parametrize("name, old, new, words", FAULTS, ids=lambda value: str(value)[:24])
def test_one_fault_in_a_file_is_named(month, name, old, new, words):
    assert any(words in each for each in found_by_rules(planted(month.files, name, old, new)))


@pytest.mark.parametrize("name", ["journal.csv", "book.journal", "book.beancount", "stock.csv"])
def test_an_entry_that_is_there_twice_is_named(month, name):
    text = month.files[name].decode("utf-8-sig")
    blocks = text.split("\r\n") if name.endswith(".csv") else text.split("\n\n")
    at = next(
        at
        for at, block in enumerate(blocks)
        if "Glass works |" in block
        or '"Glass works"' in block
        or ",Glass works," in block
        or block.startswith("material,Jar")
    )
    gap = "\r\n" if name.endswith(".csv") else "\n\n"
    files = planted(month.files, name, blocks[at], blocks[at] + gap + blocks[at])
    assert any("twice" in words or "2 times" in words for words in found_by_rules(files))


@pytest.mark.parametrize("name", ["figures.csv", "open_questions.csv", "season-values.xlsx", "datapackage.json"])
def test_a_file_that_was_changed_is_named_by_its_hash(month, name):
    files = month.files | {name: month.files[name] + b"\n"}
    assert any(words.startswith(f"{name}: it is not as") for words in folder_check.wrong(files))


ODD = [
    'Wax; "fair" {x} | tag: y', "=2+3", "-1", "+44 20", "@home", "'=quoted", "Two  lines\nof a name", "a\\b",
    "\U0001f56f\ufe0f Kerze", "\u05e0\u05e8\u05d5\u05ea", "\u202eabc", "* star", "! mark", "(7) seven", "~ tilde",
    "12.00 USD", "#tag ^link",
]  # fmt: skip


def odd_month():
    season = book_years.worked_month()
    rows_typed = [book_years.expense(day(3, 9), name, "other costs", 1.0, document=name) for name in ODD]
    texts = [book_years.entry(day(3, 10), "Other costs", "Bank and cash", 1.0, "other", text=name) for name in ODD]
    return book_years.type_in(season, expenses=rows_typed, entries=texts)


@pytest.fixture(scope="module")
def odd(made_once):
    return handed(odd_month()).files


@pytest.mark.parametrize("name", OUTSIDE)
def test_odd_names_and_texts_pass_through_programs(odd, name, tmp_path):
    done = run(name, odd, tmp_path)
    assert done.returncode == 0, done.stdout + done.stderr


def test_odd_names_come_back_from_csv_as_they_were_typed(odd):
    found = read_csv(odd["journal.csv"])
    assert set(ODD) <= {row["payee"] for row in found}
    assert set(ODD) <= {row["memo"] for row in found}
    raw = rows(odd, "journal.csv")
    assert not any(row[key][:1] in "=+-@" for row in raw for key in ("payee", "memo", "doc_ref") if row[key])
    assert folder_check.wrong(odd) == []


def halves(cost_of_candles=20.0):
    """Two seasons of one year: the second begins with what the first ends with, unless it is typed otherwise."""
    one = book_years.american_year()
    one.settings["last_day"] = day(6, 30)
    one = book_years.type_in(
        one,
        sales=[book_years.sale(day(5, 10), "Web shop", 90, 16.0, area="North county", paid_on=None)],
        entries=[book_years.entry(day(1, 1), "Bank and cash", "Capital", 300.0, "opening balance")],
    )
    two = book_years.american_year()
    two.settings["first_day"] = day(7, 1)
    opening = {"date": day(7, 1), "kind": "opening"}
    two = book_years.type_in(
        two,
        purchases=[opening | {"material": "Wax", "packs": 50.0, "price": 100.0},
                   opening | {"material": "Jar", "packs": 106 / 103, "price": 106.0}],
        pours=[{"date": day(6, 1), "batch": 1.0, "product": "Candle", "good": 10.0, "kind": "opening",
                "cost": cost_of_candles}],
        sales=[book_years.sale(day(8, 10), "Web shop", 5, 16.0)],
        still_open=[
            {"date": day(5, 10), "kind": "sale", "who": "Web shop", "sum": 1530.0, "paid_on": day(7, 20)},
            {"date": day(2, 1), "kind": "purchase", "who": "Wax works", "sum": 200.0, "document": "X-1"},
        ],
    )  # fmt: skip
    return one, two


def together(one, two):
    given = [worked(two, "autumn"), worked(one, "spring")]
    with book_years.no_values():
        return handed_over(given, Span(day(1, 1), day(12, 31)), {})


def test_two_workbooks_make_one_year():
    # 100 kg of wax less 50 in candles, 206 jars less 100: 100.00 and 106.00; 10 candles at 2.00 go over. In all 95 are
    # sold at 16.00; money: 300 - 206 + 1,440 with 90.00 of tax + 80 with 4.00.
    files = together(*halves()).files
    assert trial_balance(files) == {
        "Bank and cash": Decimal("1708.00"),
        "Materials in stock": Decimal("206.00"), "Candles in stock": Decimal("10.00"),
        "Owed for purchases and bills": Decimal("-200.00"), "Sales tax or VAT owed": Decimal("-94.00"),
        "Capital": Decimal("-300.00"), "Sales": Decimal("-1520.00"), "Cost of candles sold": Decimal("190.00"),
    }  # fmt: skip
    assert folder_check.wrong(files) == []
    assert any(row["from_tab"] == "autumn: Sold" for row in rows(files, "journal.csv"))


def test_a_workbook_that_begins_with_a_cent_less_is_refused():
    with pytest.raises(ValueError, match="Candles in stock ended at 20.00 and begins at 19.99"):
        together(*halves(cost_of_candles=19.99))


def with_late_bill(closed_to):
    season = book_years.worked_month()
    season.settings["closed_to"] = closed_to
    late = book_years.expense(day(3, 4), "Sign painter", "advertising", 55.0)
    typed = [row for _, row in season.rows("expenses")]
    return book_years.type_in(season, expenses=[*typed, late])


def test_what_is_typed_late_for_closed_days_becomes_a_later_entry(month):
    closed = day(3, 11)
    late = handed(with_late_bill(closed), closed_to=closed, earlier=month.files)
    before, now = (
        [line for line in rows(files, "journal.csv") if line["date"] <= str(closed)]
        for files in (month.files, late.files)
    )
    assert [{**line, "entry_no": 0} for line in now] == [{**line, "entry_no": 0} for line in before]
    assert {each.reference for each in late.changed} == {
        "EXPENSE 2027-03-04 Sign painter Sign painter 2027-03-04",
        "EXPENSE PAID 2027-03-04 Sign painter Sign painter 2027-03-04 Bank and cash",
    }
    assert {line["date"] for line in rows(late.files, "journal.csv") if line["doc_ref"].startswith("LATE ")} == {
        "2027-03-12"
    }
    assert trial_balance(late.files)["Advertising"] == Decimal("55.00")
    assert folder_check.wrong(late.files) == []


def half_years(late=False):
    """A year of which the first half is handed over, and then a bill and a sale of that half are typed."""
    season = book_years.busy_year()
    season.settings["closed_to"] = day(6, 30)
    expenses, sales = ([row for _, row in season.rows(table)] for table in ("expenses", "sales"))
    if late:
        expenses.append(book_years.expense(day(3, 4), "Sign painter", "production overhead", 55.0, paid_on=day(8, 4)))
        sales.insert(0, book_years.sale(day(5, 20), "Web shop", 3, 16.0, area="South county"))
    return book_years.type_in(season, expenses=expenses, sales=sales)


@pytest.fixture(scope="module")
def spring():
    return handed(half_years(), last=day(6, 30)).files


def tax_charged(files):
    return sum(Decimal(row["tax"]) for row in rows(files, "tax.csv") if row["what"] == "on sales")


def test_what_comes_late_for_a_time_handed_over_is_booked_on_the_first_day_of_the_next(spring):
    autumn = handed(half_years(late=True), first=day(7, 1), closed_to=day(6, 30), earlier=spring)
    lines = rows(autumn.files, "journal.csv")
    late = {line["date"] for line in lines if line["doc_ref"].startswith("LATE ")}
    assert late == {"2027-07-01"}
    assert folder_check.wrong(autumn.files) == []
    # What stood before is as it was handed over, its result the owner's.
    brought = {line["account_name"]: line for line in lines if line["doc_ref"].startswith("BROUGHT FORWARD")}
    before = trial_balance(spring)
    for name in ("Bank and cash", "Candles in stock", "Owed for purchases and bills", "Sales tax or VAT owed"):
        line = brought[name]
        assert Decimal(line["debit"] or 0) - Decimal(line["credit"] or 0) == before[name]
    # Both halves together are the year, in balances, in profit and in tax.
    year = handed(half_years(late=True), closed_to=None).files
    accounts = ("Bank and cash", "Owed by buyers and places", "Candles in stock", "Sales tax or VAT owed", "Savings")
    assert all(trial_balance(autumn.files)[name] == trial_balance(year)[name] for name in accounts)
    profits = [next(row["amount"] for row in rows(each, "figures.csv") if row["says"] == "profit") for each in
               (spring, autumn.files, year)]  # fmt: skip
    assert Decimal(profits[0]) + Decimal(profits[1]) == Decimal(profits[2])
    assert tax_charged(spring) + tax_charged(autumn.files) == tax_charged(year)


def test_a_year_whose_first_half_is_closed_comes_to_the_same_as_one_that_is_not(spring):
    season = half_years(late=True)
    closed, plain = handed(season, closed_to=day(6, 30), earlier=spring), handed(season)
    assert trial_balance(closed.files) == trial_balance(plain.files)
    assert folder_check.wrong(closed.files) == []
    in_time = [line["doc_ref"] for line in rows(closed.files, "journal.csv") if line["date"] <= "2027-06-30"]
    assert not [reference for reference in in_time if "Sign painter" in reference]


def test_nothing_is_late_where_nothing_was_typed_since(spring):
    again = handed(half_years(), first=day(7, 1), closed_to=day(6, 30), earlier=spring)
    assert again.changed == []
    assert not [line for line in rows(again.files, "journal.csv") if line["doc_ref"].startswith("LATE ")]


def test_a_time_that_cannot_be_compared_is_refused(spring):
    with pytest.raises(ValueError, match="begin with its first day, or on 2027-07-01"):
        handed(half_years(), first=day(3, 1), closed_to=day(6, 30), earlier=spring)
    later = book_years.american_year()
    later.settings |= {"first_day": day(1, 1, 2028), "last_day": day(12, 31, 2028)}
    empty = book_years.type_in(later, purchases=[], pours=[], sales=[], tax_rates=[])
    with pytest.raises(ValueError, match="name the workbook that it was made from, too"):
        handed(empty, closed_to=day(6, 30), earlier=spring)


def test_a_hand_over_behind_the_closed_day_is_refused_without_the_earlier_one():
    with pytest.raises(
        ValueError, match="books are closed to 2027-03-11, and a hand-over from 2027-03-01 reaches behind"
    ):
        handed(with_late_bill(day(3, 11)), closed_to=day(3, 11))


def test_the_vat_return_of_the_cash_method_has_what_was_paid():
    season = book_years.british_year()
    season.settings["books"] = "cash"
    boxes = {row["line"]: row["amount"] for row in rows(handed(season).files, "figures.csv")}
    # The wax and the gallery are not paid: due 120 - 4, back 41.20 + 20; sales 600 - 20; purchases 206 + 100.
    assert [boxes[line] for line in "14567"] == ["116.00", "61.20", "54.80", "580.00", "306.00"]


def test_a_sale_without_a_price_is_named_and_nothing_is_handed_over():
    season = book_years.american_year()
    season.tables["sales"].loc[2, "price"] = None
    with pytest.raises(ValueError, match=r"season, tab Sold, row 6: .* is #N/A; mend it first, by check"):
        handed(season)


def test_an_account_that_is_not_known_is_named():
    season = book_years.worked_month()
    season.tables["entries"].loc[3, "debit"] = "Kiln"
    with pytest.raises(ValueError, match="season, tab Other entries, row 7: Kiln is on neither Chart nor Accounts"):
        handed(season)


def test_what_stood_before_is_brought_forward_in_one_entry():
    found = handed(book_years.worked_month(), first=day(3, 13)).journal
    assert found.entries[0].reference == "BROUGHT FORWARD 2027-03-13"
    assert sum(line.coins for line in found.entries[0].lines) == 0
    assert all(day(3, 13) <= entry.day for entry in found.entries)


@pytest.fixture(scope="module")
def typed(tmp_path_factory):
    there = tmp_path_factory.mktemp("typed") / "spring"
    season = book_years.worked_month()
    notes = [row | {"notes": "call Mrs Quill"} for _, row in season.rows("sales")]
    folder.write(book_years.type_in(season, sales=notes), there)
    return there


def command(*words):
    return CliRunner().invoke(main, [str(word) for word in words])


def test_the_command_writes_the_folder_and_says_each_file(typed, made_anew, tmp_path):
    out, again = tmp_path / "out", tmp_path / "again"
    done = command("handover", typed, out, "--from", "2027-03-01", "--to", "2027-03-31")
    assert done.exit_code == 0, done.output
    files = {path.name: path.read_bytes() for path in out.iterdir()}
    assert all(f"{out / name}: " in done.output for name in files)
    assert command("check", out).output == f"{out}: the hand-over is whole\n"
    command("handover", typed, again, "--from", "2027-03-01", "--to", "2027-03-31")
    assert {path.name: path.read_bytes() for path in again.iterdir()} == files


def test_without_a_first_day_it_is_the_financial_years(tmp_path):
    season = book_years.worked_month()
    season.settings["year_from"] = day(3, 12, 2020)
    folder.write(season, tmp_path / "season")
    done = command("handover", tmp_path / "season", tmp_path / "out", "--to", "2027-03-31")
    assert "entries from 2027-03-12 to 2027-03-31" in done.output


REFUSED = [
    (["--from", "2027-03-01", "--to", "2027-03-31"], "is not empty", 1),
    (["--from", "2027-02-01", "--to", "2027-03-31"], "hold 2027-03-01 to 2027-03-31", 1),
    (["--from", "2027-03-31", "--to", "2027-03-01"], "is before", 1),
    (["--to", "2027-03-31"], "say from which day", 2),
    (["--from", "2027-03-01", "--to", "2027-03-31", "--without-costs"], "is of one day", 2),
]


@pytest.mark.parametrize("words, said, code", REFUSED)
def test_a_hand_over_that_cannot_be_is_refused_and_writes_nothing(typed, tmp_path, words, said, code):
    out = tmp_path / "out"
    out.mkdir()
    if "empty" in said:
        (out / "mine.txt").write_text("mine")
    before = sorted(out.iterdir())
    done = command("handover", typed, out, *words)
    assert done.exit_code == code, done.output
    assert said in done.output
    assert sorted(out.iterdir()) == before


def test_without_costs_no_price_supplier_customer_or_note_is_in_any_part(typed, tmp_path):
    out = tmp_path / "out"
    done = command("handover", typed, out, "--to", "2027-03-31", "--without-costs")
    assert done.exit_code == 0, done.output
    parts = {path.name: path.read_bytes() for path in out.iterdir() if path.suffix != ".xlsx"}
    with zipfile.ZipFile(out / "stock_and_labels.xlsx") as package:
        parts |= {name: package.read(name) for name in package.namelist()}
    # Suppliers, customers, payees, notes and orders; pack prices, what things are worth, what they cost each.
    hidden = [
        b"Glass works",
        b"Web shop",
        b"Landlord",
        b"Helper",
        b"Quill",
        b"J-1",
        b"W12",
        b"1854",
        b"528.0",
        b"954.0",
    ]
    assert not [(name, word) for name, data in parts.items() for word in hidden if word in data]
    assert not [name for name in parts if "comment" in name.lower() or "externalLink" in name]
    assert b"Candle" in parts["stock.csv"]


def alike(there, value):
    """Whether a cell holds a value; a file keeps sixteen digits of a number, and a day as a day."""
    there = openpyxl.utils.datetime.to_excel(there) if hasattr(there, "year") else there
    if isinstance(there, float) or isinstance(value, float):
        return isinstance(there, (int, float)) and there == pytest.approx(value, rel=1e-14)
    return there == (None if value == "" else value)


def test_the_values_only_workbook_holds_every_figure_and_no_formula(month):
    _, drafted = worked(book_years.worked_month())
    made = openpyxl.load_workbook(io.BytesIO(month.files["season-values.xlsx"]))
    assert made.sheetnames == list(drafted.values)
    for sheet in made:
        cells = [cell for row in sheet.iter_rows() for cell in row]
        assert not [cell for cell in cells if cell.data_type == "f" or cell.comment]
        there = {cell.coordinate: cell.value for cell in cells if cell.value is not None}
        wanted = {
            f"{openpyxl.utils.get_column_letter(column)}{row}": value
            for row, found in enumerate(drafted.values[sheet.title], start=1)
            for column, value in enumerate(found, start=1)
            if value not in (None, "")
        }
        assert there.keys() == wanted.keys()
        assert not [(sheet.title, cell) for cell, value in wanted.items() if not alike(there[cell], value)]
        hidden = [each for each in (*sheet.row_dimensions.values(), *sheet.column_dimensions.values()) if each.hidden]
        assert (sheet.sheet_state, sheet.data_validations.dataValidation, hidden) == ("visible", [], [])


def test_programs_for_spreadsheets_show_every_figure_of_the_values_only_workbook(month, office, tmp_path):
    path = tmp_path / "values.xlsx"
    path.write_bytes(month.files["season-values.xlsx"])
    wanted = stored(path)
    subprocess.run(["ssconvert", path, tmp_path / "gnumeric.xlsx"], check=True, capture_output=True)  # noqa: S603, S607
    for found in (office.opened(path), stored(tmp_path / "gnumeric.xlsx")):
        apart = {cell: (value, found.get(cell)) for cell, value in wanted.items() if not alike(found.get(cell), value)}
        assert apart == {}


SUMMED = {
    "Profit": "347.00",  # 705 - 136 - 122 - 100
    "Stock at cost": "270.00",  # 106 of materials, 82 candles at 2.00
    "Owed to you": "100.00",
    "You owe": "240.00",
    "Tax owed": "111.00",
    "Tax to claim": "101.20",
    "Held for buyers": "0.00",
    "Taken by owner": "0.00",
}


def test_what_is_asked_first_at_the_end_of_a_year_stands_in_the_summary(british):
    lines = british.files["summary.txt"].decode().splitlines()
    found = {line[:17].strip(): line[17:].removesuffix(" GBP") for line in lines if line.endswith(" GBP")}
    assert {name: found[name] for name in SUMMED} == SUMMED
    assert "Stock is valued first in, first out." in british.files["summary.txt"].decode()


def asked(files, about):
    return [row["question"] for row in rows(files, "open_questions.csv") if row["about"] == about]


def test_a_purse_that_is_no_account_and_what_nobody_counted_are_asked_about(british):
    assert asked(british.files, "count") == [
        "not counted in the month before 2027-12-31: 3 of 3 in stock; how much there is follows from what was typed; "
        "see stock.csv"
    ]
    season = book_years.british_year()
    paid = [row | {"paid_into": "Tin"} if at < 2 else row for at, (_, row) in enumerate(season.rows("sales"))]
    money = asked(handed(book_years.type_in(season, sales=paid)).files, "money")
    assert any(words.startswith("Tin is no money account on Accounts") for words in money)


def test_what_is_unpaid_is_one_question_an_order_or_bill_and_comes_to_what_is_owed(british):
    for about, name in (("owed to you", "Owed by buyers and places"), ("you owe", "Owed for purchases and bills")):
        found = [row for row in rows(british.files, "open_questions.csv") if row["about"] == about]
        assert len({row["question"] for row in found}) == len(found)
        owed = trial_balance(british.files).get(name, Decimal(0))
        assert sum(Decimal(row["amount"]) for row in found) == abs(owed)


def test_postage_that_orders_took_and_no_bill_says_is_asked_about():
    season = book_years.american_year()
    assert asked(handed(season).files, "postage") == []
    dear = [row | {"postage_paid": 9000.0} for _, row in season.rows("places")]
    (words,) = asked(handed(book_years.type_in(season, places=dear)).files, "postage")
    assert "is a bill missing" in words


def test_a_fee_that_is_kept_of_a_deposit_is_a_fee():
    season = book_years.american_year()
    deposit = book_years.sale(day(5, 1), "Web shop", None, 30.0, kind="deposit", product=None, fee=1.5)
    found = trial_balance(handed(book_years.type_in(season, sales=[deposit])).files)
    assert (found["Held for buyers"], found["Selling fees"]) == (Decimal("-30.00"), Decimal("1.50"))
    assert found["Bank and cash"] == Decimal("-177.50")  # 28.50 less 206 of jars


def test_a_deposit_without_a_day_of_payment_was_handed_over_and_is_owed_by_nobody():
    season = book_years.american_year()
    deposit = book_years.sale(day(5, 1), "Web shop", None, 30.0, kind="deposit", product=None, paid_on=None)
    assert asked(handed(book_years.type_in(season, sales=[deposit])).files, "owed to you") == []


def test_stock_is_worked_out_and_no_entry_may_be_made_on_it():
    season = book_years.worked_month()
    entry = book_years.entry(day(3, 30), "Cost of candles sold", "candles in stock", 5.0, "other")
    with pytest.raises(
        ValueError, match="tab Other entries, row 4: Candles in stock is worked out from what was bought"
    ):
        handed(book_years.type_in(season, entries=[entry]))
