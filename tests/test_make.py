"""Making, checking and showing season workbooks, as the commands do it."""

import csv
import datetime
import io
import json
import re
import shutil
import zipfile
from xml.sax.saxutils import escape

import openpyxl
import pytest
from click.testing import CliRunner

from candlecalc import __version__
from candlecalc.commands import make
from candlecalc.commands.cli import SHOWN_WORDS, main
from candlecalc.season import folder
from candlecalc.season.presets import blank_settings
from candlecalc.season.season import empty
from candlecalc.workbook import book
from candlecalc.workbook.reading import read
from candlecalc.workbook.reports import report
from candlecalc.workbook.tabs.registry import registered


def run(*given):
    return CliRunner().invoke(main, [str(each) for each in given])


pytestmark = pytest.mark.usefixtures("few_rows", "made_once")


@pytest.fixture(scope="module")
def demo(few_rows, made_once, tmp_path_factory):
    path = tmp_path_factory.mktemp("made") / "demo.xlsx"
    assert run("new", path, "--demo").exit_code == 0
    return path


def typed(workbook, tmp_path, tab, cell, value):
    """A copy of a workbook with one cell typed anew, put into its part: to read and save it all takes far longer."""
    part, path = f"xl/worksheets/sheet{book.order(False).index(tab) + 1}.xml", tmp_path / "typed.xlsx"
    with zipfile.ZipFile(workbook) as before, zipfile.ZipFile(path, "w") as after:
        for name in before.namelist():
            text = before.read(name)
            after.writestr(name, _with_cell(text.decode(), cell, value) if name == part else text)
    return path


def _with_cell(sheet, cell, value):
    stood = re.search(rf'<c r="{cell}"( s="\d+")?[^>]*?(/>|>.*?</c>)', sheet)
    kind = ' t="inlineStr"' if isinstance(value, str) else ""
    held = (
        f'<is><t xml:space="preserve">{escape(value)}</t></is>' if kind else "" if value is None else f"<v>{value}</v>"
    )
    text = f'<c r="{cell}"{stood[1] or ""}{kind}>{held}</c>'
    assert re.sub(r' t="n"', "", stood[0]) != text, "nothing is typed anew"
    return sheet.replace(stood[0], text, 1)


def test_the_demo_has_no_problem(all_rows, tmp_path):
    path = tmp_path / "demo.xlsx"
    assert run("new", path, "--demo").exit_code == 0
    done = run("check", path)
    assert (done.exit_code, done.output.strip()) == (0, f"{path}: Numbers agree")


def differing(one, other):
    """The parts of two workbooks that are not the same."""
    with zipfile.ZipFile(one) as first, zipfile.ZipFile(other) as second:
        assert first.namelist() == second.namelist()
        return [name for name in first.namelist() if first.read(name) != second.read(name)]


CHANGES_TAB = f"xl/worksheets/sheet{book.order(False).index('Changes') + 1}.xml"


def test_the_same_season_makes_the_same_workbook_but_for_what_it_was_made_from(made_anew, demo, tmp_path):
    for name in ("one.xlsx", "two.xlsx"):
        assert run("new", tmp_path / name, "--from", demo).exit_code == 0
    assert (tmp_path / "one.xlsx").read_bytes() == (tmp_path / "two.xlsx").read_bytes()
    assert differing(tmp_path / "one.xlsx", demo) == [CHANGES_TAB]


def test_a_folder_of_csv_files_makes_the_same_workbook(made_anew, demo, tmp_path):
    folder.write(read.season_of(demo), tmp_path / "csv")
    assert run("new", tmp_path / "again.xlsx", "--from", tmp_path / "csv").exit_code == 0
    assert differing(tmp_path / "again.xlsx", demo) == [CHANGES_TAB]


def changes(path):
    rows = openpyxl.load_workbook(path)["Changes"].iter_rows(min_row=4, max_col=3, values_only=True)
    return [row for row in rows if any(value is not None for value in row)]


