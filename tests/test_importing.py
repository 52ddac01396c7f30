"""Files from elsewhere, read in by layouts on Imports: what each cell means, what is refused, and what is told."""

import csv
import datetime
import io
import sys
from decimal import Decimal
from pathlib import Path

import pandas as pd
import pytest
from click.testing import CliRunner
from hypothesis import given
from hypothesis import strategies as st

sys.path.insert(0, str(Path(__file__).parent / "workbook"))
import books

from candlecalc.commands import importing, make
from candlecalc.commands.cli import main
from candlecalc.season import folder
from candlecalc.season.importing import texts
from candlecalc.season.season import frame
from candlecalc.season.tables import TABLES
from candlecalc.season.tables.imports import COMMA, INTO, POINT
from candlecalc.workbook import book, size
from candlecalc.workbook.reading.read import season_of

pytestmark = pytest.mark.usefixtures("few_rows", "made_once")

FILES = folder.DEMO / "files"
TIN, JAR, STALL, SHOP = "Pear and honey tin", "Fig and cedar jar", "Saturday market stall", "Own web shop"
PLAIN = (
    ("Sales: Date", "Day"),
    ("Sales: Place", "", "", STALL),
    ("Sales: Order", "Slip"),
    ("Sales: Product", "What"),
    ("Sales: How many", "Pieces"),
    ("Sales: Price each", "Each"),
)
HEADS = "Day,Slip,What,Pieces,Each\n"


class Imported:
    """What a file comes to: the rows that are new in its table, and what is told."""

    def __init__(self, rows, answer):
        self.rows, self.wrong, self.told = rows, answer.wrong, "\n".join(answer.lines)


@pytest.fixture
def imported(tmp_path, monkeypatch):
    """A function that reads a text, or bytes, into the demo's season by lines of Imports; no workbook is made."""

    def read(text, lines=PLAIN, kind="sales", before=(), layout="", name="theirs.csv"):
        season = folder.read(folder.DEMO, records=True).with_records()
        table = {"weighings": "weights"}.get(kind, kind)
        blank = dict.fromkeys(TABLES[table].keys)
        keys = ("into", "column", "word", "here", "written", "layout")
        rows = [dict.fromkeys(keys) | dict(zip(keys, (each or None for each in line), strict=False)) for line in lines]
        season.tables["imports"] = frame(rows, TABLES["imports"])
        season.tables[table] = frame([blank | row for row in before], TABLES[table])
        made = {}

        def written(out, full, *given, **named):
            made["rows"] = [row for _, row in full.rows(table)][len(before) :]
            return make.Answer(list(given[3]), False)

        monkeypatch.setattr(make, "written", written)
        monkeypatch.setattr(make, "held_in", lambda *given, **named: make.read.Held(season, {}, []))
        path = tmp_path / name
        path.write_bytes(text if isinstance(text, bytes) else text.encode())
        answer = importing.lines(kind, path, Path("mine.xlsx"), tmp_path / "out.xlsx", layout, force=False)
        return Imported(made.get("rows", []), answer)

    return read


def only(found):
    assert len(found.rows) == 1, found.told
    return found.rows[0]


# --- numbers and days ------------------------------------------------------------------------------

amounts = st.decimals(-99_999_999, 99_999_999, places=2, allow_nan=False, allow_infinity=False)


STYLES = [(POINT, ","), (POINT, "'"), (POINT, " "), (POINT, ""), (COMMA, "."), (COMMA, "\u202f")]


@given(amounts, st.sampled_from(STYLES),
       st.sampled_from(["-{}", "−{}", "({})", "{}-"]), st.sampled_from(["{}", "${}", "{} USD", "$ {}"]))  # fmt: skip
def test_a_number_is_what_was_written_in_any_style(amount, style, minus, beside):
    mark, thousands = style
    digits = f"{abs(amount):,.2f}".replace(",", "_").replace(".", "," if mark == COMMA else ".").replace("_", thousands)
    text = beside.format(digits)
    written = minus.format(text) if amount < 0 else text
    assert texts.number(written, "", "USD").get(mark) == amount


