"""How many rows a workbook has: what does not fit is told, and a workbook made from another has room to go on."""

import datetime
import re
from fractions import Fraction

import books
import cells
import openpyxl
import pytest
from click.testing import CliRunner
from openpyxl.utils import column_index_from_string
from year_workbook import type_in

from candlecalc.commands.cli import main
from candlecalc.season import folder
from candlecalc.season.room import asked_for, fresh
from candlecalc.season.tables import TABLES
from candlecalc.workbook import book, size
from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.reading import read
from candlecalc.workbook.reports import report
from candlecalc.workbook.tabs import start
from candlecalc.workbook.tabs.stock import used
from candlecalc.workbook.tabs.working import sets_not_packed

DAY = datetime.date(2027, 8, 3)
TIN, TUMBLER = "Bitter orange tin", "Orange and clove tumbler"
WAX = "Soft plant wax for jars"
USUAL = 5


def run(*given):
    return CliRunner().invoke(main, [str(each) for each in given])


pytestmark = pytest.mark.usefixtures("made_once")


@pytest.fixture(autouse=True)
def few_usual_rows(monkeypatch):
    """Formulas that would stay blank cost time alone."""
    for key, rows in books.small().tables.items():
        monkeypatch.setitem(book.USUAL_ROWS, key, 2 * len(rows))
    for key, table in TABLES.items():
        if table.records:
            monkeypatch.setitem(book.USUAL_ROWS, key, USUAL)


def kept(batches=2, purchases=1):
    """A small season that keeps records."""
    made = books.small().with_records()
    bought = {"date": DAY, "material": WAX, "packs": 1.0, "price": 60.0}
    type_in(made, "purchases", [bought | {"document": f"INV {number}"} for number in range(purchases)])
    poured = {"date": DAY, "product": TIN, "good": 6.0}
    type_in(made, "pours", [poured | {"batch": float(number)} for number in range(1, batches + 1)])
    return made


def made_of(season, tmp_path, *given):
    """A workbook made from a season's folder, and what is said of it."""
    folder.write(season, tmp_path / "csv")
    path = tmp_path / "mine.xlsx"
    return path, run("new", path, "--from", tmp_path / "csv", *given)


# What is asked for


def test_rows_are_asked_for_by_a_tab_or_by_the_name_of_its_file():
    assert asked_for(["purchases=800", "Batch log = 400,COUNTS=20"]) == {"purchases": 800, "pours": 400, "counts": 20}


@pytest.mark.parametrize("words, told", [
    ("purchases", '"purchases" is no tab with its number of rows; write it as purchases=800'),
    ("purchases=0", '"purchases=0" is no tab'),
    ("purchases=1e3", '"purchases=1e3" is no tab'),
    ("used=20", "there is no tab used that you type a list in; there are Materials, Vessels"),
    ("pours=20,Batch log=30", "Batch log is there twice"),
])  # fmt: skip
def test_rows_that_cannot_be_read_are_a_wrong_call_and_nothing_is_written(tmp_path, words, told):
    done = run("new", tmp_path / "new.xlsx", "--records", "--rows", words)
    assert (done.exit_code, list(tmp_path.iterdir())) == (2, [])
    assert done.stderr.startswith(f"candlecalc: --rows: {told}")


@pytest.mark.parametrize("words, told", [
    ("pours=2", "Batch log cannot have 2 rows: 3 are filled"),
    ("materials=1", "Materials cannot have 1 rows: "),
])  # fmt: skip
def test_fewer_rows_than_are_filled_are_refused(tmp_path, words, told):
    path, done = made_of(kept(batches=3), tmp_path, "--rows", words)
    assert (done.exit_code, path.exists()) == (1, False) and told in done.stderr


def test_a_workbook_for_costs_has_no_logs_to_give_rows(tmp_path):
    done = run("new", tmp_path / "new.xlsx", "--rows", "purchases=50")
    assert done.exit_code == 1 and "Purchases is a tab of the year's records: add --records" in done.stderr


# What a workbook gets, and keeps


def test_a_log_gets_as_many_spare_rows_as_it_has_filled_and_the_usual_number_at_least():
    season = kept(batches=4, purchases=2)
    assert fresh(season, book.USUAL_ROWS) == book.USUAL_ROWS | {"pours": 8}
    assert fresh(season, book.USUAL_ROWS, {"counts": 2})["counts"] == 2


@pytest.mark.parametrize("filled, rows", [(47, 60), (48, 96)])
def test_a_list_that_is_set_up_once_gets_more_once_four_fifths_are_full(filled, rows):
    season = books.small()
    type_in(season, "sets", [{"set": f"Box {number}"} for number in range(filled)])
    usual = {key: table.usual_rows for key, table in TABLES.items()}
    assert fresh(season, usual)["sets"] == rows


def test_a_workbook_of_other_rows_is_read_and_checked_by_its_own(tmp_path):
    path, done = made_of(kept(batches=0), tmp_path, "--rows", "purchases=9,counts=3")
    assert done.exit_code == 0, done.output
    rooms = read.held(path).rooms
    assert rooms == book.USUAL_ROWS | {"purchases": 9, "counts": 3}
    # Formulas are compared with those of a workbook of as many rows.
    assert run("check", path).output == f"{path}: Numbers agree\n"