def test_the_log_of_changes_goes_on_and_says_what_a_workbook_was_made_from(demo, tmp_path):
    path = typed(demo, tmp_path, "Changes", "B6", "wider jars, by hand").rename(tmp_path / "last.xlsx")
    day, by = datetime.datetime(2027, 8, 2), "candlecalc"
    made = (day, f"made by candlecalc {__version__}", by)
    assert changes(demo) == [made]
    assert run("new", tmp_path / "next.xlsx", "--from", path, "--date", "2028-03-01").exit_code == 0
    again = (datetime.datetime(2028, 3, 1), f"made by candlecalc {__version__} from last.xlsx", by)
    assert changes(tmp_path / "next.xlsx") == [made, (None, "wider jars, by hand", None), again]


def test_a_long_log_is_kept_whole_with_room_for_more(demo, tmp_path):
    copy = openpyxl.load_workbook(demo)
    for row in range(5, 104):
        copy["Changes"][f"B{row}"] = f"change {row}"
    copy.save(tmp_path / "last.xlsx")
    assert run("new", tmp_path / "next.xlsx", "--from", tmp_path / "last.xlsx").exit_code == 0
    assert len(changes(tmp_path / "next.xlsx")) == 101
    sheet = openpyxl.load_workbook(tmp_path / "next.xlsx")["Changes"]
    assert [sheet[f"B{row}"].protection.locked for row in (104, 105, 124, 125)] == [False, False, False, True]


def test_what_stands_as_it_was_last_season_is_named(demo, tmp_path):
    told = run("new", tmp_path / "next.xlsx", "--from", demo).stdout.splitlines()[1:]
    assert told == [
        'Look at Settings: the season\'s name, "Autumn and winter 2027 (example)", and its first and last day, '
        "2027-08-02 and 2028-01-30, are as they were",
        "Look at Materials and Prices: 35 pack prices, seen from 2027-05-31 to 2027-07-05, 35 amounts on hand and "
        "41 prices of yours are as they were",
    ]
    told = run("new", tmp_path / "named.xlsx", "--from", demo, "--season", "Spring 2028").stdout.splitlines()[1]
    assert told == "Look at Settings: the first and last day, 2027-08-02 and 2028-01-30, are as they were"
    assert len(run("new", tmp_path / "demo.xlsx", "--demo").stdout.splitlines()) == 1


@pytest.fixture(scope="module")
def saved(demo, office):
    """The demo as LibreOffice saves it: its formulas are spelled another way."""
    return office.saved_as(demo, "xlsx")


def test_a_workbook_saved_by_libreoffice_is_read_as_it_was(demo, saved):
    ours, theirs = read.season_of(demo), read.season_of(saved)
    assert theirs.settings == ours.settings
    for key, table in ours.tables.items():
        assert theirs.tables[key].equals(table), key


def test_the_rise_of_materials_is_typed_on_costing_and_kept_with_the_settings(demo, tmp_path):
    season = read.season_of(typed(demo, tmp_path, "Costing", "M2", 0.25))
    assert season.settings["materials_rise"] == 0.25
    folder.write(season, tmp_path / "csv")
    assert "materials_rise,0.25" in (tmp_path / "csv" / "settings.csv").read_text().splitlines()
    assert folder.read(tmp_path / "csv").settings["materials_rise"] == 0.25


def test_nothing_is_written_over_unless_asked(demo, tmp_path):
    path = tmp_path / "mine.xlsx"
    path.write_bytes(b"mine")
    refused = run("new", path, "--demo")
    assert (refused.exit_code, path.read_bytes()) == (2, b"mine")
    assert "--force" in refused.output
    assert run("new", path, "--demo", "--force").exit_code == 0


@pytest.mark.parametrize(
    "given",
    [("--demo", "--region", "gb"), ("--region", "mars"), ("--date", "soon"), ("--from", "nowhere")],
)
def test_a_wrong_call_writes_nothing(tmp_path, given):
    assert run("new", tmp_path / "out.xlsx", *given).exit_code == 2
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("region, currency", [("us", "USD"), ("gb", "GBP"), ("eu", "EUR")])
def test_a_blank_workbook_has_no_problem(tmp_path, region, currency):
    path = tmp_path / "blank.xlsx"
    assert run("new", path, "--region", region, "--date", "2027-01-04", "--season", "Spring").exit_code == 0
    assert run("check", path).exit_code == 0
    settings = read.season_of(path).settings
    assert (settings["currency"], settings["season"]) == (currency, "Spring")


