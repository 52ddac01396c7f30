"""What a maker sees without scrolling, and on the first page: what a tab is for, and what to do about a row."""

import re

import books
import pytest
from openpyxl.utils import column_index_from_string, get_column_letter
from test_typing import WAX

from candlecalc.workbook import book
from candlecalc.workbook.cells.layout import FIRST_ROW, HEAD_ROW
from candlecalc.workbook.cells.table_tab import STATUS, TableTab
from candlecalc.workbook.writing.printed import WIDEST_PAGE, widths

SCREEN, ROW_HEADS = 1400, 30  # pixels; those that a program takes for the numbers of the rows
# ECMA-376 part 1, 18.3.1.13: a column's pixels from its width, where a digit is 7 wide (Calibri, 11 points, 96 dpi).
DIGIT = 7
# What each list is for: it stands on the first screen and on the first page.
FOR = {
    "prices": ("product", "place", "price", "full", "profit", "margin"),
    "costing": ("product", "making", "full"),
    "materials": ("material", "pack_size", "pack_unit", "pack_price"),
    "vessels": ("vessel", "bought_as", "measured", "headspace"),
    "extras": ("product", "material", "count", "cost"),
    "recipes": ("product", "kind", "vessel", "wax"),
    "sets": ("set", "product", "count"),
    "places": ("place", "kind", "fee"),
}


def pixels(width):
    return int((256 * width + int(128 / DIGIT)) / 256 * DIGIT)


def on_screen(sheet):
    """The letters of the columns that are whole in the first 1,400 pixels."""
    used, found = ROW_HEADS, []
    for number in range(1, sheet.max_column + 1):
        used += pixels(sheet.column_dimensions[get_column_letter(number)].width)
        if used > SCREEN:
            break
        found.append(get_column_letter(number))
    return found


def on_page(sheet):
    """The letters of the columns on the first page, as wide as a page may be."""
    first, last = re.search(r"\$([A-Z]+)\$\d+:\$([A-Z]+)", sheet.print_area).groups()
    left, count = column_index_from_string(first) - 1, column_index_from_string(last)
    used, found = 0.0, []
    for number, width in enumerate(widths(sheet, count - left, left), start=left + 1):
        used += width
        if used > WIDEST_PAGE:
            break
        found.append(get_column_letter(number))
    return found


def test_widths_become_pixels_as_the_standard_says():
    # ECMA-376's own example: 8.43 digits of 7 pixels and 5 of padding make a width of 9.140625, and 64 pixels.
    assert pixels(9.140625) == 64


@pytest.mark.parametrize("table", FOR)
def test_what_a_list_is_for_stands_on_the_first_screen_and_the_first_page(sheets, file, table):
    letters = book.plan_of(file.season).layouts[table].letters
    sheet = sheets[book.TABLE_TABS[table].title]
    wanted = {letters[key] for key in FOR[table]}
    assert wanted <= set(on_screen(sheet))
    assert wanted <= set(on_page(sheet))


def test_what_to_do_about_a_row_is_frozen_beside_its_name_and_takes_little_room(sheets):
    for tab in book.lists(False).values():
        if tab.kind == "working":
            continue
        sheet = sheets[tab.title]
        assert sheet.freeze_panes == f"C{FIRST_ROW}", tab.title
        assert sheet[f"A{HEAD_ROW}"].value == tab.columns[STATUS].head
        assert pixels(sheet.column_dimensions["A"].width) < SCREEN / 7
        assert "A" not in on_page(sheet)


def test_cards_fit_the_screen_and_the_page(sheets):
    for title in ("Start", "Settings", "Batch", "Checks"):
        assert not isinstance(book.TABS[title], TableTab)
        last = re.search(r":\$([A-Z]+)", sheets[title].print_area)[1]
        assert last in on_screen(sheets[title]), title
        assert last in on_page(sheets[title]), title


# What is typed, where, what the row says, and the rows elsewhere that use it.
TOLD = [
    ("recipes", "load", "Pear and honey tin", 0.12, "Load 12 % is above 10 %"),
    ("materials", "density", WAX, 87, "Density: takes a number, "),
    ("recipes", "wax", "Pear and honey tin", f"{WAX} ", f"Wax: not on Materials: {WAX} : a blank at its end"),
]


@pytest.fixture(scope="module")
def small(tmp_path_factory):
    return books.Book(books.small(), tmp_path_factory.mktemp("look") / "small.xlsx", rows_of=books.SMALL_ROWS)


@pytest.fixture(scope="module")
def told(small, office):
    edits = [{small.cell(table, key, row): value} for table, key, row, value, _ in TOLD]
    return list(zip(TOLD, small.edited_each(office, edits), strict=True))


def test_words_beside_the_name_say_what_to_do(small, told):
    for (table, _, row, _, words), after in told:
        assert after[small.cell(table, STATUS, row)].startswith(words)


def test_the_line_beside_the_title_says_the_first_of_them_whole(small, told):
    for (table, _, row, *_), after in told:
        title, cell = small.cell(table, STATUS, row)
        assert after[title, "C1"] == f"Row {cell[1:]}: {after[title, cell]}"


def test_a_load_above_a_limit_is_told_wherever_its_figures_are_used(small, told):
    after = told[0][1]
    product, one_of_set = "Pear and honey tin", "Two tins in a box"
    words = after[small.cell("recipes", STATUS, product)]
    assert words in after[small.cell("costing", STATUS, product)]
    assert after[small.cell("costing", STATUS, one_of_set)] == "A candle in it has a load above a limit: see Sets"
    lines = {row["product"]: after[small.cell("prices", STATUS, place)] for place, row in small.rows("prices")}
    assert lines[product] == words
    assert lines[one_of_set] == after[small.cell("costing", STATUS, one_of_set)]
    assert {words for name, words in lines.items() if name not in (product, one_of_set)} == {""}


def test_a_line_of_checks_leads_to_the_first_row_concerned(small, told, sheets):
    for (table, _, row, *_), after in told:
        title, cell = small.cell(table, STATUS, row)
        wrong = [number for number in range(FIRST_ROW, 60) if after.get(("Checks", f"G{number}")) == "to fix"]
        assert f"{title}, row {cell[1:]}" in {after["Checks", f"B{number}"] for number in wrong}
        for number in wrong:
            there = re.match(
                r"""=HYPERLINK\("#'?([\w ]+)'?!A"&IFERROR\(MATCH\(""", sheets["Checks"][f"B{number}"].value
            )
            assert there[1] == after["Checks", f"B{number}"].partition(",")[0]


@pytest.mark.parametrize("products, bars", [(0, 12), (1, 3), (3, 3), (12, 12)])
def test_the_chart_has_as_many_bars_as_there_are_products(products, bars):
    season = books.demo()
    season.tables["recipes"] = season.tables["recipes"][:products]
    (chart,) = book.drafted(season, books.DATED, rows_of=books.few(season)).book["Costing"]._charts
    for series in chart.series:
        assert series.cat.numRef.f.endswith(f"${FIRST_ROW}:$B${FIRST_ROW + bars - 1}")
        assert series.val.numRef.f.endswith(f"${FIRST_ROW + bars - 1}")
