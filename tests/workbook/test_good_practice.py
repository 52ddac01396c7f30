"""A workbook against sixty points of published good practice for spreadsheets; this file has the points on
structure, tables, entries, checks and what lasts. Each test is named for its point.

Sources: the UK Analysis Function's "Releasing statistics in spreadsheets" (AF), ICAEW's Twenty Principles (20P)
and Financial Modelling Code (FMC), the FAST Standard (FAST), the UK data regulator's guidance (ICO), WCAG 2.2.
Points without a source are our own.

Elsewhere: 26 to 38 formulas (test_good_formulas.py), 44 to 50 and 52 to 54 looks and print (test_good_looks.py), 35
values (test_values.py), 36 edits (test_batch.py, test_by_hand.py, test_wiring_every_entry.py), 37 whole coins
(test_batch.py), 42 checks that can fail (test_checks.py), 43 blanks (test_bad_entries.py), 59 formulas and functions
(test_columns_agree.py).
Not met, and said at their tests: 4 for one pair of tabs and for what stands beside a name, 28 for one formula in four,
and 53 for the widest lists.
For a person: 58 that Excel opens it without a repair (bench/open_xml.mjs asks a validator), 60 how fast it opens.
"""

import datetime
import io
import re
import zipfile

import pytest
from openpyxl.utils.datetime import WINDOWS_EPOCH

from candlecalc import __version__
from candlecalc.season.tables import tables_of
from candlecalc.workbook import book
from candlecalc.workbook.cells import styles
from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.tabs.make import batch, costing
from candlecalc.workbook.writing.writer import format_of

KINDS = "input working output check control"
LISTS = [*(tab.title for tab in book.lists(False).values()), "Units", "Checks", "Lists", "Changes"]


def cells(sheet):
    return [cell for row in sheet.iter_rows() for cell in row]


def texts(sheet):
    return [cell.value for cell in cells(sheet) if isinstance(cell.value, str) and cell.data_type == "s"]


def entries(sheet):
    return {cell.coordinate for cell in cells(sheet) if not cell.protection.locked}


# --- structure ---------------------------------------------------------------------------------


def test_01_start_says_what_it_is_for_whom_how_by_whom_and_when(sheets, file):  # 20P 6 and 7; FAST 1.01
    said = "\n".join(texts(sheets["Start"]))
    assert sheets.sheetnames[0] == "Start"
    for words in ("for the maker and a bookkeeper", "1. Type", __version__, "workbook format 2"):
        assert words in said
    values = [cell.value for cell in sheets["Start"]["B"]]
    told = file.season.settings
    for value in (told["maker"], told["season"], told["currency"]):
        assert value is None or value in values
    dates = [value.date() for value in values if isinstance(value, datetime.datetime)]
    assert dates == [told["first_day"], told["last_day"], datetime.date(2027, 8, 2)]


def test_02_start_leads_to_every_tab_and_every_tab_back(sheets):  # FMC: navigation
    start = sheets["Start"]
    told = {start.cell(row, 1): f"{start.cell(row, 3).value} [{start.cell(row, 2).value}]"
            for row in range(2, start.max_row + 1) if start.cell(row, 1).hyperlink}  # fmt: skip
    assert [cell.value for cell in told] == sheets.sheetnames[1:]
    for cell, words in told.items():
        assert cell.hyperlink.location == f"'{cell.value}'!A1"
        assert words in " ".join(str(head.value) for head in sheets[cell.value][1])
        (back,) = (each for each in sheets[cell.value][1] if each.hyperlink)
        assert (back.value, back.hyperlink.location) == (cell.value, "Start!A1")


def test_03_each_tab_says_of_which_kind_it_is(sheets):  # 20P 10; FAST 1.01-01
    for sheet in sheets:
        # On a list it gives way to what is to be done first.
        assert any(re.search(rf"\[({KINDS.replace(' ', '|')})\](\"\))?$", str(cell.value)) for cell in sheet[1])