def test_a_blank_workbook_has_no_problem_in_all_the_rows_that_a_maker_gets(all_rows, tmp_path):
    assert run("new", tmp_path / "blank.xlsx", "--region", "gb").exit_code == 0
    assert run("check", tmp_path / "blank.xlsx").exit_code == 0


TYPED = [  # tab, cell, what is typed, what is said
    ("Materials", "E4", "lots", 'tab Materials, E4: Pack size: it is the text "lots"'),
    ("Materials", "C5", "soap", 'tab Materials, C5: Kind: it is "soap"'),
    ("Vessels", "L4", 1.5, "tab Vessels, L4: Headspace: it is 1.5"),
    ("Recipes", "I4", 8, "Did you mean 8%?"),
    ("Recipes", "F4", "Butter", '"Butter" is not on Materials'),
    ("Recipes", "F4", "Fig and cedar oil", '"Fig and cedar oil" on Materials is not of kind wax'),
    ("Recipes", "E4", None, "tab Recipes, E4: Vessel: it is missing"),
    ("Recipes", "B5", "Fig and cedar jar", 'tab Recipes, B5: Product: "Fig and cedar jar" stands here twice'),
    ("Recipes", "I4", 0.2, "load above the wax's highest"),
    ("Recipes", "K4", 0.6, "oil shares that do not add up to 1"),
    ("Recipes", "S4", 0.001, "part without its share, or share without its part"),
    ("Prices", "D4", 5, "price below full cost"),
    ("Prices", "D4", 12, "margin under the target"),
    ("Prices", "D4", None, "tab Prices, D4: Your price: it is missing"),
    ("Settings", "B11", 6, "Tax rate: it is 6"),
    ("Batch", "A3", "Nope", 'tab Batch, A3: Product: "Nope" is not on Recipes: add it there, or choose another'),
    ("Batch", "A3", "Fig and cedar jar ", "tab Batch, A3: Product: "),
    ("Batch", "A3", None, "tab Batch, A3: Product: it is missing; type a name from Recipes"),
    ("Batch", "C3", 2.5, "tab Batch, C3: Make: it is 2.5; it takes whole numbers 1 to 100000"),
    ("Batch", "C3", 0, "tab Batch, C3: Make: it is 0;"),
    ("Batch", "C3", "x", 'tab Batch, C3: Make: it is the text "x"'),
    ("Batch", "C3", None, "tab Batch, C3: Make: it is missing"),
    ("Batch", "I3", "soon", 'tab Batch, I3: Made on: it is "soon"'),
    ("Costing", "M2", "a lot", 'tab Costing, M2: What if materials rise by: it is the text "a lot"'),
]


@pytest.mark.parametrize("tab, cell, value, words", TYPED)
def test_a_problem_is_told_with_its_cell_and_what_to_do(demo, tmp_path, tab, cell, value, words):
    done = run("check", typed(demo, tmp_path, tab, cell, value))
    assert done.exit_code == 1
    assert words in done.output


def test_a_card_that_is_set_to_nothing_waits_and_is_no_problem(demo, tmp_path):
    path = typed(demo, tmp_path, "Batch", "A3", None).rename(tmp_path / "one.xlsx")
    assert run("check", typed(path, tmp_path, "Batch", "C3", None)).exit_code == 0


WRITTEN = [  # tab, cell, what a spreadsheet takes for the same as what stands there
    ("Materials", "C4", "WAX"), ("Settings", "B10", "Yes"), ("Recipes", "D5", "Made"), ("Recipes", "D14", "Set"),
    ("Recipes", "F4", "SOFT plant wax for jars"), ("Places sold", "Q4", "Maker"), ("Vessels", "E4", "Water"),
    ("Prices", "B4", "fig AND cedar jar"), ("Sets", "B4", "two TINS in a box"), ("Batch", "A3", "FIG and cedar jar"),
]  # fmt: skip