@pytest.mark.parametrize(
    "text, meant",
    [
        ("1.234", {POINT: Decimal("1.234"), COMMA: Decimal(1234)}),
        ("1.234,5", {COMMA: Decimal("1234.5")}),
        ("1,234,567", {POINT: Decimal(1234567)}),
        (".5", {POINT: Decimal("0.5")}),
        ("12,34,56", {}),
        ("1 23", {}),
        ("--5", {}),
        ("(5", {}),
        ("five", {}),
        ("", {}),
        ("12 EUR", {}),
        ("12 oz", {}),
    ],
)
def test_a_number_that_can_be_read_two_ways_is_read_in_neither_alone(text, meant):
    assert texts.number(text, "", "USD") == meant


@given(st.dates(datetime.date(2000, 1, 1), datetime.date(2099, 12, 31)), st.sampled_from("./-"))
def test_days_are_read_as_pandas_reads_them(day, mark):
    for way, form in (("day first", "%d{0}%m{0}%Y"), ("month first", "%m{0}%d{0}%Y"), ("year first", "%Y{0}%m{0}%d")):
        text = day.strftime(form.format(mark))
        read = pd.to_datetime(text, dayfirst=way == "day first", format=form.format(mark)).date()
        assert texts.day(text)[way] == read == day
    for form in ("%d %b %Y", "%B %d, %Y", "%d-%b-%y", "%Y-%m-%d %H:%M", "%Y-%m-%dT%H:%M:%SZ"):
        assert day in texts.day(day.strftime(form)).values()


def test_the_way_of_a_file_is_that_of_its_cells_that_can_be_read_in_one_way_alone(imported):
    lines = f"09.08.2027;1;{TIN};1;1.234,50\n31.08.2027;2;{TIN};1;1.200\n"
    found = imported(HEADS.replace(",", ";") + lines)
    assert [(row["date"].isoformat(), row["price"]) for row in found.rows] == [
        ("2027-08-09", 1234.5),
        ("2027-08-31", 1200),
    ]


def test_what_may_be_two_days_or_two_numbers_is_refused_with_what_to_say(imported):
    found = imported(f"{HEADS}9/8/2027,1,{TIN},1,1.200\n")
    assert (
        'line 2, Day: "9/8/2027" may be 2027-08-09 or 2027-09-08: say on Imports, under Written, day first'
        in found.told
    )
    assert 'line 2, Each: "1.200" may be 1.200 or 1200: say on Imports, under Written, decimal point' in found.told
    assert found.wrong and not found.rows
    stated = [
        ("Sales: Date", "Day", "", "", "month first"),
        *PLAIN[1:5],
        ("Sales: Price each", "Each", "", "", "decimal comma"),
    ]
    row = only(imported(f"{HEADS}9/8/2027,1,{TIN},1,1.200\n", stated))
    assert (row["date"].isoformat(), row["price"]) == ("2027-09-08", 1200)


# --- how the file is written -----------------------------------------------------------------------


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "cp1252"])
@pytest.mark.parametrize("mark", [",", ";", "\t"])
def test_encodings_and_separators_are_found_out(imported, encoding, mark):
    text = io.StringIO()
    rows = [
        ["Sales of the café"],
        [],
        ["Day", "Slip", "What", "Pieces", "Each"],
        ["2027-08-09", "É 7", TIN, "2", "9.50"],
    ]
    csv.writer(text, delimiter=mark).writerows(rows)
    row = only(imported(text.getvalue().encode(encoding)))
    assert (row["order"], row["pieces"], row["price"]) == ("É 7", 2, 9.5)


def test_what_a_spreadsheet_would_run_stays_a_text(imported):
    found = imported(f'{HEADS}2027-08-09,"=""0042""",{TIN},1,9\n2027-08-09,=1+1,{TIN},1,9\n2027-08-09,@me,{TIN},1,9\n')
    assert [row["order"] for row in found.rows] == ["0042", "=1+1", "@me"]


def test_a_column_whose_head_is_ours_needs_no_line_on_imports(imported):
    row = only(imported(f"Date,Place,Product,How many,Buyer\n2027-08-09,{STALL},{TIN.upper()},2,N. N.\n", lines=()))
    assert (row["place"], row["product"], row["pieces"], row["price"]) == (STALL, TIN, 2, None)


def test_columns_that_are_not_read_are_named(imported):
    assert "not read: Buyer" in imported(f"{HEADS[:-1]},Buyer\n2027-08-09,1,{TIN},1,9,N. N.\n").told


def test_a_file_without_the_heads_is_refused_with_what_it_has(imported):
    with pytest.raises(ValueError, match="its line of heads lacks Slip, Each; there are day, what, pieces"):
        imported(f"Day,What,Pieces\n2027-08-09,{TIN},1\n")