def test_05_nothing_is_hidden(sheets):  # FMC "don't hide things"; ICO; AF
    for sheet in sheets:
        assert sheet.sheet_state == "visible"
        for each in (*sheet.row_dimensions.values(), *sheet.column_dimensions.values()):
            assert not each.hidden
            assert (each.height if hasattr(each, "height") else each.width) not in (0, 0.0)


def test_06_nothing_leads_out_of_the_workbook(file, sheets):  # FAST; ICO; OWASP
    assert not [name for name in file.parts if re.search(r"external|connection|query|pivot|ole|embed", name, re.I)]
    assert not [name for name, data in file.parts.items() if b'TargetMode="External"' in data]
    assert not [name for name, each in sheets.defined_names.items() if "[" in each.attr_text]


def test_07_there_is_no_macro(file):  # 20P 16; AF
    assert not [name for name in file.parts if re.search(r"vba|macro", name, re.I)]
    assert b"spreadsheetml.sheet.main+xml" in file.parts["[Content_Types].xml"]
    assert b"macroEnabled" not in file.parts["[Content_Types].xml"]


def test_08_tabs_have_plain_names_of_their_own(sheets):  # AF
    assert len({title.casefold() for title in sheets.sheetnames}) == len(sheets.sheetnames)
    assert not [title for title in sheets.sheetnames if not re.fullmatch(r"[A-Z][a-z ]{1,29}", title)]


def test_09_no_tab_is_blank_or_has_stray_cells_far_away(sheets):  # AF; ICO
    for sheet in sheets:
        assert texts(sheet)
        end = sheet.max_row, sheet.max_column
        last = [cell for cell in cells(sheet) if cell.row == end[0] or cell.column == end[1]]
        assert any(cell.has_style for cell in last)
        for table in sheet.tables.values():  # on an input tab, of the entries alone: they can be sorted
            assert re.sub(r"\D", "", table.ref.partition(":")[2]) == str(sheet.max_row)
            typed = book.TABS[sheet.title].kind == "input"
            assert typed or table.ref.rpartition(":")[2] == sheet.dimensions.rpartition(":")[2]


@pytest.mark.parametrize("title", LISTS)
def test_10_a_list_has_its_tab_to_itself_from_the_left_edge(sheets, title):  # AF
    (table,) = sheets[title].tables.values()
    # But for what to do about a row, which is locked: it stands left of the name, where a sort leaves it alone.
    left = "B" if sheets[title][f"A{FIRST_ROW - 1}"].value == "What to do" else "A"
    assert table.ref.startswith(f"{left}{FIRST_ROW - 1}:")
    assert sheets[title].max_row == int(re.sub(r"\D", "", table.ref.partition(":")[2]))


# --- tables and labels -------------------------------------------------------------------------


def test_11_every_list_is_a_table_with_a_name_that_says_what_is_in_it(sheets):  # AF
    names = {title: next(iter(sheets[title].tables.values())).displayName for title in LISTS}
    assert names == {title: f"{title.replace(' ', '_')}_list" for title in LISTS}
    assert [sheet.title for sheet in sheets if not sheet.tables] == ["Start", "Settings", "Batch"]  # cards


def test_12_every_head_is_there_once_and_is_the_tables_own(sheets):  # AF
    for title in LISTS:
        (table,) = sheets[title].tables.values()
        heads = [cell.value for cell in sheets[title][table.ref][0]]
        assert heads == table.column_names
        assert all(isinstance(head, str) and head.strip() == head != "" for head in heads)
        assert len({head.casefold() for head in heads}) == len(heads)


def test_13_no_cells_are_merged(sheets):  # AF
    assert not [sheet.title for sheet in sheets if sheet.merged_cells.ranges]


