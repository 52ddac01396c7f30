"""The part of each tab in a file: its cells spelled here, all else by openpyxl, which is three times as slow with them.

A part is the same to the byte as openpyxl's own. It stays in memory, where openpyxl puts each into a file and reads it.
"""

import io
from xml.etree.ElementTree import Element  # noqa: S405  nothing is read
from xml.sax.saxutils import escape

from openpyxl.cell import Cell
from openpyxl.compat import safe_string
from openpyxl.drawing.spreadsheet_drawing import SpreadsheetDrawing
from openpyxl.utils.datetime import to_excel
from openpyxl.worksheet._writer import WorksheetWriter
from openpyxl.worksheet.worksheet import Worksheet
from openpyxl.writer.excel import ExcelWriter

NO_ROWS = b"<sheetData />"


class Package(ExcelWriter):  # type: ignore[misc]  # openpyxl carries no types
    """A workbook's parts as openpyxl writes them, but for those of the tabs."""

    def write_worksheet(self, sheet: Worksheet) -> None:
        sheet._drawing = SpreadsheetDrawing()
        sheet._drawing.charts, sheet._drawing.images = sheet._charts, sheet._images
        part = _Part(sheet, io.BytesIO())
        part.write()
        sheet._rels = part._rels
        self._archive.writestr(sheet.path[1:], part.read().replace(NO_ROWS, part.spelled.encode(), 1))
        self.manifest.append(sheet)


class _Part(WorksheetWriter):  # type: ignore[misc]
    """What stands before and after the rows of a tab, and the rows spelled."""

    spelled = ""

    def write_rows(self) -> None:
        rows = "".join(self._row(number, cells) for number, cells in self.rows())
        self.spelled = f"<sheetData>{rows}</sheetData>"
        self.xf.send(Element("sheetData"))

    def _row(self, number: int, cells: list[Cell]) -> str:
        size = "".join(f' {key}="{value}"' for key, value in dict(self.ws.row_dimensions.get(number, {})).items())
        held = "".join(_cell(cell) for cell in cells if cell._value is not None or cell.has_style)
        return f'<row r="{number}"{size}>{held}</row>'


def _cell(cell: Cell) -> str:
    if cell.hyperlink:
        cell.parent._hyperlinks.append(cell.hyperlink)
    value, kind, look = cell._value, cell.data_type, f' s="{cell.style_id}"' if cell.has_style else ""
    head = f'<c r="{cell.coordinate}"{look}'
    if kind == "f":
        return f"{head}><f>{escape(value[1:])}</f><v /></c>"
    if value is None or value == "":
        return f'{head} t="{"inlineStr" if kind == "s" else kind}" />'
    if kind == "s":
        kept = ' xml:space="preserve"' if value != value.strip() != "" else ""
        return f'{head} t="inlineStr"><is><t{kept}>{escape(value)}</t></is></c>'
    if kind == "d":
        value, kind = to_excel(value), "n"
    return f'{head} t="{kind}"><v>{safe_string(value)}</v></c>'
