"""A workbook against published good practice for spreadsheets.

Sources, named beside each check: the UK Analysis Function's "Releasing statistics in spreadsheets" (AF),
ICAEW's Twenty Principles (20P) and Financial Modelling Code (FMC), the FAST Standard (FAST), WCAG 2.2.
"""

import datetime
import io
import re
import zipfile

import openpyxl
import pytest
from formulas import COMPARISONS, anywhere, kinds, nodes, tree
from openpyxl.formula.translate import Translator

from candlecalc.season import folder, presets, season
from candlecalc.workbook import book, styles
from candlecalc.workbook.columns import FIRST_ROW

MADE = {
    "demo": lambda: book.made(folder.read(folder.DEMO), datetime.date(2027, 8, 2)),
    "blank": lambda: book.made(
        season.empty(presets.blank_settings("gb", datetime.date(2027, 1, 1))), datetime.date(2027, 1, 1)
    ),
}
# All in Excel 2016, LibreOffice 7.4 and web spreadsheets; none volatile.
ALLOWED = {
    "AND", "CHOOSE", "COUNT", "COUNTA", "COUNTIF", "COUNTIFS", "FIND", "IF", "IFERROR", "INDEX",
    "INT", "ISBLANK", "ISERROR", "ISTEXT", "LEN", "MATCH", "MAX", "MIN", "N", "NA",
    "NOT", "OR", "PI", "REPT", "ROUND", "ROWS", "SUM", "SUMIFS", "SUMPRODUCT", "TEXT",
}  # fmt: skip


@pytest.fixture(scope="module", params=MADE)
def made(request):
    return MADE[request.param]()


@pytest.fixture(scope="module")
def sheets(made):
    return openpyxl.load_workbook(io.BytesIO(made))


def formulas(sheets):
    return [cell for sheet in sheets for row in sheet.iter_rows() for cell in row if cell.data_type == "f"]


def unique(sheets):
    """One cell for each formula as its column has it, whatever the row."""
    return {(cell.parent.title, anywhere(cell.value, cell.coordinate)): cell for cell in formulas(sheets)}


def test_nothing_is_hidden_or_merged(sheets):  # FMC "don't hide things"; AF: no merged cells
    for sheet in sheets:
        assert sheet.sheet_state == "visible"
        assert not sheet.merged_cells.ranges
        assert not any(each.hidden for each in (*sheet.row_dimensions.values(), *sheet.column_dimensions.values()))


def test_no_macro_link_or_connection_is_inside(made):  # 20P 16; OWASP
    names = zipfile.ZipFile(io.BytesIO(made)).namelist()
    assert not [name for name in names if re.search(r"vba|external|connection|pivot|ole|embed", name, re.I)]


def test_every_list_is_a_table_with_heads_of_its_own(sheets):  # AF: tables marked up, unique heads
    tables = [table for sheet in sheets for table in sheet.tables.values()]
    assert len({table.displayName for table in tables}) == len(tables) >= len(book.TABLE_TABS)
    for sheet in sheets:
        for table in sheet.tables.values():
            heads = [cell.value for cell in sheet[table.ref][0]]
            assert heads == table.column_names
            assert len({head.casefold() for head in heads}) == len(heads)


def test_only_entries_are_unlocked_and_all_look_like_entries(sheets):  # 20P 10 and 20; FMC
    for sheet in sheets:
        assert sheet.protection.sheet
        for row in sheet.iter_rows():
            for cell in row:
                assert (not cell.protection.locked) == (cell.fill.fgColor.rgb == "00" + styles.ENTRY_GROUND), cell


def test_every_entry_says_what_it_takes(sheets):  # FMC: restrictions
    for sheet in sheets:
        rules = [each for each in sheet.data_validations.dataValidation if each.prompt and each.error]
        covered = {cell for rule in rules for part in rule.sqref.ranges for row in part.rows for cell in row}
        entries = {(cell.row, cell.column) for row in sheet.iter_rows() for cell in row if not cell.protection.locked}
        assert covered == entries, sheet.title


def test_a_column_holds_one_formula(sheets):  # 20P 12; FAST
    for tab in book.TABLE_TABS.values():
        sheet = sheets[tab.title]
        for cell in sheet[FIRST_ROW]:
            if cell.data_type == "f":
                last = sheet.cell(FIRST_ROW + tab.rows - 1, cell.column)
                assert last.value == Translator(cell.value, cell.coordinate).translate_formula(last.coordinate)


def test_formulas_keep_to_plain_functions(sheets):  # FAST 4.01-03: no OFFSET, no INDIRECT; none volatile
    used = {name for cell in formulas(sheets) for name in re.findall(r"([A-Z][A-Z0-9.]*)\(", cell.value)}
    assert used <= ALLOWED


def _compares_unlike(node):
    """A comparison of a yes or no with a number: FALSE=0 does not hold in Excel, and does elsewhere."""
    if node.kind != "operation" or node.text not in COMPARISONS:
        return False
    left, right = (kinds(part) for part in node.parts)
    return ("LOGICAL" in left and "NUMBER" in right) or ("NUMBER" in left and "LOGICAL" in right)


UNLIKE = {"=ISTEXT(A1)=0": True, "=IFERROR(OR(A1=1,B1=2),FALSE)=0": True, "=1<(A1=2)": True,
          "=ISTEXT(A1)*1=0": False, "=1+(A1=2)>0": False, "=(A1>0)=(B1=2)": False}  # fmt: skip