def test_a_quotation_mark_that_nothing_closes_is_named_by_its_line(imported):
    with pytest.raises(ValueError, match=r"theirs.csv, line 3: a quotation mark that nothing closes"):
        imported(f'{HEADS}2027-08-09,1,{TIN},1,9\n2027-08-09,"2,{TIN},1,9\n')


def test_a_price_of_the_line_becomes_that_of_each(imported):
    row = only(imported(f"{HEADS}2027-08-09,1,{TIN},3,$28.50\n", [*PLAIN[:5], ("Sales: Price of the line", "Each")]))
    assert row["price"] == 9.5


def test_postage_that_stands_on_every_line_of_an_order_counts_once(imported):
    lines = [*PLAIN, ("Sales: Postage charged", "Post", "", "", "on every line")]
    order = f"2027-08-09,1,{TIN},1,9,7\n2027-08-09,1,{JAR},1,19,7\n2027-08-09,2,{TIN},1,9,7\n"
    assert [row["postage"] for row in imported(f"{HEADS[:-1]},Post\n{order}", lines).rows] == [7, None, 7]


# --- refunds ---------------------------------------------------------------------------------------


@pytest.mark.parametrize("pieces, each", [("-1", "9.5"), ("1", "-9.5"), ("-1", "-9.5")])
def test_a_minus_is_a_refund(imported, pieces, each):
    row = only(imported(f"{HEADS}2027-08-09,1,{TIN},{pieces},{each}\n"))
    assert (row["kind"], row["pieces"], row["price"]) == ("refund", 1, 9.5)


def test_where_the_sign_is_turned_a_minus_is_a_sale(imported):
    lines = [*PLAIN[:5], ("Sales: Price each", "Each", "", "", "sign turned")]
    found = imported(f"{HEADS}2027-08-09,1,{TIN},1,-9.5\n2027-08-10,1,{TIN},1,9.5\n", lines)
    assert [(row["kind"], row["price"]) for row in found.rows] == [(None, 9.5), ("refund", 9.5)]


def test_a_word_of_theirs_says_the_kind_and_another_leaves_the_line_out(imported):
    kinds = [("Sales: Kind", "State", "done"), ("Sales: Kind", "", "taken back", "returned"),
             ("Sales: Kind", "", "void", "leave out"), ("Sales: What came back", "", "", "back in stock")]  # fmt: skip
    states = "".join(f"2027-08-09,{at},{TIN},1,9,{state}\n" for at, state in enumerate(["done", "taken back", "void"]))
    found = imported(f"{HEADS[:-1]},State\n{states}", [*PLAIN, *kinds])
    assert [row["kind"] for row in found.rows] == [None, "returned"]
    assert "left out, as Imports says  1" in found.told


def test_a_fee_that_was_given_back_is_told_and_has_no_place(imported):
    lines = [*PLAIN, ("Sales: Fee kept", "Fee", "", "", "sign turned")]
    found = imported(f"{HEADS[:-1]},Fee\n2027-08-09,1,{TIN},1,9,-0.90\n2027-08-10,1,{TIN},-1,9,0.90\n", lines)
    assert [row["fee"] for row in found.rows] == [0.9, None]
    assert "1 fee given back on refunds, 0.90 in all" in found.told


def test_a_discount_with_a_minus_asks_for_its_sign(imported):
    found = imported(f"{HEADS[:-1]},Less\n2027-08-09,1,{TIN},1,9,-2\n", [*PLAIN, ("Sales: Discount", "Less")])
    assert (
        'line 2, Less: it is -2 on a line that is no refund. Where they write it with a minus, say "sign turned"'
        in found.told
    )


# --- what is there already, and what is outside the season -------------------------------------------

SOLD = {"date": datetime.date(2027, 8, 9), "place": STALL, "product": TIN, "pieces": 1.0, "price": 9.0}


def test_a_file_read_in_twice_adds_nothing(imported):
    file = f"{HEADS}2027-08-09,1,{TIN},1,9\n2027-08-09,1,{TIN},1,9\n2027-08-09,1,{JAR},1,19\n2027-08-10,1,{TIN},-1,9\n"
    once = imported(file)
    twice = imported(file, before=once.rows)
    assert (len(once.rows), twice.rows, twice.wrong) == (4, [], True)
    assert f"there already, and not taken again: order 1 of {STALL}" in twice.told