def test_a_log_of_one_row_is_a_list_in_order_too(tmp_path):
    path, done = made_of(kept(batches=0, purchases=1), tmp_path, "--rows", "purchases=1")
    assert done.exit_code == 0, done.output
    assert run("check", path).output == f"{path}: Numbers agree\n"


def test_a_row_below_the_last_of_a_workbook_is_told(tmp_path):
    path, _ = made_of(kept(), tmp_path, "--rows", "purchases=9")
    copy = openpyxl.load_workbook(path)
    letters = book.plan_of(kept()).layouts["purchases"].letters
    for key, value in {"date": DAY, "material": WAX, "packs": 1, "price": 60}.items():
        copy["Purchases"][f"{letters[key]}{FIRST_ROW + 9}"] = value
    copy.save(path)
    done = run("check", path)
    assert done.exit_code == 1
    assert (
        f"Purchases, {letters['date']}{FIRST_ROW + 9}: Date: the tab has room for 9 rows, and no formula" in done.output
    )


# What does not fit


@pytest.fixture
def crowded(made_anew, monkeypatch):
    """A season whose batches take more lines than Used has: each takes more than the three there is room for."""
    monkeypatch.setattr(used, "LINES_OF_A_BATCH", 3)
    return kept(batches=USUAL)


# Three lines for a row of the Batch log, one for each of Taken out, of Counts and of sets that nobody packed, and one.
ROOM = 5 * USUAL + sets_not_packed.rows(dict.fromkeys(("moves", "sales", "market_lines"), USUAL)) + 1


def test_lines_without_a_row_are_an_error_in_every_total_they_touch(crowded):
    drafted = book.drafted(crowded, DAY)

    def column(table, key):
        there = drafted.plan.layouts[table]
        number = column_index_from_string(there.letters[key])
        rows = drafted.values[there.title]
        return [rows[row - 1][number - 1] for row in range(FIRST_ROW, there.last_row + 1)]

    assert set(column("used", "amount")) == set(column("used", "cost")) == {"#N/A"}
    for table, key in (("pours", "materials"), ("pours", "making"), ("stock", "left"), ("stock", "value")):
        told = [each for each in column(table, key) if each not in (None, "")]
        assert told and all(str(each).startswith("#") for each in told), (table, key)


@pytest.mark.parametrize("also", [{}, {"first_day": "soon"}], ids=["alone", "beside another fault"])
def test_lines_without_a_row_are_told_whatever_else_is_to_fix(crowded, also):
    crowded.settings |= also
    found = report.everything_wrong(report.Calculated(crowded, book.drafted(crowded, DAY)), {})
    told = [finding.words for finding in found if finding.tab == "Checks"]
    assert told == [
        f"Used has room for every line: it has room for {ROOM} lines: "
        f"candlecalc new NEW.xlsx --from THIS.xlsx --rows pours={2 * USUAL}"
    ]
    assert len(found) == 1 + len(also)


def test_what_is_told_to_be_typed_makes_room(crowded, tmp_path):
    path, done = made_of(crowded, tmp_path, "--rows", f"pours={USUAL}")
    told = "Used has room for every line: "
    assert told in done.output and told in run("check", path).output
    asked = re.search(r"--rows (\S+)", done.output)[1]
    assert told not in run("new", tmp_path / "next.xlsx", "--from", path, "--rows", asked).output


# Start


def said_on_start(season):
    rows = book.drafted(season, DAY).values[start.START.title]
    room = next(row[1] for row in rows if row[0] == "Room")
    return room, {row[0]: row[3] for row in rows if len(row) > 3 and row[3]}


def test_start_says_nothing_of_lists_that_have_rows_left():
    assert said_on_start(kept(batches=3)) == (start.ENOUGH, {})


def test_start_names_a_log_that_is_four_fifths_full_with_its_rows_left_and_what_to_type():
    room, beside = said_on_start(kept(batches=4))
    assert beside == {"Batch log": "room for 1"}
    assert room == "Batch log: room for 1. For more, in a terminal: candlecalc new NEW.xlsx --from THIS.xlsx"


def test_a_log_of_one_line_that_is_not_right_is_no_empty_log():
    season = kept(batches=0)
    type_in(season, "purchases", [{"date": DAY, "material": WAX, "packs": 1.0, "price": -1.0}])
    drafted = book.drafted(season, DAY)
    layout = drafted.plan.layouts["stock"]
    left = drafted.values["Stock"][FIRST_ROW - 1][column_index_from_string(layout.letters["left"]) - 1]
    assert str(left).startswith("#")


def test_start_says_of_used_where_to_read_which_log_has_to_have_more_rows(crowded):
    _, beside = said_on_start(crowded)
    assert beside["Used"] == "room for 0: see Checks"


# How large a workbook may be