def test_words_in_other_letters_are_the_same_words_to_the_workbook_and_to_check(demo, tmp_path, office):
    copy = openpyxl.load_workbook(demo)
    for tab, cell, value in WRITTEN:
        stood = copy[tab][cell].value
        assert stood.casefold() == value.casefold() and stood != value
        copy[tab][cell].value = value
    path = tmp_path / "written.xlsx"
    copy.save(path)
    assert run("check", path).output == f"{path}: Numbers agree\n"
    assert office.recalculated(path)["Checks", "A2"] == "Numbers agree"
    for what in ("costs", "prices", "batch"):
        told, before = (run("show", one, what, "--product", "FIG AND CEDAR JAR", "--json") for one in (path, demo))
        assert told.output.casefold() == before.output.casefold()


def test_what_no_entry_explains_is_told_as_the_workbook_tells_it(demo):
    season = read.season_of(demo)
    assert report.disagreeing(report.Calculated(season, book.drafted(season, book.date_of(season)))) == []
    for where in ("recipes", "materials"):
        season.tables[where].iloc[0, 0] = None
    written = book.drafted(season, book.date_of(season))
    made = book.packed(written)
    rows = openpyxl.load_workbook(io.BytesIO(made), data_only=True)["Checks"]
    lines = [row for row in rows if row[6].value == "to fix"]
    told = [(f"A{row[0].row}", f"{row[0].value}: {row[7].value}") for row in lines]
    assert rows["A2"].value == f"{len(told)} to fix"
    found = report.disagreeing(report.Calculated(season, written))
    assert [(finding.cell, finding.words) for finding in found] == told != []


def test_a_number_where_any_text_will_do_is_taken_as_text(demo, tmp_path):
    path = typed(demo, tmp_path, "Recipes", "C4", 2027)
    assert run("check", path).exit_code == 0
    assert read.season_of(path).tables["recipes"].loc[0, "tag"] == "2027"


def test_every_row_is_read_whatever_size_a_file_says_it_has(demo, tmp_path):
    with zipfile.ZipFile(demo) as before, zipfile.ZipFile(tmp_path / "said.xlsx", "w") as after:
        said = {name: re.sub(rb'<dimension ref="[^"]*"', b'<dimension ref="A1:B2"', before.read(name))
                for name in before.namelist()}  # fmt: skip
        assert sum(said[name] != before.read(name) for name in said) == len(book.order(False))
        for name, data in said.items():
            after.writestr(name, data)
    assert run("check", tmp_path / "said.xlsx").output == f"{tmp_path / 'said.xlsx'}: Numbers agree\n"
    told, read_there = read.season_of(demo), read.season_of(tmp_path / "said.xlsx")
    assert all(read_there.tables[key].equals(table) for key, table in told.tables.items())


def test_a_season_without_its_name_is_told(demo, tmp_path):
    done = run("check", typed(demo, tmp_path, "Settings", "B7", None))
    assert "tab Settings, B7: Season: it is missing" in done.output


@pytest.mark.parametrize("row, unit", [(4, "each"), (36, "kg")], ids=["a wax by the piece", "gloves by the kilogram"])
def test_a_pack_unit_at_odds_with_its_kind_is_told_once(demo, tmp_path, row, unit):
    told = run("check", typed(demo, tmp_path, "Materials", f"F{row}", unit)).output.splitlines()
    assert len([line for line in told if f"tab Materials, F{row}: Pack unit: " in line]) == 1


def test_all_problems_are_told_at_once(demo, tmp_path):
    path = typed(demo, tmp_path, "Recipes", "I4", "much")
    path = path.rename(tmp_path / "one.xlsx")
    done = run("check", typed(path, tmp_path, "Materials", "G6", -1))
    assert "Recipes, I4" in done.output
    assert "Materials, G6" in done.output


def test_a_formula_typed_over_is_found(demo, tmp_path):
    done = run("check", typed(demo, tmp_path, "Costing", "G4", 1))
    assert done.exit_code == 1
    assert "tab Costing, G4: the formula was typed over" in done.output


def test_a_tab_whose_formulas_are_all_anothers_takes_no_line_for_each(demo, tmp_path):
    copy = openpyxl.load_workbook(demo)
    for row in range(4, 18):
        copy["Costing"][f"G{row}"] = 1
    copy.save(tmp_path / "changed.xlsx")
    told = run("check", tmp_path / "changed.xlsx").output.splitlines()
    assert len(told) == report.MOST_CHANGED + 1
    assert "tab Costing, G14: 4 formulas from here on: the formula was typed over or changed" in told[-1]