def test_14_rows_stand_without_gaps_and_blanks_are_explained(sheets, file):  # AF
    for key in tables_of(False):
        assert [place for place, _ in file.season.rows(key)] == list(range(len(file.season.tables[key])))
    assert "A result that is blank waits for an entry" in "\n".join(texts(sheets["Start"]))


# What must stand in the head of a number of a format; a percent sign stands in the cells.
UNITS = {"money": "{money}", "money_strong": "{money}", "unit_cost": "{money}", "weight": "{weight}",
         "fine_weight": "{weight}", "temperature": "{temperature}", "length": "{length}", "volume": "ml",
         "density": "g/ml", "minutes": "minutes"}  # fmt: skip


def test_15_every_head_of_a_number_says_its_unit(file):  # FMC: units; FAST 2.01-01
    shown = book.plan_of(file.season).head
    for tab in book.lists(False).values():
        for column in tab.columns.values():
            unit = shown(UNITS.get(format_of(column), ""))
            assert unit.casefold() in shown(column.head).casefold(), f"{tab.title}: {column.head}"


def test_15_every_setting_says_its_unit(sheets):
    card = sheets["Settings"]
    for row in range(1, card.max_row + 1):
        shown, label = card.cell(row, 4).number_format, str(card.cell(row, 1).value)
        if "0.00_)" in shown and card.cell(row, 4).value is not None:
            assert re.search(r", [A-Za-z]+", label), label


def test_16_signs_are_explained(sheets):  # FMC
    assert "costs and prices are positive; a loss carries a minus" in "\n".join(texts(sheets["Start"]))


def test_17_no_two_lines_of_a_tab_have_the_same_label(sheets):  # FAST
    for title in ("Settings", "Batch", "Checks"):
        labels = [cell.value for cell in sheets[title]["A"] if cell.data_type == "s" and cell.value]
        labels = [label for label in labels if label != sheets[title]["A3"].value]  # Batch: what is made
        assert len(set(labels)) == len(labels), title


def test_18_the_same_head_has_the_same_format_everywhere(file):  # 20P 11
    formats = styles.number_formats(2, 2, 2)
    shown = {}
    for tab in book.lists(False).values():
        for column in tab.columns.values():
            shown.setdefault(column.head, set()).add(formats[format_of(column)])
    assert not {head for head, each in shown.items() if len(each) > 1}


def test_19_no_mark_stands_for_a_note(sheets):  # AF: no superscripts or symbols as marks
    for sheet in sheets:
        assert not [text for text in texts(sheet) if re.search(r"[\u00b9\u00b2\u00b3\u2070-\u207f\u2020\u2021]", text)]


# --- entries -----------------------------------------------------------------------------------


def test_20_only_entries_are_unlocked_and_all_look_like_entries(sheets):  # 20P 10 and 20; FMC
    for sheet in sheets:
        assert sheet.protection.sheet
        for cell in cells(sheet):
            line = cell.border.left and cell.border.left.color
            # In a list the lines are drawn by a rule, as far as it is filled: what is drawn is printed.
            ruled = sheet.title in LISTS or line and line.rgb == "00" + styles.ENTRY_LINE
            looks = cell.fill.fgColor.rgb == "00" + styles.ENTRY_GROUND
            assert looks == (not cell.protection.locked), cell
            assert not looks or ruled, cell


def test_21_entries_stand_on_input_tabs_but_for_those_that_start_names(sheets):  # 20P 10; FAST
    others = {sheet.title: entries(sheet) for sheet in sheets if book.TABS[sheet.title].kind != "input"}
    assert {title: each for title, each in others.items() if each} == {
        "Costing": {costing.RISE_LINE.entry},
        "Batch": {f"{letter}{batch.PICK}" for letter in "ACI"},
    }
    assert "also on Batch and over the heads of Costing" in "\n".join(texts(sheets["Start"]))


