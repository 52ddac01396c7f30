"""What was bought: each line's cost with its share of the document's freight, and what each material comes to.

The tabs are compared to the cent with exact fractions, and with `split_charge`, which is checked against textbooks in
tests/published.
"""

import datetime
import math
import random
import re
from collections import defaultdict
from fractions import Fraction

import books
import pytest
from year_workbook import ERROR, Typed, in_memory, type_in

import candlecalc
from candlecalc.commands import make
from candlecalc.quantities.days import serial
from candlecalc.season.season import frame
from candlecalc.season.tables import TABLES
from candlecalc.workbook.book import drafted
from candlecalc.workbook.reports import report, shown

GRAMS = {"g": 1, "kg": 1000, "oz": Fraction(45359237, 1600000), "lb": Fraction(45359237, 100000)}
FIRST = datetime.date(2027, 8, 1)


def exact(number):
    return Fraction(f"{number:.15g}")


def season(lines, seed):
    """A small season with purchases out of order: documents of several lines, some with freight, some with none."""
    given = random.Random(seed)  # noqa: S311
    made = books.small().with_records()
    materials = [row["material"] for _, row in made.rows("materials")]
    rows = []
    for number in range(lines):
        document = given.choice([None, "<3", "1e3", f"INV {number // 4}"])
        line = {
            "date": FIRST + datetime.timedelta(days=given.randrange(120)),
            "document": document,
            # Two suppliers have a document "<3"; of others the supplier is typed on some lines alone.
            "supplier": given.choice(["Fen Supplies", "Wolds Wax"] if document == "<3" else [None, "Wolds Wax"]),
            "material": given.choice(materials),
            "packs": float(given.choice([1, 2, 3, 12, 2.5])),
            "price": round(given.uniform(0, 90), 2),
            "discount": given.choice([None, 0.0]),
            "charges": given.choice([None, None, 7.99, 12.0, 0.01]),
            "tax": given.choice([None, 1.15]),
            "lot": given.choice([None, f"L{number}"]),
        }
        rows.append(dict.fromkeys(TABLES["purchases"].keys) | line)
    made.tables["purchases"] = frame(rows, TABLES["purchases"])
    return made


def coins(row):
    """What the goods of a line come to, to the cent."""
    return Fraction(math.floor(exact(row["price"]) * exact(row["packs"]) * 100 + Fraction(1, 2)), 100)


def landed(made):
    """The cost of each line of Purchases with its share of the charges, as fractions."""
    rows = [row for _, row in made.rows("purchases")]
    documents = defaultdict(list)
    for number, row in enumerate(rows):
        alone, supplier = row["document"] is None, row["supplier"] or "Wolds Wax"
        documents[("line", number) if alone else (row["document"], supplier)].append(number)
    found = {}
    for numbers in documents.values():
        goods = [coins(rows[number]) for number in numbers]
        charges = round(sum(rows[number]["charges"] or 0 for number in numbers), 2)
        shares = candlecalc.split_charge(charges, [float(each) for each in goods]) if any(goods) else [0.0] * len(goods)
        for number, share in zip(numbers, shares, strict=True):
            row = rows[number]
            found[number] = coins(row) - exact(row["discount"] or 0) + exact(row["tax"] or 0) + exact(share)
    return found


def bought(made):
    """By material: how much in the workbook's unit, what was paid, and the date of its last line."""
    packs = {row["material"]: row for _, row in made.rows("materials")}
    unit = GRAMS[made.settings["weight_unit"]]
    costs, found = landed(made), {}
    for number, row in made.rows("purchases"):
        pack = packs[row["material"]]
        size = exact(pack["pack_size"]) * (1 if pack["pack_unit"] == "each" else GRAMS[pack["pack_unit"]] / unit)
        amount, paid, last = found.get(row["material"], (0, 0, (FIRST, -1)))
        last = max(last, (row["date"], number))
        found[row["material"]] = amount + size * exact(row["packs"]), paid + costs[number], last
    return found


def of_document(*suppliers, documents=("D1", "D1")):
    """The tabs with lines of 10.00 and 30.00, and freight of 4.00 on the first."""
    made = books.small().with_records()
    typed = zip(documents, suppliers, (10.0, 30.0, 5.0), (4.0, None, None), strict=False)
    rows = [
        {"date": FIRST, "document": document, "material": made.names("materials")[0], "packs": 1.0, "price": price,
         "charges": charges, "supplier": supplier}
        for document, supplier, price, charges in typed
    ]  # fmt: skip
    type_in(made, "purchases", [dict.fromkeys(TABLES["purchases"].keys) | row for row in rows])
    return Typed(None, *in_memory(made))