@pytest.mark.parametrize("formula, unlike", UNLIKE.items())
def test_a_comparison_of_unlike_things_is_seen(formula, unlike):
    assert any(map(_compares_unlike, nodes(tree(formula)))) == unlike


def test_no_formula_compares_a_yes_or_no_with_a_number(sheets):
    every = {cell.value for cell in unique(sheets).values()}
    every |= {"=" + test for sheet in sheets for area in sheet.conditional_formatting for rule in area.rules
              for test in rule.formula}  # fmt: skip
    assert not [formula for formula in every if any(map(_compares_unlike, nodes(tree(formula))))]


def test_no_formula_takes_a_whole_column(sheets):
    assert not [cell for cell in formulas(sheets) if re.search(r"\$?[A-Z]+:\$?[A-Z]+(?![0-9])", cell.value)]


def test_every_formula_has_a_stored_value_and_none_is_an_error(made, sheets):
    values = openpyxl.load_workbook(io.BytesIO(made), data_only=True)
    raw = dict(_sheets_xml(made))
    assert sum(data.count(b"<f>") for data in raw.values()) == sum(
        len(re.findall(rb"</f><v ?>", data)) for data in raw.values()
    )
    assert not [
        cell for cell in formulas(sheets) if str(values[cell.parent.title][cell.coordinate].value).startswith("#")
    ]


def _sheets_xml(made):
    package = zipfile.ZipFile(io.BytesIO(made))
    return [(name, package.read(name)) for name in package.namelist() if name.startswith("xl/worksheets/sheet")]


def _luminance(colour):
    parts = [int(colour[at : at + 2], 16) / 255 for at in (0, 2, 4)]
    linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def _contrast(ink, ground):
    light, dark = sorted((_luminance(ink), _luminance(ground)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def test_text_stands_out_from_its_ground(sheets):  # WCAG 2.2, 1.4.3: 4.5 to 1
    pairs = set()
    for sheet in sheets:
        for row in sheet.iter_rows():
            for cell in row:
                ground = cell.fill.fgColor.rgb[2:] if cell.fill.fill_type else "FFFFFF"
                if cell.value is not None:
                    pairs.add((cell.font.color.rgb[2:], ground))
    pairs |= {(styles.BAD_INK, styles.BAD_GROUND), (styles.GOOD_INK, styles.GOOD_GROUND)}
    assert not [pair for pair in pairs if _contrast(*pair) < 4.5]


def test_the_chart_says_in_words_what_it_shows(made):  # AF: alternative text
    package = zipfile.ZipFile(io.BytesIO(made))
    drawings = [name for name in package.namelist() if name.startswith("xl/drawings/drawing")]
    assert drawings
    for name in drawings:
        assert b'descr="Stacked bars of the first' in package.read(name)


def test_the_charts_parts_add_up_to_the_full_cost(made):
    from candlecalc.workbook.tabs.costing import CHART_PARTS

    values = openpyxl.load_workbook(io.BytesIO(made), data_only=True)["Costing"]
    letters = book.plan_of(folder.read(folder.DEMO)).places["costing"].letters
    for row in range(FIRST_ROW, FIRST_ROW + 12):
        full = values[f"{letters['full']}{row}"].value
        parts = [values[f"{letters[part]}{row}"].value for part in CHART_PARTS]
        assert full in (None, "") or sum(parts) == pytest.approx(full)


def test_each_tab_says_its_kind_and_shows_the_master_check(sheets):  # 20P 10; FMC: a master check
    for sheet in sheets:
        tops = [str(cell.value) for row in sheet["A1:C2"] for cell in row]
        assert any(re.search(r"\[(input|working|output|check|control)\]$", top) for top in tops), sheet.title
        assert any("master_check" in top or "Numbers agree" in top for top in tops), sheet.title


def test_start_leads_to_every_tab_in_the_words_at_its_head(sheets):  # FMC: navigation
    start = sheets["Start"]
    told = {
        start.cell(row, 1).value: f"{start.cell(row, 3).value} [{start.cell(row, 2).value}]"
        for row in range(1, start.max_row + 1)
        if start.cell(row, 1).hyperlink
    }
    assert list(told) == sheets.sheetnames[1:]
    for title, words in told.items():
        assert words in [cell.value for cell in sheets[title][1]]


def test_each_tab_prints_on_the_makers_paper(sheets):
    for sheet in sheets:
        assert sheet.page_setup.paperSize in ("1", "9", 1, 9)
        assert sheet.print_area
        assert sheet.sheet_properties.pageSetUpPr.fitToPage


def test_the_file_says_who_made_it_and_when(sheets):  # AF: document information filled
    facts = sheets.properties
    assert facts.title
    assert facts.creator.startswith("candlecalc")
    assert facts.language == "en"
    assert facts.created.year == 2027


JUDGEMENTS = "safe approved compliant certified suitable non-toxic clean-burning hazardous"


def test_no_text_passes_judgement_on_safety(sheets):
    texts = [cell.value for sheet in sheets for row in sheet.iter_rows() for cell in row if isinstance(cell.value, str)]
    for word in JUDGEMENTS.split():
        # A "certified limit" is what a supplier's certificate states, not a judgement of ours.
        found = [text for text in texts if re.search(rf"\b{word}\b(?! limit)", text, re.I)]
        assert not found, word