def test_22_every_entry_says_what_it_takes(sheets):  # FMC: restrictions
    for sheet in sheets:
        rules = [each for each in sheet.data_validations.dataValidation if each.prompt and each.error]
        assert all(each.showErrorMessage and each.showInputMessage and each.type for each in rules)
        covered = {cell for rule in rules for part in rule.sqref.ranges for row in part.rows for cell in row}
        assert covered == {(sheet[cell].row, sheet[cell].column) for cell in entries(sheet)}, sheet.title


def test_23_what_is_chosen_from_a_list_has_a_drop_down(sheets):  # FMC
    for key, table in tables_of(False).items():
        sheet = sheets[table.title]
        rules = {str(each.sqref): each for each in sheet.data_validations.dataValidation}
        for letter, field in zip("BCDEFGHIJKLMNOPQRSTUVWXYZ", table.fields, strict=False):
            rule = rules[f"{letter}{FIRST_ROW}:{letter}{FIRST_ROW + table.usual_rows - 1}"]
            assert (rule.type == "list") == bool(field.names_from or field.choices), f"{key}, {field.key}"
            assert not field.names_from or rule.formula1.startswith("Lists!")
            assert not field.choices or rule.formula1 == f'"{",".join(field.choices)}"'


def test_24_what_is_typed_says_whose_it_is_and_of_when(sheets):  # 20P 7
    assert "What you type is your own, as of the date above" in "\n".join(texts(sheets["Start"]))
    heads = {title: {cell.value for cell in sheets[title][FIRST_ROW - 1]} for title in ("Materials", "Vessels")}
    assert heads["Materials"] >= {"Supplier", "Price seen on"}
    assert "Measured by" in heads["Vessels"]


def test_25_an_example_says_so_and_a_blank_workbook_holds_none(sheets, file):  # FMC
    assert (file.name == "demo") == ("(example)" in str(file.season.settings["season"]))
    assert (file.name == "demo") == bool(sheets["Recipes"][f"B{FIRST_ROW}"].value)


# --- checks ------------------------------------------------------------------------------------


def test_39_every_check_has_both_numbers_their_difference_its_tolerance_and_what_to_do(sheets, held):  # 20P 19; FMC
    heads = [cell.value for cell in sheets["Checks"][FIRST_ROW - 1]]
    assert heads == ["Check", "First row", "Found", "Should be", "Difference", "Tolerance", "Verdict", "What to do"]
    for row in held["Checks"].iter_rows(min_row=FIRST_ROW, values_only=True):
        name, first_row, found, wanted, difference, tolerance, verdict, what = row
        assert name and first_row in held.sheetnames and what  # no row has anything
        assert difference == pytest.approx(found - wanted, abs=1e-6)
        assert verdict == ("agrees" if abs(difference) <= tolerance else "to fix")


def test_40_the_master_check_stands_at_the_top_of_every_tab(sheets, held):  # FMC; FAST 2.03-05
    for sheet in sheets:
        # On the card beside the title: nothing may stand over its entries that rests on them.
        tops = [cell for row in sheet.iter_rows(max_row=2) for cell in row if "master_check" in str(cell.value)]
        tops = tops or [sheet["A2"]] * (sheet.title == "Checks")
        assert [held[sheet.title][cell.coordinate].value for cell in tops] == ["Numbers agree"], sheet.title


def test_41_checks_cover_weights_money_and_dates_that_must_agree(sheets):
    # There is no tab of stock moved, of sales or of books, so none of these is checked.
    assert {cell.value for cell in sheets["Checks"]["A"]} >= {
        "The season ends after it begins",
        "Wax and oil in parts make up the fills",
        "Batch: weights make up the melt",
        "Batch: the jugs hold what is weighed",
        "Batch: its money is that of its pieces, but for rounding",
        "Parts of the cost make up the full cost",
        "Sets carry what their candles cost",
        "Prices are cost, fees and profit",
    }


# --- what lasts --------------------------------------------------------------------------------


