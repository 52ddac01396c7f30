"""How tabs come out on paper: which columns, on how many pages side by side, in type that can be read."""

from collections.abc import Sequence

from openpyxl.utils import get_column_letter
from openpyxl.worksheet.properties import PageSetupProperties
from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.workbook.cells.layout import FIRST_ROW

# Widths of a landscape page's columns together, in characters, at which 11 points still print as 8.
WIDEST_PAGE = 180
ROWS_OF_A_PAGE = 20  # rows of a list that a page shows in any layout
# Inches; most printers reach a quarter.
SIDE, TOP, BOTTOM, FOOT = 0.3, 0.4, 0.6, 0.3


def paper(sheet: Worksheet, size: str, portrait: bool, wide: int = 1, tall: int = 0) -> None:
    """How the tab prints: so many pages wide, any number or so many tall, a page number at the foot."""
    sheet.page_setup.paperSize = {"Letter": 1, "A4": 9}[size]
    sheet.page_setup.orientation = "portrait" if portrait else "landscape"
    sheet.page_setup.fitToWidth, sheet.page_setup.fitToHeight = wide, tall
    sheet.sheet_properties.pageSetUpPr = PageSetupProperties(fitToPage=True)
    margins = sheet.page_margins
    margins.left = margins.right = SIDE
    margins.top, margins.bottom, margins.footer = TOP, BOTTOM, FOOT
    # Each tab counts its own: the number of all pages would be the whole workbook's.
    sheet.oddFooter.center.text = "&A, page &P"
    sheet.page_setup.firstPageNumber, sheet.page_setup.useFirstPageNumber = 1, True


def print_list(
    sheet: Worksheet, columns: int, last_row: int, names: int = 1, left: int = 0, *, to_read: bool = True
) -> None:
    """Print a list's first columns on as few pages as can be read; heads and the columns that name a row on each.

    `left` is how many columns stand left of the list, and are not printed. What is not `to_read`, but behind the
    numbers, has its heads on its first page alone.
    """
    first, last_name, last = (get_column_letter(left + number) for number in (1, names, columns))
    sheet.print_area = f"{first}1:{last}{last_row}"
    sheet.page_setup.fitToWidth = pages_wide(widths(sheet, columns, left), names)
    # What repeats takes LibreOffice up to a fifth of a second a tab to open: only where there are pages to show it.
    if to_read and last_row >= FIRST_ROW + ROWS_OF_A_PAGE:
        sheet.print_title_rows = f"1:{FIRST_ROW - 1}"
    if to_read and sheet.page_setup.fitToWidth > 1:
        sheet.print_title_cols = f"{first}:{last_name}"


def widths(sheet: Worksheet, columns: int, left: int = 0) -> list[float]:
    """The widths of so many columns, after those left of them."""
    return [sheet.column_dimensions[get_column_letter(left + number)].width for number in range(1, columns + 1)]


def pages_wide(columns: Sequence[float], names: int = 1) -> int:
    """Pages that columns of these widths take side by side; none is cut, and the first stand on each."""
    room = WIDEST_PAGE - sum(columns[:names])
    pages, used = 1, 0.0
    for width in columns[names:]:
        if used + width > room:
            pages, used = pages + 1, 0.0
        used += width
    return pages