def test_formulas_are_counted_as_they_are_written():
    season = kept()
    drafted = book.drafted(season, DAY)
    written = {sheet.title: cells.formulas(drafted, sheet) for sheet in drafted.book}
    counted = size.of_lists(drafted.plan)
    rest = sum(written.values()) - sum(written[title] for title in counted)
    on_costing = 2  # the rise of materials, over the list, and what is to mend in it
    assert {title: written[title] for title in counted} == counted | {"Costing": counted["Costing"] + on_costing}
    assert on_costing + rest <= size.CARDS


def test_a_workbook_that_would_be_too_large_is_refused_with_what_fills_it_and_what_fits(tmp_path):
    done = run("new", tmp_path / "new.xlsx", "--records", "--rows", "pours=2000")
    assert (done.exit_code, list(tmp_path.iterdir())) == (1, [])
    assert re.search(
        r"would have [\d,]+ formulas, and a workbook takes 245,000: most are on Used \([\d,]+\)", done.stderr
    )
    fits = asked_for([re.search(r"This fits: --rows (\S+)", done.stderr)[1]])
    season = books.blank("us").with_records()
    size.refuse_too_large(season, fresh(season, book.USUAL_ROWS, fits))
    with pytest.raises(ValueError, match="a workbook takes"):
        size.refuse_too_large(season, fresh(season, book.USUAL_ROWS, fits | {"pours": fits["pours"] + 20}))


# How stock is valued


def method(path):
    return read.season_of(path).settings["stock"]


@pytest.mark.parametrize("given, expected", [((), "fifo"), (("--stock", "average"), "average")])
def test_stock_is_valued_as_is_asked_for(tmp_path, given, expected):
    assert run("new", tmp_path / "new.xlsx", "--records", *given).exit_code == 0
    assert method(tmp_path / "new.xlsx") == expected


def test_stock_is_valued_only_where_records_are_kept(tmp_path):
    done = run("new", tmp_path / "new.xlsx", "--stock", "average")
    assert (done.exit_code, done.stderr) == (
        2, "candlecalc: --stock is for a workbook with the year's records: add --records\n"
    )  # fmt: skip


def test_a_workbook_keeps_its_method_and_a_change_is_told(tmp_path):
    path, _ = made_of(kept(), tmp_path, "--stock", "average")
    again = run("new", tmp_path / "again.xlsx", "--from", path)
    assert method(tmp_path / "again.xlsx") == "average" and "Stock is valued" not in again.output
    other = run("new", tmp_path / "other.xlsx", "--from", path, "--stock", "fifo")
    assert method(tmp_path / "other.xlsx") == "fifo"
    assert "Stock is valued by fifo, where it was average" in other.output


# Opening stock


def test_what_is_on_hand_becomes_opening_stock_at_the_price_in_use_to_the_cent_and_is_listed(tmp_path):
    before = books.small()
    before.settings["records"] = "no"
    path, done = made_of(before, tmp_path, "--records")
    assert done.exit_code == 0, done.output
    season = read.season_of(path)
    lines = [row for _, row in season.rows("purchases")]
    on_hand = [row for _, row in before.rows("materials") if row["on_hand"]]
    assert [row["material"] for row in lines] == [row["material"] for row in on_hand] != []
    assert not [row for _, row in season.rows("materials") if row["on_hand"]]
    for line, row in zip(lines, on_hand, strict=True):
        exact = {
            key: Fraction(f"{row[key] or 0:.15g}") for key in ("on_hand", "pack_size", "pack_price", "shipping", "tax")
        }
        worth = exact["on_hand"] / exact["pack_size"] * (exact["pack_price"] + exact["shipping"] + exact["tax"])
        cents = int(worth * 100 + Fraction(1, 2))
        assert (line["date"], line["kind"], line["price"]) == (before.settings["first_day"], "opening", cents / 100)
        assert line["packs"] * row["pack_size"] == pytest.approx(row["on_hand"], rel=1e-12)
        assert f"  {row['material']}: {row['on_hand']:g} {row['pack_unit']}, worth {cents / 100:.2f} USD" in done.output
    assert "what was on hand is opening stock of 2027-08-02; confirm each:" in done.output


def test_what_is_on_hand_in_a_row_to_mend_stays_and_is_named(tmp_path):
    before = books.small()
    before.settings["records"] = "no"
    before.tables["materials"].loc[0, "pack_price"] = None
    path, done = made_of(before, tmp_path, "--records")
    assert f"Still on Materials, since their rows are to mend: {WAX}" in done.output
    rows = [row["material"] for _, row in read.season_of(path).rows("materials") if row["on_hand"]]
    assert rows == [WAX]


def test_a_stock_that_is_open_is_not_opened_again(tmp_path):
    before = books.small()
    before.settings["records"] = "no"
    path, _ = made_of(before, tmp_path, "--records")
    again = run("new", tmp_path / "again.xlsx", "--from", path, "--records")
    assert "opening stock" not in again.output
    assert list(read.season_of(tmp_path / "again.xlsx").rows("purchases")) == list(
        read.season_of(path).rows("purchases")
    )