def landed_costs(found):
    return [found.cell("purchases", "landed", row) for row in (2, 3)]


@pytest.mark.parametrize("suppliers", [("Fen Supplies", None), (None, "Fen Supplies"), (None, None)])
def test_a_supplier_left_out_on_a_line_does_not_part_its_document(suppliers):
    assert landed_costs(of_document(*suppliers)) == [11, 33]


def test_documents_of_two_suppliers_may_have_one_number():
    assert landed_costs(of_document("Fen Supplies", "Wolds Wax")) == [14, 30]


def test_a_line_that_may_be_of_either_supplier_is_pointed_out():
    found = of_document("Fen Supplies", "Wolds Wax", None, documents=("D1", "D1", "D1"))
    assert found.cell("purchases", "status", 2).startswith("Document number of two suppliers")


@pytest.mark.parametrize("slip", ["D1 ", " D1", "D1\u00a0"])
def test_a_blank_that_nobody_sees_is_pointed_out_and_not_a_document_of_its_own(slip):
    found = of_document("Fen Supplies", "Fen Supplies", documents=("D1", slip))
    assert "no blank at its end" in found.cell("purchases", "status", 3)
    assert landed_costs(found)[1] == ERROR


def test_a_day_that_a_half_became_is_no_number_of_packs():
    made = books.small().with_records()
    line = {"date": FIRST, "material": made.names("materials")[0], "packs": serial(FIRST), "price": 4.0}
    type_in(made, "purchases", [line])
    found = Typed(None, *in_memory(made))
    assert "type 0.5 for a half, not 1/2" in found.cell("purchases", "status", 2)
    assert found.cell("purchases", "landed", 2) == ERROR


SEEDS = [1, 2, 3]


@pytest.fixture(scope="module", params=SEEDS)
def made(request, tmp_path_factory):
    path = tmp_path_factory.mktemp("purchases") / f"year {request.param}.xlsx"
    return books.Book(season(24, request.param), path)


def differences(made, values):
    """Cells that are not what the exact reference says."""
    found = []
    for number, cost in landed(made.season).items():
        cell = made.cell("purchases", "landed", number)
        if values[cell] != pytest.approx(float(cost), abs=1e-6):
            found.append((cell, values[cell], float(cost)))
    reference = bought(made.season)
    for number, row in made.rows("materials"):
        amount, paid, (last, line) = reference.get(row["material"], ("", "", ("", None)))
        cost = "" if line is None else values[made.cell("purchases", "unit_cost", line)]
        wanted = {"bought": amount or 0, "paid": paid or 0, "date": last and serial(last), "unit_cost": cost}
        for key, value in wanted.items():
            cell = made.cell("stock", key, number)
            expected = pytest.approx(float(value), rel=1e-9) if isinstance(value, Fraction) else value
            if values.get(cell, "") != expected:
                found.append((cell, values.get(cell), value))
    return found


def test_purchases_come_to_what_exact_fractions_say(made):
    values = made.held
    assert differences(made, values) == []
    assert values[made.named("master_check")] == "Numbers agree"


def test_a_cent_that_is_not_there_is_found(made):
    values = made.held
    cell = made.cell("purchases", "landed", 0)
    assert differences(made, values | {cell: values[cell] + 0.01})


def test_the_office_finds_the_same_and_so_without_a_line(made, office):
    last = len(made.rows("purchases")) - 1
    gone = {made.cell("purchases", key, last): None for key in TABLES["purchases"].keys}
    whole, short = office.edited_each(made.path, [{}, gone])
    assert differences(made, whole) == []
    made.season.tables["purchases"].drop(index=last, inplace=True)
    assert [cell for cell, *_ in differences(made, short)] == []


def test_show_says_what_was_bought_with_days_and_money_as_the_tab_has_them(made):
    calculated = report.Calculated(made.season, drafted(made.season, books.DATED, rows_of=made.rows_of))
    days = [record["Date"] for record in shown.of_list(calculated, "purchases")]
    assert {type(day) for day in days} == {datetime.date}
    table = make.as_table(shown.of_list(calculated, "purchases"), shown.formats(calculated, "purchases"))
    assert len([line for line in table if re.search(r"2027-\d\d-\d\d .* \d+\.\d\d +\d+\.\d{4}", line)]) == len(days)
