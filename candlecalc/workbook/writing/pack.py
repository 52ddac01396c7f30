"""The last steps of a workbook: the same bytes from the same inputs, texts for charts, values beside formulas."""

import datetime
import io
import re
import zipfile
from collections.abc import Mapping
from xml.sax.saxutils import quoteattr

from openpyxl import Workbook
from openpyxl.writer.excel import ExcelWriter

from candlecalc.files import zipped

CORE, STYLES = "docProps/core.xml", "xl/styles.xml"
# The order ECMA-376 gives the parts of a font; openpyxl has one of its own.
FONT_PARTS = ("b", "i", "strike", "u", "sz", "color", "name", "family", "scheme")

Parts = dict[str, bytes]


def parts_of(book: Workbook, date: datetime.date, chart_texts: Mapping[int, str]) -> Parts:
    """The workbook's parts, which depend on its contents and date alone.

    `chart_texts` gives each drawing (by its number) the text for who cannot see its chart.
    """
    raw = io.BytesIO()
    with zipfile.ZipFile(raw, "w", zipfile.ZIP_STORED) as package:
        ExcelWriter(book, package).save()
    stamp = f"{date.isoformat()}T00:00:00Z".encode()
    parts = _parts(raw.getvalue())
    parts[CORE] = re.sub(rb"(<dcterms:(?:created|modified)[^>]*>)[^<]*", rb"\g<1>" + stamp, parts[CORE])
    parts[STYLES] = re.sub(rb"(?<=<font>).*?(?=</font>)", _in_order, parts[STYLES])
    for number, text in chart_texts.items():
        name = f"xl/drawings/drawing{number}.xml"
        parts[name] = _described(parts[name], text)
    return parts


def _parts(package: bytes) -> Parts:
    with zipfile.ZipFile(io.BytesIO(package)) as opened:
        return {name: opened.read(name) for name in opened.namelist()}


def _in_order(font: re.Match[bytes]) -> bytes:
    parts = re.finditer(rb"<(\w+) [^>]*/>", font[0])
    return b"".join(part[0] for part in sorted(parts, key=lambda part: FONT_PARTS.index(part[1].decode())))


def _described(drawing: bytes, text: str) -> bytes:
    """A drawing with its text added: openpyxl has no place for one."""
    return re.sub(
        rb"<((?:xdr:)?cNvPr) ",
        lambda found: b"<" + found[1] + b" descr=" + quoteattr(text).encode() + b" ",
        drawing,
        count=1,
    )


def with_values(parts: Parts) -> Parts:
    """The parts with a value stored beside each formula; nothing else in them changes."""
    import formualizer

    tables = {name: data for name, data in parts.items() if name.startswith("xl/tables/")}
    # The engine takes no table over a few thousand cells. No formula of ours refers to a table, so it
    # is shown a corner of each, and the tables go back as they were.
    corners = {name: _corner(data) for name, data in tables.items()}
    package = zipped({**parts, **corners}, zipfile.ZIP_STORED)
    filled: bytes = formualizer.recalculate_xlsx_bytes(package)["bytes"]
    return {**_parts(filled), **tables}


def _corner(table: bytes) -> bytes:
    """The same table, one column wide and one row high."""
    text = table.decode()
    column, row = re.search(r'ref="([A-Z]+)(\d+):', text).groups()  # type: ignore[union-attr]
    text = re.sub(r'ref="[^"]*"', f'ref="{column}{row}:{column}{int(row) + 1}"', text, count=1)
    return re.sub(
        r"<tableColumns.*?(<tableColumn [^>]*/>).*</tableColumns>", r'<tableColumns count="1">\1</tableColumns>', text
    ).encode()