def test_a_line_of_an_order_is_known_by_its_number(imported):
    lines = [*PLAIN, ("Sales: Line of order", "No")]
    file = f"{HEADS[:-1]},No\n" + "".join(f"2027-08-09,7,{TIN},1,9,{number}\n" for number in (1, 2, 2))
    found = imported(file, lines, before=[SOLD | {"order": "7", "order_line": 1.0}])
    assert [row["order_line"] for row in found.rows] == [2]
    assert f"order 7, line 1 of {STALL}; order 7, line 2 of {STALL}" in found.told


def test_the_refund_of_an_order_is_no_double_of_its_sale(imported):
    found = imported(f"{HEADS}2027-08-12,7,{TIN},-1,9\n", before=[SOLD | {"order": "7"}])
    assert only(found)["kind"] == "refund"


def test_a_sale_without_an_order_that_is_like_another_is_taken_and_pointed_out(imported):
    found = imported(f"{HEADS}2027-08-09,,{TIN},1,9\n", before=[SOLD])
    assert only(found)["price"] == 9
    assert "line 2: taken over, though Sales has such a line already" in found.told


def test_a_document_that_is_there_is_refused_whole(imported):
    heads = "Date,Document,Material,Packs,Price,Supplier\n"
    lines = (
        [("Purchases: Price a pack", "Price")] if "purchases: price a pack" in INTO else [("Purchases: Price", "Price")]
    )
    line = "2027-08-09,{},Bitter orange oil,1,20,{}\n"
    before = [{"document": "INV 1", "supplier": "Upriver"}, {"document": "INV 2", "supplier": None}]
    there = [
        row | {"date": SOLD["date"], "material": "Bitter orange oil", "packs": 1.0, "price": 20.0} for row in before
    ]
    file = heads + "".join(line.format(*each) for each in [("inv 1", "Upriver"), ("INV 1", "Other"), ("INV 2", "Any")])
    found = imported(file, lines, "purchases", there)
    assert [row["supplier"] for row in found.rows] == ["Other"]
    assert "document inv 1; document INV 2" in found.told


def test_lines_outside_the_season_are_left_out_and_counted_whatever_they_name(imported):
    found = imported(f"{HEADS}2027-08-01,1,Gone candle,1,9\n2027-08-02,2,{TIN},1,9\n2028-01-31,3,{TIN},1,9\n")
    assert only(found)["order"] == "2"
    assert "outside the season  2      2       18.00" in found.told


# --- split lines and what stands under the list -------------------------------------------------------


def test_a_split_order_has_its_day_and_number_from_the_line_above(imported):
    lines = [("Sales: Date", "Day", "", "as above"), PLAIN[1], ("Sales: Order", "Slip", "", "as above"), *PLAIN[3:]]
    found = imported(
        f"{HEADS}2027-08-09,1,{TIN},1,9\n,,{JAR},1,19\n,,,,\n2027-08-10,2,{TIN},1,9\nTotal,,,3,\n,,,,\n", lines
    )
    assert [(row["date"].day, row["order"]) for row in found.rows] == [(9, "1"), (9, "1"), (10, "2")]
    assert "line 6, a total: Pieces 3 agrees" in found.told and not found.wrong


def test_a_total_that_its_lines_do_not_come_to_is_pointed_out(imported):
    found = imported(f"{HEADS}2027-08-09,1,{TIN},1,9\nTotal,,,3,\nWritten by the till,,,,\n")
    assert "line 3, a total: Pieces 3 but its lines come to 1: look whether some are missing" in found.told
    assert 'line 4 is no line of the list: "Written by the till"' in found.told
    assert found.wrong and len(found.rows) == 1


def test_a_line_without_its_day_is_no_foot(imported):
    assert "line 3, Day: it is missing" in imported(f"{HEADS}2027-08-09,1,{TIN},1,9\n,2,{TIN},1,9\n").told


# --- what is not understood --------------------------------------------------------------------------


def test_all_that_is_not_understood_is_told_at_once_and_nothing_is_taken(imported):
    found = imported(
        f"{HEADS}2027-13-09,1,Pear & honey tin,two,9\n2027-08-09,2,Pear & honey tin,1.5,9 EUR\n2027-08-09,3,{TIN},1,9\n"
    )
    for words in (
        'line 2, Day: it is "2027-13-09"; it takes a date such as',
        'line 2 and 1 more, What: "Pear & honey tin" is not on Recipes; nearest: Pear and honey tin',
        'line 2, Pieces: it is "two"; it takes a number: whole numbers',
        "line 3, Pieces: it is 1.5; it takes whole numbers",
        'line 3, Each: it is "9 EUR"; it takes a number, alone or with USD',
        "Nothing was taken over",
    ):
        assert words in found.told
    assert found.wrong and not found.rows