def test_a_formula_that_libreoffice_spells_another_way_is_no_change(saved, tmp_path):
    assert run("check", saved).output == f"{saved}: Numbers agree\n"


CHANGED = [  # tab, cell, what stands there, what is put in its place
    ("Costing", "G5", '=IF($O5="","",SUM(', '=IF($O5="","",2*SUM('),
    ("Materials", "AR9", "<=32", "<=33"),
    ("Prices", "K7", "$J7-", "$J8-"),
]


def test_a_formula_changed_in_a_copy_saved_by_libreoffice_is_found(saved, tmp_path):
    copy = openpyxl.load_workbook(saved)
    for tab, cell, there, instead in CHANGED:
        assert copy[tab][cell].value.count(there) == 1, copy[tab][cell].value
        copy[tab][cell].value = copy[tab][cell].value.replace(there, instead)
    copy.save(tmp_path / "changed.xlsx")
    told = run("check", tmp_path / "changed.xlsx")
    assert told.exit_code == 1
    found = re.findall(r"tab ([\w ]+), (\w+): the formula was typed over", told.output)
    assert sorted(found) == sorted((tab, cell) for tab, cell, _, _ in CHANGED)


@pytest.mark.parametrize(
    "words",
    [("new", "made.xlsx", "--demo"), ("check", "DEMO"), *(("show", "DEMO", each) for each in ("costs", "batch"))],
)
def test_a_command_makes_the_workbook_once(demo, tmp_path, monkeypatch, words):
    times = []
    drafted = book.drafted
    monkeypatch.setattr(book, "drafted", lambda *given, **named: times.append(1) or drafted(*given, **named))
    monkeypatch.chdir(tmp_path)
    assert run(*(demo if word == "DEMO" else word for word in words)).exit_code == 0
    assert len(times) == 1


def test_costs_are_shown_as_the_workbook_has_them(demo):
    records = json.loads(run("show", demo, "costs", "--json").stdout)
    sheet = openpyxl.load_workbook(demo, data_only=True)["Costing"]
    assert [record["Full cost, USD"] for record in records] == [sheet[f"L{row}"].value for row in range(4, 16)]


def test_prices_are_shown_as_csv(demo):
    rows = list(csv.DictReader(io.StringIO(run("show", demo, "prices", "--product", "fig melt bar", "--csv").stdout)))
    assert {row["Product"] for row in rows} == {"Fig melt bar"}


def test_a_batch_is_shown_for_any_number(demo):
    few, many = (json.loads(run("show", demo, "batch", "--make", n, "--json").stdout) for n in (12, 120))
    pieces = [[line["for all"] for line in lines if line["unit"] == "each"] for lines in (few, many)]
    assert pieces[1] == [ten * 10 for ten in pieces[0]]


def bench(path, *given):
    """What `show batch` says: its exit code, its records, and what it says beside them."""
    done = run("show", path, "batch", *given, "--json")
    return done.exit_code, json.loads(done.stdout), done.stderr.splitlines()


def test_a_batch_is_the_one_that_stands_on_the_card_and_says_which(demo, tmp_path):
    path = typed(demo, tmp_path, "Batch", "A3", "pear and honey TIN").rename(tmp_path / "one.xlsx")
    path = typed(path, tmp_path, "Batch", "C3", 30)
    code, records, beside = bench(path)
    assert (code, beside[0]) == (0, "Pear and honey tin, 30 pieces")
    assert (code, records, beside) == bench(demo, "--product", "Pear and honey tin", "--make", 30)
    assert run("show", path, "batch").stdout.splitlines()[0] == "Pear and honey tin, 30 pieces"
    assert bench(path, "--make", 1)[2][0] == "Pear and honey tin, 1 piece"
    assert bench(path, "--product", "fig melt bar")[2][0] == "Fig melt bar, 30 pieces"


def test_a_batch_of_a_folder_is_of_its_first_product_and_a_dozen(demo):
    assert run("show", folder.DEMO, "batch").stdout == run("show", demo, "batch").stdout