def test_51_the_file_says_what_it_is_and_names_no_person(sheets, file):  # AF; ICO
    facts = sheets.properties
    assert facts.title.endswith(file.season.settings["season"])
    assert facts.subject and facts.keywords and facts.language == "en"
    assert facts.creator == facts.lastModifiedBy == f"candlecalc {__version__}"


def test_55_version_format_and_date_stand_in_cells_and_in_the_file(sheets):  # 20P 8 and 17
    said = "\n".join(texts(sheets["Start"]))
    assert f"candlecalc {__version__}, workbook format 2" in said
    assert (sheets.properties.description, sheets.properties.created) == (
        "workbook format 2",
        datetime.datetime(2027, 8, 2),
    )


def test_56_a_log_of_changes_begins_with_how_it_was_made(sheets):  # 20P 17; FAST
    log = sheets["Changes"]
    assert [cell.value for cell in log[FIRST_ROW - 1]] == ["Date", "What was changed", "By"]
    assert [cell.value for cell in log[FIRST_ROW]] == [
        datetime.datetime(2027, 8, 2), f"made by candlecalc {__version__}", "candlecalc",
    ]  # fmt: skip


def test_57_dates_are_dates(sheets):
    assert sheets.epoch == WINDOWS_EPOCH
    dated = [cell for sheet in sheets for cell in cells(sheet) if cell.number_format == styles.NUMBERS["date"]]
    assert dated
    for cell in dated:
        assert cell.value is None or cell.data_type in ("d", "f"), cell
    for sheet in sheets:
        assert not [text for text in texts(sheet) if re.fullmatch(r"\d{4}-\d\d-\d\d", text)]


def _told(package):
    """How many parts of each kind a workbook has."""
    names = zipfile.ZipFile(io.BytesIO(package)).namelist()
    return {kind: sum(name.startswith(f"xl/{kind}/") and name.endswith(".xml") for name in names)
            for kind in ("worksheets", "tables", "charts", "drawings", "externalLinks")}  # fmt: skip


def test_58_libreoffice_opens_it_and_saves_as_many_parts(file, office, tmp_path):  # Excel: for a person
    path = tmp_path / "file.xlsx"
    path.write_bytes(file.bytes)
    assert _told(office.saved_as(path, "xlsx").read_bytes()) == _told(file.bytes)


# ECMA-376 part 1, CT_Font; bench/open_xml.mjs found no other fault in what openpyxl writes.
FONT_PARTS = ["b", "i", "u", "sz", "color", "name", "family", "scheme"]


def test_58_the_parts_of_a_font_stand_in_the_order_of_the_standard(file):
    fonts = re.findall(rb"<font>(.*?)</font>", file.parts["xl/styles.xml"])
    assert fonts
    for font in fonts:
        parts = [part.decode() for part in re.findall(rb"<(\w+) ", font)]
        assert parts == sorted(parts, key=FONT_PARTS.index)


def test_60_the_file_is_small(file):
    assert len(file.bytes) < 2_000_000


JUDGEMENTS = "safe approved compliant certified suitable non-toxic clean-burning hazardous"


def test_no_text_passes_judgement_on_safety(sheets):
    every = [text for sheet in sheets for text in texts(sheet)]
    for word in JUDGEMENTS.split():
        # A "certified limit" is what a supplier's certificate states, not a judgement of ours.
        found = [text for text in every if re.search(rf"\b{word}\b(?! limit)", text, re.I)]
        assert not found, word


def test_entries_of_a_list_can_be_sorted_and_filtered_and_nothing_else(sheets):
    # Excel sorts unlocked cells alone, and a table as a whole: so a table is of the entries.
    for table in tables_of(False).values():
        sheet = sheets[table.title]
        assert sheet.protection.sort is sheet.protection.autoFilter is False  # False: not kept from it
        (marked,) = sheet.tables.values()
        assert all(not cell.protection.locked for row in sheet[marked.ref][1:] for cell in row)
        assert all(cell.protection.locked for cell in sheet[marked.ref][0])