def test_a_missing_place_is_asked_for(imported):
    assert "line 2, Place: it is missing" in imported(f"{HEADS}2027-08-09,1,{TIN},1,9\n", [PLAIN[0], *PLAIN[2:]]).told


def test_lines_of_imports_that_do_not_fit_together_are_named(imported):
    lines = [
        *PLAIN,
        ("Sales: Date", "Slip"),
        ("Sales: Colour", "Each"),
        ("Sales: Kind", "", "x", "refund"),
        ("Sales: Kind", "", "X", "out"),
    ]
    told = imported(f"{HEADS}2027-08-09,1,{TIN},1,9\n", lines).told
    assert 'Imports, line 7 of the list: Sales: Date comes from "Day" already: clear one of the two' in told
    assert 'line 8 of the list: "Sales: Colour" is no column of ours' in told
    assert 'line 10 of the list: "X" has a line already' in told


def test_where_several_layouts_are_described_one_is_asked_for(imported):
    lines = [(*(each + ("",) * (5 - len(each))), name) for name in ("One", "Two") for each in PLAIN]
    with pytest.raises(ValueError, match="there are several layouts; say which with --layout: One, Two"):
        imported(HEADS, lines)
    with pytest.raises(ValueError, match='there is no layout "Three": One, Two'):
        imported(HEADS, lines, layout="Three")
    assert only(imported(f"{HEADS}2027-08-09,1,{TIN},1,9\n", lines, layout="two"))["pieces"] == 1


# --- the other three kinds -----------------------------------------------------------------------------


def test_counts_may_name_materials_and_candles_in_one_column(imported):
    lines = [("Counts: Date", "On"), ("Counts: Material or product", "What"), ("Counts: Counted", "There")]
    found = imported(f"On,What,There\n2027-10-31,{TIN},12\n2027-10-31,Bitter orange oil,52.9\n", lines, "counts")
    assert [(row["product"], row["material"], row["counted"]) for row in found.rows] == [
        (TIN, None, 12),
        (None, "Bitter orange oil", 52.9),
    ]


def test_weighings_take_their_own_unit_and_no_other(imported):
    lines = [
        ("Weights: Batch", "Batch"),
        ("Weights: Product", "", "", TIN),
        ("Weights: Package", "No"),
        ("Weights: Net weight", "Read"),
    ]
    found = imported("Batch,No,Read\n413,1,3.98 oz\n413,2,4.02\n", lines, "weighings", [])
    assert [(row["product"], row["net"]) for row in found.rows] == [(TIN, 3.98), (TIN, 4.02)]
    assert 'Read: it is "112 g"' in imported("Batch,No,Read\n413,1,112 g\n", lines, "weighings").told


# --- the demo's three files, through the command -------------------------------------------------------


def summed_by_pandas(name):
    """Pieces and money of a file of the demo, as pandas reads it: refunds against sales."""
    if name == "marketplace-statement":
        read = pd.read_csv(FILES / f"{name}.csv", sep=";")
        each = read["Each"].str.removesuffix(" USD").str.replace(".", "").str.replace(",", ".").astype(float)
        inside = pd.to_datetime(read["Sold on"], dayfirst=True) >= "2027-08-02"
        return read["Qty"][inside].sum(), (read["Qty"] * each)[inside].sum()
    if name == "card-reader":
        read = pd.read_csv(FILES / f"{name}.csv")
        money = -read["Booked"].str.replace("[$,]", "", regex=True).astype(float)
        return (read["Count"] * money.map(lambda sum: 1 if sum > 0 else -1)).sum(), money.sum()
    read = pd.read_csv(FILES / f"{name}.csv", skiprows=2).dropna(subset=["Title"])
    read = read[read["Status"] != "cancelled"]
    sign = read["Status"].map({"shipped": 1, "money back": -1})
    return (read["Copies"] * sign).sum(), (
        (read["Copies"] * read["Unit price"] + read["Shipping"].fillna(0)) * sign
    ).sum()


@pytest.fixture(scope="module")
def year(tmp_path_factory):
    """The demo's year in a workbook of few rows."""
    season = folder.read(folder.DEMO, records=True).with_records()
    path = tmp_path_factory.mktemp("importing") / "year.xlsx"
    books.Book(season, path, stored=False)
    return path


