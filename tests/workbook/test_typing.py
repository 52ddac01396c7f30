"""What a spreadsheet makes of what is typed: it is refused, or asked about, and never counts in silence.

Typed in LibreOffice as a person types, in two languages; the workbook is in ounces and degrees Fahrenheit.
"""

import books
import pytest

from candlecalc.season.tables import TABLES

READ = ("Materials", "Vessels", "Recipes", "Costing", "Prices", "Checks")
WAX, TIN = "Soft plant wax for jars", "Pear and honey tin"
AGREES, ASKED, WRONG = "Numbers agree", "1 to look at", "1 to fix"
# (table, field, row, what is typed, where it is said, what is said of it, what the master check says)
TYPED = {
    "en-US": [
        ("materials", "pack_size", WAX, "1/2", "doubts", "Pack size: is it a date?", ASKED),
        ("materials", "on_hand", WAX, "0 1/2", "doubts", "", AGREES),
        ("materials", "on_hand", WAX, "1:30", "doubts", "On hand: is it a time of day?", ASKED),
        ("materials", "pack_size", WAX, "TRUE", "mend", "Pack size: takes a number", WRONG),
        ("materials", "pack_size", WAX, "8 oz", "mend", "Pack size: type the number alone", WRONG),
        ("materials", "pack_price", WAX, "92,5", "mend", "Pack price: type the number alone", WRONG),
        ("materials", "material", WAX, f"{WAX} ", "mend", "Material: takes a name", "3 to fix"),
        ("materials", "pour_at", WAX, "60", "mend", "Pour at: takes a number", WRONG),
        ("materials", "add_at", WAX, "110", "doubts", "Oil goes into wax that is set: ", ASKED),
        ("materials", "melt_low", WAX, "126", "warnings", "Melting range upside down: ", WRONG),
        ("materials", "priced_on", WAX, "mid August", "mend", "Price seen on: takes a date", WRONG),
        ("recipes", "minutes", TIN, "0:05", "mend", "Minutes: takes a number", WRONG),
        ("recipes", "minutes", TIN, "1:30", "doubts", "Minutes: is it a time of day?", ASKED),
        ("recipes", "minutes", TIN, "3.4", "doubts", "", AGREES),
        ("recipes", "load", TIN, "1/2", "mend", "Load: takes a percentage", WRONG),
        ("vessels", "top", "Travel tin", "66", "mend", "Inside top or length: takes a number", WRONG),
        ("prices", "price", f"{TIN} @ Saturday market stall", "1/2", "doubts", "Your price: is it a date?", ASKED),
    ],
    "de-DE": [
        ("materials", "pack_price", WAX, "92,5", "doubts", "", AGREES),
        ("materials", "pack_price", WAX, "92.5", "mend", "Pack price: type the number alone", WRONG),
        ("materials", "on_hand", WAX, "1:30", "doubts", "On hand: is it a time of day?", ASKED),
        ("recipes", "minutes", TIN, "0:05", "mend", "Minutes: takes a number", WRONG),
    ],
}  # fmt: skip


@pytest.fixture(scope="module")
def small(tmp_path_factory):
    return books.Book(books.small(), tmp_path_factory.mktemp("typing") / "small.xlsx", rows_of=books.SMALL_ROWS)


@pytest.fixture(scope="module", params=TYPED)
def typed(request, small, office_in):
    """[(what was typed, the values after it)], and those before anything was."""
    done = TYPED[request.param]
    gestures = [[("type", *small.cell(table, key, row), text)] for table, key, row, text, *_ in done]
    untouched, *after = office_in(request.param).after_gestures(small.path, [[], *gestures], tabs=READ)
    return list(zip(done, after, strict=True)), untouched


def test_a_slip_is_told_in_its_row_and_in_the_master_check(small, typed):
    for (table, _, row, text, column, words, master), values in typed[0]:
        said = values.get(small.cell(table, column, row), "")
        assert words in said if words else said == "", text
        assert values[small.named("master_check")] == master, text


def test_a_slip_that_no_cost_rests_on_stops_no_cost(small, typed):
    after, untouched = typed
    for (table, key, _, text, *_), values in after:
        if TABLES[table][key].not_in_cost:
            for product in range(len(small.rows("recipes"))):
                full = small.cell("costing", "full", product)
                assert values[full] == untouched[full], f"{key}: {text}"


def test_a_number_that_is_refused_is_in_no_cost(small, typed):
    for (table, key, row, text, column, *_), values in typed[0]:
        if column == "mend" and not TABLES[table][key].not_in_cost and table in ("materials", "recipes", "vessels"):
            users = books.users(small, table, row) or {row}
            for product in users:
                assert not isinstance(values[small.cell("costing", "full", product)], float), f"{key}: {text}"
