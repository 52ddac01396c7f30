"""The last steps of a workbook: the same bytes from the same inputs, texts for charts, values beside formulas."""

import datetime
import io
import re
import zipfile
from collections.abc import Iterable, Iterator, Mapping, Sequence
from functools import partial
from html import escape

from openpyxl import Workbook
from openpyxl.utils import column_index_from_string
from openpyxl.writer.excel import ExcelWriter

from candlecalc.workbook.writing.listed import Listed, Values, stored, with_list

CORE, STYLES, WORKBOOK = "docProps/core.xml", "xl/styles.xml", "xl/workbook.xml"
# The order ECMA-376 gives the parts of a font; openpyxl has one of its own.
FONT_PARTS = ("b", "i", "strike", "u", "sz", "color", "name", "family", "scheme")

FORMULA = re.compile(rb'<c r="(?P<column>[A-Z]+)(?P<row>\d+)"(?P<style>[^>]*)>(?P<formula><f>[^<]*</f>)<v ?/></c>')

Parts = dict[str, bytes]
DRAWING = re.compile(r"xl/drawings/drawing(\d+)\.xml")


def parts_of(book: Workbook, date: datetime.date, chart_texts: Mapping[int, str]) -> Parts:
    """The workbook's parts, which depend on its contents and date alone.

    `chart_texts` gives each chart (by its number, in the order of the tabs) its text for who cannot see it.
    """
    raw = io.BytesIO()
    with zipfile.ZipFile(raw, "w", zipfile.ZIP_STORED) as package:
        ExcelWriter(book, package).save()
    stamp = f"{date.isoformat()}T00:00:00Z".encode()
    parts = _parts(raw.getvalue())
    parts[CORE] = re.sub(rb"(<dcterms:(?:created|modified)[^>]*>)[^<]*", rb"\g<1>" + stamp, parts[CORE])
    parts[STYLES] = re.sub(rb"(?<=<font>).*?(?=</font>)", _in_order, parts[STYLES])
    parts[WORKBOOK] = re.sub(rb"(?<=<definedNames>).*(?=</definedNames>)", _titles_last, parts[WORKBOOK])
    texts = iter(chart_texts[number] for number in sorted(chart_texts))
    for name in sorted((name for name in parts if DRAWING.fullmatch(name)), key=_number):
        parts[name] = _described(parts[name], texts)
    return parts


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


def with_values(parts: Parts, tabs: Iterable[Values]) -> Parts:
    """The parts with a value stored beside each formula; nothing else in them changes. Tabs come in their order."""
    filled = dict(parts)
    for number, rows in enumerate(tabs, start=1):
        name = _part_of(number)
        filled[name] = FORMULA.sub(partial(_filled, rows), parts[name])
    return filled


def _part_of(number: int) -> str:
    return f"xl/worksheets/sheet{number}.xml"


def _filled(rows: Values, cell: re.Match[bytes]) -> bytes:
    value = rows[int(cell["row"]) - 1][column_index_from_string(cell["column"].decode()) - 1]
    sort, text = (each.encode() for each in stored(value))
    return b'<c r="%b%b"%b%b>%b<v>%b</v></c>' % (*cell.group("column", "row", "style"), sort, cell["formula"], text)


def with_lists(
    parts: Parts, titles: Sequence[str], lists: Mapping[str, Listed], values: Mapping[str, Values] | None
) -> Parts:
    """The parts with the rows of their lists, and with the values of these rows if there are any."""
    filled = dict(parts)
    for number, title in enumerate(titles, start=1):
        if title in lists:
            name = _part_of(number)
            filled[name] = with_list(parts[name], lists[title], values[title] if values else None)
    return filled
