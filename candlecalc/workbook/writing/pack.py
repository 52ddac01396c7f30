"""A workbook as a file: the same bytes from the same inputs, the rows of its tabs, texts for charts."""

import datetime
import io
import re
import zipfile
from collections.abc import Iterator, Mapping
from html import escape

from openpyxl import Workbook
from openpyxl.writer.excel import ExcelWriter

from candlecalc.workbook.writing.listed import NOT_LISTED, Listed, Values
from candlecalc.workbook.writing.rows import rows_of, size_of, with_rows

CORE, STYLES, WORKBOOK = "docProps/core.xml", "xl/styles.xml", "xl/workbook.xml"
# The order ECMA-376 gives the parts of a font; openpyxl has one of its own.
FONT_PARTS = ("b", "i", "strike", "u", "sz", "color", "name", "family", "scheme")

NO_LISTS: Mapping[str, Listed] = {}

Parts = dict[str, bytes]
DRAWING = re.compile(r"xl/drawings/drawing(\d+)\.xml")


def parts_of(
    book: Workbook,
    date: datetime.date,
    chart_texts: Mapping[int, str],
    lists: Mapping[str, Listed] = NO_LISTS,
    values: Mapping[str, Values] | None = None,
) -> Parts:
    """The workbook's parts, which depend on its contents and date alone.

    `chart_texts` gives each chart (by its number, in the order of the tabs) its text for who cannot see it, `lists` the
    rows of each tab that is a list, `values` what each formula comes to: without them a program has to calculate.
    """
    # Before openpyxl writes the rest: so it knows every style that a cell has.
    rows = []
    for sheet in book.worksheets:
        listed = lists.get(sheet.title, NOT_LISTED)
        rows.append((rows_of(sheet, listed, values[sheet.title] if values else None), size_of(sheet, listed)))
    parts = _written(book)
    for number in range(len(rows), 0, -1):
        name = f"xl/worksheets/sheet{number}.xml"
        parts[name] = with_rows(parts[name], *rows.pop())  # of a year they are 65 MB, needed once
    stamp = f"{date.isoformat()}T00:00:00Z".encode()
    parts[CORE] = re.sub(rb"(<dcterms:(?:created|modified)[^>]*>)[^<]*", rb"\g<1>" + stamp, parts[CORE])
    parts[STYLES] = re.sub(rb"(?<=<font>).*?(?=</font>)", _in_order, parts[STYLES])
    parts[WORKBOOK] = re.sub(rb"(?<=<definedNames>).*(?=</definedNames>)", _titles_last, parts[WORKBOOK])
    texts = iter(chart_texts[number] for number in sorted(chart_texts))
    for name in sorted((name for name in parts if DRAWING.fullmatch(name)), key=_number):
        parts[name] = _described(parts[name], texts)
    return parts


def _written(book: Workbook) -> Parts:
    """What openpyxl writes of a workbook: of its cells those alone that are links, which it lists on their own."""
    raw, cells = io.BytesIO(), {sheet: sheet._cells for sheet in book.worksheets}
    try:
        for sheet, there in cells.items():
            sheet._cells = {place: cell for place, cell in there.items() if cell.hyperlink}
        with zipfile.ZipFile(raw, "w", zipfile.ZIP_STORED) as package:
            ExcelWriter(book, package).save()
    finally:
        for sheet, there in cells.items():
            sheet._cells = there
    return _parts(raw.getvalue())


def _number(drawing: str) -> int:
    found = DRAWING.fullmatch(drawing)
    return int(found[1]) if found else 0


def _parts(package: bytes) -> Parts:
    with zipfile.ZipFile(io.BytesIO(package)) as opened:
        return {name: opened.read(name) for name in opened.namelist()}


def _in_order(font: re.Match[bytes]) -> bytes:
    parts = re.finditer(rb"<(\w+) [^>]*/>", font[0])
    return b"".join(part[0] for part in sorted(parts, key=lambda part: FONT_PARTS.index(part[1].decode())))


def _titles_last(names: re.Match[bytes]) -> bytes:
    """The names of a workbook, the rows that its pages repeat after the print areas of all tabs.

    At each of them LibreOffice works out pages anew, and of a tab without an area as far as it goes: of a workbook with
    records that took five seconds of seven. Excel has them in this order, too.
    """
    each = [name[0] for name in re.finditer(rb"<definedName .*?</definedName>", names[0])]
    each.sort(key=lambda name: b"_xlnm.Print_Titles" in name)
    return b"".join(each)


def _described(drawing: bytes, texts: Iterator[str]) -> bytes:
    """A drawing with the text of each of its charts added: openpyxl has no place for one."""
    return re.sub(
        rb"<((?:xdr:)?cNvPr) ",
        lambda found: b"<" + found[1] + b' descr="' + escape(next(texts)).encode() + b'" ',
        drawing,
    )