def test_a_card_that_cannot_be_used_is_told_unless_the_call_says_what_to_make(demo, tmp_path):
    path = typed(demo, tmp_path, "Batch", "C3", 2.5)
    done = run("show", path, "batch")
    assert (done.exit_code, done.stdout) == (1, "")
    assert "tab Batch, C3: Make: it is 2.5; it takes whole numbers 1 to 100000" in done.stderr
    code, records, _ = bench(path, "--make", 12)
    assert (code, records) == (1, bench(demo)[1])


def test_a_batch_comes_with_a_caution(demo):
    for given in ((), ("--csv",), ("--json",)):
        assert "Hot wax burns skin and can catch fire" in run("show", demo, "batch", *given).stderr
    assert run("show", demo, "costs").stderr == ""


WHOLE = ["Soft plant wax for jars", "Fig and cedar oil", "Clear jar, straight", "Steel lid, jar",
         "Cotton braid, medium", "Jar label with cautions", "Folded carton, small"]  # fmt: skip
UNREADY = [  # tab, cell, what is typed, how many lines of the batch are not known, what is said
    ("Vessels", "F4", None, 3, "tab Vessels, F4: Water to the brim: it is missing"),
    ("Recipes", "W4", None, 7, "tab Recipes, W4: Minutes: it is missing"),
    ("Materials", "L4", "light", 2, 'tab Materials, L4: Density: it is the text "light"'),
    ("Settings", "B17", 2, 2, "tab Settings, B17: Waste: it is 2"),
]


@pytest.mark.parametrize("tab, cell, value, unknown, words", UNREADY)
def test_a_line_that_is_not_known_stands_in_its_place_with_the_reason(demo, tmp_path, tab, cell, value, unknown, words):
    path = typed(demo, tmp_path, tab, cell, value)
    code, records, beside = bench(path)
    assert code == 1
    assert [record["what"] for record in records] == WHOLE
    assert [record["what"] for record in records if record["for all"] is None] == WHOLE[:unknown]
    assert len([line for line in beside if words in line]) == 1


def test_what_is_not_known_is_an_error_in_a_table_and_in_csv(demo, tmp_path):
    path = typed(demo, tmp_path, "Vessels", "F4", None)
    for given in ((), ("--csv",)):
        lines = run("show", path, "batch", *given).stdout.splitlines()
        assert len([line for line in lines if line.count("#N/A") == 2]) == 3


def test_a_load_above_a_limit_is_said_beside_the_batch_in_the_words_of_the_workbook(demo, tmp_path):
    path = typed(demo, tmp_path, "Materials", "U6", 0.02)
    code, records, beside = bench(path)
    assert (code, records) == (1, bench(demo)[1])
    assert len([line for line in beside if "tab Recipes, I4: Load: load above the certified limit: lower" in line]) == 1
    other = bench(path, "--product", "Smoked plum jar")[2]
    assert not [line for line in other if "certified limit" in line]
    assert bench(path, "--product", "Long nights crate")[0] == 1


def test_what_stands_behind_a_set_is_told_with_its_batch(demo, tmp_path):
    path = typed(demo, tmp_path, "Vessels", "P7", None)  # of the tins
    assert (
        "tab Vessels, P7: Fill weighed: it is missing"
        in run("show", path, "batch", "--product", "two tins in a box").stderr
    )
    assert "Vessels" not in run("show", path, "batch", "--product", "Fig and cedar jar").stderr


@pytest.mark.parametrize("what", ["costs", "prices", "batch"])
def test_what_is_wrong_is_counted_beside_what_is_shown(demo, tmp_path, what):
    assert run("show", demo, what).exit_code == 0
    path = typed(demo, tmp_path, "Materials", "G12", "dear")
    done = run("show", path, what, "--product", "Fig and cedar jar")
    many = len(run("check", path).output.splitlines())
    told = f"{path}: {many} problem{'s' if many > 1 else ''}; candlecalc check {path} says which"
    assert (done.exit_code, done.stderr.splitlines()[-1]) == (1, told)
    assert done.stdout == run("show", demo, what, "--product", "Fig and cedar jar").stdout


def test_a_workbook_made_from_data_with_problems_is_made_and_says_so(demo, tmp_path):
    path, made = typed(demo, tmp_path, "Vessels", "F4", None), tmp_path / "made.xlsx"
    done = run("new", made, "--from", path)
    assert done.exit_code == 1
    assert "tab Vessels, F4: Water to the brim: it is missing" in done.output
    assert read.season_of(made).names("vessels") == read.season_of(demo).names("vessels")


