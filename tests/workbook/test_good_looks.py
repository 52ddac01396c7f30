"""How a workbook looks, is used and is printed: points 44 to 54 of those in test_good_practice.py.

Pages are read as LibreOffice prints them: type that can be read, and no number that shows as ####.
"""

# ruff: noqa: S603, S607  the programs started here are our own choice

import collections
import re
import subprocess
import textwrap

import books
import pytest
from openpyxl.utils import range_boundaries

from candlecalc.season.fields import NAME_LENGTH
from candlecalc.season.season import problems
from candlecalc.season.tables import tables_of
from candlecalc.workbook import book
from candlecalc.workbook.cells import styles
from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.tabs.make.costing import CHART_PARTS
from candlecalc.workbook.writing.printed import ROWS_OF_A_PAGE
from candlecalc.workbook.writing.writer import HEAD_LINES

LEAST_POINTS = 8


def luminance(colour):
    parts = [int(colour[at : at + 2], 16) / 255 for at in (0, 2, 4)]
    linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(ink, ground):
    light, dark = sorted((luminance(ink), luminance(ground)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def test_contrast_is_reckoned_as_published():
    # WCAG 2.2, definition of contrast ratio: black on white is 21 to 1; #777777 on white is known as just under 4.5.
    assert contrast("000000", "FFFFFF") == pytest.approx(21)
    assert contrast("777777", "FFFFFF") == pytest.approx(4.48, abs=0.005)


def filled(sheets):
    return [cell for sheet in sheets for row in sheet.iter_rows() for cell in row if cell.value is not None]


def test_44_text_stands_out_from_its_ground(sheets):  # WCAG 2.2, 1.4.3: 4.5 to 1
    pairs = {(cell.font.color.rgb[2:], cell.fill.fgColor.rgb[2:] if cell.fill.fill_type else "FFFFFF")
             for cell in filled(sheets)}  # fmt: skip
    rules = [rule for sheet in sheets for area in sheet.conditional_formatting for rule in area.rules]
    pairs |= {(rule.dxf.font.color.rgb[2:], rule.dxf.fill.bgColor.rgb[2:]) for rule in rules if rule.dxf.font}
    assert len(pairs) > 5
    assert not [pair for pair in pairs if contrast(*pair) < 4.5]


def test_45_colour_is_never_alone(sheets, file):  # WCAG 2.2, 1.4.1
    # A loss has its minus: no format hides it or tells it by colour.
    assert not [cell for cell in filled(sheets) if re.search(r"\[|;", cell.number_format)]
    # A check says "agrees" or "to fix", an entry has a border, and every second part of the chart is hatched.
    fills = [re.search(rb"<a:(solid|patt)Fill", part)[1] for part in _series(file)]
    assert fills == [b"solid", b"patt"] * 3


def _series(file):
    return re.findall(rb"<ser>.*?</ser>", file.parts["xl/charts/chart1.xml"], re.DOTALL)


def test_46_the_chart_says_in_words_what_it_shows(file):  # AF: alternative text
    drawings = [data for name, data in file.parts.items() if name.startswith("xl/drawings/drawing")]
    assert drawings
    assert all(b'descr="Stacked bars of the first 12 products' in data for data in drawings)


def test_47_the_chart_has_titles_with_units_and_colours_that_can_be_seen(file):  # WCAG 2.2, 1.4.11: 3 to 1
    titles = re.findall(rb"<a:t>(.*?)</a:t>", file.parts["xl/charts/chart1.xml"])
    assert {b"Product", f"{file.season.currency} a piece".encode()} < set(titles)
    assert len(titles) == 3
    assert not [colour for colour in styles.SERIES if contrast(colour, "FFFFFF") < 3]


def test_47_the_charts_parts_add_up_to_the_full_cost(held, file):
    letters = book.plan_of(file.season).layouts["costing"].letters
    for row in range(FIRST_ROW, FIRST_ROW + 12):
        full, *parts = (held["Costing"][f"{letters[key]}{row}"].value for key in ("full", *CHART_PARTS))
        assert (file.name == "demo") == (full not in (None, ""))
        assert full in (None, "") or sum(parts) == pytest.approx(full)


def test_48_type_is_large_and_upright(sheets):  # AF
    for cell in filled(sheets):
        assert cell.font.sz >= 11, cell
        assert not cell.font.i, cell
        # In capitals stand a currency and what is a formula to paste.
        assert not (cell.data_type == "s" and len(cell.value) > 3 and cell.value.isupper() and cell.value[0] != "=")


def test_49_heads_stand_whole_in_their_cells(sheets):  # AF
    for tab in book.lists(False).values():
        for cell in sheets[tab.title][FIRST_ROW - 1]:
            # A column of so many digits holds as many letters of a head, less its indent.
            room = (sheets[tab.title].column_dimensions[cell.column_letter].width - 2) / 1.05
            assert len(textwrap.wrap(cell.value, int(room), break_long_words=False)) <= HEAD_LINES, cell.value
            assert max(map(len, cell.value.split())) <= room, cell.value
            assert cell.alignment.wrap_text


def test_50_it_opens_at_the_top_of_the_first_tab(sheets):  # AF
    assert sheets.active.title == "Start"
    for sheet in sheets:
        assert sheet.sheet_view.topLeftCell is None
        assert {each.activeCell for each in sheet.sheet_view.selection} == {"A1"}
        assert bool(sheet.sheet_view.tabSelected) == (sheet.title == "Start")


def test_52_keys_lead_through_the_entries_and_each_is_named_before_it_is_reached(sheets):  # WCAG 2.4.3, 3.3.2
    # In a protected tab the Tab key goes from entry to entry: along the row, then to the next one.
    for sheet in sheets:
        told = sheet.protection
        assert not (told.selectLockedCells or told.selectUnlockedCells or told.password)
        texts = [cell for row in sheet for cell in row if cell.data_type == "s"]
        for rule in sheet.data_validations.dataValidation:
            (first,) = rule.sqref.ranges
            before = [each.value for each in texts if (each.row, each.column) < (first.min_row, first.min_col)]
            assert rule.promptTitle.casefold() in " ".join(before).casefold(), f"{sheet.title} {rule.sqref}"


# Tabs that are wider than a page of type that can be read, with the pages they take.
WIDE = {"Materials": 2, "Vessels": 2, "Recipes": 3, "Workings": 6, "Part costs": 3, "Costing": 2, "Places sold": 2,
        "Selling": 2, "Lists": 4}  # fmt: skip


def test_53_each_tab_prints_on_the_makers_paper_with_its_heads(sheets, file):
    size = {"Letter": 1, "A4": 9}[file.season.settings["paper"]]
    for sheet in sheets:
        setup = sheet.page_setup
        assert int(setup.paperSize) == size
        assert setup.orientation in ("portrait", "landscape")
        assert sheet.sheet_properties.pageSetUpPr.fitToPage
        assert sheet.print_area
        assert sheet.oddFooter.center.text == "&A, page &P"
        assert int(setup.fitToWidth) == WIDE.get(sheet.title, 1), sheet.title


def test_53_a_list_of_several_pages_has_its_heads_on_each(sheets):
    """Where there is one page, or the tab is behind the numbers, programs need not work out what repeats."""
    for sheet in sheets:
        if sheet.tables and not sheet._charts and sheet.title != "Units":
            last_row = range_boundaries(sheet.print_area.rpartition("!")[2].replace("$", ""))[3]
            several = last_row >= FIRST_ROW + ROWS_OF_A_PAGE and book.TABS[sheet.title].kind != "working"
            assert sheet.print_title_rows == (f"$1:${FIRST_ROW - 1}" if several else None), sheet.title


def test_54_a_bench_card_stays_on_one_page(sheets):
    assert (int(sheets["Batch"].page_setup.fitToWidth), int(sheets["Batch"].page_setup.fitToHeight)) == (1, 1)


@pytest.mark.parametrize("name", ["demo", "long", "blank"])  # Letter twice, and A4
def test_54_cards_and_the_chart_each_stay_on_a_page_of_their_own_and_checks_on_two(pages, name):
    counted = collections.Counter(map(_tab, pages[name]))
    assert {tab: counted[tab] for tab in ("Start", "Settings", "Batch", "Checks", "Costing")} == {
        "Start": 1, "Settings": 1, "Batch": 1, "Checks": 2, "Costing": 2,
    }  # fmt: skip


def long_season():
    """The demo with every name at its full length, and every sum as large as a small maker's may be."""
    season, named = books.demo(), {}

    def long(name):
        if isinstance(name, str) and name not in named:
            named[name] = f"{name} {'mmmWm' * 7}"[: NAME_LENGTH - 3].strip() + f" {len(named):02d}"
        return named.get(name)

    for key, table in tables_of(False).items():
        rows = season.tables[key]
        for field in table.fields:
            if field.name or field.names_from:
                rows[field.key] = [long(name) for name in rows[field.key]]
            elif field.any_text:
                rows[field.key] = "mmmWm" * (field.longest // 5)
    for table, key, times in [("materials", "pack_price", 50), ("materials", "on_hand", 1000), ("prices", "price", 99)]:
        season.tables[table][key] = [value and value * times for value in season.tables[table][key]]
    season.tables["places"]["fixed_cost"] = 9999.99
    season.settings |= {"paid_rate": 999.99, "own_rate": 999.99, "production_overhead": 999999.0}
    season.settings |= {"running_costs": 999999.0, "largest_pot": 5000.0, "maker": "m" * 40, "season": "W" * 40}
    return season


@pytest.fixture(scope="module")
def pages(office, tmp_path_factory):
    """The text of each page with the height of each word: of long names and large sums, the demo, and a blank on A4."""
    season = long_season()
    assert problems(season) == []
    folder = tmp_path_factory.mktemp("pages")
    picked = {"product": season.names("recipes")[4], "count": 10_000.0, "date": None}
    return {
        "long": _pages(office.pdf(_printed(season, folder / "long.xlsx", picked))),
        "demo": _pages(office.pdf(_printed(books.demo(), folder / "demo.xlsx"))),
        "blank": _pages(office.pdf(_printed(books.blank("gb"), folder / "blank.xlsx"))),
    }


def _printed(season, path, picked=None):
    # As many blank rows as are printed: those below are not.
    rows_of = {key: max(ROWS_OF_A_PAGE, 2 * rows) for key, rows in books.few(season, spare=0).items()}
    path.write_bytes(book.made(season, books.DATED, picked=picked, rows_of=rows_of))
    return path


def _pages(pdf):
    told = subprocess.run(["pdftotext", "-bbox", str(pdf), "-"], check=True, capture_output=True, text=True).stdout
    word = re.compile(r'yMin="([\d.]+)" xMax="[\d.]+" yMax="([\d.]+)">(.*?)</word>')
    return [
        [(float(end) - float(start), text) for start, end, text in word.findall(page)]
        for page in told.split("<page ")[1:]
    ]


def _tab(page):
    """The tab a page is of: its foot is "Places sold, page 3"."""
    return " ".join(text for _, text in page).rpartition(", page ")[0].rpartition(" ")[2]


def test_49_no_number_shows_as_a_row_of_hashes(pages):
    for page in (*pages["long"], *pages["demo"]):
        assert "##" not in " ".join(text for _, text in page), _tab(page)


def test_53_nothing_prints_under_eight_points(pages):
    # Units is printed as large as it is written: its words of 11 points are the measure.
    units = next(page for page in pages["demo"] if _tab(page) == "Units")
    point = sorted(height for height, _ in units)[len(units) // 2] / 11
    small = {(_tab(page), round(height / point, 1), text) for page in pages["demo"] for height, text in page
             if height / point < LEAST_POINTS}  # fmt: skip
    assert not small