LAYOUTS = {"marketplace-statement": "Marketplace statement", "card-reader": "Card reader", "web-shop": "Web shop"}


@pytest.mark.parametrize("name", LAYOUTS)
def test_the_sums_of_a_file_are_those_that_pandas_finds(name, year, monkeypatch):
    kept = {}
    monkeypatch.setattr(make, "written", lambda out, full, *_, **__: kept.update(full=full) or make.Answer([], False))
    before = len(list(season_of(year).rows("sales")))
    importing.lines("sales", FILES / f"{name}.csv", year, year.with_name("out.xlsx"), LAYOUTS[name], force=False)
    new = [row for _, row in kept["full"].rows("sales")][before:]
    signs = [-1 if row["kind"] == "refund" else 1 for row in new]
    pieces = sum(sign * row["pieces"] for sign, row in zip(signs, new, strict=True))
    money = sum(s * (row["pieces"] * row["price"] + (row["postage"] or 0)) for s, row in zip(signs, new, strict=True))
    assert (pieces, round(money, 2)) == tuple(round(float(each), 2) for each in summed_by_pandas(name))


def run(*words):
    return CliRunner().invoke(main, list(map(str, words)))


def test_a_file_is_in_the_new_workbook_and_the_old_one_stays_as_it_was(year):
    before, out = year.read_bytes(), year.with_name("new.xlsx")
    done = run("import", year, FILES / "web-shop.csv", out, "--as", "sales", "--layout", "Web shop", "--quiet")
    assert "taken over" in done.stdout and year.read_bytes() == before, done.output
    rows = [row for _, row in season_of(out).rows("sales") if str(row["order"]).startswith("W10")]
    assert [(row["order"], row["product"], row["kind"]) for row in rows][1] == ("W1041", "Slate rain jar", None)
    assert (len(rows), rows[-1]["kind"]) == (7, "refund")
    again = run(
        "import", out, FILES / "web-shop.csv", out.with_name("twice.xlsx"), "--as", "sales", "--layout", "web shop"
    )
    assert again.exit_code == 1 and not out.with_name("twice.xlsx").exists()


def test_what_does_not_fit_is_refused_with_the_number(year, tmp_path):
    file = tmp_path / "many.csv"
    line = f"2027-09-01,{STALL},N{{}},{TIN},1,9\n"
    heads = "Date,Place,Order,Product,How many,Price each\n"
    file.write_text(heads + "".join(map(line.format, range(20_000))), encoding="utf-8")
    season = folder.read(folder.DEMO, records=True).with_records()
    season.tables["imports"] = []
    folder.write(season, tmp_path / "season")
    done = run("import", tmp_path / "season", file, tmp_path / "out.xlsx", "--as", "sales")
    room = size.lines_that_fit(season, "sales", 20_000)
    assert f"20,000 lines do not fit: Sales of {tmp_path / 'season'} has room for {room:,} more" in done.stderr
    assert done.exit_code == 1 and not (tmp_path / "out.xlsx").exists()
    filled = season.tables.room("sales")
    least = {key: max(season.tables.room(key), book.USUAL_ROWS[key]) for key in season.tables}
    formulas = [
        sum(size.of_lists(book.plan_of(season, least | {"sales": filled + room + more})).values()) for more in (0, 1)
    ]
    assert formulas[0] <= size.MOST_CELLS - size.CARDS < formulas[1]


@pytest.mark.parametrize("words, said", [
    (("{csv}", "{book}", "{out}", "--as", "sales"), "is a workbook: name yours first"),
    (("{book}", "{csv}", "{book}", "--as", "sales", "--force"), "is your workbook itself"),
    (("{book}", "{csv}", "{out}", "--as", "oil-sheet"), "an oil-sheet needs --material"),
    (("{book}", "{csv}", "{out}", "--as", "sales", "--material", "x"), "are of an oil-sheet"),
    (("{book}", "-", "{out}", "--as", "sales"), "name a file"),
    (("{book}", "{csv}", "{out}", "--as", "sales"), "several layouts; say which with --layout"),
])  # fmt: skip
def test_a_wrong_call_says_what_is_meant(words, said, year, tmp_path):
    places = {"book": year, "csv": FILES / "web-shop.csv", "out": tmp_path / "out.xlsx"}
    done = run("import", *(word.format(**places) for word in words))
    assert (done.exit_code, said in done.stderr) == (2, True), done.output