def test_a_folder_is_checked_as_its_workbook_would_be(demo, tmp_path):
    season = read.season_of(demo)
    assert run("check", csv_folder(season, tmp_path / "csv")).output == f"{tmp_path / 'csv'}: Numbers agree\n"
    season.tables["vessels"].loc[0, "water"] = None
    done = run("check", csv_folder(season, tmp_path / "csv"))
    assert (done.exit_code, "tab Vessels, F4: Water to the brim: it is missing" in done.output) == (1, True)


@pytest.mark.parametrize("what", ["costs", "prices", "batch"])
def test_a_product_that_is_not_there_is_a_problem_of_the_data(demo, what):
    done = run("show", demo, what, "--product", "Nothing")
    assert done.exit_code == 1
    assert '"Nothing" is not on Recipes; there are Fig and cedar jar, ' in done.output


def csv_folder(season, target):
    folder.write(season, target)
    return target


@pytest.mark.parametrize("what", ["costs", "prices", "batch"])
def test_a_season_without_a_recipe_has_nothing_to_show_and_says_so(tmp_path, what):
    bare = csv_folder(empty(blank_settings("gb", datetime.date(2027, 1, 4))), tmp_path / "bare")
    done = run("show", bare, what)
    assert (done.exit_code, done.output) == (
        1,
        "candlecalc: Recipes holds no product yet: type what you sell there\n",
    )


def test_a_product_without_a_price_has_none_to_show_and_says_so(tmp_path):
    season = folder.read(folder.DEMO)
    season.tables["prices"] = season.tables["prices"][:1]
    there = csv_folder(season, tmp_path / "one")
    assert len(run("show", there, "prices").stdout.splitlines()) == 2
    done = run("show", there, "prices", "--product", "fig melt bar")
    assert (done.exit_code, done.output) == (1, 'candlecalc: Prices holds no line for "Fig melt bar" yet\n')


def package(**parts):
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as target:
        for name, data in parts.items():
            target.writestr(name.replace("__", "/").replace("_", "."), data)
    return out.getvalue()


OTHER_FILES = [  # name, what it holds, what is said
    ("broken.xlsx", b"", "it is empty"),
    ("broken.xlsx", b"PK", "it is cut short: copy or download it once more"),
    ("dump.py", b"print(1)\n", "it is a file of another kind; a workbook is an .xlsx"),
    ("prices.csv", b"product,place\n", "it is a CSV file: give the folder that holds the season's files"),
    # The first eight bytes of a compound file: [MS-CFB] 2.2, from memory.
    ("old.xls", bytes.fromhex("D0CF11E0A1B11AE1") + bytes(504), "it is an old .xls, or has a password: save it as"),
    ("season.ods", package(mimetype="application/vnd.oasis.opendocument.spreadsheet", content_xml="<a/>"),
     "it is an .ods, or the like: save it as .xlsx"),
    ("season.xlsb", package(xl__workbook_bin="x"), "it is an .xlsb: save it as .xlsx"),
    ("letter.docx", package(word__document_xml="<a/>"), "it is a package of another kind; a workbook is an .xlsx"),
    ("season.xlsx", package(xl__workbook_xml="<a/>"), "it is damaged: open it in a spreadsheet and save it as .xlsx"),
    ("season.xlsx", b"PK" + package(mimetype="x").replace(b"PK\1\2", b"PK\0\0"), "it is damaged: open it in a"),
    ("season.zip", package(xl__workbook_xml="<a/>"), "name it with .xlsx at the end"),
]  # fmt: skip


@pytest.mark.parametrize("name, data, words", OTHER_FILES)
def test_a_file_that_is_no_workbook_is_refused_in_one_line(tmp_path, name, data, words):
    path = tmp_path / name
    path.write_bytes(data)
    for given in (("check", path), ("new", tmp_path / "out.xlsx", "--from", path)):
        done = run(*given)
        assert done.exit_code == 1
        assert done.output.count("\n") == 1
        assert f"{path}: it cannot be read as a workbook: {words}" in done.output
    assert list(tmp_path.iterdir()) == [path]


def test_a_folder_that_is_no_season_says_what_one_holds(tmp_path):
    for given in (("check", tmp_path), ("show", tmp_path, "costs")):
        done = run(*given)
        assert (done.exit_code, done.output.count("\n")) == (1, 1)
        assert "settings.csv: it is not there; a season folder holds settings.csv and materials.csv" in done.output


def test_a_part_that_unpacks_to_a_giant_is_refused(demo, tmp_path):
    path = tmp_path / "bomb.xlsx"
    shutil.copy(demo, path)
    with zipfile.ZipFile(path, "a", zipfile.ZIP_DEFLATED) as package:
        package.writestr("xl/media/large.bin", b"\0" * 30_000_000)
    assert "too large" in run("check", path).output


def test_a_name_that_looks_like_a_formula_stays_text(demo, tmp_path):
    season = read.season_of(demo)
    season.tables["materials"].loc[0, "supplier"] = "=1+1"
    folder.write(season, tmp_path / "csv")
    assert run("new", tmp_path / "out.xlsx", "--from", tmp_path / "csv").exit_code == 0
    cell = openpyxl.load_workbook(tmp_path / "out.xlsx")["Materials"]["D4"]
    assert (cell.value, cell.data_type) == ("=1+1", "s")


def test_what_is_unlikely_is_asked_about_with_what_it_was_read_as_and_is_no_problem(demo, tmp_path):
    path = typed(demo, tmp_path, "Materials", "J4", 46054)  # on hand: what a spreadsheet makes of 1/2 or 1 Feb
    checked = run("check", path)
    assert checked.exit_code == 0
    verdict, question = checked.output.splitlines()
    assert verdict == f"{path}: 1 to look at; leave what is meant"
    assert question.startswith(f"{path}, tab Materials, J4: On hand: is it a date? It was read as 46054;")


@pytest.mark.parametrize("name", ['=HYPERLINK("http://example.org","x")', "+1 candle", "-1 candle", "@home"])
def test_what_a_spreadsheet_would_run_is_written_as_text_in_csv(tmp_path, name):
    folder.write(folder.read(folder.DEMO), tmp_path / "csv")
    for path in (tmp_path / "csv").glob("*.csv"):
        rows = list(csv.reader(path.read_text(encoding="utf-8").splitlines()))
        with path.open("w", newline="", encoding="utf-8") as file:
            csv.writer(file).writerows([name if cell == "Fig and cedar jar" else cell for cell in row] for row in rows)
    for what in (["costs"], ["prices"], ["batch", "--product", name, "--make", "12"]):
        done = run("show", tmp_path / "csv", *what, "--csv")
        cells = [cell for row in csv.reader(io.StringIO(done.stdout)) for cell in row]
        assert not [cell for cell in cells if cell.startswith(("=", "+", "@", "-1"))]
        assert f"'{name}" in cells or what[0] == "batch"
    shown = json.loads(run("show", tmp_path / "csv", "costs", "--json").stdout)
    assert name in [record["Product"] for record in shown]


@pytest.mark.parametrize("amount, told", [(1.005, "1.01"), (2.675, "2.68"), (-2.675, "-2.68"), (0.125, "0.13")])
def test_half_a_cent_is_shown_as_a_sheet_shows_it(amount, told):
    assert make.as_table([{"Making cost": amount}])[1].strip() == told


def test_a_column_has_decimals_of_its_own_and_shares_their_sign():
    records = [{"Pieces": 84.0, "Cost": 6.7, "Margin": 0.4421}, {"Pieces": 6.0, "Cost": 0, "Margin": -0.02}]
    assert [line.split() for line in make.as_table(records, {"Margin": "percent"})[1:]] == [
        ["84", "6.70", "44.2", "%"],
        ["6", "0.00", "-2.0", "%"],
    ]


def test_a_doubt_about_two_temperatures_is_a_sentence(demo, tmp_path):
    checked = run("check", typed(demo, tmp_path, "Materials", "O4", 110))  # oil in below the wax's melting range
    assert "O4: Add oil at: oil goes into wax that is set. It was read as 110; " in checked.output


def test_show_takes_the_words_that_tabs_register_themselves_with():
    assert {"batch", "trace", "books", "tax", *(each.shown.word for each in registered() if each.shown)} == set(
        SHOWN_WORDS
    )
